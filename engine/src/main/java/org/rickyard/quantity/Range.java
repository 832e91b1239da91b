package org.rickyard.quantity;

/**
 * A range of values in a stated unit. Bounds may be open (excluded) or missing (infinite).
 *
 * @param low lower bound, {@code -Infinity} if none
 * @param lowOpen whether the lower bound itself is excluded
 * @param high upper bound, {@code +Infinity} if none
 * @param highOpen whether the upper bound itself is excluded
 */
public record Range(double low, boolean lowOpen, double high, boolean highOpen) {
    /** Every number. */
    public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, true, Double.POSITIVE_INFINITY, true);
    /** Above zero. */
    public static final Range POSITIVE = new Range(0, true, Double.POSITIVE_INFINITY, true);
    /** Zero or above. */
    public static final Range NOT_NEGATIVE = new Range(0, false, Double.POSITIVE_INFINITY, true);

    /** In units of the last place: well within the fifteen digits that a grid compares. */
    private static final int NOISE = 2;

    /** From {@code low} to {@code high}, both included. */
    public static Range of(double low, double high) {
        return new Range(low, false, high, false);
    }

    /** Above {@code low} (excluded), up to {@code high} (included). */
    public static Range above(double low, double high) {
        return new Range(low, true, high, false);
    }

    /** From {@code low} (included) to below {@code high} (excluded). */
    public static Range below(double low, double high) {
        return new Range(low, false, high, true);
    }

    /**
     * Whether the value lies inside. NaN never does. What differs from a bound by binary noise only is on it, as for the
     * comparisons of a grid: 100.00000000000001 % is 100 %.
     */
    public boolean contains(double value) {
        return (lowOpen ? value > low && !isNoise(value, low) : value >= low || isNoise(value, low))
                && (highOpen ? value < high && !isNoise(value, high) : value <= high || isNoise(value, high));
    }

    private static boolean isNoise(double value, double bound) {
        return !Double.isInfinite(bound) && Math.abs(value - bound) <= NOISE * Math.ulp(bound) && bound != 0;
    }

    /** Whether there is a finite lower bound. */
    public boolean hasLow() {
        return low != Double.NEGATIVE_INFINITY;
    }

    /** Whether there is a finite upper bound. */
    public boolean hasHigh() {
        return high != Double.POSITIVE_INFINITY;
    }

    /** In words: "above 0, up to 40". */
    public String words() {
        if (!hasLow() && !hasHigh()) {
            return "any number";
        }
        String lower = !hasLow() ? "" : (lowOpen ? "above " : hasHigh() ? "from " : "at least ") + number(low);
        String upper = !hasHigh() ? "" : (highOpen ? "below " : hasLow() ? "up to " : "at most ") + number(high);
        return lower.isEmpty() || upper.isEmpty()
                ? lower + upper
                : lower + (highOpen ? ", " : lowOpen ? ", " : " ") + upper;
    }

    private static String number(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
        return whole ? Long.toString((long) value) : Double.toString(value);
    }
}
