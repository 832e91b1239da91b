package org.rickyard.lists;

import java.util.Locale;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;

/**
 * An amount written with its unit in one cell: "2.5 L/ha", "120 hp".
 *
 * @param text as written
 * @param value the number it begins with; NaN if it begins with none
 * @param unit what follows the number
 */
record AmountText(String text, double value, String unit) {
    static AmountText of(String text) {
        int end = 0;
        while (end < text.length() && (Character.isDigit(text.charAt(end)) || text.charAt(end) == '.')) {
            end++;
        }
        return new AmountText(text, BatterText.number(text.substring(0, end)), text.substring(end));
    }

    /** Whether it is a number and something after it. */
    boolean isWithUnit() {
        return !unit.isEmpty() && !Double.isNaN(value);
    }

    /**
     * What to write in its place, as a sentence after a blank: of "120 hp" in a column of kW, 89.5. Empty if nothing
     * can be told.
     *
     * @param own the unit of the column; null if it differs from row to row
     */
    String howToWrite(Unit own, CustomaryUnits customary) {
        if (!isWithUnit()) {
            return "";
        }
        if (own == null || own.symbol().startsWith("product unit")) {
            return " Write the figure alone, " + Words.digits(value)
                    + ": its unit stands in the header or in a column of units.";
        }
        if (Words.trim(unit).equals("%") && FoundRows.isPercent(own)) {
            return " Write " + Words.digits(value) + " without the sign, or give the cell a number format of per cent.";
        }
        if (UnitText.read(unit, customary) instanceof UnitText.Known known
                && known.unit().isCompatible(own)) {
            String digits = Words.digits(Double.parseDouble(
                    String.format(Locale.ROOT, "%.4g", known.unit().convert(value, own))));
            return " " + Words.quoted(text) + " is " + digits + " " + own + ": write that, or put " + known.unit()
                    + " in the header if the whole column is in it.";
        }
        return "";
    }
}
