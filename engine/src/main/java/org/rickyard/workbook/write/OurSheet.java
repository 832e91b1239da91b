package org.rickyard.workbook.write;

import java.io.IOException;
import java.io.OutputStream;
import org.rickyard.workbook.graft.SheetContent;

/** A sheet of ours: it can be written, and it can say what it means. */
public abstract class OurSheet implements SheetContent {
    @Override
    public final void write(OutputStream out) throws IOException {
        write(new SheetXml(out));
    }

    /** Says what the sheet means, as the next run will read it from the file. */
    public final void describe(Meaning meaning) throws IOException {
        write(new SheetXml(meaning));
    }

    abstract void write(SheetXml sheet) throws IOException;
}
