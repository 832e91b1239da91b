package org.rickyard.formula;

import java.util.List;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitMismatchException;
import org.rickyard.quantity.Units;

/**
 * An expression over named quantities. It is data: everything that is done with it (evaluating, printing a cell
 * formula, words, numbers) is a reader of this tree. Units are checked as a node is made, so an expression that adds
 * metres to hectares cannot exist.
 *
 * <p>A quantity in per cent enters arithmetic as a fraction: cells print {@code F8/100}, numbers {@code 80 %}.
 */
public sealed interface Expr {

    /** The unit of this expression's value; {@link Units#ONE} for words. */
    default Unit unit() {
        return UnitChecker.unitOf(this);
    }

    /** A number that is universal (2, 3, π): no one can change their mind about it. */
    record Num(double value) implements Expr {}

    /** A named constant, shown on Basis. */
    record Const(Constant constant) implements Expr {}

    /** A named quantity of the same row. */
    record Ref(Symbol symbol) implements Expr {}

    /** a + b, b brought to the unit of a. */
    record Sum(Expr a, Expr b) implements Expr {
        /** Refuses different dimensions. */
        public Sum {
            b = UnitChecker.aligned(a, b);
        }
    }

    /** a − b, b brought to the unit of a. */
    record Difference(Expr a, Expr b) implements Expr {
        /** Refuses different dimensions. */
        public Difference {
            b = UnitChecker.aligned(a, b);
        }
    }

    /** a × b. */
    record Product(Expr a, Expr b) implements Expr {}

    /** a ÷ b. */
    record Quotient(Expr a, Expr b) implements Expr {}

    /** a to a whole power. */
    record Power(Expr base, int exponent) implements Expr {}

    /** −a. */
    record Negate(Expr a) implements Expr {}

    /** A function of the closed list. */
    record Call(Function function, List<Expr> arguments) implements Expr {
        /** Checks the number and units of the arguments. */
        public Call {
            arguments = UnitChecker.arguments(function, arguments);
        }

        /** Whether it does no more than take binary noise off a number. */
        boolean isFreedOfNoise() {
            return function == Function.ROUND && arguments.get(1).equals(number(Function.NOISE_DECIMALS));
        }
    }

    /** The same value in another unit of the same dimension. */
    record Scale(Expr a, Unit to) implements Expr {
        /** Refuses different dimensions. */
        public Scale {
            if (!a.unit().isCompatible(to)) {
                throw new UnitMismatchException(a.unit(), to);
            }
        }
    }

    /**
     * The bare number of units in a value ("the number of kW"), or a bare number given a unit back; how empirical
     * expressions step out of and into units.
     */
    record NumberOf(Expr a, Unit in) implements Expr {
        /** Refuses a unit of another dimension. */
        public NumberOf {
            if (!a.unit().isCompatible(in)) {
                throw new UnitMismatchException(a.unit(), in);
            }
        }
    }

    /** A bare number read as so many of a unit. */
    record AsUnit(Expr a, Unit unitGiven) implements Expr {
        /** Refuses anything but a bare number. */
        public AsUnit {
            if (!a.unit().isSameScale(Units.ONE)) {
                throw new UnitMismatchException(a.unit(), Units.ONE);
            }
        }
    }

    /** One of two, by a condition. Stands only at the top of a formula or directly inside another choice. */
    record Choice(Condition when, Expr then, Expr otherwise) implements Expr {
        /** Refuses branches of different dimensions. */
        public Choice {
            otherwise = UnitChecker.aligned(then, otherwise);
        }
    }

    /**
     * The given value, or else another; records which. A given value that is impossible is not replaced. Its
     * value is in the given quantity's own unit, per cent included. Stands only where a choice may.
     */
    record GivenElse(Symbol given, Expr otherwise) implements Expr {
        /** Refuses different dimensions. */
        public GivenElse {
            otherwise = UnitChecker.in(otherwise, given.unit());
        }
    }

    /** A value only where a condition holds; elsewhere it is withheld, and {@code otherwise} says why. */
    record Only(Condition when, Expr then, String otherwise) implements Expr {}

    /**
     * A reading of a reference table. A word key must come from a closed list of words, as word columns do: the grid's
     * MATCH would read a client's own {@code m*} as a pattern.
     */
    record Lookup(ReferenceTable table, Expr key, Mode mode) implements Expr {
        /** How a table is read between its keys. */
        public enum Mode {
            /** The row of this very key. */
            EXACT,
            /** The last row whose key is not above. */
            STEP,
            /** On the straight line between two rows; never beyond the first or last. */
            LINEAR
        }

        /** Brings the key to the table's key unit. */
        public Lookup {
            key = table.wordKeys() ? key : UnitChecker.in(key, table.keyUnit());
        }
    }

    /** A word or sentence. */
    record Text(String text) implements Expr {}

    /** The label over a column of the same table, as words: shorter in every row than the words themselves. */
    record Label(Symbol symbol, String text) implements Expr {}

    /** Texts one after another. */
    record Join(List<Expr> parts) implements Expr {
        /** Copies the list. */
        public Join {
            parts = List.copyOf(parts);
        }
    }

    /**
     * The total of a column of another table over the rows that carry this row's key.
     *
     * @param table id of the other table
     * @param summed the column summed
     * @param keyThere the key column there
     * @param keyHere the key column here
     * @param whole true: withheld as soon as one row there is withheld; false: sums what there is
     */
    record Total(String table, Symbol summed, Symbol keyThere, Symbol keyHere, boolean whole) implements Expr {}

    /**
     * How many rows of another table carry this row's key and have a value in the counted column (or, with
     * {@code missing}, have none).
     */
    record Count(String table, Symbol counted, Symbol keyThere, Symbol keyHere, boolean missing) implements Expr {}

    /**
     * The total of a column of a table over the rows of this row's key that come before this row by a whole-number
     * order: a running total that sorting does not disturb. 0 where none comes before; withheld as soon as one of
     * them has no value, or a row of the key no order. Stands only at the top of a formula.
     *
     * @param table id of the table, which may be the row's own
     * @param summed the column summed
     * @param key the key column, of the same symbol there and here
     * @param order the whole-number order, of the same symbol there and here
     */
    record Before(String table, Symbol summed, Symbol key, Symbol order) implements Expr {}

    /**
     * The position of the row of another table whose key is this row's key; 1 is its first data row. Withheld where no
     * row there carries the key. Stands only at the top of a formula.
     */
    record Position(String table, Symbol keyThere, Symbol keyHere) implements Expr {}

    /** The least of those quantities of the row that have a value; withheld if none has. */
    record LeastGiven(List<Symbol> symbols) implements Expr {
        /** Refuses quantities in different units, which could not be told apart in a cell. */
        public LeastGiven {
            symbols = UnitChecker.alike(symbols);
        }
    }

    /** The label of the least of those quantities of the row that have a value; of equals the first named. */
    record LabelOfLeast(List<Symbol> symbols, List<String> labels) implements Expr {
        /** Refuses quantities in different units, and labels that do not match. */
        public LabelOfLeast {
            symbols = UnitChecker.alike(symbols);
            labels = List.copyOf(labels);
            if (labels.size() != symbols.size()) {
                throw new IllegalArgumentException("each quantity needs its label");
            }
        }
    }

    /** A quantity of the row of another table at a position found before. Stands only at the top of a formula. */
    record From(String table, Symbol symbol, Symbol position) implements Expr {}

    // The shorthand with which formulas are declared.

    /** A universal number. */
    static Expr number(double value) {
        return new Num(value);
    }

    /** A quantity of this row. */
    static Expr value(Symbol symbol) {
        return new Ref(symbol);
    }

    /** A named constant. */
    static Expr constant(Constant constant) {
        return new Const(constant);
    }

    /** A word. */
    static Expr text(String text) {
        return new Text(text);
    }

    /** this + other. */
    default Expr plus(Expr other) {
        return new Sum(this, other);
    }

    /** this + other. */
    default Expr plus(Symbol other) {
        return plus(value(other));
    }

    /** this − other. */
    default Expr minus(Expr other) {
        return new Difference(this, other);
    }

    /** this − other. */
    default Expr minus(Symbol other) {
        return minus(value(other));
    }

    /** this × other. */
    default Expr times(Expr other) {
        return new Product(this, other);
    }

    /** this × other. */
    default Expr times(Symbol other) {
        return times(value(other));
    }

    /** this ÷ other. */
    default Expr over(Expr other) {
        return new Quotient(this, other);
    }

    /** this ÷ other. */
    default Expr over(Symbol other) {
        return over(value(other));
    }

    /** this to a whole power. */
    default Expr power(int exponent) {
        return new Power(this, exponent);
    }

    /** The same in another unit. */
    default Expr in(Unit unit) {
        return new Scale(this, unit);
    }

    /** A function of this and more. */
    static Expr call(Function function, Expr... arguments) {
        return new Call(function, List.of(arguments));
    }

    /** The least. */
    static Expr least(Expr... arguments) {
        return call(Function.MIN, arguments);
    }

    /** The greatest. */
    static Expr greatest(Expr... arguments) {
        return call(Function.MAX, arguments);
    }

    /** One of two. */
    static Expr choice(Condition when, Expr then, Expr otherwise) {
        return new Choice(when, then, otherwise);
    }

    /** This, only where a condition holds. */
    default Expr onlyWhen(Condition when, String otherwise) {
        return new Only(when, this, otherwise);
    }

    /** The given value, or else another. */
    static Expr given(Symbol symbol, Expr otherwise) {
        return new GivenElse(symbol, otherwise);
    }
}
