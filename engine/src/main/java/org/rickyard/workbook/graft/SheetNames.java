package org.rickyard.workbook.graft;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** What a sheet may be called: at most 31 characters, none of {@code : \ / ? * [ ]}, unique whatever the case. */
final class SheetNames {
    private static final int LONGEST = 31;

    private SheetNames() {}

    static String free(Set<String> taken, String wanted) {
        Set<String> keys = new HashSet<>();
        taken.forEach(name -> keys.add(key(name)));
        String name = permitted(wanted);
        String candidate = cut(name, LONGEST);
        for (int number = 2; keys.contains(key(candidate)) || key(candidate).equals("history"); number++) {
            String suffix = " " + number;
            candidate = cut(name, LONGEST - suffix.length()) + suffix;
        }
        return candidate;
    }

    /** What two names must share to be the same to a spreadsheet program. */
    static String key(String name) {
        return name.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }

    private static String permitted(String wanted) {
        String name = wanted.replaceAll("[:\\\\/?*\\[\\]\\p{Cntrl}]", "-").strip();
        while (name.startsWith("'") || name.endsWith("'")) {
            name = name.startsWith("'") ? name.substring(1) : name.substring(0, name.length() - 1);
        }
        return name.isBlank() ? "Sheet" : name;
    }

    private static String cut(String name, int length) {
        if (name.length() <= length) {
            return name;
        }
        int end = Character.isHighSurrogate(name.charAt(length - 1)) ? length - 1 : length;
        String cut = name.substring(0, end).stripTrailing();
        return cut.endsWith("'") ? cut.substring(0, cut.length() - 1) : cut;
    }
}
