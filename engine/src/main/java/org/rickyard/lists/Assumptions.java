package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.special;
import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import org.rickyard.trade.Quantities;

/**
 * What overrules a constant or default of the engine, by its name. {@link #VALUE} is a number in the unit of its row or
 * words. The item {@value #CUSTOMARY_UNITS} with the value UK, US or metric settles gallons, pints, fluid ounces,
 * hundredweights and tons.
 */
public final class Assumptions {
    private Assumptions() {}

    /** The item that says which gallon is meant. */
    public static final String CUSTOMARY_UNITS = "Customary units";

    /** Its name. */
    public static final ColumnSpec ITEM = text("Item", Quantities.ITEM)
            .needed()
            .also("assumption, constant, parameter, name")
            .help("The name as Basis gives it.");
    /** What it shall be. */
    public static final ColumnSpec VALUE = special("Value", ColumnSpec.Type.TEXT_OR_NUMBER, Quantities.VALUE_NUMBER)
            .needed()
            .also("set to, assumed value, assumed")
            .help("A number in the unit beside it, or a word.");
    /** In which unit. */
    public static final ColumnSpec UNIT =
            text("Unit", Quantities.UNIT).also("units, UOM").help("Blank means the unit on Basis.");

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Assumptions",
                    List.of("assumption list", "constants", "settings", "parameters"),
                    List.of(ITEM, VALUE, UNIT))
            .identifiedBy(ITEM)
            .needsHeaders(3)
            .unitColumn(UNIT, VALUE);
}
