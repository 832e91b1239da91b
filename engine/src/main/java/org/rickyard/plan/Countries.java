package org.rickyard.plan;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.Choices;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;

/** In which country a holding lies: as its fields say, or its clamps, or else the item Country on Assumptions. */
final class Countries {
    /** The item of Assumptions. */
    static final String ITEM = "country";

    private final ListRows clamps;
    private final ListRows fields;
    private final Map<String, String> ofFields = new HashMap<>();
    private final String assumed;
    private String lastHolding;
    private String lastCountry;

    Countries(FoundLists lists) {
        clamps = lists.rows(Clamps.LIST);
        fields = lists.rows(Fields.LIST);
        for (int field = 0; field < fields.size(); field++) {
            if (fields.state(Fields.COUNTRY, field) == ListRows.State.GIVEN) {
                ofFields.putIfAbsent(
                        NameKey.key(fields.text(Fields.HOLDING, field)), fields.text(Fields.COUNTRY, field));
            }
        }
        assumed = assumed(lists.rows(Assumptions.LIST));
    }

    private static String assumed(ListRows assumptions) {
        for (int row = 0; row < assumptions.size(); row++) {
            if (NameKey.key(assumptions.text(Assumptions.ITEM, row)).equals(ITEM)) {
                String named = named(assumptions.text(Assumptions.VALUE, row));
                if (!named.isEmpty()) {
                    return named;
                }
            }
        }
        return "";
    }

    /** The country of a name, as it is written here; "" if it is none known here. */
    static String named(String name) {
        String typed = name.toLowerCase(Locale.ROOT);
        for (Map.Entry<String, java.util.List<String>> country : Choices.COUNTRY.entrySet()) {
            if (country.getKey().toLowerCase(Locale.ROOT).equals(typed)
                    || country.getValue().contains(typed)) {
                return country.getKey();
            }
        }
        return "";
    }

    /** The country of a field's holding; "" if nothing says. */
    String of(int field) {
        if (fields.state(Fields.COUNTRY, field) == ListRows.State.GIVEN) {
            return fields.text(Fields.COUNTRY, field);
        }
        String typed = fields.text(Fields.HOLDING, field);
        // Fields of a holding mostly stand together.
        if (!typed.equals(lastHolding)) {
            lastCountry = ofHolding(NameKey.key(typed));
            lastHolding = typed;
        }
        return lastCountry;
    }

    private String ofHolding(String holding) {
        if (ofFields.containsKey(holding)) {
            return ofFields.get(holding);
        }
        for (int clamp = 0; clamp < clamps.size(); clamp++) {
            String owner = NameKey.key(clamps.text(Clamps.HOLDING, clamp));
            boolean his = owner.isEmpty() || owner.equals(holding);
            if (his && clamps.state(Clamps.COUNTRY, clamp) == ListRows.State.GIVEN) {
                return clamps.text(Clamps.COUNTRY, clamp);
            }
        }
        return assumed;
    }
}
