package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Layout;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;

/**
 * Which cells of a sheet a form is made of: labels below one another, what is told of each thing on their right, and
 * perhaps a column of units. What is told of one thing may stand in several such stretches beside one another.
 */
final class FormLines {
    private static final int ROWS = 200;
    private static final int COLUMNS = 60;
    private static final int LEAST_LABELS = 2;
    /** What stands behind so many blank columns belongs to something else. */
    private static final int BLANK_COLUMNS = 2;
    /** So many rows above its first label a form has the heads of its columns: "Input", "Value", "Unit", "Notes". */
    private static final int HEADS_ABOVE = 3;

    private static final Set<String> UNITS = Set.of("unit", "units", "uom", "unit of measure");
    /** Heads of a column that explains what the others tell. */
    private static final Set<String> REMARKS =
            Set.of("note", "remark", "comment", "source", "guidance", "guide", "explanation", "instruction", "help");

    private final Grid grid;
    private final List<Vocabulary> vocabularies;
    private final FormSections sections;
    private final int end;
    /** Rows that are those of a list proper. */
    private final boolean[] taken;
    /** Labels of the client's own results. */
    private final List<CellAddress> results = new ArrayList<>();

    private List<FormGrid> turned = List.of();

    private FormLines(Grid grid, List<Vocabulary> vocabularies, List<FoundTable> lists) {
        this.grid = grid;
        this.vocabularies = vocabularies.stream()
                .filter(vocabulary -> vocabulary.spec() != Layout.LIST && vocabulary.spec() != Assumptions.LIST)
                .toList();
        this.sections = new FormSections(grid, this.vocabularies);
        this.end = Math.min(ROWS, grid.rows());
        this.taken = new boolean[end];
        for (FoundTable list : lists) {
            if (list.chief() == Assumptions.LIST) {
                // "Item | Value | Unit" stands over many a form.
                continue;
            }
            int last = list.count() == 0 ? list.headerRow : list.row(list.count() - 1);
            for (int row = list.headerRow; row <= last && row < end; row++) {
                taken[row] = true;
            }
        }
    }

    /**
     * The lines of a form.
     *
     * @param lists the lists proper of its sheet, whose rows are none of its own
     */
    static FormLines of(Grid grid, ListOnItsSide form, List<FoundTable> lists, List<Vocabulary> vocabularies) {
        FormLines lines = new FormLines(grid, vocabularies, lists);
        List<List<Stretch>> parts = new ArrayList<>();
        for (int column = 0; column < Math.min(grid.columns(), COLUMNS); ) {
            List<Stretch> stretches =
                    column == form.column() || lines.areLabels(column) ? lines.stretches(column) : List.of();
            stretches.forEach(stretch -> lines.put(stretch, parts));
            column = stretches.stream().mapToInt(Stretch::next).min().orElse(column + 1);
        }
        lines.turned = parts.stream()
                .map(part -> {
                    boolean units = part.stream().anyMatch(stretch -> stretch.units() >= 0);
                    return new FormGrid(
                            grid,
                            part.stream()
                                    .map(stretch -> stretch.lines(units, grid.columns()))
                                    .toList(),
                            units);
                })
                .toList();
        return lines;
    }

    /** The form, turned; several where its labels come again below or beside one another, one for each time. */
    List<FormGrid> turned() {
        return turned;
    }

    /** What is to be said of lines that are none of an input. */
    Optional<Finding> told() {
        return results.isEmpty() ? Optional.empty() : Optional.of(FormResults.notRead(grid, results));
    }

    /** Puts a stretch to those that tell more of the same things: as many, and by other labels. */
    private void put(Stretch stretch, List<List<Stretch>> parts) {
        for (List<Stretch> part : parts) {
            if (part.stream().noneMatch(other -> isOfOthers(other, stretch))) {
                part.add(stretch);
                return;
            }
        }
        parts.add(new ArrayList<>(List.of(stretch)));
    }

    private boolean isOfOthers(Stretch one, Stretch other) {
        Set<String> labels = labels(one);
        ListSpec named = sections.named(one.labels(), one.rows());
        ListSpec otherNamed = sections.named(other.labels(), other.rows());
        return named != null && otherNamed != null && named != otherNamed
                || one.things().length != other.things().length
                || labels(other).stream().anyMatch(labels::contains);
    }

    private Set<String> labels(Stretch stretch) {
        return Arrays.stream(stretch.rows())
                .mapToObj(row -> Words.key(grid.text(row, stretch.labels())))
                .collect(Collectors.toSet());
    }

    /** The stretches of a column: a new one begins where its first label comes again. */
    private List<Stretch> stretches(int labels) {
        List<Stretch> stretches = new ArrayList<>();
        for (int[] rows : sections.parted(labels, rows(labels))) {
            int from = 0;
            for (int i = 1; i <= rows.length; i++) {
                if (i == rows.length
                        || Words.key(grid.text(rows[i], labels)).equals(Words.key(grid.text(rows[0], labels)))) {
                    Stretch stretch = stretch(labels, Arrays.copyOfRange(rows, from, i));
                    if (stretch != null) {
                        stretches.add(stretch);
                    }
                    from = i;
                }
            }
        }
        return stretches;
    }

    /**
     * Labels below one another and what is told beside them.
     *
     * @param units the column of their units, -1 if they have none
     * @param things the columns of what is told, one for each thing
     * @param next the column to go on from
     */
    private record Stretch(int[] rows, int labels, int units, int[] things, int next) {
        FormGrid.Lines lines(boolean withUnits, int blank) {
            IntStream beside = withUnits ? IntStream.of(labels, units < 0 ? blank : units) : IntStream.of(labels);
            return new FormGrid.Lines(
                    rows, IntStream.concat(beside, IntStream.of(things)).toArray());
        }
    }

    private Stretch stretch(int labels, int[] rows) {
        int units = -1;
        List<Integer> things = new ArrayList<>();
        int column = labels + 1;
        int blank = 0;
        for (;
                column < Math.min(grid.columns(), labels + COLUMNS)
                        && blank < (things.isEmpty() ? ListOnItsSide.NEAR : BLANK_COLUMNS);
                column++) {
            int at = column;
            if (Arrays.stream(rows).allMatch(row -> isBlank(row, at))) {
                blank++;
                continue;
            }
            if (!things.isEmpty() && areLabels(column)) {
                break;
            }
            blank = 0;
            if (areUnits(rows, column)) {
                units = units < 0 ? column : units;
            } else if (things.isEmpty() || isOfAThing(rows, labels, column)) {
                things.add(column);
            }
        }
        return things.isEmpty()
                ? null
                : new Stretch(
                        rows,
                        labels,
                        units,
                        things.stream().mapToInt(Integer::intValue).toArray(),
                        column);
    }

    /** The rows from the first label that is known to the last; a list below them has the header of another beside one. */
    private int[] rows(int labels) {
        List<Integer> rows = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        Set<ColumnSpec> told = new HashSet<>();
        int known = 0;
        boolean below = false;
        for (int row = 0; row < end; row++) {
            if (taken[row] || !isText(row, labels)) {
                continue;
            }
            Heading heading = heading(row, labels);
            boolean isKnown = heading != null;
            if (isBlankBeside(row, labels)) {
                if (isKnown && heading.isCertain() && !rows.isEmpty() && isInside(row, rows, open, heading)) {
                    open.add(row);
                } else {
                    below = !rows.isEmpty() && FormResults.areHeadedBy(grid.text(row, labels));
                }
                continue;
            }
            int beside = ListOnItsSide.beside(grid, row, labels);
            if (isKnown
                    && isHeader(row, beside)
                    && heading(row, beside).column() != heading.column()
                    && endsAt(row, labels)) {
                break;
            }
            if (below && grid.isFormula(row, beside)) {
                if (isKnown) {
                    results.add(grid.address(row, labels));
                }
                continue;
            }
            if (isKnown) {
                told.add(heading.column());
            }
            if (isKnown || !rows.isEmpty()) {
                rows.add(row);
            }
            known = isKnown ? rows.size() : known;
        }
        // What is not filled in yet is missing, and is taken as soon as it is; a title is called so too.
        return IntStream.concat(
                        rows.subList(0, known).stream().mapToInt(Integer::intValue),
                        open.stream()
                                .filter(row -> told.add(heading(row, labels).column()))
                                .mapToInt(Integer::intValue))
                .sorted()
                .toArray();
    }

    /** Whether a label with nothing beside it is one that waits for a figure or, right below others, for a word. */
    private static boolean isInside(int row, List<Integer> rows, List<Integer> open, Heading heading) {
        return heading.column().isNumeric() || rows.contains(row - 1) || open.contains(row - 1);
    }

    /** Whether what stands below a header is no label but what a list has there; "clamp" beside "Kind" is no header. */
    private boolean endsAt(int row, int labels) {
        return grid.kind(row + 1, labels) == Grid.Kind.NUMBER
                || isText(row + 1, labels) && heading(row + 1, labels) == null;
    }

    /** Whether labels stand in a column below one another, and no number with them. */
    private boolean areLabels(int column) {
        int labels = 0;
        for (int row = 0; row < end; row++) {
            if (!taken[row] && grid.kind(row, column) == Grid.Kind.NUMBER) {
                return false;
            }
            labels += !taken[row]
                            && isHeader(row, column)
                            && !SaidUnit.isUnit(Words.trim(grid.text(row, column)))
                            && !isBlankBeside(row, column)
                    ? 1
                    : 0;
        }
        return labels >= LEAST_LABELS;
    }

    /**
     * Whether units stand in a column: its head says so, or most of what stands in it is some. One that is not known here
     * ("/m2") makes no other thing of them.
     */
    private boolean areUnits(int[] rows, int column) {
        int units = 0;
        int words = 0;
        for (int row : rows) {
            if (isBlank(row, column)) {
                continue;
            }
            if (!isText(row, column)) {
                return false;
            }
            String text = Words.trim(grid.text(row, column));
            if (SaidUnit.isUnit(text) || SaidUnit.isMoney(text)) {
                units++;
            } else {
                words++;
            }
        }
        return UNITS.contains(head(rows, column)) || units > 0 && units >= words;
    }

    /** Whether figures stand in a column, or something in most of its cells: remarks do not. */
    private boolean isOfAThing(int[] rows, int labels, int column) {
        long filled = Arrays.stream(rows).filter(row -> !isBlank(row, column)).count();
        boolean figures = Arrays.stream(rows).anyMatch(row -> grid.kind(row, column) == Grid.Kind.NUMBER);
        return (figures || 2 * filled > rows.length) && !areRemarks(rows, labels, column);
    }

    /** Whether a column explains the others: its head says so, or words stand in it where its labels ask for figures. */
    private boolean areRemarks(int[] rows, int labels, int column) {
        if (Arrays.stream(head(rows, column).split(" "))
                .anyMatch(word -> REMARKS.contains(word)
                        || word.endsWith("s") && REMARKS.contains(word.substring(0, word.length() - 1)))) {
            return true;
        }
        int figures = 0;
        int words = 0;
        for (int row : rows) {
            Heading heading = isBlank(row, column) ? null : heading(row, labels);
            if (heading != null && heading.column().isNumeric()) {
                boolean figure = !isText(row, column) || ListOnItsSide.isFigure(grid, row, column);
                figures += figure ? 1 : 0;
                words += figure ? 0 : 1;
            }
        }
        return words > 0 && words >= figures;
    }

    /** What stands over a column, right above the first of its rows or a little higher; "" if nothing does. */
    private String head(int[] rows, int column) {
        for (int row = rows[0] - 1; row >= Math.max(0, rows[0] - HEADS_ABOVE); row--) {
            if (isText(row, column)) {
                return Words.key(grid.text(row, column));
            }
        }
        return "";
    }

    private boolean isBlankBeside(int row, int column) {
        return IntStream.rangeClosed(column + 1, column + ListOnItsSide.NEAR).allMatch(beside -> isBlank(row, beside));
    }

    private boolean isBlank(int row, int column) {
        return grid.words(row, column).isEmpty() && grid.kind(row, column) != Grid.Kind.UNCOMPUTED;
    }

    private boolean isText(int row, int column) {
        return grid.kind(row, column) == Grid.Kind.TEXT && !isBlank(row, column);
    }

    /** Whether a header stands there; the kind of a machine is what is told of it, too. */
    private boolean isHeader(int row, int column) {
        Heading heading = isText(row, column) ? heading(row, column) : null;
        return heading != null && heading.isCertain() && heading.isPlain();
    }

    private Heading heading(int row, int column) {
        HeaderText text = HeaderText.of(grid.text(row, column));
        Heading found = null;
        for (Vocabulary vocabulary : vocabularies) {
            Heading heading = vocabulary.read(text);
            if (heading != null && (found == null || heading.isCertain() && !found.isCertain())) {
                found = heading;
            }
        }
        return found;
    }
}
