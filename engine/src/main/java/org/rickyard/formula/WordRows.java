package org.rickyard.formula;

/** Finds rows of a table by their word. A column repeats its words, so the row found last is tried first. */
final class WordRows {
    private final ReferenceTable table;
    private int last;

    WordRows(ReferenceTable table) {
        this.table = table;
    }

    /** As {@link ReferenceTable#find}. */
    int find(String word) {
        int tried = last;
        if (table.rows().get(tried).word().equals(word)) {
            return tried;
        }
        int found = table.find(word);
        if (found >= 0) {
            last = found;
        }
        return found;
    }
}
