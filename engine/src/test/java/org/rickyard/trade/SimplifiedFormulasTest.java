package org.rickyard.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Evaluator;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Simplifier;
import org.rickyard.formula.Symbol;
import org.rickyard.trade.catalogue.Catalogue;

/**
 * Every formula of the trade, worked out in random rows as it stands and simplified for inputs that no row has: each
 * input in turn, then seeded choices of several. The values must be the same to the last bit.
 */
class SimplifiedFormulasTest {
    private static final int CHOICES = 12;

    @Test
    void noValueChanges() {
        int tried = 0;
        int simplified = 0;
        Set<String> wrong = new TreeSet<>();
        for (Formula formula : Catalogue.all()) {
            if (!Inputs.otherTablesOf(formula.expr()).isEmpty()) {
                continue;
            }
            for (Set<Symbol> absent : absences(formula)) {
                Simplifier simplifier = new Simplifier(absent, Map.of(), (table, symbol) -> false);
                Expr simple = simplifier.simplify(formula.expr());
                RandomRows rows = new RandomRows(RandomRows.words(formula.expr())).without(absent);
                List<Object> full = worked(formula, formula.expr(), rows);
                boolean never = simplifier.never(simple) && full.stream().anyMatch(value -> !value.equals(""));
                if (never || !worked(formula, simple, rows).equals(full)) {
                    wrong.add(formula.id() + " without " + absent);
                }
                tried++;
                simplified += simple.equals(formula.expr()) ? 0 : 1;
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(tried).isGreaterThan(1000);
        assertThat(simplified).isGreaterThan(100);
    }

    private static List<Set<Symbol>> absences(Formula formula) {
        List<Symbol> inputs = new ArrayList<>(formula.inputs());
        List<Set<Symbol>> absences = new ArrayList<>(List.of(Set.of()));
        inputs.forEach(symbol -> absences.add(Set.of(symbol)));
        Random random = new Random(formula.id().hashCode());
        for (int i = 0; i < CHOICES && inputs.size() > 2; i++) {
            Set<Symbol> several = new LinkedHashSet<>(inputs);
            several.removeIf(symbol -> random.nextBoolean());
            absences.add(several);
        }
        return absences;
    }

    private static List<Object> worked(Formula formula, Expr expr, RandomRows rows) {
        List<Object> answers = new ArrayList<>();
        boolean words = formula.result().type() == Symbol.Type.TEXT;
        Evaluator.WordAt word = words ? Evaluator.words(expr, rows) : null;
        Evaluator.NumberAt number = words ? null : Evaluator.number(expr, rows);
        double[] out = new double[1];
        for (int row = 0; row < RandomRows.ROWS; row++) {
            answers.add(words ? word.at(row) : number.at(row, out) ? (Object) out[0] : "");
        }
        return answers;
    }
}
