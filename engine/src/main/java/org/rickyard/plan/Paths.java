package org.rickyard.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Needed;
import org.rickyard.formula.Symbol;

/**
 * The ways by which a sentence is reached, each a set of conditions that must all hold, kept as few and as short as they
 * can be: a way that only asks for more than another is dropped, and two that differ in one condition and its opposite
 * are one without it. Cell formulas are limited in length.
 */
final class Paths {
    private final List<Set<Condition>> ways = new ArrayList<>();

    void add(List<Condition> conditions) {
        add(new LinkedHashSet<>(conditions));
    }

    private void add(Set<Condition> way) {
        for (Set<Condition> known : ways) {
            if (way.containsAll(known)) {
                return;
            }
        }
        ways.removeIf(known -> known.containsAll(way));
        for (Set<Condition> known : ways) {
            Set<Condition> joined = joined(known, way);
            if (joined != null) {
                add(joined);
                return;
            }
        }
        ways.add(way);
    }

    /** Two ways without the one condition in which they say the opposite; null if they differ in more. */
    private static Set<Condition> joined(Set<Condition> one, Set<Condition> other) {
        if (one.size() != other.size()) {
            return null;
        }
        Set<Condition> left = new LinkedHashSet<>(one);
        left.removeAll(other);
        if (left.size() != 1 || !other.contains(opposite(left.iterator().next()))) {
            return null;
        }
        Set<Condition> joined = new LinkedHashSet<>(one);
        joined.removeAll(left);
        return joined;
    }

    private static Condition opposite(Condition condition) {
        return condition instanceof Condition.Not not ? not.condition() : new Condition.Not(condition);
    }

    /** Whether a way asks for nothing. */
    boolean always() {
        return ways.stream().anyMatch(Set::isEmpty);
    }

    /**
     * Any of the ways, open. Ways that compare different quantities are asked one by one, for where one quantity is
     * missing a condition has no answer, and another way may be open all the same.
     */
    List<Condition> conditions() {
        Map<Set<Symbol>, List<Condition>> byNeed = new LinkedHashMap<>();
        byNeed.put(Set.of(), new ArrayList<>());
        for (Set<Condition> way : ways) {
            Condition open = Condition.all(List.copyOf(way));
            byNeed.computeIfAbsent(Needed.quantities(open), need -> new ArrayList<>())
                    .add(open);
        }
        List<Condition> anyway = byNeed.remove(Set.of());
        List<Condition> conditions = new ArrayList<>();
        if (!anyway.isEmpty()) {
            conditions.add(Condition.any(anyway));
        }
        // What is said anyway is not said again.
        byNeed.values()
                .forEach(open -> conditions.add(
                        anyway.isEmpty()
                                ? Condition.any(open)
                                : Condition.all(
                                        List.of(new Condition.Not(Condition.any(anyway)), Condition.any(open)))));
        return conditions;
    }
}
