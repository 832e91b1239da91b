package org.rickyard.workbook.read;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.OptionalDouble;

/**
 * The day from which a workbook counts its days. Numbers of date cells stay as they are stored, in the epoch of their
 * workbook; the same day is 1,462 less in a 1904 workbook than in a 1900 one.
 */
public enum Epoch {
    /**
     * Day 1 is 1 January 1900. Day 60 is a 29 February 1900 that never was, kept by the grid for the sake of an older
     * program; days from 61 (1 March 1900) on are true.
     */
    Y1900,
    /** Day 0 is 1 January 1904. */
    Y1904;

    private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 31);
    private static final LocalDate FIRST_1904 = LocalDate.of(1904, 1, 1);
    private static final LocalDate LAST = LocalDate.of(9999, 12, 31);
    private static final double SECONDS_PER_DAY = 86_400;

    /** The epoch of a workbook by its {@code date1904} flag. */
    public static Epoch of(boolean date1904) {
        return date1904 ? Y1904 : Y1900;
    }

    /** The day whose number is 0; in the 1900 epoch as counted from March 1900 on. */
    public LocalDate dayZero() {
        return this == Y1904 ? FIRST_1904 : BEFORE_1900.minusDays(1);
    }

    /**
     * The number by which a workbook stores a day.
     *
     * @return the number; empty for days before the epoch or after 31 December 9999
     */
    public OptionalDouble toSerial(LocalDate date) {
        LocalDate first = this == Y1904 ? FIRST_1904 : BEFORE_1900.plusDays(1);
        if (date.isBefore(first) || date.isAfter(LAST)) {
            return OptionalDouble.empty();
        }
        long days = ChronoUnit.DAYS.between(this == Y1904 ? FIRST_1904 : BEFORE_1900, date);
        return OptionalDouble.of(this == Y1900 && days >= 60 ? days + 1 : days);
    }

    /** The number by which a workbook stores a moment; empty where {@link #toSerial(LocalDate)} is. */
    public OptionalDouble toSerial(LocalDateTime moment) {
        OptionalDouble day = toSerial(moment.toLocalDate());
        double part = moment.toLocalTime().toNanoOfDay() / 1e9 / SECONDS_PER_DAY;
        return day.isEmpty() ? day : OptionalDouble.of(day.getAsDouble() + part);
    }
}
