package org.rickyard.trade.season;

import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Keys.MACHINE_KEY;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** What each machine and tractor is booked for over its season: hours, area, days, and the share of its days. */
public final class MachineSeason {
    private MachineSeason() {}

    /** The table of bookings: a job's machines and tractors, each for itself. */
    public static final String BOOKINGS = "bookings";

    /** First day any of its jobs may be done. */
    public static final Symbol FIRST = Symbol.date("first day of its season");
    /** Last day any of its jobs may be done. */
    public static final Symbol LAST = Symbol.date("last day of its season");
    /** Jobs that want it on the same days. */
    public static final Symbol ALSO_WANTED = Symbol.text("double booking");
    /** Days of its season. */
    public static final Symbol DAYS = Symbol.number("days of its season", Units.D)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Of several alike, the share that a job takes. */
    public static final Symbol SHARE_TAKEN = Symbol.number("share of those alike", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Hours of each of those alike. */
    public static final Symbol EACH_HOURS =
            Symbol.number("hours of each", Units.H).possible(Range.POSITIVE).decimals(1);
    /** Calendar days of each of those alike. */
    public static final Symbol EACH_DAYS =
            Symbol.number("days of each", Units.D).possible(Range.POSITIVE).decimals(1);
    /** Hours of work. */
    public static final Symbol HOURS =
            Symbol.number("hours booked", Units.H).possible(Range.POSITIVE).decimals(1);
    /** Hectares of work. */
    public static final Symbol AREA =
            Symbol.number("area booked", Units.HA).possible(Range.POSITIVE).decimals(1);
    /** Calendar days of work. */
    public static final Symbol BOOKED =
            Symbol.number("days booked", Units.D).possible(Range.POSITIVE).decimals(1);
    /** Days booked over days of its season. */
    public static final Symbol SHARE = Symbol.number("share of its season", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Bookings whose days are not known. */
    public static final Symbol LEFT_OUT =
            Symbol.number("bookings left out", Units.ONE).decimals(0);

    private static final Source SUM = Source.derived("sum of the bookings given; those left out are counted beside it");
    private static final Source ARITHMETIC = Source.derived("10 May to 19 May are 10 days; 4 booked are 40 %");

    private static Formula total(String id, Symbol result, Symbol summed, String validity) {
        return new Formula(
                id,
                result,
                new Expr.Total(BOOKINGS, summed, MACHINE_KEY, MACHINE_KEY, false),
                SUM,
                validity,
                List.of());
    }

    private static final Source SHARED_OUT = Source.derived(
            "a job that takes one of three tractors for 6 h, the jobs shared out evenly, is 2 h of each");

    /** {@code hours-of-each-alike}: hours of the job × share of those alike. */
    public static final Formula HOURS_OF_EACH = new Formula(
            "hours-of-each-alike",
            EACH_HOURS,
            value(SeasonFit.HOURS).times(SHARE_TAKEN),
            SHARED_OUT,
            "of several alike, as if the jobs were shared out evenly",
            List.of(WorkedExample.from(SHARED_OUT)
                    .with(SeasonFit.HOURS, 6)
                    .with(SHARE_TAKEN, 100 / 3.0)
                    .gives(2, Units.H, 6)));

    /** {@code days-of-each-alike}: days it takes × share of those alike. */
    public static final Formula DAYS_OF_EACH = new Formula(
            "days-of-each-alike",
            EACH_DAYS,
            value(SeasonFit.CALENDAR).times(SHARE_TAKEN),
            SHARED_OUT,
            "of several alike, as if the jobs were shared out evenly",
            List.of(WorkedExample.from(SHARED_OUT)
                    .with(SeasonFit.CALENDAR, 6)
                    .with(SHARE_TAKEN, 100 / 3.0)
                    .gives(2, Units.D, 6)));

    /** {@code machine-season-days}. */
    public static final Formula DAYS_OF_SEASON = new Formula(
            "machine-season-days",
            DAYS,
            new Expr.AsUnit(value(LAST).minus(FIRST).plus(number(1)), Units.D)
                    .onlyWhen(
                            Condition.compare(value(LAST), Condition.Relation.AT_LEAST, value(FIRST)),
                            "the window of its job ends before it starts: latest day is before earliest day"),
            ARITHMETIC,
            "both days counted, fit or not",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(FIRST, 46152)
                    .with(LAST, 46161)
                    .gives(10, Units.D, 0)));
    /** {@code machine-season-hours}. */
    public static final Formula HOURS_BOOKED =
            total("machine-season-hours", HOURS, EACH_HOURS, "field hours of each of those alike");
    /** {@code machine-season-area}. */
    public static final Formula AREA_BOOKED = total(
            "machine-season-area",
            AREA,
            SeasonFit.AREA,
            "each pass counted, of all those alike together; a tractor counts what its machines do");
    /** {@code machine-season-booked}. */
    public static final Formula DAYS_BOOKED =
            total("machine-season-booked", BOOKED, EACH_DAYS, "with the days unfit for the work");

    /** {@code machine-season-share}. */
    public static final Formula SHARE_BOOKED = new Formula(
            "machine-season-share",
            SHARE,
            value(BOOKED).over(DAYS),
            ARITHMETIC,
            "over 100 % it is wanted for more days than there are; near 100 % nothing may go wrong",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(BOOKED, 4)
                    .with(DAYS, 10)
                    .gives(40, Units.PERCENT, 6)));

    /** Bookings without days. */
    public static final Expr BOOKINGS_LEFT_OUT =
            new Expr.Count(BOOKINGS, SeasonFit.CALENDAR, MACHINE_KEY, MACHINE_KEY, true);

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(
                HOURS_OF_EACH, DAYS_OF_EACH, DAYS_OF_SEASON, HOURS_BOOKED, AREA_BOOKED, DAYS_BOOKED, SHARE_BOOKED);
    }
}
