package org.rickyard.run;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.audit.Result;
import org.rickyard.lists.Finding;
import org.rickyard.testing.Linted;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/** A client's workbook put together sheet by sheet, and what the engine makes of it. */
final class FarmBook {
    /** What one run gave. */
    record Run(List<Result> results, List<Finding> findings, List<String> sheets, String masterCheck, Path written) {
        /** The one result of an id whose row is about all these words. */
        Result result(String id, String... about) {
            List<Result> found = results(id, about);
            if (found.size() != 1) {
                throw new AssertionError(found.size() + " results '" + id + "' about " + List.of(about));
            }
            return found.get(0);
        }

        List<Result> results(String id, String... about) {
            return results.stream()
                    .filter(result -> result.id().equals(id))
                    .filter(result -> result.about().values().containsAll(List.of(about)))
                    .toList();
        }

        double number(String id, String... about) {
            Result result = result(id, about);
            return result.number().orElseThrow(() -> new AssertionError(id + " is withheld: " + result.reason()));
        }

        String word(String id, String... about) {
            return result(id, about).word().orElse("");
        }

        /** The messages with the cell they are about in front. */
        List<String> at(Finding.Severity severity) {
            return findings.stream()
                    .filter(finding -> finding.severity() == severity)
                    .map(finding -> finding.cell().map(cell -> cell + ": ").orElse("") + finding.message())
                    .toList();
        }

        List<String> messages(Finding.Severity severity) {
            return findings.stream()
                    .filter(finding -> finding.severity() == severity)
                    .map(Finding::message)
                    .toList();
        }
    }

    private final Map<String, List<Object[]>> sheets = new LinkedHashMap<>();

    /** A sheet with its header row. */
    FarmBook sheet(String name, Object... headers) {
        List<Object[]> rows = new ArrayList<>();
        rows.add(headers);
        sheets.put(name, rows);
        return this;
    }

    /** A row of a sheet: numbers, texts, and nulls for blanks. */
    FarmBook row(String sheet, Object... cells) {
        sheets.get(sheet).add(cells);
        return this;
    }

    /** Puts another value into a cell; row and column are counted from 0, the header row being 0. */
    FarmBook with(String sheet, int row, int column, Object value) {
        Object[] cells = sheets.get(sheet).get(row).clone();
        cells[column] = value;
        sheets.get(sheet).set(row, cells);
        return this;
    }

    /** Reads, reckons and writes. */
    Run run(Path folder) {
        try {
            Path in = folder.resolve("in.xlsx");
            Path out = folder.resolve("out.xlsx");
            Files.deleteIfExists(out);
            write(in);
            try (BookPackage book = BookPackage.open(in)) {
                Recalculation recalculation = Recalculation.of(book, RunOptions.usual());
                recalculation.write(out);
                Linted.after(in, out);
                List<Result> results = new ArrayList<>();
                recalculation.sheets().results().forEach(results::add);
                return new Run(
                        results,
                        recalculation.sheets().findings(),
                        recalculation.sheetNames(),
                        recalculation.sheets().masterCheck(),
                        out);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (RefusedException e) {
            throw new AssertionError(e);
        }
    }

    private void write(Path file) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            sheets.forEach((name, rows) -> {
                Sheet sheet = workbook.createSheet(name);
                for (int i = 0; i < rows.size(); i++) {
                    Row row = sheet.createRow(i);
                    Object[] cells = rows.get(i);
                    for (int j = 0; j < cells.length; j++) {
                        if (cells[j] instanceof Number number) {
                            row.createCell(j).setCellValue(number.doubleValue());
                        } else if (cells[j] != null) {
                            row.createCell(j).setCellValue(cells[j].toString());
                        }
                    }
                }
            });
            workbook.write(out);
        }
    }
}
