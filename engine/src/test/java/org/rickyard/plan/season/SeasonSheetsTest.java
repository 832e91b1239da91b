package org.rickyard.plan.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.season.SeasonFit;

/** The season from windows to a plan of days. Figures: derived arithmetic. */
@Tag("derived")
class SeasonSheetsTest {
    private static final LocalDate TENTH = LocalDate.of(2026, 5, 10);

    private static SeasonBook farm(Object[]... jobs) {
        Object[][] rows = new Object[jobs.length + 1][];
        rows[0] = row(
                "Job",
                "Field",
                "Operation",
                "Machine",
                "Tractor",
                "After",
                "Lag (h)",
                "Earliest",
                "Latest",
                "Workable days (%)",
                "Hours per day");
        System.arraycopy(jobs, 0, rows, 1, jobs.length);
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Holding", "Field", "Crop", "Area (ha)"),
                        row("Hill Top", "Long Acre", "grass", 24),
                        row("Hill Top", "Far", "stubble", 12))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Fuel (L/h)"),
                        row("Mower", "mower", 3, 10, 80),
                        row("Rake", "rake", 6, 10, 80),
                        row("Harrow", "cultivator", 3, 10, 80),
                        row("Old red", "tractor", null, null, null, 12))
                .sheet("Jobs", rows);
    }

    private static LocalDate day(int days) {
        return TENTH.plusDays(days);
    }

    private static String planned(SeasonBook.Worked worked, String job, org.rickyard.formula.Symbol symbol) {
        ResultTable table = worked.plan().table("day-plan");
        for (int row = 0; row < table.rows(); row++) {
            if (table.of(org.rickyard.trade.Quantities.JOB).word(row).equals(job)) {
                return table.of(symbol).words()
                        ? table.of(symbol).word(row)
                        : LocalDate.of(1899, 12, 30)
                                .plusDays((long) table.of(symbol).number(row))
                                .toString();
            }
        }
        throw new AssertionError("no job " + job);
    }

    @Test
    void daysNeededAndAvailableAndWhatWouldMakeItFit() {
        // 24 ha at 2.4 ha/h are 10 h, 2 days of 5 h; 3 days of which half are fit are 1.5 days.
        SeasonBook.Worked worked = farm(row(
                        "Cut", "grass", "mow", "Mower", "Old red", null, null, day(0), day(2), 50, 5))
                .run();
        assertThat(worked.number("days-needed", "Cut")).isCloseTo(2, within(1e-9));
        assertThat(worked.number("days-available", "Cut")).isCloseTo(1.5, within(1e-9));
        assertThat(worked.word("season-fit", "Cut")).isEqualTo("does not fit");
        assertThat(worked.number("required-work-rate", "Cut")).isCloseTo(3.2, within(1e-9));
        ResultTable season = worked.plan().table("season");
        assertThat(season.of(SeasonFit.REQUIRED_WIDTH).number(0)).isCloseTo(4, within(1e-9));
        assertThat(season.of(SeasonFit.REQUIRED_SPEED).number(0)).isCloseTo(40.0 / 3, within(1e-9));
        assertThat(season.of(SeasonFit.REQUIRED_MACHINES).number(0)).isEqualTo(2);
        assertThat(worked.number("days-late", "Cut")).isEqualTo(1);
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void afterAndLagAreKeptAndOneTractorIsNeverInTwoPlaces() {
        SeasonBook.Worked worked = farm(
                        row("Cut", "grass", "mow", "Mower", "Old red", null, null, day(0), day(6), 100, 10),
                        row("Row up", "grass", "rake", "Rake", null, "Cut", 24, null, day(6), 100, 5),
                        row("Harrow", "Far", "harrowing", "Harrow", "Old red", null, null, day(0), day(6), 100, 5))
                .run();
        assertThat(planned(worked, "Cut", SeasonFit.START)).isEqualTo("2026-05-10");
        assertThat(planned(worked, "Row up", SeasonFit.START)).isEqualTo("2026-05-12");
        assertThat(planned(worked, "Harrow", SeasonFit.START)).isEqualTo("2026-05-11");
        assertThat(planned(worked, "Harrow", SeasonFit.WAITS_FOR))
                .contains("Old red")
                .contains("Cut");
        assertThat(worked.messages()).anyMatch(m -> m.contains("both want 'Old red' on the same days"));
        assertThat(worked.plan().table("time-chart").rows()).isEqualTo(4);
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void badWindowsLoopsAndUnknownJobsAreAnsweredKindly() {
        SeasonBook.Worked worked = farm(
                        row("Cut", "grass", "mow", "Mower", "Green one", "Row up", null, day(0), day(6), 100, 10),
                        row("Row up", "grass", "rake", "Rake", null, "Cut", 24, day(0), day(6), 100, 5),
                        row("Harrow", "Far", "harrowing", "Harrow", null, "Ploughing", null, day(5), day(1), 100, 5))
                .run();
        assertThat(worked.messages())
                .anyMatch(m -> m.contains("waits, through the jobs named in After, for itself"))
                .anyMatch(m -> m.contains("no job or operation is called 'Ploughing'"))
                .anyMatch(m -> m.contains("the window ends before it starts"))
                .anyMatch(m -> m.contains("there is no tractor 'Green one'"));
        assertThat(worked.result("days-late", "Cut").given()).isFalse();
        assertThat(planned(worked, "Cut", SeasonFit.NOT_PLANNED)).contains("for itself");
        assertThat(worked.differences()).isEmpty();
    }

    /** 24 ha and 12 ha of one field each, mown without a name for the job: two cuts, then two clients. */
    @Test
    void unnamedJobsAreOnePerHoldingAndWindow() {
        SeasonBook.Worked cuts = farm(
                        row(null, "grass", "mow", "Mower", null, null, null, day(0), day(6), 100, 10),
                        row(null, "grass", "mow", "Mower", null, null, null, day(40), day(46), 100, 10),
                        row(null, "Far", "mow", "Mower", null, null, null, day(40), day(46), 100, 10))
                .run();
        assertThat(areas(cuts)).containsExactly(24.0, 36.0);
        assertThat(cuts.differences()).isEmpty();
        SeasonBook.Worked clients = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Holding", "Field", "Area (ha)"),
                        row("Hill Top", "Long Acre", 24),
                        row("Low End", "Far", 12))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 3, 10, 80))
                .sheet(
                        "Jobs",
                        row("Client", "Field", "Operation", "Machine", "Earliest", "Latest", "Workable days (%)"),
                        row("Hill Top", "Long Acre", "mow", "Mower", day(0), day(6), 100),
                        row("Low End", "Far", "mow", "Mower", day(0), day(6), 100))
                .run();
        assertThat(areas(clients)).containsExactly(24.0, 12.0);
        assertThat(clients.differences()).isEmpty();
    }

    private static List<Double> areas(SeasonBook.Worked worked) {
        ResultTable season = worked.plan().table("season");
        List<Double> areas = new ArrayList<>();
        for (int row = 0; row < season.rows(); row++) {
            areas.add(season.of(SeasonFit.AREA).number(row));
        }
        return areas;
    }

    /** 300 ha at 18.72 ha/h take 16.026 h, 2.003 days of eight hours: more than two, and not "2 d" beside "2 d". */
    @Test
    @Tag("derived")
    void aHairTooLongIsSaidSoFinelyThatItShows() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("All", 300))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Hours per day (h)"),
                        row("Roll", "field rolls", 24, 12, 65, 8))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Days available (d)"),
                        row("All", "rolling", "Roll", 2))
                .run();
        assertThat(worked.messages())
                .filteredOn(m -> m.contains("the job does not fit its days"))
                .singleElement()
                .satisfies(m -> assertThat(m).contains("days needed is 2.003 d").contains("days available is 2 d"));
    }
}
