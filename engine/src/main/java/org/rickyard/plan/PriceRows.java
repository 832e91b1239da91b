package org.rickyard.plan;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.cost.Prices;

/** Where on Assumptions the prices stand that hold for the whole workbook. */
final class PriceRows {
    private static final Map<Role, Symbol> ITEMS = items();

    private final ListRows assumptions;
    private final Map<Role, Integer> rows = new LinkedHashMap<>();

    PriceRows(ListRows assumptions, List<Finding> findings) {
        this.assumptions = assumptions;
        ITEMS.forEach((role, symbol) -> rows.put(role, find(symbol, findings)));
    }

    private static Map<Role, Symbol> items() {
        // In this order always: it is the order in which faults are told, and must be the same in every run.
        Map<Role, Symbol> items = new LinkedHashMap<>();
        items.put(Role.WAGE, Prices.WAGE);
        items.put(Role.FUEL_PRICE, Prices.FUEL_PRICE);
        items.put(Role.INTEREST, Prices.INTEREST);
        items.put(Role.INSURANCE, Prices.INSURANCE);
        return Collections.unmodifiableMap(items);
    }

    /** The column of a price. */
    static TableColumn.Link column(Role role) {
        return Names.link(ITEMS.get(role), Candidate.typed(role, Assumptions.VALUE));
    }

    /** Whether any price is typed. */
    boolean any() {
        return rows.values().stream().anyMatch(row -> row >= 0);
    }

    /** Gives every row the prices. */
    RowSources apply(RowSources sources) {
        rows.forEach((role, row) -> {
            int[] all = new int[sources.rows()];
            Arrays.fill(all, row);
            sources.with(role, assumptions, all);
        });
        return sources;
    }

    private int find(Symbol symbol, List<Finding> findings) {
        for (int row = 0; row < assumptions.size(); row++) {
            if (NameKey.key(assumptions.text(Assumptions.ITEM, row)).equals(symbol.name())) {
                return usable(symbol, row, findings) ? row : -1;
            }
        }
        return -1;
    }

    private boolean usable(Symbol symbol, int row, List<Finding> findings) {
        CellAddress cell = assumptions.address(Assumptions.VALUE, row).orElse(null);
        if (assumptions.state(Assumptions.VALUE, row) == ListRows.State.BLANK) {
            return true;
        }
        if (!ConstantsInForce.isNumber(assumptions, row)) {
            findings.add(Finding.stop(cell, "'" + symbol.name() + "' wants a number in " + symbol.unit() + "."));
            return false;
        }
        Optional<Unit> unit = assumptions.unit(Assumptions.VALUE, row);
        if (unit.isEmpty() && symbol.unit().isSameScale(Units.PERCENT)) {
            findings.add(Finding.stop(
                    cell,
                    "is '" + symbol.name() + "' in per cent or a fraction? Write % beside it in the column Unit."));
            return false;
        }
        if (unit.isPresent() && !unit.get().isCompatible(symbol.unit())) {
            findings.add(Finding.stop(
                    cell,
                    "'" + symbol.name() + "' is in " + unit.get() + " where " + symbol.unit() + " is expected; mend its"
                            + " unit. What needs it is withheld."));
            return false;
        }
        return true;
    }
}
