package org.rickyard.run;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.workbook.graft.WatchedReference;
import org.rickyard.workbook.graft.WatchedReference.Stood;
import org.rickyard.workbook.notation.CellArea;

/**
 * What is to be said of one reference: which it is, what stood there and what stands there now. Nothing is said of an
 * area that held all rows and still does, or whose rows only changed places among themselves.
 */
final class MoveSentence {
    private static final int MOST_NAMED = 3;
    private static final String ADVICE = " A total by its name (Rickyard_...) never moves.";

    private final ClientReferences.Reference reference;
    private final CellArea area;
    private final WatchedReference then;
    private final WatchedReference today;
    private final SheetFace now;

    MoveSentence(ClientReferences.Reference reference, WatchedReference then, WatchedReference today, SheetFace now) {
        this.reference = reference;
        this.area = reference.area();
        this.then = then;
        this.today = today;
        this.now = now;
    }

    Optional<String> text() {
        boolean oneRow = area.firstRow() == area.lastRow();
        boolean oneColumn = area.firstColumn() == area.lastColumn();
        Change rows = new Change(then.rows(), today.rows(), oneRow);
        Change columns = new Change(then.columns(), today.columns(), oneColumn);
        if (!rows.moved() && !columns.moved()) {
            return Optional.empty();
        }
        String subject = (reference.cell().isPresent() ? "this cell" : reference.by()) + " refers to " + area;
        if (oneRow && oneColumn) {
            return Optional.of(subject + ", where " + standing(then) + " stood; now " + standing(today)
                    + " stands there. " + whereabouts() + ADVICE);
        }
        List<String> clauses = new ArrayList<>();
        if (rows.moved()) {
            clauses.add(rows.clause("rows"));
        }
        if (columns.moved()) {
            clauses.add(columns.clause("columns"));
        }
        return Optional.of(
                subject + "; " + String.join("; ", clauses) + ". See that it covers what you mean." + ADVICE);
    }

    /** "work rate of Skel Beck, Long Acre, mowing", or what of it is known. */
    private static String standing(WatchedReference watched) {
        String column = named(watched.columns().items().stream().findFirst());
        String row = named(watched.rows().items().stream().findFirst());
        if (column.isEmpty() && row.isEmpty()) {
            return "nothing";
        }
        String what = column.isEmpty() ? "" : "'" + column + "'";
        return row.isEmpty() ? what : what.isEmpty() ? "the line of " + row : what + " of " + row;
    }

    private static String named(Optional<List<String>> item) {
        return String.join(
                ", ",
                item.orElse(List.of()).stream().filter(word -> !word.isEmpty()).toList());
    }

    /** Where that which stood there is to be found now. */
    private String whereabouts() {
        int column = area.firstColumn();
        if (!then.columns().items().isEmpty()) {
            column = now.columns().indexOf(then.columns().items().get(0).get(0));
        }
        int row = area.firstRow();
        if (!then.rows().items().isEmpty()) {
            row = rowOf(then.rows());
        }
        return column < 0 || row < 0
                ? "What stood there is no longer on the sheet."
                : "What stood there is at " + new CellAddress(area.sheet(), row, column)
                        + ": refer to that if it is meant.";
    }

    private int rowOf(Stood stood) {
        List<String> labels = common(stood.labels(), now.labels());
        String wanted = key(stood, labels, stood.items().get(0));
        for (int row = now.firstRow(); row <= now.lastRow(); row++) {
            Stood one = new Stood(now.labels(), List.of(now.item().apply(row)), false);
            if (key(one, labels, one.items().get(0)).equals(wanted)) {
                return row;
            }
        }
        return -1;
    }

    private static List<String> common(List<String> labels, List<String> others) {
        return labels.stream().filter(others::contains).toList();
    }

    private static String key(Stood stood, List<String> labels, List<String> item) {
        StringBuilder key = new StringBuilder();
        for (String label : labels) {
            key.append(item.get(stood.labels().indexOf(label)).toLowerCase(Locale.ROOT))
                    .append('\n');
        }
        return key.toString();
    }

    /** What of the rows, or of the columns, stood in the area and does no longer, and the other way round. */
    private static final class Change {
        private final List<List<String>> out;
        private final List<List<String>> in;
        private final boolean uncovered;
        private final boolean moved;

        Change(Stood then, Stood today, boolean one) {
            List<String> labels = common(then.labels(), today.labels());
            out = without(then, today, labels);
            in = without(today, then, labels);
            uncovered = !one && then.all() && !today.all();
            boolean stood = !then.items().isEmpty();
            boolean coversAll = !one && then.all() && today.all();
            moved = stood && !coversAll && (uncovered || !out.isEmpty() || !in.isEmpty());
        }

        private static List<List<String>> without(Stood these, Stood others, List<String> labels) {
            Set<String> keys = new LinkedHashSet<>();
            others.items().forEach(item -> keys.add(key(others, labels, item)));
            return these.items().stream()
                    .filter(item -> !keys.contains(key(these, labels, item)))
                    .toList();
        }

        boolean moved() {
            return moved;
        }

        String clause(String what) {
            List<String> said = new ArrayList<>();
            if (uncovered) {
                said.add("it held all " + what + " of the sheet and does no longer");
            }
            if (!out.isEmpty()) {
                said.add("of the " + what + " that stood in it, " + list(out) + " no longer "
                        + (out.size() == 1 ? "does" : "do"));
            }
            if (!in.isEmpty()) {
                said.add("newly in it " + (in.size() == 1 ? "stands " : "stand ") + list(in));
            }
            return String.join("; ", said);
        }

        private static String list(List<List<String>> items) {
            List<String> names = new ArrayList<>();
            for (List<String> item : items.subList(0, Math.min(MOST_NAMED, items.size()))) {
                names.add("'" + named(Optional.of(item)) + "'");
            }
            String joined = String.join(" and ", names);
            return joined + Counted.andMore(items.size() - MOST_NAMED);
        }
    }
}
