package org.rickyard.lists.text;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a time by the watch, 5:20 for five minutes and twenty seconds. In a cell of its own accord a spreadsheet takes that
 * for twenty past five.
 */
public final class WatchText {
    private static final Pattern MINUTES_AND_SECONDS = Pattern.compile("(\\d{1,2}):([0-5]\\d)");
    private static final double SECONDS_OF_DAY = 86_400;
    private static final double MINUTES_OF_HOUR = 60;

    private WatchText() {}

    /** The seconds; empty if the text is not of this form. */
    public static OptionalDouble read(String text) {
        Matcher watch = MINUTES_AND_SECONDS.matcher(text);
        return watch.matches()
                ? OptionalDouble.of(
                        Integer.parseInt(watch.group(1)) * MINUTES_OF_HOUR + Integer.parseInt(watch.group(2)))
                : OptionalDouble.empty();
    }

    /**
     * The seconds that were meant with a time of day: of one after one in the morning its hours are minutes and its
     * minutes seconds, for nobody times a run of hours.
     *
     * @param day the part of a day that is past, 0 to 1
     */
    public static double meantBy(double day) {
        double seconds = day * SECONDS_OF_DAY;
        return Math.rint(seconds >= MINUTES_OF_HOUR * MINUTES_OF_HOUR ? seconds / MINUTES_OF_HOUR : seconds);
    }
}
