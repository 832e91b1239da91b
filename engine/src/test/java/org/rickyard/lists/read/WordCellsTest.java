package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.onlyMessage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** What is read out of words: choices, days, slopes, cuts, feet and inches. */
class WordCellsTest {
    @ParameterizedTest
    @CsvSource({
        "1 in 3, 3",
        "45°, 1",
        "45 deg, 1",
        "2:1, 2",
        "1:1, 1",
        "vertical, 0",
        "0.5 : 1, 0.5",
        "90°, 0",
        "2 to 1, 2",
        "2H:1V, 2",
        "2 horizontal to 1 vertical, 2",
        "1 up in 3 out, 3",
        "2 in 3, 1.5"
    })
    void battersAreReadOutOfWords(String text, double batter) {
        ListRows clamps = clamp(text).rows(Clamps.LIST);
        assertThat(clamps.state(Clamps.BATTER, 0)).isEqualTo(State.READ_FROM_TEXT);
        assertThat(clamps.number(Clamps.BATTER, 0)).isEqualTo(batter);
        assertThat(clamps.text(Clamps.BATTER, 0)).isEqualTo(text);
    }

    @Test
    void aBareRatioIsAskedAndANumberIsTaken() {
        assertThat(clamp("1:3").rows(Clamps.LIST).state(Clamps.BATTER, 0)).isEqualTo(State.ASKED);
        assertThat(clamp("1 to 3").rows(Clamps.LIST).state(Clamps.BATTER, 0)).isEqualTo(State.ASKED);
        assertThat(clamp("steep").rows(Clamps.LIST).state(Clamps.BATTER, 0)).isEqualTo(State.NOT_READABLE);
        ListRows clamps = clamp(0.2).rows(Clamps.LIST);
        assertThat(clamps.state(Clamps.BATTER, 0)).isEqualTo(State.GIVEN);
        assertThat(clamps.number(Clamps.BATTER, 0)).isEqualTo(0.2);
    }

    private static FoundLists clamp(Object batter) {
        return find(new SheetOf("Clamps")
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Batter", "Effluent tank")
                .row("Pit", "earth pit", 30, 10, 2, batter, "Tank at the yard"));
    }

    @Test
    void workIsKnownByItsNounToo() {
        ListRows jobs = find(new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine")
                        .row("A", "Cultivation", "Harrow"))
                .rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.OPERATION, 0)).isEqualTo("cultivating");
    }

    @Test
    void lengthsInFeetAndInchesAreRead() {
        ListRows machines = find(new SheetOf("Machines")
                        .row("Machine", "Type", "Working width (ft-in)")
                        .row("A", "mower", "8'6\"")
                        .row("B", "mower", "10 ft 3 in")
                        .row("C", "mower", 9))
                .rows(Machines.LIST);
        assertThat(machines.number(Machines.WORKING_WIDTH, 0)).isEqualTo(8.5);
        assertThat(machines.number(Machines.WORKING_WIDTH, 1)).isEqualTo(10.25);
        assertThat(machines.state(Machines.WORKING_WIDTH, 0)).isEqualTo(State.READ_FROM_TEXT);
        assertThat(machines.state(Machines.WORKING_WIDTH, 2)).isEqualTo(State.GIVEN);
    }

    @ParameterizedTest
    @CsvSource({
        "disc mower, mower", "Mower-conditioner, mower", "FORAGE HARVESTER, forager", "row up, rake",
        "Silage trailers, trailer", "airblast, air-blast sprayer", "Digger, excavator", "clamp roller, clamp roller"
    })
    void machineTypesAreKnownByManyWords(String text, String type) {
        ListRows machines = find(new SheetOf("Machines").row("Machine", "Type").row("M", text))
                .rows(Machines.LIST);
        assertThat(machines.state(Machines.TYPE, 0)).isEqualTo(State.GIVEN);
        assertThat(machines.text(Machines.TYPE, 0)).isEqualTo(type);
    }

    @ParameterizedTest
    @CsvSource({"swather, ASKED", "roller, ASKED", "spreader, ASKED", "topper, NOT_READABLE"})
    void machineTypesThatCouldBeTwoAreAsked(String text, State state) {
        FoundLists found = find(new SheetOf("Machines").row("Machine", "Type").row("M", text));
        assertThat(found.rows(Machines.LIST).state(Machines.TYPE, 0)).isEqualTo(state);
        assertThat(onlyMessage(found, Severity.STOP)).contains(text);
    }

    @Test
    void aBlankWatercourseIsNotNone() {
        ListRows fields = find(new SheetOf("Fields")
                        .row("Field", "Area (ha)", "Watercourse", "Overhead lines")
                        .row("A", 4, null, true)
                        .row("B", 4, "None", "N"))
                .rows(Fields.LIST);
        assertThat(fields.state(Fields.WATERCOURSE, 0)).isEqualTo(State.BLANK);
        assertThat(fields.text(Fields.WATERCOURSE, 0)).isEmpty();
        assertThat(fields.text(Fields.WATERCOURSE, 1)).isEqualTo("none");
        assertThat(fields.text(Fields.OVERHEAD_LINES, 0)).isEqualTo("yes");
        assertThat(fields.text(Fields.OVERHEAD_LINES, 1)).isEqualTo("no");
    }

    @Test
    void operationsKnownByOtherWordsGetTheirNameAndOthersKeepTheirs() {
        ListRows jobs = find(new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine")
                        .row("A", "Row up", "Rake")
                        .row("A", "Hedge cutting", "Cutter"))
                .rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.OPERATION, 0)).isEqualTo("raking");
        assertThat(jobs.text(Jobs.OPERATION, 1)).isEqualTo("Hedge cutting");
    }

    @Test
    void daysAreDatesOrTextInOneCertainForm() {
        FoundLists found = find(new SheetOf("Cuts")
                .row("Field", "Cut", "Start", "End")
                .row("A", 1, 46156, "2026-05-20")
                .row("B", 1, 12, "20/05/26")
                .format(1, 2, Grid.Format.DATE));
        ListRows cuts = found.rows(Cuts.LIST);
        assertThat(cuts.state(Cuts.START, 0)).isEqualTo(State.GIVEN);
        assertThat(cuts.state(Cuts.END, 0)).isEqualTo(State.READ_FROM_TEXT);
        assertThat(cuts.number(Cuts.END, 0)).isEqualTo(46162);
        assertThat(cuts.state(Cuts.START, 1)).isEqualTo(State.ASKED);
        assertThat(cuts.state(Cuts.END, 1)).isEqualTo(State.NOT_READABLE);
    }

    @ParameterizedTest
    @CsvSource({"1st, 1", "2nd cut, 2", "Cut 3, 3", "first cut, 1", "Third, 3", "4, 4", "No. 2, 2"})
    void aCutIsReadAsItIsSpokenOf(String typed, double number) {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Cuts").row("Field", "Cut", "Yield (t DM/ha)").row("A", typed, 4)));
        ListRows cuts = found.rows(Cuts.LIST);
        assertThat(cuts.state(Cuts.CUT, 0)).isEqualTo(ListRows.State.READ_FROM_TEXT);
        assertThat(cuts.number(Cuts.CUT, 0)).isEqualTo(number);
        assertThat(found.findings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"9th", "main", "1st and 2nd", "May cut"})
    void aCutThatCannotBeToldIsAsked(String typed) {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Cuts").row("Field", "Cut", "Yield (t DM/ha)").row("A", typed, 4)));
        assertThat(found.rows(Cuts.LIST).gives(Cuts.CUT, 0)).isFalse();
        assertThat(found.findings()).hasSize(1);
    }
}
