package org.rickyard.workbook.write;

/** Takes what a sheet means, cell by cell: its formulas and its constants, without looks and present values. */
public interface Meaning {
    /**
     * A cell with a formula.
     *
     * @param formula the same in many rows but for one row number
     * @param number that row number
     */
    void formula(int row, int column, CellFormula formula, int number);

    /** A cell with a typed number. */
    void number(int row, int column, double number);

    /** A cell with a typed text. */
    void text(int row, int column, String text);
}
