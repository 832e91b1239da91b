package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.DM_AT_CUTTING;
import static org.rickyard.trade.Quantities.DM_AT_ENSILING;
import static org.rickyard.trade.Quantities.YIELD;
import static org.rickyard.trade.Quantities.YIELD_BASIS;
import static org.rickyard.trade.Quantities.YIELD_DRY_MATTER;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/**
 * The crop of one field and cut, standing and as it goes into the clamp, by what its yield was weighed as. In
 * the examples it is half the crop of twice the area, so that no share is forgotten.
 */
public final class Crop {
    private Crop() {}

    /** A yield of the standing crop, fresh. */
    public static final String STANDING = "standing fresh";
    /** A yield as carted, wilted. */
    public static final String CARTED = "as carted fresh";
    /** A yield of dry matter. */
    public static final String DRY_MATTER = "dry matter";

    /** The part of a field's crop that a row is about; 100 unless the crop is split between clamps. */
    public static final Symbol SHARE = Symbol.number("share of the crop", Units.PERCENT)
            .possible(Range.above(0, 100))
            .decimals(0);
    /** Fresh crop standing in the field. */
    public static final Symbol STANDING_CROP_MASS = Symbol.number("standing crop (fresh)", Units.T)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Fresh crop as it goes into the clamp. */
    public static final Symbol ENSILED = Symbol.number("crop ensiled (fresh)", Units.T)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Dry matter of the crop. */
    public static final Symbol CROP_DM = Symbol.number("crop (dry matter)", Units.T_DM)
            .possible(Range.POSITIVE)
            .decimals(0);

    private static final Source IDENTITY =
            Source.secondHand("Irish Independent 2019: 1.0 t at 30 % dry matter is 1.2 t at 25 %");
    private static final Source RICHARDS =
            Source.secondHand("H. Richards, Western Telegraph: 12 kg dry matter is 48 kg at 25 %, 30 kg at 40 %");
    /** Fresh tonnes that hold one tonne of dry matter, by moisture, as a handbook prints them. */
    private static final Source MWPS = Source.published("MWPS, dairy handbook NPS-7, 6th ed. 1997, in Minnesota Dairy"
            + " Initiatives Factsheet 1: fresh for one of dry matter, 100 ÷ (100 − moisture)");

    private static final Source WHOLECROP =
            Source.derived("farm press 1996: wholecrop wheat 30 t/ha at 45 %, so 50 ha give 1,500 t and 675 t DM");

    /** {@code standing-crop}: what stands in the field, fresh. */
    public static final Formula STANDING_CROP = new Formula(
            "standing-crop",
            STANDING_CROP_MASS,
            choice(
                    Condition.is(YIELD_BASIS, STANDING),
                    part().times(YIELD),
                    choice(
                            Condition.is(YIELD_BASIS, CARTED),
                            part().times(YIELD).times(DM_AT_ENSILING).over(DM_AT_CUTTING),
                            choice(
                                    Condition.is(YIELD_BASIS, DRY_MATTER),
                                    part().times(YIELD_DRY_MATTER).over(DM_AT_CUTTING),
                                    withoutBasis(part().times(YIELD))))),
            IDENTITY,
            "dry matter stays the same through wilting; field losses are not taken off",
            List.of(
                    WorkedExample.from(Source.derived("40 % of that crop"))
                            .with(YIELD_BASIS, STANDING)
                            .with(SHARE, 40)
                            .with(AREA, 50)
                            .with(YIELD, 30)
                            .gives(600, Units.T, 0),
                    WorkedExample.from(WHOLECROP)
                            .with(YIELD_BASIS, STANDING)
                            .with(SHARE, 50)
                            .with(AREA, 100)
                            .with(YIELD, 30)
                            .gives(1500, Units.T, 0),
                    WorkedExample.from(IDENTITY)
                            .with(YIELD_BASIS, CARTED)
                            .with(SHARE, 50)
                            .with(AREA, 2)
                            .with(YIELD, 1.0)
                            .with(DM_AT_ENSILING, 30)
                            .with(DM_AT_CUTTING, 25)
                            .gives(1.2, Units.T, 1),
                    WorkedExample.from(RICHARDS)
                            .with(YIELD_BASIS, DRY_MATTER)
                            .with(SHARE, 50)
                            .with(AREA, 2)
                            .with(YIELD_DRY_MATTER, 12)
                            .with(DM_AT_CUTTING, 25)
                            .gives(48, Units.T, 0)));

    /** {@code crop-ensiled}: what goes into the clamp, fresh. */
    public static final Formula CROP_ENSILED = new Formula(
            "crop-ensiled",
            ENSILED,
            choice(
                    Condition.is(YIELD_BASIS, STANDING),
                    part().times(YIELD).times(DM_AT_CUTTING).over(DM_AT_ENSILING),
                    choice(
                            Condition.is(YIELD_BASIS, CARTED),
                            part().times(YIELD),
                            choice(
                                    Condition.is(YIELD_BASIS, DRY_MATTER),
                                    part().times(YIELD_DRY_MATTER).over(DM_AT_ENSILING),
                                    withoutBasis(part().times(YIELD))))),
            IDENTITY,
            "dry matter stays the same through wilting; field losses are not taken off",
            List.of(
                    WorkedExample.from(WHOLECROP)
                            .with(YIELD_BASIS, CARTED)
                            .with(SHARE, 50)
                            .with(AREA, 100)
                            .with(YIELD, 30)
                            .gives(1500, Units.T, 0),
                    WorkedExample.from(IDENTITY)
                            .with(YIELD_BASIS, STANDING)
                            .with(SHARE, 50)
                            .with(AREA, 2)
                            .with(YIELD, 1.2)
                            .with(DM_AT_CUTTING, 25)
                            .with(DM_AT_ENSILING, 30)
                            .gives(1.0, Units.T, 1),
                    WorkedExample.from(RICHARDS)
                            .with(YIELD_BASIS, DRY_MATTER)
                            .with(SHARE, 50)
                            .with(AREA, 2)
                            .with(YIELD_DRY_MATTER, 12)
                            .with(DM_AT_ENSILING, 25)
                            .gives(48, Units.T, 0),
                    WorkedExample.from(RICHARDS)
                            .with(YIELD_BASIS, DRY_MATTER)
                            .with(SHARE, 50)
                            .with(AREA, 2)
                            .with(YIELD_DRY_MATTER, 12)
                            .with(DM_AT_ENSILING, 40)
                            .gives(30, Units.T, 0),
                    freshOf(30, 1.43),
                    freshOf(40, 1.67),
                    freshOf(50, 2.00),
                    freshOf(55, 2.22),
                    freshOf(60, 2.50),
                    freshOf(65, 2.86),
                    freshOf(70, 3.33),
                    freshOf(75, 4.00),
                    freshOf(80, 5.00)));

    /** {@code crop-dry-matter}: the dry matter in it. */
    public static final Formula CROP_DRY_MATTER = new Formula(
            "crop-dry-matter",
            CROP_DM,
            choice(
                    Condition.is(YIELD_BASIS, STANDING),
                    part().times(YIELD).times(DM_AT_CUTTING),
                    choice(
                            Condition.is(YIELD_BASIS, CARTED),
                            part().times(YIELD).times(DM_AT_ENSILING),
                            choice(
                                    Condition.is(YIELD_BASIS, DRY_MATTER),
                                    part().times(YIELD_DRY_MATTER),
                                    withoutBasis(part().times(YIELD).times(DM_AT_ENSILING))))),
            Source.derived("fresh mass × dry matter content"),
            "field losses are not taken off",
            List.of(
                    WorkedExample.from(WHOLECROP)
                            .with(YIELD_BASIS, STANDING)
                            .with(SHARE, 50)
                            .with(AREA, 100)
                            .with(YIELD, 30)
                            .with(DM_AT_CUTTING, 45)
                            .gives(675, Units.T_DM, 0),
                    WorkedExample.from(Source.secondHand("agproud.com: 300 t at 33-34 % is 100 t of dry matter"))
                            .with(YIELD_BASIS, CARTED)
                            .with(SHARE, 50)
                            .with(AREA, 20)
                            .with(YIELD, 30)
                            .with(DM_AT_ENSILING, 33.5)
                            .givesWithin(100, Units.T_DM, 2),
                    WorkedExample.from(Source.secondHand("MGA 1995 in farm press: maize of 12 t DM per ha"))
                            .with(YIELD_BASIS, DRY_MATTER)
                            .with(SHARE, 50)
                            .with(AREA, 20)
                            .with(YIELD_DRY_MATTER, 12)
                            .gives(120, Units.T_DM, 0)));

    /** The area whose crop the row is about. */
    private static Expr part() {
        return value(AREA).times(SHARE);
    }

    /** A yield with no basis, or another word, is withheld; what is asked for is the basis. */
    private static Expr withoutBasis(Expr expr) {
        return expr.onlyWhen(
                Condition.is(YIELD_BASIS, DRY_MATTER),
                "no yield with its basis: type Yield, and standing fresh, as carted fresh or dry matter in Yield basis");
    }

    private static WorkedExample freshOf(double moisture, double fresh) {
        return WorkedExample.from(MWPS)
                .with(YIELD_BASIS, DRY_MATTER)
                .with(SHARE, 50)
                .with(AREA, 2)
                .with(YIELD_DRY_MATTER, 1)
                .with(DM_AT_ENSILING, 100 - moisture)
                .gives(fresh, Units.T, 2);
    }
}
