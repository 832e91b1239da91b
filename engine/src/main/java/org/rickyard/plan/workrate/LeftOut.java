package org.rickyard.plan.workrate;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.plan.table.CautionRule;

/** Says of a holding's total that it is not of all the work: half of the fuel must not pass for the whole. */
public final class LeftOut {
    private LeftOut() {}

    /**
     * The caution.
     *
     * @param what what is summed, in words
     * @param total the sum; where it has no value its own status says why
     * @param leftOut how many rows are not in it
     * @param sheet where those rows stand
     */
    public static CautionRule of(String what, Symbol total, Symbol leftOut, String sheet) {
        return new CautionRule(
                Severity.CAUTION,
                Condition.all(List.of(
                        new Condition.Given(total),
                        Condition.compare(Expr.value(leftOut), Relation.MORE, Expr.number(0)))),
                "some of the listed work has no " + what + " and is not in the holding's " + what + "; see " + sheet
                        + ".");
    }
}
