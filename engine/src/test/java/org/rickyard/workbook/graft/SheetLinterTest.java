package org.rickyard.workbook.graft;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The linter notices what it is there to notice, and has nothing against a sound sheet. */
class SheetLinterTest {
    private static final String ROW = "<row r=\"1\"><c r=\"A1\" s=\"1\"><v>4.2</v></c>"
            + "<c r=\"B1\" t=\"str\"><f>\"a\"&amp;A1</f><v>a4.2</v></c>"
            + "<c r=\"C1\" t=\"inlineStr\"><is><t>Long Acre</t></is></c></row>";

    private static SheetLinter.Linted linted(String content) {
        String sheet = "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\""
                + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">" + content
                + "</worksheet>";
        return SheetLinter.lint(
                SheetLinter.parser(), "sheet1.xml", sheet.getBytes(StandardCharsets.UTF_8), 2, Set.of("rId1"));
    }

    private static String data(String rows) {
        return "<sheetData>" + rows + "</sheetData>";
    }

    @Test
    void soundSheetHasNothingAgainstItAndItsFormulasAreKnown() {
        SheetLinter.Linted linted = linted("<cols><col min=\"1\" max=\"1\"/></cols>"
                + data(ROW + "<row r=\"3\"><c r=\"B3\" t=\"s\"><v>0</v></c></row>")
                + "<conditionalFormatting/><conditionalFormatting/><legacyDrawing r:id=\"rId1\"/>");
        assertThat(linted.findings()).isEmpty();
        assertThat(linted.formulas()).containsExactly("B1");
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of("<cols><col/></cols><sheetViews/>", "sheetViews is out of order"),
                Arguments.of("<mergeCells/>", "mergeCells is empty"),
                Arguments.of("<drawing r:id=\"rId2\"/>", "drawing refers to rId2, which does not exist"),
                Arguments.of(
                        "<tableParts><tablePart r:id=\"rId2\"/></tableParts>",
                        "tablePart refers to rId2, which does not exist"),
                Arguments.of("<hyperlinks>" + "<hyperlink/>".repeat(65_531) + "</hyperlinks>", "too many hyperlinks"),
                Arguments.of(
                        "<headerFooter><oddHeader>" + "a".repeat(256) + "</oddHeader></headerFooter>",
                        "oddHeader is too long"),
                Arguments.of(data("<row r=\"2\"/><row r=\"1\"/>"), "row 1 is out of order"),
                Arguments.of(data("<row r=\"1048577\"/>"), "row 1048577 is out of order"),
                Arguments.of(data("<row r=\"1\"><c r=\"B1\"/><c r=\"A1\"/></row>"), "cell A1 is out of order"),
                Arguments.of(data("<row r=\"1\"><c r=\"A2\"/></row>"), "cell A2 is out of order"),
                Arguments.of(data("<row r=\"1\"><c r=\"XFE1\"/></row>"), "cell XFE1 is out of order"),
                Arguments.of(data("<row r=\"1\"><c r=\"A1\" s=\"2\"/></row>"), "A1 has the style 2"),
                Arguments.of(data("<row r=\"1\"><c r=\"A1\" cm=\"1\"/></row>"), "A1 has cell metadata"),
                Arguments.of(
                        data("<row r=\"1\"><c r=\"A1\"><is><t>a</t></is></c></row>"),
                        "A1 is not shaped as text in the cell"),
                Arguments.of(
                        data("<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><v>a</v></c></row>"),
                        "A1 is not shaped as text in the cell"),
                Arguments.of(
                        data("<row r=\"1\"><c r=\"A1\"><f>=B1</f></c></row>"),
                        "A1 has a formula with \"=\" or too long"),
                Arguments.of(
                        data("<row r=\"1\"><c r=\"A1\"><f>" + "1".repeat(8193) + "</f></c></row>"),
                        "A1 has a formula with \"=\" or too long"),
                Arguments.of(data("<row r=\"1\"><c r=\"A1\"><v>NaN</v></c></row>"), "A1 has the number NaN"),
                Arguments.of(
                        data("<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>" + "a".repeat(32_768)
                                + "</t></is></c></row>"),
                        "A1 has a text too long"),
                Arguments.of("<sheetData>", "not well-formed"),
                Arguments.of(data("<row r=\"1\"><c r=\"A1\" t=\"str\"><v>&#1;</v></c></row>"), "not well-formed"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void faultIsTold(String content, String finding) {
        assertThat(linted(content).findings()).containsExactly("sheet1.xml: " + finding);
    }
}
