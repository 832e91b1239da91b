package org.rickyard.plan.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;

/**
 * A sentence, and the ways by which it is reached.
 *
 * @param sentence what is said
 * @param when where it is said
 */
record Said(Expr sentence, Paths when) {

    /** All sentences, one after another, each where it is said; a condition that several share is asked once. */
    static Expr joined(List<Said> sentences) {
        List<Expr> parts = parts(sentences);
        return parts.isEmpty() ? Expr.text("") : parts.size() == 1 ? parts.get(0) : new Expr.Join(parts);
    }

    private static List<Expr> parts(List<Said> sentences) {
        List<Said> left = new ArrayList<>(sentences);
        left.removeIf(said -> said.when().never());
        List<Expr> parts = new ArrayList<>();
        while (!left.isEmpty()) {
            Said first = left.get(0);
            if (first.when().always()) {
                parts.add(first.sentence());
                left.remove(0);
                continue;
            }
            Condition shared = mostShared(first, left);
            List<Said> group = new ArrayList<>();
            for (Said said : List.copyOf(left)) {
                if (shared == null && said.when().equals(first.when())) {
                    group.add(new Said(said.sentence(), Paths.open()));
                    left.remove(said);
                } else if (shared != null && said.when().common().contains(shared)) {
                    group.add(new Said(said.sentence(), said.when().knowing(shared)));
                    left.remove(said);
                }
            }
            Condition condition = shared == null ? first.when().condition() : shared;
            parts.add(Expr.choice(condition, joined(group), Expr.text("")));
        }
        return parts;
    }

    /** The condition of a sentence that most others have in common with it; null if none shares any. */
    private static Condition mostShared(Said first, List<Said> all) {
        Map<Condition, Integer> counts = new LinkedHashMap<>();
        first.when().common().forEach(condition -> counts.put(condition, 0));
        all.forEach(said -> said.when()
                .common()
                .forEach(condition -> counts.computeIfPresent(condition, (same, count) -> count + 1)));
        Condition most = null;
        for (Map.Entry<Condition, Integer> entry : counts.entrySet()) {
            if (entry.getValue() > 1 && (most == null || entry.getValue() > counts.get(most))) {
                most = entry.getKey();
            }
        }
        return most;
    }
}
