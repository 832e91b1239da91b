package org.rickyard.lists.table;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.text.Words;
import org.rickyard.trade.workrate.Suitability;

/** The fields whose crop is brought in dry, by name: a list of cuts names the field, and the list of fields the crop. */
public final class DryFields {
    private DryFields() {}

    /** Tells each list of cuts which fields those are; one of several of a name that grows something else is none. */
    public static void tell(List<FoundTable> tables) {
        if (tables.stream().noneMatch(table -> table.role(Cuts.LIST) != null)) {
            return;
        }
        Map<String, Boolean> dry = new HashMap<>();
        for (FoundTable table : tables) {
            if (table.role(Fields.LIST) != null) {
                for (int i = 0; i < table.count(); i++) {
                    String field = table.word(table.row(i), List.of(Fields.FIELD));
                    String crop = table.word(table.row(i), List.of(Fields.CROP));
                    dry.merge(Words.key(field), Suitability.isBroughtInDry(crop), Boolean::logicalAnd);
                }
            }
        }
        dry.values().removeIf(is -> !is);
        Set<String> names = new HashSet<>(dry.keySet());
        tables.stream().filter(table -> table.role(Cuts.LIST) != null).forEach(table -> table.dryFields = names);
    }
}
