package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.Filling;

/** The cards as they lie in the file: one page for each clamp, drawn, live, and with the dangers on it. */
class ClampCardsTest {
    private static final Object[] HEADERS = row(
            "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Batter", "DM target (%)", "Country");
    private static final Object[][] CLAMPS = {
        HEADERS,
        row("Big", "walled", 30, 10, 3, 0, 28, "Wales"),
        row("Pit", "earth pit", 24, 6, 3, 1, 25, "Wales"),
        row("Heap", "heap", 30, 14, 2, 3, 30, "Ireland"),
        row("Lacking", "walled", 30, null, 3, null, 28, "Wales")
    };

    @TempDir
    static Path folder;

    private static SilageBook book;
    private static XSSFWorkbook written;

    @BeforeAll
    static void run() throws IOException {
        book = new SilageBook(folder).list("Clamps", CLAMPS).run();
        written = new XSSFWorkbook(Files.newInputStream(book.write()));
    }

    @AfterAll
    static void close() throws IOException {
        written.close();
        book.close();
    }

    /** One card: its lines, each with all its texts, from its title to the next one's. */
    private static List<List<String>> cards(XSSFSheet sheet, List<String> titles) {
        List<List<String>> cards = new ArrayList<>();
        for (Row row : sheet) {
            for (Cell cell : row) {
                String text = cell.getCellType() == CellType.STRING
                                || cell.getCellType() == CellType.FORMULA
                                        && cell.getCachedFormulaResultType() == CellType.STRING
                        ? cell.getStringCellValue()
                        : "";
                if (titles.stream().anyMatch(text::startsWith) && cell.getColumnIndex() == 0) {
                    cards.add(new ArrayList<>());
                }
                if (!cards.isEmpty() && !text.isEmpty()) {
                    cards.get(cards.size() - 1).add(text);
                }
            }
        }
        return cards;
    }

    @Test
    void everyClampHasAPageWithTheDangersOnIt() throws IOException {
        XSSFSheet sheet = written.getSheet("Clamp cards");
        List<List<String>> cards = cards(sheet, List.of("Big (", "Pit (", "Heap (", "Lacking ("));
        assertThat(cards).hasSize(4);
        assertThat(sheet.getRowBreaks()).hasSize(3);
        assertThat(sheet.getPrintSetup().getLandscape()).isFalse();
        for (List<String> card : cards) {
            assertThat(String.join(" ", card).replaceAll(" +", " "))
                    .contains("machines overturn")
                    .contains("Power lines")
                    .contains("Gas kills")
                    .contains("wall's loading notice")
                    .contains("Children and bystanders away")
                    .contains("No height here is a permission");
        }
        assertThat(String.join(" ", cards.get(1))).contains("STOP: new earth-banked pits have been barred");
        assertThat(cards.get(3)).contains("no section: the shape is withheld").contains("withheld");
        assertThat(String.join(" ", cards.get(3))).contains("Floor width missing");
        assertThat(book.disagreements()).isEmpty();
    }

    @Test
    void aClampWithoutCropListedTellsNothingOfItsFilling() throws IOException {
        Path other = Files.createDirectory(folder.resolve("two"));
        try (SilageBook two = new SilageBook(other)
                .list(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp"),
                        row("Top", "grass", 10, 30, "as carted", 28, "Used"))
                .list(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "DM target (%)",
                                "Delivery (t/h)",
                                "Roller mass (t)"),
                        row("Used", "walled", 30, 10, 3, 28, 60, 15),
                        row("Unused", "walled", 30, 10, 3, 28, 60, 15))
                .run()) {
            assertThat(two.number("clamp-rolling", Filling.HOURS, 0)).isEqualTo(5);
            assertThat(two.has("clamps", ClampContents.FILL, 0)).isTrue();
            assertThat(two.number("clamps", ClampContents.CAPACITY, 1)).isPositive();
            assertThat(two.has("clamps", ClampContents.FILL, 1)).isFalse();
            assertThat(two.has("clamp-rolling", Filling.HOURS, 1)).isFalse();
            assertThat(two.has("clamp-rolling", Filling.DAYS_OPEN, 1)).isFalse();
            String reason = "no crop is listed for the clamp (column Clamp of Fields or Cuts)";
            assertThat(two.status("clamps", 0)).isEqualTo("ok");
            assertThat(two.status("clamps", 1)).isEqualTo(reason + ". ");
            assertThat(two.status("clamp-rolling", 1)).isEqualTo(reason + ". ");
            assertThat(two.findings()).anyMatch(finding -> finding.contains(reason + ": Unused, so "));
            assertThat(two.disagreements()).isEmpty();
            try (XSSFWorkbook file = new XSSFWorkbook(Files.newInputStream(two.write()))) {
                List<List<String>> cards = cards(file.getSheet("Clamp cards"), List.of("Used (", "Unused ("));
                assertThat(after(cards.get(1), "Hours to fill")).isEqualTo("withheld");
                assertThat(after(cards.get(1), "Days open")).isEqualTo("withheld");
                assertThat(after(cards.get(1), "Crop in clamp (fresh)")).isEqualTo("none listed");
                assertThat(after(cards.get(0), "Hours to fill")).isNotEqualTo("withheld");
                assertThat(after(cards.get(0), "Crop in clamp (fresh)")).isNotEqualTo("none listed");
            }
        }
    }

    /** The text that follows another on a card; figures are no texts. */
    private static String after(List<String> card, String name) {
        assertThat(card).contains(name);
        return card.get(card.indexOf(name) + 1);
    }

    @Test
    void theHeightNotToBeExceededStandsFirstAndIsThatOfTheHeights() throws IOException {
        XSSFSheet sheet = written.getSheet("Clamp cards");
        List<Double> limits = new ArrayList<>();
        for (Row row : sheet) {
            if (row.getCell(0) != null && row.getCell(0).toString().equalsIgnoreCase(ClampHeights.HIGHEST.name())) {
                limits.add(row.getCell(1).getNumericCellValue());
                assertThat(sheet.getRow(row.getRowNum() - 1).getCell(0).toString())
                        .contains("(");
            }
        }
        assertThat(limits).hasSize(4);
        for (int clamp = 0; clamp < 4; clamp++) {
            assertThat(limits.get(clamp)).isEqualTo(book.number("clamp-heights", ClampHeights.HIGHEST, clamp));
        }
    }

    /** The three tones lie well apart in grey, dark to light: wall, settled, on the day. */
    @Test
    void theSectionCanBeReadInAGreyPrint() throws IOException {
        double wall = -1;
        double settled = -1;
        double onDay = -1;
        for (Row row : written.getSheet("Clamp cards")) {
            for (Cell cell : row) {
                double grey = grey((XSSFCell) cell);
                if (cell.getColumnIndex() < 4 || grey < 0) {
                    continue;
                }
                switch (cell.toString()) {
                    case "▒" -> settled = grey;
                    case "░" -> onDay = grey;
                    default -> wall = grey;
                }
            }
        }
        assertThat(wall).isBetween(0.0, 110.0);
        assertThat(settled).isGreaterThan(wall + 50);
        assertThat(onDay).isGreaterThan(settled + 40);
    }

    private static double grey(XSSFCell cell) {
        var fill = cell.getCellStyle().getFillForegroundXSSFColor();
        if (fill == null || fill.getRGB() == null) {
            return -1;
        }
        byte[] rgb = fill.getRGB();
        return 0.299 * (rgb[0] & 0xff) + 0.587 * (rgb[1] & 0xff) + 0.114 * (rgb[2] & 0xff);
    }
}
