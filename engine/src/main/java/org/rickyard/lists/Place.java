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
 * @param headerRow zero-based
 * @param firstRow first data row, zero-based; -1 if there is none
 * @param lastRow last data row, zero-based; -1 if there is none
 * @param rows how many data rows
 * @param columns the columns recognised, in the order of the sheet
 * @param unrecognised headers that mean nothing to the list, in the order of the sheet
 */
public record Place(
        ListSpec list,
        String sheet,
        Optional<String> table,
        int headerRow,
        int firstRow,
        int lastRow,
        int rows,
        List<Column> columns,
        List<String> unrecognised) {

    /**
     * A recognised column.
     *
     * @param column which column of the list
     * @param header its header in the workbook
     * @param sheetColumn zero-based
     * @param unit its unit; empty for words and where it differs from row to row
     * @param assumed whether the unit is the default, the header being silent
     * @param asked whether its meaning or unit is not certain, so that its cells are not used
     */
    public record Column(
            ColumnSpec column, String header, int sheetColumn, Optional<Unit> unit, boolean assumed, boolean asked) {}
}
