package org.rickyard.lists;

/** Numbers of things in sentences. */
public final class Counted {
    private Counted() {}

    /** "1 row", "3 rows". */
    public static String of(long count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }

    /** "1 more row", "3 more rows". */
    public static String more(long count, String thing) {
        return of(count, "more " + thing);
    }
}
