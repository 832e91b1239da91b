package org.rickyard.plan.join;

/** Numbers of rows and of keys: rows are counted from 0 and -1 is none; keys are counted from 1 and 0 is none. */
public final class RowNumbers {
    private RowNumbers() {}

    /** The numbers of so many rows, in order. */
    public static int[] rows(int count) {
        return from(0, count);
    }

    /** So many keys, in order. */
    public static int[] keys(int count) {
        return from(1, count);
    }

    /** The key of each of these rows. */
    public static int[] keysOf(int[] rows) {
        int[] keys = new int[rows.length];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = rows[i] + 1;
        }
        return keys;
    }

    private static int[] from(int first, int count) {
        int[] numbers = new int[count];
        for (int i = 0; i < count; i++) {
            numbers[i] = first + i;
        }
        return numbers;
    }
}
