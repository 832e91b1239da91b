package org.rickyard.plan.join;

import java.util.List;
import org.rickyard.formula.Days;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;

/** Whether the jobs of a list can be those of one season: all of them are added up, whatever their days. */
public final class OneSeason {
    /** From the tillage for a crop to its harvest takes less, and the season after begins where this one did. */
    private static final int MOST_DAYS = 366;

    private OneSeason() {}

    /** Cautions where the first day of a job and the last of another are more than a year apart. */
    public static void ask(FoundLists lists, List<Finding> findings) {
        ListRows jobs = lists.rows(Jobs.LIST);
        Day first = null;
        Day last = null;
        for (int row = 0; row < jobs.size(); row++) {
            for (ColumnSpec column : List.of(Jobs.EARLIEST, Jobs.LATEST)) {
                if (jobs.gives(column, row)) {
                    double day = jobs.number(column, row);
                    first = first == null || day < first.day() ? new Day(day, column, row) : first;
                    last = last == null || day > last.day() ? new Day(day, column, row) : last;
                }
            }
        }
        if (first != null && last.day() - first.day() > MOST_DAYS) {
            findings.add(Finding.caution(
                    jobs.address(last.column(), last.row()).orElse(null),
                    "the jobs run from " + first.told(lists) + " to " + last.told(lists)
                            + ", over more than a year, and"
                            + " all of them are added up: hours, costs, amounts to order, and the season's doses and"
                            + " applications of a product. If they are of more than one season, keep each season in a"
                            + " workbook of its own; if a day is mistyped, mend it."));
        }
    }

    /** A day of a job, and where it is typed. */
    private record Day(double day, ColumnSpec column, int row) {
        String told(FoundLists lists) {
            String cell = lists.rows(Jobs.LIST)
                    .address(column, row)
                    .map(address -> " (" + address + ")")
                    .orElse("");
            return Days.text(day, lists.dayZero()) + cell;
        }
    }
}
