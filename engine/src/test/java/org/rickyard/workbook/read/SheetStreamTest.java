package org.rickyard.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;

class SheetStreamTest {
    private static List<String> formulas(Parts parts) throws IOException {
        List<String> formulas = new ArrayList<>();
        new BookReader(parts, Optional.empty(), Optional.empty(), false)
                .stream(Parts.SHEET, (row, column, kind, number, text, format, formula) -> {
                    if (formula != null) {
                        formulas.add(CellAddress.letters(column) + (row + 1) + " " + formula);
                    }
                });
        return formulas;
    }

    @Test
    void everyKindOfCellThatPoiWritesIsReadBack() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            XSSFSheet sheet = book.createSheet("Fields");
            XSSFCellStyle percent = book.createCellStyle();
            percent.setDataFormat(book.createDataFormat().getFormat("0.0%"));
            XSSFCellStyle day = book.createCellStyle();
            day.setDataFormat((short) 14);
            Row row = sheet.createRow(0);
            row.createCell(0).setCellValue("Long Acre");
            row.createCell(1).setCellValue(7.3);
            Cell moisture = row.createCell(2);
            moisture.setCellValue(0.32);
            moisture.setCellStyle(percent);
            Cell cut = row.createCell(3);
            cut.setCellValue(45_432);
            cut.setCellStyle(day);
            row.createCell(4).setCellValue(true);
            row.createCell(5).setCellErrorValue(FormulaError.NA.getCode());
            row.createCell(6).setCellFormula("B1*2");
            row.createCell(7).setCellFormula("A1&\" north\"");
            row.createCell(8).setCellFormula("B1>5");
            row.createCell(9).setCellFormula("1/0");
            row.createCell(10).setCellFormula("B1*3");
            row.createCell(11).setCellStyle(percent);
            row.createCell(12).setCellFormula("\"\"");
            for (int column : new int[] {6, 7, 8, 9, 12}) {
                book.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(row.getCell(column));
            }
            sheet.createRow(4).createCell(1).setCellValue("  two  spaces ");

            SheetCells cells = Parts.of(book).cells();

            assertThat(cells.rows()).isEqualTo(5);
            assertThat(cells.columns()).isEqualTo(13);
            assertThat(cells.text(0, 0)).isEqualTo("Long Acre");
            assertThat(cells.kind(0, 1)).isEqualTo(Kind.NUMBER);
            assertThat(cells.number(0, 1)).isEqualTo(7.3);
            assertThat(cells.format(0, 1)).isEqualTo(Format.GENERAL);
            assertThat(cells.number(0, 2)).isEqualTo(0.32);
            assertThat(cells.format(0, 2)).isEqualTo(Format.PERCENT);
            assertThat(cells.number(0, 3)).isEqualTo(45_432);
            assertThat(cells.format(0, 3)).isEqualTo(Format.DATE);
            assertThat(cells.kind(0, 4)).isEqualTo(Kind.LOGICAL);
            assertThat(cells.text(0, 4)).isEqualTo("TRUE");
            assertThat(cells.number(0, 4)).isZero();
            assertThat(cells.kind(0, 5)).isEqualTo(Kind.ERROR);
            assertThat(cells.text(0, 5)).isEqualTo("#N/A");
            assertThat(cells.isFormula(0, 5)).isFalse();
            assertThat(cells.number(0, 6)).isEqualTo(14.6);
            assertThat(cells.isFormula(0, 6)).isTrue();
            assertThat(cells.text(0, 7)).isEqualTo("Long Acre north");
            assertThat(cells.text(0, 8)).isEqualTo("TRUE");
            assertThat(cells.text(0, 9)).isEqualTo("#DIV/0!");
            assertThat(cells.kind(0, 10)).as("never calculated").isEqualTo(Kind.UNCOMPUTED);
            assertThat(cells.kind(0, 11)).as("style only").isEqualTo(Kind.BLANK);
            assertThat(cells.kind(0, 12)).isEqualTo(Kind.TEXT);
            assertThat(cells.text(0, 12)).isEmpty();
            assertThat(cells.text(4, 1)).isEqualTo("  two  spaces ");
            assertThat(cells.kind(2, 0)).isEqualTo(Kind.BLANK);
            assertThat(cells.kind(900_000, 40)).isEqualTo(Kind.BLANK);
        }
    }

    @Test
    void cellsWithoutReferencesStandOneBehindTheOther() throws IOException {
        SheetCells cells = new Parts()
                .withRows("<row><c><v>1</v></c><c><v>2</v></c><c r=\"E1\"><v>5</v></c><c><v>6</v></c></row>"
                        + "<row r=\"4\"><c><v>7</v></c></row><row><c r=\"B5\"/><c><v>8</v></c></row>")
                .cells();
        assertThat(cells.number(0, 0)).isEqualTo(1);
        assertThat(cells.number(0, 1)).isEqualTo(2);
        assertThat(cells.number(0, 4)).isEqualTo(5);
        assertThat(cells.number(0, 5)).isEqualTo(6);
        assertThat(cells.number(3, 0)).isEqualTo(7);
        assertThat(cells.number(4, 2)).isEqualTo(8);
    }

    @Test
    void placesBeyondTheGridArePassedOver() throws IOException {
        SheetCells cells = new Parts()
                .withRows("<row r=\"1\"><c r=\"XFE1\"><v>1</v></c><c r=\"ZZZZZZZZZ1\"><v>1</v></c><c"
                        + " r=\"A99999999999\"><v>1</v></c><c r=\"B1\"><v>2</v></c></row><row"
                        + " r=\"1048577\"><c><v>3</v></c></row><row r=\"1048576\"><c"
                        + " r=\"XFD1048576\"><v>4</v></c></row>")
                .cells();
        assertThat(cells.number(0, 1)).isEqualTo(2);
        assertThat(cells.number(1_048_575, 16_383)).isEqualTo(4);
        assertThat(cells.rows()).isEqualTo(1_048_576);
        assertThat(cells.columns()).isEqualTo(16_384);
        assertThat(cells.kind(1_048_576, 0)).isEqualTo(Kind.BLANK);
    }

    @Test
    void inlineTextJoinsRunsAndLeavesPhoneticsOut() throws IOException {
        SheetCells cells = new Parts()
                .withRows("<row><c t=\"inlineStr\"><is><r><rPr><b/></rPr><t>Long </t></r><r><t>Acre</t></r>"
                        + "<rPh sb=\"0\" eb=\"1\"><t>xx</t></rPh><phoneticPr fontId=\"1\"/></is></c>"
                        + "<c t=\"inlineStr\"><is><t><![CDATA[<wet> & ]]>stony_x000A_</t></is></c>"
                        + "<c t=\"inlineStr\"><is><t/></is></c><c t=\"str\"><v>a&amp;b</v></c></row>")
                .cells();
        assertThat(cells.text(0, 0)).isEqualTo("Long Acre");
        assertThat(cells.text(0, 1)).isEqualTo("<wet> & stony\n");
        assertThat(cells.kind(0, 2)).isEqualTo(Kind.TEXT);
        assertThat(cells.text(0, 3)).isEqualTo("a&b");
    }

    @Test
    void isoDatesBecomeDayNumbersOfTheWorkbooksEpoch() throws IOException {
        Parts parts = new Parts()
                .withRows("<row><c t=\"d\"><v>2024-05-01</v></c><c t=\"d\"><v>2024-05-01T06:00:00Z</v></c>"
                        + "<c t=\"d\"><v>T18:00:00</v></c><c t=\"d\"><v>early May</v></c></row>");
        SheetCells cells = parts.cells(false);
        assertThat(cells.number(0, 0)).isEqualTo(45_413);
        assertThat(cells.format(0, 0)).isEqualTo(Format.DATE);
        assertThat(cells.number(0, 1)).isEqualTo(45_413.25);
        assertThat(cells.number(0, 2)).isEqualTo(0.75);
        assertThat(cells.kind(0, 3)).isEqualTo(Kind.TEXT);
        assertThat(parts.cells(true).number(0, 0)).isEqualTo(45_413 - 1_462);
    }

    @Test
    void formulasWithoutStoredValueAreUncomputed() throws IOException {
        SheetCells cells = new Parts()
                .withRows("<row><c><f>B1</f></c><c><f>B1</f><v/></c><c><f>B1</f><v> </v></c><c t=\"str\"><f>B1</f></c>"
                        + "<c t=\"str\"><f>B1</f><v></v></c><c><f>B1</f><v>0</v></c><c><f/><v>5</v></c></row>")
                .cells();
        for (int column = 0; column < 4; column++) {
            assertThat(cells.kind(0, column)).as("column %s", column).isEqualTo(Kind.UNCOMPUTED);
            assertThat(cells.isFormula(0, column)).isTrue();
        }
        assertThat(cells.kind(0, 4)).isEqualTo(Kind.TEXT);
        assertThat(cells.kind(0, 5)).isEqualTo(Kind.NUMBER);
        assertThat(cells.isFormula(0, 6)).as("an empty formula is none").isFalse();
    }

    @Test
    void sharedFormulasAreWrittenOutForEachCell() throws IOException {
        Parts parts = new Parts()
                .withRows("<row r=\"2\"><c r=\"C2\"><f t=\"shared\" ref=\"C2:C4\""
                        + " si=\"0\">A2*$B$1+Mix!$A2&amp;\"A2\"</f></c></row><row r=\"3\"><c r=\"C3\"><f"
                        + " t=\"shared\" si=\"0\"/><v>3</v></c></row><row r=\"4\"><c r=\"D4\"><f t=\"shared\""
                        + " si=\"0\"/></c><c r=\"E4\"><f t=\"shared\" si=\"9\"/></c></row>");
        assertThat(formulas(parts))
                .containsExactly(
                        "C2 A2*$B$1+Mix!$A2&\"A2\"", "C3 A3*$B$1+Mix!$A3&\"A2\"", "D4 B4*$B$1+Mix!$A4&\"A2\"", "E4 ");
        assertThat(parts.cells().isFormula(2, 2)).isTrue();
        assertThat(parts.cells().kind(3, 4)).isEqualTo(Kind.UNCOMPUTED);
    }

    @Test
    void everyCellOfAnAreaFormulaIsAFormula() throws IOException {
        Parts parts = new Parts()
                .withRows("<row r=\"1\"><c r=\"A1\"><f t=\"array\" ref=\"A1:A2\">B1:B2*2</f><v>2</v></c></row>"
                        + "<row r=\"2\"><c r=\"A2\"><v>4</v></c></row><row r=\"3\"><c r=\"A3\"><v>6</v></c></row>");
        assertThat(formulas(parts)).containsExactly("A1 B1:B2*2", "A2 B1:B2*2");
        assertThat(parts.cells().isFormula(1, 0)).isTrue();
        assertThat(parts.cells().isFormula(2, 0)).isFalse();
    }

    @Test
    void arrayFormulasThatPoiWritesAreRead() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            XSSFSheet sheet = book.createSheet();
            sheet.setArrayFormula("A1:A3*2", CellRangeAddress.valueOf("C1:C3"));
            SheetCells cells = Parts.of(book).cells();
            assertThat(cells.kind(2, 2)).isIn(Kind.UNCOMPUTED, Kind.BLANK);
            assertThat(cells.kind(0, 2)).isEqualTo(Kind.UNCOMPUTED);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "ISO-8859-1", "UTF-8"})
    void prefixesAndEncodingsMakeNoDifference(String encoding) throws IOException {
        String text = "<?xml version=\"1.0\" encoding=\"" + encoding.replace("LE", "") + "\"?>\n"
                + "<x:worksheet"
                + " xmlns:x=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><x:dimension"
                + " ref=\"A1\"/><x:sheetData>\n"
                + " <x:row r=\"1\">\n"
                + "  <x:c r=\"A1\""
                + " t=\"inlineStr\"><x:is><x:t>Süd</x:t></x:is></x:c>\n"
                + " <x:c r=\"B1\">\n"
                + "<x:v> 2.5 </x:v>\n"
                + "</x:c></x:row></x:sheetData></x:worksheet>";
        byte[] bytes =
                ((encoding.endsWith("LE") ? "\uFEFF" : "") + text).getBytes(java.nio.charset.Charset.forName(encoding));
        SheetCells cells = new Parts().with(Parts.SHEET.part(), bytes).cells();
        assertThat(cells.text(0, 0)).isEqualTo("Süd");
        assertThat(cells.number(0, 1)).isEqualTo(2.5);
    }

    @Test
    void elementsOfExtensionsAreNotTakenForCells() throws IOException {
        SheetCells cells = new Parts()
                .withRows("<row><c r=\"A1\"><v>1</v><extLst><ext><v>9</v><f>B1</f></ext></extLst></c></row>"
                        + "<extLst><row><c r=\"A5\"><v>7</v></c></row></extLst>")
                .cells();
        assertThat(cells.number(0, 0)).isEqualTo(1);
        assertThat(cells.isFormula(0, 0)).isFalse();
        assertThat(cells.rows()).isEqualTo(1);
    }

    @Test
    void numbersThatAreNoneAreGivenAsText() throws IOException {
        SheetCells cells = new Parts()
                .withRows("<row><c><v>7,5</v></c><c><v>NaN</v></c><c><v>1E999</v></c><c t=\"n\"><v>1.5E2</v></c></row>")
                .cells();
        assertThat(cells.text(0, 0)).isEqualTo("7,5");
        assertThat(cells.kind(0, 1)).isEqualTo(Kind.TEXT);
        assertThat(cells.kind(0, 2)).isEqualTo(Kind.TEXT);
        assertThat(cells.number(0, 3)).isEqualTo(150);
    }

    @Test
    void documentTypesAreRefusedInWords() {
        String bomb = "<?xml version=\"1.0\"?><!DOCTYPE b [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY c \"&a;&a;&a;&a;\">]>"
                + "<worksheet><sheetData><row><c t=\"str\"><v>&c;</v></c></row></sheetData></worksheet>";
        String outside = "<!DOCTYPE w SYSTEM \"file:///etc/hostname\"><worksheet><sheetData/></worksheet>";
        for (String text : List.of(bomb, outside)) {
            assertThatThrownBy(() -> new Parts().with(Parts.SHEET.part(), text).cells())
                    .isInstanceOf(UnreadablePartException.class)
                    .hasMessageContaining("xl/worksheets/sheet1.xml")
                    .hasMessageContaining("DOCTYPE")
                    .hasMessageContaining("save it as a normal .xlsx");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "not xml",
                "<worksheet><sheetData><row><c><v>1</v></c></row>",
                "<worksheet><sheetData><row><c><v>1</c></v></row></sheetData></worksheet>",
                "<worksheet><sheetData><row><c><v>&nope;</v></c></row></sheetData></worksheet>",
                "<worksheet><sheetData><row><c><v>&#0;</v></c></row></sheetData></worksheet>",
                "<y:worksheet/>"
            })
    void damagedPartsAreRefusedInWords(String text) {
        assertThatThrownBy(() -> new Parts().with(Parts.SHEET.part(), text).cells())
                .isInstanceOf(UnreadablePartException.class)
                .hasMessageContaining("is damaged");
    }

    @Test
    void aMissingSheetPartIsRefusedWithTheNameOfTheSheet() {
        assertThatThrownBy(() -> new Parts().cells())
                .isInstanceOf(UnreadablePartException.class)
                .hasMessageContaining("The sheet Fields cannot be read")
                .hasMessageContaining("is missing from the file");
    }

    @Test
    void logicalsAreReadInBothSpellings() throws IOException {
        SheetCells cells = new Parts()
                .withRows("<row><c t=\"b\"><v>1</v></c><c t=\"b\"><v>false</v></c><c t=\"b\"><v> true </v></c>"
                        + "<c t=\"b\"><v>2</v></c><c t=\"e\"><v> #N/A </v></c></row>")
                .cells();
        assertThat(cells.text(0, 0)).isEqualTo("TRUE");
        assertThat(cells.text(0, 1)).isEqualTo("FALSE");
        assertThat(cells.text(0, 2)).isEqualTo("TRUE");
        assertThat(cells.kind(0, 3)).isEqualTo(Kind.TEXT);
        assertThat(cells.text(0, 4)).isEqualTo("#N/A");
    }

    @Test
    void brokenBytesAreRefusedInWords() {
        byte[] bytes = "<worksheet><sheetData><row><c t=\"str\"><v>S?d</v></c></row></sheetData></worksheet>"
                .getBytes(StandardCharsets.US_ASCII);
        bytes[new String(bytes, StandardCharsets.US_ASCII).indexOf('?')] = (byte) 0xFC;
        assertThatThrownBy(() -> new Parts().with(Parts.SHEET.part(), bytes).cells())
                .isInstanceOf(UnreadablePartException.class)
                .hasMessageContaining("is damaged");
    }

    @Test
    void aMissingSharedTextIsRefusedWithItsCell() {
        assertThatThrownBy(() -> new Parts()
                        .withRows("<row><c r=\"B1\" t=\"s\"><v>3</v></c></row>")
                        .cells())
                .isInstanceOf(UnreadablePartException.class)
                .hasMessageContaining("Fields!B1")
                .hasMessageContaining("shared text number 3");
    }

    @Test
    void cellsMergedOverRowsAreKnownByTheirFirst() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            XSSFSheet sheet = book.createSheet("Fields");
            sheet.createRow(5).createCell(0).setCellValue("Elm");
            sheet.addMergedRegion(CellRangeAddress.valueOf("A2:A4"));
            sheet.addMergedRegion(CellRangeAddress.valueOf("A6:C7"));
            sheet.addMergedRegion(CellRangeAddress.valueOf("B1:D1"));
            sheet.setAutoFilter(CellRangeAddress.valueOf("A1:B6"));

            SheetCells cells = Parts.of(book).cells();

            assertThat(List.of(cells.topOf(0, 0), cells.topOf(1, 0), cells.topOf(3, 0), cells.topOf(4, 0)))
                    .containsExactly(0, 1, 1, 4);
            assertThat(cells.topOf(6, 0)).isEqualTo(5);
            assertThat(cells.topOf(6, 1)).as("not the first column of it").isEqualTo(6);
            assertThat(cells.topOf(3, 1)).isEqualTo(3);
        }
    }
}
