package org.rickyard.formula;

import java.util.ArrayList;
import java.util.List;

/** A statement that is true or false of a row. */
public sealed interface Condition {
    /** How two values are compared. */
    enum Relation {
        /** Less than. */
        LESS("<", "below"),
        /** At most. */
        AT_MOST("<=", "at most"),
        /** Greater than. */
        MORE(">", "above"),
        /** At least. */
        AT_LEAST(">=", "at least"),
        /** Equal. */
        EQUAL("=", "equal to"),
        /** Unequal. */
        NOT_EQUAL("<>", "not equal to");

        private final String cell;
        private final String words;

        Relation(String cell, String words) {
            this.cell = cell;
            this.words = words;
        }

        /** As a cell formula writes it. */
        public String cell() {
            return cell;
        }

        /** In words. */
        public String words() {
            return words;
        }

        /** Whether it holds. */
        public boolean holds(double a, double b) {
            return switch (this) {
                case LESS -> a < b;
                case AT_MOST -> a <= b;
                case MORE -> a > b;
                case AT_LEAST -> a >= b;
                case EQUAL -> a == b;
                case NOT_EQUAL -> a != b;
            };
        }
    }

    /** Two numbers compared in the unit of the first. */
    record Compare(Expr a, Relation relation, Expr b) implements Condition {
        /** Refuses different dimensions. */
        public Compare {
            b = UnitChecker.aligned(a, b);
        }
    }

    /** Whether a word is this one, ignoring case as the grid does. */
    record Is(Symbol symbol, String word) implements Condition {}

    /** Whether a quantity has a value. */
    record Given(Symbol symbol) implements Condition {}

    /** Whether a quantity was left blank, as opposed to given but unusable. */
    record Blank(Symbol symbol) implements Condition {}

    /** Whether a reference table can be read at this key without going beyond it. */
    record InTable(ReferenceTable table, Expr key, Expr.Lookup.Mode mode) implements Condition {}

    /** All of these. */
    record All(List<Condition> parts) implements Condition {
        /** Copies the list. */
        public All {
            parts = List.copyOf(parts);
        }
    }

    /** Any of these. */
    record Any(List<Condition> parts) implements Condition {
        /** Copies the list. */
        public Any {
            parts = List.copyOf(parts);
        }
    }

    /** Not this. */
    record Not(Condition condition) implements Condition {}

    /** What holds of every row. */
    Condition ALWAYS = new All(List.of());
    /** What holds of none. */
    Condition NEVER = new Any(List.of());

    /** Whether something was typed for a quantity, usable or not: what is typed must not be passed over in silence. */
    static Condition typed(Symbol symbol) {
        return new Not(new Blank(symbol));
    }

    /** Whether nothing typed for these quantities is unusable: each has a value or was left blank. */
    static Condition usableOrBlank(Symbol... symbols) {
        List<Condition> parts = new ArrayList<>();
        for (Symbol symbol : symbols) {
            parts.add(new Any(List.of(new Given(symbol), new Blank(symbol))));
        }
        return all(parts);
    }

    /** Compares two expressions. */
    static Condition compare(Expr a, Relation relation, Expr b) {
        return new Compare(a, relation, b);
    }

    /** Whether one is above the other, both cut to nine decimals: binary noise at an edge puts nothing above it. */
    static Condition above(Expr a, Expr b) {
        return compare(cut(a), Relation.MORE, cut(b));
    }

    /** Whether one is below the other, cut likewise. */
    static Condition below(Expr a, Expr b) {
        return compare(cut(a), Relation.LESS, cut(b));
    }

    private static Expr cut(Expr expr) {
        return Expr.call(Function.ROUND, expr, Expr.number(Function.NOISE_DECIMALS));
    }

    /** The two ways in which one differs from the other by more than something. */
    static List<Condition> apart(Expr one, Expr other, Expr most) {
        return List.of(compare(one.minus(other), Relation.MORE, most), compare(other.minus(one), Relation.MORE, most));
    }

    /** Whether a word is this one. */
    static Condition is(Symbol symbol, String word) {
        return new Is(symbol, word);
    }

    /** All of these; a single one stands for itself. */
    static Condition all(List<Condition> parts) {
        return parts.size() == 1 ? parts.get(0) : new All(parts);
    }

    /** Any of these; a single one stands for itself. */
    static Condition any(List<Condition> parts) {
        return parts.size() == 1 ? parts.get(0) : new Any(parts);
    }
}
