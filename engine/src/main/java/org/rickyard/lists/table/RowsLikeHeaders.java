package org.rickyard.lists.table;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.NumberedText;
import org.rickyard.lists.text.Words;

/** Which rows of a sheet may be headers of lists, told by a quick look at the words that their cells begin with. */
public final class RowsLikeHeaders {
    /** Headers are looked for in so many columns. */
    static final int MOST_COLUMNS = 400;

    /** How far down headers are looked for that stand too far to the right. */
    private static final int MOST_ROWS_BEYOND = 100;

    private static final int LEAST_BEYOND = 3;

    /** A longer text is a sentence. */
    private static final int LONGEST = 80;

    private final Grid grid;
    private final Set<String> firstWords;
    /** The headers that the Layout sheet names, in normal form. */
    private final Set<String> settled;

    /**
     * Looks at a sheet.
     *
     * @param firstWords the first words of all headers that are known, in normal form
     * @param vocabularies the lists that are looked for
     */
    public RowsLikeHeaders(Grid grid, Set<String> firstWords, List<Vocabulary> vocabularies) {
        this.grid = grid;
        this.firstWords = firstWords;
        this.settled = vocabularies.stream()
                .flatMap(vocabulary -> vocabulary.settled().stream())
                .collect(Collectors.toSet());
    }

    /** How many columns are looked at. */
    int columns() {
        return Math.min(grid.columns(), MOST_COLUMNS);
    }

    /** Whether two cells of one of the first rows begin as headers do. */
    public boolean any(int mostRows) {
        for (int row = 0; row < Math.min(grid.rows(), mostRows); row++) {
            if (place(row, 0, columns(), 2) >= 0) {
                return true;
            }
        }
        return false;
    }

    /** The column of the last of so many cells of a row that begin as headers do; -1 if there are fewer. */
    private int place(int row, int first, int end, int count) {
        int known = 0;
        for (int column = first; column < end; column++) {
            known += beginsHeader(row, column) ? 1 : 0;
            if (known == count) {
                return column;
            }
        }
        return -1;
    }

    /**
     * Whether two cells of a row begin with a word that begins a header.
     *
     * @param taken columns not to be looked at, for lists found before have them
     */
    boolean isLikeHeader(int row, boolean[] taken) {
        int known = 0;
        int other = 0;
        boolean figures = false;
        for (int column = 0; column < taken.length; column++) {
            if (!taken[column]) {
                Grid.Kind kind = grid.kind(row, column);
                figures |= kind == Grid.Kind.NUMBER && !isYear(grid.number(row, column));
                if (kind == Grid.Kind.TEXT && beginsHeader(grid.text(row, column))) {
                    known++;
                } else if (kind == Grid.Kind.TEXT) {
                    other++;
                }
            }
        }
        if (known < 2 && figures && !settled.isEmpty() && isAllSettled(row, taken)) {
            return true;
        }
        // A few words of ours among many others: in a row of figures chance, in one without the columns of a wide list.
        return known >= 2 && (known * 4 >= other || !figures);
    }

    /** Whether the Layout sheet names all that stands in a row: headers that are numbers are known by it alone. */
    private boolean isAllSettled(int row, boolean[] taken) {
        int named = 0;
        for (int column = 0; column < taken.length; column++) {
            if (!taken[column] && grid.kind(row, column) != Grid.Kind.BLANK) {
                if (!settled.contains(HeaderText.normal(grid.words(row, column)))) {
                    return false;
                }
                named++;
            }
        }
        return named >= 2;
    }

    /** What is said of what looks like a header where no list is looked for any more. */
    Optional<Finding> beyond(int rows) {
        for (int row = 0; row < Math.min(rows, MOST_ROWS_BEYOND); row++) {
            int column = place(row, MOST_COLUMNS, grid.columns(), LEAST_BEYOND);
            if (column >= 0) {
                return Optional.of(Finding.caution(
                        grid.address(row, column),
                        "This looks like the header of a list, but lists are looked for in the first "
                                + MOST_COLUMNS
                                + " columns of a sheet only, so nothing of it is read. Move it"
                                + " to the left, or to a sheet of its own."));
            }
        }
        return Optional.empty();
    }

    /** Headers of what was harvested before. */
    private static boolean isYear(double number) {
        return number >= 1950 && number <= 2100 && number == Math.rint(number);
    }

    /** Whether a cell begins with a word that begins a header. */
    boolean beginsHeader(int row, int column) {
        return grid.kind(row, column) == Grid.Kind.TEXT && beginsHeader(grid.text(row, column));
    }

    /** Whether a text begins with a word that begins a header. */
    boolean beginsHeader(String whole) {
        if (whole.length() > LONGEST) {
            return false;
        }
        if (!settled.isEmpty() && isSettled(HeaderText.of(whole))) {
            return true;
        }
        List<NumberedText> numbered = NumberedText.of(Words.trim(whole));
        return beginsByWord(numbered.isEmpty() ? whole : numbered.get(0).rest());
    }

    /** Whether Layout names a header, or what stands before a unit of it. */
    private boolean isSettled(HeaderText header) {
        for (int count = header.words().size(); count > 0; count--) {
            if (settled.contains(header.name(count))) {
                return true;
            }
        }
        return false;
    }

    private boolean beginsByWord(String text) {
        int start = 0;
        int length = text.length();
        while (start < length && !Character.isLetterOrDigit(text.charAt(start))) {
            start++;
        }
        int end = start;
        while (end < length && Character.isLetterOrDigit(text.charAt(end))) {
            end++;
        }
        if (hasNumber(text) && hasNumber(HeaderText.withoutYear(text))) {
            return false;
        }
        // "MachineName" is two words, and begins a header by the first.
        String normal = end > start ? HeaderText.normal(text.substring(start, end)) : "";
        int parted = normal.indexOf(' ');
        return firstWords.contains(parted < 0 ? normal : normal.substring(0, parted));
    }

    /** Whether digits stand in it that are not the power of a unit: "Field 7", but not "Output (m3/h)". */
    private static boolean hasNumber(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9' && (i == 0 || !Character.isLetter(text.charAt(i - 1))) && c != '1') {
                return true;
            }
        }
        return false;
    }
}
