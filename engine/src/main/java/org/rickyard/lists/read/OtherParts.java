package org.rickyard.lists.read;

import java.util.HashMap;
import java.util.Map;

/** Where the rest of a row stands that is told in two tables; of most rows there is none. */
final class OtherParts {
    private record Part(int table, int sheetRow) {}

    private final Map<Integer, Part> parts = new HashMap<>();

    void put(int row, int table, int sheetRow) {
        parts.put(row, new Part(table, sheetRow));
    }

    boolean exists(int row) {
        return !parts.isEmpty() && parts.containsKey(row);
    }

    int table(int row) {
        return parts.get(row).table();
    }

    int sheetRow(int row) {
        return parts.get(row).sheetRow();
    }
}
