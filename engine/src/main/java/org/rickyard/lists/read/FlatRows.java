package org.rickyard.lists.read;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Shared;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Unit;

/**
 * The fields, or the machines, of a list that is flat: each stands once for each of its jobs, and the first row of it is
 * what is read.
 */
final class FlatRows {
    /** A row that is the first of what it names, and the table it stands in. */
    record First(FlatRows of, int row) {}

    /** How far what is measured in two units may differ by rounding, as a share. */
    private static final double ROUNDED = 0.01;

    private final FoundTable table;
    private final Binder.Bound bound;
    private final ColumnSpec name;
    /** What is said of each, which must be the same in every row of it. */
    private final List<ColumnSpec> compared;

    private final Map<String, First> seen;
    private final List<Finding> into;

    private FlatRows(
            FoundTable table,
            Binder.Bound bound,
            ColumnSpec name,
            List<ColumnSpec> compared,
            Map<String, First> seen,
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
            ListSpec list, FoundTable table, Binder.Bound bound, Map<String, First> seen, List<Finding> into) {
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
        First first = seen.putIfAbsent(key, new First(this, row));
        if (first == null) {
            return true;
        }
        compared.forEach(column -> compare(column, named, first, row));
        return false;
    }

    /** The first may stand in another table, with its columns in another order. */
    private void compare(ColumnSpec column, String named, First first, int row) {
        Binding here = bound.bindings().get(column).get(0);
        List<Binding> there = first.of.bound.bindings().getOrDefault(column, List.of());
        if (table.grid().kind(row, here.sheetColumn()) == Grid.Kind.BLANK
                || !there.isEmpty() && isSame(here, row, first, there.get(0))) {
            return;
        }
        String what = column.name().toLowerCase(Locale.ROOT);
        into.add(Finding.caution(
                table.address(row, here.sheetColumn()),
                "The " + name.name().toLowerCase(Locale.ROOT) + " " + Words.quoted(named)
                        + (there.isEmpty()
                                ? " has a " + what + " here and none in "
                                        + first.of.table.address(first.row, first.of.table.firstColumn())
                                : " has another " + what + " here than in "
                                        + first.of.table.address(
                                                first.row, there.get(0).sheetColumn()))
                        + "; the first is used."));
    }

    private boolean isSame(Binding here, int row, First first, Binding there) {
        return isSame(table.grid(), row, here, first.of.table.grid(), first.row, there);
    }

    /** Whether two cells say the same: the same words, or the same amount, rounded or in another unit. */
    static boolean isSame(Grid grid, int row, Binding here, Grid firstGrid, int firstRow, Binding there) {
        boolean numbers = grid.kind(row, here.sheetColumn()) == Grid.Kind.NUMBER
                && firstGrid.kind(firstRow, there.sheetColumn()) == Grid.Kind.NUMBER;
        if (!numbers) {
            return grid.words(row, here.sheetColumn()).equals(firstGrid.words(firstRow, there.sheetColumn()));
        }
        double one = grid.number(row, here.sheetColumn());
        double other = firstGrid.number(firstRow, there.sheetColumn());
        Unit unit = here.unit().unit();
        Unit firstUnit = there.unit().unit();
        if (unit == null || firstUnit == null || unit.isSameScale(firstUnit) || !unit.isCompatible(firstUnit)) {
            return one == other;
        }
        return Math.abs(firstUnit.convert(other, unit) - one) <= ROUNDED * Math.abs(one);
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
