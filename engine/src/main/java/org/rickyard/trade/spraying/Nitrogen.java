package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.NITROGEN_SHARE;
import static org.rickyard.trade.Quantities.PRODUCT_DENSITY;
import static org.rickyard.trade.Quantities.PRODUCT_UNIT;
import static org.rickyard.trade.Quantities.SPREAD_DOSE;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** Nitrogen in what is sprayed or spread. A record of a plan, not advice on how much a crop needs or a rule allows. */
public final class Nitrogen {
    private Nitrogen() {}

    private static final Unit PER_HECTARE = Units.KG.over(Units.HA);
    private static final Unit PER_ACRE = Units.LB.over(Units.AC);

    /** Nitrogen on a hectare from what is sprayed, kg/ha. */
    public static final Symbol SPRAYED = Symbol.number("nitrogen sprayed", PER_HECTARE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Nitrogen on a hectare from what is spread, kg/ha. */
    public static final Symbol SPREAD = Symbol.number("nitrogen spread", PER_HECTARE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);

    private static final Source GRANULES = Source.published(
            "University of Florida, UF00067504, table 1: 200 lb an acre of granules at 20 % are 40 lb of what is in them");

    private static final String VALIDITY =
            "share by weight; where a label gives it by volume (kg in 100 L), divide that by"
                    + " the density first. What of it a crop takes up, and what a zone or its plan allows, is not known here";

    private static final Unit PER_GALLON = Units.LB.over(Units.GAL_US);

    private static Expr of(Symbol dose) {
        return choice(
                Condition.is(PRODUCT_UNIT, "kg"),
                amount(dose, PER_HECTARE).times(NITROGEN_SHARE),
                amount(dose, Units.L_PER_HA)
                        .times(PRODUCT_DENSITY)
                        .times(NITROGEN_SHARE)
                        .onlyWhen(Condition.is(PRODUCT_UNIT, "L"), "the product goes neither by weight nor by volume"));
    }

    /** A dose as so many of the unit that the product goes by. */
    private static Expr amount(Symbol dose, Unit unit) {
        return new Expr.AsUnit(new Expr.NumberOf(value(dose), Units.DOSE), unit);
    }

    /** A dose in litres that another country gives in gallons an acre. */
    private static double litres(double gallonsAnAcre) {
        return Units.GAL_US.over(Units.AC).convert(gallonsAnAcre, Units.L_PER_HA);
    }

    private static double kilograms(double poundsAnAcre) {
        return PER_ACRE.convert(poundsAnAcre, PER_HECTARE);
    }

    /** {@code nitrogen-sprayed}: dose × share of nitrogen; of litres, × density too. */
    public static final Formula NITROGEN_SPRAYED = new Formula(
            "nitrogen-sprayed",
            SPRAYED,
            of(TankPlan.DOSE_USED),
            SpraySources.CROPWATCH,
            VALIDITY,
            List.of(
                    WorkedExample.from(SpraySources.CROPWATCH)
                            .with(PRODUCT_UNIT, "L")
                            .with(TankPlan.DOSE_USED, litres(25.151))
                            .with(PRODUCT_DENSITY, 10.65, PER_GALLON)
                            .with(NITROGEN_SHARE, 28)
                            .gives(75, PER_ACRE, 0),
                    WorkedExample.from(SpraySources.CROPWATCH)
                            .with(PRODUCT_UNIT, "L")
                            .with(TankPlan.DOSE_USED, litres(1))
                            .with(PRODUCT_DENSITY, 10.65, PER_GALLON)
                            .with(NITROGEN_SHARE, 28)
                            .gives(2.982, PER_ACRE, 3),
                    WorkedExample.from(SpraySources.EMULSION)
                            .with(PRODUCT_UNIT, "L")
                            .with(TankPlan.DOSE_USED, litres(0.6))
                            .with(PRODUCT_DENSITY, 8.34, PER_GALLON)
                            .with(NITROGEN_SHARE, 6)
                            .gives(0.3, PER_ACRE, 1),
                    WorkedExample.from(SpraySources.DUST)
                            .with(PRODUCT_UNIT, "kg")
                            .with(TankPlan.DOSE_USED, kilograms(200))
                            .with(NITROGEN_SHARE, 5)
                            .gives(10, PER_ACRE, 0)));

    /** {@code nitrogen-spread}: dose × share of nitrogen; of litres, × density too. */
    public static final Formula NITROGEN_SPREAD = new Formula(
            "nitrogen-spread",
            SPREAD,
            of(SPREAD_DOSE),
            SpraySources.CROPWATCH,
            VALIDITY,
            List.of(
                    WorkedExample.from(GRANULES)
                            .with(PRODUCT_UNIT, "kg")
                            .with(SPREAD_DOSE, kilograms(200))
                            .with(NITROGEN_SHARE, 20)
                            .gives(40, PER_ACRE, 0),
                    WorkedExample.from(SpraySources.CROPWATCH)
                            .with(PRODUCT_UNIT, "L")
                            .with(SPREAD_DOSE, litres(25.151))
                            .with(PRODUCT_DENSITY, 10.65, PER_GALLON)
                            .with(NITROGEN_SHARE, 28)
                            .gives(75, PER_ACRE, 0)));
}
