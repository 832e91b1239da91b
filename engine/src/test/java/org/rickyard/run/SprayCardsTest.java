package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.FarmBook.row;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The card for the cab: one page for each block, its figures those of the result sheets. */
class SprayCardsTest {
    @TempDir
    private static Path folder;

    private static FarmBook.Run run;
    private static XSSFWorkbook written;
    private static XSSFSheet sheet;

    @BeforeAll
    static void reckon() throws IOException {
        run = SprayingSeason.book()
                .row("Jobs", "Lacking", "Top", "spraying", "Sprayer", null, "Herbicide A", 1, "L/ha", null)
                .run(folder);
        written = new XSSFWorkbook(Files.newInputStream(run.written()));
        sheet = written.getSheet("Spray cards");
    }

    @AfterAll
    static void close() throws IOException {
        written.close();
    }

    /** The lines of the card whose title begins so, up to the next page. */
    private static List<Row> card(String title) {
        return card(sheet, title);
    }

    private static List<Row> card(XSSFSheet sheet, String title) {
        List<Row> lines = new ArrayList<>();
        for (Row row : sheet) {
            String first = row.getCell(0) == null ? "" : text(row.getCell(0));
            if (first.startsWith(title)) {
                lines.add(row);
            } else if (!lines.isEmpty()) {
                lines.add(row);
                if (first.startsWith("Pressure set")) {
                    return lines;
                }
            }
        }
        throw new AssertionError("no card '" + title + "'");
    }

    private static String text(Cell cell) {
        boolean words = cell.getCellType() == CellType.STRING
                || cell.getCellType() == CellType.FORMULA && cell.getCachedFormulaResultType() == CellType.STRING;
        return words ? cell.getStringCellValue() : "";
    }

    private static Row line(List<Row> card, String name) {
        return card.stream()
                .filter(row -> row.getCell(0) != null && text(row.getCell(0)).equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line '" + name + "'"));
    }

    private static double number(List<Row> card, String name, int column) {
        return line(card, name).getCell(column).getNumericCellValue();
    }

    @Test
    void everyBlockHasAPageOfItsOwn() {
        int blocks = run.results("total-spray-mix").size();
        assertThat(blocks).isEqualTo(7);
        assertThat(sheet.getRowBreaks()).hasSize(blocks - 1);
        assertThat(sheet.getPrintSetup().getLandscape()).isFalse();
    }

    @Test
    void aCardHoldsTheSettingAndWhatGoesIntoTheTankInMixingOrder() {
        List<Row> card = card("T1, spraying, Sprayer");
        assertThat(number(card, "Water volume", 1)).isEqualTo(200);
        assertThat(number(card, "Nozzle pressure", 1)).isEqualTo(4.6875, within(1e-9));
        assertThat(number(card, "Full tankfuls", 1)).isEqualTo(2);
        assertThat(number(card, "Part tankful", 1)).isEqualTo(460, within(1e-9));
        assertThat(number(card, "Herbicide A", 2)).isEqualTo(9.375, within(1e-9));
        assertThat(number(card, "Herbicide A", 3)).isEqualTo(2.875, within(1e-9));
        assertThat(number(card, "Herbicide A", 4)).isEqualTo(21.625, within(1e-9));
        assertThat(card.indexOf(line(card, "Herbicide A"))).isLessThan(card.indexOf(line(card, "Wetter")));
        assertThat(number(card, "Residue run-out", 1)).isEqualTo(62.5, within(1e-9));
    }

    @Test
    void theCautionsOfABlockStandAboveItsFigures() {
        List<Row> lines = new ArrayList<>();
        sheet.forEach(lines::add);
        int told = 0;
        for (int i = 0; i < lines.size(); i++) {
            Cell cell = lines.get(i).getCell(0);
            if (cell != null && text(cell).contains("CAUTION: ")) {
                told++;
                // The next figure that is always there is the first of the card.
                Iterator<String> after = lines.subList(i, lines.size()).stream()
                        .map(row -> row.getCell(0) == null ? "" : text(row.getCell(0)))
                        .filter(List.of("Water volume", "Part tankful")::contains)
                        .iterator();
                assertThat(after.next()).isEqualTo("Water volume");
            }
        }
        assertThat(told).isPositive();
    }

    /** 17.3 ha at 200 L/ha are 3,460 L: less than 4,000, and twice 1,730. */
    @ParameterizedTest
    @CsvSource({"4000, 0, 3460", "1730, 2, 0"})
    void noProductIsToldForATankThatIsNeverFilled(double tank, double full, double part, @TempDir Path other)
            throws IOException {
        FarmBook.Run run = SprayingSeason.book().with("Machines", 1, 4, tank).run(other);
        int empty = full == 0 ? 2 : 3;
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(run.written()))) {
            List<Row> card = card(book.getSheet("Spray cards"), "T1, spraying, Sprayer");
            assertThat(number(card, "Full tankfuls", 1)).isEqualTo(full);
            assertThat(number(card, "Part tankful", 1)).isEqualTo(part, within(1e-9));
            for (String product : List.of("Herbicide A", "Wetter")) {
                Cell cell = line(card, product).getCell(empty);
                assertThat(cell.getCellFormula()).contains("IF('Spray blocks'!");
                assertThat(cell.getCachedFormulaResultType()).isEqualTo(CellType.STRING);
                assertThat(cell.getStringCellValue()).isEmpty();
                assertThat(new XSSFFormulaEvaluator(book).evaluate(cell).getStringValue())
                        .isEmpty();
                assertThat(line(card, product).getCell(5 - empty).getNumericCellValue())
                        .isPositive();
            }
        }
        assertThat(run.results("product-per-full-tankful", "T1")).hasSize(full == 0 ? 0 : 2);
        // On Tank fills a tankful is what it holds: 17.3 ha × 1.25 in one load, or in two.
        assertThat(run.results("product-in-tankful", "T1", "Herbicide A"))
                .hasSize(full == 0 ? 1 : 2)
                .allSatisfy(load ->
                        assertThat(load.number().orElseThrow()).isEqualTo(21.625 / (full == 0 ? 1 : 2), within(1e-9)));
        assertThat(run.number("product-in-part-tankful", "T1", "Herbicide A"))
                .isEqualTo(part / 200 * 1.25, within(1e-9));
    }

    /** Two sprayings of a field that have no names have cards of their own names all the same. */
    @Test
    void aFieldThatIsSprayedTwiceHasCardsThatCanBeToldApart(@TempDir Path other) throws IOException {
        Path in = org.rickyard.testing.FarmBook.empty()
                .sheet("Fields", row("Field", "Area (ha)"), row("Top", 5))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 12, 8, 1000))
                .sheet(
                        "Jobs",
                        row("Field", "Machine", "Water volume (L/ha)", "Product", "Dose (L/ha)"),
                        row("Top", "Sprayer", 200, "Herbicide A", 1),
                        row("Top", "Sprayer", 100, "Fungicide B", 2))
                .write(other.resolve("twice.xlsx"));
        Path out = Runs.run(in, other.resolve("twice-out.xlsx")).file();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(out))) {
            XSSFSheet cards = book.getSheet("Spray cards");
            assertThat(number(card(cards, "Top, Sprayer, Jobs!2"), "Total spray mix", 1))
                    .isEqualTo(1000);
            assertThat(number(card(cards, "Top, Sprayer, Jobs!3"), "Total spray mix", 1))
                    .isEqualTo(500);
        }
    }

    @Test
    void aSettingThatDiffersOnlyByItsLiquidIsToldApart() {
        assertThat(number(card("Feed, spraying, Sprayer"), "Nozzle pressure", 1))
                .isEqualTo(run.number("nozzle-pressure", "Feed", "04"));
    }

    @Test
    void tankfulsNameTheirFieldsAndSumToTheBlock() {
        List<Row> card = card("T1, spraying, Sprayer");
        double hectares = 0;
        int lines = 0;
        for (Row row : card) {
            if (row.getCell(1) != null && text(row.getCell(1)).startsWith("tankful ")) {
                hectares += row.getCell(2).getNumericCellValue();
                lines++;
            }
        }
        assertThat(lines).isEqualTo(5);
        assertThat(hectares).isEqualTo(17.3, within(1e-9));
    }

    @Test
    void whatIsWithheldIsSaidAndEveryCardHasItsCautions() {
        List<Row> lacking = card("Lacking, spraying, Sprayer");
        assertThat(text(line(lacking, "Total spray mix").getCell(1))).isEqualTo("withheld");
        for (String title : List.of("T1, ", "T2, ", "Feed, ", "Apples, ", "Beet bands, ", "Spots, ", "Lacking, ")) {
            StringBuilder words = new StringBuilder();
            card(title)
                    .forEach(row -> row.forEach(cell -> words.append(text(cell)).append(' ')));
            assertThat(words.toString())
                    .as(title)
                    .contains("The product label and the law of the place come first")
                    .contains("Protective clothing as the label")
                    .contains("Whether products may be mixed")
                    .contains("overhead lines")
                    .contains("no leave to spray")
                    .contains("Wind (speed, from where)");
        }
        StringBuilder words = new StringBuilder();
        card("T1, ").forEach(row -> row.forEach(cell -> words.append(text(cell)).append(' ')));
        assertThat(words.toString()).contains("the share of the spray would come to more than the highest dose");
    }

    /** Who stands in the cab has the card and not Applications or Nozzle wear: what stops a field or a nozzle is on it. */
    @Test
    void whatIsSaidOfFieldsAndNozzlesIsOnTheCard() {
        List<String> lines =
                card("T1, ").stream().map(row -> text(row.getCell(0))).toList();
        assertThat(lines)
                .filteredOn(line -> line.matches("(?s)(Long Acre|Home Field), .*: (CAUTION|STOP): .*"))
                .as(lines.toString())
                .isNotEmpty();
        assertThat(lines)
                .filteredOn(line -> line.matches("(?s)Nozzle [0-9]+: (CAUTION|STOP): .*"))
                .as(lines.toString())
                .isNotEmpty();
    }

    /** A formula holds 8,192 characters; a season's diary under one job has hundreds of products. */
    @Test
    void theCautionsOfManyProductsArePartedAmongCells() throws IOException {
        FarmBook book = SprayingSeason.book();
        for (int i = 0; i < 70; i++) {
            book.row("Jobs", "Diary", "Top", "spraying", "Sprayer", null, "Product " + i, 1, "L/ha", null);
        }
        int longest = 0;
        try (XSSFWorkbook diary = new XSSFWorkbook(Files.newInputStream(
                book.run(Files.createDirectories(folder.resolve("diary"))).written()))) {
            for (Row row : diary.getSheet("Spray cards")) {
                for (Cell cell : row) {
                    boolean formula = cell.getCellType() == CellType.FORMULA;
                    longest = Math.max(longest, formula ? cell.getCellFormula().length() : 0);
                }
            }
        }
        assertThat(longest).isBetween(1800, 2500);
    }
}
