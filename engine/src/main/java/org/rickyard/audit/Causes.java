package org.rickyard.audit;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.audit.Cause.Kind;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Needed;
import org.rickyard.formula.Numbers;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.Obstacle;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.quantity.Unit;

/**
 * Finds why results are withheld: follows the branch that a row takes down to the cells that were typed, or not. One of
 * these asks after row upon row of a run, and remembers what each expression needs. Not for several threads.
 */
public final class Causes {
    private final Set<Cause> found = new LinkedHashSet<>();
    /** Where to type what a measure that is followed should have given. */
    private Optional<CellAddress> typedInstead = Optional.empty();
    /** By the expression itself: the same one stands in every row. */
    private final Map<Expr, Plain> plain = new IdentityHashMap<>();

    /** What an expression without choices needs. */
    private record Plain(Set<Symbol> quantities, List<Requirement> requirements) {
        static Plain of(Expr expr) {
            List<Requirement> requirements = new ArrayList<>();
            Needed.requirements(expr)
                    .forEach((condition, otherwise) -> requirements.add(new Requirement(
                            condition, otherwise, Needed.quantities(condition).isEmpty(), Inputs.of(condition))));
            return new Plain(Needed.quantities(expr), requirements);
        }
    }

    /** A condition, what to say where it fails, whether it asks about words only, and what it reads. */
    private record Requirement(Condition condition, String otherwise, boolean ofWords, Set<Symbol> reads) {
        /** Whether one of several quantities would do, and none is there. */
        boolean asksForAny() {
            return condition instanceof Condition.Any any
                    && any.parts().stream().allMatch(Condition.Given.class::isInstance);
        }

        boolean holds(ResultTable table, int row) {
            return Boolean.TRUE.equals(table.truth(condition).at(row));
        }
    }

    /**
     * The causes for a row of a column, the first to look at first; empty if there is a value, or if the column only
     * repeats a name, which is nobody's duty to type. What is worked out and has no value has at least one.
     */
    public List<Cause> of(ResultTable table, Symbol symbol, int row) {
        found.clear();
        symbol(table, symbol, row);
        boolean owed =
                !table.of(symbol).has(row) && !(table.spec().column(symbol).orElse(null) instanceof TableColumn.Name);
        if (found.isEmpty() && owed) {
            found.add(Cause.noMeaning(
                            symbol.name() + " is withheld: see Status in its row of '"
                                    + table.spec().sheet() + "'",
                            Optional.empty())
                    .about(ThingNamed.of(table, row)));
        }
        return new ArrayList<>(found);
    }

    private void symbol(ResultTable table, Symbol symbol, int row) {
        if (table.of(symbol).has(row)) {
            return;
        }
        TableColumn column = table.spec().column(symbol).orElse(null);
        if (column == null) {
            // The column is left out of its sheet, because no list has what it is worked out from.
            found.add(new Cause(
                    symbol.name() + " missing: no list has what it is worked out from",
                    Optional.empty(),
                    Kind.MISSING));
        } else if (column instanceof TableColumn.Calculated calculated) {
            expr(table, calculated.formula().expr(), row);
        } else if (column instanceof TableColumn.Joined joined) {
            expr(table, joined.expr(), row);
        } else if (column instanceof TableColumn.Method method) {
            method(table, method, row);
        } else if (column instanceof TableColumn.Link || column instanceof TableColumn.Word) {
            found.add(typed(table, symbol, row));
        }
    }

    /** A method says in a column of its own why it found nothing, or else lacks something that it reads. */
    private void method(ResultTable table, TableColumn.Method method, int row) {
        String said = method.because() == null ? "" : table.of(method.because()).word(row);
        if (!said.isEmpty()) {
            withheldElsewhere(table, method, row);
            if (found.isEmpty()) {
                found.add(Cause.noMeaning(said, Optional.empty()).about(ThingNamed.of(table, row)));
            }
            return;
        }
        Results.reads(table, method).forEach(read -> lacking(table, read, row));
        if (found.isEmpty()) {
            found.add(Cause.noMeaning(
                            method.symbol().name() + " could not be found; see the findings on Checks",
                            Optional.empty())
                    .about(ThingNamed.of(table, row)));
        }
    }

    /** Of what a method is given by other tables, why it is withheld there: a reader can mend that, and not "see there". */
    private void withheldElsewhere(ResultTable table, TableColumn.Method method, int row) {
        for (Expr read : Results.reads(table, method)) {
            for (Symbol symbol : Needed.quantities(read)) {
                if (table.spec().column(symbol).orElse(null) instanceof TableColumn.Joined) {
                    symbol(table, symbol, row);
                }
            }
        }
    }

    private void lacking(ResultTable table, Expr read, int row) {
        if (read instanceof Expr.Total total) {
            // Of several totals that a method reads, those that are there are no cause.
            lackingRows(table, total, row);
        } else {
            Needed.quantities(read).forEach(symbol -> symbol(table, symbol, row));
        }
    }

    private void expr(ResultTable table, Expr expr, int row) {
        if (expr instanceof Expr.Choice e) {
            Boolean taken = table.truth(e.when()).at(row);
            if (taken == null) {
                Needed.quantities(e.when()).forEach(symbol -> symbol(table, symbol, row));
            } else {
                expr(table, taken ? e.then() : e.otherwise(), row);
                if (found.isEmpty()) {
                    // "Without a gang rate no bottleneck": the branch lacks nothing, but is empty for want of the
                    // other.
                    Inputs.of(e.when()).forEach(symbol -> symbol(table, symbol, row));
                }
            }
        } else if (expr instanceof Expr.GivenElse e) {
            if (table.of(e.given()).state(row) == Values.State.UNUSABLE) {
                symbol(table, e.given(), row);
            } else {
                if (e.otherwise() instanceof Expr.Ref other
                        && table.spec().column(other.symbol()).orElse(null) instanceof TableColumn.Joined) {
                    eitherOf(table, e.given(), other, row);
                } else if (e.otherwise() instanceof Expr.Only) {
                    plain(table, e.otherwise(), row, cell(table, e.given(), row));
                } else {
                    expr(table, e.otherwise(), row);
                }
            }
        } else if (expr instanceof Expr.Total e) {
            total(table, e, row);
        } else if (expr instanceof Expr.Before e) {
            before(table, e, row);
        } else if (expr instanceof Expr.From e) {
            Values position = table.of(e.position());
            if (position.has(row)) {
                symbol(table.other(e.table()), e.symbol(), (int) position.number(row) - 1);
            } else {
                symbol(table, e.position(), row);
            }
        } else if (expr instanceof Expr.Position e) {
            String sheet = table.other(e.table()).spec().sheet();
            found.add(Cause.noMeaning("no row of '" + sheet + "' belongs to this row", Optional.empty())
                    .about(ThingNamed.of(table, row)));
        } else if (!(expr instanceof Expr.Count)) {
            plain(table, expr, row, Optional.empty());
        }
    }

    /**
     * What another table would have measured may as well be typed here: one cause that names both ways, so that nobody
     * thinks that all of it is asked for. What is there and cannot be used comes before either.
     */
    private void eitherOf(ResultTable table, Symbol typed, Expr measured, int row) {
        Set<Cause> before = new LinkedHashSet<>(found);
        Optional<CellAddress> outer = typedInstead;
        typedInstead = cell(table, typed, row);
        found.clear();
        expr(table, measured, row);
        typedInstead = outer;
        Set<Cause> lacking = new LinkedHashSet<>(found);
        found.clear();
        found.addAll(before);
        Cause blank = typed(table, typed, row);
        if (!lacking.stream().allMatch(Cause::isMissing)) {
            lacking.removeIf(Cause::isMissing);
            found.addAll(lacking);
        } else if (lacking.stream().anyMatch(cause -> cause.kind() != Kind.BLANK)) {
            found.add(blank);
        } else if (blank.kind() == Kind.BLANK) {
            String parts = lacking.stream().map(Cause::name).collect(Collectors.joining(" and "));
            found.add(new Cause(blank.what() + ": type it, or " + parts, blank.cell(), Kind.MISSING));
        } else {
            found.addAll(lacking);
        }
    }

    /** @param typedHere where to type what the expression cannot find, if it says itself what to do */
    private void plain(ResultTable table, Expr expr, int row, Optional<CellAddress> typedHere) {
        Plain asked = plain.computeIfAbsent(expr, Plain::of);
        for (Requirement requirement : asked.requirements) {
            // A word that decides whether there is a meaning at all comes before any number.
            if (requirement.ofWords && !requirement.holds(table, row)) {
                if (lacksMeasure(table, requirement, row)) {
                    return;
                }
                boolean blank = true;
                for (Symbol symbol : requirement.reads) {
                    blank &= !table.of(symbol).has(row);
                }
                Cause cause = new Cause(
                        requirement.otherwise,
                        typedHere.or(() -> typedInstead).or(() -> cellOf(table, requirement, row)),
                        blank ? Kind.MISSING : Kind.NO_MEANING);
                if (!requirement.asksForAny() || !typedBehind(table, cause, requirement.reads, row)) {
                    found.add(cause.about(ThingNamed.of(table, requirement.reads, row)));
                }
                return;
            }
        }
        boolean whole = true;
        for (Symbol symbol : asked.quantities) {
            symbol(table, symbol, row);
            whole &= table.of(symbol).has(row);
        }
        if (!whole) {
            return;
        }
        for (Requirement requirement : asked.requirements) {
            if (!requirement.holds(table, row)) {
                found.add(Cause.noMeaning(requirement.otherwise, cellOf(table, requirement, row))
                        .about(ThingNamed.of(table, requirement.reads, row)));
            }
        }
    }

    /** Whether what a condition reads is half measured: nothing is wrong there, but the other half is to be typed. */
    private boolean lacksMeasure(ResultTable table, Requirement requirement, int row) {
        Set<Cause> before = new LinkedHashSet<>(found);
        found.clear();
        for (Symbol symbol : requirement.reads) {
            if (table.of(symbol).state(row) == Values.State.UNUSABLE
                    && table.spec().column(symbol).orElse(null) instanceof TableColumn.Calculated) {
                symbol(table, symbol, row);
            }
        }
        boolean lacks = !found.isEmpty() && found.stream().allMatch(Cause::isMissing);
        before.addAll(lacks ? found : Set.of());
        found.clear();
        found.addAll(before);
        return lacks;
    }

    /**
     * A cause with the client's cells for want of which quantities have no value; what rests on no cell is not said again.
     *
     * @return whether there is any such cell; if not, nothing is found yet
     */
    private boolean typedBehind(ResultTable table, Cause cause, Set<Symbol> symbols, int row) {
        Set<Cause> before = new LinkedHashSet<>(found);
        found.add(cause);
        Set<Cause> said = new LinkedHashSet<>(found);
        symbols.forEach(symbol -> symbol(table, symbol, row));
        found.removeIf(behind -> !said.contains(behind) && behind.cell().isEmpty());
        boolean any = found.size() > said.size();
        if (!any) {
            found.clear();
            found.addAll(before);
        }
        return any;
    }

    /** The cell to look at first: one that holds something unusable, or else the first of those that are asked about. */
    private static Optional<CellAddress> cellOf(ResultTable table, Requirement requirement, int row) {
        Optional<CellAddress> first = Optional.empty();
        for (Symbol symbol : requirement.reads) {
            Optional<CellAddress> cell = cell(table, symbol, row);
            if (cell.isPresent() && table.of(symbol).state(row) == Values.State.UNUSABLE) {
                return cell;
            }
            first = first.or(() -> cell);
        }
        return first;
    }

    private static Optional<CellAddress> cell(ResultTable table, Symbol symbol, int row) {
        LinkCells links = table.links(symbol);
        return links == null ? Optional.empty() : links.address(row);
    }

    private void total(ResultTable table, Expr.Total e, int row) {
        if (!lackingRows(table, e, row)) {
            found.add(Cause.noMeaning(e.summed().name() + " is withheld", Optional.empty())
                    .about(ThingNamed.of(table, row)));
        }
    }

    /** Why rows that a total adds up have nothing to add; whether any has not, or there are none. */
    private boolean lackingRows(ResultTable table, Expr.Total e, int row) {
        ResultTable other = table.other(e.table());
        double key = table.of(e.keyHere()).number(row);
        int rows = 0;
        boolean explained = false;
        for (int there = 0; there < other.rows(); there++) {
            if (other.of(e.keyThere()).number(there) == key) {
                rows++;
                explained |= !other.of(e.summed()).has(there);
                symbol(other, e.summed(), there);
            }
        }
        if (rows == 0) {
            Cause none = new Cause(nothingOn(other), Optional.empty(), Kind.MISSING);
            found.add(other.rows() == 0 ? none : none.about(ThingNamed.of(table, row)));
        }
        return explained || rows == 0;
    }

    private static String nothingOn(ResultTable other) {
        String sheet = "'" + other.spec().sheet() + "'";
        return other.rows() == 0
                ? sheet + " has no rows: " + other.emptyBecause()
                : "no row of " + sheet + " belongs to it";
    }

    private void before(ResultTable table, Expr.Before e, int row) {
        ResultTable other = table.other(e.table());
        for (int there = 0; there < other.rows(); there++) {
            if (other.of(e.key()).number(there) != table.of(e.key()).number(row)) {
                continue;
            }
            if (!other.of(e.order()).has(there)) {
                symbol(other, e.order(), there);
            } else if (other.of(e.order()).number(there) < table.of(e.order()).number(row)) {
                symbol(other, e.summed(), there);
            }
        }
    }

    /** A unit behind its number; a plain number has none. */
    private static String after(Unit unit) {
        return unit.symbol().isEmpty() ? "" : " " + unit;
    }

    private static Cause typed(ResultTable table, Symbol symbol, int row) {
        LinkCells links = table.links(symbol);
        String name = symbol.name();
        Optional<CellAddress> cell = links.address(row);
        Optional<CellAddress> blank = links.blankOfAnotherQuantity(row);
        if (blank.isPresent()) {
            return Cause.blank(name, blank);
        }
        return switch (links.state(row)) {
            case NO_COLUMN ->
                new Cause(name + " missing: " + WhereToType.of(links, symbol, row), cell, Kind.MISSING)
                        .about(ThingNamed.withoutRow(table, symbol, row));
            case BLANK -> Cause.blank(name, cell);
            case NOT_READABLE -> new Cause(name + " is not readable: '" + links.text(row) + "'", cell, Kind.FOUND);
            case ERROR -> new Cause(name + " is an error: " + links.text(row), cell, Kind.FOUND);
            case UNCOMPUTED ->
                Cause.noMeaning(
                        name
                                + " is a formula without a stored value: open and save the workbook in a spreadsheet program"
                                + " first",
                        cell);
            case ASKED ->
                Cause.noMeaning(
                        links.obstacle(row).map(Obstacle::why).orElse(name + " is not certain: see Checks"), cell);
            case IMPOSSIBLE, GIVEN, READ_FROM_TEXT ->
                new Cause(
                        name + " impossible: "
                                + Numbers.readable(links.typedNumber(row))
                                + links.unit(row).map(Causes::after).orElse("") + ", possible is "
                                + symbol.possible().words() + after(symbol.unit()),
                        cell,
                        Kind.FOUND);
        };
    }
}
