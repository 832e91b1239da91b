package org.rickyard.run;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Evaluator;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.RowValues;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;

/**
 * What must become of each calculated cell when some linked cells lose their value, read off the declarations alone: of
 * a choice only the branch taken counts, a total over what there is only changes. A default or another way may stand in
 * for what is missing, where one is declared, but never for what was typed and cannot be used.
 */
final class Dependence {
    /** A cell of a result table. */
    record Place(String table, int row, Symbol symbol) {}

    /** What becomes of a cell. */
    enum Effect {
        /** It must show no value, as if what it rests on had never been typed. */
        MISSING,
        /** It must show no value, because something typed cannot be used. */
        WITHHELD,
        /** It may hold another value, or none. */
        CHANGED;

        /** Whether the cell has no value any more. */
        boolean isLost() {
            return this != CHANGED;
        }
    }

    private record Column(String table, Symbol symbol) {}

    private record Reader(ResultTable table, Symbol symbol, Expr expr, Set<Column> reads) {}

    private final WorkPlan plan;
    private final SheetPlaces places;
    private final List<Reader> readers = new ArrayList<>();
    private final Map<Place, Effect> effects = new HashMap<>();
    private final Set<Column> touched = new HashSet<>();
    /** Of changed cells, those whose new number is known all the same: counts. */
    private final Map<Place, Double> counted = new HashMap<>();
    /** The column looked at. */
    private Symbol symbol;

    Dependence(WorkPlan plan, SheetPlaces places) {
        this.plan = plan;
        this.places = places;
        for (ResultTable table : plan.tables()) {
            for (TableColumn column : table.spec().columns()) {
                Expr expr = column instanceof TableColumn.Calculated calculated
                        ? calculated.formula().expr()
                        : column instanceof TableColumn.Joined joined ? joined.expr() : null;
                if (expr != null) {
                    readers.add(new Reader(table, column.symbol(), expr, reads(table, expr)));
                }
            }
        }
    }

    private static Set<Column> reads(ResultTable table, Expr expr) {
        Set<Column> reads = new LinkedHashSet<>();
        Inputs.of(expr).forEach(symbol -> reads.add(new Column(table.spec().id(), symbol)));
        others(expr, reads);
        return reads;
    }

    /** The columns of other tables that an expression reads; what joins stands only where a choice may. */
    private static void others(Expr expr, Set<Column> reads) {
        if (expr instanceof Expr.Choice e) {
            others(e.then(), reads);
            others(e.otherwise(), reads);
        } else if (expr instanceof Expr.GivenElse e) {
            others(e.otherwise(), reads);
        } else if (expr instanceof Expr.Only e) {
            others(e.then(), reads);
        } else if (expr instanceof Expr.Total e) {
            reads.add(new Column(e.table(), e.summed()));
        } else if (expr instanceof Expr.Count e) {
            reads.add(new Column(e.table(), e.counted()));
        } else if (expr instanceof Expr.Before e) {
            reads.add(new Column(e.table(), e.summed()));
            reads.add(new Column(e.table(), e.order()));
        } else if (expr instanceof Expr.From e) {
            reads.add(new Column(e.table(), e.symbol()));
        } else if (expr instanceof Expr.Position e) {
            reads.add(new Column(e.table(), e.keyThere()));
        }
    }

    /** The effects on calculated cells of these on linked ones; those not listed must stay as they are. */
    Map<CellAddress, Effect> of(Map<Place, Effect> lost) {
        effects.clear();
        touched.clear();
        counted.clear();
        effects.putAll(lost);
        lost.keySet().forEach(place -> touched.add(new Column(place.table(), place.symbol())));
        Map<CellAddress, Effect> found = new LinkedHashMap<>();
        for (Reader reader : readers) {
            if (Collections.disjoint(reader.reads(), touched)) {
                continue;
            }
            ResultTable table = reader.table();
            symbol = reader.symbol();
            for (int row = 0; row < table.rows(); row++) {
                Effect effect = effect(table, reader.expr(), row);
                // What was withheld before stays so, or comes to life by a default.
                if (effect == Effect.CHANGED
                        || effect != null && table.of(reader.symbol()).has(row)) {
                    effects.put(new Place(table.spec().id(), row, reader.symbol()), effect);
                    touched.add(new Column(table.spec().id(), reader.symbol()));
                    found.put(places.cell(table.spec(), reader.symbol(), row), effect);
                }
            }
        }
        return found;
    }

    private Effect at(ResultTable table, Symbol symbol, int row) {
        return effects.get(new Place(table.spec().id(), row, symbol));
    }

    private static Effect worse(Effect one, Effect other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one == Effect.CHANGED ? other : one == Effect.MISSING && other == Effect.WITHHELD ? other : one;
    }

    private Effect effect(ResultTable table, Expr expr, int row) {
        if (expr instanceof Expr.Choice e) {
            return chosen(table, e.when(), e.then(), e.otherwise(), row);
        } else if (expr instanceof Expr.Only e) {
            return chosen(table, e.when(), e.then(), null, row);
        } else if (expr instanceof Expr.GivenElse e) {
            Effect given = at(table, e.given(), row);
            if (given == Effect.MISSING) {
                return anew(table, e.otherwise(), row);
            }
            return given != null ? given : table.of(e.given()).has(row) ? null : effect(table, e.otherwise(), row);
        } else if (expr instanceof Expr.Total e) {
            return total(table, e, row);
        } else if (expr instanceof Expr.Before e) {
            return before(table, e, row);
        } else if (expr instanceof Expr.Count e) {
            return count(table, e, row);
        } else if (expr instanceof Expr.From e) {
            return from(table, e, row);
        } else if (expr instanceof Expr.Position e) {
            return position(table, e, row);
        } else if (isArithmetic(expr)) {
            return ofInputs(table, Inputs.of(expr), row);
        }
        throw new AssertionError("what becomes of " + expr.getClass().getSimpleName() + " is not said here");
    }

    /** Whether it needs all it reads: of several that are compared, one without value leaves no least one. */
    private static boolean isArithmetic(Expr expr) {
        return expr instanceof Expr.Num
                || expr instanceof Expr.Const
                || expr instanceof Expr.Ref
                || expr instanceof Expr.Sum
                || expr instanceof Expr.Difference
                || expr instanceof Expr.Product
                || expr instanceof Expr.Quotient
                || expr instanceof Expr.Power
                || expr instanceof Expr.Negate
                || expr instanceof Expr.Call
                || expr instanceof Expr.Scale
                || expr instanceof Expr.NumberOf
                || expr instanceof Expr.AsUnit
                || expr instanceof Expr.Lookup
                || expr instanceof Expr.LeastGiven
                || expr instanceof Expr.LabelOfLeast
                || expr instanceof Expr.Text
                || expr instanceof Expr.Label
                || expr instanceof Expr.Join;
    }

    private Effect ofInputs(ResultTable table, Set<Symbol> symbols, int row) {
        Effect worst = null;
        for (Symbol symbol : symbols) {
            worst = worse(worst, at(table, symbol, row));
        }
        return worst;
    }

    /** The effect on an expression that was not asked before: at least another value, if it has one at all. */
    private Effect anew(ResultTable table, Expr expr, int row) {
        Effect effect = expr == null ? Effect.MISSING : effect(table, expr, row);
        return effect != null ? effect : hasValue(table, expr, row) ? Effect.CHANGED : Effect.MISSING;
    }

    private boolean hasValue(ResultTable table, Expr expr, int row) {
        return symbol.type() == Symbol.Type.TEXT
                ? !Evaluator.words(expr, table).at(row).isEmpty()
                : Evaluator.number(expr, table).at(row, new double[1]);
    }

    /** Whether a condition holds. */
    private enum Truth {
        YES,
        NO,
        /** It asks about something that may have changed. */
        UNTOLD,
        /** It asks about something typed that cannot be used. */
        UNUSABLE;

        static Truth of(boolean holds) {
            return holds ? YES : NO;
        }

        Truth not() {
            return this == YES ? NO : this == NO ? YES : this;
        }
    }

    /** Of two, by a condition; null as the second for none. */
    private Effect chosen(ResultTable table, Condition when, Expr then, Expr otherwise, int row) {
        Effect inputs = ofInputs(table, Inputs.of(when), row);
        Boolean before = Evaluator.condition(when, table).at(row);
        if (inputs == null) {
            Expr taken = before == null ? null : before ? then : otherwise;
            return taken == null ? null : effect(table, taken, row);
        }
        for (Symbol symbol : Inputs.of(when)) {
            if (at(table, symbol, row) == Effect.MISSING && asksForValue(when, symbol)) {
                return ofInputs(table, Inputs.of(when), row);
            }
        }
        Truth now = truth(table, when, row);
        if (now == Truth.UNUSABLE) {
            return Effect.WITHHELD;
        }
        if (now == Truth.UNTOLD || before == null) {
            Effect one = anew(table, then, row);
            return one == anew(table, otherwise, row) ? one : Effect.CHANGED;
        }
        Expr taken = now == Truth.YES ? then : otherwise;
        boolean another = (now == Truth.YES) != before;
        return another ? anew(table, taken, row) : taken == null ? null : effect(table, taken, row);
    }

    /** Whether a condition needs a value, rather than only to know whether there is one. */
    private static boolean asksForValue(Condition condition, Symbol symbol) {
        if (condition instanceof Condition.Given || condition instanceof Condition.Blank) {
            return false;
        } else if (condition instanceof Condition.All all) {
            return all.parts().stream().anyMatch(part -> asksForValue(part, symbol));
        } else if (condition instanceof Condition.Any any) {
            return any.parts().stream().anyMatch(part -> asksForValue(part, symbol));
        } else if (condition instanceof Condition.Not not) {
            return asksForValue(not.condition(), symbol);
        }
        return Inputs.of(condition).contains(symbol);
    }

    private Truth truth(ResultTable table, Condition condition, int row) {
        if (condition instanceof Condition.All c) {
            return all(c.parts().stream().map(part -> truth(table, part, row)).toList(), Truth.NO);
        } else if (condition instanceof Condition.Any c) {
            return all(c.parts().stream().map(part -> truth(table, part, row)).toList(), Truth.YES);
        } else if (condition instanceof Condition.Not c) {
            return truth(table, c.condition(), row).not();
        }
        Effect effect = ofInputs(table, Inputs.of(condition), row);
        if (effect == null) {
            Boolean asked = Evaluator.condition(condition, table).at(row);
            return asked == null ? Truth.UNTOLD : Truth.of(asked);
        }
        return switch (effect) {
            case CHANGED -> recounted(table, condition, row);
            case WITHHELD ->
                // What is typed and unusable is typed; of what rests on it, not even that can be told.
                condition instanceof Condition.Blank blank && table.links(blank.symbol()) != null
                        ? Truth.NO
                        : Truth.UNUSABLE;
            case MISSING -> Truth.of(condition instanceof Condition.Blank);
        };
    }

    /** A condition on counts whose new numbers are known. */
    private Truth recounted(ResultTable table, Condition condition, int row) {
        String id = table.spec().id();
        for (Symbol symbol : Inputs.of(condition)) {
            if (at(table, symbol, row) != null && !counted.containsKey(new Place(id, row, symbol))) {
                return Truth.UNTOLD;
            }
        }
        RowValues now = new RowValues() {
            @Override
            public Values of(Symbol symbol) {
                Double count = counted.get(new Place(id, row, symbol));
                Values values = table.of(symbol);
                if (count != null) {
                    values = Values.ofNumbers(table.rows());
                    values.set(row, count);
                }
                return values;
            }

            @Override
            public Values of(String other, Symbol symbol) {
                return table.of(other, symbol);
            }

            @Override
            public double constant(Constant constant) {
                return table.constant(constant);
            }
        };
        Boolean asked = Evaluator.condition(condition, now).at(row);
        return asked == null ? Truth.UNTOLD : Truth.of(asked);
    }

    /** The one truth that decides, if a part has it; else whatever keeps it from being told. */
    private static Truth all(List<Truth> parts, Truth decides) {
        Truth all = decides.not();
        for (Truth part : parts) {
            if (part == decides) {
                return decides;
            }
            all = part == Truth.UNUSABLE || part == Truth.UNTOLD && all != Truth.UNUSABLE ? part : all;
        }
        return all;
    }

    private Effect from(ResultTable table, Expr.From e, int row) {
        Effect moved = at(table, e.position(), row);
        Values position = table.of(e.position());
        return moved != null || !position.has(row)
                ? moved
                : at(plan.table(e.table()), e.symbol(), (int) position.number(row) - 1);
    }

    private Effect position(ResultTable table, Expr.Position e, int row) {
        Effect worst = at(table, e.keyHere(), row);
        ResultTable other = plan.table(e.table());
        for (int there = 0; worst == null && there < other.rows(); there++) {
            worst = at(other, e.keyThere(), there) == null ? null : Effect.CHANGED;
        }
        return worst;
    }

    private Effect count(ResultTable table, Expr.Count e, int row) {
        ResultTable other = plan.table(e.table());
        double key = table.of(e.keyHere()).number(row);
        boolean changed = false;
        boolean known = true;
        int count = 0;
        for (int there = 0; there < other.rows(); there++) {
            if (other.of(e.keyThere()).number(there) == key) {
                Effect effect = at(other, e.counted(), there);
                changed |= effect != null;
                known &= effect != Effect.CHANGED;
                boolean has = other.of(e.counted()).has(there) && effect == null;
                count += has != e.missing() ? 1 : 0;
            }
        }
        if (changed && known) {
            counted.put(new Place(table.spec().id(), row, symbol), (double) count);
        }
        return changed ? Effect.CHANGED : null;
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
            left += other.of(column).has(there) && (effect == null || !effect.isLost()) ? 1 : 0;
        }
        return worst == null ? null : whole || left == 0 ? worst : Effect.CHANGED;
    }
}
