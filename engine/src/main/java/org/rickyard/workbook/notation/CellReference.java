package org.rickyard.workbook.notation;

import org.rickyard.lists.CellAddress;

/** The reading of plain cell references such as {@code C5}. */
public final class CellReference {
    private static final int ROW_BITS = 24;

    private CellReference() {}

    /**
     * The zero-based place of a reference in A1 style without dollar signs.
     *
     * @return the column times 2^24 plus the row; -1 if the text is no reference; places beyond the grid's limits are
     *     given as {@link CellAddress#COLUMNS} or {@link CellAddress#ROWS}
     */
    public static long parse(String text) {
        return parse(text.toCharArray(), 0, text.length());
    }

    /** As {@link #parse(String)}, of some characters. */
    public static long parse(char[] text, int start, int end) {
        int i = start;
        int column = 0;
        for (; i < end; i++) {
            int letter = (text[i] | 0x20) - 'a';
            if (letter < 0 || letter > 25) {
                break;
            }
            column = Math.min(CellAddress.COLUMNS + 1, 26 * column + letter + 1);
        }
        int letters = i;
        int row = 0;
        for (; i < end; i++) {
            int digit = text[i] - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            row = Math.min(CellAddress.ROWS + 1, 10 * row + digit);
        }
        if (letters == start || letters == end || row == 0) {
            return -1;
        }
        return (long) (column - 1) << ROW_BITS | row - 1;
    }

    /** The row of a parsed place, from 0. */
    public static int row(long place) {
        return (int) (place & (1 << ROW_BITS) - 1);
    }

    /** The column of a parsed place, from 0. */
    public static int column(long place) {
        return (int) (place >>> ROW_BITS);
    }

    /** Whether a sheet has such a row and column, both from 0. */
    public static boolean onGrid(int row, int column) {
        return row >= 0 && row < CellAddress.ROWS && column >= 0 && column < CellAddress.COLUMNS;
    }

    /**
     * The area of a reference such as {@code A1:C5} or {@code B2}, dollar signs ignored.
     *
     * @return the area on that sheet; null if the text is no such reference on the grid
     */
    public static CellArea area(String sheet, String reference) {
        String plain = reference.replace("$", "").strip();
        int colon = plain.indexOf(':');
        long first = parse(colon < 0 ? plain : plain.substring(0, colon));
        long last = colon < 0 ? first : parse(plain.substring(colon + 1));
        if (first < 0 || last < 0 || !onGrid(row(first), column(first)) || !onGrid(row(last), column(last))) {
            return null;
        }
        return CellArea.between(sheet, row(first), column(first), row(last), column(last));
    }
}
