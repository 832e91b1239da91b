package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Test;
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

    private static int results(String line) {
        return Integer.parseInt(line.replaceAll(".*\\((\\d+) results?\\)", "$1"));
    }
}
