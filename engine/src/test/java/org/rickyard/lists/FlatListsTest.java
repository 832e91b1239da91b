package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.names;

import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding.Severity;

/** Fields and the work on them in one list. */
class FlatListsTest {
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
    void aFlatListNamesItsFieldsAsFieldListsDo() {
        FoundLists found = find(new SheetOf("Plan")
                .row("Sheet/parcel no.", "Crop", "Area (ha)", "Work", "Machine(s)", "Water rate (L/ha)")
                .row("7", "Wheat", 4, "spray", "Sprayer", 100));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Jobs.LIST).text(Jobs.MACHINE, 0)).isEqualTo("Sprayer");
    }

    @Test
    void aFlatListMayHaveAnEmptyColumnBeforeItsProducts() {
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

    /** Who grows trees has blocks, and writes beside them what is sprayed there: none of it was worked out. */
    @Test
    void theBlocksOfAnOrchardMayHaveTheirWorkBesideThem() {
        FoundLists found = find(new SheetOf("Blocks")
                .row(
                        "Block",
                        "Area (ha)",
                        "Row spacing (m)",
                        "Tree height (m)",
                        "Water volume (L/ha)",
                        "Machine",
                        "Product",
                        "Dose (L/ha)")
                .row("Top", 2.4, 3.5, 3.2, 500, "Fan", "Scab", 1)
                .row("Low", 3.1, 4, 3.5, 500, "Fan", "Scab", 1));
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("Top", "Low");
        assertThat(found.rows(Fields.LIST).number(Fields.ROW_SPACING, 1)).isEqualTo(4);
        assertThat(names(found.rows(Jobs.LIST), Jobs.FIELD)).containsExactly("Top", "Low");
        assertThat(found.rows(Jobs.LIST).has(Jobs.BLOCK)).isFalse();
        assertThat(messages(found, Severity.STOP)).isEmpty();
        // Beside fields blocks stay what these are worked together in.
        ListRows jobs = find(new SheetOf("Blocks")
                        .row("Field", "Block", "Area (ha)", "Row spacing (m)", "Machine", "Water volume (L/ha)")
                        .row("A", "Top", 2.4, 3.5, "Fan", 500))
                .rows(Jobs.LIST);
        assertThat(names(jobs, Jobs.BLOCK)).containsExactly("Top");
        assertThat(names(jobs, Jobs.FIELD)).containsExactly("A");
    }
}
