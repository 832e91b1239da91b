package org.rickyard.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Symbol;

/**
 * Leaves out of fitted tables the inputs, keys and steps that serve only formulas which this workbook has no use for. What
 * no formula was ever meant to read is there to be looked at, and stays; so do names, results and totals.
 */
final class UnreadColumns {
    private final Collection<ResultTable> tables;

    private UnreadColumns(Collection<ResultTable> tables) {
        this.tables = tables;
    }

    /** Leaves them out; the tables must all have been evaluated, and keep the values. */
    static void leaveOut(Collection<ResultTable> tables) {
        UnreadColumns unread = new UnreadColumns(tables);
        Map<String, Set<Symbol>> meant = unread.readElsewhere(true);
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
        table.declared().columns().forEach(column -> meant.addAll(read(id, column)));
        Set<Symbol> elsewhere = readElsewhere(false).getOrDefault(id, Set.of());
        TableSpec spec = table.spec();
        int before;
        do {
            before = spec.columns().size();
            Set<Symbol> read = new HashSet<>(elsewhere);
            spec.columns().forEach(column -> read.addAll(read(id, column)));
            spec.rules().forEach(rule -> read.addAll(Inputs.of(rule.when())));
            spec.totals().forEach(total -> read.add(total.symbol()));
            spec = spec.with(spec.columns().stream()
                    .filter(column -> read.contains(column.symbol()) || !serves(column, meant))
                    .toList());
        } while (spec.columns().size() < before);
        table.narrow(spec);
    }

    /** Whether a column is there for the sake of others. */
    private static boolean serves(TableColumn column, Set<Symbol> meant) {
        boolean shown = column instanceof TableColumn.Name
                || column instanceof TableColumn.Sentence
                || column instanceof TableColumn.Method
                || column instanceof TableColumn.Word word && word.identity()
                || column instanceof TableColumn.Calculated calculated && (calculated.result() || calculated.aside());
        return !shown && (column instanceof TableColumn.Key || meant.contains(column.symbol()));
    }

    /** What tables read of others: as they were declared, or as those that have rows now do. */
    private Map<String, Set<Symbol>> readElsewhere(boolean declared) {
        Map<String, Set<Symbol>> read = new HashMap<>();
        for (ResultTable table : tables) {
            if (declared || table.rows() > 0) {
                TableSpec spec = declared ? table.declared() : table.spec();
                for (TableColumn column : spec.columns()) {
                    for (Expr expr : exprs(column)) {
                        Inputs.ofOthers(expr)
                                .forEach((other, symbols) -> read.computeIfAbsent(other, t -> new HashSet<>())
                                        .addAll(symbols));
                    }
                }
            }
        }
        return read;
    }

    private static Set<Symbol> read(String id, TableColumn column) {
        Set<Symbol> read = new HashSet<>();
        for (Expr expr : exprs(column)) {
            read.addAll(Inputs.of(expr));
            read.addAll(Inputs.of(id, expr));
        }
        if (column instanceof TableColumn.Method method && method.because() != null) {
            read.add(method.because());
        }
        return read;
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
