package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.CopiedResults;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.header.ChoiceByContents;
import org.rickyard.lists.header.FlatList;
import org.rickyard.lists.header.GroupsAbove;
import org.rickyard.lists.header.HeaderHints;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.header.HeadersNotRead;
import org.rickyard.lists.header.ListsInRow;
import org.rickyard.lists.header.MarkedOperations;
import org.rickyard.lists.header.NoLists;
import org.rickyard.lists.header.NumberedHeaders;
import org.rickyard.lists.header.OrchardBlocks;
import org.rickyard.lists.header.ProductsInARow;
import org.rickyard.lists.header.TwoDeepHeader;
import org.rickyard.lists.header.TypeInTitle;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;

/**
 * Finds the tables of one sheet that are input lists: Excel tables first, then every row that reads as a header,
 * wherever it stands.
 */
public final class TableFinder {
    /** So far right of the values of assumptions headers of the list below may stand, and no note. */
    private static final int BESIDE_VALUES = 3;

    private final Grid grid;
    private final List<Vocabulary> vocabularies;
    private final HeaderRow headerRow;
    private final List<Finding> findings;
    private final RowsLikeHeaders rows;
    private final List<Vocabulary> namedBySheet;
    private final NoLists noLists;
    private final ChoiceByContents choices;
    private final OrchardBlocks orchards;
    private final TitlesOfMachines titles;
    private final List<FoundTable> tables = new ArrayList<>();
    private final List<RowReader> open = new ArrayList<>();
    private final NearestHeader nearest;
    /** A form on the sheet, of which no row is a header; null if there is none. */
    private ListOnItsSide onItsSide;

    private Form form;
    /** The title over the row at hand that names a type of machine; null if none does. */
    private TypeInTitle title;
    /** The row of headers over machines whose types another table tells; -1 if there is none. */
    private int typesKnownUnder = -1;

    public TableFinder(Grid grid, List<Vocabulary> vocabularies, Set<String> firstWords, List<Finding> findings) {
        this.grid = grid;
        this.vocabularies = vocabularies;
        this.headerRow = grid.isTurned() ? new HeaderRow(vocabularies).ofLabels() : new HeaderRow(vocabularies);
        this.rows = new RowsLikeHeaders(grid, firstWords, vocabularies);
        this.findings = findings;
        this.namedBySheet = named(grid.sheet());
        this.noLists = new NoLists(grid);
        this.nearest = new NearestHeader(grid, headerRow, vocabularies, namedBySheet);
        this.choices = new ChoiceByContents(grid, headerRow, findings);
        this.orchards = new OrchardBlocks(grid, headerRow, findings);
        this.titles = new TitlesOfMachines(grid, rows.columns());
    }

    private List<Vocabulary> named(String title) {
        List<Vocabulary> named = new ArrayList<>();
        for (Vocabulary vocabulary : vocabularies) {
            if (vocabulary.isNamed(title)) {
                named.add(vocabulary);
            }
        }
        return named;
    }

    /** All tables of the sheet, looking for headers no lower than the given number of rows. */
    public List<FoundTable> find(int mostRows) {
        List<Grid.TableRange> ranges = new ArrayList<>();
        for (Grid.TableRange range : grid.tables()) {
            if (range.headerRows() == 1) {
                ranges.add(range);
                excelTable(range);
            }
        }
        onItsSide = grid.isTurned()
                ? null
                : ListOnItsSide.find(
                                grid,
                                vocabularies,
                                text -> rows.beginsHeader(text)
                                        || ChoiceWords.MACHINE_TYPES.containsKey(Words.normal(text)))
                        .orElse(null);
        int before = findings.size();
        int end = Math.min(grid.rows(), mostRows);
        int columns = rows.columns();
        boolean[] taken = new boolean[columns];
        for (int row = 0; row < end; row++) {
            mark(taken, ranges, row);
            if ((onItsSide == null || !onItsSide.holds(row) && !isOfAForm(row)) && looksLikeHeader(row, taken)) {
                openTables(row, taken);
            }
            for (RowReader reader : List.copyOf(open)) {
                if (onItsSide != null && onItsSide.beginsBelow(reader.table(), grid, row)) {
                    reader.finishBeforeHeader(row);
                    open.remove(reader);
                    continue;
                }
                // The header of one list may stand in a row of another beside it.
                if (reader.table().lastHeaderRow != row && !reader.overlaps(ranges, row)) {
                    reader.read(row);
                }
            }
        }
        open.forEach(RowReader::finish);
        if (onItsSide != null && tables.stream().noneMatch(onItsSide::isIn)) {
            form = new Form(grid, onItsSide, List.copyOf(tables), vocabularies);
            findings.add(before, form.notRead());
        }
        findings.addAll(nearest.told(tables, noLists.isOtherSheet(), form));
        if (tables.stream().allMatch(table -> table.lastColumn < RowsLikeHeaders.MOST_COLUMNS)) {
            rows.beyond(end).ifPresent(findings::add);
        }
        return tables;
    }

    /** Whether a row is a line of a form; below the headers of a list right under one stands what is none. */
    private boolean isOfAForm(int row) {
        int labels = onItsSide.column();
        return onItsSide.goesOnAt(grid, row, vocabularies)
                && (grid.words(row + 1, labels).isEmpty() || rows.beginsHeader(row + 1, labels));
    }

    /** A form on the sheet, of which it was said that it is not read; empty if there is none. */
    public Optional<Form> form() {
        return Optional.ofNullable(form);
    }

    /** What the row that comes nearest to a list has no headers for, or the labels of a form; empty if none comes near. */
    List<String> lackedBy(ListSpec list) {
        List<String> lacked = nearest.missing(list);
        if (!lacked.isEmpty() || !grid.isTurned()) {
            return lacked;
        }
        int last = grid.columns() - 1;
        HeaderRow.Match labels = headerRow.match(list, headers(0, 0, last), 0, last, true);
        return labels == null ? List.of() : labels.missing();
    }

    /** The row of headers that lack nothing but a Type to be those of machines. */
    public OptionalInt machinesWithoutType() {
        return nearest.rowWithout(Machines.LIST, Machines.TYPE);
    }

    /** Takes a row of headers over machines whose types another table tells, before the tables are looked for. */
    public void typesAreKnownUnder(int row) {
        typesKnownUnder = row;
    }

    /** What to say, where no sheet has such a list, of what {@link NearestHeader#unnamed is nearly} one here. */
    public Map<ListSpec, Finding> unnamed() {
        return nearest.unnamed(noLists.isOtherSheet());
    }

    private void excelTable(Grid.TableRange range) {
        String[] headers = headers(range.firstRow(), range.firstColumn(), range.lastColumn());
        List<Vocabulary> named = new ArrayList<>(named(range.name()));
        named.addAll(namedBySheet);
        under(range.firstRow(), title(range));
        MarkedOperations.takeOut(headers, headerRow, grid, range.firstRow(), findings);
        orchards.settle(vocabularies, headers, range.firstRow(), range.firstColumn(), range.lastColumn());
        choices.settle(vocabularies, headers, range.firstRow(), range.firstColumn(), range.lastColumn());
        HeaderRow.Match best = headerRow.best(headers, range.firstColumn(), range.lastColumn(), named);
        if (best == null) {
            nearest.consider(headers, range.firstRow(), range.firstColumn(), range.lastColumn(), named);
            return;
        }
        if (isNoList(best, range.firstRow(), named)) {
            return;
        }
        RowReader reader = new RowReader(table(range.firstRow(), best, range, headers), findings);
        int end = Math.min(range.lastRow() - range.totalsRows(), grid.rows() - 1);
        for (int row = range.firstRow() + 1; row <= end; row++) {
            reader.read(row);
        }
        reader.finish();
        reader.tellBelow(grid.tables());
    }

    private static void mark(boolean[] taken, List<Grid.TableRange> ranges, int row) {
        Arrays.fill(taken, false);
        for (Grid.TableRange range : ranges) {
            if (row >= range.firstRow() && row <= range.lastRow()) {
                for (int column = range.firstColumn();
                        column <= range.lastColumn() && column < taken.length;
                        column++) {
                    taken[column] = true;
                }
            }
        }
    }

    /** Whether a row is {@link RowsLikeHeaders like a header} outside of rows that hold figures of a list. */
    private boolean looksLikeHeader(int row, boolean[] taken) {
        for (RowReader reader : open) {
            if (reader.isWords() && !isBelowAssumptions(reader, row)
                    || reader.holdsFigures(row)
                    || reader.holdsTypeAlone(row)
                    || reader.table().secondHeaderRow == row) {
                FoundTable table = reader.table();
                for (int column = table.firstColumn; column <= table.lastColumn && column < taken.length; column++) {
                    taken[column] = true;
                }
            }
        }
        return rows.isLikeHeader(row, taken);
    }

    /** Where assumptions have their values, the headers of the list below stand as words. */
    private boolean isBelowAssumptions(RowReader reader, int row) {
        FoundTable table = reader.table();
        List<Integer> columns = new ArrayList<>();
        for (int column : table.columnsOf(List.of(Assumptions.VALUE))) {
            columns.add(column);
        }
        for (int column = table.lastColumn + 1; column < table.lastColumn + BESIDE_VALUES; column++) {
            columns.add(column);
        }
        return columns.stream().anyMatch(column -> rows.beginsHeader(row, column));
    }

    private void openTables(int row, boolean[] taken) {
        if (CopiedResults.isHead(grid, row, taken.length)) {
            if (CopiedResults.areLabels(grid, row, taken.length)) {
                findings.add(CopiedResults.told(grid.address(row, 0)));
            }
            return;
        }
        String[] headers = free(row, taken);
        List<Vocabulary> named = new ArrayList<>(namedBySheet);
        for (int above = Math.max(0, row - 3); above < row; above++) {
            for (int column = 0; column < taken.length; column++) {
                if (grid.kind(above, column) == Grid.Kind.TEXT) {
                    named.addAll(named(grid.text(above, column)));
                    break;
                }
            }
        }
        under(row, title(row, headers));
        boolean marks = MarkedOperations.takeOut(headers, headerRow, grid, row, findings);
        if (isFreeAbove(row, 0, taken.length - 1)) {
            new TwoDeepHeader(grid, vocabularies).mergedDown(headers, row);
        }
        orchards.settle(vocabularies, headers, row, 0, taken.length - 1);
        choices.settle(vocabularies, headers, row, 0, taken.length - 1);
        List<HeaderRow.Match> matches =
                new FlatList(headerRow, headers).joined(lists(headers, named).split());
        boolean twoDeep = false;
        if (matches.isEmpty()) {
            String[] both = rowAbove(vocabularies, headers, row, 0, taken.length - 1);
            matches = both == null ? matches : lists(both, named).split();
            headers = matches.isEmpty() ? headers : both;
        }
        if (matches.isEmpty()) {
            boolean aboveForm = onItsSide != null && onItsSide.holds(row + 1);
            String[] both = aboveForm ? null : secondRow(vocabularies, headers, row, 0, taken.length - 1);
            matches = both == null ? matches : lists(both, named).split();
            if (matches.isEmpty()) {
                if (!marks && !GroupsAbove.areOver(headers, listsOf(row + 1, taken, named))) {
                    nearest.consider(headers, row, 0, taken.length - 1, named);
                }
                return;
            }
            headers = both;
            twoDeep = true;
        }
        if (row + 1 < grid.rows() && !matches.isEmpty()) {
            if (GroupsAbove.are(matches, listsOf(row + 1, taken, named))) {
                return;
            }
        }
        for (int[] run : lists(headers, named).left(matches)) {
            nearest.consider(headers, row, run[0], run[1], named);
            if (lists(headers, named).isKindLeft(matches, run)) {
                findings.add(Finding.caution(
                        grid.address(row, run[0]),
                        "Machines of another kind stand here beside those that are read, and nothing of them is: put all in"
                                + " one list with a column Type, or these on a sheet of their own with one."));
            }
        }
        for (HeaderRow.Match match : matches) {
            if (isNoList(match, row, named)) {
                continue;
            }
            RowReader same = repeated(match, headers);
            if (same != null && !HoldingAbove.isOther(same.table(), row) && Objects.equals(title, same.table().title)) {
                same.headerAgain(row);
                continue;
            }
            close(match, row);
            open.add(new RowReader(
                    twoDeep ? below(table(row, match, null, headers)) : table(row, match, headers), findings));
        }
    }

    /** The lists of a row by itself; none below the last. */
    private List<HeaderRow.Match> listsOf(int row, boolean[] taken, List<Vocabulary> named) {
        if (row >= grid.rows()) {
            return List.of();
        }
        String[] headers = free(row, taken);
        return new FlatList(headerRow, headers).joined(lists(headers, named).split());
    }

    /** Makes ready for a row of headers. */
    private void under(int row, TypeInTitle above) {
        title = above;
        headerRow.under(above);
        headerRow.typesAreKnown(row == typesKnownUnder);
    }

    /** The title over a row, or that of the same headers where they stood before; null if there is none. */
    private TypeInTitle title(int row, String[] headers) {
        return titles.above(row)
                .or(() -> open.stream()
                        .map(RowReader::table)
                        .filter(table -> table.title != null && isSame(table, headers))
                        .map(table -> table.title)
                        .findFirst())
                .or(() -> titles.belowOrOfSheet(row))
                .orElse(null);
    }

    private TypeInTitle title(Grid.TableRange range) {
        return TypeInTitle.of(range.name(), null).orElseGet(() -> title(range.firstRow(), new String[0]));
    }

    private static boolean isSame(FoundTable table, String[] headers) {
        return table.lastColumn < headers.length
                && Arrays.equals(
                        headers,
                        table.firstColumn,
                        table.lastColumn + 1,
                        table.headers,
                        table.firstColumn,
                        table.lastColumn + 1);
    }

    /** The headers of a row outside of the columns that other lists have. */
    private String[] free(int row, boolean[] taken) {
        String[] headers = headers(row, 0, taken.length - 1);
        for (int column = 0; column < taken.length; column++) {
            if (taken[column] || headers[column] != null && HoldingAbove.isHeading(headers[column])) {
                headers[column] = null;
            }
        }
        return headers;
    }

    private boolean isNoList(HeaderRow.Match match, int row, List<Vocabulary> named) {
        boolean byName = named.contains(match.vocabulary());
        if (!byName && headerRow.isByTitleAlone(match) && noLists.comesAgain(match, row)) {
            findings.add(Finding.caution(
                    grid.address(row, match.firstColumn()),
                    "This could be a list of Machines, by " + Words.quoted(title.title())
                            + ", but its names come again, so"
                            + " it is taken for a record of what they did and not read. If it is one, give each machine its"
                            + " own name."));
            return true;
        }
        Optional<String> why = noLists.why(match, row, byName);
        why.ifPresent(text -> findings.add(Finding.note(grid.address(row, match.firstColumn()), text)));
        return why.isPresent();
    }

    /** The table under a header row, with what belongs to the header in the row below. */
    private FoundTable table(int row, HeaderRow.Match match, String[] headers) {
        List<Vocabulary> own =
                roles(match, headers).stream().map(HeaderRow.Match::vocabulary).toList();
        String[] above = rowAbove(own, headers, row, match.firstColumn(), match.lastColumn());
        if (above != null) {
            HeaderRow.Match higher =
                    headerRow.match(match.vocabulary(), above, match.firstColumn(), match.lastColumn(), true);
            return higher.missing().isEmpty() ? table(row, higher, null, above) : table(row, match, null, headers);
        }
        String[] both = secondRow(own, headers, row, match.firstColumn(), match.lastColumn());
        if (both == null) {
            return table(row, match, null, headers);
        }
        int last = match.lastColumn();
        while (last + 1 < both.length && headers[last + 1] == null && both[last + 1] != null) {
            last++;
        }
        HeaderRow.Match deeper = headerRow.match(match.vocabulary(), both, match.firstColumn(), last, true);
        return deeper.missing().isEmpty() ? below(table(row, deeper, null, both)) : table(row, match, null, headers);
    }

    private static FoundTable below(FoundTable table) {
        table.secondHeaderRow = table.headerRow + 1;
        return table;
    }

    /** The headers together with those of the row below; null if that row is no part of the header. */
    private String[] secondRow(List<Vocabulary> known, String[] headers, int row, int first, int last) {
        return row + 1 < grid.rows() ? new TwoDeepHeader(grid, known).of(headers, row, first, last) : null;
    }

    /** The headers together with words above them; null if there are none, or if another list has that row. */
    private String[] rowAbove(List<Vocabulary> known, String[] headers, int row, int first, int last) {
        return isFreeAbove(row, first, last)
                ? new TwoDeepHeader(grid, known).withAbove(headers, row, first, last)
                : null;
    }

    /** Whether the row above is no row of another list. */
    private boolean isFreeAbove(int row, int first, int last) {
        return row > 0
                && open.stream()
                        .map(RowReader::table)
                        .noneMatch(table -> table.firstColumn <= last
                                && first <= table.lastColumn
                                && (Math.max(table.lastHeaderRow, table.secondHeaderRow) == row - 1
                                        || table.count() > 0 && table.row(table.count() - 1) == row - 1));
    }

    private ListsInRow lists(String[] headers, List<Vocabulary> named) {
        return new ListsInRow(headerRow, headers, named);
    }

    private RowReader repeated(HeaderRow.Match match, String[] headers) {
        for (RowReader reader : open) {
            FoundTable table = reader.table();
            if (table.roles.get(0).vocabulary() == match.vocabulary()
                    && table.firstColumn == match.firstColumn()
                    && isSame(table, headers)) {
                return reader;
            }
        }
        return null;
    }

    private void close(HeaderRow.Match match, int row) {
        open.removeIf(reader -> {
            FoundTable table = reader.table();
            boolean overlaps = table.firstColumn <= match.lastColumn() && match.firstColumn() <= table.lastColumn;
            if (overlaps) {
                reader.finishBeforeHeader(row);
            }
            return overlaps && table.headerRow < row;
        });
    }

    private FoundTable table(int row, HeaderRow.Match best, Grid.TableRange range, String[] headers) {
        List<HeaderRow.Match> roles = roles(best, headers);
        ListSpec spec = best.vocabulary().spec();
        if (spec == Fields.LIST && roles.size() == 1) {
            new HeadersNotRead(grid, row, headers, findings).cautionWorkWithoutMachine(match(Jobs.LIST, headers, best));
        }
        HeaderHints hints = new HeaderHints(grid, row, headers, findings);
        List<HeaderRow.Match> read = new ArrayList<>();
        for (HeaderRow.Match role : roles) {
            List<HeaderRow.Match> parted = ProductsInARow.parted(role, headers);
            parted.forEach(part -> read.add(hints.applied(part)));
            if (parted.size() > 1) {
                findings.add(ProductsInARow.told(parted, grid, row, headers));
            }
        }
        FoundTable table = new FoundTable(grid, row, read, range, headers);
        table.unitColumns = hints.unitColumns();
        table.title = title;
        tables.add(table);
        return table;
    }

    private List<HeaderRow.Match> roles(HeaderRow.Match best, String[] headers) {
        return new FlatList(headerRow, headers).roles(best);
    }

    private HeaderRow.Match match(ListSpec spec, String[] headers, HeaderRow.Match best) {
        return headerRow.match(spec, headers, best.firstColumn(), best.lastColumn(), true);
    }

    private String[] headers(int row, int first, int last) {
        String[] headers = new String[Math.max(last + 1, 0)];
        for (int column = first; column <= last; column++) {
            if (grid.kind(row, column) == Grid.Kind.TEXT) {
                String text = Words.trim(grid.text(row, column));
                headers[column] = text.isEmpty() ? null : text;
            } else if (grid.kind(row, column) == Grid.Kind.NUMBER) {
                headers[column] = Words.digits(grid.number(row, column));
            }
        }
        NumberedHeaders.takeOff(headers, header -> vocabularies.stream()
                .anyMatch(vocabulary -> vocabulary.settled().contains(HeaderText.normal(header))));
        return headers;
    }

    /** The first words of all headers and of all that Layout names. */
    public static Set<String> firstWords(List<Vocabulary> vocabularies) {
        Set<String> words = new HashSet<>();
        vocabularies.forEach(vocabulary -> words.addAll(vocabulary.firstWords()));
        return words;
    }
}
