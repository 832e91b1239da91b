package org.rickyard.lists;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.formula.Days;
import org.rickyard.formula.Numbers;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Unit;

/**
 * What was typed otherwise in the lists of one workbook than in those of another. Rows belong together as
 * {@link RowPairs} has it; so a list may be sorted, and what was renamed is gone from the one and new in the other.
 */
public final class ListChanges {
    /**
     * A cell that differs.
     *
     * @param cell where it stands: in the later workbook, or in the earlier where the later has no such column
     * @param row the names of its row
     * @param column what the column is called here
     * @param before what it held, with its unit; empty if nothing
     * @param after what it holds, with its unit; empty if nothing
     */
    public record Change(CellAddress cell, String row, String column, String before, String after) {}

    /**
     * A row that only one of the workbooks has.
     *
     * @param cell where its name stands
     * @param name its names
     */
    public record Row(CellAddress cell, String name) {}

    /**
     * What a cell holds; twice empty if nothing.
     *
     * @param exact in as many digits as a grid keeps
     * @param readable as one would say it
     */
    private record Shown(String exact, String readable) {}

    /** A grid keeps so many digits; two programs may store others behind them. */
    private static final MathContext GRID_DIGITS = new MathContext(15);

    private final FoundLists before;
    private final FoundLists after;
    private final Map<CellAddress, Change> changes = new LinkedHashMap<>();
    private final Map<CellAddress, Row> added = new LinkedHashMap<>();
    private final Map<CellAddress, Row> gone = new LinkedHashMap<>();

    private ListChanges(FoundLists before, FoundLists after) {
        this.before = before;
        this.after = after;
        Lists.ALL.forEach(this::list);
    }

    /** Holds the lists of one workbook against those of another. */
    public static ListChanges of(FoundLists before, FoundLists after) {
        return new ListChanges(before, after);
    }

    private void list(ListSpec spec) {
        ListRows was = before.rows(spec);
        ListRows is = after.rows(spec);
        RowPairs pairs = RowPairs.of(rows(was, before), rows(is, after));
        for (int row = 0; row < is.size(); row++) {
            int former = pairs.former(row);
            if (former == RowPairs.NONE) {
                alone(is, row, added);
            } else {
                cells(was, former, is, row);
            }
        }
        pairs.alone().forEach(row -> alone(was, row, gone));
    }

    private static RowPairs.Rows rows(ListRows rows, FoundLists lists) {
        return new RowPairs.Rows(rows.size(), row -> name(rows, row), row -> contents(rows, lists, row));
    }

    private static String name(ListRows rows, int row) {
        List<String> names = new ArrayList<>();
        String holding = rows.spec().columns().contains(Shared.HOLDING) ? rows.text(Shared.HOLDING, row) : "";
        names.add(holding);
        for (ColumnSpec column : rows.spec().identity()) {
            names.add(rows.text(column, row));
        }
        names.removeIf(String::isEmpty);
        return String.join(", ", names);
    }

    private static List<String> contents(ListRows rows, FoundLists lists, int row) {
        List<String> contents = new ArrayList<>();
        rows.spec()
                .columns()
                .forEach(column -> contents.add(shown(rows, lists, column, row).exact()));
        return contents;
    }

    private void cells(ListRows was, int former, ListRows is, int row) {
        for (ColumnSpec column : is.spec().columns()) {
            Shown then = shown(was, before, column, former);
            Shown now = shown(is, after, column, row);
            Optional<CellAddress> cell = is.address(column, row).or(() -> was.address(column, former));
            if (!then.exact().equals(now.exact()) && cell.isPresent()) {
                boolean alike = then.readable().equals(now.readable());
                changes.putIfAbsent(
                        cell.get(),
                        new Change(
                                cell.get(),
                                name(is, row),
                                column.name(),
                                alike ? then.exact() : then.readable(),
                                alike ? now.exact() : now.readable()));
            }
        }
    }

    private static void alone(ListRows rows, int row, Map<CellAddress, Row> found) {
        for (ColumnSpec column : rows.spec().identity()) {
            Optional<CellAddress> cell = rows.address(column, row);
            if (cell.isPresent()) {
                // A flat list is several lists, of which the first tells its rows.
                found.putIfAbsent(cell.get(), new Row(cell.get(), name(rows, row)));
                return;
            }
        }
    }

    private static Shown shown(ListRows rows, FoundLists lists, ColumnSpec column, int row) {
        if (!rows.isFilled(column, row)) {
            return new Shown("", "");
        }
        String text = rows.text(column, row);
        if (isWords(rows, column, row)) {
            return new Shown(text, text);
        }
        if (!rows.gives(column, row)) {
            // "10 ha" in a cell of hectares reads as the number does, and is none.
            String unused = Words.quoted(text) + " (not used)";
            return new Shown(unused, unused);
        }
        double number = rows.number(column, row);
        if (column.type() == ColumnSpec.Type.DATE) {
            String day = Days.text(number, lists.dayZero());
            return new Shown(day, day);
        }
        String unit = rows.unit(column, row).map(Unit::symbol).map(" "::concat).orElse("");
        String exact = Words.digits(new BigDecimal(number, GRID_DIGITS).doubleValue());
        return new Shown((exact + unit).strip(), (Numbers.readable(number) + unit).strip());
    }

    private static boolean isWords(ListRows rows, ColumnSpec column, int row) {
        return switch (column.type()) {
            case TEXT, CHOICE, NOZZLE -> true;
            case TEXT_OR_NUMBER -> rows.unit(column, row).isEmpty();
            case NUMBER, DATE, DOSE, BATTER -> rows.state(column, row) == ListRows.State.READ_FROM_TEXT;
        };
    }

    /** Cells that hold something else than before, each told once, in the order of lists and rows. */
    public List<Change> changes() {
        return List.copyOf(changes.values());
    }

    /** Rows that only the later workbook has. */
    public List<Row> added() {
        return List.copyOf(added.values());
    }

    /** Rows that only the earlier workbook has. */
    public List<Row> gone() {
        return List.copyOf(gone.values());
    }
}
