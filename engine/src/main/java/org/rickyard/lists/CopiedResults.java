package org.rickyard.lists;

/**
 * Results that a run has written, copied by hand: their labels read like headers of lists, but the cells below are
 * answers, and to take them for input would count everything twice.
 */
public final class CopiedResults {
    /** What stands two rows below the label of a column that links to the client's cells. */
    public static final String LINK = "your cell";

    private static final int ROWS_BELOW = 2;

    private CopiedResults() {}

    /** That such are met, and not read. */
    public static Finding told(CellAddress cell) {
        return Finding.note(cell, "These are results of a run, copied here; they are not read as a list.");
    }

    /** Whether a row holds the labels of results. */
    public static boolean areLabels(Grid grid, int row, int columns) {
        return isOfLinks(grid, row + ROWS_BELOW, columns);
    }

    /** Whether a row is of the head of results (labels, units, or what each column is) or the first row of answers. */
    public static boolean isHead(Grid grid, int row, int columns) {
        for (int other = Math.max(0, row - 1); other <= row + ROWS_BELOW; other++) {
            if (isOfLinks(grid, other, columns)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isOfLinks(Grid grid, int row, int columns) {
        int links = 0;
        for (int column = 0; row < grid.rows() && column < columns; column++) {
            if (grid.kind(row, column) == Grid.Kind.TEXT
                    && grid.text(row, column).equals(LINK)) {
                links++;
            }
        }
        return links >= 2;
    }
}
