package org.rickyard.lists.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MachineMentionTest {
    private static final Predicate<String> NONE_LISTED = name -> false;

    @Test
    void aGangIsPartedBySemicolons() {
        assertThat(MachineMention.parse("Trailer 14 t x 3; Loader ;; Forager", NONE_LISTED))
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
        assertThat(MachineMention.parse(text, NONE_LISTED)).containsExactly(new MachineMention(name, count));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Mower 3 m", "XR 4", "Rex 3", "Max3", "Trailer x 0", "Trailer x 999", "x 3", "7", "3x"})
    void otherNumbersBelongToTheName(String text) {
        assertThat(MachineMention.parse(text, NONE_LISTED)).containsExactly(new MachineMention(text, 1));
    }

    @Test
    void nothingIsNoMachine() {
        assertThat(MachineMention.parse(" ; ", NONE_LISTED)).isEmpty();
    }

    @Test
    void aListedNameIsTheMachineWhateverStandsInIt() {
        Predicate<String> listed = Set.of("Mower; front and rear", "Plough x 5", "Tractor")::contains;
        assertThat(MachineMention.parse("Tractor;Mower; front and rear x 2 ; Plough x 5; Rake x 2", listed))
                .containsExactly(
                        new MachineMention("Tractor", 1),
                        new MachineMention("Mower; front and rear", 2),
                        new MachineMention("Plough x 5", 1),
                        new MachineMention("Rake", 2));
        assertThat(MachineMention.parse("Mower; front", listed))
                .containsExactly(new MachineMention("Mower", 1), new MachineMention("front", 1));
    }

    @Test
    void emptyPlacesAreKeptWherePlacesCount() {
        assertThat(MachineMention.places("; Old red ;", NONE_LISTED))
                .containsExactly(
                        new MachineMention("", 1), new MachineMention("Old red", 1), new MachineMention("", 1));
        assertThat(MachineMention.places("", NONE_LISTED)).containsExactly(new MachineMention("", 1));
    }
}
