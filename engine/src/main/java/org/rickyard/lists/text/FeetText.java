package org.rickyard.lists.text;

import java.util.Locale;
import java.util.OptionalDouble;

/** Reads lengths in feet and inches: 8'6", 8 ft 6 in, 8'. */
public final class FeetText {
    private FeetText() {}

    /** The length in feet; empty if the text is not of this form. */
    public static OptionalDouble read(String text) {
        String plain = text.strip()
                .toLowerCase(Locale.ROOT)
                .replace('’', '\'')
                .replace('′', '\'')
                .replace('″', '"')
                .replace('”', '"')
                .replace("''", "\"")
                .replace("feet", "'")
                .replace("ft", "'")
                .replace("inches", "\"")
                .replace("ins", "\"")
                .replace("in", "\"");
        int mark = plain.indexOf('\'');
        if (mark <= 0) {
            return OptionalDouble.empty();
        }
        double feet = BatterText.number(plain.substring(0, mark));
        String rest = plain.substring(mark + 1).strip();
        if (rest.startsWith("-") || rest.startsWith("'")) {
            rest = rest.substring(1).strip();
        }
        double inches = rest.isEmpty() ? 0 : BatterText.number(rest.replaceAll("\"$", ""));
        return feet >= 0 && inches >= 0 && inches < 12 ? OptionalDouble.of(feet + inches / 12) : OptionalDouble.empty();
    }
}
