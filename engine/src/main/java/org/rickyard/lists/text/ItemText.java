package org.rickyard.lists.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.UnitText;

/** An item of Assumptions that says its unit itself: "Fuel price ($/gal)", "Interest rate, %". */
public final class ItemText {
    private static final Pattern UNIT_BEHIND = Pattern.compile("^(.*?\\S)\\s*(?:\\(([^()]+)\\)|,\\s*([^,()]+))\\s*$");
    private static final Pattern PER_CENT_BEHIND = Pattern.compile("^(.*?\\S)\\s*(%)\\s*$");

    private ItemText() {}

    /** The item without its unit. */
    public static String name(String item) {
        Matcher found = behind(item);
        return found == null ? item : found.group(1);
    }

    /** The unit that stands behind the item; "" if none does. */
    public static String unit(String item) {
        Matcher found = behind(item);
        return found == null ? "" : unit(found);
    }

    private static Matcher behind(String item) {
        for (Pattern pattern : new Pattern[] {UNIT_BEHIND, PER_CENT_BEHIND}) {
            Matcher found = pattern.matcher(item);
            if (found.matches() && !(UnitText.read(unit(found), CustomaryUnits.UNSET) instanceof UnitText.Unknown)) {
                return found;
            }
        }
        return null;
    }

    private static String unit(Matcher found) {
        String first = found.group(2);
        return Words.trim(first == null ? found.group(3) : first);
    }
}
