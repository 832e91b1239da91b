package org.rickyard.lists;

import java.util.List;
import java.util.Map;
import org.rickyard.formula.Symbol;

/**
 * A column of an input list, declared once.
 *
 * @param name canonical header without unit ("Working width")
 * @param required whether the list is useless without it
 * @param type how its cells are read
 * @param symbol the quantity it holds (name, default unit, possible and usual range); its type is TEXT for words
 * @param synonyms further headers that mean this column for certain
 * @param choices for {@link Type#CHOICE}: canonical word to the further words that mean it
 * @param help one line for the person who fills it in
 */
public record ColumnSpec(
        String name,
        boolean required,
        Type type,
        Symbol symbol,
        List<String> synonyms,
        Map<String, List<String>> choices,
        String help) {

    /** How the cells of a column are read. */
    public enum Type {
        /** Words as they stand. */
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
        BATTER
    }
}
