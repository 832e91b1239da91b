package org.rickyard.workbook.write;

import java.io.IOException;
import java.io.OutputStream;
import org.rickyard.workbook.graft.SheetContent;

/** A sheet of ours: it can be written, and it can say what it means. */
public abstract class OurSheet implements SheetContent {
    private Meaning watcher;
    private PrintedExtent extent;

    @Override
    public final void write(OutputStream out) throws IOException {
        SheetXml sheet = new SheetXml(out, watcher);
        write(sheet);
        extent = sheet.extent();
    }

    /** How far it reaches on paper, once it is written. */
    public final PrintedExtent extent() {
        return extent;
    }

    /** Has what the sheet means told to a watcher while it is written. */
    public final void watchedBy(Meaning meaning) {
        watcher = meaning;
    }

    /** Says what the sheet means, as the next run will read it from the file. */
    public final void describe(Meaning meaning) throws IOException {
        write(new SheetXml(meaning));
    }

    abstract void write(SheetXml sheet) throws IOException;
}
