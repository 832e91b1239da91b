package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Products;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Dimension;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** The units of columns whose unit differs from row to row: doses, amounts of product, charges, yields, values. */
final class RowUnits {
    /**
     * The unit of a cell.
     *
     * @param unit null if none is known
     * @param productUnit "L", "kg" or "tablet"; null if the column is not about products or it is not known
     * @param question what must be asked before the number can be used; null if nothing
     * @param assumed what was taken for granted, in words; null if nothing
     */
    record At(Unit unit, String productUnit, String question, String assumed) {
        static At of(Unit unit) {
            return new At(unit, null, null, null);
        }

        static At asked(String question) {
            return new At(null, null, question, null);
        }
    }

    private static final Dimension PRODUCT = Units.PRODUCT_UNIT.dimension();
    private static final List<String> PACKED_IN =
            List.of(Units.GAL_UK.symbol(), Units.GAL_US.symbol(), Units.LB.symbol());

    private static final Pattern LITRES_OR_KILOGRAMS = Pattern.compile(
            "(?i)(l|lit(re|er)s?|kgs?)( ?(/|per) ?(ha|hectare|ac|acre))? ?(or|/|,|&) ?(l|lit(re|er)s?|kgs?)"
                    + " ?(/|per) ?(?<area>ha|hectare|ac|acre)");

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

    private final ListSpec spec;
    private final ColumnSpec column;
    private final Binding binding;
    private final CustomaryUnits customary;
    private final Map<String, At> cache = new HashMap<>();

    RowUnits(ListSpec spec, ColumnSpec column, Binding binding, CustomaryUnits customary) {
        this.spec = spec;
        this.column = column;
        this.binding = binding;
        this.customary = customary;
    }

    /** Whether the header alone cannot give the unit of this column. */
    static boolean isByRow(ListSpec spec, ColumnSpec column) {
        return column.type() == ColumnSpec.Type.DOSE || spec.unitColumns().containsKey(column);
    }

    /** The column whose words decide the unit of a row of this one; null if none does. */
    static ColumnSpec decidedBy(ListSpec spec, ColumnSpec column) {
        ColumnSpec unit = spec.unitColumns().get(column);
        if (unit != null) {
            return unit;
        }
        ColumnSpec qualifier = spec.qualifiers().get(column);
        return qualifier != null && qualifier.equals(Fields.YIELD_BASIS) ? qualifier : null;
    }

    /**
     * The unit of a cell.
     *
     * @param word the text of the row's unit or qualifying column; "" if blank or there is none
     */
    At at(String word) {
        At known = cache.get(word);
        if (known == null) {
            known = work(word);
            cache.put(word, known);
        }
        return known;
    }

    private At work(String word) {
        if (column.type() == ColumnSpec.Type.DOSE) {
            return dose(binding.rest(), word);
        }
        if (column.equals(Products.PACK_SIZE) || column.equals(Products.STOCK)) {
            return amount(binding.rest(), word);
        }
        if (column.equals(Products.PRICE)) {
            return price(word);
        }
        if (column.equals(Machines.CHARGE)) {
            return charge(binding.rest(), word);
        }
        if (column.equals(Assumptions.VALUE)) {
            return value(word.isEmpty() ? binding.rest() : word);
        }
        Unit unit = binding.unit().unit();
        return decidedBy(spec, column) == null || unit == null ? At.of(unit) : ofYield(unit, word);
    }

    private static At ofYield(Unit unit, String basis) {
        boolean dryUnit = unit.dimension().exponent(Dimension.Base.DRY_MATTER) != 0;
        boolean dryBasis = basis.equals("dry matter");
        if (dryUnit && !dryBasis && !basis.isEmpty()) {
            return At.asked(
                    "The header says dry matter (" + unit + ") and the basis says " + basis + ": make them agree.");
        }
        return At.of(dryBasis ? UnitText.ofDryMatter(unit) : unit);
    }

    /** "L or kg/ha" says no more than per what: L or kg is what the product is counted in. */
    private At dose(String header, String word) {
        Matcher either = LITRES_OR_KILOGRAMS.matcher(header.strip());
        return doseUnder(either.matches() ? "/" + either.group("area") : header, word);
    }

    private At doseUnder(String rest, String word) {
        if (rest.isEmpty() && word.isEmpty()) {
            return new At(Units.DOSE, null, null, "doses without a unit are in product unit per ha");
        }
        DoseText header = rest.isEmpty() ? null : DoseText.read(rest, customary);
        DoseText row = word.isEmpty() ? null : DoseText.read(word, customary);
        if (header instanceof DoseText.Known known && isFull(known)) {
            return agrees(known, row)
                    ? new At(known.unit(), known.productUnit(), null, null)
                    : At.asked("The header says " + rest + " and the row says " + word + ": make them agree.");
        }
        if (header instanceof DoseText.Ambiguous ambiguous) {
            return At.asked(ambiguous.question());
        }
        if (row instanceof DoseText.Ambiguous ambiguous) {
            return At.asked(ambiguous.question());
        }
        if (header instanceof DoseText.Known && row instanceof DoseText.Known && !isSameAmount(rest, word)) {
            return At.asked("The header says " + rest + " and the row says " + word + ": make them agree.");
        }
        if (row instanceof DoseText.Known known && isFull(known)) {
            return new At(known.unit(), known.productUnit(), null, null);
        }
        String amount = row instanceof DoseText.Known ? word : header instanceof DoseText.Known ? rest : "";
        boolean basisSaid = header instanceof DoseText.Unknown;
        if (row instanceof DoseText.Unknown || amount.isEmpty() && !basisSaid) {
            return At.asked(Words.quoted(word.isEmpty() ? rest : word)
                    + " is not a dose unit known here: write L/ha, g/ha, % or ml/100 L.");
        }
        String basis = !basisSaid ? "/ha" : SaidUnit.isBasis(rest) ? Basis.of(rest) : "/?";
        DoseText whole = DoseText.read((amount.isEmpty() ? "L" : amount) + basis, customary);
        if (whole instanceof DoseText.Known known && isFull(known)) {
            if (amount.isEmpty()) {
                return new At(
                        Unit.of(
                                "product unit" + basis,
                                known.unit().dimension(),
                                known.unit().factor()),
                        null,
                        null,
                        null);
            }
            if (!basisSaid && isCustomary(known.unit(), Units.DOSE)) {
                return At.asked(perWhat(known.unit().counted()));
            }
            String assumed = basisSaid ? null : "doses in " + amount + " are per ha";
            return new At(known.unit(), known.productUnit(), null, assumed);
        }
        if (whole instanceof DoseText.Ambiguous ambiguous) {
            return At.asked(ambiguous.question());
        }
        // What the row says alone was read; with it, it is what the header says that is no unit.
        return At.asked(Words.quoted(rest.isEmpty() ? word : rest)
                + " is not a dose unit known here: write L/ha, g/ha, % or ml/100 L.");
    }

    /** Whether an amount is in ounces, pints, pounds or the like, which are hardly dosed by the hectare. */
    static boolean isCustomary(Unit unit, Unit ours) {
        double power = Math.log10(unit.ratioTo(ours).toDouble());
        return Math.abs(power - Math.rint(power)) > 1e-9;
    }

    /** An acre taken for a hectare would be two and a half times too little. */
    private String perWhat(String amount) {
        return column.name() + " is in " + amount + " and does not say on what: write it in the header, "
                + column.name() + " (" + amount + "/ac) or " + column.name() + " (" + amount
                + "/ha), or (per ac) where rows differ in unit.";
    }

    private static boolean isFull(DoseText.Known known) {
        return known.isPerArea() || known.isPerSpray();
    }

    private static boolean agrees(DoseText.Known header, DoseText row) {
        if (!(row instanceof DoseText.Known known)) {
            return true;
        }
        return known.productUnit().equals(header.productUnit())
                && (!isFull(known) || known.unit().isSameScale(header.unit()));
    }

    /** Whether two dose units count the product alike, whatever it is spread on: "ml" and "ml/ha", but not "L". */
    private boolean isSameAmount(String one, String other) {
        return DoseText.read(Basis.before(one), customary) instanceof DoseText.Known first
                && DoseText.read(Basis.before(other), customary) instanceof DoseText.Known second
                && first.productUnit().equals(second.productUnit())
                && first.unit().isSameScale(second.unit());
    }

    private At amount(String rest, String word) {
        if (!rest.isEmpty()) {
            DoseText header = DoseText.read(rest, customary);
            if (header instanceof DoseText.Known known && !isFull(known)) {
                return isForeign(known, word) ? At.asked(disagree(rest, word)) : under(known, word);
            }
            if (header instanceof DoseText.Ambiguous ambiguous) {
                return At.asked(ambiguous.question());
            }
            return At.asked(Words.quoted(rest) + " is not an amount of product: write " + column.name() + " (L).");
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
    private At under(DoseText.Known header, String word) {
        if (header.unit().factor().isOne()
                && !word.isEmpty()
                && DoseText.read(word, customary) instanceof DoseText.Known row
                && !row.productUnit().equals(header.productUnit())) {
            String own = row.productUnit();
            return new At(
                    Unit.of(own, PRODUCT, Ratio.ONE),
                    own,
                    null,
                    "under a header in " + header.productUnit() + " products counted in " + own + " are in " + own);
        }
        return new At(header.unit(), header.productUnit(), null, null);
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
    private At ownUnit(String word, String in, String header) {
        DoseText row = word.isEmpty() ? null : DoseText.read(word, customary);
        if (row instanceof DoseText.Known known) {
            String own = known.productUnit();
            if (!isFull(known) && isOfPacks(known.unit())) {
                return new At(
                        known.unit(),
                        own,
                        null,
                        "packs, stocks and prices are in " + known.unit().symbol() + " where Unit says so");
            }
            if (!isFull(known) && !known.unit().factor().isOne()) {
                return At.asked(column.name() + " may be" + in + own + " or" + in + known.unit()
                        + ": write it in the header, " + column.name() + header.replace("%s", own)
                        + ", if that holds for every product. Otherwise write " + own + " in Unit, and give pack size,"
                        + " stock, price and doses without a unit of their own in " + own + ".");
            }
            return new At(Unit.of(own, PRODUCT, Ratio.ONE), own, null, null);
        }
        return new At(Units.PRODUCT_UNIT, null, null, null);
    }

    private At price(String word) {
        String header = Words.normal(binding.header() + " " + binding.rest());
        String per = Basis.after(binding.rest().isEmpty() ? binding.header() : binding.rest());
        if (PACKS.stream().anyMatch(pack -> Words.holds(header, pack))) {
            String before = COMES_IN.matcher(per).replaceFirst("");
            per = before.split(" ", 2)[0];
            if (unitOfProduct(per) == null) {
                return At.of(Units.MONEY_UNIT);
            }
            if (!per.equals(before) || isPerPack()) {
                return At.asked("The header names both a pack and " + Words.quoted(per)
                        + ": write Price per pack, or Price per " + per + ".");
            }
        }
        DoseText.Known known = unitOfProduct(per);
        if (known != null) {
            if (isForeign(known, word)) {
                return At.asked(disagree(per, word));
            }
            At amount = under(known, word);
            return new At(Units.MONEY_UNIT.over(amount.unit()), amount.productUnit(), null, amount.assumed());
        }
        if (!per.isEmpty() && !UNIT_OF_PRODUCT.contains(Words.normal(per)) && !SaidUnit.isUnit(per)) {
            return At.asked(Words.quoted(per)
                    + " is not a unit or a pack known here: write Price per pack, or Price per L, kg or tablet.");
        }
        At own = ownUnit(word, " per ", " per %s");
        return own.unit() == null
                ? own
                : new At(Units.MONEY_UNIT.over(own.unit()), own.productUnit(), null, "prices are for one product unit");
    }

    /** What a price is for, if it is a unit of the product; null if it is a pack, or nothing known. */
    private DoseText.Known unitOfProduct(String per) {
        return !per.isEmpty()
                        && !PACKS.contains(Words.normal(per))
                        && DoseText.read(per, customary) instanceof DoseText.Known known
                        && !isFull(known)
                ? known
                : null;
    }

    private boolean isPerPack() {
        String bases = Words.normal((binding.header() + " " + binding.rest()).replace("/", " per "));
        return PACKS.stream().anyMatch(pack -> Words.holds(bases, "per " + pack));
    }

    private At charge(String rest, String word) {
        Unit per =
                switch (word) {
                    case "h" -> Units.H;
                    case "ha" -> Units.HA;
                    case "ac" -> Units.AC;
                    case "t" -> Units.T;
                    case "bale" -> Units.ONE;
                    default -> null;
                };
        if (per != null) {
            return At.of(per == Units.ONE ? Units.MONEY_UNIT.named("money/bale") : Units.MONEY_UNIT.over(per));
        }
        if (UnitText.read(rest, customary) instanceof UnitText.Known known
                && known.unit().dimension().exponent(Dimension.Base.MONEY) == 1
                && Machines.CHARGE.measuredBy(known.unit())
                && !known.unit().isCompatible(Units.MONEY_UNIT)) {
            return At.of(known.unit());
        }
        return At.asked("A charge needs its unit: write h, ha, t or bale in the column Charge unit.");
    }

    private At value(String word) {
        if (word.isEmpty()) {
            return At.of(null);
        }
        // A price may be written without its currency: "per h", "/L".
        boolean price = word.strip().toLowerCase(Locale.ROOT).startsWith("per ")
                || word.strip().startsWith("/");
        UnitText text = UnitText.read(price ? "money " + word : word, customary);
        if (text instanceof UnitText.Known known) {
            return At.of(known.unit());
        }
        if (text instanceof UnitText.Ambiguous ambiguous) {
            return At.asked(ambiguous.question());
        }
        if (DoseText.read(word, customary) instanceof DoseText.Known known) {
            return new At(known.unit(), known.productUnit(), null, null);
        }
        return At.asked(Words.quoted(word) + " is not a unit known here.");
    }

    /** What was taken for granted, in words, once each. */
    List<String> assumptions() {
        List<String> met = new ArrayList<>();
        for (At at : cache.values()) {
            if (at.assumed() != null && !met.contains(at.assumed())) {
                met.add(at.assumed());
            }
        }
        met.sort(null);
        return met;
    }

    /** The part of a header that says per what. */
    private static final class Basis {
        /** "per ha" and "/ha" both as "/ha"; whatever else stands there is kept, for it may change the unit. */
        static String of(String rest) {
            return "/"
                    + rest.substring(rest.startsWith("/") ? 1 : "per ".length()).strip();
        }

        /** What stands before "per" or the slash. */
        static String before(String text) {
            String plain = UnitText.plain(text);
            int slash = plain.indexOf('/');
            return slash < 0 ? plain : plain.substring(0, slash);
        }

        /** What follows "per" or the slash; "" if neither stands there. */
        static String after(String text) {
            int slash = text.lastIndexOf('/');
            if (slash >= 0) {
                return text.substring(slash + 1).strip();
            }
            String lower = text.toLowerCase(java.util.Locale.ROOT);
            int per = lower.startsWith("per ") ? 0 : lower.lastIndexOf(" per ") + (lower.contains(" per ") ? 1 : 0);
            return lower.startsWith("per ", per) ? text.substring(per + 4).strip() : "";
        }
    }
}
