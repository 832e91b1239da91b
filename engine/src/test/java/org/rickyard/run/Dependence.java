package org.rickyard.run;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.ResultTable;
import org.rickyard.plan.SheetPlaces;
import org.rickyard.plan.TableColumn;
import org.rickyard.plan.WorkPlan;

/**
 * What must become of each calculated cell when some linked cells lose their value, read off the declarations alone: of
 * a choice only the branch taken counts, a default steps in for a blank, a total over what there is only changes.
 */
final class Dependence {
    /** A cell of a result table. */
    record Place(String table, int row, Symbol symbol) {}

    /** What becomes of a cell. */
    enum Effect {
        /** It must show nothing. */
        WITHHELD,
        /** It may hold another value. */
        CHANGED
    }

    private final WorkPlan plan;
    private final SheetPlaces places;
    private Map<Place, Effect> effects;

    Dependence(WorkPlan plan, SheetPlaces places) {
        this.plan = plan;
        this.places = places;
    }

    /** The effects on calculated cells; those not listed must stay as they are. */
    Map<CellAddress, Effect> of(Set<Place> lost, boolean defaulted) {
        effects = new HashMap<>();
        lost.forEach(place -> effects.put(place, defaulted ? Effect.CHANGED : Effect.WITHHELD));
        Map<CellAddress, Effect> found = new LinkedHashMap<>();
        for (ResultTable table : plan.tables()) {
            for (TableColumn column : table.spec().columns()) {
                Expr expr = column instanceof TableColumn.Calculated calculated
                        ? calculated.formula().expr()
                        : column instanceof TableColumn.Joined joined ? joined.expr() : null;
                if (expr == null) {
                    continue;
                }
                for (int row = 0; row < table.rows(); row++) {
                    Effect effect = effect(table, expr, row);
                    // What was withheld before stays so, or comes to life by a default.
                    boolean given = table.of(column.symbol()).has(row);
                    if (effect != null && given) {
                        effects.put(new Place(table.spec().id(), row, column.symbol()), effect);
                        found.put(places.cell(table.spec(), column.symbol(), row), effect);
                    } else if (effect == Effect.CHANGED) {
                        found.put(places.cell(table.spec(), column.symbol(), row), effect);
                    }
                }
            }
        }
        return found;
    }

    private Effect at(ResultTable table, Symbol symbol, int row) {
        return effects.get(new Place(table.spec().id(), row, symbol));
    }

    private static Effect worse(Effect one, Effect other) {
        return one == Effect.WITHHELD || other == null ? one : other;
    }

    private Effect effect(ResultTable table, Expr expr, int row) {
        if (expr instanceof Expr.Choice e) {
            Effect condition = condition(table, e.when(), row);
            if (condition != null) {
                return condition;
            }
            Boolean taken =
                    org.rickyard.formula.Evaluator.condition(e.when(), table).at(row);
            return taken == null ? null : effect(table, taken ? e.then() : e.otherwise(), row);
        } else if (expr instanceof Expr.GivenElse e) {
            Effect given = at(table, e.given(), row);
            return given != null ? given : table.of(e.given()).has(row) ? null : effect(table, e.otherwise(), row);
        } else if (expr instanceof Expr.Total e) {
            return total(table, e, row);
        } else if (expr instanceof Expr.Before e) {
            return before(table, e, row);
        } else if (expr instanceof Expr.Count e) {
            ResultTable other = plan.table(e.table());
            return rows(other, e.keyThere(), table.of(e.keyHere()), row, e.counted(), false) == null
                    ? null
                    : Effect.CHANGED;
        } else if (expr instanceof Expr.From e) {
            Values position = table.of(e.position());
            return position.has(row) ? at(plan.table(e.table()), e.symbol(), (int) position.number(row) - 1) : null;
        } else if (expr instanceof Expr.Position) {
            return null;
        }
        Effect worst = null;
        for (Symbol symbol : Inputs.of(expr)) {
            worst = worse(worst, at(table, symbol, row));
        }
        return worst;
    }

    /** A condition that asks whether something is given changes its answer; any other cannot be asked any more. */
    private Effect condition(ResultTable table, Condition condition, int row) {
        if (condition instanceof Condition.Given || condition instanceof Condition.Blank) {
            Effect effect = null;
            for (Symbol symbol : Inputs.of(condition)) {
                effect = worse(effect, at(table, symbol, row));
            }
            return effect == null ? null : Effect.CHANGED;
        }
        Effect worst = null;
        List<Condition> parts = condition instanceof Condition.All all
                ? all.parts()
                : condition instanceof Condition.Any any
                        ? any.parts()
                        : condition instanceof Condition.Not not ? List.of(not.condition()) : List.of();
        for (Condition part : parts) {
            worst = worse(worst, condition(table, part, row));
        }
        if (parts.isEmpty()) {
            for (Symbol symbol : Inputs.of(condition)) {
                worst = worse(worst, at(table, symbol, row));
            }
        }
        return worst;
    }

    private Effect total(ResultTable table, Expr.Total e, int row) {
        return rows(plan.table(e.table()), e.keyThere(), table.of(e.keyHere()), row, e.summed(), e.whole());
    }

    /** A running total is withheld as soon as one row before it is. */
    private Effect before(ResultTable table, Expr.Before e, int row) {
        ResultTable other = plan.table(e.table());
        double key = table.of(e.key()).number(row);
        double order = table.of(e.order()).number(row);
        Effect worst = worse(at(table, e.key(), row), at(table, e.order(), row));
        for (int there = 0; there < other.rows(); there++) {
            if (other.of(e.key()).number(there) == key) {
                worst = worse(worst, at(other, e.order(), there));
            }
            if (other.of(e.key()).number(there) == key && other.of(e.order()).number(there) < order) {
                worst = worse(worst, at(other, e.summed(), there));
            }
        }
        return worst;
    }

    private Effect rows(ResultTable other, Symbol keyThere, Values keysHere, int row, Symbol column, boolean whole) {
        Effect worst = null;
        int left = 0;
        for (int there = 0; there < other.rows(); there++) {
            if (other.of(keyThere).number(there) != keysHere.number(row)) {
                continue;
            }
            Effect effect = at(other, column, there);
            worst = worse(worst, effect);
            left += other.of(column).has(there) && effect != Effect.WITHHELD ? 1 : 0;
        }
        return worst == null ? null : whole || left == 0 ? worst : Effect.CHANGED;
    }
}
