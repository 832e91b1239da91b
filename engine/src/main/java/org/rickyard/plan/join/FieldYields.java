package org.rickyard.plan.join;

import java.util.Arrays;
import java.util.Map;
import java.util.function.IntPredicate;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.plan.table.Obstacle;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/** Which yield a row has: that of the cut or of the field, fresh or of dry matter, by its basis or its unit. */
public final class FieldYields {
    private static final String DRY_MATTER = "dry matter";

    /** What may be typed for a cut, and for its field where the cut says nothing. */
    private static final Map<Symbol, ColumnSpec> TYPED_FOR_CUTS = Map.of(
            Quantities.YIELD, Cuts.YIELD,
            Quantities.YIELD_DRY_MATTER, Cuts.YIELD,
            Quantities.DM_AT_CUTTING, Cuts.DM_AT_CUTTING,
            Quantities.DM_AT_ENSILING, Cuts.DM_AT_ENSILING);

    private FieldYields() {}

    /** Says of each row which cut it is and which yield it has. */
    public static RowSources apply(RowSources sources, FoundLists lists, int[] field, CutsMet cut) {
        return apply(sources, lists, field, cut, row -> true);
    }

    /** The same, where only some rows have to do with the crop; a sprayer's throughput in t/h would mean nothing. */
    public static RowSources apply(
            RowSources sources, FoundLists lists, int[] field, CutsMet met, IntPredicate withCrop) {
        ListRows fields = lists.rows(Fields.LIST);
        ListRows cuts = lists.rows(Cuts.LIST);
        int rows = field.length;
        int[] cut = met.rows();
        String[] basis = new String[rows];
        boolean[] fresh = new boolean[rows];
        boolean[] dry = new boolean[rows];
        for (int row = 0; row < rows; row++) {
            basis[row] = field[row] < 0 ? "" : basis(fields, field[row], cuts, oneOf(cut[row], met.perhaps()[row]));
            dry[row] = basis[row].equals(DRY_MATTER) && withCrop.test(row);
            fresh[row] = !basis[row].equals(DRY_MATTER) && withCrop.test(row);
        }
        TYPED_FOR_CUTS.forEach((symbol, column) -> {
            Obstacle[] obstacles = untold(symbol, column, cuts, met, withCrop);
            if (obstacles != null) {
                sources.withheld(symbol, obstacles);
            }
        });
        return sources.with(Role.CUT, cuts, cut)
                .with(Quantities.YIELD_BASIS, basis)
                .only(Quantities.YIELD, fresh)
                .only(Quantities.YIELD_DRY_MATTER, dry);
    }

    /** Of cuts that it may be, any: what was weighed as what is seldom another thing from cut to cut, and it is withheld. */
    private static int oneOf(int cut, int[] perhaps) {
        return perhaps == null ? cut : perhaps[0];
    }

    /** What keeps rows from having what is typed for a cut of which it cannot be told which it is; null if nothing does. */
    private static Obstacle[] untold(
            Symbol symbol, ColumnSpec column, ListRows cuts, CutsMet met, IntPredicate withCrop) {
        Obstacle[] obstacles = null;
        for (int row = 0; row < met.rows().length; row++) {
            int[] perhaps = met.perhaps()[row];
            // Where none of them has anything there, it is the field's own whichever it is.
            if (perhaps != null
                    && withCrop.test(row)
                    && Arrays.stream(perhaps).anyMatch(cut -> cuts.isFilled(column, cut))) {
                obstacles = obstacles == null ? new Obstacle[met.rows().length] : obstacles;
                obstacles[row] = new Obstacle(met.unread()[row], symbol.name() + " of which cut cannot be read");
            }
        }
        return obstacles;
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
