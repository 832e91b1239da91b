package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundIn;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NozzleTest;
import org.rickyard.lists.SheetOf;

/** A machine list whose types stand under a header of the adviser's own, or nowhere. */
class ChoiceByContentsTest {
    private static SheetOf kit(String header, String one, String two, String three) {
        return new SheetOf("Kit")
                .row(
                        "Machine",
                        header,
                        "Width (m)",
                        "Speed (km/h)",
                        "Efficiency (%)",
                        "Tank (L)",
                        "Nozzles",
                        "Output (t/h)")
                .row("Big one", one, 3.1, 12, 80, null, null, null)
                .row("Second", two, 6.5, 11, 80, null, null, null)
                .row("Third", three, 12, 8, 70, 800, 24, null);
    }

    /** "Other" is a machine, a country and a pit. */
    @Test
    void othersAloneTellNothing() {
        FoundLists found = FoundIn.find(new SheetOf("Jobs")
                .row("Job", "Field", "Operation", "Machine", "Speed (km/h)", "Hours per day (h)", "Whose law")
                .row("J1", "A", "spraying", "Sprayer", 10, 9, "other")
                .row("J2", "B", "spraying", "Sprayer", 10, 9, "other"));
        assertThat(found.findings()).noneMatch(said -> said.message().contains("is taken to be"));
    }

    @Test
    void theWordsUnderAHeaderSayThatItMeansTheType() {
        FoundLists found = find(kit("What it is", "disc mower", "rake", "sprayer"));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(3);
        assertThat(machines.text(Machines.TYPE, 0)).isEqualTo("mower");
        assertThat(said(found))
                .anyMatch(line -> line.startsWith("NOTE 'Kit'!B1 \"What it is\" is taken to be the column Type"));
    }

    private static FoundLists register(String header, String... words) {
        return find(new SheetOf("Register")
                .row("Machine", header)
                .row("Big one", words[0])
                .row("Second", words[1]));
    }

    /** A register of two columns has nothing else to be known by: its header has to ask what the machine is. */
    @Test
    void inARegisterOfTwoColumnsTheHeaderAsksWhatItIsAndAllWordsAreTypes() {
        for (String header : List.of("What it is", "Kind of kit")) {
            ListRows machines = register(header, "disc mower", "forager").rows(Machines.LIST);
            assertThat(machines.size()).as(header).isEqualTo(2);
            assertThat(machines.text(Machines.TYPE, 1)).isEqualTo("forager");
        }
        assertThat(register("Used with", "tractor", "forager")
                        .rows(Machines.LIST)
                        .size())
                .isZero();
        assertThat(register("What it is", "disc mower", "the red one")
                        .rows(Machines.LIST)
                        .size())
                .isZero();
    }

    @Test
    void oneWordThatIsUnknownIsAskedAsInAnyListOfMachines() {
        FoundLists found = find(kit("What it is", "disc mower", "rake", "thing"));
        assertThat(found.rows(Machines.LIST).state(Machines.TYPE, 2)).isEqualTo(ListRows.State.NOT_READABLE);
    }

    @Test
    void withoutSuchWordsItIsSaidWhatTheListLacksAndNoOtherListIsMadeOfIt() {
        FoundLists found = find(kit("Colour", "red", "green", "rake"));
        assertThat(found.rows(Machines.LIST).size()).isZero();
        assertThat(found.rows(NozzleTest.LIST).size()).isZero();
        assertThat(said(found))
                .anyMatch(line ->
                        line.contains("'Kit'!A1 This row looks like the header of the list Machines, but it has no"
                                + " column Type"));
    }

    @Test
    void betweenTwoSuchColumnsNothingIsChosen() {
        SheetOf kit = new SheetOf("Kit")
                .row("Machine", "What it is", "What it was", "Width (m)", "Speed (km/h)", "Efficiency (%)")
                .row("Big one", "disc mower", "rake", 3.1, 12, 80)
                .row("Second", "rake", "mower", 6.5, 11, 80);
        assertThat(find(kit).rows(Machines.LIST).size()).isZero();
    }

    /** A list of charges for work stopped at "Mow", which is no machine. */
    @Test
    void whatIsDoneIsNoType() {
        FoundLists rates = FoundIn.find(new SheetOf("Rates")
                .row("Op", "Machine", "Rate", "Per")
                .row("Mow", "Big one", 75, "ha")
                .row("Rake", "Second", 45, "ha")
                .row("Chop & cart", "Third", 480, "hr"));
        assertThat(rates.rows(Machines.LIST).size()).isZero();
        assertThat(FoundIn.messages(rates, Finding.Severity.STOP)).isEmpty();
        FoundLists types = FoundIn.find(kit("Operation", "plough", "rake", "sprayer"));
        assertThat(types.rows(Machines.LIST).text(Machines.TYPE, 0)).isEqualTo("plough");
    }
}
