package org.rickyard.plan.join;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.Choices;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.RepeatedKey;

/**
 * In which country a holding lies: as its fields say, or its clamps, or else the item Country on Assumptions. Where those
 * that are typed differ, no one of them is taken for a field whose own is blank.
 */
public final class Countries {
    /** The item of Assumptions. */
    public static final String ITEM = "country";

    private final ListRows fields;
    private final Map<String, Set<String>> ofFields;
    private final Map<String, Set<String>> ofClamps;
    private final Set<String> assumed;
    private String lastHolding;
    private String lastCountry;

    /** Reads what is typed of them in the lists of fields and clamps and on Assumptions. */
    public Countries(FoundLists lists) {
        fields = lists.rows(Fields.LIST);
        ofFields = typed(fields, Fields.HOLDING, Fields.COUNTRY);
        ofClamps = typed(lists.rows(Clamps.LIST), Clamps.HOLDING, Clamps.COUNTRY);
        assumed = assumed(lists.rows(Assumptions.LIST));
    }

    /** The countries typed for each holding. */
    private static Map<String, Set<String>> typed(ListRows rows, ColumnSpec holding, ColumnSpec country) {
        Map<String, Set<String>> typed = new HashMap<>();
        RepeatedKey keys = new RepeatedKey();
        for (int row = 0; row < rows.size(); row++) {
            if (rows.state(country, row) == ListRows.State.GIVEN) {
                typed.computeIfAbsent(keys.of(rows.text(holding, row)), any -> new LinkedHashSet<>())
                        .add(rows.text(country, row));
            }
        }
        return typed;
    }

    private static Set<String> assumed(ListRows assumptions) {
        Set<String> assumed = new LinkedHashSet<>();
        for (int row = 0; row < assumptions.size(); row++) {
            if (NameKey.key(assumptions.text(Assumptions.ITEM, row)).equals(ITEM)) {
                assumed.add(named(assumptions.text(Assumptions.VALUE, row)));
            }
        }
        assumed.remove("");
        return assumed;
    }

    /** The country of a name, as it is written here; "" if it is none known here. */
    public static String named(String name) {
        String typed = name.toLowerCase(Locale.ROOT);
        for (Map.Entry<String, List<String>> country : Choices.COUNTRY.entrySet()) {
            if (country.getKey().toLowerCase(Locale.ROOT).equals(typed)
                    || country.getValue().contains(typed)) {
                return country.getKey();
            }
        }
        return "";
    }

    /** The country of a field's holding; "" if nothing says, or several are said. */
    public String of(int field) {
        if (fields.state(Fields.COUNTRY, field) == ListRows.State.GIVEN) {
            return fields.text(Fields.COUNTRY, field);
        }
        String typed = fields.text(Fields.HOLDING, field);
        // Fields of a holding mostly stand together.
        if (!typed.equals(lastHolding)) {
            Set<String> said = ofHolding(NameKey.key(typed));
            lastCountry = said.size() == 1 ? said.iterator().next() : "";
            lastHolding = typed;
        }
        return lastCountry;
    }

    private Set<String> ofHolding(String holding) {
        if (ofFields.containsKey(holding)) {
            return ofFields.get(holding);
        }
        Set<String> said = new LinkedHashSet<>(ofClamps.getOrDefault("", Set.of()));
        said.addAll(ofClamps.getOrDefault(holding, Set.of()));
        return said.isEmpty() ? assumed : said;
    }

    /** Asks, once for each holding, which country its fields lie in that do not say it, where several are typed. */
    public static void ask(FoundLists lists, List<Finding> findings) {
        Countries countries = new Countries(lists);
        ListRows fields = countries.fields;
        Set<String> asked = new LinkedHashSet<>();
        RepeatedKey keys = new RepeatedKey();
        for (int field = 0; field < fields.size(); field++) {
            int row = field;
            String holding = fields.text(Fields.HOLDING, field);
            if (fields.state(Fields.COUNTRY, field) == ListRows.State.GIVEN || !asked.add(keys.of(holding))) {
                continue;
            }
            Set<String> said = countries.ofHolding(keys.of(holding));
            if (said.size() > 1) {
                findings.add(Finding.caution(
                        fields.address(Fields.COUNTRY, field)
                                .or(() -> fields.address(Fields.FIELD, row))
                                .orElse(null),
                        "in which country does the field '" + fields.text(Fields.FIELD, field) + "'"
                                + (holding.isEmpty() ? "" : " of '" + holding + "'") + " lie? "
                                + String.join(" and ", said)
                                + " are typed elsewhere, so none is taken for it: write the country of each field in"
                                + " the column Country of Fields."));
            }
        }
    }
}
