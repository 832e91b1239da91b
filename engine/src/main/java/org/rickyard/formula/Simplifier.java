package org.rickyard.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;

/**
 * Rewrites an expression for a table in which some quantities can have no value in any row, because the workbook has no
 * column for them: a default stands by itself, a choice on what is never given is decided, a sentence that never applies
 * goes. In every row the new expression has the value of the old one, or withholds where the old one did.
 *
 * <p>Where the old one can have no value at all it is left asking for what it lacks, see {@link #never(Expr)}.
 */
public final class Simplifier {
    private final Set<Symbol> absent;
    private final Map<Symbol, Set<String>> words;
    private final BiPredicate<String, Symbol> absentThere;
    private Branch branch = Branch.NONE;

    /**
     * A simplifier of one table's expressions.
     *
     * @param absent the quantities and words of its rows that never have a value
     * @param words of its word columns that can hold only some words, which; see {@link #words(Expr)}
     * @param absentThere whether a column of another table never has a value
     */
    public Simplifier(Set<Symbol> absent, Map<Symbol, Set<String>> words, BiPredicate<String, Symbol> absentThere) {
        this.absent = absent;
        this.words = words;
        this.absentThere = absentThere;
    }

    /** The words an expression can give, besides none; empty where they cannot be told from the expression alone. */
    public static Optional<Set<String>> words(Expr expr) {
        if (expr instanceof Expr.Text e) {
            return Optional.of(Set.of(e.text()));
        } else if (expr instanceof Expr.Only e) {
            return words(e.then());
        } else if (expr instanceof Expr.Choice e) {
            Optional<Set<String>> otherwise = words(e.otherwise());
            return words(e.then()).filter(any -> otherwise.isPresent()).map(then -> {
                Set<String> both = new LinkedHashSet<>(then);
                both.addAll(otherwise.get());
                return both;
            });
        }
        return Optional.empty();
    }

    /** The expression without what never has a value. */
    public Expr simplify(Expr expr) {
        if (expr instanceof Expr.Choice e) {
            return choice(e);
        } else if (expr instanceof Expr.GivenElse e) {
            return givenElse(e);
        } else if (expr instanceof Expr.Only e) {
            return only(e);
        } else if (expr instanceof Expr.LeastGiven e) {
            List<Symbol> left = present(e.symbols());
            return left.size() == 1 ? new Expr.Ref(left.get(0)) : left.isEmpty() ? e : new Expr.LeastGiven(left);
        } else if (expr instanceof Expr.LabelOfLeast e) {
            return labelOfLeast(e);
        } else if (expr instanceof Expr.Join e) {
            return join(e);
        } else if (expr instanceof Expr.Sum e) {
            return new Expr.Sum(simplify(e.a()), simplify(e.b()));
        } else if (expr instanceof Expr.Difference e) {
            return new Expr.Difference(simplify(e.a()), simplify(e.b()));
        } else if (expr instanceof Expr.Product e) {
            return new Expr.Product(simplify(e.a()), simplify(e.b()));
        } else if (expr instanceof Expr.Quotient e) {
            return new Expr.Quotient(simplify(e.a()), simplify(e.b()));
        } else if (expr instanceof Expr.Power e) {
            return new Expr.Power(simplify(e.base()), e.exponent());
        } else if (expr instanceof Expr.Negate e) {
            return new Expr.Negate(simplify(e.a()));
        } else if (expr instanceof Expr.Scale e) {
            return new Expr.Scale(simplify(e.a()), e.to());
        } else if (expr instanceof Expr.NumberOf e) {
            return new Expr.NumberOf(simplify(e.a()), e.in());
        } else if (expr instanceof Expr.AsUnit e) {
            return new Expr.AsUnit(simplify(e.a()), e.unitGiven());
        } else if (expr instanceof Expr.Call e) {
            return new Expr.Call(
                    e.function(), e.arguments().stream().map(this::simplify).toList());
        } else if (expr instanceof Expr.Lookup e) {
            return new Expr.Lookup(e.table(), simplify(e.key()), e.mode());
        } else if (expr instanceof Expr.Count e && absentThere.test(e.table(), e.counted())) {
            // None has a value: the rows without one are all that carry the key.
            return e.missing()
                    ? new Expr.Count(e.table(), e.keyThere(), e.keyThere(), e.keyHere(), false)
                    : new Expr.Num(0);
        }
        return expr;
    }

    private Expr choice(Expr.Choice e) {
        if (asksForAbsent(e.when())) {
            return e;
        }
        Condition when = simplify(e.when());
        Branch here = branch;
        branch = here.then(e.when());
        Expr then = simplify(e.then());
        branch = here.otherwise(e.when());
        Expr otherwise = simplify(e.otherwise());
        branch = here;
        if (when.equals(Condition.ALWAYS)) {
            return then;
        } else if (when.equals(Condition.NEVER)) {
            return otherwise;
        }
        return isEmptyText(then) && isEmptyText(otherwise) ? then : new Expr.Choice(when, then, otherwise);
    }

    /** What nothing can stand in for is asked for itself. */
    private Expr givenElse(Expr.GivenElse e) {
        Expr otherwise = simplify(e.otherwise());
        if (absent.contains(e.given())) {
            return otherwise;
        }
        return never(otherwise)
                ? UnitChecker.in(new Expr.Ref(e.given()), e.given().unit())
                : new Expr.GivenElse(e.given(), otherwise);
    }

    private Expr only(Expr.Only e) {
        Condition when = simplify(e.when());
        Expr then = simplify(e.then());
        if (when.equals(Condition.ALWAYS)) {
            return then;
        }
        return new Expr.Only(when.equals(Condition.NEVER) ? e.when() : when, then, e.otherwise());
    }

    private Expr labelOfLeast(Expr.LabelOfLeast e) {
        List<Symbol> left = present(e.symbols());
        if (left.isEmpty()) {
            return new Expr.Text("");
        }
        List<String> labels = new ArrayList<>();
        for (int i = 0; i < e.symbols().size(); i++) {
            if (!absent.contains(e.symbols().get(i))) {
                labels.add(e.labels().get(i));
            }
        }
        return new Expr.LabelOfLeast(left, labels);
    }

    private Expr join(Expr.Join e) {
        List<Expr> parts = new ArrayList<>();
        for (Expr part : e.parts()) {
            Expr simple = simplify(part);
            if (!never(simple)) {
                parts.add(simple);
            }
        }
        return parts.size() == 1 ? parts.get(0) : parts.isEmpty() ? new Expr.Text("") : new Expr.Join(parts);
    }

    private List<Symbol> present(List<Symbol> symbols) {
        return symbols.stream().filter(symbol -> !absent.contains(symbol)).toList();
    }

    private static boolean isEmptyText(Expr expr) {
        return expr instanceof Expr.Text text && text.text().isEmpty();
    }

    /** Whether a simplified expression has no value in any row. */
    public boolean never(Expr expr) {
        if (expr instanceof Expr.Choice e) {
            return asksForAbsent(e.when()) || never(e.then()) && never(e.otherwise());
        } else if (expr instanceof Expr.GivenElse e) {
            return absent.contains(e.given()) && never(e.otherwise());
        } else if (expr instanceof Expr.Only e) {
            return asksForAbsent(e.when()) || simplify(e.when()).equals(Condition.NEVER) || never(e.then());
        } else if (expr instanceof Expr.LeastGiven e) {
            return present(e.symbols()).isEmpty();
        } else if (expr instanceof Expr.LabelOfLeast e) {
            return present(e.symbols()).isEmpty();
        } else if (expr instanceof Expr.Join e) {
            return e.parts().stream().allMatch(this::never);
        } else if (expr instanceof Expr.Text) {
            return isEmptyText(expr);
        } else if (expr instanceof Expr.Total e) {
            return absentThere.test(e.table(), e.summed());
        } else if (expr instanceof Expr.From e) {
            return absent.contains(e.position()) || absentThere.test(e.table(), e.symbol());
        } else if (expr instanceof Expr.Before || expr instanceof Expr.Count || expr instanceof Expr.Position) {
            return false;
        } else if (expr instanceof Expr.Lookup e && e.table().wordKeys()) {
            return never(e.key()) && e.table().find("") < 0;
        }
        Needs needs = Needs.of(expr);
        return needs.quantities().stream().anyMatch(absent::contains)
                || expr instanceof Expr.Ref ref && absent.contains(ref.symbol())
                || needs.requirements().stream()
                        .anyMatch(r -> simplify(r.condition()).equals(Condition.NEVER));
    }

    /** Whether nothing that depends on the condition can have a value, since it compares what is never there. */
    private boolean asksForAbsent(Condition condition) {
        return Needs.of(condition).quantities().stream().anyMatch(absent::contains);
    }

    /**
     * The condition without what never has a value; {@link Condition#ALWAYS} or {@link Condition#NEVER} where that
     * decides it. A part that withholds where something is missing is not dropped.
     */
    public Condition simplify(Condition condition) {
        Condition simple = bare(condition);
        Needs before = Needs.of(condition);
        Needs after = Needs.of(simple);
        Set<Symbol> dropped = new LinkedHashSet<>(before.quantities());
        dropped.removeAll(after.quantities());
        dropped.removeAll(branch.has());
        List<Needs.Requirement> without = new ArrayList<>(before.requirements());
        without.removeAll(after.requirements());
        without.removeAll(branch.requirements());
        return dropped.isEmpty() && without.isEmpty() ? simple : condition;
    }

    /** Whether a sentence on this condition is never said: it is false, or asks for what is never there. */
    public boolean neverSaid(Condition condition) {
        return asksForAbsent(condition) || bare(condition).equals(Condition.NEVER);
    }

    private Condition bare(Condition condition) {
        if (branch.holds().contains(condition)) {
            return Condition.ALWAYS;
        } else if (branch.fails(condition)) {
            return Condition.NEVER;
        } else if (condition instanceof Condition.Is c) {
            boolean never = absent.contains(c.symbol())
                    || words.containsKey(c.symbol())
                            && words.get(c.symbol()).stream().noneMatch(c.word()::equalsIgnoreCase);
            return never && !c.word().isEmpty() ? Condition.NEVER : c;
        } else if (condition instanceof Condition.Given c) {
            return absent.contains(c.symbol()) ? Condition.NEVER : c;
        } else if (condition instanceof Condition.Blank c) {
            return absent.contains(c.symbol()) ? Condition.ALWAYS : c;
        } else if (condition instanceof Condition.Compare c) {
            return new Condition.Compare(simplify(c.a()), c.relation(), simplify(c.b()));
        } else if (condition instanceof Condition.InTable c) {
            Expr key = simplify(c.key());
            boolean noWord = c.table().wordKeys() && never(key) && c.table().find("") < 0;
            return noWord ? Condition.NEVER : new Condition.InTable(c.table(), key, c.mode());
        } else if (condition instanceof Condition.Not c) {
            Condition inner = bare(c.condition());
            return inner.equals(Condition.ALWAYS)
                    ? Condition.NEVER
                    : inner.equals(Condition.NEVER) ? Condition.ALWAYS : new Condition.Not(inner);
        } else if (condition instanceof Condition.All c) {
            List<Condition> parts = parts(c.parts(), Condition.ALWAYS);
            return parts.contains(Condition.NEVER) ? Condition.NEVER : Condition.all(parts);
        } else if (condition instanceof Condition.Any c) {
            List<Condition> parts = parts(c.parts(), Condition.NEVER);
            return parts.contains(Condition.ALWAYS) ? Condition.ALWAYS : Condition.any(parts);
        }
        return condition;
    }

    private List<Condition> parts(List<Condition> parts, Condition without) {
        return parts.stream()
                .map(this::bare)
                .filter(part -> !part.equals(without))
                .toList();
    }
}
