package org.rickyard.lists.read;

import java.util.List;
import java.util.Map;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;

/** What is counted of bales, and says no unit: it would be read as tonnes. */
final class CountedBales {
    private static final String UNTIL_THEN = " Until then its cells are not used.";

    private static final String BALES = "bales";
    private static final Map<String, String> KINDS = ChoiceWords.of(Stocks.KIND);

    private final FoundTable table;
    private final Map<ColumnSpec, List<Binding>> bindings;
    private final List<Finding> findings;

    CountedBales(FoundTable table, Map<ColumnSpec, List<Binding>> bindings, List<Finding> findings) {
        this.table = table;
        this.bindings = bindings;
        this.findings = findings;
    }

    void ask() {
        askWhatIsFed();
        askWhatIsThere();
    }

    /** Of a store whose bales are counted, what was fed is as a rule counted too: 15 are bales, or tonnes. */
    private void askWhatIsFed() {
        Binding fed = silent(Stocks.ALREADY_FED);
        List<Binding> counts = bindings.getOrDefault(Stocks.COUNT, List.of());
        if (fed != null && counts.size() == 1 && standTogether(fed, counts.get(0))) {
            ask(
                    Stocks.ALREADY_FED,
                    fed,
                    " stands beside bales that are counted and says no unit: are they bales or tonnes? If tonnes, write"
                            + " Already fed (t); if bales, take them off the count and leave this blank.");
        }
    }

    /** "Qty" beside what each weighs, where nothing else is the count, is how many there are, or how much. */
    private void askWhatIsThere() {
        Binding amount = silent(Stocks.AMOUNT);
        List<Binding> weights = bindings.getOrDefault(Stocks.WEIGHT_EACH, List.of());
        if (amount != null
                && weights.size() == 1
                && !bindings.containsKey(Stocks.COUNT)
                && standTogether(amount, weights.get(0))) {
            ask(
                    Stocks.AMOUNT,
                    amount,
                    " stands beside " + Words.quoted(weights.get(0).header())
                            + " and says no unit: are they tonnes, or so many bales? Write Amount (t) or Count.");
        } else if (amount != null && weights.isEmpty() && !bindings.containsKey(Stocks.COUNT) && isOfBales(amount)) {
            ask(
                    Stocks.AMOUNT,
                    amount,
                    " says no unit, and bales are among the stores: are they tonnes, or so many bales? Write Amount (t),"
                            + " or Count and Weight each.");
        }
    }

    /** Whether it says how much or many there are of a store of bales. */
    private boolean isOfBales(Binding amount) {
        List<Binding> kinds = bindings.getOrDefault(Stocks.KIND, List.of());
        for (int i = 0; i < table.count() && kinds.size() == 1; i++) {
            String kind =
                    Words.normal(table.grid().text(table.row(i), kinds.get(0).sheetColumn()));
            if (BALES.equals(KINDS.get(kind)) && isTyped(table.row(i), amount)) {
                return true;
            }
        }
        return false;
    }

    /** The one header of a column, if it says no unit; else null. */
    private Binding silent(ColumnSpec column) {
        List<Binding> found = bindings.getOrDefault(column, List.of());
        return found.size() == 1 && found.get(0).unit().assumed() ? found.get(0) : null;
    }

    private void ask(ColumnSpec column, Binding binding, String what) {
        String question = Words.quoted(binding.header()) + what + UNTIL_THEN;
        findings.add(Finding.stop(table.address(table.headerRow(), binding.sheetColumn()), question));
        bindings.put(
                column,
                List.of(new Binding(
                        binding.sheetColumn(), binding.header(), binding.rest(), ColumnUnit.asked(question), true)));
    }

    private boolean standTogether(Binding one, Binding other) {
        for (int i = 0; i < table.count(); i++) {
            if (isTyped(table.row(i), one) && isTyped(table.row(i), other)) {
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
