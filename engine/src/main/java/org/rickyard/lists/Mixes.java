package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.dose;
import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import org.rickyard.trade.Quantities;

/** The tank mixes, one row for each product of a mix. Doses as in {@link Products}. */
public final class Mixes {
    private Mixes() {}

    /** Its name. */
    public static final ColumnSpec MIX = text("Mix", Quantities.MIX)
            .needed()
            .also("tank mix name, spray mix, tank mix, mix name, tankmix, mixture, recipe, programme, treatment")
            .help("The same name on each of its rows.");
    /** A product in it. */
    public static final ColumnSpec PRODUCT = Shared.PRODUCT.needed();
    /** Its dose. */
    public static final ColumnSpec DOSE = dose(
                    "Dose", Quantities.SPREAD_DOSE, Quantities.CONCENTRATION, Quantities.SUBSTANCE_DOSE)
            .needed()
            .also("dosage, dosage rate, product dose, dose per ha, dose rate, product rate, amount, rate of product")
            .help("With its unit: L/ha, g/ac, %, ml/100 L.");
    /** The dose's unit, row by row. */
    public static final ColumnSpec DOSE_UNIT = text("Dose unit", Quantities.UNIT)
            .also("unit, rate unit, units, UOM")
            .help("Where doses differ in unit: L/ha, g/ha, %, ml/100 L.");
    /** Which goes in first. */
    public static final ColumnSpec ORDER_IN_TANK = number("Order in tank", Quantities.ORDER_IN_TANK)
            .also("order, mixing order, tank order, sequence, order of mixing")
            .help("1 goes in first; the labels decide.");

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Mixes",
                    List.of("tank mixes", "mix list", "tank mix list", "spray mixes", "recipes", "spray programme"),
                    List.of(MIX, PRODUCT, DOSE, DOSE_UNIT, ORDER_IN_TANK))
            .identifiedBy(MIX)
            .needsHeaders(3)
            .unitColumn(DOSE_UNIT, DOSE)
            // What goes into each job, listed beside the job's name.
            .otherwise(MIX, "job, job name")
            .unclear(List.of("rate"), DOSE)
            .told("rate", DOSE, PRODUCT, DOSE_UNIT)
            .toldMeasured("rate", DOSE, PRODUCT);
}
