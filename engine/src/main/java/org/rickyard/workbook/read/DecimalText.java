package org.rickyard.workbook.read;

/**
 * Reads decimal numbers from characters, without making a string for the short ones. The result is always the double
 * nearest to the decimal, the same that {@link Double#parseDouble} gives.
 */
public final class DecimalText {
    /** Whole numbers up to this are doubles exactly. */
    private static final long EXACT = 1L << 53;

    /** Powers of ten that are doubles exactly; one division or product with them is rounded once, so correctly. */
    private static final double[] POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    private DecimalText() {}

    /**
     * The number in {@code text[start..end)}: optional sign, digits with an optional point, optional exponent.
     *
     * @return the number; NaN if the text is not such a number or exceeds the range of doubles
     */
    public static double parse(char[] text, int start, int end) {
        int i = start;
        boolean negative = false;
        if (i < end && (text[i] == '-' || text[i] == '+')) {
            negative = text[i] == '-';
            i++;
        }
        long mantissa = 0;
        int digits = 0;
        int significant = 0;
        int scale = 0;
        boolean point = false;
        for (; i < end; i++) {
            char c = text[i];
            if (c >= '0' && c <= '9') {
                digits++;
                if (significant > 0 || c != '0') {
                    significant++;
                }
                if (significant <= 18) {
                    mantissa = 10 * mantissa + (c - '0');
                }
                if (point) {
                    scale++;
                }
            } else if (c == '.' && !point) {
                point = true;
            } else {
                break;
            }
        }
        if (digits == 0) {
            return Double.NaN;
        }
        int exponent = 0;
        if (i < end) {
            exponent = exponent(text, i, end);
            if (exponent == Integer.MIN_VALUE) {
                return Double.NaN;
            }
        }
        int power = exponent - scale;
        if (significant <= 18 && mantissa <= EXACT && power >= -22 && power <= 22) {
            double value = power < 0 ? mantissa / POWERS[-power] : mantissa * POWERS[power];
            return negative ? -value : value;
        }
        double value = Double.parseDouble(new String(text, start, end - start));
        return Double.isInfinite(value) ? Double.NaN : value;
    }

    /** The exponent from its letter on, held within ±99,999; the least int if it is malformed. */
    private static int exponent(char[] text, int from, int end) {
        int i = from;
        if (text[i] != 'e' && text[i] != 'E') {
            return Integer.MIN_VALUE;
        }
        i++;
        boolean negative = false;
        if (i < end && (text[i] == '-' || text[i] == '+')) {
            negative = text[i] == '-';
            i++;
        }
        if (i == end) {
            return Integer.MIN_VALUE;
        }
        int value = 0;
        for (; i < end; i++) {
            int digit = text[i] - '0';
            if (digit < 0 || digit > 9) {
                return Integer.MIN_VALUE;
            }
            value = Math.min(99_999, 10 * value + digit);
        }
        return negative ? -value : value;
    }
}
