package org.rickyard.workbook.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.formula.CellPrinter;
import org.rickyard.workbook.graft.CellText;

/** Cells whose numbers are counted on in place, and numbers and words as they are written into them. */
class CellTemplateTest {
    private static final byte[][] FORMULA = {bytes("A"), bytes("+Fields!$C$"), bytes("*2")};

    @ParameterizedTest
    @ValueSource(ints = {1, 9, 10, 11, 99, 100, 999, 1_000, 1_048_576, 7, 19_999, 20_000, 20_000, 3})
    void standsForEachRowAsIfMadeForIt(int row) {
        CellTemplate template = new CellTemplate(CellTemplate.Kind.NUMBER_FORMULA, 2, 4, FORMULA, null);
        for (int before : new int[] {0, 8, 9, 99, 199, 1_999, 104_857}) {
            template.cell(before + 1, before);
            assertThat(text(template.cell(row, row + before)))
                    .isEqualTo("<c r=\"C" + row + "\" s=\"4\"><f>A" + (row + before) + "+Fields!$C$" + (row + before)
                            + "*2</f><v>");
        }
    }

    @Test
    void needsNoNumberInItsFormula() {
        CellTemplate template = new CellTemplate(CellTemplate.Kind.TEXT, 0, 1, null);
        for (int row = 1; row < 120; row++) {
            assertThat(text(template.cell(row, 0)))
                    .isEqualTo("<c r=\"A" + row + "\" s=\"1\" t=\"inlineStr\"><is><t xml:space=\"preserve\">");
        }
    }

    @Test
    void keepsOneForEachKindOfCell() {
        CellFormula formula = CellFormula.of("A" + CellPrinter.ROW);
        CellTemplate numbers = formula.template(CellTemplate.Kind.NUMBER_FORMULA, 2, 4);
        CellTemplate words = formula.template(CellTemplate.Kind.WORD_FORMULA, 2, 4);
        assertThat(words).isNotSameAs(numbers);
        assertThat(formula.template(CellTemplate.Kind.NUMBER_FORMULA, 2, 4)).isSameAs(numbers);
        assertThat(formula.template(CellTemplate.Kind.WORD_FORMULA, 2, 4)).isSameAs(words);
        assertThat(formula.template(CellTemplate.Kind.WORD_FORMULA, 2, 5)).isNotSameAs(words);
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {
                0,
                -0.0,
                1,
                -1,
                0.1,
                -0.1,
                0.25,
                12.3456,
                12.34567,
                -12.3456,
                1e-4,
                5e-5,
                -5e-5,
                1e-9,
                0.30000000000000004,
                123_456_789.1234,
                99_999_999_999.5,
                123_456_789_012.5,
                1e15 + 0.5,
                1e16,
                1e300,
                4.9e-324,
                2.675,
                1.005
            })
    void writesANumberThatReadsBackTheSame(double number) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteText text = new ByteText(out);
        text.put(number).flush();
        String written = out.toString(StandardCharsets.US_ASCII);
        assertThat(Double.parseDouble(written) == number).as(written).isTrue();
        // No more digits than Java's shortest, which is the same where both have a point and no exponent.
        String shortest = Double.toString(number);
        if (number != Math.rint(number) && !shortest.contains("E")) {
            assertThat(written).isEqualTo(shortest);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "Long Acre", "a & b < c > d", "_x0041_", "Cae'r Gof é", "tab\tand\nline", "\u0001", "naïve"})
    void writesWordsAsTheyMustStandInAPart(String word) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteText text = new ByteText(out);
        text.put("<t>").putEscaped(word).put("</t>").flush();
        assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo("<t>" + CellText.escaped(word) + "</t>");
    }

    @Test
    void writesWordsLongerThanItsBuffer() throws IOException {
        String word = "rye & grass ".repeat(7_000);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteText text = new ByteText(out);
        text.put("<t>").putEscaped("plain ".repeat(10_000)).putEscaped(word).flush();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .isEqualTo("<t>" + "plain ".repeat(10_000) + word.replace("&", "&amp;"));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
