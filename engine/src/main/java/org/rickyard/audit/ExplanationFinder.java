package org.rickyard.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.rickyard.audit.Explanation.Value;
import org.rickyard.audit.Explanation.Working;
import org.rickyard.audit.InputUsed.From;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Numbers;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableColumn.Calculated;
import org.rickyard.plan.table.TableSpec;

/** Finds what a cell of a result sheet, of Basis or of the client's lists holds, and explains it. */
public final class ExplanationFinder {
    private static final int MOST_REASONS = 3;

    private final Results results;
    private final Set<String> ourSheets;

    /**
     * Explains the cells of a run.
     *
     * @param results its results
     * @param ourSheets the names of the sheets it writes
     */
    public ExplanationFinder(Results results, Collection<String> ourSheets) {
        this.results = results;
        this.ourSheets = new HashSet<>(ourSheets);
    }

    /** The table that stands on a sheet of ours. */
    public Optional<ResultTable> table(String sheet) {
        return results.plan().tables().stream()
                .filter(table -> ourSheets.contains(sheet)
                        && results.places().sheet(table.spec()).equals(sheet))
                .findFirst();
    }

    /** The explanation of a cell; empty if nothing that can be explained stands there. */
    public Optional<Explanation> find(CellAddress cell) {
        Optional<ResultTable> table = table(cell.sheet());
        if (table.isPresent()) {
            return onTable(table.get(), cell);
        }
        Optional<Constant> constant = constant(cell);
        if (constant.isPresent()) {
            Explanation explained = new Explanations(results).constant(constant.get());
            return Optional.of(ExplanationTyped.withUses(results, explained, cell, Set.of(constant.get())));
        }
        return ourSheets.contains(cell.sheet()) ? Optional.empty() : ExplanationTyped.of(results, cell);
    }

    /** The constant in whose row of Basis the cell stands. */
    private Optional<Constant> constant(CellAddress cell) {
        return WorkPlan.constants().stream()
                .filter(constant -> {
                    CellAddress place = results.basis().constant(constant);
                    return place.sheet().equals(cell.sheet()) && place.row() == cell.row();
                })
                .findFirst();
    }

    private Optional<Explanation> onTable(ResultTable table, CellAddress cell) {
        if (cell.column() >= table.spec().columns().size()) {
            return Optional.empty();
        }
        TableColumn column = table.spec().columns().get(cell.column());
        int row = cell.row() - SheetPlaces.FIRST_ROW;
        if (row >= 0 && row < table.rows()) {
            return Optional.of(inRow(table, column, row, cell));
        }
        Optional<TableSpec.TotalName> total = table.spec().totals().stream()
                .filter(named -> named.symbol().equals(column.symbol()))
                .findFirst();
        return switch (cell.row()) {
            case SheetPlaces.TOTAL_ROW -> total.map(named -> total(table, named, cell));
            case SheetPlaces.LEFT_OUT_ROW -> total.map(named -> leftOut(table, named, cell));
            case SheetPlaces.LABEL_ROW, SheetPlaces.UNIT_ROW, SheetPlaces.WORDS_ROW ->
                Optional.of(heading(table, column, cell));
            default -> Optional.empty();
        };
    }

    private Explanation inRow(ResultTable table, TableColumn column, int row, CellAddress cell) {
        Explanation value = new Explanations(results).value(table, column.symbol(), row);
        Explanation ofRow = value.about(Results.about(table, row));
        if (table.links(column.symbol()) == null) {
            Optional<Result.Own> own =
                    value.value().number().flatMap(number -> results.own(table, column.symbol(), row, number));
            if (own.isPresent()) {
                ofRow = ofRow.note("in your units: "
                        + Numbers.readable(own.get().number()) + " " + own.get().unit());
            }
        }
        return value.cell().filter(cell::equals).isPresent() ? ofRow : ofRow.note(cell + " is a link to it");
    }

    private Explanation total(ResultTable table, TableSpec.TotalName named, CellAddress cell) {
        Symbol symbol = named.symbol();
        Values values = table.of(symbol);
        double sum = 0;
        List<Integer> added = new ArrayList<>();
        for (int row = 0; row < table.rows(); row++) {
            if (values.has(row)) {
                sum += values.number(row);
                added.add(row);
            }
        }
        Explanation explained = Explanation.leaf(
                        "total of " + symbol.name(),
                        cell,
                        added.isEmpty()
                                ? Value.of("", From.CALCULATED)
                                : Value.of(sum, symbol.unit().symbol(), From.CALCULATED))
                .worked(
                        new Working("", "all rows of '" + cell.sheet() + "' that have a value, added up", "", ""),
                        new Explanations(results).addends(table, symbol, added))
                .note("workbook name: " + named.name());
        int leftOut = table.rows() - added.size();
        if (table.rows() == 0) {
            return explained.note("there are no rows to add up");
        }
        if (leftOut == 0 && named.leftOut() != null) {
            return explained.note(
                    missing(table, named.leftOut()).isEmpty()
                            ? "no row is left out"
                            : "what is left out of the rows is left out here: see the cell below this one");
        }
        return leftOut == 0
                ? explained.note("no row is left out")
                : explained.note(leftOut + (leftOut == 1 ? " row is" : " rows are")
                        + " left out because the value is withheld: " + reasons(table, symbol));
    }

    /** The rows whose own total lacks something. */
    private static List<Integer> missing(ResultTable table, Symbol leftOut) {
        Values values = table.of(leftOut);
        return IntStream.range(0, table.rows())
                .filter(row -> values.has(row) && values.number(row) > 0)
                .boxed()
                .toList();
    }

    private Explanation leftOut(ResultTable table, TableSpec.TotalName named, CellAddress cell) {
        Symbol symbol = named.symbol();
        String name = "rows left out of the total of " + symbol.name();
        if (named.leftOut() != null) {
            List<Integer> rows = missing(table, named.leftOut());
            double count =
                    rows.stream().mapToDouble(table.of(named.leftOut())::number).sum();
            return Explanation.leaf(name, cell, Value.of(count, "", From.CALCULATED))
                    .from(new Explanations(results).addends(table, named.leftOut(), rows));
        }
        Values values = table.of(symbol);
        List<Explanation> rows = IntStream.range(0, table.rows())
                .filter(row -> !values.has(row))
                .limit(20)
                .mapToObj(row -> new Explanations(results)
                        .named(table, symbol, row)
                        .because(results.causes().of(table, symbol, row)))
                .toList();
        long count =
                IntStream.range(0, table.rows()).filter(row -> !values.has(row)).count();
        Explanation explained = Explanation.leaf(name, cell, Value.of(count, "", From.CALCULATED))
                .from(rows);
        return count > rows.size() ? explained.note("the first " + rows.size() + " are named here") : explained;
    }

    private String reasons(ResultTable table, Symbol symbol) {
        List<String> reasons = IntStream.range(0, table.rows())
                .filter(row -> !table.of(symbol).has(row))
                .limit(1_000)
                .mapToObj(row -> results.causes().of(table, symbol, row))
                .flatMap(List::stream)
                .map(Cause::toString)
                .distinct()
                .toList();
        int more = reasons.size() - MOST_REASONS;
        return String.join("; ", reasons.subList(0, Math.min(MOST_REASONS, reasons.size())))
                + (more > 0 ? "; and " + more + " more" : "");
    }

    private static Explanation heading(ResultTable table, TableColumn column, CellAddress cell) {
        String letters = CellAddress.letters(cell.column());
        Explanation head = Explanation.leaf("heading of the column '" + column.label() + "'", cell, Value.NONE)
                .note(
                        table.rows() == 0
                                ? "it has no rows: " + table.emptyBecause()
                                : "its values stand in " + letters + (SheetPlaces.FIRST_ROW + 1) + " to " + letters
                                        + (SheetPlaces.FIRST_ROW + table.rows()));
        if (column instanceof Calculated calculated) {
            Formula formula = calculated.formula();
            return head.worked(
                            new Working(
                                    formula.id(),
                                    formula.words(),
                                    "",
                                    formula.source().toString()),
                            List.of())
                    .note("valid: " + formula.validity());
        }
        return head;
    }
}
