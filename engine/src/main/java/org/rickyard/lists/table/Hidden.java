package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.text.Words;

/** What of the lists is read though it is not shown: who looks at the rest may think that there is no more. */
public final class Hidden {
    private Hidden() {}

    /** Notes of hidden sheets whose lists are read. */
    public static List<Finding> sheets(List<? extends Grid> sheets, List<FoundTable> tables) {
        List<Finding> notes = new ArrayList<>();
        for (Grid sheet : sheets) {
            boolean read = tables.stream().anyMatch(table -> table.grid.sheet().equals(sheet.sheet()));
            if (sheet.hidden() && read) {
                notes.add(Finding.note(
                        new CellAddress(sheet.sheet(), 0, 0),
                        "The sheet " + Words.quoted(sheet.sheet()) + " is hidden; its lists are read all the same."));
            }
        }
        return notes;
    }

    /** Notes of hidden rows and columns of lists that stand on sheets which are shown. */
    public static List<Finding> rowsAndColumns(List<FoundTable> tables) {
        List<Finding> notes = new ArrayList<>();
        Set<CellAddress> told = new HashSet<>();
        for (FoundTable table : tables) {
            if (table.grid.hidden()) {
                continue;
            }
            int[] rows = IntStream.range(0, table.count())
                    .map(table::row)
                    .filter(table.grid::isHidden)
                    .toArray();
            if (rows.length > 0) {
                notes.add(Finding.note(
                        table.address(rows[0], table.firstColumn),
                        Counted.of(rows.length, table.grid.isTurned() ? "column" : "row") + " of " + name(table)
                                + are(rows) + " read all the same. Delete what is not to count."));
            }
            int[] columns =
                    readColumns(table).filter(table.grid::isHiddenColumn).toArray();
            // Parts of one list, parted by the holdings named between them, share its header.
            if (columns.length > 0 && told.add(table.address(table.headerRow, columns[0]))) {
                notes.add(Finding.note(
                        table.address(table.headerRow, columns[0]),
                        Counted.of(columns.length, table.grid.isTurned() ? "row" : "column") + " of " + name(table)
                                + are(columns) + " read all the same. Delete or rename what is not to count."));
            }
        }
        return notes;
    }

    private static String name(FoundTable table) {
        return table.chief().name();
    }

    private static String are(int[] places) {
        return places.length == 1 ? " is hidden; it is" : " are hidden, this the first; they are";
    }

    /** The columns of the sheet that any of the table's lists takes something from. */
    private static IntStream readColumns(FoundTable table) {
        return table.roles.stream()
                .flatMapToInt(match -> IntStream.range(0, match.headings().length)
                        .filter(i -> match.headings()[i] != null && match.headings()[i].isCertain())
                        .map(i -> match.firstColumn() + i))
                .distinct()
                .sorted();
    }
}
