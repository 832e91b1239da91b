package org.rickyard.lists.table;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;

/**
 * What the things of a form are called where no label says so: by the heads over them, or one alone by the title above it,
 * as "Silage clamp at Hill Farm". A name only tells one thing from another, so none is worse than one taken from there.
 */
final class FormNames {
    private static final int TITLE_ROWS = 6;

    private final FormCells cells;
    private final ListSpec list;
    private final ColumnSpec name;
    /** What a word must tell beside that it is of the list: of what kind it is, where no label says so; null if nothing. */
    private final ColumnSpec kind;

    private FormNames(FormCells cells, ListSpec list, ColumnSpec kind) {
        this.cells = cells;
        this.list = list;
        this.name = list.identity().get(0);
        this.kind = kind;
    }

    /**
     * The names of a form without labels for some columns.
     *
     * @return empty if more than names are lacking, or the type of a machine that its title tells
     */
    static Optional<FormNames> of(FormCells cells, ListSpec list, List<String> lacking) {
        Set<String> more = new HashSet<>(lacking);
        more.remove(list.identity().get(0).name());
        if (more.isEmpty()) {
            return Optional.of(new FormNames(cells, list, null));
        }
        return list == Machines.LIST && more.equals(Set.of(Machines.TYPE.name()))
                ? Optional.of(new FormNames(cells, list, Machines.TYPE))
                : Optional.empty();
    }

    /**
     * A form with its names as a further label; empty if nothing names its things.
     *
     * @param alone whether no other form stands on its sheet
     */
    Optional<FormGrid> named(FormGrid form, boolean alone) {
        int first = form.rows() - form.things();
        int labels = form.address(0, 0).column();
        int top = IntStream.range(0, form.columns())
                .map(label -> form.address(0, label).row())
                .min()
                .orElse(0);
        int[] across = IntStream.range(0, form.rows())
                .map(line -> form.address(line, 0).column())
                .toArray();
        for (int row = top - 1; row >= Math.max(0, top - TITLE_ROWS); row--) {
            if (form.things() > 1) {
                if (kind == null && areHeads(row, across, first)) {
                    return Optional.of(form.named(name.name(), row, across));
                }
                continue;
            }
            String label = label(row, across[first]);
            if (label != null) {
                return Optional.of(form.named(label, row, across));
            }
            boolean title = cells.isBlankBeside(row, labels) || FormSystems.areHeads(cells, row, labels);
            label = alone && title ? label(row, labels) : null;
            if (label != null) {
                int[] above = new int[form.rows()];
                Arrays.fill(above, cells.grid().columns());
                above[0] = labels;
                above[first] = labels;
                return Optional.of(form.named(label, row, above));
            }
        }
        return Optional.empty();
    }

    /** Whether over each of several things a text stands that tells it from the others. */
    private boolean areHeads(int row, int[] across, int first) {
        Set<String> heads = new HashSet<>();
        for (int thing = first; thing < across.length; thing++) {
            if (!cells.isText(row, across[thing])) {
                return false;
            }
            heads.add(Words.key(cells.grid().text(row, across[thing])));
        }
        return heads.size() == across.length - first;
    }

    /** The label that a text stands for, if it says of which list the form is; null if not, as the name of a farm. */
    private String label(int row, int column) {
        if (!cells.isText(row, column) || HoldingAbove.isHeading(cells.grid().text(row, column))) {
            return null;
        }
        for (String word : Words.normal(cells.grid().text(row, column)).split(" ")) {
            HeaderText text = HeaderText.of(word);
            boolean says = cells.vocabularies().stream()
                    .filter(vocabulary -> vocabulary.spec() == list)
                    .map(vocabulary -> vocabulary.read(text))
                    .anyMatch(heading -> heading != null
                            && heading.isCertain()
                            && heading.column() == name
                            && (kind == null || heading.word() != null));
            if (says) {
                return kind == null ? name.name() : word;
            }
        }
        return null;
    }

    /** How it is said by what things go. */
    Finding told(FormGrid form) {
        int first = form.rows() - form.things();
        String names = IntStream.range(first, form.rows())
                .mapToObj(line -> Words.quoted(form.words(line, 0)))
                .collect(Collectors.joining(", "));
        return Finding.note(
                form.address(first, 0),
                "No label of the form below says what the " + name.name()
                        + " is called, so it goes by what stands here: " + names
                        + ". To call it otherwise, write a label " + name.name() + " with its name beside it.");
    }
}
