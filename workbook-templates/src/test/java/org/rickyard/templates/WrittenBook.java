package org.rickyard.templates;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.testing.Linted;

/** Templates as they come out, for tests to look at. */
final class WrittenBook {
    private WrittenBook() {}

    /** The file. */
    static byte[] bytes(TemplateKind kind) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            kind.write(out);
            return Linted.after(null, out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file, opened anew. */
    static XSSFWorkbook open(TemplateKind kind) {
        return open(bytes(kind));
    }

    /** A file, opened. */
    static XSSFWorkbook open(byte[] file) {
        try {
            return new XSSFWorkbook(new ByteArrayInputStream(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Part names to their inflated bytes, in the order of the file. */
    static Map<String, byte[]> parts(byte[] file) {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts;
    }

    /** What stands in a row, up to its last filled cell; dates and numbers as shown. */
    static List<String> texts(XSSFSheet sheet, int row) {
        List<String> texts = new ArrayList<>();
        Row line = sheet.getRow(row);
        for (int i = 0; line != null && i < line.getLastCellNum(); i++) {
            texts.add(new DataFormatter(Locale.ROOT).formatCellValue(line.getCell(i)));
        }
        while (!texts.isEmpty() && texts.get(texts.size() - 1).isEmpty()) {
            texts.remove(texts.size() - 1);
        }
        return texts;
    }
}
