package org.rickyard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DoseTextTest {
    private static final double HA_PER_AC = 0.40468564224;

    private static DoseText.Known known(String text, CustomaryUnits customary) {
        return (DoseText.Known) DoseText.read(text, customary);
    }

    @ParameterizedTest
    @CsvSource({
        "L/ha, L, 1",
        "l/ha, L, 1",
        "litres per hectare, L, 1",
        "ml/ha, L, 0.001",
        "kg/ha, kg, 1",
        "g/ha, kg, 0.001",
        "tablets/ha, tablet, 1"
    })
    void dosesPerHectare(String text, String productUnit, double perHectare) {
        DoseText read = DoseText.read(text, CustomaryUnits.UNSET);
        assertThat(read).isInstanceOfSatisfying(DoseText.Known.class, known -> {
            assertThat(known.productUnit()).isEqualTo(productUnit);
            assertThat(known.isPerArea()).isTrue();
            assertThat(known.unit().convert(1, Units.DOSE)).isCloseTo(perHectare, within(1e-15));
        });
    }

    @ParameterizedTest
    @CsvSource({
        "L/ac, L, 1",
        "g/ac, kg, 0.001",
        "oz/ac, kg, 0.028349523125",
        "lb/ac, kg, 0.45359237",
        "litres per acre, L, 1"
    })
    void dosesPerAcre(String text, String productUnit, double perAcre) {
        DoseText.Known known = known(text, CustomaryUnits.UNSET);
        assertThat(known.productUnit()).isEqualTo(productUnit);
        assertThat(known.unit().convert(1, Units.DOSE)).isCloseTo(perAcre / HA_PER_AC, within(1e-12));
    }

    /** 1000 ft2 is 92.90304 m2, by the foot of 0.3048 m. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "fl oz/1000 sq ft; L; 0.0295735295625",
                "fl oz per 1,000 sq ft; L; 0.0295735295625",
                "lb/1000 ft2; kg; 0.45359237",
                "oz/1000 square feet; kg; 0.028349523125",
                "g/1000 ft2; kg; 0.001"
            })
    void dosesPerThousandSquareFeet(String text, String productUnit, double amount) {
        DoseText.Known known = known(text, CustomaryUnits.US);
        assertThat(known.productUnit()).isEqualTo(productUnit);
        assertThat(known.unit().convert(1, Units.DOSE)).isCloseTo(amount / 92.90304 * 10_000, within(1e-9));
    }

    @Test
    void doseOfNothingIsNone() {
        assertThat(DoseText.read("g/0 ha", CustomaryUnits.UNSET)).isInstanceOf(DoseText.Unknown.class);
        assertThat(DoseText.read("g/1000", CustomaryUnits.UNSET)).isInstanceOf(DoseText.Unknown.class);
    }

    @ParameterizedTest
    @CsvSource({
        "%, L, 0.01",
        "% v/v, L, 0.01",
        "% of mix, L, 0.01",
        "% of the spray, L, 0.01",
        "% solution, L, 0.01",
        "ml/100 L, L, 0.00001",
        "ml per 100 litres, L, 0.00001",
        "g/100 L, kg, 0.00001",
        "L/100 L, L, 0.01",
        "ml/100l, L, 0.00001",
        "ml/L, L, 0.001",
        "L/1000 L, L, 0.001",
        "ml/hl, L, 0.00001",
        "L/100 L water, L, 0.01"
    })
    void concentrationsInTheSpray(String text, String productUnit, double perLitre) {
        DoseText.Known known = known(text, CustomaryUnits.UNSET);
        assertThat(known.productUnit()).isEqualTo(productUnit);
        assertThat(known.isPerSpray()).isTrue();
        assertThat(known.unit().convert(1, Units.CONCENTRATION)).isCloseTo(perLitre, within(1e-17));
    }

    @ParameterizedTest
    @ValueSource(strings = {"pt/ac", "fl oz/ac", "pt/ha", "ml/100 gal", "cwt/ac"})
    void pintsOuncesAndGallonsAreAskedAbout(String text) {
        assertThat(DoseText.read(text, CustomaryUnits.UNSET))
                .isInstanceOfSatisfying(DoseText.Ambiguous.class, ambiguous -> assertThat(ambiguous.candidates())
                        .hasSize(2));
    }

    @ParameterizedTest
    @ValueSource(strings = {"L/.ha", "L/...", "L/..5 L", "ml/1.5.2 L", "L/0 L", "L/."})
    void whatIsNoNumberOfLitresIsNoDose(String text) {
        assertThat(DoseText.read(text, CustomaryUnits.UNSET)).isInstanceOf(DoseText.Unknown.class);
    }

    @Test
    void partsOfALitreAreRead() {
        assertThat(known("ml/.5 L", CustomaryUnits.UNSET).unit().convert(1, Units.CONCENTRATION))
                .isCloseTo(0.002, within(1e-15));
    }

    @Test
    void customaryUnitsSettlePintsAndOunces() {
        assertThat(known("pt/ac", CustomaryUnits.UK).unit().convert(1, Units.DOSE))
                .isCloseTo(0.56826125 / HA_PER_AC, within(1e-12));
        assertThat(known("fl oz/ac", CustomaryUnits.US).unit().convert(1, Units.DOSE))
                .isCloseTo(0.0295735295625 / HA_PER_AC, within(1e-12));
    }

    @Test
    void anAmountWithoutBasisIsKnownAsSuch() {
        DoseText.Known known = known("L", CustomaryUnits.UNSET);
        assertThat(known.isPerArea()).isFalse();
        assertThat(known.isPerSpray()).isFalse();
        assertThat(known("g", CustomaryUnits.UNSET).unit().convert(1, Units.PRODUCT_UNIT))
                .isEqualTo(0.001);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "m", "L/m", "t/h", "ha", "words", "L/0 L", "kg/2 ha", "ml/100"})
    void otherTextsAreNoDoses(String text) {
        assertThat(DoseText.read(text, CustomaryUnits.UNSET)).isInstanceOf(DoseText.Unknown.class);
    }

    /** As American labels write an acre; a small a is none. */
    @Test
    void aCapitalAIsAnAcre() {
        assertThat(DoseText.read("fl oz/A", CustomaryUnits.US)).isEqualTo(DoseText.read("fl oz/ac", CustomaryUnits.US));
        assertThat(DoseText.read("fl.oz/ac", CustomaryUnits.US))
                .isEqualTo(DoseText.read("fl oz/ac", CustomaryUnits.US));
        assertThat(DoseText.read("lb / A", CustomaryUnits.UNSET))
                .isEqualTo(DoseText.read("lb/ac", CustomaryUnits.UNSET));
        assertThat(DoseText.read("kg/a", CustomaryUnits.UNSET)).isInstanceOf(DoseText.Unknown.class);
        assertThat(UnitText.read("t/A", CustomaryUnits.UNSET)).isEqualTo(UnitText.read("t/ac", CustomaryUnits.UNSET));
    }
}
