package org.rickyard.workbook.write;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.rickyard.workbook.graft.CellText;

/** Text on its way into a part: a buffer of UTF-8 bytes that makes no objects for numbers and fixed pieces. */
final class ByteText {
    private static final int SIZE = 1 << 16;
    private static final double EXACT = 1L << 53;
    private static final int MOST_DIGITS = 20;

    private static final int MOST_SHORT_DECIMALS = 4;
    private static final double MOST_EXACT_DIGITS = 1e15;
    private static final long[] TENS = {1, 10, 100, 1_000, 10_000};

    private final OutputStream out;
    private final byte[] buffer = new byte[SIZE];
    private final Digits digits = new Digits();
    private int filled;

    /** Text on its way out. */
    ByteText(OutputStream out) {
        this.out = out;
    }

    ByteText put(byte[] piece) throws IOException {
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

    /** A text whose letters nearly always stand for themselves. */
    ByteText putEscaped(String text) throws IOException {
        int length = text.length();
        if (length > SIZE - filled) {
            flush();
        }
        if (length > SIZE) {
            return put(CellText.escaped(text));
        }
        if (!CellText.copyPlain(text, buffer, filled)) {
            return put(CellText.escaped(text));
        }
        // Counted as written only once all of it is.
        filled += length;
        return this;
    }

    /** A whole number from 0 in letters. */
    private static final class Digits {
        private final byte[] text = new byte[MOST_DIGITS];
        private int from;
        private long of = -1;

        void set(long number) {
            if (number == of) {
                return;
            }
            of = number;
            from = MOST_DIGITS;
            long rest = number;
            do {
                text[--from] = (byte) ('0' + rest % 10);
                rest /= 10;
            } while (rest > 0);
        }
    }

    ByteText put(String text) throws IOException {
        return put(text.getBytes(StandardCharsets.UTF_8));
    }

    ByteText put(int number) throws IOException {
        return put((long) number);
    }

    ByteText put(long number) throws IOException {
        if (SIZE - filled <= MOST_DIGITS) {
            flush();
        }
        if (number < 0) {
            buffer[filled++] = '-';
            number = -number;
        }
        digits.set(number);
        System.arraycopy(digits.text, digits.from, buffer, filled, MOST_DIGITS - digits.from);
        filled += MOST_DIGITS - digits.from;
        return this;
    }

    /**
     * A number in its shortest text that reads back the same, on every JDK alike ({@code Double.toString} changed with
     * JDK 19).
     */
    ByteText put(double number) throws IOException {
        if (number == Math.rint(number) && Math.abs(number) < EXACT) {
            return put((long) number);
        }
        double scaled = number * TENS[MOST_SHORT_DECIMALS];
        if (Math.abs(scaled) < MOST_EXACT_DIGITS) {
            long whole = (long) (scaled < 0 ? scaled - 0.5 : scaled + 0.5);
            // Up to 15 digits are exact in a double, so a text that reads back the same is the shortest.
            if ((double) whole / TENS[MOST_SHORT_DECIMALS] == number) {
                return fixed(whole);
            }
        }
        return put(NumberOutput.toString(number, true));
    }

    private ByteText fixed(long tenThousandths) throws IOException {
        long whole = tenThousandths;
        int decimals = MOST_SHORT_DECIMALS;
        while (whole % 10 == 0) {
            whole /= 10;
            decimals--;
        }
        return fixed(whole, decimals);
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
        out.write(buffer, 0, filled);
        filled = 0;
    }
}
