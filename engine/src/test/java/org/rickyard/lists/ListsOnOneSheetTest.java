package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.names;

import org.junit.jupiter.api.Test;

/** Several lists on one sheet, under and beside each other. */
class ListsOnOneSheetTest {
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
}
