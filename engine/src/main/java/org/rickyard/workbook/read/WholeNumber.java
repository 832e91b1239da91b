package org.rickyard.workbook.read;

/** Reads the small whole numbers of attributes (rows, style indexes, counts). */
final class WholeNumber {
    private WholeNumber() {}

    /**
     * The number a text holds, outer white space ignored.
     *
     * @return the number, or -1 if the text is not one of 0 to 999,999,999
     */
    static int parse(CharSequence text) {
        int start = 0;
        int end = text.length();
        while (start < end && text.charAt(start) <= ' ') {
            start++;
        }
        while (end > start && text.charAt(end - 1) <= ' ') {
            end--;
        }
        if (start == end || end - start > 9) {
            return -1;
        }
        int value = 0;
        for (int i = start; i < end; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            value = 10 * value + digit;
        }
        return value;
    }
}
