package org.rickyard.lists.read;

import java.util.HashMap;
import java.util.Map;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.text.LastWords;
import org.rickyard.lists.text.Words;

/** Reads cells of words: names as they stand, choices by the word they stand for. */
final class WordCells implements CellReader {
    /** Texts whose meaning is kept in mind. */
    private static final int MOST_WORDS = 10_000;

    private final ColumnSpec spec;
    private final Map<String, String> words;
    private final Map<String, String> wordOf = new HashMap<>();

    /**
     * For one column.
     *
     * @param words what stands for which of its choices; empty if it has none
     */
    WordCells(ColumnSpec spec, Map<String, String> words) {
        this.spec = spec;
        this.words = words;
    }

    @Override
    public State read(CellRead cell) {
        if (words.isEmpty()) {
            return State.GIVEN;
        }
        String text = cell.text();
        String canonical = wordOf.get(text);
        if (canonical == null) {
            canonical = canonical(text, cell);
            if (wordOf.size() < MOST_WORDS) {
                wordOf.put(text, canonical);
            }
        }
        if (!canonical.isEmpty()) {
            String header = cell.headerWord();
            if (header != null && !header.equals(canonical)) {
                cell.bad(Words.quoted(text) + " is typed here, where the header says " + header
                        + ": which of the two is meant? Take the word out of the header, or mend this cell.");
                return State.ASKED;
            }
            return cell.word(canonical);
        }
        if (spec.type() == ColumnSpec.Type.TEXT) {
            return State.GIVEN;
        }
        String question = spec.unclear().get(Words.normal(text));
        if (question != null) {
            cell.bad(Words.quoted(text) + " can mean two things: " + question + ".");
            return State.ASKED;
        }
        cell.bad(Words.quoted(text) + " is not a word known here for " + spec.name() + ": write "
                + String.join(", ", spec.choices().keySet()) + ".");
        return State.NOT_READABLE;
    }

    /** The word that a text stands for, or the empty one; what is read by its last words is told. */
    private String canonical(String text, CellRead cell) {
        String normal = Words.normal(text);
        String known = words.getOrDefault(normal, "");
        if (!known.isEmpty() || !spec.byLastWords()) {
            return known;
        }
        String turned = LastWords.turnedRound(text, words);
        if (!turned.isEmpty()) {
            return turned;
        }
        String last = LastWords.of(normal, words);
        String by = "its last words";
        if (last.isEmpty()) {
            last = LastWords.beforeTheComma(text, words);
            by = "what stands before the comma or bracket";
        }
        if (!last.isEmpty()) {
            cell.readAs(Words.quoted(text) + " is read as " + last + ", by " + by
                    + ". If it is something else, write what it is: "
                    + String.join(", ", spec.choices().keySet()) + ".");
        }
        return last;
    }
}
