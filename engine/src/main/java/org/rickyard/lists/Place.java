package org.rickyard.lists;

import java.util.List;
import java.util.Optional;
import org.rickyard.quantity.Unit;

/**
 * Where a list was read from.
 *
 * @param list which list
 * @param sheet the sheet's name
 * @param table the Excel table's name, if it stands in one
 * @param rows how many data rows
 * @param from the first cell of the first data row; empty if there is none
 * @param to the first cell of the last data row; empty if there is none
 * @param onItsSide whether its headers stand below one another, so that its data rows are columns of the sheet
 * @param columns the columns recognised, in the order of the sheet
 * @param unrecognised headers that mean nothing to the list, in the order of the sheet
 */
public record Place(
        ListSpec list,
        String sheet,
        Optional<String> table,
        int rows,
        Optional<CellAddress> from,
        Optional<CellAddress> to,
        boolean onItsSide,
        List<Column> columns,
        List<String> unrecognised) {

    /**
     * A recognised column.
     *
     * @param column which column of the list
     * @param header its header in the workbook
     * @param cell where that stands
     * @param unit its unit; empty for words and where it differs from row to row
     * @param assumed whether the unit is the default, the header being silent
     * @param asked whether its meaning or unit is not certain, so that its cells are not used
     */
    public record Column(
            ColumnSpec column, String header, CellAddress cell, Optional<Unit> unit, boolean assumed, boolean asked) {}

    /** Where the data rows stand on the sheet: "rows 2 to 8", or "columns B to D" of a form; "no rows" if there are none. */
    public String span() {
        if (from.isEmpty() || to.isEmpty()) {
            return "no rows";
        }
        return onItsSide
                ? "columns " + CellAddress.letters(from.get().column()) + " to "
                        + CellAddress.letters(to.get().column())
                : "rows " + (from.get().row() + 1) + " to " + (to.get().row() + 1);
    }

    /** The first header that is recognised. */
    public CellAddress first() {
        return columns.get(0).cell();
    }
}
