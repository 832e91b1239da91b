package org.rickyard.workbook.meaning;

import org.rickyard.workbook.notation.FormulaText;
import org.rickyard.workbook.read.DecimalText;

/**
 * The form of a formula that does not depend on who wrote it down: no white space, capitals, no quotes around sheet
 * names, numbers by value, {@code TRUE} for {@code TRUE()}, no marks of newer functions. Texts stay as they are.
 */
final class NormalFormula {
    private static final String NEWER = "_xlfn.";
    private static final String SHEET_LOCAL = "_xlws.";
    /** Stands for a number, which no formula can hold as a character. */
    private static final char NUMBER = '\u0000';
    /** Stands for the number of the row that the formula itself is in. */
    static final char OWN_ROW = '\u0001';
    /** In place of a row number: rows count by their numbers, wherever the formula is. */
    static final int NO_ROW = 0;
    /** In place of a row number: the formula's own row is where {@link UnplacedFormula#ROW} stands. */
    static final int LATER = -1;

    private static final int MOST_LETTERS = 3;
    private static final int MOST_DIGITS = 7;

    private NormalFormula() {}

    /**
     * Writes a formula's normal form.
     *
     * @param own the number of the row it is in, which does not count where a reference without a dollar sign tells it:
     *     the form is the same after its row was sorted to another place; or {@link #NO_ROW} or {@link #LATER}
     * @return whether a reference of its own sheet tells another row without a dollar sign, or with {@code LATER} may
     */
    static boolean write(String formula, int own, NormalText out) {
        int length = formula.length();
        boolean otherRows = false;
        char before = '(';
        int i = formula.startsWith("=") ? 1 : 0;
        while (i < length) {
            char c = formula.charAt(i);
            if (c == '"') {
                int end = FormulaText.endOfQuoted(formula, i, '"');
                for (; i < end; i++) {
                    out.add(formula.charAt(i));
                }
                before = '"';
                continue;
            }
            if (c == '\'') {
                i = writeSheet(formula, i, out);
                before = '!';
                continue;
            }
            if (c <= ' ') {
                i++;
                continue;
            }
            boolean wordStart = !FormulaText.isWordPart(before);
            if (own != NO_ROW && wordStart && before != '!' && FormulaText.isWordStart(c)) {
                int row = startOfRow(formula, i);
                int end = row < 0 ? -1 : endOfRow(formula, row);
                if (end > 0 && isOwn(formula, row, end, own)) {
                    for (; i < row; i++) {
                        out.add(upper(formula.charAt(i)));
                    }
                    out.add(OWN_ROW);
                    before = '0';
                    i = end;
                    continue;
                }
                otherRows |= end > 0;
            }
            if (wordStart && (c >= '0' && c <= '9' || c == '.')) {
                i = writeNumber(formula, i, out);
                before = '0';
                continue;
            }
            if (c == '_' && (formula.startsWith(NEWER, i) || formula.startsWith(SHEET_LOCAL, i))) {
                i += NEWER.length();
                continue;
            }
            out.add(upper(c));
            before = c;
            i++;
            if (wordStart && (c == 'T' || c == 't' || c == 'F' || c == 'f')) {
                int end = endOfLogical(formula, i - 1);
                for (; i < end; i++) {
                    before = formula.charAt(i);
                    out.add(upper(before));
                }
                if (end > 0 && formula.startsWith("()", i)) {
                    i += 2;
                }
            }
        }
        return otherRows;
    }

    /** Where the row begins of a cell such as $D4 that starts there, its row not held; -1 if there is none. */
    private static int startOfRow(String formula, int from) {
        int letters = formula.charAt(from) == '$' ? from + 1 : from;
        int i = letters;
        while (i < formula.length() && FormulaText.isLetter(formula.charAt(i))) {
            i++;
        }
        return i == letters || i - letters > MOST_LETTERS ? -1 : i;
    }

    /** Where a row number ends that starts there; -1 if there is none. */
    private static int endOfRow(String formula, int from) {
        int end = from < formula.length() && formula.charAt(from) == UnplacedFormula.ROW
                ? from + 1
                : FormulaText.endOfDigits(formula, from);
        boolean whole = end > from
                && end - from <= MOST_DIGITS
                && (end == formula.length()
                        || !FormulaText.isWordPart(formula.charAt(end))
                                && formula.charAt(end) != '('
                                && formula.charAt(end) != '!');
        return whole ? end : -1;
    }

    private static boolean isOwn(String formula, int from, int end, int own) {
        boolean later = formula.charAt(from) == UnplacedFormula.ROW;
        return own == LATER ? later : !later && Integer.parseInt(formula, from, end, 10) == own;
    }

    private static char upper(char c) {
        return c < 128 ? (c >= 'a' && c <= 'z' ? (char) (c - 32) : c) : Character.toUpperCase(c);
    }

    private static int writeSheet(String formula, int from, NormalText out) {
        int end = FormulaText.endOfQuoted(formula, from, '\'');
        for (int i = from + 1; i < end - 1; i++) {
            char c = formula.charAt(i);
            if (c == '\'') {
                i++;
            }
            out.add(upper(c));
        }
        return end;
    }

    private static int writeNumber(String formula, int from, NormalText out) {
        int end = FormulaText.endOfNumber(formula, from);
        out.add(NUMBER);
        if (end - from <= 15 && FormulaText.endOfDigits(formula, from) == end) {
            out.add(Double.doubleToLongBits(Long.parseLong(formula, from, end, 10)));
        } else {
            char[] digits = formula.substring(from, end).toCharArray();
            double number = DecimalText.parse(digits, 0, digits.length);
            out.add(Double.isNaN(number) ? end - from : NormalNumber.bits(number));
        }
        return Math.max(end, from + 1);
    }

    /** Where the word TRUE or FALSE ends that starts there; 0 if it is another word. */
    private static int endOfLogical(String formula, int from) {
        for (String logical : new String[] {"TRUE", "FALSE"}) {
            int end = from + logical.length();
            boolean whole = formula.regionMatches(true, from, logical, 0, logical.length())
                    && (end == formula.length() || !FormulaText.isWordPart(formula.charAt(end)));
            if (whole) {
                return end;
            }
        }
        return 0;
    }
}
