package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * Tells a table that only repeats fields of the field list, a soil test or a bill for work done on them, from a second
 * list of fields: every row of it names a field that stands there, with the same area, and whatever it says of them more is
 * what the list says too, as in a copy that is kept for the record.
 */
final class FieldsAgain {
    /** As far as areas are rounded when they are copied by hand: 4.05 ha as 4.1. */
    private static final double ROUGHLY = 0.015;

    /** What a table may say of a field and yet say nothing that results need. */
    private static final Set<ColumnSpec> NOTHING_NEW =
            Set.of(Fields.HOLDING, Fields.FIELD, Fields.AREA, Fields.CROP, Fields.BLOCK, Fields.NOTES);

    private final ListRows list;
    private final Map<String, List<Integer>> rowsOf = new HashMap<>();

    /** The field list proper, with which others are compared. */
    FieldsAgain(ListRows list) {
        this.list = list;
        for (int row = 0; row < list.size(); row++) {
            rowsOf.computeIfAbsent(Words.key(list.text(Fields.FIELD, row)), any -> new ArrayList<>())
                    .add(row);
        }
    }

    /** Whether another table has no field and nothing of a field that the list has not. */
    boolean isRepeatedBy(ListRows other) {
        List<ColumnSpec> more = Fields.LIST.columns().stream()
                .filter(column -> !NOTHING_NEW.contains(column) && other.has(column))
                .toList();
        for (int row = 0; row < other.size(); row++) {
            int again = row;
            Integer same = same(other, row);
            if (same == null || !more.stream().allMatch(column -> says(column, same, other, again))) {
                return false;
            }
        }
        return other.size() > 0;
    }

    /** The first row of a table that repeats the list, beside which another crop stands than there, or one where none does. */
    Optional<Integer> otherCrop(ListRows other) {
        for (int row = 0; row < other.size(); row++) {
            Integer same = other.isFilled(Fields.CROP, row) ? same(other, row) : null;
            if (same != null
                    && !Words.normal(other.text(Fields.CROP, row)).equals(Words.normal(list.text(Fields.CROP, same)))) {
                return Optional.of(row);
            }
        }
        return Optional.empty();
    }

    /** Whether the list says of a field what another table does, or that says nothing. */
    private boolean says(ColumnSpec column, int candidate, ListRows other, int row) {
        if (!other.isFilled(column, row)) {
            return true;
        }
        return list.has(column)
                && list.state(column, candidate) == other.state(column, row)
                && list.typed(column, candidate).equals(other.typed(column, row))
                && list.number(column, candidate) == other.number(column, row)
                && list.unit(column, candidate).equals(other.unit(column, row));
    }

    private Integer same(ListRows other, int row) {
        List<Integer> named = rowsOf.getOrDefault(Words.key(other.text(Fields.FIELD, row)), List.of());
        for (int candidate : named) {
            String there = Words.key(list.text(Fields.HOLDING, candidate));
            String here = Words.key(other.text(Fields.HOLDING, row));
            // Where no holding is said, a name that the list has once will do.
            boolean sameHolding = here.equals(there) || here.isEmpty() && named.size() == 1;
            if (sameHolding && sameArea(candidate, other, row)) {
                return candidate;
            }
        }
        return null;
    }

    private boolean sameArea(int candidate, ListRows other, int row) {
        if (!list.gives(Fields.AREA, candidate) || !other.gives(Fields.AREA, row)) {
            return false;
        }
        Unit there = list.unit(Fields.AREA, candidate).orElse(null);
        Unit here = other.unit(Fields.AREA, row).orElse(null);
        if (there == null || here == null) {
            return false;
        }
        double listed = there.convert(list.number(Fields.AREA, candidate), Units.HA);
        double again = here.convert(other.number(Fields.AREA, row), Units.HA);
        return Math.abs(listed - again) <= ROUGHLY * Math.abs(listed);
    }
}
