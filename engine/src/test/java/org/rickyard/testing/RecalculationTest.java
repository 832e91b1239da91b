package org.rickyard.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.CellAddress;

/** The measuring instruments themselves: each must notice a stored value that is wrong. */
class RecalculationTest {
    private static final String RELATIONSHIP = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    private static final CellAddress NUMBER = new CellAddress("Sums", 0, 1);
    private static final CellAddress TEXT = new CellAddress("Sums", 0, 2);
    private static final CellAddress ERROR = new CellAddress("Sums", 0, 3);
    private static final CellAddress LOGICAL = new CellAddress("Sums", 0, 4);
    private static final CellAddress EMPTY_TEXT = new CellAddress("Sums", 0, 5);

    @TempDir
    private Path folder;

    private Path wrong;
    private Path right;

    @BeforeEach
    void writeTheSameFormulasWithWrongAndRightStoredValues() throws IOException {
        wrong = workbook("wrong.xlsx", "<v>99</v>", "<v>wrong</v>", "<v>#N/A</v>", "<v>0</v>", "<v>full</v>", "");
        right = workbook("right.xlsx", "<v>6</v>", "<v>a2</v>", "<v>#DIV/0!</v>", "<v>1</v>", "<v></v>", "");
    }

    @Test
    void storedValuesAreReadAsStored() {
        assertThat(StoredValues.of(wrong, "Sums"))
                .isEqualTo(Map.of(
                        NUMBER, 99.0, TEXT, "wrong", ERROR, new CellError("#N/A"), LOGICAL, false, EMPTY_TEXT, "full"));
    }

    @Test
    void aFormulaWithoutStoredValueIsToldApartFromZero() throws IOException {
        Path none = workbook("none.xlsx", "", "<v>a2</v>", "<v>#DIV/0!</v>", "<v>1</v>", "", "");
        assertThat(StoredValues.of(none))
                .containsEntry(NUMBER, StoredValues.NONE)
                .containsEntry(EMPTY_TEXT, "");
    }

    @Test
    void anUnknownSheetIsNamed() {
        assertThatThrownBy(() -> StoredValues.of(right, "T"))
                .isInstanceOf(NoSuchElementException.class)
                .hasMessageContaining("'T'");
        assertThatThrownBy(() -> PoiRecalculation.of(right, "T"))
                .isInstanceOf(NoSuchElementException.class)
                .hasMessageContaining("'T'");
    }

    @Test
    void poiTakesNoNoticeOfStoredValues() {
        assertThat(PoiRecalculation.of(wrong, "Sums")).isEqualTo(StoredValues.of(right, "Sums"));
    }

    @Test
    void libreOfficeTakesNoNoticeOfStoredValuesWhenItRecalculates() {
        LibreOffice.required();
        assertThat(LibreOfficeRecalculation.of(wrong, "Sums")).isEqualTo(StoredValues.of(right, "Sums"));
    }

    @Test
    void libreOfficeKeepsStoredNumbersWhenItOnlySaves() {
        LibreOffice.required();
        assertThat(StoredValues.of(LibreOffice.resave(wrong), "Sums")).containsEntry(NUMBER, 99.0);
    }

    @Test
    void libreOfficePrintsToPdf() throws IOException {
        LibreOffice.required();
        assertThat(Files.readAllBytes(LibreOffice.toPdf(right)))
                .startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void libreOfficeTellsWhichFilesItOpensEvenInBadCompany() throws IOException {
        LibreOffice.required();
        Path broken = Files.writeString(folder.resolve("broken.xlsx"), "PK, but not for long");
        assertThat(LibreOffice.opens(List.of(right, broken, wrong)))
                .containsExactly(Map.entry(right, true), Map.entry(broken, false), Map.entry(wrong, true));
    }

    @Test
    void differencesNameTheCellAndBothValues() {
        assertThat(Parity.differences(StoredValues.of(wrong), PoiRecalculation.of(wrong)))
                .containsExactly(
                        "Sums!B1: stored 99.0, recalculated 6.0",
                        "Sums!C1: stored \"wrong\", recalculated \"a2\"",
                        "Sums!D1: stored #N/A, recalculated #DIV/0!",
                        "Sums!E1: stored false, recalculated true",
                        "Sums!F1: stored \"full\", recalculated \"\"");
        assertThat(Parity.differences(StoredValues.of(right), PoiRecalculation.of(right)))
                .isEmpty();
    }

    @Test
    void numbersMayDifferByABillionthOfTheLargestOneInvolved() {
        Map<CellAddress, Object> one = Map.of(NUMBER, 1.0);
        assertThat(Parity.differences(one, Map.of(NUMBER, 1 + 5e-10))).isEmpty();
        assertThat(Parity.differences(one, Map.of(NUMBER, 1 + 2e-9))).hasSize(1);
        assertThat(Parity.differences(one, Map.of(NUMBER, 1 + 2e-9), cell -> 1000))
                .isEmpty();
        assertThat(Parity.differences(one, Map.of())).containsExactly("Sums!B1: stored 1.0, recalculated no formula");
    }

    @Test
    void theValidatorAcceptsASoundFileAndNamesWhatIsWrong() throws IOException {
        OoxmlValidator.required();
        Path disordered = workbook(
                "disordered.xlsx", "<v>6</v>", "<v>a2</v>", "<v>#DIV/0!</v>", "<v>1</v>", "<v></v>", "<cols/>");
        assertThat(OoxmlValidator.errors(right)).isEmpty();
        assertThat(OoxmlValidator.worseThan(right, disordered))
                .isNotEmpty()
                .allMatch(line -> line.startsWith("Schema /xl/worksheets/sheet1.xml /x:worksheet[1]"));
        assertThat(OoxmlValidator.worseThan(disordered, disordered)).isEmpty();
    }

    @Test
    void theValidatorDoesNotCompareWhereItStoppedCounting() throws IOException {
        OoxmlValidator.required();
        Path many = workbook(
                "many.xlsx",
                "<v>6</v>",
                "<v>a2</v>",
                "<v>#DIV/0!</v>",
                "<v>1</v></c>" + "<c r=\"E1\" t=\"none\"></c>".repeat(1001) + "<c r=\"E1\">",
                "<v></v>",
                "");
        assertThat(OoxmlValidator.worseThan(many, many))
                .containsExactly("the input has 1000 errors or more: the two cannot be compared");
    }

    @Test
    void theValidatorSaysThatAFileCannotBeOpened() throws IOException {
        OoxmlValidator.required();
        Path broken = Files.writeString(folder.resolve("broken.xlsx"), "PK, but not for long");
        assertThat(OoxmlValidator.errors(broken)).hasSize(1).first().asString().startsWith("Exception");
    }

    private Path workbook(
            String name, String number, String text, String error, String logical, String emptyText, String afterData)
            throws IOException {
        Path file = folder.resolve(name);
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            part(
                    zip,
                    "[Content_Types].xml",
                    """
                    <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
                    <Default Extension="rels"
                      ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
                    <Default Extension="xml"
                      ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>
                    <Override PartName="/xl/workbook.xml"
                      ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/></Types>
                    """);
            part(zip, "_rels/.rels", relationship("officeDocument", "xl/workbook.xml"));
            part(zip, "xl/_rels/workbook.xml.rels", relationship("worksheet", "worksheets/sheet1.xml"));
            part(
                    zip,
                    "xl/workbook.xml",
                    "<workbook xmlns='%s' xmlns:r='%s'><sheets><sheet name='Sums' sheetId='1' r:id='rId1'/></sheets></workbook>"
                            .formatted(MAIN, RELATIONSHIP));
            part(
                    zip,
                    "xl/worksheets/sheet1.xml",
                    """
                    <worksheet xmlns="%s"><sheetData><row r="1"><c r="A1"><v>2</v></c>
                    <c r="B1"><f>A1*3</f>%s</c><c r="C1" t="str"><f>"a"&amp;A1</f>%s</c>
                    <c r="D1" t="e"><f>1/0</f>%s</c><c r="E1" t="b"><f>A1&gt;1</f>%s</c>
                    <c r="F1" t="str"><f>IF(A1&gt;1,"",1)</f>%s</c></row></sheetData>%s</worksheet>
                    """
                            .formatted(MAIN, number, text, error, logical, emptyText, afterData));
        }
        return file;
    }

    private static String relationship(String type, String target) {
        return """
                <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
                <Relationship Id="rId1" Type="%s/%s" Target="%s"/></Relationships>
                """
                .formatted(RELATIONSHIP, type, target);
    }

    private static void part(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }
}
