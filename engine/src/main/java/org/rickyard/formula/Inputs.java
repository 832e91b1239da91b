package org.rickyard.formula;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads which quantities, constants and tables an expression uses, in reading order. */
public final class Inputs {
    private final Set<Symbol> symbols = new LinkedHashSet<>();
    private final Set<Constant> constants = new LinkedHashSet<>();
    private final Set<ReferenceTable> tables = new LinkedHashSet<>();
    private final Set<String> others = new LinkedHashSet<>();
    private final Map<String, Set<Symbol>> there = new LinkedHashMap<>();

    private Inputs() {}

    /** All that an expression reads. */
    public static Inputs in(Expr expr) {
        Inputs inputs = new Inputs();
        inputs.expr(expr);
        return inputs;
    }

    /** All that a condition reads. */
    public static Inputs in(Condition condition) {
        Inputs inputs = new Inputs();
        inputs.condition(condition);
        return inputs;
    }

    /** The quantities and words of the same row. */
    public Set<Symbol> symbols() {
        return symbols;
    }

    /** The constants. */
    public Set<Constant> constants() {
        return constants;
    }

    /** The reference tables. */
    public Set<ReferenceTable> tables() {
        return tables;
    }

    /** The quantities and words of the same row. */
    public static Set<Symbol> of(Expr expr) {
        return in(expr).symbols;
    }

    /** The quantities and words of the same row that a condition reads. */
    public static Set<Symbol> of(Condition condition) {
        return in(condition).symbols;
    }

    /** The constants. */
    public static Set<Constant> constantsOf(Expr expr) {
        return in(expr).constants;
    }

    /** The reference tables. */
    public static Set<ReferenceTable> tablesOf(Expr expr) {
        return in(expr).tables;
    }

    /** The columns it reads of the table with this id, by totals, counts and joins; which may be its own. */
    public static Set<Symbol> of(String table, Expr expr) {
        return in(expr).there.getOrDefault(table, Set.of());
    }

    /** The columns it reads of each table, by totals, counts and joins. */
    public static Map<String, Set<Symbol>> ofOthers(Expr expr) {
        return in(expr).there;
    }

    /** The ids of the other tables it reads. */
    public static Set<String> otherTablesOf(Expr expr) {
        return in(expr).others;
    }

    private void expr(Expr expr) {
        if (expr instanceof Expr.Ref e) {
            symbols.add(e.symbol());
        } else if (expr instanceof Expr.Const e) {
            constants.add(e.constant());
        } else if (expr instanceof Expr.Sum e) {
            both(e.a(), e.b());
        } else if (expr instanceof Expr.Difference e) {
            both(e.a(), e.b());
        } else if (expr instanceof Expr.Product e) {
            both(e.a(), e.b());
        } else if (expr instanceof Expr.Quotient e) {
            both(e.a(), e.b());
        } else if (expr instanceof Expr.Power e) {
            expr(e.base());
        } else if (expr instanceof Expr.Negate e) {
            expr(e.a());
        } else if (expr instanceof Expr.Scale e) {
            expr(e.a());
        } else if (expr instanceof Expr.NumberOf e) {
            expr(e.a());
        } else if (expr instanceof Expr.AsUnit e) {
            expr(e.a());
        } else if (expr instanceof Expr.Call e) {
            e.arguments().forEach(this::expr);
        } else if (expr instanceof Expr.Choice e) {
            condition(e.when());
            both(e.then(), e.otherwise());
        } else if (expr instanceof Expr.Only e) {
            condition(e.when());
            expr(e.then());
        } else if (expr instanceof Expr.GivenElse e) {
            symbols.add(e.given());
            expr(e.otherwise());
        } else if (expr instanceof Expr.Lookup e) {
            tables.add(e.table());
            expr(e.key());
        } else if (expr instanceof Expr.Join e) {
            e.parts().forEach(this::expr);
        } else if (expr instanceof Expr.LeastGiven e) {
            symbols.addAll(e.symbols());
        } else if (expr instanceof Expr.LabelOfLeast e) {
            symbols.addAll(e.symbols());
        } else if (expr instanceof Expr.Total e) {
            there(e.table(), e.summed(), e.keyThere());
            symbols.add(e.keyHere());
        } else if (expr instanceof Expr.Before e) {
            there(e.table(), e.summed(), e.key(), e.order());
            symbols.add(e.key());
            symbols.add(e.order());
        } else if (expr instanceof Expr.Count e) {
            there(e.table(), e.counted(), e.keyThere());
            symbols.add(e.keyHere());
        } else if (expr instanceof Expr.Position e) {
            there(e.table(), e.keyThere());
            symbols.add(e.keyHere());
        } else if (expr instanceof Expr.From e) {
            there(e.table(), e.symbol());
            symbols.add(e.position());
        }
    }

    private void there(String table, Symbol... read) {
        others.add(table);
        there.computeIfAbsent(table, any -> new LinkedHashSet<>()).addAll(List.of(read));
    }

    private void both(Expr a, Expr b) {
        expr(a);
        expr(b);
    }

    private void condition(Condition condition) {
        if (condition instanceof Condition.Compare c) {
            both(c.a(), c.b());
        } else if (condition instanceof Condition.Is c) {
            symbols.add(c.symbol());
        } else if (condition instanceof Condition.Given c) {
            symbols.add(c.symbol());
        } else if (condition instanceof Condition.Blank c) {
            symbols.add(c.symbol());
        } else if (condition instanceof Condition.InTable c) {
            tables.add(c.table());
            expr(c.key());
        } else if (condition instanceof Condition.All c) {
            c.parts().forEach(this::condition);
        } else if (condition instanceof Condition.Any c) {
            c.parts().forEach(this::condition);
        } else if (condition instanceof Condition.Not c) {
            condition(c.condition());
        }
    }
}
