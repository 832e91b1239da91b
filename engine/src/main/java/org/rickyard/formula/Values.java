package org.rickyard.formula;

/** The values of one column of a table, row by row, with what became of each. */
public final class Values {
    /** What became of a value, as the grid can tell it. */
    public enum State {
        /** There is a value. */
        VALUE,
        /** Nothing was given. */
        BLANK,
        /** Something was given that cannot be used: impossible, not a number, an error, or to be asked. */
        UNUSABLE,
        /** A formula whose guard did not let it through. */
        WITHHELD
    }

    private static final State[] STATES = State.values();

    private final double[] numbers;
    private final byte[] states;
    private final String[] texts;

    private Values(int rows, boolean words) {
        numbers = words ? null : new double[rows];
        texts = words ? new String[rows] : null;
        states = new byte[rows];
    }

    /** Room for numbers. */
    public static Values ofNumbers(int rows) {
        return new Values(rows, false);
    }

    /** Room for words. */
    public static Values ofWords(int rows) {
        return new Values(rows, true);
    }

    /** How many rows. */
    public int rows() {
        return states.length;
    }

    /** Whether the column holds words. */
    public boolean words() {
        return texts != null;
    }

    /** Sets a number. */
    public void set(int row, double number) {
        numbers[row] = number;
        states[row] = (byte) State.VALUE.ordinal();
    }

    /** Sets a word; the empty word is blank. */
    public void set(int row, String word) {
        texts[row] = word;
        states[row] = (byte) (word.isEmpty() ? State.BLANK : State.VALUE).ordinal();
    }

    /** Marks a row as having no value. */
    public void mark(int row, State state) {
        states[row] = (byte) state.ordinal();
    }

    /** What became of a row. */
    public State state(int row) {
        return STATES[states[row]];
    }

    /** Whether the row has a value. */
    public boolean has(int row) {
        return states[row] == 0;
    }

    /** The number; meaningful only if {@link #has}. */
    public double number(int row) {
        return numbers[row];
    }

    /** The word, or "" if there is none. */
    public String word(int row) {
        return texts[row] == null ? "" : texts[row];
    }
}
