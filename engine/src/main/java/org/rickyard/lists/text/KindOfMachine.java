package org.rickyard.lists.text;

import java.util.List;
import java.util.stream.Stream;

/**
 * What a machine is among those of its type, where tables part them: a mower with a conditioner takes more power than one
 * without, a self-propelled forager costs less in repairs for its price than a trailed one. Told by the words its type is
 * typed with, otherwise by those of its name; one that is called by its type alone is what the tables hold for the type.
 */
public final class KindOfMachine {
    /** Words that have to stand in the text for it to be of a kind, all of them. */
    private record Kind(String type, String name, List<String> words) {}

    private static final String FORAGER = "forager";
    private static final String SELF_PROPELLED_FORAGER = "self-propelled forager";
    /** The tables hold it for the type, so it is a kind of its own only until nothing else is asked. */
    private static final String TRAILED_FORAGER = "trailed forager";

    /** The first that fits counts. */
    private static final List<Kind> KINDS = List.of(
            kind("mower", "cutterbar mower-conditioner", "conditioner", "cutterbar"),
            kind("mower", "cutterbar mower-conditioner", "conditioner", "finger bar"),
            kind("mower", "cutterbar mower-conditioner", "conditioner", "sickle"),
            kind("mower", "mower-conditioner", "conditioner"),
            kind("mower", "mower-conditioner", "moco"),
            kind("mower", "cutterbar mower", "cutterbar"),
            kind("mower", "cutterbar mower", "finger bar"),
            kind("mower", "cutterbar mower", "reciprocating"),
            kind("mower", "cutterbar mower", "sickle"),
            kind("mower", "flail mower", "flail"),
            kind("forager", "self-propelled forager", "self propelled"),
            kind("forager", "self-propelled forager", "sp"),
            kind("forager", "self-propelled forager", "spfh"),
            kind("forager", "flail forager", "flail"),
            kind("forager", TRAILED_FORAGER, "trailed"),
            kind("forager", TRAILED_FORAGER, "drawn"),
            kind("forager", TRAILED_FORAGER, "pull type"),
            kind("forager", TRAILED_FORAGER, "pulled"),
            kind("forager", TRAILED_FORAGER, "towed"),
            kind("forager", TRAILED_FORAGER, "mounted"),
            kind("baler", "small square baler", "small", "square"),
            kind("baler", "small square baler", "small", "rectangular"),
            kind("baler", "small square baler", "small baler"),
            kind("baler", "large square baler", "large", "square"),
            kind("baler", "large square baler", "large", "rectangular"),
            kind("baler", "large square baler", "big", "square"),
            kind("mower", "self-propelled windrower", "windrower"),
            kind("cultivator", "power harrow", "power harrow"),
            kind("cultivator", "rotary tiller", "rotary tiller"),
            kind("cultivator", "rotary tiller", "rotary cultivator"),
            kind("cultivator", "rotary tiller", "rotavator"),
            kind("cultivator", "subsoiler", "subsoiler"),
            kind("cultivator", "subsoiler", "ripper"),
            kind("cultivator", "chisel plough", "chisel"),
            kind("cultivator", "heavy disc", "disc", "heavy"),
            kind("cultivator", "heavy disc", "disk", "heavy"),
            kind("cultivator", "heavy disc", "disc", "offset"),
            kind("cultivator", "heavy disc", "disk", "offset"),
            kind("cultivator", "disc harrow", "disc"),
            kind("cultivator", "disc harrow", "disk"),
            kind("cultivator", "spring-tine harrow", "spring tine"),
            kind("cultivator", "spring-tine harrow", "tine harrow"),
            kind("cultivator", "spike-tooth harrow", "spike tooth"),
            kind("cultivator", "row-crop cultivator", "row crop"),
            kind("cultivator", "rolling cultivator", "rolling"),
            kind("cultivator", "rotary hoe", "rotary hoe"),
            kind("drill", "no-till planter", "no till", "planter"),
            kind("drill", "no-till drill", "no till"),
            kind("drill", "row-crop planter", "planter"),
            kind("fertiliser spreader", "anhydrous applicator", "anhydrous"),
            kind("fertiliser spreader", "anhydrous applicator", "ammonia"),
            kind("fertiliser spreader", "anhydrous applicator", "nh3"));

    /** What stands before a word that a machine is not to be known by: "mower, no conditioner". */
    private static final List<String> NEGATIONS = List.of("no", "not", "non", "without", "without a", "w o");

    private KindOfMachine() {}

    private static Kind kind(String type, String name, String... words) {
        return new Kind(type, name, Stream.of(words).map(Words::normal).toList());
    }

    /**
     * The kind of a machine.
     *
     * @param type its type, canonical
     * @param typed its type as it was typed
     * @param name what it is called
     * @return the name that tables of kinds have for it; its type where it is of none
     */
    public static String of(String type, String typed, String name) {
        String kind = byWords(type, typed, name);
        return kind.equals(TRAILED_FORAGER) ? FORAGER : kind;
    }

    /** The kind of a machine that drives itself, as far as its words leave that open: of foragers, the self-propelled one. */
    public static String drivingItself(String type, String typed, String name) {
        return mayDriveItself(type, typed, name) ? SELF_PROPELLED_FORAGER : of(type, typed, name);
    }

    /** Whether a machine's words leave open whether it drives itself or is pulled, and tables part the two. */
    public static boolean mayDriveItself(String type, String typed, String name) {
        return type.equals(FORAGER)
                && !isDenied(typed)
                && byWords(type, typed, name).equals(FORAGER);
    }

    private static String byWords(String type, String typed, String name) {
        String kind = of(type, typed);
        return kind.equals(type) && !isDenied(typed) ? of(type, name) : kind;
    }

    private static boolean isDenied(String typed) {
        return NEGATIONS.stream().anyMatch(no -> Words.holds(Words.normal(typed), no));
    }

    private static String of(String type, String typed) {
        String text = Words.normal(typed);
        for (Kind kind : KINDS) {
            if (kind.type().equals(type) && kind.words().stream().allMatch(word -> says(text, word))) {
                return kind.name();
            }
        }
        return type;
    }

    private static boolean says(String text, String word) {
        return Words.holds(text, word) && NEGATIONS.stream().noneMatch(no -> Words.holds(text, no + " " + word));
    }
}
