package org.rickyard.lists.header;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Grid;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;

/**
 * A header two rows deep: "Area" over "(ac)", "Working" over "width (m)", or a heading over several columns ("First
 * cut") with the columns' own names under it.
 *
 * <p>The row below belongs to the header if it holds words only, none of them under the name of the list's rows, and if
 * at least one column is better understood with it: a unit for a header that has none, or a name known here where the
 * row above has none. A row of nothing but units is left to who reads the rows.
 */
public final class TwoDeepHeader {
    /** What may stand under the name of the rows without being a name itself: "Field" over "name". */
    private static final Set<String> NAME_GOES_ON = Set.of("name", "number", "id");

    private final Grid grid;
    private final List<Vocabulary> vocabularies;
    private final UnitBelowHeader units;

    public TwoDeepHeader(Grid grid, List<Vocabulary> vocabularies) {
        this.grid = grid;
        this.vocabularies = vocabularies;
        this.units = new UnitBelowHeader(grid, vocabularies);
    }

    /**
     * The headers of two rows put together, column by column; null if the row below is none of the header's.
     *
     * @param above the headers of the upper row per column of the sheet, null where there is none
     * @param first the first column
     * @param last the last column; what the lower row has to the right of it is taken up as far as it goes without a gap
     */
    public String[] of(String[] above, int row, int first, int last) {
        int end = last;
        while (end + 1 < above.length && above[end + 1] == null && below(row, end + 1) != null) {
            end++;
        }
        // Most rows below are no header: what tells so is looked at first, for it costs least.
        for (int column = first; column <= end; column++) {
            Grid.Kind kind = grid.kind(row + 1, column);
            if (kind != Grid.Kind.BLANK && kind != Grid.Kind.TEXT && !isYear(row, column)) {
                return null;
            }
        }
        boolean[] names = names(above, first, end, this::isNameOfRows);
        if (names == null) {
            names = names(above, first, end, this::mayBeNameOfRows);
        }
        return names == null || saysNames(names, above, row, first) ? null : together(above, row, first, names);
    }

    /**
     * The headers of a row together with words above them that begin some of them: "Working" over "width (m)" beside a
     * "Machine" that has nothing above it; null if there are none. A word above counts where it makes a name of what is
     * none, or another column of what is one that no other header means; over a unit it always does.
     *
     * @param headers the headers of the lower row per column of the sheet, null where there is none
     */
    public String[] withAbove(String[] headers, int row, int first, int last) {
        int words = 0;
        for (int column = first; column <= last; column++) {
            Grid.Kind kind = grid.kind(row - 1, column);
            if (kind != Grid.Kind.BLANK && kind != Grid.Kind.TEXT) {
                return null;
            }
            String above = kind == Grid.Kind.TEXT ? Words.trim(grid.text(row - 1, column)) : "";
            words += above.isEmpty() || column == first ? 0 : 1;
        }
        if (words == 0) {
            return null;
        }
        String[] both = headers.clone();
        boolean better = false;
        String over = null;
        for (int column = first; column <= last; column++) {
            String above = grid.kind(row - 1, column) == Grid.Kind.TEXT ? Words.trim(grid.text(row - 1, column)) : "";
            boolean goesOn = above.isEmpty() && over != null && headers[column] != null;
            if (goesOn && isOfHeading(headers, first, last, column, UnitBelowHeader.unitLast(over, headers[column]))) {
                both[column] = UnitBelowHeader.unitLast(over, headers[column]);
                continue;
            }
            over = null;
            if (headers[column] != null && !above.isEmpty() && (!isUnitAlone(above) || isUnitAlone(headers[column]))) {
                String joined = above + " " + headers[column];
                boolean unit = isUnitAlone(headers[column]) && (isKnown(joined) || !isColumnsName(headers[column]));
                if (unit || begins(headers, first, last, column, joined)) {
                    both[column] = joined;
                    over = above;
                    better = true;
                }
            }
        }
        return better ? both : null;
    }

    /**
     * Takes over names that stand in the row above beside headings of several columns, as cells merged over both rows have
     * them: "Client" beside "Field details", which stands over "Field", "Ha" and "Crop".
     *
     * @param headers the headers of the lower row per column of the sheet, null where there is none
     */
    public void mergedDown(String[] headers, int row) {
        for (int column = headers.length - 1; column >= 0; column--) {
            if (isMergedDown(headers, row, column)) {
                headers[column] = Words.trim(grid.text(row - 1, column));
            }
        }
    }

    private boolean isMergedDown(String[] headers, int row, int column) {
        boolean beside =
                column + 1 < headers.length && headers[column + 1] != null || column > 0 && headers[column - 1] != null;
        if (headers[column] != null
                || !beside
                || grid.kind(row, column) != Grid.Kind.BLANK
                || grid.kind(row - 1, column) != Grid.Kind.TEXT
                || grid.kind(row + 1, column) == Grid.Kind.BLANK) {
            return false;
        }
        boolean headings = IntStream.range(0, headers.length)
                .anyMatch(other -> headers[other] != null && grid.kind(row - 1, other) == Grid.Kind.TEXT);
        return headings && isNewName(Words.trim(grid.text(row - 1, column)), headers);
    }

    /** Whether a list knows the name as a column that none of the headers means. */
    private boolean isNewName(String name, String[] headers) {
        HeaderText text = HeaderText.of(name);
        return vocabularies.stream().anyMatch(vocabulary -> {
            Heading heading = vocabulary.read(text);
            boolean known = heading != null && heading.isCertain();
            return (known || vocabulary.mayMeanOtherwise(text))
                    && Stream.of(headers)
                            .filter(Objects::nonNull)
                            .map(other -> vocabulary.read(HeaderText.of(other)))
                            .noneMatch(other ->
                                    known && other != null && other.isCertain() && other.column() == heading.column());
        });
    }

    /** Whether a text is a unit and cannot be a name, as "Count", "Nozzle" and "Hours per day" are. */
    static boolean isUnitAlone(String text) {
        boolean inBrackets = text.startsWith("(") || text.startsWith("[");
        return SaidUnit.measures(text) || SaidUnit.isUnit(text) && (inBrackets || text.contains("%"));
    }

    /** "Days" is what a column is called, and a unit too. */
    private boolean isColumnsName(String header) {
        return vocabularies.stream()
                .flatMap(vocabulary -> vocabulary.spec().columns().stream())
                .anyMatch(column -> HeaderText.normal(column.name()).equals(HeaderText.normal(header)));
    }

    private boolean begins(String[] headers, int first, int last, int column, String joined) {
        HeaderText text = HeaderText.of(joined);
        return vocabularies.stream().anyMatch(vocabulary -> {
            Heading both = vocabulary.read(text);
            return both != null
                    && both.isCertain()
                    && IntStream.rangeClosed(first, last)
                            .filter(other -> headers[other] != null)
                            .mapToObj(other -> vocabulary.read(HeaderText.of(headers[other])))
                            .noneMatch(other -> other != null && other.isCertain() && other.column() == both.column());
        });
    }

    /**
     * Whether a heading with a unit goes on over a further column: "Density (kg/m3)" over "Fresh" and "DM", which by itself
     * is a share and here is the other density. A column with a unit of its own, or of names, is none of the heading's.
     */
    private boolean isOfHeading(String[] headers, int first, int last, int column, String joined) {
        HeaderText alone = HeaderText.of(headers[column]);
        HeaderText text = HeaderText.of(joined);
        return begins(headers, first, last, column, joined)
                && vocabularies.stream().anyMatch(vocabulary -> {
                    Heading own = vocabulary.read(alone);
                    Heading both = vocabulary.read(text);
                    return own != null
                            && both != null
                            && both.isCertain()
                            && !both.rest().isEmpty()
                            && HeaderUnit.fits(both.column(), both.rest())
                            && own.rest().isEmpty()
                            && own.candidates().stream().allMatch(ColumnSpec::isNumeric)
                            && !own.candidates().contains(both.column());
                });
    }

    /** By column, whether the rows are known by what stands under it; null if by none. */
    private static boolean[] names(String[] above, int first, int end, Predicate<String> isName) {
        boolean[] names = new boolean[end + 1];
        boolean named = false;
        for (int column = first; column <= end; column++) {
            names[column] = isName.test(above[column]);
            named |= names[column];
        }
        return named ? names : null;
    }

    /** Whether a name stands in the row below, so that it is a row of the list. */
    private boolean saysNames(boolean[] names, String[] above, int row, int first) {
        for (int column = first; column < names.length; column++) {
            String below = names[column] ? below(row, column) : null;
            if (below != null
                    && !NAME_GOES_ON.contains(HeaderText.normal(below))
                    && !isWholeName(above[column] + " " + below)) {
                return true;
            }
        }
        return false;
    }

    private boolean goesOn(String above, int row, int column) {
        String below = below(row, column);
        return below != null && !NAME_GOES_ON.contains(HeaderText.normal(below)) && isWholeName(above + " " + below);
    }

    /** "Nozzle" over "size" is no nozzle of that name. */
    private boolean isWholeName(String header) {
        HeaderText text = HeaderText.of(header);
        return vocabularies.stream().anyMatch(vocabulary -> {
            Heading heading = vocabulary.read(text);
            return heading != null
                    && heading.isCertain()
                    && (heading.rest().isEmpty()
                            || heading.column().isNumeric() && HeaderUnit.fits(heading.column(), heading.rest()));
        });
    }

    private String[] together(String[] above, int row, int first, boolean[] names) {
        String[] both = above.clone();
        boolean better = false;
        String over = null;
        for (int column = first; column < names.length; column++) {
            over = above[column] == null ? over : above[column];
            String below = names[column] && !goesOn(above[column], row, column) ? null : below(row, column);
            if (below != null) {
                both[column] = isYear(below)
                        ? ofYear(over, below)
                        : above[column] == null ? under(over, below) : together(above[column], below);
                better |= !both[column].equals(above[column]) && isKnown(both[column]);
            }
        }
        keepStrangers(above, both, first, names.length);
        return better ? units.withUnits(above, both, row, first) : null;
    }

    /** "km/h" under a word that means nothing measures that word, where another column is the speed already. */
    private void keepStrangers(String[] above, String[] both, int first, int end) {
        for (int column = first; column < end; column++) {
            boolean unitAlone = above[column] != null
                    && both[column] != null
                    && !both[column].contains(above[column])
                    && SaidUnit.isUnit(both[column]);
            if (unitAlone && isKnownBeside(both, first, end, column)) {
                both[column] = above[column];
            }
        }
    }

    private boolean isKnownBeside(String[] headers, int first, int end, int column) {
        HeaderText text = HeaderText.of(headers[column]);
        return vocabularies.stream().anyMatch(vocabulary -> {
            Heading meant = vocabulary.read(text);
            return meant != null
                    && meant.isCertain()
                    && IntStream.range(first, end)
                            .filter(other -> other != column && headers[other] != null)
                            .mapToObj(other -> vocabulary.read(HeaderText.of(headers[other])))
                            .anyMatch(beside ->
                                    beside != null && beside.isCertain() && beside.column() == meant.column());
        });
    }

    /** A heading over several years is the heading of each: "Crops" over "2025" and "2026". */
    private static String ofYear(String over, String year) {
        return over == null ? year : over + " " + year;
    }

    private static boolean isYear(String text) {
        HeaderText bare = HeaderText.of(text).withoutYear();
        return bare != null && bare.words().isEmpty();
    }

    private boolean isYear(int row, int column) {
        return grid.kind(row + 1, column) == Grid.Kind.NUMBER && isYear(Words.digits(grid.number(row + 1, column)));
    }

    private String below(int row, int column) {
        if (isYear(row, column)) {
            return Words.digits(grid.number(row + 1, column));
        }
        if (grid.kind(row + 1, column) != Grid.Kind.TEXT) {
            return null;
        }
        String text = Words.trim(grid.text(row + 1, column));
        return text.isEmpty() ? null : text;
    }

    /** What the rows of a list are called by: under it stands the name of a row, unless it goes on ("Field", "name"). */
    private boolean isNameOfRows(String header) {
        if (header == null) {
            return false;
        }
        HeaderText text = HeaderText.of(header);
        return vocabularies.stream().anyMatch(vocabulary -> {
            Heading heading = vocabulary.read(text);
            return heading != null
                    && heading.isCertain()
                    && vocabulary.spec().identity().contains(heading.column());
        });
    }

    /** The same by a header that counts only where no other means the column. */
    private boolean mayBeNameOfRows(String header) {
        if (header == null) {
            return false;
        }
        HeaderText text = HeaderText.of(header);
        return vocabularies.stream()
                .anyMatch(vocabulary -> vocabulary.otherwise().mayNameRows(text));
    }

    /** "Road speed (km/h)" over "Laden" and "Empty" is the heading of both, though it stands over the first alone. */
    private String under(String over, String below) {
        if (over == null) {
            return below;
        }
        if (meansSomething(below)) {
            // "Road laden" under "Speed mph" is in miles.
            String whole = UnitBelowHeader.unitLast(over, below);
            return units.takesUnit(below, whole) ? whole : below;
        }
        for (String joined : List.of(UnitBelowHeader.unitLast(over, below), over + " " + below)) {
            if (isKnown(joined)) {
                return joined;
            }
        }
        return below;
    }

    private String together(String above, String below) {
        if (above == null) {
            return below;
        }
        if (above.lastIndexOf('(') > above.lastIndexOf(')') && isKnown(above + " " + below)) {
            // "Working width (in" over "m)" is in metres.
            return above + " " + below;
        }
        HeaderText alone = HeaderText.of(above);
        for (String joined : List.of(above + " " + below, UnitBelowHeader.unitLast(above, below))) {
            HeaderText both = HeaderText.of(joined);
            if (vocabularies.stream().anyMatch(vocabulary -> isBetter(vocabulary, alone, both))) {
                return joined;
            }
        }
        if (!isKnown(above) && units.isMeasuredOtherwise(above + " " + below)) {
            return above + " " + below;
        }
        return !meansSomething(above) && meansSomething(below) ? below : above;
    }

    /** Whether any list knows the header, be it that it has to be asked about. */
    private boolean meansSomething(String header) {
        HeaderText text = HeaderText.of(header);
        return vocabularies.stream().anyMatch(vocabulary -> vocabulary.read(text) != null);
    }

    private boolean isKnown(String header) {
        HeaderText text = HeaderText.of(header);
        return vocabularies.stream().anyMatch(vocabulary -> {
            Heading heading = vocabulary.read(text);
            return heading != null && heading.isCertain();
        });
    }

    /** Whether the lower word adds to the upper one: its unit, or the rest of a name. */
    private static boolean isBetter(Vocabulary vocabulary, HeaderText above, HeaderText joined) {
        Heading upper = vocabulary.read(above);
        Heading both = vocabulary.read(joined);
        if (both == null || !both.isCertain() || upper != null && upper.settled()) {
            return false;
        }
        boolean further = upper == null || !upper.isCertain() || upper.column() != both.column();
        // "Order in" over "tank", "Intake (kg" over "DM/d)": what was left of the name or unit is no unit by itself.
        boolean unread = !further
                && !upper.rest().isEmpty()
                && !HeaderUnit.fits(both.column(), upper.rest())
                && (both.rest().isEmpty() || HeaderUnit.fits(both.column(), both.rest()));
        return further
                || both.column().isNumeric()
                        && (unread || upper.rest().isEmpty() && !both.rest().isEmpty());
    }
}
