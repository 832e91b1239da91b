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

    /** Behind the first of a list of names: " and 3 more"; "" where none is left. */
    public static String andMore(int left) {
        return left > 0 ? " and " + left + " more" : "";
    }

    /** Behind the first of so many: " (and 3 more rows)"; "" where it is alone. */
    public static String othersThan(int all, String thing) {
        return all > 1 ? " (and " + more(all - 1, thing) + ")" : "";
    }
}
