package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.LAYER;
import static org.rickyard.trade.Quantities.MASS;
import static org.rickyard.trade.Quantities.NUMBER_OF_MACHINES;
import static org.rickyard.trade.Quantities.ROLLER_MASS;
import static org.rickyard.trade.silage.ClampSides.HEIGHT;
import static org.rickyard.trade.silage.Filling.DELIVERY_USED;

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

/** What crop an hour the rolling weight can take, what weight the delivery needs, and in how many layers. */
public final class Rolling {
    private Rolling() {}

    private static final Unit PER_HOURLY_TONNE = Units.T.over(Units.T_PER_H).named("t per t/h");

    /** Mass that rolls, all machines together. */
    public static final Symbol MASS_USED =
            Symbol.number("rolling mass", Units.T).possible(Range.POSITIVE).decimals(1);
    /** Delivery the rollers can take, usual rule. */
    public static final Symbol CAPACITY = tonnesPerHour("rolling capacity");
    /** The same by the Austrian rule. */
    public static final Symbol CAPACITY_THIRD = tonnesPerHour("rolling capacity, one third");
    /** The same by the American rule. */
    public static final Symbol CAPACITY_FORTY = tonnesPerHour("rolling capacity, rule of 800");
    /** Weight the delivery needs, usual rule. */
    public static final Symbol WEIGHT = tonnes("rolling weight needed");
    /** The same by the Austrian rule. */
    public static final Symbol WEIGHT_THIRD = tonnes("rolling weight needed, one third");
    /** The same by the American rule. */
    public static final Symbol WEIGHT_FORTY = tonnes("rolling weight needed, rule of 800");
    /** Layer reckoned with. */
    public static final Symbol LAYER_USED = Symbol.number("layer reckoned with", Units.CM)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Layers. */
    public static final Symbol LAYERS = Symbol.number("layers, at least", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(0);

    /** The usual rule. */
    public static final Constant QUARTER = new Constant(
                    "rolling weight for each tonne an hour",
                    0.25,
                    PER_HOURLY_TONNE,
                    Source.commonPractice(
                            "Great Britain and Ireland: a quarter of the tonnes arriving in an hour, the lenient"
                                    + " rule; farm press quotes it for grass above 27 % dry matter"))
            .aboveZero();
    /** The Austrian rule. */
    public static final Constant THIRD = new Constant(
                    "rolling weight for each tonne an hour, one third",
                    1.0 / 3,
                    PER_HOURLY_TONNE,
                    Source.published("LK Burgenland 2015, LK Oberoesterreich 2020: one third"))
            .aboveZero();
    /** The American rule. */
    public static final Constant FORTY = new Constant(
                    "rolling weight for each tonne an hour, rule of 800",
                    0.40,
                    PER_HOURLY_TONNE,
                    Source.secondHand("pounds = 800 × short tons an hour, farm press"))
            .aboveZero();
    /** Layer where none is typed. */
    public static final Constant USUAL_LAYER = new Constant(
                    "layer before rolling",
                    15,
                    Units.CM,
                    Source.published("Holmes & Muck, Univ. Wisconsin proceedings 2002: under 6 in"))
            .possible(LAYER.possible());

    private static final Source AUSTRIA =
            Source.published("LK Burgenland 2015: 17 t advised at one third, so 51 t/h (the division is derived)");
    private static final Source EIGHT_HUNDRED =
            Source.secondHand("rule of 800: 40,000 lb ÷ 800 = 50 short tons an hour; a trade page prints 150, a slip");

    /** {@code rolling-mass}: typed for the clamp, otherwise the clamp roller of the machine list and how many of it. */
    public static final Formula ROLLING_MASS = new Formula(
            "rolling-mass",
            MASS_USED,
            given(
                    ROLLER_MASS,
                    choice(
                            new Condition.Blank(MASS),
                            value(ROLLER_MASS),
                            choice(
                                    new Condition.Blank(NUMBER_OF_MACHINES),
                                    value(MASS),
                                    value(MASS).times(NUMBER_OF_MACHINES)))),
            Source.commonPractice("typed for the clamp; otherwise the only clamp roller listed for its holding"),
            "all machines that roll the whole time; a machine that pushes up as well rolls less",
            List.of(
                    WorkedExample.from(Source.derived("what is typed for the clamp stands before the machine list"))
                            .with(ROLLER_MASS, 15)
                            .with(MASS, 9)
                            .gives(15, Units.T, 1),
                    WorkedExample.from(Source.derived("two rollers of 9 t"))
                            .with(MASS, 9)
                            .with(NUMBER_OF_MACHINES, 2)
                            .gives(18, Units.T, 1),
                    WorkedExample.from(Source.derived("one roller of 9 t"))
                            .with(MASS, 9)
                            .gives(9, Units.T, 1)));

    /** {@code rolling-capacity}. */
    public static final Formula ROLLING_CAPACITY = capacity(
            "rolling-capacity",
            CAPACITY,
            QUARTER,
            WorkedExample.from(Source.derived("15 t at a quarter"))
                    .with(MASS_USED, 15)
                    .gives(60, Units.T_PER_H, 0));
    /** {@code rolling-capacity-one-third}. */
    public static final Formula ROLLING_CAPACITY_THIRD = capacity(
            "rolling-capacity-one-third",
            CAPACITY_THIRD,
            THIRD,
            WorkedExample.from(AUSTRIA).with(MASS_USED, 17).gives(51, Units.T_PER_H, 0));
    /** {@code rolling-capacity-rule-of-800}. */
    public static final Formula ROLLING_CAPACITY_FORTY = capacity(
            "rolling-capacity-rule-of-800",
            CAPACITY_FORTY,
            FORTY,
            WorkedExample.from(EIGHT_HUNDRED)
                    .with(MASS_USED, 40000, Units.LB)
                    .gives(50, Units.SHORT_TON.over(Units.H), 0));

    /** {@code rolling-weight-needed}. */
    public static final Formula ROLLING_WEIGHT_NEEDED = weight(
            "rolling-weight-needed",
            WEIGHT,
            QUARTER,
            WorkedExample.from(Source.derived("60 t/h at a quarter"))
                    .with(DELIVERY_USED, 60)
                    .gives(15, Units.T, 1));
    /** {@code rolling-weight-needed-one-third}. */
    public static final Formula ROLLING_WEIGHT_THIRD = weight(
            "rolling-weight-needed-one-third",
            WEIGHT_THIRD,
            THIRD,
            WorkedExample.from(AUSTRIA).with(DELIVERY_USED, 51).gives(17, Units.T, 1));
    /** {@code rolling-weight-needed-rule-of-800}. */
    public static final Formula ROLLING_WEIGHT_FORTY = weight(
            "rolling-weight-needed-rule-of-800",
            WEIGHT_FORTY,
            FORTY,
            WorkedExample.from(EIGHT_HUNDRED)
                    .with(DELIVERY_USED, 50, Units.SHORT_TON.over(Units.H))
                    .gives(40000, Units.LB, 0));

    /** Layer: typed, otherwise the published one. */
    public static final Formula LAYER_RECKONED = new Formula(
            "layer",
            LAYER_USED,
            given(LAYER, constant(USUAL_LAYER)),
            USUAL_LAYER.source(),
            "before rolling; German advice is at most 30 cm, three passes, about 4 km/h",
            List.of(WorkedExample.from(USUAL_LAYER.source()).gives(15, Units.CM, 0)));

    /** {@code layers}: rounded up; rolling thins a layer, so there will be more. */
    public static final Formula LAYER_COUNT = new Formula(
            "layers",
            LAYERS,
            Expr.call(Function.ROUND_UP, value(HEIGHT).over(value(LAYER_USED).in(Units.M))),
            Source.derived("settled height over layer, rounded up"),
            "rolling thins each layer, so there will be more",
            List.of(
                    WorkedExample.from(Source.derived("2.5 m in layers of 15 cm: 16.7, so 17"))
                            .with(HEIGHT, 2.5)
                            .with(LAYER_USED, 15)
                            .gives(17, Units.ONE, 0),
                    WorkedExample.from(Source.derived("2.4 m in layers of 15 cm: 16"))
                            .with(HEIGHT, 2.4)
                            .with(LAYER_USED, 15)
                            .gives(16, Units.ONE, 0)));

    private static Symbol tonnesPerHour(String name) {
        return Symbol.number(name, Units.T_PER_H).possible(Range.POSITIVE).decimals(0);
    }

    private static Symbol tonnes(String name) {
        return Symbol.number(name, Units.T).possible(Range.POSITIVE).decimals(1);
    }

    private static Formula capacity(String id, Symbol result, Constant coefficient, WorkedExample example) {
        return new Formula(
                id,
                result,
                value(MASS_USED).over(constant(coefficient)),
                coefficient.source(),
                "fresh crop an hour; the three rules differ by 60 %",
                List.of(example));
    }

    private static Formula weight(String id, Symbol result, Constant coefficient, WorkedExample example) {
        return new Formula(
                id,
                result,
                value(DELIVERY_USED).times(constant(coefficient)),
                coefficient.source(),
                "all rollers together; the three rules differ by 60 %",
                List.of(example));
    }
}
