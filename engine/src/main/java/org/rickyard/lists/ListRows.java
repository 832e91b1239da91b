package org.rickyard.lists;

import java.util.Optional;
import org.rickyard.quantity.Unit;

/**
 * All rows of one kind of list in the workbook, in sheet and row order, however many places they stand in. Numbers are
 * given in the unit the client wrote them in; nothing is converted here, so that a link can show its conversion.
 */
public interface ListRows {
    /** Whether a cell gave a usable value, and if not, why. */
    enum State {
        /** The workbook has no such column for this row. */
        NO_COLUMN,
        /** The cell is blank or holds the empty text. */
        BLANK,
        /** A usable value. */
        GIVEN,
        /** A usable number that had to be read out of text, by a rule: {@code 45°} as a batter, say. */
        READ_FROM_TEXT,
        /** Text or TRUE/FALSE where a number or day is wanted, or a word that is not one of the choices. */
        NOT_READABLE,
        /** A number outside the possible range. */
        IMPOSSIBLE,
        /** An error such as #N/A. */
        ERROR,
        /** A formula for which the file stores no value. */
        UNCOMPUTED,
        /**
         * The column's meaning or unit could be read in two ways, or a number is shown as something else or cannot be
         * what is wanted; a finding asks which, or says so.
         */
        ASKED
    }

    /** Which list. */
    ListSpec spec();

    /** How many rows. */
    int size();

    /** Whether any place where the list was found has a header for the column. */
    boolean has(ColumnSpec column);

    /** One of the columns, to be asked for many rows; null if there is no such column anywhere. */
    ListColumn column(ColumnSpec column);

    /** The state of a cell. */
    State state(ColumnSpec column, int row);

    /** Whether the client put anything into a cell, usable or not. */
    default boolean isFilled(ColumnSpec column, int row) {
        State state = state(column, row);
        return state != State.NO_COLUMN && state != State.BLANK;
    }

    /** Whether the cell gives a value that may be used: as it stands, or read out of its text. */
    default boolean gives(ColumnSpec column, int row) {
        State state = state(column, row);
        return state == State.GIVEN || state == State.READ_FROM_TEXT;
    }

    /** The number in the client's unit if GIVEN or READ_FROM_TEXT. Per cent formats are already times 100. */
    double number(ColumnSpec column, int row);

    /** The text, trimmed, as the client wrote it; the canonical word for a choice; "" if blank. */
    String text(ColumnSpec column, int row);

    /**
     * The text as the grid joins the cell to another: outer spaces kept, words as typed, a number in up to fifteen
     * digits. What a cell that is linked to it shows.
     */
    default String typed(ColumnSpec column, int row) {
        return text(column, row);
    }

    /**
     * The unit the number is in; empty for text columns or where no unit is known. Where a column may hold several
     * quantities, its dimension tells which; for a dose it is in the product's own unit per area or per spray.
     */
    Optional<Unit> unit(ColumnSpec column, int row);

    /**
     * What a product is measured in, where the unit of a dose, pack or stock says so: "L", "kg" or "tablet"; empty for
     * all other columns.
     */
    default Optional<String> productUnit(ColumnSpec column, int row) {
        return Optional.empty();
    }

    /**
     * What the raw stored cell number must be multiplied by to be in {@link #unit}: 100 for a cell shown as per cent,
     * otherwise 1.
     */
    int cellScale(ColumnSpec column, int row);

    /**
     * Whether the row of the sheet names all products of a tank mix beside each other, so that another row is another
     * mix.
     */
    default boolean holdsWholeMix(int row) {
        return false;
    }

    /** Where the cell is; empty if there is no such column. */
    Optional<CellAddress> address(ColumnSpec column, int row);
}
