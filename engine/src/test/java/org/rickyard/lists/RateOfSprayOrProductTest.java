package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** "Rate (gal/ac)" beside a product was read as water, so that half a gallon of herbicide filled the tank. */
class RateOfSprayOrProductTest {
    private static final Object[] SPRAYER = row("S", "sprayer", 300);

    private static SeasonBook.Worked jobs(Object[] headers, Object[] cells) {
        return new SeasonBook()
                .sheet("Jobs", headers, cells)
                .sheet("Sprayers", row("Sprayer", "Type", "Tank (gal)"), SPRAYER)
                .sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"))
                .run();
    }

    @Test
    void ofAProductWithoutWaterOrDoseItIsAsked() {
        SeasonBook.Worked worked = jobs(
                row("Field", "Acres", "Operation", "Sprayer", "Product", "Rate (gal/ac)"),
                row("A", 10, "spraying", "S", "Herbicide", 0.5));
        assertThat(worked.messages())
                .anyMatch(m -> m.contains("The header \"Rate (gal/ac)\" could mean Water volume or Dose of Jobs"));
        assertThat(worked.result("total-spray-mix", "A").number()).isEmpty();
    }

    @Test
    void besideNoProductItIsTheWater() {
        SeasonBook.Worked worked =
                jobs(row("Field", "Acres", "Operation", "Sprayer", "Rate (gal/ac)"), row("A", 10, "spraying", "S", 15));
        assertThat(worked.number("total-spray-mix", "A") / 3.785411784).isBetween(149.999, 150.001);
    }
}
