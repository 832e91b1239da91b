package org.rickyard.lists.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text with a number or letter before it that only counts it among those beside it: "1. Field", "(b) Area", "Q3: Crop",
 * "2.1 Speed".
 *
 * @param style how it is counted
 * @param count its place, as many figures as the number has parts
 * @param rest the text behind it
 */
public record NumberedText(Style style, List<Integer> count, String rest) {
    /** How texts are counted. */
    public enum Style {
        /** "1.", "2)", "Q3". */
        NUMBER,
        /** "a)", "B.". */
        LETTER,
        /** "(i)", "(ii)". */
        ROMAN
    }

    private static final Pattern NUMBER =
            Pattern.compile("[(\\[]?(?:(?i)q(?:uestion)?\\.? ?|# ?)?(\\d{1,3}(?:\\.\\d{1,2})*)"
                    + "(?:[.)\\]:]+\\s*|\\s*[–—-]\\s*|\\s+)(?=[\\p{L}%(])");

    /** Behind a letter; "a.i." is none with a text behind it. */
    private static final String MARK = "(?:[.)\\]:]+\\s*|\\s+[–—-]\\s*)(?=[\\p{L}%(])(?!\\p{L}\\.)";

    private static final Pattern LETTER = Pattern.compile("[(\\[]?(?:(?i)q\\.? ?)?([A-Za-z])" + MARK);
    private static final Pattern ROMAN = Pattern.compile("[(\\[]?([ivxIVX]{1,4})" + MARK);

    /** All ways in which a text may be numbered; none as a rule. */
    public static List<NumberedText> of(String text) {
        if (!mayBe(text)) {
            return List.of();
        }
        List<NumberedText> ways = new ArrayList<>();
        Matcher number = NUMBER.matcher(text);
        if (number.lookingAt()) {
            List<Integer> count = new ArrayList<>();
            for (String part : number.group(1).split("\\.")) {
                count.add(Integer.parseInt(part));
            }
            ways.add(new NumberedText(Style.NUMBER, count, text.substring(number.end())));
        }
        Matcher letter = LETTER.matcher(text);
        if (letter.lookingAt()) {
            int place = letter.group(1).toLowerCase(Locale.ROOT).charAt(0) - 'a' + 1;
            ways.add(new NumberedText(Style.LETTER, List.of(place), text.substring(letter.end())));
        }
        Matcher roman = ROMAN.matcher(text);
        if (roman.lookingAt()) {
            ways.add(new NumberedText(Style.ROMAN, List.of(roman(roman.group(1))), text.substring(roman.end())));
        }
        return ways;
    }

    /** A quick look: most texts begin with a word of several letters. */
    private static boolean mayBe(String text) {
        if (text.length() < 3) {
            return false;
        }
        char first = text.charAt(0);
        return !Character.isLetter(first)
                || "ivxqIVXQ".indexOf(first) >= 0
                || !Character.isLetterOrDigit(text.charAt(1));
    }

    private static int roman(String text) {
        int sum = 0;
        int last = 0;
        String small = text.toLowerCase(Locale.ROOT);
        for (int i = small.length() - 1; i >= 0; i--) {
            int one = small.charAt(i) == 'i' ? 1 : small.charAt(i) == 'v' ? 5 : 10;
            sum += one < last ? -one : one;
            last = one;
        }
        return sum;
    }
}
