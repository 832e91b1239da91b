package org.rickyard.workbook.graft;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellTextTest {
    /** POI reads such escapes out independently of this project. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Long Acre|Long Acre",
                "a_b_x00_c|a_b_x00_c",
                "_x0041_|_x005F_x0041_",
                "__x0041_|__x005F_x0041_",
                "a\u0001b|a_x0001_b",
                "a\u001fb|a_x001F_b",
                "<R&D>|&lt;R&amp;D&gt;",
                "field \uD83D\uDE9C|field \uD83D\uDE9C",
                "half \uD83D|half _xD83D_"
            })
    void textComesBackAsItWas(String text, String escaped) {
        assertThat(CellText.escaped(text)).isEqualTo(escaped);
        var rich = new XSSFRichTextString();
        rich.getCTRst().setT(escaped.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&"));
        assertThat(rich.getString()).isEqualTo(text);
    }
}
