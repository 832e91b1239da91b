package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MachineMentionTest {
    @Test
    void aGangIsPartedBySemicolons() {
        assertThat(MachineMention.parse("Trailer 14 t x 3; Loader ;; Forager"))
                .containsExactly(
                        new MachineMention("Trailer 14 t", 3),
                        new MachineMention("Loader", 1),
                        new MachineMention("Forager", 1));
    }

    @ParameterizedTest
    @CsvSource({
        "Trailer x 3, Trailer, 3",
        "Trailer x3, Trailer, 3",
        "Trailer × 2, Trailer, 2",
        "3 x Trailer, Trailer, 3",
        "4x Trailer 14 t, Trailer 14 t, 4"
    })
    void severalAlikeAreCounted(String text, String name, int count) {
        assertThat(MachineMention.parse(text)).containsExactly(new MachineMention(name, count));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Mower 3 m", "XR 4", "Rex 3", "Max3", "Trailer x 0", "Trailer x 999", "x 3", "7", "3x"})
    void otherNumbersBelongToTheName(String text) {
        assertThat(MachineMention.parse(text)).containsExactly(new MachineMention(text, 1));
    }

    @Test
    void nothingIsNoMachine() {
        assertThat(MachineMention.parse(" ; ")).isEmpty();
    }
}
