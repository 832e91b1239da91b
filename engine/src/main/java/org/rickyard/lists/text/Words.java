package org.rickyard.lists.text;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** How words of clients are compared: names by all but case and outer spaces, headers and choices more loosely. */
public final class Words {
    /** From here on spreadsheets make a text of a number with its power of ten. */
    private static final double NOT_WRITTEN_OUT = 1e20;

    private Words() {}

    /** Without outer spaces of any kind: no-break, narrow, figure and zero-width ones too. */
    public static String trim(String text) {
        int start = 0;
        int end = text.length();
        while (start < end && isSpace(text.charAt(start))) {
            start++;
        }
        while (end > start && isSpace(text.charAt(end - 1))) {
            end--;
        }
        return start == 0 && end == text.length() ? text : text.substring(start, end);
    }

    private static boolean isSpace(char c) {
        return c <= ' ' || c >= '\u007f' && (Character.isWhitespace(c) || Character.isSpaceChar(c) || isInvisible(c));
    }

    private static boolean isInvisible(char c) {
        return c >= '\u200b' && c <= '\u200f' || c == '\u2060' || c == '\ufeff' || c == '\u0085' || c == '\u007f';
    }

    /** What a name is joined by: trimmed and without case. */
    public static String key(String name) {
        String trimmed = trim(name);
        int capitals = 0;
        for (int i = 0; i < trimmed.length(); i++) {
            char c = trimmed.charAt(i);
            if (c >= '\u0080') {
                // Upper case first, so that letters with two small forms (the Greek sigma) meet.
                return trimmed.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
            }
            capitals += isCapital(c) ? 1 : 0;
        }
        return capitals == 0 ? trimmed : small(trimmed);
    }

    /** Of a text in ASCII; every name of a list comes by here, several times. */
    private static String small(String text) {
        byte[] letters = text.getBytes(StandardCharsets.ISO_8859_1);
        for (int i = 0; i < letters.length; i++) {
            if (isCapital((char) letters[i])) {
                letters[i] += 'a' - 'A';
            }
        }
        return new String(letters, StandardCharsets.ISO_8859_1);
    }

    private static boolean isCapital(char c) {
        return c >= 'A' && c <= 'Z';
    }

    /**
     * Letters and digits in lower case, words parted by single spaces, without the plural s of longer words:
     * "Sheet/parcel nos." is {@code sheet parcel nos}, "Hectares" is {@code hectare}.
     */
    public static String normal(String text) {
        StringBuilder out = new StringBuilder(text.length());
        int word = 0;
        for (int i = 0; i <= text.length(); i++) {
            char c = i < text.length() ? plain(text.charAt(i)) : ' ';
            if (Character.isLetterOrDigit(c)) {
                if (out.length() == word && word > 0) {
                    out.append(' ');
                    word++;
                }
                out.append(Character.toLowerCase(c));
            } else if (c != '\'' && c != '’' && out.length() > word) {
                dropPlural(out, word);
                word = out.length();
            }
        }
        return out.toString();
    }

    private static void dropPlural(StringBuilder out, int word) {
        int length = out.length() - word;
        int last = out.length() - 1;
        if (length > 3 && out.charAt(last) == 's' && out.charAt(last - 1) != 's') {
            out.setLength(last);
        }
    }

    /** Superscript digits as plain ones. */
    public static char plain(char c) {
        return c == '²' ? '2' : c == '³' ? '3' : c;
    }

    /** Whether a normal text holds a phrase as whole words. */
    public static boolean holds(String normal, String phrase) {
        for (int at = normal.indexOf(phrase); at >= 0; at = normal.indexOf(phrase, at + 1)) {
            int end = at + phrase.length();
            if ((at == 0 || normal.charAt(at - 1) == ' ') && (end == normal.length() || normal.charAt(end) == ' ')) {
                return true;
            }
        }
        return false;
    }

    /** Whether a text stands for "not known": a dash, a question mark, n/a. */
    public static boolean marksBlank(String text) {
        return switch (text) {
            case "-", "–", "—", "?", "n/a", "N/A", "na", "NA", "n.a.", "tbc", "TBC", "tba", "TBA" -> true;
            default -> false;
        };
    }

    /** "£12", "€/h". */
    public static boolean beginsWithCurrency(String text) {
        return !text.isEmpty() && Character.getType(text.charAt(0)) == Character.CURRENCY_SYMBOL;
    }

    /** A number in digits as a person writes it: 7, 7.5; one that no person writes out as spreadsheets do, 1E+30. */
    public static String digits(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        BigDecimal number = new BigDecimal(Double.toString(value)).stripTrailingZeros();
        if (Math.abs(value) < NOT_WRITTEN_OUT) {
            return number.toPlainString();
        }
        int exponent = number.precision() - number.scale() - 1;
        return number.movePointLeft(exponent).toPlainString() + "E+" + exponent;
    }

    /** A text in quotation marks, cut short if it is long. */
    public static String quoted(String text) {
        String line = text.replace('\n', ' ');
        return "\"" + (line.length() > 60 ? line.substring(0, 57) + "..." : line) + "\"";
    }
}
