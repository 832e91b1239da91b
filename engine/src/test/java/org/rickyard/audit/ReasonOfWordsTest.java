package org.rickyard.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** A word that is withheld has a reason, as a number has. */
class ReasonOfWordsTest {
    @Test
    void whatHoldsUpAGangWithoutARateIsWithheldForTheReasonOfTheRate() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis", "Distance to clamp (km)"),
                        row("A", 10, "grass", 20, "as carted fresh", 2))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Output (t/h)", "Payload (t)", "Mass (t)", "Speed laden (km/h)"),
                        row("Chopper", "forager", 60, null, null, null),
                        row("Trailer", "trailer", null, 10, null, 20),
                        row("Roller", "clamp roller", null, null, "14 t?", null))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine"),
                        row("A", "chopping", "Chopper; Trailer x 3; Roller"))
                .run();
        assertThat(worked.results())
                .filteredOn(result -> result.id().equals("bottleneck"))
                .singleElement()
                .satisfies(result -> {
                    assertThat(result.given()).isFalse();
                    assertThat(result.reason()).contains("a stage of this gang has no rate");
                });
        assertThat(worked.results()).filteredOn(result -> !result.given()).noneMatch(result -> result.reason()
                .isEmpty());
    }
}
