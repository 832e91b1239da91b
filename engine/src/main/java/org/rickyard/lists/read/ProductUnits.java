package org.rickyard.lists.read;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Dimension;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** What amounts and prices of products are in, by the header of their column and what the product is counted in. */
final class ProductUnits {
    private static final Dimension PRODUCT = Units.PRODUCT_UNIT.dimension();
    private static final List<String> PACKED_IN =
            List.of(Units.GAL_UK.symbol(), Units.GAL_US.symbol(), Units.LB.symbol());

    /** What products are sold in: a price of one is no price of a litre or kilogram. */
    private static final Set<String> PACKS = Set.of(
            "pack",
            "container",
            "can",
            "bag",
            "sack",
            "drum",
            "jug",
            "bottle",
            "keg",
            "tub",
            "box",
            "carton",
            "tote",
            "ibc",
            "pail",
            "bucket",
            "jerrycan",
            "jerry can",
            "package",
            "pkg",
            "packet",
            "case",
            "big bag",
            "pallet");

    private static final Set<String> UNIT_OF_PRODUCT = Set.of("unit", "product unit", "each", "one");

    /** "kg, in bags": what the product comes in, behind what a price is for. */
    private static final Pattern COMES_IN = Pattern.compile("(?i)\\s*[,;:].*|\\s+in\\s.*");

    private final ColumnSpec column;
    private final Binding binding;
    private final CustomaryUnits customary;

    ProductUnits(ColumnSpec column, Binding binding, CustomaryUnits customary) {
        this.column = column;
        this.binding = binding;
        this.customary = customary;
    }

    /** What a cell of an amount is in, as a pack or a stock. */
    UnitInRow ofAmount(String word) {
        String rest = binding.rest();
        if (!rest.isEmpty()) {
            DoseText header = DoseText.read(rest, customary);
            if (header instanceof DoseText.Known known && !known.isFull()) {
                return isForeign(known, word) ? UnitInRow.asked(disagree(rest, word)) : under(known, word);
            }
            if (header instanceof DoseText.Ambiguous ambiguous) {
                return UnitInRow.asked(ambiguous.question());
            }
            return UnitInRow.asked(
                    Words.quoted(rest) + " is not an amount of product: write " + column.name() + " (L).");
        }
        return ownUnit(word, " in ", " (%s)");
    }

    /**
     * Whether a header in parts of a unit, as grams or gallons, cannot be meant for a product of the other kind: a litre
     * in a column of grams would be a thousandth of one.
     */
    private boolean isForeign(DoseText.Known header, String word) {
        return !word.isEmpty()
                && !header.unit().factor().isOne()
                && DoseText.read(word, customary) instanceof DoseText.Known row
                && !row.productUnit().equals(header.productUnit());
    }

    /**
     * What an amount under a header in litres, kilograms or parts of them is in. Under "Pack size (L)" a pack of granules
     * holds kilograms: taken so, and said.
     */
    private UnitInRow under(DoseText.Known header, String word) {
        if (header.unit().factor().isOne()
                && !word.isEmpty()
                && DoseText.read(word, customary) instanceof DoseText.Known row
                && !row.productUnit().equals(header.productUnit())) {
            String own = row.productUnit();
            return new UnitInRow(
                    Unit.of(own, PRODUCT, Ratio.ONE),
                    own,
                    null,
                    "under a header in " + header.productUnit() + " products counted in " + own + " are in " + own);
        }
        return new UnitInRow(header.unit(), header.productUnit(), null, null);
    }

    private static String disagree(String header, String row) {
        return "The header says " + header + " and this product is counted in " + row
                + ": leave the unit out of the header, and count each product in what its Unit says, L, kg or tablet.";
    }

    /** What an amount in gallons or pounds is: nobody who counts in them has packs in litres or kilograms. */
    private static boolean isOfPacks(Unit unit) {
        return PACKED_IN.stream().anyMatch(unit.symbol()::equals);
    }

    /**
     * The unit of the product in its own row.
     *
     * @param in what stands before a unit in a question
     * @param header how the unit is to be written behind the column's name, with %s in its place
     */
    private UnitInRow ownUnit(String word, String in, String header) {
        DoseText row = word.isEmpty() ? null : DoseText.read(word, customary);
        if (row instanceof DoseText.Known known) {
            String own = known.productUnit();
            if (!known.isFull() && isOfPacks(known.unit())) {
                return new UnitInRow(
                        known.unit(),
                        own,
                        null,
                        "packs, stocks and prices are in " + known.unit().symbol() + " where Unit says so");
            }
            if (!known.isFull() && !known.unit().factor().isOne()) {
                return UnitInRow.asked(column.name() + " may be" + in + own + " or" + in + known.unit()
                        + ": write it in the header, " + column.name() + header.replace("%s", own)
                        + ", if that holds for every product. Otherwise write " + own + " in Unit, and give pack size,"
                        + " stock, price and doses without a unit of their own in " + own + ".");
            }
            return new UnitInRow(Unit.of(own, PRODUCT, Ratio.ONE), own, null, null);
        }
        return new UnitInRow(Units.PRODUCT_UNIT, null, null, null);
    }

    /** What a cell of a price is in. */
    UnitInRow ofPrice(String word) {
        String header = Words.normal(binding.header() + " " + binding.rest());
        String per = Basis.after(binding.rest().isEmpty() ? binding.header() : binding.rest());
        if (PACKS.stream().anyMatch(pack -> Words.holds(header, pack))) {
            String before = COMES_IN.matcher(per).replaceFirst("");
            per = before.split(" ", 2)[0];
            if (unitOfProduct(per) == null) {
                return UnitInRow.of(Units.MONEY_UNIT);
            }
            if (!per.equals(before) || isPerPack()) {
                return UnitInRow.asked("The header names both a pack and " + Words.quoted(per)
                        + ": write Price per pack, or Price per " + per + ".");
            }
        }
        DoseText.Known known = unitOfProduct(per);
        if (known != null) {
            if (isForeign(known, word)) {
                return UnitInRow.asked(disagree(per, word));
            }
            UnitInRow amount = under(known, word);
            return new UnitInRow(Units.MONEY_UNIT.over(amount.unit()), amount.productUnit(), null, amount.assumed());
        }
        if (!per.isEmpty() && !UNIT_OF_PRODUCT.contains(Words.normal(per)) && !SaidUnit.isUnit(per)) {
            return UnitInRow.asked(Words.quoted(per)
                    + " is not a unit or a pack known here: write Price per pack, or Price per L, kg or tablet.");
        }
        UnitInRow own = ownUnit(word, " per ", " per %s");
        return own.unit() == null
                ? own
                : new UnitInRow(
                        Units.MONEY_UNIT.over(own.unit()), own.productUnit(), null, "prices are for one product unit");
    }

    /** What a price is for, if it is a unit of the product; null if it is a pack, or nothing known. */
    private DoseText.Known unitOfProduct(String per) {
        return !per.isEmpty()
                        && !PACKS.contains(Words.normal(per))
                        && DoseText.read(per, customary) instanceof DoseText.Known known
                        && !known.isFull()
                ? known
                : null;
    }

    private boolean isPerPack() {
        String bases = Words.normal((binding.header() + " " + binding.rest()).replace("/", " per "));
        return PACKS.stream().anyMatch(pack -> Words.holds(bases, "per " + pack));
    }
}
