package org.rickyard.workbook.read;

/** Reads the small whole numbers of attributes (rows, style indexes, counts). */
final class WholeNumber {
    private WholeNumber() {}

    /**
     * The number that some characters spell, outer white space ignored.
     *
     * @return the number, or -1 if they spell none of 0 to 999,999,999
     */
    static int parse(char[] text, int from, int to) {
        int start = from;
        int end = to;
        while (start < end && text[start] <= ' ') {
            start++;
        }
        while (end > start && text[end - 1] <= ' ') {
            end--;
        }
        if (start == end || end - start > 9) {
            return -1;
        }
        int value = 0;
        for (int i = start; i < end; i++) {
            int digit = text[i] - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            value = 10 * value + digit;
        }
        return value;
    }
}
