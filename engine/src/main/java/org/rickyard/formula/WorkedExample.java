package org.rickyard.formula;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.rickyard.quantity.Unit;

/**
 * A worked example whose answer this project did not compute (or, marked so by its source, an independent derivation).
 *
 * @param source who worked it
 * @param numbers the inputs in each symbol's own unit
 * @param words the inputs that are words
 * @param answer the printed answer in {@code answerUnit}; NaN if it is a word
 * @param answerUnit the unit it is printed in
 * @param tolerance how far the exact value may lie from it: half the last printed digit unless the print is coarser
 * @param answerWord the printed answer if it is a word
 */
public record WorkedExample(
        Source source,
        Map<Symbol, Double> numbers,
        Map<Symbol, String> words,
        double answer,
        Unit answerUnit,
        double tolerance,
        String answerWord) {

    private static final double LITTLE = 1e-9;

    /** Starts an example from a source. */
    public static Draft from(Source source) {
        return new Draft(source);
    }

    /** An example without its answer yet; ends with {@link #gives}. */
    public static final class Draft {
        private final Source source;
        private final Map<Symbol, Double> numbers = new LinkedHashMap<>();
        private final Map<Symbol, String> words = new LinkedHashMap<>();

        private Draft(Source source) {
            this.source = source;
        }

        /** An input in its symbol's own unit. */
        public Draft with(Symbol symbol, double value) {
            numbers.put(symbol, value);
            return this;
        }

        /** An input in another unit. */
        public Draft with(Symbol symbol, double value, Unit unit) {
            return with(symbol, unit.convert(value, symbol.unit()));
        }

        /** An input that is a word. */
        public Draft with(Symbol symbol, String word) {
            words.put(symbol, word);
            return this;
        }

        /** The answer as printed with so many decimals. */
        public WorkedExample gives(double answer, Unit unit, int decimals) {
            return givesWithin(answer, unit, 0.5 * Math.pow(10, -decimals));
        }

        /** The answer with a tolerance of its own, for coarser prints. */
        public WorkedExample givesWithin(double answer, Unit unit, double tolerance) {
            return new WorkedExample(source, Map.copyOf(numbers), Map.copyOf(words), answer, unit, tolerance, null);
        }

        /** The answer as a word. */
        public WorkedExample gives(String word) {
            return new WorkedExample(source, Map.copyOf(numbers), Map.copyOf(words), Double.NaN, null, 0, word);
        }
    }

    /** What a formula gives for these inputs, in {@link #answerUnit}; empty if it withholds. */
    public Optional<Double> compute(Formula formula) {
        double[] out = new double[1];
        if (!Evaluator.number(formula.expr(), asRow()).at(0, out)) {
            return Optional.empty();
        }
        return Optional.of(formula.result().unit().convert(out[0], answerUnit));
    }

    /**
     * The answer with as many decimals as it is held to, and how far off it may be where that is more than half of the
     * last of them: {@code 0.38 L/min (within 0.015 L/min)}.
     */
    public String answerAsPrinted() {
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(2 * tolerance) - LITTLE));
        BigDecimal printed = BigDecimal.valueOf(answer).stripTrailingZeros();
        if (printed.scale() > decimals) {
            printed = printed.setScale(decimals, RoundingMode.HALF_UP);
        }
        double half = 0.5 * Math.pow(10, -Math.max(0, printed.scale()));
        String unit = answerUnit.symbol().isEmpty() ? "" : " " + answerUnit;
        return printed.toPlainString()
                + unit
                + (tolerance > half * (1 + LITTLE) ? " (within " + Numbers.readable(tolerance) + unit + ")" : "");
    }

    /** The word a formula gives for these inputs. */
    public String computeWord(Formula formula) {
        return Evaluator.words(formula.expr(), asRow()).at(0);
    }

    /** The inputs as a table of one row. */
    public RowValues asRow() {
        return new RowValues() {
            @Override
            public Values of(Symbol symbol) {
                if (symbol.type() == Symbol.Type.TEXT) {
                    Values column = Values.ofWords(1);
                    column.set(0, words.getOrDefault(symbol, ""));
                    return column;
                }
                Values column = Values.ofNumbers(1);
                if (numbers.containsKey(symbol)) {
                    column.set(0, numbers.get(symbol));
                } else {
                    column.mark(0, Values.State.BLANK);
                }
                return column;
            }

            @Override
            public Values of(String table, Symbol symbol) {
                throw new IllegalStateException("an example has one row of one table");
            }

            @Override
            public double constant(Constant constant) {
                return constant.value();
            }
        };
    }
}
