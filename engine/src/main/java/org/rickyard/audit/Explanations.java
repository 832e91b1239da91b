package org.rickyard.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rickyard.audit.Explanation.Value;
import org.rickyard.audit.Explanation.Working;
import org.rickyard.audit.InputUsed.From;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Numbers;
import org.rickyard.formula.NumbersPrinter;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.formula.WordsPrinter;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.lists.ListRows;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableColumn.Calculated;
import org.rickyard.plan.table.TableColumn.Joined;

/**
 * Explains values of a plan down to typed cells: through steps, joins and totals. What was spelled out once is only
 * named when it comes again, and of long totals only the first rows are spelled out, so that the answer stays readable.
 */
final class Explanations {
    private static final int SPELLED_OUT_WHOLE = 12;
    private static final int SPELLED_OUT_FIRST = 3;
    private static final int MOST_ADDENDS = 200;
    private static final int MOST_NODES = 2_000;

    private final Results results;
    private final Set<CellAddress> spelledOut = new HashSet<>();
    private int nodes;

    Explanations(Results results) {
        this.results = results;
    }

    /** One cell of a result table. */
    Explanation value(ResultTable table, Symbol symbol, int row) {
        TableColumn column = table.spec().column(symbol).orElseThrow();
        if (table.links(symbol) != null) {
            return linked(table, symbol, row);
        } else if (column instanceof Calculated calculated) {
            return calculated(table, calculated, row);
        } else if (column instanceof Joined joined) {
            return joined(table, joined, row);
        } else if (column instanceof TableColumn.Method method) {
            return found(table, method, row);
        } else if (column instanceof TableColumn.Key) {
            return plain(table, symbol, row).note("a number that joins rows of one thing; written by Rickyard");
        }
        return said(table, symbol, row).note("a sentence made live from the cells of its row");
    }

    /** A sentence about the row; where there is nothing to say, nothing is withheld. */
    private Explanation said(ResultTable table, Symbol symbol, int row) {
        return table.of(symbol).has(row)
                ? plain(table, symbol, row)
                : Explanation.leaf(
                        symbol.name(),
                        results.places().cell(table.spec(), symbol, row),
                        Value.of("none", From.CALCULATED));
    }

    /** The cell of a column, its value and nothing more. */
    private Explanation plain(ResultTable table, Symbol symbol, int row) {
        Values values = table.of(symbol);
        TableColumn column = table.spec().column(symbol).orElseThrow();
        From from = DefaultsUsed.in(table, column).test(row) ? From.DEFAULT : From.CALCULATED;
        CellAddress cell = results.places().cell(table.spec(), symbol, row);
        return Explanation.leaf(symbol.name(), cell, present(table, symbol, row, from));
    }

    private static Value present(ResultTable table, Symbol symbol, int row, From from) {
        Values values = table.of(symbol);
        Optional<Double> number =
                values.has(row) && !values.words() ? Optional.of(values.number(row)) : Optional.empty();
        return new Value(
                number, values.has(row) ? Results.word(table, symbol, row) : "", table.unit(symbol, row), from);
    }

    /** A client's cell, as a row of ours takes it over. */
    private Explanation linked(ResultTable table, Symbol symbol, int row) {
        LinkCells links = table.links(symbol);
        Values values = table.of(symbol);
        boolean given = values.has(row);
        From from = given && !links.exists(row) ? From.CALCULATED : Results.typedFrom(links, row, given);
        CellAddress cell = links.address(row).orElseGet(() -> results.places().cell(table.spec(), symbol, row));
        Explanation leaf = Explanation.leaf(symbol.name(), cell, present(table, symbol, row, from));
        if (!given) {
            boolean saysItself = links.state(row) == ListRows.State.BLANK;
            return saysItself ? leaf : leaf.because(results.causes().of(table, symbol, row));
        }
        if (links.state(row) == ListRows.State.READ_FROM_TEXT) {
            return leaf.note("the cell says '" + links.text(row) + "'");
        }
        boolean otherUnit = !values.words()
                && links.exists(row)
                && links.unit(row)
                        .filter(typed -> !typed.isSameScale(symbol.unit()))
                        .isPresent();
        return otherUnit
                ? leaf.note("typed as " + Numbers.readable(links.typedNumber(row)) + " "
                        + links.unit(row).get())
                : leaf;
    }

    private Explanation calculated(ResultTable table, Calculated column, int row) {
        Explanation node = plain(table, column.symbol(), row);
        if (!node.value().given()) {
            node = node.because(results.causes().of(table, column.symbol(), row));
        }
        if (isSpelledOut(node)) {
            return node.note("spelled out above");
        }
        if (nodes > MOST_NODES) {
            return node.note("ask about this cell to see how it came about");
        }
        Formula formula = column.formula();
        Working working = new Working(
                formula.id(),
                formula.words(),
                NumbersPrinter.numbers(formula.expr(), table, row),
                formula.source().toString());
        return withTables(node, table, formula.expr(), row).worked(working, inputs(table, formula.expr(), row));
    }

    /** What a method found, with what it read. */
    private Explanation found(ResultTable table, TableColumn.Method column, int row) {
        Explanation node = column.bar() ? day(table, column, row) : plain(table, column.symbol(), row);
        if (!node.value().given()) {
            node = node.because(results.causes().of(table, column.symbol(), row));
        }
        if (isSpelledOut(node)) {
            return node.note("spelled out above");
        }
        List<Explanation> read = new ArrayList<>();
        Results.reads(table, column).forEach(expr -> read.addAll(inputs(table, expr, row)));
        Working working = new Working(
                "",
                column.method().words(),
                "",
                column.method().source() + "; method " + column.method().name());
        return node.worked(working, read).note("stands as it was when the workbook was run");
    }

    /** A day of a chart; an empty one is a free day. */
    private Explanation day(ResultTable table, TableColumn.Method column, int row) {
        return table.of(column.symbol()).has(row)
                ? plain(table, column.symbol(), row)
                : Explanation.leaf(
                        column.symbol().name(),
                        results.places().cell(table.spec(), column.symbol(), row),
                        Value.of("no job", From.CALCULATED));
    }

    private boolean isSpelledOut(Explanation node) {
        nodes++;
        return !spelledOut.add(node.cell().orElseThrow());
    }

    /** What only brings a value over from another table is passed through to where it comes from. */
    private Explanation joined(ResultTable table, Joined column, int row) {
        Explanation node = plain(table, column.symbol(), row);
        if (!node.value().given()) {
            node = node.because(results.causes().of(table, column.symbol(), row));
        }
        if (isSpelledOut(node)) {
            return node.note("spelled out above");
        }
        Working working = new Working(
                "", WordsPrinter.words(column.expr()), NumbersPrinter.numbers(column.expr(), table, row), "");
        return withTables(node, table, column.expr(), row).worked(working, inputs(table, column.expr(), row));
    }

    private Explanation withTables(Explanation node, ResultTable table, Expr expr, int row) {
        Explanation noted = node;
        RowInputs used = new RowInputs(table, row, expr);
        for (ReferenceTable read : used.tables()) {
            noted = noted.note("reads the table '" + read.name() + "' on "
                    + results.basis().values(read).replace("$", "") + "; its source: " + read.source());
        }
        for (Expr.Count count : used.counts()) {
            noted = noted.note("counts rows of '"
                    + results.places().sheet(table.other(count.table()).spec()) + "'"
                    + (count.missing() ? " without " : " with ")
                    + count.counted().name());
        }
        return noted;
    }

    private List<Explanation> inputs(ResultTable table, Expr expr, int row) {
        List<Explanation> inputs = new ArrayList<>();
        RowInputs used = new RowInputs(table, row, expr);
        used.joins().forEach(join -> joinedRow(table, join, row).ifPresent(inputs::add));
        used.totals().forEach(total -> inputs.addAll(addends(table, total, row)));
        for (Symbol symbol : used.symbols()) {
            if (!isPlumbing(table, symbol) && !Results.isAbsent(table, symbol, row)) {
                inputs.add(value(table, symbol, row));
            }
        }
        used.constants().forEach(constant -> inputs.add(constant(constant)));
        return inputs;
    }

    private Optional<Explanation> joinedRow(ResultTable table, Expr.From join, int row) {
        Values position = table.of(join.position());
        if (!position.has(row)) {
            return Optional.empty();
        }
        ResultTable other = table.other(join.table());
        int there = (int) position.number(row) - 1;
        return Optional.of(value(other, join.symbol(), there).about(Results.about(other, there)));
    }

    private List<Explanation> addends(ResultTable table, Expr.Total total, int row) {
        ResultTable other = table.other(total.table());
        Values keys = other.of(total.keyThere());
        double key = table.of(total.keyHere()).number(row);
        List<Integer> rows = new ArrayList<>();
        for (int there = 0; there < other.rows(); there++) {
            if (keys.has(there) && keys.number(there) == key) {
                rows.add(there);
            }
        }
        return addends(other, total.summed(), rows);
    }

    /** The rows that a total adds up. */
    List<Explanation> addends(ResultTable table, Symbol summed, List<Integer> rows) {
        List<Explanation> addends = new ArrayList<>();
        int whole = rows.size() <= SPELLED_OUT_WHOLE ? rows.size() : SPELLED_OUT_FIRST;
        for (int i = 0; i < rows.size() && i < MOST_ADDENDS; i++) {
            int there = rows.get(i);
            boolean spelled = i < whole || table.links(summed) != null;
            Explanation addend = spelled ? value(table, summed, there) : plain(table, summed, there);
            addends.add(addend.about(Results.about(table, there)));
        }
        if (rows.size() > MOST_ADDENDS) {
            addends.add(rest(table, summed, rows.subList(MOST_ADDENDS, rows.size())));
        }
        return addends;
    }

    private Explanation rest(ResultTable table, Symbol summed, List<Integer> rows) {
        Values values = table.of(summed);
        double sum = 0;
        int withheld = 0;
        for (int row : rows) {
            sum += values.has(row) ? values.number(row) : 0;
            withheld += values.has(row) ? 0 : 1;
        }
        return Explanation.leaf(
                        summed.name() + " of " + Counted.more(rows.size(), "row") + " of '"
                                + results.places().sheet(table.spec()) + "' together",
                        null,
                        Value.of(sum, summed.unit().symbol(), From.CALCULATED))
                .note(withheld == 0 ? "all of them given" : withheld + " of them withheld");
    }

    /** Keys and positions only find rows; the rows they find are shown instead. */
    private static boolean isPlumbing(ResultTable table, Symbol symbol) {
        TableColumn column = table.spec().column(symbol).orElseThrow();
        return column instanceof TableColumn.Key
                || column instanceof Joined joined && joined.expr() instanceof Expr.Position;
    }

    /** A constant as it is in force. */
    Explanation constant(Constant constant) {
        double value = results.plan().constantsInForce().value(constant);
        Explanation leaf = Explanation.leaf(
                constant.name(),
                results.basis().constant(constant),
                Value.of(value, constant.unit().symbol(), From.CONSTANT));
        return results.plan()
                .constantsInForce()
                .overruled(constant)
                .map(overruled -> leaf.note("overruled by your cell " + overruled.cell() + "; without it: "
                        + Numbers.readable(constant.value()) + " " + constant.unit() + ", " + constant.source()))
                .orElseGet(() -> leaf.note("source: " + constant.source()));
    }

    /** A result by name, value and row only. */
    Explanation named(ResultTable table, Symbol symbol, int row) {
        return plain(table, symbol, row).about(Results.about(table, row));
    }
}
