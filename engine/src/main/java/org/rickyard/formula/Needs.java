package org.rickyard.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.rickyard.formula.Condition.Relation;

/**
 * What an arithmetic expression needs before it may be evaluated: quantities that must have a value, and conditions
 * such as a divisor other than zero. The guard of a cell, the evaluator and the status text all come from here.
 */
final class Needs {
    /** A condition and what to say where it fails. */
    record Requirement(Condition condition, String otherwise) {}

    private final Set<Symbol> quantities = new LinkedHashSet<>();
    private final List<Requirement> requirements = new ArrayList<>();

    private Needs() {}

    static Needs of(Expr expr) {
        Needs needs = new Needs();
        needs.read(expr);
        return needs;
    }

    static Needs of(Condition condition) {
        Needs needs = new Needs();
        needs.read(condition);
        return needs;
    }

    /** Number quantities that must have a value. */
    Set<Symbol> quantities() {
        return quantities;
    }

    List<Requirement> requirements() {
        return requirements;
    }

    /**
     * The requirements in the turns by which they may be asked: one that has itself no meaning where another fails, such
     * as a quotient that must not be zero, comes after it.
     */
    List<List<Requirement>> turns() {
        Map<Integer, List<Requirement>> turns = new TreeMap<>();
        for (Requirement requirement : requirements) {
            turns.computeIfAbsent(turn(requirement.condition()), turn -> new ArrayList<>())
                    .add(requirement);
        }
        return List.copyOf(turns.values());
    }

    private static int turn(Condition condition) {
        return of(condition).requirements.stream()
                .mapToInt(inner -> 1 + turn(inner.condition()))
                .max()
                .orElse(0);
    }

    private void require(Condition condition, String otherwise) {
        // Where a formula says itself what to do, the sentence about the table that it looks into is not said too.
        if (requirements.stream().noneMatch(known -> known.condition().equals(condition))) {
            requirements.add(new Requirement(condition, otherwise));
        }
    }

    private void read(Expr expr) {
        if (expr instanceof Expr.Ref e) {
            if (e.symbol().type() != Symbol.Type.TEXT) {
                quantities.add(e.symbol());
            }
        } else if (expr instanceof Expr.Sum e) {
            both(e.a(), e.b());
        } else if (expr instanceof Expr.Difference e) {
            both(e.a(), e.b());
        } else if (expr instanceof Expr.Product e) {
            both(e.a(), e.b());
        } else if (expr instanceof Expr.Quotient e) {
            both(e.a(), e.b());
            if (!Signs.positive(e.b())) {
                require(
                        Condition.compare(e.b(), Relation.NOT_EQUAL, new Expr.AsUnit(new Expr.Num(0), e.b().unit())),
                        WordsPrinter.words(e.b()) + " is zero");
            }
        } else if (expr instanceof Expr.Power e) {
            read(e.base());
            if (e.exponent() < 0 && !Signs.positive(e.base())) {
                require(
                        Condition.compare(
                                e.base(),
                                Relation.NOT_EQUAL,
                                new Expr.AsUnit(new Expr.Num(0), e.base().unit())),
                        WordsPrinter.words(e.base()) + " is zero");
            }
        } else if (expr instanceof Expr.Negate e) {
            read(e.a());
        } else if (expr instanceof Expr.Scale e) {
            read(e.a());
        } else if (expr instanceof Expr.NumberOf e) {
            read(e.a());
        } else if (expr instanceof Expr.AsUnit e) {
            read(e.a());
        } else if (expr instanceof Expr.Only e) {
            read(e.when());
            require(e.when(), e.otherwise());
            read(e.then());
        } else if (expr instanceof Expr.Call e) {
            call(e);
        } else if (expr instanceof Expr.Lookup e) {
            read(e.key());
            require(
                    new Condition.InTable(e.table(), e.key(), e.mode()),
                    WordsPrinter.words(e.key()) + " is not in the table '"
                            + e.table().name() + "'");
        } else if (expr instanceof Expr.LeastGiven e) {
            List<Condition> given = new ArrayList<>();
            e.symbols().forEach(symbol -> given.add(new Condition.Given(symbol)));
            // Names may hold commas of their own.
            String names = e.symbols().stream().map(Symbol::name).collect(Collectors.joining("; "));
            require(Condition.any(given), "none of these has a value: " + names);
        } else if (expr instanceof Expr.Join e) {
            e.parts().forEach(this::read);
        } else if (expr instanceof Expr.Choice
                || expr instanceof Expr.GivenElse
                || expr instanceof Expr.Position
                || expr instanceof Expr.From
                || expr instanceof Expr.Total
                || expr instanceof Expr.Before
                || expr instanceof Expr.Count) {
            throw new IllegalArgumentException(expr.getClass().getSimpleName()
                    + " stands only at the top of a formula; give it a column of its own");
        }
    }

    private void both(Expr a, Expr b) {
        read(a);
        read(b);
    }

    private void call(Expr.Call call) {
        call.arguments().forEach(this::read);
        Expr first = call.arguments().get(0);
        Expr zero = new Expr.AsUnit(new Expr.Num(0), first.unit());
        if (call.function() == Function.SQRT && !Signs.notNegative(first)) {
            require(Condition.compare(first, Relation.AT_LEAST, zero), WordsPrinter.words(first) + " is below zero");
        }
        if (call.function() == Function.LN && !Signs.positive(first)) {
            require(Condition.compare(first, Relation.MORE, zero), WordsPrinter.words(first) + " is not above zero");
        }
    }

    private void read(Condition condition) {
        if (condition instanceof Condition.Compare c) {
            both(c.a(), c.b());
        } else if (condition instanceof Condition.All c) {
            c.parts().forEach(this::read);
        } else if (condition instanceof Condition.Any c) {
            c.parts().forEach(this::read);
        } else if (condition instanceof Condition.Not c) {
            read(c.condition());
        } else if (condition instanceof Condition.InTable c) {
            read(c.key());
        }
    }
}
