package org.rickyard.lists.read;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Shared;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;

/**
 * The fields, or the machines, of a list that is flat: each stands once for each of its jobs, and the first row of it is
 * what is read.
 */
final class FlatRows {
    private final FoundTable table;
    private final Binder.Bound bound;
    private final ColumnSpec name;
    /** What is said of each, which must be the same in every row of it. */
    private final List<ColumnSpec> compared;

    private final Map<String, CellAddress> seen;
    private final List<Finding> into;

    private FlatRows(
            FoundTable table,
            Binder.Bound bound,
            ColumnSpec name,
            List<ColumnSpec> compared,
            Map<String, CellAddress> seen,
            List<Finding> into) {
        this.table = table;
        this.bound = bound;
        this.name = name;
        this.compared = compared;
        this.seen = seen;
        this.into = into;
    }

    /**
     * Those of one table.
     *
     * @param seen where each stands first, of all tables of the list
     * @return null where each row of the table is one of the list
     */
    static FlatRows of(
            ListSpec list, FoundTable table, Binder.Bound bound, Map<String, CellAddress> seen, List<Finding> into) {
        if (list == Fields.LIST && table.roles().size() > 1) {
            return new FlatRows(table, bound, Fields.FIELD, List.of(Fields.AREA), seen, into);
        }
        if (list == Machines.LIST && table.chief() != Machines.LIST) {
            List<ColumnSpec> said = list.columns().stream()
                    .filter(column -> column.isNumeric() && bound.bindings().containsKey(column))
                    .toList();
            return new FlatRows(table, bound, Machines.MACHINE, said, seen, into);
        }
        return null;
    }

    /** Whether a row is the first of what it names; says so where another row of it does not agree. */
    boolean isFirst(int row) {
        String named = text(name, row);
        if (named.isEmpty() && name == Machines.MACHINE) {
            return false;
        }
        String key = Words.key(text(Shared.HOLDING, row)) + '\n' + Words.key(named);
        CellAddress first = seen.putIfAbsent(key, table.address(row, table.firstColumn()));
        if (first == null) {
            return true;
        }
        compared.forEach(column -> compare(column, named, first, row));
        return false;
    }

    private void compare(ColumnSpec column, String named, CellAddress first, int row) {
        Grid grid = table.grid();
        int at = bound.bindings().get(column).get(0).sheetColumn();
        boolean same = first.sheet().equals(grid.sheet())
                && (grid.kind(row, at) == Grid.Kind.BLANK || grid.number(first.row(), at) == grid.number(row, at));
        if (!same) {
            into.add(Finding.caution(
                    table.address(row, at),
                    "The " + name.name().toLowerCase(Locale.ROOT) + " " + Words.quoted(named) + " has another "
                            + column.name().toLowerCase(Locale.ROOT) + " here than in "
                            + new CellAddress(first.sheet(), first.row(), at) + "; the first is used."));
        }
    }

    private String text(ColumnSpec column, int row) {
        List<Binding> bindings = bound.bindings().get(column);
        if (bindings == null) {
            return bound.words().getOrDefault(column, "");
        }
        int sheetColumn = bindings.get(0).sheetColumn();
        return table.grid().words(FoundRows.sheetRow(column, table.grid(), row, sheetColumn), sheetColumn);
    }
}
