package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import java.nio.file.Files;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** What a row of Trail is too low for is cut off on paper, and says so; the cell holds it whole. */
class LongTrailTest {
    private static final int FIRST_ROW = 3;
    private static final int ABOUT = 1;
    private static final int INPUTS = 6;

    @Test
    void inputsThatNoRowIsHighEnoughForSaySo() throws IOException {
        Object[][] fields = IntStream.rangeClosed(0, 40)
                .mapToObj(i -> i == 0
                        ? row("Field", "Crop", "Area (ha)")
                        : row("The far end of the long meadow " + i, "grass", 3))
                .toArray(Object[][]::new);
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", fields)
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Fuel (L/h)", "Crew"),
                        row("Mower", "mower", 3, 10, 12, 1))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("Mow", "all", "mow", "Mower"))
                .run();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(worked.file()))) {
            XSSFSheet trail = book.getSheet("Trail");
            int cut = 0;
            for (int i = FIRST_ROW; i <= trail.getLastRowNum(); i++) {
                Row row = trail.getRow(i);
                String inputs = row.getCell(INPUTS).getStringCellValue();
                int lines = (inputs.length() + 49) / 50;
                boolean said = inputs.startsWith("(longer than a row is high; whole in this cell");
                assertThat(said || lines * 15 <= row.getHeightInPoints())
                        .as(row.getCell(ABOUT) + ": " + inputs)
                        .isTrue();
                if (said) {
                    cut++;
                    assertThat(lines).isGreaterThan(27);
                    assertThat(inputs).contains("explain command for '").contains("long meadow 30 = ");
                }
            }
            assertThat(cut).isPositive();
        }
    }
}
