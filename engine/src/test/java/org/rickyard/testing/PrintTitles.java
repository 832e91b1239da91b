package org.rickyard.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * The rows and columns that are printed on every page. LibreOffice lays out the pages anew for each sheet that has them
 * as it opens a workbook: of a farm of sixty sheets that is seven eighths of its time. No value depends on them.
 */
final class PrintTitles {
    private static final Pattern NAME =
            Pattern.compile("<definedName name=\"_xlnm.Print_Titles\"[^>]*>[^<]*</definedName>");
    private static final Pattern EMPTY = Pattern.compile("<definedNames>\\s*</definedNames>");

    private PrintTitles() {}

    /** Copies a workbook but for its print titles. */
    static void without(Path xlsx, Path copy) throws IOException {
        try (ZipFile in = new ZipFile(xlsx.toFile());
                OutputStream written = Files.newOutputStream(copy);
                ZipOutputStream out = new ZipOutputStream(written)) {
            for (ZipEntry entry : Collections.list(in.entries())) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                try (InputStream part = in.getInputStream(entry)) {
                    if (entry.getName().equals("xl/workbook.xml")) {
                        String text = new String(part.readAllBytes(), StandardCharsets.UTF_8);
                        text = NAME.matcher(text).replaceAll("");
                        out.write(EMPTY.matcher(text).replaceAll("").getBytes(StandardCharsets.UTF_8));
                    } else {
                        part.transferTo(out);
                    }
                }
                out.closeEntry();
            }
        }
    }
}
