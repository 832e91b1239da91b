package org.rickyard.run;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.Relationship;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.SheetNote;

/** What a client may have put on a sheet of ours beside its cells: a chart, a picture, a pivot table, a note. */
final class HandMarks {
    /** What a sheet of ours leads to, or what programs add to it of themselves. */
    private static final Set<String> EXPECTED = Set.of("comments", "vmlDrawing", "printerSettings");

    private HandMarks() {}

    /**
     * Whether there is anything of the kind, which a new writing of the sheet would lose.
     *
     * @param recorded the fingerprint of the notes that were written on it; where it is not told, notes of ours are known
     *     by standing on the labels
     */
    static boolean on(BookPackage book, SheetRef sheet, Optional<String> recorded)
            throws IOException, RefusedException {
        List<SheetNote> notes = new ArrayList<>();
        for (Relationship link : book.relationships(sheet.part())) {
            if (EXPECTED.stream().noneMatch(link::is)) {
                return true;
            }
            if (link.is("comments") && book.exists(link.target())) {
                notes.addAll(SheetNote.read(book, sheet.name(), link.target()));
            }
        }
        if (notes.isEmpty()) {
            // Some programs drop all notes, which nobody has then written.
            return false;
        }
        NotesFingerprint present = new NotesFingerprint();
        notes.forEach(note -> present.add(note.cell().row(), note.cell().column(), note.text()));
        return recorded.map(written -> !written.equals(present.hex()))
                .orElseGet(() -> notes.stream().anyMatch(note -> note.cell().row() != SheetPlaces.LABEL_ROW));
    }
}
