package org.rickyard.formula;

import java.time.LocalDate;

/** Days, which a grid counts from a day of its own and a reader knows by their date. */
public final class Days {
    /** The day that most workbooks count from. */
    public static final LocalDate USUAL_ZERO = LocalDate.of(1899, 12, 30);

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
     * A day as a reader knows it: {@code 2026-05-28}.
     *
     * @param serial days since {@code zero}; what is beyond whole days is the time of day, and left out
     * @param zero the day the workbook counts from
     */
    public static String text(double serial, LocalDate zero) {
        return of(serial, zero).toString();
    }
}
