package org.rickyard.workbook.write;

import java.util.Set;
import org.rickyard.lists.CopiedResults;
import org.rickyard.lists.Grid;
import org.rickyard.plan.table.SheetPlaces;

/**
 * How a sheet that a run has written is known by what it says, where a program has dropped the mark it carried. The master
 * check alone does not tell: a client may show it above a list or on a page of his own.
 */
public final class WrittenPage {
    /** Titles that say what stands under them, as no sheet of a client's does. */
    private static final Set<String> TITLES =
            Set.of(BasisSheet.TITLE, TrailSheet.TITLE, AsReadSheet.TITLE, AboutSheet.TITLE);

    /** Titles of one word or two, under which the master check stands. */
    private static final Set<String> PLAIN_TITLES = Set.of(
            SheetSet.NAMES.get(SheetSet.SUMMARY),
            SheetSet.NAMES.get(SheetSet.SPRAY_CARDS),
            SheetSet.NAMES.get(SheetSet.CLAMP_CARDS),
            SheetSet.NAMES.get(SheetSet.CHECKS));

    private WrittenPage() {}

    /** Whether a sheet has a title of ours, or the master check right of one and the head of results below. */
    public static boolean isOn(Grid grid) {
        if (grid.rows() == 0 || grid.columns() == 0 || grid.kind(0, 0) != Grid.Kind.TEXT) {
            return false;
        }
        String title = grid.text(0, 0);
        return TITLES.contains(title)
                || PLAIN_TITLES.contains(title) && isMaster(grid, 1, 0)
                || isMasterBesideTitle(grid) && isHeadOfResults(grid);
    }

    private static boolean isMasterBesideTitle(Grid grid) {
        for (int column = 1; column < grid.columns(); column++) {
            if (isMaster(grid, 0, column)) {
                return true;
            }
        }
        return false;
    }

    /** Whether it stands in a cell, or a formula of which the file does not say what it came to, as of scripts. */
    private static boolean isMaster(Grid grid, int row, int column) {
        if (row >= grid.rows()) {
            return false;
        }
        Grid.Kind kind = grid.kind(row, column);
        return kind == Grid.Kind.UNCOMPUTED
                || kind == Grid.Kind.TEXT && ChecksSheet.MASTERS.contains(grid.text(row, column));
    }

    /** Whether some column is said to link to the client's cells, where each column says what it is. */
    private static boolean isHeadOfResults(Grid grid) {
        int row = SheetPlaces.WORDS_ROW;
        for (int column = 0; row < grid.rows() && column < grid.columns(); column++) {
            if (grid.kind(row, column) == Grid.Kind.TEXT
                    && grid.text(row, column).equals(CopiedResults.LINK)) {
                return true;
            }
        }
        return false;
    }
}
