package org.rickyard.workbook.read;

/** Gives one string for equal texts that follow each other closely, so that repeated words are held once. */
final class TextPool {
    private static final int SLOTS = 4096;
    private static final int LONGEST = 64;

    private final String[] recent = new String[SLOTS];

    String text(char[] characters, int start, int end) {
        int length = end - start;
        if (length == 0) {
            return "";
        }
        if (length > LONGEST) {
            return new String(characters, start, length);
        }
        int hash = 0;
        for (int i = start; i < end; i++) {
            hash = 31 * hash + characters[i];
        }
        int slot = (hash ^ hash >>> 15) & SLOTS - 1;
        String known = recent[slot];
        if (known == null || !equal(known, characters, start, length)) {
            known = new String(characters, start, length);
            recent[slot] = known;
        }
        return known;
    }

    private static boolean equal(String known, char[] characters, int start, int length) {
        if (known.length() != length) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            if (known.charAt(i) != characters[start + i]) {
                return false;
            }
        }
        return true;
    }
}
