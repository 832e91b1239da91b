package org.rickyard.workbook.read;

/**
 * The form of a formula that does not depend on who wrote it down: no white space, capitals, no quotes around sheet
 * names, numbers by value, {@code TRUE} for {@code TRUE()}, no marks of newer functions. Texts stay as they are.
 */
final class NormalFormula {
    private static final String NEWER = "_xlfn.";
    private static final String SHEET_LOCAL = "_xlws.";
    /** Stands for a number, which no formula can hold as a character. */
    private static final char NUMBER = '\u0000';

    private NormalFormula() {}

    static void write(String formula, NormalText out) {
        int length = formula.length();
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
