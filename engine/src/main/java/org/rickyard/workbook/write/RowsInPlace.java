package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;

/**
 * A live look at whether rows of a result sheet stand where they were written. Links by which one
 * goes to a cell cannot tell whether another row stands there now; where rows were sorted by hand the check at the top says
 * so until the next run. Figures look after themselves ({@link RowMarks}).
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

    /** The looks at a table's rows; none where they all read alike. */
    static List<RowsInPlace> of(ResultTable table, SheetPlaces places, RowMarks marks) {
        List<RowsInPlace> looks = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        int length = 0;
        for (int row = 0; row < Math.min(MOST_ROWS, table.rows()); row++) {
            List<String> ofRow = marks.of(table, row);
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
}
