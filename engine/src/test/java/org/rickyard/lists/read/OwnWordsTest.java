package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Units;

/** A workbook that says two things of itself is asked, and neither of them is taken. */
class OwnWordsTest {
    private static final SheetOf FIELDS =
            new SheetOf("Fields").row("Field", "Crop", "Sz").row("A", "grass", 4);

    private static SheetOf layout() {
        return new SheetOf("Layout").row("List", "Column", "Header in this workbook", "Unit");
    }

    private static List<String> stops(FoundLists found) {
        return found.findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .map(finding -> finding.cell().map(CellAddress::toString).orElse("-"))
                .toList();
    }

    @Test
    void theyMayStandBesideAndAboveOtherLists() {
        FoundLists beside = find(new SheetOf("Sheet1")
                .row(
                        "Field",
                        "Crop",
                        "Block",
                        "Area (ac)",
                        "Distance to fill point (miles)",
                        null,
                        "Item",
                        "Value",
                        "Unit")
                .row("A", "grass", "North", 4, 1, null, "Customary units", "US"));
        assertThat(beside.customary()).isEqualTo(CustomaryUnits.US);
        FoundLists between = find(new SheetOf("Sheet1")
                .row("Field", "Area (ac)", null, "Item", "Value", "Unit", null, "Machine", "Type", "Unit")
                .row("A", 4, null, "Customary units", "US", null, null, "Mower", "mower", "x")
                .table(new Grid.TableRange("Kit", 0, 1, 7, 9, 1, 0)));
        assertThat(between.customary()).isEqualTo(CustomaryUnits.US);
        FoundLists above = find(new SheetOf("Sheet1")
                .row("Item", "Value", "Unit")
                .row("Customary units", "UK")
                .row("Country", "other")
                .row()
                .row("Field", "Crop", "Area (ac)")
                .row("A", "grass", 4));
        assertThat(above.customary()).isEqualTo(CustomaryUnits.UK);
        assertThat(above.rows(Assumptions.LIST).size()).isEqualTo(2);
        assertThat(above.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(above.findings()).isEmpty();
    }

    @Test
    void twoUnitsOfOneHeaderAreAsked() {
        FoundLists found =
                find(FIELDS, layout().row("Fields", "Area", "Sz", "ha").row("Fields", "Area", "Sz", "ac"));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(stops(found)).containsExactly("Layout!C3", "Fields!C1");
    }

    @Test
    void twoColumnsOfOneHeaderAreAsked() {
        FoundLists found =
                find(FIELDS, layout().row("Fields", "Area", "Sz", "ha").row("Fields", "Perimeter", "Sz", "m"));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(found.rows(Fields.LIST).state(Fields.PERIMETER, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(stops(found)).contains("Layout!C3");
    }

    @Test
    void theSameTwiceAndAUnitGivenOnceAreNoContradiction() {
        FoundLists found = find(
                FIELDS,
                layout().row("Fields", "Area", "Sz", null)
                        .row("Fields", "Area", "Sz", "ac")
                        .row("fields", "area", "sz", "AC"));
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void customaryUnitsThatDifferSettleNothing() {
        SheetOf jobs = new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Water volume (gal/ac)")
                .row("A", "spray", "Sprayer", 20);
        SheetOf both = new SheetOf("Assumptions")
                .row("Item", "Value", "Unit")
                .row("Customary units", "UK")
                .row("Customary units", "US");
        FoundLists found = find(jobs, both);
        assertThat(found.customary()).isEqualTo(CustomaryUnits.UNSET);
        assertThat(found.rows(Jobs.LIST).state(Jobs.WATER_VOLUME, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(stops(found)).containsExactly("Assumptions!B3", "Jobs!D1");
        FoundLists again = find(
                jobs,
                new SheetOf("Assumptions")
                        .row("Item", "Value", "Unit")
                        .row("Customary units", "imperial")
                        .row("Customary units", "UK")
                        .row("Customary units", null));
        assertThat(again.customary()).isEqualTo(CustomaryUnits.UK);
        assertThat(stops(again)).isEmpty();
    }

    @Test
    void aRowOfUnitsThatContradictsTheHeaderIsAsked() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Distance to clamp (km)")
                .row(null, "ac", "km")
                .row("A", 4, 1));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(found.rows(Fields.LIST).number(Fields.DISTANCE_TO_CLAMP, 0)).isEqualTo(1);
        assertThat(stops(found)).containsExactly("Fields!B1");
    }
}
