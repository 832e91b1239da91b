package org.rickyard.lists.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Finds the words one may have meant. */
public final class Spelling {
    private static final int MOST = 3;

    private Spelling() {}

    /** The known words nearest to a mistyped one: a slip or two, or the beginning or a part of it; best first. */
    public static List<String> near(String typed, Iterable<String> known) {
        String word = typed.toLowerCase(Locale.ROOT);
        int allowed = word.length() <= 4 ? 1 : Math.max(2, word.length() / 3);
        List<List<String>> byDistance = new ArrayList<>();
        for (int i = 0; i <= allowed + 1; i++) {
            byDistance.add(new ArrayList<>());
        }
        for (String candidate : known) {
            int distance = distance(word, candidate.toLowerCase(Locale.ROOT));
            boolean part = word.replace("-", "").length() > 2
                    && candidate.toLowerCase(Locale.ROOT).contains(word);
            if (distance <= allowed && distance < candidate.replace("-", "").length()) {
                byDistance.get(distance).add(candidate);
            } else if (part) {
                byDistance.get(allowed + 1).add(candidate);
            }
        }
        // What differs in capitals only is meant for sure.
        return !byDistance.get(0).isEmpty()
                ? byDistance.get(0)
                : byDistance.stream().flatMap(List::stream).limit(MOST).toList();
    }

    /** How many letters must be put in, left out, changed or swapped with their neighbour. */
    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                cost[i][j] = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + change);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[a.length()][b.length()];
    }
}
