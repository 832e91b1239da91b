package org.rickyard.audit;

import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Products;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.cost.Prices;

/** What a cause is about that leads to no cell: where it is of one thing, nobody could find it without its name. */
final class ThingNamed {
    private static final int MOST_NAMED = 5;

    private ThingNamed() {}

    /** The row by its names, blank ones left out. */
    static String of(ResultTable table, int row) {
        return String.join(", ", Results.about(table, row).values());
    }

    /** What is the matter, and with what: "pack size missing: ... (Ash; Lime and 3 more)". */
    static String with(String what, Set<String> things) {
        if (things.isEmpty()) {
            return what;
        }
        String named = things.stream().limit(MOST_NAMED).collect(Collectors.joining("; "))
                + Counted.andMore(things.size() - MOST_NAMED);
        return what.endsWith(")") ? what + ": " + named : what + " (" + named + ")";
    }

    /** The row, unless what is asked of it is nowhere in the lists: then it is of every row, and no name helps. */
    static String of(ResultTable table, Set<Symbol> asked, int row) {
        return asked.stream().allMatch(symbol -> isNowhere(table, symbol)) ? "" : of(table, row);
    }

    private static boolean isNowhere(ResultTable table, Symbol symbol) {
        LinkCells links = table.links(symbol);
        return links != null && links.hasNoColumn();
    }

    /** What a list has no row for, though it has the column; "" where it is the column that is not there, or a price. */
    static String withoutRow(ResultTable table, Symbol symbol, int row) {
        LinkCells links = table.links(symbol);
        if (Prices.ALL.contains(symbol) || links.sheetWithoutColumn(row).isPresent()) {
            return "";
        }
        boolean named = table.spec().column(Quantities.PRODUCT).isPresent();
        return links.listWithoutRow(row)
                .map(list -> list == Products.LIST && named ? table.name(Quantities.PRODUCT, row) : of(table, row))
                .orElse("");
    }
}
