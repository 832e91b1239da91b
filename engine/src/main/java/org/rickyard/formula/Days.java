package org.rickyard.formula;

import java.time.LocalDate;

/** Days, which a grid counts from a day of its own and a reader knows by their date. */
public final class Days {
    /** The day that most workbooks count from. */
    public static final LocalDate USUAL_ZERO = LocalDate.of(1899, 12, 30);

    /** The day after the last that a grid shows as a date. */
    private static final double AFTER_LAST = 2_958_466;

    private Days() {}

    /**
     * The date of a day.
     *
     * @param serial days since {@code zero}; what is beyond whole days is the time of day, and left out
     * @param zero the day the workbook counts from
     */
    public static LocalDate of(double serial, LocalDate zero) {
        return zero.plusDays((long) Math.floor(serial));
    }

    /**
     * A day as a reader knows it: {@code 2026-05-28}; one that no grid can show as a date is only said to be so late.
     *
     * @param serial days since {@code zero}; what is beyond whole days is the time of day, and left out
     * @param zero the day the workbook counts from
     */
    public static String text(double serial, LocalDate zero) {
        return serial < AFTER_LAST ? of(serial, zero).toString() : "after the year 9999";
    }
}
