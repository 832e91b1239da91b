package org.rickyard.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is known in one branch of nested choices: which conditions hold there, which do not, and which quantities must
 * have a value for a row to get that far.
 */
record Branch(Set<Condition> holds, Set<Condition> failing, Set<Symbol> has, List<Needs.Requirement> requirements) {
    /** Outside any choice nothing is known. */
    static final Branch NONE = new Branch(Set.of(), Set.of(), Set.of(), List.of());

    /** Inside, where the condition holds. */
    Branch then(Condition when) {
        return with(when, true);
    }

    /** Inside, where it does not. */
    Branch otherwise(Condition when) {
        return with(when, false);
    }

    private Branch with(Condition when, boolean truth) {
        Set<Condition> holding = new LinkedHashSet<>(holds);
        Set<Condition> not = new LinkedHashSet<>(failing);
        know(when, truth, holding, not);
        Needs needs = Needs.of(when);
        Set<Symbol> given = new LinkedHashSet<>(has);
        given.addAll(needs.quantities());
        List<Needs.Requirement> met = new ArrayList<>(requirements);
        met.addAll(needs.requirements());
        return new Branch(holding, not, given, met);
    }

    private static void know(Condition condition, boolean truth, Set<Condition> holding, Set<Condition> not) {
        (truth ? holding : not).add(condition);
        if (condition instanceof Condition.Not inner) {
            know(inner.condition(), !truth, holding, not);
        } else if (condition instanceof Condition.All all && truth) {
            all.parts().forEach(part -> know(part, true, holding, not));
        } else if (condition instanceof Condition.Any any && !truth) {
            any.parts().forEach(part -> know(part, false, holding, not));
        }
    }

    /** Whether a condition cannot hold here: it failed before, or asks for another word than the one there is. */
    boolean fails(Condition condition) {
        if (failing.contains(condition)) {
            return true;
        }
        return holds.stream().anyMatch(held -> excludes(held, condition));
    }

    private static boolean excludes(Condition held, Condition condition) {
        if (held instanceof Condition.Is one && condition instanceof Condition.Is other) {
            return one.symbol().equals(other.symbol()) && !one.word().equalsIgnoreCase(other.word());
        } else if (held instanceof Condition.Given given && condition instanceof Condition.Blank blank) {
            return given.symbol().equals(blank.symbol());
        }
        return held instanceof Condition.Blank blank
                && condition instanceof Condition.Given given
                && given.symbol().equals(blank.symbol());
    }
}
