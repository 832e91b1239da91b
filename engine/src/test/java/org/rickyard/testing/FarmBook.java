package org.rickyard.testing;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A small workbook of an invented farm, sheet by sheet; a null leaves a cell blank. */
public final class FarmBook {
    private final Map<String, List<Object[]>> sheets = new LinkedHashMap<>();

    private FarmBook() {}

    /** A book without sheets. */
    public static FarmBook empty() {
        return new FarmBook();
    }

    /**
     * Fields and machines, a mowing job, a spraying job and a clamp; the rake has no speed, so that what depends on it
     * is withheld.
     */
    public static FarmBook usual() {
        return empty().sheet(
                        "Fields",
                        row("Holding", "Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "Clamp"),
                        row("Moor End", "Long Acre", "grass", 4.2, 25, "as carted fresh", "Big clamp"),
                        row("Moor End", "Home Field", "grass", 6.1, 22, "as carted fresh", "Big clamp"),
                        row("Moor End", "Top", "wheat", 17.3, null, null, null))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (ft)", "Speed (km/h)", "Field efficiency %", "Tank (L)"),
                        row("Mower 3 m", "mower", 10, 10, 80, null),
                        row("Rake", "rake", 21, null, null, null),
                        row("Sprayer", "sprayer", 80, 12, null, 1500))
                .sheet("Products", row("Product", "Unit", "Highest dose (L/ha)"), row("Herbicide A", "L", 2.0))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"),
                        row("Cut", "grass", "mow", "Mower 3 m; Rake", null, null, null),
                        row("T1", "Top", "spray", "Sprayer", "Herbicide A", 1.25, 200))
                .sheet(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "DM target %"),
                        row("Big clamp", "walled", 40, 12, 3, 28));
    }

    /** The cells of a row. */
    public static Object[] row(Object... cells) {
        return cells;
    }

    /** Adds a sheet, or puts other rows on one that is there. */
    public FarmBook sheet(String name, Object[]... rows) {
        sheets.put(name, new ArrayList<>(List.of(rows)));
        return this;
    }

    /** Puts another value into a cell; row and column are counted from 0. */
    public FarmBook with(String sheet, int row, int column, Object value) {
        Object[] cells = sheets.get(sheet).get(row).clone();
        cells[column] = value;
        sheets.get(sheet).set(row, cells);
        return this;
    }

    /** Writes the file. */
    public Path write(Path file) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            sheets.forEach((name, rows) -> fill(book.createSheet(name), rows));
            book.write(out);
        }
        return file;
    }

    private static void fill(Sheet sheet, List<Object[]> rows) {
        for (int i = 0; i < rows.size(); i++) {
            Row row = sheet.createRow(i);
            for (int j = 0; j < rows.get(i).length; j++) {
                Object value = rows.get(i)[j];
                if (value != null) {
                    set(row.createCell(j), value);
                }
            }
        }
    }

    private static void set(Cell cell, Object value) {
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else {
            cell.setCellValue(value.toString());
        }
    }
}
