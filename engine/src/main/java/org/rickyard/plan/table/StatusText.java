package org.rickyard.plan.table;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Needed;
import org.rickyard.formula.Symbol;

/**
 * Reads off a table's formulas the live sentence that says what a row still lacks. Steps are followed down to what
 * was typed; an input that only one branch of a choice needs is asked for only in that branch.
 */
final class StatusText {
    private final Map<Symbol, TableColumn> columns = new LinkedHashMap<>();
    private final Map<Expr, Paths> sentences = new LinkedHashMap<>();

    /** By the path itself: all that one formula needs is asked for on the same. */
    private final Map<List<Condition>, List<Set<Condition>>> waysOf = new IdentityHashMap<>();

    /** Whether a step that only one branch needs is asked for itself, and not what it lacks. */
    private final boolean brief;

    private StatusText(List<TableColumn> columns, boolean brief) {
        columns.forEach(column -> this.columns.put(column.symbol(), column));
        this.brief = brief;
    }

    /**
     * The status of a row: "ok", or what is missing, impossible or undefined. Where a table has so many ways to its results
     * that a cell could not hold the formula, what a step of one branch lacks is said by the name of that step.
     */
    static Expr of(List<TableColumn> columns) {
        Expr whole = of(columns, false);
        return FormulaLength.of(whole) <= FormulaLength.MOST ? whole : of(columns, true);
    }

    private static Expr of(List<TableColumn> columns, boolean brief) {
        StatusText status = new StatusText(columns, brief);
        List<Condition> given = new ArrayList<>();
        for (TableColumn column : columns) {
            if (column instanceof TableColumn.Calculated calculated && calculated.result()) {
                given.add(new Condition.Given(column.symbol()));
                status.result(calculated);
            }
        }
        List<Said> said = new ArrayList<>();
        status.sentences.forEach(
                (sentence, paths) -> paths.byNeed().forEach(ways -> said.add(new Said(sentence, ways))));
        Expr lacks = said.isEmpty() ? Expr.text("withheld") : Said.joined(said);
        return Expr.choice(Condition.all(given), Expr.text("ok"), lacks);
    }

    private void read(Expr expr, List<Condition> path) {
        if (contradicts(path)) {
            return;
        }
        if (expr instanceof Expr.Choice e) {
            for (Symbol symbol : Needed.quantities(e.when())) {
                symbol(symbol, path);
            }
            read(e.then(), with(path, e.when()));
            read(e.otherwise(), with(path, new Condition.Not(e.when())));
        } else if (expr instanceof Expr.GivenElse e) {
            add(unusable(e.given()), path);
            read(e.otherwise(), with(path, new Condition.Blank(e.given())));
        } else if (joins(expr)) {
            throw new IllegalArgumentException("a joined column is asked for by its own name");
        } else {
            List<Condition> inside = new ArrayList<>(path);
            Map<Condition, String> later = new LinkedHashMap<>();
            Needed.requirements(expr).forEach((condition, otherwise) -> {
                if (Needed.quantities(condition).isEmpty()) {
                    // A word that decides whether there is a meaning at all is asked for before any number.
                    add(Expr.text(otherwise + ". "), with(path, new Condition.Not(condition)));
                    inside.add(condition);
                } else {
                    later.put(condition, otherwise);
                }
            });
            Needed.quantities(expr).forEach(symbol -> symbol(symbol, inside));
            // What a condition compares is asked for by the guard of its own sentence.
            later.forEach((condition, otherwise) ->
                    add(Expr.text(otherwise + ". "), with(inside, new Condition.Not(condition))));
        }
    }

    private void result(TableColumn.Calculated column) {
        if (joins(column.formula().expr())) {
            symbol(column.symbol(), List.of());
        } else {
            read(column.formula().expr(), List.of());
        }
    }

    private void symbol(Symbol symbol, List<Condition> path) {
        TableColumn column = columns.get(symbol);
        if (!path.isEmpty() && column instanceof TableColumn.Calculated calculated && calculated.result()) {
            // What a result lacks is said for its own sake; said again by path, sentences would outgrow a cell.
            return;
        }
        Symbol typed = column instanceof TableColumn.Link ? symbol : typedOrJoined(column);
        if (typed != null) {
            add(
                    Expr.choice(
                            new Condition.Given(symbol),
                            Expr.text(""),
                            new Expr.Join(List.of(
                                    label(column),
                                    Expr.choice(
                                            new Condition.Blank(typed),
                                            Expr.text(" missing. "),
                                            Expr.text(" unusable. "))))),
                    path);
        } else if (column instanceof TableColumn.Calculated calculated
                && !(brief && !path.isEmpty())
                && !joins(calculated.formula().expr())) {
            read(calculated.formula().expr(), path);
        } else if (column != null) {
            add(
                    Expr.choice(
                            new Condition.Given(symbol),
                            Expr.text(""),
                            new Expr.Join(List.of(label(column), Expr.text(" withheld. ")))),
                    path);
        } else {
            throw new IllegalArgumentException("'" + symbol + "' has no column in its table");
        }
    }

    /** What a column was typed as that otherwise takes its value from another table; null for any other column. */
    private Symbol typedOrJoined(TableColumn column) {
        return column instanceof TableColumn.Calculated calculated
                        && calculated.formula().expr() instanceof Expr.GivenElse given
                        && given.otherwise() instanceof Expr.Ref other
                        && columns.get(other.symbol()) instanceof TableColumn.Joined
                ? given.given()
                : null;
    }

    private static boolean joins(Expr expr) {
        return expr instanceof Expr.From
                || expr instanceof Expr.Position
                || expr instanceof Expr.Total
                || expr instanceof Expr.Before
                || expr instanceof Expr.Count;
    }

    private static Expr label(TableColumn column) {
        return new Expr.Label(column.symbol(), column.label());
    }

    private Expr unusable(Symbol symbol) {
        return Expr.choice(
                Condition.any(List.of(new Condition.Given(symbol), new Condition.Blank(symbol))),
                Expr.text(""),
                new Expr.Join(List.of(label(columns.get(symbol)), Expr.text(" unusable. "))));
    }

    private static List<Condition> with(List<Condition> path, Condition further) {
        List<Condition> longer = new ArrayList<>(path);
        if (!longer.contains(further)) {
            longer.add(further);
        }
        return longer;
    }

    /** A way that no row can take: a condition and its opposite, or one word that is to be two. */
    private static boolean contradicts(List<Condition> path) {
        for (Condition one : path) {
            if (path.contains(new Condition.Not(one))) {
                return true;
            }
            for (Condition other : path) {
                if (one instanceof Condition.Is a
                        && other instanceof Condition.Is b
                        && a.symbol().equals(b.symbol())
                        && !a.word().equals(b.word())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A sentence reached by several paths is said where any of them is open. */
    private void add(Expr sentence, List<Condition> path) {
        sentences.computeIfAbsent(sentence, any -> new Paths()).add(waysOf.computeIfAbsent(path, Paths::ways));
    }
}
