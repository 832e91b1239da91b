package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;

/** What two sheets of spraying say of one thing must agree, or say that it does not. All values by arithmetic. */
@Tag("derived")
class SprayersReckonedTwiceTest {
    private static final Object[] FIELDS =
            row("Field", "Crop", "Area (ha)", "Row spacing (m)", "Run length (m)", "Distance to fill point (km)");

    private static SeasonBook book(Object[]... jobs) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        FIELDS,
                        row("Hill", "wheat", 17.3, 0.75, 100, 1.5),
                        row("Orchard", "apples", 10, 3.5, null, null))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Tank (L)",
                                "Number of nozzles",
                                "Nozzle spacing (m)",
                                "Nozzle size",
                                "Turn time (s)",
                                "Fill time (min)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)",
                                "Residual (L)",
                                "Lowest pressure (bar)",
                                "Highest pressure (bar)",
                                "Last tested"),
                        row(
                                "Boom",
                                "sprayer",
                                24,
                                12,
                                3000,
                                48,
                                0.5,
                                "05",
                                20,
                                12,
                                20,
                                20,
                                30,
                                4,
                                1.5,
                                LocalDate.of(2023, 1, 10)),
                        row(
                                "Blast",
                                "air-blast sprayer",
                                4,
                                6,
                                1000,
                                12,
                                0.25,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null))
                .sheet("Products", row("Product", "Unit", "Buffer category"), row("X", "L", "None"), row("Y", "L", "B"))
                .sheet(
                        "Nozzle test",
                        row("Sprayer", "Nozzle", "Flow (L/min)", "Pressure (bar)", "New flow (L/min)"),
                        row("Boom", "1", 2.0, 3, 2.0),
                        row("Boom", "2", 2.0, 3, 2.0))
                .sheet("Jobs", jobs)
                .sheet("Assumptions", row("Item", "Value", "Unit"), row("a sprayer's test counts for", 366, "d"));
    }

    private static final Object[] JOBS = row(
            "Job",
            "Field",
            "Operation",
            "Machine",
            "Water volume (L/ha)",
            "Product",
            "Dose (L/ha)",
            "Speed (km/h)",
            "Spray density (kg/L)",
            "Band width (m)",
            "Earliest",
            "Latest",
            "Wind speed (km/h)",
            "Wind height (ft)");

    private static List<String> told(SeasonBook.Worked worked, String part) {
        return worked.findings().stream()
                .map(Finding::message)
                .filter(message -> message.contains(part))
                .toList();
    }

    /**
     * New nozzles 05 catch 2 L/min of water at 3 bar. Of a spray of 1.28 kg/L they give 2 ÷ √1.28 at that pressure, which
     * at 600 × 2 ÷ √1.28 ÷ (200 × 0.5) km/h is the 200 L/ha wanted: the boom is right, and once it was a stop.
     */
    @Test
    void aCatchTestWithWaterIsHeldAgainstTheWaterOfAHeavySpray() {
        double speed = 600 * 2 / Math.sqrt(1.28) / (200 * 0.5);
        SeasonBook.Worked worked = book(
                        JOBS, row("T", "Hill", "spray", "Boom", 200, "Y", 1, speed, 1.28, null, null, null, 10, 33))
                .run();
        assertThat(worked.number("water-equivalent-output")).isCloseTo(2, within(1e-9));
        assertThat(worked.number("measured-rate")).isCloseTo(200, within(1e-9));
        assertThat(worked.number("rate-error")).isCloseTo(0, within(1e-6));
        assertThat(told(worked, "the boom gives over")).isEmpty();
        assertThat(worked.differences()).isEmpty();
        // 33 ft is the 10 m of a weather station.
        assertThat(told(worked, "Wind height")).isEmpty();
        assertThat(worked.number("wind-at-boom")).isCloseTo(5, within(1e-9));
    }

    /** Half of what blows at 10 m blows at the boom; wind at 2 m is taken as it is. */
    @ParameterizedTest
    @CsvSource({
        "40, 33, STOP",
        "20, 33, CAUTION",
        "10, 33, ",
        "20, 6, STOP",
        "19, 6, CAUTION",
        "1.9, 6, CAUTION",
        "5, 6, "
    })
    void aWindThatAGuideWarnsOfIsToldAndNotOnlyShown(double wind, double feet, Finding.Severity severity) {
        SeasonBook.Worked worked = book(
                        JOBS, row("T", "Hill", "spray", "Boom", 200, "Y", 1, 12, null, null, null, null, wind, feet))
                .run();
        assertThat(worked.findings().stream()
                        .filter(finding -> finding.message().contains("GrowSafe"))
                        .map(Finding::severity))
                .containsExactlyElementsOf(severity == null ? List.of() : List.of(severity));
    }

    /** Season has half the hours of Work rates for two, Spray hours all of one. */
    @Test
    void severalSprayersAlikeAreToldToBeReckonedAsOneByTheTank() {
        SeasonBook.Worked worked = book(
                        JOBS,
                        row("T", "Hill", "spray", "Boom x 2", 200, "Y", 1, 12, null, null, null, null, null, null),
                        row("U", "Hill", "spray", "Boom", 200, "Y", 1, 12, null, null, null, null, null, null))
                .run();
        assertThat(told(worked, "'Boom' x 2: Spray hours and the tankfuls")).hasSize(1);
    }

    /** 450 × 6 × 4 ÷ 600 = 18 L/min for 12 nozzles; that they stand 25 cm apart is nothing to it. */
    @Test
    void nozzlesOfAnAirBlastSprayerGiveTheSameOnSprayBlocksAndOnTrees() {
        SeasonBook.Worked worked = book(
                        JOBS,
                        row("A", "Orchard", "spray", "Blast", 450, null, null, 6, null, null, null, null, null, null))
                .run();
        assertThat(worked.number("nozzle-output")).isCloseTo(1.5, within(1e-9));
        assertThat(told(worked, "is not the boom width")).isEmpty();
        // The rows are 3.5 m apart and the sprayer is 4 m wide, so Trees says less, and says why.
        // It has no fill time, which the boom has.
        assertThat(told(worked, "no time for filling 'Blast'")).hasSize(1);
        assertThat(worked.number("flow-per-open-nozzle")).isCloseTo(1.5 * 3.5 / 4, within(1e-9));
        assertThat(told(worked, "the sprayer's working width is not the row spacing"))
                .hasSize(1);
        assertThat(worked.differences()).isEmpty();
    }

    /** 30 L at 200 L/ha under 24 m last 62.5 m; on bands over a third of the ground, three times that. */
    @Test
    void theResidueRunsOutAlongTheBands() {
        SeasonBook.Worked worked = book(
                        JOBS, row("T", "Hill", "spray", "Boom", 200, "Y", 1, 12, null, 0.25, null, null, null, null))
                .run();
        assertThat(worked.number("residue-run-out")).isCloseTo(187.5, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /**
     * Work rates: 17.3 ha ÷ 28.8 ha/h + 17.3 × 10,000 ÷ (24 × 100) turns of 20 s. Spray fields: 3,460 ÷ 3,000 rounds of 12
     * and 9 min more. The runs are short, and are reckoned by turns already.
     */
    @Test
    void hoursOfSprayingThatDifferAreToldOfTheSprayer() {
        SeasonBook.Worked worked = book(
                        JOBS,
                        row(
                                "T",
                                "Hill",
                                "spray",
                                "Boom",
                                200,
                                "X",
                                1,
                                12,
                                null,
                                null,
                                LocalDate.of(2025, 4, 14),
                                LocalDate.of(2025, 4, 20),
                                null,
                                null))
                .run();
        double byTurns = 17.3 / 28.8 + 17.3e4 / 2400 * 20 / 3600;
        double byParts = byTurns + 3460 / 3000.0 * 21 / 60;
        assertThat(worked.number("hours")).isCloseTo(byTurns, within(1e-9));
        assertThat(worked.number("spraying-hours")).isCloseTo(byParts, within(1e-9));
        assertThat(told(worked, "no time for filling")).isEmpty();
        assertThat(told(worked, "the spraying of 'Boom' takes 1.4 h on Spray fields"))
                .singleElement()
                .asString()
                .contains("1 h on Work rates")
                .contains("add about 0.023 h/ha to its Other lost time");
        assertThat(told(worked, "reckon by turn time and run length rather than by an efficiency"))
                .isEmpty();
        assertThat(told(worked, "buffer category")).isEmpty();
        // 831 days, where the client says that a test counts for 366.
        assertThat(told(worked, "older than a test counts")).hasSize(1);
        assertThat(told(worked, "the lowest pressure typed is above the highest"))
                .hasSize(1);
    }

    /** Bands of a third of the rows need a third of the water, but the sprayer drives over the whole field. */
    @Test
    void theWorkRateOfBandsIsThatOfTheFieldOnBothSheets() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Row spacing (m)"), row("Rows", 20, 0.9))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)", "Fill time (min)"),
                        row("Rig", "sprayer", 9, 8, 600, 12))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Water volume (L/ha)", "Band width (m)"),
                        row("Rows", "spraying", "Rig", 200, 0.3))
                .run();
        double planned = worked.number("spraying-work-rate", "Rig");
        assertThat(worked.number("compared-work-rate", "Rig", "200 L/ha")).isCloseTo(planned, within(1e-9));
        // 20 ha at 7.2 ha/h and 20 / 3 × 200 ÷ 600 fills of 12 min.
        assertThat(planned).isCloseTo(20 / (20 / 7.2 + 20 / 3.0 * 200 / 600 * 0.2), within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }
}
