package org.rickyard.audit;

import java.util.Optional;
import org.rickyard.lists.CellAddress;

/**
 * Why a result is withheld.
 *
 * @param what in words, with the value found where there is one
 * @param cell the cell to look at
 */
public record Cause(String what, Optional<CellAddress> cell) {
    @Override
    public String toString() {
        return cell.map(address -> what + " (" + address + ")").orElse(what);
    }
}
