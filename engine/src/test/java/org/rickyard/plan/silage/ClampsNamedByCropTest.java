package org.rickyard.plan.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** A clamp that no listed crop goes to, whose name says what is in it. */
class ClampsNamedByCropTest {
    private static boolean saysThatTheTableIsForGrass(String clamp, Object density) {
        return new SeasonBook()
                        .sheet(
                                "Clamps",
                                row(
                                        "Clamp",
                                        "Kind",
                                        "Length (m)",
                                        "Floor width (m)",
                                        "Wall height (m)",
                                        "DM target (%)",
                                        "Density, fresh (kg/m3)"),
                                row(clamp, "walled", 30, 10, 2.7, 33, density))
                        .run()
                        .messages()
                        .stream()
                        .anyMatch(message -> message.contains("the density table is for grass"));
    }

    @Test
    void isNotTakenForGrassWithoutAWord() {
        assertThat(saysThatTheTableIsForGrass("Maize clamp", null)).isTrue();
        assertThat(saysThatTheTableIsForGrass("Whole-crop", null)).isTrue();
        assertThat(saysThatTheTableIsForGrass("Maize clamp", 750)).isFalse();
        assertThat(saysThatTheTableIsForGrass("Corner clamp", null)).isFalse();
    }
}
