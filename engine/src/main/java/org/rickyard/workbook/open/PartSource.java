package org.rickyard.workbook.open;

import java.io.IOException;
import java.io.InputStream;

/** The parts of an opened package, by part name without leading slash ({@code xl/worksheets/sheet1.xml}). */
public interface PartSource {
    /** Whether there is such a part (part names are compared without regard to case). */
    boolean exists(String part);

    /**
     * Opens a part for reading.
     *
     * @throws java.io.FileNotFoundException if there is no such part
     */
    InputStream open(String part) throws IOException;

    /**
     * How large a part is, in bytes unpacked, by what the package says of itself.
     *
     * @throws java.io.FileNotFoundException if there is no such part
     */
    long size(String part) throws IOException;
}
