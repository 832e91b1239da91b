package org.rickyard.plan.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Needed;
import org.rickyard.formula.Symbol;

/**
 * The ways by which a sentence is reached, each a set of conditions that must all hold, kept as few and as short as they
 * can be, for cell formulas are limited in length: what follows from the rest of a way is not asked, a way that no row
 * can take or that only asks for more than another is dropped, and of two ways that part at one condition neither asks
 * for it where the rest is the same.
 */
final class Paths {
    /** Ways beyond which a condition is asked as it stands rather than taken apart. */
    private static final int MOST = 24;

    private final List<Set<Condition>> ways = new ArrayList<>();

    /** The way that asks for nothing. */
    static Paths open() {
        Paths open = new Paths();
        open.ways.add(Set.of());
        return open;
    }

    /** The ways in which all of some conditions hold. */
    static List<Set<Condition>> ways(List<Condition> conditions) {
        List<Set<Condition>> further = List.of(new LinkedHashSet<>());
        for (Condition condition : conditions) {
            List<Set<Condition>> longer = Ways.both(further, Ways.of(condition));
            further = longer.size() > MOST ? Ways.both(further, List.of(Set.of(condition))) : longer;
        }
        return further;
    }

    void add(List<Set<Condition>> further) {
        further.forEach(this::add);
    }

    private void add(Set<Condition> way) {
        Set<Condition> shortest = Ways.withoutWhatFollows(way);
        if (shortest == null || ways.stream().anyMatch(shortest::containsAll)) {
            return;
        }
        ways.removeIf(known -> known.containsAll(shortest));
        for (Set<Condition> known : List.copyOf(ways)) {
            Condition parting = parting(known, shortest);
            if (parting != null) {
                Set<Condition> without = new LinkedHashSet<>(shortest);
                without.remove(parting);
                add(without);
                return;
            }
        }
        ways.add(shortest);
        for (Set<Condition> known : List.copyOf(ways)) {
            Condition parting = known == shortest ? null : parting(shortest, known);
            if (parting != null) {
                Set<Condition> without = new LinkedHashSet<>(known);
                without.remove(parting);
                ways.remove(known);
                add(without);
                return;
            }
        }
    }

    /** What the longer way need not ask, since where it fails the other is open: a, or not a and b, is a or b. */
    private static Condition parting(Set<Condition> one, Set<Condition> longer) {
        for (Condition condition : one) {
            Condition opposite = Ways.opposite(condition);
            // Where a comparison has no answer it is not known that the longer way is open.
            boolean answered =
                    one.size() == longer.size() || Needed.quantities(condition).isEmpty();
            if (answered
                    && longer.contains(opposite)
                    && one.stream().allMatch(other -> other.equals(condition) || longer.contains(other))) {
                return opposite;
            }
        }
        return null;
    }

    /** Whether a way asks for nothing. */
    boolean always() {
        return ways.stream().anyMatch(Set::isEmpty);
    }

    /**
     * The ways apart by the quantities they compare: where one of these is missing a condition has no answer, and another
     * way may be open all the same. What is said anyway is not said again.
     */
    List<Paths> byNeed() {
        Paths anyway = new Paths();
        Map<Set<Symbol>, Paths> needing = new LinkedHashMap<>();
        for (Set<Condition> way : ways) {
            Set<Symbol> needs = Needed.quantities(Condition.all(List.copyOf(way)));
            (needs.isEmpty() ? anyway : needing.computeIfAbsent(needs, any -> new Paths())).ways.add(way);
        }
        if (anyway.ways.isEmpty()) {
            return List.copyOf(needing.values());
        }
        List<Paths> apart = new ArrayList<>(List.of(anyway));
        List<Set<Condition>> elsewhere = List.of(Set.of(new Condition.Not(anyway.condition())));
        for (Paths paths : needing.values()) {
            Paths only = new Paths();
            Ways.both(paths.ways, elsewhere).forEach(only::add);
            apart.add(only);
        }
        return apart;
    }

    /** Whether no row can come there. */
    boolean never() {
        return ways.isEmpty();
    }

    /** What all ways ask for. */
    Set<Condition> common() {
        Set<Condition> common = new LinkedHashSet<>(ways.get(0));
        ways.forEach(common::retainAll);
        return common;
    }

    /** The same ways where a condition that all of them ask for is known to hold. */
    Paths knowing(Condition condition) {
        Paths left = new Paths();
        for (Set<Condition> way : ways) {
            Set<Condition> rest = new LinkedHashSet<>(way);
            rest.remove(condition);
            left.add(rest);
        }
        return left;
    }

    /** Any of the ways, open; what they have in common is asked once. */
    Condition condition() {
        Set<Condition> common = common();
        List<Condition> rests = new ArrayList<>();
        for (Set<Condition> way : ways) {
            rests.add(Condition.all(
                    way.stream().filter(part -> !common.contains(part)).toList()));
        }
        List<Condition> parts = new ArrayList<>(common);
        if (!rests.contains(Condition.ALWAYS)) {
            parts.add(Condition.any(rests));
        }
        return Condition.all(parts);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Paths that && Set.copyOf(ways).equals(Set.copyOf(that.ways));
    }

    @Override
    public int hashCode() {
        return Set.copyOf(ways).hashCode();
    }

    @Override
    public String toString() {
        return ways.stream().map(Set::toString).collect(Collectors.joining(" or "));
    }
}
