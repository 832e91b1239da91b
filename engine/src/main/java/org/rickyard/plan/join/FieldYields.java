package org.rickyard.plan.join;

import java.util.function.IntPredicate;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/** Which yield a row has: that of the cut or of the field, fresh or of dry matter, by its basis or its unit. */
public final class FieldYields {
    private static final String DRY_MATTER = "dry matter";

    private FieldYields() {}

    /** Says of each row which cut it is and which yield it has. */
    public static RowSources apply(RowSources sources, FoundLists lists, int[] field, int[] cut) {
        return apply(sources, lists, field, cut, row -> true);
    }

    /** The same, where only some rows have to do with the crop; a sprayer's throughput in t/h would mean nothing. */
    public static RowSources apply(
            RowSources sources, FoundLists lists, int[] field, int[] cut, IntPredicate withCrop) {
        ListRows fields = lists.rows(Fields.LIST);
        ListRows cuts = lists.rows(Cuts.LIST);
        int rows = field.length;
        String[] basis = new String[rows];
        boolean[] fresh = new boolean[rows];
        boolean[] dry = new boolean[rows];
        for (int row = 0; row < rows; row++) {
            basis[row] = field[row] < 0 ? "" : basis(fields, field[row], cuts, cut[row]);
            dry[row] = basis[row].equals(DRY_MATTER) && withCrop.test(row);
            fresh[row] = !basis[row].equals(DRY_MATTER) && withCrop.test(row);
        }
        return sources.with(Role.CUT, cuts, cut)
                .with(Quantities.YIELD_BASIS, basis)
                .only(Quantities.YIELD, fresh)
                .only(Quantities.YIELD_DRY_MATTER, dry);
    }

    /** The basis typed, for the cut before the field; a yield whose unit says dry matter needs none. */
    public static String basis(ListRows fields, int field, ListRows cuts, int cut) {
        boolean yieldOfCut = cut >= 0 && cuts.isFilled(Cuts.YIELD, cut);
        ListRows list = yieldOfCut ? cuts : fields;
        int row = yieldOfCut ? cut : field;
        String said = cut >= 0 && cuts.isFilled(Cuts.YIELD_BASIS, cut)
                ? usable(cuts, Cuts.YIELD_BASIS, cut)
                : usable(fields, Fields.YIELD_BASIS, field);
        if (said.isEmpty()
                && list.unit(Fields.YIELD, row)
                        .filter(unit -> unit.isCompatible(Units.T_DM_PER_HA))
                        .isPresent()) {
            return DRY_MATTER;
        }
        return said;
    }

    private static String usable(ListRows list, ColumnSpec column, int row) {
        return list.gives(column, row) ? list.text(column, row) : "";
    }
}
