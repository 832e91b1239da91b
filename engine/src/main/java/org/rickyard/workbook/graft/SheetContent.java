package org.rickyard.workbook.graft;

import java.io.IOException;
import java.io.OutputStream;

/**
 * What a part consists of. It is asked once per graft and must give the same bytes each time it is asked.
 *
 * <p>A later kind of content that packs its own blocks may extend this; the zip is assembled from packed data anyway.
 */
@FunctionalInterface
public interface SheetContent {
    /** Writes the whole part, XML declaration included. The stream is buffered; it need not be closed. */
    void write(OutputStream out) throws IOException;
}
