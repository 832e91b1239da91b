package org.rickyard.testing;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.audit.Result;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.plan.WorkPlan;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/** A client's workbook of invented holdings, and what a run makes of it. */
public final class SeasonBook {
    private final Map<String, List<Object[]>> sheets = new LinkedHashMap<>();
    private boolean from1904;

    /** Counts days from 1904, as some programs do. */
    public SeasonBook from1904() {
        from1904 = true;
        return this;
    }

    /**
     * A number in a format of its own.
     *
     * @param format as a spreadsheet program writes it, such as {@code 0%}
     */
    public record Shown(double number, String format) {}

    /** A sheet; the first row holds the headers. Cells are numbers, texts, {@link LocalDate}s, {@link Shown} or null. */
    public SeasonBook sheet(String name, Object[]... rows) {
        sheets.put(name, new ArrayList<>(Arrays.asList(rows)));
        return this;
    }

    /** One row. */
    public static Object[] row(Object... cells) {
        return cells;
    }

    /** Writes the book, runs it and writes the result. */
    public Worked run() {
        Path folder = ScratchFolders.create("farm-book");
        Path in = folder.resolve("in.xlsx");
        Path out = folder.resolve("out.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream stream = Files.newOutputStream(in)) {
            if (from1904) {
                book.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
            }
            CellStyle day = book.createCellStyle();
            day.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
            sheets.forEach((name, rows) -> fill(book.createSheet(name), rows, day));
            book.write(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        try (BookPackage open = BookPackage.open(in)) {
            Recalculation run = Recalculation.of(open, RunOptions.usual());
            List<Result> results = new ArrayList<>();
            run.sheets().results().forEach(results::add);
            run.write(out);
            Linted.after(in, out);
            return new Worked(
                    out, run.plan(), List.copyOf(results), run.sheets().findings());
        } catch (RefusedException e) {
            throw new AssertionError("refused: " + e.getMessage(), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void fill(Sheet sheet, List<Object[]> rows, CellStyle day) {
        for (int i = 0; i < rows.size(); i++) {
            Row row = sheet.createRow(i);
            Object[] cells = rows.get(i);
            for (int j = 0; j < cells.length; j++) {
                if (cells[j] instanceof Number number) {
                    row.createCell(j).setCellValue(number.doubleValue());
                } else if (cells[j] instanceof Shown shown) {
                    CellStyle style = sheet.getWorkbook().createCellStyle();
                    style.setDataFormat(sheet.getWorkbook().createDataFormat().getFormat(shown.format()));
                    row.createCell(j).setCellValue(shown.number());
                    row.getCell(j).setCellStyle(style);
                } else if (cells[j] instanceof LocalDate date) {
                    row.createCell(j).setCellValue(date);
                    row.getCell(j).setCellStyle(day);
                } else if (cells[j] != null) {
                    row.createCell(j).setCellValue(cells[j].toString());
                }
            }
        }
    }

    /**
     * A book that was run.
     *
     * @param file the book written
     * @param plan the plan
     * @param results all results
     * @param findings all findings
     */
    public record Worked(Path file, WorkPlan plan, List<Result> results, List<Finding> findings) {
        /** The one result of a formula about these names. */
        public Result result(String id, String... about) {
            List<Result> found = results.stream()
                    .filter(r -> r.id().equals(id))
                    .filter(r -> r.about().values().containsAll(List.of(about)))
                    .toList();
            if (found.size() != 1) {
                throw new AssertionError(found.size() + " results '" + id + "' about " + List.of(about));
            }
            return found.get(0);
        }

        /** Its number. */
        public double number(String id, String... about) {
            Result result = result(id, about);
            return result.number().orElseThrow(() -> new AssertionError(id + " is withheld: " + result.reason()));
        }

        /** Its word. */
        public String word(String id, String... about) {
            return result(id, about).word().orElse("");
        }

        /** The messages of all findings. */
        public List<String> messages() {
            return findings.stream().map(Finding::message).toList();
        }

        /** What differs between the values stored and those an independent evaluator works out. */
        public List<String> differences() {
            Map<CellAddress, Object> stored = StoredValues.of(file);
            return Parity.differences(stored, PoiRecalculation.of(file));
        }
    }
}
