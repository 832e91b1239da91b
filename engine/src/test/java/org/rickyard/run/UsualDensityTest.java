package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** What a holding sprays where no density is typed is one thing; what nozzle charts are made for stays water. */
class UsualDensityTest {
    private static double factor(Object[]... assumptions) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "wheat", 12))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Number of nozzles", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 48, 3000))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("Long Acre", "spraying", "Sprayer", 200))
                .sheet("Assumptions", assumptions)
                .run();
        assertThat(worked.differences()).isEmpty();
        return worked.number("density-factor");
    }

    /** 1.38 kg/L has the factor 1.17: University of Nebraska-Lincoln CropWatch 2016, the row of 11.5 lb/gal. */
    @Test
    @Tag("published")
    void aHeavierUsualLiquidHasItsFactor() {
        Object[] head = row("Item", "Value", "Unit");
        assertThat(factor(head, row("density of spray liquid, if none is typed", 1.38, "kg/L")))
                .isEqualTo(1.17, within(0.005));
        assertThat(factor(head, row("Fuel price", 1, null))).isEqualTo(1);
    }
}
