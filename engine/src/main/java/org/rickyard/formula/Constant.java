package org.rickyard.formula;

import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;

/**
 * A number that somebody could change their mind about. It is shown on Basis with its source, formulas refer to it
 * there, and Assumptions may overrule it by its name.
 *
 * @param name as it stands on Basis
 * @param value as the source has it
 * @param unit what it is in, there and in formulas
 * @param possible what it may be overruled with, in that unit
 * @param source who says so
 */
public record Constant(String name, double value, Unit unit, Range possible, Source source) {
    private static final double WHOLE = 100;

    /** A constant that may be overruled with what {@link #sameKind} allows. */
    public Constant(String name, double value, Unit unit, Source source) {
        this(name, value, unit, sameKind(value, unit), source);
    }

    /** Refuses a value that could not be. */
    public Constant {
        if (!possible.contains(value)) {
            throw new IllegalArgumentException("'" + name + "' is " + value + " and may only be " + possible.words());
        }
    }

    /** The same constant, divided by somewhere, so that it is never zero. */
    public Constant aboveZero() {
        return new Constant(name, value, unit, new Range(0, true, possible.high(), possible.highOpen()), source);
    }

    /** The same constant, where other values are possible. */
    public Constant possible(Range range) {
        return new Constant(name, value, unit, range, source);
    }

    /** A measure stays one, a share stays a share of the whole; only what is below zero may be anything. */
    private static Range sameKind(double value, Unit unit) {
        if (value < 0) {
            return Range.ANY;
        }
        return UnitChecker.isPercent(unit) && value <= WHOLE ? Range.of(0, WHOLE) : Range.NOT_NEGATIVE;
    }
}
