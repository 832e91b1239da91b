package org.rickyard.plan.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.rickyard.formula.BlankMeaning;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.MeasuredMachine;

/**
 * Puts speeds that were timed and widths that are made of rows in the place of those that are not typed. Each has a table
 * of its own, and every other table that needs such a speed or width is given it from there, live, in the column where
 * the typed one would stand.
 */
final class MeasuredInputs {
    private static final String SPEEDS_ID = "measured-speeds";
    private static final String WIDTHS_ID = "measured-widths";

    private static final TableSpec SPEEDS = table(
            SPEEDS_ID,
            Keys.TIMED_KEY,
            "Speeds by the watch",
            "Speeds by the watch: for machines whose speed is not typed",
            List.of(
                    Names.link(Quantities.TIMED_DISTANCE, Candidate.typed(Role.MACHINE, Machines.TIMED_DISTANCE)),
                    Names.link(Quantities.TIMED_SECONDS, Candidate.typed(Role.MACHINE, Machines.TIMED_SECONDS))),
            MeasuredMachine.SPEED_BY_WATCH);

    private static final TableSpec WIDTHS = table(
            WIDTHS_ID,
            Keys.ROWS_KEY,
            "Widths of rows",
            "Widths of rows: for machines whose width is not typed",
            List.of(
                    Names.optional(Quantities.ROWS, Candidate.typed(Role.MACHINE, Machines.ROWS)),
                    Names.link(Quantities.ROW_WIDTH, Candidate.typed(Role.MACHINE, Machines.ROW_WIDTH)),
                    Names.link(Quantities.NOZZLES, Candidate.typed(Role.MACHINE, Machines.NOZZLES)),
                    Names.link(Quantities.NOZZLE_SPACING, Candidate.typed(Role.MACHINE, Machines.NOZZLE_SPACING))),
            MeasuredMachine.WIDTH_OF_ROWS);

    private static TableSpec table(
            String id, Symbol key, String sheet, String title, List<TableColumn> parts, Formula formula) {
        List<TableColumn> columns = new ArrayList<>(List.of(Names.MACHINE_HOLDING, Names.MACHINE, Names.MACHINE_TYPE));
        columns.addAll(parts);
        columns.add(TableColumn.Calculated.aside(formula));
        columns.add(new TableColumn.Key(key));
        return new TableSpec(
                id, sheet, title, "one row per machine", List.copyOf(columns), List.of(), List.of(), List.of());
    }

    /** A quantity that is measured where it is not typed. */
    private record Measured(
            String table,
            Symbol key,
            Symbol by,
            String way,
            Symbol symbol,
            ColumnSpec column,
            Symbol typed,
            Symbol found,
            Formula reckoned,
            boolean[] rows) {
        boolean any() {
            return IntStream.range(0, rows.length).anyMatch(row -> rows[row]);
        }
    }

    private final List<Measured> all;

    private MeasuredInputs(List<Measured> all) {
        this.all = all;
    }

    /** Makes their tables, where there is any. */
    static MeasuredInputs build(PlanContext plan) {
        ListRows machines = plan.rows(Machines.LIST);
        int count = machines.size();
        boolean[] timed = new boolean[count];
        boolean[] wide = new boolean[count];
        boolean[] either = new boolean[count];
        // Where one of two parts has no header there is nothing to fill in, and so no such measure.
        boolean byWatch = machines.has(Machines.TIMED_DISTANCE) && machines.has(Machines.TIMED_SECONDS);
        boolean byRows = machines.has(Machines.ROWS) && machines.has(Machines.ROW_WIDTH);
        boolean byNozzles = machines.has(Machines.NOZZLES) && machines.has(Machines.NOZZLE_SPACING);
        for (int row = 0; row < count; row++) {
            boolean rows = byRows && machines.isFilled(Machines.ROWS, row);
            // Along a boom nozzles stand side by side; on other sprayers they stand above each other.
            boolean boom = byNozzles && machines.text(Machines.TYPE, row).equals("sprayer");
            boolean nozzles = boom && machines.isFilled(Machines.NOZZLES, row);
            boolean spacing = boom && machines.isFilled(Machines.NOZZLE_SPACING, row);
            timed[row] = byWatch
                    && (machines.isFilled(Machines.TIMED_DISTANCE, row)
                            || machines.isFilled(Machines.TIMED_SECONDS, row));
            wide[row] = rows || nozzles && spacing;
            either[row] = rows || nozzles || spacing || byRows && machines.isFilled(Machines.ROW_WIDTH, row);
        }
        if (allTyped(machines, Machines.SPEED, timed)) {
            Arrays.fill(timed, false);
        }
        // One part alone is a width that lacks the other, if there is any machine without a width at all.
        wide = allTyped(machines, Machines.WORKING_WIDTH, wide) ? new boolean[count] : either;
        List<Measured> all = List.of(
                new Measured(
                        SPEEDS_ID,
                        Keys.TIMED_KEY,
                        MeasuredMachine.SPEED_BY,
                        "the watch",
                        Quantities.SPEED,
                        Machines.SPEED,
                        MeasuredMachine.TYPED_SPEED,
                        MeasuredMachine.WATCHED_SPEED,
                        MeasuredMachine.SPEED_RECKONED,
                        timed),
                new Measured(
                        WIDTHS_ID,
                        Keys.ROWS_KEY,
                        MeasuredMachine.WIDTH_BY,
                        "its rows or nozzles",
                        Quantities.WORKING_WIDTH,
                        Machines.WORKING_WIDTH,
                        MeasuredMachine.TYPED_WIDTH,
                        MeasuredMachine.MADE_WIDTH,
                        MeasuredMachine.WIDTH_RECKONED,
                        wide));
        plan.add(SPEEDS, sources(machines, timed, Keys.TIMED_KEY), "no machine has a timed run in place of its speed");
        plan.add(WIDTHS, sources(machines, wide, Keys.ROWS_KEY), "no machine has rows in place of its width");
        return new MeasuredInputs(all.stream().filter(Measured::any).toList());
    }

    /** Where every machine has it typed, nothing needs to be measured. */
    private static boolean allTyped(ListRows machines, ColumnSpec column, boolean[] measured) {
        return IntStream.range(0, measured.length).allMatch(row -> !measured[row] || machines.isFilled(column, row));
    }

    private static RowSources sources(ListRows machines, boolean[] wanted, Symbol key) {
        // Every machine has a row, so that a measure that is typed later brings its machine to life.
        boolean any = IntStream.range(0, wanted.length).anyMatch(row -> wanted[row]);
        int[] rows = any ? IntStream.range(0, wanted.length).toArray() : new int[0];
        return new RowSources(rows.length).with(Role.MACHINE, machines, rows).with(key, RowNumbers.keysOf(rows));
    }

    /** The table with what is measured in the place of what is not typed; just as it is where all is typed. */
    TableSpec in(TableSpec spec, RowSources sources) {
        TableSpec changed = spec;
        for (Measured measured : all) {
            Role role = changed.column(measured.symbol())
                    .filter(TableColumn.Link.class::isInstance)
                    .map(TableColumn.Link.class::cast)
                    .flatMap(link -> link.places().stream()
                            .filter(place -> place.role().list() == Machines.LIST)
                            .filter(place -> place.column() == measured.column())
                            .map(Candidate::role)
                            .findFirst())
                    .orElse(null);
            int[] rows = role == null ? null : sources.rows(role);
            if (rows != null) {
                changed = changed(changed, measured);
                sources.with(
                        measured.by(),
                        Arrays.stream(rows)
                                .mapToObj(row -> row >= 0 && measured.rows()[row] ? measured.way() : "")
                                .toArray(String[]::new));
                sources.with(measured.key(), RowNumbers.keysOf(rows));
            }
        }
        return changed;
    }

    private static TableSpec changed(TableSpec spec, Measured measured) {
        // Blank is what is neither typed nor measured; a measure that is spoilt is not blank. The word stands beside a
        // typed value too, so that the measure takes its place when that value is cleared in the sheet.
        BlankMeaning blank = new BlankMeaning(
                measured.symbol(),
                Condition.all(List.of(
                        new Condition.Blank(measured.typed()),
                        new Condition.Not(Condition.is(measured.by(), measured.way())))));
        List<TableColumn> columns = new ArrayList<>(List.of(new TableColumn.Key(measured.key())));
        for (TableColumn column : spec.columns()) {
            if (column.symbol().equals(measured.symbol())) {
                columns.add(new TableColumn.Link(measured.typed(), ((TableColumn.Link) column).places(), true));
                columns.add(new TableColumn.Word(measured.by(), List.of()));
                columns.add(new TableColumn.Joined(
                        measured.found(),
                        new Expr.Total(measured.table(), measured.found(), measured.key(), measured.key(), true)));
                columns.add(new TableColumn.Calculated(measured.reckoned(), false));
            } else {
                columns.add(column);
            }
        }
        return spec.with(columns, blank);
    }
}
