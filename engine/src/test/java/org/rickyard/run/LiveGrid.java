package org.rickyard.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.eval.BlankEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Sheet;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.testing.CalculatedBook;
import org.rickyard.testing.CellError;

/**
 * A written workbook as a spreadsheet holds it: a client's cell is changed, and what depends on it is worked out again by
 * POI. Only that is: the evaluator is told of every change and keeps the rest, as a spreadsheet does.
 */
final class LiveGrid implements AutoCloseable {
    private final ClientBook book;
    private final CalculatedBook calculated;
    private final Map<CellAddress, EvaluationCell> cells = new LinkedHashMap<>();
    private final Map<CellAddress, Object> kept = new LinkedHashMap<>();

    /** Opens a file and finds every formula cell of the rows of every result table. */
    LiveGrid(Path file, WorkPlan plan, SheetPlaces places) {
        book = ClientBook.open(file);
        calculated = new CalculatedBook(book.poi());
        for (ResultTable table : plan.tables()) {
            for (TableColumn column : table.spec().columns()) {
                for (int row = 0; row < table.rows(); row++) {
                    CellAddress address = places.cell(table.spec(), column.symbol(), row);
                    EvaluationCell cell = calculated.cell(sheet(address), address.row(), address.column());
                    if (cell != null && cell.getCellType() == CellType.FORMULA) {
                        cells.put(address, cell);
                    }
                }
            }
        }
    }

    private int sheet(CellAddress address) {
        return book.poi().getSheetIndex(address.sheet());
    }

    /** Puts something into a client's cell. */
    void spoil(CellAddress address, Object value) {
        if (!kept.containsKey(address)) {
            kept.put(address, book.content(address));
        }
        set(address, value);
    }

    /** What a formula cell outside the tables shows now. */
    Object value(CellAddress address) {
        return value(calculated.value(calculated.cell(sheet(address), address.row(), address.column())));
    }

    /** A sheet as POI holds it, with the values stored. */
    Sheet sheet(String name) {
        return book.poi().getSheet(name);
    }

    /** Gives every spoilt cell back what stood in it. */
    void mend() {
        kept.forEach(this::set);
        kept.clear();
    }

    private void set(CellAddress address, Object value) {
        book.set(address, value);
        calculated.changed(sheet(address), address.row(), address.column());
    }

    /** What every formula cell of the tables shows now: a number, a text or an error. */
    Map<CellAddress, Object> values() {
        Map<CellAddress, Object> values = new LinkedHashMap<>(cells.size() * 2);
        cells.forEach((address, cell) -> values.put(address, value(calculated.value(cell))));
        return values;
    }

    private static Object value(ValueEval value) {
        if (value instanceof NumberEval number) {
            return number.getNumberValue();
        } else if (value instanceof StringEval text) {
            return text.getStringValue();
        } else if (value == BlankEval.instance) {
            return 0.0;
        }
        return new CellError(value instanceof ErrorEval error ? error.getErrorString() : value.toString());
    }

    /** Saves it as it is now. */
    Path save(Path file) {
        return book.save(file);
    }

    @Override
    public void close() throws IOException {
        book.close();
    }
}
