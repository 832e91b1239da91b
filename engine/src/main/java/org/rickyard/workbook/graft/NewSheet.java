package org.rickyard.workbook.graft;

import java.util.List;

/**
 * A sheet to be written.
 *
 * @param name as the tab shows it; see {@link Graft#freeName}
 * @param content the whole worksheet part. Where there are notes it must hold {@code <legacyDrawing r:id="rId1"/>} in
 *     its place, with the id {@link #NOTES_RELATIONSHIP}; without notes it must not. It must not select its tab: a
 *     sheet of the client's is selected already, and what is typed goes into all selected sheets.
 * @param notes the notes on its cells
 * @param names the defined names that belong to it
 */
public record NewSheet(String name, SheetContent content, List<Note> notes, List<LocalName> names) {
    /** The relationship id by which a sheet with notes must refer to their drawing. */
    public static final String NOTES_RELATIONSHIP = "rId1";

    public NewSheet {
        notes = List.copyOf(notes);
        names = List.copyOf(names);
    }
}
