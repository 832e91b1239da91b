package org.rickyard.audit;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableColumn.Calculated;
import org.rickyard.plan.table.TableColumn.Joined;

/**
 * Which values of a plan depend on one cell or constant: followed forwards from table to table, each row by the branch
 * it took.
 */
final class ExplanationUses {
    /** Takes a value that depends on what was asked about. */
    interface Reader {
        void take(ResultTable table, Symbol symbol, int row);
    }

    private final WorkPlan plan;
    private final Map<ResultTable, Map<Symbol, BitSet>> touched = new HashMap<>();
    private final CellAddress cell;
    private final Set<Constant> constants;

    private ExplanationUses(WorkPlan plan, CellAddress cell, Set<Constant> constants) {
        this.plan = plan;
        this.cell = cell;
        this.constants = constants;
        plan.tables().forEach(this::follow);
    }

    /** What depends on a cell of the client's, and on the constants it overrules. */
    static ExplanationUses of(WorkPlan plan, CellAddress cell, Set<Constant> constants) {
        return new ExplanationUses(plan, cell, constants);
    }

    /** Hands over the results, table by table, row by row. */
    void results(Reader reader) {
        for (ResultTable table : plan.tables()) {
            for (int row = 0; row < table.rows(); row++) {
                for (TableColumn column : Results.answers(table)) {
                    if (rows(table, column.symbol()).get(row) && Results.isTold(table, column, row)) {
                        reader.take(table, column.symbol(), row);
                    }
                }
            }
        }
    }

    /** The sheets' tables whose rows take a name or word from the cell. */
    Set<ResultTable> linked() {
        Set<ResultTable> tables = new LinkedHashSet<>();
        for (ResultTable table : plan.tables()) {
            for (TableColumn column : table.spec().columns()) {
                if (table.links(column.symbol()) != null
                        && !rows(table, column.symbol()).isEmpty()) {
                    tables.add(table);
                }
            }
        }
        return tables;
    }

    private BitSet rows(ResultTable table, Symbol symbol) {
        return touched.getOrDefault(table, Map.of()).getOrDefault(symbol, new BitSet());
    }

    private void follow(ResultTable table) {
        for (TableColumn column : table.spec().columns()) {
            BitSet rows = rowsOf(table, column);
            if (!rows.isEmpty()) {
                touched.computeIfAbsent(table, t -> new HashMap<>()).put(column.symbol(), rows);
            }
        }
    }

    private BitSet rowsOf(ResultTable table, TableColumn column) {
        LinkCells links = table.links(column.symbol());
        if (links != null) {
            return linkedRows(links, table.rows());
        } else if (column instanceof Calculated calculated) {
            return worked(table, calculated.formula().expr());
        } else if (column instanceof Joined joined) {
            return worked(table, joined.expr());
        }
        return new BitSet();
    }

    private BitSet linkedRows(LinkCells links, int rows) {
        BitSet found = new BitSet();
        for (int row = 0; row < rows; row++) {
            if (links.address(row).filter(cell::equals).isPresent()) {
                found.set(row);
            }
        }
        return found;
    }

    /** The rows of a formula that might depend, then of those the ones that do. */
    private BitSet worked(ResultTable table, Expr expr) {
        BitSet candidates = new BitSet();
        for (Symbol symbol : Inputs.of(expr)) {
            candidates.or(rows(table, symbol));
        }
        for (String other : Inputs.otherTablesOf(expr)) {
            if (touched.containsKey(table.other(other))) {
                candidates.set(0, table.rows());
            }
        }
        if (Inputs.constantsOf(expr).stream().anyMatch(constants::contains)) {
            candidates.set(0, table.rows());
        }
        BitSet found = new BitSet();
        Map<Expr, Set<Double>> keys = new HashMap<>();
        for (int row = candidates.nextSetBit(0); row >= 0; row = candidates.nextSetBit(row + 1)) {
            if (depends(table, new RowInputs(table, row, expr), row, keys)) {
                found.set(row);
            }
        }
        return found;
    }

    private boolean depends(ResultTable table, RowInputs used, int row, Map<Expr, Set<Double>> keys) {
        for (Symbol symbol : used.symbols()) {
            if (rows(table, symbol).get(row)) {
                return true;
            }
        }
        for (Expr.Total total : used.totals()) {
            Set<Double> there = keys.computeIfAbsent(
                    total, t -> keys(table.other(total.table()), total.summed(), total.keyThere()));
            if (there.contains(table.of(total.keyHere()).number(row))) {
                return true;
            }
        }
        for (Expr.Count count : used.counts()) {
            Set<Double> there = keys.computeIfAbsent(
                    count, c -> keys(table.other(count.table()), count.counted(), count.keyThere()));
            if (there.contains(table.of(count.keyHere()).number(row))) {
                return true;
            }
        }
        for (Expr.From join : used.joins()) {
            Values position = table.of(join.position());
            if (position.has(row)
                    && rows(table.other(join.table()), join.symbol()).get((int) position.number(row) - 1)) {
                return true;
            }
        }
        return used.constants().stream().anyMatch(constants::contains);
    }

    private Set<Double> keys(ResultTable table, Symbol symbol, Symbol key) {
        Set<Double> found = new HashSet<>();
        Values keys = table.of(key);
        BitSet rows = rows(table, symbol);
        for (int row = rows.nextSetBit(0); row >= 0; row = rows.nextSetBit(row + 1)) {
            found.add(keys.number(row));
        }
        return found;
    }
}
