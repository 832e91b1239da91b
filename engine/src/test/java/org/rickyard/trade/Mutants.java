package org.rickyard.trade;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Symbol;

/** The mistakes one makes in writing a formula down: operands swapped, a quotient inverted, one input for another. */
final class Mutants {
    private Mutants() {}

    /**
     * One mistake.
     *
     * @param what in words
     * @param formula the formula with the mistake; empty if the unit check does not let it be declared
     */
    record Mutant(String what, Optional<Formula> formula) {}

    static List<Mutant> of(Formula formula) {
        List<Mutant> mutants = new ArrayList<>();
        List<Object> nodes = new ArrayList<>();
        collect(formula.expr(), nodes);
        for (int i = 0; i < nodes.size(); i++) {
            int at = i;
            swapped(nodes.get(i))
                    .ifPresent(mistake -> mutants.add(new Mutant(
                            mistake.what(),
                            declared(
                                    formula, () -> (Expr) rebuilt(formula.expr(), new int[] {at}, node -> mistake.with()
                                            .make())))));
        }
        List<Symbol> inputs = new ArrayList<>(numbers(nodes));
        for (int i = 0; i < inputs.size(); i++) {
            for (int j = i + 1; j < inputs.size(); j++) {
                Symbol one = inputs.get(i);
                Symbol other = inputs.get(j);
                mutants.add(new Mutant("'" + one + "' and '" + other + "' swapped", declared(formula, () ->
                        (Expr) exchanged(formula.expr(), one, other))));
            }
        }
        return mutants;
    }

    @FunctionalInterface
    private interface Making {
        Object make();
    }

    private record Mistake(String what, Making with) {}

    private static Optional<Mistake> swapped(Object node) {
        if (node instanceof Expr.Quotient e) {
            return Optional.of(new Mistake("a quotient inverted", () -> new Expr.Quotient(e.b(), e.a())));
        } else if (node instanceof Expr.Difference e) {
            return Optional.of(new Mistake("a difference turned round", () -> new Expr.Difference(e.b(), e.a())));
        } else if (node instanceof Expr.Product e) {
            return Optional.of(new Mistake("a product made a quotient", () -> new Expr.Quotient(e.a(), e.b())));
        } else if (node instanceof Expr.Sum e) {
            return Optional.of(new Mistake("a sum made a difference", () -> new Expr.Difference(e.a(), e.b())));
        } else if (node instanceof Expr.Choice e) {
            return Optional.of(new Mistake(
                    "the branches of a choice swapped", () -> new Expr.Choice(e.when(), e.otherwise(), e.then())));
        } else if (node instanceof Expr.Call e) {
            Function other =
                    switch (e.function()) {
                        case ROUND_UP -> Function.ROUND_DOWN;
                        case ROUND_DOWN -> Function.ROUND_UP;
                        case MIN -> Function.MAX;
                        case MAX -> Function.MIN;
                        default -> null;
                    };
            return other == null
                    ? Optional.empty()
                    : Optional.of(new Mistake(
                            e.function().words() + " made " + other.words(),
                            () -> new Expr.Call(other, e.arguments())));
        }
        return Optional.empty();
    }

    private static Set<Symbol> numbers(List<Object> nodes) {
        Set<Symbol> symbols = new LinkedHashSet<>();
        for (Object node : nodes) {
            if (node instanceof Expr.Ref e && e.symbol().type() != Symbol.Type.TEXT) {
                symbols.add(e.symbol());
            } else if (node instanceof Expr.GivenElse e) {
                symbols.add(e.given());
            }
        }
        return symbols;
    }

    /** Empty if the units no longer fit. */
    private static Optional<Formula> declared(Formula formula, Supplier<Expr> making) {
        try {
            return Optional.of(new Formula(
                    formula.id(), formula.result(), making.get(), formula.source(), formula.validity(), List.of()));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    private static Object exchanged(Object part, Symbol one, Symbol other) {
        if (part instanceof Symbol symbol) {
            return symbol.equals(one) ? other : symbol.equals(other) ? one : symbol;
        }
        return copied(part, inner -> exchanged(inner, one, other));
    }

    /** The tree with its at[0]-th node, counted from the top, replaced. */
    private static Object rebuilt(Object part, int[] at, UnaryOperator<Object> replacement) {
        if (isNode(part) && at[0]-- == 0) {
            return replacement.apply(part);
        }
        return copied(part, inner -> rebuilt(inner, at, replacement));
    }

    private static void collect(Object part, List<Object> nodes) {
        if (isNode(part)) {
            nodes.add(part);
        }
        copied(part, inner -> {
            collect(inner, nodes);
            return inner;
        });
    }

    private static boolean isNode(Object part) {
        return part instanceof Expr || part instanceof Condition;
    }

    private static Object copied(Object part, UnaryOperator<Object> inner) {
        if (part instanceof List<?> list) {
            List<Object> copy = new ArrayList<>();
            list.forEach(one -> copy.add(inner.apply(one)));
            return copy;
        }
        if (!isNode(part)) {
            return part;
        }
        try {
            RecordComponent[] components = part.getClass().getRecordComponents();
            Object[] values = new Object[components.length];
            for (int i = 0; i < components.length; i++) {
                values[i] = inner.apply(components[i].getAccessor().invoke(part));
            }
            Constructor<?> constructor = part.getClass()
                    .getDeclaredConstructor(Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class<?>[]::new));
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new AssertionError(refused);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
