package org.rickyard.lists.read;

import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Grid;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.AmountText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;

/**
 * Figures typed with their units in one cell, as forms have them: "24 m", "3.5 bar". In a column of a list such a text is
 * asked about, for the others below it are numbers; on a form every cell is one by itself.
 */
final class UnitsInCells {
    /**
     * Of "2.000 L" and "2,000 L" it is not known whether thousands are parted there or decimals begin; behind a nought,
     * as in "0.875 L", they can only be decimals.
     */
    private static final Pattern PERHAPS_THOUSANDS = Pattern.compile("^[1-9]\\d{0,2}[.,]\\d{3}(?!\\d)");

    private UnitsInCells() {}

    /** The figure that a text says, in the unit of its label; empty unless it is sure. */
    static OptionalDouble figure(String text, ColumnSpec spec, Unit unit, CustomaryUnits customary) {
        AmountText amount = AmountText.of(text);
        if (unit == null
                || !amount.isWithUnit()
                || PERHAPS_THOUSANDS.matcher(text).find()) {
            return OptionalDouble.empty();
        }
        String said = Words.trim(amount.unit());
        if (said.equals("%") && unit.isPerCent()) {
            return OptionalDouble.of(amount.value());
        }
        return UnitText.read(said, customary) instanceof UnitText.Known known
                        && spec.measuredBy(known.unit())
                        && known.unit().isCompatible(unit)
                ? OptionalDouble.of(known.unit().convert(amount.value(), unit))
                : OptionalDouble.empty();
    }

    /** Whether everything beside a label of a form is said so, and nothing has to be taken for granted of its unit. */
    static boolean areAll(FoundTable table, Binding label, ColumnSpec spec, CustomaryUnits customary) {
        Grid grid = table.grid();
        boolean any = false;
        for (int i = 0; grid.isTurned() && i < table.count(); i++) {
            int row = table.row(i);
            String text = Words.trim(grid.text(row, label.sheetColumn()));
            if (grid.kind(row, label.sheetColumn()) != Grid.Kind.BLANK) {
                if (figure(text, spec, label.unit().unit(), customary).isEmpty()) {
                    return false;
                }
                any = true;
            }
        }
        return any;
    }
}
