package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Machines;
import org.rickyard.lists.header.TypeInTitle;
import org.rickyard.lists.text.Words;

/**
 * Types of machines named in lines between the rows of a list that has no column for them: "Mowers" over the mowers,
 * "Rakes" over the rakes below.
 */
public final class TypesBetween {
    private TypesBetween() {}

    /**
     * Reads a row that holds nothing but one text as such a line. Where the first line stands below the header, all are
     * taken for one, whether the type is known or not; otherwise those that name one, and all that come after one.
     *
     * @return whether it is one
     */
    static boolean isLine(FoundTable table, int row) {
        boolean needed = table.title != null
                && table.chief() == Machines.LIST
                && !table.roles.get(0).holds(Machines.TYPE);
        if (!needed) {
            return false;
        }
        int column = table.firstColumn;
        while (column < table.lastColumn && table.grid.kind(row, column) == Grid.Kind.BLANK) {
            column++;
        }
        if (table.grid.kind(row, column) != Grid.Kind.TEXT) {
            return false;
        }
        Optional<TypeInTitle> type =
                TypeInTitle.of(table.grid.text(row, column), new CellAddress(table.grid.sheet(), row, column));
        boolean below = table.title.cell() != null && table.title.cell().row() > table.headerRow;
        if (!below && table.types.isEmpty() && type.filter(TypeInTitle::several).isEmpty()) {
            return false;
        }
        table.types.put(row, type);
        return true;
    }

    /**
     * The same tables, those of machines parted where a type is named between their rows. What stands under a line that
     * names none is left out and told.
     */
    public static List<FoundTable> parted(List<FoundTable> tables, List<Finding> findings) {
        List<FoundTable> parts = new ArrayList<>();
        for (FoundTable table : tables) {
            if (table.types.isEmpty() || table.count() == 0) {
                parts.add(table);
                continue;
            }
            int from = 0;
            Optional<TypeInTitle> type = Optional.of(table.title);
            for (Map.Entry<Integer, Optional<TypeInTitle>> next : table.types.entrySet()) {
                int to = before(table, from, next.getKey());
                add(table, from, to, type, parts);
                from = to;
                type = next.getValue();
                int end = before(table, from, nextLine(table, next.getKey()));
                if (type.isEmpty() && end > from) {
                    findings.add(unknown(table, next.getKey(), end - from));
                }
            }
            add(table, from, table.count(), type, parts);
        }
        return parts;
    }

    private static int nextLine(FoundTable table, int row) {
        return table.types.tailMap(row + 1).isEmpty()
                ? Integer.MAX_VALUE
                : table.types.tailMap(row + 1).firstKey();
    }

    /** The index of the first row, from one on, that does not stand above a row of the sheet. */
    private static int before(FoundTable table, int from, int row) {
        int to = from;
        while (to < table.count() && table.row(to) < row) {
            to++;
        }
        return to;
    }

    private static void add(FoundTable table, int from, int to, Optional<TypeInTitle> type, List<FoundTable> parts) {
        if (to > from && type.isPresent()) {
            FoundTable part = table.part(from, to, null);
            part.title = type.get();
            part.roles = table.roles.stream().map(type.get()::in).toList();
            parts.add(part);
        }
    }

    private static Finding unknown(FoundTable table, int row, int count) {
        int column = table.firstColumn;
        while (table.grid.kind(row, column) != Grid.Kind.TEXT) {
            column++;
        }
        return Finding.caution(
                table.address(row, column),
                Words.quoted(Words.trim(table.grid.text(row, column))) + " stands over " + count
                        + (count == 1 ? " machine" : " machines") + " and names no one type of machine, so "
                        + (count == 1 ? "it is" : "they are")
                        + " not read. Write the type in its place, or in a column "
                        + Machines.TYPE.name() + ": " + Machines.TYPE.help());
    }
}
