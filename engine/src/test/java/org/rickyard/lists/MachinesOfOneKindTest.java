package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.names;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Finding.Severity;

/** A list for each kind of machine, whose header says which it is. */
class MachinesOfOneKindTest {
    @ParameterizedTest
    @CsvSource({
        "Tractor, tractor",
        "Tractor name, tractor",
        "Combine, combine",
        "Plow, plough",
        "Fertilizer spreader, fertiliser spreader",
        "Forage harvester, forager"
    })
    void theHeaderOfTheirNamesIsTheirType(String header, String type) {
        FoundLists found = find(new SheetOf("Kit")
                .row(header, "Width (m)", "Speed (km/h)", "List price", "Hours per year (h)")
                .row("Old red", 3, 7, 40000, 300));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(names(machines, Machines.TYPE)).containsExactly(type);
        assertThat(machines.address(Machines.TYPE, 0)).hasToString("Optional['Kit'!A1]");
        assertThat(messages(found, Severity.STOP)).isEmpty();
        assertThat(messages(found, Severity.NOTE)).anyMatch(note -> note.contains("taken to be of the Type " + type));
    }

    @Test
    void aTypeThatIsTypedIsTheType() {
        FoundLists found = find(new SheetOf("Kit")
                .row("Sprayer", "Type", "Width (m)", "Speed (km/h)", "List price")
                .row("Mist", "knapsack", 1, 3, 100)
                .row("Rig", "", 24, 12, 40000));
        assertThat(names(found.rows(Machines.LIST), Machines.TYPE)).containsExactly("knapsack", "");
    }

    /** A spreader may be of fertiliser or of muck. */
    @Test
    void aWordOfTwoTypesIsNone() {
        FoundLists found = find(new SheetOf("Kit")
                .row("Spreader", "Width (m)", "Speed (km/h)", "List price", "Hours per year (h)")
                .row("Old red", 3, 7, 40000, 300));
        assertThat(found.rows(Machines.LIST).size()).isZero();
        assertThat(messages(found, Severity.STOP)).anyMatch(stop -> stop.contains("no column Type"));
    }

    /** As in the blank workbook, where the headers stand below. */
    @Test
    void aLineOfHelpThatSpeaksOfAKindIsNoHeader() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Tank: of water.", "Sprayers: what the pump gives.", "Speed: at work.", "List price: new.")
                .row("e.g. Old red", 3, 7, 40000));
        assertThat(found.rows(Machines.LIST).size()).isZero();
        assertThat(messages(found, Severity.NOTE)).noneMatch(note -> note.contains("taken to be of the Type"));
    }

    /** Two headers may be known by chance. */
    @Test
    void aDiaryOfATractorIsNoListOfTractors() {
        FoundLists found = find(new SheetOf("Log")
                .row("Tractor", "Date", "Fuel (L/h)", "Driver", "Remarks")
                .row("Old red", 45000, 12, "A", "rain"));
        assertThat(found.rows(Machines.LIST).size()).isZero();
    }

    /** Each tractor stood there for each of its days, and stopped for being there twice. */
    @Test
    void aRecordOfWhatTractorsBurntIsNoListOfThem() {
        FoundLists found = find(new SheetOf("Fuel")
                .row("Tractor", "Date", "Hours now", "Fuel (L/h)", "List price")
                .row("Old red", 45000, 4100, 12, 900)
                .row("Blue", 45001, 4100, 12, 900)
                .row("Old red", 45002, 4160, 12, 900));
        assertThat(found.rows(Machines.LIST).size()).isZero();
        assertThat(messages(found, Severity.STOP)).isEmpty();
        assertThat(messages(found, Severity.NOTE)).anyMatch(note -> note.contains("its names come again"));
    }

    /** The tractor's fuel was taken for the sprayer's. */
    @Test
    void twoKindsBesideEachOtherAreNotOneList() {
        Object[][] tractors = {{"Tractor", "Power (kW)", "Fuel (L/h)"}, {"Old red", 90, 12}};
        Object[][] sprayers = {{"Sprayer", "Width (m)", "Tank (L)", "Speed (km/h)"}, {"Rig", 24, 2000, 10}};
        for (boolean before : new boolean[] {true, false}) {
            Object[][] left = before ? tractors : sprayers;
            Object[][] right = before ? sprayers : tractors;
            FoundLists found =
                    find(new SheetOf("Machines").row(beside(left[0], right[0])).row(beside(left[1], right[1])));
            ListRows machines = found.rows(Machines.LIST);
            assertThat(names(machines, Machines.MACHINE)).containsExactly("Rig");
            assertThat(machines.has(Machines.FUEL)).isFalse();
            assertThat(messages(found, Severity.CAUTION))
                    .anyMatch(message -> message.contains("of another kind stand here"));
        }
    }

    private static Object[] beside(Object[] left, Object[] right) {
        return Stream.of(left, new Object[] {""}, right).flatMap(Stream::of).toArray();
    }
}
