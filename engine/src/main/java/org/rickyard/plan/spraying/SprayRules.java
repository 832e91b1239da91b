package org.rickyard.plan.spraying;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Function;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.NozzlePressure;
import org.rickyard.trade.spraying.SprayLimits;
import org.rickyard.trade.spraying.SprayQuality;
import org.rickyard.trade.spraying.TankPlan;

/** What a careful adviser would stop at, or mind, in a spraying plan. Never a permission. */
final class SprayRules {
    private SprayRules() {}

    /** Nozzles × spacing against the boom. */
    static final CautionRule SPACING_DIFFERS = caution(
            Condition.compare(
                    Expr.call(
                            Function.ABS,
                            Expr.value(Quantities.NOZZLES)
                                    .times(Quantities.NOZZLE_SPACING)
                                    .minus(Quantities.WORKING_WIDTH)),
                    Relation.MORE,
                    Expr.constant(NozzlePressure.SPACING_TOLERANCE).times(Quantities.WORKING_WIDTH)),
            "number of nozzles × spacing is not the boom width (more than the tolerance on Basis): one of the three is"
                    + " wrong; measure.");

    /** A share by weight says nothing of a litre. */
    static final CautionRule NITROGEN_UNTOLD = caution(
            Condition.all(List.of(
                    more(Quantities.NITROGEN_SHARE, Expr.number(0)),
                    Condition.is(Quantities.PRODUCT_UNIT, "L"),
                    new Condition.Blank(Quantities.PRODUCT_DENSITY))),
            "its nitrogen is not reckoned: the product goes by litres and its share of nitrogen is by weight. Type"
                    + " Density of the product (kg/L).");

    /** A rule of booms, in a table of sprayers of any type: nozzles above each other make no width. */
    static CautionRule ofBooms(CautionRule rule) {
        return caution(
                Condition.all(List.of(
                        new Condition.Not(Condition.is(Quantities.MACHINE_TYPE, "air-blast sprayer")), rule.when())),
                rule.text());
    }

    /** Of each product, however it is applied: its dose against the highest. */
    static List<CautionRule> againstHighest(Symbol dose) {
        return List.of(
                stop(
                        more(dose, Expr.value(Quantities.HIGHEST_DOSE)),
                        "the dose is above the highest dose typed for this product; do not apply it: check the label."),
                stop(
                        more(dose, Expr.constant(SprayLimits.SLIP_OF_A_THOUSAND).times(Quantities.HIGHEST_DOSE)),
                        "the dose is hundreds of times the highest: was it typed in ml or g where L or kg is meant? "
                                + "Then write ml or"
                                + " g in its unit."));
    }

    private static final List<CautionRule> HIGHEST = againstHighest(TankPlan.DOSE_USED);

    /** Of each product in the tank. */
    static final List<CautionRule> PRODUCT = List.of(
            HIGHEST.get(0),
            HIGHEST.get(1),
            stop(
                    more(Quantities.CONCENTRATION, Expr.value(Quantities.HIGHEST_CONCENTRATION)),
                    "the dose in the spray is above the highest typed for this product; check the label."),
            stop(
                    more(
                            TankPlan.DOSE_USED,
                            Expr.value(Quantities.HIGHEST_CONCENTRATION).times(Quantities.WATER_VOLUME)),
                    "at this water volume the dose makes the spray stronger than the highest typed; check the label."),
            caution(
                    more(TankPlan.SHARE_DOSE, Expr.value(TankPlan.DOSE_USED)),
                    "the share of the spray would come to more than the highest dose per hectare: the lower, the highest"
                            + " dose, is reckoned; spray less water or a weaker mix."),
            caution(
                    more(TankPlan.DOSE_USED, Expr.constant(SprayLimits.HIGH_DOSE)),
                    "the dose is very high for a crop protection product: liquid fertiliser, or ml typed as L or g as"
                            + " kg?"),
            caution(
                    more(Quantities.CONCENTRATION, Expr.constant(SprayLimits.HIGH_SHARE)),
                    "a very strong mix for a sprayer: a wiper's mix, or % typed where ml/100 L is meant?"),
            caution(
                    less(
                            TankPlan.DOSE_USED,
                            Expr.constant(SprayLimits.LOW_SHARE).times(Quantities.HIGHEST_DOSE)),
                    "the dose is a small part of the highest dose: per acre read as per hectare, or meant so?"),
            caution(
                    less(Quantities.WATER_VOLUME, Quantities.LOWEST_WATER_VOLUME),
                    "the water volume is below the least on the label; the label decides."),
            mixedUp(Quantities.LOWEST_WATER_VOLUME, Quantities.HIGHEST_WATER_VOLUME, "water volume"),
            caution(
                    Condition.all(List.of(
                            less(Quantities.WATER_VOLUME, Quantities.LOWEST_WATER_VOLUME),
                            Condition.compare(
                                    new Expr.AsUnit(
                                            new Expr.NumberOf(Expr.value(Quantities.WATER_VOLUME), Units.L_PER_HA),
                                            Units.L.over(Units.AC)),
                                    Relation.AT_LEAST,
                                    Expr.value(Quantities.LOWEST_WATER_VOLUME)))),
                    "read as L/ac the same number would not be below the least on the label: is it L/ac in an L/ha column?"
                            + " Then write L/ac in the header."),
            caution(
                    more(Quantities.WATER_VOLUME, Expr.value(Quantities.HIGHEST_WATER_VOLUME)),
                    "the water volume is above the most on the label; the label decides."),
            caution(
                    less(SprayQuality.NOZZLE_PLACE, SprayQuality.LABEL_PLACE),
                    "the nozzle sprays finer than the label asks: more drift; choose a nozzle or pressure whose maker"
                            + " states the label's quality."),
            caution(
                    more(SprayQuality.NOZZLE_PLACE, Expr.value(SprayQuality.LABEL_PLACE)),
                    "the nozzle sprays coarser than the label asks: it may cover and work less well; the label"
                            + " decides."));

    /** A water volume that leaves the nozzles idling, and that would suit them if it were per acre. */
    static final CautionRule PER_ACRE = perAcre();

    private static CautionRule perAcre() {
        Expr readAsPerAcre = new Expr.AsUnit(
                new Expr.NumberOf(Expr.value(Quantities.WATER_VOLUME), Units.L_PER_HA), Units.L.over(Units.AC));
        Expr pressure = Expr.value(NozzlePressure.WANTED_PRESSURE)
                .times(readAsPerAcre.over(Quantities.WATER_VOLUME).power(2));
        return caution(
                Condition.all(List.of(
                        less(NozzlePressure.WANTED_PRESSURE, Quantities.LOWEST_PRESSURE),
                        Condition.compare(pressure, Relation.AT_LEAST, Expr.value(Quantities.LOWEST_PRESSURE)),
                        Condition.compare(pressure, Relation.AT_MOST, Expr.value(Quantities.HIGHEST_PRESSURE)))),
                "read as L/ac the water volume would bring the pressure inside the window: is it L/ac in an L/ha column?"
                        + " Then write L/ac in the header.");
    }

    /** Of a lowest that lies above its highest, by which everything is outside. */
    static CautionRule mixedUp(Symbol lowest, Symbol highest, String what) {
        return caution(
                less(highest, lowest),
                "the lowest " + what
                        + " typed is above the highest: were the two mixed up? Until they are mended, what is"
                        + " said of either means nothing.");
    }

    /** Of a speed at which drift grows. */
    static CautionRule fast(Symbol speed) {
        return caution(
                more(speed, Expr.constant(SprayLimits.FAST)),
                "fast for spraying: drift and an unsteady boom; keep below 16-18 km/h, slower in wind (GRDC).");
    }

    /** Of a pressure against the window of the nozzle. */
    static List<CautionRule> window(Symbol pressure, String at) {
        return List.of(
                caution(
                        less(pressure, Quantities.LOWEST_PRESSURE),
                        at + " the pressure is below the nozzle's lowest: the fan narrows; a smaller size or faster."),
                caution(
                        more(pressure, Expr.value(Quantities.HIGHEST_PRESSURE)),
                        at + " the pressure is above the nozzle's highest: finer drops drift; a bigger size or"
                                + " slower."));
    }

    static CautionRule stop(Condition when, String text) {
        return new CautionRule(Severity.STOP, when, text);
    }

    static CautionRule caution(Condition when, String text) {
        return new CautionRule(Severity.CAUTION, when, text);
    }

    /** Above the limit, both cut to nine decimals, so that binary noise at an edge raises no alarm. */
    static Condition more(Symbol symbol, Expr limit) {
        return Condition.above(Expr.value(symbol), limit);
    }

    /** Below the limit, cut likewise. */
    static Condition less(Symbol symbol, Symbol limit) {
        return less(symbol, Expr.value(limit));
    }

    /** Below the limit, cut likewise. */
    static Condition less(Symbol symbol, Expr limit) {
        return Condition.below(Expr.value(symbol), limit);
    }
}
