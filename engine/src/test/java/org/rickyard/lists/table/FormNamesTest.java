package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.read.ListFinder;

/** Forms of which no label says what their thing is called. */
class FormNamesTest {
    private static FoundLists found(SheetOf... sheets) {
        return ListFinder.find(List.of(sheets));
    }

    private static SheetOf clamp(String... above) {
        SheetOf sheet = new SheetOf("Yard");
        for (String line : above) {
            sheet.row(line);
        }
        return sheet.row("Kind", "walled")
                .row("Length (m)", 40)
                .row("Width (m)", 12)
                .row("Wall height (m)", 3);
    }

    /** It was told what it lacks, and nothing was worked out. */
    @Test
    void theTitleNamesTheOneThing() {
        FoundLists found = found(
                clamp("Silage clamp at Hill Farm", null, "Holding: Hill Farm", "Dimensions"),
                new SheetOf("Fields")
                        .row("Holding", "Field", "Area (ha)")
                        .row("Hill Farm", "Top", 5)
                        .row("Low Farm", "Bottom", 6));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.size()).isEqualTo(1);
        assertThat(clamps.text(Clamps.CLAMP, 0)).isEqualTo("Silage clamp at Hill Farm");
        assertThat(clamps.address(Clamps.CLAMP, 0)).hasValue(new CellAddress("Yard", 0, 0));
        assertThat(clamps.number(Clamps.LENGTH, 0)).isEqualTo(40);
        // What stands between the title and the form is not lost.
        assertThat(clamps.text(Clamps.HOLDING, 0)).isEqualTo("Hill Farm");
        assertThat(said(found))
                .contains("NOTE Yard!A1 No label of the form below says what the Clamp is called, so it goes by what"
                        + " stands here: \"Silage clamp at Hill Farm\". To call it otherwise, write a label Clamp with its"
                        + " name beside it.")
                .noneMatch(line -> line.startsWith("STOP") || line.startsWith("CAUTION"));
    }

    /** It was read as a second sprayer called "Sprayer card". */
    @Test
    void besideAListTheTitleOfACardIsNoFurtherMachine() {
        SheetOf list = new SheetOf("Machines")
                .row("Machine", "Type", "Working width (m)", "Speed (km/h)")
                .row("Boom 24", "sprayer", 24, 10);
        FoundLists found = found(list, sprayer("Sprayer card"));
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(1);
        assertThat(said(found)).anyMatch(line -> line.startsWith("CAUTION Card!") && line.contains("not read"));
        assertThat(found(sprayer("Sprayer card")).rows(Machines.LIST).size()).isEqualTo(1);
    }

    private static SheetOf sprayer(String title) {
        return new SheetOf("Card")
                .row(title)
                .row("Type", "sprayer")
                .row("Working width (m)", 30)
                .row("Speed (km/h)", 12)
                .row("Tank (L)", 3000);
    }

    /** The name of a farm is none of a clamp, nor is there one for each of two. */
    @Test
    void whatSaysNothingOfTheThingIsNoName() {
        assertThat(found(clamp("Hill Farm")).rows(Clamps.LIST).size()).isZero();
        assertThat(found(clamp("Farm: Clamp House")).rows(Clamps.LIST).size()).isZero();
        assertThat(said(found(clamp("Hill Farm"))))
                .anyMatch(line -> line.startsWith("CAUTION") && line.contains("none of them says Clamp"));
        assertThat(found(new SheetOf("Yard")
                                .row("Our clamps")
                                .row("Kind", "walled", "walled")
                                .row("Length (m)", 40, 30)
                                .row("Width (m)", 12, 10)
                                .row("Wall height (m)", 3, 3))
                        .rows(Clamps.LIST)
                        .size())
                .isZero();
    }

    @Test
    void headsNameSeveralThings() {
        FoundLists found = found(new SheetOf("Yard")
                .row("Our clamps")
                .row(null, "Unit", "North", "South")
                .row("Kind", null, "walled", "walled")
                .row("Length", "m", 40, 30)
                .row("Width", "m", 12, 10)
                .row("Wall height", "m", 3, 2.5));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.size()).isEqualTo(2);
        assertThat(clamps.text(Clamps.CLAMP, 1)).isEqualTo("South");
        assertThat(clamps.number(Clamps.LENGTH, 1)).isEqualTo(30);
    }

    @Test
    void theTitleOfACalibrationTellsTheTypeToo() {
        FoundLists found = found(new SheetOf("Yard")
                .row("Sprayer calibration")
                .row("Nozzle spacing (m)", 0.5)
                .row("Speed (km/h)", 8)
                .row("Number of nozzles", 24)
                .row("Tank (L)", 1200));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(machines.text(Machines.TYPE, 0)).isEqualTo("sprayer");
        assertThat(machines.text(Machines.MACHINE, 0)).isEqualTo("Sprayer calibration");
        assertThat(machines.number(Machines.NOZZLE_SPACING, 0)).isEqualTo(0.5);
    }

    /** Beside a list of clamps a form is a card of one of them, and which is not known. */
    @Test
    void besideAListProperItIsNotNamed() {
        FoundLists found = found(
                clamp("Silage clamp at Hill Farm"),
                new SheetOf("Clamps")
                        .row("Clamp", "Kind", "Length (m)", "Width (m)", "Wall height (m)")
                        .row("North", "walled", 40, 12, 3));
        assertThat(found.rows(Clamps.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Clamps.LIST).text(Clamps.CLAMP, 0)).isEqualTo("North");
    }
}
