package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.quantity.Units;

/** Worked examples as extension bulletins print them, typed into a table: their own headers, units in a row below. */
class WorkedExampleTablesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Average output per nozzle (ml/min)",
                "Avg. output per nozzle (ml/min)",
                "Mean nozzle output (ml/min)",
                "Average nozzle flow (ml/min)",
                "Nozzle catch (ml/min)",
                "Catch per nozzle (ml/min)",
                "Average catch (ml/min)",
                "Collected per nozzle (ml/min)"
            })
    void whatWasCaughtFromANozzleIsItsFlow(String header) {
        ListRows machines = find(new SheetOf("Kit")
                        .row("Machine", "Type", "Width (m)", "No. of nozzles", header)
                        .row("Old boom", "sprayer", 12, 24, 1480))
                .rows(Machines.LIST);
        assertThat(machines.number(Machines.NOZZLE_FLOW, 0)).isEqualTo(1480);
        assertThat(machines.isFilled(Machines.OUTPUT, 0)).isFalse();
        assertThat(machines.number(Machines.NOZZLES, 0)).isEqualTo(24);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Average output (ac/h)", "Nozzle catch tray", "Average output", "Catch", "Nozzle cost"})
    void whatIsOfSomethingElseIsNoNozzlesFlow(String header) {
        ListRows machines = find(new SheetOf("Kit")
                        .row("Machine", "Type", "Width (m)", "Speed (km/h)", header)
                        .row("Old boom", "sprayer", 12, 8, 7))
                .rows(Machines.LIST);
        assertThat(machines.isFilled(Machines.NOZZLE_FLOW, 0)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Time for 100 m (s)",
                "Seconds for 100 m",
                "Secs per 100 m",
                "100 m in (s)",
                "Time to travel 300 ft (sec)",
                "Seconds over 88 ft",
                "Time taken for 100 metres"
            })
    void aRunTimedOverALengthInTheHeaderIsToldWithWhatToWrite(String header) {
        FoundLists found = find(
                new SheetOf("Kit").row("Machine", "Type", "Width (m)", header).row("Old boom", "sprayer", 12, 45));
        assertThat(messages(found, Severity.CAUTION)).singleElement().satisfies(told -> assertThat(told)
                .contains(header, "Timed distance", "Timed seconds (s)"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Time for 100 ha (h)", "Cost per 100 m", "Fuel for 100 m", "Time in field (h)", "Seconds"})
    void otherTimesAreNoRuns(String header) {
        FoundLists found = find(new SheetOf("Kit")
                .row("Machine", "Type", "Width (m)", "Speed (km/h)", header)
                .row("Old boom", "sprayer", 12, 8, 45));
        assertThat(messages(found, Severity.CAUTION)).noneMatch(told -> told.contains("a length in a header"));
    }

    @Test
    void aUnitBelowAHeaderTellsWhatItMeansAsOneBesideItDoes() {
        ListRows machines = find(new SheetOf("Drills")
                        .row("Drill", "Type", "Width", "Hopper capacity", "Work rate", "Filling")
                        .row(null, null, "m", "kg", "ha/h", "min")
                        .row("Combi", "drill", 3, 850, 1.6, 12))
                .rows(Machines.LIST);
        assertThat(machines.number(Machines.PAYLOAD, 0)).isEqualTo(850);
        assertThat(machines.unit(Machines.PAYLOAD, 0)).hasValue(Units.KG);
        assertThat(machines.number(Machines.RATE_OF_WORK, 0)).isEqualTo(1.6);
        assertThat(machines.number(Machines.FILL_TIME, 0)).isEqualTo(12);
        ListRows fields = find(new SheetOf("Land")
                        .row("Field", "Crop", "Net", "Fill pt", "To pit")
                        .row(null, null, "ac", "km", "miles")
                        .row("Top", "Grass", 12.5, 0.4, 1.5))
                .rows(Fields.LIST);
        assertThat(fields.number(Fields.AREA, 0)).isEqualTo(12.5);
        assertThat(fields.number(Fields.DISTANCE_TO_FILL_POINT, 0)).isEqualTo(0.4);
        assertThat(fields.unit(Fields.DISTANCE_TO_CLAMP, 0)).hasValue(Units.MILE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"To ditch (m)", "To stream (m)", "To watercourse (m)"})
    void howFarItIsToADitchIsSaidAsHowFarToThePit(String header) {
        ListRows fields = find(new SheetOf("Land")
                        .row("Field", "Area (ha)", "Watercourse", header, "To hydrant (km)", "To pit (km)")
                        .row("Top", 12.5, "stream", 4, 0.4, 1.5))
                .rows(Fields.LIST);
        assertThat(fields.number(Fields.DISTANCE_TO_WATERCOURSE, 0)).isEqualTo(4);
        assertThat(fields.number(Fields.DISTANCE_TO_FILL_POINT, 0)).isEqualTo(0.4);
        assertThat(fields.number(Fields.DISTANCE_TO_CLAMP, 0)).isEqualTo(1.5);
    }

    @Test
    void aCostOfABaleIsAskedAsThatOfAnAcreIs() {
        FoundLists found = find(new SheetOf("Kit")
                .row("Machine", "Type", "Width (m)", "Cost/bale")
                .row("Round", "round baler", 4.5, 9));
        assertThat(messages(found, Severity.CAUTION)).singleElement().satisfies(told -> assertThat(told)
                .contains("\"Cost/bale\"", "Charge"));
        assertThat(found.rows(Machines.LIST).gives(Machines.CHARGE, 0)).isFalse();
    }

    @Test
    void aUnitTwoRowsBelowAHeadingIsThatOfTheNameBetweenThem() {
        ListRows machines = find(new SheetOf("Machines")
                        .row("Machine", null, "Field work", null, null, "Road", null, "Turns", "New")
                        .row(
                                "Name",
                                "Type",
                                "Width",
                                "Speed",
                                "Efficiency",
                                "Laden",
                                "Empty",
                                "Turn time",
                                "List price")
                        .row(null, null, "m", "km/h", "%", "km/h", "km/h", "s", "£")
                        .row("Trailer", "trailer", null, null, null, 25, 32, null, 14000)
                        .row("Mower", "mower", 3.2, 13, 80, null, null, 18, 12000))
                .rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(2);
        assertThat(machines.number(Machines.ROAD_SPEED_LADEN, 0)).isEqualTo(25);
        assertThat(machines.number(Machines.ROAD_SPEED_EMPTY, 0)).isEqualTo(32);
        assertThat(machines.number(Machines.WORKING_WIDTH, 1)).isEqualTo(3.2);
        assertThat(machines.number(Machines.FIELD_EFFICIENCY, 1)).isEqualTo(80);
        assertThat(machines.number(Machines.TURN_TIME, 1)).isEqualTo(18);
        assertThat(machines.number(Machines.LIST_PRICE, 0)).isEqualTo(14000);
    }

    @Test
    void aUnitBelowThatIsOfSomethingElseGivesAHeaderNoMeaning() {
        ListRows machines = find(new SheetOf("Drills")
                        .row("Drill", "Type", "Width", "Hopper capacity", "Filling", "Min")
                        .row(null, null, "m", "years", "ha", "kW")
                        .row("Combi", "drill", 3, 850, 12, 40))
                .rows(Machines.LIST);
        assertThat(machines.isFilled(Machines.PAYLOAD, 0)).isFalse();
        assertThat(machines.isFilled(Machines.FILL_TIME, 0)).isFalse();
        assertThat(machines.isFilled(Machines.LOWEST_SPEED, 0)).isFalse();
    }

    @Test
    void aDensityOverFreshAndDmIsTheDensityOfEach() {
        FoundLists found = find(new SheetOf("Clamps")
                .row(null, null, "Dimensions (m)", null, null, "Density (kg/m3)", null, "Feeding")
                .row("Clamp", "Type", "Length", "Width", "Height settled", "Fresh", "DM", "Feed-out m/week")
                .row("North", "walled", 36, 12, 2.8, 700, null, 1.2)
                .row("South", "walled", 30, 9, 2.5, null, 210, 1.5));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.number(Clamps.FRESH_DENSITY, 0)).isEqualTo(700);
        assertThat(clamps.number(Clamps.DRY_MATTER_DENSITY, 1)).isEqualTo(210);
        assertThat(clamps.isFilled(Clamps.DM_TARGET, 1)).isFalse();
        assertThat(clamps.number(Clamps.LENGTH, 1)).isEqualTo(30);
    }

    @Test
    void aHeadingGoesOnOverNothingThatHasItsOwnMeaningOrUnit() {
        FoundLists found = find(new SheetOf("Clamps")
                .row(null, null, "Floor (m)", null, "Density (kg/m3)", null, null, null)
                .row("Clamp", "Type", "Length", "Width", "Fresh", "DM (%)", "Wall height (m)", "Crown (m)")
                .row("North", "walled", 36, 12, 700, 30, 2.4, 0.5));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.number(Clamps.FRESH_DENSITY, 0)).isEqualTo(700);
        assertThat(clamps.number(Clamps.DM_TARGET, 0)).isEqualTo(30);
        assertThat(clamps.isFilled(Clamps.DRY_MATTER_DENSITY, 0)).isFalse();
        assertThat(clamps.number(Clamps.WALL_HEIGHT, 0)).isEqualTo(2.4);
        assertThat(clamps.number(Clamps.CROWN, 0)).isEqualTo(0.5);
    }

    @Test
    void whatIsSownIsTheProductOfItsRow() {
        FoundLists found = find(new SheetOf("Drilling")
                .row("Field", "Operation", "Drill", "Seed", "Seed rate (kg/ha)")
                .row("Piece", "drilling", "Tine", "Wheat C2", 175));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.PRODUCT, 0)).isEqualTo("Wheat C2");
        assertThat(jobs.number(Jobs.DOSE, 0)).isEqualTo(175);
        assertThat(messages(found, Severity.NOTE)).anyMatch(told -> told.startsWith("\"Seed\" is read as the Product"));
    }

    @Test
    void seedBesideASprayOrInFiguresIsNoProduct() {
        ListRows both = find(new SheetOf("Work")
                        .row("Field", "Operation", "Machine", "Seed", "Herbicide", "Dose (L/ha)")
                        .row("Piece", "spraying", "Boom", "Wheat C2", "Herbicide A", 2))
                .rows(Jobs.LIST);
        assertThat(both.text(Jobs.PRODUCT, 0)).isEqualTo("Herbicide A");
        ListRows figures = find(new SheetOf("Work")
                        .row("Field", "Operation", "Machine", "Seed")
                        .row("Piece", "drilling", "Tine", 175))
                .rows(Jobs.LIST);
        assertThat(figures.isFilled(Jobs.PRODUCT, 0)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Pints/acre", "Pints per acre", "Quarts/acre", "Pounds/acre", "lbs/acre", "Ounces per acre"})
    void wordsSpeltOutAreADoseAsTheirShortFormsAre(String header) {
        FoundLists found = find(
                new SheetOf("Jobs")
                        .row("Field", "Operation", "Sprayer", "Gals/acre", "Product", header)
                        .row("Croft", "spraying", "Old", 20, "Herbicide A", 3),
                new SheetOf("Assumptions").row("Item", "Value").row("Customary units", "UK"));
        assertThat(found.rows(Jobs.LIST).number(Jobs.DOSE, 0)).isEqualTo(3);
        assertThat(found.rows(Jobs.LIST).number(Jobs.WATER_VOLUME, 0)).isEqualTo(20);
    }

    @Test
    void aBroadcastRateIsADoseBesideAProductAndIsAskedWithoutOne() {
        FoundLists product = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", "Broadcast rate", "Rate unit", "Band width (cm)")
                .row("Low", "spraying", "Planter", "Herbicide A", 2, "L/ha", 25));
        assertThat(product.rows(Jobs.LIST).number(Jobs.DOSE, 0)).isEqualTo(2);
        FoundLists open = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", "Broadcast rate (L/ha)", "Band width (cm)")
                .row("Low", "spraying", "Planter", "Herbicide A", 2, 25));
        assertThat(open.rows(Jobs.LIST).gives(Jobs.WATER_VOLUME, 0)).isFalse();
        assertThat(messages(open, Severity.CAUTION))
                .anyMatch(told -> told.contains("\"Broadcast rate (L/ha)\" could mean Water volume or Dose"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Seeds/m2", "Seeds per m2", "Plants per sq m", "Target plants/m2", "Grains/m²"})
    void seedsThatAreCountedAreToldToBeWeighed(String header) {
        FoundLists found = find(new SheetOf("Drilling")
                .row("Field", "Operation", "Drill", "Seed", header)
                .row("Piece", "drilling", "Tine", "Wheat C2", 350));
        assertThat(found.rows(Jobs.LIST).gives(Jobs.DOSE, 0)).isFalse();
        assertThat(messages(found, Severity.CAUTION)).singleElement().satisfies(told -> assertThat(told)
                .startsWith("\"" + header + "\" is not read as the Dose")
                .contains("Seed rate (kg/ha)"));
    }

    @ParameterizedTest
    @CsvSource({
        "Population (seeds/ac), kg/ac, seeds/ac",
        "Seeds per acre, kg/ac, seeds/ac",
        "Plant population/ha, kg/ha, seeds/ha",
        "Population, kg/ha, seeds/m2"
    })
    void seedsThatAreCountedOnAnAcreOrAHectareToo(String header, String weight, String count) {
        FoundLists found = find(new SheetOf("Planting")
                .row("Field", "Operation", "Planter", "Product", header)
                .row("Piece", "planting", "Twelve rows", "Maize seed", 34000));
        assertThat(found.rows(Jobs.LIST).gives(Jobs.DOSE, 0)).isFalse();
        assertThat(messages(found, Severity.CAUTION)).singleElement().satisfies(told -> assertThat(told)
                .startsWith("\"" + header + "\" is not read as the Dose")
                .contains("Seed rate (" + weight + "): " + count + " ×"));
    }

    /** What a field is to have of a nutrient is no amount of a product, and once told for all of them. */
    @Test
    void nutrientsInNoProductAreToldWithTheWayToWriteThem() {
        FoundLists found = find(new SheetOf("Spreading")
                .row("Field", "Operation", "Machine", "N", "P (kg/ha)", "K kg/ha")
                .row("Piece", "spreading", "Spinner", 100, 20, 30));
        assertThat(messages(found, Severity.CAUTION)).singleElement().satisfies(told -> assertThat(told)
                .startsWith("\"N\", \"P (kg/ha)\", \"K kg/ha\" are not read, for a nutrient is no product.")
                .contains("kg P2O5/ha"));
        FoundLists dosed = find(new SheetOf("Spreading")
                .row("Field", "Operation", "Machine", "Product", "N %", "Dose (kg/ha)")
                .row("Piece", "spreading", "Spinner", "Granules", 27, 200));
        assertThat(messages(dosed, Severity.CAUTION)).noneMatch(told -> told.contains("is no product"));
    }

    /** 34,000 seeds an acre of 300 g a thousand are 10.2 kg/ac; 300 plants/m2 of 46 g, 92 % of them up, are 150 kg/ha. */
    @Test
    void aSeedRateInSeedsIsAskedWithTheWayToItsWeight() {
        FoundLists found = find(new SheetOf("Planting")
                .row("Field", "Operation", "Planter", "Product", "Seeding rate (seeds/ac)")
                .row("Piece", "planting", "Twelve rows", "Maize seed", 34000));
        assertThat(found.rows(Jobs.LIST).gives(Jobs.DOSE, 0)).isFalse();
        assertThat(messages(found, Severity.STOP)).singleElement().satisfies(told -> assertThat(told)
                .contains("\"seeds/ac\" counts seeds")
                .contains("seeds/ac × weight of a thousand in g ÷ 1,000,000"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Seed rate (kg/ha)", "Seed cost/ha", "Plants", "Seed (kg/ha)", "Area m2"})
    void whatIsNoCountOfSeedsIsNotToldToBeOne(String header) {
        FoundLists found = find(new SheetOf("Drilling")
                .row("Field", "Operation", "Drill", "Product", header)
                .row("Piece", "drilling", "Tine", "Wheat C2", 175));
        assertThat(messages(found, Severity.CAUTION)).noneMatch(told -> told.contains("drilled by weight"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Liveweight (kg)", "Live weight (kg)", "LW kg", "Liveweight", "Of liveweight", "Lw, start"})
    void whatAnAnimalWeighsIsNotWhatItEats(String header) {
        FoundLists found = find(new SheetOf("Herds")
                .row("Group", "Head", header, "Intake (kg DM/day)", "Days")
                .row("Beef", 40, 550, 11, 150));
        assertThat(found.rows(Herds.LIST).number(Herds.INTAKE, 0)).isEqualTo(11);
        assertThat(messages(found, Severity.STOP)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"% of liveweight", "DMI (% LW)", "% LW"})
    void aShareOfItIsAsked(String header) {
        FoundLists found = find(new SheetOf("Herds")
                .row("Group", "Head", "Liveweight (kg)", header, "Days")
                .row("Beef", 40, 550, 2.2, 150));
        assertThat(messages(found, Severity.STOP)).singleElement().satisfies(told -> assertThat(told)
                .contains("A share of liveweight needs the liveweight: write kg DM/day"));
    }
}
