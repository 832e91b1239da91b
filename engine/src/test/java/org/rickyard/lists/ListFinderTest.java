package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Units;

/** Where lists stand, and what belongs to them. */
class ListFinderTest {
    private static FoundLists find(SheetOf... sheets) {
        return ListFinder.find(List.of(sheets));
    }

    private static List<String> names(ListRows rows, ColumnSpec column) {
        List<String> names = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            names.add(rows.text(column, row));
        }
        return names;
    }

    private static List<String> messages(FoundLists found, Severity severity) {
        return found.findings().stream()
                .filter(finding -> finding.severity() == severity)
                .map(Finding::message)
                .toList();
    }

    @Test
    void aListMayHaveTitlesAboveBlankRowsInsideAndTotalsBelow() {
        SheetOf sheet = new SheetOf("Land")
                .row("Invented Estates")
                .row("as at the spring")
                .row()
                .row(null, "Field", "Old number", "Area (ha)")
                .row(null, "Long Acre", "12/3", 4.5)
                .row()
                .row(null, "Well Field", "12/4", 3)
                .row(null, "Total", null, 7.5)
                .formula(7, 3);
        FoundLists found = find(sheet);
        ListRows fields = found.rows(Fields.LIST);
        assertThat(names(fields, Fields.FIELD)).containsExactly("Long Acre", "Well Field");
        assertThat(fields.address(Fields.AREA, 1)).hasValue(new CellAddress("Land", 6, 3));
        assertThat(messages(found, Severity.NOTE)).singleElement().asString().contains("row of totals");
        Place place = found.places().get(0);
        assertThat(place.headerRow()).isEqualTo(3);
        assertThat(place.firstRow()).isEqualTo(4);
        assertThat(place.lastRow()).isEqualTo(6);
        assertThat(place.unrecognised()).containsExactly("Old number");
    }

    private static SheetOf land(String name, String... fields) {
        SheetOf sheet = new SheetOf(name).row("Field", "Area (ha)", "Run length (m)");
        for (String field : fields) {
            sheet.row(field, 4, 200);
        }
        return sheet;
    }

    @Test
    void aSheetCopiedForTheRecordIsNotReadAgain() {
        FoundLists found = find(
                land("Fields", "Long Acre", "Top", "Barn", "Pond"), land("Fields (2)", "Long Acre", "Top", "Barn"));

        assertThat(found.rows(Fields.LIST).size()).isEqualTo(4);
        assertThat(found.findings()).singleElement().satisfies(note -> {
            assertThat(note.severity()).isEqualTo(Severity.NOTE);
            assertThat(note.cell()).hasValue(new CellAddress("Fields (2)", 0, 0));
            assertThat(note.message()).contains("not read as a second list of fields");
        });
    }

    @Test
    void aCopyThatSaysAnythingElseIsReadAndSaidOnce() {
        List<String> stops = messages(
                find(
                        land("Fields", "Long Acre", "Top", "Barn", "Pond"),
                        land("Fields (2)", "Long Acre", "Top", "Barn").row("Pond", 4, 201)),
                Severity.STOP);

        assertThat(stops)
                .containsExactly(
                        "All 4 names of the list Fields on the sheet \"Fields (2)\" stand on \"Fields\" already,"
                                + " so both are read and whatever adds up counts them twice. If one of the two is kept for the"
                                + " record, move it to another workbook; if not, give each its own name, or its holding.");
    }

    @Test
    void aCopyThatHasGoneItsOwnWayIsSaidWithHowManyNamesItShares() {
        FoundLists found = find(
                land("Fields", "Long Acre", "Top", "Barn", "Pond", "Pond"),
                land("2024", "Long Acre", "Top", "Barn", "Moor"));

        assertThat(messages(found, Severity.STOP))
                .hasSize(2)
                .anyMatch(message -> message.startsWith("3 of the 4 names of the list Fields on the sheet \"2024\""))
                .anyMatch(message -> message.startsWith("Field \"Pond\" stands already in Fields!A5."));
    }

    @Test
    void namesThatTwoSheetsShareByChanceAreSaidOneByOne() {
        FoundLists found = find(
                land("Hill farm", "Long Acre", "Top", "Barn", "Pond"), land("Moor farm", "Home Field", "Top", "Bog"));

        assertThat(messages(found, Severity.STOP))
                .containsExactly(
                        "Field \"Top\" stands already in 'Hill farm'!A3. Give each its own name, or its holding, so"
                                + " that it is clear which is meant.");
    }

    @Test
    void aSumWithoutLabelIsNoField() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row(null, 9)
                .formula(3, 1);
        assertThat(names(find(sheet).rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
    }

    @Test
    void subtotalsInsideAListAreSkippedAndTheListGoesOn() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("Sub-total", 4)
                .row("B", 5)
                .row("Grand total", 9);
        assertThat(names(find(sheet).rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
    }

    @Test
    void whatStandsBelowTheTotalsIsNotTakenForFieldsAndIsSaid() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("Total", 4)
                .row()
                .row("Grass", 120)
                .row("Maize", 40);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A");
        assertThat(messages(found, Severity.CAUTION)).singleElement().asString().startsWith("2 rows from here on");
    }

    @Test
    void theHeaderOfAnUnknownTableEndsTheListAboveIt() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row()
                .row("Supplier", "Telephone")
                .row("Invented Seeds", 12345);
        assertThat(names(find(sheet).rows(Fields.LIST), Fields.FIELD)).containsExactly("A");
    }

    @Test
    void unitsMayStandInARowUnderTheHeader() {
        SheetOf sheet = new SheetOf("Machines")
                .row("Machine", "Type", "Working width", "Speed")
                .row(null, null, "ft", "mph")
                .row("Mower", "mower", 10, 6);
        FoundLists found = find(sheet);
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(machines.unit(Machines.WORKING_WIDTH, 0)).hasValue(Units.FT);
        assertThat(machines.unit(Machines.SPEED, 0)).hasValue(Units.MPH);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aHeaderRepeatedOnEachPageIsNoRow() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("Field", "Area (ha)")
                .row("B", 5);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
        assertThat(found.places()).hasSize(1);
    }

    @Test
    void listsMayStandUnderEachOther() {
        SheetOf sheet = new SheetOf("Everything")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row()
                .row("Machine", "Type", "Width (m)")
                .row("Mower", "mower", 3)
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)")
                .row("Pit 1", "walled", 30, 10, 2);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A");
        assertThat(names(found.rows(Machines.LIST), Machines.MACHINE)).containsExactly("Mower");
        assertThat(names(found.rows(Clamps.LIST), Clamps.CLAMP)).containsExactly("Pit 1");
    }

    @Test
    void listsMayStandSideBySideWithAGapOrWithout() {
        SheetOf gap = new SheetOf("Gap")
                .row("Field", "Area (ha)", null, "Machine", "Type", "Width (m)")
                .row("A", 4, null, "Mower", "mower", 3)
                .row("B", 5);
        SheetOf touching = new SheetOf("Touching")
                .row("Field", "Area (ha)", "Machine", "Type", "Width (m)")
                .row("C", 4, "Rake", "rake", 6);
        FoundLists found = find(gap, touching);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B", "C");
        assertThat(names(found.rows(Machines.LIST), Machines.MACHINE)).contains("Mower");
        assertThat(found.rows(Machines.LIST).address(Machines.TYPE, 0)).hasValue(new CellAddress("Gap", 1, 4));
    }

    @Test
    void theHeaderOfAListMayStandBesideARowOfAnother() {
        SheetOf sheet = new SheetOf("Sheet1")
                .row("Machine", "Type", "Width (m)")
                .row("Mower", "mower", 3, null, "Fields of the farm")
                .row("Rake", "rake", 6, null, "Field", "Area (ha)")
                .row("Baler", "baler", 3, null, "A", 4)
                .row(null, null, null, null, "B", 5);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Machines.LIST), Machines.MACHINE)).containsExactly("Mower", "Rake", "Baler");
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
        assertThat(found.findings()).isEmpty();
    }

    /** The efficiency was lost to the list beside, which has no such column, and the usual one taken. */
    @Test
    void aListWithAGapIsNotCutOffByTheNextOne() {
        FoundLists found = find(new SheetOf("All")
                .row(
                        "Machine",
                        "Type",
                        null,
                        "Field efficiency (%)",
                        "Tank (L)",
                        "Speed (km/h)",
                        null,
                        "Field",
                        "Area (ha)")
                .row("Sprayer", "sprayer", null, 60, 2400, 12, null, "A", 4));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.FIELD_EFFICIENCY, 0)).isEqualTo(60);
        assertThat(machines.number(Machines.SPEED, 0)).isEqualTo(12);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A");
        assertThat(found.findings()).isEmpty();
    }

    /** On a sheet of products "Item" may be one; beside "Value" and "Unit" it is none. */
    @Test
    void assumptionsBelowAnotherListAreAssumptions() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Dose", "Price")
                .row("A", "L/ha", 2, 10)
                .row()
                .row("Item", "Value", "Unit")
                .row("Wage", 15, "£/h"));
        assertThat(found.rows(Assumptions.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Products.LIST).size()).isEqualTo(1);
    }

    @Test
    void titlesAboveTheNextListAreNoRowsWhicheverColumnTheyStandIn() {
        FoundLists found = find(new SheetOf("All")
                .row("Holding", "Field", "Area (ha)")
                .row("Vale", "A", 4)
                .row()
                .row("Clamps of the farm")
                .row("All figures to be checked")
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)")
                .row("Pit", "walled", 30, 9, 2));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Clamps.LIST).size()).isEqualTo(1);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aFlatListNamesItsFieldsAsFieldListsDo() {
        FoundLists found = find(new SheetOf("Plan")
                .row("Sheet/parcel no.", "Crop", "Area (ha)", "Work", "Machine(s)", "Water rate (L/ha)")
                .row("7", "Wheat", 4, "spray", "Sprayer", 100));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Jobs.LIST).text(Jobs.MACHINE, 0)).isEqualTo("Sprayer");
    }

    @Test
    void theTitleOfAListBesideIsNoColumnOfThisOne() {
        FoundLists found = find(new SheetOf("All")
                .row("Field", "Area (ha)", null, null, "Kit of the farm")
                .row("A", 4)
                .row("B", 5, null, null, "Machine", "Type", "Width (m)")
                .row("C", 6, null, null, "Mower", "mower", 3));
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B", "C");
        assertThat(names(found.rows(Machines.LIST), Machines.MACHINE)).containsExactly("Mower");
        assertThat(found.findings()).isEmpty();
    }

    /** The right half was taken for a list of products. */
    @Test
    void aListOfJobsMayHaveAnEmptyColumnBeforeItsProducts() {
        FoundLists found = find(new SheetOf("Work")
                .row(
                        "Job",
                        "Field",
                        "Operation",
                        "Machine",
                        null,
                        "Product",
                        "Dose",
                        "Dose unit",
                        "Water volume (L/ha)")
                .row("J", "A", "spraying", "Sprayer", null, "Herbicide A", 2, "L/ha", 200));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.PRODUCT, 0)).isEqualTo("Herbicide A");
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(200);
        assertThat(found.rows(Products.LIST).size()).isZero();
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aFlatListMayHaveOneToo() {
        FoundLists found = find(new SheetOf("Work")
                .row(
                        "Field",
                        "Crop",
                        "Area (ha)",
                        "Operation",
                        "Machine",
                        null,
                        "Product",
                        "Dose (L/ha)",
                        "Water volume (L/ha)")
                .row("A", "wheat", 4, "spraying", "Sprayer", null, "Fungicide C", 1, 150));
        assertThat(found.rows(Jobs.LIST).number(Jobs.WATER_VOLUME, 0)).isEqualTo(150);
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(4);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aNameThatEndsInItsUnitIsInIt() {
        assertThat(find(new SheetOf("Kit")
                                .row("Machine", "Type", "Working life (years)")
                                .row("Mower", "mower", 8)
                                .row("Rake", "rake", 8))
                        .findings())
                .isEmpty();
        assertThat(find(new SheetOf("Kit")
                                .row("Machine", "Type", "Life (years)")
                                .row("Mower", "mower", 8))
                        .findings())
                .isEmpty();
    }

    @Test
    void theNameOfAListAboveItIsNoColumnOfTheOneBeside() {
        FoundLists found = find(new SheetOf("All")
                .row("Mix", "Product", "Dose (L/ha)", null, null, "Products")
                .row("M", "A", 2, null, null, "Product", "Unit", "Price")
                .row("M", "B", 1, null, null, "A", "L", 10));
        assertThat(names(found.rows(Mixes.LIST), Mixes.PRODUCT)).containsExactly("A", "B");
        assertThat(names(found.rows(Products.LIST), Products.PRODUCT)).containsExactly("A");
    }

    @Test
    void titlesAndGroupsOfColumnsAboveTheNextListAreNoRows() {
        FoundLists found = find(new SheetOf("All")
                .row("Item", "Value", "Unit")
                .row("Wage", 15, "£/h")
                .row()
                .row("Kit of 2026")
                .row("Office copy")
                .row("Machine", "Type", "Width (m)")
                .row("Mower", "mower", 3)
                .row()
                .row("What", null, "Sizes")
                .row("Field", "Crop", "Area (ha)")
                .row("A", "grass", 4));
        assertThat(found.rows(Assumptions.LIST).size()).isEqualTo(1);
        assertThat(names(found.rows(Machines.LIST), Machines.MACHINE)).containsExactly("Mower");
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A");
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void anotherTableToTheLeftIsNoPartOfAList() {
        SheetOf sheet = new SheetOf("Store")
                .row("Depot", "Van", "Seats", null, "Product", "Dose (L/ha)", "Pack size (L)")
                .row("North", "Red", 3, null, "Herbicide A", 1, 5)
                .row("South", "Blue", 5);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Products.LIST), Products.PRODUCT)).containsExactly("Herbicide A");
        assertThat(found.findings()).isEmpty();
        assertThat(found.places()).singleElement().satisfies(place -> assertThat(place.unrecognised())
                .isEmpty());
    }

    @Test
    void aListOfSprayersIsAListOfMachines() {
        SheetOf sheet = new SheetOf("Spraying")
                .row("Sprayer", "Type", "Boom (ft)", null, "Product", "Dose (L/ha)", "Pack size (L)")
                .row("Trailed", "sprayer", 80, null, "Herbicide A", 1, 5);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Machines.LIST), Machines.MACHINE)).containsExactly("Trailed");
        assertThat(names(found.rows(Products.LIST), Products.PRODUCT)).containsExactly("Herbicide A");
    }

    @Test
    void blankHeaderColumnsMayStandInsideAList() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)", null, "Crop", null, "Run length (m)")
                .row("A", 4, null, "Grass", null, 200);
        ListRows fields = find(sheet).rows(Fields.LIST);
        assertThat(fields.text(Fields.CROP, 0)).isEqualTo("Grass");
        assertThat(fields.number(Fields.RUN_LENGTH, 0)).isEqualTo(200);
    }

    @Test
    void listsOfOneKindOnSeveralSheetsArePutTogetherInSheetOrder() {
        FoundLists found = find(
                new SheetOf("North").row("Field", "Area (ha)").row("N", 4),
                new SheetOf("South").row("Area (ac)", "Field").row(10, "S"));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(names(fields, Fields.FIELD)).containsExactly("N", "S");
        assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.HA);
        assertThat(fields.unit(Fields.AREA, 1)).hasValue(Units.AC);
        assertThat(found.places()).hasSize(2);
    }

    @Test
    void hiddenSheetsAreReadAndSaid() {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Area (ha)").row("A", 4).hide());
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(messages(found, Severity.NOTE)).singleElement().asString().contains("hidden");
    }

    @Test
    void anExcelTableIsReadWithinItsRangeAndWithoutItsTotals() {
        SheetOf sheet = new SheetOf("Data")
                .row()
                .row(null, "Field", "Area (ha)")
                .row(null, "A", 4)
                .row(null, "B", 5)
                .row(null, "Sum of it", 9)
                .row(null, "Not in the table", 9)
                .table(new Grid.TableRange("tblFields", 1, 4, 1, 2, 1, 1));
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
        assertThat(found.places().get(0).table()).hasValue("tblFields");
    }

    @Test
    void rowsTypedRightUnderAnExcelTableAreToldForTheyAreNotInIt() {
        FoundLists found = find(new SheetOf("Data")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row("Typed below", 9)
                .row("And another", 8)
                .row()
                .row("Somewhere else", 7)
                .table(new Grid.TableRange("tblFields", 0, 2, 0, 1, 1, 0)));
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
        assertThat(found.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.cell())
                    .hasValueSatisfying(cell -> assertThat(cell).hasToString("Data!A4"));
            assertThat(finding.message())
                    .isEqualTo("2 rows from here on stand right under the table tblFields but not in it, so they are"
                            + " not read as Fields. If they belong to it, draw the table's lower right corner down"
                            + " over them; if not, leave a blank row between.");
        });
    }

    @Test
    void whatStandsUnderAnExcelTableAndIsNoRowOfItIsNotTold() {
        Grid.TableRange range = new Grid.TableRange("tblFields", 0, 2, 0, 1, 1, 0);
        FoundLists totals = find(new SheetOf("Data")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row("Total", 9)
                .table(range));
        FoundLists remark = find(new SheetOf("Data")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row("(areas of last year)")
                .table(range));
        FoundLists other = find(new SheetOf("Data")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row("Supplier", "Telephone")
                .row("Seeds", 123)
                .table(range));
        assertThat(List.of(totals, remark, other))
                .allSatisfy(found -> assertThat(found.findings()).isEmpty());
    }

    @Test
    void aTableOfTheClientsOwnIsNoList() {
        FoundLists found = find(
                new SheetOf("Suppliers").row("Product", "Telephone").row("Seeds", 123),
                new SheetOf("Rent").row("Field", "Rent").row("A", 300),
                new SheetOf("Ideas").row("Item", "Value").row("Drain the bog", 9),
                new SheetOf("Diary").row("Date", "Crop").row(46000, "Grass"));
        assertThat(found.places()).isEmpty();
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aSheetCalledByAListsNameThatLacksAColumnSaysWhich() {
        FoundLists found = find(
                new SheetOf("Machines").row("Machine", "Width (m)", "Speed").row("Mower", 3, 10));
        assertThat(found.places()).isEmpty();
        assertThat(messages(found, Severity.STOP)).singleElement().asString().contains("no column Type");
    }

    @Test
    void theNameOfASheetHelpsWhereHeadersAreFew() {
        FoundLists found =
                find(new SheetOf("Products").row("Product", "Dose (L/ha)").row("Invented 250", 1));
        assertThat(found.rows(Products.LIST).size()).isEqualTo(1);
        FoundLists titled = find(
                new SheetOf("Sheet1").row("Assumptions").row("Item", "Value").row("Wage", 15));
        assertThat(titled.rows(Assumptions.LIST).size()).isEqualTo(1);
    }

    @Test
    void layoutSettlesWhatAHeaderMeans() {
        SheetOf jobs = new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Rate", "Menge")
                .row("A", "spray", "Sprayer", 200, 5);
        FoundLists asked = find(jobs);
        assertThat(asked.rows(Jobs.LIST).state(Jobs.WATER_VOLUME, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(asked.rows(Jobs.LIST).state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
        FoundLists settled = find(
                jobs,
                new SheetOf("Layout")
                        .row("List", "Column", "Header in this workbook", "Unit")
                        .row("Jobs", "Water volume", "Rate", "L/ha")
                        .row("jobs", "speed", "Menge", "mph"));
        ListRows rows = settled.rows(Jobs.LIST);
        assertThat(rows.number(Jobs.WATER_VOLUME, 0)).isEqualTo(200);
        assertThat(rows.unit(Jobs.WATER_VOLUME, 0)).hasValue(Units.L_PER_HA);
        assertThat(rows.state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.NO_COLUMN);
        assertThat(rows.unit(Jobs.SPEED, 0)).hasValue(Units.MPH);
        assertThat(settled.findings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rate", "Rate/ac", "Rate/ha", "Rate per ha", "Rate per acre"})
    void aRateForAnAreaIsAskedLikeALoneRate(String header) {
        FoundLists found = find(
                new SheetOf("Jobs").row("Field", "Operation", "Machine", header).row("A", "spray", "Sprayer", 200));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.state(Jobs.WATER_VOLUME, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(jobs.state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(found.findings())
                .filteredOn(finding -> finding.severity() != Finding.Severity.NOTE)
                .singleElement()
                .satisfies(finding -> assertThat(finding.message())
                        .startsWith("The header \"" + header + "\" could mean Water volume or Dose of Jobs."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rate", "Rate/ac"})
    void aRateIsToldAsUnreadWhereWaterAndDoseStandElsewhere(String header) {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Water volume (L/ha)", "Dose (L/ha)", header)
                .row("A", "spray", "Sprayer", 200, 1.5, 7));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(200);
        assertThat(jobs.number(Jobs.DOSE, 0)).isEqualTo(1.5);
        assertThat(found.findings())
                .singleElement()
                .isEqualTo(Finding.note(
                        new CellAddress("Jobs", 0, 5),
                        "\"" + header + "\" is not read: Water volume and Dose of Jobs are taken from other columns."));
    }

    @Test
    void layoutSettlesWhichOfTwoHeadersIsTheColumn() {
        SheetOf fields =
                new SheetOf("Fields").row("Field", "Area (ac)", "Acres").row("A", 12, 9.9);
        FoundLists asked = find(fields);
        assertThat(asked.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(messages(asked, Severity.STOP)).singleElement().asString().contains("Fields!B1", "Fields!C1");
        FoundLists settled = find(
                fields,
                new SheetOf("Layout")
                        .row("List", "Column", "Header in this workbook")
                        .row("Fields", "Area", "Acres"));
        assertThat(settled.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(9.9);
        assertThat(settled.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(settled.findings()).isEmpty();
    }

    @Test
    void aLayoutRowThatNamesNothingKnownIsSaid() {
        FoundLists found = find(new SheetOf("Layout")
                .row("List", "Column", "Header in this workbook", "Unit")
                .row("Feilds", "Area", "Size", null)
                .row("Fields", "Hectarage of it", "Size", null));
        assertThat(messages(found, Severity.CAUTION)).hasSize(2);
    }

    @Test
    void customaryUnitsSettleGallonsForTheWholeWorkbook() {
        SheetOf jobs = new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Water volume (gal/ac)")
                .row("A", "spray", "Sprayer", 20);
        FoundLists asked = find(jobs);
        assertThat(asked.rows(Jobs.LIST).state(Jobs.WATER_VOLUME, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(messages(asked, Severity.STOP)).singleElement().asString().contains("gal(UK)", "gal(US)");
        FoundLists settled = find(
                jobs, new SheetOf("Assumptions").row("Item", "Value", "Unit").row("customary units", "UK"));
        assertThat(settled.customary()).isEqualTo(CustomaryUnits.UK);
        assertThat(settled.rows(Jobs.LIST).state(Jobs.WATER_VOLUME, 0)).isEqualTo(ListRows.State.GIVEN);
    }

    @Test
    void aFlatListIsAFieldListAndAJobListAtOnce() {
        SheetOf sheet = new SheetOf("Spraying")
                .row("Field", "Area (ha)", "Machine", "Water volume (L/ha)", "Product", "Dose (L/ha)")
                .row("A", 4, "Sprayer", 200, "One", 1)
                .row("A", 4, "Sprayer", 200, "Two", 2)
                .row("B", 5, "Sprayer", 100, "One", 1);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
        assertThat(names(found.rows(Jobs.LIST), Jobs.PRODUCT)).containsExactly("One", "Two", "One");
        assertThat(found.rows(Jobs.LIST).state(Jobs.OPERATION, 0)).isEqualTo(ListRows.State.NO_COLUMN);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aFlatListThatContradictsItselfSaysSo() {
        SheetOf sheet = new SheetOf("Spraying")
                .row("Field", "Area (ha)", "Machine", "Water volume (L/ha)")
                .row("A", 4, "Sprayer", 200)
                .row("a ", 5, "Sprayer", 100);
        FoundLists found = find(sheet);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(messages(found, Severity.CAUTION)).singleElement().asString().contains("another area");
    }

    @Test
    void areasBesideJobsYieldToAFieldListProper() {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Area (ha)").row("A", 4),
                new SheetOf("Jobs")
                        .row("Field", "Area (ha)", "Operation", "Machine")
                        .row("A", 4.1, "mow", "Mower"));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Jobs.LIST).size()).isEqualTo(1);
        assertThat(messages(found, Severity.NOTE)).singleElement().asString().contains("taken from the field list");
    }

    @Test
    void aRowWithoutItsNameIsLeftOutAndSaid() {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Area (ha)").row("A", 4).row(null, 7));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(messages(found, Severity.CAUTION)).singleElement().asString().contains("no Field");
    }

    @Test
    void aLineThatIsARemarkIsNoRowAndIsSaid() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)")
                .row("A", "Grass", 4)
                .row("(A was reseeded in autumn)")
                .row("Note: B is in the scheme")
                .row("(B)", "Grass", 5);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "(B)");
        assertThat(found.findings()).hasSize(2).allSatisfy(finding -> assertThat(finding.message())
                .startsWith("This row holds nothing but")
                .endsWith("so it is not read as a row of Fields."));
    }

    @Test
    void theTitleOfTheNextListBelowIsNoRowLeftOut() {
        FoundLists found = find(new SheetOf("Farm")
                .row("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("Sub total", 4)
                .row()
                .row("STOCK ON HAND 1 Nov")
                .row("Store", "Kind", "Amount (t)")
                .row("Big", "clamp", 400)
                .row()
                .row("CATTLE")
                .row("Group", "Head", "Intake (kg DM/day)", "Days")
                .row("Cows", 60, 10, 180)
                .row()
                .row("That is all"));
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A");
        assertThat(names(found.rows(Stocks.LIST), Stocks.STORE)).containsExactly("Big");
        assertThat(names(found.rows(Herds.LIST), Herds.GROUP)).containsExactly("Cows");
        assertThat(found.findings())
                .extracting(Finding::message)
                .containsExactlyInAnyOrder(
                        "This row of totals is not read as a row of Fields.",
                        "This row holds nothing but \"That is all\", so it is not read as a row of Herds.");
    }

    @Test
    void aListThatIsNotReadIsToldBesideOneThatIs() {
        FoundLists found = find(new SheetOf("Farm")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row()
                .row("Cattle")
                .row("Group", "Head", "Eats", "Days")
                .row("Cows", 60, 10, 180));
        assertThat(found.rows(Herds.LIST).size()).isZero();
        assertThat(found.findings()).anySatisfy(finding -> {
            assertThat(finding.cell().orElseThrow().toString()).isEqualTo("Farm!A5");
            assertThat(finding.message())
                    .startsWith("This row looks like the header of the list Herds, but it has no column Intake, so");
        });
    }

    @Test
    void tonnesBesideAClampAreInStoreOnASheetOfStocksOnly() {
        Object[] header = {"Clamp", "Tonnes", "DM %"};
        FoundLists stocks = find(new SheetOf("Silage in store").row(header).row("Big", 400, 28));
        assertThat(names(stocks.rows(Stocks.LIST), Stocks.STORE)).containsExactly("Big");
        FoundLists capacities = find(new SheetOf("Clamp capacities").row(header).row("Big", 400, 28));
        assertThat(capacities.rows(Stocks.LIST).size()).isZero();
        FoundLists both = find(
                new SheetOf("Stocks").row("Store", "Clamp", "Tonnes", "DM %").row("First cut", "Big", 400, 28));
        assertThat(names(both.rows(Stocks.LIST), Stocks.STORE)).containsExactly("First cut");
    }

    @Test
    void silageWithItsUnitIsWhatAHeadEatsAndALotIsAStore() {
        ListRows herds = find(new SheetOf("Winter")
                        .row("Group", "Number", "Silage kg fresh/hd/day", "Silage DM %", "Days")
                        .row("Cows", 80, 42, 28, 150))
                .rows(Herds.LIST);
        assertThat(herds.number(Herds.INTAKE, 0)).isEqualTo(42);
        assertThat(herds.unit(Herds.INTAKE, 0).orElseThrow().symbol()).isEqualTo("kg/d");
        assertThat(herds.number(Herds.DM, 0)).isEqualTo(28);
        ListRows stocks = find(new SheetOf("Sheds")
                        .row("Lot", "No. bales", "Bale weight (kg)", "DM %")
                        .row("2025 hay", 300, 18, 85))
                .rows(Stocks.LIST);
        assertThat(names(stocks, Stocks.STORE)).containsExactly("2025 hay");
        assertThat(stocks.number(Stocks.COUNT, 0)).isEqualTo(300);
    }

    @Test
    void aFieldWithoutAreaIsStillARow() {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Area (ha)").row("A", 4).row("B", null));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 1)).isEqualTo(ListRows.State.BLANK);
    }

    @Test
    void namesThatLookLikePatternsNumbersOrFormulasAreNames() {
        String longName = "x".repeat(300);
        Object[] names = {
            "*", "?", "~", ">5", "=HYPERLINK(\"a\")", "007", longName, "O'Brien", "Total Acre Field", "Sum"
        };
        SheetOf sheet = new SheetOf("Fields").row("Field", "Area (ha)");
        for (Object name : names) {
            sheet.row(name, 4);
        }
        sheet.row(7, 4).row(7.5, 4).row("\u00a0Hill\u2007\u200b", 4);
        ListRows fields = find(sheet).rows(Fields.LIST);
        assertThat(names(fields, Fields.FIELD))
                .containsExactly(
                        "*",
                        "?",
                        "~",
                        ">5",
                        "=HYPERLINK(\"a\")",
                        "007",
                        longName,
                        "O'Brien",
                        "Total Acre Field",
                        "7",
                        "7.5",
                        "Hill");
    }

    @Test
    void aNameThatStandsTwiceOnOneHoldingIsAStop() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Holding", "Field", "Area (ha)")
                .row("East", "Home Field", 4)
                .row("West", "Home Field", 4)
                .row("west ", "HOME FIELD", 4));
        assertThat(messages(found, Severity.STOP)).singleElement().asString().contains("Fields!B3");
        assertThat(found.findings().get(0).cell()).hasValue(new CellAddress("Fields", 3, 1));
    }

    @Test
    void anEmptyWorkbookHasNoListsAndNoFindings() {
        FoundLists found = find(new SheetOf("Sheet1"));
        assertThat(found.places()).isEmpty();
        assertThat(found.findings()).isEmpty();
        assertThat(found.rows(Fields.LIST).size()).isZero();
        assertThat(ListFinder.find(List.of()).rows(Jobs.LIST).size()).isZero();
    }
}
