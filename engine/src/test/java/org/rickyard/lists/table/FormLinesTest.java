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

/** Which cells of a form are labels, units, remarks and what is told; and which are the client's own results. */
class FormLinesTest {
    private static FoundLists found(SheetOf... sheets) {
        return ListFinder.find(List.of(sheets));
    }

    /** One word that is no unit made a thing of the column, and 20 ft were read as 20 m. */
    @Test
    void aUnitThatIsNotKnownLeavesTheOthersUnits() {
        FoundLists found = found(new SheetOf("Drilling")
                .row("Machine", "Disc drill")
                .row("Type", "drill")
                .row("Target population", 275, "/m2")
                .row("Seed size", 48, "g/1000")
                .row("Working width", 20, "ft")
                .row("Speed", 6, "mph"));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(machines.number(Machines.WORKING_WIDTH, 0)).isEqualTo(20);
        assertThat(machines.unit(Machines.WORKING_WIDTH, 0)).hasValue(Units.FT);
        assertThat(said(found)).noneMatch(line -> line.contains("No unit is written"));
    }

    /** A year or a page among remarks made a second clamp of them. */
    @Test
    void remarksAreNoOtherThing() {
        FoundLists headed = found(new SheetOf("Clamp")
                .row("Input", "Value", "Unit", "Notes")
                .row("Clamp", "Back", null, "as on the map")
                .row("Kind", "walled", null, "pick one")
                .row("Length", 45, "m", "at the floor")
                .row("Floor width", 14, "m", 2023)
                .row("Wall height", 3, "m", 12));
        assertThat(headed.rows(Clamps.LIST).size()).isEqualTo(1);
        FoundLists bare = found(new SheetOf("Clamp")
                .row("Clamp", "Back", "as on the map")
                .row("Kind", "walled", "pick one")
                .row("Length (m)", 45, "at the floor")
                .row("Floor width (m)", 14, "between the walls")
                .row("Wall height (m)", 3, 2023));
        assertThat(bare.rows(Clamps.LIST).size()).isEqualTo(1);
        assertThat(said(bare)).allMatch(line -> line.startsWith("NOTE"));
    }

    /** What a client works out below would overrule what it rests on. */
    @Test
    void resultsOfTheClientAreNoInputs() {
        SheetOf form = new SheetOf("Mower")
                .row("Machine", "Wide")
                .row("Type", "mower")
                .row("Working width (m)", 9)
                .row("Speed (km/h)", 14)
                .row("RESULTS")
                .row("Output (ha/h)", 10.1)
                .row("Field efficiency (%)", 80)
                .formula(5, 1);
        FoundLists found = found(form);
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.isFilled(Machines.FIELD_EFFICIENCY, 0)).isTrue();
        assertThat(machines.isFilled(Machines.OUTPUT, 0)).isFalse();
        assertThat(said(found))
                .contains("NOTE Mower!A6 \"Output (ha/h)\" stands here as a result of your own formulas, so it is not"
                        + " read as an input. If it is one, write it among the inputs above.");
    }

    @Test
    void labelsEndInAnyMark() {
        FoundLists found = found(new SheetOf("Bunker")
                .row("Bunker =", "North")
                .row("Kind =", "walled")
                .row("Length, ft =", 120)
                .row("Width, ft =", 40)
                .row("Wall height, ft =", 12));
        assertThat(found.rows(Clamps.LIST).text(Clamps.CLAMP, 0)).isEqualTo("North");
        assertThat(found.rows(Clamps.LIST).unit(Clamps.LENGTH, 0)).hasValue(Units.FT);
    }

    /** Labels merged over three columns. */
    @Test
    void whatIsToldMayStandFurtherOff() {
        FoundLists found = found(new SheetOf("Pit")
                .row("Pit", null, null, "Near")
                .row("Pit type", null, null, "walled")
                .row("Length (m)", null, null, 33)
                .row("Width (m)", null, null, 10)
                .row("Wall height (m)", null, null, 2.2));
        assertThat(found.rows(Clamps.LIST).text(Clamps.CLAMP, 0)).isEqualTo("Near");
        assertThat(found.rows(Clamps.LIST).number(Clamps.WALL_HEIGHT, 0)).isEqualTo(2.2);
    }

    /** A form begun with was passed over in silence; its blanks are missing, each with its cell. */
    @Test
    void whatIsNotFilledInYetIsMissing() {
        FoundLists found = found(new SheetOf("Clamp")
                .row("Clamp", "Yard")
                .row("Kind", "walled")
                .row("Length (m)", 35)
                .row("Width (m)")
                .row("Wall height (m)"));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.size()).isEqualTo(1);
        assertThat(clamps.address(Clamps.FLOOR_WIDTH, 0)).isPresent();
        assertThat(clamps.isFilled(Clamps.FLOOR_WIDTH, 0)).isFalse();
        assertThat(found(new SheetOf("Clamp")
                                .row("Clamp")
                                .row("Kind")
                                .row("Length (m)")
                                .row("Width (m)"))
                        .findings())
                .isEmpty();
    }

    @Test
    void errorsStandWhereFiguresWereMeant() {
        FoundLists found = found(new SheetOf("Clamp")
                .row("Clamp", "Yard")
                .row("Kind", "walled")
                .row("Length (m)", new SheetOf.Fault("#DIV/0!"))
                .row("Width (m)", new SheetOf.Fault("#N/A"))
                .row("Wall height (m)", 3));
        assertThat(found.rows(Clamps.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Clamps.LIST).state(Clamps.LENGTH, 0)).isEqualTo(ListRows.State.ERROR);
        assertThat(said(found)).anyMatch(line -> line.contains("Clamp!B3") && line.contains("#DIV/0!"));
    }
}
