package org.rickyard.lists.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * A machine named in a job.
 *
 * @param name as in the machine list
 * @param count how many alike, 1 or more
 */
public record MachineMention(String name, int count) {
    private static final int MOST = 200;

    /**
     * Parts a gang by ";" and reads "Trailer 14 t x 3", "3 x Trailer" and "Trailer × 3" as three alike. A number is a
     * count only beside an x that stands alone, so that "Mower 3 m" and "XR 4" keep their names. A name that stands in
     * the machine list just so is that machine, whatever ";" or "x 3" it has in it.
     *
     * @param listed whether a name stands in the machine list
     */
    public static List<MachineMention> parse(String gang, Predicate<String> listed) {
        return places(gang, listed).stream()
                .filter(mention -> !mention.name().isEmpty())
                .toList();
    }

    /** The same with the empty places between two ";" kept, as mentions without a name. */
    public static List<MachineMention> places(String gang, Predicate<String> listed) {
        String[] parts = gang.split(";", -1);
        List<MachineMention> mentions = new ArrayList<>();
        int next = 0;
        while (next < parts.length) {
            int end = parts.length;
            while (end > next + 1 && !listed.test(read(parts, next, end, listed).name())) {
                end--;
            }
            mentions.add(read(parts, next, end, listed));
            next = end;
        }
        return List.copyOf(mentions);
    }

    private static MachineMention read(String[] parts, int from, int to, Predicate<String> listed) {
        String text = Words.trim(String.join(";", Arrays.asList(parts).subList(from, to)));
        return text.isEmpty() || listed.test(text) ? new MachineMention(text, 1) : one(text);
    }

    private static MachineMention one(String text) {
        int end = text.length();
        int digits = end;
        while (digits > 0 && isDigit(text.charAt(digits - 1))) {
            digits--;
        }
        if (digits < end && digits > 1) {
            int mark = skipBack(text, digits);
            if (mark > 1 && isTimes(text.charAt(mark - 1)) && isSpace(text.charAt(mark - 2))) {
                return of(text.substring(0, mark - 1), text.substring(digits), text);
            }
        }
        int start = 0;
        while (start < end && isDigit(text.charAt(start))) {
            start++;
        }
        int mark = start;
        while (mark < end && isSpace(text.charAt(mark))) {
            mark++;
        }
        boolean leading = start > 0 && mark + 1 < end && isTimes(text.charAt(mark)) && isSpace(text.charAt(mark + 1));
        return leading ? of(text.substring(mark + 1), text.substring(0, start), text) : new MachineMention(text, 1);
    }

    private static MachineMention of(String name, String digits, String whole) {
        String trimmed = Words.trim(name);
        if (trimmed.isEmpty() || digits.length() > 3) {
            return new MachineMention(whole, 1);
        }
        int count = Integer.parseInt(digits);
        return count >= 1 && count <= MOST ? new MachineMention(trimmed, count) : new MachineMention(whole, 1);
    }

    private static int skipBack(String text, int from) {
        int at = from;
        while (at > 0 && isSpace(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\u00a0' || c == '\t';
    }

    private static boolean isTimes(char c) {
        return c == 'x' || c == 'X' || c == '×' || c == '*';
    }
}
