package org.rickyard.lists.text;

import java.util.Map;

/**
 * What a thing is by the last words of its name, as English names things: a rotary rake is a rake, a trailed forage
 * harvester a forage harvester.
 */
public final class LastWords {
    /** Says what pulls or carries the machine, not what it is. */
    private static final String TRACTOR = "tractor";

    private LastWords() {}

    /**
     * The canonical word for the longest ending that is known, or the empty text: also where the words before it name
     * something else that is known, since "rake tedder" may be either.
     *
     * @param normal in the form of {@link Words#normal}
     * @param words normal form of each word known, to its canonical word
     */
    public static String of(String normal, Map<String, String> words) {
        for (int space = normal.indexOf(' '); space > 0; space = normal.indexOf(' ', space + 1)) {
            String found = words.get(normal.substring(space + 1));
            if (found != null) {
                return namesAnother(normal.substring(0, space), found, words) ? "" : found;
            }
        }
        return "";
    }

    /**
     * The same of what stands before a comma or bracket, as tables name things: "Forage harvester, SP", "Mower (rotary)".
     * Empty where what is behind it names something else.
     */
    public static String beforeTheComma(String text, Map<String, String> words) {
        int end = comma(text);
        if (end == text.length()) {
            return "";
        }
        String before = Words.normal(text.substring(0, end));
        String found = words.containsKey(before) ? words.get(before) : of(before, words);
        return found.isEmpty() || namesAnother(Words.normal(text.substring(end)), found, words) ? "" : found;
    }

    /** The canonical word for a known name that is turned round, "Sprayer, orchard"; or the empty text. */
    public static String turnedRound(String text, Map<String, String> words) {
        int end = comma(text);
        return words.getOrDefault(Words.normal(text.substring(end)) + " " + Words.normal(text.substring(0, end)), "");
    }

    private static int comma(String text) {
        int at = 0;
        while (at < text.length() && ",([".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return at;
    }

    private static boolean namesAnother(String before, String found, Map<String, String> words) {
        return words.entrySet().stream()
                .anyMatch(known -> !known.getValue().equals(found)
                        && !known.getValue().equals(TRACTOR)
                        && Words.holds(before, known.getKey()));
    }
}
