package org.rickyard.lists;

import java.util.Optional;
import org.rickyard.quantity.Unit;

/** One column of the rows of a list, for those who ask many of its cells. As {@link ListRows} answers. */
public interface ListColumn {
    /** The state of a cell. */
    ListRows.State state(int row);

    /** As {@link ListRows#number}. */
    double number(int row);

    /** As {@link ListRows#text}. */
    String text(int row);

    /** As {@link ListRows#typed}. */
    String typed(int row);

    /** As {@link ListRows#unit}; null where that is empty. */
    Unit unit(int row);

    /** As {@link ListRows#productUnit}. */
    Optional<String> productUnit(int row);

    /** As {@link ListRows#cellScale}. */
    int cellScale(int row);

    /** As {@link ListRows#address}. */
    Optional<CellAddress> address(int row);

    /** Whether any of its first so many rows is read from a column of a sheet. */
    default boolean isReadFrom(String sheet, int sheetColumn, int rows) {
        for (int row = 0; row < rows; row++) {
            Optional<CellAddress> cell = address(row);
            if (cell.isPresent()
                    && cell.get().column() == sheetColumn
                    && cell.get().sheet().equalsIgnoreCase(sheet)) {
                return true;
            }
        }
        return false;
    }
}
