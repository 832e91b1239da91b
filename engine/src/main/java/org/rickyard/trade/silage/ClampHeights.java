package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.greatest;
import static org.rickyard.formula.Expr.least;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CLAMP_KIND;
import static org.rickyard.trade.Quantities.COUNTRY;
import static org.rickyard.trade.Quantities.CROWN;
import static org.rickyard.trade.Quantities.FILLED_HEIGHT;
import static org.rickyard.trade.Quantities.WALL_HEIGHT;
import static org.rickyard.trade.silage.ClampContents.CLAMP_DM;
import static org.rickyard.trade.silage.ClampSides.HEIGHT;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** How high the silage stands on the day of filling, before it settles, and how high it should never stand. */
public final class ClampHeights {
    private ClampHeights() {}

    /** By how much silage settles. */
    public static final Symbol SETTLING =
            Symbol.number("settling", Units.M).possible(Range.NOT_NEGATIVE).decimals(2);
    /** Height at the sides on the day of filling. */
    public static final Symbol HEIGHT_ON_DAY = Symbol.number("filled height on the day", Units.M)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Height of the highest point on the day. */
    public static final Symbol TOP_ON_DAY =
            Symbol.number("top on the day", Units.M).possible(Range.POSITIVE).decimals(2);
    /** Height not to be exceeded. */
    public static final Symbol HIGHEST = Symbol.number("do-not-exceed height", Units.M)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);

    private static final Source PRESS = Source.secondHand("Irish Farmers Journal, 'Know your limits with pits':"
            + " settled height is 1 to 2 m below filling height, nearer 2 m if wet, 1 m if dry");

    /** Settling of dry silage. */
    public static final Constant DRY_SETTLING = new Constant("settling of dry silage", 1, Units.M, PRESS);
    /** Settling of wet silage. */
    public static final Constant WET_SETTLING = new Constant("settling of wet silage", 2, Units.M, PRESS);
    /** What is called dry. */
    public static final Constant DRY_AT = new Constant(
            "dry matter at which silage settles as dry",
            30,
            Units.PERCENT_DM,
            Source.commonPractice("the press names no dry matter"));
    /** What is called wet. */
    public static final Constant WET_AT = new Constant(
            "dry matter at which silage settles as wet",
            20,
            Units.PERCENT_DM,
            Source.commonPractice("the press names no dry matter"));
    /** How high a face can be worked. */
    public static final Constant REACH = new Constant(
            "highest face an unloader reaches",
            12,
            Units.FT,
            Source.published("B. Holmes, Univ. Wisconsin: never higher than unloader reach, 12-16 ft"));
    /** How many times the wall silage may stand. */
    public static final Constant TIMES_WALL = new Constant(
                    "silage height in wall heights, never above",
                    2,
                    Units.ONE,
                    Source.published(
                            "HSA and FCI (Ireland) 2021: at most twice the retaining wall, sides under 45 degrees"))
            .aboveZero();

    /** Settling by dry matter: between the two published figures on a straight line. */
    public static final Formula SETTLING_BY_DM = new Formula(
            "settling",
            SETTLING,
            constant(WET_SETTLING)
                    .minus(constant(WET_SETTLING)
                            .minus(constant(DRY_SETTLING))
                            .times(least(
                                    number(1),
                                    greatest(
                                            number(0),
                                            value(CLAMP_DM)
                                                    .minus(constant(WET_AT))
                                                    .over(constant(DRY_AT).minus(constant(WET_AT))))))),
            PRESS,
            "clamps filled to the usual 2-4 m; the straight line between wet and dry is this engine's choice",
            List.of(
                    WorkedExample.from(PRESS).with(CLAMP_DM, 18).gives(2, Units.M, 1),
                    WorkedExample.from(PRESS).with(CLAMP_DM, 32).gives(1, Units.M, 1)));

    /** {@code filled-height}: typed, otherwise settled height and settling. */
    public static final Formula FILLED = new Formula(
            "filled-height",
            HEIGHT_ON_DAY,
            given(FILLED_HEIGHT, value(HEIGHT).plus(SETTLING)),
            PRESS,
            "at the sides, before settling; check walls and power lines with this height",
            List.of(WorkedExample.from(Source.derived("2.4 m settled and 1 m of settling is 3.4 m on the day"))
                    .with(HEIGHT, 2.4)
                    .with(SETTLING, 1)
                    .gives(3.4, Units.M, 2)));

    /** Top on the day: filled height and crown. */
    public static final Formula TOP = new Formula(
            "top-on-the-day",
            TOP_ON_DAY,
            choice(
                    new Condition.Blank(CROWN),
                    value(HEIGHT_ON_DAY),
                    value(HEIGHT_ON_DAY).plus(CROWN)),
            Source.derived("filled height and the crown above it"),
            "a machine on top, its raised loader or a tipped body comes on top of it",
            List.of(
                    WorkedExample.from(Source.derived("without a crown the sides are the top"))
                            .with(HEIGHT_ON_DAY, 3.4)
                            .gives(3.4, Units.M, 2),
                    WorkedExample.from(Source.derived("3.4 m and a crown of 0.5 m"))
                            .with(HEIGHT_ON_DAY, 3.4)
                            .with(CROWN, 0.5)
                            .gives(3.9, Units.M, 2)));

    /** {@code do-not-exceed-height}: the lower of what walls and unloaders are held to; never a clearance. */
    public static final Formula DO_NOT_EXCEED = new Formula(
            "do-not-exceed-height",
            HIGHEST,
            choice(
                    Condition.is(CLAMP_KIND, ClampShape.WALLED),
                    choice(
                            Condition.is(COUNTRY, EffluentTank.IRELAND),
                            behindWall(least(constant(TIMES_WALL).times(WALL_HEIGHT), reach())),
                            behindWall(least(value(WALL_HEIGHT), reach()))),
                    reach()),
            Source.published(
                    "HSA and FCI (Ireland) 2021: twice the wall, of walls as the Department there has them built;"
                            + " HSENI as reported: never above the wall; B. Holmes: never above unloader reach"),
            "an outer limit, no permission: the wall's own loading notice and its installer decide, and are often lower."
                    + " Outside Ireland no height above the wall is held, so without a notice that allows more it is the"
                    + " wall",
            List.of(
                    WorkedExample.from(Source.derived("the Irish rule is not carried to walls elsewhere"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(COUNTRY, EffluentTank.ENGLAND)
                            .with(WALL_HEIGHT, 2.5)
                            .gives(2.5, Units.M, 2),
                    WorkedExample.from(Source.secondHand("HSENI in the Farmers Journal: never above the wall"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(COUNTRY, EffluentTank.NORTHERN_IRELAND)
                            .with(WALL_HEIGHT, 3)
                            .gives(3, Units.M, 2),
                    WorkedExample.from(Source.published("HSA and FCI (Ireland) 2021: at most twice the wall"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(COUNTRY, EffluentTank.IRELAND)
                            .with(WALL_HEIGHT, 1.5)
                            .gives(3, Units.M, 2),
                    WorkedExample.from(Source.published("B. Holmes: 12 ft is the least unloader reach"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(COUNTRY, EffluentTank.IRELAND)
                            .with(WALL_HEIGHT, 3)
                            .gives(12, Units.FT, 2)));

    private static Expr behindWall(Expr expr) {
        return expr.onlyWhen(
                ClampSides.HAS_HEIGHT, "a walled clamp whose wall height is 0: type it, or call the clamp a heap");
    }

    private static Expr reach() {
        return constant(REACH);
    }
}
