package org.rickyard.workbook.graft;

import java.util.HexFormat;

/** Text as it may stand between tags of a sheet or a note. */
public final class CellText {
    private static final boolean[] PLAIN_BYTES = new boolean[0x80];

    static {
        for (char letter = 0; letter < PLAIN_BYTES.length; letter++) {
            PLAIN_BYTES[letter] = isPlain(letter);
        }
    }

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

    /**
     * Copies a text of which every letter stands for itself and is one byte in a part.
     *
     * @param at where in the bytes; there must be room
     * @return false if it is no such text; what stands from there on is then of no meaning
     */
    public static boolean copyPlain(String text, byte[] bytes, int at) {
        boolean[] plain = PLAIN_BYTES;
        int length = text.length();
        for (int i = 0; i < length; i++) {
            char letter = text.charAt(i);
            if (letter >= 0x80 || !plain[letter]) {
                return false;
            }
            bytes[at + i] = (byte) letter;
        }
        return true;
    }

    private static String escaped(String text, int from) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        int taken = 0;
        for (int at = from; at < text.length(); at++) {
            if (!isPlain(text.charAt(at))) {
                String instead = instead(text, at);
                if (instead != null) {
                    out.append(text, taken, at).append(instead);
                    taken = at + 1;
                }
            }
        }
        return out.append(text, taken, text.length()).toString();
    }

    /** What is written in place of a letter; null if it can stand as it is. */
    private static String instead(String text, int at) {
        char letter = text.charAt(at);
        return switch (letter) {
            case '&' -> "&amp;";
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '_' -> startsEscape(text, at) ? "_x005F_" : null;
            case '\t', '\n' -> null;
            default -> {
                boolean cannotStand =
                        letter < ' ' || letter >= 0xFFFE || Character.isSurrogate(letter) && !paired(text, at);
                yield cannotStand ? "_x" + HexFormat.of().withUpperCase().toHexDigits(letter) + "_" : null;
            }
        };
    }

    private static boolean startsEscape(String text, int at) {
        if (at + 7 > text.length() || text.charAt(at + 1) != 'x' || text.charAt(at + 6) != '_') {
            return false;
        }
        for (int i = at + 2; i < at + 6; i++) {
            if (!HexFormat.isHexDigit(text.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean paired(String text, int at) {
        return Character.isHighSurrogate(text.charAt(at))
                ? at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1))
                : at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
    }
}
