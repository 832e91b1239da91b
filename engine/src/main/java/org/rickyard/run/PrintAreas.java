package org.rickyard.run;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.workbook.write.SheetSet;

/**
 * What of each sheet is printed. Without it an office program tries out page after page of every sheet that repeats rows
 * or columns: LibreOffice prints the demo in less than a third of the time with it.
 */
final class PrintAreas {
    private final List<SheetSet.Sheet> sheets = new ArrayList<>();

    /** A sheet that is about to be written. */
    void add(SheetSet.Sheet sheet) {
        sheets.add(sheet);
    }

    /** Stands for the last cell of a sheet until it is written. */
    static String awaited(String id) {
        return "{end of " + id + "}";
    }

    /** A text with the last cell of each sheet in its place, once all are written. */
    String filledIn(String text) {
        String filled = text;
        for (SheetSet.Sheet sheet : sheets) {
            filled =
                    filled.replace(awaited(sheet.id()), sheet.content().extent().lastCell());
        }
        return filled;
    }
}
