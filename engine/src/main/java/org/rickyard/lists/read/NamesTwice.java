package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.text.Words;

/**
 * Says which names of a list stand twice. Where most names of a sheet stand on another already, the sheet is likely a
 * copy that was kept for the record, and that is said once rather than of each name.
 */
final class NamesTwice {
    private static final int MOST_TOLD = 50;
    private static final int FEWEST_OF_A_COPY = 3;

    /** The sheet of a name that stands twice, and that of the name it repeats. */
    private record Sheets(String sheet, String before) {}

    private final ListRows rows;
    private final ColumnSpec name;
    private final List<Finding> findings = new ArrayList<>();

    private NamesTwice(ListRows rows, ColumnSpec name) {
        this.rows = rows;
        this.name = name;
    }

    /** What there is to say of a list whose rows are known by a name and, where it has the column, their holding. */
    static List<Finding> in(ListRows rows, ColumnSpec name) {
        NamesTwice twice = new NamesTwice(rows, name);
        twice.tell();
        return twice.findings;
    }

    private void tell() {
        Map<Integer, Integer> repeated = repeated();
        Map<Sheets, List<Integer>> bySheets = new LinkedHashMap<>();
        repeated.forEach(
                (row, first) -> bySheets.computeIfAbsent(new Sheets(sheet(row), sheet(first)), s -> new ArrayList<>())
                        .add(row));
        Map<String, Integer> onSheet = bySheets.isEmpty() ? Map.of() : onSheet();
        bySheets.forEach((sheets, copies) -> {
            int all = onSheet.get(sheets.sheet());
            if (!sheets.sheet().equals(sheets.before())
                    && copies.size() >= FEWEST_OF_A_COPY
                    && 2 * copies.size() > all) {
                findings.add(copied(sheets, copies, all));
                // One by one: as many copies as names would have removeAll search the list for each.
                copies.forEach(repeated::remove);
            }
        });
        repeated.entrySet().stream()
                .limit(MOST_TOLD)
                .forEach(each -> findings.add(one(each.getKey(), each.getValue())));
        int more = repeated.size() - MOST_TOLD;
        if (more > 0) {
            findings.add(new Finding(
                    Finding.Severity.STOP,
                    Optional.empty(),
                    "And " + Counted.more(more, "name") + (more == 1 ? " stands" : " stand") + " twice in "
                            + rows.spec().name() + "."));
        }
    }

    /** Each row whose name stood before, with the row where it stood first. */
    private Map<Integer, Integer> repeated() {
        Map<String, Integer> names = new HashMap<>();
        Map<String, Integer> ofHolding = new HashMap<>();
        ColumnSpec holding = rows.spec().column("Holding").orElse(null);
        Map<Integer, Integer> repeated = new LinkedHashMap<>();
        for (int row = 0; row < rows.size(); row++) {
            String key = Words.key(rows.text(name, row));
            Integer first = names.putIfAbsent(key, row);
            if (first != null && holding != null) {
                ofHolding.putIfAbsent(Words.key(rows.text(holding, first)) + '\n' + key, first);
                first = ofHolding.putIfAbsent(Words.key(rows.text(holding, row)) + '\n' + key, row);
            }
            if (first != null) {
                repeated.put(row, first);
            }
        }
        return repeated;
    }

    private String sheet(int row) {
        return rows.address(name, row).map(CellAddress::sheet).orElse("");
    }

    /** How many names stand on each sheet. */
    private Map<String, Integer> onSheet() {
        Map<String, Integer> count = new HashMap<>();
        for (int row = 0; row < rows.size(); row++) {
            count.merge(sheet(row), 1, Integer::sum);
        }
        return count;
    }

    private Finding copied(Sheets sheets, List<Integer> copies, int all) {
        String which = copies.size() == all ? "All " + all : copies.size() + " of the " + all;
        return Finding.stop(
                rows.address(name, copies.get(0)).orElse(null),
                which + " names of the list " + rows.spec().name() + " on the sheet " + Words.quoted(sheets.sheet())
                        + " stand on " + Words.quoted(sheets.before())
                        + " already, so both are read and whatever adds up counts them twice. If one of the two is kept"
                        + " for the record, move it to another workbook; if not, give each its own name, or its"
                        + " holding.");
    }

    private Finding one(int row, int first) {
        return Finding.stop(
                rows.address(name, row).orElse(null),
                name.name() + " " + Words.quoted(rows.text(name, row)) + " stands already in "
                        + rows.address(name, first).map(CellAddress::toString).orElse("another row")
                        + ". Give each its own name, or its holding, so that it is clear which is meant; if both are the"
                        + " same one, put all that is told of it in one row.");
    }
}
