package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.BODY_VOLUME;
import static org.rickyard.trade.Quantities.DISTANCE_TO_CLAMP;
import static org.rickyard.trade.Quantities.LOAD_DENSITY;
import static org.rickyard.trade.Quantities.MACHINE_TYPE;
import static org.rickyard.trade.Quantities.OUTPUT;
import static org.rickyard.trade.Quantities.PAYLOAD;
import static org.rickyard.trade.Quantities.ROAD_SPEED_EMPTY;
import static org.rickyard.trade.Quantities.ROAD_SPEED_LADEN;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/**
 * Carting from the field to the clamp: the load, the round of one trailer, and how many trailers keep the forager going.
 * Everything is reckoned in fresh tonnes as carted, with the distance of the field itself, and as if no trailer ever
 * came late: what chance takes away is the matter of {@link CartingSimulation}.
 */
public final class Carting {
    private Carting() {}

    /** The table of carting. */
    public static final String TABLE = "carting";

    /** The type that loads itself. */
    public static final String FORAGE_WAGON = "forage wagon";

    /** Trailers alike in the gang. */
    public static final Symbol TRAILERS = Symbol.number("trailers in the gang", Units.ONE)
            .possible(Range.of(1, 200))
            .decimals(0);
    /** Foragers in the gang, all kinds; each fills a trailer of its own. */
    public static final Symbol FORAGERS = Symbol.number("foragers in the gang", Units.ONE)
            .possible(Range.of(0, 200))
            .decimals(0);
    /** Kinds of forager among them. */
    public static final Symbol FORAGER_KINDS = Symbol.number("kinds of forager", Units.ONE)
            .possible(Range.of(0, 200))
            .decimals(0);
    /** Area that one forager of each kind covers, all kinds together. */
    public static final Symbol CHOPPING = Symbol.number("chopping rate", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** How fast a trailer is filled. */
    public static final Symbol FILLING = Symbol.number("filling rate", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Density of the load reckoned with. */
    public static final Symbol DENSITY = Symbol.number("density of the load", Units.KG_PER_M3)
            .possible(Range.above(0, 1150))
            .decimals(0);
    /** Load reckoned with. */
    public static final Symbol LOAD =
            Symbol.number("load", Units.T).possible(Range.POSITIVE).decimals(1);
    /** Mass of the tractor before the trailer. */
    public static final Symbol TRACTOR_MASS = Symbol.number("mass of the tractor", Units.T)
            .possible(Range.above(0, 100))
            .decimals(1);
    /** Loads that a field makes. */
    public static final Symbol LOADS = Symbol.number("loads of the field", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Time to fill one trailer. */
    public static final Symbol FILL_TIME = Symbol.number("fill time of a load", Units.MIN)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Time of one round of a trailer. */
    public static final Symbol CYCLE =
            Symbol.number("cycle time", Units.MIN).possible(Range.POSITIVE).decimals(1);
    /** Trailers that keep the forager just going, as a number with a fraction. */
    public static final Symbol EXACT = Symbol.number("trailers at balance", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Share of the forager's time that the trailers of this kind take up. */
    public static final Symbol SERVED = Symbol.number("share of the forager's time served", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Time to fill all trailers of this kind once. */
    public static final Symbol FILL_ALL = Symbol.number("fill time of all alike", Units.MIN)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** What the trailers carry in an hour if never kept waiting. */
    public static final Symbol CARTING_RATE = Symbol.number("carting rate", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** The same as area. */
    public static final Symbol CARTING_AREA = Symbol.number("carting rate by area", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);

    static final Source HAUL = Source.memory("standard haul-cycle theory");
    private static final Source MICHIGAN = Source.published(
            "Time-motion analysis of corn silage harvest systems, seven Michigan farms, abstract: about 7.5 min a"
                    + " cycle for all but filling and road");
    private static final Source TEXTBOOK = Source.secondHand("construction textbook solution: 12 yd3 at 95 yd3/h, 7 mi"
            + " at 30 and 40 mph, dump 3 min: cycle 0.584 h");
    static final Source ARITHMETIC =
            Source.derived("forager 40 t/h, trailer 8 t, 2 km at 20 and 25 km/h, fixed 7.5 min");

    /** All of a round but filling and road: position, weigh, tip, turn. */
    public static final Constant FIXED_TIME = new Constant("Fixed time of a trailer's cycle", 7.5, Units.MIN, MICHIGAN);
    /** Density of chopped grass in a trailer. */
    public static final Constant USUAL_DENSITY = new Constant(
                    "Density of chopped crop in a trailer",
                    350,
                    Units.KG_PER_M3,
                    Source.memory("wilted grass, short chop; weigh a load to know your own"))
            .possible(LOAD_DENSITY.possible());

    /** How fast a trailer fills: by the forager beside it, or a forage wagon by its own pick-up. */
    public static final Formula FILLING_RATE = new Formula(
            "filling-rate",
            FILLING,
            choice(
                    Condition.is(MACHINE_TYPE, FORAGE_WAGON),
                    value(OUTPUT),
                    value(CHOPPING).times(Throughput.YIELD_CARTED).over(FORAGER_KINDS)),
            Source.derived("area per hour × crop per area"),
            "fresh tonnes as carted, by one forager, for each fills a trailer of its own; of several kinds their mean",
            List.of(
                    WorkedExample.from(ARITHMETIC)
                            .with(CHOPPING, 2)
                            .with(Throughput.YIELD_CARTED, 20)
                            .with(FORAGER_KINDS, 1)
                            .gives(40, Units.T_PER_H, 6),
                    WorkedExample.from(Source.derived("foragers of 2 and 1.5 ha/h in 20 t/ha: 40 and 30 t/h"))
                            .with(CHOPPING, 3.5)
                            .with(Throughput.YIELD_CARTED, 20)
                            .with(FORAGER_KINDS, 2)
                            .gives(35, Units.T_PER_H, 6)));

    /** Density of the load. */
    public static final Formula LOAD_LIES_AT = new Formula(
            "load-density",
            DENSITY,
            given(LOAD_DENSITY, constant(USUAL_DENSITY)),
            Source.memory("typed, otherwise that of chopped grass"),
            "chopped and blown in, not trodden",
            List.of(WorkedExample.from(Source.commonPractice("what is typed stands"))
                    .with(LOAD_DENSITY, 300)
                    .gives(300, Units.KG_PER_M3, 6)));

    /** {@code payload}: the lower of what the body holds and what may be carried. */
    public static final Formula PAYLOAD_OF_TRAILER = new Formula(
            "payload",
            LOAD,
            choice(
                    new Condition.Blank(BODY_VOLUME),
                    value(PAYLOAD),
                    Expr.least(value(PAYLOAD), value(BODY_VOLUME).times(DENSITY).in(Units.T))),
            HAUL,
            "Payload is what the law of the road and the plate on the axle allow; a light crop fills the body first",
            List.of(
                    WorkedExample.from(Source.commonPractice("without a volume what may be carried stands"))
                            .with(PAYLOAD, 8)
                            .with(DENSITY, 350)
                            .gives(8, Units.T, 6),
                    WorkedExample.from(Source.derived("20 m3 × 350 kg/m3 is 7 t, less than 8 t"))
                            .with(PAYLOAD, 8)
                            .with(BODY_VOLUME, 20)
                            .with(DENSITY, 350)
                            .gives(7, Units.T, 6)));

    /** {@code loads}: crop of the field ÷ load, rounded up. */
    public static final Formula LOADS_OF_FIELD = new Formula(
            "loads",
            LOADS,
            Expr.call(
                    Function.ROUND_UP,
                    value(AREA).times(Throughput.YIELD_CARTED).over(LOAD).in(Units.ONE)),
            Source.commonPractice("whole loads: the last one counts, however small"),
            "if trailers of this kind alone carry the field",
            List.of(
                    WorkedExample.from(Source.derived("7 ha × 20 t/ha are 140 t, 17.5 loads of 8 t"))
                            .with(AREA, 7)
                            .with(Throughput.YIELD_CARTED, 20)
                            .with(LOAD, 8)
                            .gives(18, Units.ONE, 0),
                    WorkedExample.from(Source.derived("8 ha × 20 t/ha are 160 t, 20 loads of 8 t and no more"))
                            .with(AREA, 8)
                            .with(Throughput.YIELD_CARTED, 20)
                            .with(LOAD, 8)
                            .gives(20, Units.ONE, 0)));

    /** {@code fill-time}: load ÷ filling rate. */
    public static final Formula FILL_TIME_OF_LOAD = new Formula(
            "fill-time",
            FILL_TIME,
            value(LOAD).over(FILLING),
            HAUL,
            "load and rate on one basis, fresh as carted",
            List.of(
                    WorkedExample.from(ARITHMETIC)
                            .with(LOAD, 8)
                            .with(FILLING, 40)
                            .gives(12, Units.MIN, 6),
                    // Volumes in place of tonnes: the ratio is the same.
                    WorkedExample.from(TEXTBOOK)
                            .with(LOAD, 12)
                            .with(FILLING, 95)
                            .gives(0.126, Units.H, 3)));

    private static final Expr ROUND = value(FILL_TIME)
            .plus(value(DISTANCE_TO_CLAMP).over(ROAD_SPEED_LADEN))
            .plus(value(DISTANCE_TO_CLAMP).over(ROAD_SPEED_EMPTY))
            .plus(constant(FIXED_TIME));

    /** {@code cycle-time}: filling, road out and back, and the fixed time. */
    public static final Formula CYCLE_TIME = new Formula(
            "cycle-time",
            CYCLE,
            ROUND,
            HAUL,
            "distance one way; no waiting",
            List.of(
                    WorkedExample.from(ARITHMETIC)
                            .with(FILL_TIME, 12)
                            .with(DISTANCE_TO_CLAMP, 2)
                            .with(ROAD_SPEED_LADEN, 20)
                            .with(ROAD_SPEED_EMPTY, 25)
                            .gives(30.3, Units.MIN, 6),
                    textbookRound()));

    /** The book's dump takes 3 min; ours takes 7.5, so the printed round is met with 4.5 min taken off its filling. */
    private static WorkedExample textbookRound() {
        return WorkedExample.from(TEXTBOOK)
                .with(FILL_TIME, 0.126 - 4.5 / 60, Units.H)
                .with(DISTANCE_TO_CLAMP, 7, Units.MILE)
                .with(ROAD_SPEED_LADEN, 30, Units.MPH)
                .with(ROAD_SPEED_EMPTY, 40, Units.MPH)
                .givesWithin(0.584, Units.H, 0.0006);
    }

    /** Trailers at balance: cycle time ÷ fill time. */
    public static final Formula TRAILERS_AT_BALANCE = new Formula(
            "trailers-at-balance",
            EXACT,
            value(CYCLE)
                    .over(FILL_TIME)
                    .times(FORAGERS)
                    .onlyWhen(
                            new Condition.Not(Condition.is(MACHINE_TYPE, FORAGE_WAGON)),
                            "a forage wagon fills itself and keeps no forager going"),
            HAUL,
            "trailers alike; foragers alike, each filling trailers in turn",
            List.of(
                    WorkedExample.from(ARITHMETIC)
                            .with(MACHINE_TYPE, "trailer")
                            .with(CYCLE, 30.3)
                            .with(FILL_TIME, 12)
                            .with(FORAGERS, 1)
                            .gives(2.525, Units.ONE, 6),
                    WorkedExample.from(Source.derived("two such foragers side by side want twice the trailers"))
                            .with(MACHINE_TYPE, "trailer")
                            .with(CYCLE, 30.3)
                            .with(FILL_TIME, 12)
                            .with(FORAGERS, 2)
                            .gives(5.05, Units.ONE, 6)));

    /** Share of the forager's time served: trailers ÷ trailers at balance. */
    public static final Formula TIME_SERVED = new Formula(
            "forager-time-served",
            SERVED,
            value(TRAILERS).over(EXACT),
            HAUL,
            "over 100 % trailers wait; kinds of trailers add up",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(TRAILERS, 2)
                    .with(EXACT, 2.525)
                    .gives(79.21, Units.PERCENT, 2)));

    /** Fill time of all alike: trailers × fill time. */
    public static final Formula FILL_TIME_OF_ALL = new Formula(
            "fill-time-of-all-alike",
            FILL_ALL,
            value(TRAILERS).times(FILL_TIME),
            HAUL,
            "each once",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(TRAILERS, 3)
                    .with(FILL_TIME, 12)
                    .gives(36, Units.MIN, 6)));

    /** {@code carting-rate}: trailers × load ÷ cycle time. */
    public static final Formula CARTED = new Formula(
            "carting-rate",
            CARTING_RATE,
            value(TRAILERS).times(LOAD).over(CYCLE),
            HAUL,
            "if no trailer waits; never more than the forager fills",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(TRAILERS, 2)
                    .with(LOAD, 8)
                    .with(CYCLE, 30.3)
                    .gives(31.68, Units.T_PER_H, 2)));

    /** The same by area. */
    public static final Formula CARTED_AREA = new Formula(
            "carting-rate-by-area",
            CARTING_AREA,
            value(CARTING_RATE).over(Throughput.YIELD_CARTED),
            Source.derived("tonnes per hour over tonnes per hectare"),
            "fresh as carted",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(CARTING_RATE, 31.68316831683168)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(1.584, Units.HA_PER_H, 3)));

    /** All formulas in reading order. */
    static List<Formula> formulas() {
        return List.of(
                FILLING_RATE,
                LOAD_LIES_AT,
                PAYLOAD_OF_TRAILER,
                LOADS_OF_FIELD,
                FILL_TIME_OF_LOAD,
                CYCLE_TIME,
                TRAILERS_AT_BALANCE,
                TIME_SERVED,
                FILL_TIME_OF_ALL,
                CARTED,
                CARTED_AREA);
    }
}
