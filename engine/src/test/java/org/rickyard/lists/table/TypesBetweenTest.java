package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.names;

import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** Types of machines in lines between the rows of one list. */
class TypesBetweenTest {
    private static final Object[] HEADERS = {"Name", "Width (m)", "Speed (km/h)"};

    @Test
    void eachLineIsOfTheMachinesBelowIt() {
        FoundLists found = find(new SheetOf("Machines")
                .row(HEADERS)
                .row()
                .row("Mowers")
                .row("A", 3, 10)
                .row("B", 3, 9)
                .row()
                .row("Rakes")
                .row("C", 6, 12)
                .row("Tedders")
                .row("D", 6, 10)
                .row("Total", 18));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(names(machines, Machines.MACHINE)).containsExactly("A", "B", "C", "D");
        assertThat(names(machines, Machines.TYPE)).containsExactly("mower", "mower", "rake", "tedder");
        assertThat(machines.address(Machines.TYPE, 2)).hasToString("Optional[Machines!A7]");
        assertThat(messages(found, Severity.STOP)).isEmpty();
        assertThat(messages(found, Severity.CAUTION)).isEmpty();
    }

    /** A wrong type is a wrong rate of work: what stands under a line that says none is left out, with a word. */
    @Test
    void aLineOfNoOneTypeLeavesItsMachinesOut() {
        FoundLists found = find(new SheetOf("Machines")
                .row(HEADERS)
                .row("Mowers")
                .row("A", 3, 10)
                .row("Spreaders")
                .row("B", 12, 9)
                .row("C", 12, 9)
                .row("Rakes")
                .row("D", 6, 12));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(names(machines, Machines.MACHINE)).containsExactly("A", "D");
        assertThat(names(machines, Machines.TYPE)).containsExactly("mower", "rake");
        assertThat(messages(found, Severity.CAUTION))
                .singleElement()
                .asString()
                .startsWith("\"Spreaders\" stands over 2 machines and names no one type");
    }

    /** On a sheet of mowers, the rakes at its end. */
    @Test
    void aLineOfAnotherTypeThanTheSheetsEndsIt() {
        FoundLists found = find(
                new SheetOf("Mowers").row(HEADERS).row("A", 3, 10).row("Rakes").row("B", 6, 12));
        assertThat(names(found.rows(Machines.LIST), Machines.TYPE)).containsExactly("mower", "rake");
        assertThat(messages(found, Severity.CAUTION)).isEmpty();
    }

    /** Lists with a column for it go by that. */
    @Test
    void aColumnOfTypesGoesBeforeLines() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Name", "Type", "Width (m)", "Speed (km/h)")
                .row("Mowers")
                .row("A", "mower", 3, 10)
                .row()
                .row("Spreaders")
                .row("B", "muck spreader", 6, 12));
        assertThat(names(found.rows(Machines.LIST), Machines.TYPE)).containsExactly("mower", "muck spreader");
    }

    /** Below a title over the headers a line that says no type was a machine, and what stood under it of the type above. */
    @Test
    void afterALineOfATypeOneThatSaysNoneIsALineToo() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Mowers")
                .row(HEADERS)
                .row("A", 3, 10)
                .row("Rakes")
                .row("B", 6, 12)
                .row("Odds and ends")
                .row("C", 2, 5));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(names(machines, Machines.MACHINE)).containsExactly("A", "B");
        assertThat(messages(found, Severity.CAUTION))
                .singleElement()
                .asString()
                .startsWith("\"Odds and ends\" stands over 1 machine and names no one type");
    }
}
