package org.rickyard.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTextTest {
    private static double parse(String text) {
        char[] characters = ("xx" + text + "xx").toCharArray();
        return DecimalText.parse(characters, 2, characters.length - 2);
    }

    @Test
    void equalsTheNearestDoubleFor100000Decimals() {
        Random random = new Random(20_240_501);
        for (int i = 0; i < 100_000; i++) {
            String text = decimal(random);
            assertThat(Double.doubleToRawLongBits(parse(text)))
                    .as(text)
                    .isEqualTo(Double.doubleToRawLongBits(Double.parseDouble(text)));
        }
    }

    private static String decimal(Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> Double.toString(random.nextGaussian() * Math.pow(10, random.nextInt(20) - 10));
            case 1 -> BigDecimal.valueOf(random.nextLong(), random.nextInt(40)).toPlainString();
            case 2 -> Integer.toString(random.nextInt(200_000) - 100_000);
            case 3 ->
                BigDecimal.valueOf(random.nextInt(1_000_000), random.nextInt(6)).toPlainString();
            case 4 ->
                (random.nextBoolean() ? "-" : "+") + "000" + Math.abs(random.nextLong()) + "."
                        + Math.abs(random.nextLong()) + "e" + (random.nextInt(80) - 40);
            default -> random.nextInt(1000) + "E" + (random.nextInt(600) - 330);
        };
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "-0",
                "1.",
                ".5",
                "9007199254740992",
                "9007199254740993",
                "123456789012345678",
                "1e22",
                "1e23",
                "4.9E-324",
                "1.7976931348623157E308",
                "0.1",
                "0.10000000000000001",
                "2.2250738585072012e-308"
            })
    void equalsTheNearestDoubleAtTheEdges(String text) {
        assertThat(Double.doubleToRawLongBits(parse(text)))
                .isEqualTo(Double.doubleToRawLongBits(Double.parseDouble(text)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "-",
                ".",
                "1.2.3",
                "1,5",
                "NaN",
                "Infinity",
                "0x1p3",
                "1d",
                "1f",
                "1e",
                "1e+",
                "e5",
                "1 2",
                "1E999"
            })
    void anythingElseIsNotANumber(String text) {
        assertThat(parse(text)).isNaN();
    }
}
