package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.SheetOf;

/** A distance there and back was passed over without saying that half of it is the one that is wanted. */
class ThereAndBackTest {
    private static FoundLists fields(String... headers) {
        Object[] head = {"Field", "Crop", "Area (ha)", headers[0], headers.length > 1 ? headers[1] : null};
        return find(new SheetOf("Fields").row(head).row("A", "grass", 10, 7, 2));
    }

    @ParameterizedTest
    @CsvSource({
        "Round trip (km), km",
        "Round trip (mi), mile",
        "Round-trip to clamp km, km",
        "Distance there and back (km), km",
        "Return journey (miles), mile"
    })
    void halfOfItIsTold(String header, String unit) {
        assertThat(messages(fields(header), Severity.CAUTION))
                .containsExactly("\"" + header
                        + "\" is not read: it is there and back, and the lists have distances one"
                        + " way. Write half of it under Distance to clamp (" + unit + "), or Distance to fill point ("
                        + unit + ") if it is that: 3.5 for the 7 in Fields!D2.");
    }

    @Test
    void whereTheHeaderIsReadAsTheDistanceTheStopSaysSo() {
        FoundLists found = fields("Haul distance, round trip (miles)");
        assertThat(messages(found, Severity.STOP))
                .containsExactly(
                        "The unit of \"Haul distance, round trip (miles)\" is not certain. It is there and back,"
                                + " and Distance to clamp is one way: write half of it under Distance to clamp (mile): 3.5 for the"
                                + " 7 in Fields!D2. Until then its cells are not used.");
        assertThat(found.rows(Fields.LIST).gives(Fields.DISTANCE_TO_CLAMP, 0)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Round trip", "Round trip (min)", "Trip (km)"})
    void aTimeOrAnythingElseIsNot(String header) {
        assertThat(messages(fields(header), Severity.CAUTION)).isEmpty();
    }

    @Test
    void besideTheDistanceItselfNothingIsToBeWritten() {
        assertThat(messages(fields("Round trip (km)", "Distance to clamp (km)"), Severity.CAUTION))
                .isEmpty();
    }
}
