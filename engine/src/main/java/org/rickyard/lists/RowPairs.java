package org.rickyard.lists;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntFunction;

/**
 * Which rows of two tables belong together: those that bear the same names, wherever they stand. Of several with the same
 * names, as two jobs of one sprayer without a name of their own, those that hold the same belong together first, the
 * others in their order.
 */
public final class RowPairs {
    /** Where no row of the earlier table belongs to one. */
    public static final int NONE = -1;

    /**
     * The rows of one of the tables.
     *
     * @param count how many there are
     * @param name the names that a row bears
     * @param contents what a row holds; asked only where several have the same names
     */
    public record Rows(int count, IntFunction<?> name, IntFunction<?> contents) {}

    private final int[] formers;
    private final SortedSet<Integer> alone = new TreeSet<>();

    private RowPairs(int rows) {
        formers = new int[rows];
        Arrays.fill(formers, NONE);
    }

    /** Pairs the rows of an earlier table with those of a later. */
    public static RowPairs of(Rows before, Rows after) {
        RowPairs pairs = new RowPairs(after.count());
        Map<Object, List<Integer>> earlier = byName(before);
        byName(after).forEach((name, rows) -> {
            List<Integer> theirs = earlier.remove(name);
            if (theirs != null) {
                pairs.pair(theirs, before.contents(), rows, after.contents());
            }
        });
        earlier.values().forEach(pairs.alone::addAll);
        return pairs;
    }

    private static Map<Object, List<Integer>> byName(Rows rows) {
        Map<Object, List<Integer>> named = new HashMap<>();
        for (int row = 0; row < rows.count(); row++) {
            named.computeIfAbsent(rows.name().apply(row), n -> new ArrayList<>())
                    .add(row);
        }
        return named;
    }

    private void pair(List<Integer> theirs, IntFunction<?> before, List<Integer> rows, IntFunction<?> after) {
        SortedSet<Integer> open = new TreeSet<>(theirs);
        if (rows.size() > 1 || theirs.size() > 1) {
            Map<Object, Deque<Integer>> alike = new HashMap<>();
            theirs.forEach(row -> alike.computeIfAbsent(before.apply(row), c -> new ArrayDeque<>())
                    .add(row));
            for (int row : rows) {
                Deque<Integer> same = alike.get(after.apply(row));
                if (same != null && !same.isEmpty()) {
                    formers[row] = same.poll();
                    open.remove(formers[row]);
                }
            }
        }
        for (int row : rows) {
            if (formers[row] == NONE && !open.isEmpty()) {
                formers[row] = open.first();
                open.remove(formers[row]);
            }
        }
        alone.addAll(open);
    }

    /** The row of the earlier table that belongs to one of the later, or {@link #NONE}. */
    public int former(int row) {
        return formers[row];
    }

    /** The rows of the earlier table that belong to none, in their order. */
    public List<Integer> alone() {
        return List.copyOf(alone);
    }
}
