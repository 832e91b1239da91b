package org.rickyard.formula;

import org.rickyard.quantity.Unit;

/**
 * A number that somebody could change their mind about. It is shown on Basis with its source, formulas refer to it
 * there, and Assumptions may overrule it by its name.
 */
public record Constant(String name, double value, Unit unit, Source source) {}
