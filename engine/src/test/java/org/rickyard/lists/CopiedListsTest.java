package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.names;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding.Severity;

/** Second lists of fields that are none: copied for the record, sharing names by chance, plots of a trial. */
class CopiedListsTest {
    private static SheetOf land(String name, String... fields) {
        SheetOf sheet = new SheetOf(name).row("Field", "Area (ha)", "Run length (m)");
        for (String field : fields) {
            sheet.row(field, 4, 200);
        }
        return sheet;
    }

    @Test
    void aSheetCopiedForTheRecordIsNotReadAgain() {
        FoundLists found = find(
                land("Fields", "Long Acre", "Top", "Barn", "Pond"), land("Fields (2)", "Long Acre", "Top", "Barn"));

        assertThat(found.rows(Fields.LIST).size()).isEqualTo(4);
        assertThat(found.findings()).singleElement().satisfies(note -> {
            assertThat(note.severity()).isEqualTo(Severity.NOTE);
            assertThat(note.cell()).hasValue(new CellAddress("Fields (2)", 0, 0));
            assertThat(note.message()).contains("not read as a second list of fields");
        });
    }

    @Test
    void aCopyThatSaysAnythingElseIsReadAndSaidOnce() {
        List<String> stops = messages(
                find(
                        land("Fields", "Long Acre", "Top", "Barn", "Pond"),
                        land("Fields (2)", "Long Acre", "Top", "Barn").row("Pond", 4, 201)),
                Severity.STOP);

        assertThat(stops)
                .containsExactly(
                        "All 4 names of the list Fields on the sheet \"Fields (2)\" stand on \"Fields\" already,"
                                + " so both are read and whatever adds up counts them twice. If one of the two is kept for the"
                                + " record, move it to another workbook; if not, give each its own name, or its holding.");
    }

    @Test
    void aCopyThatHasGoneItsOwnWayIsSaidWithHowManyNamesItShares() {
        FoundLists found = find(
                land("Fields", "Long Acre", "Top", "Barn", "Pond", "Pond"),
                land("2024", "Long Acre", "Top", "Barn", "Moor"));

        assertThat(messages(found, Severity.STOP))
                .hasSize(2)
                .anyMatch(message -> message.startsWith("3 of the 4 names of the list Fields on the sheet \"2024\""))
                .anyMatch(message -> message.startsWith("Field \"Pond\" stands already in Fields!A5."));
    }

    @Test
    void namesThatTwoSheetsShareByChanceAreSaidOneByOne() {
        FoundLists found = find(
                land("Hill farm", "Long Acre", "Top", "Barn", "Pond"), land("Moor farm", "Home Field", "Top", "Bog"));

        assertThat(messages(found, Severity.STOP))
                .containsExactly(
                        "Field \"Top\" stands already in 'Hill farm'!A3. Give each its own name, or its holding, so"
                                + " that it is clear which is meant; if both are the same one, put all that is told of it in"
                                + " one row.");
    }

    /** Plots are fields where nothing else is; beside a list of fields they are pieces of a trial that lies within one. */
    @Test
    void thePlotsOfATrialAreNoMoreFields() {
        SheetOf trial = new SheetOf("Trials")
                .row("Plot", "Treatment", "Crop", "Area (m2)")
                .row(1, "none", "wheat", 1200)
                .row(2, "full", "wheat", 1200);
        FoundLists found = find(land("Fields", "Long Acre", "Top"), trial);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("Long Acre", "Top");
        assertThat(messages(found, Severity.CAUTION))
                .singleElement()
                .asString()
                .contains("These are plots, and the workbook has a list of fields, which begins at Fields!A1");
        assertThat(names(find(trial).rows(Fields.LIST), Fields.FIELD)).containsExactly("1", "2");
    }
}
