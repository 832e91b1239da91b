package org.rickyard.plan.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.workrate.MeasuredMachine;

/** Speeds by the watch and widths of rows in the place of those that nobody typed. */
class MeasuredInputsTest {
    private static final double HECTARES_IN_AN_ACRE = 0.40468564224;

    /** Hunt, example 1.1: 3 m mower, 100 m in 52 s, 2.08 ha/h. */
    @Test
    @Tag("published")
    void aTimedRunGivesTheSpeed() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Distance (m)", "Time (s)", "Field efficiency (%)"),
                        row("Mower", "mower", 3, 100, 52, 80))
                .run();
        assertThat(worked.number("spot-work-rate")).isCloseTo(2.08, within(0.005));
        assertThat(worked.number("speed-by-watch")).isCloseTo(360 / 52.0, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** A speed that is typed goes before one that was timed, machine by machine and job by job. */
    @Test
    @Tag("derived")
    void whatIsTypedGoesBefore() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "grass"), row("B", 10, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Speed (km/h)", "Timed distance (m)", "Timed seconds (s)"),
                        row("Timed", "mower", 3, null, 100, 36),
                        row("Typed", "mower", 3, 8, 100, 36),
                        row("Neither", "mower", 3, null, null, null))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Speed (km/h)"),
                        row("1", "A", "mow", "Timed", null),
                        row("2", "B", "mow", "Timed", 12),
                        row("3", "A", "mow", "Typed", null),
                        row("4", "A", "mow", "Neither", null))
                .run();
        assertThat(worked.number("spot-work-rate", "1")).isCloseTo(3, within(1e-9));
        assertThat(worked.number("spot-work-rate", "2")).isCloseTo(3.6, within(1e-9));
        assertThat(worked.number("spot-work-rate", "3")).isCloseTo(2.4, within(1e-9));
        assertThat(worked.result("work-rate", "4").given()).isFalse();
        assertThat(worked.result("work-rate", "4").reason()).contains("Machines!D4");
        assertThat(worked.differences()).isEmpty();
    }

    /** Iowa State AgDM A3-24: plough of 6 furrows of 16 in at 5 mph, 85 %: 4.1 ac/h. */
    @Test
    @Tag("published")
    void furrowsMakeAWidth() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Acres", "Crop"), row("A", 100, "corn"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Bottoms", "Bottom width (in)", "Speed (mph)", "Field efficiency (%)"),
                        row("Plow", "plow", 6, 16, 5, 85))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "plowing", "Plow"))
                .run();
        assertThat(worked.number("work-rate") / HECTARES_IN_AN_ACRE).isCloseTo(4.1, within(0.05));
        assertThat(worked.differences()).isEmpty();
    }

    /** Iowa State AgDM A3-24: 15 knives, 37.5 ft, at 6 mph, 65 %: 17.7 ac/h (the 30 in between them derived). */
    @Test
    @Tag("published")
    void knivesMakeAWidth() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Acres", "Crop"), row("A", 100, "corn"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Row units",
                                "Knife spacing (in)",
                                "Speed (mph)",
                                "Field efficiency (%)"),
                        row("Applicator", "other", 15, 30, 6, 65))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "injecting", "Applicator"))
                .run();
        assertThat(worked.number("work-rate") / HECTARES_IN_AN_ACRE).isCloseTo(17.7, within(0.05));
        assertThat(worked.differences()).isEmpty();
    }

    /** 36 nozzles 20 in apart are a boom of 60 ft: 10 gal/ac at 5 mph is 0.16835 gal/min from each. */
    @Test
    @Tag("derived")
    void nozzlesMakeTheWidthOfABoom() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Acres"), row("North", 40))
                .sheet(
                        "Sprayers",
                        row(
                                "Sprayer",
                                "Type",
                                "No. of nozzles",
                                "Nozzle spacing (in)",
                                "Distance (ft)",
                                "Time (s)",
                                "Tank (gal)"),
                        row("Rig", "sprayer", 36, 20, 220, 30, 500))
                .sheet("Jobs", row("Field", "Operation", "Sprayer", "GPA"), row("North", "spray", "Rig", 10))
                .sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"))
                .run();
        // 220 ft in 30 s are 5 mph.
        assertThat(worked.result("nozzle-output", "spraying").number().orElseThrow() / 3.785411784)
                .isCloseTo(0.16835, within(0.000005));
        assertThat(worked.number("spot-work-rate") / HECTARES_IN_AN_ACRE).isCloseTo(60 * 5 / 8.25, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** A measure that cannot be is no blank: nothing stands in for it in silence. */
    @Test
    @Tag("derived")
    void aSpoiltMeasureWithholds() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis"),
                        row("A", 10, "grass", 20, "as carted fresh"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Output (t/h)", "Timed distance (m)", "Timed seconds (s)"),
                        row("F", "forager", 40, 100, "soon"))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "chopping", "F"))
                .run();
        assertThat(worked.result("work-rate").given()).isFalse();
        assertThat(worked.differences()).isEmpty();
    }

    /** Where the other part has no header there is no such measure, and the width is missing as ever. */
    @Test
    void rowsWithoutTheirWidthAreNoWidth() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "No. of rows", "Speed (km/h)", "Timed distance (m)"),
                        row("M", "mower", 8, 10, 100))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("1", "A", "mow", "M"))
                .run();
        assertThat(worked.result("work-rate").given()).isFalse();
        assertThat(worked.result("work-rate").reason()).contains("working width missing");
        assertThat(worked.plan().table("measured-widths").rows()).isZero();
        assertThat(worked.plan().table("measured-speeds").rows()).isZero();
        assertThat(worked.differences()).isEmpty();
    }

    /** Nozzles of an air-blast sprayer stand above each other: their spacing is no width along the ground. */
    @Test
    void nozzlesAboveEachOtherMakeNoWidth() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "apples"), row("B", 10, "wheat"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Number of nozzles", "Nozzle spacing (m)", "Speed (km/h)"),
                        row("Blower", "air-blast sprayer", null, 12, 0.25, 6),
                        row("Mower", "mower", null, null, null, 6),
                        row("Boom", "sprayer", null, 48, 0.5, 6))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("1", "A", "spray", "Blower", 400),
                        row("2", "B", "mow", "Mower", null),
                        row("3", "B", "spray", "Boom", 200))
                .run();
        assertThat(worked.result("spot-work-rate", "1").given()).isFalse();
        assertThat(worked.result("spot-work-rate", "1").reason())
                .contains("type its Working width")
                .endsWith("(Machines!C2)");
        assertThat(worked.result("spot-work-rate", "2").reason())
                .contains("type its Working width")
                .endsWith("(Machines!C3)");
        // 24 m at 6 km/h.
        assertThat(worked.number("spot-work-rate", "3")).isCloseTo(14.4, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** A forager's knives are on its drum: they are no rows, and make no width. */
    @Test
    void knivesOfADrumMakeNoWidth() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "maize"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Knives", "Row width (m)", "Speed (km/h)"),
                        row("F", "forager", null, 24, 0.75, 6))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("1", "A", "chopping", "F"))
                .run();
        assertThat(worked.result("spot-work-rate", "1").given()).isFalse();
        assertThat(worked.result("spot-work-rate", "1").reason()).contains("width missing (Machines!C2)");
        assertThat(worked.differences()).isEmpty();
    }

    /** What a run has measured is told beside a typed value too, in words that hold for both. */
    @Test
    void theWordForTheMeasureHoldsBesideATypedValue() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis"),
                        row("A", 10, "grass", 20, "as carted fresh"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Output (t/h)",
                                "Width (m)",
                                "Speed (km/h)",
                                "Timed distance (m)",
                                "Timed seconds (s)"),
                        row("Timed", "forager", 400, 3, null, 100, 36),
                        row("Typed", "forager", 400, 3, 8, 100, 36))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine"),
                        row("1", "A", "chopping", "Timed"),
                        row("2", "A", "chopping", "Typed"))
                .run();
        assertThat(worked.plan().table("work-rates").spec().columns())
                .filteredOn(column -> column.symbol().equals(MeasuredMachine.SPEED_BY))
                .extracting(TableColumn::label)
                .containsExactly("Speed measured by");
        assertThat(worked.number("spot-work-rate", "1")).isCloseTo(3, within(1e-9));
        assertThat(worked.number("spot-work-rate", "2")).isCloseTo(2.4, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }
}
