package org.rickyard.formula;

import java.util.List;

/**
 * A way of finding a value that is no formula: a count in the client's words, a plan day by day, a simulation.
 *
 * @param name kebab-case trade term, stable for ever; the id of the result it gives
 * @param words what it does, so that another could do it again by hand
 * @param source who says so
 * @param reads what it reads: values of the row, constants, and totals for the rows of another table
 */
public record Method(String name, String words, Source source, List<Expr> reads) {
    /** Keeps a copy of what it reads. */
    public Method {
        reads = List.copyOf(reads);
    }

    /** A method that reads nothing but the client's words. */
    public Method(String name, String words, Source source) {
        this(name, words, source, List.of());
    }
}
