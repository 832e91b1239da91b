package org.rickyard.formula;

/** Sums and counts of a column by whole-number keys, in one pass, in row order as the grid sums. */
final class Groups {
    private final double[] sums;
    private final int[] counted;
    private final int[] rows;
    private final int[] firsts;

    private Groups(int keys) {
        sums = new double[keys + 1];
        counted = new int[keys + 1];
        rows = new int[keys + 1];
        firsts = new int[keys + 1];
    }

    /** Groups a column by its keys; without a column, only the rows are counted. */
    static Groups of(Values keys, Values column) {
        int most = 0;
        for (int row = 0; row < keys.rows(); row++) {
            if (keys.has(row)) {
                most = Math.max(most, (int) keys.number(row));
            }
        }
        Groups groups = new Groups(most);
        for (int row = 0; row < keys.rows(); row++) {
            if (!keys.has(row)) {
                continue;
            }
            int key = (int) keys.number(row);
            groups.rows[key]++;
            if (groups.firsts[key] == 0) {
                groups.firsts[key] = row + 1;
            }
            if (column != null && column.has(row)) {
                groups.sums[key] += column.number(row);
                groups.counted[key]++;
            }
        }
        return groups;
    }

    double sum(int key) {
        return known(key) ? sums[key] : 0;
    }

    int counted(int key) {
        return known(key) ? counted[key] : 0;
    }

    int rows(int key) {
        return known(key) ? rows[key] : 0;
    }

    /** The position of the first row with this key, counted from 1; NaN if there is none. */
    double first(int key) {
        return known(key) && firsts[key] > 0 ? firsts[key] : Double.NaN;
    }

    private boolean known(int key) {
        return key >= 0 && key < sums.length;
    }
}
