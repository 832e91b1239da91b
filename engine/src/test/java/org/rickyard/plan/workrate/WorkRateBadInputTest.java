package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.testing.SeasonBook;

/** What cannot be meant is answered with sheet, cell, value, what was expected, and what to do. */
@Tag("derived")
class WorkRateBadInputTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 10);

    private static SeasonBook farm(Object[][] machines, Object[]... jobs) {
        Object[][] rows = new Object[jobs.length + 1][];
        rows[0] = row(
                "Job",
                "Field",
                "Operation",
                "Machine",
                "Tractor",
                "After",
                "Earliest",
                "Latest",
                "Workable days (%)",
                "Hours per day");
        System.arraycopy(jobs, 0, rows, 1, jobs.length);
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row(
                                "Holding",
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Distance to clamp (km)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "Clamp"),
                        row("Moor End", "Long Acre", "grass", 7, 2, 20, "as carted fresh", "Big"))
                .sheet(
                        "Clamps",
                        row("Holding", "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Country"),
                        row("Moor End", "Big", "walled", 40, 12, 3, "England"))
                .sheet("Machines", machines)
                .sheet("Jobs", rows);
    }

    private static Object[][] machines(Object efficiency, String power, Object kilowatts, Object basis) {
        return new Object[][] {
            row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)", power, "Power basis"),
            row("Mower", "mower", 3, 10, efficiency),
            row("Harrow", "cultivator", 3, 10, 80),
            row("Old red", "tractor", null, null, null, kilowatts, basis),
        };
    }

    private static Object[][] usual() {
        return machines(80, "Power (kW)", 60, "PTO");
    }

    private static Object[] mow(String tractor, String after) {
        return row("Cut", "grass", "mow", "Mower", tractor, after, DAY, DAY.plusDays(5), 80, 10);
    }

    private static Finding finding(SeasonBook.Worked worked, String cell, String part) {
        return worked.findings().stream()
                .filter(f -> f.cell().map(Object::toString).orElse("").equals(cell))
                .filter(f -> f.message().contains(part))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing at " + cell + " about '" + part + "' in "
                        + worked.findings().stream()
                                .map(f -> f.cell().map(Object::toString).orElse("-") + " " + f.message())
                                .toList()));
    }

    @Test
    void anEfficiencyOfNoughtPointEight() {
        Finding found = finding(
                farm(machines(0.8, "Power (kW)", 60, "PTO"), mow("Old red", null))
                        .run(),
                "Machines!E2",
                "If 80 % is meant");
        assertThat(found.severity()).isEqualTo(Severity.STOP);
        assertThat(found.message())
                .isEqualTo(
                        "Field efficiency 0.8 % cannot be: expected above 1, up to 100 %. If 80 % is meant, write 80.");
    }

    @Test
    void engineAndPtoPowerMixed() {
        SeasonBook.Worked worked = farm(machines(80, "Power (PTO kW)", 60, "engine"), mow("Old red", null))
                .run();
        Finding found = finding(worked, "Machines!G4", "engine");
        assertThat(found.severity()).isEqualTo(Severity.STOP);
        assertThat(found.message())
                .isEqualTo(
                        "\"engine\" is typed here, where the header says PTO: which of the two is meant? Take the word"
                                + " out of the header, or mend this cell.");
        assertThat(worked.result("fuel", "Mower").given()).isFalse();
    }

    @Test
    void horsepowerInTheColumnOfKilowatts() {
        SeasonBook.Worked worked = farm(machines(80, "Power (kW)", "120 hp", "PTO"), mow("Old red", null))
                .run();
        Finding found = finding(worked, "Machines!F4", "120 hp");
        assertThat(found.severity()).isEqualTo(Severity.STOP);
        assertThat(found.message())
                .isEqualTo(
                        "\"120 hp\" is not a number; expected a number above 0, up to 1500 kW. \"120 hp\" is 89.48 kW:"
                                + " write the figure 89.48 alone, or put hp in the header if the whole column is in it.");
        assertThat(worked.result("fuel", "Mower").given()).isFalse();
    }

    @Test
    void powerFarAboveWhatTractorsHave() {
        Finding found = finding(
                farm(machines(80, "Power (kW)", 900, "PTO"), mow("Old red", null))
                        .run(),
                "Machines!F4",
                "unusual");
        assertThat(found.message())
                .contains("Power 900 kW is unusual", "from 10 up to 500 kW", "check the value and its unit");
    }

    @Test
    void aLoadAboveTheRoadLimitAndAnEmptyTrailerSlowerThanALadenOne() {
        Object[][] gang = {
            row(
                    "Machine",
                    "Type",
                    "Working width (m)",
                    "Speed (km/h)",
                    "Field efficiency (%)",
                    "Output (t/h)",
                    "Payload (t)",
                    "Unladen mass (t)",
                    "Road speed laden (km/h)",
                    "Road speed empty (km/h)"),
            row("Forager", "forager", 6, 6, 70, 40),
            row("Trailer", "trailer", null, null, null, null, 16, 6, 30, 20),
        };
        SeasonBook.Worked worked = farm(
                        gang,
                        row(
                                "Chop",
                                "grass",
                                "forage",
                                "Forager; Trailer x 3",
                                null,
                                null,
                                DAY,
                                DAY.plusDays(5),
                                80,
                                10))
                .run();
        Finding heavy = worked.findings().stream()
                .filter(f -> f.message().contains("18.29 t"))
                .findFirst()
                .orElseThrow();
        assertThat(heavy.severity()).isEqualTo(Severity.STOP);
        assertThat(heavy.cell().orElseThrow().sheet()).isEqualTo("Carting");
        assertThat(heavy.message())
                .contains(
                        "Long Acre", "Trailer", "Carry less or keep off the road", "2015", "load is 16 t (Machines!G3)")
                .contains("unladen mass is 6 t (Machines!H3)");
        assertThat(worked.messages())
                .anyMatch(m -> m.contains("the empty trailer is slower than the laden one")
                        && m.contains("road speed empty is 20 km/h (Machines!J3)")
                        && m.contains("road speed laden is 30 km/h (Machines!I3)"));
    }

    private static SeasonBook carting(Object payload, Object unladen, Object tractor, String tractors) {
        return farm(
                new Object[][] {
                    row(
                            "Machine",
                            "Type",
                            "Working width (m)",
                            "Speed (km/h)",
                            "Payload (t)",
                            "Unladen mass (t)",
                            "Road speed laden (km/h)",
                            "Road speed empty (km/h)",
                            "Mass (t)"),
                    row("Forager", "forager", 6, 6),
                    row("Trailer", "trailer", null, null, payload, unladen, 20, 25),
                    row("Old red", "tractor", null, null, null, null, null, null, tractor),
                },
                row("Chop", "grass", "forage", "Forager; Trailer x 3", tractors));
    }

    @Test
    void aLoadThatIsAboveTheRoadLimitByItself() {
        SeasonBook.Worked worked = carting(19, null, null, null).run();
        assertThat(worked.findings())
                .filteredOn(f -> f.severity() == Severity.STOP)
                .extracting(Finding::message)
                .anyMatch(m -> m.contains("the load alone is above the 18.29 t")
                        && m.contains("load is 19 t (Machines!E3)")
                        && m.contains("Mend the payload, carry less or keep off the road"));
        assertThat(carting(18, null, null, null).run().messages()).noneMatch(m -> m.contains("18.29"));
    }

    @Test
    void tractorTrailerAndLoadAboveTheRoadLimitTogether() {
        SeasonBook.Worked worked = carting(12, 6, 13.5, "; Old red x 3").run();
        assertThat(worked.findings())
                .filteredOn(f -> f.severity() == Severity.STOP)
                .extracting(Finding::message)
                .anyMatch(m -> m.contains("tractor, trailer and load together are above the 31 t")
                        && m.contains("2015")
                        && m.contains("mass of the tractor is 13.5 t (Machines!I4)")
                        && m.contains("take a lighter tractor"));
        assertThat(carting(12, 6, 12.5, "; Old red x 3").run().messages()).noneMatch(m -> m.contains("31 t"));
    }

    @Test
    void fewerTractorsThanTrailersAlike() {
        SeasonBook.Worked worked = carting(12, 6, 8, "; Old red x 2").run();
        assertThat(finding(worked, "Jobs!E2", "x 2").message())
                .isEqualTo("\"Old red x 2\" for 3 of 'Trailer': each machine is reckoned with one tractor. Write as"
                        + " many tractors as machines.");
        assertThat(carting(12, 6, 8, "; Old red x 3").run().messages())
                .noneMatch(m -> m.contains("as many tractors as machines"));
    }

    @Test
    void anotherCountrysRoadLawIsNotQuoted() {
        SeasonBook.Worked worked = farm(
                        new Object[][] {
                            row(
                                    "Machine",
                                    "Type",
                                    "Working width (m)",
                                    "Speed (km/h)",
                                    "Payload (t)",
                                    "Unladen mass (t)",
                                    "Road speed laden (km/h)",
                                    "Road speed empty (km/h)"),
                            row("Forager", "forager", 6, 6),
                            row("Trailer", "trailer", null, null, 16, 6, 20, 25),
                        },
                        row("Chop", "grass", "forage", "Forager; Trailer x 3"))
                .sheet(
                        "Clamps",
                        row("Holding", "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Country"),
                        row("Moor End", "Big", "walled", 40, 12, 3, "Ireland"))
                .run();
        assertThat(worked.messages()).noneMatch(m -> m.contains("18.29"));
        assertThat(worked.number("payload", "Trailer")).isEqualTo(16);
    }

    @Test
    void aWindowThatEndsBeforeItStarts() {
        SeasonBook.Worked worked = farm(
                        usual(), row("Cut", "grass", "mow", "Mower", "Old red", null, DAY.plusDays(3), DAY, 80, 10))
                .run();
        assertThat(worked.messages())
                .anyMatch(m -> m.contains("the window ends before it starts")
                        && m.contains("Mend one of the two")
                        && m.contains("latest day is 2026-05-10 (Jobs!H2)")
                        && m.contains("earliest day is 2026-05-13 (Jobs!G2)"));
        assertThat(worked.result("planned-start", "Cut").given()).isFalse();
        assertThat(worked.result("planned-start", "Cut").reason()).contains("the job's window ends before it starts");
        assertThat(worked.number("days-needed", "Cut")).isPositive();
    }

    @Test
    void aLoopOfPredecessors() {
        SeasonBook.Worked worked = farm(
                        usual(),
                        mow("Old red", "Harrowing"),
                        row("Harrowing", "grass", "harrow", "Harrow", null, "Cut", DAY, DAY.plusDays(5), 80, 10))
                .run();
        assertThat(finding(worked, "Jobs!F2", "for itself").message())
                .contains("'Cut (Mower)' waits, through the jobs named in After, for itself", "Break the loop");
        finding(worked, "Jobs!F3", "'Harrowing (Harrow)' waits");
        assertThat(worked.result("planned-finish", "Cut").reason()).contains("for itself");
    }

    @Test
    void machinesThatACommaPartsAreToBePartedBySemicolons() {
        for (String gang : new String[] {"Mower, Harrow", "Mower + Harrow", "mower and 2 x Harrow", "Mower\nHarrow"}) {
            SeasonBook.Worked worked = farm(usual(), row("Both", "grass", "mow", gang, null, null, DAY, DAY, 80, 10))
                    .run();
            assertThat(finding(worked, "Jobs!D2", gang).message())
                    .startsWith("'" + gang + "' names 2 machines at once: part those that work together by \";\".");
        }
    }

    @Test
    void aMachineThatIsNotThere() {
        SeasonBook.Worked worked = farm(
                        usual(),
                        mow("Green one", null),
                        row("Roll", "grass", "roll", "Rolls", null, null, DAY, DAY, 80, 10))
                .run();
        assertThat(finding(worked, "Jobs!D3", "Rolls").message())
                .isEqualTo(
                        "there is no machine 'Rolls' in the machine list; add it there or mend the name here. Its work"
                                + " on this job is left out.");
        assertThat(finding(worked, "Jobs!E2", "Green one").message())
                .contains("there is no tractor 'Green one' in the machine list", "mend the name here");
    }

    @Test
    void twoJobsOnOneTractorAtOnce() {
        SeasonBook.Worked worked = farm(
                        usual(),
                        mow("Old red", null),
                        row("Harrowing", "grass", "harrow", "Harrow", "Old red", null, DAY, DAY.plusDays(5), 80, 10))
                .run();
        Finding found = finding(worked, "Jobs!A3", "both want");
        assertThat(found.severity()).isEqualTo(Severity.CAUTION);
        assertThat(found.message())
                .contains("'Cut (Mower)' and 'Harrowing (Harrow)' both want 'Old red' on the same days (10 May")
                .contains("Name another machine or tractor in one of them, or move a window");
    }

    /** Two rows of one name without a holding: there is no holding to say. */
    @Test
    void aMachineListedTwiceWithoutAHoldingIsNotAskedForItsHolding() {
        SeasonBook.Worked worked = farm(
                        new Object[][] {
                            row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                            row("Mower", "mower", 3, 10, 80),
                            row("Mower", "mower", 6, 10, 80),
                            row("Old red", "tractor", null, null, null),
                            row("Old red", "tractor", null, null, null),
                            row("Rake", "rake", 6, 10, 80)
                        },
                        row("Cut", "Long Acre", "mow", "Mower", null),
                        row("Row up", "Long Acre", "rake", "Rake", "Old red"))
                .run();
        assertThat(worked.messages())
                .contains(
                        "the machine 'Mower' stands 2 times in the machine list; give each its own name. Its work on"
                                + " this job is left out.",
                        "the machine 'Old red' stands 2 times in the machine list; give each its own name. This job is"
                                + " reckoned without a tractor.")
                .noneMatch(message -> message.contains("more than one holding"));
    }
}
