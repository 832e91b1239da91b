package org.rickyard.workbook.meaning;

import java.util.Arrays;

/** A formula in its normal form: characters, and numbers by their bits. Filled anew for each formula. */
final class NormalText {
    private long[] values = new long[256];
    private int size;

    NormalText clear() {
        size = 0;
        return this;
    }

    void add(long value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size * 2);
        }
        values[size++] = value;
    }

    int size() {
        return size;
    }

    long value(int index) {
        return values[index];
    }
}
