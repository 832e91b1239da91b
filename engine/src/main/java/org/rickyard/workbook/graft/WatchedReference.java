package org.rickyard.workbook.graft;

import java.util.List;

/**
 * A reference of the client's to cells on a sheet of ours, with what stood there when it was first seen.
 *
 * @param by what refers: a cell, a defined name, a chart, a pivot table, as read aloud
 * @param sheet the id of the sheet of ours
 * @param firstRow zero-based, as the other three
 * @param rows what stood in its rows
 * @param columns what stood in its columns
 */
public record WatchedReference(
        String by,
        String sheet,
        int firstRow,
        int firstColumn,
        int lastRow,
        int lastColumn,
        Stood rows,
        Stood columns) {

    /**
     * What stood in rows or in columns of an area, from first to last.
     *
     * @param labels by what they are told apart
     * @param items of each, the words under these labels; of a long area only the first and the last
     * @param all whether the area held all there were
     */
    public record Stood(List<String> labels, List<List<String>> items, boolean all) {
        public Stood {
            labels = List.copyOf(labels);
            items = List.copyOf(items);
        }
    }

    /** Whether two refer to the same cells. */
    public boolean sameArea(WatchedReference other) {
        return sheet.equals(other.sheet)
                && firstRow == other.firstRow
                && firstColumn == other.firstColumn
                && lastRow == other.lastRow
                && lastColumn == other.lastColumn;
    }
}
