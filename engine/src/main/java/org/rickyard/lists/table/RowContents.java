package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.UnitText;

/** What stands in a row below or above a header, in the columns of its list: a name, units, a remark, another header. */
final class RowContents {
    /** First words of a line that is a remark, where it has nothing beside it. */
    private static final Set<String> REMARKS = Set.of("note", "nb", "remark", "see", "source");

    /** Lists with several rows of one name, as a job and a mix have for their products; one field has one row. */
    private static final List<ListSpec> SEVERAL_ROWS = List.of(Jobs.LIST, Mixes.LIST, Cuts.LIST);

    /** What stands around the number of a column. */
    private static final Pattern COLUMN_MARKS = Pattern.compile("[()\\[\\].]");

    /** Two figures that count up from 1 may be typed. */
    private static final int LEAST_NUMBERED = 3;

    private final FoundTable table;
    private final Grid grid;
    private final int[] identity;
    private final int[] numeric;

    /**
     * Of a table.
     *
     * @param identity the columns that name a row
     * @param numeric the columns of figures
     */
    RowContents(FoundTable table, int[] identity, int[] numeric) {
        this.table = table;
        this.grid = table.grid;
        this.identity = identity;
        this.numeric = numeric;
    }

    /** How many cells of the row are filled: 0, 1 or 2 for more. */
    int filled(int row) {
        int filled = 0;
        for (int column = table.firstColumn; column <= table.lastColumn && filled < 2; column++) {
            if (!isBlank(row, column)) {
                filled++;
            }
        }
        return filled;
    }

    private boolean isBlank(int row, int column) {
        Grid.Kind kind = grid.kind(row, column);
        return kind == Grid.Kind.BLANK
                || kind == Grid.Kind.TEXT && Words.trim(grid.text(row, column)).isEmpty();
    }

    /** Whether what names a row is filled. */
    boolean isNamed(int row) {
        boolean several = SEVERAL_ROWS.contains(table.chief());
        for (int column : identity) {
            if (!isBlank(several ? grid.topOf(row, column) : row, column)) {
                return true;
            }
        }
        return identity.length == 0;
    }

    /** A line in brackets or one that says that it is a note. */
    boolean isRemark(int row) {
        String text = identity.length == 0 ? "" : Words.trim(text(row, identity[0]));
        String first = Words.normal(text).split(" ")[0];
        return text.startsWith("(") && text.endsWith(")") || text.startsWith("*") || REMARKS.contains(first);
    }

    /** All that stands in a row of the list. */
    String words(int row) {
        List<String> words = new ArrayList<>();
        for (int column = table.firstColumn; column <= table.lastColumn; column++) {
            if (!isBlank(row, column)) {
                words.add(text(row, column));
            }
        }
        return String.join(" ", words);
    }

    private String text(int row, int column) {
        return grid.kind(row, column) == Grid.Kind.NUMBER
                ? Words.digits(grid.number(row, column))
                : grid.text(row, column);
    }

    /** Whether all that stands in it is units. */
    boolean isUnits(int row) {
        return unitsIn(row) > 0;
    }

    /** How many units stand in a row all of whose filled cells are units; 0 if a column of words is filled. */
    int unitsIn(int row) {
        int units = 0;
        for (int column = table.firstColumn; column <= table.lastColumn; column++) {
            if (isBlank(row, column)) {
                continue;
            }
            if (grid.kind(row, column) != Grid.Kind.TEXT) {
                return 0;
            }
            String text = grid.text(row, column);
            if (isUnit(text)) {
                units++;
            } else if (Words.normal(text).length() > 0 && !isDateOrText(text)) {
                return 0;
            }
        }
        return units;
    }

    private static boolean isUnit(String text) {
        return !(UnitText.read(text, CustomaryUnits.UNSET) instanceof UnitText.Unknown)
                || !(DoseText.read(text, CustomaryUnits.UNSET) instanceof DoseText.Unknown);
    }

    private static boolean isDateOrText(String text) {
        String normal = Words.normal(text);
        return normal.equals("date")
                || normal.equals("text")
                || normal.equals("name")
                || normal.equals("n a")
                || normal.equals("yes no")
                || normal.equals("y n");
    }

    /** Whether it counts the columns from the first on, as forms do under their headers: 1, 2, 3 or (a), (b), (c). */
    boolean numbersColumns(int row) {
        return numbersColumns(row, UnaryOperator.identity(), Integer::toString)
                || numbersColumns(
                        row, text -> text.toLowerCase(Locale.ROOT), count -> Character.toString('a' + count - 1));
    }

    private boolean numbersColumns(int row, UnaryOperator<String> written, IntFunction<String> mark) {
        int count = 0;
        int first = table.firstColumn;
        for (int column = table.firstColumn; column <= table.lastColumn; column++) {
            if (table.headers[column] == null && isBlank(row, column)) {
                continue;
            }
            first = count == 0 ? column : first;
            count++;
            if (!written.apply(bare(row, column)).equals(mark.apply(count))) {
                return false;
            }
        }
        return count >= LEAST_NUMBERED && !written.apply(below(row, first)).equals(mark.apply(2));
    }

    /** What the next filled cell below says: under a field called 1 there is one called 2. */
    private String below(int row, int column) {
        int below = row + 1;
        while (below < grid.rows() && isBlank(below, column)) {
            below++;
        }
        return below < grid.rows() ? bare(below, column) : "";
    }

    private String bare(int row, int column) {
        return COLUMN_MARKS.matcher(Words.trim(text(row, column))).replaceAll("");
    }

    /** Words where this list has figures, and no figures: the header of a table this engine does not know. */
    boolean isForeignHeader(int row) {
        int words = 0;
        for (int column : numeric) {
            Grid.Kind kind = grid.kind(row, column);
            if (kind == Grid.Kind.NUMBER) {
                return false;
            }
            if (kind == Grid.Kind.TEXT && looksLikeWord(grid.text(row, column))) {
                words++;
            }
        }
        return words > 0;
    }

    private static boolean looksLikeWord(String text) {
        int letters = 0;
        for (int i = 0; i < text.length(); i++) {
            if (Character.isDigit(text.charAt(i))) {
                return false;
            }
            letters += Character.isLetter(text.charAt(i)) ? 1 : 0;
        }
        return letters > 2;
    }
}
