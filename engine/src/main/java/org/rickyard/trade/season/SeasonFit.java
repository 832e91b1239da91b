package org.rickyard.trade.season;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.DAYS_THERE_ARE;
import static org.rickyard.trade.Quantities.EARLIEST;
import static org.rickyard.trade.Quantities.HOURS_PER_DAY;
import static org.rickyard.trade.Quantities.LATEST;
import static org.rickyard.trade.Quantities.NUMBER_OF_MACHINES;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.WORKABLE_DAYS;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;

import java.util.List;
import org.rickyard.formula.Condition;
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

/** Days a job needs against the suitable days its window has, and what would make it fit. */
public final class SeasonFit {
    private SeasonFit() {}

    /** Area of the job. */
    public static final Symbol AREA =
            Symbol.number("area of the job", Units.HA).possible(Range.POSITIVE).decimals(1);
    /** Area of the machine that does it. */
    public static final Symbol MACHINE_AREA = Symbol.number("area of the machine", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Area of the gang that does it. */
    public static final Symbol GANG_AREA =
            Symbol.number("area of the gang", Units.HA).possible(Range.POSITIVE).decimals(1);
    /** First day planned. */
    public static final Symbol START = Symbol.date("planned start");
    /** Last day planned. */
    public static final Symbol FINISH = Symbol.date("planned finish");
    /** The days it took when the plan was made. */
    public static final Symbol PLANNED_WITH = Symbol.number("days it was planned with", Units.D)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** The days that all jobs take which share machines with it, or wait for one another, itself among them. */
    public static final Symbol DAYS_TOGETHER = Symbol.number("days of all planned together", Units.D)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** The days they took when the plan was made. */
    public static final Symbol PLANNED_TOGETHER = Symbol.number("days all were planned with", Units.D)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Days after the latest. */
    public static final Symbol DAYS_LATE =
            Symbol.number("days late", Units.D).possible(Range.NOT_NEGATIVE).decimals(0);
    /** What it waits for. */
    public static final Symbol WAITS_FOR = Symbol.text("waits for");
    /** Why it has no place. */
    public static final Symbol NOT_PLANNED = Symbol.text("not planned because");
    /** Hours of the machine that does it. */
    public static final Symbol MACHINE_HOURS = Symbol.number("machine hours of the job", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Hours of the gang that does it. */
    public static final Symbol GANG_HOURS = Symbol.number("gang hours of the job", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** How many alike share it. */
    public static final Symbol ALIKE = Symbol.number("machines that share it", Units.ONE)
            .possible(Range.of(1, 200))
            .decimals(0);
    /** Hours the job takes. */
    public static final Symbol HOURS =
            Symbol.number("hours of the job", Units.H).possible(Range.POSITIVE).decimals(1);
    /** Calendar days of the window. */
    public static final Symbol WINDOW = Symbol.number("days in the window", Units.D)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Days fit for the work. */
    public static final Symbol AVAILABLE =
            Symbol.number("days available", Units.D).possible(Range.POSITIVE).decimals(1);
    /** Days the job needs. */
    public static final Symbol NEEDED =
            Symbol.number("days needed", Units.D).possible(Range.POSITIVE).decimals(1);
    /** Calendar days the job takes, days unfit for it among them. */
    public static final Symbol CALENDAR =
            Symbol.number("days it takes", Units.D).possible(Range.POSITIVE).decimals(1);
    /** Whole days. */
    public static final Symbol WHOLE_DAYS =
            Symbol.number("whole days needed", Units.D).possible(Range.POSITIVE).decimals(0);
    /** Whether it fits. */
    public static final Symbol FITS = Symbol.text("does it fit");
    /** Rate that would just fit. */
    public static final Symbol REQUIRED_RATE = Symbol.number("required work rate", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** How much faster it must go. */
    public static final Symbol FACTOR = Symbol.number("needed over available", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Width that would just fit. */
    public static final Symbol REQUIRED_WIDTH =
            Symbol.number("required width", Units.M).possible(Range.POSITIVE).decimals(1);
    /** Speed that would just fit. */
    public static final Symbol REQUIRED_SPEED = Symbol.number("required speed", Units.KM_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Length of day that would just fit. */
    public static final Symbol REQUIRED_DAY = Symbol.number("required hours per day", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Machines alike that would do. */
    public static final Symbol REQUIRED_MACHINES = Symbol.number("machines required", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Machines alike beyond those that are there. */
    public static final Symbol TO_HIRE = Symbol.number("machines to hire", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);

    private static final Source EP496 = Source.memory("ASAE EP496: area over suitable days and hours a day");
    private static final Source A3_25 =
            Source.published("Iowa State University AgDM A3-25: area over suitable days is area"
                    + " a day, over field hours a day the rate required; a Sunday kept free is 0.7 day a week, "
                    + "if the share of"
                    + " workable days does not leave it out already");
    private static final Source ARITHMETIC = Source.derived("100 ha in 10 days of which half are fit, 10 h a day");

    /** Hours of the job: the gang's, or the machine's shared among those alike. */
    public static final Formula HOURS_OF_JOB = new Formula(
            "hours-of-job",
            HOURS,
            choice(
                    Condition.compare(value(Keys.GANG_KEY), Relation.MORE, number(0)),
                    value(GANG_HOURS),
                    value(MACHINE_HOURS).over(ALIKE)),
            Source.derived("machines alike share the fields"),
            "field hours",
            List.of(WorkedExample.from(Source.derived("40 machine hours by two"))
                    .with(Keys.GANG_KEY, 0)
                    .with(MACHINE_HOURS, 40)
                    .with(ALIKE, 2)
                    .gives(20, Units.H, 6)));

    private static final Condition BY_GANG = Condition.compare(value(Keys.GANG_KEY), Relation.MORE, number(0));

    /** Area of the job: the gang's or the machine's. */
    public static final Formula AREA_OF_JOB = new Formula(
            "area-of-job",
            AREA,
            choice(BY_GANG, value(GANG_AREA), value(MACHINE_AREA)),
            Source.derived("sum of the fields of the job"),
            "net areas",
            List.of(WorkedExample.from(Source.derived("a machine on 12 ha"))
                    .with(Keys.GANG_KEY, 0)
                    .with(MACHINE_AREA, 12)
                    .gives(12, Units.HA, 6)));

    /** {@code days-late}: planned finish − latest day. */
    public static final Formula LATE = new Formula(
            "days-late",
            DAYS_LATE,
            new Expr.AsUnit(Expr.greatest(number(0), value(FINISH).minus(LATEST)), Units.D),
            Source.derived("days after the last day of the window"),
            "as planned; weather makes it more",
            List.of(
                    WorkedExample.from(ARITHMETIC)
                            .with(FINISH, 45012)
                            .with(LATEST, 45009)
                            .gives(3, Units.D, 6),
                    WorkedExample.from(ARITHMETIC)
                            .with(FINISH, 45005)
                            .with(LATEST, 45009)
                            .gives(0, Units.D, 6)));

    /** Days in the window: latest − earliest + 1. */
    public static final Formula DAYS_IN_WINDOW = new Formula(
            "days-in-window",
            WINDOW,
            new Expr.AsUnit(value(LATEST).minus(EARLIEST).plus(number(1)), Units.D)
                    .onlyWhen(
                            Condition.compare(value(LATEST), Relation.AT_LEAST, value(EARLIEST)),
                            "the window ends before it starts: latest day is before earliest day"),
            Source.derived("first and last day both count"),
            "calendar days, Sundays included",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(EARLIEST, 45000)
                    .with(LATEST, 45009)
                    .gives(10, Units.D, 6)));

    /** {@code days-available}: days in the window × workable share. */
    public static final Formula DAYS_AVAILABLE = new Formula(
            "days-available",
            AVAILABLE,
            given(DAYS_THERE_ARE, value(WINDOW).times(WORKABLE_DAYS)),
            EP496,
            "the share is a typed judgement of place and season; half of all years are worse than the median",
            List.of(
                    WorkedExample.from(ARITHMETIC)
                            .with(WINDOW, 10)
                            .with(WORKABLE_DAYS, 50)
                            .gives(5, Units.D, 6),
                    WorkedExample.from(Source.commonPractice("days that are counted stand"))
                            .with(DAYS_THERE_ARE, 12.6)
                            .with(WINDOW, 18)
                            .with(WORKABLE_DAYS, 50)
                            .gives(12.6, Units.D, 6)));

    /** {@code days-needed}: hours ÷ hours per day. */
    public static final Formula DAYS_NEEDED = new Formula(
            "days-needed",
            NEEDED,
            new Expr.AsUnit(value(HOURS).over(HOURS_PER_DAY), Units.D),
            A3_25,
            "if nothing else wants the machine",
            List.of(WorkedExample.from(Source.derived(
                            "loading 89,600 loose cubic yards at 162 an hour takes 553.09 h, 69.1 days of 8 h"))
                    .with(HOURS, 553.09)
                    .with(HOURS_PER_DAY, 8)
                    .gives(69.1, Units.D, 1)));

    /** Whole days. */
    public static final Formula DAYS_WHOLE = new Formula(
            "whole-days-needed",
            WHOLE_DAYS,
            Expr.call(Function.ROUND_UP, value(NEEDED)),
            Source.derived("rounded up"),
            "for plans by whole days",
            List.of(WorkedExample.from(Source.derived("69.1 days are 70 whole ones"))
                    .with(NEEDED, 69.14)
                    .gives(70, Units.D, 0)));

    private static final Source HALF_FIT = Source.derived("2 days of work where half the days are fit");

    /** {@code calendar-days}: days needed ÷ workable share, or by the days counted in the window. */
    public static final Formula CALENDAR_DAYS = new Formula(
            "calendar-days",
            CALENDAR,
            choice(
                    Condition.all(List.of(new Condition.Given(DAYS_THERE_ARE), new Condition.Given(WINDOW))),
                    value(NEEDED).times(Expr.greatest(number(1), value(WINDOW).over(DAYS_THERE_ARE))),
                    value(NEEDED).over(WORKABLE_DAYS)),
            EP496,
            "unfit days spread evenly; real weather bunches",
            List.of(
                    WorkedExample.from(HALF_FIT)
                            .with(NEEDED, 2)
                            .with(WORKABLE_DAYS, 50)
                            .gives(4, Units.D, 6),
                    WorkedExample.from(HALF_FIT)
                            .with(NEEDED, 2)
                            .with(DAYS_THERE_ARE, 6)
                            .with(WINDOW, 12)
                            .gives(4, Units.D, 6),
                    WorkedExample.from(Source.commonPractice("more days counted than there are make none quicker"))
                            .with(NEEDED, 2)
                            .with(DAYS_THERE_ARE, 12)
                            .with(WINDOW, 6)
                            .gives(2, Units.D, 6)));

    private static final Condition IT_FITS = new Condition.Not(Condition.above(value(NEEDED), value(AVAILABLE)));

    /** Whether it fits. */
    public static final Formula VERDICT = new Formula(
            "season-fit",
            FITS,
            choice(IT_FITS, Expr.text("fits"), Expr.text("does not fit")),
            EP496,
            "each job by itself; the plan of days looks at machines wanted twice",
            List.of(
                    WorkedExample.from(ARITHMETIC)
                            .with(NEEDED, 6)
                            .with(AVAILABLE, 5)
                            .gives("does not fit"),
                    // 0.1 and 0.2 h of 0.3 h: a hair over one day, which is noise.
                    WorkedExample.from(Source.derived("what takes just the days there are fits"))
                            .with(NEEDED, (0.1 + 0.2) / 0.3)
                            .with(AVAILABLE, 1)
                            .gives("fits")));

    /** Days needed over days available. */
    public static final Formula PRESSURE = new Formula(
            "season-pressure",
            FACTOR,
            value(NEEDED).over(AVAILABLE),
            EP496,
            "above 1 it does not fit",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(NEEDED, 6)
                    .with(AVAILABLE, 5)
                    .gives(1.2, Units.ONE, 6)));

    /** {@code required-work-rate}: area ÷ (days available × hours per day). */
    public static final Formula RATE_REQUIRED = new Formula(
            "required-work-rate",
            REQUIRED_RATE,
            value(AREA).over(new Expr.NumberOf(value(AVAILABLE), Units.D).times(HOURS_PER_DAY)),
            A3_25,
            "the rate in the field, losses inside",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(AREA, 100)
                    .with(AVAILABLE, 5)
                    .with(HOURS_PER_DAY, 10)
                    .gives(2, Units.HA_PER_H, 6)));

    /** {@code required-width}: working width × required rate ÷ present rate. */
    public static final Formula WIDTH_REQUIRED = new Formula(
            "required-width",
            REQUIRED_WIDTH,
            value(WORKING_WIDTH).times(REQUIRED_RATE).times(HOURS).over(AREA),
            Source.derived("at the same speed and efficiency the rate goes with the width"),
            "one machine in place of the present ones; throughput may set a limit",
            List.of(WorkedExample.from(Source.derived("3 m at 2.4 ha/h must do 2 ha/h: 10 × 2 ÷ (10 × 0.8) = 2.5 m"))
                    .with(WORKING_WIDTH, 3)
                    .with(REQUIRED_RATE, 2)
                    .with(AREA, 24)
                    .with(HOURS, 10)
                    .gives(2.5, Units.M, 6)));

    /** Speed that would just fit. */
    public static final Formula SPEED_REQUIRED = new Formula(
            "required-speed",
            REQUIRED_SPEED,
            value(SPEED).times(FACTOR),
            Source.derived("at the same width and efficiency the rate goes with the speed"),
            "only as far as ground, crop and driver allow",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(SPEED, 10)
                    .with(FACTOR, 1.2)
                    .gives(12, Units.KM_PER_H, 6)));

    private static final Expr DAY_AND_NIGHT = new Expr.AsUnit(number(24), Units.H);

    /** Hours per day that would just fit. */
    public static final Formula DAY_REQUIRED = new Formula(
            "required-hours-per-day",
            REQUIRED_DAY,
            value(HOURS_PER_DAY)
                    .times(FACTOR)
                    .onlyWhen(
                            new Condition.Not(
                                    Condition.above(value(HOURS_PER_DAY).times(FACTOR), DAY_AND_NIGHT)),
                            "no length of day makes it fit: it would take more than 24 hours"),
            Source.derived("the same hours on fewer days"),
            "over 12 h a second driver is needed; over 24 it cannot be, so none is given",
            List.of(
                    WorkedExample.from(Source.derived("a fifth of the days there are: 2 h of 10 would do"))
                            .with(HOURS_PER_DAY, 10)
                            .with(FACTOR, 0.2)
                            .gives(2, Units.H, 6),
                    WorkedExample.from(ARITHMETIC)
                            .with(HOURS_PER_DAY, 10)
                            .with(FACTOR, 1.2)
                            .gives(12, Units.H, 6)));

    /** Machines that would do. */
    public static final Formula MACHINES_REQUIRED = new Formula(
            "machines-required",
            REQUIRED_MACHINES,
            Expr.call(Function.ROUND_UP, value(ALIKE).times(FACTOR)),
            Source.derived("machines alike share the fields"),
            "own and hired together",
            List.of(WorkedExample.from(Source.derived("one machine, 1.2 times the days there are"))
                    .with(ALIKE, 1)
                    .with(FACTOR, 1.2)
                    .gives(2, Units.ONE, 0)));

    private static final Expr BEYOND_THOSE_NAMED =
            Expr.greatest(number(0), value(REQUIRED_MACHINES).minus(ALIKE));

    /** Machines beyond those that are there: named in the job, or owned if those are more. */
    public static final Formula MACHINES_TO_HIRE = new Formula(
            "machines-to-hire",
            TO_HIRE,
            choice(
                    new Condition.Blank(NUMBER_OF_MACHINES),
                    BEYOND_THOSE_NAMED,
                    choice(
                            Condition.above(value(NUMBER_OF_MACHINES), value(ALIKE)),
                            Expr.greatest(number(0), value(REQUIRED_MACHINES).minus(NUMBER_OF_MACHINES)),
                            BEYOND_THOSE_NAMED)),
            Source.derived(
                    "machines required less those named in the job, or those of the machine list if they are more"),
            "alike in rate, and free while the job is done; whole gangs where a gang does the job",
            List.of(
                    WorkedExample.from(Source.derived("two required, one named"))
                            .with(REQUIRED_MACHINES, 2)
                            .with(ALIKE, 1)
                            .gives(1, Units.ONE, 0),
                    WorkedExample.from(Source.derived("three required, one named, two owned"))
                            .with(REQUIRED_MACHINES, 3)
                            .with(ALIKE, 1)
                            .with(NUMBER_OF_MACHINES, 2)
                            .gives(1, Units.ONE, 0),
                    WorkedExample.from(Source.derived("four required, three named, two of them owned"))
                            .with(REQUIRED_MACHINES, 4)
                            .with(ALIKE, 3)
                            .with(NUMBER_OF_MACHINES, 2)
                            .gives(1, Units.ONE, 0)));

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(
                AREA_OF_JOB,
                HOURS_OF_JOB,
                DAYS_IN_WINDOW,
                DAYS_AVAILABLE,
                DAYS_NEEDED,
                DAYS_WHOLE,
                CALENDAR_DAYS,
                VERDICT,
                PRESSURE,
                RATE_REQUIRED,
                WIDTH_REQUIRED,
                SPEED_REQUIRED,
                DAY_REQUIRED,
                MACHINES_REQUIRED,
                MACHINES_TO_HIRE,
                LATE);
    }
}
