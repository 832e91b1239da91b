package org.rickyard.formula;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, the same whatever the locale. */
public final class Numbers {
    private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_UP);
    private static final int LONGEST_EXACT = 7;
    private static final double WHOLE = 1e13;
    private static final double MILLION = 1e6;
    private static final double LEAST_QUICK = 1e-3;
    private static final double TOO_NEAR = 1e-6;
    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8};

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
        double size = Math.abs(x);
        if (x == Math.rint(x) && size < WHOLE) {
            return Long.toString((long) x);
        }
        if (size >= LEAST_QUICK && size < MILLION) {
            String quick = sixDigits(size);
            if (quick != null) {
                return x < 0 ? "-" + quick : quick;
            }
        }
        return sixDigitsSlowly(x);
    }

    /** A number as {@link #readable} gives it, with no more than so many decimals. */
    public static String rounded(double x, int decimals) {
        double parts = Math.pow(10, decimals);
        return readable(Math.round(x * parts) / parts);
    }

    /**
     * Six significant digits of a number from a thousandth to a million, without zeros at the end; null where the seventh
     * is too near a half to be decided in floating point. A decimal of six digits or fewer comes out as it is.
     */
    private static String sixDigits(double size) {
        int decimals = 0;
        double scaled = size;
        while (scaled < MILLION / 10) {
            decimals++;
            scaled = size * TENS[decimals];
        }
        double whole = Math.floor(scaled);
        double rest = scaled - whole;
        if (Math.abs(rest - 0.5) < TOO_NEAR) {
            return null;
        }
        long digits = (long) whole + (rest > 0.5 ? 1 : 0);
        while (decimals > 0 && digits % 10 == 0) {
            digits /= 10;
            decimals--;
        }
        StringBuilder text = new StringBuilder(12).append(digits);
        if (decimals > 0) {
            while (text.length() <= decimals) {
                text.insert(0, '0');
            }
            text.insert(text.length() - decimals, '.');
        }
        return text.toString();
    }

    private static String sixDigitsSlowly(double x) {
        String exact = exact(x);
        if (exact.length() <= LONGEST_EXACT) {
            return exact;
        }
        BigDecimal rounded = new BigDecimal(x).round(SIX_DIGITS);
        if (Math.abs(x) >= MILLION) {
            rounded = new BigDecimal(x).setScale(0, RoundingMode.HALF_UP);
        }
        String text = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
        return text.length() > 14 ? rounded.toString() : text;
    }
}
