package org.rickyard.workbook.read;

/** Undoes the {@code _xHHHH_} escapes by which the format stores characters that XML cannot hold. */
final class EscapedText {
    private EscapedText() {}

    /** The text with every escape replaced by its character; {@code _x005F_x000D_} becomes {@code _x000D_}. */
    static String decode(String text) {
        int escape = text.indexOf("_x");
        if (escape < 0) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.length());
        int done = 0;
        while (escape >= 0) {
            int code = code(text, escape);
            if (code >= 0) {
                plain.append(text, done, escape).append((char) code);
                done = escape + 7;
                escape = text.indexOf("_x", done);
            } else {
                escape = text.indexOf("_x", escape + 1);
            }
        }
        return plain.append(text, done, text.length()).toString();
    }

    private static int code(String text, int at) {
        if (at + 7 > text.length() || text.charAt(at + 6) != '_') {
            return -1;
        }
        int code = 0;
        for (int i = at + 2; i < at + 6; i++) {
            int digit = text.charAt(i) < 128 ? Character.digit(text.charAt(i), 16) : -1;
            if (digit < 0) {
                return -1;
            }
            code = 16 * code + digit;
        }
        return code;
    }
}
