package org.rickyard.run;

import java.io.IOException;
import java.util.Set;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.SheetPlaces;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.Relationship;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.NotePlaces;

/** What a client may have put on a sheet of ours beside its cells: a chart, a picture, a pivot table, a note. */
final class HandMarks {
    /** What a sheet of ours leads to, or what programs add to it of themselves. */
    private static final Set<String> EXPECTED = Set.of("comments", "vmlDrawing", "printerSettings");

    private HandMarks() {}

    /** Whether there is anything of the kind, which a new writing of the sheet would lose. */
    static boolean on(BookPackage book, SheetRef sheet) throws IOException, RefusedException {
        for (Relationship link : book.relationships(sheet.part())) {
            if (EXPECTED.stream().noneMatch(link::is)) {
                return true;
            }
            if (link.is("comments") && book.exists(link.target())) {
                for (CellAddress note : NotePlaces.read(book, sheet.name(), link.target())) {
                    // Ours stand on the labels.
                    if (note.row() != SheetPlaces.LABEL_ROW) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
