package org.rickyard.plan;

import java.util.Set;

/**
 * The tables an adviser cannot do without: rates, tankfuls and product, crop, clamps and pits. The others go further
 * into the same rows; a gap there is no alarm, and of a very large workbook they are worked out only when asked for.
 */
public final class ChiefTables {
    private ChiefTables() {}

    /** Lines of work beyond which only the chief tables are worked out, unless all are asked for. */
    public static final int MOST_LINES = 20_000;

    private static final Set<String> IDS = Set.of(
            "measured-speeds",
            "measured-widths",
            "field-shapes",
            "work-rates",
            "machine-totals",
            "holding-totals",
            "spray-fields",
            "spray-blocks",
            "tank-mix",
            "spread-products",
            "product-order",
            "crop",
            "clamps",
            "pit-digging");

    /** Whether a table is one of them. */
    public static boolean contains(String id) {
        return IDS.contains(id);
    }
}
