package org.rickyard.plan;

import java.util.List;
import java.util.stream.Collectors;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListSpec;

/** That things are named and no list of them was found: said once, for of every row it would hide all else. */
final class MissingList {
    private final ListSpec list;
    private boolean told;

    MissingList(ListSpec list) {
        this.list = list;
    }

    /**
     * Says it, the first time it is met.
     *
     * @param cell where one is named
     * @param what what names it there
     * @param outcome what comes of it
     */
    void tell(CellAddress cell, String what, String outcome, List<Finding> findings) {
        if (told) {
            return;
        }
        List<String> needs = list.columns().stream()
                .filter(ColumnSpec::required)
                .map(ColumnSpec::name)
                .toList();
        findings.add(Finding.stop(
                cell,
                what + ", but no list of " + list.name().toLowerCase(java.util.Locale.ROOT)
                        + " was found in this workbook, so " + outcome + ". It needs at least the headers "
                        + needs.subList(0, needs.size() - 1).stream().collect(Collectors.joining(", ")) + " and "
                        + needs.get(needs.size() - 1)
                        + "; a sheet whose headers come near to that is named among the findings."));
        told = true;
    }
}
