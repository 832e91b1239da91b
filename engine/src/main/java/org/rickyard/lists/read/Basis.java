package org.rickyard.lists.read;

import java.util.Locale;
import org.rickyard.quantity.UnitText;

/** The part of a header that says per what. */
final class Basis {
    private Basis() {}

    /** "per ha" and "/ha" both as "/ha"; whatever else stands there is kept, for it may change the unit. */
    static String of(String rest) {
        return "/" + rest.substring(rest.startsWith("/") ? 1 : "per ".length()).strip();
    }

    /** What stands before "per" or the slash. */
    static String before(String text) {
        String plain = UnitText.plain(text);
        int slash = plain.indexOf('/');
        return slash < 0 ? plain : plain.substring(0, slash);
    }

    /** What follows "per" or the slash; "" if neither stands there. */
    static String after(String text) {
        int slash = text.lastIndexOf('/');
        if (slash >= 0) {
            return text.substring(slash + 1).strip();
        }
        String lower = text.toLowerCase(Locale.ROOT);
        int per = lower.startsWith("per ") ? 0 : lower.lastIndexOf(" per ") + (lower.contains(" per ") ? 1 : 0);
        return lower.startsWith("per ", per) ? text.substring(per + 4).strip() : "";
    }
}
