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
        assertThat(worked.differences()).isEmpty();
    }

    /**
     * University of Florida, UF00067504, table 2: 43 turns of a wheel of 9 ft, 8 ft wide, 20 lb. Printed is 277, by 1,000
     * in the place of 1,013; exactly it is 281.4 lb an acre.
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({
        "Wheel circumference (ft), Wheel turns, Test weight (lb)",
        "Wheel circumference (ft), Turns of the wheel, Seed caught (lb)",
        "Circumference (ft), Turns of wheel, Catch (lb)",
        "Circumference of drive wheel (ft), Drive wheel revolutions, Fertilizer caught (lb)"
    })
    void poundsCaughtWhileAWheelWasTurned(String wheel, String turns, String caught) {
        SeasonBook.Worked worked = assuming("US")
                .sheet(
                        "Drills",
                        row("Drill", "Type", "Width (ft)", wheel, turns, caught),
                        row("Drill 8", "drill", 8, 9, 43, 20))
                .run();
        double pounds = worked.number("spreader-test-rate", "Drill 8") / 1.120851156;
        assertThat(pounds).isCloseTo(281.4, within(0.05));
        assertThat(pounds / 1.01302).isCloseTo(277.8, within(0.05));
        assertThat(worked.differences()).isEmpty();
    }

    /** Of drills of one list each may be tested in its way; what one of them lacks is named. */
    @Test
    @Tag("derived")
    void turnsStandBesideRunsAndTrays() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Drills",
                        row(
                                "Drill",
                                "Type",
                                "Width (m)",
                                "Test area (m2)",
                                "Timed distance (m)",
                                "Wheel turns",
                                "Wheel circumference (m)",
                                "Test weight (kg)"),
                        row("Turned", "drill", 4, null, null, 12, 2.1, 1.9),
                        row("Driven", "drill", 4, null, 25.2, 99, 9, 1.9),
                        row("Tray", "drill", 4, 100, 25.2, null, null, 1.9),
                        row("No wheel", "drill", 4, null, null, 12, null, 1.9))
                .run();
        // 12 × 2.1 × 4 = 100.8 m2
        assertThat(worked.number("spreader-test-rate", "Turned")).isCloseTo(188.492, within(0.001));
        assertThat(worked.number("spreader-test-rate", "Driven")).isCloseTo(188.492, within(0.001));
        assertThat(worked.number("spreader-test-rate", "Tray")).isCloseTo(190, within(1e-9));
        assertThat(worked.result("spreader-test-rate", "No wheel").reason()).contains("wheel circumference missing");
        assertThat(worked.differences()).isEmpty();
    }

    /** A rice or turf patch is told by its sides (NSW DPI 2009: litres on 10 × 1 m, times 10, are litres on 100 m2). */
    @Test
    @Tag("published")
    void aPatchIsToldByItsSides() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Patch",
                        row("Sprayer", "Type", "Patch length (m)", "Patch width (m)", "Litres used"),
                        row("Knapsack", "knapsack", 10, 1, 0.6))
                .run();
        assertThat(worked.number("area-test-rate", "Knapsack") / 100).isCloseTo(6, within(1e-9));
    }

    /**
     * Ohio State University Extension Bulletin 817-00: over the distance for the spacing, 204 ft for 20 in, the ounces
     * caught from one nozzle are gallons an acre; P. E. Sumner, Georgia: 340 ft for a band of 12 in.
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({
        "Run catch (fl oz), 20, 204",
        "Ounces caught, 20, 204",
        "Catch (fl oz), 30, 136",
        "Average ounces caught, 40, 102",
        "Catch over the course (oz), 12, 340"
    })
    void ouncesCaughtOverARunAreGallonsAnAcre(String caught, double inches, double feet) {
        SeasonBook.Worked worked = assuming("US")
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Type", "Boom (ft)", "Nozzle spacing (in)", "Course (ft)", caught),
                        row("Turf boom", "sprayer", 15, inches, feet, 80))
                .run();
        assertThat(worked.number("catch-run-rate", "Turf boom") / 9.353956229).isCloseTo(80, within(80 / (feet - 1)));
        assertThat(worked.differences()).isEmpty();
    }

    /** What was used over a run is of the whole boom, and stays so beside the spacing of its nozzles. */
    @Test
    @Tag("derived")
    void whatWasUsedIsOfTheWholeBoom() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Type", "Boom (m)", "Nozzle spacing (m)", "Distance (m)", "Water used (L)"),
                        row("Boom", "sprayer", 12, 0.5, 50, 12))
                .run();
        assertThat(worked.number("area-test-rate", "Boom")).isCloseTo(200, within(1e-9));
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
        assertThat(worked.differences()).isEmpty();
    }
}
