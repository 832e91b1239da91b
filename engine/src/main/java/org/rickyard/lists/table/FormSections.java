package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Herds;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.text.HeaderText;

/**
 * What the sections of a form tell of. A field, its machine and its job are one thing to do; a clamp, a stock and a group
 * of a herd are things of their own, whose width and kind are not those of the machine in the next section.
 */
final class FormSections {
    private static final List<ListSpec> THEIR_OWN = List.of(Clamps.LIST, Stocks.LIST, Herds.LIST);
    /** Stands for all that a job is made of. */
    private static final ListSpec JOB = ListOnItsSide.OF_A_JOB.get(0);

    /** Its name and something of it. */
    private static final int LEAST = 2;

    private final FormCells cells;

    FormSections(FormCells cells) {
        this.cells = cells;
    }

    /** The rows of each thing's sections; sections are parted by rows that are no labels. */
    List<int[]> parted(int labels, int[] rows) {
        Map<ListSpec, IntStream.Builder> parts = new LinkedHashMap<>();
        ListSpec list = null;
        List<int[]> unnamed = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= rows.length; i++) {
            if (i < rows.length && rows[i] == rows[i - 1] + 1) {
                continue;
            }
            int[] section = Arrays.copyOfRange(rows, from, i);
            from = i;
            ListSpec named = named(labels, section);
            list = named != null ? named : isOfAJob(labels, section, list) ? JOB : list;
            if (list == null) {
                unnamed.add(section);
                continue;
            }
            IntStream.Builder part = parts.computeIfAbsent(list, spec -> IntStream.builder());
            unnamed.forEach(before -> Arrays.stream(before).forEach(part::add));
            unnamed.clear();
            Arrays.stream(section).forEach(part::add);
        }
        return parts.size() < 2
                ? List.of(rows)
                : parts.values().stream().map(part -> part.build().toArray()).toList();
    }

    /** Whether a section that follows on a thing of its own tells of work all the same: "Working width", "Speed". */
    private boolean isOfAJob(int labels, int[] rows, ListSpec before) {
        return before != null
                && before != JOB
                && told(labels, rows, ListOnItsSide.OF_A_JOB).count > told(labels, rows, List.of(before)).count;
    }

    /** What labels name a thing of: one of its own, or what a job is made of; null if they name none. */
    ListSpec named(int labels, int[] rows) {
        Told job = told(labels, rows, ListOnItsSide.OF_A_JOB);
        for (ListSpec list : THEIR_OWN) {
            Told own = told(labels, rows, List.of(list));
            if (own.named && own.count >= LEAST && own.count >= job.count) {
                return list;
            }
        }
        return job.named ? JOB : null;
    }

    private record Told(int count, boolean named) {}

    private Told told(int labels, int[] rows, List<ListSpec> lists) {
        int count = 0;
        boolean named = false;
        for (int row : rows) {
            HeaderText text = HeaderText.of(cells.grid().text(row, labels));
            List<Heading> headings = cells.vocabularies().stream()
                    .filter(vocabulary -> lists.contains(vocabulary.spec()))
                    .map(vocabulary -> vocabulary.read(text))
                    .filter(heading -> heading != null && heading.isCertain())
                    .toList();
            count += headings.isEmpty() ? 0 : 1;
            named |= headings.stream().anyMatch(heading -> lists.stream()
                    .anyMatch(list -> list.identity().contains(heading.column())));
        }
        return new Told(count, named);
    }
}
