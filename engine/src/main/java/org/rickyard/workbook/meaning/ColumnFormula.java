package org.rickyard.workbook.meaning;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.workbook.notation.FormulaText;

/**
 * The formula of a column, known again in row after row by its text: what stands there differs by one row number only.
 * It is learnt from two formulas that were met one after the other, so that the next are told by comparing texts and
 * need not be taken apart.
 */
final class ColumnFormula {
    /** A formula that is not this one. */
    static final int OTHER = -1;

    private static final int MOST_DIGITS = 7;

    private final List<String> pieces;
    private FormulaShape shape;
    private boolean shapeSortable;

    private ColumnFormula(List<String> pieces) {
        this.pieces = pieces;
    }

    /**
     * What two formulas have in common if they differ by one row number, however often it stands there: each time behind
     * a column's letters or a dollar sign, and in no text and no quoted name.
     *
     * @return null if they are the same, or differ by something else
     */
    static ColumnFormula of(String first, String second) {
        List<String> pieces = new ArrayList<>();
        int i = 0;
        int j = 0;
        int pieceFrom = 0;
        int number = OTHER;
        int otherNumber = OTHER;
        char quote = 0;
        while (i < first.length() && j < second.length()) {
            char c = first.charAt(i);
            if (!isDigit(c)) {
                if (c != second.charAt(j)) {
                    return null;
                }
                if (quote == 0 && (c == '"' || c == '\'')) {
                    quote = c;
                } else if (c == quote) {
                    quote = 0;
                }
                i++;
                j++;
                continue;
            }
            int end = FormulaText.endOfDigits(first, i);
            int otherEnd = FormulaText.endOfDigits(second, j);
            if (!first.regionMatches(i, second, j, Math.max(end - i, otherEnd - j))) {
                int here = quote == 0 && isPlace(first, i, end) ? number(first, i, end) : OTHER;
                int there = isPlace(second, j, otherEnd) ? number(second, j, otherEnd) : OTHER;
                if (here < 0 || there < 0 || number >= 0 && (number != here || otherNumber != there)) {
                    return null;
                }
                number = here;
                otherNumber = there;
                pieces.add(first.substring(pieceFrom, i));
                pieceFrom = end;
            }
            i = end;
            j = otherEnd;
        }
        if (i < first.length() || j < second.length() || number < 0) {
            return null;
        }
        pieces.add(first.substring(pieceFrom));
        return new ColumnFormula(pieces);
    }

    /** The row number with which a formula is this one; {@link #OTHER} if it is another. */
    int numberIn(String formula) {
        String first = pieces.get(0);
        if (!formula.startsWith(first)) {
            return OTHER;
        }
        int from = first.length();
        int digits = FormulaText.endOfDigits(formula, from) - from;
        int number = number(formula, from, from + digits);
        int at = from + digits;
        for (int i = 1; i < pieces.size() && number >= 0; i++) {
            String piece = pieces.get(i);
            if (i > 1) {
                boolean same = formula.regionMatches(at, formula, from, digits);
                at += digits;
                number = same ? number : OTHER;
            }
            if (!formula.startsWith(piece, at)) {
                return OTHER;
            }
            at += piece.length();
        }
        return at == formula.length() ? number : OTHER;
    }

    /** Its shape in rows that may be sorted, or in others. */
    FormulaShape shape(boolean sortable) {
        if (shape == null || shapeSortable != sortable) {
            shape = FormulaShape.of(pieces, sortable);
            shapeSortable = sortable;
        }
        return shape;
    }

    /** A row number as programs write it; {@link #OTHER} if it is none. */
    private static int number(String formula, int from, int end) {
        boolean whole = end > from && end - from <= MOST_DIGITS && formula.charAt(from) != '0';
        return whole ? Integer.parseInt(formula, from, end, 10) : OTHER;
    }

    /** Whether digits stand where the row of a reference does. */
    private static boolean isPlace(String formula, int from, int end) {
        if (from == 0 || !FormulaText.isLetter(formula.charAt(from - 1)) && formula.charAt(from - 1) != '$') {
            return false;
        }
        if (end == formula.length()) {
            return true;
        }
        char after = formula.charAt(end);
        return !FormulaText.isWordPart(after) && after != '(' && after != '!' && after != '[';
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
