package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;

/**
 * The headers of one list as it declares them, ready to be looked up. They are the same for every workbook and some
 * thousands in all, so those of the input lists are made once.
 */
final class KnownHeaders {
    /** The column of a header that can mean no other, and how good a match that is. */
    record Known(ColumnSpec column, int weight) {}

    private static final Map<ListSpec, KnownHeaders> OF_INPUT_LISTS = new IdentityHashMap<>();

    static {
        Lists.ALL.forEach(list -> OF_INPUT_LISTS.put(list, new KnownHeaders(list)));
    }

    private final Map<String, Known> certain = new HashMap<>();
    private final Map<String, Known> joined = new HashMap<>();

    /** Those of names that say "%", by what is left of the name without it: "% LW" is a share, and "LW" what it is of. */
    private final Map<String, Known> ofShares = new HashMap<>();

    private final Map<String, List<ColumnSpec>> unclear = new HashMap<>();
    private final Map<ColumnSpec, Map<String, String>> words = new LinkedHashMap<>();
    private final List<String> names = new ArrayList<>();
    private final Map<ColumnSpec, String> canonical = new HashMap<>();
    private final TurnedNames turned = new TurnedNames();
    private final Set<String> otherwise = new HashSet<>();
    private final Set<String> firstWords = new HashSet<>();
    private int longest;
    private int longestOtherwise;

    private KnownHeaders(ListSpec spec) {
        names.add(Words.normal(spec.name()));
        spec.synonyms().forEach(synonym -> names.add(Words.normal(synonym)));
        for (ColumnSpec column : spec.columns()) {
            canonical.put(column, HeaderText.normal(column.name()));
            learn(column.name(), column);
        }
        for (ColumnSpec column : spec.columns()) {
            column.synonyms().forEach(synonym -> learn(synonym, column));
        }
        for (ColumnSpec column : spec.columns()) {
            learnWithoutOr(column.name(), column);
            column.synonyms().forEach(synonym -> learnWithoutOr(synonym, column));
        }
        spec.unclear().forEach((header, columns) -> {
            String normal = HeaderText.normal(header);
            unclear.put(normal, columns);
            longest = Math.max(longest, normal.split(" ").length);
        });
        spec.qualifiers().forEach((column, of) -> words.put(column, ChoiceWords.of(of)));
        certain.forEach((name, known) -> turned.learn(name, known.column()));
        unclear.keySet().forEach(turned::leave);
        learnOtherwise(spec.hints().otherwise());
        learnOtherwise(spec.hints().ifNamed());
        spec.hints().otherwise().forEach(one -> firstWords.add(firstWord(one.header())));
        certain.keySet().forEach(header -> firstWords.add(firstWord(header)));
        ofShares.keySet().forEach(header -> firstWords.add(firstWord(header)));
        unclear.keySet().forEach(header -> firstWords.add(firstWord(header)));
        joined.keySet().stream().filter(header -> header.length() > 5).forEach(firstWords::add);
    }

    /** Those of a list. */
    static KnownHeaders of(ListSpec spec) {
        KnownHeaders known = OF_INPUT_LISTS.get(spec);
        return known == null ? new KnownHeaders(spec) : known;
    }

    private void learn(String header, ColumnSpec column) {
        String normal = HeaderText.normal(header);
        longest = Math.max(longest, normal.split(" ").length);
        if (HeaderText.saysShare(header)) {
            ofShares.putIfAbsent(normal, new Known(column, 2));
            return;
        }
        String one = normal.replace(" ", "");
        certain.putIfAbsent(normal, new Known(column, normal.equals(canonical.get(column)) ? 3 : 2));
        joined.putIfAbsent(one, new Known(column, one.equals(canonical.get(column)) ? 3 : 2));
    }

    /** "Engine/PTO" is "Engine or PTO", where it is no name of its own. */
    private void learnWithoutOr(String header, ColumnSpec column) {
        if (header.contains(" or ")) {
            learn(header.replace(" or ", " "), column);
        }
    }

    private void learnOtherwise(List<ListSpec.Otherwise> all) {
        for (ListSpec.Otherwise one : all) {
            otherwise.add(one.header());
            longestOtherwise = Math.max(longestOtherwise, one.words());
        }
    }

    /** The first word of a header in normal form. */
    static String firstWord(String header) {
        return header.split(" ")[0];
    }

    /** The column of a name that can mean no other; null if it is none. */
    Known certain(String name) {
        return certain.get(name);
    }

    /** The column of a name that says "%" beside these words; null if it is none. */
    Known ofShare(String name) {
        return ofShares.get(name);
    }

    /** The same as {@link #certain} for a name written without the spaces between its words. */
    Known joined(String name) {
        return joined.get(name);
    }

    /** The columns that a name could mean; null if it is no such name. */
    List<ColumnSpec> unclear(String name) {
        return unclear.get(name);
    }

    /** The column whose name these words are in any order; null if there is none. */
    ColumnSpec turned(List<String> header) {
        return turned.of(header);
    }

    /** With how many words a header begins that all stand in names whose words may stand in any order. */
    int inTurnedNames(List<String> header) {
        return turned.beginning(header);
    }

    /** The words that tell what a qualified column is, each to its canonical word; null if the column has none. */
    Map<String, String> qualifying(ColumnSpec column) {
        return words.get(column);
    }

    /** What the list is called, its own name first. */
    List<String> names() {
        return names;
    }

    /** How many words the longest name of a column has. */
    int longest() {
        return longest;
    }

    /** The first word of every header that means something. */
    Set<String> firstWords() {
        return firstWords;
    }

    /** Whether a header begins with one of the names that count only where no other header means the column. */
    boolean mayMeanOtherwise(HeaderText header) {
        for (int count = Math.min(longestOtherwise, header.words().size()); count > 0; count--) {
            if (otherwise.contains(header.name(count))) {
                return true;
            }
        }
        return false;
    }
}
