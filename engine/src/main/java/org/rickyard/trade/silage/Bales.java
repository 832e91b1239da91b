package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** The bales there would be if the crop, or what is over, were baled. */
public final class Bales {
    private Bales() {}

    /** Bales of the crop. */
    public static final Symbol BALES = Symbol.number("bales, if baled", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Room they take. */
    public static final Symbol SPACE = Symbol.number("space of the bales", Units.M3)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Fresh mass of one. */
    public static final Symbol BALE_FRESH =
            Symbol.number("one bale (fresh)", Units.KG).possible(Range.POSITIVE).decimals(0);
    /** Bales of the surplus. */
    public static final Symbol OF_SURPLUS = Symbol.number("bales, if the surplus is baled", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);

    /** Room those take. */
    public static final Symbol SPACE_OF_SURPLUS = Symbol.number("space of those bales", Units.M3)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);

    /** Dry matter in a bale. */
    public static final Constant BALE_DM = new Constant(
                    "dry matter in a round bale", 220, Units.KG_DM, Source.published("Teagasc: aim above 220 kg"))
            .aboveZero();
    /** Diameter of a bale. */
    public static final Constant DIAMETER =
            new Constant("diameter of a round bale", 1.25, Units.M, Source.commonPractice("1.25 × 1.20 m")).aboveZero();
    /** Width of a bale. */
    public static final Constant WIDTH =
            new Constant("width of a round bale", 1.2, Units.M, Source.commonPractice("1.25 × 1.20 m")).aboveZero();

    private static final Source GREENFIELD =
            Source.secondHand("Farmers Journal 216282: 900 bales at 220 kg are 198 t DM (printed about 200)");

    /** {@code bales}: dry matter ÷ dry matter of a bale, rounded up. */
    public static final Formula BALE_COUNT = new Formula(
            "bales",
            BALES,
            call(
                    Function.ROUND_UP,
                    value(ClampContents.CROP_IN_DM).over(constant(BALE_DM)).in(Units.ONE)),
            GREENFIELD,
            "the crop as ensiled, no loss taken off; rounded up",
            List.of(
                    WorkedExample.from(GREENFIELD)
                            .with(ClampContents.CROP_IN_DM, 198)
                            .gives(900, Units.ONE, 0),
                    WorkedExample.from(
                                    Source.secondHand("Teagasc: 1 t DM per ha is 4.5 bales, 222 kg; so 5 whole ones"))
                            .with(ClampContents.CROP_IN_DM, 1)
                            .gives(5, Units.ONE, 0)));

    /** {@code bale-space}: count × volume of a bale. */
    public static final Formula BALE_SPACE = new Formula(
            "bale-space",
            SPACE,
            space(BALES),
            Source.derived("cylinders without the gaps between them"),
            "the bales themselves; stacks take more room",
            List.of(WorkedExample.from(Source.derived("one bale of 1.25 × 1.20 m is 1.4726 m3"))
                    .with(BALES, 1)
                    .gives(1.4726, Units.M3, 4)));

    /** {@code bale-weight}: dry matter of a bale ÷ dry matter content. */
    public static final Formula BALE_WEIGHT = new Formula(
            "bale-weight",
            BALE_FRESH,
            constant(BALE_DM).over(ClampContents.CLAMP_DM),
            Source.derived("dry matter of a bale over its content"),
            "fresh; check it against the loader and the trailer",
            List.of(WorkedExample.from(Source.derived("220 kg of dry matter at 30 % weigh 733 kg"))
                    .with(ClampContents.CLAMP_DM, 30)
                    .gives(733, Units.KG, 0)));

    /** {@code bales-of-surplus}: none where feed is short. */
    public static final Formula BALES_OF_SURPLUS = new Formula(
            "bales-of-surplus",
            OF_SURPLUS,
            call(
                    Function.ROUND_UP,
                    Expr.greatest(new Expr.AsUnit(number(0), Units.T_DM), value(FeedBalance.SURPLUS))
                            .over(constant(BALE_DM))
                            .in(Units.ONE)),
            GREENFIELD,
            "nought where feed is short; rounded up",
            List.of(
                    WorkedExample.from(Source.derived("1 t of dry matter is 4.5 bales, so 5"))
                            .with(FeedBalance.SURPLUS, 1)
                            .gives(5, Units.ONE, 0),
                    WorkedExample.from(GREENFIELD)
                            .with(FeedBalance.SURPLUS, 198)
                            .gives(900, Units.ONE, 0)));

    /** {@code bale-space-of-surplus}: count × volume of a bale. */
    public static final Formula SURPLUS_SPACE = new Formula(
            "bale-space-of-surplus",
            SPACE_OF_SURPLUS,
            space(OF_SURPLUS),
            Source.derived("cylinders without the gaps between them"),
            "the bales themselves; stacks take more room",
            List.of(WorkedExample.from(Source.derived("ten bales of 1.25 × 1.20 m are 14.726 m3"))
                    .with(OF_SURPLUS, 10)
                    .gives(14.726, Units.M3, 3)));

    private static Expr space(Symbol bales) {
        return value(bales)
                .times(number(Math.PI).over(number(4)))
                .times(constant(DIAMETER).power(2))
                .times(constant(WIDTH));
    }
}
