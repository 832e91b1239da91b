package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where the rest of a row stands that is told in several tables; of most rows there is none. */
final class OtherParts {
    /** A row of another table. */
    record Part(int table, int sheetRow) {}

    private final Map<Integer, List<Part>> parts = new HashMap<>();

    void put(int row, int table, int sheetRow) {
        parts.computeIfAbsent(row, r -> new ArrayList<>(1)).add(new Part(table, sheetRow));
    }

    /** In the order of the tables. */
    List<Part> of(int row) {
        return parts.isEmpty() ? List.of() : parts.getOrDefault(row, List.of());
    }
}
