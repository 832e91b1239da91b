package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.audit.Result;
import org.rickyard.lists.CellAddress;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;

/**
 * Forms: the headers of a list below one another, with what is told of each thing beside them. What is read from them
 * goes through the grid as what stands in lists proper does.
 */
class FormsAsReadTest {
    @TempDir
    static Path folder;

    private static EditsInTheGrid edits;

    @BeforeAll
    static void write() {
        edits = new EditsInTheGrid(FarmOnForms.forms(), folder);
    }

    @AfterAll
    static void close() throws IOException {
        edits.close();
    }

    private record Answer(String id, Object about, Object number, Object word, String unit) {
        static Answer of(Result result) {
            return new Answer(result.id(), result.about(), result.number(), result.word(), result.unit());
        }
    }

    @Test
    void theyGiveWhatListsProperGive() {
        Path file = folder.resolve("lists.xlsx");
        FarmOnForms.lists().save(file);
        Runs.Run run = Runs.run(file, folder.resolve("lists out.xlsx"), new RunOptions(0, false, 1));
        assertThat(edits.run.results()).hasSizeGreaterThan(60);
        assertThat(edits.run.results().stream().filter(Result::given)).hasSizeGreaterThan(30);
        assertThat(edits.run.results().stream().map(Answer::of))
                .containsExactlyElementsOf(
                        run.results().stream().map(Answer::of).toList());
    }

    @Test
    void anotherProgramWorksOutWhatIsStored() {
        var stored = StoredValues.of(edits.run.file(), edits.run.ours());
        assertThat(stored).hasSizeGreaterThan(300);
        assertThat(edits.run.differences(stored, PoiRecalculation.of(edits.run.file(), edits.run.ours())))
                .isEmpty();
    }

    @Test
    void theGridShowsWhatANewRunShowsOrSaysThatOneIsNeeded() throws IOException {
        EditsInTheGrid.Outcome outcome = edits.make(new Random(3));
        assertThat(outcome.faults()).isEmpty();
        assertThat(outcome.followed()).isGreaterThan(8);
        assertThat(outcome.said()).isGreaterThan(25);
    }

    /** A label, a name, a word, a unit; a further label below, a further thing beside. */
    @ParameterizedTest(name = "{0}!{1} {2}")
    @CsvSource({
        "Bunker,A1,Old clamp",
        "Bunker,A4,Floor width",
        "Bunker,B3,heap",
        "Bunker,C4,ft",
        "Bunker,A10,Batter",
        "Tackle,B9,mower",
        "Tackle,C4,9",
        "Tackle,A13,Overlap (m)",
        "Tackle,A7,Overlap (m)",
        "Job card,E1,Other boom",
        "Job card,D3,Hopper (L)",
        "Job card,D14,Tank fill time (min)",
        "Job card,A7,Number of nozzles"
    })
    void whatOnlyARunReadsIsSaidToHaveChanged(String sheet, String cell, String after) {
        CellAddress address = new CellAddress(sheet, Integer.parseInt(cell.substring(1)) - 1, cell.charAt(0) - 'A');
        assertThat(edits.grid.value(EditsInTheGrid.MASTER)).isEqualTo(EditsInTheGrid.AGREE);
        edits.grid.spoil(address, after.equals("9") ? (Object) 9.0 : after);
        Object said = edits.grid.value(EditsInTheGrid.MASTER);
        edits.grid.mend();
        assertThat((String) said).startsWith(EditsInTheGrid.AGAIN);
    }

    /** A label put in between others, where no line looks, and a column between label and what is told. */
    @Test
    void aRowOrAColumnPutInIsSaid() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(edits.run.file()))) {
            Sheet card = book.getSheet("Job card");
            card.shiftRows(2, 16, 1);
            assertThat(master(book)).isEqualTo(EditsInTheGrid.AGREE);
            card.createRow(2).createCell(0).setCellValue("Slope (%)");
            assertThat(master(book)).startsWith(EditsInTheGrid.AGAIN);
        }
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(edits.run.file()))) {
            Sheet tackle = book.getSheet("Tackle");
            tackle.shiftColumns(1, 3, 1);
            assertThat(master(book)).isEqualTo(EditsInTheGrid.AGREE);
            for (Row row : tackle) {
                row.createCell(1).setCellValue("new");
            }
            assertThat(master(book)).startsWith(EditsInTheGrid.AGAIN);
        }
    }

    private static String master(XSSFWorkbook book) {
        CellAddress cell = EditsInTheGrid.MASTER;
        return book.getCreationHelper()
                .createFormulaEvaluator()
                .evaluate(book.getSheet(cell.sheet()).getRow(cell.row()).getCell(cell.column()))
                .getStringValue();
    }
}
