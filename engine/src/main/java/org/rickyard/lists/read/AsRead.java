package org.rickyard.lists.read;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;

/**
 * What of the lists a run alone reads: headers, names, words, numbers out of words, and whether numbers are typed at all
 * where that decides what is worked out. The cells of ours follow the client's numbers by themselves; that one of these
 * has changed since the run can only be told by holding it against what was read.
 */
public final class AsRead {
    /** How a cell is held against what was read. */
    public enum How {
        /** As it stands. */
        WORDS,
        /** Words as they stand; of a number only that it is one, since the cells of ours follow it. */
        ANY_NUMBER,
        /** Words as they stand; a number in thousandths, whole, since programs write fractions in ways of their own. */
        THOUSANDTHS
    }

    /**
     * A cell that is held against what was read.
     *
     * @param column of the sheet, zero-based
     */
    public record Part(int column, How how) {}

    /**
     * A row of a sheet, or some cells of one that has many.
     *
     * @param list the list it belongs to
     * @param first its first cell
     * @param parts its cells from left to right
     * @param text what was read, the cells parted by {@link #BETWEEN}
     */
    public record Line(String list, CellAddress first, List<Part> parts, String text) {}

    /**
     * How many cells of the chief column of a list are filled, header and all. A row that was put in between, where no
     * line looks, makes it one more.
     *
     * @param list the list
     * @param first its first cell, the header over the column; a form has its headers in a column, and rows of them
     * @param last its last cell, in the column or row of the first
     * @param count how many were filled
     */
    public record Filled(String list, CellAddress first, CellAddress last, int count) {}

    /** Takes lines one by one. */
    @FunctionalInterface
    public interface Taker {
        /** Takes the next line. */
        void take(Line line) throws IOException;
    }

    /** What stands for a number that may be any. */
    public static final String NUMBER = "#";
    /** Stands between two cells. */
    public static final String BETWEEN = " | ";

    /** The grid joins numbers to texts in so many digits. */
    private static final MathContext GRID_DIGITS = new MathContext(15);

    private static final double THOUSAND = 1000;
    /** A formula may have 8,192 characters and a cell 32,767. */
    private static final int MOST_OF_FORMULA = 6000;

    private static final int MOST_OF_TEXT = 16_000;
    private static final int LONGEST_NUMBER = 26;
    /** What a formula needs beside the name of the sheet for a cell read as it stands, and for others. */
    private static final int PART_IN_FORMULA = 18;

    private final Set<ColumnSpec> decided;
    private final Set<ColumnSpec> exact;
    private final Map<ListSpec, Map<ColumnSpec, BitSet>> places;
    private final Map<FoundTable, TreeMap<Integer, How>> tables = new IdentityHashMap<>();
    private final List<FoundTable> inOrder = new ArrayList<>();
    private final Map<FoundTable, Set<CellAddress>> above = new IdentityHashMap<>();
    private final Map<FoundTable, Integer> chiefColumns = new IdentityHashMap<>();
    /** Of columns that count in some rows only, the rows of the sheet. */
    private final Map<FoundTable, Map<Integer, BitSet>> onlyIn = new IdentityHashMap<>();

    /**
     * Of lists.
     *
     * @param decided columns of numbers that decide, by being typed or not, what is worked out
     * @param places columns of numbers that decide so in these rows of their lists only
     * @param exact columns of numbers by which rows belong together
     */
    public AsRead(
            FoundLists lists,
            Set<ColumnSpec> decided,
            Map<ListSpec, Map<ColumnSpec, BitSet>> places,
            Set<ColumnSpec> exact) {
        this.decided = decided;
        this.places = places;
        this.exact = exact;
        for (ListSpec spec : Lists.ALL) {
            if (lists.rows(spec) instanceof FoundRows rows) {
                for (int i = 0; i < rows.tables.length; i++) {
                    columns(spec, rows, i);
                }
            }
        }
    }

    private void columns(ListSpec spec, FoundRows rows, int index) {
        FoundTable table = rows.tables[index];
        TreeMap<Integer, How> columns = tables.computeIfAbsent(table, t -> {
            inOrder.add(t);
            TreeMap<Integer, How> units = new TreeMap<>();
            t.unitColumns().forEach(column -> units.put(column, How.WORDS));
            return units;
        });
        Binder.Bound bound = rows.bound[index];
        Map<ColumnSpec, BitSet> deciding = places.getOrDefault(spec, Map.of());
        for (ColumnSpec column : spec.columns()) {
            List<Binding> bindings = bound.bindings().getOrDefault(column, List.of());
            How how = how(column, rows.column(column), bindings.size());
            if (how == How.WORDS && column.required() && !bindings.isEmpty()) {
                chiefColumns.putIfAbsent(table, bindings.get(0).sheetColumn());
            }
            if (how != null) {
                for (Binding binding : bindings) {
                    columns.merge(binding.sheetColumn(), how, (one, other) -> one == How.WORDS ? one : other);
                }
            } else if (bindings.size() == 1 && deciding.containsKey(column)) {
                only(table, bindings.get(0).sheetColumn(), rows.column(column), index, deciding.get(column));
            }
            if (bound.wordsAt().containsKey(column)) {
                above.computeIfAbsent(
                                table, t -> new TreeSet<>((a, b) -> a.toString().compareTo(b.toString())))
                        .add(bound.wordsAt().get(column));
            }
        }
    }

    private void only(FoundTable table, int sheetColumn, FoundRows.Column column, int index, BitSet listRows) {
        BitSet here =
                onlyIn.computeIfAbsent(table, t -> new HashMap<>()).computeIfAbsent(sheetColumn, c -> new BitSet());
        for (int row = listRows.nextSetBit(0); row >= 0; row = listRows.nextSetBit(row + 1)) {
            if (column.tableOf(row) == index) {
                here.set(column.rowOf(row));
            }
        }
    }

    private How how(ColumnSpec spec, FoundRows.Column column, int headers) {
        if (spec == Fields.NOTES || column == null) {
            return null;
        }
        if (spec.isOfWords()) {
            return How.WORDS;
        }
        if (exact.contains(spec)) {
            return How.THOUSANDTHS;
        }
        boolean words = spec.type() == ColumnSpec.Type.TEXT_OR_NUMBER || headers > 1 || decided.contains(spec);
        for (int row = 0; !words && row < column.state.length; row++) {
            words = column.state(row) == ListRows.State.READ_FROM_TEXT;
        }
        return words ? How.ANY_NUMBER : null;
    }

    /** The lists that have rows, each with the filled cells of its chief column. */
    public List<Filled> filled() {
        List<Filled> filled = new ArrayList<>();
        for (FoundTable table : inOrder) {
            Integer column = chiefColumns.get(table);
            if (column != null && table.count() > 0) {
                filled.add(filled(
                        table,
                        table.address(table.headerRow(), column),
                        table.address(table.row(table.count() - 1), column)));
                if (table.grid().isTurned()) {
                    FormAsRead.labels(table)
                            .values()
                            .forEach(cells -> filled.add(filled(table, cells.first(), cells.last())));
                }
            }
        }
        return filled;
    }

    private static Filled filled(FoundTable table, CellAddress first, CellAddress last) {
        Grid sheet = table.grid().onSheet();
        int count = 0;
        for (int row = first.row(); row <= last.row(); row++) {
            for (int column = first.column(); column <= last.column(); column++) {
                // As COUNTA does: a formula that shows nothing is counted too.
                count += sheet.kind(row, column) == Grid.Kind.BLANK ? 0 : 1;
            }
        }
        return new Filled(name(table), first, last, count);
    }

    private static String name(FoundTable table) {
        return table.chief().name();
    }

    /** Gives every row of every list: its headers, what stands between them and the rows, and the row after the last. */
    public void forEach(Taker taker) throws IOException {
        forEach(true, taker);
    }

    /** How many lines there are; quicker than to have them given. */
    public int count() throws IOException {
        int[] count = {0};
        forEach(false, line -> count[0]++);
        return count[0];
    }

    /** Gives the lines, or null for each where they are only counted. */
    private void forEach(boolean given, Taker taker) throws IOException {
        for (FoundTable table : inOrder) {
            Grid sheet = table.grid().onSheet();
            String list = name(table);
            for (CellAddress cell : above.getOrDefault(table, Set.of())) {
                lines(list, sheet, cell.row(), List.of(new Part(cell.column(), How.WORDS)), given, taker);
            }
            if (table.grid().isTurned()) {
                FormAsRead form = new FormAsRead(table);
                rows(table, form);
                for (Map.Entry<Integer, List<Part>> row : form.rows().entrySet()) {
                    lines(list, sheet, row.getKey(), row.getValue(), given, taker);
                }
            } else {
                rows(table, (row, parts) -> lines(list, sheet, row, parts, given, taker));
            }
        }
    }

    /** Takes rows of a table one by one, each with its cells. */
    @FunctionalInterface
    interface RowTaker {
        void take(int row, List<Part> parts) throws IOException;
    }

    /** Gives the rows of a table: its headers, what stands between them and the rows, and the row after the last. */
    private void rows(FoundTable table, RowTaker taker) throws IOException {
        List<Part> headers = new ArrayList<>();
        // The next cell to the right too, where a further header would be typed.
        for (int column = table.firstColumn();
                column <= Math.min(CellAddress.COLUMNS - 1, table.lastColumn() + 1);
                column++) {
            headers.add(new Part(column, How.WORDS));
        }
        int first = table.count() == 0 ? table.headerRow() + 1 : table.row(0);
        for (int row = table.headerRow(); row < first; row++) {
            taker.take(row, headers);
        }
        Map<Integer, BitSet> sometimes = new HashMap<>(onlyIn.getOrDefault(table, Map.of()));
        sometimes.keySet().removeAll(tables.get(table).keySet());
        TreeMap<Integer, How> all = new TreeMap<>(tables.get(table));
        sometimes.keySet().forEach(column -> all.put(column, How.ANY_NUMBER));
        List<Part> parts = new ArrayList<>();
        all.forEach((column, how) -> parts.add(new Part(column, how)));
        int last = table.count() == 0 ? first : table.row(table.count() - 1) + 1;
        // Rows of which the same cells count share one list of them.
        Map<Set<Integer>, List<Part>> shared = new HashMap<>();
        for (int row = first; row <= last; row++) {
            taker.take(
                    row,
                    sometimes.isEmpty()
                            ? parts
                            : shared.computeIfAbsent(notOf(sometimes, row), not -> parts.stream()
                                    .filter(part -> !not.contains(part.column()))
                                    .toList()));
        }
    }

    private static Set<Integer> notOf(Map<Integer, BitSet> sometimes, int row) {
        Set<Integer> not = new HashSet<>();
        sometimes.forEach((column, rows) -> {
            if (!rows.get(row)) {
                not.add(column);
            }
        });
        return not;
    }

    /** A row in as many lines as it takes; a cell that shows an error is told of elsewhere. */
    private static void lines(String list, Grid grid, int row, List<Part> parts, boolean given, Taker taker)
            throws IOException {
        int sheetName = CellAddress.quoted(grid.sheet()).length();
        // Most rows are one line of all their cells, which they share with others; the cells of this one if it is none.
        List<Part> some = null;
        int taken = 0;
        int formula = 0;
        int length = 0;
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            boolean read = isRead(grid.kind(row, part.column()));
            int more = inFormula(sheetName, part);
            int longer = length(grid, row, part);
            boolean full = taken > 0 && (formula + more > MOST_OF_FORMULA || length + longer > MOST_OF_TEXT);
            if (some == null && (full || !read)) {
                some = new ArrayList<>(parts.subList(0, i));
            }
            if (read && full) {
                taker.take(given ? line(list, grid, row, some) : null);
                some = new ArrayList<>();
                taken = 0;
                formula = 0;
                length = 0;
            }
            if (read) {
                taken++;
                formula += more;
                length += longer;
                if (some != null) {
                    some.add(part);
                }
            }
        }
        if (taken > 0) {
            taker.take(given ? line(list, grid, row, some == null ? parts : some) : null);
        }
    }

    private static boolean isRead(Grid.Kind kind) {
        return kind != Grid.Kind.ERROR && kind != Grid.Kind.UNCOMPUTED;
    }

    private static int inFormula(int sheetName, Part part) {
        return (sheetName + PART_IN_FORMULA) * (part.how() == How.WORDS ? 1 : 3);
    }

    /** How long a cell's part of a line is at most, with what stands between. */
    private static int length(Grid grid, int row, Part part) {
        return BETWEEN.length()
                + (grid.kind(row, part.column()) == Grid.Kind.NUMBER
                        ? LONGEST_NUMBER
                        : grid.text(row, part.column()).length());
    }

    private static Line line(String list, Grid grid, int row, List<Part> parts) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < parts.size(); i++) {
            text.append(i == 0 ? "" : BETWEEN).append(read(grid, row, parts.get(i)));
        }
        return new Line(list, grid.address(row, parts.get(0).column()), parts, text.toString());
    }

    private static String read(Grid grid, int row, Part part) {
        if (grid.kind(row, part.column()) != Grid.Kind.NUMBER) {
            return grid.text(row, part.column());
        }
        double number = grid.number(row, part.column());
        return switch (part.how()) {
            case ANY_NUMBER -> NUMBER;
            case THOUSANDTHS -> Words.digits(Math.rint(number * THOUSAND));
            case WORDS -> Words.digits(new BigDecimal(number, GRID_DIGITS).doubleValue());
        };
    }
}
