package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.names;
import static org.rickyard.lists.FoundIn.said;

import org.junit.jupiter.api.Test;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.SheetOf;

/** The name of a holding in a cell merged over its fields was that of the first of them alone. */
class MergedCellsTest {
    @Test
    void wordsInAMergedCellAreThoseOfEveryRowThatItSpans() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Farm", "Field", "Crop", "Area (ha)")
                .row("Elm", "A", "grass", 10)
                .row(null, "B", null, 6)
                .row("Oak", "A", null, 4)
                .row(null, "C", "wheat", 3)
                .merge(1, 2, 0)
                .merge(3, 4, 0)
                .merge(1, 3, 2));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(names(fields, Fields.HOLDING)).containsExactly("Elm", "Elm", "Oak", "Oak");
        assertThat(names(fields, Fields.CROP)).containsExactly("grass", "grass", "grass", "wheat");
        assertThat(fields.typed(Fields.HOLDING, 1)).isEqualTo("Elm");
        assertThat(fields.address(Fields.HOLDING, 3)).contains(new CellAddress("Fields", 3, 0));
        assertThat(said(found)).isEmpty();
    }

    /** 16 ha beside two fields is what both have. */
    @Test
    void aFigureInAMergedCellStaysInTheFirstRow() {
        ListRows fields = find(new SheetOf("Fields")
                        .row("Field", "Crop", "Area (ha)")
                        .row("A", "grass", 16)
                        .row("B", "grass", null)
                        .merge(1, 2, 2))
                .rows(Fields.LIST);
        assertThat(fields.state(Fields.AREA, 1)).isEqualTo(State.BLANK);
    }

    @Test
    void theProductsBesideAMergedJobOrMixAreOfIt() {
        FoundLists found = find(
                new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine", "Product", "Dose (L/ha)")
                        .row("A", "spraying", "Sprayer", "X", 1)
                        .row(null, null, null, "Y", 2)
                        .merge(1, 2, 0)
                        .merge(1, 2, 1)
                        .merge(1, 2, 2),
                new SheetOf("Mixes")
                        .row("Mix", "Product", "Dose (L/ha)")
                        .row("M", "X", 1)
                        .row(null, "Y", 2)
                        .merge(1, 2, 0));
        assertThat(names(found.rows(Jobs.LIST), Jobs.FIELD)).containsExactly("A", "A");
        assertThat(names(found.rows(Jobs.LIST), Jobs.OPERATION)).containsExactly("spraying", "spraying");
        assertThat(names(found.rows(Mixes.LIST), Mixes.MIX)).containsExactly("M", "M");
    }

    @Test
    void aSecondRowOfAMergedFieldIsNoSecondField() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)", "Notes")
                .row("A", "grass", 16, "wet")
                .row(null, null, null, "gate")
                .row("B", "grass", 4, null)
                .merge(1, 2, 0)
                .merge(1, 2, 1));
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
    }
}
