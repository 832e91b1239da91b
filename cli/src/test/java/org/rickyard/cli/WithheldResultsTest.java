package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.plan.WorkPlan;
import org.rickyard.testing.SeasonBook;

class WithheldResultsTest {
    /** Where only the first few are shown, the gap that costs most was among those that were counted. */
    @Test
    void theReasonThatWithholdsMostStandsFirst() {
        WorkPlan plan = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "grass", 10), row("Hill", "wheat", 8))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Mower", "mower", 3, null, null),
                        row("Sprayer", "sprayer", 24, 10, null))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water (L/ha)"),
                        row("Mow", "Top", "mowing", "Mower", null, null, null),
                        row("T1", "Hill", "spraying", "Sprayer", "Fungicide", 1, 200))
                .run()
                .plan();
        List<String> lines = WithheldResults.of(plan).lines(10);
        assertThat(lines).anyMatch(line -> line.startsWith("speed missing: Machines!D2"));
        assertThat(lines.get(0)).startsWith("tank missing: Machines!E3");
        assertThat(lines).extracting(WithheldResultsTest::results).isSortedAccordingTo((a, b) -> b - a);
    }

    /** A product that is in no list has no cell to look at. */
    @Test
    void whatHasNoCellIsNamed() {
        WorkPlan plan = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Hill", "wheat", 8))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)"),
                        row("Spinner", "fertilizer spreader", 18))
                .sheet("Products", row("Product", "Unit", "Pack size"), row("Prills", "kg", 25))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose (kg/ha)"),
                        row("Hill", "spreading", "Spinner", "Ash", 100),
                        row("Hill", "spreading", "Spinner", "Lime", 100))
                .run()
                .plan();
        assertThat(WithheldResults.of(plan).lines(10)).anyMatch(line -> line.contains("in another unit: Ash; Lime ("));
    }

    /** A day that could not be planned is a result withheld too: the JSON and Trail said three of them, Summary one. */
    @Test
    void daysThatCouldNotBePlannedAreCountedByAllAlike() throws IOException {
        SeasonBook.Worked worked = waitingForNothing();
        long withheld =
                worked.results().stream().filter(result -> !result.given()).count();
        assertThat(worked.results())
                .filteredOn(result -> !result.given())
                .extracting(result -> result.symbol().name())
                .contains("planned start", "planned finish");
        assertThat(WithheldResults.of(worked.plan()).count()).isEqualTo(withheld);
        try (XSSFWorkbook book = new XSSFWorkbook(worked.file().toString())) {
            assertThat(beside(book, "Results withheld")).isEqualTo(withheld);
            assertThat(beside(book, "Results given")).isEqualTo(worked.results().size() - withheld);
        }
        assertThat(worked.messages()).anyMatch(said -> said.contains("3 on 'Day plan'"));
    }

    /** Where Trail gives a line to each column, those that a method answers had none. */
    @Test
    void aTrailByColumnsNamesThoseOfMethodsToo(@TempDir Path folder) throws IOException {
        Path book = waitingForNothing().file();
        Path out = folder.resolve("out.xlsx");

        Ran.rickyard("run", book, "--to", out, "--trail-rows", "0");

        try (XSSFWorkbook written = new XSSFWorkbook(out.toString())) {
            List<String> trail = new ArrayList<>();
            for (Row line : written.getSheet("Trail")) {
                trail.add(line.getCell(0) + ": " + line.getCell(4) + " | " + line.getCell(8));
            }
            assertThat(trail)
                    .anyMatch(line -> line.startsWith("planned start: method: ") && line.endsWith("1 withheld"))
                    .anyMatch(line -> line.startsWith("days late: ") && line.endsWith("1 withheld"));
        }
    }

    private static SeasonBook.Worked waitingForNothing() {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "grass", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 3, 10, 80))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Workable days (%)", "After", "Earliest", "Latest"),
                        row(
                                "Mow",
                                "Top",
                                "mowing",
                                "Mower",
                                70,
                                "Not there",
                                LocalDate.of(2026, 5, 1),
                                LocalDate.of(2026, 6, 1)))
                .run();
    }

    private static double beside(XSSFWorkbook book, String words) {
        for (Row line : book.getSheet("Summary")) {
            Cell first = line.getCell(0);
            if (first != null && first.toString().startsWith(words)) {
                return line.getCell(2).getNumericCellValue();
            }
        }
        throw new AssertionError(words + " is not on Summary");
    }

    private static int results(String line) {
        return Integer.parseInt(line.replaceAll(".*\\((\\d+) results?\\)", "$1"));
    }
}
