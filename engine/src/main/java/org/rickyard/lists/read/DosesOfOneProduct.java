package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.Products;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.SubstanceDose;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * Doses and their limits that do not say on what, of a product whose other figures are by the acre, in the spray or in
 * parts of a litre. They would be taken by the hectare: a limit of 8 beside a dose of 6 an acre was exceeded, and one the
 * other way round hid what is. They are asked, and not used.
 */
final class DosesOfOneProduct {
    /** A dose that says its unit, or a unit alone, and where. */
    private record Said(CellAddress cell, Unit unit, String productUnit) {}

    /** Where doses of products stand. */
    private record Place(ListSpec list, ColumnSpec product, ColumnSpec dose) {}

    private static final List<Place> PLACES = List.of(
            new Place(Products.LIST, Products.PRODUCT, Products.DOSE),
            new Place(Products.LIST, Products.PRODUCT, Products.HIGHEST_DOSE),
            new Place(Products.LIST, Products.PRODUCT, Products.HIGHEST_TOTAL_DOSE),
            new Place(Mixes.LIST, Mixes.PRODUCT, Mixes.DOSE),
            new Place(Jobs.LIST, Jobs.PRODUCT, Jobs.DOSE));

    private final Map<String, ListRows> lists;
    private final CustomaryUnits customary;
    private final Map<String, List<Said>> said = new HashMap<>();

    private DosesOfOneProduct(Map<String, ListRows> lists, CustomaryUnits customary) {
        this.lists = lists;
        this.customary = customary;
    }

    /** Asks about them; the lists are read, and nothing has used them yet. */
    static void ask(Map<String, ListRows> lists, CustomaryUnits customary, List<Finding> findings) {
        DosesOfOneProduct doses = new DosesOfOneProduct(lists, customary);
        PLACES.forEach(doses::take);
        doses.takeUnits();
        if (!doses.said.isEmpty()) {
            PLACES.forEach(place -> doses.ask(place, findings));
        }
    }

    private FoundRows.Column column(Place place) {
        return lists.get(place.list().name()) instanceof FoundRows rows && rows.has(place.product())
                ? rows.column(place.dose())
                : null;
    }

    private void take(Place place) {
        FoundRows.Column doses = column(place);
        ListRows rows = lists.get(place.list().name());
        for (int row = 0; doses != null && row < rows.size(); row++) {
            UnitInRow at = doses.at(row);
            if (rows.gives(place.dose(), row)
                    && at.assumed() == null
                    && !at.unit().isSameScale(Units.DOSE)) {
                add(
                        rows.text(place.product(), row),
                        new Said(doses.address(row).orElseThrow(), at.unit(), at.productUnit()));
            }
        }
    }

    /** What the list of products counts a product in, where that is no litre, kilogram or tablet. */
    private void takeUnits() {
        ListRows products = lists.get(Products.LIST.name());
        for (int row = 0; products.has(Products.UNIT) && row < products.size(); row++) {
            if (!products.gives(Products.UNIT, row)) {
                continue;
            }
            String product = products.text(Products.PRODUCT, row);
            String text = products.text(Products.UNIT, row);
            CellAddress cell = products.address(Products.UNIT, row).orElseThrow();
            SubstanceDose.read(text, customary).ifPresent(unit -> add(product, new Said(cell, unit, null)));
            if (DoseText.read(text, customary) instanceof DoseText.Known known
                    && !known.unit().isSameScale(Units.PRODUCT_UNIT)
                    && !known.unit().isSameScale(Units.DOSE)) {
                add(product, new Said(cell, known.unit(), known.productUnit()));
            }
        }
    }

    private void add(String product, Said dose) {
        if (!product.isEmpty()) {
            said.computeIfAbsent(Words.key(product), key -> new ArrayList<>(1)).add(dose);
        }
    }

    private void ask(Place place, List<Finding> findings) {
        FoundRows.Column doses = column(place);
        ListRows rows = lists.get(place.list().name());
        Set<String> taken = new HashSet<>();
        Set<String> left = new HashSet<>();
        Finding first = null;
        CellAddress last = null;
        int asked = 0;
        for (int row = 0; doses != null && row < rows.size(); row++) {
            UnitInRow at = doses.at(row);
            if (!rows.gives(place.dose(), row) || at.assumed() == null) {
                continue;
            }
            taken.add(at.assumed());
            String product = rows.text(place.product(), row);
            Said other = otherwise(product, at);
            if (other == null) {
                left.add(at.assumed());
                continue;
            }
            doses.state[row] = (byte) ListRows.State.ASKED.ordinal();
            last = doses.address(row).orElseThrow();
            first = asked++ == 0 ? Finding.stop(last, question(place.dose(), product, at, other)) : first;
        }
        if (asked > 0) {
            taken.removeAll(left);
            taken.forEach(what -> findings.remove(CellFindings.assumed(place.list(), place.dose(), what)));
            findings.add(asked == 1 ? first : CellFindings.sameIn(first, asked - 1, last));
        }
    }

    /** A figure of the product that makes it doubtful on what a bare one is; null if none does. */
    private Said otherwise(String product, UnitInRow bare) {
        for (Said other : said.getOrDefault(Words.key(product), List.of())) {
            if (bare.productUnit() == null || isOnOther(bare.unit(), other.unit())) {
                return other;
            }
        }
        return null;
    }

    /**
     * Whether a figure that says its litres may be on what another is on: on an acre, or in so much spray if that is told in
     * the same measure. One of a litre beside a dose of 200 ml/100 L is on a hectare.
     */
    private static boolean isOnOther(Unit bare, Unit other) {
        return other.isCompatible(Units.DOSE)
                ? !other.isPer(Units.HA)
                : other.isCompatible(Units.CONCENTRATION) && bare.counted().equals(other.counted());
    }

    private static boolean isAmount(Said said) {
        return said.unit().isCompatible(Units.PRODUCT_UNIT);
    }

    private static String question(ColumnSpec column, String product, UnitInRow bare, Said other) {
        String unit = other.unit().symbol().replace("product unit/", "per ");
        String own = bare.productUnit() != null
                ? bare.unit().symbol()
                : (other.productUnit() == null ? "L" : other.productUnit()) + "/ha";
        boolean customary = isAmount(other) && DoseUnits.isCustomary(other.unit(), Units.PRODUCT_UNIT);
        return "The " + column.name() + " of " + Words.quoted(product)
                + (bare.productUnit() == null ? " has no unit here" : " does not say on what") + ", and "
                + other.cell() + " gives " + unit + ": is this in " + unit + " too? Write the unit in the header, "
                + column.name() + " (" + (customary ? unit + "/ac" : isAmount(other) ? unit + "/ha" : unit) + ") or "
                + column.name() + " (" + (customary ? unit + "/ha" : own) + "). Until then it is not used.";
    }
}
