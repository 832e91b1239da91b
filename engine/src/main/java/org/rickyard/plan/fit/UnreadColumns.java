package org.rickyard.plan.fit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Quantities;

/**
 * Leaves out of fitted tables the inputs, keys and steps that serve only formulas which this workbook has no use for. What
 * no formula was ever meant to read is there to be looked at, and stays; so do names, results and totals.
 */
public final class UnreadColumns {
    /** What a column reads: of its own row, and of which columns of which tables. */
    private record Read(Set<Symbol> own, Map<String, Set<Symbol>> there) {
        Set<Symbol> of(String table) {
            return there.getOrDefault(table, Set.of());
        }
    }

    /** A column that reads a table. */
    private record Reader(ResultTable table, TableColumn column) {}

    private final Collection<ResultTable> tables;
    private final Map<TableColumn, Read> reads = new IdentityHashMap<>();
    private final Map<String, List<Reader>> readers = new HashMap<>();

    private UnreadColumns(Collection<ResultTable> tables) {
        this.tables = tables;
        for (ResultTable table : tables) {
            if (table.rows() > 0) {
                for (TableColumn column : table.spec().columns()) {
                    for (String other : read(column).there().keySet()) {
                        readers.computeIfAbsent(other, t -> new ArrayList<>()).add(new Reader(table, column));
                    }
                }
            }
        }
    }

    /** Leaves them out; the tables must all have been evaluated, and keep the values. */
    public static void leaveOut(Collection<ResultTable> tables) {
        UnreadColumns unread = new UnreadColumns(tables);
        Map<String, Set<Symbol>> meant = unread.meantElsewhere();
        List<ResultTable> lastFirst = new ArrayList<>(tables);
        Collections.reverse(lastFirst);
        for (ResultTable table : lastFirst) {
            if (table.rows() > 0) {
                unread.narrow(table, meant.getOrDefault(table.spec().id(), Set.of()));
            }
        }
    }

    private void narrow(ResultTable table, Set<Symbol> meantElsewhere) {
        String id = table.spec().id();
        Set<Symbol> meant = new HashSet<>(meantElsewhere);
        table.declared().columns().forEach(column -> addRead(meant, id, column));
        Set<Symbol> elsewhere = readNow(id);
        TableSpec spec = table.spec();
        int before;
        do {
            before = spec.columns().size();
            Set<Symbol> read = new HashSet<>(elsewhere);
            spec.columns().forEach(column -> addRead(read, id, column));
            spec.rules().forEach(rule -> read.addAll(Inputs.of(rule.when())));
            spec.totals().forEach(total -> {
                read.add(total.symbol());
                if (total.leftOut() != null) {
                    read.add(total.leftOut());
                }
            });
            spec = spec.with(spec.columns().stream()
                    .filter(column -> read.contains(column.symbol()) || !serves(column, meant))
                    .toList());
        } while (spec.columns().size() < before);
        table.narrow(spec);
    }

    private void addRead(Set<Symbol> all, String id, TableColumn column) {
        all.addAll(read(column).own());
        all.addAll(read(column).of(id));
    }

    /** Whether a column is there for the sake of others. */
    private static boolean serves(TableColumn column, Set<Symbol> meant) {
        boolean shown = column instanceof TableColumn.Name
                || column instanceof TableColumn.Sentence
                || column instanceof TableColumn.Method
                || column instanceof TableColumn.Word word && word.identity()
                // Without it nothing on the sheet would say what the amounts of its rows are in.
                || column.symbol().equals(Quantities.PRODUCT_UNIT)
                || column instanceof TableColumn.Calculated calculated && (calculated.result() || calculated.aside());
        return !shown && (column instanceof TableColumn.Key || meant.contains(column.symbol()));
    }

    /** What tables were declared to read of others. */
    private Map<String, Set<Symbol>> meantElsewhere() {
        Map<String, Set<Symbol>> meant = new HashMap<>();
        for (ResultTable table : tables) {
            for (TableColumn column : table.declared().columns()) {
                read(column).there().forEach((other, symbols) -> meant.computeIfAbsent(other, t -> new HashSet<>())
                        .addAll(symbols));
            }
        }
        return meant;
    }

    /** What the columns that tables with rows have kept so far read of a table. */
    private Set<Symbol> readNow(String id) {
        Set<Symbol> read = new HashSet<>();
        for (Reader reader : readers.getOrDefault(id, List.of())) {
            if (reader.table().spec().columns().stream().anyMatch(column -> column == reader.column())) {
                read.addAll(read(reader.column()).of(id));
            }
        }
        return read;
    }

    private Read read(TableColumn column) {
        return reads.computeIfAbsent(column, UnreadColumns::readBy);
    }

    private static Read readBy(TableColumn column) {
        Set<Symbol> own = new HashSet<>();
        Map<String, Set<Symbol>> there = new HashMap<>();
        for (Expr expr : exprs(column)) {
            own.addAll(Inputs.of(expr));
            Inputs.ofOthers(expr).forEach((table, symbols) -> there.computeIfAbsent(table, t -> new HashSet<>())
                    .addAll(symbols));
        }
        if (column instanceof TableColumn.Method method && method.because() != null) {
            own.add(method.because());
        }
        return new Read(own, there);
    }

    private static List<Expr> exprs(TableColumn column) {
        if (column instanceof TableColumn.Method method) {
            return method.method().reads();
        } else if (column instanceof TableColumn.Sentence sentence) {
            return List.of(sentence.expr());
        }
        Expr expr = FittedTable.expr(column);
        return expr == null ? List.of() : List.of(expr);
    }
}
