package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.text;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.formula.NodeCases.KEY;
import static org.rickyard.formula.NodeCases.QUARTER;
import static org.rickyard.formula.NodeCases.SHARE;
import static org.rickyard.formula.NodeCases.SHARES;
import static org.rickyard.formula.NodeCases.TEN;
import static org.rickyard.formula.NodeCases.WORD;
import static org.rickyard.formula.NodeCases.X;
import static org.rickyard.formula.NodeCases.Y;
import static org.rickyard.formula.NodeCases.Z;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.formula.Condition.Blank;
import org.rickyard.formula.Condition.Given;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr.Lookup.Mode;

/** What an expression becomes where a quantity never has a value: node by node, and the same values throughout. */
class SimplifierTest {
    private static final Simplifier WITHOUT_X = without(X);
    private static final Simplifier WITHOUT_WORD = without(WORD);

    private static Simplifier without(Symbol... absent) {
        return new Simplifier(Set.of(absent), Map.of(), (table, symbol) -> symbol.equals(Z));
    }

    private static Condition below(Symbol symbol, double limit) {
        return Condition.compare(value(symbol), Relation.LESS, number(limit));
    }

    @Test
    void defaultStandsByItselfInTheUnitOfWhatItStandsInFor() {
        assertThat(WITHOUT_X.simplify(given(X, constant(TEN)))).isEqualTo(constant(TEN));
        Expr share = given(SHARE, constant(QUARTER));
        Expr alone = without(SHARE).simplify(share);
        assertThat(alone).isEqualTo(((Expr.GivenElse) share).otherwise());
        assertThat(alone.unit().isSameScale(share.unit())).isTrue();
    }

    @Test
    void whatNothingCanStandInForIsAskedForItself() {
        assertThat(WITHOUT_X.simplify(given(Y, value(X)))).isEqualTo(value(Y));
        Expr share = without(X).simplify(given(SHARE, given(X, value(X)).in(SHARE.unit())));
        assertThat(share.unit().isSameScale(SHARE.unit())).isTrue();
    }

    @Test
    void choiceOnWhatIsNeverGivenIsDecided() {
        assertThat(WITHOUT_X.simplify(choice(new Given(X), value(X), value(Y)))).isEqualTo(value(Y));
        assertThat(WITHOUT_X.simplify(choice(new Blank(X), value(Y), value(X)))).isEqualTo(value(Y));
        assertThat(WITHOUT_WORD.simplify(choice(Condition.is(WORD, "mower"), value(X), value(Y))))
                .isEqualTo(value(Y));
        assertThat(WITHOUT_WORD.simplify(
                        choice(new Condition.InTable(SHARES, value(WORD), Mode.EXACT), value(X), value(Y))))
                .isEqualTo(value(Y));
    }

    @Test
    void partsOfConditionsGo() {
        Condition mower = Condition.is(WORD, "mower");
        assertThat(WITHOUT_X.simplify(Condition.all(List.of(new Blank(X), mower))))
                .isEqualTo(mower);
        assertThat(WITHOUT_X.simplify(Condition.any(List.of(new Given(X), mower))))
                .isEqualTo(mower);
        assertThat(WITHOUT_X.simplify(Condition.all(List.of(new Given(X), mower))))
                .isEqualTo(Condition.NEVER);
        assertThat(WITHOUT_X.simplify(Condition.any(List.of(new Blank(X), mower))))
                .isEqualTo(Condition.ALWAYS);
        assertThat(WITHOUT_X.simplify(new Condition.Not(new Given(X)))).isEqualTo(Condition.ALWAYS);
        assertThat(WITHOUT_X.simplify(new Condition.Not(new Blank(X)))).isEqualTo(Condition.NEVER);
    }

    @Test
    void partThatWithholdsIsNotDropped() {
        Condition asks = Condition.all(List.of(new Given(X), below(Y, 5)));
        assertThat(WITHOUT_X.simplify(asks)).isEqualTo(asks);
        assertThat(WITHOUT_X.neverSaid(asks))
                .as("but a sentence on it is never said")
                .isTrue();
    }

    @Test
    void comparisonOfWhatIsNeverThereHasNoAnswerEitherWay() {
        Expr compares = choice(below(X, 5), value(Y), number(1));
        assertThat(WITHOUT_X.simplify(compares)).isEqualTo(compares);
        assertThat(WITHOUT_X.never(compares)).isTrue();
        assertThat(WITHOUT_X.neverSaid(below(X, 5))).isTrue();
        assertThat(WITHOUT_X.neverSaid(below(Y, 5))).isFalse();
    }

    @Test
    void arithmeticThatNeedsItNeverHasAValue() {
        for (Expr expr : List.of(
                value(X),
                value(Y).plus(X),
                value(Y).minus(X),
                value(Y).times(X),
                value(Y).over(X),
                value(X).power(2),
                new Expr.Negate(value(X)),
                Expr.call(Function.SQRT, value(X)),
                new Expr.Lookup(NodeCases.STEPS, value(X), Mode.STEP),
                value(Y).onlyWhen(new Given(X), "x is wanted"),
                value(Y).onlyWhen(below(X, 5), "x is wanted"),
                value(X).onlyWhen(new Given(Y), "y is wanted"),
                choice(new Given(Y), value(X), value(X).times(Y)))) {
            assertThat(WITHOUT_X.simplify(expr)).as("%s", expr).isEqualTo(expr);
            assertThat(WITHOUT_X.never(expr)).as("%s", expr).isTrue();
        }
        assertThat(WITHOUT_X.never(value(Y))).isFalse();
        assertThat(WITHOUT_X.never(choice(new Given(Y), value(Y), value(X)))).isFalse();
    }

    @Test
    void requirementThatAlwaysHoldsGoes() {
        assertThat(WITHOUT_X.simplify(value(Y).onlyWhen(new Blank(X), "not with x")))
                .isEqualTo(value(Y));
    }

    @Test
    void leastIsOfWhatCanBeGiven() {
        assertThat(WITHOUT_X.simplify(new Expr.LeastGiven(List.of(X, Y, Z))))
                .isEqualTo(new Expr.LeastGiven(List.of(Y, Z)));
        assertThat(WITHOUT_X.simplify(new Expr.LeastGiven(List.of(X, Y)))).isEqualTo(value(Y));
        assertThat(WITHOUT_X.never(new Expr.LeastGiven(List.of(X)))).isTrue();
        assertThat(WITHOUT_X.simplify(new Expr.LabelOfLeast(List.of(X, Y, Z), List.of("one", "two", "three"))))
                .isEqualTo(new Expr.LabelOfLeast(List.of(Y, Z), List.of("two", "three")));
        assertThat(WITHOUT_X.simplify(new Expr.LabelOfLeast(List.of(X), List.of("one"))))
                .isEqualTo(text(""));
    }

    @Test
    void textsThatAreNeverSaidGo() {
        Expr said = choice(new Given(Y), text("y. "), text(""));
        Expr never = choice(new Given(X), text("x. "), text(""));
        assertThat(WITHOUT_X.simplify(new Expr.Join(List.of(never, said, never))))
                .isEqualTo(said);
        assertThat(WITHOUT_X.simplify(new Expr.Join(List.of(never, never)))).isEqualTo(text(""));
        assertThat(WITHOUT_WORD.simplify(new Expr.Join(List.of(value(WORD), text("!")))))
                .isEqualTo(text("!"));
    }

    @Test
    void columnLeftOutOfAnotherTableIsNeverRead() {
        assertThat(WITHOUT_X.never(new Expr.Total("t", Z, KEY, KEY, true))).isTrue();
        assertThat(WITHOUT_X.never(new Expr.Total("t", Y, KEY, KEY, true))).isFalse();
        assertThat(WITHOUT_X.never(new Expr.From("t", Z, Y))).isTrue();
        assertThat(WITHOUT_X.never(new Expr.From("t", Y, X))).isTrue();
        assertThat(WITHOUT_X.never(new Expr.From("t", Y, KEY))).isFalse();
        assertThat(WITHOUT_X.simplify(new Expr.Count("t", Z, KEY, KEY, false))).isEqualTo(number(0));
        assertThat(WITHOUT_X.simplify(new Expr.Count("t", Z, KEY, KEY, true)))
                .as("all rows are without it")
                .isEqualTo(new Expr.Count("t", KEY, KEY, KEY, false));
    }

    @Test
    void wordThatAStepNeverGivesIsNotAskedFor() {
        Expr step = choice(new Given(Y), text("typed"), text("typical"));
        assertThat(Simplifier.words(step)).contains(Set.of("typed", "typical"));
        assertThat(Simplifier.words(value(WORD))).isEmpty();
        assertThat(Simplifier.words(choice(new Given(Y), text("typed"), value(WORD))))
                .isEmpty();
        Simplifier knowing = new Simplifier(Set.of(), Map.of(WORD, Set.of("typed", "typical")), (t, s) -> false);
        assertThat(knowing.simplify(choice(Condition.is(WORD, "by time"), value(X), value(Y))))
                .isEqualTo(value(Y));
        Expr open = choice(Condition.is(WORD, "TYPED"), value(X), value(Y));
        assertThat(knowing.simplify(open)).as("case does not matter").isEqualTo(open);
    }

    @Test
    void whatABranchHasSettledIsNotAskedAgain() {
        Simplifier plain = without();
        Condition mower = Condition.is(WORD, "mower");
        Condition rake = Condition.is(WORD, "rake");
        assertThat(plain.simplify(choice(mower, choice(mower, value(X), value(Y)), value(Z))))
                .isEqualTo(choice(mower, value(X), value(Z)));
        assertThat(plain.simplify(choice(mower, choice(rake, value(X), value(Y)), value(Z))))
                .isEqualTo(choice(mower, value(Y), value(Z)));
        assertThat(plain.simplify(choice(mower, value(Z), choice(mower, value(X), value(Y)))))
                .isEqualTo(choice(mower, value(Z), value(Y)));
        Condition both = Condition.all(List.of(mower, new Given(X)));
        assertThat(plain.simplify(choice(both, choice(new Blank(X), value(Y), value(X)), value(Z))))
                .isEqualTo(choice(both, value(X), value(Z)));
        Expr other = choice(both, value(X), choice(mower, value(Y), value(Z)));
        assertThat(plain.simplify(other)).as("one of both failed, not which").isEqualTo(other);
        Condition small = below(X, 5);
        assertThat(plain.simplify(choice(small, choice(small, value(Y), value(Z)), value(Z))))
                .isEqualTo(choice(small, value(Y), value(Z)));
    }

    static List<NodeCases.NodeCase> cases() {
        return NodeCases.all();
    }

    /** Each case with each of its columns blanked in turn: worked out as it stands, and simplified. */
    @ParameterizedTest
    @MethodSource("cases")
    void valuesStay(NodeCases.NodeCase node) {
        for (Symbol absent : Inputs.of(node.expr())) {
            Blanked rows = new Blanked(node.grid(), absent);
            Simplifier simplifier = new Simplifier(Set.of(absent), Map.of(), (table, symbol) -> false);
            Expr simple = simplifier.simplify(node.expr());
            List<Object> full = worked(node, node.expr(), rows);
            assertThat(worked(node, simple, rows))
                    .as("%s without %s", node, absent)
                    .isEqualTo(full);
            if (simplifier.never(simple)) {
                assertThat(full).as("%s without %s", node, absent).containsOnly(NodeCases.NOTHING);
            }
        }
    }

    private record Blanked(SmallGrid grid, Symbol absent) implements RowValues {
        @Override
        public Values of(Symbol symbol) {
            Values values = grid.of(symbol);
            if (symbol.equals(absent)) {
                for (int row = 0; row < values.rows(); row++) {
                    if (values.words()) {
                        values.set(row, "");
                    }
                    values.mark(row, Values.State.BLANK);
                }
            }
            return values;
        }

        @Override
        public Values of(String table, Symbol symbol) {
            return grid.of(table, symbol);
        }

        @Override
        public double constant(Constant constant) {
            return grid.constant(constant);
        }
    }

    private static List<Object> worked(NodeCases.NodeCase node, Expr expr, RowValues rows) {
        List<Object> answers = new ArrayList<>();
        boolean words = node.answers().stream().anyMatch(answer -> answer instanceof String word && !word.isEmpty());
        double[] number = new double[1];
        for (int row = 0; row < node.grid().rows(); row++) {
            if (words) {
                answers.add(Evaluator.words(expr, rows).at(row));
            } else {
                answers.add(Evaluator.number(expr, rows).at(row, number) ? (Object) number[0] : NodeCases.NOTHING);
            }
        }
        return answers;
    }
}
