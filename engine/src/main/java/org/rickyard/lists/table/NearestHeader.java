package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.text.Words;

/** The header rows of a sheet that came nearest to lists, told where no such list is found there. */
public final class NearestHeader {
    private static final int MOST_NAMED = 6;

    /** Two headers may be known by chance: "Field" beside "Date". */
    private static final int LEAST_OF_A_WHOLE = 3;

    /** A row of units and a blank one may stand between a header and the first figure. */
    private static final int ROWS_LOOKED_AT = 3;

    private static final Pattern FIGURE = Pattern.compile("\\s*-?\\d+(?:[.,]\\d+)?\\s*");

    private final Grid grid;
    private final HeaderRow headerRow;
    private final List<Vocabulary> vocabularies;
    private final List<Vocabulary> namedBySheet;
    private final Map<ListSpec, Near> nearest = new LinkedHashMap<>();

    /** Areas told with a crop, say, but under no header known for the names of fields; and so tonnes of feed. */
    private final Map<ListSpec, Near> unnamed = new LinkedHashMap<>();

    /** Lists that everything rests on, and what is measured in each. */
    private static final Map<ListSpec, ColumnSpec> MEASURED =
            Map.of(Fields.LIST, Fields.AREA, Stocks.LIST, Stocks.AMOUNT);

    /** A row of headers that begins no list, and what it comes near to. */
    private record Near(HeaderRow.Match match, int row, String[] headers) {}

    NearestHeader(Grid grid, HeaderRow headerRow, List<Vocabulary> vocabularies, List<Vocabulary> namedBySheet) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.vocabularies = vocabularies;
        this.namedBySheet = namedBySheet;
    }

    /** Keeps a stretch of a row that begins no list, if it is nearer to the list it is nearest to than those before it. */
    void consider(String[] texts, int at, int first, int last, List<Vocabulary> named) {
        HeaderRow.Match best = null;
        long figures = Arrays.stream(texts, first, last + 1)
                .filter(text -> text != null && FIGURE.matcher(text).matches())
                .count();
        for (Vocabulary vocabulary : vocabularies) {
            boolean isNamed = named.contains(vocabulary);
            HeaderRow.Match match = headerRow.match(vocabulary, texts, first, last, isNamed);
            if (figures >= match.matched()) {
                // "Bunker | bunker | 40 | 12 | 3" is what stands under a header.
                continue;
            }
            keepUnnamed(match, texts, at);
            int worth = match.matched() + (isNamed ? 2 : 0);
            // On a sheet of the list's own name, what it is known by is enough to miss the rest of it.
            boolean own = vocabulary.isCalled(grid.sheet()) && vocabulary.isKnownIn(match);
            boolean near = (worth >= HeaderRow.HARDLY_BY_CHANCE || own || isWhole(match, texts, at))
                    && match.score() > match.matched()
                    && !match.missing().isEmpty();
            if (near && (best == null || match.score() > best.score())) {
                best = match;
            }
        }
        if (best != null) {
            Near before = nearest.get(best.vocabulary().spec());
            if (before == null || best.score() > before.match().score()) {
                nearest.put(best.vocabulary().spec(), new Near(best, at, texts));
            }
        }
    }

    /**
     * Whether a list knows each of several headers, the one it is known by among them, and there are figures under them: a
     * calibration of machines without their types is a list of machines.
     */
    private boolean isWhole(HeaderRow.Match match, String[] texts, int at) {
        long headers = Arrays.stream(texts, match.firstColumn(), match.lastColumn() + 1)
                .filter(Objects::nonNull)
                .count();
        return match.matched() == headers
                && headers >= LEAST_OF_A_WHOLE
                && match.vocabulary().isKnownIn(match)
                && Arrays.stream(match.headings())
                        .filter(Objects::nonNull)
                        .filter(heading ->
                                heading.isCertain() && heading.column().isNumeric())
                        .anyMatch(heading -> hasFiguresBelow(match, heading.column(), at));
    }

    private void keepUnnamed(HeaderRow.Match match, String[] texts, int at) {
        ListSpec spec = match.vocabulary().spec();
        boolean bales = spec == Stocks.LIST && isOfBales(match, texts);
        ColumnSpec measured = bales ? Stocks.COUNT : MEASURED.get(spec);
        if (measured == null
                || match.matched() < 2
                || !match.missing().contains(spec.identity().get(0).name())) {
            return;
        }
        Near before = unnamed.get(spec);
        if ((before == null || match.score() > before.match().score()) && hasFiguresBelow(match, measured, at)) {
            unnamed.put(spec, new Near(match, at, texts));
        }
    }

    /** "Hay | Bales | Bale weight": bales are counted and weighed beside what names them on a sheet of stocks. */
    private static boolean isOfBales(HeaderRow.Match match, String[] texts) {
        return match.places(Stocks.COUNT) == 1
                && match.places(Stocks.WEIGHT_EACH) == 1
                && IntStream.range(0, match.headings().length)
                        .filter(i -> match.headings()[i] == null && texts[match.firstColumn() + i] != null)
                        .anyMatch(i -> match.vocabulary().mayNameRows(texts[match.firstColumn() + i]));
    }

    private boolean hasFiguresBelow(HeaderRow.Match match, ColumnSpec measured, int at) {
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading != null && heading.isCertain() && heading.column() == measured) {
                for (int row = at + 1; row < Math.min(grid.rows(), at + 1 + ROWS_LOOKED_AT); row++) {
                    if (grid.kind(row, match.firstColumn() + i) == Grid.Kind.NUMBER) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /**
     * Where no sheet has such a list, two headers of one are hardly there by chance: fields called meadows or by a word of
     * the place would be passed over without a word. Those are left out that are told of as they are.
     */
    Map<ListSpec, Finding> unnamed(boolean otherSheet) {
        Map<ListSpec, Finding> told = new LinkedHashMap<>();
        unnamed.forEach((spec, near) -> {
            if (!otherSheet && !nearest.containsKey(spec)) {
                told.put(spec, told(near, false));
            }
        });
        return told;
    }

    /** The columns that the row which comes nearest to a list has no headers for; empty if none comes near. */
    List<String> missing(ListSpec spec) {
        Near near = nearest.get(spec);
        return near == null
                ? List.of()
                : near.match().missing().stream()
                        .filter(what -> !what.equals(HeaderRow.MORE))
                        .toList();
    }

    /** The row that comes nearest to a list and lacks this column and nothing else. */
    OptionalInt rowWithout(ListSpec spec, ColumnSpec column) {
        Near near = nearest.get(spec);
        return near != null && near.match().missing().equals(List.of(column.name()))
                ? OptionalInt.of(near.row())
                : OptionalInt.empty();
    }

    /**
     * What to say of them, one row for each list; nothing where its list was found after all.
     *
     * @param otherSheet whether the sheet says that it holds something else, so that only its own lists are missed
     * @param form a form on the sheet, which is told of as a whole and not by its rows; null if there is none
     */
    List<Finding> told(List<FoundTable> tables, boolean otherSheet, Form form) {
        List<Finding> told = new ArrayList<>();
        for (Near near : nearest.values()) {
            ListSpec spec = near.match().vocabulary().spec();
            boolean named = namedBySheet.contains(near.match().vocabulary());
            boolean ofForm = form != null && form.holds(near.row());
            if (!ofForm && (named || !otherSheet) && tables.stream().noneMatch(table -> table.role(spec) != null)) {
                told.add(told(near, named));
            }
        }
        return told;
    }

    private Finding told(Near near, boolean named) {
        List<String> missing = near.match().missing().stream()
                .filter(what -> near.match().missing().size() == 1 || !what.equals(HeaderRow.MORE))
                .toList();
        String header = grid.header();
        String message = (grid.isTurned()
                        ? "These labels look like headers of the list "
                        : "This row looks like the header of the list ")
                + near.match().vocabulary().spec().name()
                + (grid.isTurned() ? ", but there is no " : ", but it has no ") + header + " "
                + String.join(" and no " + header + " ", missing)
                + ", so nothing of it is read." + notKnown(near)
                + " Add the " + header + ", or name it in a sheet Layout (List, Column, Header in this workbook, Unit)."
                + inWords(near.match());
        CellAddress cell = grid.address(near.row(), firstKnown(near.match()));
        return named ? Finding.stop(cell, message) : Finding.caution(cell, message);
    }

    /** What is written under missing columns that hold one of a few words. */
    private static String inWords(HeaderRow.Match match) {
        return match.vocabulary().spec().columns().stream()
                .filter(column -> column.type() == ColumnSpec.Type.CHOICE
                        && match.missing().contains(column.name()))
                .map(column -> " In " + column.name() + " stands " + column.help())
                .collect(Collectors.joining());
    }

    private static int firstKnown(HeaderRow.Match match) {
        for (int i = 0; i < match.headings().length; i++) {
            if (match.headings()[i] != null) {
                return match.firstColumn() + i;
            }
        }
        return match.firstColumn();
    }

    /** Which of its headers mean nothing: as a rule what is missed is one of them, in words that are not known. */
    private static String notKnown(Near near) {
        List<String> others = new ArrayList<>();
        HeaderRow.Match match = near.match();
        for (int i = 0; i < match.headings().length && others.size() < MOST_NAMED; i++) {
            String header = near.headers()[match.firstColumn() + i];
            if (match.headings()[i] == null && header != null) {
                others.add(Words.quoted(header));
            }
        }
        return others.isEmpty() ? "" : " Not known of its headers: " + String.join(", ", others) + ".";
    }
}
