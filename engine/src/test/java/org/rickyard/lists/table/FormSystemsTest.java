package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.quantity.Units;

/** A form that tells one thing in metric units and in customary ones. */
class FormSystemsTest {
    private static FoundLists found(SheetOf... sheets) {
        return ListFinder.find(List.of(sheets));
    }

    private static SheetOf clamp(Object... length) {
        return new SheetOf("Clamp")
                .row("Item", "Metric", "Imperial")
                .row("Clamp", "North", "North")
                .row("Kind", "walled", "walled")
                .row(length)
                .row("Width", 12, 39)
                .row("Wall height", 2.4, 8)
                .row("Dry matter %", 30, 30);
    }

    /** The second was read as a clamp of 131 m by 39 m. */
    @Test
    void theCustomaryFiguresAreNoOtherThing() {
        FoundLists found = found(clamp("Length", 40, 131.2));
        assertThat(found.rows(Clamps.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Clamps.LIST).number(Clamps.LENGTH, 0)).isEqualTo(40);
        assertThat(said(found))
                .contains("NOTE Clamp!C2 The figures here say in other units what Clamp!B2 and those below it say, so"
                        + " they are not read as another thing.")
                .noneMatch(line -> line.startsWith("STOP"));
    }

    @Test
    void whichIsRightIsAskedWhereTheyDiffer() {
        FoundLists found = found(clamp("Length", 40, 113.2));
        assertThat(found.rows(Clamps.LIST).size()).isZero();
        assertThat(said(found))
                .contains(
                        "STOP Clamp!C4 \"Length\" is told here as \"113.2\", and in metric units in Clamp!B4 as \"40\","
                                + " which is not the same. Mend one of them, or clear this one: till then nothing of this form is"
                                + " read.");
        assertThat(said(found(clamp("Length", null, 131.2))))
                .anyMatch(line -> line.startsWith("STOP Clamp!C4") && line.contains("not at all"));
    }

    /** The metric figures would be taken for feet. */
    @Test
    void theUnitsAreThoseBehindTheFiguresThatAreRead() {
        ListRows clamps = found(new SheetOf("Clamp")
                        .row("Item", "US customary", "Unit", "Metric units", "Unit")
                        .row("Clamp", "North", null, "North", null)
                        .row("Kind", "walled", null, "walled", null)
                        .row("Length", 131, "ft", 40, "m")
                        .row("Width", 39.4, "ft", 12, "m")
                        .row("Wall height", 9.84, "ft", 3, "m"))
                .rows(Clamps.LIST);
        assertThat(clamps.size()).isEqualTo(1);
        assertThat(clamps.number(Clamps.LENGTH, 0)).isEqualTo(40);
        assertThat(clamps.unit(Clamps.LENGTH, 0)).hasValue(Units.M);
    }

    /** It was read as two sprayers, one called "Metric" and one "Imperial" of 79 m. */
    @Test
    void theHeadsMayStandBesideWhatItIs() {
        FoundLists found = found(new SheetOf("Sprayer")
                .row("Sprayer", "Metric", "Imperial")
                .row("Type", "sprayer", "sprayer")
                .row("Tank", 2000, 440)
                .row("Working width", 24, 79)
                .row("Speed", 12, 7.5)
                // What is noted is no figure that must agree.
                .row("Notes", "new hoses", "US gallons")
                .row("Number of nozzles", 48, 48));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(machines.text(Machines.MACHINE, 0)).isEqualTo("Sprayer");
        assertThat(machines.number(Machines.WORKING_WIDTH, 0)).isEqualTo(24);
        assertThat(said(found))
                .anyMatch(line -> line.startsWith("NOTE Sprayer!C2 The figures here say in other units"))
                .noneMatch(line -> line.startsWith("STOP"));
    }

    @Test
    void twoThingsOfOtherHeadsStayTwo() {
        assertThat(found(new SheetOf("Clamps")
                                .row("Item", "Metric one", "The other, imperial and old")
                                .row("Clamp", "North", "South")
                                .row("Kind", "walled", "walled")
                                .row("Length", 40, 30)
                                .row("Width", 12, 10)
                                .row("Wall height", 3, 2))
                        .rows(Clamps.LIST)
                        .size())
                .isEqualTo(2);
    }
}
