package org.rickyard.plan.silage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Herds;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.plan.fit.PlanContext;

/**
 * Groups of a holding that eat one after the other. What is eaten in a day adds up all rows, so of such rows it is too
 * much, and the feed lasts longer than is said; what is eaten in all is right. Nobody has printed what days of feed are
 * then, so it is told and not reckoned.
 */
final class GroupsInTurn {
    private static final String AT_ONCE =
            " days of feed, animals fed, silage taken in a day and what rests on them count all rows as eating at once";
    private static final String RIGHT = " The demand and the surplus are right either way.";

    private final PlanContext plan;
    private final ListRows herds;

    private GroupsInTurn(PlanContext plan) {
        this.plan = plan;
        this.herds = plan.rows(Herds.LIST);
    }

    /** Tells them. */
    static void tell(PlanContext plan, int[] holdingOfHerd) {
        GroupsInTurn turns = new GroupsInTurn(plan);
        Map<Integer, List<Integer>> byHolding = new LinkedHashMap<>();
        for (int herd = 0; herd < holdingOfHerd.length; herd++) {
            if (turns.herds.gives(Herds.HEAD, herd)) {
                byHolding
                        .computeIfAbsent(holdingOfHerd[herd], any -> new ArrayList<>())
                        .add(herd);
            }
        }
        byHolding.values().forEach(turns::holding);
    }

    private void holding(List<Integer> rows) {
        Map<String, List<Integer>> byGroup = new LinkedHashMap<>();
        rows.forEach(row -> byGroup.computeIfAbsent(NameKey.key(herds.text(Herds.GROUP, row)), any -> new ArrayList<>())
                .add(row));
        boolean repeated = false;
        for (List<Integer> same : byGroup.values()) {
            if (same.size() > 1) {
                repeated = true;
                tellSame(same);
            }
        }
        if (!repeated) {
            tellApart(rows);
        }
    }

    private void tellSame(List<Integer> same) {
        String cells = same.stream()
                .flatMap(row -> herds.address(Herds.GROUP, row).stream())
                .map(CellAddress::toString)
                .collect(Collectors.joining(", "));
        plan.findings()
                .add(Finding.caution(
                        herds.address(Herds.GROUP, same.get(1)).orElse(null),
                        "the group '" + herds.text(Herds.GROUP, same.get(0)) + "' stands in "
                                + Counted.of(same.size(), "row") + " (" + cells + "), and" + AT_ONCE
                                + ". Where one period follows the other, write one row with all its days and the intake"
                                + " of an average day; where the same animals eat of two feeds, animals fed counts them"
                                + " twice." + RIGHT));
    }

    /** Periods by their dates: one that begins when another is over. */
    private void tellApart(List<Integer> rows) {
        int ended = -1;
        int begun = -1;
        for (int row : rows) {
            if (herds.gives(Herds.START, row) && herds.gives(Herds.END, row)) {
                ended = ended < 0 || herds.number(Herds.END, row) < herds.number(Herds.END, ended) ? row : ended;
                begun = begun < 0 || herds.number(Herds.START, row) > herds.number(Herds.START, begun) ? row : begun;
            }
        }
        if (ended >= 0 && herds.number(Herds.END, ended) < herds.number(Herds.START, begun)) {
            plan.findings()
                    .add(Finding.caution(
                            herds.address(Herds.START, begun).orElse(null),
                            "'" + herds.text(Herds.GROUP, begun) + "' is fed only when '"
                                    + herds.text(Herds.GROUP, ended) + "' ("
                                    + herds.address(Herds.END, ended)
                                            .map(CellAddress::toString)
                                            .orElse("") + ") no longer is, but" + AT_ONCE
                                    + ", so that the feed lasts longer than they say." + RIGHT));
        }
    }
}
