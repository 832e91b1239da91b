package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Herds;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.Products;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.Units;

class TwoDeepHeaderTest {
    @Test
    void unitsAndFurtherWordsUnderTheHeaderAreReadTogether() {
        FoundLists found = find(new SheetOf("Land")
                .row("Paddock", "Size", "Haul", "Ditch", "First cut", null, null, "Pit")
                .row(null, "(ac)", "(miles)", "or stream", "Yield (t/ha)", "Basis", "DM %", null)
                .row("Long Meadow", 14.5, 0.5, "stream", 22, "standing", 18, "Top"));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.size()).isEqualTo(1);
        assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(fields.unit(Fields.DISTANCE_TO_CLAMP, 0)).hasValue(Units.MILE);
        assertThat(fields.text(Fields.WATERCOURSE, 0)).isEqualTo("stream");
        assertThat(fields.number(Fields.YIELD, 0)).isEqualTo(22);
        assertThat(fields.text(Fields.YIELD_BASIS, 0)).isEqualTo("standing fresh");
        assertThat(fields.text(Fields.CLAMP, 0)).isEqualTo("Top");
        assertThat(found.findings()).singleElement().satisfies(asked -> assertThat(asked.message())
                .startsWith("The header \"DM %\" could mean DM at cutting or DM at ensiling of Fields."));
    }

    /** The row of units was the header of a second list, and of the first, without rows, its units were taken for granted. */
    @Test
    void unitsUnderListsWithTitlesSideBySideAreNoHeaderOfTheirOwn() {
        FoundLists found = find(new SheetOf("Farm")
                .row("Fields", null, null, null, "Machines", null, null, null)
                .row("Name", "Area", "Crop", null, "Name", "Type", "Width", "Speed")
                .row(null, "ac", null, null, null, null, "ft", "mph")
                .row("Oak", 5.5, "Grass", null, "Mower 3", "mower", 10, 7));
        assertThat(found.findings()).isEmpty();
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(found.rows(Machines.LIST).unit(Machines.SPEED, 0)).hasValue(Units.MPH);
    }

    /** What stands under a heading is none of a name's own: without it the lower row was a row without a machine. */
    @ParameterizedTest
    @CsvSource({
        "Rate, Road, Laden, Empty",
        "Speed (km/h), Road, Laden, Empty",
        "Width (m), Road, Loaded, Empty",
        "Width (m), Speed km/h, Laden, Empty",
        "Width (m), Speed km/h, Road laden, Road empty",
        "Width (m), Speed (km/h), Road laden, Road empty"
    })
    void ladenAndEmptyUnderTheirHeadingAreSpeedsOnTheRoad(String beside, String heading, String laden, String empty) {
        FoundLists found = find(new SheetOf("Kit")
                .row("Machine", "Type", beside, heading, null)
                .row(null, null, null, laden, empty)
                .row("Carrier", "trailer", 2.5, 20, 30));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(machines.number(Machines.ROAD_SPEED_LADEN, 0)).isEqualTo(20);
        assertThat(machines.number(Machines.ROAD_SPEED_EMPTY, 0)).isEqualTo(30);
    }

    @ParameterizedTest
    @CsvSource({"Speed mph, Road laden, Road empty", "Speed (mph), Road laden, Road empty", "Speed mph, Laden, Empty"})
    void theUnitOfAHeadingIsThatOfTheNamesUnderIt(String heading, String laden, String empty) {
        FoundLists found = find(new SheetOf("Kit")
                .row("Machine", "Type", heading, null, null)
                .row(null, null, "Field", laden, empty)
                .row("Carrier", "trailer", 5, 20, 30));
        ListRows machines = found.rows(Machines.LIST);
        for (ColumnSpec speed : List.of(Machines.SPEED, Machines.ROAD_SPEED_LADEN, Machines.ROAD_SPEED_EMPTY)) {
            assertThat(machines.unit(speed, 0)).hasValue(Units.MPH);
        }
    }

    @Test
    void aHeadingOverSeveralColumnsMayHoldWhatTheListNeeds() {
        FoundLists found = find(new SheetOf("Plan")
                .row("Field", "Cropping plan", null, null)
                .row(null, "Crop", "Area (ac)", "Run length (m)")
                .row("Top", "Wheat", 12, 300)
                .row("Low", "Oats", 8, 250));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.size()).isEqualTo(2);
        assertThat(fields.text(Fields.CROP, 1)).isEqualTo("Oats");
        assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(fields.number(Fields.RUN_LENGTH, 0)).isEqualTo(300);
    }

    @Test
    void aNameMayBeBrokenOverTwoRows() {
        FoundLists found = find(new SheetOf("Kit")
                .row("Machine", "Type", "Working", "Forward")
                .row("name", null, "width (ft)", "speed (mph)")
                .row("Mower", "mower", 10, 6));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(machines.text(Machines.MACHINE, 0)).isEqualTo("Mower");
        assertThat(machines.unit(Machines.WORKING_WIDTH, 0)).hasValue(Units.FT);
        assertThat(machines.unit(Machines.SPEED, 0)).hasValue(Units.MPH);
    }

    @Test
    void namesMayBeginInTheRowAbove() {
        FoundLists found = find(
                new SheetOf("Land")
                        .row("Land of the farm")
                        .row(null, null, null, "Run", "Haul")
                        .row("Field", "Crop", "Area (ac)", "length (m)", "(km)")
                        .row("Top", "Grass", 4, 200, 0.5),
                new SheetOf("Store")
                        .row(null, null, null, "Highest", "Pack")
                        .row("Product", "Unit", "Dose", "dose", "size")
                        .row("Herbicide A", "L", 1, 2, 5));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.number(Fields.RUN_LENGTH, 0)).isEqualTo(200);
        assertThat(fields.unit(Fields.DISTANCE_TO_CLAMP, 0)).hasValue(Units.KM);
        ListRows products = found.rows(Products.LIST);
        assertThat(products.number(Products.DOSE, 0)).isEqualTo(1);
        assertThat(products.number(Products.HIGHEST_DOSE, 0)).isEqualTo(2);
        assertThat(products.number(Products.PACK_SIZE, 0)).isEqualTo(5);
        assertThat(found.findings()).extracting(Finding::severity).containsOnly(Finding.Severity.NOTE);
    }

    /** Acres were taken for hectares: only the headers that jobs know were put together with the row of units. */
    @Test
    void unitsUnderAFlatListAreOfAllItsLists() {
        FoundLists found = find(new SheetOf("Plan")
                .row("Field", "Crop", "Area", "Operation", "Machine", "Product", "Dose", "Water volume", "Speed")
                .row(null, null, "(ac)", null, null, null, "(L/ac)", "(L/ac)", "(mph)")
                .row("Top", "Wheat", 4, "spraying", "Sprayer", "A", 1, 80, 6));
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(found.rows(Jobs.LIST).unit(Jobs.SPEED, 0)).hasValue(Units.MPH);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aUnitMayBeBrokenOverTwoRows() {
        FoundLists found = find(
                new SheetOf("Stock")
                        .row("Group", "Head", "Intake (kg", "Days")
                        .row(null, null, "DM/d)", "(d)")
                        .row("Cows", 80, 11, 150),
                new SheetOf("Mixes")
                        .row("Mix", "Product", "Dose", "Dose", "Order in")
                        .row(null, null, null, "unit", "tank")
                        .row("M", "A", 1, "L/ha", 2));
        assertThat(found.rows(Herds.LIST).number(Herds.INTAKE, 0)).isEqualTo(11);
        assertThat(found.rows(Mixes.LIST).number(Mixes.ORDER_IN_TANK, 0)).isEqualTo(2);
        assertThat(found.findings()).isEmpty();
    }

    /** Metres were taken for inches. */
    @Test
    void aBracketLeftOpenIsClosedInTheRowBelow() {
        ListRows machines = find(new SheetOf("Kit")
                        .row("Machine", "Type", "Working width (in", "Speed (in")
                        .row(null, null, "m)", "km/h)")
                        .row("Mower", "mower", 3, 10))
                .rows(Machines.LIST);
        assertThat(machines.unit(Machines.WORKING_WIDTH, 0)).hasValue(Units.M);
        assertThat(machines.unit(Machines.SPEED, 0)).hasValue(Units.KM_PER_H);
    }

    @Test
    void whatStandsUnderANameMayGoOnWithIt() {
        ListRows machines = find(new SheetOf("Kit")
                        .row("Equipment", "Type of", "Cut width", "Nozzle", "Nozzle")
                        .row(null, "machine", "(m)", "spacing (m)", "size")
                        .row("Sprayer 24", "sprayer", 24, 0.5, "03"))
                .rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(machines.number(Machines.NOZZLE_SPACING, 0)).isEqualTo(0.5);
        assertThat(machines.gives(Machines.NOZZLE_SIZE, 0)).isTrue();
    }

    @Test
    void unitsMayStandInAThirdRowOrBelowABlankOne() {
        FoundLists found = find(
                new SheetOf("Three")
                        .row("Machine", "Type", "Working", "Forward")
                        .row(null, null, "width", "speed")
                        .row(null, null, "(ft)", "(mph)")
                        .row("Mower", "mower", 10, 6),
                new SheetOf("Blank")
                        .row("Field", "Crop", "Area", "Run length")
                        .row()
                        .row(null, null, "(ac)", "(ft)")
                        .row("Low", "Wheat", 5, 500));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.unit(Machines.WORKING_WIDTH, 0)).hasValue(Units.FT);
        assertThat(machines.unit(Machines.SPEED, 0)).hasValue(Units.MPH);
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(fields.unit(Fields.RUN_LENGTH, 0)).hasValue(Units.FT);
        assertThat(found.findings()).isEmpty();
    }

    /** The tank's gallons were taken for cubic metres. */
    @Test
    void aColumnOfNamesOrNumbersHasItsUnitFromTheRowBelowToo() {
        ListRows clamps = find(new SheetOf("Pits")
                        .row("Clamp", "Kind", "Length", "Floor width", "Wall height", "Effluent tank")
                        .row(null, null, "(m)", "(m)", "(m)", "(UK gal)")
                        .row("Main", "walled", 30, 9, 2.4, 2400))
                .rows(Clamps.LIST);
        assertThat(clamps.unit(Clamps.EFFLUENT_TANK, 0)).hasValue(Units.GAL_UK);
    }

    @Test
    void aNameThatIsAUnitToo() {
        ListRows herds = find(new SheetOf("Herds")
                        .row(null, null, "Intake", "Days")
                        .row("Group", "Head", "(kg DM/d)", "(d)")
                        .row("Cows", 80, 11, 150))
                .rows(Herds.LIST);
        assertThat(herds.number(Herds.INTAKE, 0)).isEqualTo(11);
        assertThat(herds.number(Herds.DAYS, 0)).isEqualTo(150);
    }

    @Test
    void wordsThatCouldBeUnitsAreNamesStill() {
        FoundLists found = find(new SheetOf("Kit")
                .row("Our kit", null, null, "Details", "Hours per day")
                .row("Machine", "Type", "Width (m)", "Count", "(h)")
                .row("Mower", "mower", 3, 2, 9));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.NUMBER, 0)).isEqualTo(2);
        assertThat(machines.number(Machines.HOURS_PER_DAY, 0)).isEqualTo(9);
    }

    @Test
    void aListMayNeedWhatBeginsInTheRowAbove() {
        FoundLists found = find(new SheetOf("Pits")
                .row(null, null, null, "Floor", "Wall", "Settled")
                .row("Clamp", "Kind", "Length (m)", "width (m)", "height (m)", "height (m)")
                .row("Main", "walled", 30, 9, 2.4, 2.2));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.size()).isEqualTo(1);
        assertThat(clamps.number(Clamps.FLOOR_WIDTH, 0)).isEqualTo(9);
        assertThat(clamps.number(Clamps.WALL_HEIGHT, 0)).isEqualTo(2.4);
        assertThat(clamps.number(Clamps.SETTLED_HEIGHT, 0)).isEqualTo(2.2);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void titlesAndGroupsAboveAHeaderLeaveItWhatItIs() {
        FoundLists found = find(new SheetOf("Kit")
                .row("Our machines", null, null, "Max", null)
                .row("No.", "Machine", "Type", "Speed (km/h)", "Width (m)")
                .row(1, "Mower", "mower", 10, 3));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.text(Machines.MACHINE, 0)).isEqualTo("Mower");
        assertThat(machines.number(Machines.WORKING_WIDTH, 0)).isEqualTo(3);
        assertThat(machines.has(Machines.SPEED)).isFalse();
        assertThat(machines.number(Machines.HIGHEST_SPEED, 0)).isEqualTo(10);
    }

    @Test
    void aUnitUnderAWordThatIsNotKnownIsNoSecondColumnOfThatUnit() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Width", "Speed", "Speed road")
                .row(null, null, "m", "km/h", "km/h")
                .row("Trailer", "trailer", 3, 12, 25));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.SPEED, 0)).isEqualTo(12);
        assertThat(found.places().get(0).unrecognised()).containsExactly("Speed road");
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aHeadingOverTwoYearsIsAskedAbout() {
        for (Object year : new Object[] {"2025", 2025}) {
            FoundLists found = find(new SheetOf("Fields")
                    .row("Field", "Crops", null, "Area")
                    .row(null, year, 2026, "(ac)")
                    .row("Top", "oats", "wheat", 10));
            ListRows fields = found.rows(Fields.LIST);
            assertThat(fields.size()).isEqualTo(1);
            assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.AC);
            assertThat(fields.state(Fields.CROP, 0)).isEqualTo(ListRows.State.ASKED);
            assertThat(found.findings()).singleElement().satisfies(asked -> assertThat(asked.message())
                    .contains("\"Crops 2025\" (Fields!B1)", "\"Crops 2026\" (Fields!C1)"));
        }
    }

    @Test
    void aRowWithANameOrAFigureIsNoHeader() {
        FoundLists named = find(new SheetOf("Fields")
                .row("Field", "Area", "Watercourse", null)
                .row("Yield", null, "stream", "Notes")
                .row("Top", 4, "none", null));
        assertThat(named.rows(Fields.LIST).size()).isEqualTo(2);
        FoundLists unit = find(
                new SheetOf("Mixes").row("Mix", "Product", "Dose", "Dose unit").row("M", "A", null, "g/ha"));
        assertThat(unit.rows(Mixes.LIST).size()).isEqualTo(1);
        FoundLists figure = find(new SheetOf("Fields")
                .row("Field", "Area", "Watercourse", "Scheme")
                .row(null, 3.5, "stream", "Crop")
                .row("Top", 4, "none", null));
        assertThat(figure.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(figure.findings())
                .anySatisfy(finding -> assertThat(finding.message()).startsWith("This row has entries but no Field"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Townland / field", "Field"})
    void unitsAndWordsUnderTheHeadersAreTheirs(String name) {
        ListRows fields = find(new SheetOf("Cut")
                        .row("Holding", name, "Acres", "Yield", "% DM", "Miles to pit")
                        .row(null, null, "ac", "t/ac", "at ensiling", "miles")
                        .row("Hill", "Lea", 11.5, 9.5, 24, 0.4))
                .rows(Fields.LIST);
        assertThat(fields.size()).isEqualTo(1);
        assertThat(fields.unit(Fields.YIELD, 0).orElseThrow().symbol()).isEqualTo("t/ac");
        assertThat(fields.number(Fields.DM_AT_ENSILING, 0)).isEqualTo(24);
        assertThat(fields.has(Fields.DM_AT_CUTTING)).isFalse();
    }

    @Test
    void unitsUnderHeadersOfMachinesCalledByARareName() {
        ListRows machines = find(new SheetOf("Kit")
                        .row("Rig", "Type", "Width", "Speed", "Tank")
                        .row(null, null, "ft", "mph", "see plate")
                        .row("Boom", "sprayer", 90, 12, 1000))
                .rows(Machines.LIST);
        assertThat(machines.unit(Machines.WORKING_WIDTH, 0).orElseThrow().symbol())
                .isEqualTo("ft");
        assertThat(machines.unit(Machines.SPEED, 0).orElseThrow().symbol()).isEqualTo("mph");
    }
}
