package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.quantity.Ratio;

/**
 * A conversion is written with the number people know. The foot, yard, inch and mile are exact by the agreement of
 * 1959 (0.3048 m, 0.9144 m, 25.4 mm, 1.609344 km), the imperial gallon by UK law (4.54609 L), the acre by the yard.
 */
class ScalingTest {
    @ParameterizedTest
    @CsvSource({
        "1250, 381, /0.3048",
        "1250, 1143, /0.9144",
        "5, 127, /25.4",
        "381, 1250, *0.3048",
        "15625, 25146, /1.609344",
        "100000, 454609, /4.54609",
        "1, 10, /10",
        "5, 9, *5/9",
        "5, 18, *5/18",
        "2, 3, *2/3"
    })
    void aConversionIsWrittenWithTheNumberPeopleKnow(long numerator, long denominator, String cell) {
        Scaling scaling = Scaling.of(Ratio.of(numerator, denominator));
        assertThat(scaling.cell()).isEqualTo(cell);
        double exact = 123.456 * numerator / denominator;
        assertThat(scaling.apply(123.456)).isCloseTo(exact, within(1e-15 * exact + Math.ulp(exact)));
    }
}
