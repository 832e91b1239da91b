package org.rickyard.audit;

import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.CellAddress;

/**
 * Why a result is withheld.
 *
 * @param what in words, with the value found where there is one
 * @param cell the cell to look at
 * @param kind whether something is missing or cannot be used
 * @param thing where there is no cell: the product, or else the names of the row, that it is about; empty where it is about
 *     a whole list
 */
public record Cause(String what, Optional<CellAddress> cell, Kind kind, Optional<String> thing) {
    private static final String MISSING = " missing";

    /** Of what its cell tells, or of a whole list. */
    Cause(String what, Optional<CellAddress> cell, Kind kind) {
        this(what, cell, kind, Optional.empty());
    }

    /** What is the matter. */
    public enum Kind {
        /** A cell is blank, and that says all. */
        BLANK,
        /** Nothing was given; what to do is said. */
        MISSING,
        /** Something typed cannot be used: what was found is said. */
        FOUND,
        /** The result has no meaning with what was given. */
        NO_MEANING
    }

    /** A blank cell. */
    static Cause blank(String name, Optional<CellAddress> cell) {
        return new Cause(name + MISSING, cell, Kind.BLANK);
    }

    /** What leaves the result without a meaning. */
    static Cause noMeaning(String what, Optional<CellAddress> cell) {
        return new Cause(what, cell, Kind.NO_MEANING);
    }

    /** The same of one thing: without it nobody knows where to look. */
    Cause about(String name) {
        return cell.isPresent() || name.isEmpty() ? this : new Cause(what, cell, kind, Optional.of(name));
    }

    /** The same of whatever thing it is, so that it can be told once of them all. */
    Cause ofAll() {
        return thing.isEmpty() ? this : new Cause(what, cell, kind);
    }

    /** Whether nothing was given, as opposed to something that cannot be used. */
    public boolean isMissing() {
        return kind == Kind.BLANK || kind == Kind.MISSING;
    }

    /** Whether it says what to do, and not only what is the matter. */
    boolean asks() {
        return kind != Kind.FOUND && what.contains(": ");
    }

    /** What a blank cell is to hold. */
    String name() {
        return what.substring(0, what.length() - MISSING.length());
    }

    @Override
    public String toString() {
        return cell.map(address -> what + " (" + address + ")")
                .orElseGet(() -> ThingNamed.with(what, thing.map(Set::of).orElse(Set.of())));
    }
}
