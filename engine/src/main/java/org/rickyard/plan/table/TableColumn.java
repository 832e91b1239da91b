package org.rickyard.plan.table;

import java.util.List;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Symbol;
import org.rickyard.trade.Quantities;

/** A column of a result table. */
public sealed interface TableColumn {
    /** The quantity or word the column holds. */
    Symbol symbol();

    /** What stands over it. */
    default String label() {
        return symbol().heading();
    }

    /** Whether it serves only to find rows by: a key of ours, or the place of a row in another table. */
    default boolean joinsRows() {
        return this instanceof Key || this instanceof Joined joined && joined.expr() instanceof Expr.Position;
    }

    /** A name, linked to the client's cell. */
    record Name(Symbol symbol, List<Candidate> places) implements TableColumn {}

    /**
     * A word in canonical form, read from the client's text, or the plan's own where there are no places.
     *
     * @param identity whether it tells rows apart, as a name does: a nozzle size, the number of a tankful
     * @param unreadTold whether {@link Quantities#UNREADABLE} stands where something was typed that is none of its words,
     *     since a blank means something
     */
    record Word(Symbol symbol, List<Candidate> places, boolean identity, boolean unreadTold) implements TableColumn {
        /** A word for which nothing stands where what was typed cannot be read. */
        public Word(Symbol symbol, List<Candidate> places, boolean identity) {
            this(symbol, places, identity, false);
        }

        /** A word that tells no rows apart. */
        public Word(Symbol symbol, List<Candidate> places) {
            this(symbol, places, false);
        }

        /** One whose blank means something, so that it must be told from what cannot be read. */
        public static Word tellingUnread(Symbol symbol, Candidate... places) {
            return new Word(symbol, List.of(places), false, true);
        }
    }

    /** A whole number that joins rows; written by us. */
    record Key(Symbol symbol) implements TableColumn {}

    /**
     * A number or day of the client's, linked and brought to the symbol's unit.
     *
     * @param optional whether a blank is no fault, so that blank and unusable must be told apart
     * @param replaced whether something else may stand in for a blank
     */
    record Link(Symbol symbol, List<Candidate> places, boolean optional, boolean replaced) implements TableColumn {
        /** One for which, if it is optional, something else may stand in. */
        public Link(Symbol symbol, List<Candidate> places, boolean optional) {
            this(symbol, places, optional, optional);
        }

        /** An optional one says that it is what was typed, since what is reckoned with may be a default beside it. */
        @Override
        public String label() {
            return TableColumn.super.label() + (replaced ? ", typed" : "");
        }
    }

    /**
     * A formula's value; an answer has its line in the trail, a step stands only beside it.
     *
     * @param formula as this workbook needs it
     * @param result whether it is an answer that every row owes: the status says what it lacks
     * @param aside whether it is an answer that is told where a row has what it takes, and never asked for
     * @param declared as it was declared, with the branches that nothing in this workbook leads to
     */
    record Calculated(Formula formula, boolean result, boolean aside, Formula declared) implements TableColumn {
        /** A formula just as it was declared. */
        public Calculated(Formula formula, boolean result) {
            this(formula, result, false, formula);
        }

        /** An answer that is told where it can be, and never asked for. */
        public static Calculated aside(Formula formula) {
            return new Calculated(formula, false, true, formula);
        }

        /** The same column by another expression, as one workbook needs it. */
        public Calculated by(Expr expr) {
            return expr.equals(formula.expr())
                    ? this
                    : new Calculated(
                            new Formula(
                                    formula.id(),
                                    formula.result(),
                                    expr,
                                    formula.source(),
                                    formula.validity(),
                                    formula.examples()),
                            result,
                            aside,
                            declared);
        }

        @Override
        public Symbol symbol() {
            return formula.result();
        }
    }

    /** A joined or counted value that is no formula of the trade. */
    record Joined(Symbol symbol, Expr expr) implements TableColumn {}

    /**
     * A value that no formula gives: counted in the client's words, planned, or simulated. It is written as it stands,
     * with the method named, and changes only when the workbook is run again.
     *
     * @param result whether it is an answer in itself rather than a step
     * @param because the column of words that says why it found nothing, or null
     * @param bar whether filled cells stand out as the bars of a chart
     */
    record Method(Symbol symbol, org.rickyard.formula.Method method, boolean result, Symbol because, boolean bar)
            implements TableColumn {
        /** One that has no column for why it found nothing. */
        public Method(Symbol symbol, org.rickyard.formula.Method method, boolean result) {
            this(symbol, method, result, null, false);
        }

        /** A result beside a column of words that says why there is none. */
        public static Method result(Symbol symbol, org.rickyard.formula.Method method, Symbol because) {
            return new Method(symbol, method, true, because, false);
        }

        /** A column of a chart. */
        public static Method bar(Symbol symbol, org.rickyard.formula.Method method) {
            return new Method(symbol, method, false, null, true);
        }
    }

    /** A live sentence about the row. */
    record Sentence(Symbol symbol, Expr expr) implements TableColumn {}
}
