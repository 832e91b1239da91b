package org.rickyard.formula;

/**
 * A way of finding a value that is no formula: a count in the client's words, a plan day by day, a simulation.
 *
 * @param name kebab-case trade term, stable for ever
 * @param words what it does, so that another could do it again by hand
 * @param source who says so
 */
public record Method(String name, String words, Source source) {}
