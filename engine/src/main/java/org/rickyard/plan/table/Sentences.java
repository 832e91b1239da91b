package org.rickyard.plan.table;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Expr;

/** The live sentences at the right end of every result table: cautions, then status. */
public final class Sentences {
    private static final Expr UNWRITTEN = Expr.text("");

    private Sentences() {}

    /** The columns with Cautions and Status behind them, to be written once the table is fitted to a workbook. */
    public static List<TableColumn> appended(List<TableColumn> columns, List<CautionRule> rules) {
        List<TableColumn> all = new ArrayList<>(columns);
        if (!rules.isEmpty()) {
            all.add(new TableColumn.Sentence(TableSpec.CAUTIONS, UNWRITTEN));
        }
        all.add(new TableColumn.Sentence(TableSpec.STATUS, UNWRITTEN));
        return List.copyOf(all);
    }

    /** Whether a column is one of these two. */
    public static boolean isAppended(TableColumn column) {
        return column.symbol().equals(TableSpec.CAUTIONS) || column.symbol().equals(TableSpec.STATUS);
    }

    /**
     * The columns with these sentences as the rows of a workbook need them. Keys and positions, which only join rows, go
     * to the far right: a reader has no use for them.
     */
    public static List<TableColumn> written(List<TableColumn> columns, List<CautionRule> rules) {
        List<TableColumn> all = new ArrayList<>();
        List<TableColumn> joins = new ArrayList<>();
        columns.forEach(column -> (column.joinsRows() ? joins : all).add(column));
        List<Expr> sentences = new ArrayList<>();
        rules.forEach(rule -> sentences.add(rule.sentence()));
        if (!sentences.isEmpty()) {
            all.add(new TableColumn.Sentence(TableSpec.CAUTIONS, new Expr.Join(sentences)));
        }
        all.add(new TableColumn.Sentence(TableSpec.STATUS, StatusText.of(columns)));
        all.addAll(joins);
        return List.copyOf(all);
    }
}
