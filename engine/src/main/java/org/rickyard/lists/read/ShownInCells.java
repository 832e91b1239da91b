package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Grid;
import org.rickyard.lists.header.HeaderUnit;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/**
 * The units that the number formats of a column's cells show: {@code 41.0 ft} is what a person reads in a cell that holds
 * 41 and is formatted as {@code 0.0" ft"}. Only units that could be the column's count; "12 cows" says nothing of its
 * width.
 *
 * @param units the different ones, as they are shown
 * @param notAll whether other numbers of the column are shown without one
 */
record ShownInCells(ColumnSpec column, List<String> units, boolean notAll) {
    private static final int MOST = 3;

    static ShownInCells of(FoundTable table, int sheetColumn, ColumnSpec column) {
        List<String> units = new ArrayList<>();
        boolean bare = false;
        if (table.grid().showsUnits(sheetColumn) && isMeasured(column)) {
            for (int i = 0; i < table.count() && units.size() < MOST; i++) {
                String shown = table.grid().shownUnit(table.row(i), sheetColumn);
                bare |= shown.isEmpty() && table.grid().kind(table.row(i), sheetColumn) == Grid.Kind.NUMBER;
                if (!shown.isEmpty() && !units.contains(shown) && HeaderUnit.fits(column, shown)) {
                    units.add(shown);
                }
            }
        }
        return new ShownInCells(column, List.copyOf(units), bare);
    }

    private static boolean isMeasured(ColumnSpec column) {
        return switch (column.type()) {
            case NUMBER -> !column.symbol().unit().isSameScale(Units.ONE);
            case DOSE, TEXT_OR_NUMBER -> true;
            case TEXT, CHOICE, DATE, BATTER, NOZZLE -> false;
        };
    }

    /** The one unit that is shown; null if none is. */
    String unit() {
        return units.isEmpty() ? null : units.get(0);
    }

    /**
     * What must be asked, since the cells show another unit than the header says, or several; null if nothing.
     *
     * @param unit the unit that the header gives, null if the header alone does not fix it
     * @param rest what the header says beside its name, "" if nothing
     */
    String doubt(Unit unit, String rest, CustomaryUnits customary) {
        if (notAll && units.contains(rest)) {
            return "Some of its cells are shown in " + units.get(0)
                    + ", others without a unit: write it in the header.";
        }
        for (String shown : units) {
            if (!isSame(shown, unit, rest, customary)) {
                String said = units.contains(rest)
                        ? "Its cells are shown in " + String.join(" and in ", units)
                        : "The header says " + (rest.isEmpty() ? unit : rest) + ", and cells are shown in " + shown;
                return said + ": which is right? Write it in the header, and change the number format of the cells.";
            }
        }
        return null;
    }

    private boolean isSame(String shown, Unit unit, String rest, CustomaryUnits customary) {
        if (shown.equals(rest)) {
            return true;
        }
        if (column.type() == ColumnSpec.Type.DOSE) {
            return rest.isEmpty()
                    || DoseText.read(shown, customary).equals(DoseText.read(rest, customary))
                    || !(DoseText.read(rest, customary) instanceof DoseText.Known);
        }
        if (unit == null) {
            return true;
        }
        UnitText text = UnitText.read(shown, customary);
        if (text instanceof UnitText.Known known) {
            return known.unit().isSameScale(unit)
                    || UnitText.ofDryMatter(known.unit()).isSameScale(unit);
        }
        return !(text instanceof UnitText.Ambiguous ambiguous)
                || ambiguous.candidates().isEmpty()
                || ambiguous.candidates().stream().anyMatch(unit::isSameScale);
    }
}
