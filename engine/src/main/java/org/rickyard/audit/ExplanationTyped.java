package org.rickyard.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rickyard.audit.Explanation.Value;
import org.rickyard.audit.InputUsed.From;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Days;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Place;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.quantity.Unit;

/** Explains a cell of the client's: what was read from it, and which results depend on it. */
final class ExplanationTyped {
    private static final int MOST_USES = 10;

    private ExplanationTyped() {}

    /** The explanation of a cell in a list that was read; empty for any other. */
    static Optional<Explanation> of(Results results, CellAddress cell) {
        WorkPlan plan = results.plan();
        Explanation found = null;
        for (Place place : plan.lists().places()) {
            if (!place.sheet().equals(cell.sheet())) {
                continue;
            }
            for (Place.Column column : place.columns()) {
                Optional<Explanation> here = inColumn(plan, place, column, cell);
                if (here.isPresent()) {
                    found = found == null
                            ? here.get()
                            : found.note("also read as " + column.column().name() + " of the list "
                                    + place.list().name());
                }
            }
        }
        if (found == null) {
            return Optional.empty();
        }
        return Optional.of(found.value() == Value.NONE ? found : withUses(results, found, cell, overruled(plan, cell)));
    }

    private static Optional<Explanation> inColumn(WorkPlan plan, Place place, Place.Column column, CellAddress cell) {
        String where = column.column().name() + " of the list " + place.list().name();
        if (cell.equals(column.cell())) {
            return Optional.of(Explanation.leaf("heading of " + where, cell, Value.NONE)
                    .note("its unit: "
                            + column.unit()
                                    .map(Unit::symbol)
                                    .filter(unit -> !unit.isEmpty())
                                    .map(unit ->
                                            unit + (column.assumed() ? ", assumed because the heading names none" : ""))
                                    .orElse("none")));
        }
        ListRows rows = plan.lists().rows(place.list());
        for (int row = 0; row < rows.size(); row++) {
            if (rows.address(column.column(), row).filter(cell::equals).isPresent()) {
                return Optional.of(read(plan, rows, column.column(), row, cell).note("your own cell: " + where));
            }
        }
        return Optional.empty();
    }

    private static Explanation read(WorkPlan plan, ListRows rows, ColumnSpec column, int row, CellAddress cell) {
        String name = column.symbol().name();
        String unit = rows.unit(column, row).map(u -> u.symbol()).orElse("");
        String text = rows.text(column, row);
        ListRows.State state = rows.state(column, row);
        boolean number = (state == ListRows.State.GIVEN || state == ListRows.State.READ_FROM_TEXT)
                && !column.isOfWords()
                && (column.type() != ColumnSpec.Type.TEXT_OR_NUMBER || !unit.isEmpty());
        return switch (state) {
            case GIVEN ->
                Explanation.leaf(
                        name,
                        cell,
                        number
                                ? number(plan, column, rows.number(column, row), unit, From.TYPED)
                                : Value.of(text, From.TYPED));
            case READ_FROM_TEXT ->
                Explanation.leaf(name, cell, number(plan, column, rows.number(column, row), unit, From.READ_FROM_TEXT))
                        .note("the cell says '" + text + "'");
            case IMPOSSIBLE ->
                missing(name, cell)
                        .note("it cannot be used: possible is "
                                + (column.symbol().possible().words() + " "
                                                + column.symbol().unit().symbol())
                                        .strip());
            case NOT_READABLE -> missing(name, cell).note("it cannot be read: '" + text + "'");
            case ERROR -> missing(name, cell).note("it holds an error: " + text);
            case UNCOMPUTED ->
                missing(name, cell)
                        .note("it is a formula without a stored value: open and save the workbook in a spreadsheet"
                                + " program first");
            case ASKED -> missing(name, cell).note("what it says is not certain: see Checks");
            case BLANK, NO_COLUMN -> missing(name, cell).note("the cell is blank");
        };
    }

    private static Value number(WorkPlan plan, ColumnSpec column, double number, String unit, From from) {
        return column.symbol().type() == Symbol.Type.DATE
                ? new Value(Optional.of(number), Days.text(number, plan.lists().dayZero()), "", from)
                : Value.of(number, unit, from);
    }

    private static Explanation missing(String name, CellAddress cell) {
        return Explanation.leaf(name, cell, new Value(Optional.empty(), "", "", From.MISSING));
    }

    private static Set<Constant> overruled(WorkPlan plan, CellAddress cell) {
        Set<Constant> constants = new HashSet<>();
        for (Constant constant : plan.constantsInForce().all()) {
            if (plan.constantsInForce()
                    .overruled(constant)
                    .filter(found -> cell.equals(found.cell()))
                    .isPresent()) {
                constants.add(constant);
            }
        }
        return constants;
    }

    /** The explanation with the first results that depend on the cell or the constants. */
    static Explanation withUses(Results results, Explanation explanation, CellAddress cell, Set<Constant> constants) {
        Explanations explanations = new Explanations(results);
        ExplanationUses uses = ExplanationUses.of(results.plan(), cell, constants);
        List<Explanation> first = new ArrayList<>();
        int[] count = {0};
        uses.results((ResultTable table, Symbol symbol, int row) -> {
            if (count[0]++ < MOST_USES) {
                first.add(explanations.named(table, symbol, row));
            }
        });
        Explanation used = explanation.usedBy(first);
        if (count[0] > first.size()) {
            return used.note(count[0] + " results depend on it; the first " + first.size() + " are named below");
        } else if (count[0] > 0) {
            return used.note(count[0] + (count[0] == 1 ? " result depends" : " results depend") + " on it");
        }
        List<String> sheets = uses.linked().stream()
                .map(table -> "'" + results.places().sheet(table.spec()) + "'")
                .toList();
        return used.note(
                sheets.isEmpty()
                        ? "no result here is worked out from it; it may serve a caution, or decide which rows there are"
                        : "no result here is worked out from it; it stands on " + String.join(", ", sheets));
    }
}
