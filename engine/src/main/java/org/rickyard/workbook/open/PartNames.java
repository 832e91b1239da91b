package org.rickyard.workbook.open;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;

/** The rules by which parts of a package are named and found. Names here carry no leading slash. */
public final class PartNames {
    private PartNames() {}

    /** What two names must share to mean the same part: case, the kind of slash and %20 and the like do not count. */
    public static String key(String name) {
        return ofEntry(decoded(name)).toLowerCase(Locale.ROOT);
    }

    /** The name of the part that an entry holds: some programs write entries with a leading slash, or backslashes. */
    static String ofEntry(String name) {
        String part = name.replace('\\', '/');
        return part.startsWith("/") ? part.substring(1) : part;
    }

    /** The folder of a part with its slash at the end, or "" at the top. */
    public static String folder(String part) {
        return part.substring(0, part.lastIndexOf('/') + 1);
    }

    /** The part that holds the relationships of a part; of the package itself for "". */
    public static String relationshipsOf(String part) {
        String folder = folder(part);
        return folder + "_rels/" + part.substring(folder.length()) + ".rels";
    }

    /** The part that a target names, seen from a part in the same package. */
    public static String resolve(String from, String target) {
        String path = target.replace('\\', '/');
        int fragment = path.indexOf('#');
        if (fragment >= 0) {
            path = path.substring(0, fragment);
        }
        String whole = path.startsWith("/") ? path : folder(from) + path;
        Deque<String> steps = new ArrayDeque<>();
        for (String step : whole.split("/")) {
            if (step.equals("..")) {
                steps.pollLast();
            } else if (!step.isEmpty() && !step.equals(".")) {
                steps.addLast(step);
            }
        }
        return String.join("/", steps);
    }

    /** How a part is named from another in a relative target: {@code ../comments1.xml}. */
    public static String relative(String from, String part) {
        String[] base = folder(from).isEmpty() ? new String[0] : folder(from).split("/");
        String[] goal = part.split("/");
        int common = 0;
        while (common < base.length && common < goal.length - 1 && base[common].equals(goal[common])) {
            common++;
        }
        StringBuilder path = new StringBuilder("../".repeat(base.length - common));
        for (int step = common; step < goal.length; step++) {
            path.append(step > common ? "/" : "").append(goal[step]);
        }
        return path.toString();
    }

    /** The name with %20 and the like read out: either of a target and its entry may carry the plain letters. */
    private static String decoded(String part) {
        if (part.indexOf('%') < 0) {
            return part;
        }
        try {
            return URLDecoder.decode(part.replace("+", "%2B"), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notEncoded) {
            return part;
        }
    }
}
