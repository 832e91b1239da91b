package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.audit.Result;
import org.rickyard.testing.SeasonBook;

/** Nitrogen of what is sprayed and spread, through a whole workbook. */
class NitrogenTest {
    private static SeasonBook.Worked worked(Object density) {
        return worked(density, "Water volume (L/ha)");
    }

    private static SeasonBook.Worked worked(Object density, String water) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ac)"), row("Hill", "wheat", 20))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 12, 2000),
                        row("Spinner", "fertilizer spreader", 18, 12, null))
                .sheet(
                        "Products",
                        row("Product", "Unit", "N %", "Density (kg/L)"),
                        row("Liquid 28", "L", 28, density),
                        row("Prills", "kg", 20, null),
                        row("Weedkiller", "L", null, null),
                        row("Growth regulator", "L", 0, null))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose", "Dose unit", water),
                        row("1", "Hill", "spray", "Sprayer", "Liquid 28", 25.151, "US gal/ac", 235.3),
                        row("2", "Hill", "spread", "Spinner", "Prills", 200, "lb/ac", null),
                        row("3", "Hill", "spray", "Sprayer", "Weedkiller", 1, "L/ha", 200),
                        row("4", "Hill", "spray", "Sprayer", "Growth regulator", 1, "L/ha", 200))
                .run();
    }

    private static double poundsAnAcre(SeasonBook.Worked worked, String id) {
        Result result = worked.results().stream()
                .filter(one -> one.id().equals(id) && one.number().isPresent())
                .findFirst()
                .orElseThrow();
        return result.number().get() / 1.1208511561944561;
    }

    /** CropWatch 2016: 25.151 gal of 28 % at 10.65 lb/gal are 75 lb; Florida UF00067504: 200 lb at 20 % are 40. */
    @Tag("published")
    @Test
    void aLiquidGoesByItsDensityAndAProductWithoutNitrogenLacksNothing() {
        SeasonBook.Worked worked = worked(10.65 * 0.45359237 / 3.785411784);
        assertThat(poundsAnAcre(worked, "nitrogen-sprayed")).isCloseTo(75, within(0.005));
        assertThat(poundsAnAcre(worked, "nitrogen-spread")).isCloseTo(40, within(1e-9));
        assertThat(worked.messages()).noneMatch(message -> message.contains("nitrogen"));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aLiquidWithoutDensitySaysWhatIsWanting() {
        SeasonBook.Worked worked = worked(null);
        assertThat(worked.results())
                .noneMatch(one ->
                        one.id().equals("nitrogen-sprayed") && one.number().isPresent());
        assertThat(worked.messages())
                .anyMatch(message -> message.contains("Liquid 28") && message.contains("Type Density of the product"))
                .noneMatch(message -> message.contains("Weedkiller") && message.contains("nitrogen"))
                .noneMatch(message -> message.contains("Growth regulator") && message.contains("nitrogen is not"));
    }

    /** 200 lb an acre at 20 %, as above; who carries water by the American gallon reads pounds an acre beside it. */
    @Test
    void whoMeasuresInAmericanUnitsReadsPoundsAnAcre() {
        SeasonBook.Worked american = worked(1.28, "Water volume (US gal/ac)");
        assertThat(american.differences()).isEmpty();
        Result result = american.results().stream()
                .filter(one -> one.id().equals("nitrogen-spread"))
                .findFirst()
                .orElseThrow();
        assertThat(result.own()).hasValueSatisfying(own -> {
            assertThat(own.unit()).isEqualTo("lb/ac");
            assertThat(own.number()).isCloseTo(40, within(1e-9));
        });
        assertThat(worked(1.28).results())
                .filteredOn(one -> one.id().startsWith("nitrogen"))
                .isNotEmpty()
                .allMatch(one -> one.own().isEmpty());
    }
}
