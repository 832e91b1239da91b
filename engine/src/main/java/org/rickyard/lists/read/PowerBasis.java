package org.rickyard.lists.read;

import java.util.List;
import java.util.Map;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Machines;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;

/** Whether the power of machines is the engine's or the PTO's, where the headers of their list leave it open. */
final class PowerBasis {
    private final FoundTable table;
    private final Map<ColumnSpec, List<Binding>> bindings;
    private final Map<ColumnSpec, String> words;
    private final List<Finding> findings;

    PowerBasis(
            FoundTable table,
            Map<ColumnSpec, List<Binding>> bindings,
            Map<ColumnSpec, String> words,
            List<Finding> findings) {
        this.table = table;
        this.bindings = bindings;
        this.words = words;
        this.findings = findings;
    }

    /** Asks where neither the header, nor a column, nor a word above says it. */
    void ask() {
        if (bindings.containsKey(Machines.POWER)
                && !bindings.containsKey(Machines.POWER_BASIS)
                && !words.containsKey(Machines.POWER_BASIS)) {
            Binding power = bindings.get(Machines.POWER).get(0);
            findings.add(Finding.caution(
                    table.address(table.headerRow(), power.sheetColumn()),
                    "Is " + Words.quoted(power.header())
                            + " the power of the engine or at the PTO? Write it in the header"
                            + " (Power (PTO kW)) or in a column Power basis. Until then results that need to know are"
                            + " left out."));
            bindings.put(
                    Machines.POWER_BASIS,
                    List.of(new Binding(power.sheetColumn(), power.header(), "", ColumnUnit.asked("basis"), true)));
        }
    }
}
