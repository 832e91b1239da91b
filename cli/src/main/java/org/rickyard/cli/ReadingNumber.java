package org.rickyard.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.rickyard.formula.Numbers;

/** Numbers rounded for reading, the same in every language: a point before decimals, nothing between thousands. */
final class ReadingNumber {
    private static final int MOST_DECIMALS = 4;
    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);

    private ReadingNumber() {}

    /**
     * The number with so many decimals; one so small that nothing would be left keeps its first two digits. What is told
     * in hundredths is not, from a hundred upwards: nobody tips 11205.00 L.
     */
    static String of(double number, int decimals) {
        double size = Math.abs(number);
        int shown = decimals < 2 || size < 100 ? Math.min(MOST_DECIMALS, decimals) : size < 1000 ? 1 : 0;
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(shown, RoundingMode.HALF_UP);
        if (rounded.signum() == 0) {
            return number == 0
                    ? rounded.toPlainString()
                    : Numbers.readable(
                            BigDecimal.valueOf(number).round(TWO_DIGITS).doubleValue());
        }
        return rounded.toPlainString();
    }
}
