package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.FarmBook.row;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.testing.Parity;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;

/** What a client has changed by hand on a sheet of ours stays, and the results stand on a new sheet beside it. */
class EditedSheetsTest {
    @TempDir
    static Path shared;

    private static Path first;

    @TempDir
    Path folder;

    /** One job is enough: it is one sheet that is edited. */
    @BeforeAll
    static void theFirstRun() throws IOException {
        Path given = org.rickyard.testing.FarmBook.empty()
                .sheet(
                        "Fields",
                        row("Holding", "Field", "Crop", "Area (ha)", "Block", "Run length (m)"),
                        row("Skel Beck", "Long Acre", "grass", 4.2, "Low", 180),
                        row("Skel Beck", "Home Field", "grass", 6.1, "Low", 240))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower 3 m", "mower", 3, 10, 80))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("Cut", "all", "mow", "Mower 3 m"))
                .write(shared.resolve("in.xlsx"));
        first = Runs.run(given, shared.resolve("out.xlsx")).file();
    }

    private void assertKept(Consumer<XSSFWorkbook> edit) throws IOException {
        Path edited = folder.resolve("edited.xlsx");
        try (ClientBook book = ClientBook.open(first)) {
            edit.accept(book.poi());
            book.save(edited);
        }
        Runs.Run again = Runs.run(edited, folder.resolve("again.xlsx"));
        assertThat(again.messages())
                .anyMatch(message -> message.startsWith("the sheet 'Work rates' was written by a run and then edited"));
        assertThat(again.sheets()).doesNotContain("Work rates").anyMatch(name -> name.startsWith("Work rates"));
        assertThat(again.differences(PoiRecalculation.of(again.file(), again.ours())))
                .isEmpty();
        assertThat(Parity.differences(
                        StoredValues.of(edited, "Work rates"), StoredValues.of(again.file(), "Work rates")))
                .as("the edited sheet as it was")
                .isEmpty();
        Runs.Run third = Runs.run(again.file(), folder.resolve("third.xlsx"));
        assertThat(Files.mismatch(again.file(), third.file()))
                .as("the next run changes nothing")
                .isEqualTo(-1);
    }

    /** Some programs and scripts save values in place of all formulas; a line for each sheet would hide other cautions. */
    @Test
    void manyEditedSheetsAreToldInOneSentence() throws IOException {
        Path edited = folder.resolve("edited.xlsx");
        try (ClientBook book = ClientBook.open(first)) {
            for (String name : List.of("Summary", "Work rates", "Trail", "Checks", "About", "As read")) {
                Sheet sheet = book.poi().getSheet(name);
                sheet.getRow(0).createCell(30).setCellValue("seen");
            }
            book.save(edited);
        }
        Runs.Run again = Runs.run(edited, folder.resolve("again.xlsx"));
        assertThat(again.messages())
                .filteredOn(message -> message.contains("written by a run and then edited"))
                .singleElement()
                .asString()
                .startsWith("these sheets were written by a run and then edited by hand, copied, or saved without their"
                        + " formulas: 'Summary', 'Work rates', ")
                .contains("'Checks'", "'About'");
        assertThat(again.sheets()).contains("Checks 2", "Work rates 2").doesNotContain("Checks", "Work rates");
        Runs.Run third = Runs.run(again.file(), folder.resolve("third.xlsx"));
        assertThat(Files.mismatch(again.file(), third.file())).isEqualTo(-1);
    }

    @Test
    void anEditIsKeptWhereTheStateWasDropped() throws IOException {
        assertKept(workbook -> {
            ClientBook.dropRecord(workbook);
            Sheet ours = workbook.getSheet("Work rates");
            ours.getRow(ours.getLastRowNum()).createCell(60).setCellValue("mine");
        });
    }

    @Test
    void aFormulaOfOursEditedByHandIsKept() throws IOException {
        assertKept(workbook -> firstOf(workbook, "Work rate").setCellFormula("2*3"));
    }

    @Test
    void aLinkOfOursLedToAnotherRowIsKept() throws IOException {
        assertKept(workbook -> relink(workbook, "$D$2", "$D$3"));
    }

    @Test
    void aLinkOfOursLedToAnotherColumnIsKept() throws IOException {
        assertKept(workbook -> relink(workbook, "$D$2", "$F$2"));
    }

    private static void relink(XSSFWorkbook workbook, String from, String to) {
        Cell cell = firstOf(workbook, "Area");
        assertThat(cell.getCellFormula()).contains("Fields!" + from);
        cell.setCellFormula(cell.getCellFormula().replace(from, to));
    }

    /** The first cell of a column of work rates, by its label. */
    private static Cell firstOf(XSSFWorkbook workbook, String label) {
        Sheet sheet = workbook.getSheet("Work rates");
        for (Cell cell : sheet.getRow(SheetPlaces.LABEL_ROW)) {
            if (cell.getStringCellValue().equals(label)) {
                return sheet.getRow(SheetPlaces.FIRST_ROW).getCell(cell.getColumnIndex());
            }
        }
        throw new AssertionError("no column '" + label + "'");
    }

    /** A link led to a column that no list reads is an edit where the column that it should lead to is still there. */
    @Test
    void aLinkOfOursLedToAColumnThatIsNotReadIsKept() throws IOException {
        assertKept(workbook -> relink(workbook, "$D$2", "$Z$2"));
    }

    @Test
    void aConstantOfOursEditedByHandIsKept() throws IOException {
        assertKept(workbook -> {
            Row labels = workbook.getSheet("Work rates").getRow(SheetPlaces.LABEL_ROW);
            labels.removeCell(labels.getCell(2));
            labels.createCell(2).setCellValue("My parcel");
        });
    }

    @Test
    void aCellAddedToASheetOfOursIsKept() throws IOException {
        assertKept(workbook ->
                workbook.getSheet("Work rates").getRow(9).createCell(140).setCellValue("my note"));
    }
}
