package org.rickyard.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;

/**
 * Findings of which many cells of one column have the same are told once, with the others named behind: a hundred like
 * stops above the answers hide the one that differs.
 */
final class AlikeFindings {
    /** So many are each told by themselves. */
    private static final int FEW = 3;

    private static final int MOST_RANGES = 5;

    private record Kind(Severity severity, String message, String sheet, int column) {}

    private AlikeFindings() {}

    /** The same findings in the same order; of many alike the first. */
    static List<Finding> told(List<Finding> findings) {
        Map<Kind, List<CellAddress>> kinds = new HashMap<>();
        for (Finding finding : findings) {
            finding.cell().ifPresent(cell -> kinds.computeIfAbsent(kind(finding, cell), any -> new ArrayList<>())
                    .add(cell));
        }
        List<Finding> told = new ArrayList<>();
        for (Finding finding : findings) {
            CellAddress cell = finding.cell().orElse(null);
            List<CellAddress> alike = cell == null ? List.of() : kinds.get(kind(finding, cell));
            if (alike.size() <= FEW) {
                told.add(finding);
            } else if (cell.equals(alike.get(0))) {
                told.add(new Finding(
                        finding.severity(),
                        finding.cell(),
                        finding.message() + others(alike.subList(1, alike.size()))));
            }
        }
        return told;
    }

    private static Kind kind(Finding finding, CellAddress cell) {
        return new Kind(finding.severity(), finding.message(), cell.sheet(), cell.column());
    }

    /** "It is the same in E15 to E21, E34 and 70 more cells, down to E241." Lists tell them in no order of rows. */
    private static String others(List<CellAddress> some) {
        List<CellAddress> cells =
                some.stream().sorted(Comparator.comparingInt(CellAddress::row)).toList();
        List<String> ranges = new ArrayList<>();
        int next = 0;
        while (next < cells.size() && ranges.size() < MOST_RANGES) {
            int last = next;
            while (last + 1 < cells.size()
                    && cells.get(last + 1).row() == cells.get(last).row() + 1) {
                last++;
            }
            ranges.add(name(cells.get(next)) + (last > next ? " to " + name(cells.get(last)) : ""));
            next = last + 1;
        }
        int more = cells.size() - next;
        return " It is the same in " + String.join(", ", ranges)
                + (more > 0
                        ? " and " + Counted.more(more, "cell") + ", down to " + name(cells.get(cells.size() - 1))
                        : "")
                + ".";
    }

    private static String name(CellAddress cell) {
        return CellAddress.letters(cell.column()) + (cell.row() + 1);
    }
}
