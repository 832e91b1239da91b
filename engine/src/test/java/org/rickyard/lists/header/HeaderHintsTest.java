package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Herds;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NozzleTest;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.Units;

/** Headers of machines, charges and holdings that say too little by themselves, read with what stands beside and under them. */
class HeaderHintsTest {
    @Test
    void aUnitOverNamesOfFarmsIsTheHolding() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Unit", "Field", "Area (ha)")
                .row("Home Farm", "A", 4)
                .row("Hill", "A", 6));
        assertThat(found.rows(Fields.LIST).text(Fields.HOLDING, 1)).isEqualTo("Hill");
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aUnitBesideAColumnOfFiguresIsItsUnit() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area", "Unit", "Crop")
                .row("A", 10, "ac", "Grass")
                .row("B", 20, "ac", "Grass"));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(fields.text(Fields.HOLDING, 0)).isEmpty();
        assertThat(said(found)).containsExactly("NOTE Fields!C1 \"Unit\" is read as the unit of \"Area\".");
        assertThat(found.places().get(0).unrecognised()).isEmpty();
    }

    @Test
    void aRatePerSomethingIsACharge() {
        FoundLists found = find(new SheetOf("Contractors")
                .row("Machine", "Type", "Own/hired", "Rate", "Per", "Includes", "Width (ft)", "Speed (mph)")
                .row("Mower 10 ft", "mower", "Contractor", 21, "acre", "all in", 10, 7));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.CHARGE, 0)).isEqualTo(21);
        assertThat(machines.unit(Machines.CHARGE, 0))
                .hasValueSatisfying(unit -> assertThat(unit.isSameScale(Units.MONEY_UNIT.over(Units.AC)))
                        .isTrue());
        assertThat(machines.state(Machines.OUTPUT, 0)).isEqualTo(ListRows.State.NO_COLUMN);
    }

    @Test
    void aRatePerAreaIsNoSpeedOutputOrChargeOfAMachine() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Width (m)", "Speed (km/h)", "Rate (l/ha)")
                .row("Sprayer", "sprayer", 12, 8, 200));
        assertThat(said(found)).isEmpty();
        assertThat(found.rows(Machines.LIST).state(Machines.OUTPUT, 0)).isEqualTo(ListRows.State.NO_COLUMN);
        assertThat(found.places().get(0).unrecognised()).containsExactly("Rate (l/ha)");
    }

    @Test
    void aMeasuredRateBesideADoseIsTheWaterVolume() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Job", "Field", "Machine", "Rate l/ha", "Product", "Dose")
                .row("T1", "A", "Sprayer", 200, "Herbicide", 2));
        assertThat(found.rows(Jobs.LIST).number(Jobs.WATER_VOLUME, 0)).isEqualTo(200);
        assertThat(found.rows(Jobs.LIST).number(Jobs.DOSE, 0)).isEqualTo(2);
        assertThat(said(found))
                .contains("NOTE Jobs!D1 \"Rate l/ha\" is read as the Water volume of Jobs, since \"Dose\" stands beside"
                        + " it. If it is something else, rename it.");
    }

    @Test
    void aShareInTheMiddleOfAHeaderIsAUnit() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "DM % at harvest")
                .row("A", 4, 34));
        assertThat(found.rows(Fields.LIST).number(Fields.DM_AT_ENSILING, 0)).isEqualTo(34);
        assertThat(found.rows(Fields.LIST).unit(Fields.DM_AT_ENSILING, 0)).hasValue(Units.PERCENT_DM);
        assertThat(said(found)).isEmpty();
    }

    @Test
    void oneRoadSpeedHoldsForBothWays() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Road speed (mph)")
                .row("Sprayer", "sprayer", 15));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.ROAD_SPEED_LADEN, 0)).isEqualTo(15);
        assertThat(machines.number(Machines.ROAD_SPEED_EMPTY, 0)).isEqualTo(15);
        assertThat(machines.unit(Machines.ROAD_SPEED_EMPTY, 0)).hasValue(Units.MPH);
        assertThat(said(found))
                .containsExactly(
                        "NOTE Machines!C1 \"Road speed (mph)\" is read as Road speed laden and as Road speed empty"
                                + " of Machines alike. Where they differ, write a column for each.");
    }

    @Test
    void aRoadSpeedBesideALadenOneIsAskedAsBefore() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Road speed laden (km/h)", "Road speed (km/h)")
                .row("Trailer", "trailer", 20, 30));
        assertThat(found.rows(Machines.LIST).number(Machines.ROAD_SPEED_LADEN, 0))
                .isEqualTo(20);
        assertThat(found.rows(Machines.LIST).state(Machines.ROAD_SPEED_EMPTY, 0))
                .isEqualTo(ListRows.State.ASKED);
    }

    @Test
    void aMachineMayBeAnItemOrADescription() {
        FoundLists found = find(new SheetOf("Machinery costs")
                .row("Item", "Description", "Type", "List price")
                .row(1, "Tractor 180", "tractor", 150000));
        assertThat(found.rows(Machines.LIST).text(Machines.MACHINE, 0)).isEqualTo("Tractor 180");
        FoundLists plain = find(
                new SheetOf("Machinery costs").row("Item", "Type", "List price").row("Mower", "mower", 9000));
        assertThat(plain.rows(Machines.LIST).text(Machines.MACHINE, 0)).isEqualTo("Mower");
        FoundLists invoice = find(new SheetOf("Sheet1")
                .row("Description", "Category", "Qty", "Price")
                .row("Gate hinges", "ironmongery", 4, 12));
        assertThat(invoice.rows(Machines.LIST).size()).isZero();
        assertThat(invoice.findings()).isEmpty();
    }

    @Test
    void aBlockOfAnOrchardIsItsField() {
        FoundLists found = find(new SheetOf("Blocks")
                .row("Block", "Crop", "Area (ha)", "Row spacing (m)", "Tree height (m)")
                .row("B1", "Apple", 2.4, 3.5, 2.8));
        assertThat(found.rows(Fields.LIST).text(Fields.FIELD, 0)).isEqualTo("B1");
        assertThat(said(found))
                .containsExactly(
                        "NOTE Blocks!A1 \"Block\" is read as the Field of Fields, since nothing else names its rows.");
        FoundLists both = find(new SheetOf("Fields")
                .row("Block", "Field", "Area (ha)", "Row spacing (m)")
                .row("North", "B1", 2.4, 3.5));
        assertThat(both.rows(Fields.LIST).text(Fields.FIELD, 0)).isEqualTo("B1");
        assertThat(both.rows(Fields.LIST).text(Fields.BLOCK, 0)).isEqualTo("North");
        FoundLists sums =
                find(new SheetOf("Sheet1").row("Block", "Area (ha)", "Crop").row("North", 20, "Wheat"));
        assertThat(sums.rows(Fields.LIST).size()).isZero();
    }

    @Test
    void aSwathOrFillPointWithItsUnitIsMeasured() {
        FoundLists found = find(
                new SheetOf("Machines").row("Machine", "Type", "Swath (m)").row("KS", "knapsack", 1),
                new SheetOf("Fields")
                        .row("Field", "Area (ha)", "Fill point (km)")
                        .row("A", 4, 0.5));
        assertThat(found.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0)).isEqualTo(1);
        assertThat(found.rows(Fields.LIST).number(Fields.DISTANCE_TO_FILL_POINT, 0))
                .isEqualTo(0.5);
        assertThat(found.findings()).isEmpty();
        FoundLists named = find(
                new SheetOf("Fields").row("Field", "Area (ha)", "Fill point").row("A", 4, "Yard tap"));
        assertThat(named.rows(Fields.LIST).has(Fields.DISTANCE_TO_FILL_POINT)).isFalse();
    }

    @Test
    void whatLabourCostsIsNoNumberOfPeople() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Labour £/hr", "Fuel £/l")
                .row("Mower", "mower", 15, 0.8));
        assertThat(found.rows(Machines.LIST).has(Machines.CREW)).isFalse();
        assertThat(found.rows(Machines.LIST).has(Machines.FUEL)).isFalse();
        assertThat(found.findings()).isEmpty();
        assertThat(found.places().get(0).unrecognised()).containsExactly("Labour £/hr", "Fuel £/l");
    }

    @Test
    void unitsOverNumbersCountMachines() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Units")
                .row("Trailer", "trailer", 3)
                .row("Mower", "mower", 1));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.NUMBER, 0)).isEqualTo(3);
        assertThat(machines.text(Machines.HOLDING, 0)).isEmpty();
        assertThat(said(found))
                .containsExactly(
                        "NOTE Machines!C1 \"Units\" is read as the Number of Machines: its cells are numbers, not"
                                + " names of farms.");
    }

    @Test
    void moreWordsOfAdvisersAreUnderstoodWhereNoneBetterStands() {
        ListRows machines = find(new SheetOf("Machines")
                        .row(
                                "Machine",
                                "Type",
                                "Boom length (ft)",
                                "Average speed (mph)",
                                "Min psi",
                                "Max psi",
                                "# nozzles")
                        .row("S", "sprayer", 90, 10, 30, 60, 54))
                .rows(Machines.LIST);
        assertThat(machines.unit(Machines.WORKING_WIDTH, 0)).hasValue(Units.FT);
        assertThat(machines.unit(Machines.SPEED, 0)).hasValue(Units.MPH);
        assertThat(machines.unit(Machines.LOWEST_PRESSURE, 0)).hasValue(Units.PSI);
        assertThat(machines.number(Machines.HIGHEST_PRESSURE, 0)).isEqualTo(60);
        assertThat(machines.number(Machines.NOZZLES, 0)).isEqualTo(54);
        ListRows jobs = find(new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine", "Window start", "Window end")
                        .row("A", "mow", "Mower", 46000, 46010))
                .rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.LATEST, 0)).isEqualTo(46010);
        ListRows test = find(new SheetOf("Nozzle test")
                        .row("Sprayer", "Nozzle", "ml/min", "psi", "Chart (L/min)")
                        .row("S", "1", 1210, 40, 1.2))
                .rows(NozzleTest.LIST);
        assertThat(test.unit(NozzleTest.PRESSURE, 0)).hasValue(Units.PSI);
        assertThat(test.number(NozzleTest.NEW_FLOW, 0)).isEqualTo(1.2);
        assertThat(test.unit(NozzleTest.FLOW, 0).orElseThrow()).hasToString("ml/min");
    }

    @Test
    void aCostForAnAreaAsksForTheChargeAndLeavesPricesAlone() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Cost per acre", "List price")
                .row("Mower", "mower", 21, 9000));
        assertThat(found.rows(Machines.LIST).number(Machines.LIST_PRICE, 0)).isEqualTo(9000);
        assertThat(found.rows(Machines.LIST).has(Machines.TRADE_IN_VALUE)).isFalse();
        assertThat(said(found))
                .singleElement()
                .asString()
                .startsWith(
                        "CAUTION Machines!C1 The header \"Cost per acre\" may or may not be the Charge of Machines.");
    }

    @Test
    void aHoldingWrittenOnceOverSeveralRowsIsTold() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Farm", "Field", "Area (ha)")
                .row("Elm", "A", 10)
                .row(null, "B", 6)
                .row("Oak", "A", 4)
                .row(null, "C", 3));
        assertThat(said(found))
                .containsExactly(
                        "CAUTION Fields!A3 This field and 1 more have no holding, though a row above has one, so"
                                + " they are reckoned as of none. A name stands for its own row only: write it in every"
                                + " row, or merge the cells that it is for.");
    }

    @Test
    void aCostBesideAChargeLeavesTheChargeAlone() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Charge (£/ha)", "Cost per ha")
                .row("Mower", "mower", 30, 22));
        assertThat(found.rows(Machines.LIST).number(Machines.CHARGE, 0)).isEqualTo(30);
        assertThat(said(found))
                .containsExactly(
                        "NOTE Machines!D1 \"Cost per ha\" is not read: Charge of Machines is taken from another"
                                + " column.");
    }

    @ParameterizedTest
    @CsvSource({
        "Silage per day, DM, true",
        "Intake, DM, true",
        "DM intake, DM, false",
        "Intake (kg DM/day), DM, false",
        "Silage per day (kg fresh/day), DM, false",
        "Intake, Notes, false"
    })
    void anIntakeWithoutAUnitBesideADryMatterIsTold(String intake, String beside, boolean told) {
        FoundLists found = find(new SheetOf("Herds")
                .row("Group", "Head", intake, beside, "Days")
                .row("Cows", 100, 15, 30, 180));
        assertThat(found.rows(Herds.LIST).size()).isEqualTo(1);
        assertThat(said(found).stream()
                        .anyMatch(line -> line.startsWith("CAUTION Herds!C1 ")
                                && line.contains("says no unit and is read as kg DM a day")))
                .isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource({
        "Hp (engine), hp, engine",
        "PTO hp, hp, PTO",
        "HP - PTO, hp, PTO",
        "Engine (hp), hp, engine",
        "Rated hp (engine), hp, engine",
        "kW engine, kW, engine",
        "PS (engine), PS, engine",
        "Power (engine), kW, engine"
    })
    void powerIsInTheUnitThatItsHeaderIsCalledBy(String header, String unit, String basis) {
        FoundLists found =
                find(new SheetOf("Machines").row("Machine", "Type", header).row("Tractor", "tractor", 150));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.POWER, 0)).isEqualTo(150);
        assertThat(machines.unit(Machines.POWER, 0).orElseThrow()).hasToString(unit);
        assertThat(machines.text(Machines.POWER_BASIS, 0)).isEqualTo(basis);
    }

    @Test
    void nozzlesBesideTheirSizeAreTheirNumber() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Width (m)", "Nozzles", "Nozzle")
                .row("Sprayer", "sprayer", 24, 48, "03"));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.NOZZLES, 0)).isEqualTo(48);
        assertThat(machines.number(Machines.NOZZLE_SIZE, 0)).isEqualTo(3);
        assertThat(said(found))
                .anyMatch(finding -> finding.startsWith(
                        "NOTE Machines!D1 \"Nozzles\" is read as the Number of nozzles of Machines, since \"Nozzle\""
                                + " stands beside it."));
    }

    @Test
    void speedsOnTheRoadHireAndHaulAreKnownByTheirUnits() {
        FoundLists found = find(
                new SheetOf("Kit")
                        .row("Machine", "Type", "Payload (t)", "Laden mph", "Empty mph", "Hire £/h")
                        .row("Trailer", "trailer", 12, 12, 18, 25),
                new SheetOf("Land")
                        .row("Field", "Crop", "Area (ha)", "Haul to pit (miles)")
                        .row("Lodge", "grass", 5, 0.8));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.unit(Machines.ROAD_SPEED_LADEN, 0)).hasValue(Units.MPH);
        assertThat(machines.number(Machines.ROAD_SPEED_LADEN, 0)).isEqualTo(12);
        assertThat(machines.number(Machines.ROAD_SPEED_EMPTY, 0)).isEqualTo(18);
        assertThat(machines.number(Machines.CHARGE, 0)).isEqualTo(25);
        assertThat(found.rows(Fields.LIST).number(Fields.DISTANCE_TO_CLAMP, 0)).isEqualTo(0.8);
        assertThat(found.rows(Fields.LIST).unit(Fields.DISTANCE_TO_CLAMP, 0).orElseThrow())
                .hasToString("mile");
    }

    @Test
    void aRefOverTheJobsIsTheirName() {
        FoundLists found = find(new SheetOf("Work list")
                .row("Ref", "Where", "Operation", "Machine", "After")
                .row("S1", "grass", "mow", "Mower", null)
                .row("S2", "grass", "rake", "Rake", "S1"));
        assertThat(found.rows(Jobs.LIST).text(Jobs.JOB, 0)).isEqualTo("S1");
        assertThat(found.rows(Jobs.LIST).text(Jobs.AFTER, 1)).isEqualTo("S1");
        FoundLists named = find(new SheetOf("Work list")
                .row("Ref", "Job", "Where", "Operation", "Machine")
                .row(17, "First cut", "grass", "mow", "Mower"));
        assertThat(named.rows(Jobs.LIST).text(Jobs.JOB, 0)).isEqualTo("First cut");
        // Where nothing comes after anything, it may number the products of one tank mix.
        FoundLists numbered = find(new SheetOf("Work list")
                .row("Ref", "Where", "Operation", "Machine", "Product", "Dose (L/ha)")
                .row("a", "Top", "spray", "Sprayer", "Alpha", 1)
                .row("b", "Top", "spray", "Sprayer", "Beta", 1));
        assertThat(numbered.rows(Jobs.LIST).has(Jobs.JOB)).isFalse();
    }

    /** 1 psi = 0.06894757293168 bar. */
    @ParameterizedTest
    @CsvSource({
        "PSI min, PSI max, 0.06894757293168",
        "Min psi, Max psi, 0.06894757293168",
        "Min bar, Max bar, 1",
        "Bar min, Bar max, 1",
        "Min (bar), Max (bar), 1"
    })
    void theEndsOfANozzlesRangeAreInTheUnitThatTheirHeadersSay(String least, String most, double bar) {
        FoundLists found = find(new SheetOf("Sprayers")
                .row("Sprayer", "Type", "Width (m)", "Nozzle size", "Nozzle type", least, most)
                .row("S1", "sprayer", 24, "04", "air inclusion", 2, 4));
        ListRows machines = found.rows(Machines.LIST);
        for (ColumnSpec end : List.of(Machines.LOWEST_PRESSURE, Machines.HIGHEST_PRESSURE)) {
            double typed = end == Machines.LOWEST_PRESSURE ? 2 : 4;
            assertThat(machines.unit(end, 0).orElseThrow().convert(machines.number(end, 0), Units.BAR))
                    .as(least)
                    .isCloseTo(typed * bar, within(1e-9));
        }
        assertThat(machines.number(Machines.NOZZLE_SIZE, 0))
                .as("of which make it is, is no size")
                .isEqualTo(4);
        assertThat(found.findings()).noneMatch(finding -> finding.message().contains("No unit is written"));
    }
}
