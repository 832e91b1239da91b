package org.rickyard.run;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.plan.LinkCells;
import org.rickyard.plan.ResultTable;
import org.rickyard.plan.SheetPlaces;
import org.rickyard.plan.TableColumn;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.BookScope;
import org.rickyard.workbook.read.CellArea;
import org.rickyard.workbook.read.CellSink;

/** Looks for links on a result sheet that lead to a column of the client's to which none of ours would lead there. */
final class LedElsewhere implements CellSink {
    private record Lead(int column, String sheet, int sheetColumn) {}

    private final BookScope scope;
    private final String sheet;
    private final ResultTable table;
    private final Map<Lead, Boolean> sound = new HashMap<>();
    /** The links of the columns as the sheet has them, by its own labels: a run may have more columns now, or fewer. */
    private final Map<Integer, LinkCells> links = new HashMap<>();

    private boolean found;

    private LedElsewhere(BookScope scope, String sheet, ResultTable table) {
        this.scope = scope;
        this.sheet = sheet;
        this.table = table;
    }

    static boolean look(BookReader reader, BookScope scope, SheetRef sheet, ResultTable table) throws IOException {
        LedElsewhere look = new LedElsewhere(scope, sheet.name(), table);
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
            found |= !sound.computeIfAbsent(lead, l -> here.mayLeadTo(l.sheet(), l.sheetColumn()));
        }
    }

    private void label(int column, String text) {
        for (TableColumn each : table.spec().columns()) {
            if (each.label().equals(text) && table.links(each.symbol()) != null) {
                links.putIfAbsent(column, table.links(each.symbol()));
            }
        }
    }
}
