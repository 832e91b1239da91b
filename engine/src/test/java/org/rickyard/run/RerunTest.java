package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.testing.FarmBook;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;
import org.rickyard.workbook.graft.RunState;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.MeaningFingerprint;
import org.rickyard.workbook.write.SheetSet;

/** What a client does to the workbook between two runs. */
class RerunTest {
    @TempDir
    Path folder;

    @TempDir
    static Path shared;

    private static Path given;
    private static Path first;

    @BeforeAll
    static void theFirstRun() {
        given = TestBooks.smallFarm(shared.resolve("in.xlsx"));
        first = Runs.run(given, shared.resolve("out.xlsx")).file();
    }

    /** The farm as the first run left it, in this test's folder beside what that run was given. */
    private Path out() {
        try {
            Files.copy(given, folder.resolve("in.xlsx"));
            return Files.copy(first, folder.resolve("out.xlsx"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @FunctionalInterface
    private interface Change {
        void make(XSSFWorkbook workbook);
    }

    /** The workbook as the client saves it after a change. */
    private Path changed(Path file, Change change) {
        try (ClientBook book = ClientBook.open(file)) {
            change.make(book.poi());
            return book.save(folder.resolve("changed.xlsx"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private Runs.Run run(Path file) {
        return Runs.run(file, folder.resolve("again.xlsx"));
    }

    private static Map<CellAddress, Object> values(Runs.Run run) {
        return StoredValues.of(run.file(), run.ours());
    }

    private static List<String> parity(Runs.Run run) {
        return run.differences(PoiRecalculation.of(run.file(), run.ours()));
    }

    /** A run over the changed workbook with our sheets in it gives what one without them gives. */
    private void assertAsIfNew(Change change) {
        Runs.Run again = run(changed(out(), change));
        Runs.Run fresh = Runs.run(changed(folder.resolve("in.xlsx"), change), folder.resolve("fresh.xlsx"));
        assertThat(again.messages()).noneMatch(message -> message.contains("edited by hand or copied"));
        assertThat(again.sheets()).isEqualTo(fresh.sheets());
        assertThat(again.differences(values(fresh))).isEmpty();
        assertThat(parity(again)).isEmpty();
    }

    @Test
    void rowsDeletedFromAList() {
        assertAsIfNew(workbook -> {
            Sheet fields = workbook.getSheet("Fields");
            fields.removeRow(fields.getRow(3));
            fields.shiftRows(4, fields.getLastRowNum(), -1);
        });
    }

    /** A row of work leads to two rows of the machine list, its machine's and its tractor's. */
    @Test
    void aMachineSoldThatATractorPulled() throws Exception {
        Path book = FarmBook.empty()
                .sheet(
                        "Fields",
                        FarmBook.row("Field", "Crop", "Area (ha)"),
                        FarmBook.row("Long Acre", "grass", 4.2),
                        FarmBook.row("Top", "grass", 6.1))
                .sheet(
                        "Machines",
                        FarmBook.row(
                                "Machine", "Type", "Working width (m)", "Speed (km/h)", "Power (kW)", "Fuel (L/h)"),
                        FarmBook.row("Mower", "mower", 3, 12, null, null),
                        FarmBook.row("Rake", "rake", 7, 11, null, null),
                        FarmBook.row("Tractor A", "tractor", null, null, 90, 14),
                        FarmBook.row("Tractor B", "tractor", null, null, 70, 11))
                .sheet(
                        "Jobs",
                        FarmBook.row("Job", "Field", "Operation", "Machine", "Tractor", "Earliest", "Latest"),
                        FarmBook.row("Mow", "grass", "mow", "Mower", "Tractor A", 46160, 46170),
                        FarmBook.row("Rake", "grass", "rake", "Rake", "Tractor B", 46160, 46170))
                .write(folder.resolve("tractors.xlsx"));
        Path written = Runs.run(book, folder.resolve("written.xlsx")).file();
        for (int sold : new int[] {1, 3}) {
            Change deleted = workbook -> {
                Sheet machines = workbook.getSheet("Machines");
                machines.removeRow(machines.getRow(sold));
                machines.shiftRows(sold + 1, machines.getLastRowNum(), -1);
            };
            Runs.Run again = run(changed(written, deleted));
            Runs.Run fresh = Runs.run(changed(book, deleted), folder.resolve("fresh.xlsx"));
            assertThat(again.messages()).noneMatch(message -> message.contains("edited by hand or copied"));
            assertThat(again.sheets()).isEqualTo(fresh.sheets()).contains("Fuel and labour");
            assertThat(again.differences(values(fresh))).isEmpty();
        }
    }

    @Test
    void rowsInsertedIntoAList() {
        assertAsIfNew(workbook -> {
            Sheet fields = workbook.getSheet("Fields");
            fields.shiftRows(2, fields.getLastRowNum(), 1);
            Row row = fields.createRow(2);
            Object[] cells = {"Skel Beck", "New Intake", "grass", 2.5};
            for (int i = 0; i < cells.length; i++) {
                if (cells[i] instanceof Number number) {
                    row.createCell(i).setCellValue(number.doubleValue());
                } else {
                    row.createCell(i).setCellValue((String) cells[i]);
                }
            }
        });
    }

    @Test
    void aListSorted() {
        assertAsIfNew(workbook -> swapRows(workbook.getSheet("Fields"), 1, 4));
    }

    private static void swapRows(Sheet sheet, int one, int other) {
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

    /** Sorting does a sheet of ours no harm (and its rows stand in list order again), but an edit beside it counts. */
    @Test
    void aSheetOfOursSortedStaysOurs() {
        Runs.Run again = run(changed(out(), workbook -> SortedSheet.turnRound(workbook.getSheet("Work rates"))));
        assertThat(again.messages()).noneMatch(message -> message.contains("edited by hand or copied"));
        assertThat(again.differences(StoredValues.of(first, again.ours()))).isEmpty();
        assertThat(parity(again)).isEmpty();

        Runs.Run edited = run(changed(folder.resolve("out.xlsx"), workbook -> {
            SortedSheet.turnRound(workbook.getSheet("Work rates"));
            workbook.getSheet("Work rates")
                    .getRow(SheetPlaces.FIRST_ROW)
                    .getCell(6)
                    .setCellFormula("90+9");
        }));
        assertThat(edited.messages()).anyMatch(message -> message.contains("edited by hand or copied"));
    }

    /** Once every row was recorded in its place: such a sheet is no edited one, and an edit of it is one still. */
    @Test
    void aSheetRecordedWithEachRowInItsPlaceStaysOurs() throws IOException, RefusedException {
        Path placed = withRowsRecordedInTheirPlaces(out());
        Runs.Run again = run(placed);
        assertThat(again.messages()).noneMatch(message -> message.contains("edited by hand or copied"));
        assertThat(again.sheets()).doesNotContain("Work rates 2");

        Runs.Run edited = run(changed(placed, workbook -> workbook.getSheet("Work rates")
                .getRow(SheetPlaces.FIRST_ROW)
                .getCell(6)
                .setCellFormula("90+9")));
        assertThat(edited.messages()).anyMatch(message -> message.contains("edited by hand or copied"));
    }

    private static Path withRowsRecordedInTheirPlaces(Path file) throws IOException, RefusedException {
        Map<String, String> placed = new HashMap<>();
        try (BookPackage book = BookPackage.open(file)) {
            BookReader reader = new BookReader(book, book.stylesPart(), book.sharedStringsPart(), book.date1904());
            OurSheets ours = OurSheets.find(book, RunState.read(book.customXml(RunState.NAMESPACE)));
            for (Map.Entry<String, SheetRef> sheet : ours.byId().entrySet()) {
                MeaningFingerprint now = new MeaningFingerprint(SheetSet.firstSortableRow(sheet.getKey()));
                MeaningFingerprint then = new MeaningFingerprint();
                reader.stream(sheet.getValue(), now);
                reader.stream(sheet.getValue(), then);
                placed.put(now.hex(), then.hex());
                placed.put(now.unplacedHex(), then.unplacedHex());
                placed.put(now.rowlessHex(), then.rowlessHex());
            }
        }
        try (FileSystem zip = FileSystems.newFileSystem(file);
                Stream<Path> parts = Files.walk(zip.getPath("/"))) {
            for (Path part :
                    parts.filter(each -> each.toString().endsWith(".xml")).toList()) {
                String xml = Files.readString(part);
                String changed = Pattern.compile("[0-9a-f]{64}")
                        .matcher(xml)
                        .replaceAll(hex -> placed.getOrDefault(hex.group(), hex.group()));
                if (!changed.equals(xml)) {
                    Files.writeString(part, changed);
                }
            }
        }
        return file;
    }

    /** Summary and cards lead to cells, where other rows stand now: the check at the top of every sheet says so. */
    @Test
    void aSheetOfOursSortedIsSaidUntilTheNextRun() {
        Path sorted = changed(out(), workbook -> {
            assertThat(masterCheck(workbook)).contains("totals agree");
            SortedSheet.turnRound(workbook.getSheet("Work rates"));
            assertThat(masterCheck(workbook)).contains("SORTED").contains("Run again");
        });
        try (ClientBook again = ClientBook.open(run(sorted).file())) {
            assertThat(masterCheck(again.poi())).contains("totals agree");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String masterCheck(XSSFWorkbook workbook) {
        return workbook.getCreationHelper()
                .createFormulaEvaluator()
                .evaluate(workbook.getSheet("Checks").getRow(1).getCell(0))
                .getStringValue();
    }

    @Test
    void aSheetOfOursRenamedKeepsItsNewName() {
        Path renamed =
                changed(out(), workbook -> workbook.setSheetName(workbook.getSheetIndex("Work rates"), "Leistung"));
        Runs.Run again = run(renamed);
        assertThat(again.sheets()).contains("Leistung").doesNotContain("Work rates");
        assertThat(again.messages()).noneMatch(message -> message.contains("edited by hand or copied"));
        assertThat(parity(again)).isEmpty();
    }

    @Test
    void aSheetOfOursMovedStaysWhereItWasPut() throws IOException {
        Runs.Run again = run(changed(out(), workbook -> workbook.setSheetOrder("Checks", 0)));
        assertThat(again.messages()).noneMatch(message -> message.contains("edited by hand or copied"));
        try (ClientBook book = ClientBook.open(again.file())) {
            assertThat(book.poi().getSheetName(0)).isEqualTo("Checks");
        }
        assertThat(parity(again)).isEmpty();
    }

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

    @Test
    void sheetsAreKnownAgainWhereTheStateWasDropped() throws IOException, RefusedException {
        Change change = workbook -> {
            ClientBook.dropRecord(workbook);
            workbook.getSheet("Fields").getRow(1).getCell(1).setCellValue(7.25);
        };
        Path saved = changed(out(), change);
        try (BookPackage book = BookPackage.open(saved)) {
            assertThat(book.customXml(RunState.NAMESPACE)).isEmpty();
        }
        Runs.Run again = run(saved);
        Runs.Run fresh = Runs.run(changed(folder.resolve("in.xlsx"), change), folder.resolve("fresh.xlsx"));
        assertThat(again.messages()).noneMatch(message -> message.contains("edited by hand or copied"));
        assertThat(again.sheets()).isEqualTo(fresh.sheets());
        assertThat(again.differences(values(fresh))).isEmpty();
        Runs.Run third = Runs.run(again.file(), folder.resolve("third.xlsx"));
        assertThat(Files.mismatch(again.file(), third.file()))
                .as("the next run changes nothing")
                .isEqualTo(-1);
    }

    @Test
    void aListRenamedIsNoEdit() {
        Runs.Run again =
                run(changed(out(), workbook -> workbook.setSheetName(workbook.getSheetIndex("Fields"), "Our land")));
        assertThat(again.messages()).noneMatch(message -> message.contains("edited by hand or copied"));
        assertThat(again.sheets()).contains("Work rates").doesNotContain("Work rates 2");
        assertThat(parity(again)).isEmpty();
    }

    /** The links followed the column as it moved; that its header is not known any more is no edit of ours. */
    @Test
    void aColumnMovedAndRenamedInOneGoIsNoEdit() {
        Runs.Run again = run(changed(out(), workbook -> {
            Sheet jobs = workbook.getSheet("Jobs");
            jobs.shiftColumns(8, 9, 1);
            jobs.getRow(0).createCell(8).setCellValue("Who does it");
            jobs.getRow(0).getCell(9).setCellValue("Karrier");
        }));
        assertThat(again.messages()).noneMatch(message -> message.contains("edited by hand or copied"));
        assertThat(again.sheets()).contains("Spray blocks").noneMatch(sheet -> sheet.endsWith(" 2"));
        assertThat(parity(again)).isEmpty();
    }

    /** In a template a total of ours is named before any run has brought it. */
    @Test
    void aTotalNamedBeforeTheFirstRunIsKnownInTheFirst() throws IOException {
        Path template = changed(given, workbook -> {
            Row row = workbook.createSheet("Dashboard").createRow(0);
            XSSFCell total = (XSSFCell) row.createCell(0);
            total.setCellErrorValue(FormulaError.NAME);
            total.getCTCell().addNewF().setStringValue("Rickyard_hours");
        });
        Runs.Run once = Runs.run(template, folder.resolve("once.xlsx"));
        assertThat(once.messages()).anyMatch(message -> message.startsWith("1 cell of yours depends on these results"));
        Runs.Run again = Runs.run(once.file(), folder.resolve("twice.xlsx"));
        assertThat(Files.mismatch(once.file(), again.file())).isEqualTo(-1);
    }

    /** So are sheets of ours: by cells, by names, and through a name; one of them we never bring. */
    @Test
    void sheetsNamedBeforeTheFirstRunAreKnownInTheFirst() throws IOException {
        Path template = changed(given, workbook -> {
            Row row = workbook.createSheet("Dashboard").createRow(0);
            List<String> formulas = List.of(
                    "'Work rates'!Q10*2", "Summary!C9", "SUM('work RATES'!Q10:Q12)", "MyHours+1", "'No such sheet'!A1");
            for (int i = 0; i < formulas.size(); i++) {
                XSSFCell cell = (XSSFCell) row.createCell(i);
                cell.setCellValue(0);
                cell.getCTCell().addNewF().setStringValue(formulas.get(i));
            }
            ((XSSFCell) row.createCell(5)).getCTCell().addNewF().setStringValue("'Work rates'!$Q$11");
            Name name = workbook.createName();
            name.setNameName("MyHours");
            name.setRefersToFormula("'Work rates'!$Q$10");
        });
        Runs.Run once = Runs.run(template, folder.resolve("once.xlsx"));
        assertThat(once.messages()).anyMatch(message -> message.startsWith("5 cells of yours depend on these results"));
        Runs.Run again = Runs.run(once.file(), folder.resolve("twice.xlsx"));
        assertThat(again.messages()).isEqualTo(once.messages());
        assertThat(Files.mismatch(once.file(), again.file())).isEqualTo(-1);

        Runs.Run moved = run(changed(once.file(), workbook -> swapRows(workbook.getSheet("Fields"), 1, 4)));
        assertThat(moved.messages()).anyMatch(message -> message.contains("'Work rates'!Q10"));
    }

    /** An area that our own result feeds is as much of a loop in the first run as it is in the second. */
    @Test
    void anInputThatDependsOnASheetNotYetBroughtIsStopped() throws IOException {
        Path template = changed(given, workbook -> {
            XSSFCell area = workbook.getSheet("Fields").getRow(1).getCell(3);
            area.getCTCell().addNewF().setStringValue("'Work rates'!Q10+1");
        });
        Runs.Run once = Runs.run(template, folder.resolve("once.xlsx"));
        assertThat(once.findings()).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.STOP);
            assertThat(finding.cell()).contains(new CellAddress("Fields", 1, 3));
        });
        Runs.Run again = Runs.run(once.file(), folder.resolve("twice.xlsx"));
        assertThat(Files.mismatch(once.file(), again.file())).isEqualTo(-1);
    }

    @Test
    void aDashboardOfTheClientsGoesOnWorking() throws IOException {
        Path out = out();
        Path dashboard = changed(out, workbook -> {
            Sheet sheet = workbook.createSheet("Dashboard");
            Row row = sheet.createRow(0);
            row.createCell(0).setCellFormula("Rickyard_hours");
            row.createCell(1).setCellFormula("'Work rates'!Q10*2");
            row.createCell(2).setCellFormula("SUM('Work rates'!Q10:Q12)");
        });
        Runs.Run again = run(dashboard);
        assertThat(again.messages())
                .anyMatch(message -> message.startsWith("3 cells of yours depend on these results"));
        Map<CellAddress, Object> values = PoiRecalculation.of(again.file(), "Dashboard");
        double hours = again.results("hours").stream()
                .mapToDouble(result -> result.number().orElse(0.0))
                .sum();
        assertThat((Double) values.get(new CellAddress("Dashboard", 0, 0)))
                .isCloseTo(hours, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(parity(again)).isEmpty();
        try (ClientBook book = ClientBook.open(again.file())) {
            assertThat(book.poi().getSheet("Dashboard").getRow(0).getCell(1).getCellFormula())
                    .isEqualTo("'Work rates'!Q10*2");
        }
    }

    @Test
    void anInputThatDependsOnOurResultsIsStopped() {
        Path looped = changed(out(), workbook -> {
            Sheet sheet = workbook.createSheet("Own sums");
            sheet.createRow(0).createCell(0).setCellFormula("Rickyard_hours/10");
            workbook.getSheet("Fields").getRow(1).getCell(3).setCellFormula("'Own sums'!A1+1");
            workbook.getSheet("Fields").getRow(1).getCell(3).setCellValue(4.2);
        });
        Runs.Run again = run(looped);
        assertThat(again.findings()).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.STOP);
            assertThat(finding.cell()).contains(new CellAddress("Fields", 1, 3));
        });
        assertThat(again.results("hours")).anyMatch(result -> !result.given());
        assertThat(values(again).values()).noneMatch(value -> value instanceof org.rickyard.testing.CellError);
        assertThat(parity(again)).isEmpty();
        assertThat(again.result("hours", "Long Acre", "Second cut").reason()).contains("area");
    }

    /** The name was led to our total and the client's formulas with it, and a number by a name was gone: not a word. */
    @Test
    void aNameOfTheClientsThatIsThatOfATotalIsLeftAlone() throws Exception {
        Path out = folder.resolve("once.xlsx");
        for (String formula : List.of("Fields!$B$1", "250", "\"ten\"")) {
            Path named = named("Rickyard_hours", formula);
            assertThatThrownBy(() -> Runs.tried(named, out, RunOptions.usual()))
                    .isInstanceOf(RefusedException.class)
                    .hasMessageContaining("'Rickyard_hours', which stands for " + formula);
            assertThat(out).doesNotExist();
        }
        Runs.run(named("Rickyard_factor", "0.25"), out);
        try (BookPackage book = BookPackage.open(out)) {
            assertThat(book.definedNames()).extracting(DefinedName::name).contains("Rickyard_factor", "Rickyard_hours");
        }
    }

    private Path named(String name, String formula) {
        return changed(given, workbook -> {
            Name added = workbook.createName();
            added.setNameName(name);
            added.setRefersToFormula(formula);
        });
    }
}
