package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.testing.SeasonBook;

/**
 * South Africa, DAFF/KZN, Guide to Machinery Costs 2015/16, example 1: 5 km/h × 2 m with 17 % of the time lost. What it
 * comes to is not printed: 5 × 2 × 83 % ÷ 10 = 0.83 ha/h. The header was asked about, and a typical efficiency of 80 % taken.
 */
class TimeLostTest {
    @ParameterizedTest
    @Tag("derived")
    @ValueSource(strings = {"Time lost (%)", "Lost time, %", "Time loss (%)"})
    void theShareOfTimeLostIsWhatTheEfficiencyLeaves(String header) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("A", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Speed (km/h)", "Width (m)", header, "Turn time (s)"),
                        row("Mower", "mower", 5, 2, 17, null))
                .run();
        assertThat(worked.number("work-rate", "Mower")).isCloseTo(0.83, within(1e-9));
    }

    /** Hunt, problem on a combine: 4.8 km/h × 5 m, 95 % of it used, 15 s a turn on 400 m, 0.0667 h/ha: 1.90 ha/h. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"Time lost (h/ha), 0.0666667", "Lost time (min/ha), 4", "Time loss (min/ha), 4"})
    void timeLostByTheHectareIsStillThat(String header, double lost) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Row length (m)"), row("A", 10, 400))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Speed (km/h)", "Width (m)", "Overlap (m)", "Turn time (s)", header),
                        row("Thresher", "combine", 4.8, 5, 0.25, 15, lost))
                .run();
        assertThat(worked.number("work-rate", "Thresher")).isCloseTo(1.90, within(0.005));
    }
}
