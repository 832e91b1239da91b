package org.rickyard.audit;

import java.util.function.BiFunction;
import java.util.function.IntPredicate;
import org.rickyard.formula.Evaluator;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Values;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableColumn.Calculated;

/** Tells in which rows a step stands on a default because nothing was typed. */
public final class DefaultsUsed {
    private DefaultsUsed() {}

    /** For each row of a column, whether a constant or table stands in for what was not typed. */
    public static IntPredicate in(ResultTable table, TableColumn column) {
        if (!(column instanceof Calculated calculated)) {
            return row -> false;
        }
        Values values = table.of(column.symbol());
        // A default stands by itself where the workbook has no column for what it stands in for.
        IntPredicate stands = standsIn(table, calculated.declared().expr());
        return stands == null ? row -> false : row -> values.has(row) && stands.test(row);
    }

    /** How many rows of a column stand on a default. */
    public static int count(ResultTable table, TableColumn column) {
        IntPredicate stands = in(table, column);
        int count = 0;
        for (int row = 0; row < table.rows(); row++) {
            count += stands.test(row) ? 1 : 0;
        }
        return count;
    }

    /** Null where no branch has a default. */
    private static IntPredicate standsIn(ResultTable table, Expr expr) {
        if (expr instanceof Expr.GivenElse given) {
            IntPredicate instead = isDefault(table, given.otherwise());
            Values typed = table.of(given.given());
            return instead == null ? null : row -> !typed.has(row) && instead.test(row);
        }
        return expr instanceof Expr.Choice choice ? either(table, choice, DefaultsUsed::standsIn) : null;
    }

    /** Where what stands in for an input is itself a default: not where it is worked out of another one that was typed. */
    private static IntPredicate isDefault(ResultTable table, Expr expr) {
        if (expr instanceof Expr.GivenElse) {
            return standsIn(table, expr);
        }
        if (expr instanceof Expr.Choice choice) {
            return either(table, choice, DefaultsUsed::isDefault);
        }
        if (expr instanceof Expr.Only only) {
            // A bound that a value is held against stands in for nothing.
            return isDefault(table, only.then());
        }
        boolean known =
                !Inputs.constantsOf(expr).isEmpty() || !Inputs.tablesOf(expr).isEmpty();
        return known ? row -> true : null;
    }

    private static IntPredicate either(
            ResultTable table, Expr.Choice choice, BiFunction<ResultTable, Expr, IntPredicate> ask) {
        IntPredicate then = ask.apply(table, choice.then());
        IntPredicate otherwise = ask.apply(table, choice.otherwise());
        if (then == null && otherwise == null) {
            return null;
        }
        Evaluator.TruthAt when = table.truth(choice.when());
        return row -> {
            Boolean taken = when.at(row);
            IntPredicate branch = taken == null ? null : taken ? then : otherwise;
            return branch != null && branch.test(row);
        };
    }
}
