package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CLAMP_KIND;
import static org.rickyard.trade.Quantities.CLAMP_LENGTH;
import static org.rickyard.trade.Quantities.FLOOR_WIDTH;
import static org.rickyard.trade.Quantities.RAMP_RUN;
import static org.rickyard.trade.silage.ClampContents.CROP_IN;
import static org.rickyard.trade.silage.ClampContents.DENSITY;
import static org.rickyard.trade.silage.ClampSides.BATTER_USED;
import static org.rickyard.trade.silage.ClampSides.RAMPS_USED;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/**
 * To what settled height the crop fills a clamp. The volume of every kind of clamp is a cubic in the height, so the
 * height is found by a fixed number of Newton's steps, each a column of its own, with what is left over as the check.
 */
public final class FilledByCrop {
    private FilledByCrop() {}

    /** Newton's steps taken. */
    public static final int STEPS = 8;

    /** Room the crop takes. */
    public static final Symbol CROP_VOLUME = Symbol.number("volume of the crop", Units.M3)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Volume for each metre of height, at the floor. */
    public static final Symbol FIRST = Symbol.number("floor area", Units.M2).possible(Range.POSITIVE);
    /** Volume for each square metre of height. */
    public static final Symbol SECOND = Symbol.number("widening, second term", Units.M);
    /** Volume for each cubic metre of height. */
    public static final Symbol THIRD =
            Symbol.number("widening, third term", Units.ONE).decimals(4);
    /** What the last step leaves over. */
    public static final Symbol RESIDUAL =
            Symbol.number("residual of the solve", Units.M3).decimals(4);
    /** Height the crop fills the clamp to. */
    public static final Symbol FILLED_TO = Symbol.number("height when filled (settled)", Units.M)
            .possible(Range.above(0, 12))
            .decimals(2);

    /** Above it no height is told. */
    public static final Constant HIGHEST = new Constant(
                    "height above which no clamp is filled",
                    FILLED_TO.possible().high(),
                    Units.M,
                    Source.commonPractice("three times the reach of an unloader"))
            .aboveZero();

    private static final Source CUBIC = Source.derived("volume of the kind of clamp, written as a cubic in its height");
    private static final Source NEWTON = Source.derived("Newton's method, " + STEPS + " steps");

    /** Volume of the crop at the clamp's density. */
    public static final Formula VOLUME_OF_CROP = new Formula(
            "crop-volume",
            CROP_VOLUME,
            ClampContents.withCrop(value(CROP_IN).over(DENSITY)),
            Source.derived("fresh crop over fresh density"),
            "settled",
            List.of(WorkedExample.from(Source.published("agriland.co.uk (press): 612 t at 680 kg/m3 is 900 m3"))
                    .with(CROP_IN, 612)
                    .with(DENSITY, 680)
                    .gives(900, Units.M3, 0)));

    /** The first coefficient. */
    public static final Formula FIRST_TERM = new Formula(
            "floor-area",
            FIRST,
            value(CLAMP_LENGTH).times(FLOOR_WIDTH),
            CUBIC,
            "floor of the clamp",
            List.of(WorkedExample.from(Source.derived("30 × 10 m"))
                    .with(CLAMP_LENGTH, 30)
                    .with(FLOOR_WIDTH, 10)
                    .gives(300, Units.M2, 0)));

    /** The second coefficient. */
    public static final Formula SECOND_TERM = new Formula(
            "widening-second-term",
            SECOND,
            choice(
                    Condition.is(CLAMP_KIND, ClampShape.WALLED),
                    choice(
                            noRamps(),
                            value(BATTER_USED).times(CLAMP_LENGTH),
                            value(BATTER_USED)
                                    .times(CLAMP_LENGTH)
                                    .minus(value(RAMPS_USED)
                                            .times(RAMP_RUN)
                                            .times(FLOOR_WIDTH)
                                            .over(number(2)))),
                    choice(
                            Condition.is(CLAMP_KIND, ClampShape.EARTH_PIT),
                            bothWays(),
                            choice(
                                    Condition.is(CLAMP_KIND, ClampShape.MEASURED),
                                    new Expr.AsUnit(number(0), Units.M),
                                    ClampShape.heapOnly(new Expr.Negate(bothWays()))))),
            CUBIC,
            "what sides and ramps add for each metre of height, squared",
            List.of(
                    WorkedExample.from(Source.derived("batter 0.1 over 40 m"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(RAMPS_USED, 0)
                            .with(BATTER_USED, 0.1)
                            .with(CLAMP_LENGTH, 40)
                            .gives(4, Units.M, 6),
                    WorkedExample.from(Source.derived("the same with a ramp of 3 for 1, 12 m wide: 4 - 18"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(RAMPS_USED, 1)
                            .with(RAMP_RUN, 3)
                            .with(FLOOR_WIDTH, 12)
                            .with(BATTER_USED, 0.1)
                            .with(CLAMP_LENGTH, 40)
                            .gives(-14, Units.M, 6),
                    WorkedExample.from(Source.derived("the same with two ramps of 4 for 1: 4 - 48"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(RAMPS_USED, 2)
                            .with(RAMP_RUN, 4)
                            .with(FLOOR_WIDTH, 12)
                            .with(BATTER_USED, 0.1)
                            .with(CLAMP_LENGTH, 40)
                            .gives(-44, Units.M, 6),
                    WorkedExample.from(Source.derived("a pit 24 × 6 m, sides 2 for 1"))
                            .with(CLAMP_KIND, ClampShape.EARTH_PIT)
                            .with(CLAMP_LENGTH, 24)
                            .with(FLOOR_WIDTH, 6)
                            .with(BATTER_USED, 2)
                            .gives(60, Units.M, 6),
                    WorkedExample.from(Source.derived("a heap 20 × 10 m, sides 3 for 1"))
                            .with(CLAMP_KIND, ClampShape.HEAP)
                            .with(CLAMP_LENGTH, 20)
                            .with(FLOOR_WIDTH, 10)
                            .with(BATTER_USED, 3)
                            .gives(-90, Units.M, 6),
                    WorkedExample.from(Source.derived("measured clamps do not widen"))
                            .with(CLAMP_KIND, ClampShape.MEASURED)
                            .gives(0, Units.M, 6)));

    /** The third coefficient. */
    public static final Formula THIRD_TERM = new Formula(
            "widening-third-term",
            THIRD,
            choice(
                    Condition.is(CLAMP_KIND, ClampShape.MEASURED),
                    number(0),
                    choice(
                            Condition.is(CLAMP_KIND, ClampShape.WALLED),
                            choice(
                                    noRamps(),
                                    number(0),
                                    new Expr.Negate(number(2)
                                            .over(number(3))
                                            .times(RAMPS_USED)
                                            .times(RAMP_RUN)
                                            .times(BATTER_USED))),
                            number(4).over(number(3)).times(value(BATTER_USED).power(2)))),
            CUBIC,
            "what sides and ramps add for each metre of height, cubed",
            List.of(
                    WorkedExample.from(Source.derived("upright or battered walls without ramps"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(RAMPS_USED, 0)
                            .gives(0, Units.ONE, 6),
                    WorkedExample.from(Source.derived("two ramps of 4 for 1 between walls of 0.3: -2/3 × 2 × 4 × 0.3"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(RAMPS_USED, 2)
                            .with(RAMP_RUN, 4)
                            .with(BATTER_USED, 0.3)
                            .gives(-1.6, Units.ONE, 6),
                    WorkedExample.from(Source.derived("4/3 × 3 × 3"))
                            .with(CLAMP_KIND, ClampShape.HEAP)
                            .with(BATTER_USED, 3)
                            .gives(12, Units.ONE, 6),
                    WorkedExample.from(Source.derived("measured clamps do not widen"))
                            .with(CLAMP_KIND, ClampShape.MEASURED)
                            .gives(0, Units.ONE, 6)));

    /** The steps, the first from the floor area alone. */
    public static final List<Formula> STEPS_TAKEN = steps();

    private static final Symbol LAST = STEPS_TAKEN.get(STEPS).result();

    /** Volume at the last height less the volume of the crop; 0 when the solve has met its end. */
    public static final Formula LEFT_OVER = new Formula(
            "height-residual",
            RESIDUAL,
            volume(LAST).minus(CROP_VOLUME),
            NEWTON,
            "0 but for rounding where there is an answer",
            List.of(WorkedExample.from(NEWTON)
                    .with(FIRST, 1)
                    .with(SECOND, 5)
                    .with(THIRD, 3)
                    .with(CROP_VOLUME, 6)
                    .with(LAST, 2)
                    .gives(40, Units.M3, 6)));

    /** {@code height-when-filled}: where the solve has met its end, and below where ramps or sides meet. */
    public static final Formula HEIGHT_WHEN_FILLED = new Formula(
            "height-when-filled",
            FILLED_TO,
            choice(
                    Condition.is(CLAMP_KIND, ClampShape.WALLED),
                    choice(noRamps(), solved(value(LAST)), solved(belowRampsMeeting())),
                    choice(
                            Condition.any(List.of(
                                    Condition.is(CLAMP_KIND, ClampShape.HEAP),
                                    Condition.is(CLAMP_KIND, ClampShape.FIELD_HEAP))),
                            solved(belowRidge()),
                            solved(value(LAST)))),
            NEWTON,
            "settled and level, no crown; withheld where no height of this clamp holds so much",
            List.of(
                    WorkedExample.from(
                                    Source.derived("a step is the answer only below where the ramps meet: 9 m of 40"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(RAMPS_USED, 1)
                            .with(RAMP_RUN, 3)
                            .with(CLAMP_LENGTH, 40)
                            .with(LAST, 3)
                            .with(RESIDUAL, 0)
                            .with(CROP_VOLUME, 900)
                            .gives(3, Units.M, 2),
                    WorkedExample.from(Source.derived("a heap 14 × 12 m, sides 3 for 1, holds silage up to 2 m"))
                            .with(CLAMP_KIND, ClampShape.HEAP)
                            .with(BATTER_USED, 3)
                            .with(FLOOR_WIDTH, 12)
                            .with(CLAMP_LENGTH, 14)
                            .with(LAST, 2)
                            .with(RESIDUAL, 0)
                            .with(CROP_VOLUME, 90)
                            .gives(2, Units.M, 2),
                    WorkedExample.from(Source.published("agriland.co.uk (press): 900 m3 fill 10 × 30 m to 3 m"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(RAMPS_USED, 0)
                            .with(LAST, 3)
                            .with(RESIDUAL, 0)
                            .with(CROP_VOLUME, 900)
                            .gives(3, Units.M, 2)));

    /** All of them, in the order of their columns. */
    static List<Formula> formulas() {
        List<Formula> all = new ArrayList<>(List.of(VOLUME_OF_CROP, FIRST_TERM, SECOND_TERM, THIRD_TERM));
        all.addAll(STEPS_TAKEN);
        all.add(LEFT_OVER);
        all.add(HEIGHT_WHEN_FILLED);
        return List.copyOf(all);
    }

    private static List<Formula> steps() {
        List<Formula> steps = new ArrayList<>();
        Symbol before = null;
        for (int i = 0; i <= STEPS; i++) {
            Symbol next = Symbol.number("height, step " + i, Units.M).decimals(4);
            Expr expr = before == null
                    ? value(CROP_VOLUME).over(FIRST)
                    : value(before).minus(volume(before).minus(CROP_VOLUME).over(slope(before)));
            steps.add(new Formula(
                    "height-step-" + i, next, expr, NEWTON, "a step of the solve", List.of(example(before))));
            before = next;
        }
        return List.copyOf(steps);
    }

    /** The first step divides; each further one is Newton's on h + 5h² + 3h³ = 6 from h = 2: 2 − 40 ÷ 57. */
    private static WorkedExample example(Symbol before) {
        WorkedExample.Draft draft = WorkedExample.from(NEWTON).with(FIRST, before == null ? 2 : 1);
        if (before == null) {
            return draft.with(CROP_VOLUME, 6).gives(3, Units.M, 6);
        }
        return draft.with(SECOND, 5)
                .with(THIRD, 3)
                .with(CROP_VOLUME, 6)
                .with(before, 2)
                .gives(2 - 40.0 / 57, Units.M, 6);
    }

    private static Expr volume(Symbol height) {
        return value(FIRST)
                .times(height)
                .plus(value(SECOND).times(value(height).power(2)))
                .plus(value(THIRD).times(value(height).power(3)));
    }

    private static Expr slope(Symbol height) {
        return value(FIRST)
                .plus(number(2).times(SECOND).times(height))
                .plus(number(3).times(THIRD).times(value(height).power(2)));
    }

    private static Expr bothWays() {
        return value(BATTER_USED).times(value(CLAMP_LENGTH).plus(FLOOR_WIDTH));
    }

    private static Condition noRamps() {
        return Condition.compare(value(RAMPS_USED), Relation.EQUAL, number(0));
    }

    /** A root below the floor or far above any clamp solves the cubic and is no height. */
    private static Expr solved(Expr height) {
        Expr size = Expr.call(Function.ABS, value(RESIDUAL));
        return height.onlyWhen(
                        Condition.all(List.of(
                                Condition.compare(value(LAST), Relation.MORE, new Expr.AsUnit(number(0), Units.M)),
                                Condition.compare(value(LAST), Relation.AT_MOST, constant(HIGHEST)))),
                        "the crop is far more than this clamp holds")
                .onlyWhen(
                        Condition.compare(
                                size, Relation.AT_MOST, value(CROP_VOLUME).over(number(1e6))),
                        "the crop is more than this clamp holds at any height");
    }

    private static Expr belowRampsMeeting() {
        return value(LAST)
                .onlyWhen(
                        Condition.compare(
                                value(RAMPS_USED).times(RAMP_RUN).times(LAST), Relation.AT_MOST, value(CLAMP_LENGTH)),
                        "the crop is more than this clamp holds before its ramps meet");
    }

    private static Expr belowRidge() {
        return value(LAST)
                .onlyWhen(
                        Condition.compare(
                                number(2).times(BATTER_USED).times(LAST),
                                Relation.AT_MOST,
                                Expr.least(value(FLOOR_WIDTH), value(CLAMP_LENGTH))),
                        "the crop is more than this heap holds before its sides meet");
    }
}
