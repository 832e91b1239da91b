package org.rickyard.workbook.follow;

import java.util.Arrays;

/** A growing list of places in the workbook: sheet, row, column and an optional mark, without an object each. */
final class PlaceList {
    private static final int COLUMN_BITS = 14;
    private static final int ROW_BITS = 20;

    private long[] places = new long[256];
    private int[] ends = {};
    private int size;

    int size() {
        return size;
    }

    void add(int sheet, int row, int column) {
        if (size == places.length) {
            places = Arrays.copyOf(places, size + (size >> 1));
        }
        places[size++] = ((long) sheet << ROW_BITS | row) << COLUMN_BITS | column;
    }

    /** Adds a place with the index at which its entries in another list end. */
    void add(int sheet, int row, int column, int end) {
        add(sheet, row, column);
        if (ends.length < size) {
            ends = Arrays.copyOf(ends, places.length);
        }
        ends[size - 1] = end;
    }

    int sheet(int index) {
        return (int) (places[index] >>> ROW_BITS + COLUMN_BITS);
    }

    int row(int index) {
        return (int) (places[index] >>> COLUMN_BITS) & (1 << ROW_BITS) - 1;
    }

    int column(int index) {
        return (int) places[index] & (1 << COLUMN_BITS) - 1;
    }

    int end(int index) {
        return ends[index];
    }
}
