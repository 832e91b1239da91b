package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.plan.table.SheetPlaces;

/** Nothing that must be read is cut off, broken in the middle or told too finely, on a screen or in print. */
class WrittenLooksTest {
    private static final String LONG_JOB =
            "Docks in spring, first pass after the ground has dried, before the cows go out";
    private static final String LONG_MACHINE =
            "Wide mounted sprayer bought together with the neighbour in spring (24 m)";
    private static final List<String> LONG_PRODUCTS = List.of(
            "Herbicide against docks, nettles and thistles in old grassland, liquid", "Granule " + "g".repeat(60));
    /** Between the margins of an upright page, in points. */
    private static final double PAGE_HEIGHT = 297 / 25.4 * 72 - 2 * 0.6 * 72;
    /** Of A4 upright between margins of 0.4 in. */
    private static final double PAGE_WIDTH = 595 - 2 * 0.4 * 72;

    @TempDir
    private static Path folder;

    private static XSSFWorkbook full;
    private static List<String> results;
    private static XSSFWorkbook longNames;
    private static XSSFWorkbook feet;

    @BeforeAll
    static void write() throws IOException {
        Runs.Run run = Runs.run(FullFarm.write(folder.resolve("farm.xlsx")), folder.resolve("out.xlsx"));
        full = open(run.file());
        results = run.sheets().stream()
                .filter(name -> full.getSheet(name).getPaneInformation() != null
                        && full.getSheet(name).getPaneInformation().getHorizontalSplitPosition()
                                == SheetPlaces.FIRST_ROW)
                .toList();
        longNames = open(
                longNames().run(Files.createDirectory(folder.resolve("long"))).written());
        feet = open(inFeet().run(Files.createDirectory(folder.resolve("feet"))).written());
    }

    @AfterAll
    static void close() throws IOException {
        full.close();
        longNames.close();
        feet.close();
    }

    private static XSSFWorkbook open(Path file) throws IOException {
        return new XSSFWorkbook(Files.newInputStream(file));
    }

    private static FarmBook longNames() {
        return new FarmBook()
                .sheet("Fields", "Field", "Crop", "Area (ha)")
                .row("Fields", "Top", "Grass", 12.3)
                .sheet(
                        "Machines",
                        "Machine",
                        "Type",
                        "Working width (m)",
                        "Speed (km/h)",
                        "Tank (L)",
                        "Number of nozzles",
                        "Rinse tank (L)",
                        "Residual (L)",
                        "Priming (L)")
                .row("Machines", LONG_MACHINE, "sprayer", 24, 10, 3000, 48, 300)
                .sheet("Products", "Product", "Unit")
                .row("Products", LONG_PRODUCTS.get(0), "L")
                .row("Products", LONG_PRODUCTS.get(1), "kg")
                .sheet(
                        "Jobs",
                        "Job",
                        "Field",
                        "Operation",
                        "Machine",
                        "Product",
                        "Dose",
                        "Dose unit",
                        "Water volume (L/ha)")
                .row("Jobs", LONG_JOB, "Top", "spraying", LONG_MACHINE, LONG_PRODUCTS.get(0), 2, "L/ha", 200)
                .row("Jobs", LONG_JOB, "Top", "spraying", LONG_MACHINE, LONG_PRODUCTS.get(1), 30, "g/ha", 200);
    }

    /** A clamp of which much is to be said, told in two measures. */
    private static FarmBook inFeet() {
        return new FarmBook()
                .sheet("Fields", "Field", "Crop", "Area (ac)", "Yield (short tons/ac)", "Yield basis", "Clamp")
                .row("Fields", "East Eighty", "Maize", 280, 22, "as carted fresh", "Bunker")
                .sheet("Machines", "Machine", "Type", "Mass (short tons)")
                .row("Machines", "Pack tractor", "clamp roller", 21)
                .sheet(
                        "Clamps",
                        "Clamp",
                        "Kind",
                        "Length (ft)",
                        "Floor width (ft)",
                        "Wall height (ft)",
                        "DM target (%)",
                        "Delivery (short tons/h)",
                        "Overhead lines",
                        "Distance to watercourse (m)",
                        "Country")
                .row("Clamps", "Bunker", "walled", 180, 50, 14, 34, 90, "yes", 5, "England")
                .row("Clamps", "Yard", "walled", 80, 30, 6, 34, 90, "no", 50, "England");
    }

    private static String text(Row row, int column) {
        Cell cell = row == null ? null : row.getCell(column);
        boolean words = cell != null
                && (cell.getCellType() == CellType.STRING
                        || cell.getCellType() == CellType.FORMULA
                                && cell.getCachedFormulaResultType() == CellType.STRING);
        return words ? cell.getStringCellValue() : "";
    }

    private static int width(XSSFSheet sheet, int column) {
        return sheet.getColumnWidth(column) / 256;
    }

    private static Row line(XSSFSheet sheet, String first) {
        for (Row row : sheet) {
            if (text(row, 0).equals(first)) {
                return row;
            }
        }
        throw new AssertionError("no line '" + first + "' on " + sheet.getSheetName());
    }

    /** Bold letters of a word as long as its column is wide were broken in the middle: "Choppin / g key". */
    @Test
    void noWordOfAHeadingIsBroken() {
        assertThat(results).hasSizeGreaterThan(50);
        for (String name : results) {
            XSSFSheet sheet = full.getSheet(name);
            for (Cell label : sheet.getRow(SheetPlaces.LABEL_ROW)) {
                int longest = Arrays.stream(label.getStringCellValue().split(" "))
                        .mapToInt(String::length)
                        .max()
                        .orElseThrow();
                assertThat(longest)
                        .as(name + ": " + label.getStringCellValue())
                        .isLessThan(width(sheet, label.getColumnIndex()));
            }
        }
    }

    @Test
    void anAcidityKeepsItsSmallLetter() {
        List<String> labels = new ArrayList<>();
        full.getSheet("Clamp density")
                .getRow(SheetPlaces.LABEL_ROW)
                .forEach(label -> labels.add(label.getStringCellValue()));
        assertThat(labels).contains("pH to expect", "Clamp kind");
    }

    /** As after a number there is a space, so that a day does not touch the words in the next cell. */
    @Test
    void aDayStandsApartFromWhatFollows() {
        int days = 0;
        for (String name : results) {
            for (Cell cell : full.getSheet(name).getRow(SheetPlaces.FIRST_ROW)) {
                String format = cell.getCellStyle().getDataFormatString();
                if (format.startsWith("yyyy")) {
                    days++;
                    assertThat(format).isEqualTo("yyyy-mm-dd_ ");
                    assertThat(width(full.getSheet(name), cell.getColumnIndex()))
                            .isGreaterThanOrEqualTo(12);
                }
            }
        }
        assertThat(days).isGreaterThan(10);
    }

    /**
     * Ten letters take the room of nine digits, in which widths are told. What ran on over the edge of a page was cut into
     * by the columns repeated on the next: "assessm tank."
     */
    @Test
    void linesOfCautionEndOnTheFirstPageAcross() {
        int broken = 0;
        for (String name : results) {
            XSSFSheet sheet = full.getSheet(name);
            int pages = sheet.getPrintSetup().getFitWidth();
            if (pages == 1
                    || !text(sheet.getRow(SheetPlaces.TOTAL_ROW), 0).isBlank()
                            && text(sheet.getRow(SheetPlaces.TOTAL_ROW), 0).equals("Total")) {
                continue;
            }
            int repeated = sheet.getRepeatingColumns().getLastColumn() + 1;
            int across = 0;
            int first = 0;
            for (int i = 0; i < sheet.getRow(SheetPlaces.LABEL_ROW).getLastCellNum(); i++) {
                across += width(sheet, i);
                first += i < repeated ? width(sheet, i) : 0;
            }
            for (int row = SheetPlaces.CAUTION_ROW; row < SheetPlaces.LABEL_ROW; row++) {
                String line = text(sheet.getRow(row), 0);
                broken += line.startsWith("  ") ? 1 : 0;
                assertThat(line.length())
                        .as(name + ": " + line)
                        .isLessThanOrEqualTo((across + first * (pages - 1)) / pages * 10 / 9);
            }
        }
        assertThat(broken).isPositive();
    }

    /** A card is one page, in letters as small as that takes. */
    @Test
    void noCardBreaksOverTwoPages() {
        List<Integer> scales = new ArrayList<>();
        for (XSSFSheet sheet :
                List.of(full.getSheet("Clamp cards"), feet.getSheet("Clamp cards"), full.getSheet("Spray cards"))) {
            int scale = sheet.getPrintSetup().getScale();
            scales.add(scale);
            List<Integer> ends = new ArrayList<>();
            for (int end : sheet.getRowBreaks()) {
                ends.add(end);
            }
            ends.add(sheet.getLastRowNum());
            double head = sheet.getRow(0).getHeightInPoints() + sheet.getRow(1).getHeightInPoints();
            int from = 0;
            for (int end : ends) {
                double height = from == 0 ? 0 : head;
                for (; from <= end; from++) {
                    Row row = sheet.getRow(from);
                    height += row == null ? sheet.getDefaultRowHeightInPoints() : row.getHeightInPoints();
                }
                assertThat(height * scale / 100)
                        .as(sheet.getSheetName() + " to " + end)
                        .isLessThan(PAGE_HEIGHT);
            }
        }
        assertThat(scales).contains(75).anyMatch(scale -> scale < 75).allMatch(scale -> scale >= 50);
    }

    /** In letters whose digits are seven points wide at eleven a card that is wider prints an empty page behind it. */
    @Test
    void cardsAreOnePageAcrossInWideLettersToo() {
        for (XSSFSheet sheet :
                List.of(full.getSheet("Clamp cards"), feet.getSheet("Clamp cards"), full.getSheet("Spray cards"))) {
            double characters = 0;
            for (int column = 0; sheet.getColumnWidth(column) != 256 * sheet.getDefaultColumnWidth(); column++) {
                characters += sheet.getColumnWidth(column) / 256.0;
            }
            assertThat(characters).isGreaterThan(90);
            assertThat(characters * 7 * sheet.getPrintSetup().getScale() / 100)
                    .as(sheet.getSheetName())
                    .isLessThan(PAGE_WIDTH);
        }
    }

    /** A row can only be so high: the last cautions of a clamp of which much is to be said were below its edge. */
    @Test
    void everyCautionOfACardIsInSight() {
        XSSFSheet sheet = feet.getSheet("Clamp cards");
        int cells = 0;
        for (Row row : sheet) {
            String told = text(row, 0);
            if (told.contains("CAUTION: ")) {
                cells++;
                int lines = told.lines()
                        .mapToInt(line -> (line.length() + width(sheet, 0) - 1) / width(sheet, 0))
                        .sum();
                assertThat(lines * 15.0).as(told).isLessThanOrEqualTo(row.getHeightInPoints());
            }
        }
        // One of the two clamps needs more than one cell.
        assertThat(cells).isGreaterThan(2);
    }

    @Test
    void theTitleOfACardIsWhole() {
        XSSFSheet sheet = longNames.getSheet("Spray cards");
        String title = "";
        for (int row = 2; sheet.getRow(row).getHeightInPoints() == 24; row++) {
            assertThat(text(sheet.getRow(row), 0)).hasSizeLessThan(70);
            title += text(sheet.getRow(row), 0) + " ";
        }
        assertThat(title.strip()).isEqualTo(LONG_JOB + ", spraying, " + LONG_MACHINE);
    }

    /** Two products whose names begin alike were one on Summary and on the card. */
    @Test
    void longNamesThatTellLinesApartAreBrokenIntoLines() {
        for (String product : LONG_PRODUCTS) {
            isWhole(longNames.getSheet("Spray cards"), line(longNames.getSheet("Spray cards"), product));
            isWhole(
                    longNames.getSheet("Summary"),
                    line(longNames.getSheet("Summary"), LONG_JOB + ", " + product + ", " + LONG_MACHINE));
        }
    }

    /** A column of names is no wider than thirty letters: the rest of a longer one was under the cell beside it. */
    @Test
    void longNamesOfResultSheetsAreBrokenIntoLines() {
        int broken = 0;
        for (String name : List.of("Spray blocks", "Tank mix", "Spray fields", "Work rates")) {
            XSSFSheet sheet = longNames.getSheet(name);
            for (int at = SheetPlaces.FIRST_ROW; at <= sheet.getLastRowNum(); at++) {
                for (int column = 0; column < 6; column++) {
                    String text = text(sheet.getRow(at), column);
                    if (text.length() > width(sheet, column)) {
                        broken++;
                        isWhole(sheet, sheet.getRow(at), column);
                    }
                }
            }
        }
        assertThat(broken).isGreaterThan(10);
    }

    /** An answer in words, a law that is held for instance, was cut off by the formula beside it. */
    @Test
    void theAnswersInWordsAreWholeOnTrail() {
        XSSFSheet trail = full.getSheet("Trail");
        int cut = 0;
        for (Row row : trail) {
            if (row.getRowNum() >= 3 && text(row, 2).length() > width(trail, 2)) {
                cut++;
                isWhole(trail, row, 2);
            }
        }
        assertThat(cut).isGreaterThan(10);
    }

    /** These are the names that Assumptions go by. */
    @Test
    void theNamesOfConstantsAreWholeOnBasis() {
        XSSFSheet basis = full.getSheet("Basis");
        for (Row row : basis) {
            Cell value = row.getCell(1);
            if (value != null
                    && value.getCellType() == CellType.NUMERIC
                    && row.getCell(0).getCellType() == CellType.STRING) {
                if (text(row, 0).length() > width(basis, 0)) {
                    isWhole(basis, row);
                }
            }
        }
        isWhole(basis, line(basis, "shoulder of a straight-shouldered crown, metres out for each metre up"));
    }

    private static void isWhole(XSSFSheet sheet, Row row) {
        isWhole(sheet, row, 0);
    }

    private static void isWhole(XSSFSheet sheet, Row row, int column) {
        String text = text(row, column);
        assertThat(row.getCell(column).getCellStyle().getWrapText()).as(text).isTrue();
        assertThat((double) row.getHeightInPoints())
                .as(text)
                .isGreaterThanOrEqualTo(15 * Math.ceil(text.length() / (double) width(sheet, column)));
    }

    @Test
    void aThirdIsNotToldToTheLastPlace() {
        XSSFSheet basis = full.getSheet("Basis");
        Cell third =
                line(basis, "rolling weight for each tonne an hour, one third").getCell(1);
        assertThat(third.getNumericCellValue()).isEqualTo(1 / 3.0);
        assertThat(new DataFormatter(Locale.ROOT).formatCellValue(third)).isEqualTo("0.333333");
        assertThat(line(basis, "rolling weight for each tonne an hour")
                        .getCell(1)
                        .getCellStyle()
                        .getDataFormatString())
                .isEqualTo("General");
    }

    /** Lines longer than the columns made the whole sheet print in letters half as high. */
    @Test
    void aboutAndAsReadArePrintedNoWiderThanTheirColumns() {
        for (String name : List.of("About", "As read")) {
            String area = full.getPrintArea(full.getSheetIndex(name));
            int last = new AreaReference(area, full.getSpreadsheetVersion())
                    .getLastCell()
                    .getCol();
            assertThat(last).as(name).isEqualTo(name.equals("About") ? 3 : 4);
        }
    }

    @Test
    void whatIsNotGivenIsNotToldAsWithheldAndWhatIsHasItsReasonOnTheCard() {
        XSSFSheet sheet = longNames.getSheet("Spray cards");
        assertThat(text(line(sheet, "Spray mix with priming"), 1)).isEqualTo("none given");
        Row rinse = line(sheet, "Rinse water");
        assertThat(text(rinse, 1)).isEqualTo("withheld");
        assertThat(text(sheet.getRow(rinse.getRowNum() + 1), 0)).startsWith("Residual volume missing.");
    }
}
