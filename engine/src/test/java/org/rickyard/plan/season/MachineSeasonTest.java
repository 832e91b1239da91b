package org.rickyard.plan.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.testing.SeasonBook;
import org.rickyard.testing.WholeFarm;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.season.MachineSeason;
import org.rickyard.trade.season.SeasonFit;

/** What the plan books each machine and tractor for, in the grid and on the chart. Figures: derived arithmetic. */
@Tag("derived")
class MachineSeasonTest {
    private static final LocalDate TENTH = LocalDate.of(2026, 5, 10);

    private static SeasonBook.Worked twoJobsOneTractor(int latest) {
        return twoJobs(latest, row("Machine", "Type"), row("Old red", "tractor"));
    }

    private static SeasonBook.Worked twoJobs(int latest, Object[]... tractors) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)"),
                        row("Long Acre", "grass", 24),
                        row("Far", "stubble", 24))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 3, 10, 80),
                        row("Harrow", "cultivator", 3, 10, 80))
                .sheet("Tractors", tractors)
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Tractor",
                                "Earliest",
                                "Latest",
                                "Workable days (%)",
                                "Hours per day"),
                        row("Cut", "grass", "mow", "Mower", "Old red", TENTH, TENTH.plusDays(latest), 50, 10),
                        row("Harrow", "Far", "harrow", "Harrow", "Old red", TENTH, TENTH.plusDays(latest), 50, 10))
                .run();
    }

    /** Common practice: where there are two tractors alike, each job has one, and neither waits. */
    @Test
    void twoTractorsAlikeAreBeforeTwoMachinesOnOneDay() {
        SeasonBook.Worked worked = twoJobs(2, row("Machine", "Type", "Number"), row("Old red", "tractor", 2));
        assertThat(worked.messages())
                .noneMatch(m -> m.contains("both want") || m.contains("more days than its season"));
        assertThat(chart(worked, "Old red")).containsExactly("Cut + Harrow", "Cut + Harrow");
        assertThat(worked.number("days-late", "Harrow")).isZero();
        // Each of the two has one of the jobs: two days of the season's three, 10 h.
        assertThat(worked.number("machine-season-share", "Old red")).isCloseTo(200 / 3.0, within(1e-9));
        assertThat(worked.number("machine-season-hours", "Old red")).isCloseTo(10, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** A blank means one; a number stored as text is no blank, and each of one would be given twice its hours. */
    @Test
    void whereItCannotBeReadHowManyThereAreHoursOfEachAreWithheld() {
        SeasonBook.Worked worked = twoJobs(2, row("Machine", "Type", "Number"), row("Old red", "tractor", "2"));
        assertThat(worked.result("machine-season-hours", "Old red").number()).isEmpty();
        assertThat(worked.differences()).isEmpty();
    }

    /** Common practice: a machine of one's own that stands in the yard is put to work before one is hired. */
    @Test
    void whatTheMachineListHasIsNotToldToBeHired() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Far", "stubble", 96))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Number", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Plough", "plough", 2, 3, 10, 80),
                        row("Harrow", "cultivator", null, 3, 10, 80))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Earliest",
                                "Latest",
                                "Workable days (%)",
                                "Hours per day"),
                        row("Plough", "Far", "plough", "Plough", TENTH, TENTH.plusDays(1), 100, 10),
                        row("Harrow", "Far", "harrow", "Harrow", TENTH, TENTH.plusDays(1), 100, 10))
                .run();
        // 96 ha at 2.4 ha/h are 40 h, four days of the two there are: two machines would do.
        assertThat(worked.number("machines-required", "Plough")).isEqualTo(2);
        assertThat(worked.number("machines-to-hire", "Plough")).isZero();
        assertThat(worked.number("machines-to-hire", "Harrow")).isEqualTo(1);
        assertThat(worked.messages())
                .anyMatch(m -> m.contains("this job uses 1 of 'Plough' and the machine list has 2")
                        && m.contains("\"Plough x 2\""));
        assertThat(worked.differences()).isEmpty();
    }

    /** Three tractors: two long jobs have one each, two short ones the third by turns. Never are four wanted at once. */
    @Test
    void jobsThatNeverMeetAreNotCountedTogether() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)"),
                        row("Long Acre", "grass", 240),
                        row("Wide", "stubble", 240),
                        row("Far", "stubble", 24),
                        row("Near", "stubble", 24))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 3, 10, 80),
                        row("Harrow", "cultivator", 3, 10, 80),
                        row("Disc", "cultivator", 3, 10, 80),
                        row("Tine", "cultivator", 3, 10, 80))
                .sheet("Tractors", row("Machine", "Type", "Number"), row("Old red", "tractor", 3))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Tractor",
                                "Earliest",
                                "Latest",
                                "Workable days (%)",
                                "Hours per day"),
                        row("Cut", "grass", "mow", "Mower", "Old red", TENTH, TENTH.plusDays(40), 100, 10),
                        row("Open", "Wide", "harrow", "Harrow", "Old red", TENTH, TENTH.plusDays(40), 100, 10),
                        row("One", "Far", "disc", "Disc", "Old red", TENTH, TENTH.plusDays(40), 100, 10),
                        row("Two", "Near", "tine", "Tine", "Old red", TENTH.plusDays(5), TENTH.plusDays(40), 100, 10))
                .run();
        // A third, in no more digits than any library writes: 33.333333333333336 came back as another number.
        assertThat(worked.plan()
                        .table(MachineSeason.BOOKINGS)
                        .of(MachineSeason.SHARE_TAKEN)
                        .number(1))
                .isEqualTo(33.333333333);
        assertThat(worked.messages()).noneMatch(m -> m.contains("both want"));
        assertThat(worked.number("planned-start", "One")).isEqualTo(worked.number("planned-start", "Cut"));
    }

    @Test
    void hoursAreaAndShareOfASeasonAddUpOverTheJobs() {
        SeasonBook.Worked worked = twoJobsOneTractor(9);
        // 24 ha at 2.4 ha/h are 10 h: a day of work, two days of the calendar, twice, in a season of ten days.
        assertThat(worked.number("machine-season-hours", "Old red")).isCloseTo(20, within(1e-9));
        assertThat(worked.number("machine-season-area", "Old red")).isCloseTo(48, within(1e-9));
        assertThat(worked.number("machine-season-booked", "Old red")).isCloseTo(4, within(1e-9));
        assertThat(worked.number("machine-season-share", "Old red")).isCloseTo(40, within(1e-9));
        assertThat(worked.number("machine-season-share", "Mower")).isCloseTo(20, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void lateDaysAndDoubleBookingsAreSaidInWords() {
        SeasonBook.Worked worked = twoJobsOneTractor(2);
        // Four days of work for the tractor in a season of three.
        assertThat(worked.number("machine-season-share", "Old red")).isCloseTo(400 / 3.0, within(1e-9));
        assertThat(worked.messages())
                .anyMatch(m -> m.contains("Old red: it is wanted for more days than its season has"));
        assertThat(chart(worked, "Old red")).containsExactly("Cut", "Cut", "Harrow", "late! Harrow");
        assertThat(chart(worked, "Mower")).containsExactly("Cut", "Cut", "", "");
        assertThat(doubleBookings(worked)).contains("Cut: Harrow (Harrow), 10 May to 11 May");
        assertThat(worked.number("days-late", "Harrow")).isEqualTo(1);
    }

    /** A job in spring and one in autumn stand beside each other on the chart; the months between have no columns. */
    @Test
    void theChartLeavesOutTheDaysWithoutWork() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 24))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 3, 10, 80))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Earliest",
                                "Latest",
                                "Workable days (%)",
                                "Hours per day"),
                        row("Spring", "grass", "mow", "Mower", TENTH, TENTH.plusDays(9), 50, 10),
                        row("Autumn", "grass", "mow", "Mower", TENTH.plusDays(150), TENTH.plusDays(159), 50, 10))
                .run();
        assertThat(chart(worked, "Mower")).containsExactly("Spring", "Spring", "Autumn", "Autumn");
        assertThat(worked.messages()).noneMatch(m -> m.contains("time chart shows the first"));
    }

    @Test
    void aGangBooksItsTractorsToo() {
        SeasonBook.Worked worked = WholeFarm.metric().run();
        List<String> booked = new ArrayList<>();
        ResultTable bookings = worked.plan().table(MachineSeason.BOOKINGS);
        for (int row = 0; row < bookings.rows(); row++) {
            if (bookings.of(Quantities.JOB).word(row).equals("First cut")) {
                booked.add(bookings.of(Quantities.MACHINE).word(row));
            }
        }
        assertThat(booked).contains("Forager", "Trailer 10 t", "Buckrake", "Roller", "Green 110", "Blue 140", "Red 90");
        ResultTable plan = worked.plan().table("day-plan");
        double silageEnds = 0;
        double ploughStarts = 0;
        for (int row = 0; row < plan.rows(); row++) {
            if (plan.of(Quantities.MACHINE).word(row).equals("Forager")) {
                silageEnds = plan.of(SeasonFit.FINISH).number(row);
            } else if (plan.of(Quantities.JOB).word(row).equals("Ploughing")) {
                ploughStarts = plan.of(SeasonFit.START).number(row);
            }
        }
        // The buckrake's tractor also ploughs: not before the gang's last day.
        assertThat(ploughStarts).isGreaterThanOrEqualTo(silageEnds);
    }

    @Test
    void whatWouldMakeAJobFitIsWorkedOut() {
        SeasonBook.Worked worked = twoJobsOneTractor(0);
        // One day of which half is fit, a day of work: twice as fast, as wide, as long, or two machines.
        assertThat(worked.word("season-fit", "Cut")).isEqualTo("does not fit");
        assertThat(worked.number("required-hours-per-day", "Cut")).isCloseTo(20, within(1e-9));
        assertThat(worked.number("machines-required", "Cut")).isEqualTo(2);
        assertThat(worked.number("machines-to-hire", "Cut")).isEqualTo(1);
        ResultTable season = worked.plan().table("season");
        assertThat(season.of(SeasonFit.REQUIRED_WIDTH).number(0)).isCloseTo(6, within(1e-9));
        assertThat(season.of(SeasonFit.REQUIRED_SPEED).number(0)).isCloseTo(20, within(1e-9));
    }

    @Test
    void aWindowTurnedRoundMakesNoSeasonOfLessThanNoDays() {
        SeasonBook.Worked worked = twoJobsOneTractor(-2);
        ResultTable seasons = worked.plan().table("machine-season");
        assertThat(seasons.rows()).isPositive();
        for (int row = 0; row < seasons.rows(); row++) {
            assertThat(seasons.of(MachineSeason.DAYS).has(row)).isFalse();
            assertThat(seasons.of(MachineSeason.SHARE).has(row)).isFalse();
        }
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void noDayIsLongerThanDayAndNight() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 72))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 3, 10, 80))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Days available (d)", "Hours per day"),
                        row("Just", "grass", "mow", "Mower", 1.25, 10),
                        row("Over", "grass", "mow", "Mower", 1.2, 10))
                .run();
        // 72 ha at 2.4 ha/h are 30 h: 24 h a day for one and a quarter days, 25 h for less.
        assertThat(worked.number("required-hours-per-day", "Just")).isCloseTo(24, within(1e-9));
        assertThat(worked.result("required-hours-per-day", "Over").given()).isFalse();
        assertThat(worked.result("required-hours-per-day", "Over").reason()).contains("more than 24 hours");
        assertThat(worked.number("machines-required", "Over")).isEqualTo(3);
        assertThat(worked.differences()).isEmpty();
    }

    /** 0.1 h more than a year's hours makes each hour of owning a machine too dear: one is told, the other not. */
    @Test
    void moreHoursThanAYearHasAreCautioned() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 24))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Hours per year (h)"),
                        row("Mower", "mower", 3, 10, 80, 10),
                        row("Topper", "mower", 3, 10, 80, 9.9))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Days available (d)", "Hours per day"),
                        row("Cut", "grass", "mow", "Mower", 2, 10),
                        row("Top", "grass", "mow", "Topper", 2, 10))
                .run();
        assertThat(worked.messages())
                .filteredOn(message -> message.contains("these jobs alone take more hours than its Hours per year"))
                .hasSize(1)
                .allMatch(message -> message.contains("Topper"));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void moreDaysThanTheWindowHasAreCautioned() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 24))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 3, 10, 80))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Earliest",
                                "Latest",
                                "Days available (d)",
                                "Hours per day"),
                        row("Many", "grass", "mow", "Mower", TENTH, TENTH.plusDays(3), 4.5, 10),
                        row("All", "grass", "mow", "Mower", TENTH, TENTH.plusDays(3), 4, 10))
                .run();
        assertThat(worked.messages())
                .filteredOn(message -> message.contains("more days are typed for the job than lie between"))
                .hasSize(1)
                .allMatch(message -> message.contains("Many"));
    }

    private static List<String> chart(SeasonBook.Worked worked, String machine) {
        ResultTable chart = worked.plan().table("time-chart");
        List<String> cells = new ArrayList<>();
        for (int row = 0; row < chart.rows(); row++) {
            if (chart.of(Quantities.MACHINE).word(row).equals(machine)) {
                for (TableColumn column : chart.spec().columns()) {
                    if (column instanceof TableColumn.Method) {
                        cells.add(chart.of(column.symbol()).word(row));
                    }
                }
            }
        }
        return cells;
    }

    private static List<String> doubleBookings(SeasonBook.Worked worked) {
        ResultTable bookings = worked.plan().table(MachineSeason.BOOKINGS);
        Symbol wanted = MachineSeason.ALSO_WANTED;
        List<String> found = new ArrayList<>();
        for (int row = 0; row < bookings.rows(); row++) {
            if (bookings.of(wanted).has(row)) {
                found.add(bookings.of(Quantities.JOB).word(row) + ": "
                        + bookings.of(wanted).word(row));
            }
        }
        return found;
    }
}
