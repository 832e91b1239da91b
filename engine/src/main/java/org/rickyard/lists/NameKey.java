package org.rickyard.lists;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.text.Words;

/**
 * Finds the row of a thing by its holding and name. Case and outer spaces do not matter; every other character stands
 * for itself, so that {@code *}, {@code >5} and {@code 007} are names like any other.
 */
public final class NameKey {
    /** What a name leads to. */
    public sealed interface Resolution {}

    /** One row has it. */
    public record Found(int row) implements Resolution {}

    /** No row has it. */
    public record None() implements Resolution {}

    /**
     * Several rows have it.
     *
     * @param rows all of them
     * @param holdings the holdings they belong to, once each, as the client wrote them; "" for none
     */
    public record Ambiguous(List<Integer> rows, List<String> holdings) implements Resolution {
        /**
         * Why the name alone will not do, and what to do: a clause without full stop.
         *
         * @param thing what is named, as in "the field list"
         * @param name the name as it was asked for
         * @param where where the holding is to be said, as in "the Holding column of this job"
         */
        public String why(String thing, String name, String where) {
            if (holdings.size() > 1) {
                List<String> named = holdings.stream()
                        .map(each -> each.isEmpty() ? "one without a holding" : each)
                        .toList();
                return "more than one holding has a " + thing + " '" + name + "' (" + String.join(", ", named)
                        + "); say which in " + where;
            }
            return "the " + thing + " '" + name + "' stands " + rows.size() + " times in the " + thing + " list"
                    + (holdings.get(0).isEmpty() ? "" : " of one holding") + "; give each its own name";
        }
    }

    private static final int[] NO_ROWS = {};

    private final ListRows rows;
    private final ColumnSpec name;
    private final ColumnSpec holding;
    private final NearNames near;
    /** Made when first asked: many a list has rows that nothing names. */
    private Map<String, int[]> byName;

    private NameKey(ListRows rows, ColumnSpec name) {
        this.rows = rows;
        this.name = name;
        this.holding = rows.spec().column("Holding").orElse(null);
        this.near = NearNames.of(rows, name);
    }

    private int[] rowsOf(String key) {
        if (byName == null) {
            byName = index();
        }
        return byName.getOrDefault(key, NO_ROWS);
    }

    private Map<String, int[]> index() {
        Map<String, int[]> index = new HashMap<>();
        for (int row = 0; row < rows.size(); row++) {
            int next = row;
            index.compute(Words.key(rows.text(name, row)), (key, old) -> {
                int[] all = old == null ? new int[1] : Arrays.copyOf(old, old.length + 1);
                all[all.length - 1] = next;
                return all;
            });
        }
        return index;
    }

    /** An index of the rows of a list by the column that names them. */
    public static NameKey of(ListRows rows, ColumnSpec name) {
        return new NameKey(rows, name);
    }

    /**
     * The row of a name.
     *
     * @param inHolding whose it is; where blank, the bare name will do if only one holding has it
     * @param name its name
     */
    public Resolution resolve(String inHolding, String name) {
        String key = Words.key(name);
        int[] all = rowsOf(key);
        if (all.length == 0 || key.isEmpty()) {
            return new None();
        }
        String wanted = Words.key(inHolding);
        if (wanted.isEmpty() || holding == null) {
            return of(all);
        }
        int[] own = ofHolding(all, wanted);
        return of(own.length > 0 ? own : ofHolding(all, ""));
    }

    private int[] ofHolding(int[] all, String wanted) {
        int[] own = new int[all.length];
        int count = 0;
        for (int row : all) {
            if (Words.key(rows.text(holding, row)).equals(wanted)) {
                own[count++] = row;
            }
        }
        return Arrays.copyOf(own, count);
    }

    private Resolution of(int[] found) {
        if (found.length == 0) {
            return new None();
        }
        if (found.length == 1) {
            return new Found(found[0]);
        }
        List<Integer> each = new ArrayList<>();
        List<String> holdings = new ArrayList<>();
        for (int row : found) {
            each.add(row);
            String text = holding == null ? "" : rows.text(holding, row);
            if (holdings.stream().noneMatch(known -> Words.key(known).equals(Words.key(text)))) {
                holdings.add(text);
            }
        }
        return new Ambiguous(each, holdings);
    }

    /** Whether any row has that name, whosever it is. */
    public boolean knows(String name) {
        String key = Words.key(name);
        return !key.isEmpty() && rowsOf(key).length > 0;
    }

    /** A question that follows a sentence on a name that no row has, as {@link NearNames#meant} asks it. */
    public String meant(String name) {
        return near.meant(name);
    }

    /** The form of a name by which it is compared: without outer spaces and case. */
    public static String key(String name) {
        return Words.key(name);
    }
}
