package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.CellAddress;

/**
 * A client changes cells in a written workbook and does not run again. What the grid then shows is what a new run would
 * show, or is withheld, or every sheet says at its top that a new run is needed.
 */
class AsReadTest {
    private static final CellAddress MASTER = EditsInTheGrid.MASTER;
    private static final String AGREE = EditsInTheGrid.AGREE;
    private static final String AGAIN = EditsInTheGrid.AGAIN;

    @TempDir
    static Path folder;

    private static EditsInTheGrid edits;
    private static Runs.Run run;
    private static LiveGrid grid;
    private static ClientBook lists;

    @BeforeAll
    static void write() {
        edits = new EditsInTheGrid(book(), folder);
        run = edits.run;
        grid = edits.grid;
        lists = edits.lists;
    }

    @AfterAll
    static void close() throws IOException {
        edits.close();
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

    @Test
    void theGridShowsWhatANewRunShowsOrSaysThatOneIsNeeded() throws IOException {
        EditsInTheGrid.Outcome outcome = edits.make(new Random(9));
        System.out.println("edits without a new run: " + outcome.followed() + " followed, " + outcome.said()
                + " said to need one");
        assertThat(outcome.faults()).isEmpty();
        assertThat(outcome.followed()).isGreaterThan(35);
        assertThat(outcome.said()).isGreaterThan(60);
    }
}
