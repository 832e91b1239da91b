package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.PAYLOAD;
import static org.rickyard.trade.Quantities.PRODUCT_DENSITY;
import static org.rickyard.trade.Quantities.PRODUCT_UNIT;
import static org.rickyard.trade.Quantities.ROUND_TIME;
import static org.rickyard.trade.Quantities.SPREAD_DOSE;
import static org.rickyard.trade.Quantities.TANK_VOLUME;
import static org.rickyard.trade.Quantities.TEST_AREA;
import static org.rickyard.trade.Quantities.TEST_WEIGHT;
import static org.rickyard.trade.Quantities.USABLE_TANK;

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
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** What is spread or drilled: fertiliser, muck, slurry, seed. */
public final class Spreading {
    private Spreading() {}

    /** Id of the table of products that are spread or drilled. */
    public static final String TABLE = "spread-products";

    /** Product for one field. */
    public static final Symbol SPREAD = Symbol.number("product spread", Units.PRODUCT_UNIT)
            .possible(Range.POSITIVE)
            .decimals(3);

    /** Product that the machine holds when it is full. */
    public static final Symbol HELD = Symbol.number("product in a full load", Units.PRODUCT_UNIT)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Loads that a field takes. */
    public static final Symbol LOADS =
            Symbol.number("loads spread", Units.ONE).possible(Range.POSITIVE).decimals(0);

    /** Hours that the loads take, one after another. */
    public static final Symbol ROUND_HOURS = Symbol.number("hours of the loads", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);

    /** What a test shows to go on a hectare. */
    public static final Symbol TESTED = Symbol.number("tested rate by weight", Units.KG.over(Units.HA))
            .possible(Range.POSITIVE)
            .decimals(1);

    /** More than this is unusual of what spreaders and drills are filled with from bags. */
    public static final Constant HIGH = new Constant(
            "spreading dose unusually high, above",
            600,
            Units.DOSE,
            Source.memory("judgement: a dressing of fertiliser or a seed rate is seldom more; lime is"));

    /** {@code product-spread}: area × dose. */
    public static final Formula PRODUCT_SPREAD = new Formula(
            "product-spread",
            SPREAD,
            value(AREA).times(SPREAD_DOSE),
            Source.published("IRRI Rice Knowledge Bank, Product required: rate × area"),
            "the whole net area gets the dose; what the machine leaves in the hopper comes on top",
            List.of(WorkedExample.from(Source.derived("200 lb an acre on 20 acres are 4,000 lb"))
                    .with(AREA, 20, Units.AC)
                    .with(SPREAD_DOSE, 200, Units.PRODUCT_UNIT.over(Units.AC))
                    .gives(4000, Units.PRODUCT_UNIT, 6)));

    private static final Condition BY_VOLUME = Condition.is(PRODUCT_UNIT, "L");
    private static final String NEITHER = "the product goes neither by weight nor by volume";

    /** An amount as so many units of a product that goes by this one. */
    private static Expr asProduct(Expr amount, Unit unit) {
        return new Expr.AsUnit(new Expr.NumberOf(amount, unit), Units.PRODUCT_UNIT);
    }

    private static final Condition NO_TANK =
            Condition.all(List.of(new Condition.Blank(TANK_VOLUME), new Condition.Blank(USABLE_TANK)));
    private static final Condition NO_PAYLOAD = new Condition.Blank(PAYLOAD);
    private static final Condition NO_DENSITY = new Condition.Blank(PRODUCT_DENSITY);

    /** The payload or what the tank holds of it: the one that is typed, or the lesser of both where the density is known. */
    private static Expr lesser(Condition byItself, Expr itself, Condition notOther, Expr other) {
        return choice(NO_DENSITY, itself, choice(notOther, itself, choice(byItself, other, Expr.least(itself, other))));
    }

    private static final Expr OF_WEIGHT = lesser(
            NO_PAYLOAD,
            asProduct(value(PAYLOAD), Units.KG),
            NO_TANK,
            asProduct(value(TankPlan.TANK_FILLED).times(PRODUCT_DENSITY), Units.KG));
    private static final Expr TANK = asProduct(value(TankPlan.TANK_FILLED), Units.L);
    private static final Expr OF_VOLUME =
            lesser(NO_TANK, TANK, NO_PAYLOAD, asProduct(value(PAYLOAD).over(PRODUCT_DENSITY), Units.L));

    /** {@code product-in-load}: the payload of what goes by weight, the tank of what goes by volume; by density also the other. */
    public static final Formula PRODUCT_IN_LOAD = new Formula(
            "product-in-load",
            HELD,
            choice(
                    Condition.is(PRODUCT_UNIT, "kg"),
                    OF_WEIGHT,
                    choice(BY_VOLUME, OF_VOLUME, TANK.onlyWhen(BY_VOLUME, NEITHER))),
            Source.commonPractice(
                    "a spreader is filled to its payload, a tanker to its tank, neither beyond the other"),
            "filled to what is typed of the machine; without a density of the product a light one may fill the hopper"
                    + " before it weighs so much",
            List.of(
                    WorkedExample.from(Source.derived("3 t are 3,000 kg"))
                            .with(PRODUCT_UNIT, "kg")
                            .with(PAYLOAD, 3)
                            .gives(3000, Units.PRODUCT_UNIT, 6),
                    WorkedExample.from(Source.derived("a hopper of 2,000 L with 0.75 kg in a litre holds 1,500 kg"))
                            .with(PRODUCT_UNIT, "kg")
                            .with(TANK_VOLUME, 2000)
                            .with(TankPlan.TANK_FILLED, 2000)
                            .with(PRODUCT_DENSITY, 0.75)
                            .gives(1500, Units.PRODUCT_UNIT, 6),
                    WorkedExample.from(Source.derived("the same hopper carries no more than its payload of 1.2 t"))
                            .with(PRODUCT_UNIT, "kg")
                            .with(TANK_VOLUME, 2000)
                            .with(TankPlan.TANK_FILLED, 2000)
                            .with(PAYLOAD, 1.2)
                            .with(PRODUCT_DENSITY, 0.75)
                            .gives(1200, Units.PRODUCT_UNIT, 6),
                    WorkedExample.from(Source.derived("a payload of 3 t, and no tank typed that might hold less"))
                            .with(PRODUCT_UNIT, "kg")
                            .with(PAYLOAD, 3)
                            .with(PRODUCT_DENSITY, 0.75)
                            .gives(3000, Units.PRODUCT_UNIT, 6),
                    WorkedExample.from(Source.derived("a tank of 10 m3 holds 10,000 L"))
                            .with(PRODUCT_UNIT, "L")
                            .with(TankPlan.TANK_FILLED, 10, Units.M3)
                            .gives(10000, Units.PRODUCT_UNIT, 6),
                    WorkedExample.from(Source.derived("a tank of 10 m3 on wheels that carry 8 t: 8,000 L of 1 kg each"))
                            .with(PRODUCT_UNIT, "L")
                            .with(TANK_VOLUME, 10, Units.M3)
                            .with(TankPlan.TANK_FILLED, 10, Units.M3)
                            .with(PAYLOAD, 8)
                            .with(PRODUCT_DENSITY, 1)
                            .gives(8000, Units.PRODUCT_UNIT, 6),
                    WorkedExample.from(Source.derived("a tank of 10 m3, and no payload typed"))
                            .with(PRODUCT_UNIT, "L")
                            .with(TANK_VOLUME, 10, Units.M3)
                            .with(TankPlan.TANK_FILLED, 10, Units.M3)
                            .with(PRODUCT_DENSITY, 1.25)
                            .gives(10000, Units.PRODUCT_UNIT, 6),
                    WorkedExample.from(Source.derived("1 t of 1.25 kg in a litre are 800 L"))
                            .with(PRODUCT_UNIT, "L")
                            .with(PAYLOAD, 1)
                            .with(PRODUCT_DENSITY, 1.25)
                            .gives(800, Units.PRODUCT_UNIT, 6)));

    /** The machine says what it holds, and not in what the product goes by; the density would tell one from the other. */
    public static final Condition LOADS_UNTOLD = Condition.all(List.of(
            NO_DENSITY,
            Condition.any(List.of(
                    Condition.all(List.of(
                            Condition.is(PRODUCT_UNIT, "kg"), NO_PAYLOAD, new Condition.Given(TankPlan.TANK_FILLED))),
                    Condition.all(List.of(BY_VOLUME, NO_TANK, new Condition.Given(PAYLOAD)))))));

    /** {@code loads-spread}: product spread ÷ product in a full load, rounded up. */
    public static final Formula LOADS_SPREAD = new Formula(
            "loads-spread",
            LOADS,
            Expr.call(Function.ROUND_UP, value(SPREAD).over(HELD)),
            Source.commonPractice("whole loads: the last one counts, however small"),
            "each field filled for by itself; what a load leaves over may go on to the next field",
            List.of(
                    WorkedExample.from(Source.derived("1,600 kg are 1.6 loads of 1,000 kg"))
                            .with(SPREAD, 1600)
                            .with(HELD, 1000)
                            .gives(2, Units.ONE, 0),
                    WorkedExample.from(Source.derived("6 ha × 25 m3 are 150 m3, 15 loads of 10 m3 and no more"))
                            .with(SPREAD, 150000)
                            .with(HELD, 10000)
                            .gives(15, Units.ONE, 0)));

    /** {@code hours-of-loads}: loads spread × round time. */
    public static final Formula HOURS_OF_LOADS = new Formula(
            "hours-of-loads",
            ROUND_HOURS,
            value(LOADS).times(ROUND_TIME),
            Source.commonPractice("each load takes one round: filling, the way there, spreading, the way back"),
            "machine hours: of several alike each does its share; the last load is a whole round, however small",
            List.of(WorkedExample.from(Source.derived("16 rounds of 15 min are 4 h"))
                    .with(LOADS, 16)
                    .with(ROUND_TIME, 15)
                    .gives(4, Units.H, 6)));

    /** {@code spreader-test-rate}: weight ÷ area. */
    public static final Formula TEST_RATE = new Formula(
            "spreader-test-rate",
            TESTED,
            value(TEST_WEIGHT).over(TEST_AREA),
            SpraySources.FLORIDA,
            "the product that is to be spread, at the speed and setting of the work; width between bouts, not the throw",
            List.of(WorkedExample.from(SpraySources.FLORIDA)
                    .with(TEST_AREA, 4350, Units.FT.pow(2))
                    .with(TEST_WEIGHT, 20, Units.LB)
                    .gives(200, Units.LB.over(Units.AC), 0)));
}
