package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.FarmBook.row;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDefinedName;
import org.rickyard.lists.CellAddress;
import org.rickyard.testing.FarmBook;

/**
 * Old libraries for scripts leave the numbers of sheets' names as they are when sheets are deleted or moved: the marks of
 * our sheets are then on others.
 */
class NumbersLeftBehindTest extends AfterAFirstRun {
    @Test
    void sheetsOfOursAreKnownAfterOneWasDeleted() throws IOException {
        knownAfter(workbook -> {
            workbook.removeSheetAt(workbook.getSheetIndex("Work rates"));
            // So that there is a sheet of the last number: POI writes no other.
            workbook.createSheet("Remarks");
        });
    }

    @Test
    void sheetsOfOursAreKnownAfterOneWasMoved() throws IOException {
        knownAfter(workbook -> workbook.setSheetOrder("Basis", 0));
    }

    @Test
    void sheetsOfOursAreKnownAfterTheClientPutOneBeforeThem() throws IOException {
        knownAfter(workbook -> {
            workbook.createSheet("Remarks");
            workbook.setSheetOrder("Remarks", 0);
        });
    }

    /** Its mark may be left behind, too, and is then that of nothing. */
    @Test
    void theLastOfThemIsNotTheClientsThatFollowed() throws IOException {
        knownAfter(workbook -> {
            workbook.createSheet("Remarks").createRow(0).createCell(0).setCellValue("bring the gate key");
            workbook.removeSheetAt(workbook.getSheetIndex("About"));
        });
    }

    /** The mark of one that was edited came to stand on the machines, which were read no more and were nowhere told of. */
    @Test
    void whatWasKeptIsNotAListOfTheClientsInItsPlace() throws IOException {
        Path edited = run(changed(out(), workbook -> workbook.getSheet("Summary")
                        .createRow(60)
                        .createCell(3)
                        .setCellValue("mine")))
                .file();
        Runs.Run again = Runs.run(
                changed(
                        edited,
                        workbook -> leavingNumbers(workbook, book -> {
                            int steps = book.getSheetIndex("Summary") - book.getSheetIndex("Machines");
                            for (int i = 0; i < steps; i++) {
                                book.createSheet("Remarks " + i);
                                book.setSheetOrder("Remarks " + i, 0);
                            }
                        })),
                folder.resolve("later.xlsx"));
        assertThat(figures(again)).isEqualTo(figures(Runs.run(given, folder.resolve("fresh.xlsx"))));
        assertThat(again.sheets()).contains("Summary 2").doesNotContain("Summary", "Summary 3");
    }

    /** Basis had been read as a list of machines and one of products. */
    @Test
    void aPageWhoseMarkIsGoneIsNoList() throws IOException {
        Path changed = changed(out(), book -> {
            ClientBook.dropRecord(book);
            for (XSSFName name : List.copyOf(book.getAllNames())) {
                if (isMark(name.getNameName()) && name.getRefersToFormula().startsWith("\"basis")) {
                    book.removeName(name);
                }
            }
        });
        Runs.Run again = run(changed);
        assertThat(again.sheets()).contains("Basis 2").doesNotContain("Basis");
        assertThat(again.messages()).anyMatch(message -> message.contains("'Basis'"));
        assertThat(figures(again)).isEqualTo(figures(Runs.run(given, folder.resolve("fresh.xlsx"))));
    }

    private static Map<CellAddress, Object> figures(Runs.Run run) {
        Map<CellAddress, Object> figures = new HashMap<>(values(run));
        figures.entrySet()
                .removeIf(cell -> !cell.getKey().sheet().equals("Work rates") || !(cell.getValue() instanceof Number));
        assertThat(figures).isNotEmpty();
        return figures;
    }

    private static boolean isMark(String name) {
        return name.equals(OurSheets.MARKER) || name.equals(OurSheets.KEPT_MARKER);
    }

    /** A farm that sprays nothing has no cards of ours, and its client may call a sheet so. */
    @Test
    void aPageOfTheClientsThatIsCalledAsOneOfOursMayBeStaysHis() throws IOException {
        Path own = FarmBook.empty()
                .sheet("Fields", row("Field", "Area (ha)"), row("Top", 5))
                .sheet("Spray cards", row("Machine", "Type", "Width (m)", "Speed (km/h)"), row("Mower", "mower", 3, 10))
                .write(folder.resolve("own.xlsx"));
        Runs.Run once = Runs.run(own, folder.resolve("once.xlsx"));
        Runs.Run twice = Runs.run(once.file(), folder.resolve("twice.xlsx"));
        assertThat(once.sheets()).doesNotContain("Spray cards").contains("Work rates");
        assertThat(twice.messages()).isEqualTo(once.messages());
        assertThat(Files.mismatch(twice.file(), once.file())).isEqualTo(-1);
        // A script has saved it since, and the list was no longer read: "written by a run", it was said.
        Runs.Run later = Runs.run(changed(once.file(), ClientBook::dropRecord), folder.resolve("after a script.xlsx"));
        assertThat(later.messages()).isEqualTo(once.messages());
        assertThat(values(later)).isEqualTo(values(once));
    }

    private void knownAfter(Change change) throws IOException {
        Runs.Run fresh = Runs.run(given, folder.resolve("fresh.xlsx"));
        Runs.Run again = run(changed(out(), workbook -> leavingNumbers(workbook, change)));
        assertThat(again.sheets()).containsExactlyInAnyOrderElementsOf(fresh.sheets());
        assertThat(again.messages()).isEqualTo(fresh.messages());
        assertThat(values(again)).isEqualTo(values(fresh));
        assertThat(Files.mismatch(
                        Runs.run(again.file(), folder.resolve("third.xlsx")).file(), again.file()))
                .isEqualTo(-1);
    }

    private static void leavingNumbers(XSSFWorkbook workbook, Change change) {
        Map<String, Long> numbers = new HashMap<>();
        for (CTDefinedName name : workbook.getCTWorkbook().getDefinedNames().getDefinedNameList()) {
            if (isMark(name.getName())) {
                numbers.put(name.getStringValue(), name.getLocalSheetId());
            }
        }
        change.make(workbook);
        workbook.getAllNames().stream()
                .filter(name -> isMark(name.getNameName()))
                .forEach(name -> name.setSheetIndex(Math.toIntExact(numbers.get(name.getRefersToFormula()))));
    }
}
