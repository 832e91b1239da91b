package org.rickyard.workbook.read;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Workbook;
import org.rickyard.workbook.open.PartSource;
import org.rickyard.workbook.open.SheetRef;

/** A package held in memory, for tests. */
public final class Parts implements PartSource {
    public static final Optional<String> STYLES = Optional.of("xl/styles.xml");
    public static final Optional<String> STRINGS = Optional.of("xl/sharedStrings.xml");
    public static final SheetRef SHEET = sheet("Fields", 1);

    private final Map<String, byte[]> contents = new TreeMap<>();

    public static SheetRef sheet(String name, int number) {
        return new SheetRef(name, number - 1, number, "xl/worksheets/sheet" + number + ".xml", false, true);
    }

    Parts with(String part, String text) {
        return with(part, text.getBytes(StandardCharsets.UTF_8));
    }

    Parts with(String part, byte[] bytes) {
        contents.put(part.toLowerCase(Locale.ROOT), bytes);
        return this;
    }

    /** The first sheet with that content of its sheet data. */
    public Parts withRows(String rows) {
        return withRows(SHEET, rows);
    }

    public Parts withRows(SheetRef sheet, String rows) {
        return with(
                sheet.part(),
                "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>" + rows
                        + "</sheetData></worksheet>");
    }

    static Parts of(Workbook workbook) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        workbook.write(bytes);
        return unzip(bytes.toByteArray());
    }

    public static Parts unzip(byte[] packageBytes) throws IOException {
        Parts parts = new Parts();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(packageBytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.with(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    /** The cells of the first sheet. */
    SheetCells cells() throws IOException {
        return cells(false);
    }

    SheetCells cells(boolean date1904) throws IOException {
        return BookReader.read(this, java.util.List.of(SHEET), STYLES, STRINGS, date1904, sheet -> true)
                .get(0);
    }

    @Override
    public boolean exists(String part) {
        return contents.containsKey(part.toLowerCase(Locale.ROOT));
    }

    @Override
    public long size(String part) throws IOException {
        try (InputStream in = open(part)) {
            return in.readAllBytes().length;
        }
    }

    @Override
    public InputStream open(String part) throws IOException {
        byte[] bytes = contents.get(part.toLowerCase(Locale.ROOT));
        if (bytes == null) {
            throw new FileNotFoundException(part);
        }
        return new ByteArrayInputStream(bytes);
    }
}
