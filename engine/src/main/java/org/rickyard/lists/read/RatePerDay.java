package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Machines;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** What to write in the place of a rate per day, where the hours of the day stand beside it. */
final class RatePerDay {
    /** So many figures are told; the others go the same way. */
    private static final int MOST = 5;

    private final FoundTable table;
    private final HeaderRow.Match match;
    private final CustomaryUnits customary;

    RatePerDay(FoundTable table, HeaderRow.Match match, CustomaryUnits customary) {
        this.table = table;
        this.match = match;
        this.customary = customary;
    }

    /**
     * The header and the figures to write, as sentences with a space before them; "" where the column is no rate per hour,
     * its header none per day, or they cannot be told.
     */
    String figures(ColumnSpec column, int sheetColumn, String unit) {
        int hours = hours();
        if (hours < 0
                || !column.symbol().unit().isPer(Units.H)
                || !(UnitText.read(unit, customary) instanceof UnitText.Known known)
                || !known.unit().isPer(Units.D)) {
            return "";
        }
        Grid grid = table.grid();
        List<String> told = new ArrayList<>();
        int all = 0;
        for (int index = 0; index < table.count(); index++) {
            int row = table.row(index);
            double day = grid.kind(row, sheetColumn) == Grid.Kind.NUMBER ? grid.number(row, sheetColumn) : 0;
            double length = grid.kind(row, hours) == Grid.Kind.NUMBER ? grid.number(row, hours) : 0;
            if (day > 0 && length >= 1 && length <= 24 && all++ < MOST) {
                told.add(Words.digits(Math.rint(day / length * 1e4) / 1e4) + " in " + table.address(row, sheetColumn)
                        + " (" + Words.digits(day) + " ÷ " + Words.digits(length) + " h)");
            }
        }
        String hourly = known.unit().counted() + "/h";
        return told.isEmpty()
                ? ""
                : " By " + Words.quoted(table.headers()[hours]) + " beside it: head it " + column.name() + " (" + hourly
                        + ") and type " + String.join(", ", told)
                        + (all > told.size() ? ", and so in the other rows." : ".");
    }

    /** The column of the sheet that says how long a day is, in hours; -1 if there is none, or several. */
    private int hours() {
        int found = -1;
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading != null && heading.isCertain() && heading.column() == Machines.HOURS_PER_DAY) {
                boolean inHours = heading.rest().isEmpty()
                        || UnitText.read(heading.rest(), customary) instanceof UnitText.Known known
                                && known.unit().isSameScale(Units.H);
                if (found >= 0 || !inHours) {
                    return -1;
                }
                found = match.firstColumn() + i;
            }
        }
        return found;
    }
}
