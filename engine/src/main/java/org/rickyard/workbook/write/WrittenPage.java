package org.rickyard.workbook.write;

import java.util.Set;
import org.rickyard.lists.Grid;

/** How a sheet that a run has written is known by what it says, where a program has dropped the mark it carried. */
public final class WrittenPage {
    private static final Set<String> TITLES =
            Set.of(BasisSheet.TITLE, TrailSheet.TITLE, AsReadSheet.TITLE, AboutSheet.TITLE);

    /** The master check stands under the title, or right of it. */
    private static final int ROWS = 2;

    private WrittenPage() {}

    /** Whether a sheet has a title of ours, or one of any kind with the master check beside it or below. */
    public static boolean isOn(Grid grid) {
        if (grid.rows() == 0 || grid.columns() == 0 || grid.kind(0, 0) != Grid.Kind.TEXT) {
            return false;
        }
        if (TITLES.contains(grid.text(0, 0))) {
            return true;
        }
        for (int row = 0; row < Math.min(ROWS, grid.rows()); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                if (grid.kind(row, column) == Grid.Kind.TEXT && ChecksSheet.MASTERS.contains(grid.text(row, column))) {
                    return true;
                }
            }
        }
        return false;
    }
}
