package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.HOURS_PER_DAY;
import static org.rickyard.trade.Quantities.MACHINE_TYPE;
import static org.rickyard.trade.Quantities.MASS;
import static org.rickyard.trade.Quantities.NUMBER_OF_MACHINES;
import static org.rickyard.trade.Quantities.OUTPUT;
import static org.rickyard.trade.Quantities.PAYLOAD;
import static org.rickyard.trade.Quantities.ROUND_TIME;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
import org.rickyard.trade.silage.Rolling;

/** What each stage of a gang gets through, in hectares and fresh tonnes an hour and in hectares a day. */
public final class StageRates {
    private StageRates() {}

    /** The table of stages. */
    public static final String STAGES = "gang-stages";

    /** The type that rolls a clamp by its weight. */
    public static final String ROLLER = "clamp roller";

    /** Machines alike at this stage. */
    public static final Symbol ALIKE = Symbol.number("machines alike", Units.ONE)
            .possible(Range.of(1, 200))
            .decimals(0);
    /** Rate of one machine that works by its width. */
    public static final Symbol RATE_EACH = Symbol.number("work rate of one", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Crop that the rolling mass can keep down. */
    public static final Symbol ROLLED = Symbol.number("rolling capacity", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Crop that a loader or buckrake moves. */
    public static final Symbol HANDLED = Symbol.number("handling rate", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Rate of the stage by area. */
    public static final Symbol STAGE_RATE =
            Symbol.number("stage rate", Units.HA_PER_H).possible(Range.POSITIVE).decimals(2);
    /** Rate of the stage by mass. */
    public static final Symbol STAGE_MATERIAL = Symbol.number("stage rate by mass", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Rate of the stage by the day. */
    public static final Symbol STAGE_DAY = Symbol.number("stage area per day", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(1);

    /** {@code gang-rolling-capacity}: rolling mass ÷ mass for each t/h. */
    public static final Formula ROLLING_CAPACITY = new Formula(
            "gang-rolling-capacity",
            ROLLED,
            choice(
                    Condition.compare(value(Keys.MACHINE_KEY), Condition.Relation.EQUAL, Expr.number(0)),
                    value(Rolling.CAPACITY_FORTY),
                    value(MASS)
                            .times(ALIKE)
                            .over(constant(Rolling.FORTY))
                            .onlyWhen(Condition.is(MACHINE_TYPE, ROLLER), "it does not roll")),
            Rolling.FORTY.source(),
            "the gang's own rollers; where the job names none, what the clamp's own row of Clamp rollers says. All of them"
                    + " rolling all the time in thin layers",
            List.of(
                    WorkedExample.from(Source.derived("two of 14 t at 400 kg for each t/h"))
                            .with(MACHINE_TYPE, ROLLER)
                            .with(Keys.MACHINE_KEY, 1)
                            .with(MASS, 14)
                            .with(ALIKE, 2)
                            .gives(70, Units.T_PER_H, 6),
                    WorkedExample.from(Source.commonPractice("what stands on the clamp's own sheet"))
                            .with(MACHINE_TYPE, ROLLER)
                            .with(Keys.MACHINE_KEY, 0)
                            .with(Rolling.CAPACITY_FORTY, 42.5)
                            .gives(42.5, Units.T_PER_H, 6),
                    WorkedExample.from(Source.derived("rule of 800: 40,000 lb ÷ 800 is 50 short tons an hour, not 150"))
                            .with(MACHINE_TYPE, ROLLER)
                            .with(Keys.MACHINE_KEY, 1)
                            .with(MASS, 40000, Units.LB)
                            .with(ALIKE, 1)
                            .gives(50, Units.SHORT_TON.over(Units.H), 6)));

    private static final Condition PUSHES_UP =
            Condition.any(List.of(Condition.is(MACHINE_TYPE, "buckrake"), Condition.is(MACHINE_TYPE, "loader")));

    private static final String NO_HANDLING = "it moves no crop at the clamp";

    /** {@code handling-rate}: typed output, or load ÷ round time. */
    public static final Formula HANDLING = new Formula(
            "handling-rate",
            HANDLED,
            choice(
                    new Condition.Blank(OUTPUT),
                    value(PAYLOAD).over(ROUND_TIME).times(ALIKE).onlyWhen(PUSHES_UP, NO_HANDLING),
                    value(OUTPUT).times(ALIKE).onlyWhen(PUSHES_UP, NO_HANDLING)),
            Source.derived("load over the time of a round; times as typed, none is assumed"),
            "buckrakes and loaders",
            List.of(
                    WorkedExample.from(
                                    Source.derived("National Institute of Agricultural Engineering, Press 10 December"
                                            + " 1960: 32 bales a trip by buckrake, 4 man-hours for 1,000; of 56 lb each"
                                            + " that is 6 1/4 tons an hour"))
                            .with(MACHINE_TYPE, "buckrake")
                            .with(PAYLOAD, 32 * 56, Units.LB)
                            .with(ROUND_TIME, 32 * 4 * 60 / 1000.0)
                            .with(ALIKE, 1)
                            .gives(6.25, Units.LONG_TON.over(Units.H), 2),
                    WorkedExample.from(Source.derived("two buckrakes of 1 t every 2 min"))
                            .with(MACHINE_TYPE, "buckrake")
                            .with(PAYLOAD, 1)
                            .with(ROUND_TIME, 2)
                            .with(ALIKE, 2)
                            .gives(60, Units.T_PER_H, 6),
                    WorkedExample.from(Source.derived("two loaders of 60 t/h"))
                            .with(MACHINE_TYPE, "loader")
                            .with(OUTPUT, 60)
                            .with(ALIKE, 2)
                            .gives(120, Units.T_PER_H, 6)));

    /** The table of loaders and buckrakes that work by themselves. */
    public static final String HANDLING_RATES = "handling-rates";

    /** Machines alike that are listed: as many as are typed, otherwise the one. */
    public static final Formula ALIKE_LISTED = new Formula(
            "machines-alike",
            ALIKE,
            choice(new Condition.Blank(NUMBER_OF_MACHINES), Expr.number(1), value(NUMBER_OF_MACHINES)),
            Source.commonPractice("a machine listed without a number is one"),
            "all of them at the same work",
            List.of(
                    WorkedExample.from(Source.commonPractice("two listed in one row"))
                            .with(NUMBER_OF_MACHINES, 2)
                            .gives(2, Units.ONE, 6),
                    WorkedExample.from(Source.commonPractice("a row without a number"))
                            .gives(1, Units.ONE, 6)));

    private static final Condition BY_WIDTH = Condition.any(List.of(
            Condition.is(MACHINE_TYPE, "mower"),
            Condition.is(MACHINE_TYPE, "tedder"),
            Condition.is(MACHINE_TYPE, "rake"),
            Condition.is(MACHINE_TYPE, "forager")));

    private static final Condition CARTS = Condition.any(
            List.of(Condition.is(MACHINE_TYPE, "trailer"), Condition.is(MACHINE_TYPE, Carting.FORAGE_WAGON)));

    /** {@code stage-rate}: area per hour of all machines alike at one stage. */
    public static final Formula RATE_OF_STAGE = new Formula(
            "stage-rate",
            STAGE_RATE,
            choice(
                    BY_WIDTH,
                    value(RATE_EACH).times(ALIKE),
                    choice(
                            CARTS,
                            value(Carting.CARTING_AREA),
                            choice(
                                    Condition.is(MACHINE_TYPE, ROLLER),
                                    value(ROLLED).over(Throughput.YIELD_CARTED),
                                    value(HANDLED).over(Throughput.YIELD_CARTED)))),
            Source.derived("every stage brought to hectares of the same field"),
            "fresh tonnes as carted",
            List.of(
                    WorkedExample.from(Source.derived("two mowers of 2.40 ha/h"))
                            .with(MACHINE_TYPE, "mower")
                            .with(RATE_EACH, 2.4)
                            .with(ALIKE, 2)
                            .gives(4.8, Units.HA_PER_H, 6),
                    WorkedExample.from(GangRates.ARITHMETIC)
                            .with(MACHINE_TYPE, ROLLER)
                            .with(ROLLED, 35)
                            .with(Throughput.YIELD_CARTED, 20)
                            .gives(1.75, Units.HA_PER_H, 6)));

    /** {@code stage-rate-by-mass}. */
    public static final Formula MATERIAL_OF_STAGE = new Formula(
            "stage-rate-by-mass",
            STAGE_MATERIAL,
            value(STAGE_RATE).times(Throughput.YIELD_CARTED),
            Source.derived("area per hour × yield"),
            "fresh tonnes as carted, also for mowing, so that all stages compare",
            List.of(WorkedExample.from(GangRates.ARITHMETIC)
                    .with(STAGE_RATE, 1.75)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(35, Units.T_PER_H, 6)));

    /** Stage rate by the day: stage rate × hours per day. */
    public static final Formula DAY_OF_STAGE = new Formula(
            "stage-area-per-day",
            STAGE_DAY,
            value(STAGE_RATE).times(HOURS_PER_DAY),
            Source.derived("area per hour × hours"),
            "hours of the job, or else of the machine",
            List.of(WorkedExample.from(GangRates.ARITHMETIC)
                    .with(STAGE_RATE, 1.75)
                    .with(HOURS_PER_DAY, 8)
                    .gives(14, Units.HA, 6)));

    /** The rate of one stage, all its machines together, as a total over the stages. */
    public static Expr stageTotal(GangStage stage, Symbol key) {
        return new Expr.Total(STAGES, STAGE_RATE, Keys.STAGE_KEY, key, true);
    }

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(ROLLING_CAPACITY, ALIKE_LISTED, HANDLING, RATE_OF_STAGE, MATERIAL_OF_STAGE, DAY_OF_STAGE);
    }
}
