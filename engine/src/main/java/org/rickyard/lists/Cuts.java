package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import org.rickyard.trade.Quantities;

/** The list of cuts; without it every field is cut once, as {@link Fields} says. Yields as in {@link Fields}. */
public final class Cuts {
    private Cuts() {}

    /** Whose field. */
    public static final ColumnSpec HOLDING = Shared.HOLDING;
    /** The field cut; or the crop. */
    public static final ColumnSpec FIELD = text("Field", Quantities.FIELD)
            .also("field name, name, parcel, paddock, enclosure, field no")
            .help("One field; or leave it out and name the crop.");
    /** The crop cut, all its fields. */
    public static final ColumnSpec CROP = Fields.CROP.help("All fields of this crop are cut.");
    /** Which cut. */
    public static final ColumnSpec CUT = number("Cut", Quantities.CUT_NUMBER)
            .needed()
            .also("cut no, cut number, which cut, cutting no, cutting number")
            .help("1 for the first cut of the season.");
    /** First day. */
    public static final ColumnSpec START = Shared.START.help("First day of the cut.");
    /** Last day. */
    public static final ColumnSpec END = Shared.END.help("Last day of the cut.");
    /** Yield of this cut. */
    public static final ColumnSpec YIELD = Fields.YIELD;
    /** What the yield was weighed as. */
    public static final ColumnSpec YIELD_BASIS = Fields.YIELD_BASIS;
    /** Dry matter at cutting. */
    public static final ColumnSpec DM_AT_CUTTING = Fields.DM_AT_CUTTING;
    /** Dry matter at ensiling. */
    public static final ColumnSpec DM_AT_ENSILING = Fields.DM_AT_ENSILING;
    /** Where the crop goes. */
    public static final ColumnSpec CLAMP = Fields.CLAMP;

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Cuts",
                    List.of("cut list", "cutting plan", "silage cuts", "cut plan", "harvests"),
                    List.of(
                            HOLDING,
                            FIELD,
                            CROP,
                            CUT,
                            START,
                            END,
                            YIELD,
                            YIELD_BASIS,
                            DM_AT_CUTTING,
                            DM_AT_ENSILING,
                            CLAMP))
            .identifiedBy(FIELD, CROP)
            .otherwise(HOLDING, Shared.WHOSE)
            .otherwise(CUT, "cutting")
            .otherwise(START, "date, cut date, date cut, cutting date, mown on, date mown, mowing date")
            .otherwise(YIELD, Fields.YIELDS)
            .otherwiseMeasured(YIELD, Fields.STANDING)
            .otherwiseMeasured(YIELD, Fields.WHAT_IS_CUT)
            .needsOneOf(List.of(FIELD), List.of(CROP))
            .qualifier(YIELD, YIELD_BASIS)
            .unclear(Shared.LONE_DM, DM_AT_CUTTING, DM_AT_ENSILING);
}
