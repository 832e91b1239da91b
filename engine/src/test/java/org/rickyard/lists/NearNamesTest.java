package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The names that one may have meant. */
class NearNamesTest {
    private static ListRows fields(SheetOf sheet) {
        return FoundIn.find(sheet).rows(Fields.LIST);
    }

    private static ListRows farm() {
        return fields(new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)", "Block")
                .row("Top Field", "wheat", 4, "North")
                .row(" Long Acre ", "wheat", 5, "North")
                .row("Mill Piece (below road)", "grass", 6, "South"));
    }

    @Test
    void aSlipASwapAndAPartAreFound() {
        NearNames near = NearNames.of(farm(), Fields.FIELD);

        assertThat(near.meant("Top Fld")).isEqualTo(" Did you mean 'Top Field'?");
        assertThat(near.meant("long arce ")).isEqualTo(" Did you mean 'Long Acre'?");
        assertThat(near.meant("Mill Piece")).isEqualTo(" Did you mean 'Mill Piece (below road)'?");
    }

    @Test
    void namesOfSeveralColumnsAreToldOnceEach() {
        assertThat(NearNames.of(farm(), Fields.FIELD, Fields.BLOCK).meant("Nroth"))
                .isEqualTo(" Did you mean 'North'?");
        assertThat(NearNames.of(farm(), Fields.FIELD).meant("Nroth")).isEmpty();
    }

    @Test
    void whatIsLikeNothingIsNotGuessedAt() {
        assertThat(NearNames.of(farm(), Fields.FIELD).meant("Gravel pit")).isEmpty();
    }

    /** A job list from another farm would be held against every field, row by row. */
    @Test
    void listsAreNotSearchedForEver() {
        SheetOf large = new SheetOf("Fields").row("Field", "Area (ha)");
        for (int i = 0; i < 2001; i++) {
            large.row("Field no. " + i, 1);
        }
        assertThat(NearNames.of(fields(large), Fields.FIELD).meant("Field no 7"))
                .isEmpty();

        NearNames asked = NearNames.of(farm(), Fields.FIELD);
        for (int i = 0; i < 50; i++) {
            assertThat(asked.meant("Top Fild")).isNotEmpty();
        }
        assertThat(asked.meant("Top Fild")).isEmpty();
    }
}
