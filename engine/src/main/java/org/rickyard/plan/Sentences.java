package org.rickyard.plan;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Finding.Severity;

/** The live sentences at the right end of every result table: cautions, then status. */
final class Sentences {
    private Sentences() {}

    /** The columns with Cautions and Status behind them. */
    static List<TableColumn> appended(List<TableColumn> columns, List<CautionRule> rules) {
        List<TableColumn> all = new ArrayList<>(columns);
        List<Expr> sentences = new ArrayList<>();
        rules.forEach(rule -> sentences.add(rule.sentence()));
        for (TableColumn column : columns) {
            if (column instanceof TableColumn.Link link) {
                sentences.addAll(unusual(link.symbol()));
            }
        }
        if (!sentences.isEmpty()) {
            all.add(new TableColumn.Sentence(TableSpec.CAUTIONS, new Expr.Join(sentences)));
        }
        all.add(new TableColumn.Sentence(TableSpec.STATUS, StatusText.of(columns)));
        return List.copyOf(all);
    }

    /** A value beyond the usual is reckoned with, and said. */
    private static List<Expr> unusual(Symbol symbol) {
        List<Expr> sentences = new ArrayList<>();
        if (symbol.type() != Symbol.Type.NUMBER) {
            return sentences;
        }
        Expr value = new Expr.Scale(Expr.value(symbol), symbol.unit());
        if (symbol.usual().hasLow()) {
            sentences.add(unusual(symbol, value, Condition.Relation.LESS, symbol.usual().low(), "low"));
        }
        if (symbol.usual().hasHigh()) {
            sentences.add(unusual(symbol, value, Condition.Relation.MORE, symbol.usual().high(), "high"));
        }
        return sentences;
    }

    private static Expr unusual(Symbol symbol, Expr value, Condition.Relation relation, double bound, String word) {
        Expr limit = new Expr.AsUnit(Expr.number(bound), symbol.unit());
        return Expr.choice(
                Condition.compare(value, relation, limit),
                Expr.text(Severity.CAUTION + ": " + symbol.name() + " is unusually " + word + ". "),
                Expr.text(""));
    }
}
