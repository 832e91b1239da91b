package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Keys.CLAMP_KEY;
import static org.rickyard.trade.Quantities.DM_TARGET;
import static org.rickyard.trade.Quantities.DRY_MATTER_DENSITY;
import static org.rickyard.trade.Quantities.FRESH_DENSITY;
import static org.rickyard.trade.Quantities.SPACE_OF_A_TONNE;
import static org.rickyard.trade.silage.ClampShape.VOLUME;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** How dense silage lies, what a clamp holds, and how full the crop makes it. */
public final class ClampContents {
    private ClampContents() {}

    /** Dry matter content of what the clamp holds. */
    public static final Symbol CLAMP_DM = Symbol.number("dry matter of the silage", Units.PERCENT_DM)
            .possible(new Range(5, true, 95, true))
            .decimals(1);
    /** Fresh density reckoned with. */
    public static final Symbol DENSITY = Symbol.number("clamp density (fresh)", Units.KG_PER_M3)
            .possible(Range.above(0, 1150))
            .decimals(0);
    /** Dry matter density reckoned with. */
    public static final Symbol DENSITY_DM = Symbol.number("clamp density (dry matter)", Units.KG_DM_PER_M3)
            .possible(Range.above(0, 500))
            .decimals(0);
    /** Where the density comes from. */
    public static final Symbol DENSITY_FROM = Symbol.text("density taken from");
    /** Fresh silage the clamp holds. */
    public static final Symbol CAPACITY = Symbol.number("clamp capacity (fresh)", Units.T)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Dry matter the clamp holds. */
    public static final Symbol CAPACITY_DM = Symbol.number("clamp capacity (dry matter)", Units.T_DM)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Fresh crop allotted to the clamp. */
    public static final Symbol CROP_IN = Symbol.number("crop in clamp (fresh)", Units.T)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Dry matter of the crop allotted to the clamp. */
    public static final Symbol CROP_IN_DM = Symbol.number("crop in clamp (dry matter)", Units.T_DM)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** How full the crop makes the clamp. */
    public static final Symbol FILL = Symbol.number("clamp fill", Units.PERCENT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Fresh crop the clamp can still take; below 0 it is overfull. */
    public static final Symbol ROOM =
            Symbol.number("room left (fresh; overfull if below 0)", Units.T).decimals(0);
    /** Rows of crop for the clamp that have a tonnage. */
    public static final Symbol CROP_ROWS =
            Symbol.number("crop rows", Units.ONE).possible(Range.NOT_NEGATIVE).decimals(0);
    /** Rows of crop for the clamp that lack one. */
    public static final Symbol CROP_ROWS_LACKING = Symbol.number("crop rows withheld", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Fresh crop of those rows. */
    public static final Symbol CROP_TOTAL =
            Symbol.number("crop of those rows (fresh)", Units.T).decimals(0);
    /** Dry matter of those rows. */
    public static final Symbol CROP_TOTAL_DM =
            Symbol.number("crop of those rows (dry matter)", Units.T_DM).decimals(0);

    private static final Source DAERA = Source.published("DAERA (Northern Ireland), Winter feed planning, 14 Sept 2017,"
            + " grass 20-45 %; the row at 18 %: Teagasc as reported by agriland.ie (press)");
    private static final Source PRESS_EXAMPLE =
            Source.published("agriland.co.uk (press), clamp 3 × 10 × 30 m: 900 m3 × 0.68 = 612 t at 25 %");
    private static final Source SECOND_PRESS_EXAMPLE =
            Source.secondHand("independent.ie, clamp 40 × 10 × 3 m at 25 %: 1,200 m3, 816 t");

    /** Density of settled grass silage by dry matter. */
    public static final ReferenceTable GRASS_DENSITY = new ReferenceTable(
            "Density of settled grass silage",
            "dry matter",
            Units.PERCENT_DM,
            "fresh density",
            Units.T_PER_M3,
            List.of(
                    Row.of(18, 0.81),
                    Row.of(20, 0.77),
                    Row.of(25, 0.68),
                    Row.of(30, 0.60),
                    Row.of(35, 0.54),
                    Row.of(40, 0.48),
                    Row.of(45, 0.42)),
            DAERA);

    /** Dry matter of the silage: target if typed, otherwise the mean of the crop going in, weighted by mass. */
    public static final Formula DM_OF_CLAMP = new Formula(
            "clamp-dry-matter",
            CLAMP_DM,
            given(
                    DM_TARGET,
                    choice(
                            Condition.compare(value(CROP_IN), Relation.MORE, new Expr.AsUnit(Expr.number(0), Units.T)),
                            withoutNoise(value(CROP_IN_DM).over(CROP_IN)),
                            value(DM_TARGET))),
            Source.derived("typed; otherwise dry matter going in over fresh mass going in"),
            "the crop as ensiled; effluent and losses change it later. Without crop, the target must be typed",
            List.of(
                    WorkedExample.from(Source.derived("what is typed stands before the crop"))
                            .with(DM_TARGET, 28)
                            .with(CROP_IN, 48)
                            .with(CROP_IN_DM, 12)
                            .gives(28, Units.PERCENT_DM, 6),
                    WorkedExample.from(
                                    Source.secondHand("H. Richards, Western Telegraph: 48 t fresh of 12 t dry matter is"
                                            + " 25 % (printed in kg)"))
                            .with(CROP_IN, 48)
                            .with(CROP_IN_DM, 12)
                            .gives(25, Units.PERCENT_DM, 6)));

    /** What no silage reaches, however well it is packed. */
    public static final Constant MOST_FRESH = new Constant(
                    "fresh density that no silage reaches",
                    FRESH_DENSITY.possible().high(),
                    Units.KG_PER_M3,
                    Source.commonPractice(
                            "silage without any pores would weigh about 1,070 kg/m3 at 18 % dry matter, 1,170"
                                    + " at 40 %"))
            .aboveZero();
    /** The same of dry matter. */
    public static final Constant MOST_DRY = new Constant(
                    "dry matter density that no silage reaches",
                    DRY_MATTER_DENSITY.possible().high(),
                    Units.KG_DM_PER_M3,
                    Source.commonPractice(
                            "samples of clamps reached 470 kg/m3 (D'Amours and Savoie 2005, ASAE 051051)"))
            .aboveZero();

    /** {@code clamp-density}: typed fresh, or typed dry over dry matter, or the published table. */
    public static final Formula CLAMP_DENSITY = new Formula(
            "clamp-density",
            DENSITY,
            given(
                    FRESH_DENSITY,
                    choice(
                            Condition.typed(SPACE_OF_A_TONNE),
                            Expr.number(1).over(SPACE_OF_A_TONNE),
                            choice(
                                    new Condition.Given(DRY_MATTER_DENSITY),
                                    value(DRY_MATTER_DENSITY)
                                            .over(CLAMP_DM)
                                            .onlyWhen(
                                                    notAbove(
                                                            value(DRY_MATTER_DENSITY)
                                                                    .over(CLAMP_DM),
                                                            constant(MOST_FRESH)),
                                                    "the dry matter density typed makes fresh silage heavier than any"
                                                            + " at this dry matter: see whether it is the fresh"
                                                            + " density"),
                                    new Expr.Lookup(GRASS_DENSITY, value(CLAMP_DM), Expr.Lookup.Mode.LINEAR)
                                            .onlyWhen(
                                                    new Condition.Blank(DRY_MATTER_DENSITY),
                                                    "the dry matter density typed cannot be used")))),
            DAERA,
            "settled grass silage, 18-45 % dry matter, straight lines between the printed rows; no value beyond them."
                    + " Other tables give 650-719 kg/m3 at 25 %",
            List.of(
                    table(20, 0.77),
                    table(25, 0.68),
                    table(30, 0.60),
                    table(35, 0.54),
                    table(40, 0.48),
                    table(45, 0.42),
                    table(18, 0.81),
                    WorkedExample.from(Source.published("Teagasc (T. Fallon, A guide to storing silage): a tonne takes"
                                    + " 1.39 m3 (49 ft3), 0.719 t in a cubic metre"))
                            .with(SPACE_OF_A_TONNE, 1.39)
                            .gives(0.719, Units.T_PER_M3, 3),
                    WorkedExample.from(
                                    Source.secondHand("Farmers Journal 314754: 45 ft3 to a tonne of precision-chopped"
                                            + " silage, 0.785 t in a cubic metre"))
                            .with(SPACE_OF_A_TONNE, 45, Units.FT3.over(Units.T))
                            .gives(0.785, Units.T_PER_M3, 3),
                    WorkedExample.from(Source.derived("170 kg dry matter per m3 at 25 % is 680 kg fresh"))
                            .with(DRY_MATTER_DENSITY, 170)
                            .with(CLAMP_DM, 25)
                            .gives(680, Units.KG_PER_M3, 3)));

    /** {@code density-taken-from}: which of the three it is; withheld with the density itself. */
    public static final Formula DENSITY_TAKEN_FROM = new Formula(
            "density-taken-from",
            DENSITY_FROM,
            choice(
                    // Always so where there is a density: asked, so that without one this is withheld too.
                    Condition.compare(value(DENSITY), Relation.MORE, new Expr.AsUnit(Expr.number(0), Units.KG_PER_M3)),
                    choice(
                            new Condition.Given(FRESH_DENSITY),
                            Expr.text("typed, fresh"),
                            choice(
                                    new Condition.Given(SPACE_OF_A_TONNE),
                                    Expr.text("typed, space of a fresh tonne"),
                                    choice(
                                            new Condition.Given(DRY_MATTER_DENSITY),
                                            Expr.text("typed, dry matter"),
                                            Expr.text("table for grass, DAERA 2017")))),
                    Expr.text("no density")),
            Source.derived("what is typed stands before the table"),
            "the table is named on Basis; what others print stands on the sheet of densities",
            List.of(
                    WorkedExample.from(Source.derived("both typed: the fresh one stands"))
                            .with(DENSITY, 700)
                            .with(FRESH_DENSITY, 700)
                            .with(DRY_MATTER_DENSITY, 210)
                            .gives("typed, fresh"),
                    WorkedExample.from(Source.derived("what a tonne takes up is typed"))
                            .with(DENSITY, 1000 / 1.35)
                            .with(SPACE_OF_A_TONNE, 1.35)
                            .with(DRY_MATTER_DENSITY, 210)
                            .gives("typed, space of a fresh tonne"),
                    WorkedExample.from(Source.derived("dry matter typed"))
                            .with(DENSITY, 700)
                            .with(DRY_MATTER_DENSITY, 210)
                            .gives("typed, dry matter"),
                    WorkedExample.from(Source.derived("neither typed"))
                            .with(DENSITY, 680)
                            .gives("table for grass, DAERA 2017")));

    /** A dry matter density that is typed holds without the dry matter content; with it, it has to agree with silage. */
    private static final Condition DRY_DENSITY_ALONE = Condition.all(List.of(
            new Condition.Given(DRY_MATTER_DENSITY),
            new Condition.Blank(FRESH_DENSITY),
            new Condition.Blank(SPACE_OF_A_TONNE),
            new Condition.Not(new Condition.Given(CLAMP_DM))));

    /** Dry matter density: fresh density × dry matter, or as typed. */
    public static final Formula CLAMP_DENSITY_DM = new Formula(
            "clamp-density-dry-matter",
            DENSITY_DM,
            choice(
                    DRY_DENSITY_ALONE,
                    value(DRY_MATTER_DENSITY),
                    value(DENSITY)
                            .times(CLAMP_DM)
                            .onlyWhen(
                                    notAbove(value(DENSITY).times(CLAMP_DM), constant(MOST_DRY)),
                                    "more dry matter in a cubic metre than any silage holds: check the density and the"
                                            + " dry matter")),
            Source.derived("fresh density × dry matter content; as typed, where the dry matter content is not known"),
            "a figure above 500 kg/m3 means fresh and dry were mistaken for one another, so none is given",
            List.of(
                    WorkedExample.from(Source.derived("44 lb as fed and 15 lb DM per ft3 (D. Undersander, Univ."
                                    + " Wisconsin, Farm Progress 2009) mean 34 % dry matter"))
                            .with(DENSITY, 44, Units.LB.over(Units.FT3))
                            .with(CLAMP_DM, 34)
                            .givesWithin(240.3, Units.KG_DM_PER_M3, 0.7),
                    WorkedExample.from(Source.derived("about 700 kg fresh and 220 kg DM per m3 (Farmers Weekly, press)"
                                    + " mean 31.4 % dry matter"))
                            .with(DENSITY, 700)
                            .with(CLAMP_DM, 31.4)
                            .givesWithin(220, Units.KG_DM_PER_M3, 1),
                    WorkedExample.from(
                                    Source.derived("typed, and no dry matter content known, whatever it weighs fresh"))
                            .with(DENSITY, 640)
                            .with(DRY_MATTER_DENSITY, 14, Packing.TARGET.unit())
                            .gives(224.26, Units.KG_DM_PER_M3, 2)));

    /** {@code clamp-capacity}: volume × density, fresh. */
    public static final Formula CLAMP_CAPACITY = new Formula(
            "clamp-capacity",
            CAPACITY,
            value(VOLUME).times(DENSITY),
            PRESS_EXAMPLE,
            "settled, level with the height stated",
            List.of(
                    WorkedExample.from(PRESS_EXAMPLE)
                            .with(VOLUME, 900)
                            .with(DENSITY, 680)
                            .gives(612, Units.T, 0),
                    WorkedExample.from(SECOND_PRESS_EXAMPLE)
                            .with(VOLUME, 1200)
                            .with(DENSITY, 680)
                            .gives(816, Units.T, 0),
                    WorkedExample.from(Source.secondHand("Teagasc (E. Webb 2021-22): 756 m3 ÷ 1.35 = 560 t"))
                            .with(VOLUME, 756)
                            .with(DENSITY, 1 / 1.35, Units.T_PER_M3)
                            .gives(560, Units.T, 0)));

    /** {@code clamp-capacity-dry-matter}: capacity × dry matter. */
    public static final Formula CLAMP_CAPACITY_DM = new Formula(
            "clamp-capacity-dry-matter",
            CAPACITY_DM,
            choice(
                    DRY_DENSITY_ALONE,
                    value(VOLUME).times(DENSITY_DM),
                    value(CAPACITY).times(CLAMP_DM)),
            Source.derived("fresh capacity × dry matter content; volume × dry matter density, where that content is not"
                    + " known"),
            "settled, level with the height stated",
            List.of(
                    WorkedExample.from(Source.published("Teagasc, 100 cows for 140 days: 763 t at 22 % is 168 t DM"))
                            .with(CAPACITY, 763)
                            .with(CLAMP_DM, 22)
                            .gives(168, Units.T_DM, 0),
                    WorkedExample.from(Source.derived("900 m3 of 170 kg dry matter each, whatever it weighs fresh"))
                            .with(VOLUME, 900)
                            .with(CAPACITY, 612)
                            .with(DRY_MATTER_DENSITY, 170)
                            .with(DENSITY_DM, 170)
                            .gives(153, Units.T_DM, 6)));

    /** {@code crop-in-clamp}: fresh crop of the fields allotted to the clamp; withheld if one field's is. */
    public static final Formula CROP_IN_CLAMP = new Formula(
            "crop-in-clamp",
            CROP_IN,
            FeedBalance.orNone(CROP_ROWS, CROP_ROWS_LACKING, CROP_TOTAL),
            Source.derived("sum over the fields and cuts whose Clamp is this one; nought if there are none"),
            "all cuts together; fresh, as ensiled, losses not taken off",
            List.of(
                    WorkedExample.from(Source.derived("two rows of crop"))
                            .with(CROP_ROWS, 2)
                            .with(CROP_ROWS_LACKING, 0)
                            .with(CROP_TOTAL, 612)
                            .gives(612, Units.T, 0),
                    WorkedExample.from(Source.derived("no rows of crop"))
                            .with(CROP_ROWS, 0)
                            .with(CROP_ROWS_LACKING, 0)
                            .gives(0, Units.T, 0)));

    /** Dry matter of the fields allotted to the clamp. */
    public static final Formula CROP_IN_CLAMP_DM = new Formula(
            "crop-in-clamp-dry-matter",
            CROP_IN_DM,
            FeedBalance.orNone(CROP_ROWS, CROP_ROWS_LACKING, CROP_TOTAL_DM),
            Source.derived("sum over the fields and cuts whose Clamp is this one; nought if there are none"),
            "all cuts together; losses not taken off",
            List.of(
                    WorkedExample.from(Source.derived("two rows of crop"))
                            .with(CROP_ROWS, 2)
                            .with(CROP_ROWS_LACKING, 0)
                            .with(CROP_TOTAL_DM, 153)
                            .gives(153, Units.T_DM, 0),
                    WorkedExample.from(Source.derived("no rows of crop"))
                            .with(CROP_ROWS, 0)
                            .with(CROP_ROWS_LACKING, 0)
                            .gives(0, Units.T_DM, 0)));

    /** {@code clamp-fill}: crop in clamp ÷ capacity. */
    public static final Formula CLAMP_FILL = new Formula(
            "clamp-fill",
            FILL,
            withCrop(value(CROP_IN).over(CAPACITY)),
            Source.derived("fresh crop going in over fresh capacity"),
            "only where crop is listed for the clamp; losses and settling are not taken off the crop, so it "
                    + "errs towards full",
            List.of(WorkedExample.from(Source.derived("306 t into 612 t is half full"))
                    .with(CROP_IN, 306)
                    .with(CAPACITY, 612)
                    .gives(50, Units.PERCENT, 6)));

    /** {@code room-left}: capacity less crop. */
    public static final Formula ROOM_LEFT = new Formula(
            "room-left",
            ROOM,
            value(CAPACITY).minus(CROP_IN),
            Source.derived("capacity less crop"),
            "fresh tonnes; below nought more is allotted than it holds",
            List.of(WorkedExample.from(Source.derived("612 t less 500 t"))
                    .with(CAPACITY, 612)
                    .with(CROP_IN, 500)
                    .gives(112, Units.T, 0)));

    /** Crop rows, and their totals, as plumbing: a count of those with and without a tonnage, then the sums. */
    public static final Expr ROWS_WITH = new Expr.Count("crop", Crop.ENSILED, CLAMP_KEY, CLAMP_KEY, false);
    /** Rows that lack a tonnage. */
    public static final Expr ROWS_WITHOUT = new Expr.Count("crop", Crop.ENSILED, CLAMP_KEY, CLAMP_KEY, true);
    /** Their fresh total. */
    public static final Expr TOTAL_OF_ROWS = new Expr.Total("crop", Crop.ENSILED, CLAMP_KEY, CLAMP_KEY, true);
    /** Their dry matter. */
    public static final Expr TOTAL_DM_OF_ROWS = new Expr.Total("crop", Crop.CROP_DM, CLAMP_KEY, CLAMP_KEY, true);

    /** Of a clamp for which no crop is listed, nothing is told of its filling: nought would look like an answer. */
    static Expr withCrop(Expr expr) {
        return expr.onlyWhen(
                Condition.compare(value(CROP_IN), Relation.MORE, new Expr.AsUnit(Expr.number(0), Units.T)),
                "no crop is listed for the clamp (column Clamp of Fields or Cuts)");
    }

    /** A share without the noise of its sums: fields all at 25 % make a clamp of 25 %, not of a hair less. */
    private static Expr withoutNoise(Expr share) {
        Expr percents = new Expr.NumberOf(share, Units.PERCENT_DM);
        return new Expr.AsUnit(Expr.call(Function.ROUND, percents, Expr.number(9)), Units.PERCENT_DM);
    }

    private static Condition notAbove(Expr expr, Expr bound) {
        return new Condition.Not(Condition.above(expr, bound));
    }

    private static WorkedExample table(double dryMatter, double tonnesPerCubicMetre) {
        return WorkedExample.from(DAERA).with(CLAMP_DM, dryMatter).gives(tonnesPerCubicMetre, Units.T_PER_M3, 2);
    }
}
