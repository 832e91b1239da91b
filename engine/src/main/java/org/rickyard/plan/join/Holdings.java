package org.rickyard.plan.join;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.Fields;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.RepeatedKey;

/** The holdings of the field list, numbered from 1 in order of appearance; fields without a holding make one too. */
public final class Holdings {
    private final int[] keys;

    /** Those of these fields. */
    public Holdings(ListRows fields) {
        Map<String, Integer> numbers = new HashMap<>();
        RepeatedKey names = new RepeatedKey();
        keys = new int[fields.size()];
        for (int field = 0; field < keys.length; field++) {
            String holding = names.of(fields.text(Fields.HOLDING, field));
            Integer known = numbers.get(holding);
            if (known == null) {
                known = numbers.size() + 1;
                numbers.put(holding, known);
            }
            keys[field] = known;
        }
    }

    /** The number of a field's holding. */
    public int key(int field) {
        return keys[field];
    }

    /** One field of each holding that occurs, in order of the holdings' numbers. */
    public int[] firstFields(int[] fields) {
        Set<Integer> seen = new HashSet<>();
        List<Integer> firsts = new ArrayList<>();
        for (int field : fields) {
            if (seen.add(keys[field])) {
                firsts.add(field);
            }
        }
        return firsts.stream()
                .sorted((a, b) -> Integer.compare(keys[a], keys[b]))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
