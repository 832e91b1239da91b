package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.text;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.DAYS_THERE_ARE;
import static org.rickyard.trade.Quantities.EARLIEST;
import static org.rickyard.trade.Quantities.HOURS_PER_DAY;
import static org.rickyard.trade.Quantities.LAST_TESTED;
import static org.rickyard.trade.Quantities.LATEST;
import static org.rickyard.trade.Quantities.WORKABLE_DAYS;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
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
 * Hours wanted against the spray hours of the window. Hours a day and the share of fit days are the client's: no
 * figure for them is built in, because they differ too much from place to place.
 */
public final class SprayHours {
    private SprayHours() {}

    /** Hours the block takes. */
    public static final Symbol NEEDED = Symbol.number("spray hours needed", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Days of the window, both ends counted. */
    public static final Symbol WINDOW_DAYS =
            Symbol.number("whole days in the window", Units.D).decimals(0);
    /** Hours there are. */
    public static final Symbol AVAILABLE = Symbol.number("spray hours available", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Days the block takes. */
    public static final Symbol DAYS_NEEDED =
            Symbol.number("days needed", Units.D).possible(Range.POSITIVE).decimals(0);
    /** Whether it fits. */
    public static final Symbol FIT = Symbol.text("window");

    /** Days from the last sprayer test to the job. */
    public static final Symbol SINCE_TEST =
            Symbol.number("days since the sprayer's test", Units.D).decimals(0);

    private static final Source PLAN = Source.derived("days × workable share × hours a day against hours wanted");

    /** {@code spray-hours-needed}. */
    public static final Formula HOURS_NEEDED = new Formula(
            "spray-hours-needed",
            NEEDED,
            new Expr.Total(SprayWork.FIELDS, SprayWork.HOURS, Keys.BLOCK_KEY, Keys.BLOCK_KEY, true),
            Source.derived("sum of the spraying hours of the block's fields"),
            "best case where parts are not typed",
            List.of());

    /** Days from earliest to latest, both counted. */
    public static final Formula DAYS_IN_WINDOW = new Formula(
            "window-days",
            WINDOW_DAYS,
            new Expr.AsUnit(value(LATEST).minus(EARLIEST).plus(number(1)), Units.D)
                    .onlyWhen(
                            Condition.compare(value(LATEST), Relation.AT_LEAST, value(EARLIEST)),
                            "the latest day is before the earliest"),
            PLAN,
            "calendar days",
            List.of(WorkedExample.from(Source.derived("14 to 27 April 2025, both counted: 14 days"))
                    .with(EARLIEST, 45761)
                    .with(LATEST, 45774)
                    .gives(14, Units.D, 0)));

    /** {@code spray-hours-available}: days that are counted, or else days × workable share, × hours per day. */
    public static final Formula HOURS_AVAILABLE = new Formula(
            "spray-hours-available",
            AVAILABLE,
            choice(
                    new Condition.Blank(DAYS_THERE_ARE),
                    new Expr.NumberOf(value(WINDOW_DAYS), Units.D)
                            .times(WORKABLE_DAYS)
                            .times(HOURS_PER_DAY),
                    new Expr.NumberOf(value(DAYS_THERE_ARE), Units.D).times(HOURS_PER_DAY)),
            PLAN,
            "an average; a wet or windy spell may leave none. In one Danish May 53 h a week met the criteria but only"
                    + " 11 h in spells of 4 h or more (Nordic Sugar Agricenter, farm press)",
            List.of(
                    WorkedExample.from(Source.derived("14 days, half of them fit, 6 h each"))
                            .with(WINDOW_DAYS, 14)
                            .with(WORKABLE_DAYS, 50)
                            .with(HOURS_PER_DAY, 6)
                            .gives(42, Units.H, 6),
                    WorkedExample.from(Source.commonPractice("days that are counted stand"))
                            .with(DAYS_THERE_ARE, 2.5)
                            .with(WINDOW_DAYS, 14)
                            .with(WORKABLE_DAYS, 50)
                            .with(HOURS_PER_DAY, 6)
                            .gives(15, Units.H, 6)));

    /** {@code spray-days-needed}: hours wanted ÷ hours per day, rounded up. */
    public static final Formula SPRAY_DAYS = new Formula(
            "spray-days-needed",
            DAYS_NEEDED,
            new Expr.AsUnit(call(Function.ROUND_UP, value(NEEDED).over(HOURS_PER_DAY)), Units.D),
            PLAN,
            "fit days",
            List.of(WorkedExample.from(Source.derived("13 h at 6 h a day"))
                    .with(NEEDED, 13)
                    .with(HOURS_PER_DAY, 6)
                    .gives(3, Units.D, 0)));

    /** {@code window-fit}: whether the hours there are would do. */
    public static final Formula WINDOW_FIT = new Formula(
            "window-fit",
            FIT,
            choice(
                    Condition.compare(
                            call(Function.ROUND, value(NEEDED), number(9)),
                            Relation.AT_MOST,
                            call(Function.ROUND, value(AVAILABLE), number(9))),
                    text("the hours would do"),
                    text("does not fit")),
            PLAN,
            "for this block alone: other blocks of the same sprayer want their hours too",
            List.of(
                    fit(41, 42, "the hours would do"),
                    fit(42, 42, "the hours would do"),
                    // Thrice 14 h by thirds: a hair over 42, which is noise.
                    fit(42.0000000000001, 42, "the hours would do"),
                    fit(43, 42, "does not fit")));

    private static WorkedExample fit(double needed, double available, String answer) {
        return WorkedExample.from(Source.derived("hours wanted against hours there are"))
                .with(NEEDED, needed)
                .with(AVAILABLE, available)
                .gives(answer);
    }

    /** How long a test of a sprayer counts. */
    public static final Constant TEST_HOLDS = new Constant(
            "a sprayer's test counts for",
            1096,
            Units.D,
            Source.published("Netherlands, Verordening PT 2009, art. 2-3, and PA 2012: certificate valid 3 years, a new"
                    + " sprayer free for as long. Other countries differ: ask, and set yours on Assumptions"));

    /** {@code days-since-test}: to the latest day of the job, or the earliest where no latest is typed. */
    public static final Formula DAYS_SINCE_TEST = new Formula(
            "days-since-test",
            SINCE_TEST,
            choice(
                    new Condition.Blank(LATEST),
                    new Expr.AsUnit(value(EARLIEST).minus(LAST_TESTED), Units.D),
                    new Expr.AsUnit(value(LATEST).minus(LAST_TESTED), Units.D)),
            Source.derived("days between the days typed"),
            "the careful count: to the latest day typed, else the earliest",
            List.of(
                    WorkedExample.from(Source.derived("12 March 2022 to 12 March 2025, with one leap day: 1,096 days"))
                            .with(LAST_TESTED, 44632)
                            .with(EARLIEST, 45000)
                            .with(LATEST, 45728)
                            .gives(1096, Units.D, 0),
                    WorkedExample.from(Source.derived("12 March to 12 April 2025: 31 days"))
                            .with(LAST_TESTED, 45728)
                            .with(EARLIEST, 45759)
                            .gives(31, Units.D, 0)));
}
