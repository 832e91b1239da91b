package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.api.Test;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.SheetOf;

/** An area beside the jobs is not taken where the fields have a list of their own. */
class FieldListsTest {
    private static FoundLists found(String header, Object... areas) {
        SheetOf jobs = new SheetOf("Jobs").row("Field", "Operation", "Machine", header);
        for (int i = 0; i < areas.length; i++) {
            jobs.row(i == 0 ? "A" : "B", "spray", "S", areas[i]);
        }
        return find(
                new SheetOf("Fields")
                        .row("Field", "Area (ha)", "Crop")
                        .row("A", 10, "Grass")
                        .row("B", 8, "Grass"),
                jobs);
    }

    /** 4 ha of a field of 10 were sprayed, and product for 10 was told without a word of caution. */
    @Test
    void aPartOfAFieldIsCautioned() {
        FoundLists found = found("Area treated (ha)", 10, 4);
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 1)).isEqualTo(8);
        assertThat(messages(found, Severity.CAUTION)).singleElement().satisfies(caution -> assertThat(caution)
                .contains("areas are taken from the field list, and that of \"B\" (Jobs!D3) is another there"));
    }

    @Test
    void theSameAreaIsNotedAndNoMore() {
        assertThat(messages(found("Area (ac)", 24.7, 19.8), Severity.CAUTION)).isEmpty();
        assertThat(messages(found("Area (ha)", 10, 8), Severity.NOTE))
                .anyMatch(note -> note.endsWith("areas are taken from the field list."));
    }

    /** Two years beside each other: the crops of the first were reckoned with, and the second said to say nothing else. */
    @Test
    void theSameFieldsWithAnotherCropAreCautioned() {
        FoundLists found = find(
                new SheetOf("2030")
                        .row("Field", "Area (ha)", "Crop")
                        .row("A", 10, "Grass")
                        .row("B", 8, "Grass"),
                new SheetOf("2031")
                        .row("Field", "Area (ha)", "Crop")
                        .row("A", 10, "grass")
                        .row("B", 8, "Barley"));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(found.rows(Fields.LIST).text(Fields.CROP, 1)).isEqualTo("Grass");
        assertThat(messages(found, Severity.CAUTION))
                .singleElement()
                .asString()
                .contains("begins at '2030'!A1", "\"B\" has another crop there");
        assertThat(messages(found, Severity.NOTE)).noneMatch(note -> note.contains("says nothing else"));
    }
}
