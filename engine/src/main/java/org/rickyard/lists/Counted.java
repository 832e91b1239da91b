package org.rickyard.lists;

/** Numbers of things in sentences. */
public final class Counted {
    private Counted() {}

    /** "1 more row", "3 more rows". */
    public static String more(long count, String thing) {
        return count + " more " + thing + (count == 1 ? "" : "s");
    }
}
