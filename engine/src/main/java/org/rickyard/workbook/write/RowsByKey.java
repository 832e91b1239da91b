package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoublePredicate;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.plan.table.ResultTable;

/** The rows of tables by a key that they share. Tables may be long: each is gone through once. */
final class RowsByKey {
    private final Symbol key;
    private final DoublePredicate wanted;
    private final Map<String, Map<Double, List<Integer>>> byTable = new HashMap<>();

    /**
     * By one key.
     *
     * @param wanted which of its numbers are asked for
     */
    RowsByKey(Symbol key, DoublePredicate wanted) {
        this.key = key;
        this.wanted = wanted;
    }

    /** The rows of a table that have this number, downwards. */
    List<Integer> of(ResultTable table, double number) {
        return byTable.computeIfAbsent(table.spec().id(), id -> index(table)).getOrDefault(number, List.of());
    }

    private Map<Double, List<Integer>> index(ResultTable table) {
        Map<Double, List<Integer>> rows = new HashMap<>();
        if (table.rows() > 0) {
            Values keys = table.of(key);
            for (int row = 0; row < table.rows(); row++) {
                if (wanted.test(keys.number(row))) {
                    rows.computeIfAbsent(keys.number(row), any -> new ArrayList<>())
                            .add(row);
                }
            }
        }
        return rows;
    }
}
