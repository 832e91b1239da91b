package org.rickyard.run;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/**
 * The engine over lists that were changed after another run, and those of its cells that a live grid must show, too:
 * those that are linked to the same cells as before. A blank may send a link to the next place where its value can stand,
 * and what is planned, simulated or joined by words is found anew only by a run.
 */
final class FreshRun {
    private final Runs.Run before;
    private final WorkPlan plan;
    private final Map<String, Boolean> alike = new HashMap<>();

    private FreshRun(Runs.Run before, WorkPlan plan) {
        this.before = before;
        this.plan = plan;
    }

    /** Runs over the lists as they are now, in memory. */
    static FreshRun of(ClientBook lists, Runs.Run before) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        lists.poi().write(bytes);
        try (BookPackage book = BookPackage.open(new ByteArrayInputStream(bytes.toByteArray()), "lists.xlsx")) {
            return new FreshRun(
                    before, Recalculation.of(book, new RunOptions(0, false, 1)).plan());
        } catch (RefusedException refused) {
            throw new AssertionError("refused: " + refused.getMessage(), refused);
        }
    }

    /** The calculated and joined values and the sentences of the rows that can be compared, by their cells. */
    Map<CellAddress, Object> comparable() {
        Map<CellAddress, Object> values = new LinkedHashMap<>();
        for (ResultTable table : before.plan().tables()) {
            ResultTable again = plan.table(table.spec().id());
            if (again == null || again.rows() != table.rows() || !readsTheSame(table, again)) {
                continue;
            }
            for (int row = 0; row < table.rows(); row++) {
                if (!sameInputs(table, again, row)) {
                    continue;
                }
                for (TableColumn column : table.spec().columns()) {
                    if (isFormula(column)
                            && again.spec().column(column.symbol()).isPresent()) {
                        Values found = again.of(column.symbol());
                        values.put(before.places().cell(table.spec(), column.symbol(), row), value(found, row));
                    }
                }
            }
        }
        return values;
    }

    private static boolean isFormula(TableColumn column) {
        return column instanceof TableColumn.Calculated
                || column instanceof TableColumn.Joined
                || column instanceof TableColumn.Sentence;
    }

    private static Object value(Values values, int row) {
        return values.words() ? values.word(row) : values.has(row) ? (Object) values.number(row) : "";
    }

    /** Whether what a table joins from others is the same rows with the same inputs. */
    private boolean readsTheSame(ResultTable table, ResultTable again) {
        for (String other : table.spec().reads()) {
            // A running total reads its own table.
            if (!alike(other)) {
                return false;
            }
        }
        return true;
    }

    private boolean alike(String id) {
        Boolean known = alike.get(id);
        if (known == null) {
            ResultTable table = before.plan().table(id);
            ResultTable again = plan.table(id);
            alike.put(id, true);
            known = again != null && again.rows() == table.rows() && readsTheSame(table, again);
            for (int row = 0; known && row < table.rows(); row++) {
                known = sameInputs(table, again, row);
            }
            alike.put(id, known);
        }
        return known;
    }

    private static boolean sameInputs(ResultTable table, ResultTable again, int row) {
        for (TableColumn column : table.spec().columns()) {
            if (isFormula(column)) {
                continue;
            }
            if (again.spec().column(column.symbol()).isEmpty()) {
                return false;
            }
            LinkCells links = table.links(column.symbol());
            LinkCells linksAgain = again.links(column.symbol());
            if (links != null
                    && (linksAgain == null
                            || !links.address(row).equals(linksAgain.address(row))
                            || links.exists(row) != linksAgain.exists(row))) {
                return false;
            }
            if (!(column instanceof TableColumn.Link)
                    && !Objects.equals(value(table.of(column.symbol()), row), value(again.of(column.symbol()), row))) {
                return false;
            }
        }
        return true;
    }
}
