package org.rickyard.run;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.lists.ListColumn;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.workbook.follow.BookScope;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.CellSink;

/**
 * Looks for links on a result sheet that lead to a column of the client's to which none of ours would lead there. Where
 * no list has a header any more for what is linked, its column may have been moved and renamed in one go: then only a
 * column that is read as something else is another.
 */
final class LedElsewhere implements CellSink {
    private record Lead(int column, String sheet, int sheetColumn) {}

    private final BookScope scope;
    private final String sheet;
    private final ResultTable table;
    private final FoundLists lists;
    private final Map<Lead, Boolean> sound = new HashMap<>();
    /** The links of the columns as the sheet has them, by its own labels: a run may have more columns now, or fewer. */
    private final Map<Integer, LinkCells> links = new HashMap<>();

    private boolean found;

    private LedElsewhere(BookScope scope, String sheet, ResultTable table, FoundLists lists) {
        this.scope = scope;
        this.sheet = sheet;
        this.table = table;
        this.lists = lists;
    }

    static boolean look(BookReader reader, BookScope scope, SheetRef sheet, ResultTable table, FoundLists lists)
            throws IOException {
        LedElsewhere look = new LedElsewhere(scope, sheet.name(), table, lists);
        reader.stream(sheet, look);
        return look.found;
    }

    @Override
    public void cell(int row, int column, Kind kind, double number, String text, Format format, String formula) {
        if (row == SheetPlaces.LABEL_ROW) {
            label(column, text);
        }
        LinkCells here = links.get(column);
        if (found || formula == null || row < SheetPlaces.FIRST_ROW || here == null) {
            return;
        }
        for (CellArea area : scope.areas(formula, new CellAddress(sheet, row, column))) {
            Lead lead = new Lead(column, area.sheet(), area.firstColumn());
            found |= !sound.computeIfAbsent(
                    lead,
                    l -> here.mayLeadTo(l.sheet(), l.sheetColumn())
                            || here.hasNoColumn() && !isRead(l.sheet(), l.sheetColumn()));
        }
    }

    /** Whether a list of the workbook reads the column in any row. */
    private boolean isRead(String name, int sheetColumn) {
        for (ListSpec spec : Lists.ALL) {
            ListRows rows = lists.rows(spec);
            for (ColumnSpec column : spec.columns()) {
                ListColumn cells = rows.column(column);
                if (cells != null && cells.isReadFrom(name, sheetColumn, rows.size())) {
                    return true;
                }
            }
        }
        return false;
    }

    private void label(int column, String text) {
        for (TableColumn each : table.spec().columns()) {
            if (each.label().equals(text) && table.links(each.symbol()) != null) {
                links.putIfAbsent(column, table.links(each.symbol()));
            }
        }
    }
}
