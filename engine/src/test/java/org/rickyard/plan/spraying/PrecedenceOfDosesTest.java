package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** What is typed for a mix or a job stands before the product's own dose, in whatever way either is measured. */
@Tag("derived")
class PrecedenceOfDosesTest {
    private static SeasonBook farm(Object productDose, String productUnit) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("Long Acre", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 1000))
                .sheet(
                        "Products",
                        row("Product", "Unit", "Dose", "Dose unit"),
                        row("Wetter", "L", productDose, productUnit));
    }

    private static SeasonBook.Worked ofMix(Object productDose, String productUnit, Object dose, String unit) {
        return farm(productDose, productUnit)
                .sheet("Mixes", row("Mix", "Product", "Dose", "Dose unit"), row("Docks", "Wetter", dose, unit))
                .sheet(
                        "Jobs",
                        row("Field", "Machine", "Mix", "Water volume (L/ha)"),
                        row("Long Acre", "Sprayer", "Docks", 200))
                .run();
    }

    /** T8 of the course notes: 2 % in 500 L is 10 L; here 250 ml in each 100 L of 200 L/ha are 0.5 L/ha. */
    @Test
    void aShareOfTheSprayInTheMixStandsBeforeTheProductsDosePerHectare() {
        SeasonBook.Worked worked = ofMix(1, null, 250, "ml/100 L");
        assertThat(worked.number("product-total")).isCloseTo(10 * 0.5, within(1e-9));
        assertThat(worked.number("product-need")).isCloseTo(5, within(1e-9));
        assertThat(worked.number("season-dose")).isCloseTo(0.5, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aDosePerHectareInTheMixStandsBeforeTheProductsShare() {
        SeasonBook.Worked worked = ofMix(0.1, "%", 0.5, "L/ha");
        assertThat(worked.number("product-total")).isCloseTo(5, within(1e-9));
        assertThat(worked.messages()).noneMatch(message -> message.contains("ceiling"));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void theProductsDoseFillsInWhereNothingElseIsTyped() {
        SeasonBook.Worked worked = farm(1.5, null)
                .sheet(
                        "Jobs",
                        row("Field", "Machine", "Product", "Water volume (L/ha)"),
                        row("Long Acre", "Sprayer", "Wetter", 200))
                .run();
        assertThat(worked.number("product-total")).isCloseTo(15, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aShareTypedInTheJobStandsBeforeTheProductsDosePerHectare() {
        SeasonBook.Worked worked = farm(1.5, null)
                .sheet(
                        "Jobs",
                        row("Field", "Machine", "Product", "Dose", "Dose unit", "Water volume (L/ha)"),
                        row("Long Acre", "Sprayer", "Wetter", 0.25, "%", 200))
                .run();
        assertThat(worked.number("product-total")).isCloseTo(5, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }
}
