package org.rickyard.plan.cost;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.text.ItemText;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.ConstantsInForce;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.cost.Prices;

/** Where on Assumptions the prices stand that hold for the whole workbook. */
public final class PriceRows {
    private static final Map<Role, Symbol> ITEMS = items();

    /** What else people call them, in the form of {@link NameKey#key}. */
    private static final Map<Symbol, List<String>> OTHER_NAMES = Map.of(
            Prices.WAGE,
            List.of(
                    "wages",
                    "wage rate",
                    "labour",
                    "labour rate",
                    "labour cost",
                    "labour price",
                    "labor",
                    "labor rate",
                    "labor cost",
                    "hourly wage",
                    "driver wage",
                    "cost of labour"),
            Prices.FUEL_PRICE,
            List.of(
                    "fuel",
                    "fuel cost",
                    "diesel",
                    "diesel price",
                    "diesel cost",
                    "red diesel",
                    "red diesel price",
                    "price of fuel",
                    "price of diesel",
                    "green diesel",
                    "agricultural diesel"),
            Prices.INTEREST,
            List.of("interest", "rate of interest", "annual interest", "interest on capital"),
            Prices.INSURANCE,
            List.of(
                    "insurance & housing",
                    "housing and insurance",
                    "insurance, housing",
                    "insurance and shelter",
                    "housing & insurance"));

    /** From here on a rate can only be in per cent: as a fraction it would be the whole of it in a year. */
    private static final double LEAST_PER_CENT = 1;

    private static final Set<ListRows.State> NO_NUMBER =
            EnumSet.of(ListRows.State.NOT_READABLE, ListRows.State.ERROR, ListRows.State.UNCOMPUTED);

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

    /** The column of a price that a machine may have of its own. */
    static TableColumn.Link column(Role role, ColumnSpec ofMachine) {
        return Names.link(
                ITEMS.get(role), Candidate.typed(Role.MACHINE, ofMachine), Candidate.typed(role, Assumptions.VALUE));
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

    /** Whether an item is the name of a price. */
    public static boolean isPrice(String item) {
        return ITEMS.values().stream().anyMatch(symbol -> names(symbol, item));
    }

    private static boolean names(Symbol symbol, String item) {
        return isCalled(symbol, NameKey.key(item)) || isCalled(symbol, NameKey.key(ItemText.name(item)));
    }

    private static boolean isCalled(Symbol symbol, String key) {
        return key.equals(symbol.name()) || OTHER_NAMES.get(symbol).contains(key);
    }

    private int find(Symbol symbol, List<Finding> findings) {
        int found = -1;
        for (int row = 0; row < assumptions.size(); row++) {
            if (!names(symbol, assumptions.text(Assumptions.ITEM, row))) {
                continue;
            }
            if (found < 0) {
                found = row;
            } else {
                findings.add(Finding.caution(
                        assumptions.address(Assumptions.ITEM, row).orElse(null),
                        "the " + symbol.name() + " stands already in "
                                + assumptions
                                        .address(Assumptions.ITEM, found)
                                        .map(CellAddress::toString)
                                        .orElse("another row")
                                + ", and that one is used. Leave one of the two."));
            }
        }
        return found >= 0 && usable(symbol, found, findings) ? found : -1;
    }

    private boolean usable(Symbol symbol, int row, List<Finding> findings) {
        CellAddress cell = assumptions.address(Assumptions.VALUE, row).orElse(null);
        ListRows.State state = assumptions.state(Assumptions.VALUE, row);
        if (state == ListRows.State.BLANK) {
            return true;
        }
        if (!ConstantsInForce.isNumber(assumptions, row)) {
            if (state != ListRows.State.NOT_READABLE) {
                // What no number can be made of is told where the list is read, and what to write instead.
                findings.add(Finding.stop(cell, "'" + symbol.name() + "' wants a number in " + symbol.unit() + "."));
            }
            // What is withheld for it then names the cell; as if nobody had typed it, it would be told missing.
            return NO_NUMBER.contains(state) && fits(symbol, row);
        }
        Optional<Unit> unit = assumptions.unit(Assumptions.VALUE, row);
        if (unit.isEmpty()
                && symbol.unit().isSameScale(Units.PERCENT)
                && assumptions.number(Assumptions.VALUE, row) < LEAST_PER_CENT) {
            findings.add(Finding.stop(
                    cell,
                    "is '" + symbol.name() + "' in per cent or a fraction? Write % beside it in the column Unit."));
            return false;
        }
        if (!fits(symbol, row)) {
            boolean beside = !assumptions.text(Assumptions.UNIT, row).isEmpty();
            findings.add(Finding.stop(
                    assumptions
                            .address(beside ? Assumptions.UNIT : Assumptions.VALUE, row)
                            .orElse(cell),
                    "'" + symbol.name() + "' is in " + unit.get() + " where " + symbol.unit() + " is expected; mend its"
                            + " unit. What needs it is withheld."));
            return false;
        }
        return true;
    }

    /** Whether its unit measures the like of the price, or it has none. */
    private boolean fits(Symbol symbol, int row) {
        return assumptions
                .unit(Assumptions.VALUE, row)
                .map(unit -> unit.isCompatible(symbol.unit()))
                .orElse(true);
    }
}
