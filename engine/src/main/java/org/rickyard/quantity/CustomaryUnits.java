package org.rickyard.quantity;

/** Whose gallons, pints, fluid ounces, hundredweights and tons a workbook means. */
public enum CustomaryUnits {
    /** Not said: words that differ are asked about. */
    UNSET,
    /** Imperial: the gallon of 4.54609 L, the hundredweight of 112 lb and the ton of 2,240 lb. */
    UK,
    /** United States: the gallon of 3.785411784 L, the hundredweight of 100 lb and the ton of 2,000 lb. */
    US,
    /** A ton is a tonne; gallons and pints are still asked about. */
    METRIC;

    /** As written under Assumptions: "UK", "imperial", "US", "metric"; UNSET for anything else. */
    public static CustomaryUnits of(String text) {
        return switch (text.strip().toLowerCase(java.util.Locale.ROOT)) {
            case "uk", "gb", "imperial", "imp", "british", "ireland", "irish" -> UK;
            case "us", "usa", "american", "u.s." -> US;
            case "metric", "si" -> METRIC;
            default -> UNSET;
        };
    }
}
