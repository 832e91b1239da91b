package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.PAYLOAD;
import static org.rickyard.trade.Quantities.PRODUCT_UNIT;
import static org.rickyard.trade.Quantities.SPREAD_DOSE;

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
            .decimals(2);

    /** Product that the machine holds when it is full. */
    public static final Symbol HELD = Symbol.number("product in a full load", Units.PRODUCT_UNIT)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Loads that a field takes. */
    public static final Symbol LOADS =
            Symbol.number("loads spread", Units.ONE).possible(Range.POSITIVE).decimals(0);

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

    /** A capacity as so many units of a product that goes by this one. */
    private static Expr held(Symbol capacity, Unit unit) {
        return new Expr.AsUnit(new Expr.NumberOf(value(capacity), unit), Units.PRODUCT_UNIT);
    }

    /** {@code product-in-load}: the payload for what goes by weight, the tank for what goes by volume. */
    public static final Formula PRODUCT_IN_LOAD = new Formula(
            "product-in-load",
            HELD,
            choice(
                    Condition.is(PRODUCT_UNIT, "kg"),
                    held(PAYLOAD, Units.KG),
                    held(TankPlan.TANK_FILLED, Units.L).onlyWhen(BY_VOLUME, NEITHER)),
            Source.commonPractice("a spreader is filled to its payload, a tanker to its tank"),
            "filled to what is typed of the machine; a light product may fill the hopper before it weighs so much",
            List.of(
                    WorkedExample.from(Source.derived("3 t are 3,000 kg"))
                            .with(PRODUCT_UNIT, "kg")
                            .with(PAYLOAD, 3)
                            .gives(3000, Units.PRODUCT_UNIT, 6),
                    WorkedExample.from(Source.derived("a tank of 10 m3 holds 10,000 L"))
                            .with(PRODUCT_UNIT, "L")
                            .with(TankPlan.TANK_FILLED, 10, Units.M3)
                            .gives(10000, Units.PRODUCT_UNIT, 6)));

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
}
