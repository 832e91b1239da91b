package org.rickyard.testing;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.rickyard.lists.CellAddress;

/** Compares the values a workbook stores with those that an independent evaluator works out. */
public final class Parity {
    /** How far two numbers may lie apart, as a share of the largest number involved. */
    public static final double TOLERANCE = 1e-9;

    private static final Object ABSENT = new Object() {
        @Override
        public String toString() {
            return "no formula";
        }
    };

    private Parity() {}

    /** As {@link #differences(Map, Map, ToDoubleFunction)}, judged by the two numbers alone. */
    public static List<String> differences(Map<CellAddress, Object> stored, Map<CellAddress, Object> recalculated) {
        return differences(stored, recalculated, cell -> 0);
    }

    /**
     * One line for every cell that differs or that only one side has; empty if all agree.
     *
     * @param magnitude the largest input of a cell, for results in which large numbers cancel
     */
    public static List<String> differences(
            Map<CellAddress, Object> stored,
            Map<CellAddress, Object> recalculated,
            ToDoubleFunction<CellAddress> magnitude) {
        TreeMap<CellAddress, String> lines = new TreeMap<>((a, b) -> {
            int bySheet = a.sheet().compareTo(b.sheet());
            int byRow = Integer.compare(a.row(), b.row());
            return bySheet != 0 ? bySheet : byRow != 0 ? byRow : Integer.compare(a.column(), b.column());
        });
        Set<CellAddress> cells = new HashSet<>(stored.keySet());
        cells.addAll(recalculated.keySet());
        for (CellAddress cell : cells) {
            Object one = stored.getOrDefault(cell, ABSENT);
            Object other = recalculated.getOrDefault(cell, ABSENT);
            if (!agree(one, other, 0) && !agree(one, other, magnitude.applyAsDouble(cell))) {
                lines.put(cell, cell + ": stored " + shown(one) + ", recalculated " + shown(other));
            }
        }
        return List.copyOf(lines.values());
    }

    /** Whether two values are alike; numbers within the tolerance of the larger of them and of their inputs. */
    public static boolean agree(Object one, Object other, double magnitude) {
        if (one instanceof Double a && other instanceof Double b) {
            return Math.abs(a - b) <= TOLERANCE * Math.max(Math.abs(magnitude), Math.max(Math.abs(a), Math.abs(b)));
        }
        return one.equals(other);
    }

    private static String shown(Object value) {
        return value instanceof String text ? '"' + text + '"' : value.toString();
    }
}
