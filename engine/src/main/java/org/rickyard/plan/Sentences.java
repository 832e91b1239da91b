package org.rickyard.plan;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Expr;

/** The live sentences at the right end of every result table: cautions, then status. */
final class Sentences {
    private Sentences() {}

    /** The columns with Cautions and Status behind them. */
    static List<TableColumn> appended(List<TableColumn> columns, List<CautionRule> rules) {
        List<TableColumn> all = new ArrayList<>(columns);
        List<Expr> sentences = new ArrayList<>();
        rules.forEach(rule -> sentences.add(rule.sentence()));
        if (!sentences.isEmpty()) {
            all.add(new TableColumn.Sentence(TableSpec.CAUTIONS, new Expr.Join(sentences)));
        }
        all.add(new TableColumn.Sentence(TableSpec.STATUS, StatusText.of(columns)));
        return List.copyOf(all);
    }
}
