package org.rickyard.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.testing.SeasonBook;

/** Headers and units of worked examples that were asked about, or left out, though they can mean one thing only. */
class AnswersOfExamplesUnitsTest {
    /** 0.16835 gal(US)/min at 5 mph and 20 in are 10 gal(US)/ac (derived from 5,940). */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"US gpm", "gpm US", "gpm (US)", "USgpm"})
    void gallonsAMinuteMaySayWhoseTheyAre(String unit) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Type", "Nozzle spacing (in)", "Speed (mph)", "Nozzle output (" + unit + ")"),
                        row("Rig", "sprayer", 20, 5, 0.16835))
                .run();
        assertThat(worked.number("rate-from-flow") / 9.353956229).isCloseTo(10, within(0.0005));
    }

    /** Amenity training page: 25 kg/ha are 2.5 g/m2, so a tray of 0.5 m2 catches 1.25 g. */
    @Test
    @Tag("published")
    void aTrayIsATestArea() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Spreaders",
                        row("Spreader", "Type", "Tray area (m2)", "Weight caught (g)"),
                        row("Spinner", "fertiliser spreader", 0.5, 1.25))
                .run();
        assertThat(worked.number("spreader-test-rate")).isCloseTo(25, within(1e-9));
        // Neither a tray nor what it catches is unusual.
        assertThat(worked.messages()).noneMatch(message -> message.contains("unusual"));
    }

    /** 12 rows of 15 cm are 1.8 m: 300 g over 50 m are 300 g on 90 m2. */
    @Test
    @Tag("derived")
    void theRowsOfADrillAreTheWidthOfItsTest() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Drills",
                        row(
                                "Drill",
                                "Type",
                                "Row spacing (cm)",
                                "Number of rows",
                                "Distance (m)",
                                "Seed collected (g)"),
                        row("Old", "drill", 15, 12, 50, 300))
                .run();
        assertThat(worked.number("spreader-test-rate")).isCloseTo(0.3 / 90 * 10_000, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** Teagasc: a dairy cow eats 1.6 t of silage a month, a weanling 0.7 t, for five months. */
    @Test
    @Tag("published")
    void whatIsEatenInAMonthIsAnIntake() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Herd",
                        row("Livestock", "No.", "Silage per month (t)", "Months"),
                        row("Dairy cows", 100, 1.6, 5),
                        row("Young stock", 25, 0.7, 5))
                .run();
        assertThat(worked.number("feed-demand-fresh", "Dairy cows")).isCloseTo(800, within(1e-6));
        assertThat(worked.number("feed-demand-fresh", "Young stock")).isCloseTo(87.5, within(1e-6));
    }

    /** 10 ha of 5 t/ha at 85 % are 42.5 t DM: 194 bales of 220 kg. The unit was held not to fit, for want of "DM". */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"kg", "kg DM"})
    void whatANameCallsDryMatterMayBeWeighedInKilograms(String unit) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Baling",
                        row(
                                "Field",
                                "Area (ha)",
                                "Crop",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at ensiling (%)",
                                "Operation",
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)"),
                        row("Top", 10, "hay", 5, "as carted fresh", 85, "baling", "Round", "round baler", 6, 9))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Dry matter in a round bale", 220, unit),
                        row("Wage", 12, "per h"))
                .run();
        assertThat(worked.number("bales-made")).isEqualTo(194);
    }

    /** Fuel, people and a wage stood beside the machines, and nothing said why no cost came of them. */
    @Test
    void whatWantsAJobSaysSo() {
        SeasonBook book = new SeasonBook()
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Fuel (L/h)", "Crew"),
                        row("Mower", "mower", 3, 10, 14, 1))
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 24, "grass"));
        assertThat(book.run().messages())
                .anyMatch(message -> message.contains("Add a list Jobs with the headers Field, Operation and Machine"));
        book.sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mowing", "Mower"));
        assertThat(book.run().messages()).noneMatch(message -> message.contains("Add a list Jobs"));
    }

    /** A type beside the machine's name is all that a list of machines needs. */
    @Test
    @Tag("derived")
    void aTypeAloneMakesTheMachineOfAFlatList() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"))
                .sheet(
                        "Example",
                        row("Field", "Acres", "Spreader", "Type", "Product", "Rate (lb/ac)"),
                        row("A", 40, "Buggy", "fertilizer spreader", "Urea", 150))
                .run();
        assertThat(worked.number("product-spread") / 0.45359237).isCloseTo(6000, within(1e-6));
    }

    /** Ohio State Bulletin 817: what is caught over 1/128 ac in ounces are gallons an acre, 204 ft at 20 in. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"Ounces caught per nozzle in 25 s", "Caught per nozzle (fl oz in 25 s)"})
    void ouncesCaughtOverACourseAreGallonsAnAcre(String caught) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"))
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Type", "Nozzle spacing (in)", "Course (ft)", "Time (s)", caught),
                        row("Rows", "sprayer", 20, 204, 25, 80))
                .run();
        assertThat(worked.number("rate-from-flow") / 9.353956229).isCloseTo(80, within(0.5));
    }

    /** Without the time of the catch 18 ounces are no flow, least of all 18 litres a minute: it is asked, and says how. */
    @ParameterizedTest
    @CsvSource({"Ounces caught per nozzle", "Caught per nozzle (oz)", "Ml caught per nozzle", "Nozzle output (ml)"})
    void whatIsCaughtWithoutATimeIsAsked(String caught) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"))
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Type", "Nozzle spacing (in)", "Course (ft)", "Time (s)", caught),
                        row("Rows", "sprayer", 20, 204, 25, 18))
                .run();
        assertThat(worked.result("rate-from-flow").given()).isFalse();
        assertThat(worked.messages()).anyMatch(message -> message.contains("say in the header in how long it ran"));
    }
}
