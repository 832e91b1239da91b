package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.names;

import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding.Severity;

/** Fields, the work on them and the machine that does it in one row, as worked examples set them out. */
class FlatMachinesTest {
    @Test
    void aRowWithAllOfItIsFieldJobAndMachine() {
        FoundLists found = find(new SheetOf("Example")
                .row(
                        "Field",
                        "Area (ha)",
                        "Machine",
                        "Type",
                        "Tank (L)",
                        "Boom width (m)",
                        "Speed (km/h)",
                        "Water volume (L/ha)",
                        "Product",
                        "Dose (L/ha)")
                .row("A", 14, "Boom 18", "sprayer", 900, 18, 9, 120, "One", 2)
                .row("B", 6, "Boom 18", "sprayer", 900, 18, 7, 120, "One", 2)
                .row("C", 3, "Mist", "knapsack", 12, 1, 3, 300, "One", 2));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(names(machines, Machines.MACHINE)).containsExactly("Boom 18", "Mist");
        assertThat(names(machines, Machines.TYPE)).containsExactly("sprayer", "knapsack");
        assertThat(machines.number(Machines.TANK, 1)).isEqualTo(12);
        assertThat(machines.number(Machines.WORKING_WIDTH, 0)).isEqualTo(18);
        // The speed is the job's own, and may differ from one to the next.
        assertThat(machines.has(Machines.SPEED)).isFalse();
        assertThat(found.rows(Jobs.LIST).number(Jobs.SPEED, 1)).isEqualTo(7);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(3);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aHeaderThatSaysWhatTheMachinesAreIsTheirType() {
        FoundLists found = find(new SheetOf("Example")
                .row("Field", "Acres", "Sprayer", "Tank (L)", "Water volume (L/ac)", "Product", "Dose (L/ac)")
                .row("A", 60, "Rig", 2500, 40, "One", 0.5));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(names(machines, Machines.TYPE)).containsExactly("sprayer");
        assertThat(machines.address(Machines.TYPE, 0)).hasToString("Optional[Example!C1]");
        assertThat(machines.number(Machines.TANK, 0)).isEqualTo(2500);
        assertThat(messages(found, Severity.STOP)).isEmpty();
    }

    @Test
    void withoutATypeNothingIsTakenToBeAMachine() {
        FoundLists found = find(new SheetOf("Example")
                .row("Field", "Area (ha)", "Machine", "Tank (L)", "Water volume (L/ha)")
                .row("A", 60, "Rig", 2500, 100));
        assertThat(found.rows(Machines.LIST).size()).isZero();
    }

    /** They were taken for a list of fields beside one of machines: each machine on each field, the same one twice. */
    @Test
    void workBetweenFieldsAndMachinesMakesThemOneList() {
        FoundLists found = find(new SheetOf("Example")
                .row("Field", "Area (ha)", "Operation", "Machine", "Type", "Width (m)", "Efficiency (%)")
                .row("A", 12, "mowing", "Mower 3 m", "mower", 3, 80)
                .row("B", 8, "mowing", "Mower 3 m", "mower", 3, 80));
        assertThat(names(found.rows(Machines.LIST), Machines.MACHINE)).containsExactly("Mower 3 m");
        assertThat(names(found.rows(Jobs.LIST), Jobs.OPERATION)).containsExactly("mowing", "mowing");
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void fieldsBesideMachinesWithoutWorkStayTwoLists() {
        FoundLists found = find(new SheetOf("Farm")
                .row("Field", "Area (ha)", "Machine", "Type", "Width (m)")
                .row("A", 12, "Mower 3 m", "mower", 3)
                .row("B", 8, "Rake", "rake", 6));
        assertThat(found.rows(Jobs.LIST).size()).isZero();
        assertThat(names(found.rows(Machines.LIST), Machines.MACHINE)).containsExactly("Mower 3 m", "Rake");
    }

    @Test
    void aMachineThatContradictsItselfSaysSo() {
        FoundLists found = find(new SheetOf("Example")
                .row("Field", "Area (ha)", "Sprayer", "Tank (L)", "Water volume (L/ha)")
                .row("A", 60, "Rig", 2500, 100)
                .row("B", 40, "Rig", 2000, 100));
        assertThat(found.rows(Machines.LIST).number(Machines.TANK, 0)).isEqualTo(2500);
        assertThat(messages(found, Severity.CAUTION))
                .containsExactly("The machine \"Rig\" has another tank here than in Example!D2; the first is used.");
    }

    @Test
    void aMachineListProperIsTheOneThatCounts() {
        FoundLists found = find(
                new SheetOf("Machines").row("Machine", "Type", "Tank (L)").row("Rig", "sprayer", 1800),
                new SheetOf("Jobs")
                        .row("Field", "Area (ha)", "Sprayer", "Tank (L)", "Water volume (L/ha)")
                        .row("A", 60, "Rig", 2500, 100));
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Machines.LIST).number(Machines.TANK, 0)).isEqualTo(1800);
        assertThat(messages(found, Severity.NOTE)).anyMatch(note -> note.contains("Tank (L)"));
    }

    /** What the first said was looked up in the column of the second, or on its sheet, and called another. */
    @Test
    void whatIsTheSameInAnotherTableIsNoContradiction() {
        Object[] headers = {"Field", "Area (ha)", "Operation", "Machine", "Type", "Width (m)", "Tank"};
        FoundLists found = find(
                new SheetOf("Here")
                        .row(headers)
                        .row("A", 12, "spraying", "Rig", "sprayer", 24, "2000 L")
                        .row()
                        .row()
                        .row("Crop", "Field", "Area (ac)", "Operation", "Machine", "Type", "Tank", "Width (m)")
                        .row("wheat", "A", 29.65, "spraying", "Rig", "sprayer", "2000 L", 24),
                new SheetOf("There").row(headers).row("A", 12, "spraying", "Rig", "sprayer", 24, "2000 L"));
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(messages(found, Severity.CAUTION)).noneMatch(message -> message.contains("another"));
    }

    @Test
    void whatIsAnotherInAnotherTableSaysSo() {
        Object[] headers = {"Field", "Area (ha)", "Operation", "Machine", "Type", "Width (m)"};
        FoundLists found = find(
                new SheetOf("Here").row(headers).row("A", 12, "mowing", "Disc", "mower", 3),
                new SheetOf("There")
                        .row("Field", "Area (ac)", "Operation", "Machine", "Type", "Crew", "Width (m)")
                        .row("A", 31, "mowing", "Disc", "mower", 1, 3.2));
        assertThat(messages(found, Severity.CAUTION))
                .contains(
                        "The field \"A\" has another area here than in Here!B2; the first is used.",
                        "The machine \"Disc\" has another working width here than in Here!F2; the first is used.",
                        "The machine \"Disc\" has a crew here and none in Here!A2; the first is used.");
    }

    /** A list of tractors beside it took the mower's place: "there is no machine 'Mower 3 m'", though its row says all of it. */
    @Test
    void machinesOfTheRowStandBesideAListThatHasNoneOfThem() {
        SheetOf tractors =
                new SheetOf("Tractors").row("Tractor", "Type", "PTO power (kW)").row("T", "tractor", 70);
        FoundLists found = FoundIn.find(
                new SheetOf("Mowing")
                        .row("Field", "ha", "Operation", "Machine", "Type", "Width (m)", "Speed (km/h)", "Tractor")
                        .row("Ley", 8, "mowing", "Mower 3 m", "disc mower", 3, 10, "T"),
                tractors);
        ListRows machines = found.rows(Machines.LIST);
        assertThat(names(machines, Machines.MACHINE)).containsExactly("Mower 3 m", "T");
        assertThat(machines.number(Machines.WORKING_WIDTH, 0)).isEqualTo(3);
        assertThat(messages(found, Severity.STOP)).isEmpty();

        // Where the list has one of them, it is the machine list.
        FoundLists listed = FoundIn.find(
                new SheetOf("Mowing")
                        .row("Field", "ha", "Operation", "Machine", "Type", "Width (m)")
                        .row("Ley", 8, "mowing", "Mower 3 m", "disc mower", 3),
                new SheetOf("Machines").row("Machine", "Type", "Width (m)").row("Mower 3 m", "disc mower", 2.9));
        assertThat(listed.rows(Machines.LIST).size()).isEqualTo(1);
        assertThat(listed.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0)).isEqualTo(2.9);
    }

    /** The gang was one machine of that name, beside the forager and the trailer that are listed. */
    @Test
    void aGangOfListedMachinesIsNoMachine() {
        FoundLists found = FoundIn.find(
                new SheetOf("Lifting")
                        .row("Field", "ha", "Operation", "Machine", "Type", "Width (m)")
                        .row("Ley", 8, "chopping", "Forager; Trailer 14 t x 3", "forager", 6),
                new SheetOf("Machines")
                        .row("Machine", "Type", "Payload (t)")
                        .row("Forager", "forager", null)
                        .row("Trailer 14 t", "trailer", 14));
        assertThat(names(found.rows(Machines.LIST), Machines.MACHINE)).containsExactly("Forager", "Trailer 14 t");
    }

    /** A slip made another machine without width and speed, and nobody was asked which is meant. */
    @Test
    void aSlipIsNoMachineOfItsOwn() {
        FoundLists found = FoundIn.find(
                new SheetOf("Spraying")
                        .row("Field", "ha", "Sprayer", "Tank (L)", "Water volume (L/ha)")
                        .row("Ley", 8, "Sprayer24m", 3000, 200),
                new SheetOf("Machines")
                        .row("Machine", "Type", "Width (m)", "Tank (L)")
                        .row("Sprayer 24 m", "sprayer", 24, 3000));
        assertThat(names(found.rows(Machines.LIST), Machines.MACHINE)).containsExactly("Sprayer 24 m");
    }

    /** Forty rows of trees made a sprayer of 140 m. */
    @Test
    void theRowsOfAnOrchardAreNoRowsOfItsSprayer() {
        FoundLists found = find(new SheetOf("Orchards")
                .row("Field", "ha", "Row width (m)", "Rows", "Machine", "Type", "Tank (L)", "Water volume (L/ha)")
                .row("Top", 10, 3.5, 40, "Blast", "air-blast sprayer", 1500, 300));
        assertThat(found.rows(Machines.LIST).has(Machines.ROW_WIDTH)).isFalse();
        assertThat(found.rows(Fields.LIST).number(Fields.ROW_SPACING, 0)).isEqualTo(3.5);
    }

    /** Of two spacings neither was taken, and a stop said so. */
    @Test
    void ofTwoSpacingsNoneIsTakenFromTheField() {
        FoundLists found = find(new SheetOf("Planting")
                .row("Field", "ha", "Row spacing (cm)", "Operation", "Planter", "Type", "Rows", "Row width (cm)")
                .row("All", 80, 75, "planting", "8-row", "planter", 8, 75));
        assertThat(messages(found, Severity.STOP)).noneMatch(message -> message.contains("Row width of Machines"));
    }

    /** The spacing was the field's alone, and a planter of sixteen rows had no width. */
    @Test
    void rowsThatAreCountedTakeTheirSpacingFromTheSameHeaderAsTheField() {
        FoundLists found = find(new SheetOf("Planting")
                .row("Field", "Acres", "Operation", "Planter", "Type", "Rows", "Row spacing (in)", "Speed (mph)")
                .row("All corn", 80, "planting", "16-row", "planter", 16, 30, 5.5));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.ROWS, 0)).isEqualTo(16);
        assertThat(machines.number(Machines.ROW_WIDTH, 0)).isEqualTo(30);
        assertThat(found.rows(Fields.LIST).number(Fields.ROW_SPACING, 0)).isEqualTo(30);
    }
}
