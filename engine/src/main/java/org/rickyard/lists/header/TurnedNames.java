package org.rickyard.lists.header;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.rickyard.lists.ColumnSpec;

/**
 * The names of a list's columns with their words in any order: "Clamp distance", "Distance - clamp" and "Distance to the
 * clamp" are one name, as "Length of clamp" and "Clamp length" are. A name of one word has no order, and what two columns
 * would share is none.
 */
final class TurnedNames {
    /**
     * Words that may be said or left out; "per" is none of them, for a time per load is no time to load, and "in" is none,
     * for it may be inches.
     */
    private static final Set<String> SMALL = Set.of("the", "a", "an", "of", "to", "from", "for", "at", "on");

    /** Words whose place decides: "after job" is the job before, "job after" the one behind it; "date fed" is a day. */
    private static final Set<String> IN_ORDER = Set.of("after", "before", "by", "until", "date", "day");

    private final Map<Set<String>, ColumnSpec> columns = new HashMap<>();
    private final Set<Set<String>> shared = new HashSet<>();
    private final Set<String> inNames = new HashSet<>();

    /** Takes a name of a column, in normal form. */
    void learn(String name, ColumnSpec column) {
        Set<String> words = words(List.of(name.split(" ")));
        boolean turns = words.size() > 1 && words.stream().noneMatch(IN_ORDER::contains);
        ColumnSpec known = !turns ? column : columns.putIfAbsent(words, column);
        if (known != null && known != column) {
            shared.add(words);
        }
        inNames.addAll(words);
    }

    /** Takes a name that is asked about wherever it stands. */
    void leave(String name) {
        shared.add(words(List.of(name.split(" "))));
    }

    /** The column whose name the words of a header are; null if there is none. */
    ColumnSpec of(List<String> header) {
        Set<String> words = words(header);
        // Of a word said twice one is no part of the name: "in (spacing in row)" is in inches.
        boolean twice = header.stream().filter(words::contains).count() > words.size();
        return twice || shared.contains(words) ? null : columns.get(words);
    }

    /** With how many words a header begins that are words of names, or small ones: beyond them it is none. */
    int beginning(List<String> header) {
        int count = 0;
        while (count < header.size() && (inNames.contains(header.get(count)) || SMALL.contains(header.get(count)))) {
            count++;
        }
        return count;
    }

    private static Set<String> words(List<String> name) {
        Set<String> words = new TreeSet<>(name);
        words.removeAll(SMALL);
        return words;
    }
}
