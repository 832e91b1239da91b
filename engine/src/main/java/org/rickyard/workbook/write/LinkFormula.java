package org.rickyard.workbook.write;

import org.rickyard.formula.Numbers;
import org.rickyard.formula.Scaling;
import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Range;

/**
 * The formula by which a cell of ours takes a number from a client's cell: only a number, only a possible one, brought
 * to our unit. A blank never becomes zero.
 */
final class LinkFormula {
    /** Stands where the address of the client's cell goes. */
    static final char SOURCE = '\u0002';
    /** The same, as a text. */
    static final String SOURCE_TEXT = String.valueOf(SOURCE);

    static final String IMPOSSIBLE = "impossible";
    static final String NOT_A_NUMBER = "not a number";
    static final String ERROR = "error";
    /** Shown for a cell that would lead back to our own results. */
    static final String LOOP = "loop";

    private LinkFormula() {}

    /**
     * The formula.
     *
     * @param optional whether a blank must be told from what cannot be used
     * @param mark what stands in the cell and was read as a blank, as a dash is; "" if nothing
     */
    static String of(Symbol symbol, Scaling scaling, boolean optional, String mark) {
        String s = SOURCE_TEXT;
        String value = s + scaling.cell();
        // Joined with no text, whatever is no error is a text, and a blank the empty one.
        String blank = s + "&\"\"=\"\"";
        if (!mark.isEmpty()) {
            blank = "OR(" + blank + "," + s + "&\"\"=\"" + mark.replace("\"", "\"\"") + "\")";
        }
        String other = optional
                ? "IF(ISTEXT(" + s + "&\"\"),IF(" + blank + ",\"\",\"" + NOT_A_NUMBER + "\"),\"" + ERROR + "\")"
                : "\"\"";
        return byContents(s, value, symbol.possible(), value, "\"" + IMPOSSIBLE + "\"", other);
    }

    /**
     * One of three, by what a client's cell holds at the time.
     *
     * @param value the cell's number in the unit of the range
     */
    static String byContents(
            String cell, String value, Range range, String possible, String impossible, String noNumber) {
        String condition = possible(range, value);
        String number = condition == null ? possible : "IF(" + condition + "," + possible + "," + impossible + ")";
        return "IF(ISNUMBER(" + cell + ")," + number + "," + noNumber + ")";
    }

    /** The condition that a value lies in a range; null where every number does. */
    private static String possible(Range range, String value) {
        String low = range.hasLow() ? value + (range.lowOpen() ? ">" : ">=") + Numbers.exact(range.low()) : null;
        String high = range.hasHigh() ? value + (range.highOpen() ? "<" : "<=") + Numbers.exact(range.high()) : null;
        if (low == null || high == null) {
            return low == null ? high : low;
        }
        return "AND(" + low + "," + high + ")";
    }
}
