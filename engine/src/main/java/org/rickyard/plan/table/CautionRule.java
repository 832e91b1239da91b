package org.rickyard.plan.table;

import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.lists.Finding.Severity;

/**
 * A caution that touches a row when a condition holds; live in the grid and repeated on Checks.
 *
 * @param severity stop or caution
 * @param when when it applies; never where something it asks about has no value
 * @param text what to say, a full sentence
 */
public record CautionRule(Severity severity, Condition when, String text) {

    /** The sentence as a live expression: empty where it does not apply. */
    public Expr sentence() {
        Expr said = Expr.text(marked() + " ");
        return when.equals(Condition.ALWAYS) ? said : Expr.choice(when, said, Expr.text(""));
    }

    /** The sentence with its severity in front, so that it is never told by colour alone. */
    public String marked() {
        return severity + ": " + text;
    }
}
