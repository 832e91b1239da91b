package org.rickyard.workbook.write;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Text on its way into a part: a buffer of UTF-8 bytes that makes no objects for numbers and fixed pieces. */
final class ByteText {
    private static final int SIZE = 1 << 16;
    private static final double EXACT = 1L << 53;
    private static final int MOST_DIGITS = 20;

    private static final int MOST_SHORT_DECIMALS = 4;
    private static final long[] TENS = {1, 10, 100, 1_000, 10_000};

    private final OutputStream out;
    private final byte[] buffer = new byte[SIZE];
    private final Digits digits = new Digits();
    private final Digits rowDigits = new Digits();
    private final Digits numberDigits = new Digits();
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

    /** The beginning of a cell: all that stands before its value. */
    ByteText put(CellTemplate cell, int row, int number) throws IOException {
        byte[][] pieces = cell.pieces();
        int most = cell.size() + (pieces.length - 1) * MOST_DIGITS;
        if (most > SIZE - filled) {
            flush();
        }
        if (most > SIZE) {
            put(pieces[0]).put(row).put(pieces[1]);
            for (int i = 2; i < pieces.length; i++) {
                put(number).put(pieces[i]);
            }
            return this;
        }
        int at = copy(pieces[0], 0, pieces[0].length, filled);
        rowDigits.set(row);
        numberDigits.set(number);
        Digits next = rowDigits;
        for (int i = 1; i < pieces.length; i++) {
            at = copy(next.text, next.from, MOST_DIGITS, at);
            at = copy(pieces[i], 0, pieces[i].length, at);
            next = numberDigits;
        }
        filled = at;
        return this;
    }

    private int copy(byte[] from, int start, int end, int at) {
        System.arraycopy(from, start, buffer, at, end - start);
        return at + end - start;
    }

    /** A whole number from 0 in letters; a row's are kept from cell to cell. */
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
        filled = copy(digits.text, digits.from, MOST_DIGITS, filled);
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
        out.write(buffer, 0, filled);
        filled = 0;
    }
}
