package org.rickyard.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Totals of a column by key over the rows of a lower order, each found by halving. */
final class RunningTotals {
    private record Entry(double order, boolean has, double number) {}

    private static final class Group {
        private final List<Entry> entries = new ArrayList<>();
        private double[] sums;
        private int[] missing;
        private boolean unordered;

        /** Puts the entries in order and adds them up from the lowest. */
        void close() {
            entries.sort((a, b) -> Double.compare(a.order(), b.order()));
            sums = new double[entries.size() + 1];
            missing = new int[entries.size() + 1];
            for (int i = 0; i < entries.size(); i++) {
                Entry entry = entries.get(i);
                sums[i + 1] = sums[i] + (entry.has() ? entry.number() : 0);
                missing[i + 1] = missing[i] + (entry.has() ? 0 : 1);
            }
        }

        int lower(double order) {
            int low = 0;
            int high = entries.size();
            while (low < high) {
                int middle = (low + high) / 2;
                if (entries.get(middle).order() < order) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }

    private final Map<Integer, Group> groups = new HashMap<>();

    private RunningTotals() {}

    static RunningTotals of(Values keys, Values orders, Values column) {
        RunningTotals totals = new RunningTotals();
        for (int row = 0; row < keys.rows(); row++) {
            if (!keys.has(row)) {
                continue;
            }
            Group group = totals.groups.computeIfAbsent((int) keys.number(row), key -> new Group());
            if (orders.has(row)) {
                boolean has = column.has(row);
                group.entries.add(new Entry(orders.number(row), has, has ? column.number(row) : 0));
            } else {
                group.unordered = true;
            }
        }
        totals.groups.values().forEach(Group::close);
        return totals;
    }

    /**
     * Puts the total of what comes before into {@code out[0]}; false if one of those rows has no value, or a row of the
     * key no order, so that it might be one of them.
     */
    boolean before(int key, double order, double[] out) {
        Group group = groups.get(key);
        if (group != null && group.unordered) {
            return false;
        }
        int lower = group == null ? 0 : group.lower(order);
        out[0] = lower == 0 ? 0 : group.sums[lower];
        return lower == 0 || group.missing[lower] == 0;
    }
}
