package org.rickyard.workbook.follow;

import java.util.HashSet;
import java.util.Set;

/**
 * What names stand for that were met on the way through one formula, so that each is followed but once: names may lead in
 * a circle, or to ten names that lead to ten others each.
 */
final class NamesMet {
    private Set<String> meanings;

    /** Whether it was not met before. */
    boolean add(String meaning) {
        if (meanings == null) {
            meanings = new HashSet<>();
        }
        return meanings.add(meaning);
    }
}
