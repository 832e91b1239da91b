package org.rickyard.plan;

import java.util.List;
import java.util.stream.Collectors;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;

/** That clamps are named and no list of clamps was found: said once, for of every row it would hide all else. */
final class NoClamps {
    private boolean told;

    /**
     * Says it, the first time it is met.
     *
     * @param cell where a clamp is named
     * @param what what names it there
     * @param outcome what comes of it
     */
    void tell(CellAddress cell, String what, String outcome, List<Finding> findings) {
        if (!told) {
            findings.add(Finding.stop(
                    cell,
                    what + ", but no list of clamps was found in this workbook, so " + outcome
                            + ". It needs at least the headers "
                            + Clamps.LIST.columns().stream()
                                    .filter(ColumnSpec::required)
                                    .map(ColumnSpec::name)
                                    .collect(Collectors.joining(", "))
                            + "; a sheet whose headers come near to that is named among the findings."));
            told = true;
        }
    }
}
