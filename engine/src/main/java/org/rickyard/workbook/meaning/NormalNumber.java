package org.rickyard.workbook.meaning;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as office programs keep them: to 15 significant digits. LibreOffice writes the shortest decimal of a number
 * rounded to 15 digits, halves away from zero (found by saving 4,000 numbers with version 7.4).
 */
final class NormalNumber {
    private static final double EXACT_WHOLE = 1e15;
    private static final MathContext KEPT = new MathContext(15, RoundingMode.HALF_UP);

    private NormalNumber() {}

    /** The bits of the number that 15 significant digits give; equal for 0 and -0. */
    static long bits(double number) {
        double kept = number == Math.rint(number) && Math.abs(number) < EXACT_WHOLE
                ? number + 0.0
                : shortest(number).round(KEPT).doubleValue();
        return Double.doubleToLongBits(kept);
    }

    /** The shortest decimal that means this double; Java's own text of it is not always the shortest before 19. */
    private static BigDecimal shortest(double number) {
        BigDecimal exact = new BigDecimal(number);
        for (int digits = 15; digits < 17; digits++) {
            BigDecimal decimal = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (decimal.doubleValue() == number) {
                return decimal;
            }
        }
        return exact.round(new MathContext(17, RoundingMode.HALF_EVEN));
    }
}
