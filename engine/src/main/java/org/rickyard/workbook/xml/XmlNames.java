package org.rickyard.workbook.xml;

/** The names of elements and attributes: which characters they are made of, and one object for each that keeps coming. */
final class XmlNames {
    /** As long as Java's own parser allows. */
    static final int LONGEST = 1000;

    private static final int SLOTS = 256;
    private static final byte START = 1;
    private static final byte INSIDE = 2;
    private static final byte[] ASCII = new byte[128];
    /** Names of one letter, the commonest in a sheet. */
    private static final String[] SINGLE = new String[128];

    static {
        for (char c = 0; c < 128; c++) {
            boolean letter = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_';
            boolean inside = letter || c >= '0' && c <= '9' || c == '-' || c == '.';
            ASCII[c] = letter ? START : inside ? INSIDE : 0;
            SINGLE[c] = String.valueOf(c);
        }
    }

    private final String[] recent = new String[SLOTS];

    /** Whether a name may begin with the character; a colon parts names and is none of theirs. */
    static boolean isStart(char c) {
        return c < 128 ? ASCII[c] == START : isFurtherStart(c);
    }

    /** Whether a name may hold the character. */
    static boolean isInside(char c) {
        return c < 128
                ? ASCII[c] != 0
                : isFurtherStart(c)
                        || c == '\u00b7'
                        || c >= '\u0300' && c <= '\u036f'
                        || c == '\u203f'
                        || c == '\u2040';
    }

    /** Where a name of nothing but ASCII ends, before the limit; -1 where there is none such, or it is long. */
    static int endOfPlain(char[] characters, int start, int limit) {
        byte[] kinds = ASCII;
        int end = Math.min(limit, start + LONGEST);
        if (start >= end || characters[start] >= 128 || kinds[characters[start]] != START) {
            return -1;
        }
        for (int i = start + 1; i < end; i++) {
            char c = characters[i];
            if (c >= 128) {
                return -1;
            }
            if (kinds[c] == 0) {
                return c == ':' ? -1 : i;
            }
        }
        return -1;
    }

    /** XML 1.0, fifth edition, production 4. */
    private static boolean isFurtherStart(char c) {
        return c >= '\u00c0' && c <= '\u02ff' && c != '\u00d7' && c != '\u00f7'
                || c >= '\u0370' && c <= '\u1fff' && c != '\u037e'
                || c == '\u200c'
                || c == '\u200d'
                || c >= '\u2070' && c <= '\u218f'
                || c >= '\u2c00' && c <= '\u2fef'
                || c >= '\u3001' && c <= '\ud7ff'
                || c >= '\uf900' && c <= '\ufdcf'
                || c >= '\ufdf0' && c <= '\ufffd'
                // The halves of characters beyond the basic plane.
                || Character.isSurrogate(c);
    }

    /** The name that these characters spell. */
    String name(char[] characters, int start, int end) {
        int length = end - start;
        if (length == 1 && characters[start] < 128) {
            return SINGLE[characters[start]];
        }
        int hash = 0;
        for (int i = start; i < end; i++) {
            hash = 31 * hash + characters[i];
        }
        int slot = (hash ^ hash >>> 8) & SLOTS - 1;
        String known = recent[slot];
        if (known == null || known.length() != length || !matches(known, characters, start)) {
            known = new String(characters, start, length);
            recent[slot] = known;
        }
        return known;
    }

    /** Whether the characters from there on, of which there must be enough, spell a name. */
    static boolean matches(String name, char[] characters, int start) {
        for (int i = 0; i < name.length(); i++) {
            if (name.charAt(i) != characters[start + i]) {
                return false;
            }
        }
        return true;
    }
}
