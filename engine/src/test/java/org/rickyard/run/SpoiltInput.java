package org.rickyard.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ListRows;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.quantity.Range;

/**
 * An input cell of the client's that is to be spoilt, and the linked cells of ours that read it.
 *
 * @param links the linked cells; true for those that may be left blank
 * @param impossible a number outside the range of its quantity; null if any number is possible
 */
record SpoiltInput(CellAddress cell, Symbol symbol, Map<Dependence.Place, Boolean> links, Object impossible) {
    /** What is done to an input. */
    enum Spoiling {
        BLANK,
        EMPTY_TEXT,
        TEXT,
        ERROR,
        IMPOSSIBLE;

        boolean isBlank() {
            return this == BLANK || this == EMPTY_TEXT;
        }
    }

    /** How many rows of each linked column are spoilt; a cell that several link to is spoilt once. */
    private static final int ROWS_PER_COLUMN = 2;

    /** The inputs of a workbook: the first rows of every linked column of every table. */
    static List<SpoiltInput> of(WorkPlan plan) {
        Map<CellAddress, SpoiltInput> byCell = new LinkedHashMap<>();
        Map<Dependence.Place, Integer> perColumn = new HashMap<>();
        forEachLink(plan, (table, link, row, cell) -> {
            Dependence.Place column = new Dependence.Place(table.spec().id(), 0, link.symbol());
            if (!byCell.containsKey(cell) && perColumn.merge(column, 1, Integer::sum) <= ROWS_PER_COLUMN) {
                Object impossible = impossible(link.symbol(), table.links(link.symbol()), row);
                byCell.put(cell, new SpoiltInput(cell, link.symbol(), new LinkedHashMap<>(), impossible));
            }
        });
        forEachLink(plan, (table, link, row, cell) -> {
            if (byCell.containsKey(cell)) {
                byCell.get(cell)
                        .links()
                        .put(new Dependence.Place(table.spec().id(), row, link.symbol()), link.optional());
            }
        });
        return new ArrayList<>(byCell.values());
    }

    @FunctionalInterface
    private interface LinkReader {
        void read(ResultTable table, TableColumn.Link link, int row, CellAddress cell);
    }

    private static void forEachLink(WorkPlan plan, LinkReader reader) {
        for (ResultTable table : plan.tables()) {
            for (TableColumn column : table.spec().columns()) {
                if (column instanceof TableColumn.Link link) {
                    LinkCells cells = table.links(link.symbol());
                    for (int row = 0; row < table.rows(); row++) {
                        if (cells.state(row) == ListRows.State.GIVEN) {
                            reader.read(table, link, row, cells.address(row).orElseThrow());
                        }
                    }
                }
            }
        }
    }

    private static Object impossible(Symbol symbol, LinkCells cells, int row) {
        Range range = symbol.possible();
        double scale = cells.typedNumber(row) / cells.number(row);
        return range.hasHigh()
                ? (Object) (range.high() * scale * 3 + 1)
                : range.hasLow() ? range.low() * scale - 5 : null;
    }

    /** What stands in the cell once it is spoilt; null for a blank. */
    Object spoilt(Spoiling spoiling) {
        return switch (spoiling) {
            case BLANK -> null;
            case EMPTY_TEXT -> ClientBook.EMPTY_TEXT;
            case TEXT -> "to be measured";
            case ERROR -> ClientBook.ERROR;
            case IMPOSSIBLE -> impossible;
        };
    }

    boolean canBe(Spoiling spoiling) {
        return spoiling != Spoiling.IMPOSSIBLE || impossible != null;
    }

    /**
     * What becomes of the linked cells. A number that must be typed is missing, too, where text or an error stands in
     * its place; one that may be left out is not.
     */
    Map<Dependence.Place, Dependence.Effect> effects(Spoiling spoiling) {
        Map<Dependence.Place, Dependence.Effect> effects = new LinkedHashMap<>();
        links.forEach((place, optional) -> {
            boolean unusable = spoiling == Spoiling.IMPOSSIBLE || optional && !spoiling.isBlank();
            effects.put(place, unusable ? Dependence.Effect.WITHHELD : Dependence.Effect.MISSING);
        });
        return effects;
    }

    /**
     * The inputs in so many groups, each of which meets all kinds of spoiling among the groups of all kinds.
     *
     * @param shift another for another mixture
     */
    static List<List<SpoiltInput>> groups(List<SpoiltInput> inputs, int count, int shift) {
        List<List<SpoiltInput>> groups = new ArrayList<>();
        for (int group = 0; group < count; group++) {
            groups.add(new ArrayList<>());
        }
        for (int i = 0; i < inputs.size(); i++) {
            groups.get((i + shift * (i / count)) % count).add(inputs.get(i));
        }
        return groups;
    }

    /** The sheets of a workbook's result tables and their linked columns, as {@code table: symbol}. */
    static Set<String> linkedColumns(WorkPlan plan) {
        Set<String> columns = new LinkedHashSet<>();
        for (ResultTable table : plan.tables()) {
            for (TableColumn column : table.spec().columns()) {
                if (column instanceof TableColumn.Link) {
                    columns.add(table.spec().id() + ": " + column.symbol());
                }
            }
        }
        return columns;
    }

    @Override
    public String toString() {
        return symbol + " @ " + cell;
    }
}
