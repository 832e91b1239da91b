package org.rickyard.lists;

import java.util.BitSet;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.text.Words;

/**
 * The holding that stands above a list without a column of holdings, as advisers head a sheet: "Farm: Hill Farm" in one
 * cell, or "Farm" in one and the name in the next.
 */
final class HoldingAbove {
    private static final Set<String> FARMS = Set.of(
            "holding", "holding name", "name of holding", "farm", "farm name", "name of farm", "farmstead", "steading");

    /** Whose a farm is: it stands for the holding where no farm is named. */
    private static final Set<String> OWNERS =
            Set.of("business", "business name", "client", "client name", "customer", "customer name", "grower");

    /**
     * A holding and where it is named.
     *
     * @param name its name
     * @param cell the cell that holds it, alone or after its label
     */
    record Named(String name, CellAddress cell) {}

    private final FoundTable table;
    private final Grid grid;
    /** Rows of its sheet that are rows of lists. */
    private final BitSet ofLists;

    private HoldingAbove(FoundTable table, BitSet ofLists) {
        this.table = table;
        this.grid = table.grid;
        this.ofLists = ofLists;
    }

    /**
     * The lists that belong to the holding above them. It counts where there are field lists of several holdings, and of
     * other lists where it is one of those: a workbook of one farm needs no holdings, and half of it would not find the
     * other half.
     *
     * @param tables all lists of the workbook
     * @param findings takes what is said of lists in which another holding is named between the rows
     */
    static Map<FoundTable, Named> of(List<FoundTable> tables, List<Finding> findings) {
        Map<FoundTable, Named> above = new IdentityHashMap<>();
        Map<Grid, BitSet> ofLists = rowsOfLists(tables);
        for (FoundTable table : tables) {
            if (table.count() > 0 && !hasColumn(table)) {
                new HoldingAbove(table, ofLists.get(table.grid))
                        .find(table.headerRow - 1, 0)
                        .ifPresent(named -> above.put(table, named));
            }
        }
        Set<String> ofFields = new HashSet<>();
        boolean column = false;
        for (FoundTable table : tables) {
            boolean fields = table.role(Fields.LIST) != null;
            column |= fields && hasColumn(table);
            if (fields && above.containsKey(table)) {
                ofFields.add(NameKey.key(above.get(table).name()));
            }
        }
        if (ofFields.size() < (column ? 1 : 2)) {
            return Map.of();
        }
        above.values().removeIf(named -> !ofFields.contains(NameKey.key(named.name())));
        for (FoundTable table : tables) {
            Optional<Named> other = above.containsKey(table) ? otherWithin(table, above.get(table)) : Optional.empty();
            if (other.isPresent()) {
                above.remove(table);
                findings.add(Finding.caution(
                        other.get().cell(),
                        "The holding " + Words.quoted(other.get().name()) + " is named between the rows of "
                                + table.roles.get(0).vocabulary().spec.name() + ", so no holding is taken for them from"
                                + " what stands above or between them. Add a column Holding, or repeat the headers below"
                                + " the name."));
            }
        }
        return above;
    }

    /** A holding named in a row that the list passed over, other than the one above the list. */
    private static Optional<Named> otherWithin(FoundTable table, Named own) {
        HoldingAbove within = new HoldingAbove(table, new BitSet());
        for (int index = 1; index < table.count(); index++) {
            int before = table.row(index - 1);
            Optional<Named> other = within.find(table.row(index) - 1, before + 1);
            if (other.isPresent() && !NameKey.key(other.get().name()).equals(NameKey.key(own.name()))) {
                return other;
            }
        }
        return Optional.empty();
    }

    /** Whether a row among those of a list holds nothing but the name of a holding with its label. */
    static boolean isHeading(FoundTable table, int row, int column) {
        HoldingAbove heading = new HoldingAbove(table, new BitSet());
        Named named = heading.named(row, column, FARMS);
        if (named == null) {
            return false;
        }
        for (int other = table.firstColumn; other <= table.lastColumn; other++) {
            if (other != column && other != named.cell().column() && !heading.isBlank(row, other)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether the same header comes again for another holding: one is named between the list so far and it.
     *
     * @param row where the header comes again
     */
    static boolean isOther(FoundTable table, int row) {
        // What stands above the header's last repetition was looked at there.
        int end = Math.max(table.lastHeaderRow, table.count() == 0 ? 0 : table.row(table.count() - 1));
        HoldingAbove above = new HoldingAbove(table, new BitSet());
        return above.find(row - 1, end + 1)
                .map(named -> NameKey.key(named.name()))
                .filter(other -> above.find(table.headerRow - 1, 0)
                        .filter(named -> NameKey.key(named.name()).equals(other))
                        .isEmpty())
                .isPresent();
    }

    private static boolean hasColumn(FoundTable table) {
        return table.roles.stream().anyMatch(role -> role.places(Shared.HOLDING) > 0);
    }

    /** From a row upwards; the nearest counts, of farms before owners; what stands in another list is no heading. */
    private Optional<Named> find(int from, int to) {
        Optional<Named> farm = find(from, to, FARMS);
        return farm.isPresent() ? farm : find(from, to, OWNERS);
    }

    private Optional<Named> find(int from, int to, Set<String> labels) {
        for (int row = from; row >= to; row--) {
            if (!ofLists.get(row)) {
                for (int column = table.lastColumn; column >= 0; column--) {
                    Named named = named(row, column, labels);
                    if (named != null) {
                        return Optional.of(named);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** By sheet, the rows from the header to the last row of each list. */
    private static Map<Grid, BitSet> rowsOfLists(List<FoundTable> tables) {
        Map<Grid, BitSet> rows = new IdentityHashMap<>();
        for (FoundTable table : tables) {
            if (table.count() > 0) {
                rows.computeIfAbsent(table.grid, any -> new BitSet())
                        .set(table.headerRow, table.row(table.count() - 1) + 1);
            }
        }
        return rows;
    }

    private Named named(int row, int column, Set<String> labels) {
        String text = text(row, column);
        int colon = text.indexOf(':');
        boolean labelled = labels.contains(Words.normal(colon < 0 ? text : text.substring(0, colon)));
        if (!labelled) {
            return null;
        }
        String after = colon < 0 ? "" : Words.trim(text.substring(colon + 1));
        if (!after.isEmpty()) {
            return new Named(after, table.address(row, column));
        }
        String beside = text(row, column + 1);
        // A word between others is the header of a column, not a label.
        boolean alone = isBlank(row, column - 1) && isBlank(row, column + 2);
        return beside.isEmpty() || beside.endsWith(":") || colon < 0 && !alone
                ? null
                : new Named(beside, table.address(row, column + 1));
    }

    private boolean isBlank(int row, int column) {
        Grid.Kind kind = column < 0 || column >= grid.columns() ? Grid.Kind.BLANK : grid.kind(row, column);
        return kind == Grid.Kind.BLANK
                || kind == Grid.Kind.TEXT && text(row, column).isEmpty();
    }

    private String text(int row, int column) {
        return column >= 0 && column < grid.columns() && grid.kind(row, column) == Grid.Kind.TEXT
                ? Words.trim(grid.text(row, column))
                : "";
    }
}
