package org.rickyard.lists.header;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.LastWords;
import org.rickyard.lists.text.Words;

/**
 * A list that lacks nothing but a column of words from a closed choice (what a machine is, what kind a clamp is of) and has
 * one column under a header of its own ("What it is") in which just such words stand: that is the column. So is a "Job"
 * over "planting" and "lifting" where nothing else says what is done.
 */
public final class ChoiceByContents {
    private static final int MOST_ROWS = 200;
    private static final String OTHER = "other";
    private static final int LEAST_WORDS = 2;
    /** Fewer other headers could be anything. */
    private static final int LEAST_MATCHED = 3;
    /**
     * Headers that ask what the thing beside them is. In a register of two columns nothing else tells, and under "Used
     * with" there would be words of types too.
     */
    private static final Set<String> WHAT_IT_IS = Set.of(
            "what it is", "what is it", "what", "kind of kit", "type of kit", "sort", "sort of kit", "sort of machine");

    private final Grid grid;
    private final HeaderRow headerRow;
    private final List<Finding> findings;

    public ChoiceByContents(Grid grid, HeaderRow headerRow, List<Finding> findings) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.findings = findings;
    }

    /** Settles the header of such a column in every list that wants one. */
    public void settle(List<Vocabulary> vocabularies, String[] headers, int row, int first, int last) {
        for (Vocabulary vocabulary : vocabularies) {
            Optional<ColumnSpec> wanted = wanted(vocabulary);
            if (wanted.isPresent()) {
                HeaderRow.Match match = headerRow.match(vocabulary, headers, first, last, false);
                boolean alone = match.missing().size() == 1
                        && (match.missing().get(0) + " or ")
                                .startsWith(wanted.get().name() + " or ");
                if (alone && match.matched() >= LEAST_MATCHED) {
                    settle(match, wanted.get(), headers, row, vocabularies, false);
                } else if (alone && wanted.get() == Machines.TYPE) {
                    settle(match, wanted.get(), headers, row, vocabularies, true);
                }
            }
        }
    }

    private static Optional<ColumnSpec> wanted(Vocabulary vocabulary) {
        return vocabulary.spec().columns().stream()
                .filter(column ->
                        column.required() && (column.type() == ColumnSpec.Type.CHOICE || column == Jobs.OPERATION))
                .findFirst();
    }

    /** @param few whether so few other headers are known that this one has to ask what the machine is */
    private void settle(
            HeaderRow.Match match,
            ColumnSpec wanted,
            String[] headers,
            int row,
            List<Vocabulary> vocabularies,
            boolean few) {
        Map<String, String> words = ChoiceWords.of(wanted);
        int found = -1;
        for (int i = 0; i < match.headings().length; i++) {
            int column = match.firstColumn() + i;
            if (isOpen(match.headings()[i])
                    && headers[column] != null
                    && (!few
                            || WHAT_IT_IS.contains(Words.normal(headers[column]))
                                    && holdsNothingElse(words, column, row + 1))
                    && holds(words, wanted, column, row + 1, match.headings()[i] != null)
                    && (wanted != Machines.TYPE
                            || !saysWork(headers[column], vocabularies)
                            || holdsNothingElse(words, column, row + 1))) {
                if (found >= 0) {
                    return;
                }
                found = column;
            }
        }
        if (found < 0) {
            return;
        }
        match.vocabulary().settle(headers[found], wanted, "");
        findings.add(Finding.note(
                grid.address(row, found),
                Words.quoted(headers[found]) + " is taken to be the column " + wanted.name() + " of the list "
                        + match.vocabulary().spec().name()
                        + ", by the words that stand under it. If it is another, name"
                        + " the right one in a sheet Layout (List, Column, Header in this workbook, Unit)."));
    }

    /** Whether a header means nothing yet, or is the name of a job, which a job may do without. */
    private static boolean isOpen(Heading heading) {
        return heading == null || heading.isCertain() && !heading.settled() && heading.column() == Jobs.JOB;
    }

    /**
     * Whether two in three of the texts under a header, and no fewer than two, are words of the choice.
     *
     * @param job whether it is the name of a job, of which a word in it may tell the work
     */
    private boolean holds(Map<String, String> words, ColumnSpec wanted, int column, int firstRow, boolean job) {
        int known = 0;
        int texts = 0;
        for (int row = firstRow; row < Math.min(grid.rows(), firstRow + MOST_ROWS); row++) {
            if (grid.kind(row, column) == Grid.Kind.TEXT) {
                String text = Words.normal(grid.text(row, column));
                if (isHeading(text, wanted)) {
                    // The words below belong to this heading: what stands above it may be help, as in a template.
                    break;
                }
                texts++;
                boolean word = words.containsKey(text)
                        || wanted.byLastWords() && !LastWords.of(text, words).isEmpty()
                        || job && namesWork(text, words);
                // "Other" stands under many a header.
                known += word && !text.equals(OTHER) ? 1 : 0;
            }
        }
        return known >= LEAST_WORDS && known * 3 >= texts * 2;
    }

    /** Whether a header of machines says what is done, where their types are wanted: "Op" over "Mow" and "Rake". */
    private static boolean saysWork(String header, List<Vocabulary> vocabularies) {
        return vocabularies.stream()
                .filter(vocabulary -> vocabulary.spec() == Jobs.LIST)
                .anyMatch(vocabulary -> vocabulary.columnsOf(header).contains(Jobs.OPERATION));
    }

    private boolean holdsNothingElse(Map<String, String> words, int column, int firstRow) {
        for (int row = firstRow; row < Math.min(grid.rows(), firstRow + MOST_ROWS); row++) {
            if (grid.kind(row, column) == Grid.Kind.TEXT && !words.containsKey(Words.normal(grid.text(row, column)))) {
                return false;
            }
        }
        return true;
    }

    /** "Chop & haul" and "Mow 1st cut" say what is done, though in no word of the choice. */
    private static boolean namesWork(String text, Map<String, String> words) {
        return words.keySet().stream().anyMatch(word -> Words.holds(text, word));
    }

    private static boolean isHeading(String text, ColumnSpec wanted) {
        return text.equals(Words.normal(wanted.name()))
                || wanted.synonyms().stream().map(Words::normal).anyMatch(text::equals);
    }
}
