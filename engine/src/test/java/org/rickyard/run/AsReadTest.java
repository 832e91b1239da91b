package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.testing.Parity;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/**
 * A client changes cells in a written workbook and does not run again. What the grid then shows is what a new run would
 * show, or is withheld, or every sheet says at its top that a new run is needed.
 */
class AsReadTest {
    private static final CellAddress MASTER = new CellAddress("Checks", 1, 0);
    private static final String AGREE = "Checks: all totals agree";
    private static final String AGAIN = "Checks: RUN AGAIN - ";
    /** Their rows are the tankfuls of the run, which Checks holds against the blocks. */
    private static final Set<String> ROWS_OF_A_METHOD = Set.of("tank-loads", "tank-fills");

    @TempDir
    static Path folder;

    private static Path client;
    private static Runs.Run run;
    private static LiveGrid grid;
    private static ClientBook lists;

    @BeforeAll
    static void write() {
        client = folder.resolve("in.xlsx");
        book().save(client);
        run = Runs.run(client, folder.resolve("out.xlsx"), new RunOptions(0, false, 1));
        grid = new LiveGrid(run.file(), run.plan(), run.places());
        lists = ClientBook.open(client);
    }

    @AfterAll
    static void close() throws IOException {
        grid.close();
        lists.close();
    }

    private static Object[] row(Object... cells) {
        return cells;
    }

    private static ClientBook book() {
        return ClientBook.create()
                .sheet(
                        "Fields",
                        row(
                                "Holding",
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Distance to clamp (km)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at cutting (%)",
                                "DM at ensiling (%)",
                                "Clamp",
                                "Watercourse"),
                        row("Skel Beck", "Long Acre", "grass", 4.2, 1.2, 22, "standing fresh", 18, 28, "Main", null),
                        row("Skel Beck", "Kiln Close", "grass", 5.3, 2.5, 6.5, "dry matter", 17, 30, "Main", "none"),
                        row("Skel Beck", "Beacon", "wheat", 8.2, null, null, null, null, null, null, "stream"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Tank (L)",
                                "Nozzle size",
                                "Mass (t)"),
                        row("Mower", "mower", 3.1, 10, 80, null, null, null),
                        row("Rake", "rake", 6, 11, 75, null, null, null),
                        row("Boom", "sprayer", 12, 8, 60, 900, "04", null),
                        row("Packer", "clamp roller", null, null, null, null, null, 12))
                .sheet(
                        "Products",
                        row("Product", "Unit", "Highest dose", "Spray quality"),
                        row("Product A", "L", 1.5, "medium"),
                        row("Product B", "L", 2, "coarse"))
                .sheet(
                        "Jobs",
                        row(
                                "Holding",
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Product",
                                "Dose",
                                "Dose unit",
                                "Water volume (L/ha)",
                                "Speed (km/h)"),
                        row("Skel Beck", "Mow", "grass", "mowing", "Mower", null, null, null, null, 9),
                        row("Skel Beck", "Row up", "grass", "raking", "Rake", null, null, null, null, null),
                        row("Skel Beck", "T1", "Beacon", "spraying", "Boom", "Product A", 1, "L/ha", 200, null),
                        row("Skel Beck", "T1", "Beacon", "spraying", "Boom", "Product B", 1.2, "L/ha", 200, null),
                        // More jobs than machines, which share the column of speeds.
                        row("Skel Beck", "Row again", "grass", "raking", "Rake", null, null, null, null, null))
                .sheet(
                        "Clamps",
                        row(
                                "Holding",
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "Batter",
                                "Settled height (m)",
                                "Country"),
                        row("Skel Beck", "Main", "walled", 30, 9, 2.4, null, 2.2, "Wales"),
                        row("Skel Beck", "Old pit", "earth pit", 20, 7, null, "1 in 2", 2, null));
    }

    /** Each is a change that no cell of ours can follow. */
    @ParameterizedTest(name = "{0}!{1} {2} -> {3}")
    @CsvSource({
        "Fields,C2,grass,wheat",
        "Fields,G2,standing fresh,as carted fresh",
        "Fields,J2,Main,Old pit",
        "Fields,K2,,river",
        "Fields,B5,,New Piece",
        "Fields,D1,Area (ha),Area (ac)",
        "Fields,L1,,Slope (%)",
        "Machines,B2,mower,rake",
        "Machines,G4,04,03",
        "Jobs,E2,Mower,Mower x 2",
        "Jobs,J3,,7",
        "Jobs,J6,,7",
        "Jobs,I5,200,150",
        "Clamps,C2,walled,heap",
        "Clamps,G3,1 in 2,1 in 3"
    })
    void whatOnlyARunReadsIsSaidToHaveChanged(String sheet, String cell, String before, String after) {
        CellAddress address = address(sheet, cell);
        Object stood = grid.value(MASTER);
        grid.spoil(address, typed(after));
        Object said = grid.value(MASTER);
        List<String> changed = changed();
        grid.mend();
        assertThat(lists.content(address)).isEqualTo(typed(before));
        assertThat(stood).isEqualTo(AGREE);
        assertThat((String) said).startsWith(AGAIN);
        assertThat(changed).containsExactly(sheet + "!" + (address.row() + 1));
        assertThat(grid.value(MASTER)).isEqualTo(AGREE);
    }

    @Test
    void anErrorInSuchACellIsSaidToo() {
        grid.spoil(address("Fields", "C2"), ClientBook.ERROR);
        Object said = grid.value(MASTER);
        grid.mend();
        assertThat((String) said).startsWith(AGAIN);
    }

    /** Above the first row, between two, and right below the last: no line looks where there was no row. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4})
    void aRowPutInIsSaid(int at) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(run.file()))) {
            Sheet fields = book.getSheet("Fields");
            fields.createRow(6).createCell(1).setCellValue("a note below");
            fields.shiftRows(at, 6, 1);
            assertThat(master(book)).isEqualTo(AGREE);
            fields.createRow(at).createCell(1).setCellValue("New Piece");
            assertThat(master(book)).startsWith(AGAIN);
        }
    }

    private static String master(XSSFWorkbook book) {
        return book.getCreationHelper()
                .createFormulaEvaluator()
                .evaluate(book.getSheet("Checks").getRow(MASTER.row()).getCell(MASTER.column()))
                .getStringValue();
    }

    /** The rows of the client's that the sheet says have changed. */
    private static List<String> changed() {
        List<String> rows = new ArrayList<>();
        var sheet = grid.sheet("As read");
        for (int row = 6; row <= sheet.getLastRowNum(); row++) {
            String read = sheet.getRow(row).getCell(2).getStringCellValue();
            if (!read.endsWith(" filled")
                    && grid.value(new CellAddress("As read", row, 4)).equals("changed: run again")) {
                String place = sheet.getRow(row).getCell(1).getStringCellValue();
                rows.add(place.replaceAll("![A-Z]+", "!"));
            }
        }
        return rows;
    }

    private static Object typed(String text) {
        return text == null ? null : text.matches("[1-9][0-9]*") ? (Object) Double.valueOf(text) : text;
    }

    private static CellAddress address(String sheet, String cell) {
        return new CellAddress(sheet, Integer.parseInt(cell.substring(1)) - 1, cell.charAt(0) - 'A');
    }

    private record Edit(ColumnSpec column, CellAddress cell, Object after) {}

    /** Every column of every list: a cell changed, one emptied and a blank filled, drawn from a seed. */
    private static List<Edit> edits(Random random) {
        List<Edit> edits = new ArrayList<>();
        for (ListSpec list : Lists.ALL) {
            ListRows rows = run.plan().lists().rows(list);
            for (ColumnSpec column : list.columns()) {
                List<CellAddress> filled = new ArrayList<>();
                List<CellAddress> blank = new ArrayList<>();
                List<Object> contents = new ArrayList<>();
                for (int row = 0; row < rows.size(); row++) {
                    rows.address(column, row).ifPresent(cell -> {
                        Object content = lists.content(cell);
                        (content == null ? blank : filled).add(cell);
                        contents.add(content);
                    });
                }
                contents.removeIf(java.util.Objects::isNull);
                if (filled.isEmpty()) {
                    continue;
                }
                CellAddress cell = filled.get(random.nextInt(filled.size()));
                edits.add(new Edit(column, cell, other(column, lists.content(cell), random)));
                edits.add(new Edit(column, filled.get(random.nextInt(filled.size())), null));
                if (!blank.isEmpty()) {
                    edits.add(new Edit(column, blank.get(0), contents.get(random.nextInt(contents.size()))));
                }
            }
        }
        return edits;
    }

    private static Object other(ColumnSpec column, Object content, Random random) {
        if (content instanceof Double number) {
            return number * 0.9;
        }
        List<String> words = new ArrayList<>(column.choices().keySet());
        words.remove(content);
        return words.isEmpty() ? content + " new" : words.get(random.nextInt(words.size()));
    }

    @Test
    void theGridShowsWhatANewRunShowsOrSaysThatOneIsNeeded() throws IOException {
        List<String> faults = new ArrayList<>();
        int same = 0;
        int said = 0;
        for (Edit edit : edits(new Random(9))) {
            Object before = lists.content(edit.cell());
            grid.spoil(edit.cell(), edit.after());
            lists.set(edit.cell(), edit.after());
            boolean again = grid.value(MASTER).toString().startsWith(AGAIN);
            List<String> differences = differences(grid.values(), fresh());
            grid.mend();
            lists.set(edit.cell(), before);
            if (again) {
                said++;
                if (edit.column().type() == ColumnSpec.Type.NUMBER
                        && before != null
                        && edit.after() != null
                        && differences.isEmpty()) {
                    faults.add(edit + " is followed, yet a new run is asked for");
                }
            } else if (differences.isEmpty()) {
                same++;
            } else {
                faults.add(edit + " was " + before + ", and nothing is said of " + differences);
            }
        }
        System.out.println("edits without a new run: " + same + " followed, " + said + " said to need one");
        assertThat(faults).isEmpty();
        assertThat(same).isGreaterThan(35);
        assertThat(said).isGreaterThan(60);
    }

    private static WorkPlan fresh() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        lists.poi().write(bytes);
        try (BookPackage book = BookPackage.open(new ByteArrayInputStream(bytes.toByteArray()), "lists.xlsx")) {
            return Recalculation.of(book, new RunOptions(0, false, 1)).plan();
        } catch (RefusedException refused) {
            throw new AssertionError("refused: " + refused.getMessage(), refused);
        }
    }

    /** Rows and values that a new run has and the grid has not, or has otherwise; what is withheld is honest. */
    private static List<String> differences(Map<CellAddress, Object> live, WorkPlan fresh) {
        Set<String> differences = new TreeSet<>();
        for (ResultTable table : run.plan().tables()) {
            ResultTable again = fresh.table(table.spec().id());
            if (ROWS_OF_A_METHOD.contains(table.spec().id())) {
                continue;
            }
            if (again == null || again.rows() != table.rows()) {
                differences.add(table.spec().sheet() + " has " + (again == null ? 0 : again.rows()) + " rows");
                continue;
            }
            for (TableColumn column : table.spec().columns()) {
                if (column.joinsRows()
                        || column instanceof TableColumn.Sentence
                        || again.spec().column(column.symbol()).isEmpty()) {
                    continue;
                }
                for (int row = 0; row < table.rows(); row++) {
                    CellAddress cell = run.places().cell(table.spec(), column.symbol(), row);
                    Object shown = live.getOrDefault(cell, value(table.of(column.symbol()), row));
                    Object wanted = value(again.of(column.symbol()), row);
                    boolean withheld =
                            shown.equals("") || column instanceof TableColumn.Link && shown instanceof String;
                    if (!withheld && !alike(shown, wanted)) {
                        differences.add(table.spec().sheet() + " " + column.label() + " " + shown + ", not " + wanted);
                    }
                }
            }
        }
        return List.copyOf(differences);
    }

    private static boolean alike(Object shown, Object wanted) {
        return shown instanceof String one && wanted instanceof String other
                ? one.equalsIgnoreCase(other)
                : Parity.agree(shown, wanted, 1);
    }

    private static Object value(Values values, int row) {
        return values.words() ? values.word(row) : values.has(row) ? (Object) values.number(row) : "";
    }
}
