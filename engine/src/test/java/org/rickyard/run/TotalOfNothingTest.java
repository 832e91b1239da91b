package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import java.nio.file.Files;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** A client's own sheet shows totals by their names: where every row is withheld, 0 would be read as an answer. */
class TotalOfNothingTest {
    @Test
    void isEmptyUntilTheFirstRowHasAValue() throws IOException {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("Long", 6.5))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Roller", "field rolls", 6, null, 80))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("Long", "rolling", "Roller"))
                .run();
        assertThat(worked.differences()).isEmpty();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(worked.file()))) {
            CellReference place =
                    new CellReference(book.getName("Rickyard_hours").getRefersToFormula());
            XSSFCell total =
                    book.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
            assertThat(total.getCachedFormulaResultType()).isEqualTo(CellType.STRING);
            assertThat(total.getStringCellValue()).isEmpty();

            book.getSheet("Machines").getRow(1).createCell(3).setCellValue(8);
            CellValue live = book.getCreationHelper().createFormulaEvaluator().evaluate(total);
            // 6.5 ÷ (8 × 6 × 80 % ÷ 10)
            assertThat(live.getNumberValue()).isCloseTo(6.5 / 3.84, within(1e-9));
        }
    }
}
