package org.rickyard.plan.table;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rickyard.formula.BlankMeaning;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Symbol;

/**
 * A result table, declared: what one row is, and its columns from left to right. Columns are only ever appended.
 *
 * @param id stable for ever
 * @param sheet the sheet it is written to
 * @param title what stands at the top
 * @param grain what one row is
 * @param columns identity, inputs, steps, results, then cautions and status, then what only joins rows
 * @param totals columns whose total stands above the data under a workbook name
 * @param cautions sentences that hold for the whole sheet
 * @param rules cautions of single rows
 */
public record TableSpec(
        String id,
        String sheet,
        String title,
        String grain,
        List<TableColumn> columns,
        List<TotalName> totals,
        List<String> cautions,
        List<CautionRule> rules) {

    /** The symbol of every Status column. */
    public static final Symbol STATUS = Symbol.text("status");
    /** The symbol of every Cautions column. */
    public static final Symbol CAUTIONS = Symbol.text("cautions");

    /**
     * A total and the workbook name it goes by.
     *
     * @param leftOut the column that counts what is missing from each row's own total, where the rows are totals
     *     themselves; null where they are not
     */
    public record TotalName(Symbol symbol, String name, Symbol leftOut) {
        /** A total of rows that are no totals themselves. */
        public TotalName(Symbol symbol, String name) {
            this(symbol, name, null);
        }
    }

    /** The same with other columns. */
    public TableSpec with(List<TableColumn> others) {
        return new TableSpec(id, sheet, title, grain, List.copyOf(others), totals, cautions, rules);
    }

    /**
     * The same with other columns, some of which find what used to be typed from several cells: formulas and rules that ask
     * whether it is blank ask for those.
     */
    public TableSpec with(List<TableColumn> others, BlankMeaning blank) {
        List<TableColumn> rewritten = others.stream()
                .map(column -> column instanceof TableColumn.Calculated calculated
                        ? calculated.by(blank.in(calculated.formula().expr()))
                        : column)
                .toList();
        List<CautionRule> asked = rules.stream()
                .map(rule -> new CautionRule(rule.severity(), blank.in(rule.when()), rule.text()))
                .toList();
        return new TableSpec(id, sheet, title, grain, rewritten, totals, cautions, asked);
    }

    /** The column of a symbol. */
    public Optional<TableColumn> column(Symbol symbol) {
        int place = place(symbol);
        return place < 0 ? Optional.empty() : Optional.of(columns.get(place));
    }

    /** The ids of the other tables its columns read, without which its formulas would lead nowhere. */
    public Set<String> reads() {
        Set<String> reads = new LinkedHashSet<>();
        for (TableColumn column : columns) {
            if (column instanceof TableColumn.Calculated calculated) {
                reads.addAll(Inputs.otherTablesOf(calculated.formula().expr()));
            } else if (column instanceof TableColumn.Joined joined) {
                reads.addAll(Inputs.otherTablesOf(joined.expr()));
            }
        }
        return reads;
    }

    /** Its position from the left, counted from 0. */
    public int position(Symbol symbol) {
        int place = place(symbol);
        if (place >= 0) {
            return place;
        }
        throw new IllegalArgumentException("'" + symbol + "' is no column of '" + sheet + "'");
    }

    /** -1 if there is none. As a rule it is the very symbol that is asked for, and symbols are long to compare. */
    private int place(Symbol symbol) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).symbol() == symbol) {
                return i;
            }
        }
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).symbol().equals(symbol)) {
                return i;
            }
        }
        return -1;
    }
}
