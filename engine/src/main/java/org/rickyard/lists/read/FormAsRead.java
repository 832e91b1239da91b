package org.rickyard.lists.read;

import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.table.FoundTable;

/**
 * What a run reads of a form, by the rows of its sheet: it takes the rows of the list that the form is, each of which
 * stands in a column there.
 */
final class FormAsRead implements AsRead.RowTaker {
    private final FoundTable form;
    private final SortedMap<Integer, SortedMap<Integer, AsRead.How>> cells = new TreeMap<>();

    /** A form, with the cells where a further label or a further thing would be typed. */
    FormAsRead(FoundTable form) {
        this.form = form;
        for (int label = form.firstColumn(); label <= form.lastColumn(); label++) {
            CellAddress last = form.address(form.grid().rows() - 1, label);
            put(last.row(), last.column() + 1, AsRead.How.WORDS);
        }
        labels(form).forEach((column, labels) -> put(labels.last().row() + 1, column, AsRead.How.WORDS));
    }

    /** The labels of a form by the column of the sheet in which they stand below one another. */
    static SortedMap<Integer, SortedSet<CellAddress>> labels(FoundTable form) {
        SortedMap<Integer, SortedSet<CellAddress>> labels = new TreeMap<>();
        for (int label = form.firstColumn(); label <= form.lastColumn(); label++) {
            CellAddress cell = form.address(form.headerRow(), label);
            labels.computeIfAbsent(cell.column(), column -> new TreeSet<>(Comparator.comparingInt(CellAddress::row)))
                    .add(cell);
        }
        return labels;
    }

    @Override
    public void take(int row, List<AsRead.Part> parts) {
        for (AsRead.Part part : parts) {
            if (row < form.grid().rows() && part.column() <= form.lastColumn()) {
                CellAddress cell = form.address(row, part.column());
                put(cell.row(), cell.column(), part.how());
            }
        }
    }

    private void put(int row, int column, AsRead.How how) {
        cells.computeIfAbsent(row, any -> new TreeMap<>()).put(column, how);
    }

    /** The cells that were taken, by rows of the sheet, downwards. */
    SortedMap<Integer, List<AsRead.Part>> rows() {
        SortedMap<Integer, List<AsRead.Part>> rows = new TreeMap<>();
        cells.forEach((row, parts) -> rows.put(
                row,
                parts.entrySet().stream()
                        .map(cell -> new AsRead.Part(cell.getKey(), cell.getValue()))
                        .toList()));
        return rows;
    }
}
