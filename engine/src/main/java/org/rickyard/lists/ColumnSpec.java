package org.rickyard.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/**
 * A column of an input list, declared once.
 *
 * <p>Some columns may hold one of several quantities (an output in t/h or in m3/h). They are one column here, as they
 * are for the client: {@code symbol} is the quantity taken when the header names no unit, {@code alternatives} are the
 * others, and {@link ListRows#unit} tells by its dimension which one a row holds ({@link #symbolFor}).
 *
 * @param name canonical header without unit ("Working width")
 * @param required whether the list is useless without it
 * @param type how its cells are read
 * @param symbol the quantity it holds (name, default unit, possible and usual range); its type is TEXT for words
 * @param synonyms further headers that mean this column for certain
 * @param choices canonical word to the further words that mean it; for {@link Type#CHOICE} no other word will do, for
 *     {@link Type#TEXT} any other word stands as it is
 * @param help one line for the person who fills it in
 * @param alternatives further quantities, of other dimensions, that the column may hold
 * @param unclear words that could be read in two ways, with the question to ask
 * @param byLastWords whether a text of more words than are known is taken for what its last words name: "rotary rake"
 */
public record ColumnSpec(
        String name,
        boolean required,
        Type type,
        Symbol symbol,
        List<String> synonyms,
        Map<String, List<String>> choices,
        String help,
        List<Symbol> alternatives,
        Map<String, String> unclear,
        boolean byLastWords) {

    /** How the cells of a column are read. */
    public enum Type {
        /** Words as they stand; a number is taken as its digits, so that a field called 7 keeps its name. */
        TEXT,
        /** A number in the header's unit or the symbol's. */
        NUMBER,
        /** A day. */
        DATE,
        /** One of {@link ColumnSpec#choices}, in canonical form. */
        CHOICE,
        /**
         * A number whose header or companion column says a product unit ("L/ha", "g/ac", "%", "ml/100 L"); its unit
         * differs from row to row.
         */
        DOSE,
        /** A wall or pit slope, horizontal per vertical: a number, "1 in 3", "45°" or "2:1". */
        BATTER,
        /** A nozzle's size: a number is the size code 4 of "04", "ISO 04", "11004" or "F110/1.6/3.0". */
        NOZZLE,
        /** A number in a unit, or else words: a volume or the name of a tank. A row has a unit if it is a number. */
        TEXT_OR_NUMBER
    }

    /** A column of one quantity without words that need asking about. */
    public ColumnSpec(
            String name,
            boolean required,
            Type type,
            Symbol symbol,
            List<String> synonyms,
            Map<String, List<String>> choices,
            String help) {
        this(name, required, type, symbol, synonyms, choices, help, List.of(), Map.of(), false);
    }

    private static ColumnSpec of(String name, Type type, Symbol symbol, Map<String, List<String>> choices) {
        return new ColumnSpec(name, false, type, symbol, List.of(), choices, "");
    }

    /** An optional column of words. */
    static ColumnSpec text(String name, Symbol symbol) {
        return of(name, Type.TEXT, symbol, Map.of());
    }

    /** An optional column of words, some of which are known by several names. */
    static ColumnSpec words(String name, Symbol symbol, Map<String, List<String>> known) {
        return of(name, Type.TEXT, symbol, known);
    }

    /** An optional column of numbers. */
    static ColumnSpec number(String name, Symbol symbol) {
        return of(name, Type.NUMBER, symbol, Map.of());
    }

    /** An optional column of days. */
    static ColumnSpec date(String name, Symbol symbol) {
        return of(name, Type.DATE, symbol, Map.of());
    }

    /** An optional column that takes only the given words. */
    static ColumnSpec choice(String name, Symbol symbol, Map<String, List<String>> choices) {
        return of(name, Type.CHOICE, symbol, choices);
    }

    /** An optional column of product doses. */
    static ColumnSpec dose(String name, Symbol perArea, Symbol... others) {
        return of(name, Type.DOSE, perArea, Map.of()).or(others);
    }

    /** An optional column read by a rule of its own. */
    static ColumnSpec special(String name, Type type, Symbol symbol) {
        return of(name, type, symbol, Map.of());
    }

    /** The same, without which its list is useless. */
    ColumnSpec needed() {
        return new ColumnSpec(name, true, type, symbol, synonyms, choices, help, alternatives, unclear, byLastWords);
    }

    /** The same, also known by these headers, parted by commas. */
    ColumnSpec also(String headers) {
        List<String> all = new ArrayList<>(synonyms);
        all.addAll(List.of(headers.split(", ")));
        return new ColumnSpec(
                name, required, type, symbol, List.copyOf(all), choices, help, alternatives, unclear, byLastWords);
    }

    /** The same, with a line for the person who fills it in. */
    ColumnSpec help(String line) {
        return new ColumnSpec(
                name, required, type, symbol, synonyms, choices, line, alternatives, unclear, byLastWords);
    }

    /** The same, able to hold these quantities too. */
    ColumnSpec or(Symbol... others) {
        return new ColumnSpec(
                name, required, type, symbol, synonyms, choices, help, List.of(others), unclear, byLastWords);
    }

    /** The same, with words that need asking about. */
    ColumnSpec asking(Map<String, String> questions) {
        return new ColumnSpec(
                name,
                required,
                type,
                symbol,
                synonyms,
                choices,
                help,
                alternatives,
                Map.copyOf(questions),
                byLastWords);
    }

    /** The same, in which the last words of a longer name tell what it is. */
    ColumnSpec readByLastWords() {
        return new ColumnSpec(name, required, type, symbol, synonyms, choices, help, alternatives, unclear, true);
    }

    /** The quantity, among those the column may hold, that a unit measures; the first one if none does. */
    public Symbol symbolFor(Unit unit) {
        if (!symbol.unit().isCompatible(unit)) {
            for (Symbol other : alternatives) {
                if (other.unit().isCompatible(unit)) {
                    return other;
                }
            }
        }
        return symbol;
    }

    /**
     * Whether the column may hold a quantity that this unit measures. Days of use are no hours of work, 24 each, and hours
     * of work no part of the years that a machine is kept.
     */
    public boolean measuredBy(Unit unit) {
        if (!symbolFor(unit).unit().isCompatible(unit)) {
            return false;
        }
        if (isAtWork()) {
            return unit.convert(1, Units.D) < 1;
        }
        return !isByCalendar() || unit.convert(1, Units.D) >= 1;
    }

    private boolean isAtWork() {
        return symbol == Quantities.HOURS_NOW
                || symbol == Quantities.HOURS_PER_YEAR
                || symbol == Quantities.HOURS_PER_DAY;
    }

    private boolean isByCalendar() {
        return symbol == Quantities.LIFE || symbol == Quantities.AGE || symbol == Quantities.DAYS;
    }

    /** Whether its cells are numbers, days included, rather than words. */
    public boolean isNumeric() {
        return type == Type.NUMBER || type == Type.DATE || type == Type.DOSE || type == Type.BATTER;
    }

    /** Whether its cells are words, of a choice or any. */
    public boolean isOfWords() {
        return type == Type.TEXT || type == Type.CHOICE;
    }

    /** A declared column is itself only: Start of Cuts and Start of Herds are two columns, however alike. */
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
