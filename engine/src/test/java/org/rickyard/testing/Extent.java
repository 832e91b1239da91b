package org.rickyard.testing;

/**
 * How much of what is merely many repetitions of one check is done. The gate takes a seeded share of them in which every
 * kind occurs; {@code -Drickyard.whole=true} has all of them done.
 */
public final class Extent {
    private Extent() {}

    /** Whether all repetitions are asked for. */
    public static boolean whole() {
        return Boolean.getBoolean("rickyard.whole");
    }

    /**
     * How many repetitions there are to be.
     *
     * @param property the system property that says it for this check alone, and then decides
     * @param gate how many the gate takes
     * @param whole how many the whole takes
     */
    public static int of(String property, int gate, int whole) {
        return Integer.getInteger(property, whole() ? whole : gate);
    }
}
