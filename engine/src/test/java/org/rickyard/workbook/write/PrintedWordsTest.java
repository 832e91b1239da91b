package org.rickyard.workbook.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.testing.SeasonBook;

/** Sentences too long for a page are broken over lines, and lose nothing by it. */
class PrintedWordsTest {
    private static final int WIDEST = 170;

    private static SeasonBook.Worked farm() {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "wheat", 24))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet("Products", row("Product", "Unit", "Highest dose"), row("Invented product of ours", "L", 1))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"),
                        row("Weeds", "Long Acre", "spray", "Sprayer", "Invented product of ours", 1.5, 200))
                .run();
    }

    private static List<String> texts(SeasonBook.Worked worked, String sheetName, int column) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(worked.file().toString())) {
            Sheet sheet = book.getSheet(sheetName);
            List<String> texts = new ArrayList<>();
            for (Row row : sheet) {
                Cell cell = row.getCell(column);
                if (cell != null && cell.getCellType() == CellType.STRING) {
                    texts.add(cell.getStringCellValue());
                }
            }
            return texts;
        }
    }

    @Test
    void stopsStandWholeOnTheSummaryWithinItsColumns() throws IOException {
        SeasonBook.Worked worked = farm();
        List<String> stops = worked.findings().stream()
                .filter(finding -> finding.severity() == Finding.Severity.STOP)
                .map(finding -> "STOP: " + finding.message())
                .toList();
        assertThat(stops).isNotEmpty().anyMatch(stop -> stop.length() > WIDEST);
        List<String> lines = texts(worked, "Summary", 1);
        String read = String.join(" ", lines);
        assertThat(stops).allSatisfy(stop -> assertThat(read).contains(stop));
        assertThat(lines).isNotEmpty().allMatch(line -> line.length() <= WIDEST);
    }

    @Test
    void everyCautionStandsWholeOnAboutWithinItsColumns() throws IOException {
        SeasonBook.Worked worked = farm();
        List<String> lines = texts(worked, "About", 0);
        String read = lines.stream().collect(Collectors.joining(" "));
        List<String> cautions = worked.plan().tables().stream()
                .filter(table -> table.rows() > 0)
                .flatMap(table -> table.spec().cautions().stream())
                .distinct()
                .toList();
        assertThat(cautions).hasSizeGreaterThan(5).allSatisfy(caution -> assertThat(read)
                .contains(caution));
        assertThat(lines).isNotEmpty().allMatch(line -> line.length() <= WIDEST);
    }

    /** Names stand whole beside their neighbours, the title before the check, and litres as finely as a jug or tank shows. */
    @Test
    void namesTitlesAndFiguresFitTheirCells() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(farm().file().toString())) {
            Sheet mix = book.getSheet("Tank mix");
            Row row = mix.getRow(SheetPlaces.FIRST_ROW);
            for (Cell cell : row) {
                boolean name = cell.getCellType() == CellType.FORMULA
                        && cell.getCachedFormulaResultType() == CellType.STRING
                        && !cell.getCellStyle().getWrapText();
                if (name) {
                    assertThat(mix.getColumnWidth(cell.getColumnIndex()) / 256.0)
                            .as(cell.getStringCellValue())
                            .isGreaterThan(cell.getStringCellValue().length());
                }
            }
            Sheet hours = book.getSheet("Machine hours");
            double room = 0;
            for (int column = 0; hours.getRow(0).getCell(column + 1) == null; column++) {
                room += hours.getColumnWidth(column) / 256.0;
            }
            assertThat(room)
                    .isGreaterThan(1.2
                            * hours.getRow(0).getCell(0).getStringCellValue().length());
            DataFormatter shown = new DataFormatter(Locale.ROOT);
            String format = Looks.decimals(Looks.RESULT, 3).numberFormat();
            assertThat(shown.formatRawCellContents(3900, 0, format).strip()).isEqualTo("3,900");
            assertThat(shown.formatRawCellContents(189.271, 0, format).strip()).isEqualTo("189.3");
            assertThat(shown.formatRawCellContents(2.875, 0, format).strip()).isEqualTo("2.875");
        }
    }
}
