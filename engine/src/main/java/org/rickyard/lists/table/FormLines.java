package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Layout;
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

    private final Grid grid;
    private final List<Vocabulary> vocabularies;
    private final int end;
    /** Rows that are those of a list proper. */
    private final boolean[] taken;

    private FormLines(Grid grid, List<Vocabulary> vocabularies, List<FoundTable> lists) {
        this.grid = grid;
        this.vocabularies = vocabularies.stream()
                .filter(vocabulary -> vocabulary.spec() != Layout.LIST && vocabulary.spec() != Assumptions.LIST)
                .toList();
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
     * The form, turned; several where its labels come again below or beside one another, one for each time.
     *
     * @param lists the lists proper of its sheet, whose rows are none of its own
     */
    static List<FormGrid> of(Grid grid, ListOnItsSide form, List<FoundTable> lists, List<Vocabulary> vocabularies) {
        FormLines lines = new FormLines(grid, vocabularies, lists);
        List<List<Stretch>> parts = new ArrayList<>();
        for (int column = 0; column < Math.min(grid.columns(), COLUMNS); ) {
            List<Stretch> stretches =
                    column == form.column() || lines.areLabels(column) ? lines.stretches(column) : List.of();
            stretches.forEach(stretch -> lines.put(stretch, parts));
            column = stretches.isEmpty() ? column + 1 : stretches.get(0).next();
        }
        return parts.stream()
                .map(part -> {
                    boolean units = part.stream().anyMatch(stretch -> stretch.units() >= 0);
                    return new FormGrid(
                            grid,
                            part.stream()
                                    .map(stretch -> stretch.lines(units, grid.columns()))
                                    .toList());
                })
                .toList();
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
        return one.things().length != other.things().length
                || labels(other).stream().anyMatch(labels::contains);
    }

    private Set<String> labels(Stretch stretch) {
        return Arrays.stream(stretch.rows())
                .mapToObj(row -> Words.key(grid.text(row, stretch.labels())))
                .collect(Collectors.toSet());
    }

    /** The stretches of a column: a new one begins where its first label comes again. */
    private List<Stretch> stretches(int labels) {
        int[] rows = rows(labels);
        List<Stretch> stretches = new ArrayList<>();
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
        for (; column < Math.min(grid.columns(), labels + COLUMNS) && blank < BLANK_COLUMNS; column++) {
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
            } else if (things.isEmpty() || isOfAThing(rows, column)) {
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
        int known = 0;
        for (int row = 0; row < end; row++) {
            if (taken[row] || !isText(row, labels) || isBlankBeside(row, labels)) {
                continue;
            }
            Heading heading = heading(row, labels);
            boolean isKnown = heading != null;
            int beside = ListOnItsSide.beside(grid, row, labels);
            if (isKnown
                    && isHeader(row, beside)
                    && heading(row, beside).column() != heading.column()
                    && endsAt(row, labels)) {
                break;
            }
            if (isKnown || !rows.isEmpty()) {
                rows.add(row);
            }
            known = isKnown ? rows.size() : known;
        }
        return rows.subList(0, known).stream().mapToInt(Integer::intValue).toArray();
    }

    /** Whether what stands below a header is no label but what a list has there; "clamp" beside "Kind" is no header. */
    private boolean endsAt(int row, int labels) {
        return isText(row + 1, labels) && heading(row + 1, labels) == null;
    }

    /** Whether labels stand in a column below one another, and no number with them. */
    private boolean areLabels(int column) {
        int labels = 0;
        for (int row = 0; row < end; row++) {
            if (!taken[row] && grid.kind(row, column) == Grid.Kind.NUMBER) {
                return false;
            }
            labels += !taken[row] && isHeader(row, column) && !isBlankBeside(row, column) ? 1 : 0;
        }
        return labels >= LEAST_LABELS;
    }

    private boolean areUnits(int[] rows, int column) {
        return Arrays.stream(rows).allMatch(row -> {
            String text = isText(row, column) ? Words.trim(grid.text(row, column)) : "";
            return isBlank(row, column) || SaidUnit.isUnit(text) || SaidUnit.isMoney(text);
        });
    }

    /** Whether figures stand in a column, or something in most of its cells: remarks do not. */
    private boolean isOfAThing(int[] rows, int column) {
        long filled = Arrays.stream(rows).filter(row -> !isBlank(row, column)).count();
        return Arrays.stream(rows).anyMatch(row -> grid.kind(row, column) == Grid.Kind.NUMBER)
                || 2 * filled > rows.length;
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
