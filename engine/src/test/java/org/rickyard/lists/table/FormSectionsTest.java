package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Herds;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.read.ListFinder;

/** A form of a whole farm tells of several things, in sections below or beside one another or below a list proper. */
class FormSectionsTest {
    private static FoundLists found(SheetOf sheet) {
        return ListFinder.find(List.of(sheet));
    }

    /** The width of the clamp and that of the forager were one thing's, so neither was used, and no clamp was read. */
    @Test
    void eachSectionTellsOfItsOwnThing() {
        FoundLists found = found(new SheetOf("Plan")
                .row("1. The field")
                .row("Field name:", "Long Acre")
                .row("Area (ha):", 11.5)
                .row("Crop:", "grass")
                .row()
                .row("2. The clamp")
                .row("Clamp:", "Main")
                .row("Kind:", "walled")
                .row("Length (m):", 30)
                .row("Width (m):", 10)
                .row("Wall height (m):", 2.5)
                .row("DM target (%)", 30)
                .row()
                .row("3. The gang")
                .row("Machine:", "Big blue")
                .row("Type:", "forager")
                .row("Working width (m):", 6)
                .row("Speed (km/h):", 8)
                .row()
                .row("Group", "Milkers")
                .row("Head", 140)
                .row("Intake (kg DM/head/day)", 9.5)
                .row("Days", 180)
                .row("Clamp", "Main"));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(11.5);
        assertThat(found.rows(Clamps.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Clamps.LIST).number(Clamps.FLOOR_WIDTH, 0)).isEqualTo(10);
        assertThat(found.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0)).isEqualTo(6);
        assertThat(found.rows(Herds.LIST).text(Herds.CLAMP, 0)).isEqualTo("Main");
        assertThat(found.findings()).extracting(finding -> finding.severity()).containsOnly(Severity.NOTE);
    }

    @Test
    void thingsBesideOneAnotherAreTwo() {
        FoundLists found = found(new SheetOf("Farm")
                .row("Clamp", "Main", null, "Machine", "Mower")
                .row("Kind", "walled", null, "Type", "mower")
                .row("Length (m)", 30, null, "Width (m)", 3)
                .row("Width (m)", 10, null, "Speed (km/h)", 12)
                .row("Wall height (m)", 2.5));
        assertThat(found.rows(Clamps.LIST).number(Clamps.FLOOR_WIDTH, 0)).isEqualTo(10);
        assertThat(found.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0)).isEqualTo(3);
    }

    /** They were read as fields called "Clamp" and "Kind", and the clamp was lost without a word. */
    @Test
    void aFormBelowAListIsNoneOfItsRows() {
        FoundLists found = found(new SheetOf("Farm")
                .row("Field", "Crop", "Area (ha)")
                .row("One", "grass", 10)
                .row("Two", "grass", 5)
                .row()
                .row("Silage clamp")
                .row("Clamp", "Home")
                .row("Kind", "walled")
                .row("Length (m)", 30)
                .row("Width (m)", 10)
                .row("Wall height (m)", 2.5));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(found.rows(Clamps.LIST).text(Clamps.CLAMP, 0)).isEqualTo("Home");
        assertThat(said(found)).allMatch(line -> line.startsWith("NOTE"));
    }

    /** Units between figures and remarks are headers of figures elsewhere: "ha" is an area. */
    @Test
    void unitsAreNoLabels() {
        FoundLists found = found(new SheetOf("Sprayer")
                .row("Parameter", "Your figure", "Units", "Where to find it")
                .row("Sprayer", "Boom 28", null, "name")
                .row("Boom width", 28, "m", "maker's book")
                .row("Tank capacity", 4200, "litres", "maker's book")
                .row("Forward speed", 12, "km/h", "radar")
                .row("Field", "Ridge")
                .row("Area", 21, "ha", "map")
                .row("Spray volume", 150, "l/ha", "label"));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(21);
        assertThat(found.findings()).extracting(finding -> finding.severity()).containsOnly(Severity.NOTE);
    }

    /** What is counted below a header beside another is a list. */
    @Test
    void aListOfNumberedThingsEndsTheForm() {
        FoundLists found = found(new SheetOf("Test")
                .row("Sprayer", "Blue")
                .row("Boom width (m)", 12)
                .row("Tank (L)", 800)
                .row("Speed (km/h)", 8)
                .row()
                .row("Nozzle", "Flow (L/min)")
                .row(1, 1.18)
                .row(2, 1.22));
        assertThat(found.rows(Machines.LIST).number(Machines.TANK, 0)).isEqualTo(800);
        assertThat(said(found)).noneMatch(line -> line.contains("\"Nozzle\" could mean"));
    }
}
