package org.rickyard.workbook.xml;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/** The attributes of one start tag: their names, and where their values stand, counted from the start of the tag. */
final class XmlAttributes {
    /** More attributes than this are compared by a set of names. */
    private static final int FEW = 32;

    private int count;
    private String[] prefixes = new String[16];
    private String[] names = new String[16];
    private int[] starts = new int[16];
    private int[] ends = new int[16];

    void clear() {
        count = 0;
    }

    void add(String prefix, String name, int start, int end) {
        if (count == names.length) {
            prefixes = Arrays.copyOf(prefixes, 2 * count);
            names = Arrays.copyOf(names, 2 * count);
            starts = Arrays.copyOf(starts, 2 * count);
            ends = Arrays.copyOf(ends, 2 * count);
        }
        prefixes[count] = prefix;
        names[count] = name;
        starts[count] = start;
        ends[count++] = end;
    }

    int count() {
        return count;
    }

    String name(int attribute) {
        return names[attribute];
    }

    int start(int attribute) {
        return starts[attribute];
    }

    int end(int attribute) {
        return ends[attribute];
    }

    /** Whether there are few so far, none of that name; to be asked where none of them has a prefix. */
    boolean fewWithout(String name) {
        for (int i = 0; i < count; i++) {
            if (names[i].equals(name)) {
                return false;
            }
        }
        return count < FEW;
    }

    /** Whether every prefix is declared. */
    boolean known(XmlPrefixes declared) {
        for (int i = 0; i < count; i++) {
            if (!prefixes[i].isEmpty() && declared.meaning(prefixes[i]) == null) {
                return false;
            }
        }
        return true;
    }

    /** Whether one stands twice, under whatever prefix. */
    boolean twice(XmlPrefixes declared) {
        if (count > FEW) {
            Set<String> seen = new HashSet<>();
            for (int i = 0; i < count; i++) {
                if (!seen.add(meaning(i, declared) + ' ' + names[i])) {
                    return true;
                }
            }
            return false;
        }
        for (int i = 1; i < count; i++) {
            for (int j = 0; j < i; j++) {
                if (names[i].equals(names[j]) && meaning(i, declared).equals(meaning(j, declared))) {
                    return true;
                }
            }
        }
        return false;
    }

    private String meaning(int attribute, XmlPrefixes declared) {
        String own = prefixes[attribute];
        return own.isEmpty() ? "" : declared.meaning(own);
    }
}
