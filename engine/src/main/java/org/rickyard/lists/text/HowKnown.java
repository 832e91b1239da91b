package org.rickyard.lists.text;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Words that tell how a figure is known, and nothing of what it measures or in which unit: "Area (GPS)", "est." */
public final class HowKnown {
    private static final Set<String> WORDS = Set.of(
            "gps",
            "rpa",
            "lpis",
            "map",
            "mapped",
            "measured",
            "surveyed",
            "official",
            "actual",
            "achieved",
            "approx",
            "approximate",
            "est",
            "estimated",
            "exp",
            "expected",
            "planned",
            "budget",
            "budgeted",
            "forecast",
            "typical",
            "usual",
            "nominal",
            "effective",
            "av",
            "ave",
            "avg",
            "average",
            "mean");

    private static final Pattern SAID = Pattern.compile(
            "(?i)(?<![\\p{L}\\d])(\\d+[ -]?(yr|year)s?[ -]+)?(" + String.join("|", WORDS) + ")(?![\\p{L}\\d])\\.?");

    private static final Pattern EMPTY = Pattern.compile("\\(\\s*\\)|\\[\\s*\\]");

    private static final Pattern AT_EITHER_END = Pattern.compile("^[\\s,;:.-]+|[\\s,;:.-]+$");

    private HowKnown() {}

    /** A text without such words and what they leave empty: "Speed km/h (actual)" is "Speed km/h". */
    public static String without(String text) {
        String bare = EMPTY.matcher(SAID.matcher(text).replaceAll(" ")).replaceAll(" ");
        return AT_EITHER_END.matcher(bare.replaceAll("\\s+", " ")).replaceAll("");
    }

    /** Whether one of the words of a header, in their normal form, is such a word. */
    static boolean isSaid(List<String> words) {
        for (String word : words) {
            if (WORDS.contains(word)) {
                return true;
            }
        }
        return false;
    }
}
