package org.rickyard.workbook.open;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.junit.jupiter.api.Test;

/** Parts are as long as workbooks are large; newer Javas would read the beginning of them only. */
class SafeXmlTest {
    private static final int ROWS = 40_000;

    @Test
    void longPartsAreReadToTheirEnd() throws XMLStreamException {
        StringBuilder part = new StringBuilder("<a>");
        for (int i = 0; i < ROWS; i++) {
            part.append("<b c='&quot;").append(i).append("&quot;'>&amp;</b>");
        }
        part.append("<d>".repeat(300)).append("</d>".repeat(300)).append("</a>");
        XMLStreamReader reader = SafeXml.factory().createXMLStreamReader(new StringReader(part.toString()));
        int rows = 0;
        while (reader.hasNext()) {
            boolean row = reader.next() == XMLStreamConstants.START_ELEMENT
                    && reader.getLocalName().equals("b");
            rows += row ? 1 : 0;
        }
        assertThat(rows).isEqualTo(ROWS);
    }
}
