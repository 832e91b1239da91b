package org.rickyard.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.audit.InputUsed.From;
import org.rickyard.lists.CellAddress;

/**
 * How one value came about: a node of the tree that leads from a result down to cells that were typed.
 *
 * @param name the quantity
 * @param cell where it stands: in the client's list, on a sheet of ours, or on Basis
 * @param value what it is
 * @param about which row it belongs to, where that is not the row of the node above
 * @param working how it was worked out, if it was
 * @param causes why it is withheld; empty if it is not
 * @param notes what else there is to know: as typed, where a default comes from, how many rows are not named
 * @param inputs what it was worked out from
 * @param uses the results that depend on it, for a value asked about by itself
 */
public record Explanation(
        String name,
        Optional<CellAddress> cell,
        Value value,
        Map<String, String> about,
        Optional<Working> working,
        List<Cause> causes,
        List<String> notes,
        List<Explanation> inputs,
        List<Explanation> uses) {

    /**
     * A value and how it came there.
     *
     * @param number the number, if it is one and there is one
     * @param word the word, or the date of a day; "" if it is neither
     * @param unit the unit of the number
     * @param from how it came there; {@link From#MISSING} if there is none
     */
    public record Value(Optional<Double> number, String word, String unit, From from) {
        /** No value of its own: a heading, a note. */
        static final Value NONE = new Value(Optional.empty(), "", "", From.CALCULATED);

        static Value of(double number, String unit, From from) {
            return new Value(Optional.of(number), "", unit, from);
        }

        static Value of(String word, From from) {
            return new Value(Optional.empty(), word, "", from);
        }

        /** Whether there is a value. */
        public boolean given() {
            return number.isPresent() || !word.isEmpty();
        }
    }

    /**
     * How a value was worked out.
     *
     * @param id the formula's id, or "" for a value that only joins tables
     * @param words the formula in words
     * @param numbers the formula with the row's numbers; "" where that would say nothing new
     * @param source who says so, or ""
     */
    public record Working(String id, String words, String numbers, String source) {}

    /** Keeps what it is given. */
    public Explanation {
        about = Collections.unmodifiableMap(new LinkedHashMap<>(about));
        causes = List.copyOf(causes);
        notes = List.copyOf(notes);
        inputs = List.copyOf(inputs);
        uses = List.copyOf(uses);
    }

    /** A value by itself. */
    static Explanation leaf(String name, CellAddress cell, Value value) {
        return new Explanation(
                name,
                Optional.ofNullable(cell),
                value,
                Map.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    /** The same, said of this row. */
    Explanation about(Map<String, String> row) {
        return new Explanation(name, cell, value, row, working, causes, notes, inputs, uses);
    }

    /** The same, with its working and what went into it. */
    Explanation worked(Working how, List<Explanation> from) {
        return new Explanation(name, cell, value, about, Optional.of(how), causes, notes, from, uses);
    }

    /** The same, with what it adds up or is taken from. */
    Explanation from(List<Explanation> parts) {
        return new Explanation(name, cell, value, about, working, causes, notes, parts, uses);
    }

    /** The same, with why there is no value. */
    Explanation because(List<Cause> why) {
        return new Explanation(name, cell, value, about, working, why, notes, inputs, uses);
    }

    /** The same, with a further note. */
    public Explanation note(String note) {
        List<String> more = new ArrayList<>(notes);
        more.add(note);
        return new Explanation(name, cell, value, about, working, causes, more, inputs, uses);
    }

    /** The same, with the results that depend on it. */
    Explanation usedBy(List<Explanation> results) {
        return new Explanation(name, cell, value, about, working, causes, notes, inputs, results);
    }
}
