package org.rickyard.workbook.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.rickyard.workbook.notation.FormulaText;

/**
 * A formula without the places on other sheets that it leads to. Those places change without anybody editing the
 * formula: a row inserted into the client's list, a column deleted, a sheet renamed, and the office program writes every
 * reference anew.
 *
 * @param formula the formula with one character in place of each reference to another sheet
 * @param leads what single cells it leads to, in order
 */
record UnplacedFormula(String formula, List<Lead> leads) {
    /** Stands in a formula for a row number that is told later; a private character. */
    static final char ROW = '\uE001';
    /** Stands for a reference to another sheet. */
    private static final char ELSEWHERE = '\uE002';

    private static final String GONE = "#REF!";
    private static final int MOST_LETTERS = 3;

    /**
     * A single cell on another sheet.
     *
     * @param sheet its sheet in lower case, "" if it is no longer told
     * @param row its row number, {@link #LATER} or {@link #NO_ROW}
     */
    record Lead(String sheet, int row) {
        static final int LATER = -2;
        static final int NO_ROW = -1;
    }

    /** The formula without its places; null if it leads nowhere but to its own sheet. */
    static UnplacedFormula of(String formula) {
        return formula.indexOf('!') < 0 ? null : new Reader(formula).read();
    }

    private static final class Reader {
        private final String formula;
        private final StringBuilder out = new StringBuilder();
        private final List<Lead> leads = new ArrayList<>();
        private boolean elsewhere;
        private int position;
        private int row;

        Reader(String formula) {
            this.formula = formula;
        }

        UnplacedFormula read() {
            while (position < formula.length()) {
                char c = formula.charAt(position);
                int end;
                if (c == '"') {
                    end = FormulaText.endOfQuoted(formula, position, '"');
                } else if (c == '\'') {
                    end = FormulaText.endOfQuoted(formula, position, '\'');
                } else if (formula.startsWith(GONE, position)) {
                    // Some programs leave the address behind the error.
                    int address = corner(position + GONE.length());
                    position = address > 0 ? address : position + GONE.length();
                    found("", Lead.NO_ROW);
                    continue;
                } else if (FormulaText.isWordStart(c)) {
                    end = FormulaText.endOfWord(formula, position);
                } else {
                    end = position + 1;
                }
                boolean prefix = c != '"' && end < formula.length() && formula.charAt(end) == '!';
                if (!prefix || !reference(position, end)) {
                    out.append(formula, position, end);
                    position = end;
                }
            }
            return elsewhere ? new UnplacedFormula(out.toString(), List.copyOf(leads)) : null;
        }

        /** Takes the reference behind a sheet's name; false, with nothing taken, if there is none. */
        private boolean reference(int from, int mark) {
            String sheet = formula.substring(from, mark).toLowerCase(Locale.ROOT);
            if (formula.startsWith(GONE, mark + 1)) {
                position = mark + 1 + GONE.length();
                found(sheet, Lead.NO_ROW);
                return true;
            }
            int end = corner(mark + 1);
            if (end < 0) {
                return false;
            }
            int first = row;
            if (end < formula.length() && formula.charAt(end) == ':') {
                int again = end + 1;
                if (formula.regionMatches(true, again, formula, from, mark + 1 - from)) {
                    again += mark + 1 - from;
                }
                int last = corner(again);
                if (last > 0) {
                    position = last;
                    out.append(ELSEWHERE);
                    elsewhere = true;
                    return true;
                }
            }
            position = end;
            found(sheet, first);
            return true;
        }

        private void found(String sheet, int leadRow) {
            out.append(ELSEWHERE);
            elsewhere = true;
            leads.add(new Lead(sheet.startsWith("'") ? sheet.substring(1, sheet.length() - 1) : sheet, leadRow));
        }

        /** Where a cell such as $D$4 ends that starts there, its row kept; -1 if there is none. */
        private int corner(int from) {
            int i = from < formula.length() && formula.charAt(from) == '$' ? from + 1 : from;
            int letters = i;
            while (i < formula.length() && FormulaText.isLetter(formula.charAt(i))) {
                i++;
            }
            if (i == letters || i - letters > MOST_LETTERS) {
                return -1;
            }
            i = i < formula.length() && formula.charAt(i) == '$' ? i + 1 : i;
            if (i < formula.length() && formula.charAt(i) == ROW) {
                row = Lead.LATER;
                return i + 1;
            }
            int digits = FormulaText.endOfDigits(formula, i);
            boolean whole = digits > i
                    && digits - i <= 7
                    && (digits == formula.length() || !FormulaText.isWordPart(formula.charAt(digits)));
            if (!whole) {
                return -1;
            }
            row = Integer.parseInt(formula, i, digits, 10);
            return digits;
        }
    }
}
