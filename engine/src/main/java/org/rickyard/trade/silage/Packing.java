package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.silage.ClampContents.CLAMP_DM;
import static org.rickyard.trade.silage.ClampContents.DENSITY;
import static org.rickyard.trade.silage.ClampContents.DENSITY_DM;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Expr.Lookup.Mode;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** How well silage is packed: pores, what others print for its density, and how far it is from what is aimed at. */
public final class Packing {
    private Packing() {}

    /** Share of the volume that is water or dry matter. */
    public static final Symbol TAKEN_UP = Symbol.number("space taken up by water and dry matter", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(1);

    /** Share of the volume that is gas. */
    public static final Symbol PORES = Symbol.number("porosity", Units.PERCENT).decimals(1);
    /** Densities others print at this dry matter. */
    public static final Symbol OTHER_DENSITIES = Symbol.text("other published densities");
    /** Density above the one aimed at. */
    public static final Symbol ABOVE_TARGET =
            Symbol.number("density above the target", Units.KG_DM_PER_M3).decimals(0);
    /** Density above the least. */
    public static final Symbol ABOVE_LEAST =
            Symbol.number("density above the least", Units.KG_DM_PER_M3).decimals(0);
    /** Dry matter lost in store at this density. */
    public static final Symbol LOSS_BY_DENSITY = Symbol.number(
                    "storage loss at this density (180 days, lucerne)", Units.PERCENT)
            .decimals(1);

    /** Density aimed at. */
    public static final Constant TARGET = new Constant(
            "target dry matter density",
            15,
            Units.KG_DM.over(Units.KG).times(Units.LB).over(Units.FT3),
            Source.secondHand("D. Undersander, Univ. Wisconsin, Farm Progress 2009: 15 lb dry matter per ft3,"
                    + " for 60-70 % moisture"));
    /** Least density. */
    public static final Constant LEAST = new Constant(
            "least dry matter density of a clamp",
            200,
            Units.KG_DM_PER_M3,
            Source.published("LK Burgenland 2015, LK Oberoesterreich 2020: at least 200 kg dry matter per m3"));
    /** Most pores. */
    public static final Constant MOST_PORES = new Constant(
            "porosity wanted, below",
            40,
            Units.PERCENT,
            Source.secondHand("D. Undersander, Univ. Wisconsin, Farm Progress 2009: porosity below 0.40"));
    /** Density of water. */
    private static final Constant WATER =
            new Constant("density of water", 1000, Units.KG_PER_M3, Source.commonPractice("1,000 kg/m3")).aboveZero();
    /** Density of dry matter without pores. */
    public static final Constant SOLIDS = new Constant(
                    "density of solid dry matter",
                    1550,
                    Units.KG_DM_PER_M3,
                    Source.memory("about 1,550 kg/m3; the form with ash and organic matter is not held"))
            .aboveZero();
    /** Two densities typed that differ by more than this are asked about. */
    public static final Constant DISAGREEMENT = new Constant(
            "two densities typed may differ by",
            2,
            Units.PERCENT,
            Source.commonPractice("more than rounding explains"));

    /** A dry matter typed that is further off the crop's than this is asked about. */
    public static final Constant DRY_MATTER_OFF = new Constant(
            "dry matter typed for a clamp may be off that of its crop by",
            3,
            Units.PERCENT_DM,
            Source.commonPractice("points; more than samples of one crop differ by"));

    /** What several publishers print at one dry matter. */
    public static final ReferenceTable OTHERS = new ReferenceTable(
            "Other published densities of grass silage",
            "dry matter, to the nearest whole",
            Units.PERCENT_DM,
            "range",
            Units.ONE,
            List.of(
                    Row.of(25, "650-719 kg/m3 (Farmers Journal 0.65; DAERA 0.68; T. Fallon, Teagasc, 1 t in 1.39 m3)"),
                    Row.of(30, "600 kg/m3 in both (Farmers Journal, DAERA)")),
            Source.secondHand("Irish Farmers Journal; DAERA 2017; T. Fallon, Teagasc"));

    /** Loss by density. */
    public static final ReferenceTable RUPPEL = new ReferenceTable(
            "Dry matter loss at 180 days by density",
            "dry matter density",
            TARGET.unit(),
            "loss",
            Units.PERCENT,
            List.of(
                    Row.of(10, 20.2),
                    Row.of(14, 16.8),
                    Row.of(15, 15.9),
                    Row.of(16, 15.1),
                    Row.of(18, 13.4),
                    Row.of(22, 10.0)),
            Source.secondHand("Ruppel 1992, lucerne, as printed by vitaplus.com 2014; lb dry matter per ft3"));

    private static final Source PHYSICS = Source.derived("volume not taken up by water or solid dry matter");

    /** Water and dry matter in the space they take up. */
    public static final Formula SPACE_TAKEN_UP = new Formula(
            "space-taken-up",
            TAKEN_UP,
            new Expr.NumberOf(value(DENSITY), Units.KG_PER_M3)
                    .minus(new Expr.NumberOf(value(DENSITY_DM), Units.KG_DM_PER_M3))
                    .over(new Expr.NumberOf(constant(WATER), Units.KG_PER_M3))
                    .plus(value(DENSITY_DM).over(constant(SOLIDS))),
            PHYSICS,
            "solid dry matter at 1,550 kg/m3 from memory; what is over is gas",
            List.of(
                    WorkedExample.from(
                                    Source.derived("620 kg water and 155 kg dry matter: 62 and 10 % of a cubic metre"))
                            .with(DENSITY, 775)
                            .with(DENSITY_DM, 155)
                            .gives(72, Units.PERCENT, 6),
                    WorkedExample.from(Source.derived("458.25 kg water and 246.75 kg dry matter: 45.825 and 15.919 %"))
                            .with(DENSITY, 705)
                            .with(DENSITY_DM, 705 * 0.35)
                            .gives(61.744, Units.PERCENT, 3)));

    /** {@code porosity}: 1 − water ÷ its density − dry matter ÷ its density. */
    public static final Formula POROSITY = new Formula(
            "porosity",
            PORES,
            number(1)
                    .minus(TAKEN_UP)
                    .onlyWhen(
                            Condition.compare(value(TAKEN_UP), Relation.AT_MOST, number(1)),
                            "denser than silage without any pores would be: check the density and the dry matter"),
            PHYSICS,
            "what water and dry matter leave of the space; wanted below 40 %",
            List.of(
                    WorkedExample.from(Source.derived("705 kg/m3 at 35 % leave 38.3 %, under the published 40 %"))
                            .with(TAKEN_UP, 61.744)
                            .gives(38.3, Units.PERCENT, 1),
                    WorkedExample.from(Source.derived("600 kg/m3 at 35 % leave 47.5 %"))
                            .with(TAKEN_UP, 100 * (0.390 + 0.210 / 1.55))
                            .gives(47.5, Units.PERCENT, 1)));

    /** {@code density-range}: what others print at this dry matter, or that nobody does. */
    public static final Formula DENSITY_RANGE = new Formula(
            "density-range",
            OTHER_DENSITIES,
            choice(
                    new Condition.InTable(OTHERS, wholePercent(), Mode.EXACT),
                    new Expr.Lookup(OTHERS, wholePercent(), Mode.EXACT),
                    Expr.text("no published range")),
            Source.secondHand("Irish Farmers Journal; DAERA 2017; T. Fallon, Teagasc"),
            "the tables of DAERA and of Teagasc agree where they overlap, so they are one table and no range",
            List.of(
                    WorkedExample.from(Source.secondHand("three publishers at 25 %"))
                            .with(CLAMP_DM, 25)
                            .gives(
                                    "650-719 kg/m3 (Farmers Journal 0.65; DAERA 0.68; T. Fallon, Teagasc, 1 t in 1.39 m3)"),
                    WorkedExample.from(Source.derived("only one table reaches 40 %"))
                            .with(CLAMP_DM, 40)
                            .gives("no published range")));

    /** {@code density-above-target}: negative where it falls short. */
    public static final Formula DENSITY_ABOVE_TARGET = new Formula(
            "density-above-target",
            ABOVE_TARGET,
            value(DENSITY_DM).minus(constant(TARGET)),
            TARGET.source(),
            "below nought is short of it; British advisers name 220 and 320 kg/m3 besides, which conflict",
            List.of(
                    WorkedExample.from(Source.published(
                                    "J. Lawrence, Cornell PRO-DAIRY: 18 lb per ft3 is desirable, 3 above 15"))
                            .with(DENSITY_DM, 18, TARGET.unit())
                            .gives(3, TARGET.unit(), 6),
                    WorkedExample.from(Source.derived("15 lb per ft3 is 240.3 kg/m3"))
                            .with(DENSITY_DM, 240.3)
                            .givesWithin(0, Units.KG_DM_PER_M3, 0.05)));

    /** {@code density-above-least}: negative where it falls short. */
    public static final Formula DENSITY_ABOVE_LEAST = new Formula(
            "density-above-least",
            ABOVE_LEAST,
            value(DENSITY_DM).minus(constant(LEAST)),
            LEAST.source(),
            "below nought is short of it",
            List.of(WorkedExample.from(LEAST.source()).with(DENSITY_DM, 157).gives(-43, Units.KG_DM_PER_M3, 0)));

    /** {@code storage-loss-by-density}: beside the loss reckoned with, never averaged with it. */
    public static final Formula STORAGE_LOSS_BY_DENSITY = new Formula(
            "storage-loss-by-density",
            LOSS_BY_DENSITY,
            new Expr.Lookup(RUPPEL, value(DENSITY_DM), Mode.LINEAR),
            RUPPEL.source(),
            "160-352 kg dry matter per m3 only, lucerne in bunkers; no value beyond",
            List.of(
                    ruppel(10, 20.2),
                    ruppel(14, 16.8),
                    ruppel(15, 15.9),
                    ruppel(16, 15.1),
                    ruppel(18, 13.4),
                    ruppel(22, 10.0)));

    private static WorkedExample ruppel(double pounds, double loss) {
        return WorkedExample.from(RUPPEL.source())
                .with(DENSITY_DM, pounds, TARGET.unit())
                .givesWithin(loss, Units.PERCENT, 0.05);
    }

    private static Expr wholePercent() {
        Expr percents = new Expr.NumberOf(value(CLAMP_DM), Units.PERCENT_DM);
        return new Expr.AsUnit(Expr.call(Function.ROUND, percents, number(0)), Units.PERCENT_DM);
    }
}
