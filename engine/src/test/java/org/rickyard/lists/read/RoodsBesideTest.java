package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.SheetOf;

class RoodsBesideTest {
    /** 3 acres 2 roods 20 perches stood there as 3 ac, and are 3.625. */
    @ParameterizedTest
    @CsvSource({"Acres, Roods, Perches", "Area (ac), Rood, Perch", "Acres, Roods, Poles"})
    void acresWithRoodsBesideThemAreAskedAbout(String acres, String roods, String perches) {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", acres, roods, perches, "Crop")
                .row("A", 3, 2, 20, "Grass"));
        assertThat(found.rows(Fields.LIST).gives(Fields.AREA, 0)).isFalse();
        assertThat(messages(found, Severity.STOP)).singleElement().satisfies(stop -> assertThat(stop)
                .contains("\"" + roods + "\" beside it has parts of its acres", "a perch 1/160 ac"));
    }

    @Test
    void wholeAcresAreRead() {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Acres", "Roods", "Crop").row("A", 3, 0, "Grass"));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(3);
    }
}
