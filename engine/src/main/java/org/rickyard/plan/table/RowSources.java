package org.rickyard.plan.table;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Herds;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;

/** Which list rows each row of a result table is joined from, and the keys by which tables are joined. */
public final class RowSources {
    /**
     * Columns that measure one quantity or another, as their header or its unit says: one sheet's header may say
     * otherwise than another's, so all rows of the list are asked.
     */
    private static final Set<ColumnSpec> MEASURED_BY_HEADER = Set.of(Machines.FUEL, Machines.OVERLAP, Herds.INTAKE);

    private final int rows;
    private final Map<Role, ListRows> lists = new EnumMap<>(Role.class);
    private final Map<Role, int[]> listRows = new EnumMap<>(Role.class);
    private final Map<Symbol, int[]> keys = new HashMap<>();
    private final Map<Symbol, String[]> words = new HashMap<>();
    private final Map<Symbol, double[]> numbers = new HashMap<>();
    private final Map<Symbol, boolean[]> only = new HashMap<>();
    private final Map<Symbol, Obstacle[]> obstacles = new HashMap<>();

    /** Of a table of so many rows, of which nothing is known yet. */
    public RowSources(int rows) {
        this.rows = rows;
    }

    /** Of a table with a row for each row of a list that is asked for, which plays a part. */
    public static RowSources of(Role role, ListRows list, IntPredicate asked) {
        int[] rows = IntStream.range(0, list.size()).filter(asked).toArray();
        return new RowSources(rows.length).with(role, list, rows);
    }

    /** How many rows the table has. */
    public int rows() {
        return rows;
    }

    /** The list rows that play a part; -1 where a row has none. */
    public RowSources with(Role role, ListRows list, int[] rowsOfList) {
        lists.put(role, list);
        listRows.put(role, rowsOfList);
        return this;
    }

    /** The values of a key column. */
    public RowSources with(Symbol key, int[] values) {
        keys.put(key, values);
        return this;
    }

    /** Words that the plan itself found, for a column that no single list column holds. */
    public RowSources with(Symbol word, String[] values) {
        words.put(word, values);
        return this;
    }

    /** Values found by a method; NaN where there is none. */
    public RowSources with(Symbol symbol, double[] values) {
        numbers.put(symbol, values);
        return this;
    }

    /**
     * Values that stand in the sheet as numbers of the run and not as formulas, to nine decimals: libraries for scripts
     * write sixteen digits of a number, and a longer one that they saved was told for one that somebody typed.
     */
    public RowSources withRecord(Symbol symbol, double[] values) {
        return with(
                symbol,
                Arrays.stream(values).map(value -> Math.rint(value * 1e9) / 1e9).toArray());
    }

    double[] numbers(Symbol symbol) {
        return numbers.get(symbol);
    }

    /** The rows a linked column applies to; elsewhere its cell stays empty though the client's cell may not be. */
    public RowSources only(Symbol link, boolean[] applies) {
        only.put(link, applies);
        return this;
    }

    /** What keeps rows of a linked column from knowing which cell is meant; null for the others. */
    public RowSources withheld(Symbol link, Obstacle[] byRow) {
        obstacles.put(link, byRow);
        return this;
    }

    /** What keeps rows of a linked column from knowing their cell; null if nothing keeps any. */
    Obstacle[] obstacles(Symbol link) {
        return obstacles.get(link);
    }

    /** Whether a linked column applies to no row at all. */
    public boolean appliesNowhere(Symbol link) {
        boolean[] applies = only.get(link);
        for (int row = 0; applies != null && row < rows; row++) {
            if (applies[row]) {
                return false;
            }
        }
        return applies != null;
    }

    /** The rows a linked column applies to; null for all. */
    boolean[] where(Symbol link) {
        return only.get(link);
    }

    /** The list whose rows play a part; null if the part is played in no row. */
    public ListRows list(Role role) {
        return lists.get(role);
    }

    /** Whether the workbook has a column, anywhere in the list, for a place a value may be typed. */
    public boolean hasColumn(Candidate place) {
        ListRows list = lists.get(place.role());
        return list != null && list.has(place.column());
    }

    /** Whether a place a value may be typed can hold one of this quantity: under "Fuel (L/h)" no litres of a hectare stand. */
    public boolean canFill(Candidate place, Symbol symbol) {
        if (!hasColumn(place) || !MEASURED_BY_HEADER.contains(place.column())) {
            return hasColumn(place);
        }
        ListRows list = lists.get(place.role());
        return list.size() == 0
                || IntStream.range(0, list.size()).anyMatch(row -> list.unit(place.column(), row)
                        .map(unit -> unit.isCompatible(symbol.unit()))
                        .orElse(true));
    }

    /** Whether the plan itself found a word for any row. */
    public boolean hasWord(Symbol word) {
        String[] found = words.get(word);
        return found != null && Arrays.stream(found).anyMatch(one -> one != null && !one.isEmpty());
    }

    /** The word that the plan itself found for a row. */
    public Optional<String> word(Symbol word, int row) {
        return Optional.ofNullable(words.get(word)).map(found -> found[row]);
    }

    /** The list row that plays a part in each row, -1 where none does; null if the part is played in no row. */
    public int[] rows(Role role) {
        return listRows.get(role);
    }

    /** Where the client wrote the row that tells one from others of the same names: its job, or else whatever else it is of. */
    String written(int row) {
        Set<String> all = new LinkedHashSet<>();
        for (Role role : Role.values()) {
            int[] at = listRows.get(role);
            if (at != null && at[row] >= 0) {
                Optional<String> place = place(lists.get(role), at[row]);
                if (place.isPresent() && role == Role.JOB) {
                    return place.get();
                }
                place.ifPresent(all::add);
            }
        }
        return String.join(", ", all);
    }

    private static Optional<String> place(ListRows list, int listRow) {
        return list.spec().columns().stream()
                .flatMap(column -> list.address(column, listRow).stream())
                .findFirst()
                .map(cell -> CellAddress.quoted(cell.sheet()) + "!" + (cell.row() + 1));
    }

    int[] key(Symbol key) {
        return keys.get(key);
    }

    String[] words(Symbol word) {
        return words.get(word);
    }
}
