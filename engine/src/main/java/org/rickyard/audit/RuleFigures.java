package org.rickyard.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.formula.Days;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Numbers;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.quantity.Unit;

/** The figures a caution was raised by, each with the client's cell it was typed in, so that the slip can be found. */
final class RuleFigures {
    /** What rests on more typed cells than this is named by its value alone. */
    private static final int MOST_CELLS = 3;
    /** What stands before them, after the sentence. */
    static final String HERE = " Here ";
    /** Decimals more than the sheet shows. */
    private static final int FINER = 1;
    /** No more than so many, for what differs by less is one number. */
    private static final int FINEST = 6;

    private RuleFigures() {}

    /** A sentence such as "Here dose per hectare is 1250 L/ha (Jobs!F2)."; empty if there is nothing to name. */
    static String of(ResultTable table, CautionRule rule, int row, SheetPlaces places) {
        List<String> figures = new ArrayList<>();
        int finer = finer(table, rule, row);
        for (Symbol symbol : Inputs.of(rule.when())) {
            Values values = table.of(symbol);
            // A key of ours joins rows and tells a reader nothing.
            boolean key = table.spec().column(symbol).orElse(null) instanceof TableColumn.Key;
            if (key || values.words() || !values.has(row)) {
                continue;
            }
            Set<CellAddress> cells = new LinkedHashSet<>();
            typed(table, symbol, row, cells);
            String where = cells.isEmpty() || cells.size() > MOST_CELLS
                    ? fetched(table, symbol, row, places)
                    : " ("
                            + String.join(
                                    ", ",
                                    cells.stream().map(CellAddress::toString).toList()) + ")";
            Symbol ranked = ranked(table, symbol);
            figures.add((ranked == null
                            ? symbol.name() + " is " + value(table, symbol, row, finer)
                            : ranked.name() + " is " + table.of(ranked).word(row))
                    + where);
        }
        return figures.isEmpty() ? "" : HERE + String.join(", ", figures) + ".";
    }

    /** So many decimals more that no two of the figures read alike: "does not fit" beside "2 d" and "2 d" explains nothing. */
    private static int finer(ResultTable table, CautionRule rule, int row) {
        List<Symbol> numbers = Inputs.of(rule.when()).stream()
                .filter(symbol -> symbol.type() == Symbol.Type.NUMBER)
                .filter(symbol -> !table.of(symbol).words() && table.of(symbol).has(row))
                .toList();
        int finer = FINER;
        while (finer < FINEST && readAlike(table, numbers, row, finer)) {
            finer++;
        }
        return finer == FINEST ? FINER : finer;
    }

    private static boolean readAlike(ResultTable table, List<Symbol> numbers, int row, int finer) {
        Map<String, Double> read = new HashMap<>();
        for (Symbol symbol : numbers) {
            double number = table.of(symbol).number(row);
            Double other = read.putIfAbsent(value(table, symbol, row, finer), number);
            if (other != null && other != number) {
                return true;
            }
        }
        return false;
    }

    /** The word whose place in an order of words a figure is, for its place alone tells a reader nothing; else null. */
    private static Symbol ranked(ResultTable table, Symbol symbol) {
        return table.spec().column(symbol).orElse(null) instanceof TableColumn.Calculated calculated
                        && calculated.formula().expr() instanceof Expr.Lookup lookup
                        && lookup.table().ranks()
                        && lookup.key() instanceof Expr.Ref word
                ? word.symbol()
                : null;
    }

    /** Where on a sheet of ours a figure stands that was fetched from there. */
    private static String fetched(ResultTable table, Symbol symbol, int row, SheetPlaces places) {
        if (table.spec().column(symbol).orElse(null) instanceof TableColumn.Joined joined
                && joined.expr() instanceof Expr.From from
                && table.of(from.position()).has(row)) {
            int there = (int) table.of(from.position()).number(row) - 1;
            return " (" + places.cell(table.other(from.table()).spec(), from.symbol(), there) + ")";
        }
        return "";
    }

    private static String value(ResultTable table, Symbol symbol, int row, int finer) {
        double number = table.of(symbol).number(row);
        if (symbol.type() == Symbol.Type.DATE) {
            return Days.text(number, table.dayZero());
        }
        // What was worked out is told as finely as it is shown and a little more: Trail has it in full.
        String figure = Numbers.readable(BigDecimal.valueOf(number)
                .setScale(symbol.decimals() + finer, RoundingMode.HALF_UP)
                .doubleValue());
        if (symbol.unit().symbol().contains("product unit")) {
            // A product's own unit where the row tells it.
            return figure + " " + table.unit(symbol, row);
        }
        LinkCells links = table.links(symbol);
        String own = (figure + " " + symbol.unit().symbol()).strip();
        if (links == null || !links.exists(row)) {
            return own;
        }
        Unit typedIn = links.unit(row).orElse(symbol.unit());
        String typed = (Numbers.readable(links.typedNumber(row)) + " " + typedIn.symbol()).strip();
        // A limit in the caution, and what else it names, are in our unit: the two must be comparable.
        return typedIn.isSameScale(symbol.unit()) ? typed : typed + " = " + own;
    }

    /** The client's cells that a value of this row rests on, through formulas of the row and joins to other tables. */
    private static void typed(ResultTable table, Symbol symbol, int row, Set<CellAddress> cells) {
        TableColumn column = table.spec().column(symbol).orElse(null);
        LinkCells links = table.links(symbol);
        if (links != null) {
            Optional<CellAddress> cell = table.of(symbol).has(row) ? links.address(row) : Optional.empty();
            cell.ifPresent(cells::add);
        } else if (column instanceof TableColumn.Calculated calculated) {
            typed(table, calculated.formula().expr(), row, cells);
        } else if (column instanceof TableColumn.Joined joined) {
            typed(table, joined.expr(), row, cells);
        }
    }

    private static void typed(ResultTable table, Expr expr, int row, Set<CellAddress> cells) {
        if (expr instanceof Expr.From from) {
            Values position = table.of(from.position());
            if (position.has(row)) {
                typed(table.other(from.table()), from.symbol(), (int) position.number(row) - 1, cells);
            }
            return;
        }
        for (Symbol used : new RowInputs(table, row, expr).symbols()) {
            if (cells.size() > MOST_CELLS) {
                return;
            }
            if (table.of(used).has(row)) {
                typed(table, used, row, cells);
            }
        }
    }
}
