package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.testing.SeasonBook;

/** Machines of which the rate of work, the tonnes an hour or the fuel of a hectare is known, and not what makes them up. */
class RateAsKnownTest {
    private static SeasonBook.Worked mower(String header, double rate) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Acres", "Crop"), row("A", 15, "hay"))
                .sheet("Machines", row("Machine", "Type", header), row("Horse mower", "mower", rate))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mowing", "Horse mower"))
                .run();
    }

    /** Canterbury Agricultural College, Waitaki 5 March 1940: 15 ac mown in 12 h. */
    @Test
    @Tag("published")
    void aRateOfWorkIsEnough() {
        for (String header :
                new String[] {"Rate of work (ac/h)", "Work rate (ac/h)", "Acres per hour", "Capacity (ac/h)"}) {
            SeasonBook.Worked worked = mower(header, 1.25);
            assertThat(worked.number("hours")).as(header).isCloseTo(12, within(0.5));
            assertThat(worked.number("machine-hours")).as(header).isCloseTo(12, within(0.5));
            assertThat(worked.differences()).isEmpty();
        }
    }

    @Test
    @Tag("derived")
    void aRateOfWorkGoesBeforeWidthAndSpeedAndIsQuestionedWhereTheyCannotGiveIt() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 12, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Speed (km/h)", "Work rate (ha/h)"),
                        row("Mower", "mower", 3, 10, 2),
                        row("Other", "mower", 3, 10, 3.5))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine"),
                        row("A", "mowing", "Mower"),
                        row("A", "mowing", "Other"))
                .run();
        // Twelve hectares at 2; 3 m at 10 km/h are 3 ha/h with nothing lost, so 3.5 cannot be.
        assertThat(worked.number("hours", "Mower")).isCloseTo(6, within(1e-9));
        assertThat(worked.number("field-efficiency", "Mower")).isCloseTo(200 / 3.0, within(1e-9));
        assertThat(worked.messages())
                .filteredOn(message -> message.contains("more than width and speed give"))
                .singleElement()
                .satisfies(message -> assertThat(message).contains("Other").doesNotContain("Mower:"));
        assertThat(worked.differences()).isEmpty();
    }

    /**
     * 40 t/h, trailers of 8 t, 2 km, 20 and 25 km/h and the 7.5 min of the Michigan farms: cycle 30.3 min, three trailers
     * (constructed on that published time).
     */
    @Test
    @Tag("derived")
    void aForagerKnownByItsTonnesAnHourServesItsTrailers() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis", "Distance to pit (m)"),
                        row("A", 10, "grass", 20, "as carted fresh", 2000))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Throughput (t/hr)",
                                "Load (t)",
                                "Laden speed (km/h)",
                                "Empty speed (km/h)"),
                        row("F", "self-propelled forage harvester", 40, null, null, null),
                        row("T", "silage trailer", null, 8, 20, 25))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "lifting", "F; T x 2"))
                .run();
        assertThat(worked.number("work-rate", "F")).isCloseTo(2, within(1e-9));
        assertThat(worked.number("cycle-time")).isCloseTo(30.3, within(1e-9));
        assertThat(worked.number("trailers-needed")).isEqualTo(3);
        assertThat(worked.number("carting-rate")).isCloseTo(31.68, within(0.005));
        assertThat(worked.number("forager-idle-share")).isCloseTo(20.79, within(0.005));
        assertThat(worked.differences()).isEmpty();
    }

    /** A width or a speed that is blank beside the other is asked for: the output alone is no rate then. */
    @Test
    @Tag("derived")
    void aWidthWithoutSpeedIsAskedForItsSpeed() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis"),
                        row("A", 10, "grass", 20, "as carted fresh"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Output (t/h)", "Width (m)", "Speed (km/h)"),
                        row("F", "forager", 40, 6, null))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "chopping", "F"))
                .run();
        assertThat(worked.result("work-rate").given()).isFalse();
        assertThat(worked.result("work-rate").reason()).contains("speed missing");
        assertThat(worked.differences()).isEmpty();
    }

    /** University of Missouri G1208, Frisby 1993: mouldboard plough 1.68 US gal/ac, 15.7 L/ha. */
    @Test
    @Tag("published")
    void fuelOfAnAreaIsRead() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Acres", "Crop"), row("A", 100, "corn"))
                .sheet(
                        "Implements",
                        row("Implement", "Type", "Fuel (gal/ac)", "Width (ft)", "Speed (mph)", "Efficiency (%)"),
                        row("Plow", "moldboard plow", 1.68, 8, 4.5, 85))
                .sheet("Jobs", row("Field", "Operation", "Implement"), row("A", "plowing", "Plow"))
                .sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"))
                .run();
        assertThat(worked.number("fuel-per-hectare")).isCloseTo(15.7, within(0.05));
        // 100 ac at 8 ft × 4.5 mph × 85 % ÷ 8.25, 168 gallons over those hours (derived).
        assertThat(worked.number("fuel")).isCloseTo(168 * 3.785411784 / (100 / (8 * 4.5 * 0.85 / 8.25)), within(1e-6));
        assertThat(worked.result("fuel-by").word()).contains("typed, by area");
        assertThat(worked.differences()).isEmpty();
    }

    /** The tonnes that a spreader gets rid of in an hour are no tonnes of the crop, and no reason to know nothing. */
    @Test
    @Tag("derived")
    void anOutputOfWhatIsSpreadLeavesTheRateToWidthAndSpeed() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis"),
                        row("A", 12, "grass", 20, "as carted fresh"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Speed (km/h)", "Efficiency (%)", "Output (t/h)"),
                        row("Spreader", "muck spreader", 8, 6, 60, 150),
                        row("Forager", "forager", 6, 8, 70, 40))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine"),
                        row("A", "muck", "Spreader"),
                        row("A", "chop", "Forager"))
                .run();
        assertThat(worked.number("work-rate", "Spreader")).isCloseTo(2.88, within(1e-9));
        assertThat(worked.word("work-rate-limited-by", "Spreader")).isEqualTo("width and speed");
        assertThat(worked.number("work-rate", "Forager")).isCloseTo(2, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** 4 m × 9 km/h × 70 % are 2.52 ha/h: 25.2 ha in ten hours, 63 ha in 2.5 days; of the job in eight hours, 3.125. */
    @Test
    @Tag("derived")
    void hoursOfADayGiveItsAreaAndTheDaysWithoutAnyDeadline() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 63, "wheat"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Speed (km/h)", "Efficiency (%)", "Hours per day (h)"),
                        row("Drill", "drill", 4, 9, 70, 10),
                        row("Other", "drill", 4, 9, 70, 10),
                        row("Roll", "field rolls", 4, 9, 70, null))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Hours per day (h)"),
                        row("A", "drilling", "Drill", null),
                        row("A", "drilling", "Other", 8),
                        row("A", "rolling", "Roll", null))
                .run();
        assertThat(worked.number("area-per-day", "Drill")).isCloseTo(25.2, within(1e-9));
        assertThat(worked.number("days-of-one-machine", "Drill")).isCloseTo(2.5, within(1e-9));
        assertThat(worked.number("area-per-day", "Other")).isCloseTo(20.16, within(1e-9));
        assertThat(worked.number("days-of-one-machine", "Other")).isCloseTo(3.125, within(1e-9));
        assertThat(worked.messages()).noneMatch(m -> m.contains("hours per day missing"));
        assertThat(worked.differences()).isEmpty();
    }

    /** 7.5 m × 5 km/h × 75 % are 2.8125 ha/h, of 8.5 t/ha 23.9 t/h: told where the yield says what it was weighed as. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    @Tag("derived")
    void aYieldOfGrainThatDoesNotSayWhatItWasWeighedAsIsToldToBeUnused(boolean jobs) {
        for (String basis : new String[] {null, "as carted fresh"}) {
            SeasonBook book = new SeasonBook()
                    .sheet(
                            "Fields",
                            row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis"),
                            row("A", 120, "wheat", 8.5, basis),
                            row("B", 20, "wheat", 8.5, basis))
                    .sheet(
                            "Machines",
                            row("Machine", "Type", "Width (m)", "Speed (km/h)", "Efficiency (%)"),
                            row("Combine", "combine", 7.5, 5, 75));
            if (jobs) {
                book.sheet("Jobs", row("Field", "Operation", "Machine"), row("wheat", "combining", "Combine"));
            }
            SeasonBook.Worked worked = book.run();
            if (basis == null) {
                assertThat(worked.messages())
                        .anyMatch(m -> m.contains("the yield of 'A' (and 1 more field) is used for"
                                + " nothing, since it does not say what it was weighed as. Write it in Yield basis"));
            } else {
                assertThat(worked.number("material-rate", "A")).isCloseTo(23.90625, within(1e-9));
                assertThat(worked.messages()).noneMatch(m -> m.contains("is used for nothing"));
            }
            assertThat(worked.differences()).isEmpty();
        }
    }
}
