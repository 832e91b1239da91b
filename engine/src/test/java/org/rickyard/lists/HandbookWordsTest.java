package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;

/** Headers and words as handbooks, bulletins and their worked examples write them. */
class HandbookWordsTest {
    private static Heading read(ListSpec list, String header) {
        return new Vocabulary(list).read(HeaderText.of(header));
    }

    @ParameterizedTest
    @CsvSource({
        "Walking speed (km/h), Speed",
        "Course length (ft), Timed distance",
        "Time over course (s), Timed seconds",
        "Water used (L), Test volume",
        "Area sprayed (m2), Test area",
        "Workers, Crew",
        "Kind of machine, Type",
        "Type of implement, Type",
        "Initial cost, Purchase price",
        "Useful life (yr), Life",
        "Custom rate ($/ac), Charge",
        "Effective field capacity (ac/h), Rate of work",
        "Acres per hour, Rate of work",
        "Field efficiency (decimal), Field efficiency"
    })
    void aHeaderOfMachinesIsKnown(String header, String column) {
        assertThat(read(Machines.LIST, header).isCertain()).isTrue();
        assertThat(read(Machines.LIST, header).column().name()).isEqualTo(column);
    }

    @ParameterizedTest
    @CsvSource({
        "air blast, air-blast sprayer",
        "truck, trailer",
        "tandem disk, cultivator",
        "moldboard plow, plough",
        "grain drill, drill",
        "rotary tiller, cultivator",
        "anhydrous applicator, fertiliser spreader",
        "tractor 4WD, tractor",
        "pack tractor, clamp roller"
    })
    void aTypeOfMachineIsKnown(String word, String type) {
        assertThat(ChoiceWords.MACHINE_TYPES).containsEntry(Words.normal(word), type);
    }

    @ParameterizedTest
    @CsvSource({
        "'As-fed density, lb/ft3', 'Density, fresh'",
        "Density (lb/ft3 as fed), 'Density, fresh'",
        "Density (kg/m3 fresh), 'Density, fresh'",
        "Density (lb DM/ft3), 'Density, dry matter'"
    })
    void aDensityThatSaysItselfFreshIsFresh(String header, String column) {
        assertThat(read(Clamps.LIST, header).isCertain()).isTrue();
        assertThat(read(Clamps.LIST, header).column().name()).isEqualTo(column);
    }

    /** An acre is 43,560 square feet and 4,840 square yards, by definition. */
    @ParameterizedTest
    @CsvSource({"Area (ft2), 43560", "Area (sq ft), 43560", "Area (square yards), 4840"})
    void plotsAreMeasuredInSquareFeet(String header, double acre) {
        ListRows fields = ListFinder.find(java.util.List.of(
                        new SheetOf("Fields").row("Field", header, "Crop").row("Lawn", acre, "grass")))
                .rows(Fields.LIST);
        assertThat(fields.unit(Fields.AREA, 0)
                        .orElseThrow()
                        .convert(fields.number(Fields.AREA, 0), org.rickyard.quantity.Units.HA))
                .isCloseTo(0.40468564224, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"Silage pit", "Silage clamp", "Bunker silo", "Trench silo"})
    void aClampIsKnown(String header) {
        assertThat(read(Clamps.LIST, header).isCertain()).isTrue();
        assertThat(read(Clamps.LIST, header).column()).isEqualTo(Clamps.CLAMP);
    }

    /** A share that says that it is a fraction is one, and 80 % in its cell is no other. */
    @ParameterizedTest
    @CsvSource({"Field efficiency (decimal)", "Efficiency (0-1)", "'Field efficiency, fraction'"})
    void aFractionIsAFraction(String header) {
        ListRows machines = ListFinder.find(java.util.List.of(
                        new SheetOf("Machines").row("Machine", "Type", header).row("Mine", "mower", 0.8)))
                .rows(Machines.LIST);
        assertThat(machines.unit(Machines.FIELD_EFFICIENCY, 0)
                        .orElseThrow()
                        .convert(machines.number(Machines.FIELD_EFFICIENCY, 0), org.rickyard.quantity.Units.PERCENT))
                .isCloseTo(80, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "Intake (kg DM), 10, 10",
        "Intake (lb DM), 10, 4.5359237",
        "Daily ration (kg DM), 10, 10",
        "Daily DM (kg), 10, 10",
        "DMI (kg), 10, 10"
    })
    void whatAnAnimalEatsIsOfADay(String header, double typed, double kilograms) {
        ListRows herds = ListFinder.find(java.util.List.of(new SheetOf("Herds")
                        .row("Group", "Head", header, "Days")
                        .row("Cows", 60, typed, 180)))
                .rows(Herds.LIST);
        assertThat(herds.unit(Herds.INTAKE, 0)
                        .orElseThrow()
                        .convert(
                                herds.number(Herds.INTAKE, 0),
                                Herds.INTAKE.symbol().unit()))
                .isCloseTo(kilograms, within(1e-9));
    }

    /** Fresh or dry is not said, nor by what time. */
    @Test
    void kilogramsAloneAreAsked() {
        assertThat(ListFinder.find(java.util.List.of(new SheetOf("Herds")
                                .row("Group", "Head", "Intake (kg)", "Days")
                                .row("Cows", 60, 10, 180)))
                        .findings())
                .anyMatch(finding -> finding.message().contains("\"Intake (kg)\" is not certain"));
    }

    @ParameterizedTest
    @CsvSource({"Time (s)", "Seconds", "Secs"})
    void aTimeIsThatOfTheCourseBesideIt(String header) {
        FoundLists found = ListFinder.find(java.util.List.of(new SheetOf("Machines")
                .row("Machine", "Type", "Distance (ft)", header)
                .row("Rig", "sprayer", 200, 45)));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.TIMED_DISTANCE, 0)).isEqualTo(200);
        assertThat(machines.number(Machines.TIMED_SECONDS, 0)).isEqualTo(45);
    }

    /** Alberta Agdex 606-1 prints its times over 800 m as 6:00, 5:20, 4:48: 8, 9 and 10 km/h. */
    @ParameterizedTest
    @CsvSource({"6:00, 360", "5:20, 320", "4:48, 288"})
    void aTimeByTheWatchIsMinutesAndSeconds(String text, double seconds) {
        FoundLists found = timed(new SheetOf("Machines"), text);
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.unit(Machines.TIMED_SECONDS, 0)
                        .orElseThrow()
                        .convert(machines.number(Machines.TIMED_SECONDS, 0), org.rickyard.quantity.Units.S))
                .isCloseTo(seconds, within(1e-9));
    }

    /** A spreadsheet takes 5:20 for twenty past five; 0:05:20 it takes for what it is. */
    @ParameterizedTest
    @CsvSource({"19200", "320"})
    void aTimeOfDayIsNotUsedAndWhatWasMeantIsSaid(double secondsOfDay) {
        SheetOf sheet = new SheetOf("Machines").format(1, 3, Grid.Format.DATE);
        assertThat(timed(sheet, secondsOfDay / 86400).findings())
                .anyMatch(finding -> finding.severity() == Finding.Severity.STOP
                        && finding.message().startsWith("The cell holds a time of day")
                        && finding.message().endsWith("type 5.333 (min)."));
    }

    /** Nobody fills a sprayer in 0.008 minutes: what is typed as 0:12 or 8:30 is a time, and no day. */
    @ParameterizedTest
    @CsvSource({
        "Fill time (min), 720, type 12 (min).",
        "Fill time (min), 43200, type 12 (min).",
        "Fill time, 750, type 12.5 (min).",
        "Hours per day, 30600, type 8.5 (h)."
    })
    void aTimeInMinutesOrHoursIsNoDay(String header, double secondsOfDay, String end) {
        assertThat(ListFinder.find(java.util.List.of(new SheetOf("Machines")
                                .format(1, 2, Grid.Format.DATE)
                                .row("Machine", "Type", header)
                                .row("Rig", "sprayer", secondsOfDay / 86400)))
                        .findings())
                .anyMatch(finding -> finding.severity() == Finding.Severity.STOP
                        && finding.message().startsWith("The cell holds a time of day")
                        && finding.message().endsWith(end));
    }

    private static FoundLists timed(SheetOf sheet, Object time) {
        return ListFinder.find(java.util.List.of(
                sheet.row("Machine", "Type", "Course (m)", "Time taken (min)").row("Rig", "sprayer", 800, time)));
    }

    /** Ounces caught from a nozzle are fluid ounces; whose, the workbook must say. */
    @Test
    void ouncesOfALiquidAreFluidOunces() {
        SheetOf test = new SheetOf("Nozzle test")
                .row("Sprayer", "Nozzle", "Output (oz/min)")
                .row("Rig", "1", 64);
        assertThat(ListFinder.find(java.util.List.of(test)).findings())
                .anyMatch(finding -> finding.message().contains("could be fl oz(UK)/min or fl oz(US)/min"));
        SheetOf american = new SheetOf("Assumptions").row("Item", "Value").row("Customary units", "US");
        ListRows flows = ListFinder.find(java.util.List.of(test, american)).rows(NozzleTest.LIST);
        // 128 US fl oz are a US gallon, by definition.
        assertThat(flows.unit(NozzleTest.FLOW, 0)
                        .orElseThrow()
                        .convert(
                                flows.number(NozzleTest.FLOW, 0),
                                NozzleTest.FLOW.symbol().unit()))
                .isCloseTo(3.785411784 / 2, within(1e-9));
    }

    /** Headers of worked examples: each was told as unknown, and the list had no such column. */
    @Test
    void wordsOfWorkedExamples() {
        FoundLists herds = FoundIn.find(new SheetOf("Cattle")
                .row("Cattle", "Number", "Silage eaten (kg DM/day)", "Winter days")
                .row("Sucklers", 45, 10, 150));
        assertThat(herds.rows(Herds.LIST).text(Herds.GROUP, 0)).isEqualTo("Sucklers");
        assertThat(herds.rows(Herds.LIST).number(Herds.INTAKE, 0)).isEqualTo(10);

        FoundLists machines = FoundIn.find(new SheetOf("Kit")
                .row("Machine", "Type", "Drill width (m)", "Run per load (m)", "Wiper tank (L)")
                .row("Box", "granule applicator", 4, 330, 80));
        ListRows kit = machines.rows(Machines.LIST);
        assertThat(kit.text(Machines.TYPE, 0)).isEqualTo("fertiliser spreader");
        assertThat(kit.number(Machines.WORKING_WIDTH, 0)).isEqualTo(4);
        assertThat(kit.number(Machines.LOAD_DISTANCE, 0)).isEqualTo(330);
        assertThat(kit.number(Machines.TANK, 0)).isEqualTo(80);

        FoundLists clamps = FoundIn.find(new SheetOf("Clamp")
                .row("Clamp", "Kind", "Length (m)", "Width (m)", "Wall height (m)", "Arriving (t/h)")
                .row("Main", "walled", 45, 12, 3, 55));
        assertThat(clamps.rows(Clamps.LIST).number(Clamps.DELIVERY, 0)).isEqualTo(55);

        FoundLists hay = FoundIn.find(new SheetOf("Hay")
                .row("Field", "Acres", "Yield (t/ac)", "Yield basis")
                .row("Creek", 24, 1.8, "as baled"));
        assertThat(hay.rows(Fields.LIST).text(Fields.YIELD_BASIS, 0)).isEqualTo("as carted fresh");
    }

    /** What is said in other words stands in where the column is missing, and takes it from none that is there. */
    @Test
    void wordsOfWorkedExamplesStandInAlone() {
        FoundLists found = FoundIn.find(
                new SheetOf("Machines")
                        .row("Machine", "Type", "Tank (L)", "Wiper tank (L)")
                        .row("Boom", "sprayer", 1000, 20),
                new SheetOf("Clamps")
                        .row("Clamp", "Kind", "Storage type", "Length (m)", "Floor width (m)", "Wall height (m)")
                        .row("Main", "walled", "grass", 30, 10, 2),
                new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine", "Workable days (%)", "Chance of a dry day (%)")
                        .row("Ley", "spraying", "Boom", 60, 40),
                new SheetOf("Stocks")
                        .row("Place", "Clamp", "Amount (t)", "DM (%)")
                        .row("Home", "Main", 500, 25));
        assertThat(found.rows(Machines.LIST).number(Machines.TANK, 0)).isEqualTo(1000);
        assertThat(found.rows(Clamps.LIST).text(Clamps.KIND, 0)).isEqualTo("walled");
        assertThat(found.rows(Jobs.LIST).number(Jobs.WORKABLE_DAYS, 0)).isEqualTo(60);
        assertThat(found.rows(Stocks.LIST).text(Stocks.STORE, 0)).isEqualTo("Main");
        assertThat(FoundIn.messages(found, Finding.Severity.STOP)).isEmpty();
    }

    /** The words of "Side slope h:v" in another order made a pit of 0.5 upright for each metre out steep as 0.5 out for each up. */
    @Test
    void aSlopeTheOtherWayRoundIsAsked() {
        FoundLists found = FoundIn.find(new SheetOf("Clamps")
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Side slope V:H")
                .row("Pit", "earth pit", 30, 10, 2, 0.5));
        assertThat(found.rows(Clamps.LIST).gives(Clamps.BATTER, 0)).isFalse();
        assertThat(found.findings()).anyMatch(finding -> finding.message().contains("Side slope V:H"));
    }

    /** Nothing but a rate of work is in hectares an hour: it was asked for a speed, an output or a charge. */
    @Test
    void aRateInHectaresAnHourIsTheRateOfWork() {
        FoundLists found = FoundIn.find(
                new SheetOf("Machines").row("Machine", "Type", "Rate (ha/h)").row("Mower", "mower", 3));
        assertThat(found.rows(Machines.LIST).number(Machines.RATE_OF_WORK, 0)).isEqualTo(3);
        assertThat(found.findings()).isEmpty();
        // Without its unit it is still asked.
        assertThat(FoundIn.find(new SheetOf("Machines")
                                .row("Machine", "Type", "Rate")
                                .row("Mower", "mower", 3))
                        .findings())
                .anyMatch(finding -> finding.message().contains("could mean"));
    }

    @Test
    void furtherWordsOfWorkedExamples() {
        ListRows jobs = FoundIn.find(new SheetOf("June")
                        .row("Task", "Field", "Machine", "Chance of a dry day (%)", "Hours in a day")
                        .row("mowing", "Leys", "Mower", 50, 8))
                .rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.WORKABLE_DAYS, 0)).isEqualTo(50);
        assertThat(jobs.number(Jobs.HOURS_PER_DAY, 0)).isEqualTo(8);

        ListRows clamps = FoundIn.find(new SheetOf("Heaps")
                        .row("Heap", "Kind of store", "Length (m)", "Width (m)", "Settled height (m)", "Side slope h:v")
                        .row("Maize", "heap", 30, 18, 2, "2:1"))
                .rows(Clamps.LIST);
        assertThat(clamps.text(Clamps.KIND, 0)).isEqualTo("heap");
        assertThat(clamps.number(Clamps.BATTER, 0)).isEqualTo(2);

        ListRows herds = FoundIn.find(new SheetOf("Feed")
                        .row("Class of stock", "No. head", "kg DM a day each", "Weeks")
                        .row("Cows", 90, 12, 26))
                .rows(Herds.LIST);
        assertThat(herds.number(Herds.INTAKE, 0)).isEqualTo(12);
    }
}
