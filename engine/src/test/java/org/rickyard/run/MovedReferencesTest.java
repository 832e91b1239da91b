package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.testing.LibreOffice;

/** Where a client refers to single cells of ours, a run says what moved under the reference. */
class MovedReferencesTest {
    private static final String RATES = "Work rates";

    @TempDir
    static Path folder;

    private static Path first;
    private static int files;

    @BeforeAll
    static void writeFirst() throws IOException {
        try (ClientBook book = ClientBook.create()) {
            book.sheet(
                    "Fields",
                    row("Holding", "Field", "Crop", "Area (ha)"),
                    row("Skel Beck", "Long Acre", "grass", 4.2),
                    row("Skel Beck", "Home Field", "grass", 6.1),
                    row("Skel Beck", "Kiln Close", "grass", 5.3),
                    row("Thorn Garth", "Low Stang", "grass", 11.5));
            book.sheet(
                    "Machines",
                    row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                    row("Mower 3 m", "mower", 3, 10, 80));
            book.sheet(
                    "Jobs",
                    row("Holding", "Job", "Field", "Operation", "Machine"),
                    row("Skel Beck", "First cut", "grass", "mow", "Mower 3 m"),
                    row("Thorn Garth", "First cut", "grass", "mow", "Mower 3 m"));
            first = Runs.run(book.save(next()), next()).file();
        }
    }

    private static Object[] row(Object... cells) {
        return cells;
    }

    private static Path next() {
        return folder.resolve("book " + files++ + ".xlsx");
    }

    private Path changed(Path file, Consumer<XSSFWorkbook> change) {
        try (ClientBook book = ClientBook.open(file)) {
            change.accept(book.poi());
            return book.save(next());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private Runs.Run run(Path file) {
        return Runs.run(file, next());
    }

    private static List<Finding> moves(Runs.Run run) {
        return run.findings().stream()
                .filter(finding -> finding.message().contains(" refers to "))
                .toList();
    }

    /** A further run changes nothing, whatever was said. */
    private void assertStable(Runs.Run run) throws IOException {
        assertThat(Files.mismatch(run.file(), run(run.file()).file())).isEqualTo(-1);
    }

    /** The letters of a column of work rates. */
    private static String column(XSSFWorkbook workbook, String label) {
        for (Cell cell : workbook.getSheet(RATES).getRow(SheetPlaces.LABEL_ROW)) {
            if (cell.getStringCellValue().equals(label)) {
                return CellAddress.letters(cell.getColumnIndex());
            }
        }
        throw new AssertionError("no column " + label);
    }

    private static String rate(XSSFWorkbook workbook, int row) {
        return "'" + RATES + "'!" + column(workbook, "Work rate") + row;
    }

    private static void insertField(XSSFWorkbook workbook) {
        Sheet fields = workbook.getSheet("Fields");
        fields.shiftRows(1, fields.getLastRowNum(), 1);
        Row row = fields.createRow(1);
        row.createCell(0).setCellValue("Skel Beck");
        row.createCell(1).setCellValue("New Intake");
        row.createCell(2).setCellValue("grass");
        row.createCell(3).setCellValue(2.5);
    }

    private static void deleteLongAcre(XSSFWorkbook workbook) {
        Sheet fields = workbook.getSheet("Fields");
        assertThat(fields.getRow(1).getCell(1).getStringCellValue()).isEqualTo("Long Acre");
        fields.removeRow(fields.getRow(1));
        fields.shiftRows(2, fields.getLastRowNum(), -1);
    }

    private static void swapLongAcreAndKilnClose(XSSFWorkbook workbook) {
        Sheet fields = workbook.getSheet("Fields");
        Row one = fields.getRow(1);
        Row other = fields.getRow(3);
        one.getCell(1).setCellValue("Kiln Close");
        one.getCell(3).setCellValue(5.3);
        other.getCell(1).setCellValue("Long Acre");
        other.getCell(3).setCellValue(4.2);
    }

    private static void refer(XSSFWorkbook workbook, String formula) {
        workbook.createSheet("Dashboard").createRow(0).createCell(1).setCellFormula(formula);
    }

    @Test
    void nothingIsSaidWhileNothingMoves() throws IOException {
        Runs.Run again = run(changed(first, workbook -> refer(workbook, rate(workbook, 10) + "*2")));
        assertThat(moves(again)).isEmpty();
        assertStable(again);
    }

    @Test
    void aRowInsertedAboveIsToldWithWhatStoodThereAndWhatStandsThere() throws IOException {
        Path referring = changed(first, workbook -> {
            refer(workbook, rate(workbook, 10) + "*2");
            insertField(workbook);
        });
        Runs.Run again = run(referring);
        assertThat(moves(again)).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.CAUTION);
            assertThat(finding.cell()).contains(new CellAddress("Dashboard", 0, 1));
            assertThat(finding.message())
                    .matches("this cell refers to 'Work rates'![A-Z]+10, where 'Work rate' of Skel Beck,.* Long Acre,"
                            + ".* stood; now 'Work rate' of Skel Beck,.* New Intake,.* stands there. What stood there"
                            + " is at 'Work rates'![A-Z]+11: refer to that if it is meant. A total by its name"
                            + " \\(Rickyard_...\\) never moves.");
        });
        assertStable(again);
        Runs.Run corrected = run(changed(
                again.file(),
                workbook -> workbook.getSheet("Dashboard").getRow(0).getCell(1).setCellFormula(rate(workbook, 11))));
        assertThat(moves(corrected)).as("once it refers to the row meant").isEmpty();
    }

    @Test
    void aColumnOfOursNewlyThereIsTold() throws IOException {
        String[] before = new String[1];
        Path referring = changed(first, workbook -> {
            before[0] = column(workbook, "Work rate");
            refer(workbook, rate(workbook, 10));
            Sheet machines = workbook.getSheet("Machines");
            machines.getRow(0).createCell(5).setCellValue("Output (t/h)");
            machines.getRow(1).createCell(5).setCellValue(40);
        });
        Runs.Run again = run(referring);
        try (ClientBook book = ClientBook.open(again.file())) {
            assertThat(column(book.poi(), "Work rate")).as("the column moved").isNotEqualTo(before[0]);
            assertThat(moves(again)).singleElement().satisfies(finding -> assertThat(finding.message())
                    .startsWith("this cell refers to 'Work rates'!" + before[0]
                            + "10, where 'Work rate' of Skel Beck, First cut, Long Acre, mow, Mower 3 m stood; now '")
                    .contains("What stood there is at 'Work rates'!" + column(book.poi(), "Work rate") + "10:"));
        }
        assertStable(again);
    }

    @Test
    void itIsSaidUntilWhatStoodThereIsBack() {
        Path referring = changed(first, workbook -> {
            refer(workbook, rate(workbook, 10));
            insertField(workbook);
        });
        Runs.Run moved = run(referring);
        assertThat(moves(run(moved.file()))).hasSize(1);
        Runs.Run back = run(changed(moved.file(), workbook -> {
            Sheet fields = workbook.getSheet("Fields");
            fields.removeRow(fields.getRow(1));
            fields.shiftRows(2, fields.getLastRowNum(), -1);
        }));
        assertThat(moves(back)).isEmpty();
    }

    @Test
    void aRowDeletedIsToldAsGone() throws IOException {
        Path referring = changed(first, workbook -> {
            refer(workbook, rate(workbook, 10));
            deleteLongAcre(workbook);
        });
        Runs.Run again = run(referring);
        assertThat(moves(again)).singleElement().satisfies(finding -> assertThat(finding.message())
                .containsPattern("where 'Work rate' of Skel Beck,.* Long Acre,.* stood; now 'Work rate' of"
                        + " Skel Beck,.* Home Field,")
                .contains("What stood there is no longer on the sheet."));
        assertStable(again);
    }

    @Test
    void aListSortedIsToldEvenThoughTheSheetFollowedTheSorting() throws IOException {
        LibreOffice.required();
        Path referring = run(changed(first, workbook -> refer(workbook, rate(workbook, 10))))
                .file();
        // The office program recalculates, so our sheet shows the other field before the next run already.
        Path sorted = LibreOffice.resave(changed(referring, MovedReferencesTest::swapLongAcreAndKilnClose));
        Runs.Run again = run(sorted);
        assertThat(moves(again)).singleElement().satisfies(finding -> assertThat(finding.message())
                .containsPattern(" Long Acre,.* stood; now .* Kiln Close,.* What stood there is at "));
        assertStable(again);
    }

    /** Libraries for scripts drop the record and all that formulas gave; what a word of ours tells of a row stays. */
    @Test
    void whatTheFileDoesNotTellIsWatchedFromThenOn() throws IOException {
        Path saved = changed(
                run(changed(first, workbook -> refer(workbook, rate(workbook, 10))))
                        .file(),
                workbook -> {
                    ClientBook.dropRecord(workbook);
                    for (Row row : workbook.getSheet(RATES)) {
                        for (Cell cell : row) {
                            if (cell.getCellType() == CellType.FORMULA && cell.getColumnIndex() != 0) {
                                ((XSSFCell) cell).getCTCell().unsetV();
                            }
                        }
                    }
                });
        Runs.Run again = run(saved);
        assertThat(moves(again)).isEmpty();
        Runs.Run inserted = run(changed(again.file(), MovedReferencesTest::insertField));
        assertThat(moves(inserted)).singleElement().satisfies(finding -> assertThat(finding.message())
                .containsPattern(" Long Acre,.* stood; now .* New Intake,.* What stood there is at "));
    }

    @Test
    void aCellThatTheClientMovedIsFollowed() {
        Path referring = run(changed(first, workbook -> refer(workbook, rate(workbook, 10))))
                .file();
        Runs.Run again = run(changed(referring, workbook -> {
            move(workbook.getSheet("Dashboard"));
            insertField(workbook);
        }));
        assertThat(moves(again)).singleElement().satisfies(finding -> assertThat(finding.cell())
                .contains(new CellAddress("Dashboard", 4, 1)));
    }

    private static void move(Sheet dashboard) {
        String formula = dashboard.getRow(0).getCell(1).getCellFormula();
        dashboard.removeRow(dashboard.getRow(0));
        dashboard.createRow(4).createCell(1).setCellFormula(formula);
    }

    @Test
    void totalsByNameAndAreasOfAllRowsNeverMove() throws IOException {
        Path referring = changed(first, workbook -> {
            Row row = workbook.createSheet("Dashboard").createRow(0);
            String letters = column(workbook, "Work rate");
            row.createCell(0).setCellFormula("Rickyard_hours");
            row.createCell(1).setCellFormula("SUM('Work rates'!" + letters + ":" + letters + ")");
            row.createCell(2).setCellFormula("SUM('Work rates'!" + letters + "10:" + letters + "500)");
            Name own = workbook.createName();
            own.setNameName("Own_hours");
            own.setRefersToFormula("Rickyard_hours");
            swapLongAcreAndKilnClose(workbook);
            insertField(workbook);
        });
        Runs.Run again = run(referring);
        assertThat(moves(again)).isEmpty();
        assertThat(again.messages()).anyMatch(message -> message.startsWith("3 cells of yours depend"));
        assertStable(again);
    }

    @Test
    void anAreaSaysWhatLeftItAndWhatEnteredIt() throws IOException {
        Path referring = changed(first, workbook -> {
            refer(workbook, "SUM(" + rate(workbook, 10) + ":" + column(workbook, "Work rate") + "11)");
            insertField(workbook);
        });
        Runs.Run again = run(referring);
        assertThat(moves(again)).singleElement().satisfies(finding -> assertThat(finding.message())
                .containsPattern("of the rows that stood in it, '.*Home Field,.*' no longer does; newly in it"
                        + " stands '.*New Intake,.*'\\. See that it covers what you mean\\."));
        assertStable(again);
    }

    @Test
    void anAreaThatHeldAllRowsSaysThatItDoesNoLonger() throws IOException {
        Path out = first;
        Path referring = changed(out, workbook -> {
            int last = workbook.getSheet(RATES).getLastRowNum() + 1;
            refer(workbook, "SUM(" + rate(workbook, 10) + ":" + column(workbook, "Work rate") + last + ")");
            insertField(workbook);
        });
        Runs.Run again = run(referring);
        assertThat(moves(again)).singleElement().satisfies(finding -> assertThat(finding.message())
                .contains("it held all rows of the sheet and does no longer"));
    }

    @Test
    void namesAndChartsAndPivotTablesAreWatchedToo() throws IOException {
        Path referring = changed(first, workbook -> {
            String letters = column(workbook, "Work rate");
            Name name = workbook.createName();
            name.setNameName("Best_rate");
            name.setRefersToFormula("'Work rates'!$" + letters + "$10");
            chart(workbook, letters);
            pivot(workbook);
            insertField(workbook);
        });
        Runs.Run again = run(referring);
        assertThat(moves(again).stream().map(Finding::message))
                .satisfiesExactlyInAnyOrder(
                        message -> assertThat(message)
                                .startsWith("the name 'Best_rate' refers to 'Work rates'!")
                                .contains("Long Acre")
                                .contains("New Intake"),
                        message -> assertThat(message)
                                .startsWith("a chart on 'Pictures' refers to 'Work rates'!")
                                .contains("newly in it stands")
                                .contains("New Intake"),
                        message -> assertThat(message)
                                .startsWith("a pivot table on 'Pictures' refers to 'Work rates'!A7:D12")
                                .contains("newly in it stands")
                                .contains("New Intake"));
        assertStable(again);
    }

    private static void chart(XSSFWorkbook workbook, String letters) {
        XSSFSheet rates = workbook.getSheet(RATES);
        XSSFSheet sheet = workbook.createSheet("Pictures");
        XSSFChart chart = sheet.createDrawingPatriarch()
                .createChart(sheet.createDrawingPatriarch().createAnchor(0, 0, 0, 0, 0, 0, 5, 9));
        int column = CellReference.convertColStringToIndex(letters);
        XDDFChartData data = chart.createData(ChartTypes.PIE, null, null);
        data.addSeries(
                XDDFDataSourcesFactory.fromStringCellRange(rates, new CellRangeAddress(9, 10, column, column)),
                XDDFDataSourcesFactory.fromNumericCellRange(rates, new CellRangeAddress(9, 10, column, column)));
        chart.plot(data);
    }

    private static void pivot(XSSFWorkbook workbook) {
        workbook.getSheet("Pictures")
                .createPivotTable(
                        new AreaReference("'Work rates'!A7:D12", workbook.getSpreadsheetVersion()),
                        new CellReference("A20"),
                        workbook.getSheet(RATES))
                .addRowLabel(0);
    }

    @Test
    void linesOfSummaryAreKnownByTheirWordsAndTheHeadingOverThem() throws IOException {
        Path referring = changed(first, workbook -> {
            Sheet summary = workbook.getSheet("Summary");
            assertThat(summary.getRow(13).getCell(0).getStringCellValue()).isEqualTo("Thorn Garth");
            refer(workbook, "Summary!C15");
            insertField(workbook);
            workbook.getSheet("Fields").getRow(1).getCell(0).setCellValue("Skel Foot");
            Row job = workbook.getSheet("Jobs").createRow(3);
            String[] words = {"Skel Foot", "First cut", "grass", "mow", "Mower 3 m"};
            for (int i = 0; i < words.length; i++) {
                job.createCell(i).setCellValue(words[i]);
            }
        });
        Runs.Run again = run(referring);
        assertThat(moves(again)).singleElement().satisfies(finding -> assertThat(finding.message())
                .startsWith("this cell refers to Summary!C15, where the line of Thorn Garth, all listed work,"
                        + " holding hours stood; now the line of Skel Beck, all listed work, holding hours stands"
                        + " there. What stood there is at Summary!C17: refer to that if it is meant."));
        assertStable(again);
    }

    @Test
    void manyReferencesAreToldOnceAndCounted() throws IOException {
        Path referring = changed(first, workbook -> {
            Sheet sheet = workbook.createSheet("Dashboard");
            for (int row = 0; row < 50; row++) {
                sheet.createRow(row).createCell(0).setCellFormula(rate(workbook, 10) + "+" + row);
            }
            insertField(workbook);
        });
        Runs.Run again = run(referring);
        assertThat(moves(again)).singleElement().satisfies(finding -> assertThat(finding.message())
                .endsWith(" It is the same in A2 to A20."));
        assertThat(again.messages()).anyMatch(message -> message.startsWith("30 more references of yours"));
        assertStable(again);
    }
}
