package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;

/**
 * What a client works out by formulas of his own and we would work out too: a rate of work from width and speed, a progress of
 * the face from what is fed. It counts as typed, in lists and on forms alike, and then ours is no second opinion on his.
 */
final class OwnResults {
    /**
     * Something that is typed as a rule, and may be worked out.
     *
     * @param from what it is worked out from, where it stands beside it; else the formula may look it up
     */
    private record Result(ListSpec list, ColumnSpec column, List<ColumnSpec> from, String ours) {}

    private static final List<Result> RESULTS = List.of(
            new Result(
                    Machines.LIST,
                    Machines.RATE_OF_WORK,
                    List.of(Machines.WORKING_WIDTH, Machines.SPEED),
                    "a work rate from width and speed"),
            new Result(Clamps.LIST, Clamps.FEED_OUT_RATE, List.of(), "one from the herd"));

    private OwnResults() {}

    /** A note for each column of such results. */
    static List<Finding> in(List<FoundTable> tables) {
        List<Finding> told = new ArrayList<>();
        for (FoundTable table : tables) {
            for (Result result : RESULTS) {
                HeaderRow.Match match = table.role(result.list());
                if (match != null && result.from().stream().allMatch(match::holds)) {
                    IntStream.range(0, match.headings().length)
                            .filter(i -> match.headings()[i] != null
                                    && match.headings()[i].isCertain()
                                    && match.headings()[i].column() == result.column())
                            .forEach(i -> tell(table, match.firstColumn() + i, result, told));
                }
            }
        }
        return told;
    }

    private static void tell(FoundTable table, int column, Result result, List<Finding> told) {
        int[] worked = IntStream.range(0, table.count())
                .map(table::row)
                .filter(row -> table.grid().isFormula(row, column))
                .toArray();
        if (worked.length > 0) {
            told.add(Finding.note(
                    table.address(worked[0], column),
                    Words.quoted(table.headers()[column]) + " is worked out here by a formula of yours"
                            + (worked.length > 1 ? ", and in " + (worked.length - 1) + " more cells" : "")
                            + ". It is taken as if it were typed, as "
                            + result.column().name() + " of "
                            + result.list().name() + ", so " + result.ours()
                            + " does not stand beside it. To have ours, clear it or give it a header that says it is"
                            + " yours."));
        }
    }
}
