package org.rickyard.workbook.write;

import java.util.List;
import org.rickyard.lists.CellAddress;

/**
 * How far a sheet reaches, with the texts that run on over the columns to their right. An office program that is not
 * told tries it out page by page, and a workbook of many sheets keeps it busy for minutes.
 */
public final class PrintedExtent {
    /** The width of a column of which nothing is said, in characters, rounded down. */
    private static final int USUAL_WIDTH = 8;

    private final int[] starts;
    private final int room;
    private int lastRow;
    private int lastColumn;
    /** Where the text that runs on farthest ends, in characters from the left edge. */
    private int reach;

    /**
     * A sheet that reaches as far as its columns.
     *
     * @param room how far in characters a text may run on beyond them
     */
    PrintedExtent(List<Integer> widths, int room) {
        this.room = room;
        starts = new int[widths.size() + 1];
        for (int i = 0; i < widths.size(); i++) {
            starts[i + 1] = starts[i] + widths.get(i);
        }
        lastColumn = Math.max(0, widths.size() - 1);
    }

    void row(int row) {
        lastRow = row;
    }

    void cell(int column) {
        lastColumn = Math.max(lastColumn, column);
    }

    /** A text that is not broken into lines. */
    void text(int column, int length) {
        cell(column);
        reach = Math.max(reach, Math.min(room, start(column) + length));
    }

    private int start(int column) {
        int known = Math.min(column, starts.length - 1);
        return starts[known] + (column - known) * USUAL_WIDTH;
    }

    /** The lowest cell on the right, as a formula names it for good: {@code $K$120}. */
    public String lastCell() {
        int column = lastColumn;
        while (start(column + 1) < reach) {
            column++;
        }
        return "$" + CellAddress.letters(column) + "$" + (lastRow + 1);
    }
}
