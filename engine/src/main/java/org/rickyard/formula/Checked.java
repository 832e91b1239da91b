package org.rickyard.formula;

import java.util.EnumMap;
import java.util.Map;

/** How a formula was checked, counted by the standing of its worked examples. */
public final class Checked {
    private Checked() {}

    /** How many examples of each standing. */
    public static Map<Source.Standing, Integer> counts(Formula formula) {
        Map<Source.Standing, Integer> counts = new EnumMap<>(Source.Standing.class);
        for (WorkedExample example : formula.examples()) {
            counts.merge(example.source().standing(), 1, Integer::sum);
        }
        return counts;
    }

    /** In words: "2 published, 1 derived". */
    public static String words(Formula formula) {
        StringBuilder words = new StringBuilder();
        counts(formula).forEach((standing, count) -> words.append(words.isEmpty() ? "" : ", ")
                .append(count)
                .append(' ')
                .append(standing.words()));
        return words.isEmpty() ? "derived tests" : words.toString();
    }
}
