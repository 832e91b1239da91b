package org.rickyard.cli;

import java.util.regex.Pattern;

/**
 * A client's words as they stand in a line of a terminal: a name typed with Alt+Enter has a line break in it, and what
 * steers a terminal is no part of any name.
 */
final class OneLine {
    private static final Pattern BREAKS = Pattern.compile("[\\p{Cc}\\u2028\\u2029]+");

    private OneLine() {}

    /** The text with a blank for every line break, tab and other control character. */
    static String of(String text) {
        return BREAKS.matcher(text).replaceAll(" ");
    }
}
