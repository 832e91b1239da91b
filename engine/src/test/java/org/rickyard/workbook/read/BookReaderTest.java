package org.rickyard.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rickyard.workbook.open.SheetRef;

class BookReaderTest {
    private static final SheetRef FIELDS = Parts.sheet("Fields", 1);
    private static final SheetRef CHART = new SheetRef("Chart", 1, 2, "xl/chartsheets/sheet1.xml", false, false);
    private static final SheetRef HIDDEN = new SheetRef("Machines", 2, 3, "xl/worksheets/sheet3.xml", true, true);
    private static final SheetRef NOTES = Parts.sheet("Notes", 4);
    private static final List<SheetRef> SHEETS = List.of(FIELDS, CHART, HIDDEN, NOTES);

    private static Parts parts() {
        return new Parts()
                .withRows(FIELDS, "<row><c><v>1</v></c></row>")
                .withRows(HIDDEN, "<row><c><f>A2</f><v>2</v></c></row>")
                .withRows(NOTES, "");
    }

    @Test
    void worksheetsAreReadInTheirOrderAndChartsLeftOut() throws IOException {
        List<SheetCells> read =
                BookReader.read(parts(), SHEETS, Optional.empty(), Optional.empty(), false, sheet -> true);
        assertThat(read).extracting(SheetCells::sheet).containsExactly("Fields", "Machines", "Notes");
        assertThat(read).extracting(SheetCells::hidden).containsExactly(false, true, false);
        assertThat(read.get(2).rows()).isZero();
        assertThat(read.get(2).columns()).isZero();
    }

    @Test
    void hiddenRowsAreTold() throws IOException {
        Parts parts = parts().withRows(
                        FIELDS,
                        "<row><c><v>1</v></c></row><row hidden='1'><c><v>2</v></c></row>"
                                + "<row hidden='0'><c><v>3</v></c></row><row r='9' hidden='true'><c><v>4</v></c></row>");
        SheetCells fields = BookReader.read(
                        parts, SHEETS, Optional.empty(), Optional.empty(), false, sheet -> sheet == FIELDS)
                .get(0);
        assertThat(IntStream.range(0, 10).filter(fields::isHidden)).containsExactly(1, 8);
    }

    @Test
    void hiddenColumnsAreTold() throws IOException {
        Parts parts = parts().with(
                        FIELDS.part(),
                        "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><cols>"
                                + "<col min='1' max='1' width='9'/><col min='3' max='4' hidden='1'/>"
                                + "<col min='6' max='6' hidden='0'/><col min='9' max='16384' hidden='true'/></cols>"
                                + "<sheetData><row><c><v>1</v></c></row></sheetData></worksheet>");
        SheetCells fields = BookReader.read(
                        parts, SHEETS, Optional.empty(), Optional.empty(), false, sheet -> sheet == FIELDS)
                .get(0);
        assertThat(IntStream.range(0, 10).filter(fields::isHiddenColumn)).containsExactly(2, 3, 8, 9);
        assertThat(fields.number(0, 0)).isEqualTo(1);
    }

    @Test
    void unwantedSheetsAreNotEvenOpened() throws IOException {
        Parts parts = parts().with(NOTES.part(), "damaged");
        List<SheetCells> read =
                BookReader.read(parts, SHEETS, Optional.empty(), Optional.empty(), false, sheet -> sheet != NOTES);
        assertThat(read).hasSize(2);
    }

    @Test
    void aFurtherSinkGetsTheSameCellsWithTheirFormulas() throws IOException {
        List<String> seen = new ArrayList<>();
        List<SheetCells> read = new BookReader(parts(), Optional.empty(), Optional.empty(), false)
                .cells(
                        SHEETS,
                        sheet -> true,
                        sheet -> sheet.hidden()
                                ? (row, column, kind, number, text, format, formula) -> seen.add(number + " " + formula)
                                : null);
        assertThat(seen).containsExactly("2.0 A2");
        assertThat(read.get(1).number(0, 0)).isEqualTo(2);
        assertThat(read.get(1).isFormula(0, 0)).isTrue();
    }
}
