package org.rickyard.workbook.write;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** One whole number from 0 that stands at several places of a text, where it is counted on in its place. */
final class DigitsInPlace {
    /** One past the last digit at each place. */
    private final int[] ends;

    private int value;
    /** The numbers of as many digits: from the first to before the last. */
    private int least;

    private long tooLarge;

    /** @param places at how many places it stands */
    DigitsInPlace(int places) {
        ends = new int[places];
    }

    /** Writes it at one of its places for the first time. */
    void append(int place, int number, ByteArrayOutputStream text) {
        byte[] digits = Integer.toString(number).getBytes(StandardCharsets.US_ASCII);
        text.writeBytes(digits);
        ends[place] = text.size();
        value = number;
        tooLarge = 1;
        for (int i = 0; i < digits.length; i++) {
            tooLarge *= 10;
        }
        least = digits.length == 1 ? 0 : (int) (tooLarge / 10);
    }

    /** Whether a number has as many digits as the one that stands there. */
    boolean fits(int number) {
        return ends.length == 0 || number >= least && number < tooLarge;
    }

    /** Puts a number that fits in place of the one that stands there. */
    void put(int number, byte[] text) {
        int rest = number;
        int before = value;
        for (int fromEnd = 1; rest != before; fromEnd++) {
            int tens = rest / 10;
            byte digit = (byte) ('0' + rest - 10 * tens);
            for (int end : ends) {
                text[end - fromEnd] = digit;
            }
            rest = tens;
            before /= 10;
        }
        value = number;
    }
}
