package org.rickyard.workbook.read;

import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;

/** Takes the cells of one sheet as they are read. Blank cells are not given. */
@FunctionalInterface
public interface CellSink {
    /**
     * One cell.
     *
     * @param row zero-based, less than 1,048,576
     * @param column zero-based, less than 16,384
     * @param kind what the cell holds, or what its formula last gave
     * @param number the number of a NUMBER cell, 1 or 0 of a LOGICAL one, otherwise 0
     * @param text the text of a TEXT cell, the code of an ERROR cell, "TRUE" or "FALSE"; "" of any other
     * @param format how a number is shown
     * @param formula the formula without equals sign; null if there is none. It is "" if {@link #wantsFormulaText} is
     *     false, or if the file does not tell it (a shared formula whose first cell is missing)
     */
    void cell(int row, int column, Kind kind, double number, String text, Format format, String formula);

    /**
     * What the format of a number shows behind it, said of a cell before the cell itself is given, and only in workbooks
     * with such formats.
     *
     * @param unit "" for a number that is shown without
     */
    default void shownUnit(int row, int column, String unit) {}

    /** That the formula of the cell to be given next is one over arrays or of a data table, said before the cell. */
    default void arrayFormula() {}

    /** That a row is hidden, said before its cells. */
    default void hiddenRow(int row) {}

    /** That columns are hidden, from one to another, said before all cells. */
    default void hiddenColumns(int first, int last) {}

    /**
     * That cells are merged over several rows, said after all cells.
     *
     * @param column the first of its columns
     */
    default void merged(int firstRow, int lastRow, int column) {}

    /** Whether formulas must be given in full; shared ones are then written out for each cell. */
    default boolean wantsFormulaText() {
        return true;
    }

    /**
     * Whether a shared formula must be given in full for each of its cells, or may be "" for all but the first. It differs
     * from cell to cell by the rows and columns it names alone.
     *
     * @param first as its first cell has it
     */
    default boolean wantsShared(String first) {
        return true;
    }

    /** Gives every cell to both, in this order. */
    static CellSink both(CellSink first, CellSink second) {
        boolean wantsText = first.wantsFormulaText() || second.wantsFormulaText();
        return new CellSink() {
            @Override
            public void cell(
                    int row, int column, Kind kind, double number, String text, Format format, String formula) {
                first.cell(row, column, kind, number, text, format, formula);
                second.cell(row, column, kind, number, text, format, formula);
            }

            @Override
            public void shownUnit(int row, int column, String unit) {
                first.shownUnit(row, column, unit);
                second.shownUnit(row, column, unit);
            }

            @Override
            public void arrayFormula() {
                first.arrayFormula();
                second.arrayFormula();
            }

            @Override
            public void hiddenRow(int row) {
                first.hiddenRow(row);
                second.hiddenRow(row);
            }

            @Override
            public void hiddenColumns(int from, int to) {
                first.hiddenColumns(from, to);
                second.hiddenColumns(from, to);
            }

            @Override
            public void merged(int firstRow, int lastRow, int column) {
                first.merged(firstRow, lastRow, column);
                second.merged(firstRow, lastRow, column);
            }

            @Override
            public boolean wantsFormulaText() {
                return wantsText;
            }

            @Override
            public boolean wantsShared(String formula) {
                return first.wantsFormulaText() && first.wantsShared(formula)
                        || second.wantsFormulaText() && second.wantsShared(formula);
            }
        };
    }
}
