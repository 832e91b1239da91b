package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CLAMP_KIND;
import static org.rickyard.trade.Quantities.CROWN;
import static org.rickyard.trade.Quantities.CROWN_SHAPE;
import static org.rickyard.trade.silage.ClampShape.CROWN_SECTION;
import static org.rickyard.trade.silage.ClampShape.TOP_WIDTH_USED;

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

/** The crown of a clamp above its sides: round (a parabola) or with straight shoulders and a flat top. */
public final class ClampCrown {
    private ClampCrown() {}

    /** A crown that is round. */
    public static final String PARABOLIC = "parabolic";
    /** A crown with straight shoulders. */
    public static final String STRAIGHT = "straight shouldered";

    /** Width measured over the top. */
    public static final Symbol WIDTH_OVER_TOP = Symbol.number("width over the top", Units.M)
            .possible(Range.POSITIVE)
            .decimals(2);

    /** Slope of straight shoulders. */
    public static final Constant SHOULDER = new Constant(
            "shoulder of a straight-shouldered crown, metres out for each metre up",
            1,
            Units.ONE,
            Source.commonPractice("45 degrees"));

    private static final Source PARABOLA = Source.derived("two thirds of width times height, as for every parabola");
    private static final Condition CROWNLESS =
            new Condition.Any(List.of(new Condition.Blank(CROWN), new Condition.Not(ClampSides.BETWEEN_SIDES)));

    /** Section of the crown, 0 without one. Heaps and measured clamps have none: their height is their own. */
    public static final Formula SECTION_OF_CROWN = new Formula(
            "crown-section",
            CROWN_SECTION,
            choice(
                    CROWNLESS,
                    new Expr.AsUnit(number(0), Units.M2),
                    choice(Condition.is(CROWN_SHAPE, STRAIGHT), straight(), parabolic())),
            PARABOLA,
            "round unless Crown shape says straight shouldered; walled clamps and earth pits only; the crown is small"
                    + " against the width",
            List.of(
                    WorkedExample.from(PARABOLA)
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(CROWN, 0.6)
                            .with(TOP_WIDTH_USED, 12)
                            .gives(4.8, Units.M2, 6),
                    WorkedExample.from(Source.derived("shoulders of 45 degrees, 0.6 m up, take 0.36 m2 off 12 × 0.6 m"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(CROWN_SHAPE, STRAIGHT)
                            .with(CROWN, 0.6)
                            .with(TOP_WIDTH_USED, 12)
                            .gives(6.84, Units.M2, 6)));

    /** Width over the top: the length of the arc, or of the shoulders and the flat. */
    public static final Formula OVER_THE_TOP = new Formula(
            "width-over-top",
            WIDTH_OVER_TOP,
            choice(
                    CROWNLESS,
                    value(TOP_WIDTH_USED),
                    choice(
                            Condition.is(CROWN_SHAPE, STRAIGHT),
                            shoulders(),
                            choice(
                                    Condition.compare(
                                            value(CROWN), Relation.EQUAL, new Expr.AsUnit(number(0), Units.M)),
                                    value(TOP_WIDTH_USED),
                                    arc()))),
            Source.derived("length of the arc of a parabola, exact"),
            "across the clamp, wall to wall",
            List.of(
                    WorkedExample.from(
                                    Source.derived("a parabola 4 wide and 2 high is y = x²/2 from -2 to 2: 2√5 + ln(2 "
                                            + "+ √5) = 5.91577"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(CROWN, 2)
                            .with(TOP_WIDTH_USED, 4)
                            .gives(5.91577, Units.M, 5),
                    WorkedExample.from(Source.derived(
                                    "two shoulders of 0.6 m at 45 degrees and a flat of 10.8 m: 10.8 + 1.2√2"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(CROWN_SHAPE, STRAIGHT)
                            .with(CROWN, 0.6)
                            .with(TOP_WIDTH_USED, 12)
                            .gives(12.49706, Units.M, 5),
                    WorkedExample.from(
                                    Source.derived("a parabola 2 wide and 0.5 high is y = x²/2 from -1 to 1: √2 + ln(1 "
                                            + "+ √2) = 2.29559"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(CROWN, 0.5)
                            .with(TOP_WIDTH_USED, 2)
                            .gives(2.29559, Units.M, 5)));

    private static Expr parabolic() {
        return number(2).over(number(3)).times(TOP_WIDTH_USED).times(CROWN);
    }

    private static Expr straight() {
        return withFlat(value(CROWN)
                .times(value(TOP_WIDTH_USED).minus(constant(SHOULDER).times(CROWN))));
    }

    /** What has a meaning only where the shoulders leave a flat top between them. */
    private static Expr withFlat(Expr expr) {
        return expr.onlyWhen(
                Condition.compare(
                        value(TOP_WIDTH_USED),
                        Relation.AT_LEAST,
                        number(2).times(constant(SHOULDER)).times(CROWN)),
                "the shoulders meet before the crown reaches its height");
    }

    private static Expr shoulders() {
        Expr root = Expr.call(Function.SQRT, number(1).plus(constant(SHOULDER).power(2)));
        return withFlat(value(TOP_WIDTH_USED)
                .minus(number(2).times(constant(SHOULDER)).times(CROWN))
                .plus(number(2).times(CROWN).times(root)));
    }

    private static Expr arc() {
        Expr steepness = number(4).times(CROWN).over(TOP_WIDTH_USED);
        Expr root = Expr.call(Function.SQRT, number(1).plus(steepness.power(2)));
        return value(TOP_WIDTH_USED)
                .over(number(2))
                .times(root.plus(Expr.call(Function.LN, steepness.plus(root)).over(steepness)));
    }
}
