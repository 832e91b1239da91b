package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.silage.ClampContents.CLAMP_DM;
import static org.rickyard.trade.silage.ClampSides.HEIGHT;
import static org.rickyard.trade.silage.Filling.DELIVERY_USED;
import static org.rickyard.trade.silage.Rolling.LAYER_USED;
import static org.rickyard.trade.silage.Rolling.MASS_USED;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * The packing model of Muck and Holmes, from memory and not verified: an estimate only, switched off unless the
 * workbook asks for it.
 */
public final class PackingModel {
    private PackingModel() {}

    /** The packing factor. */
    public static final Symbol FACTOR =
            Symbol.number("packing factor", Units.ONE).possible(Range.POSITIVE).decimals(1);
    /** The density it estimates. */
    public static final Symbol ESTIMATE = Symbol.number(
                    "density estimated by the packing model (unverified)", Units.KG_DM_PER_M3)
            .possible(Range.POSITIVE)
            .decimals(0);

    private static final Source MEMORY = Source.memory("working form of Muck & Holmes, Appl. Eng. Agric. 16(6) 2000;"
            + " coefficients not confirmed. The paper's packing factor explains 18.2 % of the variance: an estimate");

    /** Whether the model is used. */
    public static final Constant SWITCH =
            new Constant("use the packing model (1 yes, 0 no)", 0, Units.ONE, MEMORY).possible(Range.of(0, 1));
    /** How many rollers. */
    public static final Constant ROLLERS =
            new Constant("rollers at work all the time, packing model", 1, Units.ONE, MEMORY).aboveZero();

    private static final Constant BASE = new Constant("packing model, base", 136.157, Units.KG_DM_PER_M3, MEMORY);
    private static final Constant BY_FACTOR =
            new Constant("packing model, for each packing factor", 1.324245, Units.KG_DM_PER_M3, MEMORY);
    private static final Constant AT_FLOOR =
            new Constant("packing model, share without depth", 0.818, Units.ONE, MEMORY);
    private static final Constant BY_DEPTH =
            new Constant("packing model, share for each metre of depth", 0.0446194, Units.ONE.over(Units.M), MEMORY);

    private static final Source CHECK =
            Source.derived("from the remembered coefficients, in kg, cm and t/h; no published pair is held");
    private static final Unit LB_DM_PER_FT3 = Packing.TARGET.unit();

    /** {@code packing-factor}: mean roller mass ÷ layer × √(rollers × dry matter ÷ delivery), in kg, cm and t/h. */
    public static final Formula PACKING_FACTOR = new Formula(
            "packing-factor",
            FACTOR,
            new Expr.NumberOf(value(MASS_USED), Units.KG)
                    .over(constant(ROLLERS))
                    .over(new Expr.NumberOf(value(LAYER_USED), Units.CM))
                    .times(Expr.call(
                            Function.SQRT,
                            constant(ROLLERS)
                                    .times(new Expr.NumberOf(value(CLAMP_DM), Units.KG_DM.over(Units.KG)))
                                    .over(new Expr.NumberOf(value(DELIVERY_USED), Units.T_PER_H)))),
            MEMORY,
            "an estimate from memory, unverified; 18.2 % of the variance explained",
            List.of(
                    WorkedExample.from(CHECK)
                            .with(MASS_USED, 18)
                            .with(LAYER_USED, 15)
                            .with(CLAMP_DM, 30)
                            .with(DELIVERY_USED, 45)
                            .gives(97.9796, Units.ONE, 4),
                    WorkedExample.from(CHECK)
                            .with(MASS_USED, 18)
                            .with(LAYER_USED, 30)
                            .with(CLAMP_DM, 30)
                            .with(DELIVERY_USED, 45)
                            .gives(48.9898, Units.ONE, 4)));

    /** {@code packed-density-estimate}. */
    public static final Formula PACKED_DENSITY = new Formula(
            "packed-density-estimate",
            ESTIMATE,
            constant(BASE)
                    .plus(constant(BY_FACTOR).times(FACTOR))
                    .times(constant(AT_FLOOR).plus(constant(BY_DEPTH).times(HEIGHT))),
            MEMORY,
            "an estimate from memory, unverified; 18.2 % of the variance explained; mean depth taken as the settled"
                    + " height",
            List.of(
                    WorkedExample.from(CHECK)
                            .with(FACTOR, 97.9796)
                            .with(HEIGHT, 2.4)
                            .gives(245.99, Units.KG_DM_PER_M3, 2),
                    WorkedExample.from(CHECK)
                            .with(FACTOR, 48.9898)
                            .with(HEIGHT, 2.4)
                            .gives(185.97, Units.KG_DM_PER_M3, 2),
                    WorkedExample.from(Source.derived("the same in pounds: 557.77 at 8 ft gives 15.890 lb per ft3"))
                            .with(FACTOR, 557.77 * 0.45359237 / 2.54 / Math.sqrt(0.90718474))
                            .with(HEIGHT, 8, Units.FT)
                            .givesWithin(15.890, LB_DM_PER_FT3, 0.001)));
}
