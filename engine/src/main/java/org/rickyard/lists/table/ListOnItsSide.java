package org.rickyard.lists.table;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Layout;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.text.AmountText;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;

/**
 * A list whose headers stand below one another with a column for each thing, as forms for one clamp or one machine are
 * laid out.
 *
 * @param spec the list
 * @param column where its headers stand
 * @param headers some of them, by row
 * @param named whether one of them has the name of a thing beside it, or the word for what it is
 */
record ListOnItsSide(ListSpec spec, int column, Map<Integer, String> headers, boolean named) {
    private static final int ROWS = 100;
    private static final int COLUMNS = 6;
    private static final int LEAST_HEADERS = 3;
    private static final int LEAST_FIGURES = 2;
    /** What a thing is called and what it is: "Machine | Round baler" over "Type | baler" are no headers of a list. */
    private static final int LEAST_NAMED = 2;

    /** Columns that are called as items of Assumptions are, which stand below one another. */
    private static final List<ColumnSpec> ITEMS = List.of(Machines.INTEREST, Machines.INSURANCE);

    /** What a card of one job tells of. */
    static final List<ListSpec> OF_A_JOB = List.of(Fields.LIST, Jobs.LIST, Machines.LIST);

    private static final int NAMED = 3;
    /** Behind a label stand what is told, and perhaps its unit. */
    private static final int VALUE_AND_UNIT = 3;

    /** So far from its label what is told may stand: labels are often merged over a few columns. */
    static final int NEAR = 5;

    private static final int ROW_LOOKED_AT = 20;

    /**
     * Looks at the first rows and columns of a sheet. A list proper has no headers of figures below one another with
     * figures beside them.
     *
     * @param mayBeHeader a quick look at a text
     */
    static Optional<ListOnItsSide> find(Grid grid, List<Vocabulary> vocabularies, Predicate<String> mayBeHeader) {
        ListOnItsSide best = null;
        for (int column = 0; column < Math.min(COLUMNS, grid.columns() - 1); column++) {
            Map<String, Integer> texts = texts(grid, column, mayBeHeader);
            for (Vocabulary vocabulary : texts.isEmpty() ? List.<Vocabulary>of() : vocabularies) {
                ListOnItsSide found = of(grid, column, vocabulary, texts);
                if (found != null && (best == null || found.headers.size() > best.headers.size())) {
                    best = found;
                }
            }
        }
        if (best != null) {
            return Optional.of(best);
        }
        for (int column = 0; column < Math.min(COLUMNS, grid.columns() - 1); column++) {
            ListOnItsSide card = card(grid, column, vocabularies, texts(grid, column, mayBeHeader));
            if (card != null) {
                return Optional.of(card);
            }
        }
        return Optional.empty();
    }

    /**
     * A card of one job, as it is handed to who does it: the field, its area, the sprayer and its tank below one another, a
     * few headers of each list and enough of none. Null if it is none.
     */
    private static ListOnItsSide card(
            Grid grid, int column, List<Vocabulary> vocabularies, Map<String, Integer> texts) {
        Map<Integer, String> headers = new LinkedHashMap<>();
        boolean field = false;
        int figures = 0;
        for (Map.Entry<String, Integer> entry : texts.entrySet()) {
            HeaderText text = HeaderText.of(entry.getKey());
            int row = entry.getValue();
            boolean measured = isFigure(grid, row, beside(grid, row, column));
            for (Vocabulary vocabulary : vocabularies) {
                Heading heading = OF_A_JOB.contains(vocabulary.spec()) ? vocabulary.read(text) : null;
                if (heading != null
                        && heading.isCertain()
                        && heading.column().isNumeric() == measured
                        && !isHeader(grid, row, beside(grid, row, column), heading, vocabularies)
                        && !isHeaderRow(grid, row, beside(grid, row, column), vocabulary)) {
                    headers.put(row, Words.trim(entry.getKey()));
                    field |= heading.column() == Jobs.FIELD || heading.column() == Fields.FIELD;
                    figures += measured ? 1 : 0;
                    break;
                }
            }
        }
        return field && figures >= LEAST_FIGURES && headers.size() > LEAST_HEADERS
                ? new ListOnItsSide(Jobs.LIST, column, headers, true)
                : null;
    }

    /** The texts of a column that may be headers, each with its first row; none if they are too few. */
    private static Map<String, Integer> texts(Grid grid, int column, Predicate<String> mayBeHeader) {
        Map<String, Integer> texts = new LinkedHashMap<>();
        int figures = 0;
        for (int row = 0; row < Math.min(ROWS, grid.rows()); row++) {
            Grid.Kind beside = grid.kind(row, beside(grid, row, column));
            if (beside != Grid.Kind.BLANK
                    && grid.kind(row, column) == Grid.Kind.TEXT
                    && !texts.containsKey(grid.text(row, column))
                    && mayBeHeader.test(grid.text(row, column))) {
                texts.put(grid.text(row, column), row);
                figures += isFigure(grid, row, beside(grid, row, column)) ? 1 : 0;
            }
        }
        // A name and a kind beside their labels tell a form by themselves.
        return texts.size() < LEAST_NAMED || texts.size() < LEAST_HEADERS && figures == 0 ? Map.of() : texts;
    }

    /** Whether "Rate" stands beside "Product": they are headers of a list below the card. A kind or a name is none. */
    private static boolean isHeader(Grid grid, int row, int column, Heading label, List<Vocabulary> vocabularies) {
        if (grid.kind(row, column) != Grid.Kind.TEXT) {
            return false;
        }
        HeaderText text = HeaderText.of(grid.text(row, column));
        return vocabularies.stream()
                .map(vocabulary -> vocabulary.read(text))
                .anyMatch(heading -> heading != null && heading.isPlain() && heading.column() != label.column());
    }

    private static ListOnItsSide of(Grid grid, int column, Vocabulary vocabulary, Map<String, Integer> texts) {
        if (vocabulary.spec() == Layout.LIST || vocabulary.spec() == Assumptions.LIST) {
            return null;
        }
        Map<ColumnSpec, Integer> rows = new LinkedHashMap<>();
        int figures = 0;
        Set<Integer> others = new LinkedHashSet<>();
        Map<Integer, String> typed = new LinkedHashMap<>();
        for (Map.Entry<String, Integer> entry : texts.entrySet()) {
            HeaderText text = HeaderText.of(entry.getKey());
            Heading heading = vocabulary.read(text);
            boolean measured = isFigure(grid, entry.getValue(), beside(grid, entry.getValue(), column));
            if (isHeaderRow(grid, entry.getValue(), beside(grid, entry.getValue(), column), vocabulary)) {
                continue;
            }
            if (heading == null && isTypeOfNamed(grid, entry.getValue(), column, vocabulary)) {
                typed.put(entry.getValue(), entry.getKey());
            } else if (heading != null && heading.isCertain()) {
                boolean first = rows.putIfAbsent(heading.column(), entry.getValue()) == null;
                figures += first && heading.column().isNumeric() && measured ? 1 : 0;
            } else if (heading == null && measured && vocabulary.mayMeanOtherwise(text)) {
                others.add(entry.getValue());
            }
        }
        if (typed.size() == 1 && figures > 0) {
            rows.putIfAbsent(Machines.MACHINE, typed.keySet().iterator().next());
        }
        long own = rows.keySet().stream().filter(each -> !ITEMS.contains(each)).count();
        // "Distance travelled" under a type and a width is the run of a calibration; elsewhere it may be anything.
        if (!rows.containsKey(Machines.TYPE) || figures == 0) {
            others.clear();
        }
        Integer name = rows.get(vocabulary.spec().identity().get(0));
        boolean named = name != null && grid.kind(name, beside(grid, name, column)) == Grid.Kind.TEXT;
        int open = named && figures > 0 ? open(grid, column, vocabulary, rows.keySet()) : 0;
        boolean told = named && own >= LEAST_NAMED && isOfKnownKind(grid, column, rows);
        if (!told && own + others.size() < LEAST_HEADERS
                || !told
                        && figures + others.size() + open < LEAST_FIGURES
                        && !isWhole(grid, column, vocabulary.spec(), rows)) {
            return null;
        }
        Map<Integer, String> headers = new LinkedHashMap<>();
        Stream.concat(rows.values().stream(), others.stream())
                .sorted()
                .forEach(row -> headers.put(row, Words.trim(grid.text(row, column))));
        return new ListOnItsSide(vocabulary.spec(), column, headers, named || saysKind(grid, column, rows));
    }

    /** Whether a word stands where a list asks for one, as "walled" beside "Kind": what is assumed are figures. */
    private static boolean saysKind(Grid grid, int column, Map<ColumnSpec, Integer> rows) {
        return rows.entrySet().stream()
                .anyMatch(label -> label.getKey().required()
                        && label.getKey().type() == ColumnSpec.Type.CHOICE
                        && grid.kind(label.getValue(), beside(grid, label.getValue(), column)) == Grid.Kind.TEXT);
    }

    /** Whether a label is the type of the machine that is named beside it: "Combine" beside "Old 5". */
    static boolean isTypeOfNamed(Grid grid, int row, int column, Vocabulary vocabulary) {
        int beside = beside(grid, row, column);
        return vocabulary.spec() == Machines.LIST
                && grid.kind(row, beside) == Grid.Kind.TEXT
                && !isFigure(grid, row, beside)
                && vocabulary.isTypeLabel(grid.text(row, column));
    }

    /** Whether one of the words that are known for it stands where a list asks what its thing is. */
    private static boolean isOfKnownKind(Grid grid, int column, Map<ColumnSpec, Integer> rows) {
        return rows.entrySet().stream()
                .filter(label -> label.getKey() == Stocks.KIND
                        || label.getKey().required() && label.getKey().type() == ColumnSpec.Type.CHOICE)
                .anyMatch(label -> ChoiceWords.of(label.getKey())
                        .containsKey(
                                Words.normal(grid.words(label.getValue(), beside(grid, label.getValue(), column)))));
    }

    /** How many labels ask for a figure that is not filled in yet. */
    private static int open(Grid grid, int column, Vocabulary vocabulary, Set<ColumnSpec> told) {
        Set<ColumnSpec> open = new LinkedHashSet<>();
        for (int row = 0; row < Math.min(ROWS, grid.rows()); row++) {
            if (grid.kind(row, column) == Grid.Kind.TEXT
                    && grid.words(row, beside(grid, row, column)).isEmpty()) {
                Heading heading = vocabulary.read(HeaderText.of(grid.text(row, column)));
                if (heading != null && heading.isCertain() && heading.column().isNumeric()) {
                    open.add(heading.column());
                }
            }
        }
        open.removeAll(told);
        return open.size();
    }

    /** The column of what is told beside a label: the next, unless its unit stands there before it or nothing does. */
    static int beside(Grid grid, int row, int column) {
        for (int beside = column + 1; beside < column + NEAR; beside++) {
            String words = grid.words(row, beside);
            boolean none = words.isEmpty()
                    || grid.kind(row, beside) == Grid.Kind.TEXT
                            && SaidUnit.isUnit(words)
                            && !grid.words(row, beside + 1).isEmpty();
            if (!none) {
                return beside;
            }
        }
        return column + 1;
    }

    /** A number, or one with its unit behind it as forms have it: "24 m", "3000 l". */
    static boolean isFigure(Grid grid, int row, int column) {
        Grid.Kind kind = grid.kind(row, column);
        if (kind != Grid.Kind.TEXT) {
            // Where an error stands a figure was meant.
            return kind == Grid.Kind.NUMBER || kind == Grid.Kind.ERROR || kind == Grid.Kind.UNCOMPUTED;
        }
        AmountText amount = AmountText.of(Words.trim(grid.text(row, column)));
        return amount.isWithUnit() && SaidUnit.isUnit(Words.trim(amount.unit()));
    }

    /**
     * Whether its headers are all that a list cannot do without, with a name beside the one and a figure beside the other:
     * many a field has no figure but its area.
     */
    private static boolean isWhole(Grid grid, int column, ListSpec spec, Map<ColumnSpec, Integer> rows) {
        List<ColumnSpec> required =
                spec.columns().stream().filter(ColumnSpec::required).toList();
        return rows.keySet().containsAll(required)
                && required.stream().anyMatch(ColumnSpec::isNumeric)
                && required.stream()
                        .allMatch(each -> each.isNumeric()
                                ? isFigure(grid, rows.get(each), beside(grid, rows.get(each), column))
                                : grid.kind(rows.get(each), beside(grid, rows.get(each), column)) == Grid.Kind.TEXT);
    }

    /**
     * Whether the header of a column of figures stands beside one, where a form has what is told of its thing: a list
     * proper begins there, and figures above it only sum it up.
     */
    private static boolean isHeaderRow(Grid grid, int row, int beside, Vocabulary vocabulary) {
        for (int column = beside; column < Math.min(grid.columns(), beside + ROW_LOOKED_AT); column++) {
            // "km/h" behind a figure is its unit, over a column it may be its header.
            if (grid.kind(row, column) == Grid.Kind.TEXT && !SaidUnit.isUnit(Words.trim(grid.text(row, column)))) {
                Heading heading = vocabulary.read(HeaderText.of(grid.text(row, column)));
                if (heading != null && heading.isCertain() && heading.column().isNumeric()) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Whether it stands among the rows of a list that was read, as the items of Assumptions do. Items that name a thing are
     * those of a form under the headers "Item" and "Value".
     */
    boolean isIn(FoundTable table) {
        int first = headers.keySet().iterator().next();
        return table.count() > 0
                && !(named && table.chief() == Assumptions.LIST)
                && first > table.headerRow
                && first <= table.row(table.count() - 1)
                && column >= table.firstColumn
                && column <= table.lastColumn;
    }

    /** Whether it begins right below a list with a blank between, so that its rows are none of that list. */
    boolean beginsBelow(FoundTable table, Grid grid, int row) {
        int first = headers.keySet().iterator().next();
        return named
                && row >= first
                && first > table.lastHeaderRow + 1
                && table.chief() != Assumptions.LIST
                && column >= table.firstColumn
                && column <= table.lastColumn
                && grid.words(first - 1, column + 1).isEmpty();
    }

    /**
     * Whether a row goes on a section of another thing, right below a label of it: "Type" and "forager" below "Machine".
     * They would pass for the headers of a list proper.
     */
    boolean goesOnAt(Grid grid, int row, List<Vocabulary> vocabularies) {
        return named
                && (row > headers.keySet().iterator().next() || isKind(grid, row, vocabularies))
                && isLabel(grid, row)
                && isLabel(grid, row - 1)
                && grid.words(row, column + VALUE_AND_UNIT).isEmpty();
    }

    /** Whether a label asks what its thing is, and one of the words that are known for it stands beside it. */
    private boolean isKind(Grid grid, int row, List<Vocabulary> vocabularies) {
        HeaderText text = HeaderText.of(grid.words(row, column));
        return vocabularies.stream()
                .map(vocabulary -> vocabulary.read(text))
                .anyMatch(heading -> heading != null
                        && heading.isCertain()
                        && isOfKnownKind(grid, column, Map.of(heading.column(), row)));
    }

    private boolean isLabel(Grid grid, int row) {
        return grid.kind(row, column) == Grid.Kind.TEXT
                && !grid.words(row, beside(grid, row, column)).isEmpty();
    }

    boolean holds(int row) {
        return headers.containsKey(row);
    }

    /** How it is said that it is read. */
    Finding read(Grid grid) {
        return Finding.note(
                first(grid), belowOneAnother() + " and are read so, with what is told of each beside them.");
    }

    /** How it is said that what it tells of is listed, as that of a card that looks it up. */
    Finding listed(Grid grid) {
        return Finding.note(
                first(grid),
                belowOneAnother()
                        + ". What they tell of is listed elsewhere in the workbook, and is read there alone.");
    }

    private CellAddress first(Grid grid) {
        return grid.address(headers.keySet().iterator().next(), column);
    }

    private String belowOneAnother() {
        String some = headers.values().stream().limit(NAMED).map(Words::quoted).collect(Collectors.joining(", "));
        return "The headers of " + spec.name() + " stand below one another here (" + some
                + (headers.size() > NAMED ? " and more" : "") + ")";
    }

    /**
     * How it is said that it is not.
     *
     * @param tables the lists that were read on its sheet: beside one of its own kind it is likely a summary of it
     * @param lacking columns that a list cannot do without and that none of the headers means
     */
    Finding notRead(Grid grid, List<FoundTable> tables, List<String> lacking) {
        String thing = spec.identity().get(0).name().toLowerCase(Locale.ROOT);
        boolean isRead = tables.stream().anyMatch(table -> table.role(spec) != null);
        return new Finding(
                isRead ? Finding.Severity.NOTE : Finding.Severity.CAUTION,
                Optional.of(first(grid)),
                belowOneAnother()
                        + (lacking.isEmpty()
                                ? ", so they are not read. Write them beside one another in one row, with a row for each "
                                        + thing + " below: copy the cells and paste them transposed."
                                : ", but none of them says " + String.join(" or ", lacking)
                                        + ", so they are not read. Add " + (lacking.size() == 1 ? "it" : "them")
                                        + " below, each with what it is beside it."));
    }
}
