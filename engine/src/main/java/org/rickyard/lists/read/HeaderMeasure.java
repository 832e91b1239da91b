package org.rickyard.lists.read;

import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** What the columns of a table are measured in, by their headers and the row of units below them. */
final class HeaderMeasure {
    private final FoundTable table;
    private final ListSpec spec;
    private final CustomaryUnits customary;

    HeaderMeasure(FoundTable table, ListSpec spec, CustomaryUnits customary) {
        this.table = table;
        this.spec = spec;
        this.customary = customary;
    }

    /** The unit that a header says, or what must be asked about it. */
    ColumnUnit unit(ColumnSpec column, String header, String rest) {
        return switch (column.type()) {
            case TEXT, CHOICE, DATE, NOZZLE, DOSE -> new ColumnUnit(null, false, null);
            case BATTER -> batterUnit(rest);
            case NUMBER, TEXT_OR_NUMBER ->
                RowUnits.isByRow(spec, column)
                        ? new ColumnUnit(null, false, null)
                        : ColumnUnit.of(column, header, rest, customary);
        };
    }

    private static ColumnUnit batterUnit(String rest) {
        return switch (Words.normal(rest)) {
            case "",
                    "h v",
                    "horizontal per vertical",
                    "m m",
                    "1 in",
                    "1 in x",
                    "1 in n",
                    "out per up",
                    "ratio",
                    "h per v",
                    "horizontal vertical",
                    "deg",
                    "degree",
                    "run per rise",
                    "m per m" -> new ColumnUnit(Units.ONE, false, null);
            default ->
                rest.strip().equals("°")
                        ? new ColumnUnit(Units.ONE, false, null)
                        : new ColumnUnit(
                                null,
                                false,
                                Words.quoted(rest)
                                        + " is not a way to write a batter known here: write metres out for each"
                                        + " metre up, 1 in 3, or degrees.");
        };
    }

    /** What the row of units says of a column; "" if nothing. */
    String inUnitsRow(int sheetColumn) {
        int row = table.unitsRow() < 0 ? table.secondHeaderRow() : table.unitsRow();
        String said = row < 0 ? "" : Words.trim(table.grid().text(row, sheetColumn));
        if (row == table.secondHeaderRow() && (table.headers()[sheetColumn].endsWith(said) || !SaidUnit.isUnit(said))) {
            // It is in the header already, or no unit.
            return "";
        }
        return said.equals("-") || said.equals("–") ? "" : said;
    }

    /** What must be asked where the header says one unit and the row of units another; null if they agree. */
    String contradiction(ColumnSpec column, String header, String rest, String inRow) {
        boolean both = !rest.isEmpty() && !inRow.isEmpty();
        if (!both || column.type() != ColumnSpec.Type.NUMBER || RowUnits.isByRow(spec, column)) {
            return null;
        }
        Unit said = ColumnUnit.of(column, header, rest, customary).unit();
        Unit below = ColumnUnit.of(column, header, inRow, customary).unit();
        return said == null || below == null || said.isSameScale(below)
                ? null
                : "The header says " + rest + ", and the row of units " + inRow + ": which is right? Make them agree.";
    }
}
