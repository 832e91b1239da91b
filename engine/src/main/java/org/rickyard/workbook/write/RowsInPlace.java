package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;

/**
 * A live look at whether rows of a result sheet stand where they were written. Summary, cards and Trail lead to single cells;
 * where rows were sorted by hand, other rows stand there, and a spray card would show one product's amount under another's
 * name until the next run.
 *
 * @param what which rows, in words
 * @param formula "ok", or {@link #SORTED} where another row stands in the place of one
 */
record RowsInPlace(String what, String formula) {
    /** The verdict where they do not. */
    static final String SORTED = "sorted";

    /** So many rows of a sheet are looked at: who sorts it moves some of the first. */
    private static final int MOST_ROWS = 200;
    /** A formula may have 8,192 characters, and a function 255 parts. */
    private static final int LONGEST = 7000;

    private static final int MOST_PARTS = 250;
    private static final int LONGEST_NAME = 100;
    /** They are written in the language of the program. */
    private static final Set<String> LOGICAL = Set.of("true", "false");

    /** The looks at a table's rows; none where they all read alike. */
    static List<RowsInPlace> of(ResultTable table, SheetPlaces places) {
        List<RowsInPlace> looks = new ArrayList<>();
        int rows = Math.min(MOST_ROWS, table.rows());
        List<Symbol> tellers = table.rows() > 1 ? tellers(table, rows) : List.of();
        List<String> parts = new ArrayList<>();
        int length = 0;
        for (int row = 0; row < rows; row++) {
            List<String> ofRow = parts(table, tellers, row, places);
            int more = ofRow.stream().mapToInt(part -> part.length() + 1).sum();
            if (length + more > LONGEST || parts.size() + ofRow.size() > MOST_PARTS) {
                looks.add(look(table, parts, places));
                parts.clear();
                length = 0;
            }
            parts.addAll(ofRow);
            length += more;
        }
        if (!parts.isEmpty()) {
            looks.add(look(table, parts, places));
        }
        return looks;
    }

    private static RowsInPlace look(ResultTable table, List<String> parts, SheetPlaces places) {
        return new RowsInPlace(
                "'" + places.sheet(table.spec()) + "': rows stand where they were written",
                "IF(AND(" + String.join(",", parts) + "),\"ok\",\"" + SORTED + "\")");
    }

    /** What tells the rows apart: a key that each has for itself, or else all keys and names. */
    private static List<Symbol> tellers(ResultTable table, int rows) {
        List<Symbol> all = new ArrayList<>();
        for (TableColumn column : table.spec().columns()) {
            Values values = table.of(column.symbol());
            if (column instanceof TableColumn.Key && !values.words()) {
                if (ascends(values, rows)) {
                    return List.of(column.symbol());
                }
                all.add(column.symbol());
            } else if (column instanceof TableColumn.Name) {
                all.add(column.symbol());
            }
        }
        return all;
    }

    private static boolean ascends(Values values, int rows) {
        for (int row = 0; row < rows; row++) {
            if (!values.has(row) || row > 0 && values.number(row) <= values.number(row - 1)) {
                return false;
            }
        }
        return true;
    }

    private static List<String> parts(ResultTable table, List<Symbol> tellers, int row, SheetPlaces places) {
        List<String> parts = new ArrayList<>();
        for (Symbol teller : tellers) {
            Values values = table.of(teller);
            CellAddress cell = places.cell(table.spec(), teller, row);
            if (values.words()) {
                String name = values.word(row);
                if (isPlain(name)) {
                    parts.add(cell.absolute() + "=\"" + name.replace("\"", "\"\"") + "\"");
                }
            } else if (values.has(row) && values.number(row) == Math.rint(values.number(row))) {
                parts.add(cell.absolute() + "=" + (long) values.number(row));
            }
        }
        return parts;
    }

    /** Whether a name is text for certain: numbers and days are shown as the program is set up. */
    private static boolean isPlain(String name) {
        return name.length() <= LONGEST_NAME
                && name.chars().anyMatch(Character::isLetter)
                && name.chars().noneMatch(Character::isISOControl)
                && !name.startsWith("#")
                && !LOGICAL.contains(name.toLowerCase(Locale.ROOT));
    }
}
