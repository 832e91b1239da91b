package org.rickyard.trade;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.RowValues;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.quantity.Range;

/** Possible values for any quantity, drawn from a seed and the quantity's name; words from those given. */
final class RandomRows implements RowValues {
    static final int ROWS = 400;
    private static final double WIDEST = 1000;

    private final List<String> words;
    private final Map<Symbol, Values> drawn = new HashMap<>();
    private final Set<Symbol> blank = new HashSet<>();

    RandomRows(List<String> words) {
        this.words = words;
    }

    /** The same rows, in which these never have a value. */
    RandomRows without(Set<Symbol> symbols) {
        blank.addAll(symbols);
        return this;
    }

    @Override
    public Values of(Symbol symbol) {
        return drawn.computeIfAbsent(symbol, this::draw);
    }

    private Values draw(Symbol symbol) {
        Random random = new Random(symbol.name().hashCode() * 31L + 7);
        if (symbol.type() == Symbol.Type.TEXT) {
            Values values = Values.ofWords(ROWS);
            for (int row = 0; row < ROWS; row++) {
                boolean none = words.isEmpty() || blank.contains(symbol);
                values.set(row, none ? "" : words.get(random.nextInt(words.size())));
            }
            return values;
        }
        Values values = Values.ofNumbers(ROWS);
        Range range = symbol.possible();
        double low = range.hasLow() ? range.low() : -WIDEST;
        double high = range.hasHigh() ? range.high() : Math.max(low, 0) + WIDEST;
        for (int row = 0; row < ROWS; row++) {
            double number = low + (high - low) * random.nextDouble();
            values.set(row, random.nextInt(4) == 0 ? Math.rint(number) : number);
            if (!range.contains(values.number(row))) {
                values.set(row, number);
            }
            if (random.nextInt(3) == 0 || blank.contains(symbol)) {
                values.mark(row, Values.State.BLANK);
            }
        }
        return values;
    }

    @Override
    public Values of(String table, Symbol symbol) {
        throw new IllegalStateException("one table only");
    }

    @Override
    public double constant(Constant constant) {
        return constant.value();
    }

    /** The words an expression asks for, and two that it does not, so that every branch of it is taken now and then. */
    static List<String> words(Expr expr) {
        List<String> words = new ArrayList<>(List.of("", "another"));
        words(expr, words);
        return words;
    }

    private static void words(Expr expr, List<String> words) {
        if (expr instanceof Expr.Choice e) {
            words(e.when(), words);
            words(e.then(), words);
            words(e.otherwise(), words);
        } else if (expr instanceof Expr.GivenElse e) {
            words(e.otherwise(), words);
        } else if (expr instanceof Expr.Only e) {
            words(e.when(), words);
            words(e.then(), words);
        } else if (expr instanceof Expr.Scale e) {
            words(e.a(), words);
        } else if (expr instanceof Expr.Lookup e && e.table().wordKeys()) {
            e.table().rows().forEach(row -> words.add(row.word()));
        }
    }

    private static void words(Condition condition, List<String> words) {
        if (condition instanceof Condition.Is c) {
            words.add(c.word());
        } else if (condition instanceof Condition.All c) {
            c.parts().forEach(part -> words(part, words));
        } else if (condition instanceof Condition.Any c) {
            c.parts().forEach(part -> words(part, words));
        } else if (condition instanceof Condition.Not c) {
            words(c.condition(), words);
        }
    }
}
