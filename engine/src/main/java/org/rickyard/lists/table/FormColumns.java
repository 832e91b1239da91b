package org.rickyard.lists.table;

import java.util.Arrays;
import java.util.Set;
import org.rickyard.lists.Grid;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;

/** What the columns on the right of a form's labels are: units, what is told of a thing, or remarks. */
final class FormColumns {
    /** So many rows above its first label a form has the heads of its columns: "Input", "Value", "Unit", "Notes". */
    private static final int HEADS_ABOVE = 3;

    private static final Set<String> UNITS = Set.of("unit", "units", "uom", "unit of measure");
    /** Heads of a column that explains what the others tell. */
    private static final Set<String> REMARKS =
            Set.of("note", "remark", "comment", "source", "guidance", "guide", "explanation", "instruction", "help");

    private final FormCells cells;

    FormColumns(FormCells cells) {
        this.cells = cells;
    }

    /**
     * Whether units stand in a column: its head says so, or most of what stands in it is some. One that is not known here
     * ("/m2") makes no other thing of them.
     */
    boolean areUnits(int[] rows, int column) {
        int units = 0;
        int words = 0;
        for (int row : rows) {
            if (cells.isBlank(row, column)) {
                continue;
            }
            if (!cells.isText(row, column)) {
                return false;
            }
            String text = Words.trim(cells.grid().text(row, column));
            if (SaidUnit.isUnit(text) || SaidUnit.isMoney(text)) {
                units++;
            } else {
                words++;
            }
        }
        return UNITS.contains(head(rows, column)) || units > 0 && units >= words;
    }

    /** Whether figures stand in a column, or something in most of its cells: remarks do not. */
    boolean isOfAThing(int[] rows, int labels, int column) {
        long filled =
                Arrays.stream(rows).filter(row -> !cells.isBlank(row, column)).count();
        boolean figures = Arrays.stream(rows).anyMatch(row -> cells.grid().kind(row, column) == Grid.Kind.NUMBER);
        return (figures || 2 * filled > rows.length) && !areRemarks(rows, labels, column);
    }

    /** Whether a column explains the others: its head says so, or words stand in it where its labels ask for figures. */
    private boolean areRemarks(int[] rows, int labels, int column) {
        if (Arrays.stream(head(rows, column).split(" "))
                .anyMatch(word -> REMARKS.contains(word)
                        || word.endsWith("s") && REMARKS.contains(word.substring(0, word.length() - 1)))) {
            return true;
        }
        int figures = 0;
        int words = 0;
        for (int row : rows) {
            Heading heading = cells.isBlank(row, column) ? null : cells.heading(row, labels);
            if (heading != null && heading.column().isNumeric()) {
                boolean figure = !cells.isText(row, column) || ListOnItsSide.isFigure(cells.grid(), row, column);
                figures += figure ? 1 : 0;
                words += figure ? 0 : 1;
            }
        }
        return words > 0 && words >= figures;
    }

    /** What stands over a column, right above the first of its rows or a little higher; "" if nothing does. */
    String head(int[] rows, int column) {
        for (int row = rows[0] - 1; row >= Math.max(0, rows[0] - HEADS_ABOVE); row--) {
            if (cells.isText(row, column)) {
                return Words.key(cells.grid().text(row, column));
            }
        }
        return "";
    }
}
