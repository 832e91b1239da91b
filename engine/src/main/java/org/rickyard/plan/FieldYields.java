package org.rickyard.plan;

import java.util.function.IntPredicate;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/** Which of a field's yield columns apply: a fresh yield or one of dry matter, by its basis or its unit. */
final class FieldYields {
    private static final String DRY_MATTER = "dry matter";

    private FieldYields() {}

    /** Says of each row which yield it has. */
    static RowSources apply(RowSources sources, FoundLists lists, int[] field) {
        return apply(sources, lists, field, row -> true);
    }

    /** The same, where only some rows have to do with the crop; a sprayer's throughput in t/h would mean nothing. */
    static RowSources apply(RowSources sources, FoundLists lists, int[] field, IntPredicate withCrop) {
        ListRows fields = lists.rows(Fields.LIST);
        int rows = field.length;
        String[] basis = new String[rows];
        boolean[] fresh = new boolean[rows];
        boolean[] dry = new boolean[rows];
        for (int row = 0; row < rows; row++) {
            basis[row] = field[row] < 0 ? "" : basis(fields, field[row]);
            dry[row] = basis[row].equals(DRY_MATTER) && withCrop.test(row);
            fresh[row] = !basis[row].equals(DRY_MATTER) && withCrop.test(row);
        }
        return sources.with(Quantities.YIELD_BASIS, basis)
                .only(Quantities.YIELD, fresh)
                .only(Quantities.YIELD_DRY_MATTER, dry);
    }

    private static String basis(ListRows fields, int field) {
        if (fields.state(Fields.YIELD_BASIS, field) == ListRows.State.GIVEN) {
            return fields.text(Fields.YIELD_BASIS, field);
        }
        return fields.unit(Fields.YIELD, field)
                        .filter(unit -> unit.isCompatible(Units.T_DM_PER_HA))
                        .isPresent()
                ? DRY_MATTER
                : "";
    }
}
