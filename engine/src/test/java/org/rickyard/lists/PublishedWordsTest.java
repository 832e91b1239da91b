package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.lists.FoundIn.find;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.quantity.Units;

/** Headers as the bulletins, handbooks and course notes word the quantities of their worked examples. */
class PublishedWordsTest {
    private record Word(ListSpec list, String column, String header) {}

    private static Stream<Word> words(ListSpec list, String column, String... headers) {
        return Arrays.stream(headers).map(header -> new Word(list, column, header));
    }

    static Stream<Word> sure() {
        return Stream.of(
                        words(Machines.LIST, "Working width", "Width of implement (ft)"),
                        words(Machines.LIST, "List price", "Manufacturer's list price"),
                        words(Machines.LIST, "Purchase price", "Initial investment", "Acquisition cost"),
                        words(Machines.LIST, "Life", "Length of ownership (years)", "Years to be kept"),
                        words(
                                Machines.LIST,
                                "Hours per year",
                                "Hours of use per year",
                                "Annual hours of use",
                                "Hours used per year",
                                "Annual operating hours",
                                "Hours used annually"),
                        words(Machines.LIST, "Hours now", "Accumulated hours of use"),
                        words(Machines.LIST, "Turn time", "Time for one turn (sec)"),
                        words(Machines.LIST, "Tank", "Sprayer tank capacity (gal)", "Spray tank volume (L)"),
                        words(
                                Machines.LIST,
                                "Nozzle spacing",
                                "Spacing between nozzles (in)",
                                "Nozzle spacing on boom (in)"),
                        words(Machines.LIST, "Nozzle flow", "GPM per nozzle", "Nozzle delivery rate (L/min)"),
                        words(
                                Machines.LIST,
                                "Total flow",
                                "Total boom output (L/min)",
                                "Output of all nozzles (L/min)"),
                        words(Machines.LIST, "Working pressure", "Boom pressure (psi)", "Gauge pressure (bar)"),
                        words(Machines.LIST, "Timed distance", "Length of test strip (m)"),
                        words(Machines.LIST, "Timed seconds", "Time to cover distance (s)"),
                        words(Machines.LIST, "Test area", "Area of test plot (m2)", "Calibration area (ft2)"),
                        words(Machines.LIST, "Test volume", "Amount of water used (L)"),
                        words(Machines.LIST, "Test weight", "Material collected (kg)"),
                        words(Machines.LIST, "Rows", "Number of shanks", "No. of coulters"),
                        words(Machines.LIST, "Row width", "Shank spacing (in)", "Coulter spacing (cm)"),
                        words(
                                Machines.LIST,
                                "Road speed laden",
                                "Loaded travel speed (mph)",
                                "Haul speed loaded (km/h)"),
                        words(Machines.LIST, "Road speed empty", "Empty travel speed (mph)", "Haul speed empty (km/h)"),
                        words(
                                Machines.LIST,
                                "Wheel turns loaded",
                                "Wheel revolutions with load",
                                "Wheel revs under load"),
                        words(Machines.LIST, "Wheel turns unloaded", "Wheel revolutions without load"),
                        words(
                                Machines.LIST,
                                "Wheel turns",
                                "Turns of the wheel",
                                "Wheel revolutions",
                                "Number of wheel turns"),
                        words(
                                Machines.LIST,
                                "Wheel circumference",
                                "Circumference of wheel (ft)",
                                "Drive wheel circumference (m)"),
                        words(
                                Jobs.LIST,
                                "Hours per day",
                                "Field hours per day",
                                "Operating hours per day",
                                "Field time per day (h)"),
                        words(Jobs.LIST, "Workable days", "Probability of a working day (%)", "pwd"),
                        words(Jobs.LIST, "Days available", "Days suitable for fieldwork", "Workdays available"),
                        words(Jobs.LIST, "Spray density", "Specific gravity of solution", "Solution density (lb/gal)"),
                        words(Jobs.LIST, "Air temperature", "Dry-bulb temperature (°C)"),
                        words(Jobs.LIST, "Water volume", "Volume application rate (L/ha)"),
                        words(Fields.LIST, "Tree width", "Cross-row limb spread (ft)", "Limb spread (ft)"),
                        words(Fields.LIST, "Row spacing", "Between-row spacing (ft)", "Row-to-row distance (m)"),
                        words(Fields.LIST, "Tree height", "Maximum tree height (ft)"),
                        words(
                                Fields.LIST,
                                "Distance to clamp",
                                "One way haul distance (miles)",
                                "Hauling distance (km)"),
                        words(Clamps.LIST, "Wall height", "Side wall height (ft)", "Height of side walls (m)"),
                        words(Clamps.LIST, "Settled height", "Settled silage depth (m)"),
                        words(Clamps.LIST, "Roller mass", "Total packing weight (lb)", "Packing vehicle weight (lb)"),
                        words(Clamps.LIST, "Layer", "Packing layer thickness (in)"),
                        words(Clamps.LIST, "Delivery", "Forage delivery rate (t/h)", "Silage delivery rate (t/h)"),
                        words(Herds.LIST, "Days", "No. of months", "Number of weeks"),
                        words(Herds.LIST, "Head", "Livestock numbers", "No. of stock to be wintered"),
                        words(
                                Stocks.LIST,
                                "Weight each",
                                "Tonnes per bale",
                                "lb per bale",
                                "Fresh weight per bale (kg)"),
                        words(Products.LIST, "Highest dose", "Highest permitted dose (L/ha)"),
                        words(Products.LIST, "Nitrogen", "Percent nitrogen"))
                .flatMap(each -> each);
    }

    @ParameterizedTest
    @MethodSource("sure")
    void aHeaderIsKnown(Word word) {
        Heading heading = new Vocabulary(word.list()).read(HeaderText.of(word.header()));
        assertThat(heading).as("%s", word).isNotNull();
        assertThat(heading.isCertain()).as("%s", word).isTrue();
        assertThat(heading.column().name()).isEqualTo(word.column());
    }

    static Stream<Word> alone() {
        return Stream.of(
                        words(
                                Machines.LIST,
                                "Working width",
                                "Rated width (m)",
                                "Width sprayed (ft)",
                                "Spray swath (m)"),
                        words(
                                Machines.LIST,
                                "Power",
                                "PTO horsepower",
                                "Rated PTO power (kW)",
                                "Max. PTO hp",
                                "Maximum engine power (kW)",
                                "Tractor hp"),
                        words(Machines.LIST, "List price", "Replacement value"),
                        words(Machines.LIST, "Purchase price", "Initial value", "Cost price"),
                        words(Machines.LIST, "Trade-in value", "Disposal value", "Final value", "Scrap value"),
                        words(Machines.LIST, "Life", "Replacement interval (years)"),
                        words(Machines.LIST, "Hours now", "Hour meter reading", "Hours on machine"),
                        words(Machines.LIST, "Road speed empty", "Return speed (mph)"),
                        words(
                                Jobs.LIST,
                                "Water volume",
                                "Desired application rate (L/ha)",
                                "Target application rate (L/ha)",
                                "Spray output (L/ha)"),
                        words(Fields.LIST, "Yield", "Herbage mass (kg DM/ha)", "Harvested yield (t/ha)", "Grass yield"),
                        words(Fields.LIST, "Tree width", "Crown width (m)", "Canopy spread (ft)"),
                        words(Fields.LIST, "Number of trees", "Total trees"),
                        words(Fields.LIST, "Distance to clamp", "Distance to storage (km)"),
                        words(Fields.LIST, "Distance to fill point", "Distance to water supply (m)"),
                        words(Cuts.LIST, "Yield", "Silage yield (t/ha)"),
                        words(Clamps.LIST, "DM target", "Moisture content (%)", "Percent moisture", "Percent DM"),
                        words(Clamps.LIST, "Roller mass", "Total tractor weight (t)"),
                        words(Clamps.LIST, "Delivery", "Harvesting rate (t/h)", "Arrival rate (t/h)"),
                        words(Clamps.LIST, "Feed-out rate", "Face progress (m/week)"),
                        words(Stocks.LIST, "Amount", "Tonnes of silage", "Total tonnes"),
                        words(Stocks.LIST, "Count", "Total bales"),
                        words(Products.LIST, "Nitrogen", "N analysis"))
                .flatMap(each -> each);
    }

    /** Beside the column's own name they are of something else as likely, and were a stop for all its cells. */
    @ParameterizedTest
    @MethodSource("alone")
    void aNameThatMayBeOfSomethingElseCountsWhereNoOtherDoes(Word word) {
        ColumnSpec column = word.list().column(word.column()).orElseThrow();
        HeaderRow row = new HeaderRow(Lists.ALL.stream().map(Vocabulary::new).toList());
        HeaderRow.Match alone = row.match(word.list(), new String[] {word.header()}, 0, 0, false);
        assertThat(alone.headings()[0].column()).as("%s", word).isEqualTo(column);
        assertThat(alone.headings()[0].isCertain()).isTrue();
        HeaderRow.Match beside = row.match(word.list(), new String[] {column.name(), word.header()}, 0, 1, false);
        assertThat(beside.headings()[0].column()).isEqualTo(column);
        assertThat(beside.headings()[1]).as("%s", word).isNull();
    }

    /** Of several loose names of one column the likelier is read, wherever it stands. */
    @ParameterizedTest
    @CsvSource({"Engine horsepower, PTO horsepower", "PTO horsepower, Engine horsepower"})
    void ofTwoThePowerAtTheShaftIsRead(String one, String other) {
        FoundLists found =
                find(new SheetOf("Machines").row("Machine", "Type", one, other).row("Mine", "tractor", 120, 110));
        assertThat(FoundIn.messages(found, Finding.Severity.STOP)).isEmpty();
        assertThat(found.places().get(0).unrecognised()).containsExactly("Engine horsepower");
        assertThat(found.rows(Machines.LIST).text(Machines.POWER_BASIS, 0)).isEqualTo("PTO");
    }

    /** By their units, where no other header means the column. */
    @ParameterizedTest
    @CsvSource({
        "Amount collected (lb), Test weight",
        "Distance covered (m), Timed distance",
        "Annual usage (h), Hours per year",
        "Fuel required (L/h), Fuel",
        "Area covered (m2), Test area",
        "Machine capacity (ac/h), Rate of work",
        "Tractor weight (t), Mass"
    })
    void aLooserWordIsKnownByItsUnit(String header, String column) {
        ListRows machines = find(new SheetOf("Machines")
                        .row("Machine", "Type", header)
                        .row("Mine", "other", 12))
                .rows(Machines.LIST);
        assertThat(machines.gives(Machines.LIST.column(column).orElseThrow(), 0))
                .isTrue();
    }

    /** What stands in the name of a header is its unit: 12 gallons were taken for 12 litres. */
    @ParameterizedTest
    @CsvSource({"Gallons used, 45.4249414", "Litres used, 12"})
    void anAmountNamedByItsUnitIsInIt(String header, double litres) {
        ListRows machines = find(
                        new SheetOf("Machines")
                                .row("Machine", "Type", "Test area (m2)", header)
                                .row("Mine", "sprayer", 100, 12),
                        new SheetOf("Assumptions").row("Item", "Value", "Unit").row("Customary units", "US", null))
                .rows(Machines.LIST);
        assertThat(machines.unit(Machines.TEST_VOLUME, 0)
                        .orElseThrow()
                        .convert(machines.number(Machines.TEST_VOLUME, 0), Units.L))
                .isCloseTo(litres, within(1e-6));
    }

    /** Pounds are no kilograms. */
    @Test
    void poundsCollectedArePounds() {
        ListRows machines = find(new SheetOf("Machines")
                        .row("Machine", "Type", "Pounds collected")
                        .row("Mine", "fertiliser spreader", 20))
                .rows(Machines.LIST);
        assertThat(machines.unit(Machines.TEST_WEIGHT, 0)
                        .orElseThrow()
                        .convert(machines.number(Machines.TEST_WEIGHT, 0), Units.KG))
                .isCloseTo(9.0718474, within(1e-9));
    }

    /** The crop with what only a yield is measured in, as farms head it: common practice. */
    @ParameterizedTest
    @CsvSource({"Grass t/ac (fresh), t/ac", "Maize (t/ha), t/ha", "Silage t DM/ha, t DM/ha", "Whole crop (t/ac), t/ac"})
    void aCropWithAUnitOfYieldIsTheYield(String header, String unit) {
        ListRows fields = find(new SheetOf("Fields")
                        .row("Field", "Acres", header)
                        .row("Top", 12, 9))
                .rows(Fields.LIST);
        assertThat(fields.number(Fields.YIELD, 0)).isEqualTo(9);
        assertThat(fields.unit(Fields.YIELD, 0)).hasToString("Optional[" + unit + "]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Grass (ha)", "Grass (t)", "Grass cover (kg DM/ha)", "Silage (bales)", "Grass"})
    void aCropWithAnotherUnitIsNoYield(String header) {
        assertThat(find(new SheetOf("Fields").row("Field", "Acres", header).row("Top", 12, 9))
                        .rows(Fields.LIST)
                        .has(Fields.YIELD))
                .isFalse();
    }

    /** What a machine did in a season is no test of it, and no stop. */
    @ParameterizedTest
    @CsvSource({
        "Area treated (ha), 200",
        "Distance driven (km), 12000",
        "Distance travelled (km), 420",
        "Distance traveled (miles), 300",
        "Distance travelled, 420",
        "Spray used (L), 20000",
        "Weight spread (t), 400",
        "Gallons used, 2000",
        "Average time (h), 3",
        "Annual usage (ha), 300",
        "Annual usage (days), 30",
        "Annual use (days), 30",
        "Amount used (L), 3000",
        "Quantity used (kg), 400",
        "Refill volume (L), 6000",
        "Drive time (min), 20",
        "Replacement interval (h), 500",
        "Year, 2018",
        "Years, 2018",
        "Diesel used (L), 3000",
        "Annual use (ha), 300",
        "Fuel used (L), 3000"
    })
    void figuresOfASeasonAreNoTest(String header, double value) {
        FoundLists found =
                find(new SheetOf("Machines").row("Machine", "Type", header).row("Mine", "other", value));
        assertThat(FoundIn.messages(found, Finding.Severity.STOP)).isEmpty();
        assertThat(found.places().get(0).unrecognised()).containsExactly(header);
    }

    /** Beside its seconds, or in metres, it is that of a timed run. */
    @ParameterizedTest
    @ValueSource(strings = {"Distance travelled", "Distance traveled (ft)", "Distance travelled (m)"})
    void aDistanceOfSecondsIsTimed(String header) {
        ListRows machines = find(new SheetOf("Machines")
                        .row("Machine", "Type", header, "Time taken (s)")
                        .row("Mine", "other", 100, 36))
                .rows(Machines.LIST);
        assertThat(machines.number(Machines.TIMED_DISTANCE, 0)).isEqualTo(100);
        assertThat(machines.number(Machines.TIMED_SECONDS, 0)).isEqualTo(36);
    }

    /** Beside the ground of a test they are what it took. */
    @ParameterizedTest
    @CsvSource({
        "Volume used (L), Test volume",
        "Amount used (L), Test volume",
        "Water to refill (ml), Test volume",
        "Weight spread (kg), Test weight",
        "Amount used (kg), Test weight",
        "Average time (s), Timed seconds",
        "Drive time (s), Timed seconds"
    })
    void besideTheGroundOfATestTheyAreOfIt(String header, String column) {
        ListRows machines = find(new SheetOf("Machines")
                        .row("Machine", "Type", "Test distance (m)", header)
                        .row("Mine", "other", 50, 12))
                .rows(Machines.LIST);
        assertThat(machines.gives(Machines.LIST.column(column).orElseThrow(), 0))
                .isTrue();
    }

    /** The weight of a bale was taken for one more amount in store, in other rows. */
    @Test
    void theWeightOfABaleIsNoAmountBesideTheAmount() {
        ListRows stocks = find(new SheetOf("Stocks")
                        .row("Store", "Amount (t)", "Bales", "Fresh weight per bale (kg)", "DM (%)")
                        .row("Pit", 500, null, null, 25)
                        .row("Bales", null, 550, 900, 30))
                .rows(Stocks.LIST);
        assertThat(stocks.isFilled(Stocks.AMOUNT, 1)).isFalse();
        assertThat(stocks.number(Stocks.WEIGHT_EACH, 1)).isEqualTo(900);
    }

    /** Hours a day had stopped all jobs, as a second header of the field or the operation. */
    @ParameterizedTest
    @ValueSource(strings = {"Field hours per day", "Operating hours per day"})
    void hoursOfADayAreNoFieldAndNoOperation(String header) {
        FoundLists found = find(
                new SheetOf("Jobs").row("Field", "Operation", "Machine", header).row("A", "mowing", "Mower", 9));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.FIELD, 0)).isEqualTo("A");
        assertThat(jobs.text(Jobs.OPERATION, 0)).isEqualTo("mowing");
        assertThat(jobs.number(Jobs.HOURS_PER_DAY, 0)).isEqualTo(9);
    }

    /** Ten days of use were 240 hours of work, 3000 hours of work a third of a year, and two hours a twelfth of a day. */
    @ParameterizedTest
    @CsvSource({
        "Machines, Hours per year (days), Hours per year",
        "Machines, Hours now (days), Hours now",
        "Machines, Life (h), Life",
        "Herds, Days (h), Days"
    })
    void timeAtWorkAndByTheCalendarAreNoMeasureOfEachOther(String list, String header, String column) {
        ListSpec spec = Lists.named(list).orElseThrow();
        FoundLists found = list.equals("Machines")
                ? find(new SheetOf(list).row("Machine", "Type", header).row("Mine", "mower", 10))
                : find(new SheetOf(list)
                        .row("Group", "Head", "Intake (kg DM/day)", header)
                        .row("Cows", 9, 8, 10));
        assertThat(found.rows(spec).state(spec.column(column).orElseThrow(), 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(FoundIn.messages(found, Finding.Severity.STOP))
                .anyMatch(message -> message.contains("does not measure"));
    }

    /** Ten minutes lost in an hour were a field efficiency of 17 %. */
    @ParameterizedTest
    @ValueSource(strings = {"Lost time (min/h)", "Time lost (min/day)", "Loss of time (h/day)"})
    void timeLostInATimeIsNoEfficiency(String header) {
        ListRows machines = find(new SheetOf("Machines")
                        .row("Machine", "Type", header)
                        .row("Mine", "mower", 10))
                .rows(Machines.LIST);
        assertThat(machines.gives(Machines.FIELD_EFFICIENCY, 0)).isFalse();
    }

    /** It had been 0.6 %, and a stop. */
    @ParameterizedTest
    @ValueSource(strings = {"PWD", "Probability of a working day", "Fraction of days workable"})
    void aProbabilityRunsToOne(String header) {
        FoundLists found = find(
                new SheetOf("Jobs").row("Field", "Operation", "Machine", header).row("A", "mowing", "Mower", 0.6));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(FoundIn.messages(found, Finding.Severity.STOP)).isEmpty();
        assertThat(jobs.unit(Jobs.WORKABLE_DAYS, 0)
                        .orElseThrow()
                        .convert(jobs.number(Jobs.WORKABLE_DAYS, 0), Units.PERCENT))
                .isCloseTo(60, within(1e-9));
    }

    /** Pounds in a gallon are of what is in it as likely as of the active ingredient. */
    @Test
    void poundsInAGallonAreAsked() {
        ListRows products = find(new SheetOf("Products")
                        .row("Product", "Unit", "lb/gal")
                        .row("Alpha", "L", 4))
                .rows(Products.LIST);
        assertThat(products.gives(Products.DENSITY, 0)).isFalse();
        assertThat(products.state(Products.DENSITY, 0)).isEqualTo(ListRows.State.ASKED);
    }

    /** Alone it is of what is sprayed; beside a product it may be that of the product in its can. */
    @Test
    void aSpecificGravityIsOfTheSprayOrAsked() {
        ListRows alone = find(new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine", "Specific gravity")
                        .row("A", "spraying", "Boom", 1.28))
                .rows(Jobs.LIST);
        assertThat(alone.number(Jobs.SPRAY_DENSITY, 0)).isEqualTo(1.28);
        ListRows beside = find(new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine", "Product", "Specific gravity")
                        .row("A", "spraying", "Boom", "Alpha", 1.28))
                .rows(Jobs.LIST);
        assertThat(beside.state(Jobs.SPRAY_DENSITY, 0)).isEqualTo(ListRows.State.ASKED);
    }

    /** Nothing else on a list of clamps is a length in a time. */
    @ParameterizedTest
    @ValueSource(strings = {"Inches per day", "in/day", "m/week"})
    void aWayInATimeIsHowFarTheFaceMoves(String header) {
        ListRows clamps = find(new SheetOf("Clamps")
                        .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", header)
                        .row("Main", "walled", 40, 12, 3, 2))
                .rows(Clamps.LIST);
        assertThat(clamps.gives(Clamps.FEED_OUT_RATE, 0)).isTrue();
        assertThat(clamps.unit(Clamps.FEED_OUT_RATE, 0).orElseThrow().symbol())
                .isEqualTo(List.of("Inches per day", "in/day").contains(header) ? "in/d" : "m/week");
    }
}
