package org.rickyard.workbook.write;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Text on its way into a part: a buffer of UTF-8 bytes that makes no objects for numbers and fixed pieces. */
final class ByteText {
    private static final int SIZE = 1 << 16;
    private static final double EXACT = 1L << 53;
    private static final int MOST_SHORT_DECIMALS = 4;
    private static final long[] TENS = {1, 10, 100, 1_000, 10_000};

    private final OutputStream out;
    private final byte[] buffer = new byte[SIZE];
    private final byte[] digits = new byte[20];
    private int filled;

    /**
     * Text on its way out.
     *
     * @param out where to; null for nowhere, which costs nothing
     */
    ByteText(OutputStream out) {
        this.out = out;
    }

    ByteText put(byte[] piece) throws IOException {
        if (out == null) {
            return this;
        }
        if (piece.length > SIZE - filled) {
            flush();
            if (piece.length > SIZE) {
                out.write(piece);
                return this;
            }
        }
        System.arraycopy(piece, 0, buffer, filled, piece.length);
        filled += piece.length;
        return this;
    }

    ByteText put(String text) throws IOException {
        return out == null ? this : put(text.getBytes(StandardCharsets.UTF_8));
    }

    /** A text of the client's or ours, made safe first. */
    ByteText putEscaped(String text) throws IOException {
        return out == null ? this : put(escape(text));
    }

    ByteText put(int number) throws IOException {
        return put((long) number);
    }

    ByteText put(long number) throws IOException {
        if (out == null) {
            return this;
        }
        if (SIZE - filled < digits.length) {
            flush();
        }
        if (number < 0) {
            buffer[filled++] = '-';
            number = -number;
        }
        int at = digits.length;
        do {
            digits[--at] = (byte) ('0' + number % 10);
            number /= 10;
        } while (number > 0);
        System.arraycopy(digits, at, buffer, filled, digits.length - at);
        filled += digits.length - at;
        return this;
    }

    /**
     * A number in its shortest text that reads back the same, on every JDK alike ({@code Double.toString} changed with
     * JDK 19).
     */
    ByteText put(double number) throws IOException {
        if (out == null) {
            return this;
        }
        if (number == Math.rint(number) && Math.abs(number) < EXACT) {
            return put((long) number);
        }
        for (int decimals = 1; decimals <= MOST_SHORT_DECIMALS; decimals++) {
            double scaled = number * TENS[decimals];
            if (Math.abs(scaled) < 1e15) {
                long whole = Math.round(scaled);
                // Up to 15 digits are exact in a double, so a text that reads back the same is the shortest.
                if ((double) whole / TENS[decimals] == number) {
                    return fixed(whole, decimals);
                }
            }
        }
        return put(NumberOutput.toString(number, true));
    }

    private ByteText fixed(long whole, int decimals) throws IOException {
        if (whole < 0) {
            put(MINUS);
            whole = -whole;
        }
        put(whole / TENS[decimals]);
        put(POINT);
        long rest = whole % TENS[decimals];
        for (int i = decimals - 1; i >= 0; i--) {
            if (SIZE - filled < 1) {
                flush();
            }
            buffer[filled++] = (byte) ('0' + rest / TENS[i] % 10);
        }
        return this;
    }

    private static final byte[] MINUS = {'-'};
    private static final byte[] POINT = {'.'};

    void flush() throws IOException {
        if (out == null) {
            return;
        }
        out.write(buffer, 0, filled);
        filled = 0;
    }

    /** Text made safe for an element or attribute; characters XML cannot hold are written as the grid escapes them. */
    static String escape(String text) {
        StringBuilder safe = null;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            String replacement = replacement(c, text, i);
            if (replacement != null && safe == null) {
                safe = new StringBuilder(text.length() + 16).append(text, 0, i);
            }
            if (safe != null) {
                if (replacement != null) {
                    safe.append(replacement);
                } else {
                    safe.append(c);
                }
            }
        }
        return safe == null ? text : safe.toString();
    }

    private static String replacement(char c, String text, int at) {
        switch (c) {
            case '&':
                return "&amp;";
            case '<':
                return "&lt;";
            case '>':
                return "&gt;";
            case '"':
                return "&quot;";
            case '\r':
                return "_x000D_";
            default:
                break;
        }
        if (c < ' ' && c != '\t' && c != '\n' || c == '\uFFFE' || c == '\uFFFF') {
            return hex(c);
        }
        if (c == '_' && text.startsWith("_x", at) && isEscape(text, at)) {
            return "_x005F_";
        }
        boolean loneHigh = Character.isHighSurrogate(c)
                && (at + 1 >= text.length() || !Character.isLowSurrogate(text.charAt(at + 1)));
        boolean loneLow = Character.isLowSurrogate(c) && (at == 0 || !Character.isHighSurrogate(text.charAt(at - 1)));
        return loneHigh || loneLow ? "\uFFFD" : null;
    }

    private static boolean isEscape(String text, int at) {
        if (at + 7 > text.length() || text.charAt(at + 6) != '_') {
            return false;
        }
        for (int i = at + 2; i < at + 6; i++) {
            if (Character.digit(text.charAt(i), 16) < 0) {
                return false;
            }
        }
        return true;
    }

    private static String hex(char c) {
        String digits = Integer.toHexString(c).toUpperCase(Locale.ROOT);
        return "_x" + "0".repeat(4 - digits.length()) + digits + "_";
    }
}
