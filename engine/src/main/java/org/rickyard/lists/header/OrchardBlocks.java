package org.rickyard.lists.header;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;

/**
 * An orchard or vineyard that stands on several rows beside a block is whose blocks they are: the holding, and each block
 * a field of it; so is one beside a field. An orchard that stands once is a field, and its block what fields are worked together in.
 */
public final class OrchardBlocks {
    private static final int MOST_ROWS = 200;
    private static final List<String> WORDS = List.of("orchard", "vineyard");

    private final Grid grid;
    private final HeaderRow headerRow;
    private final List<Finding> findings;

    public OrchardBlocks(Grid grid, HeaderRow headerRow, List<Finding> findings) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.findings = findings;
    }

    /** Settles both headers for the list of fields, and for a list of jobs after it. */
    public void settle(List<Vocabulary> vocabularies, String[] headers, int row, int first, int last) {
        int orchard = place(headers, first, last);
        if (orchard < 0) {
            return;
        }
        Vocabulary fields = of(Fields.LIST, vocabularies);
        Vocabulary jobs = of(Jobs.LIST, vocabularies);
        if (fields != null) {
            HeaderRow.Match match = headerRow.match(fields, headers, first, last, false);
            if (besideField(match, Fields.HOLDING, Fields.FIELD) && match.holds(Fields.AREA)) {
                fields.settle(headers[orchard], Fields.HOLDING, "");
                return;
            }
            int block = both(match, Fields.HOLDING, Fields.FIELD, Fields.BLOCK, headers[orchard], headers);
            if (block >= 0 && match.holds(Fields.AREA) && repeats(orchard, block, row + 1)) {
                fields.settle(headers[orchard], Fields.HOLDING, "");
                fields.settle(headers[block], Fields.FIELD, "");
                findings.add(Finding.note(
                        grid.address(row, orchard),
                        Words.quoted(headers[orchard]) + " is taken to be the Holding of the list Fields and "
                                + Words.quoted(headers[block]) + " its Field, since one of them has several blocks. If"
                                + " it is not so, name the right columns in a sheet Layout (List, Column, Header in this"
                                + " workbook, Unit)."));
                return;
            }
        }
        if (jobs != null && fields != null && means(fields, headers[orchard], Fields.HOLDING)) {
            HeaderRow.Match match = headerRow.match(jobs, headers, first, last, false);
            if (besideField(match, Jobs.HOLDING, Jobs.FIELD)) {
                jobs.settle(headers[orchard], Jobs.HOLDING, "");
                return;
            }
            int block = both(match, Jobs.HOLDING, Jobs.FIELD, Jobs.BLOCK, headers[orchard], headers);
            if (block >= 0) {
                jobs.settle(headers[orchard], Jobs.HOLDING, "");
                jobs.settle(headers[block], Jobs.FIELD, "");
            }
        }
    }

    private static int place(String[] headers, int first, int last) {
        for (int column = first; column <= last; column++) {
            if (headers[column] != null && WORDS.stream().anyMatch(HeaderText.normal(headers[column])::startsWith)) {
                return column;
            }
        }
        return -1;
    }

    private static Vocabulary of(ListSpec list, List<Vocabulary> vocabularies) {
        return vocabularies.stream()
                .filter(vocabulary -> vocabulary.spec() == list)
                .findFirst()
                .orElse(null);
    }

    private static boolean means(Vocabulary vocabulary, String header, ColumnSpec column) {
        Heading heading = vocabulary.read(HeaderText.of(header));
        return heading != null && heading.isCertain() && heading.column() == column;
    }

    /** Whether another header says the field, and none the holding: then an orchard is whose field it is. */
    private static boolean besideField(HeaderRow.Match match, ColumnSpec holding, ColumnSpec field) {
        return !match.holds(holding) && match.places(field) == 2;
    }

    /** The place of the block beside an orchard that is read as the field, where no header says the holding; else -1. */
    private static int both(
            HeaderRow.Match match,
            ColumnSpec holding,
            ColumnSpec field,
            ColumnSpec block,
            String orchard,
            String[] headers) {
        boolean asField = !match.holds(holding)
                && match.places(field) == 1
                && match.places(block) == 1
                && orchard.equals(match.headerOf(field, headers));
        for (int i = 0; asField && i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading != null && heading.isCertain() && heading.column() == block && !heading.settled()) {
                return match.firstColumn() + i;
            }
        }
        return -1;
    }

    /** Whether an orchard stands on several rows, each with a block of its own. */
    private boolean repeats(int orchard, int block, int firstRow) {
        Set<String> orchards = new HashSet<>();
        Set<String> blocks = new HashSet<>();
        int rows = 0;
        for (int row = firstRow; row < Math.min(grid.rows(), firstRow + MOST_ROWS); row++) {
            String name = Words.normal(grid.words(row, orchard));
            String part = Words.normal(grid.words(row, block));
            if (!name.isEmpty() && !part.isEmpty()) {
                rows++;
                orchards.add(name);
                blocks.add(name + "\n" + part);
            }
        }
        return orchards.size() < rows && blocks.size() == rows;
    }
}
