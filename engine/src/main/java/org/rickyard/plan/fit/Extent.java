package org.rickyard.plan.fit;

import java.util.function.Predicate;

/**
 * How much of the tables is worked out.
 *
 * @param worked which tables, by their ids; the others are left without rows
 * @param fitted whether columns that nothing in the workbook can fill are left out of them
 * @param toTheirRows whether what no row has need of is left out as well
 */
public record Extent(Predicate<String> worked, boolean fitted, boolean toTheirRows) {
    /** Every table, fitted to the workbook. */
    public static final Extent ALL = new Extent(id -> true, true, false);
    /** Every table with every column that is declared, whether anything can fill it or not. */
    public static final Extent ALL_COLUMNS = new Extent(id -> true, false, false);

    /** These tables only, fitted to the rows they have. */
    public static Extent only(Predicate<String> worked) {
        return new Extent(worked, true, true);
    }
}
