package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.testing.FarmBook;
import org.rickyard.testing.StoredValues;
import org.rickyard.workbook.graft.RunState;
import org.rickyard.workbook.meaning.MeaningFingerprint;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.write.SheetSet;

/** What a client does to the workbook between two runs. */
class RerunTest extends AfterAFirstRun {
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

    /** Some libraries count worksheets alone when they write the scopes of names: the last list was taken for Summary. */
    @Test
    void sheetsAreKnownAgainWhereAChartSheetIsNotCounted() throws IOException, RefusedException {
        Path saved = out();
        addChartSheet(saved);
        Runs.Run again = run(saved);
        assertThat(again.messages()).noneMatch(message -> message.contains("edited by hand"));
        assertThat(again.sheets()).contains("Work rates").noneMatch(name -> name.endsWith(" 2"));
        assertThat(again.differences(values(Runs.run(first, folder.resolve("as-before.xlsx")))))
                .isEmpty();
        try (BookPackage book = BookPackage.open(again.file())) {
            assertThat(book.definedNames())
                    .filteredOn(name -> name.name().startsWith("_xlnm.Print"))
                    .isNotEmpty()
                    .allMatch(name -> NameScopes.leadsTo(name, book.sheets().get(name.localSheetId())));
        }
        Runs.Run third = Runs.run(again.file(), folder.resolve("third.xlsx"));
        assertThat(Files.mismatch(again.file(), third.file()))
                .as("the next run changes nothing")
                .isEqualTo(-1);
    }

    /** A print area of the client's behind ours had the number of our last sheet, and went with the names of ours. */
    @Test
    void aPrintAreaBehindOursStaysWhereAChartSheetIsNotCounted() throws IOException, RefusedException {
        Path saved = out();
        addChartSheet(saved);
        int behind;
        try (BookPackage book = BookPackage.open(saved)) {
            behind = book.sheets().size();
        }
        String area = "'Their own'!$B$2:$C$9";
        try (FileSystem zip = FileSystems.newFileSystem(saved)) {
            Files.writeString(
                    zip.getPath("xl/worksheets/behind.xml"),
                    "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData/>"
                            + "</worksheet>");
            insert(
                    zip.getPath("[Content_Types].xml"),
                    "</Types>",
                    "<Override PartName=\"/xl/worksheets/behind.xml\" ContentType=\"application/vnd.openxmlformats-"
                            + "officedocument.spreadsheetml.worksheet+xml\"/>");
            insert(
                    zip.getPath("xl/_rels/workbook.xml.rels"),
                    "</Relationships>",
                    "<Relationship Id=\"behind\" Target=\"worksheets/behind.xml\" Type=\"http://schemas.openxmlformats"
                            + ".org/officeDocument/2006/relationships/worksheet\"/>");
            insert(
                    zip.getPath("xl/workbook.xml"),
                    "</sheets>",
                    "<sheet name=\"Their own\" sheetId=\"4001\" r:id=\"behind\"/>");
            insert(
                    zip.getPath("xl/workbook.xml"),
                    "</definedNames>",
                    "<definedName name=\"_xlnm.Print_Area\" localSheetId=\"" + (behind - 1) + "\">" + area
                            + "</definedName>");
        }
        Runs.Run again = run(saved);
        try (BookPackage book = BookPackage.open(again.file())) {
            assertThat(book.definedNames())
                    .filteredOn(name -> name.formula().equals(area))
                    .singleElement()
                    .satisfies(name -> assertThat(name.localSheetId()).isEqualTo(behind));
            assertThat(book.definedNames())
                    .filteredOn(name -> name.name().startsWith("_xlnm.Print"))
                    .isNotEmpty()
                    .allMatch(name -> NameScopes.leadsTo(name, book.sheets().get(name.localSheetId())));
        }
        Runs.Run third = Runs.run(again.file(), folder.resolve("third.xlsx"));
        assertThat(Files.mismatch(again.file(), third.file()))
                .as("the next run changes nothing")
                .isEqualTo(-1);
    }

    /** A sheet of a chart before all others. */
    private static void addChartSheet(Path saved) throws IOException {
        try (FileSystem zip = FileSystems.newFileSystem(saved)) {
            Files.writeString(
                    zip.getPath("xl/chartsheet.xml"),
                    "<chartsheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                            + "<sheetViews><sheetView workbookViewId=\"0\"/></sheetViews></chartsheet>");
            insert(
                    zip.getPath("[Content_Types].xml"),
                    "</Types>",
                    "<Override PartName=\"/xl/chartsheet.xml\" ContentType=\"application/vnd.openxmlformats-"
                            + "officedocument.spreadsheetml.chartsheet+xml\"/>");
            insert(
                    zip.getPath("xl/_rels/workbook.xml.rels"),
                    "</Relationships>",
                    "<Relationship Id=\"chart\" Target=\"chartsheet.xml\" Type=\"http://schemas.openxmlformats.org/"
                            + "officeDocument/2006/relationships/chartsheet\"/>");
            insert(
                    zip.getPath("xl/workbook.xml"),
                    "<sheet name=",
                    "<sheet name=\"Chart\" sheetId=\"4000\" r:id=\"chart\"/>");
        }
    }

    private static void insert(Path part, String before, String text) throws IOException {
        Files.writeString(
                part,
                Files.readString(part).replaceFirst(Pattern.quote(before), Matcher.quoteReplacement(text + before)));
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
    /** Only the cells of the list go along then, and As read looks at the cell behind its headers too. */
    @Test
    void aListDraggedToOtherRowsOfItsSheetIsNoEdit() {
        assertAsIfNew(workbook -> {
            Sheet machines = workbook.getSheet("Machines");
            machines.shiftRows(0, machines.getLastRowNum(), 20);
            Sheet asRead = workbook.getSheet("As read");
            if (asRead != null) {
                List<String> left = new ArrayList<>();
                for (Row row : asRead) {
                    for (Cell cell : row) {
                        String formula = cell.getCellType() == CellType.FORMULA ? cell.getCellFormula() : "";
                        if (formula.startsWith("Machines!$A$21&")) {
                            cell.setCellFormula(formula.replaceFirst("\\$21$", "\\$1"));
                            left.add(cell.getCellFormula());
                        }
                    }
                }
                assertThat(left).hasSize(1).allMatch(formula -> formula.endsWith("$1"));
            }
        });
    }

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
}
