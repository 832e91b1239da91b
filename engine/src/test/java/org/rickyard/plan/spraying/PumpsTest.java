package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** Whether a sprayer's pump feeds its nozzles and stirs its tank. */
class PumpsTest {
    private static final Object[] JOBS = row("Field", "Operation", "Machine", "Speed (km/h)", "Water volume (L/ha)");

    private static SeasonBook book(Object[] headers, Object... cells) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("Long Acre", 8))
                .sheet("Machines", headers, row(cells));
    }

    private static SeasonBook.Worked sprayer(Object pump, Object tank) {
        return book(
                        row("Machine", "Type", "Boom (m)", "Tank (L)", "Pump output (L/min)"),
                        "Boom",
                        "sprayer",
                        8,
                        tank,
                        pump)
                .sheet("Jobs", JOBS, row("Long Acre", "spraying", "Boom", 8, 300))
                .run();
    }

    /**
     * GATE agricultural engineering notes, plant protection, question 5: a boom of 8 m at 8 km/h that gives 32 L/min puts
     * on 300 L/ha. Netherlands, PT 2009 annex 1: 5 % of the tank a minute, of 3,000 L derived.
     */
    @Test
    @Tag("published")
    void thePumpFeedsNozzlesAndAgitation() {
        SeasonBook.Worked worked = sprayer(200, 3000);
        assertThat(worked.number("boom-flow")).isCloseTo(32, within(1e-9));
        assertThat(worked.number("agitation-flow")).isCloseTo(150, within(1e-9));
        assertThat(worked.number("pump-flow-wanted")).isCloseTo(182, within(1e-9));
        assertThat(worked.number("pump-flow-to-spare")).isCloseTo(18, within(1e-9));
        assertThat(worked.messages()).noneMatch(m -> m.contains("the pump gives less"));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aPumpTooSmallIsTold() {
        SeasonBook.Worked little = sprayer(175, 3000);
        assertThat(little.number("pump-flow-to-spare")).isCloseTo(-7, within(1e-9));
        assertThat(little.messages())
                .filteredOn(m -> m.contains("the pump gives less"))
                .singleElement()
                .satisfies(m -> assertThat(m).contains("stirring of a full tank"));
        SeasonBook.Worked less = sprayer(25, 3000);
        assertThat(less.messages())
                .filteredOn(m -> m.contains("the pump gives less"))
                .singleElement()
                .satisfies(m -> assertThat(m).contains("less goes on than planned"));
        assertThat(less.differences()).isEmpty();
    }

    /** Netherlands, PT 2009 annex 1: 2.5 % a minute where injectors stir; the flow of it is derived. */
    @Test
    @Tag("derived")
    void injectorsWantLess() {
        SeasonBook.Worked worked = book(
                        row("Machine", "Type", "Boom (m)", "Tank (L)", "Pump (L/min)"),
                        "Boom",
                        "sprayer",
                        12,
                        3000,
                        120)
                .sheet("Jobs", JOBS, row("Long Acre", "spraying", "Boom", 7, 200))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("agitation, share of the tank a minute", 2.5, "%/min"))
                .run();
        assertThat(worked.number("agitation-flow")).isCloseTo(75, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void whatIsWantingIsNamedAndWithholdsNoMore() {
        SeasonBook.Worked worked = sprayer(70, null);
        assertThat(worked.number("boom-flow")).isCloseTo(32, within(1e-9));
        assertThat(worked.result("agitation-flow").reason()).contains("tank missing (Machines!D2)");
        assertThat(worked.result("pump-flow-wanted").reason()).contains("tank missing (Machines!D2)");
        assertThat(worked.result("pump-flow-to-spare").reason()).contains("tank missing (Machines!D2)");
        assertThat(worked.differences()).isEmpty();
    }

    /** 24 nozzles 50 cm apart are 12 m, and 100 m in 51.43 s are 7 km/h. */
    @Test
    @Tag("derived")
    void nozzlesMakeTheWidthAndTheWatchTheSpeed() {
        SeasonBook.Worked worked = book(
                        row(
                                "Machine",
                                "Type",
                                "Number of nozzles",
                                "Nozzle spacing (m)",
                                "Tank (L)",
                                "Pump flow (L/min)",
                                "Timed distance (m)",
                                "Timed seconds"),
                        "Boom",
                        "sprayer",
                        24,
                        0.5,
                        700,
                        70,
                        100,
                        360 / 7.0)
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("Long Acre", "spraying", "Boom", 200))
                .run();
        assertThat(worked.number("boom-flow")).isCloseTo(28, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** 16 bands of 25 cm are sprayed, not the 12 m between the ends of the boom: 200 × 6 × 4 ÷ 600. */
    @Test
    @Tag("derived")
    void bandsAreFedByTheirOwnWidth() {
        SeasonBook.Worked worked = book(
                        row("Machine", "Type", "Boom (m)", "Number of nozzles", "Tank (L)", "Pump flow (L/min)"),
                        "Boom",
                        "sprayer",
                        12,
                        16,
                        600,
                        100)
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Speed (km/h)", "Water volume (L/ha)", "Band width (cm)"),
                        row("Long Acre", "spraying", "Boom", 6, 200, 25))
                .run();
        assertThat(worked.number("boom-flow")).isCloseTo(8, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void gallonsAMinuteAreRead() {
        SeasonBook.Worked worked = book(
                        row("Machine", "Type", "Boom (ft)", "Tank (gal)", "Pump capacity (gpm)"),
                        "Rig",
                        "sprayer",
                        60,
                        500,
                        60)
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Speed (mph)", "Water volume (gal/ac)"),
                        row("Long Acre", "spraying", "Rig", 8, 20))
                .sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"))
                .run();
        // UMass Extension, Block-specific Sprayer Calibration Worksheet: GPA × mph × feet ÷ 495, here 20 × 8 × 60 ÷
        // 495.
        assertThat(worked.number("boom-flow") / 3.785411784).isCloseTo(9600 / 495.0, within(0.001));
        assertThat(worked.number("agitation-flow") / 3.785411784).isCloseTo(25, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aKnapsackHasNoPumpToAskFor() {
        SeasonBook.Worked worked = book(
                        row("Machine", "Type", "Boom (m)", "Tank (L)", "Pump flow (L/min)"),
                        "Back",
                        "knapsack",
                        1,
                        15,
                        2)
                .sheet("Jobs", JOBS, row("Long Acre", "spraying", "Back", 4, 200))
                .run();
        assertThat(worked.results()).noneMatch(result -> result.id().equals("pump-flow-wanted"));
    }

    /** The vacuum pump of a tanker moves thousands of litres of air; it feeds no nozzles. */
    @Test
    void thePumpOfATankerIsNothingUnusual() {
        SeasonBook.Worked worked = book(
                        row("Machine", "Type", "Tank (L)", "Pump flow (L/min)"), "Cart", "slurry tanker", 11000, 9000)
                .run();
        assertThat(worked.messages()).noneMatch(m -> m.contains("ump flow"));
        assertThat(book(row("Machine", "Type", "Tank (L)", "Pump flow (L/min)"), "Boom", "sprayer", 3000, 9000)
                        .run()
                        .messages())
                .anyMatch(m -> m.contains("Pump flow 9000 L/min is unusual"));
    }

    @Test
    void withoutThatColumnNothingIsAddedToAWorkbook() {
        SeasonBook.Worked worked = book(row("Machine", "Type", "Boom (m)", "Tank (L)"), "Boom", "sprayer", 12, 700)
                .sheet("Jobs", JOBS, row("Long Acre", "spraying", "Boom", 7, 200))
                .run();
        assertThat(worked.results()).noneMatch(result -> result.id().equals("pump-flow-wanted"));
    }
}
