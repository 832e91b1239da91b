package org.rickyard.lists;

import java.util.Optional;

/**
 * Something noticed about the workbook or a result that its reader should know.
 *
 * @param severity how much it matters
 * @param cell where, if it belongs to one cell
 * @param message what was found, what was expected and what to do, in one or two sentences
 */
public record Finding(Severity severity, Optional<CellAddress> cell, String message) {
    /** How much a finding matters. */
    public enum Severity {
        /** Results are withheld or the plan must not be carried out so. */
        STOP,
        /** Computed, but think before acting on it. */
        CAUTION,
        /** Good to know. */
        NOTE
    }

    /** A stop at a cell. */
    public static Finding stop(CellAddress cell, String message) {
        return new Finding(Severity.STOP, Optional.ofNullable(cell), message);
    }

    /** A caution at a cell. */
    public static Finding caution(CellAddress cell, String message) {
        return new Finding(Severity.CAUTION, Optional.ofNullable(cell), message);
    }

    /** A note at a cell. */
    public static Finding note(CellAddress cell, String message) {
        return new Finding(Severity.NOTE, Optional.ofNullable(cell), message);
    }
}
