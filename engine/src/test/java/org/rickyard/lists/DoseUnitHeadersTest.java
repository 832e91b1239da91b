package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.read.ListFinder;

/** A dose in millilitres that is read in litres is a thousand times too much. */
class DoseUnitHeadersTest {
    private static FoundLists find(String header, String unit) {
        return ListFinder.find(List.of(new SheetOf("Products")
                .row("Product", "Unit", header, "Pack size")
                .row("Alpha", unit, 500, 5)));
    }

    private static String unitOf(FoundLists found) {
        return found.rows(Products.LIST)
                .unit(Products.DOSE, 0)
                .map(Object::toString)
                .orElse("none");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Dose / ml/ha",
                "Dose per ha (ml)",
                "Dose per ha (ml/ha)",
                "Dose/ha (ml)",
                "Dose per ha, ml",
                "Dose (ml per ha)",
                "Dose\nper hectare\n(ml)",
                "Dose_ml/ha",
                "Dose (label, ml/ha)",
                "Dose (label) ml/ha",
                "Dose ml ha-1"
            })
    void millilitresPerHectareAreMillilitresHoweverTheyAreWritten(String header) {
        FoundLists found = find(header, "L");
        assertThat(unitOf(found)).startsWith("ml/");
        assertThat(found.rows(Products.LIST)
                        .unit(Products.DOSE, 0)
                        .orElseThrow()
                        .isSameScale(find("Dose (ml/ha)", "L")
                                .rows(Products.LIST)
                                .unit(Products.DOSE, 0)
                                .orElseThrow()))
                .isTrue();
        assertThat(found.findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Dose per 100 L (ml) | ml/100 l",
                "Dose (fl oz/ac (US)) | fl oz(US)/ac",
                "Dose per acre (ml) | ml/ac",
                "Dose per ha | product unit/ha"
            })
    void whatADoseIsPerMayStandInTheName(String header, String unit) {
        assertThat(unitOf(find(header, ""))).isEqualToIgnoringCase(unit);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Dose (ml)",
                "Dose (first, ml/ha)",
                "Dose (half) ml/ha",
                "Dose per acre (L/ha)",
                "Dose per tank (ml)",
                "Dose per spray (ml/ha)"
            })
    void whatContradictsItselfOrIsNotKnownIsAsked(String header) {
        FoundLists found = find(header, "L");
        assertThat(found.rows(Products.LIST).state(Products.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(found.findings()).extracting(Finding::severity).contains(Severity.STOP);
    }

    @Test
    void theMostOfASeasonIsNotTheMostOfOneSpraying() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Products")
                .row("Product", "Unit", "Dose (L/ha)", "Max dose per season (L/ha)")
                .row("Alpha", "L", 1, 3.5)));
        ListRows products = found.rows(Products.LIST);
        assertThat(products.gives(Products.HIGHEST_DOSE, 0)).isFalse();
        assertThat(products.number(Products.HIGHEST_TOTAL_DOSE, 0)).isEqualTo(3.5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Water volume per ha (L) | L/ha",
                "Water volume per acre (L) | L/ac",
                "Water rate per ha (L/ha) | L/ha",
                "Water volume / L/ha | L/ha"
            })
    void waterIsReadAlike(String header, String unit) {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Jobs").row("Field", "Operation", "Machine", header).row("A", "spraying", "Sprayer", 200)));
        assertThat(found.rows(Jobs.LIST).unit(Jobs.WATER_VOLUME, 0).orElseThrow())
                .hasToString(unit);
        assertThat(found.findings()).isEmpty();
    }

    /** Packs of granules under "Pack size (L)" hold kilograms, and their price per litre is one per kilogram: said. */
    @Test
    void productsCountedInKilogramsUnderAHeaderInLitresAreTakenInKilogramsAndThatIsSaid() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Products")
                .row("Product", "Unit", "Pack size (L)", "Price (£/L)")
                .row("Granules", "kg", 5, 12)
                .row("Liquid", "L", 10, 20)));
        ListRows products = found.rows(Products.LIST);
        assertThat(products.unit(Products.PACK_SIZE, 0).map(Object::toString)).hasValue("kg");
        assertThat(products.unit(Products.PACK_SIZE, 1).map(Object::toString)).hasValue("L");
        assertThat(products.number(Products.PRICE, 0)).isEqualTo(12);
        assertThat(found.findings().stream().map(Finding::message))
                .hasSize(2)
                .allMatch(message -> message.contains("under a header in L products counted in kg are in kg"));
    }
}
