package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.least;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.text;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.HIGHEST_PRESSURE;
import static org.rickyard.trade.Quantities.LOWEST_PRESSURE;
import static org.rickyard.trade.Quantities.NOZZLE_SIZE;
import static org.rickyard.trade.spraying.NozzlePressure.WANTED_PRESSURE;
import static org.rickyard.trade.spraying.SprayQuality.LABEL_PLACE;
import static org.rickyard.trade.spraying.SprayQuality.NOZZLE_PLACE;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Blank;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;

/**
 * Every ISO size held against the flow that is wanted. The rule: of the sizes inside the pressure window (of all, where
 * none is typed; of half a window, on the right side of its limit) first those known to give the label's spray quality, then those whose quality is not known, then the
 * rest; last those outside the window, where a maker's class does not hold. Within each, the nearer to the middle of the
 * window the better; of two alike the bigger, which is the coarser.
 */
public final class NozzleChoice {
    private NozzleChoice() {}

    /** Id of the table. */
    public static final String ID = "nozzle-choice";

    /** Ten times the size code, a whole number. */
    public static final Symbol TENTHS =
            Symbol.number("ten times the size", Units.ONE).decimals(0);
    /** Place of the size in the standard's row. */
    public static final Symbol PLACE =
            Symbol.number("place of the size", Units.ONE).decimals(0);
    /** Counts rows. */
    public static final Symbol UNITY = Symbol.number("one", Units.ONE).decimals(0);
    /** The size as it is written on the nozzle. */
    public static final Symbol SIZE_TEXT = Symbol.text("size");
    /** The standard's colour of that size. */
    public static final Symbol COLOUR = Symbol.text("colour of the size");
    /** The fitted size. */
    public static final Symbol FITTED = Symbol.number("size fitted", Units.ONE)
            .possible(NOZZLE_SIZE.possible())
            .decimals(1);
    /** In or out of the window. */
    public static final Symbol WINDOW = Symbol.text("pressure window");
    /** What is known of the quality. */
    public static final Symbol QUALITY = Symbol.text("spray quality known");
    /** The pressure aimed at. */
    public static final Symbol PREFERRED = Symbol.number("pressure preferred", Units.BAR)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** 0 best, 3 worst. */
    public static final Symbol GROUP =
            Symbol.number("group", Units.ONE).possible(Range.NOT_NEGATIVE).decimals(0);
    /** The order. */
    public static final Symbol SCORE =
            Symbol.number("order", Units.ONE).possible(Range.NOT_NEGATIVE).decimals(0);
    /** How many sizes do better. */
    public static final Symbol BETTER = Symbol.number("sizes before it", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Rank. */
    public static final Symbol RANK =
            Symbol.number("rank", Units.ONE).possible(Range.POSITIVE).decimals(0);

    private static final String IN = "in the window";
    private static final String NO_WINDOW = "no window typed";
    private static final String HALF_WINDOW = "inside the one limit typed";
    private static final String BELOW = "below the window";
    private static final String ABOVE = "above the window";
    private static final String UNCHECKED = "fits the flow only, quality not checked";
    private static final String GOOD = "the label's quality";
    private static final String BAD = "not the label's quality";
    private static final String OUTSIDE = "outside the window: no class holds";
    private static final Source CHAMBER = Source.published("LWK (chamber of agriculture), Richtige Duesenwahl");
    private static final Source RULE = Source.derived(
            "rule of this engine, for the adviser to confirm: window and label's quality, then pressure");

    /** The standard's colour, as a word. */
    public static final Formula SIZE_COLOUR = new Formula(
            "nozzle-colour",
            COLOUR,
            new Expr.Lookup(NozzlePressure.COLOURS, value(NOZZLE_SIZE), Expr.Lookup.Mode.EXACT),
            NozzlePressure.COLOURS.source(),
            "not the colour of a droplet class; some makers differ",
            List.of(
                    colour(SpraySources.GRAINEWS, 2, "yellow"),
                    colour(SpraySources.GRAINEWS, 6, "grey"),
                    colour(CHAMBER, 2.5, "lilac"),
                    colour(CHAMBER, 3, "blue"),
                    colour(CHAMBER, 4, "red"),
                    colour(CHAMBER, 5, "brown")));

    private static WorkedExample colour(Source source, double size, String answer) {
        return WorkedExample.from(source).with(NOZZLE_SIZE, size).gives(answer);
    }

    /** {@code pressure-window}: in, below or above. */
    public static final Formula PRESSURE_WINDOW = new Formula(
            "pressure-window",
            WINDOW,
            choice(
                    new Blank(LOWEST_PRESSURE),
                    choice(new Blank(HIGHEST_PRESSURE), text(NO_WINDOW), upTo(HALF_WINDOW)),
                    choice(
                            Condition.compare(cut(WANTED_PRESSURE), Relation.LESS, cut(LOWEST_PRESSURE)),
                            text(BELOW),
                            choice(new Blank(HIGHEST_PRESSURE), text(HALF_WINDOW), upTo(IN)))),
            RULE,
            "the window typed for the fitted nozzle stands for its whole series; of half a window, the half",
            List.of(
                    window(8.333, ABOVE),
                    window(4.6875, ABOVE),
                    window(3, IN),
                    window(2.0833, IN),
                    half(LOWEST_PRESSURE, 1.5, 1.2, BELOW),
                    half(LOWEST_PRESSURE, 1.5, 8.333, HALF_WINDOW),
                    half(HIGHEST_PRESSURE, 4, 8.333, ABOVE),
                    half(HIGHEST_PRESSURE, 4, 1.2, HALF_WINDOW)));

    private static Expr upTo(String inside) {
        return choice(
                Condition.compare(cut(WANTED_PRESSURE), Relation.MORE, cut(HIGHEST_PRESSURE)),
                text(ABOVE),
                text(inside));
    }

    private static WorkedExample half(Symbol limit, double typed, double pressure, String answer) {
        return WorkedExample.from(Source.derived("half a window still has its limit"))
                .with(WANTED_PRESSURE, pressure)
                .with(limit, typed)
                .gives(answer);
    }

    /** Not outside what is typed of the window. */
    private static final Condition FITS = Condition.any(
            List.of(Condition.is(WINDOW, IN), Condition.is(WINDOW, HALF_WINDOW), Condition.is(WINDOW, NO_WINDOW)));

    /** Cut to nine decimals, so that a pressure at the edge of the window is in it, binary noise or not. */
    private static Expr cut(Symbol symbol) {
        return call(Function.ROUND, value(symbol), number(9));
    }

    private static WorkedExample window(double pressure, String answer) {
        return WorkedExample.from(Source.derived("2.00 L/min, window 1.5 to 4 bar: 05 and 06 pass, 03 and 04 fail"))
                .with(WANTED_PRESSURE, pressure)
                .with(LOWEST_PRESSURE, 1.5)
                .with(HIGHEST_PRESSURE, 4)
                .gives(answer);
    }

    /** What is known of the spray quality; only the fitted nozzle's is ever known. */
    public static final Formula QUALITY_KNOWN = new Formula(
            "spray-quality-known",
            QUALITY,
            choice(
                    FITS,
                    choice(
                            Condition.any(List.of(new Blank(LABEL_PLACE), new Blank(NOZZLE_PLACE), new Blank(FITTED))),
                            text(UNCHECKED),
                            choice(
                                    Condition.compare(value(NOZZLE_SIZE), Relation.NOT_EQUAL, value(FITTED)),
                                    text(UNCHECKED),
                                    choice(
                                            Condition.compare(value(NOZZLE_PLACE), Relation.EQUAL, value(LABEL_PLACE)),
                                            text(GOOD),
                                            text(BAD)))),
                    choice(
                            Condition.any(List.of(Condition.is(WINDOW, BELOW), Condition.is(WINDOW, ABOVE))),
                            text(OUTSIDE),
                            text(""))),
            RULE,
            "spray quality is never worked out from size: ask the maker for the class at this pressure",
            List.of(
                    quality(4, 4, 3, 3, GOOD),
                    outside(BELOW),
                    outside(ABOVE),
                    quality(4, 4, 3, 2, BAD),
                    quality(5, 4, 3, 3, UNCHECKED),
                    quality(4, 4, Double.NaN, 3, UNCHECKED),
                    quality(4, 4, 3, Double.NaN, UNCHECKED),
                    quality(4, Double.NaN, 3, 3, UNCHECKED)));

    /** The fitted size with the maker's class, at a pressure for which the maker gives none. */
    private static WorkedExample outside(String window) {
        return WorkedExample.from(Source.derived("the rule, case by case"))
                .with(WINDOW, window)
                .with(NOZZLE_SIZE, 4)
                .with(FITTED, 4)
                .with(LABEL_PLACE, 3)
                .with(NOZZLE_PLACE, 3)
                .gives(OUTSIDE);
    }

    /** NaN stands for what was not typed. */
    private static WorkedExample quality(double size, double fitted, double label, double nozzle, String answer) {
        WorkedExample.Draft draft =
                WorkedExample.from(Source.derived("the rule, case by case")).with(WINDOW, IN);
        Symbol[] symbols = {NOZZLE_SIZE, FITTED, LABEL_PLACE, NOZZLE_PLACE};
        double[] numbers = {size, fitted, label, nozzle};
        for (int i = 0; i < symbols.length; i++) {
            if (!Double.isNaN(numbers[i])) {
                draft.with(symbols[i], numbers[i]);
            }
        }
        return draft.gives(answer);
    }

    /** The middle of the window, or the pressure sizes are named at. */
    public static final Formula PREFERRED_PRESSURE = new Formula(
            "preferred-pressure",
            PREFERRED,
            choice(
                    Condition.any(List.of(new Blank(LOWEST_PRESSURE), new Blank(HIGHEST_PRESSURE))),
                    constant(NozzlePressure.REFERENCE_PRESSURE),
                    value(LOWEST_PRESSURE).plus(HIGHEST_PRESSURE).over(number(2))),
            RULE,
            "judgement",
            List.of(
                    WorkedExample.from(Source.derived("half-way between 1.5 and 4 bar"))
                            .with(LOWEST_PRESSURE, 1.5)
                            .with(HIGHEST_PRESSURE, 4)
                            .gives(2.75, Units.BAR, 6),
                    WorkedExample.from(Source.derived("no window typed: 3 bar, at which sizes are named"))
                            .gives(3, Units.BAR, 6),
                    WorkedExample.from(Source.derived("half a window has no middle"))
                            .with(LOWEST_PRESSURE, 1.5)
                            .gives(3, Units.BAR, 6),
                    WorkedExample.from(Source.derived("half a window has no middle"))
                            .with(HIGHEST_PRESSURE, 4)
                            .gives(3, Units.BAR, 6)));

    /** 0: the label's quality; 1: quality not known; 2: another quality; 3: outside the window, where no class holds. */
    public static final Formula CHOICE_GROUP = new Formula(
            "nozzle-group",
            GROUP,
            choice(
                    FITS,
                    choice(
                            Condition.is(QUALITY, GOOD),
                            number(0),
                            choice(
                                    Condition.is(QUALITY, BAD),
                                    number(2),
                                    number(1)
                                            .onlyWhen(
                                                    Condition.is(QUALITY, UNCHECKED),
                                                    "the spray quality cannot be compared"))),
                    number(3)
                            .onlyWhen(
                                    Condition.any(List.of(Condition.is(WINDOW, BELOW), Condition.is(WINDOW, ABOVE))),
                                    "the pressure window cannot be compared")),
            RULE,
            "0 is best",
            List.of(
                    group(IN, GOOD, 0),
                    group(IN, UNCHECKED, 1),
                    group(IN, BAD, 2),
                    group(HALF_WINDOW, GOOD, 0),
                    group(HALF_WINDOW, UNCHECKED, 1),
                    group(NO_WINDOW, GOOD, 0),
                    group(NO_WINDOW, UNCHECKED, 1),
                    group(NO_WINDOW, BAD, 2),
                    group(BELOW, OUTSIDE, 3),
                    group(ABOVE, OUTSIDE, 3)));

    private static WorkedExample group(String window, String quality, double answer) {
        return WorkedExample.from(Source.derived("the rule, case by case"))
                .with(WINDOW, window)
                .with(QUALITY, quality)
                .gives(answer, Units.ONE, 0);
    }

    /** One whole number by which the sizes are put in order: group, then pressure, then the bigger size. */
    public static final Formula ORDER = new Formula(
            "nozzle-order",
            SCORE,
            value(GROUP)
                    .times(number(1e6))
                    .plus(call(
                                    Function.ROUND,
                                    // Cut to nine decimals first, so that half a hundredth goes one way, noise or not.
                                    call(Function.ROUND, least(hundredthsOff(), number(9000)), number(9)),
                                    number(0))
                            .times(number(100)))
                    .plus(number(99).minus(PLACE)),
            RULE,
            "whole, so that the grid compares it exactly; pressures alike to a hundredth of a bar count as alike",
            List.of(
                    // Hundredths of a bar off, times 100, and 99 less the place: a bigger size comes first of two
                    // alike.
                    order(1, 3.0, 8, 1_002_591),
                    order(1, 2.5, 8, 1_002_591),
                    order(1, 2.5, 9, 1_002_590),
                    order(0, 3.0, 8, 2_591),
                    // Off by more than 90 bar still stays within its group.
                    order(3, 20_000, 1, 3_900_098)));

    private static Expr hundredthsOff() {
        return new Expr.NumberOf(call(Function.ABS, value(WANTED_PRESSURE).minus(PREFERRED)), Units.BAR)
                .times(number(100));
    }

    private static WorkedExample order(double group, double pressure, double place, double answer) {
        return WorkedExample.from(Source.derived("group, then nearness to 2.75 bar, then the bigger size"))
                .with(GROUP, group)
                .with(WANTED_PRESSURE, pressure)
                .with(PREFERRED, 2.75)
                .with(PLACE, place)
                .gives(answer, Units.ONE, 0);
    }

    /** Sizes that come before. */
    public static final Expr SIZES_BEFORE = new Expr.Before(ID, UNITY, Keys.NOZZLE_KEY, SCORE);

    /** {@code nozzle-rank}. */
    public static final Formula NOZZLE_RANK = new Formula(
            "nozzle-rank",
            RANK,
            value(BETTER).plus(number(1)),
            RULE,
            "window and label's quality first, then nearness to the middle of the window, then the bigger size",
            List.of(WorkedExample.from(Source.derived("two sizes do better, so it is the third"))
                    .with(BETTER, 2)
                    .gives(3, Units.ONE, 0)));
}
