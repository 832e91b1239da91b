package org.rickyard.workbook.notation;

import org.rickyard.lists.CellAddress;

/** Writes a formula out for another cell than the one it was told for: relative references move along. */
public final class ShiftedFormula {
    private ShiftedFormula() {}

    /** The formula as it reads that many rows further down and columns further right. */
    public static String of(String formula, int rows, int columns) {
        FormulaTokens tokens = new FormulaTokens(formula);
        StringBuilder shifted = new StringBuilder(formula.length() + 8);
        int done = 0;
        while (tokens.next()) {
            if (tokens.kind() == FormulaTokens.Kind.REFERENCE) {
                shifted.append(formula, done, tokens.start());
                for (int i = tokens.start(); i < tokens.end(); ) {
                    i = appendShifted(formula, i, tokens.end(), rows, columns, shifted);
                }
                done = tokens.end();
            }
        }
        return shifted.append(formula, done, formula.length()).toString();
    }

    /** Appends the letters or digits from a place on, moved unless a dollar sign holds them; gives where they end. */
    private static int appendShifted(String formula, int from, int end, int rows, int columns, StringBuilder shifted) {
        char c = formula.charAt(from);
        if (c == ':') {
            // The sheet may be named again within the reference, as in Fields!A1:Fields!B2.
            int next = Math.max(from, formula.lastIndexOf('!', end - 1)) + 1;
            shifted.append(formula, from, next);
            return next;
        }
        boolean held = c == '$';
        int i = held ? from + 1 : from;
        int start = i;
        while (i < end && FormulaText.isLetter(formula.charAt(i))) {
            i++;
        }
        if (i > start) {
            String letters = formula.substring(start, i);
            if (held) {
                shifted.append('$').append(letters);
            } else {
                int column = FormulaTokens.column(letters) + columns;
                shifted.append(CellAddress.letters(Math.floorMod(column, CellAddress.COLUMNS)));
            }
            return i;
        }
        while (i < end && Character.isDigit(formula.charAt(i))) {
            i++;
        }
        if (i > start) {
            if (held) {
                shifted.append('$').append(formula, start, i);
            } else {
                int row = Integer.parseInt(formula, start, i, 10) - 1 + rows;
                shifted.append(Math.floorMod(row, CellAddress.ROWS) + 1);
            }
            return i;
        }
        shifted.append(c);
        return from + 1;
    }
}
