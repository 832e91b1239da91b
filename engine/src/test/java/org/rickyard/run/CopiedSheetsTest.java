package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.testing.StoredValues;

/** Copies of sheets of ours are the client's, however they were made. */
class CopiedSheetsTest extends AfterAFirstRun {
    @Test
    void aCopyOfASheetOfOursIsTheClients() throws IOException {
        Path out = out();
        Path copied = changed(out, workbook -> {
            Sheet copy = workbook.createSheet("Work rates (2)");
            copy.createRow(0).createCell(0).setCellValue("a copy");
            var name = workbook.createName();
            name.setSheetIndex(workbook.getSheetIndex(copy));
            name.setNameName(OurSheets.MARKER);
            name.setRefersToFormula("\"work-rates\"");
        });
        Runs.Run again = run(copied);
        assertThat(again.sheets()).contains("Work rates").doesNotContain("Work rates (2)");
        try (ClientBook book = ClientBook.open(again.file())) {
            assertThat(book.poi()
                            .getSheet("Work rates (2)")
                            .getRow(0)
                            .getCell(0)
                            .getStringCellValue())
                    .isEqualTo("a copy");
        }
        assertThat(again.messages()).anyMatch(message -> message.startsWith("the sheet 'Work rates (2)' was written"));
        assertThat(Runs.run(again.file(), folder.resolve("third.xlsx")).sheets())
                .isEqualTo(again.sheets());
    }

    /** As LibreOffice saves it, which numbers sheets by their tabs: the copy in front gets what was the original's. */
    @Test
    void aCopyThatTookTheNumberOfItsOriginalIsTheClients() throws IOException {
        Path out = out();
        String number;
        try (ClientBook book = ClientBook.open(out)) {
            number = book.poi().getCTWorkbook().getSheets().getSheetList().stream()
                    .filter(sheet -> sheet.getName().equals("Work rates"))
                    .map(sheet -> Long.toString(sheet.getSheetId()))
                    .findFirst()
                    .orElseThrow();
        }
        Path copied = changed(out, workbook -> {
            Sheet copy = workbook.createSheet("For the record");
            copy.createRow(0).createCell(0).setCellValue("a copy");
            var name = workbook.createName();
            name.setSheetIndex(workbook.getSheetIndex(copy));
            name.setNameName(OurSheets.MARKER);
            name.setRefersToFormula("\"work-rates\"");
            for (var sheet : workbook.getCTWorkbook().getSheets().getSheetList()) {
                boolean original = sheet.getName().equals("Work rates");
                if (original || sheet.getName().equals("For the record")) {
                    sheet.setSheetId(original ? 9_000 : Long.parseLong(number));
                }
            }
            workbook.setSheetOrder("For the record", 0);
        });

        Runs.Run again = run(copied);

        assertThat(again.sheets()).contains("Work rates").doesNotContain("For the record");
        try (ClientBook book = ClientBook.open(again.file())) {
            Sheet copy = book.poi().getSheet("For the record");
            assertThat(copy.getRow(0).getCell(0).getStringCellValue()).isEqualTo("a copy");
        }
    }

    /** Some programs copy the cells of a sheet and not its names, and people copy cells only. */
    @Test
    void aCopyOfResultsWithoutTheirMarkerIsNoList() throws IOException {
        Runs.Run again = run(changed(out(), workbook -> {
            Sheet ours = workbook.getSheet("Work rates");
            Sheet copy = workbook.createSheet("My copy");
            DataFormatter shown = new DataFormatter();
            for (Row row : ours) {
                Row to = copy.createRow(row.getRowNum());
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA
                            && cell.getCachedFormulaResultType() == CellType.NUMERIC) {
                        to.createCell(cell.getColumnIndex()).setCellValue(cell.getNumericCellValue());
                    } else if (cell.getCellType() == CellType.FORMULA) {
                        to.createCell(cell.getColumnIndex())
                                .setCellValue(cell.getRichStringCellValue().getString());
                    } else {
                        to.createCell(cell.getColumnIndex()).setCellValue(shown.formatCellValue(cell));
                    }
                }
            }
        }));
        Runs.Run before = Runs.run(folder.resolve("in.xlsx"), folder.resolve("before.xlsx"));
        assertThat(again.sheets()).isEqualTo(before.sheets());
        assertThat(again.findings().stream()
                        .filter(finding -> finding.cell()
                                .filter(cell -> cell.sheet().equals("My copy"))
                                .isPresent())
                        .map(Finding::message))
                .containsExactly("These are results of a run, copied here; they are not read as a list.");
        assertThat(StoredValues.of(again.file(), "Work rates")).isEqualTo(StoredValues.of(before.file(), "Work rates"));
    }
}
