package org.rickyard.lists;

import java.util.HashMap;
import java.util.Map;
import org.rickyard.lists.text.Words;

/** The words by which the choices of a column are known: each in normal form, to the canonical word it stands for. */
public final class ChoiceWords {
    /** Types of machines. */
    public static final Map<String, String> MACHINE_TYPES = of(Machines.TYPE);

    /** Operations. */
    public static final Map<String, String> OPERATIONS = of(Jobs.OPERATION);

    private ChoiceWords() {}

    /** Those of any column; a column without choices has none. */
    public static Map<String, String> of(ColumnSpec column) {
        Map<String, String> words = new HashMap<>();
        column.choices().forEach((canonical, others) -> {
            words.put(Words.normal(canonical), canonical);
            others.forEach(other -> words.putIfAbsent(Words.normal(other), canonical));
        });
        return words;
    }
}
