package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;

/**
 * By what a row of a result sheet is known again in the grid. Summary, cards and Trail lead to single cells; where rows were sorted
 * by hand, other rows stand there, and a spray card would show one product's amount under another's name. So they give a
 * figure only while its row stands where it was written.
 */
final class RowMarks {
    /** What stands in the place of a figure whose row stands elsewhere. */
    static final String MOVED = "run again";
    /** The same as a sentence. */
    static final String MOVED_SENTENCE =
            "withheld: since the run its sheet was sorted, or a name of its row changed; run again";

    private static final int LONGEST_NAME = 100;
    /** They are written in the language of the program. */
    private static final Set<String> LOGICAL = Set.of("true", "false");

    private final SheetPlaces places;
    private final Map<String, List<Symbol>> tellers = new HashMap<>();

    RowMarks(SheetPlaces places) {
        this.places = places;
    }

    /** What holds while a row stands where it was written; nothing where no cell tells it from others. */
    List<String> of(ResultTable table, int row) {
        if (table.rows() < 2) {
            return List.of();
        }
        List<String> marks = new ArrayList<>();
        for (Symbol teller : tellers.computeIfAbsent(table.spec().id(), id -> tellers(table))) {
            Values values = table.of(teller);
            String cell = places.cell(table.spec(), teller, row).absolute();
            if (values.words()) {
                String name = values.word(row);
                if (isPlain(name)) {
                    marks.add(cell + "=\"" + name.replace("\"", "\"\"") + "\"");
                }
            } else if (values.has(row) && values.number(row) == Math.rint(values.number(row))) {
                marks.add(cell + "=" + (long) values.number(row));
            }
        }
        return marks;
    }

    /**
     * A formula while all marks hold, otherwise another.
     *
     * @param marks none where nothing is known that could fail
     */
    static String whileInPlace(List<String> marks, String formula, String otherwise) {
        if (marks.isEmpty()) {
            return formula;
        }
        List<String> parts = marks.stream().distinct().toList();
        String all = parts.size() == 1 ? parts.get(0) : "AND(" + String.join(",", parts) + ")";
        return "IF(" + all + "," + formula + "," + otherwise + ")";
    }

    /** What tells the rows apart: a key or two that no other row has, or else all keys and names. */
    private static List<Symbol> tellers(ResultTable table) {
        List<Symbol> all = new ArrayList<>();
        List<Symbol> keys = new ArrayList<>();
        for (TableColumn column : table.spec().columns()) {
            if (column instanceof TableColumn.Key) {
                keys.add(column.symbol());
            } else if (column instanceof TableColumn.Name
                    || column instanceof TableColumn.Word word && word.identity()) {
                all.add(column.symbol());
            }
        }
        for (Symbol key : keys) {
            if (ascend(table.of(key), table.of(key))) {
                return List.of(key);
            }
        }
        for (Symbol first : keys) {
            for (Symbol second : keys) {
                if (ascend(table.of(first), table.of(second))) {
                    return List.of(first, second);
                }
            }
        }
        all.addAll(keys);
        return all;
    }

    /** Whether each row is above the one before it, by the first number or, where that is the same, by the second. */
    private static boolean ascend(Values first, Values second) {
        for (int row = 1; row < first.rows(); row++) {
            double more = first.number(row) - first.number(row - 1);
            if (more < 0 || more == 0 && second.number(row) <= second.number(row - 1)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a name reads the same in every language: numbers with a point and days are shown as the program is set up. */
    private static boolean isPlain(String name) {
        return name.length() <= LONGEST_NAME
                && (name.isEmpty() || name.chars().anyMatch(Character::isLetter) || name.matches("[1-9][0-9]{0,8}"))
                && name.chars().noneMatch(Character::isISOControl)
                && !name.startsWith("#")
                && !LOGICAL.contains(name.toLowerCase(Locale.ROOT));
    }
}
