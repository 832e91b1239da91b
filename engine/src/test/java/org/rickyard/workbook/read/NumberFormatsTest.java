package org.rickyard.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Grid.Format;

class NumberFormatsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "General | GENERAL",
                "0.00 | GENERAL",
                "#,##0.0\" m\" | GENERAL",
                "0.0\" days\" | GENERAL",
                "0.0 \\d\\a\\y | GENERAL",
                "[Red]0.00;[Blue]-0.00 | GENERAL",
                "[$€-407]#,##0.00 | GENERAL",
                "0.00E+00 | GENERAL",
                "# ?/? | GENERAL",
                "_-* #,##0.00_-;-* #,##0.00_- | GENERAL",
                "@ | GENERAL",
                "0;0% | GENERAL",
                "\"5%\"0 | GENERAL",
                "0.0 m | GENERAL",
                "0% | PERCENT",
                "0.0\\ % | PERCENT",
                "[>1]0.0%;0.00% | PERCENT",
                "dd/mm/yyyy | DATE",
                "[$-809]dd mmmm yyyy;@ | DATE",
                "yyyy\\-mm\\-dd | DATE",
                "D.M.YY | DATE",
                "h:mm AM/PM | DATE",
                "[h]:mm | DATE",
                "[mm]:ss | DATE",
                "[ss].00 | DATE",
                "mm:ss.0 | DATE",
                "\"cut on \"d mmm | DATE",
                "[Red]d/m | DATE"
            })
    void aFormatCodeSaysWhetherANumberIsAShareOrADay(String code, Format expected) {
        assertThat(NumberFormats.ofCode(code)).isEqualTo(expected);
    }

    @Test
    void builtInDatesAreThoseThatPoiHoldsForDates() {
        for (int id = 0; id < 50; id++) {
            boolean date = DateUtil.isInternalDateFormat(id);
            if (date) {
                assertThat(NumberFormats.ofBuiltIn(id)).as("format %s", id).isEqualTo(Format.DATE);
            }
            if (id < 23 || id >= 37 && id < 50) {
                // 23 to 26 are reserved, 27 to 36 East Asian dates without an English code.
                Format expected = date ? Format.DATE : NumberFormats.ofCode(BuiltinFormats.getBuiltinFormat(id));
                assertThat(NumberFormats.ofBuiltIn(id)).as("format %s", id).isEqualTo(expected);
            }
        }
        assertThat(NumberFormats.ofBuiltIn(9)).isEqualTo(Format.PERCENT);
        assertThat(NumberFormats.ofBuiltIn(10)).isEqualTo(Format.PERCENT);
        assertThat(NumberFormats.ofBuiltIn(30)).isEqualTo(Format.DATE);
        assertThat(NumberFormats.ofBuiltIn(57)).isEqualTo(Format.DATE);
        assertThat(NumberFormats.ofBuiltIn(59)).isEqualTo(Format.GENERAL);
    }

    @Test
    void stylesAreCountedInTheCellStylesOnly() throws IOException {
        Parts parts = new Parts()
                .with(
                        "xl/styles.xml",
                        "<x:styleSheet xmlns:x=\"u\" xmlns:mc=\"m\"><x:numFmts count=\"2\"><x:numFmt numFmtId=\"164\""
                                + " formatCode=\"0.0%\"/><mc:AlternateContent><mc:Choice Requires=\"x14\"><x:numFmt"
                                + " numFmtId=\"165\" formatCode=\"d/m\"/></mc:Choice><mc:Fallback><x:numFmt"
                                + " numFmtId=\"165\" formatCode=\"0\"/></mc:Fallback>"
                                + "</mc:AlternateContent></x:numFmts><x:cellStyleXfs><x:xf"
                                + " numFmtId=\"14\"/></x:cellStyleXfs><x:cellXfs><x:xf/><x:xf numFmtId=\"164\"/><x:xf"
                                + " numFmtId=\"165\"/><x:xf numFmtId=\"14\"/></x:cellXfs><x:dxfs><x:dxf><x:numFmt"
                                + " numFmtId=\"164\" formatCode=\"0\"/></x:dxf></x:dxfs></x:styleSheet>");
        NumberFormats formats = NumberFormats.read(parts, Parts.STYLES);
        assertThat(formats.ofStyle(0)).isEqualTo(Format.GENERAL);
        assertThat(formats.ofStyle(1)).isEqualTo(Format.PERCENT);
        assertThat(formats.ofStyle(2)).isEqualTo(Format.DATE);
        assertThat(formats.ofStyle(3)).isEqualTo(Format.DATE);
        assertThat(formats.ofStyle(4)).as("not declared").isEqualTo(Format.GENERAL);
    }

    @Test
    void withoutStylesPartEverythingIsGeneral() throws IOException {
        assertThat(NumberFormats.read(new Parts(), Parts.STYLES).ofStyle(1)).isEqualTo(Format.GENERAL);
        assertThat(NumberFormats.read(new Parts(), Optional.empty()).ofStyle(0)).isEqualTo(Format.GENERAL);
    }
}
