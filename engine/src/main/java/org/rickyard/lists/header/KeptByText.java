package org.rickyard.lists.header;

import java.util.HashMap;
import java.util.Map;

/**
 * What was found out about texts that may be headers. Rows that could be headers, as those of a diary, are asked about
 * often and by many; a workbook of nothing but texts must not fill the memory.
 */
final class KeptByText<T> {
    private static final int MOST = 5000;

    private final Map<String, T> kept = new HashMap<>();

    /** What was found out about a text; null if it is not known, or not any more. */
    T get(String text) {
        return kept.get(text);
    }

    /** Keeps what was found out about a text, and gives it back. */
    T keep(String text, T found) {
        if (kept.size() >= MOST) {
            kept.clear();
        }
        kept.put(text, found);
        return found;
    }

    /** Forgets everything, since texts may mean something else now. */
    void forget() {
        kept.clear();
    }
}
