package org.rickyard.audit;

import java.util.Optional;
import org.rickyard.formula.Numbers;
import org.rickyard.lists.CellAddress;

/**
 * An input of a result.
 *
 * @param name the quantity
 * @param number its value, if it is a number and there is one
 * @param word its value, if it is a word; of a day its date
 * @param unit the unit of the number
 * @param cell where it stands: the client's cell, a cell of ours, or Basis
 * @param from how it came there
 */
public record InputUsed(
        String name, Optional<Double> number, String word, String unit, Optional<CellAddress> cell, From from) {
    /** How a value came to be. */
    public enum From {
        /** Typed by the client. */
        TYPED("typed"),
        /** Typed by nobody; a shown default stands in. */
        DEFAULT("default"),
        /** A constant of Basis. */
        CONSTANT("constant"),
        /** Calculated in a cell of ours. */
        CALCULATED("calculated"),
        /** Read out of text by a rule. */
        READ_FROM_TEXT("read from text"),
        /** Not given; nothing stands in. */
        MISSING("missing");

        private final String words;

        From(String words) {
            this.words = words;
        }

        /** As printed in trails and JSON. */
        public String words() {
            return words;
        }
    }

    /** As one reads it in the trail: {@code speed = 10 km/h @ Machines!E5}. */
    @Override
    public String toString() {
        String value = !word.isEmpty()
                ? word
                : number.map(n -> Numbers.readable(n) + (unit.isEmpty() ? "" : " " + unit))
                        .orElse("none");
        String origin = from == From.TYPED || from == From.CALCULATED ? "" : " (" + from.words() + ")";
        return name + " = " + value + cell.map(address -> " @ " + address).orElse("") + origin;
    }
}
