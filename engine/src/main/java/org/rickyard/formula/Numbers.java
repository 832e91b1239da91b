package org.rickyard.formula;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, the same whatever the locale. */
public final class Numbers {
    private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_UP);
    private static final int LONGEST_EXACT = 7;

    private Numbers() {}

    /** Every digit, without exponent where that stays readable: {@code 0.5}, {@code 1500}. */
    public static String exact(double x) {
        if (x == Math.rint(x) && Math.abs(x) < 1e15) {
            return Long.toString((long) x);
        }
        double size = Math.abs(x);
        BigDecimal decimal = BigDecimal.valueOf(x).stripTrailingZeros();
        return size >= 1e15 || size < 1e-9 ? decimal.toString() : decimal.toPlainString();
    }

    /** For a person redoing a sum by hand: exact if short, otherwise six significant digits. */
    public static String readable(double x) {
        String exact = exact(x);
        if (exact.length() <= LONGEST_EXACT) {
            return exact;
        }
        BigDecimal rounded = new BigDecimal(x).round(SIX_DIGITS);
        if (Math.abs(x) >= 1e6) {
            rounded = new BigDecimal(x).setScale(0, RoundingMode.HALF_UP);
        }
        String text = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
        return text.length() > 14 ? rounded.toString() : text;
    }
}
