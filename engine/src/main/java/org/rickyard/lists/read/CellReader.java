package org.rickyard.lists.read;

import org.rickyard.lists.ListRows.State;

/** Reads cells of one type of column that hold a number or a text; blanks, errors and the like come to no such reader. */
@FunctionalInterface
interface CellReader {
    /** What the cell gives. One that cannot be used is a finding. */
    State read(CellRead cell);
}
