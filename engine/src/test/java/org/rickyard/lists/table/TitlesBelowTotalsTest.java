package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.names;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.SheetOf;

/** "Oak Farm" right under the sub-total of the farm before was a field without an area. */
class TitlesBelowTotalsTest {
    @ParameterizedTest
    @ValueSource(strings = {"Sub-total", "Total", "Elm Farm total"})
    void aNameAloneBetweenATotalAndARowThatSaysMoreIsATitle(String total) {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)")
                .row("Elm Farm")
                .row("A", "grass", 10)
                .row("B", "grass", 6.5)
                .row("C", "grass", 6.25)
                .row(total, null, 22.75)
                .row("Oak Farm")
                .row("D", "grass", 4)
                .row("E", "grass", 3));
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B", "C", "D", "E");
        assertThat(messages(found, Severity.CAUTION))
                .containsExactly(
                        "This row holds nothing but \"Elm Farm\", so it is not read as a row of Fields.",
                        "This row holds nothing but \"Oak Farm\", so it is not read as a row of Fields.");
    }

    @Test
    void aFieldWithoutAnAreaAmongOthersStaysOne() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)")
                .row("A", "grass", 10)
                .row("Sub-total", null, 10)
                .row("B", "grass", 4)
                .row("C")
                .row("D", "grass", 3));
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B", "C", "D");
    }
}
