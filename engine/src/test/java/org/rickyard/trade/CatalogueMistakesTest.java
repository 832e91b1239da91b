package org.rickyard.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.formula.Evaluator;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.trade.catalogue.Catalogue;

/**
 * A formula written down wrongly must not pass: every swap of operands or inputs is refused by the unit check or fails
 * a worked example, unless it means the same (a × b is b × a). What no example can tell apart stands in {@link
 * #UNSEEN}, by name.
 */
class CatalogueMistakesTest {
    /** Mistakes that neither units nor examples notice, by formula, each with why. */
    private static final Map<String, Set<String>> UNSEEN = Map.of(
            // These only decide where it is withheld; SilageGeometryTest asks for that.
            "height-when-filled",
            Set.of("a product made a quotient", "least of made greatest of", "the branches of a choice swapped"));

    static Stream<Formula> formulas() {
        return Catalogue.all().stream().filter(formula -> !formula.examples().isEmpty());
    }

    static Stream<Arguments> named() {
        return formulas().map(formula -> Arguments.of(formula.id(), formula));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("named")
    void aSwapIsNoticedUnlessItMeansTheSame(String id, Formula formula) {
        Set<String> unseen = new TreeSet<>();
        for (Mutants.Mutant mutant : Mutants.of(formula)) {
            boolean noticed = mutant.formula().isEmpty()
                    || failsAnExample(formula, mutant.formula().get())
                    || meansTheSame(formula, mutant.formula().get());
            if (!noticed) {
                unseen.add(mutant.what());
            }
        }
        assertThat(unseen)
                .as("'%s': add a worked example that tells these mistakes apart", formula.id())
                .isEqualTo(new TreeSet<>(UNSEEN.getOrDefault(formula.id(), Set.of())));
    }

    @Test
    void mistakesAreMadeAndMostAreRefusedBeforeAnyNumberIsReckoned() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Formula formula : formulas().toList()) {
            for (Mutants.Mutant mutant : Mutants.of(formula)) {
                String how = mutant.formula().isEmpty()
                        ? "refused by units"
                        : failsAnExample(formula, mutant.formula().get())
                                ? "failing an example"
                                : meansTheSame(formula, mutant.formula().get()) ? "meaning the same" : "unseen";
                counts.merge(how, 1, Integer::sum);
            }
        }
        System.out.println("mistakes made in the catalogue: " + counts);
        assertThat(counts.get("refused by units")).isGreaterThan(50);
        assertThat(counts.get("failing an example")).isGreaterThan(20);
    }

    private static boolean failsAnExample(Formula formula, Formula mistaken) {
        for (WorkedExample example : formula.examples()) {
            if (example.answerWord() != null) {
                if (!example.answerWord().equals(example.computeWord(mistaken))) {
                    return true;
                }
            } else {
                double most = example.tolerance() * (1 + 1e-9) + 1e-12;
                if (example.compute(mistaken)
                        .filter(x -> Math.abs(x - example.answer()) <= most)
                        .isEmpty()) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean meansTheSame(Formula formula, Formula mistaken) {
        RandomRows rows = new RandomRows(RandomRows.words(formula.expr()));
        if (formula.result().type() == Symbol.Type.TEXT) {
            Evaluator.WordAt one = Evaluator.words(formula.expr(), rows);
            Evaluator.WordAt other = Evaluator.words(mistaken.expr(), rows);
            for (int row = 0; row < RandomRows.ROWS; row++) {
                if (!one.at(row).equals(other.at(row))) {
                    return false;
                }
            }
            return true;
        }
        Evaluator.NumberAt one = Evaluator.number(formula.expr(), rows);
        Evaluator.NumberAt other = Evaluator.number(mistaken.expr(), rows);
        double[] a = new double[1];
        double[] b = new double[1];
        int given = 0;
        for (int row = 0; row < RandomRows.ROWS; row++) {
            boolean has = one.at(row, a);
            if (has != other.at(row, b)) {
                return false;
            }
            if (has && Math.abs(a[0] - b[0]) > 1e-9 * Math.max(1, Math.abs(a[0]))) {
                return false;
            }
            given += has ? 1 : 0;
        }
        return given > 0;
    }
}
