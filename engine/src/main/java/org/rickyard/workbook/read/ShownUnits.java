package org.rickyard.workbook.read;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/** What the numbers of a sheet are shown with, kept by column where it changes: as a rule once in a column. */
final class ShownUnits {
    private final Map<Integer, TreeMap<Integer, String>> columns = new HashMap<>();

    /** Takes what a number is shown with; cells come in any order, as a rule downwards. */
    void put(int row, int column, String unit) {
        TreeMap<Integer, String> changes = columns.get(column);
        if (changes == null) {
            if (unit.isEmpty()) {
                return;
            }
            changes = new TreeMap<>();
            columns.put(column, changes);
        }
        Map.Entry<Integer, String> above = changes.floorEntry(row);
        String before = above == null ? "" : above.getValue();
        if (!before.equals(unit)) {
            if (changes.higherKey(row) != null) {
                changes.putIfAbsent(row + 1, before);
            }
            changes.put(row, unit);
        }
    }

    /** What the number of a cell is shown with; "" if nothing. */
    String at(int row, int column) {
        TreeMap<Integer, String> changes = columns.get(column);
        Map.Entry<Integer, String> above = changes == null ? null : changes.floorEntry(row);
        return above == null ? "" : above.getValue();
    }

    /** Whether any number of a column is shown with something. */
    boolean isIn(int column) {
        return columns.containsKey(column);
    }
}
