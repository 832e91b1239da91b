package org.rickyard.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** The figures that a caution on Checks names as what raised it. */
class RuleFiguresTest {
    /** Which place a class has in a list of ours means nothing to an adviser; nozzle and label name the class itself. */
    @Test
    void aDropletQualityIsToldByItsWordAndItsCell() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("Top", 4, "barley"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)", "Spray quality"),
                        row("Sprayer", "sprayer", 24, 10, 1500, "coarse"))
                .sheet("Products", row("Product", "Unit", "Spray quality"), row("Herbicide A", "L", "medium"))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"),
                        row("Top", "spraying", "Sprayer", "Herbicide A", 1, 200))
                .run();
        assertThat(worked.messages())
                .filteredOn(message -> message.contains("sprays coarser than the label asks"))
                .singleElement()
                .asString()
                .contains(
                        "Here spray quality is coarse (Machines!F2), spray quality on the label is medium (Products!C2).");
    }
}
