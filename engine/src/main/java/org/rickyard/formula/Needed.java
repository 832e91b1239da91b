package org.rickyard.formula;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** What an expression without choices needs before it has a value, for those who say why it has none. */
public final class Needed {
    private Needed() {}

    /** The number quantities that must have a value. */
    public static Set<Symbol> quantities(Expr expr) {
        return Needs.of(expr).quantities();
    }

    /** The number quantities a condition asks about. */
    public static Set<Symbol> quantities(Condition condition) {
        return Needs.of(condition).quantities();
    }

    /** Further conditions, each with what to say where it fails. */
    public static Map<Condition, String> requirements(Expr expr) {
        Map<Condition, String> requirements = new LinkedHashMap<>();
        Needs.of(expr).requirements().forEach(r -> requirements.put(r.condition(), r.otherwise()));
        return requirements;
    }
}
