package org.rickyard.formula;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The closed list of functions a formula may use, each with its meaning here and its name in the grid. */
public enum Function {
    /** The least of several. */
    MIN("MIN", "least of", 1, 9),
    /** The greatest of several. */
    MAX("MAX", "greatest of", 1, 9),
    /** The absolute value. */
    ABS("ABS", "size of", 1, 1),
    /** The square root. */
    SQRT("SQRT", "square root of", 1, 1),
    /** e to a power. */
    EXP("EXP", "e to the power", 1, 1),
    /** The natural logarithm. */
    LN("LN", "natural logarithm of", 1, 1),
    /** The arc tangent, in radians. */
    ATAN("ATAN", "arc tangent of", 1, 1),
    /** Rounded half away from zero to a number of decimals. */
    ROUND("ROUND", "rounded", 2, 2),
    /** Rounded up to whole, not fooled by binary noise: first to nine decimals, then up. */
    ROUND_UP("ROUNDUP", "rounded up", 1, 1),
    /** Rounded down to whole, not fooled by binary noise. */
    ROUND_DOWN("ROUNDDOWN", "rounded down", 1, 1);

    /** Decimals to which binary noise is cut before rounding to whole. */
    static final int NOISE_DECIMALS = 9;

    private final String cell;
    private final String words;
    private final int least;
    private final int most;

    Function(String cell, String words, int least, int most) {
        this.cell = cell;
        this.words = words;
        this.least = least;
        this.most = most;
    }

    /** Its name in a cell formula. */
    public String cell() {
        return cell;
    }

    /** In words. */
    public String words() {
        return words;
    }

    boolean takes(int arguments) {
        return arguments >= least && arguments <= most;
    }

    /** Its value for one argument; for {@link #MIN} and {@link #MAX} see {@link #apply(double, double)}. */
    double apply(double x) {
        return switch (this) {
            case MIN, MAX -> x;
            case ABS -> Math.abs(x);
            case SQRT -> Math.sqrt(x);
            case EXP -> Math.exp(x);
            case LN -> Math.log(x);
            case ATAN -> Math.atan(x);
            case ROUND -> throw new IllegalStateException("ROUND takes two arguments");
            case ROUND_UP -> whole(x, RoundingMode.UP);
            case ROUND_DOWN -> whole(x, RoundingMode.DOWN);
        };
    }

    /** Its value for two arguments. */
    double apply(double x, double y) {
        return switch (this) {
            case MIN -> Math.min(x, y);
            case MAX -> Math.max(x, y);
            case ROUND -> round(x, (int) y);
            default -> throw new IllegalStateException(this + " takes one argument");
        };
    }

    /** Rounded half away from zero, as the grid's ROUND does. */
    static double round(double x, int decimals) {
        if (Double.isNaN(x) || Double.isInfinite(x) || Math.abs(x) >= 1e15 || decimals >= 3 && isThousandths(x)) {
            return x;
        }
        return BigDecimal.valueOf(x).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
    }

    /** Most that is typed has three decimals at most, and is as round as it can be without a look at its digits. */
    private static boolean isThousandths(double x) {
        double thousandths = Math.rint(x * 1000);
        return Math.abs(thousandths) < 1e12 && thousandths / 1000 == x;
    }

    private static double whole(double x, RoundingMode mode) {
        if (Double.isNaN(x) || Double.isInfinite(x) || Math.abs(x) >= 1e15) {
            return x;
        }
        if (x == Math.rint(x)) {
            return x;
        }
        return BigDecimal.valueOf(x)
                .setScale(NOISE_DECIMALS, RoundingMode.HALF_UP)
                .setScale(0, mode)
                .doubleValue();
    }
}
