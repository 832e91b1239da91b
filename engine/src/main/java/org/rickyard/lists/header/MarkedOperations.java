package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.Words;

/**
 * Operations or machines across, fields down, and a Y, x or tick where the one is for the other. Which machine does it, and
 * when, stands nowhere, so it is no list of jobs; and a "Drill" over ticks is none that is called so.
 */
public final class MarkedOperations {
    private static final Set<String> MARKS = Set.of(
            "y", "n", "yes", "no", "x", "✓", "✔", "√", "☑", "☒", "☐", "✗", "✘", "•", "done", "tick", "-", "–", "—",
            "/");

    private static final int LEAST = 2;
    private static final int MOST_NAMED = 4;

    private MarkedOperations() {}

    /**
     * Takes the headers of such columns out of a row.
     *
     * @param headers per column of the sheet, null where there is none; changed in place
     * @return whether there were any; then that is told
     */
    public static boolean takeOut(String[] headers, HeaderRow headerRow, Grid grid, int row, List<Finding> findings) {
        List<Integer> marked = new ArrayList<>();
        List<Integer> blank = new ArrayList<>();
        for (int column = 0; column < headers.length; column++) {
            if (headers[column] != null && names(headers[column])) {
                int marks = marks(grid, row, column);
                if (marks > 0) {
                    marked.add(column);
                } else if (marks == 0) {
                    blank.add(column);
                }
            }
        }
        if (marked.size() < LEAST || !namesFields(headers, headerRow)) {
            return false;
        }
        String some = marked.stream()
                .limit(MOST_NAMED)
                .map(column -> Words.quoted(headers[column]))
                .collect(Collectors.joining(", "));
        findings.add(Finding.note(
                grid.address(row, marked.get(0)),
                "What is marked under " + some + (marked.size() > MOST_NAMED ? " and more" : "")
                        + " is not read as work: a mark does not say which machine does it. Write a list Jobs with the"
                        + " headers Field, Operation and Machine, and a row for each operation on a field, a crop,"
                        + " a block or all."));
        marked.forEach(column -> headers[column] = null);
        blank.forEach(column -> headers[column] = null);
        return true;
    }

    /** Whether the rows are fields: ticks beside machines say what each can do. */
    private static boolean namesFields(String[] headers, HeaderRow headerRow) {
        HeaderRow.Match fields = headerRow.match(Fields.LIST, headers, 0, headers.length - 1, false);
        HeaderRow.Match jobs = headerRow.match(Jobs.LIST, headers, 0, headers.length - 1, false);
        HeaderRow.Match machines = headerRow.match(Machines.LIST, headers, 0, headers.length - 1, false);
        if (machines != null && machines.missing().isEmpty()) {
            return false;
        }
        return fields != null && fields.places(Fields.FIELD) > 0
                || jobs != null && jobs.places(Jobs.FIELD) + jobs.places(Jobs.BLOCK) > 0;
    }

    private static boolean names(String header) {
        String normal = Words.normal(header);
        return ChoiceWords.OPERATIONS.containsKey(normal) || ChoiceWords.MACHINE_TYPES.containsKey(normal);
    }

    private static boolean isBlank(Grid grid, int row) {
        return IntStream.range(0, grid.columns()).allMatch(column -> grid.kind(row, column) == Grid.Kind.BLANK);
    }

    /** How many marks stand under a header; -1 if anything else does. */
    private static int marks(Grid grid, int row, int column) {
        int marks = 0;
        int end = TextsBelow.end(grid, row);
        for (int below = row + 1; below < end && !isBlank(grid, below); below++) {
            Grid.Kind kind = grid.kind(below, column);
            String text = kind == Grid.Kind.TEXT ? Words.key(grid.text(below, column)) : "";
            if (kind == Grid.Kind.LOGICAL || MARKS.contains(text)) {
                marks++;
            } else if (kind != Grid.Kind.BLANK && !text.isEmpty() || kind == Grid.Kind.NUMBER) {
                return -1;
            }
        }
        return marks;
    }
}
