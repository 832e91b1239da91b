package org.rickyard.templates;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Date;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes a workbook so that the same content is the same file: parts in a fixed order, no day of making, entry times
 * that know no time zone. It also writes down the names of the cell styles, for which POI has no call.
 */
final class FixedBook {
    /** The day that stands in every file in place of the day of making. */
    private static final Optional<Date> CREATED = Optional.of(Date.from(Instant.parse("2026-01-01T00:00:00Z")));

    /** Not the earliest a zip can hold, midnight of 1980: beside that one the JDK writes a time in the local zone. */
    private static final LocalDateTime ENTRY_TIME = LocalDateTime.of(2026, 1, 1, 0, 0);

    private static final String CONTENT_TYPES = "[Content_Types].xml";

    private FixedBook() {}

    /** Writes the workbook and closes it; the stream is flushed and stays open. */
    static void write(XSSFWorkbook workbook, Looks looks, String title, OutputStream out) throws IOException {
        try (workbook) {
            describe(workbook.getProperties(), title);
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            ByteArrayOutputStream raw = new ByteArrayOutputStream();
            workbook.write(raw);
            Map<String, byte[]> parts = parts(raw.toByteArray());
            parts.computeIfPresent("xl/styles.xml", (name, part) -> withStyleNames(part, looks.namesElement()));
            zip(parts, out);
        }
    }

    private static void describe(POIXMLProperties properties, String title) {
        POIXMLProperties.CoreProperties core = properties.getCoreProperties();
        core.setCreator("Rickyard");
        core.setLastModifiedByUser("Rickyard");
        core.setTitle(title);
        core.setCreated(CREATED);
        core.setModified(CREATED);
        properties.getExtendedProperties().getUnderlyingProperties().setApplication("Rickyard");
    }

    private static Map<String, byte[]> parts(byte[] file) throws IOException {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    private static byte[] withStyleNames(byte[] styles, String names) {
        String text = new String(styles, StandardCharsets.UTF_8);
        String end = "</cellXfs>";
        int at = text.indexOf(end);
        if (at < 0 || text.contains("<cellStyles")) {
            throw new IllegalStateException("the style part is not as this class knows it");
        }
        at += end.length();
        return (text.substring(0, at) + names + text.substring(at)).getBytes(StandardCharsets.UTF_8);
    }

    private static void zip(Map<String, byte[]> parts, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        add(zip, CONTENT_TYPES, parts.remove(CONTENT_TYPES));
        for (Map.Entry<String, byte[]> part : parts.entrySet()) {
            add(zip, part.getKey(), part.getValue());
        }
        zip.finish();
        out.flush();
    }

    private static void add(ZipOutputStream zip, String name, byte[] part) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(ENTRY_TIME);
        zip.putNextEntry(entry);
        zip.write(part);
        zip.closeEntry();
    }
}
