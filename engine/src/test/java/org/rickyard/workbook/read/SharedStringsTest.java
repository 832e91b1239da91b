package org.rickyard.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SharedStringsTest {
    @Test
    void runsAreJoinedAndPhoneticsLeftOut() throws IOException {
        SharedStrings strings = SharedStrings.read(
                new Parts()
                        .with(
                                "xl/sharedStrings.xml",
                                "<sst count=\"9\"><si><t>Mower</t></si><si/><si><t xml:space=\"preserve\"> a"
                                        + " </t></si><si><r><rPr><sz val=\"9\"/></rPr><t>Long </t></r>\n"
                                        + "<r><t>Acre</t></r><rPh sb=\"0\""
                                        + " eb=\"1\"><t>no</t></rPh></si>"
                                        + "<si><t>tab_x0009_&amp;_x005F_x0009_</t></si>"
                                        + "<si><t>Long<rPh><t>no</t></rPh> Acre</t></si></sst>"),
                Parts.STRINGS);
        assertThat(strings.size()).isEqualTo(6);
        assertThat(strings.text(0)).isEqualTo("Mower");
        assertThat(strings.text(1)).isEmpty();
        assertThat(strings.text(2)).isEqualTo(" a ");
        assertThat(strings.text(3)).isEqualTo("Long Acre");
        assertThat(strings.text(4)).isEqualTo("tab\t&_x0009_");
        assertThat(strings.text(5)).isEqualTo("Long Acre");
        assertThat(strings.text(6)).isNull();
        assertThat(strings.text(-1)).isNull();
    }

    @Test
    void longTextsComeThroughWhole() throws IOException {
        String text = "clay &lt; loam ".repeat(3_000);
        SharedStrings strings = SharedStrings.read(
                new Parts().with("xl/sharedStrings.xml", "<sst><si><t>" + text + "</t></si></sst>"), Parts.STRINGS);
        assertThat(strings.text(0)).isEqualTo(text.replace("&lt;", "<"));
    }

    @Test
    void aWorkbookWithoutThePartHasNone() throws IOException {
        assertThat(SharedStrings.read(new Parts(), Parts.STRINGS).size()).isZero();
        assertThat(SharedStrings.read(new Parts(), Optional.empty()).size()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "plain, plain",
        "_x0041_, A",
        "_x0041__x0042_, AB",
        "a_x00e9_b, aéb",
        "_x005F_x0041_, _x0041_",
        "_x004_, _x004_",
        "_x00G1_, _x00G1_",
        "__x0041_, _A",
        "_x_x0041_, _xA",
        "_x0041, _x0041"
    })
    void escapesAreUndone(String stored, String meant) {
        assertThat(EscapedText.decode(stored)).isEqualTo(meant);
    }
}
