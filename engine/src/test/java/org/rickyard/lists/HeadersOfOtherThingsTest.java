package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;

/** Columns of the adviser's own whose headers begin or end like an input, and are none. */
class HeadersOfOtherThingsTest {
    private static FoundLists jobs(String header, Object cell) {
        return find(new SheetOf("Jobs")
                .row("Job", "Field", "Operation", "Machine", header)
                .row("One", "A", "mowing", "Mower", cell));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Tractor hours", "Work days", "Machine hours", "Field hours", "After hours", "Operation (h)"})
    void aMeasuredFigureIsNoName(String header) {
        FoundLists found = jobs(header, 4);
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.OPERATION, 0)).isEqualTo("mowing");
        assertThat(jobs.text(Jobs.MACHINE, 0)).isEqualTo("Mower");
        assertThat(jobs.text(Jobs.FIELD, 0)).isEqualTo("A");
        assertThat(jobs.has(Jobs.TRACTOR)).isFalse();
        assertThat(jobs.has(Jobs.AFTER)).isFalse();
        assertThat(found.places().get(0).unrecognised()).containsExactly(header);
    }

    @Test
    void aBufferInMetresIsNoCategory() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Dose (L/ha)", "Buffer zone (m)")
                .row("Alpha", "L", 1, 5));
        assertThat(found.rows(Products.LIST).has(Products.BUFFER_CATEGORY)).isFalse();
    }

    @Test
    void aProductCalledByALetterIsNoHeader() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit")
                .row("Product A", "L")
                .row("Product C", "L"));
        assertThat(found.rows(Products.LIST).size()).isEqualTo(2);
    }

    @Test
    void moreLayersAreNoThickerLayer() {
        FoundLists found = find(new SheetOf("Clamps")
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Layers")
                .row("Main", "walled", 40, 12, 3, 20));
        assertThat(found.rows(Clamps.LIST).has(Clamps.LAYER)).isFalse();
        assertThat(found.places().get(0).unrecognised()).containsExactly("Layers");
    }

    @Test
    void threeCutsAreNotTheThirdCut() {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Crop", "Area (ha)", "Cuts").row("A", "grass", 4, 3));
        assertThat(found.rows(Cuts.LIST).size()).isZero();
        assertThat(found.findings()).extracting(Finding::severity).contains(Severity.CAUTION);
        assertThat(found.findings()).extracting(Finding::message).anyMatch(message -> message.contains("cut once"));
    }

    @Test
    void effluentThatRunsOutIsNoTank() {
        FoundLists found = find(new SheetOf("Clamps")
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Effluent (L)")
                .row("Main", "walled", 40, 12, 3, 30000));
        assertThat(found.rows(Clamps.LIST).state(Clamps.EFFLUENT_TANK, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(found.findings()).extracting(Finding::severity).containsExactly(Severity.CAUTION);
    }

    @Test
    void aNumberOfTheRowsCountsNoMachines() {
        FoundLists found = find(new SheetOf("Machines")
                .row("No.", "Machine", "Type", "Number")
                .row(1, "Mower", "mower", 1)
                .row(2, "Trailer", "trailer", 3));
        assertThat(found.rows(Machines.LIST).number(Machines.NUMBER, 1)).isEqualTo(3);
        assertThat(found.findings()).extracting(Finding::severity).containsExactly(Severity.NOTE);
    }

    @Test
    void aLoneNumberThatCountsUpIsAsked() {
        FoundLists found = find(new SheetOf("Machines")
                .row("No.", "Machine", "Type")
                .row(1, "Mower", "mower")
                .row(2, "Trailer", "trailer")
                .row(3, "Rake", "rake"));
        assertThat(found.rows(Machines.LIST).state(Machines.NUMBER, 1)).isEqualTo(ListRows.State.ASKED);
        assertThat(found.findings()).extracting(Finding::severity).containsExactly(Severity.CAUTION);
    }

    @Test
    void aLoneNumberOfOtherFiguresIsHowManyThereAre() {
        FoundLists found = find(new SheetOf("Machines")
                .row("No.", "Machine", "Type")
                .row(1, "Mower", "mower")
                .row(3, "Trailer", "trailer")
                .row(1, "Rake", "rake"));
        assertThat(found.rows(Machines.LIST).number(Machines.NUMBER, 1)).isEqualTo(3);
    }

    @Test
    void litresOfProductAreNoTonnesOfFeed() {
        FoundLists found = find(new SheetOf("Sheet1")
                .row("Name", "Unit", "Dose (L/ha)", "Pack size", "Stock", "Price")
                .row("Alpha", "L", 1, 5, 13, 18));
        assertThat(found.rows(Stocks.LIST).size()).isZero();
        assertThat(found.rows(Products.LIST).text(Products.PRODUCT, 0)).isEqualTo("Alpha");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"Tank (L) | Tank (kg)", "Tank (L) | Tank per day", "Turn time (s) | Turn time (m)"})
    void whatIsMeasuredOtherwiseIsNoRival(String header, String other) {
        FoundLists found = find(
                new SheetOf("Machines").row("Machine", "Type", header, other).row("Tanker", "slurry tanker", 40, 9));
        ColumnSpec column = header.startsWith("Tank") ? Machines.TANK : Machines.TURN_TIME;
        assertThat(found.rows(Machines.LIST).number(column, 0)).isEqualTo(40);
        assertThat(found.findings()).extracting(Finding::severity).containsExactly(Severity.NOTE);
        assertThat(found.findings().get(0).message()).contains(other);
    }

    @Test
    void grossBesideNetIsARivalStill() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Area (gross) ha")
                .row("A", 4, 5));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @Test
    void theNamesOfPeopleAreNoCrew() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Crew", "Operator")
                .row("Mower", "mower", 1, "Tom"));
        assertThat(found.rows(Machines.LIST).number(Machines.CREW, 0)).isEqualTo(1);
        assertThat(found.findings())
                .containsExactly(Finding.note(
                        new CellAddress("Machines", 0, 3),
                        "\"Operator\" is not read as the Crew: none of its cells could be one."));
    }

    @Test
    void aDashIsNoName() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Job", "Field", "Operation", "Machine", "Mix", "Product", "After")
                .row("One", "A", "mowing", "Mower", "-", "n/a", "–"));
        ListRows jobs = found.rows(Jobs.LIST);
        for (ColumnSpec column : List.of(Jobs.MIX, Jobs.PRODUCT, Jobs.AFTER)) {
            assertThat(jobs.isFilled(column, 0)).isFalse();
            assertThat(jobs.text(column, 0)).isEmpty();
        }
    }

    @Test
    void mixesMaySayWhereTheyGo() {
        FoundLists found = find(new SheetOf("Mixes")
                .row("Mix", "Product", "Dose (L/ha)", "Field")
                .row("Two ways", "Alpha", 1, "A"));
        assertThat(found.rows(Mixes.LIST).size()).isEqualTo(1);
        assertThat(found.places().get(0).unrecognised()).containsExactly("Field");
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aHeadingOverTwoColumnsIsTheHeadingOfBoth() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Road speed (km/h)", null)
                .row(null, null, "Laden", "Empty")
                .row("Trailer", "trailer", 21, 29));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.ROAD_SPEED_LADEN, 0)).isEqualTo(21);
        assertThat(machines.number(Machines.ROAD_SPEED_EMPTY, 0)).isEqualTo(29);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void unitsMayStandAboveTheHeaders() {
        FoundLists found = find(new SheetOf("Fields")
                .row(null, null, "ac", "yd")
                .row("Field", "Crop", "Area", "Perimeter")
                .row("A", "grass", 10, 900));
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0).orElseThrow()).hasToString("ac");
        assertThat(found.rows(Fields.LIST).unit(Fields.PERIMETER, 0).orElseThrow())
                .hasToString("yd");
        assertThat(found.findings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Cost/ha", "Cost per ha (£)", "Cost (£/ha)", "Price per acre"})
    void whatASprayingCostsIsNoPrice(String header) {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Dose (L/ha)", header)
                .row("Alpha", "L", 1, 45));
        assertThat(found.rows(Products.LIST).has(Products.PRICE)).isFalse();
        assertThat(found.places().get(0).unrecognised()).containsExactly(header);
    }

    @Test
    void theListBelowATitleIsNoMoreFields() {
        FoundLists found = find(new SheetOf("Farm")
                .row("Field", "Crop", "Area (ha)")
                .row("A", "grass", 4)
                .row()
                .row("Sheds")
                .row("Shed", "Roof", "Bays")
                .row("North", "tin", 5));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(found.findings()).extracting(Finding::severity).containsOnly(Severity.CAUTION);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Weight (unladen) | Unladen mass",
                "Tank (usable) | Usable tank",
                "Speed (max) | Highest field speed",
                "Speed (laden) | Road speed laden"
            })
    void whatStandsInBracketsMayBePartOfTheName(String header, String column) {
        FoundLists found =
                find(new SheetOf("Machines").row("Machine", "Type", header).row("A", "trailer", 12));
        assertThat(found.rows(Machines.LIST).gives(Machines.LIST.column(column).orElseThrow(), 0))
                .isTrue();
        assertThat(found.places().get(0).columns()).hasSize(3);
    }

    @Test
    void threePacksAreNoPackOfThreeLitres() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Dose (L/ha)", "Packs")
                .row("Alpha", "L", 1, 3));
        assertThat(found.rows(Products.LIST).has(Products.PACK_SIZE)).isFalse();
    }

    @Test
    void aColumnOfTheListsOwnNameIsThatColumnWhateverItsCells() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Number")
                .row("A", "trailer", 1)
                .row("B", "trailer", 2)
                .row("C", "trailer", 3));
        assertThat(found.rows(Machines.LIST).number(Machines.NUMBER, 2)).isEqualTo(3);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void numbersInWordsAreAskedAndNotPassedOver() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Operators")
                .row("A", "forager", "two")
                .row("B", "mower", "one"));
        assertThat(found.rows(Machines.LIST).state(Machines.CREW, 0)).isEqualTo(ListRows.State.NOT_READABLE);
    }

    @Test
    void aListBesideAnotherThatLacksAColumnTakesNothingFromIt() {
        FoundLists found = find(new SheetOf("Grass")
                .row("Field", "ha", "Clamp", null, null, "Pit", "Length m", "Width m", "Wall height m")
                .row("Lea", 7.2, "Pit 1", null, null, "Pit 1", 32, 11, 2.4)
                .row("Moss", 5.4, "Pit 1"));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.size()).isEqualTo(2);
        assertThat(fields.text(Fields.CLAMP, 0)).isEqualTo("Pit 1");
        assertThat(FoundIn.said(found))
                .contains(
                        "CAUTION Grass!F1 This row looks like the header of the list Clamps, but it has no column Kind,"
                                + " so nothing of it is read. Add the column, or name it in a sheet Layout (List, Column, Header"
                                + " in this workbook, Unit). In Kind stands walled, earth pit, heap, field heap or measured.")
                .noneMatch(words -> words.contains("could all be"));
    }

    @Test
    void columnsSetOffByAGapAreStillOfTheListTheyServe() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", null, "Working width (m)", "Speed (km/h)", "Flow (L/min)", "Pressure (bar)")
                .row("Boom", "sprayer", null, 24, 10, 1.2, 3));
        assertThat(found.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0)).isEqualTo(24);
        assertThat(found.rows(Machines.LIST).number(Machines.SPEED, 0)).isEqualTo(10);
    }

    /** A word that can mean something else beside the plain header leaves that as it is; alone it will do. */
    @ParameterizedTest
    @CsvSource({
        "Jobs, Machine, Sprayer, Applicator, Boom",
        "Jobs, Machine, Sprayer, Rig, Boom",
        "Machines, Mass, Weight (t), Ballasted weight (t), 7",
        "Jobs, Earliest, Start date, Target date, 46000",
        "Fields, Watercourse, Watercourse, Near watercourse, stream",
        "Machines, List price, List price, Cost new, 9000",
        "Machines, Hours now, Hours now (h), Engine hours (h), 700"
    })
    void theLooserOfTwoHeadersGivesWay(String list, String column, String plain, String loose, String cell) {
        Object value = cell.matches("[0-9]+") ? Double.valueOf(cell) : cell;
        for (String[] headers : new String[][] {{plain, loose}, {loose}}) {
            FoundLists found = beside(list, headers, value);
            ListRows rows = found.rows(Lists.ALL.stream()
                    .filter(spec -> spec.name().equals(list))
                    .findFirst()
                    .orElseThrow());
            ColumnSpec read = rows.spec().column(column).orElseThrow();
            assertThat(rows.state(read, 0)).as("%s", FoundIn.said(found)).isEqualTo(ListRows.State.GIVEN);
            assertThat(rows.address(read, 0).orElseThrow().column()).isEqualTo(4);
        }
    }

    /** A sheet with four headers that the list needs, and one or two more. */
    private static FoundLists beside(String list, String[] headers, Object value) {
        Object[] header = {"Holding", "Field", "Area (ha)", "Crop", null, null};
        Object[] cells = {"Home", "Lea", 5, "grass", value, null};
        if (list.equals("Jobs")) {
            header = new Object[] {"Holding", "Field", "Operation", "Job", null, null};
            cells = new Object[] {"Home", "Lea", "spray", "One", value, null};
            if (!List.of("Sprayer", "Applicator", "Rig").contains(headers[0])) {
                header[3] = "Machine";
                cells[3] = "Boom";
            }
        } else if (list.equals("Machines")) {
            header = new Object[] {"Holding", "Machine", "Type", "Working width (m)", null, null};
            cells = new Object[] {"Home", "Boom", "sprayer", 24, value, null};
        }
        for (int i = 0; i < headers.length; i++) {
            header[4 + i] = headers[i];
        }
        cells[5] = headers.length == 1 ? null : value instanceof Double ? value : "A. N. Other";
        return find(new SheetOf(list).row(header).row(cells));
    }

    /** Yes and no, or the year it was bought: not whether it is hired. */
    @Test
    void thatAMachineIsOwnedIsNoAnswerToOwnOrHired() {
        FoundLists found =
                find(new SheetOf("Machines").row("Machine", "Type", "Owned").row("Boom", "sprayer", "yes"));
        assertThat(found.rows(Machines.LIST).has(Machines.OWN_OR_HIRED)).isFalse();
    }

    /** Twelve of them, or so many of a hundred? */
    @Test
    void daysThatAreFitMayBeAShareOrACount() {
        assertThat(FoundIn.said(jobs("Days OK", 12)))
                .anyMatch(words -> words.contains("\"Days OK\" could mean Workable days or Days available"));
    }

    /** At the headland, of a trailer to the clamp and back, or of a sprayer that is filled. */
    @Test
    void aTurnaroundMayBeOneOfThreeTimes() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Turnaround (min)")
                .row("Boom", "sprayer", 12));
        assertThat(FoundIn.said(found))
                .anyMatch(words -> words.contains(
                        "\"Turnaround (min)\" could mean Turn time or Round time or Fill time of Machines"));
    }

    private static FoundLists machine(String type, String header, Object cell) {
        return find(new SheetOf("Machines").row("Machine", "Type", header).row("M", type, cell));
    }

    /** Each was a stop, over a column that says something else of the pump. */
    @ParameterizedTest
    @ValueSource(
            strings = {"Pump size (hp)", "Pump size (in)", "Pump output (bar)", "Pump capacity (gal)", "Pump rate (%)"})
    void otherFiguresOfAPumpAreNoFlow(String header) {
        FoundLists found = machine("sprayer", header, 6);
        assertThat(found.rows(Machines.LIST).has(Machines.PUMP_FLOW)).isFalse();
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"Pump size (L/min), true", "Pump rate (m3/h), true", "Round trip (min), false", "Round trip (h), false"
    })
    void byTheirUnitTheyAre(String header, boolean pump) {
        ListRows machines = machine("sprayer", header, 0.5).rows(Machines.LIST);
        assertThat(machines.gives(pump ? Machines.PUMP_FLOW : Machines.ROUND_TIME, 0))
                .isTrue();
    }

    /** Miles were a stop, bare figures minutes, and the way one way may be a trip. */
    @ParameterizedTest
    @ValueSource(strings = {"Round trip (km)", "Round trip (mi)", "Round trip", "Trip time (min)"})
    void waysAndSingleTripsAreNoRoundTime(String header) {
        FoundLists found = machine("trailer", header, 6);
        assertThat(found.rows(Machines.LIST).has(Machines.ROUND_TIME)).isFalse();
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
    }

    /** An engine's, 1800 of which were a stop. */
    @ParameterizedTest
    @ValueSource(strings = {"Revs loaded", "Loaded revs (rpm)", "Unloaded revs"})
    void revsUnderLoadAreNoTurnsOfWheels(String header) {
        FoundLists found = machine("tractor", header, 1800);
        assertThat(found.rows(Machines.LIST).has(Machines.TURNS_LOADED)).isFalse();
        assertThat(found.rows(Machines.LIST).has(Machines.TURNS_UNLOADED)).isFalse();
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
    }

    /** Counts of plants in a crop, labels, years and shares. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Plant count",
                "Plant count (plants/m2)",
                "Number of plants",
                "Plant number",
                "Trees planted",
                "Trees %",
                "Trees (%)",
                "Trees (ha)",
                "Trees (m)"
            })
    void whatElseIsCountedInAField(String header) {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Crop", "Area (ha)", header).row("A", "wheat", 7, 250));
        assertThat(found.rows(Fields.LIST).has(Fields.TREES)).isFalse();
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
    }

    @Test
    void maizeStandsInNoOrchard() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)", "Row spacing (cm)", "Plant spacing (cm)")
                .row("A", "maize", 7, 75, 14));
        assertThat(found.rows(Fields.LIST).has(Fields.TREE_SPACING)).isFalse();
    }

    @Test
    void aWeightAtFinishIsNoDay() {
        FoundLists found = find(new SheetOf("Herds")
                .row("Group", "Head", "Intake (kg DM/head/day)", "Days", "Finish (kg)")
                .row("Bulls", 20, 8, 180, 650));
        assertThat(found.rows(Herds.LIST).has(Herds.END)).isFalse();
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
    }

    /** Its words turned round are "kg/bale"; as a name of its own it meant nothing, and the list was not read. */
    @ParameterizedTest
    @ValueSource(strings = {"bale kg", "Bale kg (fresh)", "kg wet", "kg fresh", "Bale weight (kg)"})
    void kilogramsBesideBalesAreOfOne(String header) {
        FoundLists found = find(new SheetOf("Stocks")
                .row("Store", "Kind", "Count", header, "kg DM")
                .row("Stack", "bales", 100, 600, 240));
        assertThat(found.rows(Stocks.LIST).number(Stocks.WEIGHT_EACH, 0)).isEqualTo(600);
    }

    @Test
    void kilogramsBesideTheTonnesAreOfNoBale() {
        FoundLists found = find(new SheetOf("Stocks")
                .row("Store", "Kind", "Amount (t)", "kg wet", "DM %")
                .row("Pit", "clamp", 100, 100000, 35));
        assertThat(found.rows(Stocks.LIST).has(Stocks.WEIGHT_EACH)).isFalse();
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
    }

    @Test
    void whetherAFieldIsMownIsNoDay() {
        FoundLists found = find(
                new SheetOf("Cuts").row("Field", "Cut", "Mown", "Yield (t/ha)").row("A", 1, "yes", 20));
        assertThat(found.rows(Cuts.LIST).has(Cuts.START)).isFalse();
    }

    /** Ten gallons of either kind on an acre are a hundred litres on a hectare: nobody doses that. */
    @ParameterizedTest
    @CsvSource({"Per acre, 10 gal, 12 gal, false", "Rate/ac, 15 gal, 10 gal, false", "Per acre, 2 pt, 1.5 pt, true"})
    void gallonsOfWhicheverKindAreWater(String header, String one, String other, boolean dose) {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", header)
                .row("A", "spraying", "S", "Alpha", one)
                .row("B", "spraying", "S", "Alpha", other));
        assertThat(found.rows(Jobs.LIST).has(Jobs.DOSE)
                        && FoundIn.said(found).stream().anyMatch(line -> line.contains("is read as the Dose of Jobs")))
                .isEqualTo(dose);
    }

    /** Twice as many hours and litres are needed, so a number of passes that is not read stays told. */
    @ParameterizedTest
    @CsvSource({
        "Repeat, yes, no, true",
        "Passes, both ways, one way, true",
        "Runs, several, few, true",
        "Passes, five, six, true",
        "Pass, second, first, false"
    })
    void wordsForHowManyPasses(String header, String one, String other, boolean told) {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", header)
                .row("A", "spraying", "S", one)
                .row("B", "spraying", "S", other));
        assertThat(FoundIn.said(found).stream().anyMatch(line -> line.contains("reckoned as one pass")))
                .isEqualTo(told);
    }

    /** Tonnes of dry matter were a stop, as what share of the crop they are. */
    @ParameterizedTest
    @ValueSource(strings = {"DM clamped (t)", "DM baled (kg)", "DM mown (t)"})
    void tonnesOfDryMatterAreNoShare(String header) {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Crop", "Area (ha)", header).row("A", "grass", 7, 30));
        assertThat(found.rows(Fields.LIST).has(Fields.DM_AT_CUTTING)).isFalse();
        assertThat(found.rows(Fields.LIST).has(Fields.DM_AT_ENSILING)).isFalse();
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"DM clamped (%)", "DM clamped (g/kg)", "DM clamped"})
    void sharesOfDryMatterStayShares(String header) {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Crop", "Area (ha)", header).row("A", "grass", 7, 300));
        assertThat(found.rows(Fields.LIST).has(Fields.DM_AT_ENSILING)).isTrue();
    }

    /** Both were asked about, and neither used. */
    @Test
    void aSolutionTankBesideTheTankIsAnother() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Solution tank", "Tank (L)")
                .row("S", "sprayer", 400, 3000));
        assertThat(found.rows(Machines.LIST).number(Machines.TANK, 0)).isEqualTo(3000);
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
    }

    /** What a machine is sold for as a share of its price: asked for as money, and no litres left in its tank. */
    @ParameterizedTest
    @ValueSource(strings = {"Trade-in value (%)", "Salvage (% of list price)", "% residual", "Resale (% of new)"})
    void aShareOfAPriceIsAskedForAsMoney(String header) {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Purchase price (£)", header)
                .row("Mine", "mower", 20000, 35));
        assertThat(found.rows(Machines.LIST).has(Machines.RESIDUAL)).isFalse();
        assertThat(FoundIn.messages(found, Severity.STOP))
                .singleElement()
                .asString()
                .contains(header, "write that price times the share");
    }

    /** What a plan says that it brings to each field was read as a second list of products, whose names stood there twice. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "N (kg/ha)|P2O5 (kg/ha)|K2O (kg/ha)",
                "Nitrogen (kg/ha)|Phosphate (kg/ha)|Potash (kg/ha)",
                "N|P2O5|K2O",
                "Nitrogen|Phosphate|Potash"
            })
    void nutrientsOnAFieldAreNoProducts(String nutrients) {
        String[] three = nutrients.split("\\|");
        FoundLists found = find(
                new SheetOf("Plan")
                        .row("Field", "Area (ha)", "Product", "Rate (kg/ha)", three[0], three[1], three[2])
                        .row("Hill", 10, "Granules", 300, 60, 30, 30)
                        .row("Moor", 4, "Granules", 300, 60, 30, 30),
                new SheetOf("Products").row("Product", "Unit", "N %").row("Granules", "kg", 20));
        assertThat(FoundIn.names(found.rows(Products.LIST), Products.PRODUCT)).containsExactly("Granules");
        assertThat(found.rows(Products.LIST).has(Products.PHOSPHATE)).isFalse();
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
    }

    /** Of slurry the analysis is by the cubic metre: no share by weight, and nothing to stop a dose in m3/ha. */
    @Test
    void phosphateInACubicMetreIsNoShare() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Dose (m3/ha)", "P2O5 (kg/m3)", "Potash (kg/m3)")
                .row("Slurry", "m3", 30, 1.2, 2.5));
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
        assertThat(found.places().get(0).unrecognised()).containsExactly("P2O5 (kg/m3)", "Potash (kg/m3)");
    }

    /** How much of the product is mixed, which was taken for a content of two in a thousand. */
    @ParameterizedTest
    @ValueSource(strings = {"Concentration (ml/100 L)", "Strength (L per 100 litres)", "Concentration, fl oz/gal"})
    void whatIsMixedIsNoContent(String header) {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Dose (L/ha)", header)
                .row("Alpha", "L", 1, 200));
        assertThat(found.rows(Products.LIST).has(Products.ACTIVE_CONTENT)).isFalse();
        assertThat(found.places().get(0).unrecognised()).containsExactly(header);
    }
}
