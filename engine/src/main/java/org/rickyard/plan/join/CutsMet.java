package org.rickyard.plan.join;

import org.rickyard.lists.CellAddress;

/**
 * Which cut of the cut list each row of a table meets on its field.
 *
 * @param rows the row of the cut list; -1 where there is none, or the job does not say which
 * @param perhaps where a Cut that cannot be read leaves open which cut it is, the rows of the cut list it may be; else null
 * @param unread the cell that leaves it open
 */
public record CutsMet(int[] rows, int[][] perhaps, CellAddress[] unread) {
    /** Cuts of which each is known. */
    public static CutsMet told(int[] rows) {
        return new CutsMet(rows, new int[rows.length][], new CellAddress[rows.length]);
    }
}
