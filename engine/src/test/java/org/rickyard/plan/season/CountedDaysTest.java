package org.rickyard.plan.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.season.SeasonFit;

/** Days for a job that somebody has counted, and an overlap that is told as a share of the width. */
@Tag("derived")
class CountedDaysTest {
    private static final double HECTARES_IN_AN_ACRE = 0.40468564224;

    /** The way of Iowa State AgDM A3-25: area ÷ suitable days ÷ hours a day. */
    @Test
    void areaOverDaysOverHoursIsTheRateRequired() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Acres", "Crop"), row("A", 300, "corn"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (ft)", "Speed (mph)", "Field efficiency (%)"),
                        row("Planter", "planter", 15, 5, 65))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Days available", "Hours per day"),
                        row("A", "planting", "Planter", 12, 10))
                .run();
        assertThat(worked.number("days-available")).isCloseTo(12, within(1e-9));
        assertThat(worked.number("required-work-rate") / HECTARES_IN_AN_ACRE).isCloseTo(2.5, within(1e-9));
        // 15 ft × 5 mph × 65 % ÷ 8.25 is 5.91 ac/h: 50.8 h, 5.1 days.
        assertThat(worked.number("days-needed")).isCloseTo(300 / (15 * 5 * 0.65 / 8.25) / 10, within(1e-9));
        assertThat(worked.result("season-fit").word()).contains("fits");
        assertThat(worked.differences()).isEmpty();
    }

    /** Days that are counted are the days of a spraying job too, on both sheets that ask whether it fits. */
    @Test
    void countedDaysHoldForTheSprayHoursAsForTheSeason() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 100, "wheat"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)", "Tank (L)"),
                        row("Sprayer", "sprayer", 12, 8, 65, 1000))
                .sheet(
                        "Jobs",
                        row(
                                "Field",
                                "Machine",
                                "Water volume (L/ha)",
                                "Earliest",
                                "Latest",
                                "Workable days (%)",
                                "Days available",
                                "Hours per day"),
                        row("A", "Sprayer", 200, 46100, 46114, 100, 2, 4))
                .run();
        assertThat(worked.number("days-available")).isCloseTo(2, within(1e-9));
        assertThat(worked.number("spray-hours-available")).isCloseTo(2 * 4, within(1e-9));
        // 100 ha at 9.6 ha/h are 10.4 h and more.
        assertThat(worked.result("window-fit").word()).contains("does not fit");
        assertThat(worked.differences()).isEmpty();
    }

    /** Half of the twelve days of the window are counted fit: one day and a bit of work has its place in the plan. */
    @Test
    void countedDaysPlaceTheJobInTheDayPlan() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 15.4, "hay"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 2, 7.7, 100))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Earliest", "Latest", "Days available", "Hours per day"),
                        row("A", "mow", "Mower", 46100, 46111, 6, 5))
                .run();
        // 10 h are two days of five, which take four of such a window.
        assertThat(worked.plan().table("day-plan").of(SeasonFit.FINISH).number(0))
                .isEqualTo(46103);
        assertThat(worked.differences()).isEmpty();
    }

    /** Hunt, combine of 5 m of which 95 % are used, 4.8 km/h, 400 m, 15 s, 0.0667 h/ha: 1.90 ha/h (work-rates, FG1). */
    @Test
    void anOverlapInPerCentIsAShareOfTheWidth() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Width (m)",
                                "Overlap (%)",
                                "Speed (km/h)",
                                "Turning time (s)",
                                "Lost time (h/ha)"),
                        row("Combine", "combine", 5, 5, 4.8, 15, 4 / 60.0))
                .sheet("Fields", row("Field", "Area (ha)", "Crop", "Row length (m)"), row("A", 10, "wheat", 400))
                .run();
        assertThat(worked.number("work-rate")).isCloseTo(1.90, within(0.005));
        assertThat(worked.differences()).isEmpty();
    }
}
