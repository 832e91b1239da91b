package org.rickyard.lists.text;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads which cut it is where it is written as it is spoken of: "1st", "2nd cut", "first cut", "Cut 3", "2". */
public final class CutText {
    private static final Pattern WRITTEN =
            Pattern.compile("(?:cut|no\\.?|cut no\\.?)? ?(\\d)(?:st|nd|rd|th)?(?: cut)?");

    private static final List<String> SPOKEN =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth");

    private CutText() {}

    /** Its number, 1 for the first cut; empty if the text says nothing of the kind. */
    public static OptionalDouble read(String text) {
        String plain = Words.trim(text).toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        Matcher written = WRITTEN.matcher(plain);
        if (written.matches()) {
            return OptionalDouble.of(Integer.parseInt(written.group(1)));
        }
        int spoken = SPOKEN.indexOf(plain.endsWith(" cut") ? plain.substring(0, plain.length() - 4) : plain);
        return spoken < 0 ? OptionalDouble.empty() : OptionalDouble.of(spoken + 1.0);
    }
}
