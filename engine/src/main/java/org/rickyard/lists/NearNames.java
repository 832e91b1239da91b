package org.rickyard.lists;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.rickyard.lists.text.Spelling;
import org.rickyard.lists.text.Words;

/** The names in a list that may be meant by one that is not in it. Nothing is taken for granted: they are only named. */
public final class NearNames {
    /** To hold a name against more than these takes longer than its reader would wait. */
    private static final int MOST_NAMES = 2_000;
    /** Beyond so many that are not known the list is not the one they come from. */
    private static final int MOST_ASKED = 50;

    private final ListRows rows;
    private final ColumnSpec[] columns;
    private int asked;
    /** By their plain form, as the client wrote them first; made when first asked. */
    private Map<String, String> names;

    private NearNames(ListRows rows, ColumnSpec... columns) {
        this.rows = rows;
        this.columns = columns;
    }

    /** Names in these columns of a list. */
    public static NearNames of(ListRows rows, ColumnSpec... columns) {
        return new NearNames(rows, columns);
    }

    /** A question that follows a sentence, {@code  Did you mean 'Top Field'?}; empty where nothing is like the name. */
    public String meant(String name) {
        if (rows.size() > MOST_NAMES || ++asked > MOST_ASKED) {
            return "";
        }
        if (names == null) {
            names = new LinkedHashMap<>();
            for (ColumnSpec column : columns) {
                for (int row = 0; row < rows.size(); row++) {
                    String known = Words.trim(rows.text(column, row));
                    names.putIfAbsent(Words.key(known), known);
                }
            }
            names.remove("");
        }
        List<String> near = Spelling.near(Words.trim(name), names.values());
        return near.isEmpty() ? "" : near.stream().collect(Collectors.joining("' or '", " Did you mean '", "'?"));
    }
}
