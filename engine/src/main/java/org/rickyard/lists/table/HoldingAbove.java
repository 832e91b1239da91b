package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.RepeatedKey;
import org.rickyard.lists.Shared;
import org.rickyard.lists.text.Words;

/**
 * The holding that stands above a list without a column of holdings, as advisers head a sheet: "Farm: Hill Farm" or "Farm -
 * Hill Farm" in one cell, or "Farm" in one and the name in the next. Named so between the rows of a list, it is that of
 * the rows below it.
 */
public final class HoldingAbove {
    private static final Set<String> FARMS = Set.of(
            "holding", "holding name", "name of holding", "farm", "farm name", "name of farm", "farmstead", "steading");

    /** Whose a farm is: it stands for the holding where no farm is named. */
    private static final Set<String> OWNERS =
            Set.of("business", "business name", "client", "client name", "customer", "customer name", "grower");

    /** What makes it the header of a column: "Farm - name". */
    private static final Set<String> COLUMN = Set.of("name", "no", "number", "id", "ref", "text");

    /** What may stand between the label and the name in one cell. */
    private static final List<String> SEPARATORS = List.of(":", " - ", " – ", " — ");

    /**
     * A holding and where it is named.
     *
     * @param name its name
     * @param cell the cell that holds it, alone or after its label
     * @param farm whether its label calls it a farm or holding, and not the one whose it is
     */
    public record Named(String name, CellAddress cell, boolean farm) {}

    /**
     * The part of a sheet that a list takes: of a form, whose labels stand below one another, the rows are those of its
     * labels.
     *
     * @param bottom less than the top if it has no rows
     */
    private record Room(int top, int bottom, int left, int right) {
        static Room of(FoundTable table) {
            int bottom = table.count() == 0 ? -1 : table.row(table.count() - 1);
            Room room = new Room(table.headerRow, bottom, table.firstColumn, table.lastColumn);
            return table.grid.isTurned() && bottom >= 0 ? room.onSheet(table) : room;
        }

        private Room onSheet(FoundTable form) {
            int[] rows = IntStream.rangeClosed(left, right)
                    // What names its thing stands above it, as the holding does.
                    .filter(label -> !(form.grid instanceof FormGrid turned && turned.isOfNamesAbove(label)))
                    .map(label -> form.address(top, label).row())
                    .sorted()
                    .toArray();
            IntSummaryStatistics columns = IntStream.rangeClosed(left, right)
                    .flatMap(label -> IntStream.of(top, bottom)
                            .map(thing -> form.address(thing, label).column()))
                    .summaryStatistics();
            return new Room(rows[0], rows[rows.length - 1], columns.getMin(), columns.getMax());
        }

        boolean isBeside(Room other) {
            return right < other.left || other.right < left;
        }

        /** Whether a cell is within it, or above it where it stands beside that other one. */
        boolean holds(int row, int column, Room other) {
            boolean inColumns = left <= column && column <= right;
            boolean beside = isBeside(other);
            boolean within = top <= row && row <= bottom && (inColumns || !beside);
            return within || beside && inColumns && row < top;
        }
    }

    private final Grid grid;
    private final Room room;
    /** Those of the lists of its sheet. */
    private final List<Room> others;

    /** What stands among the rows of a list, which of a form are turned. */
    private HoldingAbove(FoundTable table) {
        this.grid = table.grid;
        this.others = List.of();
        this.room = new Room(table.headerRow, -1, table.firstColumn, table.lastColumn);
    }

    /** What stands above it on its sheet, beside these lists. */
    private HoldingAbove(FoundTable table, List<FoundTable> lists) {
        this.grid = table.grid.onSheet();
        this.others = lists.stream().map(Room::of).toList();
        this.room = Room.of(table);
    }

    private Optional<Named> find() {
        return find(room.top - 1, 0);
    }

    /** The same tables, those without a column of holdings parted where a holding is named between their rows. */
    public static List<FoundTable> parted(List<FoundTable> tables) {
        List<FoundTable> parts = new ArrayList<>();
        for (FoundTable table : tables) {
            if (table.headings.isEmpty() || table.count() == 0 || hasColumn(table)) {
                parts.add(table);
                continue;
            }
            int from = 0;
            Named heading = null;
            for (Map.Entry<Integer, Named> next : table.headings.entrySet()) {
                int to = from;
                while (to < table.count() && table.row(to) < next.getKey()) {
                    to++;
                }
                if (to > from) {
                    parts.add(table.part(from, to, heading));
                }
                from = to;
                heading = next.getValue();
            }
            if (from < table.count()) {
                parts.add(table.part(from, table.count(), heading));
            }
        }
        return parts;
    }

    /**
     * The lists that belong to the holding above them. It counts where there are fields of several holdings, and of
     * other lists where it is one of those: a workbook of one farm needs no holdings, and half of it would not find the
     * other half.
     *
     * @param tables all lists of the workbook
     * @param findings takes what is said of lists in which another holding is named between the rows, and of those under
     *     a holding that has no fields
     */
    public static Map<FoundTable, Named> of(List<FoundTable> tables, List<Finding> findings) {
        Map<FoundTable, Named> above = new IdentityHashMap<>();
        for (FoundTable table : tables) {
            if (table.count() > 0 && !hasColumn(table)) {
                Optional<Named> named = table.heading != null
                        ? Optional.of(table.heading)
                        : new HoldingAbove(table, onSheet(table.grid, tables)).find();
                named.ifPresent(holding -> above.put(table, holding));
            }
        }
        Set<String> ofFields = new HashSet<>();
        boolean column = false;
        for (FoundTable table : tables) {
            if (table.role(Fields.LIST) != null) {
                column |= hasColumn(table);
                ofFields.addAll(holdingsOf(table, above.get(table)));
            }
        }
        if (ofFields.size() < (column ? 1 : 2)) {
            return Map.of();
        }
        for (FoundTable table : tables) {
            Named named = above.get(table);
            if (named != null && !ofFields.contains(NameKey.key(named.name()))) {
                above.remove(table);
                tellUnknown(table, named, findings);
            } else if (named != null) {
                Optional<Named> other = otherWithin(table, named);
                if (other.isPresent()) {
                    above.remove(table);
                    tellOther(table, other.get(), findings);
                }
            }
        }
        return above;
    }

    /** The holdings of a list of fields: those in its column, or the one above it. */
    private static Set<String> holdingsOf(FoundTable fields, Named above) {
        Set<String> holdings = new HashSet<>();
        if (above != null) {
            holdings.add(NameKey.key(above.name()));
        }
        RepeatedKey key = new RepeatedKey();
        for (int column : fields.columnsOf(List.of(Shared.HOLDING))) {
            for (int index = 0; index < fields.count(); index++) {
                String name = fields.grid.words(fields.row(index), column);
                if (!name.isEmpty()) {
                    holdings.add(key.of(name));
                }
            }
        }
        return holdings;
    }

    /** Machines may be of anybody, as of a contractor, and go to all holdings; other things would be taken for all of them. */
    private static void tellUnknown(FoundTable table, Named named, List<Finding> findings) {
        ListSpec spec = table.chief();
        if (named.farm() && spec.columns().contains(Shared.HOLDING) && spec != Machines.LIST) {
            findings.add(Finding.caution(
                    named.cell(),
                    "No field is of a holding " + Words.quoted(named.name())
                            + ", so no holding is taken for the rows of " + spec.name()
                            + " below. Write it as the list of fields has it, or add a column Holding."));
        }
    }

    private static void tellOther(FoundTable table, Named other, List<Finding> findings) {
        findings.add(Finding.caution(
                other.cell(),
                "The holding " + Words.quoted(other.name()) + " is named between the rows of "
                        + table.chief().name() + ", so no holding is taken for them"
                        + " from what stands above or between them. Add a column Holding, or repeat the headers"
                        + " below the name."));
    }

    /** A holding named beside a row that the list passed over, other than the one above the list. */
    private static Optional<Named> otherWithin(FoundTable table, Named own) {
        HoldingAbove within = new HoldingAbove(table);
        for (int index = 1; index < table.count(); index++) {
            int before = table.row(index - 1);
            Optional<Named> other = within.find(table.row(index) - 1, before + 1);
            if (other.isPresent() && !NameKey.key(other.get().name()).equals(NameKey.key(own.name()))) {
                return other;
            }
        }
        return Optional.empty();
    }

    /** The holding that a row among those of a list names with its label, if it holds nothing else. */
    static Optional<Named> heading(FoundTable table, int row) {
        HoldingAbove heading = new HoldingAbove(table);
        int first = table.firstColumn;
        while (first <= table.lastColumn && heading.isBlank(row, first)) {
            first++;
        }
        Named named = first > table.lastColumn ? null : heading.named(row, first, FARMS);
        for (int other = first + 1; named != null && other <= table.lastColumn; other++) {
            if (other != named.cell().column() && !heading.isBlank(row, other)) {
                return Optional.empty();
            }
        }
        return Optional.ofNullable(named);
    }

    /**
     * Whether the same header comes again for another holding: one is named between the list so far and it.
     *
     * @param row where the header comes again
     */
    static boolean isOther(FoundTable table, int row) {
        // What stands above the header's last repetition was looked at there.
        int end = Math.max(table.lastHeaderRow, table.count() == 0 ? 0 : table.row(table.count() - 1));
        HoldingAbove above = new HoldingAbove(table);
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
            for (int column = room.right; column >= 0; column--) {
                Named named = named(row, column, labels);
                if (named != null && !isOfAnother(row, column)) {
                    return Optional.of(named);
                }
            }
        }
        return Optional.empty();
    }

    private boolean isOfAnother(int row, int column) {
        return others.stream().anyMatch(other -> other.holds(row, column, room));
    }

    private static List<FoundTable> onSheet(Grid grid, List<FoundTable> tables) {
        return tables.stream()
                .filter(table -> table.grid.onSheet() == grid.onSheet())
                .toList();
    }

    /** What separates label and name in a text; "" if nothing does. */
    private static String separator(String text) {
        return SEPARATORS.stream().filter(text::contains).findFirst().orElse("");
    }

    /** Whether a text is the name of a holding with its label: "Farm: Hill Farm". */
    static boolean isHeading(String text) {
        String separator = separator(text);
        int end = text.indexOf(separator);
        String after = separator.isEmpty() ? "" : Words.normal(text.substring(end + separator.length()));
        return !after.isEmpty() && !COLUMN.contains(after) && FARMS.contains(Words.normal(text.substring(0, end)));
    }

    private Named named(int row, int column, Set<String> labels) {
        String text = text(row, column);
        String separator = separator(text);
        int end = separator.isEmpty() ? text.length() : text.indexOf(separator);
        if (!labels.contains(Words.normal(text.substring(0, end)))) {
            return null;
        }
        boolean farm = labels == FARMS;
        String after = Words.trim(text.substring(end + separator.length()));
        if (!after.isEmpty()) {
            return new Named(after, grid.address(row, column), farm);
        }
        String beside = text(row, column + 1);
        // A word between others is the header of a column, not a label.
        boolean alone = isBlank(row, column - 1) && isBlank(row, column + 2);
        return beside.isEmpty() || beside.endsWith(":") || separator.isEmpty() && !alone
                ? null
                : new Named(beside, grid.address(row, column + 1), farm);
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
