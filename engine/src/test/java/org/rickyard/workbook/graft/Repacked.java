package org.rickyard.workbook.graft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** A workbook with one part exchanged, as another program would save it: same content, other packing. */
final class Repacked {
    private Repacked() {}

    static Path with(Path file, String part, String content, Path folder) throws IOException {
        Path out = folder.resolve("repacked.xlsx");
        try (ZipFile zip = new ZipFile(file.toFile());
                ZipOutputStream packed = new ZipOutputStream(Files.newOutputStream(out))) {
            for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
                ZipEntry entry = all.nextElement();
                ZipEntry copy = new ZipEntry(entry.getName());
                copy.setTimeLocal(entry.getTimeLocal());
                packed.putNextEntry(copy);
                boolean exchanged = entry.getName().equals(part);
                packed.write(
                        exchanged
                                ? content.getBytes(StandardCharsets.UTF_8)
                                : zip.getInputStream(entry).readAllBytes());
                packed.closeEntry();
            }
        }
        return out;
    }
}
