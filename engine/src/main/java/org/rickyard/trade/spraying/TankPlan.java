package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.least;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CONCENTRATION;
import static org.rickyard.trade.Quantities.DOSE;
import static org.rickyard.trade.Quantities.HIGHEST_DOSE;
import static org.rickyard.trade.Quantities.PACK_SIZE;
import static org.rickyard.trade.Quantities.TANK_VOLUME;
import static org.rickyard.trade.Quantities.USABLE_TANK;
import static org.rickyard.trade.Quantities.WATER_VOLUME;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** Tankfuls of a block (the fields of one job, mix and sprayer) and what product goes into each. */
public final class TankPlan {
    private TankPlan() {}

    /** Area of all fields of the block. */
    public static final Symbol BLOCK_AREA =
            Symbol.number("block area", Units.HA).possible(Range.POSITIVE).decimals(2);
    /** What of it gets spray. */
    public static final Symbol TREATED_AREA = Symbol.number("treated area of the block", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Spray liquid for the block. */
    public static final Symbol SPRAY_TOTAL =
            Symbol.number("total spray mix", Units.L).possible(Range.POSITIVE).decimals(0);
    /** The tank that is filled: usable if typed, otherwise nominal. */
    public static final Symbol TANK_FILLED =
            Symbol.number("tank filled", Units.L).possible(Range.of(5, 40000)).decimals(0);
    /** Area one full tank covers. */
    public static final Symbol TANKFUL_AREA =
            Symbol.number("area per tankful", Units.HA).possible(Range.POSITIVE).decimals(2);
    /** Whole tankfuls. */
    public static final Symbol FULL = Symbol.number("full tankfuls", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** What is left for the last, smaller load; 0 if the full ones come out even. */
    public static final Symbol PART =
            Symbol.number("part tankful", Units.L).possible(Range.NOT_NEGATIVE).decimals(0);
    /** All loads, the smaller one counted. */
    public static final Symbol LOADS =
            Symbol.number("tankfuls", Units.ONE).possible(Range.POSITIVE).decimals(0);
    /** The load if all were filled alike. */
    public static final Symbol EVEN =
            Symbol.number("even tankful", Units.L).possible(Range.POSITIVE).decimals(0);
    /** Product in each load if all were filled alike. */
    public static final Symbol PRODUCT_EVEN = Symbol.number("product per even tankful", Units.PRODUCT_UNIT)
            .possible(Range.POSITIVE)
            .decimals(3);
    /** What a dose that is a share of the spray comes to on a hectare. */
    public static final Symbol SHARE_DOSE = Symbol.number("dose from the share of the spray", Units.DOSE)
            .possible(Range.POSITIVE)
            .decimals(3);
    /** The dose per hectare reckoned with. */
    public static final Symbol DOSE_USED = Symbol.number("dose per hectare", Units.DOSE)
            .possible(Range.POSITIVE)
            .decimals(3);
    /** Product for the block. */
    public static final Symbol PRODUCT_FOR_BLOCK = Symbol.number("product total", Units.PRODUCT_UNIT)
            .possible(Range.POSITIVE)
            .decimals(3);
    /** Product in each full tank. */
    public static final Symbol PRODUCT_FULL = Symbol.number("product per full tankful", Units.PRODUCT_UNIT)
            .possible(Range.POSITIVE)
            .decimals(3);
    /** Product in the last, smaller load. */
    public static final Symbol PRODUCT_PART = Symbol.number("product in part tankful", Units.PRODUCT_UNIT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(3);
    /** Whole packs. */
    public static final Symbol PACK_COUNT =
            Symbol.number("packs", Units.ONE).possible(Range.NOT_NEGATIVE).decimals(0);

    private static final Source FACTSHEET = SpraySources.FACTSHEET;
    private static final Source EXERCISE = SpraySources.EXERCISE_7B;
    private static final Source BLOCK_DERIVATION = Source.derived(
            "17.3 ha at 200 L/ha from a 1,500 L tank, dose 1.25: 3,460 L, 2 full and 460 L; 21.625 = 2 × 9.375 + 2.875");

    /** {@code total-spray-mix}: treated area × water volume. */
    public static final Formula TOTAL_SPRAY_MIX = new Formula(
            "total-spray-mix",
            SPRAY_TOTAL,
            value(TREATED_AREA).times(WATER_VOLUME),
            FACTSHEET,
            "of bands, only their share of the ground; priming and what stays in the lines come on top",
            List.of(
                    WorkedExample.from(FACTSHEET)
                            .with(TREATED_AREA, 20)
                            .with(WATER_VOLUME, 200)
                            .gives(4000, Units.L, 0),
                    WorkedExample.from(SpraySources.ALBERTA)
                            .with(TREATED_AREA, 30, Units.AC)
                            .with(WATER_VOLUME, 40, Units.L.over(Units.AC))
                            .gives(1200, Units.L, 0)));

    /** The tank reckoned with. */
    public static final Formula TANK = new Formula(
            "tank-filled",
            TANK_FILLED,
            given(USABLE_TANK, value(TANK_VOLUME)),
            Source.commonPractice("the usable volume where it is typed, otherwise the nominal tank"),
            "never above what the sprayer's plate allows",
            List.of(WorkedExample.from(Source.derived("the typed usable volume stands before the nominal one"))
                    .with(USABLE_TANK, 2800)
                    .with(TANK_VOLUME, 3000)
                    .gives(2800, Units.L, 0)));

    /** {@code area-per-tankful}: tank ÷ water volume. */
    public static final Formula AREA_PER_TANKFUL = new Formula(
            "area-per-tankful",
            TANKFUL_AREA,
            value(TANK_FILLED).over(WATER_VOLUME),
            FACTSHEET,
            "a tank filled to the volume stated",
            List.of(
                    oldTank(100, 5),
                    oldTank(5, 100),
                    WorkedExample.from(EXERCISE)
                            .with(TANK_FILLED, 300, Units.GAL_US)
                            .with(WATER_VOLUME, 40, Units.GAL_US.over(Units.AC))
                            .gives(7.5, Units.AC, 1),
                    WorkedExample.from(BLOCK_DERIVATION)
                            .with(TANK_FILLED, 1500)
                            .with(WATER_VOLUME, 200)
                            .gives(7.5, Units.HA, 1)));

    private static WorkedExample oldTank(double gallonsPerAcre, double acres) {
        return WorkedExample.from(VolumeComparison.OLD_PRACTICE)
                .with(TANK_FILLED, 500, Units.GAL_UK)
                .with(WATER_VOLUME, gallonsPerAcre, Units.GAL_UK.over(Units.AC))
                .gives(acres, Units.AC, 3);
    }

    /** {@code full-tankfuls}: total spray mix ÷ tank, rounded down. */
    public static final Formula FULL_TANKFULS = new Formula(
            "full-tankfuls",
            FULL,
            call(Function.ROUND_DOWN, value(SPRAY_TOTAL).over(TANK_FILLED)),
            FACTSHEET,
            "binary noise is cut before rounding, so an even number of tankfuls leaves no phantom load",
            List.of(
                    WorkedExample.from(FACTSHEET)
                            .with(SPRAY_TOTAL, 4000)
                            .with(TANK_FILLED, 1000)
                            .gives(4, Units.ONE, 0),
                    WorkedExample.from(BLOCK_DERIVATION)
                            .with(SPRAY_TOTAL, 3460)
                            .with(TANK_FILLED, 1500)
                            .gives(2, Units.ONE, 0)));

    /** {@code part-tankful}: what the full tankfuls leave. */
    public static final Formula PART_TANKFUL = new Formula(
            "part-tankful",
            PART,
            call(Function.ROUND, value(SPRAY_TOTAL).minus(value(FULL).times(TANK_FILLED)), number(9)),
            FACTSHEET,
            "0 when the full tankfuls come out even; mix only what is needed and make the last load exact",
            List.of(
                    WorkedExample.from(FACTSHEET)
                            .with(SPRAY_TOTAL, 4000)
                            .with(FULL, 4)
                            .with(TANK_FILLED, 1000)
                            .gives(0, Units.L, 6),
                    WorkedExample.from(BLOCK_DERIVATION)
                            .with(SPRAY_TOTAL, 3460)
                            .with(FULL, 2)
                            .with(TANK_FILLED, 1500)
                            .gives(460, Units.L, 6)));

    /** {@code tankfuls}: the full ones and the smaller one, if there is one. */
    public static final Formula TANKFULS = new Formula(
            "tankfuls",
            LOADS,
            call(Function.ROUND_UP, value(SPRAY_TOTAL).over(TANK_FILLED)),
            FACTSHEET,
            "binary noise is cut before rounding",
            List.of(
                    WorkedExample.from(FACTSHEET)
                            .with(SPRAY_TOTAL, 4000)
                            .with(TANK_FILLED, 1000)
                            .gives(4, Units.ONE, 0),
                    WorkedExample.from(BLOCK_DERIVATION)
                            .with(SPRAY_TOTAL, 3460)
                            .with(TANK_FILLED, 1500)
                            .gives(3, Units.ONE, 0)));

    /** {@code even-tankful}: all loads alike. */
    public static final Formula EVEN_TANKFUL = new Formula(
            "even-tankful",
            EVEN,
            value(SPRAY_TOTAL).over(LOADS),
            Source.memory("operator training: a tiny last load is hard to agitate and measure, so fill all alike"),
            "the alternative where the last load would be small",
            List.of(
                    WorkedExample.from(FACTSHEET)
                            .with(SPRAY_TOTAL, 4000)
                            .with(LOADS, 4)
                            .gives(1000, Units.L, 6),
                    WorkedExample.from(BLOCK_DERIVATION)
                            .with(SPRAY_TOTAL, 3460)
                            .with(LOADS, 3)
                            .gives(1153.33, Units.L, 2)));

    /** {@code product-per-even-tankful}. */
    public static final Formula PRODUCT_PER_EVEN_TANKFUL = new Formula(
            "product-per-even-tankful",
            PRODUCT_EVEN,
            value(EVEN).over(WATER_VOLUME).times(DOSE_USED),
            Source.derived("as for a full tank"),
            "only where all loads are filled alike",
            List.of(WorkedExample.from(BLOCK_DERIVATION)
                    .with(EVEN, 3460.0 / 3)
                    .with(WATER_VOLUME, 200)
                    .with(DOSE_USED, 1.25)
                    .gives(7.2083, Units.PRODUCT_UNIT, 4)));

    /** {@code dose-from-share}: a dose per litre of spray on the water volume. */
    public static final Formula DOSE_FROM_SHARE = new Formula(
            "dose-from-share",
            SHARE_DOSE,
            value(CONCENTRATION).times(WATER_VOLUME),
            Source.commonPractice("a dose typed as a share of the spray is reckoned on the water volume"),
            "changes with the water volume: read the label for both",
            List.of(WorkedExample.from(SpraySources.courseNotes("Q10: 2 % in 500 L is 10 L"))
                    .with(CONCENTRATION, 0.02)
                    .with(WATER_VOLUME, 500)
                    .gives(10, Units.DOSE, 3)));

    /** The dose reckoned with: per area as typed, or a share of the spray, never above the ceiling per hectare. */
    public static final Formula DOSE_PER_HECTARE = new Formula(
            "dose-per-hectare",
            DOSE_USED,
            given(
                    DOSE,
                    choice(
                            new Condition.Blank(CONCENTRATION),
                            // Neither typed: it is a dose that is asked for.
                            value(DOSE),
                            choice(
                                    new Condition.Blank(HIGHEST_DOSE),
                                    value(SHARE_DOSE),
                                    least(value(SHARE_DOSE), value(HIGHEST_DOSE))))),
            Source.memory("label practice: of a dose per 100 L and a highest dose per hectare the lower holds"),
            "a dose typed per area stands as typed, and is a stop if it is above the highest",
            List.of(
                    WorkedExample.from(Source.derived("200 ml/100 L on 400 L/ha is 0.8 L/ha, below a ceiling of 1"))
                            .with(CONCENTRATION, 0.002)
                            .with(SHARE_DOSE, 0.8)
                            .with(HIGHEST_DOSE, 1)
                            .gives(0.8, Units.DOSE, 3),
                    WorkedExample.from(Source.derived("200 ml/100 L on 800 L/ha is 1.6 L/ha; the ceiling of 1 holds"))
                            .with(CONCENTRATION, 0.002)
                            .with(SHARE_DOSE, 1.6)
                            .with(HIGHEST_DOSE, 1)
                            .gives(1, Units.DOSE, 3),
                    WorkedExample.from(Source.derived("200 ml/100 L on 800 L/ha is 1.6 L/ha, with no ceiling typed"))
                            .with(CONCENTRATION, 0.002)
                            .with(SHARE_DOSE, 1.6)
                            .gives(1.6, Units.DOSE, 3)));

    /** {@code product-total}: treated area × dose. */
    public static final Formula PRODUCT_TOTAL = new Formula(
            "product-total",
            PRODUCT_FOR_BLOCK,
            value(TREATED_AREA).times(DOSE_USED),
            Source.published("IRRI Rice Knowledge Bank, Product required: rate × area"),
            "priming comes on top; never above the label's dose",
            List.of(
                    WorkedExample.from(EXERCISE)
                            .with(TREATED_AREA, 7.5, Units.AC)
                            .with(DOSE_USED, 0.25, Units.PRODUCT_UNIT.over(Units.AC))
                            .gives(1.875, Units.PRODUCT_UNIT, 3),
                    WorkedExample.from(BLOCK_DERIVATION)
                            .with(TREATED_AREA, 17.3)
                            .with(DOSE_USED, 1.25)
                            .gives(21.625, Units.PRODUCT_UNIT, 3)));

    /** {@code product-per-full-tankful}: tank ÷ water volume × dose. */
    public static final Formula PRODUCT_PER_FULL_TANKFUL = new Formula(
            "product-per-full-tankful",
            PRODUCT_FULL,
            value(TANKFUL_AREA)
                    .times(DOSE_USED)
                    .onlyWhen(
                            Condition.compare(
                                    call(Function.ROUND, value(TREATED_AREA).over(TANKFUL_AREA), number(9)),
                                    Relation.AT_LEAST,
                                    number(1)),
                            "there is no full tankful"),
            EXERCISE,
            "a full tank; the last, smaller load takes less. None where the tank is never full",
            List.of(
                    // 7.5 US quarts are 1.875 gallons; the product's own unit is the gallon here.
                    WorkedExample.from(EXERCISE)
                            .with(TREATED_AREA, 7.5, Units.AC)
                            .with(TANKFUL_AREA, 7.5, Units.AC)
                            .with(DOSE_USED, 0.25, Units.PRODUCT_UNIT.over(Units.AC))
                            .gives(1.875, Units.PRODUCT_UNIT, 3),
                    WorkedExample.from(BLOCK_DERIVATION)
                            .with(TREATED_AREA, 17.3)
                            .with(TANKFUL_AREA, 7.5)
                            .with(DOSE_USED, 1.25)
                            .gives(9.375, Units.PRODUCT_UNIT, 3)));

    /** {@code product-in-part-tankful}: part tankful ÷ water volume × dose. */
    public static final Formula PRODUCT_IN_PART_TANKFUL = new Formula(
            "product-in-part-tankful",
            PRODUCT_PART,
            value(PART).over(WATER_VOLUME).times(DOSE_USED),
            FACTSHEET,
            "0 when there is no part tankful",
            List.of(WorkedExample.from(BLOCK_DERIVATION)
                    .with(PART, 460)
                    .with(WATER_VOLUME, 200)
                    .with(DOSE_USED, 1.25)
                    .gives(2.875, Units.PRODUCT_UNIT, 3)));

    /** {@code packs}: product total ÷ pack size, rounded up. */
    public static final Formula PACKS = new Formula(
            "packs",
            PACK_COUNT,
            call(Function.ROUND_UP, value(PRODUCT_FOR_BLOCK).over(PACK_SIZE)),
            Source.derived("whole packs on the block's total, rounded up once, stock not taken off"),
            "rounded on the total of the block, never per field or tankful",
            List.of(WorkedExample.from(BLOCK_DERIVATION)
                    .with(PRODUCT_FOR_BLOCK, 21.625)
                    .with(PACK_SIZE, 5)
                    .gives(5, Units.ONE, 0)));
}
