package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.ADDITIVE;
import static org.rickyard.trade.Quantities.CLAMP_KIND;
import static org.rickyard.trade.Quantities.CLAMP_LENGTH;
import static org.rickyard.trade.Quantities.WALL_HEIGHT;
import static org.rickyard.trade.silage.ClampContents.CROP_IN;
import static org.rickyard.trade.silage.ClampCrown.WIDTH_OVER_TOP;
import static org.rickyard.trade.silage.ClampSurface.SURFACE;

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

/** What covers a clamp: sheets, rolls and weights; and the additive that goes in. */
public final class Covering {
    private Covering() {}

    /** Sheet on the walls. */
    public static final Symbol SIDE_SHEET =
            Symbol.number("side sheet", Units.M2).possible(Range.NOT_NEGATIVE).decimals(0);
    /** Sheet over the top, all layers. */
    public static final Symbol TOP_SHEET = Symbol.number("top sheet, all layers", Units.M2)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** All sheet. */
    public static final Symbol SHEET =
            Symbol.number("sheet area", Units.M2).possible(Range.POSITIVE).decimals(0);
    /** Rolls. */
    public static final Symbol ROLLS =
            Symbol.number("rolls of sheet", Units.ONE).possible(Range.POSITIVE).decimals(0);
    /** Weights. */
    public static final Symbol TYRES = Symbol.number("tyres to weigh it down", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Additive. */
    public static final Symbol LITRES = Symbol.number("additive needed", Units.L)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);

    private static final Source CUSTOM = Source.commonPractice("overrule it by your own sheets");

    /** Layers of sheet. */
    public static final Constant LAYERS = new Constant(
            "layers of top sheet", 2, Units.ONE, Source.published("Teagasc: two or more sheets of 500 gauge"));
    /** Lap at the ends. */
    public static final Constant END_LAP = new Constant("lap of the sheet at each end", 1, Units.M, CUSTOM);
    /** Lap at the sides. */
    public static final Constant SIDE_LAP = new Constant("lap of the sheet at each side", 1, Units.M, CUSTOM);
    /** Sheets lap over each other. */
    public static final Constant OVERLAP = new Constant(
            "overlap between sheets", 45, Units.CM, Source.published("Saskatchewan Agriculture: 45 cm between sheets"));
    /** Width of a roll. */
    public static final Constant ROLL_WIDTH = new Constant("width of a roll of sheet", 10, Units.M, CUSTOM).aboveZero();
    /** Length of a roll. */
    public static final Constant ROLL_LENGTH =
            new Constant("length of a roll of sheet", 50, Units.M, CUSTOM).aboveZero();
    /** Size of a tyre. */
    public static final Constant TYRE = new Constant("diameter of a tyre", 0.6, Units.M, CUSTOM).aboveZero();

    private static final Source GEOMETRY = Source.derived("surface, laps and layers");

    /** Side sheets: walls only, with a metre of lap. */
    public static final Formula SIDES = new Formula(
            "side-sheet",
            SIDE_SHEET,
            choice(
                    Condition.is(CLAMP_KIND, ClampShape.WALLED),
                    number(2).times(value(WALL_HEIGHT).plus(constant(SIDE_LAP))).times(CLAMP_LENGTH),
                    new Expr.AsUnit(number(0), Units.M2)),
            GEOMETRY,
            "both walls, one layer; nought without walls",
            List.of(WorkedExample.from(Source.derived("walls 3 m and a lap of 1 m, 40 m long, twice: 320 m2"))
                    .with(CLAMP_KIND, ClampShape.WALLED)
                    .with(WALL_HEIGHT, 3)
                    .with(CLAMP_LENGTH, 40)
                    .gives(320, Units.M2, 0)));

    /** Top sheet: surface, laps all round, overlaps between sheets, layers. */
    public static final Formula TOP = new Formula(
            "top-sheet",
            TOP_SHEET,
            constant(LAYERS)
                    .times(value(SURFACE)
                            .plus(number(2).times(constant(END_LAP)).times(WIDTH_OVER_TOP))
                            .plus(number(2).times(constant(SIDE_LAP)).times(CLAMP_LENGTH)))
                    .times(constant(ROLL_WIDTH).over(constant(ROLL_WIDTH).minus(constant(OVERLAP))))
                    .onlyWhen(
                            Condition.compare(constant(ROLL_WIDTH), Condition.Relation.MORE, constant(OVERLAP)),
                            "the overlap between sheets is as wide as the roll: see both on Assumptions"),
            GEOMETRY,
            "laps all round; overlaps between strips as a share of the roll's width",
            List.of(WorkedExample.from(Source.derived(
                            "480 m2, laps 2 × 12 and 2 × 40 m2, two layers, 10 m strips overlapping 0.45 m: 1,223 m2"))
                    .with(SURFACE, 480)
                    .with(WIDTH_OVER_TOP, 12)
                    .with(CLAMP_LENGTH, 40)
                    .gives(1223.04, Units.M2, 2)));

    /** {@code sheet-area}: top and sides. */
    public static final Formula SHEET_AREA = new Formula(
            "sheet-area",
            SHEET,
            value(TOP_SHEET).plus(SIDE_SHEET),
            GEOMETRY,
            "top in all its layers and the sides once",
            List.of(WorkedExample.from(Source.derived("1,223 and 320 m2"))
                    .with(TOP_SHEET, 1223)
                    .with(SIDE_SHEET, 320)
                    .gives(1543, Units.M2, 0)));

    /** {@code sheet-rolls}: rounded up. */
    public static final Formula SHEET_ROLLS = new Formula(
            "sheet-rolls",
            ROLLS,
            call(Function.ROUND_UP, value(SHEET).over(constant(ROLL_WIDTH).times(constant(ROLL_LENGTH)))),
            GEOMETRY,
            "whole rolls of one size; what is left of a roll may not fit elsewhere",
            List.of(WorkedExample.from(Source.derived("1,543 m2 in rolls of 500 m2: 4"))
                    .with(SHEET, 1543)
                    .gives(4, Units.ONE, 0)));

    /** {@code weights}: tyres that touch, as Holmes advises. */
    public static final Formula WEIGHTS = new Formula(
            "sheet-weights",
            TYRES,
            call(Function.ROUND_UP, value(SURFACE).over(constant(TYRE).power(2))),
            Source.published("B. Holmes, Univ. Wisconsin: tyres touching"),
            "one tyre for each square of its diameter, 2.8 to the m2 at 0.6 m",
            List.of(WorkedExample.from(Source.derived("100 m2 at 0.6 m: 277.8, so 278"))
                    .with(SURFACE, 100)
                    .gives(278, Units.ONE, 0)));

    /** {@code additive-litres}: fresh tonnes × rate. */
    public static final Formula ADDITIVE_LITRES = new Formula(
            "additive-litres",
            LITRES,
            ClampContents.withCrop(value(CROP_IN).times(ADDITIVE)),
            Source.secondHand("Hillsborough 1995 in farm press: formic acid 2.3-2.5 L/t; others 3-5 L/t"),
            "tonnes fresh as ensiled; the label's rate decides",
            List.of(WorkedExample.from(Source.derived("612 t at 3 L/t"))
                    .with(CROP_IN, 612)
                    .with(ADDITIVE, 3)
                    .gives(1836, Units.L, 0)));
}
