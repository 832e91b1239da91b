package org.rickyard.plan.silage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;

/** What the further sheets of one row per clamp have alike: who the clamp is, and its row on the sheet of clamps. */
final class ClampJoin {
    private ClampJoin() {}

    private static final String CLAMPS = "clamps";

    static final TableColumn.Word KIND =
            new TableColumn.Word(Quantities.CLAMP_KIND, List.of(Candidate.typed(Role.CLAMP, Clamps.KIND)));
    static final TableColumn.Word COUNTRY =
            new TableColumn.Word(Quantities.COUNTRY, List.of(Candidate.typed(Role.CLAMP, Clamps.COUNTRY)));

    /** The columns of a sheet: who, then these. */
    static List<TableColumn> columns(TableColumn... further) {
        List<TableColumn> all = new ArrayList<>(List.of(
                Names.CLAMP_HOLDING,
                Names.CLAMP,
                KIND,
                new TableColumn.Key(Keys.CLAMP_KEY),
                new TableColumn.Joined(
                        Keys.CLAMP_POSITION, new Expr.Position(CLAMPS, Keys.CLAMP_KEY, Keys.CLAMP_KEY))));
        all.addAll(Arrays.asList(further));
        return all;
    }

    /** A quantity of the clamp's row on the sheet of clamps. */
    static TableColumn from(Symbol symbol) {
        return new TableColumn.Joined(symbol, new Expr.From(CLAMPS, symbol, Keys.CLAMP_POSITION));
    }

    /** A number the client must have typed for the clamp. */
    static TableColumn link(Symbol symbol, ColumnSpec column) {
        return Names.link(symbol, Candidate.typed(Role.CLAMP, column));
    }

    /** A number the client may have typed for the clamp. */
    static TableColumn optional(Symbol symbol, ColumnSpec column) {
        return Names.optional(symbol, Candidate.typed(Role.CLAMP, column));
    }

    /** These rows of the clamp list. */
    static RowSources rows(ListRows clamps, int[] rows) {
        return new RowSources(rows.length).with(Role.CLAMP, clamps, rows).with(Keys.CLAMP_KEY, RowNumbers.keysOf(rows));
    }

    /** The rows of the clamp list in which one of these columns is not blank. */
    static int[] where(ListRows clamps, ColumnSpec... columns) {
        List<Integer> rows = new ArrayList<>();
        for (int row = 0; row < clamps.size(); row++) {
            for (ColumnSpec column : columns) {
                if (clamps.isFilled(column, row)) {
                    rows.add(row);
                    break;
                }
            }
        }
        return rows.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Whether a machine is of the clamp's holding; one without a holding is of every one. */
    static boolean together(ListRows clamps, int clamp, ListRows machines, int machine) {
        String owner = NameKey.key(machines.text(Machines.HOLDING, machine));
        String holding = NameKey.key(clamps.text(Clamps.HOLDING, clamp));
        return owner.isEmpty() || holding.isEmpty() || owner.equals(holding);
    }
}
