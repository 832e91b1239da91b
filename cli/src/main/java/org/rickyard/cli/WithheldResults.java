package org.rickyard.cli;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.audit.Cause;
import org.rickyard.audit.Causes;
import org.rickyard.audit.Results;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;

/** The results that a plan withholds, grouped by what is the matter, with the cells to look at. */
final class WithheldResults {
    /** Beyond so many withheld results the reasons of the rest are not looked for, only counted as withheld. */
    private static final int MOST_EXPLAINED = 20_000;
    /** Beyond so many different reasons no new ones are kept. */
    private static final int MOST_REASONS = 1_000;

    private static final int MOST_NAMED = 3;

    private static final class Reason {
        private final Set<String> cells = new LinkedHashSet<>();
        /** What it is about, where no cell tells. */
        private final Set<String> things = new LinkedHashSet<>();

        private long results;
    }

    private final Causes causes = new Causes();
    private final Map<String, Reason> reasons = new LinkedHashMap<>();
    private long count;

    private WithheldResults() {}

    static WithheldResults of(WorkPlan plan) {
        WithheldResults withheld = new WithheldResults();
        for (ResultTable table : plan.tables()) {
            for (TableColumn column : Results.answers(table)) {
                withheld.read(table, column);
            }
        }
        return withheld;
    }

    private void read(ResultTable table, TableColumn column) {
        for (int row = 0; row < table.rows(); row++) {
            if (Results.isWithheld(table, column, row) && ++count <= MOST_EXPLAINED) {
                causes.of(table, column.symbol(), row).forEach(this::take);
            }
        }
    }

    private void take(Cause cause) {
        Reason reason = reasons.get(cause.what());
        if (reason == null && reasons.size() < MOST_REASONS) {
            reason = new Reason();
            reasons.put(cause.what(), reason);
        }
        if (reason != null) {
            reason.results++;
            cause.cell().map(CellAddress::toString).ifPresent(reason.cells::add);
            cause.thing().ifPresent(reason.things::add);
        }
    }

    /** How many results are withheld. */
    long count() {
        return count;
    }

    /** How many different reasons there are. */
    int reasons() {
        return reasons.size();
    }

    /** The reasons that withhold most, a line each; of as many results those met first stand first. */
    List<String> lines(int most) {
        return reasons.entrySet().stream()
                .sorted(Comparator.comparingLong(entry -> -entry.getValue().results))
                .limit(most)
                .map(entry -> line(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static String line(String what, Reason reason) {
        String where = reason.cells.isEmpty() ? first(reason.things, "; ", "") : first(reason.cells, ", ", "cell");
        return what + where + " (" + reason.results + (reason.results == 1 ? " result)" : " results)");
    }

    /** ": Jobs!C5, Jobs!C7, Jobs!C9 and 4 more cells". */
    private static String first(Set<String> places, String between, String kind) {
        int more = places.size() - MOST_NAMED;
        return places.isEmpty()
                ? ""
                : ": " + places.stream().limit(MOST_NAMED).collect(Collectors.joining(between))
                        + (kind.isEmpty() || more <= 0 ? Counted.andMore(more) : " and " + Counted.more(more, kind));
    }
}
