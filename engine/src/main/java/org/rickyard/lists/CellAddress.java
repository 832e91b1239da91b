package org.rickyard.lists;

/**
 * The address of a cell.
 *
 * @param sheet the sheet's name
 * @param row zero-based
 * @param column zero-based
 */
public record CellAddress(String sheet, int row, int column) {
    /** The column letters of a zero-based column: 0 is A, 26 is AA. */
    public static String letters(int column) {
        StringBuilder text = new StringBuilder();
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
            text.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return text.toString();
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
        boolean plain = sheet.matches("[A-Za-z_][A-Za-z_]*")
                && !sheet.matches("(?i)[A-Z]{1,3}|true|false|R[0-9]*C?[0-9]*|C[0-9]*");
        return plain ? sheet : "'" + sheet.replace("'", "''") + "'";
    }
}
