package org.rickyard.formula;

import org.rickyard.quantity.Unit;

/** Prints an expression with the numbers of one row: {@code 10 × 3 × 80 % ÷ 10}. Of a choice, the branch taken. */
public final class NumbersPrinter extends WordsPrinter {
    private static final String PERCENT = " %";

    private final RowValues values;
    private final int row;

    private NumbersPrinter(RowValues values, int row) {
        this.values = values;
        this.row = row;
    }

    /** The expression with the numbers of a row; a quantity without value appears by its name. */
    public static String numbers(Expr expr, RowValues values, int row) {
        return new NumbersPrinter(values, row).print(expr, 1);
    }

    @Override
    protected String quantity(Symbol symbol) {
        Values column = values.of(symbol);
        if (!column.has(row)) {
            return "(" + symbol.name() + ": none)";
        }
        return shown(column, row, symbol);
    }

    @Override
    protected String constant(Constant constant) {
        return number(values.constant(constant), constant.unit());
    }

    @Override
    protected String percents(Expr stored) {
        String number = print(stored, 1);
        return number.endsWith(PERCENT) ? number.substring(0, number.length() - PERCENT.length()) : number;
    }

    @Override
    protected String choice(Expr.Choice e) {
        Boolean taken = values.truth(e.when()).at(row);
        if (taken == null) {
            return super.choice(e);
        }
        Expr branch = taken ? e.then() : e.otherwise();
        // A verdict in words says nothing without the figures it was found by.
        return branch instanceof Expr.Text
                ? condition(e.when()) + (taken ? "? yes: " : "? no: ") + print(branch, 1)
                : print(branch, 1);
    }

    /** A figure that does not hold would be taken for the answer. */
    @Override
    protected String only(Expr.Only e, int least) {
        return Boolean.FALSE.equals(values.truth(e.when()).at(row))
                ? "(none: " + e.otherwise() + ")"
                : super.only(e, least);
    }

    @Override
    protected String givenElse(Expr.GivenElse e) {
        return values.of(e.given()).has(row) ? quantity(e.given()) : print(e.otherwise(), 1);
    }

    @Override
    protected String lookup(Expr.Lookup e) {
        double[] found = new double[1];
        if (e.table().wordValues()) {
            return "'" + e.table().name() + "' at " + print(e.key(), 3);
        }
        return Evaluator.number(new Expr.Scale(e, e.table().valueUnit()), values)
                        .at(row, found)
                ? number(found[0], e.table().valueUnit()) + " (from '"
                        + e.table().name() + "')"
                : super.lookup(e);
    }

    @Override
    protected String from(Expr.From e) {
        Values column = values.of(e.table(), e.symbol());
        Values position = values.of(e.position());
        if (!position.has(row)) {
            return super.from(e);
        }
        int there = (int) position.number(row) - 1;
        if (!column.has(there)) {
            return super.from(e);
        }
        return shown(column, there, e.symbol());
    }

    private String shown(Values column, int at, Symbol symbol) {
        if (column.words()) {
            return column.word(at);
        }
        return symbol.type() == Symbol.Type.DATE
                ? Days.text(column.number(at), values.dayZero())
                : number(column.number(at), symbol.unit());
    }

    private static String number(double value, Unit unit) {
        return Numbers.readable(value) + (UnitChecker.isPercent(unit) ? PERCENT : "");
    }
}
