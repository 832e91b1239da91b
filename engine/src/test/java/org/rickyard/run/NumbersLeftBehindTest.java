package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDefinedName;

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
            if (name.getName().equals(OurSheets.MARKER)) {
                numbers.put(name.getStringValue(), name.getLocalSheetId());
            }
        }
        change.make(workbook);
        workbook.getAllNames().stream()
                .filter(name -> name.getNameName().equals(OurSheets.MARKER))
                .forEach(name -> name.setSheetIndex(Math.toIntExact(numbers.get(name.getRefersToFormula()))));
    }
}
