package org.rickyard.lists;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * Rows of a list where they were found. Numbers and texts are answered from the grid when asked; only the states, and
 * what differs from row to row, are kept. Not changed after the lists are found, so any thread may ask.
 */
final class FoundRows implements ListRows {
    private static final MathContext GRID_DIGITS = new MathContext(15);

    /** One column in all the places of its list. */
    static final class Column {
        final ColumnSpec spec;
        final byte[] state;
        /** Which of several headers a cell is taken from; null if there is only ever one. */
        byte[] pick;
        /** One more than the index into {@link #units}, 0 for none; null if no unit differs from row to row. */
        short[] unit;

        RowUnits.At[] units = new RowUnits.At[0];
        /** One more than the index into {@link #words}; 0 where the client's own words stand. */
        byte[] word;

        String[] words = new String[0];
        /** Numbers that were read out of text. */
        final Map<Integer, Double> read = new HashMap<>();

        Column(ColumnSpec spec, int rows) {
            this.spec = spec;
            this.state = new byte[rows];
        }

        short unitIndex(RowUnits.At at) {
            for (int i = 0; i < units.length; i++) {
                if (units[i] == at) {
                    return (short) (i + 1);
                }
            }
            units = Arrays.copyOf(units, units.length + 1);
            units[units.length - 1] = at;
            return (short) units.length;
        }

        RowUnits.At at(int row) {
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
    }

    private static final State[] STATES = State.values();

    private final ListSpec spec;
    final FoundTable[] tables;
    final Binder.Bound[] bound;
    final int[] tableOf;
    final int[] sheetRow;
    private final Map<ColumnSpec, Column> columns = new IdentityHashMap<>();

    FoundRows(ListSpec spec, FoundTable[] tables, Binder.Bound[] bound, int[] tableOf, int[] sheetRow) {
        this.spec = spec;
        this.tables = tables;
        this.bound = bound;
        this.tableOf = tableOf;
        this.sheetRow = sheetRow;
    }

    void put(Column column) {
        columns.put(column.spec, column);
    }

    Column column(ColumnSpec column) {
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
        return found == null ? State.NO_COLUMN : STATES[found.state[row]];
    }

    /** The place a cell comes from, or null. */
    Binding binding(ColumnSpec column, int row) {
        java.util.List<Binding> bindings = bound[tableOf[row]].bindings().get(column);
        if (bindings == null) {
            return null;
        }
        Column found = columns.get(column);
        return bindings.get(found == null || found.pick == null ? 0 : found.pick[row]);
    }

    @Override
    public double number(ColumnSpec column, int row) {
        Column found = columns.get(column);
        if (found == null) {
            return 0;
        }
        if (found.state[row] == State.READ_FROM_TEXT.ordinal()) {
            return found.read.getOrDefault(row, 0.0);
        }
        Binding binding = binding(column, row);
        return binding == null
                ? 0
                : tables[tableOf[row]].grid.number(sheetRow[row], binding.sheetColumn()) * cellScale(column, row);
    }

    @Override
    public String text(ColumnSpec column, int row) {
        Column found = columns.get(column);
        if (found == null) {
            return "";
        }
        if (found.word != null && found.word[row] != 0) {
            return found.words[found.word[row] - 1];
        }
        Binding binding = binding(column, row);
        return binding == null ? "" : cellText(tables[tableOf[row]].grid, sheetRow[row], binding.sheetColumn());
    }

    @Override
    public String typed(ColumnSpec column, int row) {
        Binding binding = columns.containsKey(column) ? binding(column, row) : null;
        if (binding == null) {
            return text(column, row);
        }
        Grid grid = tables[tableOf[row]].grid;
        int at = binding.sheetColumn();
        return grid.kind(sheetRow[row], at) == Grid.Kind.NUMBER
                ? Words.digits(new BigDecimal(grid.number(sheetRow[row], at), GRID_DIGITS).doubleValue())
                : grid.text(sheetRow[row], at);
    }

    /** A cell as words: trimmed text, or the digits of a number. */
    static String cellText(Grid grid, int row, int column) {
        return grid.kind(row, column) == Grid.Kind.NUMBER
                ? Words.digits(grid.number(row, column))
                : Words.trim(grid.text(row, column));
    }

    @Override
    public Optional<Unit> unit(ColumnSpec column, int row) {
        return Optional.ofNullable(unitOrNull(column, row));
    }

    private Unit unitOrNull(ColumnSpec column, int row) {
        Column found = columns.get(column);
        Binding binding = found == null ? null : binding(column, row);
        if (binding == null) {
            return null;
        }
        if (column.type() == ColumnSpec.Type.TEXT_OR_NUMBER
                && tables[tableOf[row]].grid.kind(sheetRow[row], binding.sheetColumn()) != Grid.Kind.NUMBER) {
            return null;
        }
        if (found.unit != null) {
            RowUnits.At at = found.at(row);
            return at == null ? null : at.unit();
        }
        if (column.type() == ColumnSpec.Type.NOZZLE) {
            return Units.ONE;
        }
        return binding.unit().unit();
    }

    @Override
    public Optional<String> productUnit(ColumnSpec column, int row) {
        Column found = columns.get(column);
        RowUnits.At at = found == null || found.unit == null ? null : found.at(row);
        return at == null ? Optional.empty() : Optional.ofNullable(at.productUnit());
    }

    @Override
    public int cellScale(ColumnSpec column, int row) {
        Binding binding = binding(column, row);
        if (binding == null || !column.isNumeric() && column.type() != ColumnSpec.Type.TEXT_OR_NUMBER) {
            return 1;
        }
        Grid grid = tables[tableOf[row]].grid;
        return grid.format(sheetRow[row], binding.sheetColumn()) == Grid.Format.PERCENT
                        && isPercent(unitOrNull(column, row))
                ? 100
                : 1;
    }

    /** Whether a unit counts in hundredths, so that a cell shown as per cent holds a hundredth of its number. */
    static boolean isPercent(Unit unit) {
        return unit != null
                && (unit.isSameScale(Units.PERCENT)
                        || unit.isSameScale(Units.PERCENT_DM)
                        || unit.symbol().startsWith("%"));
    }

    @Override
    public Optional<CellAddress> address(ColumnSpec column, int row) {
        FoundTable table = tables[tableOf[row]];
        Binding binding = binding(column, row);
        if (binding != null) {
            return Optional.of(table.address(sheetRow[row], binding.sheetColumn()));
        }
        Integer header = bound[tableOf[row]].wordsAt().get(column);
        return header == null ? Optional.empty() : Optional.of(table.address(table.headerRow, header));
    }
}
