package org.rickyard.lists;

import java.util.List;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** Headers that begin with their unit, brought into the usual order: the name, then the unit. */
final class TurnedHeader {
    private TurnedHeader() {}

    /** "£/pack" in words, "Price per pack": it is money, and not the pack; null if it does not begin with money. */
    static HeaderText price(HeaderText header) {
        String raw = header.raw().strip();
        boolean money = raw.length() > 1 && Character.getType(raw.charAt(0)) == Character.CURRENCY_SYMBOL;
        String per = money ? raw.substring(1).strip() : "";
        if (per.startsWith("/")) {
            return HeaderText.of("Price per " + per.substring(1).strip());
        }
        return per.regionMatches(true, 0, "per ", 0, 4) ? HeaderText.of("Price " + per) : null;
    }

    /** "Miles to bowser" with its words in the usual order, "Distance to bowser (Miles)"; null if it is nothing like it. */
    static HeaderText distance(HeaderText header) {
        List<String> words = header.words();
        boolean goes =
                words.size() > 2 && (words.get(1).equals("to") || words.get(1).equals("from"));
        if (!goes) {
            return null;
        }
        String unit = header.raw().substring(0, header.ends().get(0)).strip();
        boolean length = UnitText.read(unit, CustomaryUnits.UNSET) instanceof UnitText.Known known
                && known.unit().isCompatible(Units.M);
        return length
                ? HeaderText.of(
                        "Distance" + header.raw().substring(header.ends().get(0)) + " (" + unit + ")")
                : null;
    }
}
