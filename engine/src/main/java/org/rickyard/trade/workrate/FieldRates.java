package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.FIELD_EFFICIENCY;
import static org.rickyard.trade.Quantities.HOURS_PER_DAY;
import static org.rickyard.trade.Quantities.KIND_OF_MACHINE;
import static org.rickyard.trade.Quantities.OUTPUT;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.TYPED_RATE;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/** Work rate of a machine by width, speed and field efficiency, and the hours a field takes. */
public final class FieldRates {
    private FieldRates() {}

    /** Area covered per hour if nothing but work were done. */
    public static final Symbol SPOT_RATE = Symbol.number("spot work rate", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** The efficiency reckoned with: typed, or the typical one of the kind. */
    public static final Symbol EFFICIENCY_USED = Symbol.number("field efficiency", Units.PERCENT)
            .possible(Range.above(0, 100))
            .decimals(0);
    /** Area covered per hour in the field, turning and filling included. */
    public static final Symbol RATE =
            Symbol.number("work rate", Units.HA_PER_H).possible(Range.POSITIVE).decimals(2);
    /** Area covered per hour as width and speed allow. */
    public static final Symbol WIDTH_RATE = Symbol.number("rate by width", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** What sets the rate. */
    public static final Symbol LIMITED_BY = Symbol.text("limited by");
    /** Share of the spot rate kept up. */
    public static final Symbol EFFICIENCY_ACHIEVED = Symbol.number("efficiency achieved", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Hours one field takes. */
    public static final Symbol FIELD_HOURS =
            Symbol.number("hours", Units.H).possible(Range.POSITIVE).decimals(1);

    /** Area one machine covers in a day. */
    public static final Symbol DAY_AREA =
            Symbol.number("area per day", Units.HA).possible(Range.POSITIVE).decimals(1);
    /** Days one field takes one machine. */
    public static final Symbol FIELD_DAYS = Symbol.number("days of one machine", Units.D)
            .possible(Range.POSITIVE)
            .decimals(2);

    private static final Source SRIVASTAVA = Source.published(
            "Srivastava et al. 2006, Engineering Principles of Agricultural Machines, 2nd ed., ASABE, eq. 15.1");
    private static final Source HUNT =
            Source.secondHand("Hunt, Farm Power and Machinery Management, example 1.1, solution sheet");
    private static final Source GRDC = Source.published("GRDC, Machinery: replace or repair?");
    private static final Source PROGRESSIVE =
            Source.published("Progressive Forage, Field equipment efficiency versus capacity");
    private static final Source IOWA = Source.published("Iowa State University AgDM A3-24, table of field capacities");

    /** Width in ft, speed in mph, efficiency in per cent, printed rate in ac/h. */
    private static final double[][] IOWA_ROWS = {
        {40, 6, 70, 20.4}, {60, 6, 68, 29.7}, {60, 12, 68, 59.3}, {80, 6, 68, 39.6}, {80, 12, 68, 79.1},
        {15, 5, 63, 5.7}, {20, 6, 63, 9.2}, {30, 6, 60, 13.1}, {36, 5, 60, 13.1}, {45, 5, 60, 16.4},
        {37.5, 6, 65, 17.7}, {42.5, 6, 63, 19.5}, {57.5, 5, 63, 22.0}, {8, 5, 85, 4.1}, {12, 5, 85, 6.2},
    };

    /** Typical field efficiency by kind of machine, for full working width. */
    public static final ReferenceTable TYPICAL_EFFICIENCY = new ReferenceTable(
            "Typical field efficiency",
            "kind of machine",
            Units.ONE,
            "field efficiency",
            Units.PERCENT,
            typicalRows(),
            Source.memory("ASAE D497, Table 3, typical values; tedder as rake, baler as large round baler, power"
                    + " harrow as rotary tiller, subsoiler as mouldboard plough;"
                    + " muck spreader 60-63 % in Iowa State University AgDM A3-24"));

    private static List<Row> typicalRows() {
        List<Row> rows = new ArrayList<>(RememberedMachines.byKind(RememberedMachines.Row::efficiency));
        rows.add(Row.of("muck spreader", 63));
        return List.copyOf(rows);
    }

    /** {@code spot-work-rate}: speed × working width. */
    public static final Formula SPOT_WORK_RATE = new Formula(
            "spot-work-rate",
            SPOT_RATE,
            value(SPEED).times(WORKING_WIDTH),
            SRIVASTAVA,
            "full working width, constant speed, nothing lost to turning, filling or overlap",
            List.of(
                    WorkedExample.from(HUNT)
                            .with(WORKING_WIDTH, 3)
                            .with(SPEED, 100.0 / 52, Units.M_PER_S)
                            .gives(2.08, Units.HA_PER_H, 2),
                    WorkedExample.from(PROGRESSIVE)
                            .with(WORKING_WIDTH, 30, Units.FT)
                            .with(SPEED, 5, Units.MPH)
                            .gives(18.2, Units.AC_PER_H, 1)));

    /** The efficiency a row is reckoned with. */
    public static final Formula EFFICIENCY = new Formula(
            "field-efficiency-used",
            EFFICIENCY_USED,
            choice(
                    new Condition.Not(TimeElements.BY_TIME_ELEMENTS),
                    given(FIELD_EFFICIENCY, typical()),
                    typical()
                            .onlyWhen(
                                    new Condition.Not(TimeElements.BY_TIME_ELEMENTS),
                                    "time elements stand in its place")),
            Source.memory("typed; otherwise the typical value of the kind of machine, ASAE D497, Table 3"),
            "goes with the full working width: it holds turning, overlap and filling already",
            List.of(
                    WorkedExample.from(Source.memory("ASAE D497, Table 3: rotary mower typical 80 %"))
                            .with(KIND_OF_MACHINE, "mower")
                            .gives(80, Units.PERCENT, 0),
                    WorkedExample.from(Source.memory("ASAE D497, Table 3: large rectangular baler typical 80 %"))
                            .with(KIND_OF_MACHINE, "large square baler")
                            .gives(80, Units.PERCENT, 0),
                    WorkedExample.from(Source.commonPractice("what is typed stands"))
                            .with(KIND_OF_MACHINE, "mower")
                            .with(FIELD_EFFICIENCY, 72)
                            .with(Quantities.TURN_TIME, 15)
                            .with(Quantities.RUN_LENGTH, 400)
                            .gives(72, Units.PERCENT, 0)));

    private static Expr typical() {
        return new Expr.Lookup(TYPICAL_EFFICIENCY, value(KIND_OF_MACHINE), Expr.Lookup.Mode.EXACT)
                .onlyWhen(
                        new Condition.InTable(TYPICAL_EFFICIENCY, value(KIND_OF_MACHINE), Expr.Lookup.Mode.EXACT),
                        "no field efficiency is held for this kind of machine: type its Field efficiency");
    }

    /** Of a machine known by its tonnes an hour alone neither width nor speed sets a limit. */
    public static final Condition BY_OUTPUT_ALONE = Condition.all(
            List.of(Condition.typed(OUTPUT), new Condition.Blank(WORKING_WIDTH), new Condition.Blank(SPEED)));

    private static final Expr BY_WIDTH = choice(
            TimeElements.BY_TIME_ELEMENTS,
            TimeElements.TIME_ELEMENT_RATE,
            value(SPEED).times(WORKING_WIDTH).times(EFFICIENCY_USED));

    /** {@code width-rate}: by efficiency, or by time elements. */
    public static final Formula BY_WIDTH_AND_SPEED = new Formula(
            "width-rate",
            WIDTH_RATE,
            BY_WIDTH,
            SRIVASTAVA,
            "by time elements (Hunt, eq. 1.3) where turn time and run length are given and no efficiency is; back and"
                    + " forth, one turn for each run",
            widthExamples());

    /** {@code work-rate}: speed × working width × field efficiency, or by time elements; never above throughput. */
    public static final Formula WORK_RATE = new Formula(
            "work-rate",
            RATE,
            choice(
                    Condition.typed(TYPED_RATE),
                    value(TYPED_RATE),
                    choice(
                            BY_OUTPUT_ALONE,
                            value(Throughput.THROUGHPUT_RATE),
                            choice(
                                    Condition.all(List.of(
                                            new Condition.Blank(OUTPUT),
                                            new Condition.Not(
                                                    Condition.is(TimeElements.RATE_BY, TimeElements.BY_ELEMENTS)))),
                                    value(SPEED)
                                            .times(WORKING_WIDTH)
                                            .times(EFFICIENCY_USED)
                                            .in(Units.HA_PER_H),
                                    choice(
                                            new Condition.Blank(OUTPUT),
                                            value(WIDTH_RATE),
                                            Expr.least(value(WIDTH_RATE), value(Throughput.THROUGHPUT_RATE)))))),
            SRIVASTAVA,
            "field work only: daily service, road and repairs come on top; an output typed for the machine sets a limit",
            limitedExamples());

    /** Which limit holds. */
    public static final Formula LIMIT = new Formula(
            "work-rate-limited-by",
            LIMITED_BY,
            choice(
                    Condition.typed(TYPED_RATE),
                    Expr.text("the rate typed"),
                    choice(
                            BY_OUTPUT_ALONE,
                            Expr.text("throughput"),
                            choice(
                                    new Condition.Blank(OUTPUT),
                                    Expr.text("width and speed"),
                                    choice(
                                            Condition.compare(
                                                    value(WIDTH_RATE),
                                                    Condition.Relation.AT_MOST,
                                                    value(Throughput.THROUGHPUT_RATE)),
                                            Expr.text("width and speed"),
                                            Expr.text("throughput"))))),
            Source.published("Buckmaster, Sizing Forage Machinery, Purdue: the lowest of the limits holds"),
            "power and traction are looked at with the tractor",
            List.of(
                    WorkedExample.from(Source.derived("2.50 ha/h by width, 2.00 by throughput"))
                            .with(OUTPUT, 40)
                            .with(SPEED, 5.5)
                            .with(WORKING_WIDTH, 6.5)
                            .with(WIDTH_RATE, 2.5025)
                            .with(Throughput.THROUGHPUT_RATE, 2)
                            .gives("throughput"),
                    WorkedExample.from(Source.derived("40 t/h, and neither width nor speed"))
                            .with(OUTPUT, 40)
                            .with(Throughput.THROUGHPUT_RATE, 2)
                            .gives("throughput"),
                    WorkedExample.from(Source.commonPractice("what is typed stands"))
                            .with(TYPED_RATE, 2.4)
                            .with(OUTPUT, 40)
                            .gives("the rate typed"),
                    WorkedExample.from(Source.derived("no output is known that could hold it down"))
                            .with(SPEED, 10)
                            .with(WORKING_WIDTH, 3)
                            .gives("width and speed")));

    /** {@code field-efficiency}: work rate ÷ spot work rate. */
    public static final Formula ACHIEVED = new Formula(
            "field-efficiency",
            EFFICIENCY_ACHIEVED,
            value(RATE).over(SPOT_RATE),
            GRDC,
            "share of the spot rate kept up in the field, whatever holds it down",
            achievedExamples());

    /** {@code hours}: area ÷ work rate. */
    public static final Formula HOURS = new Formula(
            "hours",
            FIELD_HOURS,
            value(AREA).over(RATE),
            Source.derived("area over area per hour"),
            "one pass over the net area",
            List.of(WorkedExample.from(
                            Source.derived("Canterbury Agricultural College, Waitaki 5 March 1940: 15 ac mown in 12 h,"
                                    + " so 1.25 ac/h takes 12 h"))
                    .with(AREA, 15, Units.AC)
                    .with(RATE, 1.25, Units.AC_PER_H)
                    .gives(12, Units.H, 0)));

    /** {@code area-per-day}: work rate × hours per day. */
    public static final Formula AREA_PER_DAY = new Formula(
            "area-per-day",
            DAY_AREA,
            value(RATE).times(HOURS_PER_DAY),
            Source.published(
                    "South African DAFF and KwaZulu-Natal, Guide to Machinery Costs 2015/16: hectares in ten hours"
                            + " are km/h × m × efficiency"),
            "one machine, on a day fit for the work; hours in the field, road and service not among them",
            List.of(WorkedExample.from(
                            Source.derived("the guide's first example, 5 km/h × 2 m with 17 % of the time lost, whose"
                                    + " printed answer was not read: 0.83 ha/h are 8.3 ha in ten hours"))
                    .with(RATE, 0.83)
                    .with(HOURS_PER_DAY, 10)
                    .gives(8.3, Units.HA, 1)));

    /** {@code days-of-one-machine}: hours ÷ hours per day. */
    public static final Formula DAYS = new Formula(
            "days-of-one-machine",
            FIELD_DAYS,
            new Expr.AsUnit(value(FIELD_HOURS).over(HOURS_PER_DAY), Units.D),
            Source.published("Iowa State University AgDM A3-25: days are area over area a day"),
            "days fit for the work, one machine by itself: of several alike each does its share",
            List.of(WorkedExample.from(Source.derived("50 ha at 0.83 ha/h take 60.2 h, 6.0 days of 8.3 ha"))
                    .with(FIELD_HOURS, 50 / 0.83)
                    .with(HOURS_PER_DAY, 10)
                    .gives(6.0, Units.D, 1)));

    private static List<WorkedExample> limitedExamples() {
        List<WorkedExample> examples = new ArrayList<>(rateExamples());
        examples.add(WorkedExample.from(Source.secondHand("Hunt, combine on 400 m rows, solution sheet: 1.90 ha/h"))
                .with(TimeElements.RATE_BY, TimeElements.BY_ELEMENTS)
                .with(WIDTH_RATE, 1.89684)
                .with(EFFICIENCY_USED, 80)
                .with(SPEED, 4.8)
                .with(WORKING_WIDTH, 5)
                .gives(1.90, Units.HA_PER_H, 2));
        examples.add(WorkedExample.from(
                        Source.derived("40 t/h of a forager whose width and speed nobody knows, in 20" + " t/ha"))
                .with(OUTPUT, 40)
                .with(EFFICIENCY_USED, 70)
                .with(Throughput.THROUGHPUT_RATE, 2)
                .gives(2, Units.HA_PER_H, 6));
        examples.add(WorkedExample.from(Source.derived("Canterbury Agricultural College, Waitaki 5 March 1940: mower"
                        + " and two horses, 15 ac in 12 h"))
                .with(TYPED_RATE, 15.0 / 12, Units.AC_PER_H)
                .gives(1.25, Units.AC_PER_H, 2));
        examples.add(WorkedExample.from(Source.derived("2.50 ha/h by width, 40 t/h in 20 t/ha: 2.00 ha/h"))
                .with(OUTPUT, 40)
                .with(SPEED, 5.5)
                .with(WORKING_WIDTH, 6.5)
                .with(WIDTH_RATE, 2.5025)
                .with(Throughput.THROUGHPUT_RATE, 2)
                .gives(2, Units.HA_PER_H, 6));
        return List.copyOf(examples);
    }

    private static List<WorkedExample> widthExamples() {
        List<WorkedExample> examples = new ArrayList<>(TimeElements.examples());
        examples.addAll(rateExamples());
        return List.copyOf(examples);
    }

    /** Of a table that prints width, speed, efficiency and rate, the efficiency found back from the printed rate. */
    private static List<WorkedExample> achievedExamples() {
        List<WorkedExample> examples = new ArrayList<>();
        examples.add(
                WorkedExample.from(Source.secondHand("Hunt, combine on 400 m rows, solution sheet: 1.90 of 2.4 ha/h"
                                + " is 79.17 %, from the rounded 1.90"))
                        .with(RATE, 1.89684)
                        .with(SPOT_RATE, 2.4)
                        .givesWithin(79.17, Units.PERCENT, 0.2));
        for (double[] row : IOWA_ROWS) {
            double spot = row[0] * row[1] / 8.25;
            examples.add(WorkedExample.from(IOWA)
                    .with(RATE, row[3], Units.AC_PER_H)
                    .with(SPOT_RATE, spot, Units.AC_PER_H)
                    .givesWithin(row[2], Units.PERCENT, 100 * 0.051 / spot));
        }
        return List.copyOf(examples);
    }

    private static List<WorkedExample> rateExamples() {
        List<WorkedExample> examples = new ArrayList<>();
        examples.add(WorkedExample.from(GRDC)
                .with(SPEED, 8)
                .with(WORKING_WIDTH, 18.33)
                .with(EFFICIENCY_USED, 80)
                .gives(11.73, Units.HA_PER_H, 2));
        examples.add(imperial(PROGRESSIVE, 30, 5, 80, 14.5, 1));
        examples.add(imperial(PROGRESSIVE, 30, 5, 60, 10.9, 1));
        for (double[] row : IOWA_ROWS) {
            examples.add(imperial(IOWA, row[0], row[1], row[2], row[3], 1));
        }
        examples.add(imperial(
                Source.secondHand("Iowa State University AgDM A3-29, chisel plough example"), 25, 4.5, 81, 11.05, 2));
        return List.copyOf(examples);
    }

    private static WorkedExample imperial(
            Source source, double feet, double mph, double efficiency, double acresPerHour, int decimals) {
        return WorkedExample.from(source)
                .with(WORKING_WIDTH, feet, Units.FT)
                .with(SPEED, mph, Units.MPH)
                .with(EFFICIENCY_USED, efficiency)
                .gives(acresPerHour, Units.AC_PER_H, decimals);
    }
}
