package org.rickyard.plan.fit;

import java.util.Optional;
import java.util.Set;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Symbol;

/**
 * Takes out of a formula the branches that read what another table was left without. The rest of it stands: a charge by
 * the hectare needs no yield, though one by the tonne does.
 */
final class LeftOutBranches {
    private final Set<Symbol> gone;

    LeftOutBranches(Set<Symbol> gone) {
        this.gone = gone;
    }

    /**
     * The expression, withheld with a reason where a branch was taken out.
     *
     * @param expr one that has a value in some rows at least
     */
    Expr without(Expr expr) {
        if (reading(expr).isEmpty()) {
            return expr;
        } else if (expr instanceof Expr.Choice choice) {
            Optional<Symbol> then = read(choice.then());
            Optional<Symbol> otherwise = read(choice.otherwise());
            if (then.isPresent() && otherwise.isEmpty()) {
                return only(new Condition.Not(choice.when()), without(choice.otherwise()), then.get());
            } else if (otherwise.isPresent() && then.isEmpty()) {
                return only(choice.when(), without(choice.then()), otherwise.get());
            }
            return new Expr.Choice(choice.when(), without(choice.then()), without(choice.otherwise()));
        } else if (expr instanceof Expr.GivenElse given) {
            return read(given.otherwise()).isPresent()
                    ? new Expr.Ref(given.given())
                    : new Expr.GivenElse(given.given(), without(given.otherwise()));
        } else if (expr instanceof Expr.Only only) {
            return new Expr.Only(only.when(), without(only.then()), only.otherwise());
        }
        return expr;
    }

    /** A choice stands at the top of a formula, so what withholds goes into its branches. */
    private static Expr only(Condition when, Expr then, Symbol missing) {
        if (then instanceof Expr.Choice choice) {
            return new Expr.Choice(
                    choice.when(), only(when, choice.then(), missing), only(when, choice.otherwise(), missing));
        } else if (then instanceof Expr.GivenElse given) {
            return new Expr.Choice(
                    new Condition.Given(given.given()),
                    only(when, new Expr.Ref(given.given()), missing),
                    only(when, given.otherwise(), missing));
        }
        return new Expr.Only(when, then, missing + " missing: no list has a column that it could come from");
    }

    /** What an expression cannot do without and that is gone; a choice can do without what one branch alone reads. */
    private Optional<Symbol> read(Expr expr) {
        if (expr instanceof Expr.Choice choice) {
            Optional<Symbol> then = read(choice.then());
            return then.isEmpty() || read(choice.otherwise()).isEmpty() ? Optional.empty() : then;
        } else if (expr instanceof Expr.GivenElse) {
            return Optional.empty();
        } else if (expr instanceof Expr.Only only) {
            return read(only.then());
        }
        return reading(expr);
    }

    private Optional<Symbol> reading(Expr expr) {
        return Inputs.of(expr).stream().filter(gone::contains).findFirst();
    }
}
