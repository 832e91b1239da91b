package org.rickyard.lists.read;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Layout;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.lists.Place;
import org.rickyard.lists.header.LayoutHeaders;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;

/**
 * What a workbook says of itself, which is read before its lists: on Layout which header means which column, on
 * Assumptions whose gallons are meant.
 */
final class OwnWords {
    private final List<Vocabulary> vocabularies;
    private final List<Finding> findings;

    OwnWords(List<Vocabulary> vocabularies, List<Finding> findings) {
        this.vocabularies = vocabularies;
        this.findings = findings;
    }

    /** Whose gallons are meant. Rows that differ settle nothing, so gallons are asked about as if none stood there. */
    CustomaryUnits customary(ListRows assumptions) {
        Set<CustomaryUnits> all = EnumSet.noneOf(CustomaryUnits.class);
        for (int row = 0; row < assumptions.size(); row++) {
            String item = Words.normal(assumptions.text(Assumptions.ITEM, row));
            if (!item.equals(Words.normal(Assumptions.CUSTOMARY_UNITS))
                    || assumptions.state(Assumptions.VALUE, row) == ListRows.State.BLANK) {
                continue;
            }
            CellAddress cell = assumptions.address(Assumptions.VALUE, row).orElse(null);
            String said = assumptions.text(Assumptions.VALUE, row);
            CustomaryUnits units = CustomaryUnits.of(said);
            if (units == CustomaryUnits.UNSET) {
                findings.add(Finding.stop(
                        cell, "Customary units are UK, US or metric; " + Words.quoted(said) + " is none of them."));
            } else if (all.add(units) && all.size() > 1) {
                findings.add(Finding.stop(
                        cell,
                        "Customary units are " + Words.quoted(said)
                                + " here and something else in a row above. Leave the one that is right; until then"
                                + " neither is used."));
            }
        }
        return all.size() == 1 ? all.iterator().next() : CustomaryUnits.UNSET;
    }

    /** Tells the vocabularies what the rows of Layout say. */
    void settle(ListRows layout) {
        for (int row = 0; row < layout.size(); row++) {
            settle(layout, row);
        }
    }

    private void settle(ListRows layout, int row) {
        String listName = layout.text(Layout.LIST_NAME, row);
        String columnName = layout.text(Layout.COLUMN, row);
        String header = layout.text(Layout.HEADER, row);
        Vocabulary vocabulary = vocabularies.stream()
                .filter(candidate -> Words.normal(candidate.spec().name()).equals(Words.normal(listName)))
                .findFirst()
                .orElse(null);
        if (vocabulary == null) {
            List<String> names = Lists.ALL.stream().map(ListSpec::name).toList();
            findings.add(Finding.caution(
                    layout.address(Layout.LIST_NAME, row).orElse(null),
                    Words.quoted(listName) + " is not a list known here: write one of " + String.join(", ", names)
                            + "."));
            return;
        }
        Optional<ColumnSpec> column = vocabulary.spec().columns().stream()
                .filter(candidate -> Words.normal(candidate.name()).equals(Words.normal(columnName)))
                .findFirst();
        if (column.isEmpty()) {
            List<String> names =
                    vocabulary.spec().columns().stream().map(ColumnSpec::name).toList();
            findings.add(Finding.caution(
                    layout.address(Layout.COLUMN, row).orElse(null),
                    vocabulary.spec().name() + " has no column " + Words.quoted(columnName) + ": write one of "
                            + String.join(", ", names) + "."));
            return;
        }
        if (!vocabulary.settle(header, column.get(), layout.text(Layout.UNIT, row))) {
            findings.add(Finding.stop(
                    layout.address(Layout.HEADER, row).orElse(null),
                    "Another row of Layout says otherwise of the header " + Words.quoted(header) + " of "
                            + vocabulary.spec().name() + ". Leave the one that is right; until then it is not used."));
        }
    }

    /** Says which rows of Layout settle nothing, since no list has their header. */
    void noteUnused(ListRows layout, List<Place> places) {
        for (int row = 0; row < layout.size(); row++) {
            String list = Words.normal(layout.text(Layout.LIST_NAME, row));
            String header = layout.text(Layout.HEADER, row);
            String wanted = Words.normal(layout.text(Layout.COLUMN, row));
            boolean known = Lists.ALL.stream()
                    .filter(spec -> Words.normal(spec.name()).equals(list))
                    .flatMap(spec -> spec.columns().stream())
                    .anyMatch(column -> Words.normal(column.name()).equals(wanted));
            boolean used = places.stream()
                    .filter(place -> Words.normal(place.list().name()).equals(list))
                    .flatMap(place -> place.columns().stream())
                    .anyMatch(column -> LayoutHeaders.isMeant(header, column.header()));
            if (known && !used && !header.isEmpty()) {
                findings.add(Finding.caution(
                        layout.address(Layout.HEADER, row).orElse(null),
                        "No list " + layout.text(Layout.LIST_NAME, row) + " has the header "
                                + Words.quoted(layout.text(Layout.HEADER, row))
                                + ", so this row settles nothing. Write the header as it stands in the workbook."));
            }
        }
    }
}
