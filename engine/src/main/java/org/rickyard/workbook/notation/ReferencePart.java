package org.rickyard.workbook.notation;

import org.rickyard.lists.CellAddress;

/**
 * One corner of a reference: {@code C5}, {@code $C$5}, a column {@code $C} or a row {@code 5}.
 *
 * @param column zero-based, -1 if it names a row only
 * @param row zero-based, -1 if it names a column only
 * @param columnHeld whether a dollar sign holds the column
 * @param rowHeld whether a dollar sign holds the row
 * @param end where it ends in the formula
 */
record ReferencePart(int column, int row, boolean columnHeld, boolean rowHeld, int end) {
    boolean hasColumn() {
        return column >= 0;
    }

    boolean hasRow() {
        return row >= 0;
    }

    /** The corner that starts there and is a whole word; null if there is none on the grid. */
    static ReferencePart at(String formula, int from) {
        int i = from;
        int length = formula.length();
        boolean dollar = i < length && formula.charAt(i) == '$';
        i = dollar ? i + 1 : i;
        int letters = i;
        while (i < length && FormulaText.isLetter(formula.charAt(i))) {
            i++;
        }
        int lettersEnd = i;
        boolean columnHeld = dollar && lettersEnd > letters;
        boolean rowHeld = dollar && lettersEnd == letters;
        if (lettersEnd > letters && i < length && formula.charAt(i) == '$') {
            rowHeld = true;
            i++;
        }
        int digits = i;
        while (i < length && formula.charAt(i) >= '0' && formula.charAt(i) <= '9') {
            i++;
        }
        boolean wordGoesOn =
                i < length && (FormulaText.isWordPart(formula.charAt(i)) || "(![".indexOf(formula.charAt(i)) >= 0);
        if (wordGoesOn || lettersEnd - letters > 3 || i - digits > 7 || i == letters) {
            return null;
        }
        if (rowHeld && i == digits) {
            return null;
        }
        int column = lettersEnd > letters ? FormulaTokens.column(formula.substring(letters, lettersEnd)) : -1;
        int row = i > digits ? Integer.parseInt(formula, digits, i, 10) - 1 : -1;
        if (i > digits && row < 0 || row >= CellAddress.ROWS || column >= CellAddress.COLUMNS) {
            return null;
        }
        return new ReferencePart(column, row, columnHeld, rowHeld, i);
    }
}
