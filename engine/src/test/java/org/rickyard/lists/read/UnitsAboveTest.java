package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.said;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** A line above a list that says in what it is measured: acres were reckoned as hectares, with a note. */
class UnitsAboveTest {
    private static FoundLists fields(String above) {
        return find(new SheetOf("Land").row(above).row("Field", "Crop", "Area").row("A", "Grass", 12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "All areas in acres, distances in miles",
                "Areas are in acres.",
                "Areas: ac",
                "Field areas (acres)",
                "Fields (acres)",
                "Measured in acres unless stated",
                "Units: acres, ft, mph",
                "Units are ft and acres",
                "Areas are in acres (1 ac is 0.405 ha)",
                "Areas in acres - from the old map"
            })
    void acresSaidAboveAreAsked(String above) {
        FoundLists found = fields(above);
        assertThat(found.rows(Fields.LIST).gives(Fields.AREA, 0)).isFalse();
        assertThat(messages(found, Severity.STOP))
                .singleElement()
                .isEqualTo(
                        "The unit of \"Area\" is not certain. \"" + above + "\" (Land!A1) stands above it: is it in ac?"
                                + " Write the unit in the header, Area (ac) or Area (ha). Until then its cells are not used.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Twelve Acres Farm",
                "Client: Miles Acre",
                "Fields in Acres Lane",
                "All areas in hectares",
                "Distances in miles",
                "Yields in t/ac",
                "Area of the farm: 120 acres"
            })
    void namesAndOtherThingsAreNoUnitOfTheArea(String above) {
        FoundLists found = fields(above);
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(12);
        assertThat(found.rows(Fields.LIST).gives(Fields.AREA, 0)).isTrue();
        assertThat(messages(found, Severity.STOP)).isEmpty();
    }

    /** Who leaves a margin beside the list writes the title in it. */
    @Test
    void aTitleInTheMarginStandsAboveTheList() {
        FoundLists found = find(new SheetOf("Land")
                .row("All areas in acres")
                .row(null, "Field", "Crop", "Area")
                .row(null, "A", "Grass", 12));
        assertThat(found.rows(Fields.LIST).gives(Fields.AREA, 0)).isFalse();
        FoundLists beside = find(new SheetOf("Land")
                .row("All in feet")
                .row("Machine", "Type", "Working width (ft)", null, "Field", "Crop", "Area (ha)", "Run length")
                .row("M", "mower", 10, null, "A", "Grass", 12, 300));
        assertThat(messages(beside, Severity.STOP)).isEmpty();
    }

    /** Inches between rows, or of rain, are nothing that a machine is wide. */
    @ParameterizedTest
    @ValueSource(
            strings = {"Row spacing in inches", "Rainfall in inches", "Nozzle spacing in inches", "Pressure in psi"})
    void aWordOfAnotherThingIsNotOfTheWidth(String above) {
        FoundLists found = find(new SheetOf("Kit")
                .row(above)
                .row("Machine", "Type", "Working width", "Speed")
                .row("M", "mower", 3, 10));
        assertThat(found.rows(Machines.LIST).gives(Machines.WORKING_WIDTH, 0)).isTrue();
        assertThat(messages(found, Severity.STOP)).isEmpty();
    }

    @Test
    void eachColumnIsAskedForWhatIsSaidOfIt() {
        FoundLists found = find(new SheetOf("Kit")
                .row("widths in feet; speeds mph")
                .row("Machine", "Type", "Working width", "Overlap", "Speed", "Turn time")
                .row("M", "mower", 10, 0.2, 6, 20));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.gives(Machines.WORKING_WIDTH, 0)).isFalse();
        assertThat(machines.gives(Machines.SPEED, 0)).isFalse();
        assertThat(machines.gives(Machines.OVERLAP, 0)).isTrue();
        assertThat(machines.gives(Machines.TURN_TIME, 0)).isTrue();
        assertThat(messages(found, Severity.STOP)).hasSize(2);
    }

    /** What a header, a row of units or the sheet Layout says stands against any line above. */
    @Test
    void whatSaysItsUnitIsNotAsked() {
        for (FoundLists found : new FoundLists[] {
            find(new SheetOf("Land")
                    .row("All in acres")
                    .row("Field", "Area (ha)")
                    .row("A", 12)),
            find(new SheetOf("Land")
                    .row("All in acres")
                    .row("Field", "Area")
                    .row(null, "ha")
                    .row("A", 12)),
            find(
                    new SheetOf("Land").row("All in acres").row("Field", "Area").row("A", 12),
                    new SheetOf("Layout")
                            .row("List", "Column", "Header in this workbook", "Unit")
                            .row("Fields", "Area", "Area", "ha"))
        }) {
            assertThat(said(found)).noneMatch(line -> line.startsWith("STOP"));
            assertThat(found.rows(Fields.LIST).gives(Fields.AREA, 0)).isTrue();
        }
    }

    /** What stands above another list is said of that one. */
    @Test
    void aLineAboveAnotherListIsNotOfThisOne() {
        FoundLists found = find(new SheetOf("Farm")
                .row("All in feet")
                .row("Machine", "Type", "Working width (ft)")
                .row("M", "mower", 10)
                .row()
                .row("Field", "Area", "Run length")
                .row("A", 12, 300));
        assertThat(found.rows(Fields.LIST).gives(Fields.RUN_LENGTH, 0)).isTrue();
    }
}
