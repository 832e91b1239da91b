package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {
    private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_UP);

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "0.5, 0.5",
        "1500, 1500",
        "-2.25, -2.25",
        "0.001, 0.001",
        "0.1, 0.1",
        "1234567, 1234567",
        "0.15277777777777776, 0.152778",
        "92.79999999999998, 92.8",
        "-0.333333333333, -0.333333",
        "999999.7, 1000000",
        "999999.5, 1000000",
        "99999.96, 100000",
        "123456.7, 123457",
        "0.00012345678, 0.000123457",
        "1234567.8, 1234568"
    })
    void sixSignificantDigitsOrTheWholeNumberAreReadable(double number, String text) {
        assertThat(Numbers.readable(number)).isEqualTo(text);
    }

    /** Java's own decimals, which know no shortcut, are the judge. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void shortcutsSayWhatDecimalsSay(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double number = (random.nextBoolean() ? 1 : -1) * Math.pow(10, random.nextDouble() * 9 - 3);
            double some = i % 3 == 0 ? number : Math.rint(number * 1e4) / (i % 3 == 1 ? 1e4 : 2e4);
            if (Math.abs(some) < 1e-3 || Math.abs(some) >= 1e6) {
                continue;
            }
            String expected = some == Math.rint(some)
                    ? BigDecimal.valueOf(some).setScale(0).toPlainString()
                    : new BigDecimal(some)
                            .round(SIX_DIGITS)
                            .stripTrailingZeros()
                            .toPlainString();
            assertThat(Numbers.readable(some)).as("%s", some).isEqualTo(expected);
        }
    }

    @Test
    void aTieIsDecidedByTheNumberItself() {
        // 1234.565 is kept a little above, 1234.575 a little below the half.
        assertThat(Numbers.readable(1234.565))
                .isEqualTo(new BigDecimal(1234.565).round(SIX_DIGITS).toPlainString());
        assertThat(Numbers.readable(1234.575))
                .isEqualTo(new BigDecimal(1234.575).round(SIX_DIGITS).toPlainString());
    }
}
