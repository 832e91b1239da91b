package org.rickyard.run;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.lists.CellAddress;

/**
 * The cells of result tables that a cell elsewhere shows again, on Trail or Summary, read off its formula. A copy of a
 * difference of large numbers is as blurred as the difference itself. The file is opened only when it is asked for.
 */
final class Copies {
    private static final Pattern REFERENCE =
            Pattern.compile("(?:'((?:[^']|'')+)'|([\\p{L}\\d_.]+))!\\$?([A-Z]{1,3})\\$?(\\d+)");

    private final Path file;
    private XSSFWorkbook workbook;

    Copies(Path file) {
        this.file = file;
    }

    List<CellAddress> of(CellAddress copy) {
        XSSFCell cell = workbook().getSheet(copy.sheet()).getRow(copy.row()).getCell(copy.column());
        List<CellAddress> cells = new ArrayList<>();
        Matcher references = REFERENCE.matcher(cell.getCellFormula());
        while (references.find()) {
            String sheet = references.group(1) == null
                    ? references.group(2)
                    : references.group(1).replace("''", "'");
            cells.add(new CellAddress(
                    sheet,
                    Integer.parseInt(references.group(4)) - 1,
                    CellReference.convertColStringToIndex(references.group(3))));
        }
        return cells;
    }

    private XSSFWorkbook workbook() {
        if (workbook == null) {
            try (InputStream in = Files.newInputStream(file)) {
                workbook = new XSSFWorkbook(in);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return workbook;
    }
}
