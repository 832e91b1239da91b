package org.rickyard.workbook.notation;

import org.rickyard.lists.CellAddress;

/** A rectangle of cells on one sheet; rows and columns are zero-based and included. */
public record CellArea(String sheet, int firstRow, int firstColumn, int lastRow, int lastColumn) {
    /** The area that two opposite corners span, whichever comes first. */
    static CellArea between(String sheet, int row, int column, int otherRow, int otherColumn) {
        return new CellArea(
                sheet,
                Math.min(row, otherRow),
                Math.min(column, otherColumn),
                Math.max(row, otherRow),
                Math.max(column, otherColumn));
    }

    /** Whether the place lies in the area. */
    public boolean contains(int row, int column) {
        return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
    }

    /** Whether the area is one cell. */
    public boolean single() {
        return firstRow == lastRow && firstColumn == lastColumn;
    }

    /** The upper left cell. */
    public CellAddress first() {
        return new CellAddress(sheet, firstRow, firstColumn);
    }

    /** As read aloud: {@code Fields!C5} or {@code Fields!C5:D9}. */
    @Override
    public String toString() {
        return first() + (single() ? "" : ":" + CellAddress.letters(lastColumn) + (lastRow + 1));
    }
}
