package org.rickyard.formula;

import java.util.List;
import org.rickyard.quantity.Unit;

/**
 * A published or remembered table, shown whole on Basis.
 *
 * @param name its name
 * @param keyName what the key column holds
 * @param keyUnit the unit of number keys; plain for words
 * @param valueName what the value column holds
 * @param valueUnit the unit of the values; plain for words
 * @param rows keys in ascending order for step and linear reading
 * @param source where the table comes from
 */
public record ReferenceTable(
        String name, String keyName, Unit keyUnit, String valueName, Unit valueUnit, List<Row> rows, Source source) {

    /**
     * One row; exactly one of the two keys and one of the two values is used.
     *
     * @param key number key, NaN when the key is a word
     * @param word word key, or null
     * @param value number value, NaN when the value is a word
     * @param text word value, or null
     */
    public record Row(double key, String word, double value, String text) {
        /** A number for a number. */
        public static Row of(double key, double value) {
            return new Row(key, null, value, null);
        }

        /** A number for a word. */
        public static Row of(String word, double value) {
            return new Row(Double.NaN, word, value, null);
        }

        /** A word for a number. */
        public static Row of(double key, String text) {
            return new Row(key, null, Double.NaN, text);
        }
    }

    /** Checks that number keys ascend. */
    public ReferenceTable {
        rows = List.copyOf(rows);
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).word() == null
                    && !(rows.get(i).key() > rows.get(i - 1).key())) {
                throw new IllegalArgumentException("the keys of '" + name + "' must ascend");
            }
        }
    }

    /** By its name: formulas that read it are looked up often, and its rows are many. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** Whether keys are words. */
    public boolean wordKeys() {
        return rows.get(0).word() != null;
    }

    /** Whether values are words. */
    public boolean wordValues() {
        return rows.get(0).text() != null;
    }

    /** Whether it does no more than put words in an order: their values are their places, 1, 2, 3 and so on. */
    public boolean ranks() {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).word() == null || rows.get(i).value() != i + 1) {
                return false;
            }
        }
        return true;
    }

    /** The least number key. */
    public double lowestKey() {
        return rows.get(0).key();
    }

    /** The greatest number key. */
    public double highestKey() {
        return rows.get(rows.size() - 1).key();
    }

    /** The row whose word is this, ignoring case as the grid does, or -1. */
    public int find(String word) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).word().equalsIgnoreCase(word)) {
                return i;
            }
        }
        return -1;
    }

    /** The last row whose key is not above x, or -1. */
    public int step(double x) {
        int found = -1;
        for (int i = 0; i < rows.size() && rows.get(i).key() <= x; i++) {
            found = i;
        }
        return found;
    }
}
