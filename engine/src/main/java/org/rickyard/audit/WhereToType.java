package org.rickyard.audit;

import org.rickyard.formula.Symbol;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Products;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.trade.cost.Prices;

/** Where to type what no list has a cell for. */
final class WhereToType {
    private WhereToType() {}

    static String of(LinkCells links, Symbol symbol, int row) {
        return Prices.ALL.contains(symbol)
                ? "type it on a list called Assumptions (Item, Value, Unit)"
                : links.sheetWithoutColumn(row)
                        .map(sheet -> "the list on '" + sheet + "' has no column for it")
                        .or(() -> links.listWithoutRow(row).map(WhereToType::withoutRow))
                        .orElseGet(() -> toAdd(links));
    }

    private static String withoutRow(ListSpec list) {
        return list == Products.LIST
                ? "the product is not in the product list, or is listed in another unit"
                : "no row of the list " + list.name() + " belongs to this one";
    }

    /** Which column to add to which list. */
    private static String toAdd(LinkCells links) {
        return links.columnToAdd()
                .map(place -> "no list has a column for it; add "
                        + place.column().name() + " to " + place.role().list().name())
                .orElse("no list has a column for it here");
    }
}
