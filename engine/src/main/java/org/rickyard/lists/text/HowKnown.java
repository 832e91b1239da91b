package org.rickyard.lists.text;

import java.util.regex.Pattern;

/** Words that tell how a figure is known, and nothing of what it measures or in which unit: "Area (GPS)", "est." */
public final class HowKnown {
    private static final Pattern SAID = Pattern.compile(
            "(?i)(?<![\\p{L}\\d])(gps|rpa|lpis|map|mapped|measured|surveyed|official|actual|achieved|approx|approximate|est"
                    + "|estimated|expected|planned|budget|budgeted|forecast|typical|usual|nominal|effective"
                    + "|(\\d+[ -]?(yr|year)s?[ -]+)?(avg|average|mean))(?![\\p{L}\\d])\\.?");

    private static final Pattern EMPTY = Pattern.compile("\\(\\s*\\)|\\[\\s*\\]");

    private static final Pattern AT_EITHER_END = Pattern.compile("^[\\s,;:.-]+|[\\s,;:.-]+$");

    private HowKnown() {}

    /** A text without such words and what they leave empty: "Speed km/h (actual)" is "Speed km/h". */
    public static String without(String text) {
        String bare = EMPTY.matcher(SAID.matcher(text).replaceAll(" ")).replaceAll(" ");
        return AT_EITHER_END.matcher(bare.replaceAll("\\s+", " ")).replaceAll("");
    }

    /** Whether a text holds such a word. */
    public static boolean isSaid(String text) {
        return SAID.matcher(text).find();
    }
}
