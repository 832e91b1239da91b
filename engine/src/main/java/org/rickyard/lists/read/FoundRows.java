package org.rickyard.lists.read;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListColumn;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * Rows of a list where they were found. Numbers and texts are answered from the grid when asked; only the states, and
 * what differs from row to row, are kept. Not changed after the lists are found, so any thread may ask.
 */
final class FoundRows implements ListRows {
    private static final State[] STATES = State.values();
    private static final MathContext GRID_DIGITS = new MathContext(15);

    /** One column in all the places of its list; asked once its rows are known. */
    static final class Column implements ListColumn {
        final ColumnSpec spec;
        final byte[] state;
        /** Which of several headers a cell is taken from; null if there is only ever one. */
        byte[] pick;
        /** One more than the index into {@link #units}, 0 for none; null if no unit differs from row to row. */
        short[] unit;

        UnitInRow[] units = new UnitInRow[0];
        /** One more than the index into {@link #words}; 0 where the client's own words stand. */
        byte[] word;

        String[] words = new String[0];
        /** Numbers that were read out of text. */
        final Map<Integer, Double> read = new HashMap<>();

        /** Rows of which the cell stands in another table; which one is asked of these alone. */
        private final BitSet fromOther = new BitSet(0);

        private final Map<Integer, OtherParts.Part> others = new HashMap<>(0);

        private final FoundRows rows;
        /** Where it stands in each table, by header; null in a table without it. */
        private final Binding[][] places;

        private final boolean isMeasured;
        /** Whether rows of its list go by it: without names nothing could be told of them. */
        private final boolean isName;

        Column(ColumnSpec spec, FoundRows rows) {
            this.spec = spec;
            this.rows = rows;
            this.state = new byte[rows.size()];
            this.places = new Binding[rows.bound.length][];
            for (int i = 0; i < places.length; i++) {
                List<Binding> bindings = rows.bound[i].bindings().get(spec);
                places[i] = bindings == null ? null : bindings.toArray(new Binding[0]);
            }
            this.isMeasured = spec.isNumeric() || spec.type() == ColumnSpec.Type.TEXT_OR_NUMBER;
            this.isName = rows.spec != Jobs.LIST
                    && rows.spec != Cuts.LIST
                    && !rows.spec.identity().isEmpty()
                    && rows.spec.identity().get(0) == spec;
        }

        /** Takes the cell of a row from another table that tells of the same thing. */
        void takeFromOther(int row, OtherParts.Part other) {
            fromOther.set(row);
            others.put(row, other);
        }

        /** Takes the cell of a row from its own table again. */
        void takeFromOwn(int row) {
            fromOther.clear(row);
            others.remove(row);
        }

        /** The table in which the cell of a row stands. */
        int tableOf(int row) {
            return fromOther.get(row) ? others.get(row).table() : rows.tableOf[row];
        }

        /** The row of its table's sheet in which the cell of a row stands. */
        int rowOf(int row) {
            return fromOther.get(row) ? others.get(row).sheetRow() : rows.sheetRow[row];
        }

        short unitIndex(UnitInRow at) {
            for (int i = 0; i < units.length; i++) {
                if (units[i] == at) {
                    return (short) (i + 1);
                }
            }
            units = Arrays.copyOf(units, units.length + 1);
            units[units.length - 1] = at;
            return (short) units.length;
        }

        UnitInRow at(int row) {
            return unit[row] == 0 ? null : units[unit[row] - 1];
        }

        byte wordIndex(String canonical) {
            for (int i = 0; i < words.length; i++) {
                if (words[i].equals(canonical)) {
                    return (byte) (i + 1);
                }
            }
            words = Arrays.copyOf(words, words.length + 1);
            words[words.length - 1] = canonical;
            return (byte) words.length;
        }

        /** The place a cell comes from, or null. */
        private Binding binding(int row) {
            Binding[] here = places[tableOf(row)];
            return here == null ? null : here[pick == null ? 0 : pick[row]];
        }

        /** The row of the sheet in which its cell stands: words in a merged cell are those of every row that it spans. */
        private int sheetRow(int row, Binding binding) {
            return FoundRows.sheetRow(spec, grid(row), rowOf(row), binding.sheetColumn());
        }

        private Grid grid(int row) {
            return rows.tables[tableOf(row)].grid();
        }

        @Override
        public State state(int row) {
            return STATES[state[row]];
        }

        @Override
        public double number(int row) {
            // What was read out of text may be impossible, and is told as it was read.
            if (state[row] == State.READ_FROM_TEXT.ordinal()
                    || state[row] == State.IMPOSSIBLE.ordinal() && read.containsKey(row)) {
                return read.getOrDefault(row, 0.0);
            }
            Binding binding = binding(row);
            return binding == null ? 0 : grid(row).number(rowOf(row), binding.sheetColumn()) * cellScale(row);
        }

        @Override
        public String text(int row) {
            if (word != null && word[row] != 0) {
                return words[word[row] - 1];
            }
            if (state[row] == State.BLANK.ordinal()) {
                // A dash is no name.
                return "";
            }
            Binding binding = binding(row);
            if (binding != null && binding.asked() && spec.isOfWords() && !isName) {
                // Which header is meant is asked, and last year's crop was taken for this year's.
                return "";
            }
            return binding == null
                    ? rows.bound[tableOf(row)].words().getOrDefault(spec, "")
                    : grid(row).words(sheetRow(row, binding), binding.sheetColumn());
        }

        @Override
        public String typed(int row) {
            Binding binding = binding(row);
            if (binding == null) {
                return text(row);
            }
            Grid grid = grid(row);
            int sheetRow = sheetRow(row, binding);
            int sheetColumn = binding.sheetColumn();
            return grid.kind(sheetRow, sheetColumn) == Grid.Kind.NUMBER
                    ? Words.digits(new BigDecimal(grid.number(sheetRow, sheetColumn), GRID_DIGITS).doubleValue())
                    : grid.text(sheetRow, sheetColumn);
        }

        @Override
        public Unit unit(int row) {
            Binding binding = binding(row);
            if (binding == null) {
                return null;
            }
            if (spec.type() == ColumnSpec.Type.TEXT_OR_NUMBER
                    && grid(row).kind(rowOf(row), binding.sheetColumn()) != Grid.Kind.NUMBER) {
                return null;
            }
            if (unit != null) {
                UnitInRow at = at(row);
                return at == null ? null : at.unit();
            }
            if (spec.type() == ColumnSpec.Type.NOZZLE) {
                return Units.ONE;
            }
            return binding.unit().unit();
        }

        @Override
        public Optional<String> productUnit(int row) {
            UnitInRow at = unit == null ? null : at(row);
            return at == null ? Optional.empty() : Optional.ofNullable(at.productUnit());
        }

        @Override
        public int cellScale(int row) {
            Binding binding = isMeasured ? binding(row) : null;
            boolean shownInHundredths =
                    binding != null && grid(row).format(rowOf(row), binding.sheetColumn()) == Grid.Format.PERCENT;
            Unit unit = shownInHundredths ? unit(row) : null;
            return unit != null && unit.isPerCent() ? 100 : 1;
        }

        @Override
        public Optional<CellAddress> address(int row) {
            FoundTable table = rows.tables[tableOf(row)];
            Binding binding = binding(row);
            if (binding != null) {
                return Optional.of(table.address(sheetRow(row, binding), binding.sheetColumn()));
            }
            return Optional.ofNullable(rows.bound[tableOf(row)].wordsAt().get(spec));
        }
    }

    private final ListSpec spec;
    final FoundTable[] tables;
    final Binder.Bound[] bound;
    final int[] tableOf;
    final int[] sheetRow;
    /** Where the rest of a row stands. */
    final OtherParts other;
    /** By table, whether its rows name all products of a mix beside each other. */
    private final boolean[] wholeMixes;

    private final Map<ColumnSpec, Column> columns = new IdentityHashMap<>();

    FoundRows(
            ListSpec spec, FoundTable[] tables, Binder.Bound[] bound, int[] tableOf, int[] sheetRow, OtherParts other) {
        this.other = other;
        this.spec = spec;
        this.tables = tables;
        this.bound = bound;
        this.tableOf = tableOf;
        this.sheetRow = sheetRow;
        this.wholeMixes = new boolean[tables.length];
        for (int i = 0; i < tables.length; i++) {
            wholeMixes[i] = tables[i].roles(spec).size() > 1;
        }
    }

    /**
     * The row of a cell of a column. A figure in a merged cell may be the sum of the rows that it spans, and stays in the
     * first of them.
     */
    static int sheetRow(ColumnSpec spec, Grid grid, int row, int sheetColumn) {
        return spec.isOfWords() ? grid.topOf(row, sheetColumn) : row;
    }

    @Override
    public boolean holdsWholeMix(int row) {
        return wholeMixes[tableOf[row]];
    }

    void put(Column column) {
        columns.put(column.spec, column);
    }

    @Override
    public Column column(ColumnSpec column) {
        return columns.get(column);
    }

    @Override
    public ListSpec spec() {
        return spec;
    }

    @Override
    public int size() {
        return sheetRow.length;
    }

    @Override
    public boolean has(ColumnSpec column) {
        return columns.containsKey(column);
    }

    @Override
    public State state(ColumnSpec column, int row) {
        Column found = columns.get(column);
        return found == null ? State.NO_COLUMN : found.state(row);
    }

    @Override
    public double number(ColumnSpec column, int row) {
        Column found = columns.get(column);
        return found == null ? 0 : found.number(row);
    }

    @Override
    public String text(ColumnSpec column, int row) {
        Column found = columns.get(column);
        return found == null ? "" : found.text(row);
    }

    @Override
    public String typed(ColumnSpec column, int row) {
        Column found = columns.get(column);
        return found == null ? "" : found.typed(row);
    }

    @Override
    public Optional<Unit> unit(ColumnSpec column, int row) {
        Column found = columns.get(column);
        return found == null ? Optional.empty() : Optional.ofNullable(found.unit(row));
    }

    @Override
    public Optional<String> productUnit(ColumnSpec column, int row) {
        Column found = columns.get(column);
        return found == null ? Optional.empty() : found.productUnit(row);
    }

    @Override
    public int cellScale(ColumnSpec column, int row) {
        Column found = columns.get(column);
        return found == null ? 1 : found.cellScale(row);
    }

    @Override
    public Optional<CellAddress> address(ColumnSpec column, int row) {
        Column found = columns.get(column);
        return found == null ? Optional.empty() : found.address(row);
    }
}
