package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.NumberedText;

/**
 * A row of headers that are numbered or lettered from one to the next, as forms have them: "1. Field", "2. Area (ha)" or
 * "(a) Crop", "(b) Yield". The numbers count the columns and are no part of their names.
 */
public final class NumberedHeaders {
    private static final int LEAST = 2;

    private NumberedHeaders() {}

    /**
     * Takes the numbers off, where they go up from header to header and leave names that differ: "1. Cut" beside "2. Cut"
     * are the first and second.
     *
     * @param headers per column of the sheet, null where there is none; changed in place
     * @param isSettled whether the Layout sheet names a header as it stands, number and all
     */
    public static void takeOff(String[] headers, Predicate<String> isSettled) {
        TreeMap<Integer, NumberedText> best = new TreeMap<>();
        for (NumberedText.Style style : NumberedText.Style.values()) {
            TreeMap<Integer, NumberedText> numbered = numbered(headers, style);
            if (numbered.size() >= LEAST && numbered.size() > best.size() && goUp(new ArrayList<>(numbered.values()))) {
                best = numbered;
            }
        }
        best.forEach((column, text) -> {
            if (!isSettled.test(headers[column])) {
                headers[column] = text.rest();
            }
        });
    }

    private static TreeMap<Integer, NumberedText> numbered(String[] headers, NumberedText.Style style) {
        TreeMap<Integer, NumberedText> numbered = new TreeMap<>();
        for (int column = 0; column < headers.length; column++) {
            if (headers[column] != null) {
                for (NumberedText text : NumberedText.of(headers[column])) {
                    if (text.style() == style) {
                        numbered.put(column, text);
                    }
                }
            }
        }
        return numbered;
    }

    /** Whether each comes after the one before it, but where a list beside begins to count anew. */
    private static boolean goUp(List<NumberedText> texts) {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < texts.size(); i++) {
            boolean anew = texts.get(i).count().equals(texts.get(0).count());
            if (anew) {
                names.clear();
            } else if (!isBefore(texts.get(i - 1).count(), texts.get(i).count())) {
                return false;
            }
            if (!names.add(HeaderText.normal(texts.get(i).rest()))) {
                return false;
            }
        }
        return !texts.get(1).count().equals(texts.get(0).count());
    }

    private static boolean isBefore(List<Integer> one, List<Integer> other) {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
            if (!one.get(i).equals(other.get(i))) {
                return one.get(i) < other.get(i);
            }
        }
        return one.size() < other.size();
    }
}
