package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.testing.SeasonBook;

/** Tests whose ground is told by how far and how wide it was: their rate was withheld, for want of a test area. */
class TestRunsTest {
    private static SeasonBook assuming(String units) {
        return new SeasonBook().sheet("Assumptions", row("Item", "Value", "Unit"), row("Customary units", units, null));
    }

    /** Florida exam guide, p. 213: 12 gallons over 660 ft of a 10 ft swath are 79.2 gallons an acre. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"Course length (ft), Swath width (ft)", "Distance (ft), Swath (ft)"})
    void gallonsUsedOverARun(String distance, String width) {
        SeasonBook.Worked worked = assuming("US")
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Type", distance, width, "Gallons used"),
                        row("Old boom", "sprayer", 660, 10, 12))
                .run();
        assertThat(worked.number("area-test-rate", "Old boom") / 9.353956229).isCloseTo(79.2, within(0.05));
    }

    /** University of Florida, UF00067504, table 1: 20 lb on 10 × 435 ft, 200 lb an acre as printed. */
    @Test
    @Tag("published")
    void poundsSpreadOverARun() {
        SeasonBook.Worked worked = assuming("US")
                .sheet(
                        "Spreaders",
                        row("Spreader", "Type", "Swath width (ft)", "Distance travelled (ft)", "Pounds spread"),
                        row("Spinner", "fertilizer spreader", 10, 435, 20))
                .run();
        assertThat(worked.number("spreader-test-rate", "Spinner") / 1.120851156).isCloseTo(200, within(0.5));
    }

    /** A typed area comes first, and a machine without either says what is missing. */
    @Test
    @Tag("derived")
    void theAreaTypedComesFirst() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Type", "Distance (m)", "Width (m)", "Test area (m2)", "Volume used (L)"),
                        row("Run", "sprayer", 50, 12, null, 12),
                        row("Plot", "sprayer", 50, 12, 100, 2),
                        row("Neither", "sprayer", null, 12, null, 12))
                .run();
        assertThat(worked.number("area-test-rate", "Run")).isCloseTo(200, within(1e-9));
        assertThat(worked.number("area-test-rate", "Plot")).isCloseTo(200, within(1e-9));
        assertThat(worked.result("area-test-rate", "Neither").reason()).contains("timed distance missing");
    }
}
