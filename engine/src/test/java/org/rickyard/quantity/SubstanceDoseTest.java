package org.rickyard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SubstanceDoseTest {
    /** A unit is a hundredth of a hundredweight of 112 lb: 1.12 lb; the pound and the acre are those of 1959. */
    @ParameterizedTest
    @CsvSource({
        "kg N/ha, NITROGEN, 1",
        "kgN/ha, NITROGEN, 1",
        "kg of N per hectare, NITROGEN, 1",
        "kg/ha N, NITROGEN, 1",
        "lb nitrogen/acre, NITROGEN, 1.12085",
        "units N/ac, NITROGEN, 1.25535",
        "kg P2O5/ha, PHOSPHATE, 1",
        "lb/ac of phosphate, PHOSPHATE, 1.12085",
        "kg K2O/ha, POTASH, 1",
        "g a.i./ha, ACTIVE, 0.001",
        "g ai/ha, ACTIVE, 0.001",
        "g as/ha, ACTIVE, 0.001",
        "kg active ingredient/ha, ACTIVE, 1",
        "lb ai/A, ACTIVE, 1.12085",
        "oz a.i./ac, ACTIVE, 0.0700532"
    })
    void readsWhatADoseCounts(String text, Substance substance, double kilogramsPerHectare) {
        Unit unit = SubstanceDose.read(text, CustomaryUnits.UNSET).orElseThrow();
        assertThat(Substance.of(unit)).contains(substance);
        assertThat(unit.convert(1, Units.SUBSTANCE_DOSE)).isCloseTo(kilogramsPerHectare, within(1e-5));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "kg/ha",
                "L/ha",
                "kg P/ha",
                "kg K/ha",
                "units/ac",
                "kg N",
                "kg N/t",
                "ml a.i./ha",
                "kg DM/ha",
                "seeds/ha",
                "kg nutrient/ha",
                "t/ha",
                "N",
                "",
                "kg N/ha/yr"
            })
    void whatCountsTheProductOrDoesNotSayOfWhatIsNone(String text) {
        assertThat(SubstanceDose.read(text, CustomaryUnits.UNSET)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "N (kg/ha), NITROGEN",
        "'N rate, kg/ha', NITROGEN",
        "Nitrogen applied (kg/ha), NITROGEN",
        "kg N/ha, NITROGEN",
        "Dose kg N/ha, NITROGEN",
        "P2O5 kg/ha, PHOSPHATE",
        "K2O (lb/ac), POTASH",
        "a.i. (g/ha), ACTIVE",
        "Active ingredient g/ha, ACTIVE"
    })
    void aHeaderMayNameTheSubstanceBeforeTheUnit(String header, Substance substance) {
        assertThat(SubstanceDose.read(SubstanceDose.inHeader(header), CustomaryUnits.UNSET)
                        .flatMap(Substance::of))
                .contains(substance);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "N",
                "N (%)",
                "N required (kg/ha)",
                "N needed (kg/ha)",
                "N max (kg/ha)",
                "Soil N (kg/ha)",
                "Rate (kg/ha)",
                "No. (kg/ha)",
                "Net (kg/ha)",
                "Yield (t/ha)",
                "Nozzles"
            })
    void otherHeadersNameNone(String header) {
        assertThat(SubstanceDose.inHeader(header)).isEmpty();
    }
}
