package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.greatest;
import static org.rickyard.formula.Expr.least;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/**
 * Where an expression is taken for surely above zero a cell formula divides by it unasked: one that was taken so wrongly
 * would be an error in the grid.
 */
class SignsTest {
    private static final Symbol ABOVE = Symbol.number("above", Units.ONE).possible(Range.POSITIVE);
    private static final Symbol FROM_ONE = Symbol.number("from one", Units.ONE).possible(Range.of(1, 9));
    private static final Symbol FROM_ZERO =
            Symbol.number("from zero", Units.ONE).possible(Range.NOT_NEGATIVE);
    private static final Symbol ANY = Symbol.number("any", Units.ONE);
    private static final Symbol LENGTH = Symbol.number("length", Units.M).possible(Range.POSITIVE);
    private static final Symbol DEPTH = Symbol.number("depth", Units.M).possible(Range.NOT_NEGATIVE);
    private static final Symbol HEIGHT = Symbol.number("height", Units.M);
    private static final Source SOURCE = Source.derived("test");
    private static final Constant NONE = new Constant("none", 0, Units.ONE, SOURCE);
    private static final Constant SOME = new Constant("some", 2, Units.ONE, SOURCE);
    private static final Constant DIVISOR = SOME.aboveZero();
    private static final Constant BELOW = new Constant("below", -2, Units.ONE, SOURCE);

    private static void positive(Expr... exprs) {
        for (Expr expr : exprs) {
            assertThat(Signs.positive(expr)).as(WordsPrinter.words(expr)).isTrue();
            assertThat(Signs.notNegative(expr)).as(WordsPrinter.words(expr)).isTrue();
        }
    }

    private static void notNegative(Expr... exprs) {
        for (Expr expr : exprs) {
            assertThat(Signs.positive(expr)).as(WordsPrinter.words(expr)).isFalse();
            assertThat(Signs.notNegative(expr)).as(WordsPrinter.words(expr)).isTrue();
        }
    }

    private static void unknown(Expr... exprs) {
        for (Expr expr : exprs) {
            assertThat(Signs.notNegative(expr)).as(WordsPrinter.words(expr)).isFalse();
        }
    }

    @Test
    void numbersConstantsAndQuantitiesAreAsTheyMayBe() {
        positive(number(1), constant(DIVISOR), value(ABOVE), value(FROM_ONE));
        notNegative(number(0), constant(NONE), constant(SOME), value(FROM_ZERO));
        unknown(number(-1), constant(BELOW), value(ANY));
    }

    @Test
    void arithmeticIsAsItsParts() {
        positive(
                value(ABOVE).plus(FROM_ZERO),
                value(FROM_ZERO).plus(ABOVE),
                value(ABOVE).times(FROM_ONE),
                value(ABOVE).over(FROM_ONE),
                value(ABOVE).power(-3),
                value(LENGTH).in(Units.KM),
                new Expr.NumberOf(value(LENGTH), Units.KM),
                new Expr.AsUnit(value(ABOVE), Units.M));
        notNegative(
                value(FROM_ZERO).plus(FROM_ZERO),
                value(FROM_ZERO).times(ABOVE),
                value(ABOVE).times(FROM_ZERO),
                value(FROM_ZERO).over(ABOVE),
                value(ANY).power(2),
                value(FROM_ZERO).power(3),
                value(DEPTH).in(Units.KM));
        unknown(
                value(ABOVE).minus(FROM_ONE),
                value(ABOVE).plus(ANY),
                value(ANY).plus(ABOVE),
                value(ANY).times(ABOVE),
                value(ABOVE).times(ANY),
                value(ABOVE).over(FROM_ZERO),
                value(ANY).over(ABOVE),
                value(ANY).power(3),
                value(HEIGHT).in(Units.KM),
                new Expr.NumberOf(value(HEIGHT), Units.KM),
                new Expr.AsUnit(value(FROM_ZERO), Units.M),
                new Expr.Negate(value(ABOVE)),
                Expr.choice(new Condition.Given(ANY), value(ABOVE), value(ABOVE)));
    }

    @Test
    void functionsAreAsTheirArguments() {
        positive(
                call(Function.EXP, value(ANY)),
                call(Function.SQRT, value(ABOVE)),
                call(Function.ABS, value(ABOVE)),
                least(value(ABOVE), value(FROM_ONE)),
                greatest(value(ANY), value(ABOVE)),
                new Expr.LeastGiven(List.of(ABOVE, FROM_ONE)));
        notNegative(
                call(Function.ABS, value(ANY)),
                call(Function.SQRT, value(FROM_ZERO)),
                call(Function.ROUND_DOWN, value(ABOVE)),
                call(Function.ROUND_UP, value(FROM_ZERO)),
                call(Function.ROUND, value(ABOVE), number(2)),
                least(value(ABOVE), value(FROM_ZERO)));
        unknown(
                call(Function.LN, value(ABOVE)),
                call(Function.ATAN, value(ANY)),
                least(value(ABOVE), value(ANY)),
                new Expr.LeastGiven(List.of(ABOVE, ANY)));
    }

    /** Whatever is put together from such parts and whatever stands in the row. */
    @Test
    void whatIsTakenForAboveZeroIsSo() {
        Random random = new Random(20261126);
        int asserted = 0;
        for (int i = 0; i < 4000; i++) {
            Expr expr = expr(random, 3);
            boolean positive = Signs.positive(expr);
            boolean notNegative = Signs.notNegative(expr);
            SmallGrid row = new SmallGrid()
                    .column(ABOVE, random.nextInt(3) + 0.25)
                    .column(FROM_ONE, 1 + random.nextInt(3))
                    .column(FROM_ZERO, random.nextInt(3))
                    .column(ANY, random.nextInt(5) - 2);
            double[] out = new double[1];
            if ((positive || notNegative) && Evaluator.number(expr, row).at(0, out)) {
                assertThat(out[0]).as(WordsPrinter.words(expr)).isGreaterThanOrEqualTo(0);
                assertThat(positive && out[0] == 0).as(WordsPrinter.words(expr)).isFalse();
                asserted++;
            }
        }
        assertThat(asserted).isGreaterThan(1000);
    }

    private static Expr expr(Random random, int depth) {
        if (depth == 0) {
            return switch (random.nextInt(7)) {
                case 0 -> value(ABOVE);
                case 1 -> value(FROM_ONE);
                case 2 -> value(FROM_ZERO);
                case 3 -> value(ANY);
                case 4 -> constant(random.nextBoolean() ? NONE : BELOW);
                case 5 -> constant(random.nextBoolean() ? SOME : DIVISOR);
                default -> number(random.nextInt(4) - 1);
            };
        }
        Expr a = expr(random, depth - 1);
        Expr b = expr(random, depth - 1);
        return switch (random.nextInt(12)) {
            case 0 -> a.plus(b);
            case 1 -> a.minus(b);
            case 2 -> a.times(b);
            case 3 -> a.over(b);
            case 4 -> a.power(random.nextInt(5) - 2);
            case 5 -> least(a, b);
            case 6 -> greatest(a, b);
            case 7 -> call(Function.ABS, a);
            case 8 -> call(random.nextBoolean() ? Function.ROUND_UP : Function.ROUND_DOWN, a);
            case 9 -> call(Function.SQRT, a);
            case 10 -> call(random.nextBoolean() ? Function.LN : Function.ATAN, a);
            default -> new Expr.Negate(a);
        };
    }
}
