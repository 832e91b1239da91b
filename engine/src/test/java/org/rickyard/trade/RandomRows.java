package org.rickyard.trade;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.rickyard.formula.Constant;
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

    RandomRows(List<String> words) {
        this.words = words;
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
                values.set(row, words.isEmpty() ? "" : words.get(random.nextInt(words.size())));
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
            if (random.nextInt(3) == 0) {
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
}
