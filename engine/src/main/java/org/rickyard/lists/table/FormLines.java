package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.header.Vocabulary;
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

    private final Grid grid;
    private final FormCells cells;
    private final FormColumns columns;
    private final FormSections sections;
    private final int end;
    /** Rows that are those of a list proper. */
    private final boolean[] taken;
    /** Labels of the client's own results. */
    private final List<CellAddress> results = new ArrayList<>();

    private final List<Finding> told = new ArrayList<>();
    private final List<Finding> asked = new ArrayList<>();

    private List<FormGrid> turned = List.of();

    private FormLines(Grid grid, List<Vocabulary> vocabularies, List<FoundTable> lists) {
        this.grid = grid;
        this.cells = new FormCells(grid, vocabularies);
        this.columns = new FormColumns(cells);
        this.sections = new FormSections(cells);
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
    List<Finding> told() {
        if (results.isEmpty()) {
            return told;
        }
        List<Finding> all = new ArrayList<>(told);
        all.add(FormResults.notRead(grid, results));
        return all;
    }

    /** What must be answered before any of it is read. */
    List<Finding> asked() {
        return asked;
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
        List<Integer> units = new ArrayList<>();
        List<Integer> things = new ArrayList<>();
        int column = labels + 1;
        int blank = 0;
        for (;
                column < Math.min(grid.columns(), labels + COLUMNS)
                        && blank < (things.isEmpty() ? ListOnItsSide.NEAR : BLANK_COLUMNS);
                column++) {
            int at = column;
            if (Arrays.stream(rows).allMatch(row -> cells.isBlank(row, at))) {
                blank++;
                continue;
            }
            if (!things.isEmpty() && areLabels(column)) {
                break;
            }
            blank = 0;
            if (columns.areUnits(rows, column)) {
                units.add(column);
            } else if (things.isEmpty() || columns.isOfAThing(rows, labels, column)) {
                things.add(column);
            }
        }
        if (things.isEmpty()) {
            return null;
        }
        FormSystems twice = FormSystems.of(cells, rows, labels, things, units).orElse(null);
        if (twice != null) {
            twice.otherwise().ifPresentOrElse(row -> asked.add(twice.asked(row)), () -> told.add(twice.told()));
            return new Stretch(twice.rows(), labels, twice.units(), new int[] {twice.metric()}, column);
        }
        return new Stretch(
                rows,
                labels,
                units.isEmpty() ? -1 : units.get(0),
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
            if (taken[row] || !cells.isText(row, labels)) {
                continue;
            }
            Heading heading = cells.heading(row, labels);
            boolean isKnown = heading != null || cells.isTypeOfNamed(row, labels);
            if (cells.isBlankBeside(row, labels)) {
                if (heading != null && heading.isCertain() && !rows.isEmpty() && isInside(row, rows, open, heading)) {
                    open.add(row);
                } else {
                    below = !rows.isEmpty() && FormResults.areHeadedBy(grid.text(row, labels));
                }
                continue;
            }
            int beside = ListOnItsSide.beside(grid, row, labels);
            if (heading != null
                    && cells.isHeader(row, beside)
                    && cells.heading(row, beside).column() != heading.column()
                    && endsAt(row, labels)) {
                break;
            }
            if (below && grid.isFormula(row, beside)) {
                if (isKnown) {
                    results.add(grid.address(row, labels));
                }
                continue;
            }
            if (heading != null) {
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
                                .filter(row ->
                                        told.add(cells.heading(row, labels).column()))
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
                || cells.isText(row + 1, labels) && cells.heading(row + 1, labels) == null;
    }

    /** Whether labels stand in a column below one another, and no number with them. */
    private boolean areLabels(int column) {
        int labels = 0;
        for (int row = 0; row < end; row++) {
            if (!taken[row] && grid.kind(row, column) == Grid.Kind.NUMBER) {
                return false;
            }
            labels += !taken[row]
                            && cells.isHeader(row, column)
                            && !SaidUnit.isUnit(Words.trim(grid.text(row, column)))
                            && !cells.isBlankBeside(row, column)
                    ? 1
                    : 0;
        }
        return labels >= LEAST_LABELS;
    }
}
