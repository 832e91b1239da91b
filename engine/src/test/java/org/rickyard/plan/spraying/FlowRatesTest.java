package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** A sprayer's flow, speed and spacing alone: what goes on a hectare, before there is any field or job. */
class FlowRatesTest {
    private static SeasonBook.Worked sprayer(Object[] headers, Object... cells) {
        return new SeasonBook()
                .sheet("Sprayers", headers, row(cells))
                .sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"))
                .run();
    }

    /** Farm Ireland: 1.3 L/min at 7.8 km/h and 50 cm is 200 L/ha. */
    @Test
    @Tag("published")
    void theFlowOfOneNozzleGivesTheRate() {
        SeasonBook.Worked worked = sprayer(
                row("Machine", "Type", "Nozzle spacing (m)", "Forward speed (km/h)", "Nozzle output (L/min)"),
                "Boom",
                "boom sprayer",
                0.5,
                7.8,
                1.3);
        assertThat(worked.number("rate-from-flow")).isCloseTo(200, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** Course notes: 8 m, 8 km/h, 32 L/min are 300 L/ha. */
    @Test
    @Tag("published")
    void theFlowOfTheWholeBoomDoesToo() {
        SeasonBook.Worked worked = sprayer(
                row("Machine", "Type", "Boom width (m)", "Speed (km/h)", "Boom output (L/min)"),
                "Boom",
                "sprayer",
                8,
                8,
                32);
        assertThat(worked.number("rate-from-flow")).isCloseTo(300, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** 0.16835 gal/min at 5 mph and 20 in are 10 gal/ac (derived from 5,940). */
    @Test
    @Tag("derived")
    void gallonsAMinuteAreGallonsAnAcre() {
        SeasonBook.Worked worked = sprayer(
                row("Sprayer", "Type", "Nozzle spacing (in)", "Speed (mph)", "Nozzle flow (gpm)"),
                "Rig",
                "sprayer",
                20,
                5,
                0.16835);
        assertThat(worked.number("rate-from-flow") / 9.353956229).isCloseTo(10, within(0.0005));
        assertThat(worked.differences()).isEmpty();
    }

    /** Alberta Agdex 606-1: 11002 at 275 kPa, 9 km/h, 50 cm: 40 L/ac, its flow 0.75 L/min. */
    @Test
    @Tag("published")
    void sizeAndPressureGiveTheFlow() {
        SeasonBook.Worked worked = sprayer(
                row("Sprayer", "Type", "Nozzle", "Nozzle spacing (cm)", "Speed (km/h)", "Pressure (kPa)"),
                "Boom",
                "sprayer",
                "11002",
                50,
                9,
                275);
        // The chart is drawn up in US gallons, 1.3 % below the standard's flow, and its litres are rounded.
        assertThat(worked.number("flow-of-nozzle")).isCloseTo(0.75, within(0.75 * 0.0135 + 0.01));
        assertThat(worked.number("rate-from-flow") * 0.40468564224).isCloseTo(40, within(1.5));
        assertThat(worked.differences()).isEmpty();
    }

    /** A knapsack of 1 L/min, a swath of 1 m, 100 m walked in 90 s: 150 L/ha. */
    @Test
    @Tag("derived")
    void aKnapsackIsWalkedOverACourse() {
        SeasonBook.Worked worked = sprayer(
                row("Sprayer", "Type", "Swath (m)", "Flow (L/min)", "Course length (m)", "Time (s)"),
                "Knapsack",
                "knapsack",
                1,
                1,
                100,
                90);
        assertThat(worked.number("rate-from-flow")).isCloseTo(150, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** 12 nozzles of 1.5 L/min at 6 km/h in rows of 4 m: 18 × 600 ÷ (6 × 4) is 450 L/ha; their spacing says nothing. */
    @Test
    @Tag("derived")
    void nozzlesAboveEachOtherAreAllCounted() {
        SeasonBook.Worked worked = sprayer(
                row(
                        "Sprayer",
                        "Type",
                        "Working width (m)",
                        "Speed (km/h)",
                        "Nozzle flow (L/min)",
                        "Number of nozzles",
                        "Nozzle spacing (m)"),
                "Blower",
                "air-blast sprayer",
                4,
                6,
                1.5,
                12,
                0.25);
        assertThat(worked.number("rate-from-flow")).isCloseTo(450, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** Without the count of its nozzles an air-blast sprayer has no rate, though their spacing be typed. */
    @Test
    void aSpacingOfNozzlesAboveEachOtherGivesNoRate() {
        SeasonBook.Worked worked = sprayer(
                row(
                        "Sprayer",
                        "Type",
                        "Working width (m)",
                        "Speed (km/h)",
                        "Nozzle flow (L/min)",
                        "Number of nozzles",
                        "Nozzle spacing (m)"),
                "Blower",
                "air-blast sprayer",
                4,
                6,
                1.5,
                null,
                0.25);
        assertThat(worked.result("rate-from-flow").given()).isFalse();
        assertThat(worked.result("rate-from-flow").reason()).contains("number of nozzles missing (Sprayers!F2)");
        assertThat(worked.differences()).isEmpty();
    }

    /** What a test gave is not what a job wants until somebody says so; where it stands is told. */
    @Test
    void whereNoWaterVolumeIsTypedTheTestThatTellsOneIsNamed() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("Corner", 0.6))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Tank (L)", "Test area (m2)", "Test volume (L)"),
                        row("Back pack", "knapsack", 15, 100, 2),
                        row("Other", "knapsack", 15, 100, 2))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"),
                        row("Corner", "spraying", "Back pack", "Herbicide", 3, null),
                        row("Corner", "spraying", "Other", "Herbicide", 3, 200))
                .run();
        assertThat(worked.messages())
                .filteredOn(m -> m.contains("What it was found to put out stands on Area tests"))
                .singleElement()
                .satisfies(m -> assertThat(m).contains("'Back pack'").contains("Water volume of Jobs"));
    }
}
