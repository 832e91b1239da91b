package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.PRODUCT_DENSITY;
import static org.rickyard.trade.Quantities.PRODUCT_UNIT;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Substance;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/** Doses by active ingredient or nutrient, brought to the product by what a litre or a kilogram of it holds. */
public final class ContentDose {
    private ContentDose() {}

    /** What a dose counts: active ingredient, nitrogen, phosphate or potash. */
    public static final Symbol OF = Symbol.text("dose counts");
    /** What the product holds of it by weight. */
    public static final Symbol SHARE = Symbol.number("content by weight", Units.PERCENT)
            .possible(Range.above(0, 100))
            .decimals(1);
    /** What a litre of the product holds of it. */
    public static final Symbol PER_LITRE = Symbol.number("content of a litre", Units.G.over(Units.L))
            .possible(Range.above(0, 2000))
            .decimals(1);
    /** Product on a hectare that holds the dose. */
    public static final Symbol PRODUCT_DOSE = Symbol.number("dose from the content", Units.DOSE)
            .possible(Range.POSITIVE)
            .decimals(3);
    /** A dose of product as typed, in a table that may have it from the content. */
    public static final Symbol TYPED = Symbol.number("dose of product", Units.DOSE)
            .possible(Quantities.DOSE.possible())
            .decimals(3);
    /** A dose of product that is spread, as typed, in a table that may have it from the content. */
    public static final Symbol TYPED_SPREAD = Symbol.number("spreading dose of product", Units.DOSE)
            .possible(Quantities.SPREAD_DOSE.possible())
            .decimals(3);

    private static final Source EXERCISE = Source.published(
            "Extension calibration exercise 7a: 3 lb of active ingredient an acre from 8 lb/gal are 3 pt");

    private static final Unit BY_WEIGHT = Units.KG.over(Units.HA);
    private static final Unit PER_GALLON = Units.LB.over(Units.GAL_US);
    private static final Unit POUNDS = Unit.of("lb", Units.KG_SUBSTANCE.dimension(), Units.LB.ratioTo(Units.KG))
            .over(Units.AC);
    private static final Unit POUNDS_OF_PRODUCT = Unit.of(
                    "lb", Units.PRODUCT_UNIT.dimension(), Units.LB.ratioTo(Units.KG))
            .over(Units.AC);
    private static final Unit GALLONS = Unit.of(
                    "gal(US)", Units.PRODUCT_UNIT.dimension(), Units.GAL_US.ratioTo(Units.L))
            .over(Units.AC);

    /** The dose as plain kilograms on a hectare. */
    private static final Expr WANTED =
            new Expr.AsUnit(new Expr.NumberOf(value(Quantities.SUBSTANCE_DOSE), Units.SUBSTANCE_DOSE), BY_WEIGHT);

    private static Expr product(Expr amount, Unit unit) {
        return new Expr.AsUnit(new Expr.NumberOf(amount, unit), Units.DOSE);
    }

    private static Expr byVolume(Expr amount) {
        return product(amount, Units.L_PER_HA)
                .onlyWhen(
                        Condition.is(PRODUCT_UNIT, "L"),
                        "the dose counts what is in the product, and whether the product goes by L or kg is not told:"
                                + " write it in Unit of the product list");
    }

    /** {@code dose-from-content}: dose of the substance ÷ content; of litres by weight, ÷ density too. */
    public static final Formula DOSE_FROM_CONTENT = new Formula(
            "dose-from-content",
            PRODUCT_DOSE,
            choice(
                    Condition.is(PRODUCT_UNIT, "kg"),
                    product(WANTED.over(SHARE), BY_WEIGHT),
                    choice(
                            Condition.all(
                                    List.of(new Condition.Blank(SHARE), Condition.is(OF, Substance.ACTIVE.words()))),
                            byVolume(WANTED.over(PER_LITRE)),
                            byVolume(WANTED.over(value(PRODUCT_DENSITY).times(SHARE))))),
            SpraySources.CROPWATCH,
            "the content from the label, of the very substance that the dose counts (acid and salt differ, P and P2O5"
                    + " too); a share is by weight. The label's own dose of product stands before any reckoning",
            List.of(
                    WorkedExample.from(SpraySources.CROPWATCH)
                            .with(PRODUCT_UNIT, "L")
                            .with(Quantities.SUBSTANCE_DOSE, 75, POUNDS)
                            .with(SHARE, 28)
                            .with(PRODUCT_DENSITY, 10.65, PER_GALLON)
                            .gives(25.151, GALLONS, 3),
                    WorkedExample.from(SpraySources.DUST)
                            .with(PRODUCT_UNIT, "kg")
                            .with(Quantities.SUBSTANCE_DOSE, 10, POUNDS)
                            .with(SHARE, 5)
                            .gives(200, POUNDS_OF_PRODUCT, 0),
                    WorkedExample.from(SpraySources.EMULSION)
                            .with(PRODUCT_UNIT, "L")
                            .with(Quantities.SUBSTANCE_DOSE, 0.3, POUNDS)
                            .with(SHARE, 6)
                            .with(PRODUCT_DENSITY, 8.34, PER_GALLON)
                            .gives(0.6, GALLONS, 1),
                    WorkedExample.from(EXERCISE)
                            .with(PRODUCT_UNIT, "L")
                            .with(OF, Substance.ACTIVE.words())
                            .with(Quantities.SUBSTANCE_DOSE, 3, POUNDS)
                            .with(PER_LITRE, 8, PER_GALLON)
                            .gives(0.375, GALLONS, 3),
                    WorkedExample.from(SpraySources.EXERCISE_7B)
                            .with(PRODUCT_UNIT, "L")
                            .with(OF, Substance.ACTIVE.words())
                            .with(Quantities.SUBSTANCE_DOSE, 0.5, POUNDS)
                            .with(PER_LITRE, 2, PER_GALLON)
                            .gives(0.25, GALLONS, 2)));

    /** {@code dose-reckoned}: the dose of product typed, or else the one from its content. */
    public static final Formula DOSE_RECKONED = reckoned("dose-reckoned", Quantities.DOSE, TYPED);
    /** {@code spreading-dose-reckoned}: the same of what is spread. */
    public static final Formula SPREADING_DOSE_RECKONED =
            reckoned("spreading-dose-reckoned", Quantities.SPREAD_DOSE, TYPED_SPREAD);

    private static Formula reckoned(String id, Symbol dose, Symbol typed) {
        return new Formula(
                id,
                dose,
                given(
                        typed,
                        // Where nothing is typed, what the header counts is asked for.
                        choice(new Condition.Given(OF), value(PRODUCT_DOSE), value(typed))),
                Source.commonPractice("the dose is of the product, or else of what the product holds"),
                "as typed; otherwise from the content",
                List.of(
                        WorkedExample.from(Source.commonPractice("a dose of product"))
                                .with(typed, 2)
                                .gives(2, Units.DOSE, 6),
                        WorkedExample.from(SpraySources.DUST)
                                .with(OF, Substance.ACTIVE.words())
                                .with(PRODUCT_DOSE, 200, POUNDS_OF_PRODUCT)
                                .gives(200, POUNDS_OF_PRODUCT, 0)));
    }
}
