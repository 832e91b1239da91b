package org.rickyard.formula;

/**
 * Where things stand in the grid, as a cell formula refers to them. References to this row's cells carry {@link
 * CellPrinter#ROW} in place of the row number.
 */
public interface CellNames {
    /** This row's cell of a quantity: {@code F} and {@link CellPrinter#ROW}. */
    String cell(Symbol symbol);

    /** The cell of the label over a column of this table. */
    String label(Symbol symbol);

    /** A constant on Basis. */
    String constant(Constant constant);

    /** The key cells of a reference table on Basis. */
    String keys(ReferenceTable table);

    /** The value cells of a reference table on Basis. */
    String values(ReferenceTable table);

    /** All data cells of a column of another result table. */
    String column(String table, Symbol symbol);

    /** Whether that column holds whole numbers of our own, which no row is without. */
    default boolean isKey(String table, Symbol symbol) {
        return false;
    }
}
