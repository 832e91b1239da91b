package org.rickyard.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class StarterTemplateTest {
    @Test
    void hasFieldsAndMachinesWithFewColumns() throws IOException {
        try (XSSFWorkbook book = WrittenBook.open(TemplateKind.STARTER)) {
            assertThat(book.getNumberOfSheets()).isEqualTo(4);
            assertThat(WrittenBook.texts(book.getSheet("Fields"), ListSheet.HEADING_ROW))
                    .containsExactly("Holding", "Field", "Crop", "Area (ha)", "Run length (m)");
            assertThat(WrittenBook.texts(book.getSheet("Machines"), ListSheet.HEADING_ROW))
                    .containsExactly(
                            "Machine",
                            "Type",
                            "Number",
                            "Working width (m)",
                            "Speed (km/h)",
                            "Field efficiency (%)",
                            "Turn time (s)",
                            "Hours per day (h)");
        }
    }
}
