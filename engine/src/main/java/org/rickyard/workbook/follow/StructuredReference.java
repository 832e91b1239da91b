package org.rickyard.workbook.follow;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid.TableRange;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.read.TableParts;

/** What a table reference such as {@code Loads[[#This Row],[Weight]]} means on the sheet. */
final class StructuredReference {
    private StructuredReference() {}

    /**
     * The cells that the bracketed part means.
     *
     * @param brackets from the first opening bracket to its closing one
     * @param at the cell whose formula it stands in
     * @return the area; empty where it means nothing, as {@code #Totals} of a table without totals row
     */
    static Optional<CellArea> area(TableParts.Table table, String brackets, CellAddress at) {
        TableRange range = table.range();
        int firstColumn = -1;
        int lastColumn = -1;
        boolean thisRow = false;
        boolean headers = false;
        boolean data = false;
        boolean totals = false;
        for (String item : items(brackets)) {
            String word = item.strip();
            switch (word.toLowerCase(Locale.ROOT)) {
                case "#this row", "@" -> thisRow = true;
                case "#headers" -> headers = true;
                case "#data" -> data = true;
                case "#totals" -> totals = true;
                case "#all" -> {
                    headers = true;
                    data = true;
                    totals = true;
                }
                default -> {
                    thisRow |= word.startsWith("@");
                    int column = column(table, word.startsWith("@") ? word.substring(1) : item);
                    if (column >= 0) {
                        firstColumn = firstColumn < 0 ? column : Math.min(firstColumn, column);
                        lastColumn = Math.max(lastColumn, column);
                    }
                }
            }
        }
        if (firstColumn < 0) {
            firstColumn = range.firstColumn();
            lastColumn = range.lastColumn();
        }
        int dataFirst = range.firstRow() + range.headerRows();
        int dataLast = range.lastRow() - range.totalsRows();
        data |= !headers && !totals;
        int first = headers ? range.firstRow() : data ? dataFirst : dataLast + 1;
        int last = totals ? range.lastRow() : data ? dataLast : dataFirst - 1;
        if (thisRow && at.row() >= range.firstRow() && at.row() <= range.lastRow()) {
            first = at.row();
            last = at.row();
        }
        return last < first
                ? Optional.empty()
                : Optional.of(new CellArea(table.sheet(), first, firstColumn, last, lastColumn));
    }

    private static int column(TableParts.Table table, String name) {
        for (int i = 0; i < table.columns().size(); i++) {
            if (table.columns().get(i).equalsIgnoreCase(name)) {
                return table.range().firstColumn() + i;
            }
        }
        return -1;
    }

    /** The innermost bracketed texts with their escapes undone; the whole inside where there are none. */
    private static List<String> items(String brackets) {
        List<String> items = new ArrayList<>();
        StringBuilder item = new StringBuilder();
        boolean nested = false;
        int depth = 0;
        for (int i = 0; i < brackets.length(); i++) {
            char c = brackets.charAt(i);
            if (c == '\'' && i + 1 < brackets.length()) {
                i++;
                item.append(brackets.charAt(i));
            } else if (c == '[') {
                depth++;
                nested |= depth > 1;
                // An @ may stand before an inner bracket: [@[Wet weight]].
                boolean thisRow = depth > 1 && item.toString().strip().equals("@");
                item.setLength(0);
                if (thisRow) {
                    items.add("@");
                }
            } else if (c == ']') {
                if (depth > 1 || !nested) {
                    items.add(item.toString());
                }
                item.setLength(0);
                depth--;
            } else {
                item.append(c);
            }
        }
        return items;
    }
}
