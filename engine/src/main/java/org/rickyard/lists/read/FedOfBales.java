package org.rickyard.lists.read;

import java.util.List;
import java.util.Map;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;

/** Of a store whose bales are counted, what was fed is as a rule counted too: without a unit 15 are bales, or tonnes. */
final class FedOfBales {
    private final FoundTable table;
    private final Map<ColumnSpec, List<Binding>> bindings;
    private final List<Finding> findings;

    FedOfBales(FoundTable table, Map<ColumnSpec, List<Binding>> bindings, List<Finding> findings) {
        this.table = table;
        this.bindings = bindings;
        this.findings = findings;
    }

    /** Asks where a row has both a count and something fed. */
    void ask() {
        List<Binding> fed = bindings.getOrDefault(Stocks.ALREADY_FED, List.of());
        List<Binding> counts = bindings.getOrDefault(Stocks.COUNT, List.of());
        if (fed.size() != 1 || counts.size() != 1 || !fed.get(0).unit().assumed() || !standTogether(fed, counts)) {
            return;
        }
        Binding binding = fed.get(0);
        String question = Words.quoted(binding.header()) + " stands beside bales that are counted and says no unit: are"
                + " they bales or tonnes? If tonnes, write Already fed (t); if bales, take them off the count and leave"
                + " this blank. Until then its cells are not used.";
        findings.add(Finding.stop(table.address(table.headerRow(), binding.sheetColumn()), question));
        bindings.put(
                Stocks.ALREADY_FED,
                List.of(new Binding(
                        binding.sheetColumn(),
                        binding.header(),
                        binding.rest(),
                        new ColumnUnit(null, false, question),
                        true)));
    }

    private boolean standTogether(List<Binding> fed, List<Binding> counts) {
        for (int i = 0; i < table.count(); i++) {
            if (isTyped(table.row(i), fed.get(0)) && isTyped(table.row(i), counts.get(0))) {
                return true;
            }
        }
        return false;
    }

    private boolean isTyped(int row, Binding binding) {
        return table.grid().kind(row, binding.sheetColumn()) == Grid.Kind.NUMBER
                && table.grid().number(row, binding.sheetColumn()) > 0;
    }
}
