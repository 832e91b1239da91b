package org.rickyard.workbook.graft;

import java.util.Locale;
import java.util.regex.Pattern;

/** Text as it may stand between tags of a sheet or a note. */
public final class CellText {
    private static final Pattern ESCAPE_LIKE = Pattern.compile("_x[0-9A-Fa-f]{4}_");

    private CellText() {}

    /**
     * Escapes text. What XML cannot hold is written as {@code _xHHHH_}, and text that looks like such an escape
     * already has its underscore escaped, so that every text comes back as it was (ECMA-376 part 1, 22.9.2.19).
     */
    public static String escaped(String text) {
        int first = 0;
        while (first < text.length() && isPlain(text.charAt(first))) {
            first++;
        }
        return first == text.length() ? text : escaped(text, first);
    }

    /** Letters that stand for themselves wherever they are; nearly every text has no others. */
    private static boolean isPlain(char letter) {
        return letter >= ' ' && letter < 0xD800 && letter != '&' && letter != '<' && letter != '>' && letter != '_';
    }

    private static String escaped(String text, int from) {
        StringBuilder out = new StringBuilder(text.length() + 16).append(text, 0, from);
        boolean escapeLike = ESCAPE_LIKE.matcher(text).find();
        for (int at = from; at < text.length(); at++) {
            char letter = text.charAt(at);
            switch (letter) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '_' -> out.append(escapeLike && startsEscape(text, at) ? "_x005F_" : "_");
                default -> letter(out, text, at);
            }
        }
        return out.toString();
    }

    private static boolean startsEscape(String text, int at) {
        return at + 7 <= text.length()
                && ESCAPE_LIKE.matcher(text).region(at, at + 7).matches();
    }

    private static void letter(StringBuilder out, String text, int at) {
        char letter = text.charAt(at);
        boolean paired = Character.isHighSurrogate(letter)
                ? at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1))
                : at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
        boolean control = letter < 0x20 && letter != '\t' && letter != '\n';
        if (control || letter >= 0xFFFE || Character.isSurrogate(letter) && !paired) {
            out.append("_x");
            String hex = Integer.toHexString(letter).toUpperCase(Locale.ROOT);
            out.append("0".repeat(4 - hex.length())).append(hex).append('_');
        } else {
            out.append(letter);
        }
    }
}
