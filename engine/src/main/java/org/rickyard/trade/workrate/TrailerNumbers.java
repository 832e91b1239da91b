package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.workrate.Carting.CYCLE;
import static org.rickyard.trade.workrate.Carting.EXACT;
import static org.rickyard.trade.workrate.Carting.FILLING;
import static org.rickyard.trade.workrate.Carting.FILL_TIME;
import static org.rickyard.trade.workrate.Carting.FORAGERS;
import static org.rickyard.trade.workrate.Carting.LOAD;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/**
 * How many trailers keep the forager going, and how the gang fares with one fewer and one more. Trailers of other kinds
 * in the same gang are counted in: what is asked is how many of this kind are needed beside them.
 */
public final class TrailerNumbers {
    private TrailerNumbers() {}

    /** Share of the forager's time that all kinds of trailers serve. */
    public static final Symbol ALL_SERVED = Symbol.number("time served by all trailers", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Time to fill every trailer of the gang once. */
    public static final Symbol ALL_FILLED = Symbol.number("fill time of all trailers", Units.MIN)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** What all trailers carry in an hour. */
    public static final Symbol ALL_CARTED = Symbol.number("carting rate of all trailers", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Share of the forager's time that other kinds serve. */
    public static final Symbol OTHERS_SERVED = Symbol.number("time served by other kinds", Units.PERCENT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Time to fill trailers of other kinds once. */
    public static final Symbol OTHERS_FILLED = Symbol.number("fill time of other kinds", Units.MIN)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** What trailers of other kinds carry. */
    public static final Symbol OTHERS_CARTED = Symbol.number("carting rate of other kinds", Units.T_PER_H)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Whole trailers needed. */
    public static final Symbol NEEDED = Symbol.number("trailers needed", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Share of its time the forager waits for trailers. */
    public static final Symbol IDLE = Symbol.number("forager idle share", Units.PERCENT)
            .possible(Range.of(0, 100))
            .decimals(1);
    /** Time a trailer waits at the forager in each round. */
    public static final Symbol QUEUE = Symbol.number("trailer queue", Units.MIN)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);

    private static final Source HAUL = Carting.HAUL;
    private static final Source ARITHMETIC = Carting.ARITHMETIC;
    private static final Source TWO_FORAGERS =
            Source.derived("two foragers of 40 t/h, each filling every second trailer; else as with one");
    private static final Source OTHERS = Source.derived("all kinds of the gang less this one");

    private static Formula others(String id, Symbol result, Symbol all, Symbol own, double given, double of) {
        return new Formula(
                id,
                result,
                Expr.greatest(
                        new Expr.AsUnit(number(0), result.unit()), value(all).minus(own)),
                OTHERS,
                "nothing where all trailers are alike",
                List.of(
                        WorkedExample.from(OTHERS)
                                .with(all, given)
                                .with(own, of)
                                .gives(given - of, result.unit(), 6),
                        WorkedExample.from(OTHERS).with(all, of).with(own, of).gives(0, result.unit(), 6)));
    }

    /** Time served by other kinds. */
    public static final Formula SERVED_BY_OTHERS =
            others("time-served-by-other-kinds", OTHERS_SERVED, ALL_SERVED, Carting.SERVED, 120, 79);
    /** Fill time of other kinds. */
    public static final Formula FILL_OF_OTHERS =
            others("fill-time-of-other-kinds", OTHERS_FILLED, ALL_FILLED, Carting.FILL_ALL, 36, 12);
    /** Carting rate of other kinds. */
    public static final Formula CARTED_BY_OTHERS =
            others("carting-rate-of-other-kinds", OTHERS_CARTED, ALL_CARTED, Carting.CARTING_RATE, 40, 31);

    /** {@code trailers-needed}: at balance, less what other kinds serve, rounded up. */
    public static final Formula TRAILERS_NEEDED = new Formula(
            "trailers-needed",
            NEEDED,
            Expr.call(
                    Function.ROUND_UP,
                    Expr.greatest(number(0), number(1).minus(OTHERS_SERVED)).times(EXACT)),
            HAUL,
            "the least that never keep the forager waiting on paper; real rounds vary, so look at one more as well",
            List.of(
                    balance(0, 2.525).gives(3, Units.ONE, 0),
                    balance(50, 2.525).gives(2, Units.ONE, 0),
                    balance(130, 2.525).gives(0, Units.ONE, 0),
                    WorkedExample.from(Source.derived("construction textbook: 0.584 ÷ 0.126 h is 4.63; its printed 9"
                                    + " divides unrelated numbers"))
                            .with(OTHERS_SERVED, 0)
                            .with(EXACT, 0.584 / 0.126)
                            .gives(5, Units.ONE, 0)));

    private static WorkedExample.Draft balance(double others, double exact) {
        return WorkedExample.from(ARITHMETIC).with(OTHERS_SERVED, others).with(EXACT, exact);
    }

    /** {@code forager-idle-share}: 1 − time served by all trailers. */
    public static final Formula IDLE_SHARE = new Formula(
            "forager-idle-share",
            IDLE,
            Expr.greatest(number(0), number(1).minus(ALL_SERVED)),
            HAUL,
            "on paper; bunching makes it more",
            List.of(
                    WorkedExample.from(ARITHMETIC)
                            .with(ALL_SERVED, 100 * 2 / 2.525)
                            .gives(20.79, Units.PERCENT, 2),
                    WorkedExample.from(ARITHMETIC)
                            .with(ALL_SERVED, 100 * 3 / 2.525)
                            .gives(0, Units.PERCENT, 2)));

    /** {@code trailer-queue}: fill time of all trailers − cycle time. */
    public static final Formula TRAILER_QUEUE = new Formula(
            "trailer-queue",
            QUEUE,
            Expr.greatest(
                    new Expr.AsUnit(number(0), Units.MIN),
                    value(ALL_FILLED).over(FORAGERS).minus(CYCLE)),
            HAUL,
            "in each round of each trailer, on paper",
            List.of(
                    WorkedExample.from(ARITHMETIC)
                            .with(ALL_FILLED, 36)
                            .with(FORAGERS, 1)
                            .with(CYCLE, 30.3)
                            .gives(5.7, Units.MIN, 6),
                    WorkedExample.from(ARITHMETIC)
                            .with(ALL_FILLED, 24)
                            .with(FORAGERS, 1)
                            .with(CYCLE, 30.3)
                            .gives(0, Units.MIN, 6),
                    WorkedExample.from(TWO_FORAGERS)
                            .with(ALL_FILLED, 72)
                            .with(FORAGERS, 2)
                            .with(CYCLE, 30.3)
                            .gives(5.7, Units.MIN, 6)));

    /** A number of trailers beside the number needed, and how the gang would fare with it. */
    public record Alternative(Formula rate, Formula idle, Formula queue) {}

    /** One fewer than needed, as many, one more. */
    public static final List<Alternative> ALTERNATIVES = List.of(
            alternative("one-fewer", "one fewer", -1),
            alternative("needed", "as needed", 0),
            alternative("one-more", "one more", 1));

    private static Alternative alternative(String id, String words, int more) {
        Expr trailers = more == 0
                ? value(NEEDED)
                : more > 0
                        ? value(NEEDED).plus(number(more))
                        : Expr.greatest(number(0), value(NEEDED).minus(number(-more)));
        return new Alternative(
                rate(id, words, trailers, more), idle(id, words, trailers, more), queue(id, words, trailers, more));
    }

    private static Formula rate(String id, String words, Expr trailers, int more) {
        return new Formula(
                "chop-and-cart-rate-" + id,
                Symbol.number("chopped and carted, " + words, Units.T_PER_H)
                        .possible(Range.NOT_NEGATIVE)
                        .decimals(1),
                Expr.least(
                        value(FILLING).times(FORAGERS),
                        value(OTHERS_CARTED).plus(trailers.times(LOAD).over(CYCLE))),
                HAUL,
                "the lower of what the foragers fill and all trailers carry",
                List.of(
                        needed(3)
                                .with(FILLING, 40)
                                .with(FORAGERS, 1)
                                .with(OTHERS_CARTED, 0)
                                .with(LOAD, 8)
                                .with(CYCLE, 30.3)
                                .gives(Math.min(40, (3 + more) * 8 * 60 / 30.3), Units.T_PER_H, 6),
                        needed(3)
                                .with(FILLING, 90)
                                .with(FORAGERS, 1)
                                .with(OTHERS_CARTED, 10)
                                .with(LOAD, 8)
                                .with(CYCLE, 30.3)
                                .gives(10 + (3 + more) * 8 * 60 / 30.3, Units.T_PER_H, 6),
                        WorkedExample.from(TWO_FORAGERS)
                                .with(NEEDED, 6)
                                .with(FILLING, 40)
                                .with(FORAGERS, 2)
                                .with(OTHERS_CARTED, 0)
                                .with(LOAD, 8)
                                .with(CYCLE, 30.3)
                                .gives(Math.min(80, (6 + more) * 8 * 60 / 30.3), Units.T_PER_H, 6)));
    }

    private static Formula idle(String id, String words, Expr trailers, int more) {
        return new Formula(
                "forager-idle-share-" + id,
                Symbol.number("forager idle, " + words, Units.PERCENT)
                        .possible(Range.of(0, 100))
                        .decimals(1),
                Expr.greatest(number(0), number(1).minus(OTHERS_SERVED).minus(trailers.over(EXACT))),
                HAUL,
                "on paper; bunching makes it more",
                List.of(
                        needed(3)
                                .with(OTHERS_SERVED, 0)
                                .with(EXACT, 2.525)
                                .gives(100 * Math.max(0, 1 - (3 + more) / 2.525), Units.PERCENT, 6),
                        needed(5)
                                .with(OTHERS_SERVED, 10)
                                .with(EXACT, 8.5)
                                .gives(100 * (0.9 - (5 + more) / 8.5), Units.PERCENT, 6)));
    }

    private static Formula queue(String id, String words, Expr trailers, int more) {
        return new Formula(
                "trailer-queue-" + id,
                Symbol.number("trailer queue, " + words, Units.MIN)
                        .possible(Range.NOT_NEGATIVE)
                        .decimals(1),
                Expr.greatest(
                        new Expr.AsUnit(number(0), Units.MIN),
                        value(OTHERS_FILLED)
                                .plus(trailers.times(FILL_TIME))
                                .over(FORAGERS)
                                .minus(CYCLE)),
                HAUL,
                "in each round of each trailer, on paper",
                List.of(
                        needed(3)
                                .with(OTHERS_FILLED, 0)
                                .with(FILL_TIME, 12)
                                .with(FORAGERS, 1)
                                .with(CYCLE, 30.3)
                                .gives(Math.max(0, (3 + more) * 12 - 30.3), Units.MIN, 6),
                        needed(5)
                                .with(OTHERS_FILLED, 6)
                                .with(FILL_TIME, 12)
                                .with(FORAGERS, 1)
                                .with(CYCLE, 30)
                                .gives((5 + more) * 12 + 6 - 30, Units.MIN, 6),
                        WorkedExample.from(TWO_FORAGERS)
                                .with(NEEDED, 6)
                                .with(OTHERS_FILLED, 0)
                                .with(FILL_TIME, 12)
                                .with(FORAGERS, 2)
                                .with(CYCLE, 30.3)
                                .gives(Math.max(0, (6 + more) * 6 - 30.3), Units.MIN, 6)));
    }

    private static WorkedExample.Draft needed(int trailers) {
        return WorkedExample.from(ARITHMETIC).with(NEEDED, trailers);
    }

    /** All formulas in reading order. */
    static List<Formula> formulas() {
        List<Formula> all = new ArrayList<>(List.of(
                SERVED_BY_OTHERS, FILL_OF_OTHERS, CARTED_BY_OTHERS, TRAILERS_NEEDED, IDLE_SHARE, TRAILER_QUEUE));
        for (Alternative alternative : ALTERNATIVES) {
            all.addAll(List.of(alternative.rate(), alternative.idle(), alternative.queue()));
        }
        return List.copyOf(all);
    }
}
