package org.rickyard.formula;

import java.util.List;

/**
 * Rewrites conditions for a table in which a quantity that used to be typed is found from several cells: whether it is
 * blank is then no longer seen from one cell.
 *
 * @param quantity what was asked to be blank
 * @param instead the condition that says so now
 */
public record BlankMeaning(Symbol quantity, Condition instead) {
    /** The expression, its conditions rewritten. */
    public Expr in(Expr expr) {
        if (expr instanceof Expr.Choice e) {
            return new Expr.Choice(in(e.when()), in(e.then()), in(e.otherwise()));
        } else if (expr instanceof Expr.GivenElse e) {
            return new Expr.GivenElse(e.given(), in(e.otherwise()));
        } else if (expr instanceof Expr.Only e) {
            return new Expr.Only(in(e.when()), in(e.then()), e.otherwise());
        } else if (expr instanceof Expr.Join e) {
            return new Expr.Join(e.parts().stream().map(this::in).toList());
        } else if (expr instanceof Expr.Scale e) {
            return new Expr.Scale(in(e.a()), e.to());
        }
        // Choices stand at the top of a formula or in a branch of one, never inside arithmetic.
        return expr;
    }

    /** The condition, rewritten. */
    public Condition in(Condition condition) {
        if (condition instanceof Condition.Blank c) {
            return c.symbol().equals(quantity) ? instead : c;
        } else if (condition instanceof Condition.Not c) {
            return new Condition.Not(in(c.condition()));
        } else if (condition instanceof Condition.All c) {
            return Condition.all(parts(c.parts()));
        } else if (condition instanceof Condition.Any c) {
            return Condition.any(parts(c.parts()));
        }
        return condition;
    }

    private List<Condition> parts(List<Condition> parts) {
        return parts.stream().map(this::in).toList();
    }
}
