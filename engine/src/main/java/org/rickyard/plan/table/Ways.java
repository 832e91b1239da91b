package org.rickyard.plan.table;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.formula.Condition;

/** A condition taken apart: the sets of simple conditions any of which, if all in it hold, makes it hold. */
final class Ways {
    /** Ways of one condition beyond which it is better asked as it stands. */
    private static final int MOST = 12;

    private Ways() {}

    /** The ways in which a condition holds; of very many, the condition itself as the only one. */
    static List<Set<Condition>> of(Condition condition) {
        List<Set<Condition>> ways = apart(condition);
        return ways.size() > MOST ? List.of(Set.of(condition)) : ways;
    }

    private static List<Set<Condition>> apart(Condition condition) {
        if (condition instanceof Condition.Not not) {
            return failing(not.condition());
        } else if (condition instanceof Condition.All all) {
            List<Set<Condition>> ways = List.of(Set.of());
            for (Condition part : all.parts()) {
                ways = both(ways, of(part));
                if (ways.size() > MOST) {
                    return ways;
                }
            }
            return ways;
        } else if (condition instanceof Condition.Any any) {
            List<Set<Condition>> ways = new ArrayList<>();
            any.parts().forEach(part -> ways.addAll(of(part)));
            return ways;
        }
        return List.of(Set.of(condition));
    }

    private static List<Set<Condition>> failing(Condition condition) {
        List<Set<Condition>> ways = failingApart(condition);
        return ways.size() > MOST ? List.of(Set.of(new Condition.Not(condition))) : ways;
    }

    private static List<Set<Condition>> failingApart(Condition condition) {
        if (condition instanceof Condition.Not not) {
            return of(not.condition());
        } else if (condition instanceof Condition.All all) {
            List<Set<Condition>> ways = new ArrayList<>();
            all.parts().forEach(part -> ways.addAll(failing(part)));
            return ways;
        } else if (condition instanceof Condition.Any any) {
            List<Set<Condition>> ways = List.of(Set.of());
            for (Condition part : any.parts()) {
                ways = both(ways, failing(part));
                if (ways.size() > MOST) {
                    return ways;
                }
            }
            return ways;
        }
        return List.of(Set.of(new Condition.Not(condition)));
    }

    /** The ways in which one of these and one of those hold; those that no row can take left out. */
    static List<Set<Condition>> both(List<Set<Condition>> ones, List<Set<Condition>> others) {
        List<Set<Condition>> ways = new ArrayList<>();
        for (Set<Condition> one : ones) {
            for (Set<Condition> other : others) {
                Set<Condition> way = new LinkedHashSet<>(one);
                way.addAll(other);
                Set<Condition> shortest = withoutWhatFollows(way);
                if (shortest != null) {
                    ways.add(shortest);
                }
            }
        }
        return ways;
    }

    static Condition opposite(Condition condition) {
        return condition instanceof Condition.Not not ? not.condition() : new Condition.Not(condition);
    }

    /** A way without what its other conditions say already; null if they contradict each other. */
    static Set<Condition> withoutWhatFollows(Set<Condition> way) {
        Set<Condition> shortest = new LinkedHashSet<>();
        for (Condition condition : way) {
            boolean follows = false;
            for (Condition other : way) {
                if (excludes(other, condition)) {
                    return null;
                }
                follows |= excludes(other, opposite(condition)) && !other.equals(condition);
            }
            if (!follows) {
                shortest.add(condition);
            }
        }
        return shortest;
    }

    /** Whether one condition cannot hold where the other does: opposites, two words in one place, given and blank. */
    private static boolean excludes(Condition one, Condition other) {
        if (other.equals(opposite(one))) {
            return true;
        } else if (one instanceof Condition.Is a && other instanceof Condition.Is b) {
            return a.symbol().equals(b.symbol()) && !a.word().equalsIgnoreCase(b.word());
        } else if (one instanceof Condition.Given a && other instanceof Condition.Blank b) {
            return a.symbol().equals(b.symbol());
        }
        return one instanceof Condition.Blank a
                && other instanceof Condition.Given b
                && a.symbol().equals(b.symbol());
    }
}
