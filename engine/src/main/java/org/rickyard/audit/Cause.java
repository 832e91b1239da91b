package org.rickyard.audit;

import java.util.Optional;
import org.rickyard.lists.CellAddress;

/**
 * Why a result is withheld.
 *
 * @param what in words, with the value found where there is one
 * @param cell the cell to look at
 * @param isMissing whether nothing was given, as opposed to something that cannot be used
 */
public record Cause(String what, Optional<CellAddress> cell, boolean isMissing) {
    /** Something given that cannot be used, or that leaves the result without a meaning. */
    public Cause(String what, Optional<CellAddress> cell) {
        this(what, cell, false);
    }

    @Override
    public String toString() {
        return cell.map(address -> what + " (" + address + ")").orElse(what);
    }
}
