package org.rickyard.lists;

import java.time.LocalDate;
import java.util.List;
import org.rickyard.formula.Days;
import org.rickyard.lists.text.Words;

/** The cells of one sheet of the client's workbook, as they were read. Rows and columns are zero-based. */
public interface Grid {
    /** The error text of a cell that depends on our own results and so cannot be an input. */
    String LOOP = "#LOOP: it depends on Rickyard's own results";

    /** What a cell holds. */
    enum Kind {
        /** Nothing. */
        BLANK,
        /** A number, typed or the stored value of a formula. */
        NUMBER,
        /** Text; the empty text of a formula too. */
        TEXT,
        /** TRUE or FALSE. */
        LOGICAL,
        /** An error such as #N/A. */
        ERROR,
        /** A formula for which the file stores no value. */
        UNCOMPUTED
    }

    /** How a number is shown, so far as it changes what was meant. */
    enum Format {
        /** An ordinary number. */
        GENERAL,
        /** Shown as per cent: 0.5 is read by people as 50. */
        PERCENT,
        /** Shown as a day or time. */
        DATE
    }

    /**
     * An Excel table on the sheet; the range includes its header and totals rows.
     *
     * @param name display name
     * @param headerRows 0 or 1
     * @param totalsRows 0 or 1
     */
    record TableRange(
            String name, int firstRow, int lastRow, int firstColumn, int lastColumn, int headerRows, int totalsRows) {}

    /** The sheet's name. */
    String sheet();

    /** The day whose number is 0 in most workbooks; true of days from March 1900 on. */
    LocalDate USUAL_DAY_ZERO = Days.USUAL_ZERO;

    /** The day whose number is 0 in this workbook. */
    default LocalDate dayZero() {
        return USUAL_DAY_ZERO;
    }

    /** One more than the last used row. */
    int rows();

    /** One more than the last used column. */
    int columns();

    /** What the cell holds; BLANK outside the used range. */
    Kind kind(int row, int column);

    /** The number of a NUMBER cell; 0 of any other, so ask {@link #kind} first. */
    double number(int row, int column);

    /** The text of a TEXT cell, the code of an ERROR cell, "TRUE" or "FALSE"; "" of any other. */
    String text(int row, int column);

    /** What the cell says as words: its text without blanks around it, or the digits of its number. */
    default String words(int row, int column) {
        return kind(row, column) == Kind.NUMBER ? Words.digits(number(row, column)) : Words.trim(text(row, column));
    }

    /** The first row of the merged cell that a cell of its first column lies in; the cell's own row if it is in none. */
    default int topOf(int row, int column) {
        return row;
    }

    /** How a NUMBER cell is shown. */
    Format format(int row, int column);

    /** What the format of a NUMBER cell shows behind the number, {@code m} of {@code 0.0" m"}; "" if nothing. */
    String shownUnit(int row, int column);

    /** Whether any number of a column is shown with something behind it. */
    boolean showsUnits(int column);

    /** Whether the cell holds a formula. */
    boolean isFormula(int row, int column);

    /** The Excel tables on this sheet. */
    List<TableRange> tables();

    /** Whether the sheet is hidden or very hidden. */
    boolean hidden();

    /** Whether a row is hidden: by hand, by a filter or in a closed outline. */
    boolean isHidden(int row);

    /** Whether a column is hidden: by hand or in a closed outline. */
    boolean isHiddenColumn(int column);

    /** Where a cell stands on the sheet. */
    default CellAddress address(int row, int column) {
        return new CellAddress(sheet(), row, column);
    }

    /** Whether units stand in a row whatever else may stand among them: a form has a column of its own for them. */
    default boolean saysUnits(int row) {
        return false;
    }

    /** The cells as they stand on the sheet. */
    default Grid onSheet() {
        return this;
    }

    /** What its headers stand over, as messages call it; on a form they are labels themselves. */
    default String header() {
        return isTurned() ? "label" : "column";
    }

    /** Whether the cells are turned: what is a row here is a column of the sheet. */
    default boolean isTurned() {
        return onSheet() != this;
    }
}
