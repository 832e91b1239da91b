package org.rickyard.lists;

/**
 * The address of a cell.
 *
 * @param sheet the sheet's name
 * @param row zero-based
 * @param column zero-based
 */
public record CellAddress(String sheet, int row, int column) {
    /** Rows of a sheet. */
    public static final int ROWS = 1_048_576;
    /** Columns of a sheet. */
    public static final int COLUMNS = 16_384;

    /** The column letters of a zero-based column: 0 is A, 26 is AA. */
    public static String letters(int column) {
        StringBuilder text = new StringBuilder();
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
            text.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return text.toString();
    }

    /** Written out, as is the next: those that Java makes for a record take several times as long until it is warm. */
    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof CellAddress that
                        && row == that.row
                        && column == that.column
                        && sheet.equals(that.sheet);
    }

    @Override
    public int hashCode() {
        return (sheet.hashCode() * 31 + row) * 31 + column;
    }

    /** As read aloud and in JSON: {@code Fields!C5}, the sheet quoted where the grid needs it. */
    @Override
    public String toString() {
        return quoted(sheet) + "!" + letters(column) + (row + 1);
    }

    /** As an absolute reference in a formula: {@code Fields!$C$5}. */
    public String absolute() {
        return quoted(sheet) + "!$" + letters(column) + "$" + (row + 1);
    }

    /** A sheet name as formulas need it: quoted unless it is a plain word that cannot be read as a cell. */
    public static String quoted(String sheet) {
        return isPlain(sheet) ? sheet : "'" + sheet.replace("'", "''") + "'";
    }

    /** Letters and underscores only, and too long to be a column, or R, C and the like, or TRUE. */
    private static boolean isPlain(String sheet) {
        for (int i = 0; i < sheet.length(); i++) {
            char c = sheet.charAt(i);
            if (!(c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c == '_')) {
                return false;
            }
        }
        return sheet.length() > 3 && !sheet.equalsIgnoreCase("true") && !sheet.equalsIgnoreCase("false");
    }
}
