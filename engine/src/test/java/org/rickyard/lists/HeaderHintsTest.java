package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.quantity.Units;

/** Headers that say too little by themselves, read with what stands beside and under them. */
class HeaderHintsTest {
    private static FoundLists find(SheetOf... sheets) {
        return ListFinder.find(List.of(sheets));
    }

    private static List<String> said(FoundLists found) {
        return found.findings().stream()
                .map(finding -> finding.severity() + " "
                        + finding.cell().map(CellAddress::toString).orElse("-") + " " + finding.message())
                .toList();
    }

    private static SheetOf flat(String rate) {
        return new SheetOf("Spray program")
                .row("Field", "Crop", "Acres", "Sprayer", "Product", rate, "Unit", "Carrier (gal(US)/ac)")
                .row("North 40", "Corn", 38.5, "Boom", "Herbicide A", 32, "fl oz(US)/ac", 15)
                .row("North 40", "Corn", 38.5, "Boom", "AMS", 2.5, "lb/ac", 15)
                .row("North 40", "Corn", 38.5, "Boom", "Surfactant", 0.25, "% v/v", 15);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rate", "Dose"})
    void aUnitOverUnitsOfDosesIsNoHolding(String rate) {
        FoundLists found = find(flat(rate));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.size()).isEqualTo(1);
        assertThat(fields.text(Fields.HOLDING, 0)).isEmpty();
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.HOLDING, 0)).isEmpty();
        assertThat(jobs.number(Jobs.DOSE, 0)).isEqualTo(32);
        assertThat(jobs.unit(Jobs.DOSE, 0).orElseThrow()).hasToString("fl oz(US)/ac");
        assertThat(jobs.unit(Jobs.DOSE, 2).orElseThrow()).hasToString("%");
        assertThat(said(found))
                .contains(
                        "NOTE 'Spray program'!G1 \"Unit\" is read as Dose unit of Jobs: its cells are units, not names of"
                                + " farms.");
    }

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
    void unitsThatDifferFromRowToRowAreAsked() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area", "Unit", "Crop")
                .row("A", 10, "ac", "Grass")
                .row("B", 20, "ha", "Grass"));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(said(found))
                .anyMatch(line -> line.startsWith("STOP Fields!B1 The unit of \"Area\" is not certain. \"ac or ha\""));
    }

    @Test
    void aRateBesideTheWaterVolumeIsTheDose() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", "Rate (L/ha)", "Water rate (L/ha)")
                .row("A", "spray", "Sprayer", "Fungicide", 1.5, 200));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.DOSE, 0)).isEqualTo(1.5);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(200);
        assertThat(said(found))
                .containsExactly(
                        "NOTE Jobs!E1 \"Rate (L/ha)\" is read as the Dose of Jobs, since \"Product\" and \"Water"
                                + " rate (L/ha)\" stand beside it. If it is something else, rename it.");
    }

    @Test
    void aRateBesideAProductAloneIsAskedAsBefore() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", "Rate (L/ha)")
                .row("A", "spray", "Sprayer", "Fungicide", 200));
        assertThat(found.rows(Jobs.LIST).state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @Test
    void aRateInAMixWithItsUnitIsTheDose() {
        FoundLists found = find(new SheetOf("Tank mixes")
                .row("Mix", "Product", "Rate", "Unit")
                .row("T1", "Fungicide", 1, "l/ha")
                .row("T1", "Wetter", 200, "ml/100 l"));
        ListRows mixes = found.rows(Mixes.LIST);
        assertThat(mixes.number(Mixes.DOSE, 1)).isEqualTo(200);
        assertThat(mixes.unit(Mixes.DOSE, 1).orElseThrow()).hasToString("ml/100 L");
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
    void aNozzleOverSizesIsTheSize() {
        FoundLists found = find(new SheetOf("Sprayers")
                .row("Sprayer", "Type", "Boom (m)", "Nozzle")
                .row("A", "sprayer", 24, "ISO 03 blue")
                .row("B", "sprayer", 12, 11004)
                .row("C", "sprayer", 12, "F110 025"));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.NOZZLE_SIZE, 0)).isEqualTo(3);
        assertThat(machines.number(Machines.NOZZLE_SIZE, 1)).isEqualTo(4);
        assertThat(machines.number(Machines.NOZZLE_SIZE, 2)).isEqualTo(2.5);
        assertThat(said(found))
                .containsExactly(
                        "NOTE Sprayers!D1 \"Nozzle\" is read as the Nozzle size of Machines: its cells are written"
                                + " as sizes are.");
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 48})
    void aNozzleOverPlainNumbersIsAskedAsBefore(int number) {
        FoundLists found = find(new SheetOf("Sprayers")
                .row("Sprayer", "Type", "Boom (m)", "Nozzle")
                .row("A", "sprayer", 24, number));
        assertThat(found.rows(Machines.LIST).state(Machines.NOZZLE_SIZE, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(found.rows(Machines.LIST).state(Machines.NOZZLES, 0)).isEqualTo(ListRows.State.ASKED);
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
    void theAreaSprayedIsTheAreaWhereNoOtherIs() {
        FoundLists found = find(new SheetOf("Spray records")
                .row("Date", "Field", "Area sprayed (ac)", "Sprayer", "Water (L/ha)")
                .row(46000, "Top", 14, "SP24", 200));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(14);
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        FoundLists both = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Area sprayed (ha)")
                .row("Top", 6, 5));
        assertThat(both.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(6);
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
    void productsBesideEachOtherAreToldAsUnread() {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Area (ha)").row("Top", 6),
                new SheetOf("Jobs")
                        .row(
                                "Field",
                                "Operation",
                                "Machine",
                                "Herbicide 1",
                                "Rate 1 (l/ha)",
                                "Fungicide 1",
                                "Rate 2 (l/ha)")
                        .row("Top", "spray", "SP24", "A", 1, "B", 2));
        assertThat(found.findings())
                .filteredOn(finding -> finding.severity() == Severity.CAUTION)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.cell().orElseThrow()).hasToString("Jobs!D1");
                    assertThat(finding.message())
                            .isEqualTo(
                                    "\"Herbicide 1\" and \"Fungicide 1\" stand beside each other in one row and are not read."
                                            + " Write one row for each product, with columns Product, Dose and Dose unit: rows of"
                                            + " one job, field and machine are one tank mix.");
                });
    }

    @Test
    void productsBesideFieldsAreNoProductList() {
        FoundLists alone = find(new SheetOf("Spray plan")
                .row("Field", "Product", "Dose (L/ha)", "Water (L/ha)")
                .row("A", "Herbicide", 2, 200)
                .row("B", "Herbicide", 2, 200));
        assertThat(alone.rows(Products.LIST).size()).isZero();
        assertThat(said(alone))
                .containsExactly(
                        "STOP 'Spray plan'!A1 This row looks like the header of the list Jobs, but it has no column"
                                + " Machine, so nothing of it is read. Add the column, or name it in a sheet Layout (List, Column,"
                                + " Header in this workbook, Unit).");
        FoundLists flat = find(new SheetOf("Spraying")
                .row("Field", "Area (ha)", "Product", "Dose (L/ha)", "Water volume (L/ha)")
                .row("A", 10, "Herbicide", 2, 200)
                .row("B", 5, "Herbicide", 2, 200));
        assertThat(flat.rows(Products.LIST).size()).isZero();
        assertThat(flat.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(said(flat))
                .containsExactly("CAUTION Spraying!A1 These fields have work beside them (\"Product\", \"Dose (L/ha)\","
                        + " \"Water volume (L/ha)\") but no column Machine, so they are read as fields alone and nothing of"
                        + " the work is worked out. Add a column Machine with names from the machine list.");
    }

    @Test
    void aProductListMayStillTouchAFieldList() {
        FoundLists found = find(new SheetOf("Sheet1")
                .row("Field", "Area (ha)", "Product", "Unit", "Dose (L/ha)", "Pack size")
                .row("A", 10, "Herbicide", "L", 2, 5));
        assertThat(found.rows(Products.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
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
    void acresRoodsAndPerchesAreReckonedForTheReader() {
        FoundLists found = find(new SheetOf("Fields").row("Field", "Acres").row("A", "12a 2r 20p"));
        assertThat(found.findings()).singleElement().satisfies(finding -> assertThat(finding.message())
                .endsWith(" \"12a 2r 20p\" is 12.625 ac: write the figure 12.625 alone."));
    }

    @Test
    void moneyForAPackIsAPriceAndNoPack() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Pack size (L)", "£/pack")
                .row("Fungicide", "L", 5, 160));
        ListRows products = found.rows(Products.LIST);
        assertThat(products.number(Products.PACK_SIZE, 0)).isEqualTo(5);
        assertThat(products.number(Products.PRICE, 0)).isEqualTo(160);
        assertThat(products.unit(Products.PRICE, 0)).hasValue(Units.MONEY_UNIT);
        FoundLists alone = find(
                new SheetOf("Products").row("Product", "Unit", "$/L", "Stock").row("Fungicide", "L", 32, 4));
        assertThat(alone.rows(Products.LIST).has(Products.PACK_SIZE)).isFalse();
        assertThat(alone.rows(Products.LIST).number(Products.PRICE, 0)).isEqualTo(32);
        FoundLists machines =
                find(new SheetOf("Machines").row("Machine", "Type", "£/ha").row("Mower", "mower", 30));
        assertThat(machines.places().get(0).unrecognised()).containsExactly("£/ha");
    }

    @Test
    void workingDaysAreNoHours() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Working days")
                .row("A", "mow", "Mower", 10));
        assertThat(found.rows(Jobs.LIST).has(Jobs.HOURS_PER_DAY)).isFalse();
        FoundLists hours = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Working day (h)")
                .row("A", "mow", "Mower", 10));
        assertThat(hours.rows(Jobs.LIST).number(Jobs.HOURS_PER_DAY, 0)).isEqualTo(10);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"GPA (US)", "gal/ac (US)", "Water rate gal/ac US", "Carrier (gal/ac US)", "Volume (US gal/ac)"})
    void aCountryBehindAUnitSaysWhose(String header) {
        FoundLists found = find(
                new SheetOf("Jobs").row("Field", "Operation", "Machine", header).row("A", "spray", "Sprayer", 15));
        assertThat(found.rows(Jobs.LIST).unit(Jobs.WATER_VOLUME, 0))
                .hasValueSatisfying(unit -> assertThat(unit.convert(15, Units.L_PER_HA))
                        // 15 US gal/ac, a gallon of 9.353956 L/ha (reference spraying, section 12).
                        .isCloseTo(140.309, org.assertj.core.api.Assertions.within(0.001)));
        assertThat(found.findings()).isEmpty();
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
    void passesAreToldAsUnread() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "No. of passes")
                .row("A", "mow", "Mower", 2));
        assertThat(said(found))
                .containsExactly(
                        "CAUTION Jobs!D1 \"No. of passes\" is not read: each row of Jobs is reckoned as one pass."
                                + " Write a row for each pass.");
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
                                + " they are reckoned as of none. A name stands for its own row only, in a merged cell for the"
                                + " first: write it in every row.");
    }

    @Test
    void bagsAndWeightInVolumeAreDoses() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", "Dose", "Dose unit", "Water (L/ha)")
                .row("A", "spray", "S", "Powder", 2, "bags/ha", 200)
                .row("A", "spray", "S", "Salt", 0.25, "% w/v", 200));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.productUnit(Jobs.DOSE, 0)).hasValue("tablet");
        assertThat(jobs.productUnit(Jobs.DOSE, 1)).hasValue("kg");
        // A quarter of a per cent is 0.25 kg in 100 L.
        assertThat(jobs.unit(Jobs.DOSE, 1).orElseThrow().convert(0.25, Units.CONCENTRATION))
                .isCloseTo(0.0025, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(found.findings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Acreage",
                "Statute acres",
                "Acres treated",
                "Acres sprayed",
                "Cropped acres",
                "Net acres",
                "Tillable acres",
                "Planted (ac)",
                "Net (acres)"
            })
    void acresAreAcresWhereverTheWordStands(String header) {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Crop", header).row("North 40", "Corn", 38.5));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(38.5);
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(found.findings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Cropped ha", "Hectarage", "Hectares treated", "Net ha"})
    void hectaresAreHectares(String header) {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Crop", header).row("Top", "Corn", 38.5));
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.HA);
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

    @Test
    void aMappedAreaBesideTheAreaIsLeftAlone() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Mapped area (ha)")
                .row("Top", 38.5, 40));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(38.5);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aRateOfAMixThatSaysItsUnitIsTheDose() {
        FoundLists found = find(
                new SheetOf("Tank mixes").row("Mix", "Product", "Rate (L/ha)").row("T1", "Fungicide", 1));
        assertThat(found.rows(Mixes.LIST).number(Mixes.DOSE, 0)).isEqualTo(1);
        FoundLists bare =
                find(new SheetOf("Tank mixes").row("Mix", "Product", "Rate").row("T1", "Fungicide", 1));
        assertThat(bare.rows(Mixes.LIST).state(Mixes.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @ParameterizedTest
    @CsvSource({
        "Weeks, 26, 182",
        "Weeks fed, 26, 182",
        "Months, 6, 182.625",
        "Winter months, 6, 182.625",
        "Feeding months, 6, 182.625",
        "Months housed, 6, 182.625",
        "Winter days, 180, 180",
        "Feeding period, 180, 180",
        "Winter months (days), 180, 180"
    })
    void aPeriodIsInWhatItsNameSays(String header, double typed, double days) {
        ListRows herds = find(new SheetOf("Herds")
                        .row("Group", "Head", "Intake (kg DM/day)", header)
                        .row("Cows", 100, 10, typed))
                .rows(Herds.LIST);
        assertThat(herds.unit(Herds.DAYS, 0).orElse(Units.D).convert(herds.number(Herds.DAYS, 0), Units.D))
                .isEqualTo(days);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rate (£/ha)", "Dose (£/ha)", "Rate £/ac"})
    void whatAProductCostsIsNoDose(String header) {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", header, "Water volume (L/ha)")
                .row("Long Ground", "spraying", "Sprayer", "Alpha", 20, 100));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.PRODUCT, 0)).isEqualTo("Alpha");
        assertThat(jobs.state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.NO_COLUMN);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(100);
        assertThat(found.places().get(0).unrecognised()).containsExactly(header);
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

    @Test
    void fitDaysAreAShareOrACountAndAskedWhereNothingSaysWhich() {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Area (ha)").row("Top", 6),
                new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine", "Fit days")
                        .row("Top", "mow", "M", 12),
                new SheetOf("More jobs")
                        .row("Field", "Operation", "Machine", "Suitable days (%)")
                        .row("Top", "ted", "T", 60));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.state(Jobs.WORKABLE_DAYS, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(jobs.state(Jobs.DAYS_AVAILABLE, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(jobs.number(Jobs.WORKABLE_DAYS, 1)).isEqualTo(60);
        assertThat(said(found)).anySatisfy(text -> assertThat(text)
                .contains("\"Fit days\" could mean Workable days or Days available of Jobs"));
    }
}
