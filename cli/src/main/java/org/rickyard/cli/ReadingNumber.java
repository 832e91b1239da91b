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
     * in hundredths or finer is told in four digits at the most: nobody tips 11205.00 L or spreads 91.0000 tons.
     */
    static String of(double number, int decimals) {
        return rounded(number, decimals < 2 ? decimals : Math.min(decimals, behindThePoint(Math.abs(number))));
    }

    /** How many decimals are left to four digits, so long as the number is none below one. */
    private static int behindThePoint(double size) {
        return size < 1 ? MOST_DECIMALS : size < 10 ? 3 : size < 100 ? 2 : size < 1000 ? 1 : 0;
    }

    /** The number with so many decimals, however large: for numbers that are told apart by what stands last. */
    static String rounded(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        if (rounded.signum() == 0) {
            return number == 0
                    ? rounded.toPlainString()
                    : Numbers.readable(
                            BigDecimal.valueOf(number).round(TWO_DIGITS).doubleValue());
        }
        return rounded.toPlainString();
    }
}
