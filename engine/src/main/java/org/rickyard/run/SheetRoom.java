package org.rickyard.run;

import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.RefusedException.Reason;

/** Whether every result table has room on its sheet. A file with more rows opens in no spreadsheet program. */
final class SheetRoom {
    private static final int MOST_ROWS = CellAddress.ROWS - SheetPlaces.FIRST_ROW;

    private SheetRoom() {}

    static void check(WorkPlan plan, String workbook) throws RefusedException {
        for (ResultTable table : plan.tables()) {
            check(table.spec().sheet(), table.rows(), workbook);
        }
    }

    static void check(String sheet, int rows, String workbook) throws RefusedException {
        if (rows > MOST_ROWS) {
            throw new RefusedException(
                    Reason.TOO_MANY_ROWS, workbook, "'" + sheet + "' would need " + rows + ", and has " + MOST_ROWS);
        }
    }
}
