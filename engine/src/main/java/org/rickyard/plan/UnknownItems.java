package org.rickyard.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.formula.Constant;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Choices;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.Place;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.text.ItemText;
import org.rickyard.plan.cost.PriceRows;
import org.rickyard.plan.join.Countries;

/** Items of Assumptions that are no constant, price or setting: told, since they change nothing. */
final class UnknownItems {
    private static final int MOST_NAMED = 8;

    /** Fewer items may be headers of a list by chance. */
    private static final int LEAST_COLUMNS = 3;

    private UnknownItems() {}

    static void tell(List<Constant> constants, FoundLists lists, List<Finding> findings) {
        ListRows assumptions = lists.rows(Assumptions.LIST);
        // The labels of a form under "Item" and "Value" are read, though not as assumptions.
        Set<CellAddress> headers = lists.places().stream()
                .flatMap(place -> place.columns().stream())
                .map(Place.Column::cell)
                .collect(Collectors.toSet());
        Set<String> known = new HashSet<>(Set.of(NameKey.key(Assumptions.CUSTOMARY_UNITS), Countries.ITEM));
        constants.forEach(constant -> known.add(NameKey.key(constant.name())));
        List<String> unknown = new ArrayList<>();
        List<String> items = new ArrayList<>();
        CellAddress first = null;
        for (int row = 0; row < assumptions.size(); row++) {
            String item = assumptions.text(Assumptions.ITEM, row);
            String plain = NameKey.key(item).replaceAll("\\s+", " ");
            if (plain.equals(Countries.ITEM)) {
                tellCountry(assumptions, row, findings);
            }
            if (item.isEmpty()
                    || known.contains(plain)
                    || known.contains(NameKey.key(ItemText.name(item)).replaceAll("\\s+", " "))
                    || PriceRows.isPrice(item)) {
                continue;
            }
            CellAddress cell = assumptions.address(Assumptions.ITEM, row).orElse(null);
            if (headers.contains(cell)) {
                continue;
            }
            first = first == null ? cell : first;
            items.add(item);
            unknown.add("\"" + item + "\" (" + cell + ")");
        }
        if (unknown.isEmpty()) {
            return;
        }
        int more = unknown.size() - MOST_NAMED;
        findings.add(Finding.caution(
                first,
                "not known here, so without effect: "
                        + String.join(", ", unknown.subList(0, Math.min(MOST_NAMED, unknown.size())))
                        + Counted.andMore(more)
                        + ". Expected in Item of Assumptions: the name of a constant as it stands on Basis, wage, fuel"
                        + " price, interest rate, insurance and housing, Country, or Customary units."
                        + columnsOfAList(items)));
    }

    /** A form for one sprayer, "Boom | 30 | m", is laid out as assumptions are: where to write it instead; "" for others. */
    private static String columnsOfAList(List<String> items) {
        ListSpec best = null;
        int most = 0;
        for (ListSpec spec : Lists.ALL) {
            Vocabulary vocabulary = new Vocabulary(spec);
            int columns = (int) items.stream()
                    .filter(item -> !vocabulary.columnsOf(item).isEmpty())
                    .count();
            if (columns > most && spec != Assumptions.LIST) {
                best = spec;
                most = columns;
            }
        }
        return most < LEAST_COLUMNS || most * 2 < items.size()
                ? ""
                : " Most of these are headers of the list " + best.name()
                        + ": write them beside one another in one row there, with what they are in the row below.";
    }

    private static void tellCountry(ListRows assumptions, int row, List<Finding> findings) {
        String typed = assumptions.text(Assumptions.VALUE, row);
        if (!typed.isEmpty() && Countries.named(typed).isEmpty()) {
            findings.add(Finding.caution(
                    assumptions.address(Assumptions.VALUE, row).orElse(null),
                    "\"" + typed + "\" is no country known here: write " + String.join(", ", Choices.COUNTRY.keySet())
                            + "."));
        }
    }
}
