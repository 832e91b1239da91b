package org.rickyard.plan.join;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;

/** That things are named and there is no list of them, or none in it: said once, for of every row it would hide all else. */
public final class MissingList {
    private final ListRows list;
    private boolean told;

    /** @param list the list, which has no rows if it is missed */
    public MissingList(ListRows list) {
        this.list = list;
    }

    /**
     * Says it, the first time it is met.
     *
     * @param cell where one is named
     * @param what what names it there
     * @param outcome what comes of it
     */
    public void tell(CellAddress cell, String what, String outcome, List<Finding> findings) {
        if (told) {
            return;
        }
        String name = list.spec().name().toLowerCase(Locale.ROOT);
        findings.add(Finding.stop(
                cell,
                isThere()
                        ? what + ", but the list of " + name + " in this workbook has no rows, so " + outcome
                                + ". Type them under its headers."
                        : what + ", but no list of " + name + " was found in this workbook, so " + outcome
                                + ". It needs at least the headers " + needed()
                                + "; a sheet whose headers come near to that is named among the findings."));
        told = true;
    }

    private boolean isThere() {
        return list.spec().columns().stream().anyMatch(list::has);
    }

    private String needed() {
        List<String> needs = list.spec().columns().stream()
                .filter(ColumnSpec::required)
                .map(ColumnSpec::name)
                .toList();
        int last = needs.size() - 1;
        return needs.subList(0, last).stream().collect(Collectors.joining(", ")) + " and " + needs.get(last);
    }
}
