package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.greatest;
import static org.rickyard.formula.Expr.least;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.PRODUCT_UNIT;
import static org.rickyard.trade.Quantities.RESIDUAL;
import static org.rickyard.trade.Quantities.WATER_VOLUME;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;
import static org.rickyard.trade.spraying.TankPlan.BLOCK_AREA;
import static org.rickyard.trade.spraying.TankPlan.DOSE_USED;
import static org.rickyard.trade.spraying.TankPlan.SPRAY_TOTAL;
import static org.rickyard.trade.spraying.TankPlan.TANKFUL_AREA;
import static org.rickyard.trade.spraying.TankPlan.TREATED_AREA;

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
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;

/** Tankful by tankful: which fields it sprays, what goes in, and how the sprayer is emptied and rinsed. */
public final class TankLoads {
    private TankLoads() {}

    /** Id of the table of tankfuls by field. */
    public static final String LOADS = "tank-loads";

    /** Which tankful, counted from 1 within its block. */
    public static final Symbol TANKFUL = Symbol.number("tankful", Units.ONE).decimals(0);
    /** The same in words, to tell rows apart. */
    public static final Symbol TANKFUL_NAME = Symbol.text("load");
    /** Hectares of one field that one tankful sprays. */
    public static final Symbol AREA_IN_TANKFUL = Symbol.number("area in the tankful", Units.HA)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** Litres of one tankful that go on one field. */
    public static final Symbol LITRES = Symbol.number("spray on the field", Units.L)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Litres of one tankful. */
    public static final Symbol LOAD = Symbol.number("spray in the tankful", Units.L)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Product in one tankful. */
    public static final Symbol PRODUCT = Symbol.number("product in the tankful", Units.PRODUCT_UNIT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(3);
    /** The whole litres, kilograms or tablets of it. */
    public static final Symbol WHOLE = Symbol.number("whole L, kg or tablets", Units.PRODUCT_UNIT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** The rest, in what a jug or scale shows. */
    public static final Symbol REST = Symbol.number(
                    "and ml or g", Unit.of("ml or g", Units.PRODUCT_UNIT.dimension(), Ratio.of(1, 1000)))
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Mix to make with priming. */
    public static final Symbol WITH_PRIMING = Symbol.number("spray mix with priming", Units.L)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** How far what is left in the machine would spray. */
    public static final Symbol RUN_OUT = Symbol.number("residue run-out", Units.M)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Clean water wanted. */
    public static final Symbol RINSE_WATER =
            Symbol.number("rinse water", Units.L).possible(Range.NOT_NEGATIVE).decimals(0);
    /** What is left of the mix after three equal rinses. */
    public static final Symbol LEFT_AFTER_RINSING = Symbol.number("left after three rinses", Units.PERCENT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);

    private static final Source SPLIT =
            Source.derived("tankfuls laid end to end over the fields in list order; what two intervals share");
    private static final Source ISO_16119 = Source.published(
            "ISO 16119-3:2013 (text of the preview): 10 % of the tank, or 10 times the dilutable residue; for booms the"
                    + " same from memory");
    private static final Source RUN_OUT_SUM = Source.derived("30 L at 200 L/ha under 24 m runs out after 62.5 m");

    /** Share of the tank that the rinse tank should hold. */
    public static final Constant RINSE_SHARE =
            new Constant("rinse tank, share of the tank", 10, Units.PERCENT, ISO_16119);
    /** Times the residue that the rinse tank should hold. */
    public static final Constant RINSE_TIMES = new Constant("rinse tank, times the residue", 10, Units.ONE, ISO_16119);
    /** What may be left of the concentration. */
    public static final Constant CLEAN_ENOUGH = new Constant(
            "drained mix, share of its strength",
            2,
            Units.PERCENT,
            Source.published("ISO 16119-4:2014 (text of the preview): cleaning"));

    /** {@code area-in-tankful}: what the tankful and the field share, laid end to end. */
    public static final Formula FIELD_AREA = new Formula(
            "area-in-tankful",
            AREA_IN_TANKFUL,
            call(
                    Function.ROUND,
                    greatest(
                            new Expr.AsUnit(number(0), Units.HA),
                            least(
                                            value(SprayWork.AREA_BEFORE).plus(SprayWork.TREATED_AREA),
                                            value(TANKFUL).times(TANKFUL_AREA))
                                    .minus(greatest(
                                            value(SprayWork.AREA_BEFORE),
                                            value(TANKFUL).minus(number(1)).times(TANKFUL_AREA)))),
                    number(9)),
            SPLIT,
            "full tankfuls first, the fields in list order; a tankful may end one field and begin the next",
            List.of(
                    WorkedExample.from(Source.derived("fields of 4 and 6 ha, tankfuls of 7.5 ha: the first takes all of"
                                    + " the first field and 3.5 ha of the second"))
                            .with(SprayWork.AREA_BEFORE, 4)
                            .with(SprayWork.TREATED_AREA, 6)
                            .with(TANKFUL, 1)
                            .with(TANKFUL_AREA, 7.5)
                            .gives(3.5, Units.HA, 6),
                    WorkedExample.from(Source.derived("and the second tankful the other 2.5 ha"))
                            .with(SprayWork.AREA_BEFORE, 4)
                            .with(SprayWork.TREATED_AREA, 6)
                            .with(TANKFUL, 2)
                            .with(TANKFUL_AREA, 7.5)
                            .gives(2.5, Units.HA, 6)));

    /** {@code spray-on-field}. */
    public static final Formula FIELD_LITRES = new Formula(
            "spray-on-field",
            LITRES,
            value(AREA_IN_TANKFUL).times(WATER_VOLUME),
            Source.derived("area × water volume"),
            "of this tankful",
            List.of(
                    WorkedExample.from(SpraySources.FACTSHEET)
                            .with(AREA_IN_TANKFUL, 20)
                            .with(WATER_VOLUME, 200)
                            .gives(4000, Units.L, 0),
                    WorkedExample.from(SpraySources.ALBERTA)
                            .with(AREA_IN_TANKFUL, 30, Units.AC)
                            .with(WATER_VOLUME, 40, Units.L.over(Units.AC))
                            .gives(1200, Units.L, 0)));

    /** Litres of the tankful over all its fields. */
    public static final Expr TANKFUL_LITRES = new Expr.Total(LOADS, LITRES, Keys.LOAD_KEY, Keys.LOAD_KEY, true);

    /** {@code product-in-tankful}: litres ÷ water volume × dose. */
    public static final Formula PRODUCT_IN_TANKFUL = new Formula(
            "product-in-tankful",
            PRODUCT,
            value(LOAD).over(WATER_VOLUME).times(DOSE_USED),
            SpraySources.FACTSHEET,
            "measure it with a clean jug or scale; the label's mixing order and instructions come first",
            List.of(
                    // 7.5 US quarts are 1.875 gallons; the product's own unit is the gallon here.
                    WorkedExample.from(SpraySources.EXERCISE_7B)
                            .with(LOAD, 300, Units.GAL_US)
                            .with(WATER_VOLUME, 40, Units.GAL_US.over(Units.AC))
                            .with(DOSE_USED, 0.25, Units.PRODUCT_UNIT.over(Units.AC))
                            .gives(1.875, Units.PRODUCT_UNIT, 3),
                    WorkedExample.from(Source.derived("460 L at 200 L/ha, 1.25 L/ha"))
                            .with(LOAD, 460)
                            .with(WATER_VOLUME, 200)
                            .with(DOSE_USED, 1.25)
                            .gives(2.875, Units.PRODUCT_UNIT, 3)));

    /** The whole units of it. */
    public static final Formula WHOLE_UNITS = new Formula(
            "whole-units-in-tankful",
            WHOLE,
            choice(Condition.is(PRODUCT_UNIT, "tablet"), value(PRODUCT), call(Function.ROUND_DOWN, value(PRODUCT))),
            Source.derived("9.375 L is 9 L and 375 ml"),
            "tablets are not split here: plan so that they come out whole",
            List.of(
                    WorkedExample.from(Source.derived("9.375 L is 9 L and 375 ml"))
                            .with(PRODUCT, 9.375)
                            .with(PRODUCT_UNIT, "L")
                            .gives(9, Units.PRODUCT_UNIT, 0),
                    WorkedExample.from(Source.derived("tablets stay as reckoned"))
                            .with(PRODUCT, 7.5)
                            .with(PRODUCT_UNIT, "tablet")
                            .gives(7.5, Units.PRODUCT_UNIT, 3)));

    /** The rest in ml or g. */
    public static final Formula REST_UNITS = new Formula(
            "rest-in-tankful",
            REST,
            call(Function.ROUND, value(PRODUCT).minus(WHOLE), number(9)),
            Source.derived("9.375 L is 9 L and 375 ml"),
            "ml of litres, g of kilograms",
            List.of(WorkedExample.from(Source.derived("9.375 L is 9 L and 375 ml"))
                    .with(PRODUCT, 9.375)
                    .with(WHOLE, 9)
                    .gives(375, REST.unit(), 0)));

    /** {@code mix-with-priming}: total + priming, once for the block. */
    public static final Formula MIX_WITH_PRIMING = new Formula(
            "mix-with-priming",
            WITH_PRIMING,
            value(SPRAY_TOTAL).plus(Quantities.PRIMING),
            Source.derived("priming is needed once after each cleaning, not for each tankful"),
            "what primes the lines is sprayed out at the end, or is surplus: better a little short than over",
            List.of(WorkedExample.from(
                            Source.derived("3,460 L for the block and 10 L once to prime, not for each of 3"))
                    .with(SPRAY_TOTAL, 3460)
                    .with(Quantities.PRIMING, 10)
                    .gives(3470, Units.L, 6)));

    /** {@code residue-run-out}: residual ÷ (water volume × boom width); of bands, their share of the width. */
    public static final Formula RESIDUE_RUN_OUT = new Formula(
            "residue-run-out",
            RUN_OUT,
            value(RESIDUAL)
                    .over(value(WATER_VOLUME).times(WORKING_WIDTH))
                    .times(BLOCK_AREA)
                    .over(TREATED_AREA),
            RUN_OUT_SUM,
            "undiluted, at the rate of the job, of bands over their share of the ground; on untreated crop of the same"
                    + " permitted use, never above the dose",
            List.of(
                    runOut(10).gives(62.5, Units.M, 1),
                    // Bands over a third of the ground take three times as far.
                    runOut(10 / 3.0).gives(187.5, Units.M, 1)));

    private static WorkedExample.Draft runOut(double treated) {
        return WorkedExample.from(RUN_OUT_SUM)
                .with(RESIDUAL, 30)
                .with(WATER_VOLUME, 200)
                .with(WORKING_WIDTH, 24)
                .with(BLOCK_AREA, 10)
                .with(TREATED_AREA, treated);
    }

    /** {@code rinse-water}: 10 % of the tank or 10 times the residue, the lesser. */
    public static final Formula RINSE = new Formula(
            "rinse-water",
            RINSE_WATER,
            least(
                    constant(RINSE_SHARE).times(Quantities.TANK_VOLUME),
                    constant(RINSE_TIMES).times(RESIDUAL)),
            ISO_16119,
            "either rule meets the standard; it asks for none on a mounted tank up to 400 L",
            List.of(
                    WorkedExample.from(Source.derived("10 % of 3,000 L and 10 times 35 L: the lesser is 300"))
                            .with(Quantities.TANK_VOLUME, 3000)
                            .with(RESIDUAL, 35)
                            .gives(300, Units.L, 0),
                    WorkedExample.from(Source.derived("10 times a residue of 20 L is less than 10 % of 3,000 L"))
                            .with(Quantities.TANK_VOLUME, 3000)
                            .with(RESIDUAL, 20)
                            .gives(200, Units.L, 0)));

    /** {@code left-after-rinsing}: three equal rinses from the rinse tank. */
    public static final Formula AFTER_RINSING = new Formula(
            "left-after-rinsing",
            LEFT_AFTER_RINSING,
            value(RESIDUAL)
                    .over(value(RESIDUAL).plus(value(Quantities.RINSE_TANK).over(number(3))))
                    .power(3)
                    .onlyWhen(
                            Condition.compare(
                                    value(RESIDUAL), Condition.Relation.MORE, new Expr.AsUnit(number(0), Units.L)),
                            "residual volume is zero"),
            Source.derived("each rinse thins by residue ÷ (residue + water); three portions as in ISO 16236"),
            "well mixed at each rinse; washings go on an approved area as the label and local law say",
            List.of(WorkedExample.from(Source.derived("30 L rinsed three times with 100 L: (30/130)³ = 1.23 %"))
                    .with(RESIDUAL, 30)
                    .with(Quantities.RINSE_TANK, 300)
                    .gives(1.23, Units.PERCENT, 2)));

    private static Expr constant(Constant constant) {
        return Expr.constant(constant);
    }
}
