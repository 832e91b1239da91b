package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.Grid;

/** What stands under a header, as far down as it takes to see what a column holds. */
final class TextsBelow {
    private static final int ROWS = 200;

    private TextsBelow() {}

    /** One more than the last row that is looked at. */
    static int end(Grid grid, int headerRow) {
        return Math.min(grid.rows(), headerRow + 1 + ROWS);
    }

    /** The texts of a column, as they stand in its cells. */
    static List<String> of(Grid grid, int headerRow, int column) {
        List<String> texts = new ArrayList<>();
        for (int row = headerRow + 1; row < end(grid, headerRow); row++) {
            if (grid.kind(row, column) == Grid.Kind.TEXT) {
                texts.add(grid.text(row, column));
            }
        }
        return texts;
    }
}
