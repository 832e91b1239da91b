package org.rickyard.formula;

import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * A named quantity of the trade: one name, one meaning, one unit in which formulas reckon it.
 *
 * @param name in lower case, as it reads inside a formula in words ("working width")
 * @param type what kind of value it has
 * @param unit the unit formulas reckon it in; {@link Units#ONE} for text and plain numbers
 * @param possible values outside cannot be and withhold what depends on them
 * @param usual values outside are computed with, and cautioned
 * @param decimals how many decimals a reader is shown; stored values are never rounded
 */
public record Symbol(String name, Type type, Unit unit, Range possible, Range usual, int decimals) {
    /** Kinds of value. */
    public enum Type {
        /** A number in the symbol's unit. */
        NUMBER,
        /** A word or sentence. */
        TEXT,
        /** A day, as a spreadsheet serial number. */
        DATE
    }

    /** A number of any size, shown with two decimals. */
    public static Symbol number(String name, Unit unit) {
        return new Symbol(name, Type.NUMBER, unit, Range.ANY, Range.ANY, 2);
    }

    /** A text. */
    public static Symbol text(String name) {
        return new Symbol(name, Type.TEXT, Units.ONE, Range.ANY, Range.ANY, 0);
    }

    /** A day. */
    public static Symbol date(String name) {
        return new Symbol(name, Type.DATE, Units.ONE, Range.ANY, Range.ANY, 0);
    }

    /** The same, with the range of possible values. */
    public Symbol possible(Range range) {
        return new Symbol(name, type, unit, range, usual, decimals);
    }

    /** The same, with the range of usual values. */
    public Symbol usual(Range range) {
        return new Symbol(name, type, unit, possible, range, decimals);
    }

    /** The same, with the number of decimals shown. */
    public Symbol decimals(int count) {
        return new Symbol(name, type, unit, possible, usual, count);
    }

    /** The name as a heading begins: with a capital, but for "pH", whose second letter is the capital one. */
    public String heading() {
        return name.length() > 1 && Character.isUpperCase(name.charAt(1))
                ? name
                : Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof Symbol that
                        && name.equals(that.name)
                        && type == that.type
                        && decimals == that.decimals
                        && unit.equals(that.unit)
                        && possible.equals(that.possible)
                        && usual.equals(that.usual);
    }

    /** Names tell symbols apart well enough, and their hashes are kept by the text itself. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
