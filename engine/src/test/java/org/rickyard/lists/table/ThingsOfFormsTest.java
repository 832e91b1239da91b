package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.read.ListFinder;

/** What is told of one thing stands in a column of a form, and whoever looks for a row of it finds none. */
class ThingsOfFormsTest {
    @Test
    void whatIsLeftOutOfAFormIsCalledAColumn() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Form")
                .row("Clamp", "Main", "Old", null, "Total")
                .row("Kind", "walled", "walled", "walled")
                .row("Length (m)", 40, 30, 25, 70)
                .row("Floor width (m)", 12, 9, 8)
                .row("Wall height (m)", 3, 2, 2)));
        assertThat(found.rows(Clamps.LIST).size()).isEqualTo(2);
        assertThat(said(found))
                .anyMatch(line -> line.contains("Form!E1 This column of totals is not read as a row of Clamps."))
                .anyMatch(line -> line.contains("This column has entries but no Clamp, so it is left out of Clamps"))
                .noneMatch(line -> line.contains("This row"));
    }
}
