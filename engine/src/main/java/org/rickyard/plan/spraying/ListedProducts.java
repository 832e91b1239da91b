package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.rickyard.formula.Numbers;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.NearNames;
import org.rickyard.lists.Products;
import org.rickyard.plan.join.MixesOfJobs;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.Substance;
import org.rickyard.quantity.Unit;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.ProductOrder;

/** The products that jobs and mixes name, found in the product list, and numbered for the joins. */
final class ListedProducts {
    /**
     * One use of a product, by a row of the job list or a line of a mix; -1 where a list has no row for it.
     *
     * @param product its row of the product list, none if it is measured in another unit than it is dosed in
     * @param key its number, the same for every use of it in one unit
     * @param unit what it is measured in, "" if nothing says it
     */
    record Use(int job, int mix, int product, int key, String unit) {}

    /** So many names of the product list are told where one is not found in it. */
    private static final int MOST_NAMED = 5;

    private static final String LITRES = "L";
    static final String KILOGRAMS = "kg";

    private final ListRows jobs;
    private final ListRows mixes;
    private final MixesOfJobs mixOf;
    private final NearNames nearMixes;
    private final ListRows products;
    private final CustomaryUnits customary;
    private final List<Finding> findings;
    private final Set<Finding> told = new HashSet<>();
    private final ContentsOfProducts contents;
    /** Products dosed in ounces that were told. */
    private final Set<String> ounces = new HashSet<>();

    private final Map<String, List<Integer>> mixRows = new HashMap<>();
    private final Map<String, Integer> productRows = new HashMap<>();
    /** By the keys of products that are dosed in another unit than they are listed in: what they are listed in. */
    private final Map<Integer, String> listedIn = new HashMap<>();

    private final Map<String, Integer> others = new HashMap<>();
    /** Per row of the product list, what it measures the product in; null where it was not asked yet, as it is for each use. */
    private final String[] listedUnits;

    private Map<String, List<String>> unitsUsed;

    ListedProducts(FoundLists lists, MixesOfJobs mixOf, List<Finding> findings) {
        this.mixOf = mixOf;
        this.jobs = lists.rows(Jobs.LIST);
        this.mixes = lists.rows(Mixes.LIST);
        this.products = lists.rows(Products.LIST);
        this.listedUnits = new String[products.size()];
        this.nearMixes = NearNames.of(mixes, Mixes.MIX);
        this.customary = lists.customary();
        this.findings = findings;
        this.contents = new ContentsOfProducts(jobs, products, findings);
        for (int mix = 0; mix < mixes.size(); mix++) {
            mixRows.computeIfAbsent(NameKey.key(mixes.text(Mixes.MIX, mix)), m -> new ArrayList<>())
                    .add(mix);
        }
        for (int product = 0; product < products.size(); product++) {
            productRows.putIfAbsent(NameKey.key(products.text(Products.PRODUCT, product)), product);
        }
    }

    /** The lines of the mix that a job names; none, and told, if there is no such mix. */
    List<Integer> linesOfMix(int job) {
        String mix = mixOf.name(job);
        List<Integer> lines = mixRows.get(NameKey.key(mix));
        if (lines != null) {
            if (jobs.text(Jobs.PRODUCT, job).isEmpty()) {
                contents.tellUnused(job);
            }
            return lines;
        }
        findings.add(Finding.stop(
                mixOf.cell(job).orElse(null),
                productRows.containsKey(NameKey.key(mix))
                                && jobs.text(Jobs.PRODUCT, job).isEmpty()
                        ? "'" + mix
                                + "' is a product, not a mix: write it in the Product column. Its amounts are left out."
                        : "there is no mix '" + mix
                                + "' in the list of mixes; add its lines there or mend the name."
                                + nearMixes.meant(mix)
                                + " Its products are left out."));
        return List.of();
    }

    /** Which mix each job takes. */
    MixesOfJobs mixOf() {
        return mixOf;
    }

    /** A use of a product by a name; what the list says against it is told. */
    Use use(int job, int mix, String name, Optional<CellAddress> cell) {
        return use(job, mix, name, cell, false);
    }

    /** The same of what a machine for solids spreads: by the weight of a nutrient in it, it is kilograms. */
    Use use(int job, int mix, String name, Optional<CellAddress> cell, boolean solid) {
        int product = productRows.getOrDefault(NameKey.key(name), -1);
        if (product < 0 && products.size() > 0) {
            Finding unlisted = Finding.caution(
                    cell.orElse(null),
                    "'" + name + "' is not in the product list (expected " + listed() + "), so its limits, packs and"
                            + " stock are not known and it is held against nothing; add it there or mend the name.");
            tell(unlisted);
        }
        String all = unitOfAll(product, name);
        String unit = job >= 0
                ? unitOf(jobs, Jobs.DOSE, job, product, all, name, cell)
                : unitOf(mixes, Mixes.DOSE, mix, product, all, name, cell);
        if (unit.isEmpty() && solid && contents.isByWeight(job)) {
            unit = KILOGRAMS;
        }
        if (job >= 0) {
            tellOunces(jobs, Jobs.DOSE, job, product, name);
        } else {
            tellOunces(mixes, Mixes.DOSE, mix, product, name);
        }
        contents.tell(
                job >= 0 ? jobs : mixes, job >= 0 ? Jobs.DOSE : Mixes.DOSE, Math.max(job, mix), job, product, name);
        // A product dosed in another unit than it is measured in has no pack or limit to be held against.
        String other = product < 0 ? "" : agree(all, unit) ? packedOtherwise(unit, product, name) : all;
        boolean held = product >= 0 && other.isEmpty();
        int key = held
                ? product + 1
                : others.computeIfAbsent(NameKey.key(name) + '\u0000' + unit, n -> products.size() + 1 + others.size());
        if (!other.isEmpty()) {
            listedIn.put(key, other);
        }
        return new Use(job, mix, held ? product : -1, key, unit);
    }

    /** The other unit that the cell of a pack or stock names than the product is dosed in, which is told; "" if none does. */
    private String packedOtherwise(String unit, int product, String name) {
        for (ColumnSpec column : List.of(Products.PACK_SIZE, Products.STOCK)) {
            String own = ownUnit(column, product);
            if (!agree(unit, own)) {
                tell(Finding.stop(
                        products.address(column, product).orElse(null),
                        "'" + name + "' has its " + column.name() + " in " + own + " here and is dosed in " + unit
                                + "; its packs and limits cannot be compared until both agree."));
                return own;
            }
        }
        return "";
    }

    private String ownUnit(ColumnSpec column, int product) {
        return products.state(column, product) == ListRows.State.READ_FROM_TEXT
                ? products.productUnit(column, product).orElse("")
                : "";
    }

    /** The first names of the list, for a slip of the pen. */
    private String listed() {
        StringBuilder names = new StringBuilder();
        int shown = Math.min(products.size(), MOST_NAMED);
        for (int product = 0; product < shown; product++) {
            names.append(product == 0 ? "'" : product == products.size() - 1 ? " or '" : ", '")
                    .append(products.text(Products.PRODUCT, product))
                    .append('\'');
        }
        return shown < products.size() ? names + " or another of its " + products.size() + " names" : names.toString();
    }

    private static boolean agree(String one, String other) {
        return one.isEmpty() || other.isEmpty() || one.equalsIgnoreCase(other);
    }

    /** What the product list measures a product in: L of a product listed in L, ml/100 L or L/ha. "" if not said. */
    private String listedUnit(int product) {
        if (product < 0) {
            return "";
        }
        if (listedUnits[product] == null) {
            listedUnits[product] = readUnit(product);
        }
        return listedUnits[product];
    }

    private String readUnit(int product) {
        if (products.state(Products.UNIT, product) != ListRows.State.GIVEN) {
            return "";
        }
        String text = products.text(Products.UNIT, product);
        return DoseText.read(text, customary) instanceof DoseText.Known known ? known.productUnit() : text;
    }

    /** Where liquids are dosed by the fluid ounce, people leave the word out. */
    private static boolean isInOunces(ListRows list, ColumnSpec dose, int row) {
        return list.unit(dose, row)
                .map(Unit::symbol)
                .filter(symbol -> symbol.startsWith("oz"))
                .isPresent();
    }

    /** Whether a dose counts what is in the product, and so says nothing of whether that goes by litres. */
    private static boolean countsContent(ListRows list, ColumnSpec dose, int row) {
        return list.unit(dose, row).flatMap(Substance::of).isPresent();
    }

    /** Once for each product that no list says to be weighed or measured. */
    private void tellOunces(ListRows list, ColumnSpec dose, int row, int product, String name) {
        if (list.gives(dose, row)
                && isInOunces(list, dose, row)
                && ofList(product).isEmpty()
                && ounces.add(NameKey.key(name))) {
            findings.add(Finding.caution(
                    list.address(dose, row).orElse(null),
                    "the dose of '" + name
                            + "' is in ounces, which by themselves are a weight, so it is reckoned in kg:"
                            + " write UK fl oz or US fl oz if fluid ounces are meant; if it is weighed, say so by its Unit in the product"
                            + " list (kg or oz)."));
        }
    }

    /**
     * The unit of one dose.
     *
     * @param all what the product is measured in
     */
    private String unitOf(
            ListRows list, ColumnSpec dose, int row, int product, String all, String name, Optional<CellAddress> cell) {
        Optional<String> dosed = doseUnit(list, dose, row);
        boolean listed = !listedUnit(product).isEmpty();
        if (dosed.isEmpty()) {
            if (row >= 0 && list.gives(dose, row) && !listed && !all.isEmpty() && !countsContent(list, dose, row)) {
                tell(Finding.caution(
                        list.address(dose, row).orElse(null),
                        "the dose of '" + name + "' has no unit here and is taken to be in " + all
                                + ", as its other doses are: write its unit, or the Unit of the product in the product"
                                + " list."));
            }
            return all;
        }
        if (product >= 0 && !agree(all, dosed.get())) {
            findings.add(Finding.stop(
                    cell.orElse(null),
                    "'" + name + "' is dosed in " + dosed.get() + " here but "
                            + (listed || !ownUnit(Products.PACK_SIZE, product).isEmpty()
                                    ? "the product list measures it in " + all
                                    : "elsewhere in " + all)
                            + "; its packs and limits cannot be compared until both agree."
                            + byDensity(product, dosed.get(), all)
                            + (dosed.get().equals("tablet")
                                    ? " What is counted, bags as well, is told as tablets: write what is in them, in "
                                            + all + "."
                                    : "")
                            + (isInOunces(list, dose, row)
                                    ? " An ounce by itself is a weight: write UK fl oz or US fl oz if fluid ounces are meant."
                                    : "")));
        }
        return dosed.get();
    }

    /** What one unit of a dose is in the unit of the list, where the list has the density that tells a weight from a volume. */
    private String byDensity(int product, String dosed, String listed) {
        boolean weight = dosed.equalsIgnoreCase("kg") && listed.equalsIgnoreCase("L");
        boolean volume = dosed.equalsIgnoreCase("L") && listed.equalsIgnoreCase("kg");
        if (!weight && !volume || !products.gives(Products.DENSITY, product)) {
            return "";
        }
        Unit kilogramsALitre = Quantities.PRODUCT_DENSITY.unit();
        double density = products.unit(Products.DENSITY, product)
                .orElse(kilogramsALitre)
                .convert(products.number(Products.DENSITY, product), kilogramsALitre);
        return " By its density (" + products.address(Products.DENSITY, product).orElseThrow() + ") 1 " + dosed + " is "
                + Numbers.readable(weight ? 1 / density : density) + ' ' + listed + ": write the dose so.";
    }

    private void tell(Finding finding) {
        // A line of a mix that several jobs use is wrong once, not once a job.
        if (told.add(finding)) {
            findings.add(finding);
        }
    }

    /**
     * What a product is measured in: in the product list, by its unit, its dose, or "10 l" in its pack or stock; or
     * else what its doses in jobs and mixes are in, or litres where it is told what a litre holds. A listed one is
     * measured in what the first of them says, since its pack and stock are of one thing; "" for one that is not listed
     * and dosed in several, or where nothing says it.
     */
    private String unitOfAll(int product, String name) {
        String listed = ofList(product);
        if (!listed.isEmpty()) {
            return listed;
        }
        List<String> used = unitsUsed().getOrDefault(NameKey.key(name), List.of());
        if (used.isEmpty()) {
            return contents.isByLitre(product, name) ? LITRES : "";
        }
        return product < 0 && used.size() > 1 ? "" : used.get(0);
    }

    /** What the product list measures a product in, by its unit, dose, pack or stock; "" if nothing there says it. */
    private String ofList(int product) {
        if (product < 0) {
            return "";
        }
        String listed = listedUnit(product);
        if (listed.isEmpty()) {
            listed = doseUnit(products, Products.DOSE, product).orElse("");
        }
        listed = listed.isEmpty() ? ownUnit(Products.PACK_SIZE, product) : listed;
        return listed.isEmpty() ? ownUnit(Products.STOCK, product) : listed;
    }

    /** The units that jobs and mixes dose each product in; made when first asked. */
    private Map<String, List<String>> unitsUsed() {
        if (unitsUsed == null) {
            unitsUsed = new HashMap<>();
            for (int job = 0; job < jobs.size(); job++) {
                noteUnit(jobs.text(Jobs.PRODUCT, job), doseUnit(jobs, Jobs.DOSE, job));
            }
            for (int mix = 0; mix < mixes.size(); mix++) {
                noteUnit(mixes.text(Mixes.PRODUCT, mix), doseUnit(mixes, Mixes.DOSE, mix));
            }
        }
        return unitsUsed;
    }

    private void noteUnit(String product, Optional<String> unit) {
        if (unit.isPresent()) {
            List<String> known = unitsUsed.computeIfAbsent(NameKey.key(product), p -> new ArrayList<>());
            if (known.stream().noneMatch(unit.get()::equalsIgnoreCase)) {
                known.add(unit.get());
            }
        }
    }

    private static Optional<String> doseUnit(ListRows list, ColumnSpec column, int row) {
        return row < 0 || !list.gives(column, row) ? Optional.empty() : list.productUnit(column, row);
    }

    /** Whether any product used is dosed in another unit than it is listed in. */
    boolean dosesOtherwise() {
        return !listedIn.isEmpty();
    }

    /** The sources of the order list: each product that is used once, listed ones first. */
    RowSources order(List<Use> uses) {
        Map<Integer, Use> firsts = new TreeMap<>();
        uses.forEach(use -> firsts.putIfAbsent(use.key(), use));
        List<Use> each = List.copyOf(firsts.values());
        return new RowSources(each.size())
                .with(Role.DOSED_JOB, jobs, each.stream().mapToInt(Use::job).toArray())
                .with(Role.MIX, mixes, each.stream().mapToInt(Use::mix).toArray())
                .with(
                        Role.PRODUCT,
                        products,
                        each.stream().mapToInt(Use::product).toArray())
                .with(Keys.PRODUCT_KEY, each.stream().mapToInt(Use::key).toArray())
                .with(Quantities.PRODUCT_UNIT, each.stream().map(Use::unit).toArray(String[]::new))
                .with(
                        ProductOrder.LISTED_IN,
                        each.stream()
                                .map(use -> listedIn.getOrDefault(use.key(), ""))
                                .toArray(String[]::new));
    }
}
