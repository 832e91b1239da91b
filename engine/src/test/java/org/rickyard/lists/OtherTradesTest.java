package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.said;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.quantity.Units;

/** How contractors, growers, rings and spray planners of several countries head their columns: common practice. */
class OtherTradesTest {
    /** Unread, each job on "all" was work on everybody's fields. */
    @ParameterizedTest
    @ValueSource(strings = {"Farmer", "Grower", "Member", "Customer name", "Property"})
    void whoseFieldsTheyAreIsTheHolding(String header) {
        FoundLists found =
                find(new SheetOf("Fields").row(header, "Field", "Area (ac)").row("Hill", "A", 10));
        assertThat(found.rows(Fields.LIST).text(Fields.HOLDING, 0)).isEqualTo("Hill");
    }

    /** Both were asked about, and neither used, where the farm alone had been read. */
    @ParameterizedTest
    @ValueSource(strings = {"Farmer", "Grower", "Member name", "Customer name", "Property", "Estate"})
    void besideAFarmTheyAreNot(String header) {
        FoundLists found = find(new SheetOf("Fields")
                .row(header, "Farm", "Field", "Area (ac)")
                .row("Reed", "Hill", "A", 10)
                .row("Reed", "Dale", "A", 12));
        assertThat(found.rows(Fields.LIST).text(Fields.HOLDING, 1)).isEqualTo("Dale");
        assertThat(said(found)).noneMatch(sentence -> sentence.contains("could all be"));
    }

    @Test
    void aProgrammeByTheCropIsWork() {
        FoundLists found = find(new SheetOf("Programme")
                .row("Timing", "Crop", "Product", "Dose", "Water l/ha", "Date", "Sprayer")
                .row("T1", "Wheat", "Fungicide C", "1 l/ha", 200, null, "Sprayer 24 m"));
        assertThat(found.rows(Jobs.LIST).text(Jobs.FIELD, 0)).isEqualTo("Wheat");
        assertThat(found.rows(Jobs.LIST).text(Jobs.JOB, 0)).isEqualTo("T1");
        assertThat(found.rows(Jobs.LIST).number(Jobs.WATER_VOLUME, 0)).isEqualTo(200);
    }

    @Test
    void theCropBesideABlockIsNotWhereItIsDone() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Block", "Crop", "Operation", "Machine")
                .row("Hill", "Apples", "spray", "Mister"));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.BLOCK, 0)).isEqualTo("Hill");
        assertThat(jobs.state(Jobs.FIELD, 0)).isEqualTo(ListRows.State.NO_COLUMN);
    }

    /** Unread, nine tons an acre were nine tonnes a hectare. */
    @Test
    void aColumnCalledTheUnitOfAnotherIsItsUnit() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area (ac)", "Yield", "Yield unit", "Yield basis")
                .row("A", 10, 9, "t/ac", "as carted"));
        assertThat(found.rows(Fields.LIST).unit(Fields.YIELD, 0))
                .hasValueSatisfying(unit ->
                        assertThat(unit.isSameScale(Units.T.over(Units.AC))).isTrue());
        assertThat(said(found)).containsExactly("NOTE Fields!D1 \"Yield unit\" is read as the unit of \"Yield\".");
    }

    @Test
    void whateverNameOfTheColumnItGoesBy() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Working width", "Width unit", "Speed", "Speed unit")
                .row("Mower", "mower", 10, "ft", 8, "mph"));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.unit(Machines.WORKING_WIDTH, 0)).contains(Units.FT);
        assertThat(machines.unit(Machines.SPEED, 0)).contains(Units.MPH);
    }

    /** Filled in afterwards, they were hectares in the grid. */
    @Test
    void figuresYetToBeTypedAreInTheUnitBesideThem() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area", "Unit", "Crop")
                .row("A", null, "ac", "Grass")
                .row("B", "12.5", "ac", "Grass"));
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).contains(Units.AC);
    }

    @Test
    void rowsInTwoUnitsAreAskedAboutByNameAndWithoutWhatStandsInTheNextList() {
        FoundLists found = find(new SheetOf("Farm book")
                .row("Field", "Area", "Unit")
                .row("A", 6, "ac")
                .row("B", 5, "ha")
                .row()
                .row("Machine", "Type", "Width", "Speed")
                .row(null, null, "ft", "mph")
                .row("Mower", "mower", 10, 7));
        assertThat(said(found))
                .contains(
                        "STOP 'Farm book'!B1 The unit of \"Area\" is not certain. Its rows are in ac or ha: turn them into"
                                + " one of these, or give each a column of its own, Area (ac) and Area (ha). Until then its cells"
                                + " are not used.");
    }

    @Test
    void aRateOverDosesIsTheDoseOfAMix() {
        FoundLists found = find(new SheetOf("Mixes")
                .row("Mix", "Chemical", "Rate", "Order")
                .row("Knockdown", "Herbicide A", "1.8 L/ha", 2)
                .row("Knockdown", "Wetter E", "0.2%", 3));
        assertThat(found.rows(Mixes.LIST).number(Mixes.DOSE, 0)).isEqualTo(1.8);
        assertThat(found.findings()).noneMatch(finding -> finding.severity() == Finding.Severity.STOP);
    }

    /** 150 L/ha may be what is sprayed, and a bare number anything. */
    @ParameterizedTest
    @ValueSource(strings = {"150 L/ha", "2", "as label"})
    void aRateThatMayBeWaterIsStillAsked(String cell) {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", "Rate")
                .row("A", "spray", "Sprayer", "Herbicide A", cell));
        assertThat(found.rows(Jobs.LIST).state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @Test
    void litresOnAHectareBesideAMixAreWater() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Mix", "L/ha")
                .row("A", "spray", "Sprayer", "Knockdown", 70));
        assertThat(found.rows(Jobs.LIST).number(Jobs.WATER_VOLUME, 0)).isEqualTo(70);
        FoundLists open = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Mix", "Product", "L/ha")
                .row("A", "spray", "Sprayer", null, "Herbicide A", 2));
        assertThat(open.rows(Jobs.LIST).state(Jobs.WATER_VOLUME, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"l or kg/ha", "l/ha or kg/ha", "L/kg per ha", "kg or L per ha"})
    void aHeaderForLiquidsAndGranulesLeavesTheUnitToTheRow(String unit) {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Max dose (" + unit + ")")
                .row("Fungicide C", "L", 1)
                .row("Fungicide D", "kg", 0.5));
        ListRows products = found.rows(Products.LIST);
        assertThat(products.productUnit(Products.HIGHEST_DOSE, 0)).hasValue("L");
        assertThat(products.productUnit(Products.HIGHEST_DOSE, 1)).hasValue("kg");
        assertThat(products.number(Products.HIGHEST_DOSE, 1)).isEqualTo(0.5);
        assertThat(found.findings()).noneMatch(finding -> finding.severity() == Finding.Severity.STOP);
    }

    /** "Spray no" on a sheet of sprays was a list of products with the names 1 and 2. */
    @Test
    void oneHeaderBesideTheJobsIsNoListOfItsOwn() {
        FoundLists found = find(new SheetOf("Spray plan")
                .row("Spray no", "Block name", "Operation", "Sprayer", "Product", "Dose (kg/ha)", "Water (l/ha)")
                .row(1, "A", "spray", "Mister", "Sulphur", 4, 300)
                .row(1, "B", "spray", "Mister", "Sulphur", 4, 300));
        assertThat(found.rows(Products.LIST).size()).isZero();
        assertThat(found.rows(Jobs.LIST).text(Jobs.JOB, 0)).isEqualTo("1");
        assertThat(found.rows(Jobs.LIST).size()).isEqualTo(2);
        assertThat(found.findings()).noneMatch(finding -> finding.severity() == Finding.Severity.STOP);
    }

    @Test
    void aFormForOneClampIsToldOnce() {
        FoundLists found = find(new SheetOf("Bunker 1")
                .row("Clamp", "North bunker")
                .row("Kind", "walled")
                .row("Length", 36, "m")
                .row("Floor width", 11, "m")
                .row("Wall height", 2.4, "m")
                .row("Density, dry matter", 215, "kg DM/m3")
                .row("Feed-out rate", 1.8, "m/week"));
        assertThat(said(found)).noneMatch(line -> line.contains("looks like the header of"));
        assertThat(said(found)).anyMatch(line -> line.contains("stand below one another here"));
    }

    @ParameterizedTest
    @CsvSource({"Bales/ac", "Bales per acre", "Loads/ac"})
    void balesAndLoadsAreToldFromAYield(String header) {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Area (ac)", "Crop", header).row("A", 6, "Haylage", 9));
        assertThat(said(found))
                .anyMatch(line -> line.startsWith("CAUTION Fields!D1 \"" + header + "\" is not read as the Yield"));
    }

    @Test
    void whatIsYetToBeSaidIsBlankAndNilIsAskedForAsZero() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Pack size (L)", "Stock (L)")
                .row("Herbicide A", "L", "tbc", "nil"));
        ListRows products = found.rows(Products.LIST);
        assertThat(products.state(Products.PACK_SIZE, 0)).isEqualTo(ListRows.State.BLANK);
        assertThat(said(found)).anyMatch(line -> line.endsWith(" If there is none, write 0."));
    }

    @Test
    void aJobOverOperationsIsWhatIsDone() {
        FoundLists found = find(new SheetOf("Jobs 2026")
                .row("Field", "Job", "Machine", "From", "To")
                .row("F1", "Planting", "Planter", null, null)
                .row("F2", "Harrow", "Harrow", null, null));
        assertThat(found.rows(Jobs.LIST).text(Jobs.OPERATION, 0)).isEqualTo("drilling");
        assertThat(said(found)).anyMatch(line -> line.contains("\"Job\" is taken to be the column Operation"));
    }

    /** A list of jobs known by their names alone says nowhere what is done. */
    @Test
    void aJobOverNamesStaysAName() {
        FoundLists found = find(new SheetOf("Jobs 2026")
                .row("Field", "Job", "Machine", "From", "To")
                .row("F1", "Big one", "Planter", null, null)
                .row("F2", "Small one", "Harrow", null, null));
        assertThat(found.rows(Jobs.LIST).size()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Potato harvester", "sugar beet harvester"})
    void machinesOfNoTypeOfOursAreOthers(String type) {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Width (m)", "Speed (km/h)")
                .row("Mine", type, 2, 5));
        assertThat(found.rows(Machines.LIST).text(Machines.TYPE, 0)).isEqualTo("other");
    }

    /** A column whose name stood a row higher than the others was left out without a word. */
    @Test
    void aNameMergedOverTwoRowsOfHeadersIsOneOfThem() {
        FoundLists found = find(new SheetOf("2026")
                .row("Job sheet")
                .row("Client", "Field details", null, null, "Job details", null)
                .row(null, "Field", "Ha", "Crop", "Operation", "Machine")
                .row("Oak", "North", 8.2, "Grass", "Mow", "Mower")
                .row("Elm", "North", 6, "Grass", "Mow", "Mower"));
        assertThat(found.rows(Fields.LIST).text(Fields.HOLDING, 1)).isEqualTo("Elm");
        assertThat(found.rows(Jobs.LIST).text(Jobs.HOLDING, 1)).isEqualTo("Elm");
    }

    @Test
    void aWordAboveThatAHeaderMeansAlreadyIsNone() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Area", "2026", null, null)
                .row(null, "Field", "Crop", "Area (ha)")
                .row("Hill side", "North", "Grass", 8.2));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(8.2);
    }

    @Test
    void workAsItIsToldInWordsOfEverydayIsWork() {
        FoundLists found = find(new SheetOf("Work to do")
                .row("When", "What", "Where", "With")
                .row("2026-06-20", "Mow", "all", "Mower")
                .row("2026-06-21", "Ted", "all", "Tedder"));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.size()).isEqualTo(2);
        assertThat(jobs.text(Jobs.MACHINE, 1)).isEqualTo("Tedder");
        assertThat(jobs.state(Jobs.EARLIEST, 1)).isEqualTo(ListRows.State.READ_FROM_TEXT);
    }

    @Test
    void animalsAreWhoEatsOrHowMany() {
        ListRows kinds = find(new SheetOf("Feed")
                        .row("Animals", "Number", "Tonnes/month", "Months", "DM %")
                        .row("Suckler cows", 30, 1.4, 5, 25))
                .rows(Herds.LIST);
        assertThat(kinds.text(Herds.GROUP, 0)).isEqualTo("Suckler cows");
        assertThat(kinds.number(Herds.HEAD, 0)).isEqualTo(30);
        ListRows counts = find(new SheetOf("Feed")
                        .row("Group", "Animals", "Intake (kg DM/day)", "Days")
                        .row("Cows", 30, 10, 150))
                .rows(Herds.LIST);
        assertThat(counts.number(Herds.HEAD, 0)).isEqualTo(30);
    }

    @ParameterizedTest
    @CsvSource({"T0, T1", "T1 product, T2 product", "T1 fungicide, T2 fungicide"})
    void timingsBesideEachOtherAreToldAsUnread(String one, String other) {
        FoundLists found = find(new SheetOf("Wheat")
                .row("Field", "Area (ha)", "Sprayer", "Water (L/ha)", one, other)
                .row("A", 14, "Trailed", 200, "Fungicide C", "Fungicide D"));
        assertThat(said(found))
                .anyMatch(
                        line -> line.startsWith("CAUTION Wheat!E1 \"" + one + "\" and \"" + other + "\" stand beside"));
    }

    @ParameterizedTest
    @CsvSource({
        "twin disc spreader, fertiliser spreader",
        "pneumatic spreader, fertiliser spreader",
        "umbilical dribble bar, slurry tanker",
        "trailing shoe, slurry tanker",
        "FYM spreader, muck spreader"
    })
    void spreadersAreCalledByHowTheySpread(String typed, String type) {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Width (m)", "Turning", "Charge", "Charge unit")
                .row(null, null, null, "sec", null, null)
                .row("X", typed, 12, 20, 90, "EUR/h"));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.text(Machines.TYPE, 0)).isEqualTo(type);
        assertThat(machines.number(Machines.TURN_TIME, 0)).isEqualTo(20);
        assertThat(machines.text(Machines.CHARGE_UNIT, 0)).isEqualTo("h");
    }

    @ParameterizedTest
    @CsvSource({"Bag kg, 600", "Big bag (kg), 600", "Sack weight (kg), 600"})
    void aBagOfSoManyKilogramsIsThePack(String header, double kilograms) {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", header, "Price £/t")
                .row("Nitrogen 34", "kg", 600, 360));
        assertThat(found.rows(Products.LIST).number(Products.PACK_SIZE, 0)).isEqualTo(kilograms);
        // Pounds for a bag are no weight of it.
        found = find(new SheetOf("Products").row("Product", "Unit", "Bag £").row("Nitrogen 34", "kg", 216));
        assertThat(found.rows(Products.LIST).gives(Products.PACK_SIZE, 0)).isFalse();
    }

    @Test
    void passesTapsAndDaysOfTreatmentAreKnown() {
        ListRows fields = find(new SheetOf("Fields")
                        .row("Field", "Area (ac)", "Pass length (ft)", "Dist to water tap (miles)")
                        .row("A", 20, 1000, 0.5))
                .rows(Fields.LIST);
        assertThat(fields.number(Fields.RUN_LENGTH, 0)).isEqualTo(1000);
        assertThat(fields.number(Fields.DISTANCE_TO_FILL_POINT, 0)).isEqualTo(0.5);
        ListRows jobs = find(new SheetOf("Treatments")
                        .row("Field", "Operation", "Sprayer", "Product", "Dose (L/ha)", "Treated on")
                        .row("A", "spraying", "S", "Herbicide", 1, "2026-05-10"))
                .rows(Jobs.LIST);
        assertThat(jobs.isFilled(Jobs.EARLIEST, 0)).isTrue();
    }
}
