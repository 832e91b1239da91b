package org.rickyard.workbook.notation;

/** Where the pieces of a formula's text end. */
public final class FormulaText {
    private static final boolean[] WORD_START = new boolean[128];
    private static final boolean[] WORD_PART = new boolean[128];

    static {
        for (char c = 0; c < 128; c++) {
            WORD_START[c] = c == '$' || c == '_' || c == '\\' || isLetter(c);
            WORD_PART[c] = WORD_START[c] || c == '.' || c == '?' || c >= '0' && c <= '9';
        }
    }

    private FormulaText() {}

    /** Where a quoted part ends, its doubled quotes passed over; the end of the formula if it is not closed. */
    public static int endOfQuoted(String formula, int from, char quote) {
        int i = from + 1;
        while (i < formula.length()) {
            if (formula.charAt(i) == quote) {
                if (i + 1 < formula.length() && formula.charAt(i + 1) == quote) {
                    i++;
                } else {
                    return i + 1;
                }
            }
            i++;
        }
        return formula.length();
    }

    /** Where the brackets that open there are all closed; an apostrophe escapes the character behind it. */
    static int endOfBrackets(String formula, int from) {
        int depth = 0;
        for (int i = from; i < formula.length(); i++) {
            switch (formula.charAt(i)) {
                case '\'' -> i++;
                case '[' -> depth++;
                case ']' -> {
                    depth--;
                    if (depth == 0) {
                        return i + 1;
                    }
                }
                default -> {}
            }
        }
        return formula.length();
    }

    /** Where a number ends that starts there: digits, a point with digits, an exponent. */
    public static int endOfNumber(CharSequence formula, int from) {
        int i = endOfDigits(formula, from);
        if (i < formula.length() && formula.charAt(i) == '.') {
            i = endOfDigits(formula, i + 1);
        }
        if (i < formula.length() && (formula.charAt(i) == 'E' || formula.charAt(i) == 'e')) {
            int sign = i + 1;
            if (sign < formula.length() && (formula.charAt(sign) == '+' || formula.charAt(sign) == '-')) {
                sign++;
            }
            int end = endOfDigits(formula, sign);
            i = end > sign ? end : i;
        }
        return i;
    }

    /** Where the digits end that start there; the start itself if none does. */
    public static int endOfDigits(CharSequence formula, int from) {
        int i = from;
        while (i < formula.length() && formula.charAt(i) >= '0' && formula.charAt(i) <= '9') {
            i++;
        }
        return i;
    }

    /** Where an error code such as {@code #DIV/0!} ends that starts there. */
    public static int endOfError(String formula, int from) {
        int i = from + 1;
        while (i < formula.length() && (Character.isLetterOrDigit(formula.charAt(i)) || formula.charAt(i) == '/')) {
            i++;
        }
        boolean marked = i < formula.length() && (formula.charAt(i) == '!' || formula.charAt(i) == '?');
        return marked ? i + 1 : i;
    }

    /** Where the word (see {@link #isWordPart}) ends that starts there; the start itself if none does. */
    public static int endOfWord(String formula, int from) {
        int i = from;
        while (i < formula.length() && isWordPart(formula.charAt(i))) {
            i++;
        }
        return i;
    }

    /** Whether a word may begin with this character; digits, dots and marks only go on with one. */
    public static boolean isWordStart(char c) {
        return c < 128 ? WORD_START[c] : Character.isLetter(c) || Character.isSurrogate(c);
    }

    /**
     * Whether a word (name, function, plain sheet name, reference) goes on with this character. Many scripts write vowels
     * as marks on letters, and LibreOffice puts sheet names with them into no quotes.
     */
    public static boolean isWordPart(char c) {
        return c < 128 ? WORD_PART[c] : Character.isUnicodeIdentifierPart(c) || Character.isSurrogate(c);
    }

    /** Whether it is one of the 26 letters that name columns. */
    public static boolean isLetter(char c) {
        return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
    }
}
