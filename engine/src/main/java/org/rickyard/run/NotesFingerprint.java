package org.rickyard.run;

import org.rickyard.lists.Grid;
import org.rickyard.workbook.meaning.MeaningFingerprint;

/** A fingerprint of what the notes of a sheet say, and where. White space does not count: programs lay lines out anew. */
final class NotesFingerprint {
    private final MeaningFingerprint notes = new MeaningFingerprint();

    void add(int row, int column, String text) {
        String plain = text.replaceAll("\\s+", "");
        // Even a note that says nothing is one.
        notes.cell(row, column, Grid.Kind.TEXT, 0, "note:" + plain, Grid.Format.GENERAL, null);
    }

    String hex() {
        return notes.hex();
    }
}
