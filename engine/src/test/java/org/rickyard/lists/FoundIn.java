package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.read.ListFinder;

/** The lists found in small sheets, and what was said of them. */
public final class FoundIn {
    private FoundIn() {}

    public static FoundLists find(SheetOf... sheets) {
        return ListFinder.find(List.of(sheets));
    }

    /** Every finding in one line: severity, cell and message. */
    public static List<String> said(FoundLists found) {
        return found.findings().stream()
                .map(finding -> finding.severity() + " "
                        + finding.cell().map(CellAddress::toString).orElse("-") + " " + finding.message())
                .toList();
    }

    /** The one finding there is. */
    public static String onlyMessage(FoundLists found, Severity severity) {
        List<Finding> all = found.findings();
        assertThat(all).hasSize(1);
        assertThat(all.get(0).severity()).isEqualTo(severity);
        return all.get(0).message();
    }

    /** The texts of a column. */
    public static List<String> names(ListRows rows, ColumnSpec column) {
        List<String> names = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            names.add(rows.text(column, row));
        }
        return names;
    }

    /** What was said in one severity. */
    public static List<String> messages(FoundLists found, Severity severity) {
        return found.findings().stream()
                .filter(finding -> finding.severity() == severity)
                .map(Finding::message)
                .toList();
    }
}
