package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two holdings have a sprayer each that is called the same. */
class SprayersOfOneNameTest {
    @TempDir
    Path folder;

    private static FarmBook book() {
        return sprayers()
                .sheet("Nozzle test", "Sprayer", "Nozzle", "Flow (L/min)", "Pressure (bar)", "New flow (L/min)")
                .row("Nozzle test", "Sprayer", 1, 1.6, 3, 1.58)
                .row("Nozzle test", "Sprayer", 2, 2.2, 3, 1.58);
    }

    private static FarmBook sprayers() {
        return new FarmBook()
                .sheet("Fields", "Holding", "Field", "Crop", "Area (ha)")
                .row("Fields", "Moor End", "Long Acre", "wheat", 4)
                .row("Fields", "Beck Farm", "Lane", "wheat", 6)
                .sheet(
                        "Machines",
                        "Holding",
                        "Machine",
                        "Type",
                        "Working width (m)",
                        "Speed (km/h)",
                        "Tank (L)",
                        "Nozzle spacing (m)",
                        "Nozzle size")
                .row("Machines", "Moor End", "Sprayer", "sprayer", 12, 8, 1000, 0.5, "04")
                .row("Machines", "Beck Farm", "Sprayer", "sprayer", 12, 8, 1000, 0.5, "02")
                .sheet("Jobs", "Holding", "Job", "Field", "Operation", "Machine", "Water volume (L/ha)")
                .row("Jobs", "Moor End", "T1", "Long Acre", "spraying", "Sprayer", 200)
                .row("Jobs", "Beck Farm", "T1", "Lane", "spraying", "Sprayer", 200);
    }

    private List<String> cards(FarmBook book) throws IOException {
        List<String> lines = new ArrayList<>();
        try (XSSFWorkbook written =
                new XSSFWorkbook(Files.newInputStream(book.run(folder).written()))) {
            for (Row row : written.getSheet("Spray cards")) {
                StringBuilder line = new StringBuilder();
                for (Cell cell : row) {
                    line.append(
                                    switch (cell.getCellType()) {
                                        case NUMERIC -> "" + cell.getNumericCellValue();
                                        case FORMULA ->
                                            switch (cell.getCachedFormulaResultType()) {
                                                case NUMERIC -> "" + cell.getNumericCellValue();
                                                default -> cell.getStringCellValue();
                                            };
                                        default -> cell.getStringCellValue();
                                    })
                            .append('|');
                }
                lines.add(line.toString());
            }
        }
        return lines;
    }

    @Test
    void aTestThatCouldBeOfEitherIsToldOfNeither() throws IOException {
        List<String> lines = cards(book());
        assertThat(lines).noneMatch(line -> line.startsWith("Nozzle 2:"));
        assertThat(lines.stream().filter(line -> line.contains("whose they are is not known")))
                .hasSize(2);
    }

    @Test
    void eachCardHasTheNozzlesOfItsOwnSprayer() throws IOException {
        assertThat(cards(book()).stream().filter(line -> line.startsWith("Nozzle size")))
                .containsExactly("Nozzle size (4 for 04)|4.0|-|", "Nozzle size (4 for 04)|2.0|-|");
    }

    @Test
    void aNameThatIsOneMachinesWillDoHoweverItIsWritten() throws IOException {
        List<String> lines = cards(book().with("Machines", 2, 1, "Old sprayer")
                .with("Jobs", 2, 4, "Old sprayer")
                .with("Nozzle test", 2, 0, "sprayer "));
        assertThat(lines).noneMatch(line -> line.contains("whose they are is not known"));
        assertThat(lines.stream().filter(line -> line.startsWith("Nozzle 2:"))).hasSize(1);
    }

    /** The second holding's one nozzle is a set of its own, and no worn one among those of the first. */
    @Test
    void aTestThatSaysTheHoldingIsOfThatHoldingsSprayer() throws IOException {
        List<String> lines = cards(sprayers()
                .sheet("Nozzle test", "Holding", "Sprayer", "Nozzle", "Flow (L/min)", "Pressure (bar)")
                .row("Nozzle test", "Moor End", "Sprayer", 1, 1.6, 3)
                .row("Nozzle test", "Moor End", "Sprayer", 2, 2.2, 3)
                .row("Nozzle test", "Beck Farm", "Sprayer", 1, 0.8, 3));
        assertThat(lines).noneMatch(line -> line.contains("whose they are is not known"));
        assertThat(lines.stream().filter(line -> line.startsWith("Nozzle 2:"))).hasSize(1);
    }
}
