package org.rickyard.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.CellAddress;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;

/** What a client does to a workbook of ours, and what a further run makes of it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class AfterAFirstRun {
    @TempDir
    Path folder;

    /** The farm as its client typed it. */
    Path given;

    /** As the first run left it. */
    Path first;

    @BeforeAll
    void theFirstRun(@TempDir Path shared) {
        given = TestBooks.smallFarm(shared.resolve("in.xlsx"));
        first = Runs.run(given, shared.resolve("out.xlsx")).file();
    }

    /** The farm as the first run left it, in this test's folder beside what that run was given. */
    Path out() {
        try {
            Files.copy(given, folder.resolve("in.xlsx"));
            return Files.copy(first, folder.resolve("out.xlsx"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @FunctionalInterface
    interface Change {
        void make(XSSFWorkbook workbook);
    }

    /** The workbook as the client saves it after a change. */
    Path changed(Path file, Change change) {
        try (ClientBook book = ClientBook.open(file)) {
            change.make(book.poi());
            return book.save(folder.resolve("changed.xlsx"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    Runs.Run run(Path file) {
        return Runs.run(file, folder.resolve("again.xlsx"));
    }

    static Map<CellAddress, Object> values(Runs.Run run) {
        return StoredValues.of(run.file(), run.ours());
    }

    static List<String> parity(Runs.Run run) {
        return run.differences(PoiRecalculation.of(run.file(), run.ours()));
    }

    /** Exchanges the first cells of two rows. */
    static void swapRows(Sheet sheet, int one, int other) {
        Row a = sheet.getRow(one);
        Row b = sheet.getRow(other);
        for (int column = 0; column < 12; column++) {
            Object x = cell(a, column);
            put(a, column, cell(b, column));
            put(b, column, x);
        }
    }

    private static Object cell(Row row, int column) {
        var cell = row.getCell(column);
        return cell == null || cell.getCellType() == CellType.BLANK
                ? null
                : cell.getCellType() == CellType.NUMERIC
                        ? (Object) cell.getNumericCellValue()
                        : cell.getStringCellValue();
    }

    private static void put(Row row, int column, Object value) {
        var cell = row.getCell(column) == null ? row.createCell(column) : row.getCell(column);
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof String text) {
            cell.setCellValue(text);
        } else {
            cell.setBlank();
        }
    }
}
