package org.rickyard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatioTest {
    @ParameterizedTest
    @CsvSource({"6, 4, 3/2", "-6, 4, -3/2", "6, -4, -3/2", "-6, -4, 3/2", "0, -7, 0", "600, 1, 600", "10, 5, 2"})
    void standsInLowestTermsWithTheSignAbove(long numerator, long denominator, String text) {
        assertThat(Ratio.of(numerator, denominator)).hasToString(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.3048, 381/1250",
        "0.40468564224, 316160658/781250000",
        "-1.50, -3/2",
        "1000, 1000",
        "1e3, 1000",
        "25e-3, 1/40",
        "0.000, 0"
    })
    void readsDecimalTextExactly(String decimal, String ratio) {
        String[] parts = ratio.split("/");
        assertThat(Ratio.of(decimal))
                .isEqualTo(new Ratio(
                        new BigInteger(parts[0]), parts.length == 1 ? BigInteger.ONE : new BigInteger(parts[1])));
    }

    @Test
    void aDenominatorOfZeroIsRefused() {
        assertThatThrownBy(() -> Ratio.of(1, 0))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("a ratio cannot have the denominator 0");
        assertThatThrownBy(() -> Ratio.ONE.over(Ratio.of(0))).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Ratio.of(0).pow(-1)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void multipliesDividesAndRaises() {
        Ratio twoThirds = Ratio.of(2, 3);
        assertThat(twoThirds.times(Ratio.of(9, 4))).isEqualTo(Ratio.of(3, 2));
        assertThat(twoThirds.over(Ratio.of(-4, 9))).isEqualTo(Ratio.of(-3, 2));
        assertThat(twoThirds.pow(3)).isEqualTo(Ratio.of(8, 27));
        assertThat(twoThirds.pow(-2)).isEqualTo(Ratio.of(9, 4));
        assertThat(twoThirds.pow(0)).isEqualTo(Ratio.ONE);
    }

    @Test
    void equalRatiosAreEqualHoweverTheyWereMade() {
        assertThat(Ratio.of(2, 4)).isEqualTo(Ratio.of("0.5")).hasSameHashCodeAs(Ratio.of("0.5"));
        assertThat(Ratio.of(1, 2))
                .isNotEqualTo(Ratio.of(1, 3))
                .isNotEqualTo(Ratio.of(3, 2))
                .isNotEqualTo(0.5);
    }

    @Test
    void isOneOnlyWhenExactlyOne() {
        assertThat(Ratio.of(7, 7).isOne()).isTrue();
        assertThat(Ratio.of("1.000000000000000000001").isOne()).isFalse();
    }

    @Test
    void givesTheNearestDouble() {
        assertThat(Ratio.of(1, 3).toDouble()).isEqualTo(1.0 / 3.0);
        assertThat(Ratio.of("0.1").toDouble()).isEqualTo(0.1);
        assertThat(Ratio.of("4046.8564224").toDouble()).isEqualTo(4046.8564224);
        assertThat(Ratio.of(-5).toDouble()).isEqualTo(-5.0);
    }

    @Test
    void partsTooLargeForADoubleStillHaveAQuotient() {
        Ratio large = new Ratio(
                BigInteger.TEN.pow(400).multiply(BigInteger.valueOf(3)),
                BigInteger.TWO.pow(1).multiply(BigInteger.TEN.pow(400)).add(BigInteger.ONE));
        assertThat(large.toDouble()).isEqualTo(1.5);
    }
}
