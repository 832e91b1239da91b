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

    /** Whether a row holds the labels of results. */
    static boolean areLabels(Grid grid, int row, int columns) {
        int links = 0;
        if (row + ROWS_BELOW < grid.rows()) {
            for (int column = 0; column < columns; column++) {
                if (grid.kind(row + ROWS_BELOW, column) == Grid.Kind.TEXT
                        && grid.text(row + ROWS_BELOW, column).equals(LINK)) {
                    links++;
                }
            }
        }
        return links >= 2;
    }
}
