package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTHeaderFooter;

/** What is printed of each sheet of ours is said in the file and holds all of it; the client's sheets print as before. */
class PrintAreasTest {
    private static final String ODD_NAME = "O'Brien & <Sons>";

    @TempDir
    Path folder;

    private static XSSFWorkbook open(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }

    private Path renamed(Path file) {
        Path out = folder.resolve("renamed.xlsx");
        try (XSSFWorkbook book = open(file);
                OutputStream stream = Files.newOutputStream(out)) {
            book.setSheetName(book.getSheetIndex("Work rates"), ODD_NAME);
            book.write(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out;
    }

    @Test
    void everySheetOfOursIsPrintedWhole() throws IOException {
        Runs.Run run = Runs.run(FullFarm.write(folder.resolve("farm.xlsx")), folder.resolve("out.xlsx"));
        try (XSSFWorkbook book = open(run.file())) {
            for (int i = 0; i < book.getNumberOfSheets(); i++) {
                XSSFSheet sheet = book.getSheetAt(i);
                String area = book.getPrintArea(i);
                if (!run.sheets().contains(sheet.getSheetName())) {
                    assertThat(area).as(sheet.getSheetName()).isNull();
                    continue;
                }
                AreaReference printed = new AreaReference(area, book.getSpreadsheetVersion());
                assertThat(printed.getFirstCell().formatAsString(false)).isEqualTo("$A$1");
                assertThat(printed.getLastCell().getRow())
                        .as(sheet.getSheetName())
                        .isEqualTo(sheet.getLastRowNum());
                int last = 0;
                for (Row row : sheet) {
                    last = Math.max(last, row.getLastCellNum() - 1);
                }
                assertThat((int) printed.getLastCell().getCol())
                        .as(sheet.getSheetName())
                        .isGreaterThanOrEqualTo(last);
            }
        }
    }

    /** Beside the repeated columns the lines of the head are cut off: a second page across says whose it is by itself. */
    @Test
    void aFurtherPageAcrossIsTitled() throws IOException {
        Runs.Run run = Runs.run(FullFarm.write(folder.resolve("farm.xlsx")), folder.resolve("out.xlsx"));
        int several = 0;
        try (XSSFWorkbook book = open(run.file())) {
            for (String name : run.sheets()) {
                XSSFSheet sheet = book.getSheet(name);
                CTHeaderFooter printed = sheet.getCTWorksheet().getHeaderFooter();
                boolean across = sheet.getCTWorksheet().getPageSetup().getFitToWidth() > 1;
                several += across ? 1 : 0;
                assertThat(printed.getDifferentFirst()).as(name).isEqualTo(across);
                assertThat(printed.isSetFirstHeader()).as(name).isFalse();
                assertThat(printed.getOddFooter()).contains("&P of &N");
                if (across) {
                    assertThat(printed.getFirstFooter()).isEqualTo(printed.getOddFooter());
                    assertThat(printed.getOddHeader().replace("&&", "&"))
                            .as(name)
                            .startsWith("&L" + sheet.getRow(0).getCell(0).getStringCellValue() + " (")
                            .hasSizeLessThan(255);
                } else {
                    assertThat(printed.isSetOddHeader()).as(name).isFalse();
                }
            }
        }
        assertThat(several).isGreaterThan(20);
    }

    @Test
    void aSheetRenamedOddlyIsPrintedUnderItsName() throws IOException {
        Runs.Run first = Runs.run(TestBooks.smallFarm(folder.resolve("farm.xlsx")), folder.resolve("out.xlsx"));
        Runs.Run again = Runs.run(renamed(first.file()), folder.resolve("again.xlsx"));
        try (XSSFWorkbook book = open(again.file())) {
            int sheet = book.getSheetIndex(ODD_NAME);
            assertThat(sheet).isNotNegative();
            assertThat(book.getPrintArea(sheet)).startsWith("'O''Brien & <Sons>'!$A$1:$");
        }
    }
}
