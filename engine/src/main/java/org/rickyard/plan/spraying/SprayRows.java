package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.rickyard.formula.Numbers;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.Products;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.DoseText;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;

/** The products that go into the tank of each block: from a mix, or from the job rows themselves. */
final class SprayRows {
    /** One product of one block; -1 where a list has no row for it. */
    record Row(int block, int job, int mix, int product, String productUnit) {}

    /** So many names of the product list are told where one is not found in it. */
    private static final int MOST_NAMED = 5;

    private final ListRows jobs;
    private final ListRows mixes;
    private final ListRows products;
    private final CustomaryUnits customary;
    private final List<Finding> findings;
    private final Set<Finding> told = new HashSet<>();
    private final Map<String, List<Integer>> mixRows = new HashMap<>();
    private final Map<String, Integer> productRows = new HashMap<>();
    private final List<Row> rows = new ArrayList<>();
    private final List<Integer> keys = new ArrayList<>();
    private final Map<String, Integer> others = new HashMap<>();
    private final Map<Integer, List<Integer>> blockRows = new HashMap<>();

    SprayRows(FoundLists lists, List<JobLines.Block> blocks, List<Finding> findings) {
        this.jobs = lists.rows(Jobs.LIST);
        this.mixes = lists.rows(Mixes.LIST);
        this.products = lists.rows(Products.LIST);
        this.customary = lists.customary();
        this.findings = findings;
        for (int mix = 0; mix < mixes.size(); mix++) {
            mixRows.computeIfAbsent(NameKey.key(mixes.text(Mixes.MIX, mix)), m -> new ArrayList<>())
                    .add(mix);
        }
        for (int product = 0; product < products.size(); product++) {
            productRows.putIfAbsent(NameKey.key(products.text(Products.PRODUCT, product)), product);
        }
        for (int i = 0; i < blocks.size(); i++) {
            read(i, blocks.get(i));
        }
    }

    List<Row> rows() {
        return rows;
    }

    private void read(int index, JobLines.Block block) {
        Set<Integer> seen = new LinkedHashSet<>();
        Map<String, String> first = new HashMap<>();
        Map<String, String> mixesHere = new LinkedHashMap<>();
        for (int job : block.jobs()) {
            String mix = NameKey.key(jobs.text(Jobs.MIX, job));
            String product = jobs.text(Jobs.PRODUCT, job);
            if (!mix.isEmpty()) {
                List<Integer> lines = mixRows.get(mix);
                if (lines != null) {
                    mixesHere.putIfAbsent(mix, jobs.text(Jobs.MIX, job));
                    tellMixed(job, mixesHere.values());
                    for (int line : lines) {
                        if (seen.add(line) && isOnce(mixes, Mixes.PRODUCT, Mixes.DOSE, line, first)) {
                            add(index, -1, line, mixes.text(Mixes.PRODUCT, line), mixes.address(Mixes.PRODUCT, line));
                        }
                    }
                } else {
                    noMix(job, product);
                }
            }
            if (!product.isEmpty() && isOnce(jobs, Jobs.PRODUCT, Jobs.DOSE, job, first)) {
                add(index, job, -1, product, jobs.address(Jobs.PRODUCT, job));
            }
        }
    }

    /** A tank takes one mix as a rule: rows without name or day may have been meant as two sprayings. */
    private void tellMixed(int job, Collection<String> mixesHere) {
        if (mixesHere.size() > 1) {
            tellOnce(Finding.caution(
                    jobs.address(Jobs.MIX, job).orElse(null),
                    "the mixes '" + String.join("' and '", mixesHere)
                            + "' are reckoned as one tank and one pass, for their"
                            + " rows are of one job. If they are sprayed one after the other, give each its own name in Job,"
                            + " or its day in Earliest."));
        }
    }

    private void noMix(int job, String product) {
        String mix = jobs.text(Jobs.MIX, job);
        findings.add(Finding.stop(
                jobs.address(Jobs.MIX, job).orElse(null),
                productRows.containsKey(NameKey.key(mix)) && product.isEmpty()
                        ? "'" + mix
                                + "' is a product, not a mix: write it in the Product column. Its amounts are left out."
                        : "there is no mix '" + mix
                                + "' in the list of mixes; add its lines there or mend the name. Its"
                                + " products are left out."));
    }

    /** Whether a product is new to its tank; one that stands twice is told, and only the first is reckoned. */
    private boolean isOnce(ListRows list, ColumnSpec product, ColumnSpec dose, int row, Map<String, String> first) {
        String here = dose(list, dose, row);
        String before = first.putIfAbsent(NameKey.key(list.text(product, row)), here);
        if (before == null) {
            return true;
        }
        Finding twice = Finding.stop(
                list.address(dose, row).or(() -> list.address(product, row)).orElse(null),
                "'" + list.text(product, row) + "' stands twice in one tank: " + before + " and " + here
                        + ". Only the first is reckoned. Expected once: keep the dose per hectare or the share of the"
                        + " spray, or give each its own job.");
        tellOnce(twice);
        return false;
    }

    /** A mix that several jobs use is wrong once, not once a job. */
    private void tellOnce(Finding finding) {
        if (told.add(finding)) {
            findings.add(finding);
        }
    }

    private static String dose(ListRows list, ColumnSpec dose, int row) {
        if (!list.gives(dose, row)) {
            return "no dose";
        }
        return Numbers.readable(list.number(dose, row))
                + list.unit(dose, row).map(unit -> " " + unit).orElse("")
                + list.address(dose, row).map(cell -> " (" + cell + ")").orElse("");
    }

    private void add(int block, int job, int mix, String name, Optional<CellAddress> cell) {
        int product = productRows.getOrDefault(NameKey.key(name), -1);
        if (product < 0 && products.size() > 0) {
            tellOnce(Finding.caution(
                    cell.orElse(null),
                    "'" + name + "' is not in the product list (expected " + listed() + "), so its limits, packs and"
                            + " stock are not known and it is held against nothing; add it there or mend the name."));
        }
        String unit = unitOf(job, mix, product, name, cell);
        boolean listed = product >= 0 && agrees(product, unit);
        // A product dosed in another unit than it is listed in has no pack or limit to be held against.
        int held = listed ? product : -1;
        blockRows.computeIfAbsent(block, b -> new ArrayList<>()).add(rows.size());
        keys.add(
                held >= 0
                        ? held + 1
                        : others.computeIfAbsent(
                                NameKey.key(name) + '\u0000' + unit, n -> products.size() + 1 + others.size()));
        rows.add(new Row(block, job, mix, held, unit));
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

    private boolean agrees(int product, String unit) {
        String listed = listedUnit(product);
        return listed.isEmpty() || unit.isEmpty() || unit.equalsIgnoreCase(listed);
    }

    /** What the product list measures a product in: L of a product listed in L, ml/100 L or L/ha. "" if not said. */
    private String listedUnit(int product) {
        if (product < 0 || products.state(Products.UNIT, product) != ListRows.State.GIVEN) {
            return "";
        }
        String text = products.text(Products.UNIT, product);
        return DoseText.read(text, customary) instanceof DoseText.Known known ? known.productUnit() : text;
    }

    /** The rows of a block, in list order. */
    List<Integer> ofBlock(int block) {
        return blockRows.getOrDefault(block, List.of());
    }

    /** The rows of a block as they go into the tank: by the order typed, those without one after. */
    List<Integer> inMixingOrder(int block) {
        List<Integer> ordered = new ArrayList<>(ofBlock(block));
        ordered.sort(Comparator.comparingDouble(this::order));
        return ordered;
    }

    private double order(int row) {
        int mix = rows.get(row).mix();
        return mix >= 0 && mixes.state(Mixes.ORDER_IN_TANK, mix) == ListRows.State.GIVEN
                ? mixes.number(Mixes.ORDER_IN_TANK, mix)
                : Double.MAX_VALUE;
    }

    /** The number of a row's product. */
    int productKey(int row) {
        return keys.get(row);
    }

    /** The sources of the order list: each product once, listed ones first. */
    RowSources order() {
        Map<Integer, Integer> firsts = new TreeMap<>();
        for (int row = 0; row < rows.size(); row++) {
            firsts.putIfAbsent(keys.get(row), row);
        }
        int count = firsts.size();
        int[] job = new int[count];
        int[] mix = new int[count];
        int[] product = new int[count];
        int[] key = new int[count];
        String[] unit = new String[count];
        int at = 0;
        for (Map.Entry<Integer, Integer> entry : firsts.entrySet()) {
            Row row = rows.get(entry.getValue());
            job[at] = row.job();
            mix[at] = row.mix();
            product[at] = row.product();
            key[at] = entry.getKey();
            unit[at++] = row.productUnit();
        }
        return new RowSources(count)
                .with(Role.DOSED_JOB, jobs, job)
                .with(Role.MIX, mixes, mix)
                .with(Role.PRODUCT, products, product)
                .with(Keys.PRODUCT_KEY, key)
                .with(Quantities.PRODUCT_UNIT, unit);
    }

    private String unitOf(int job, int mix, int product, String name, Optional<CellAddress> cell) {
        Optional<String> dosed = job >= 0 ? doseUnit(jobs, Jobs.DOSE, job) : doseUnit(mixes, Mixes.DOSE, mix);
        String listed = listedUnit(product);
        if (dosed.isPresent() && !listed.isEmpty() && !dosed.get().equalsIgnoreCase(listed)) {
            findings.add(Finding.stop(
                    cell.orElse(null),
                    "'" + name + "' is dosed in " + dosed.get() + " here but the product list measures it in " + listed
                            + "; its packs and limits cannot be compared until both agree."));
        }
        if (dosed.isPresent()) {
            return dosed.get();
        }
        if (listed.isEmpty() && product >= 0) {
            return doseUnit(products, Products.DOSE, product).orElse("");
        }
        return listed;
    }

    private static Optional<String> doseUnit(ListRows list, ColumnSpec column, int row) {
        return row < 0 || !list.gives(column, row) ? Optional.empty() : list.productUnit(column, row);
    }

    /** The sources of the table of products, block by block. */
    RowSources sources(FoundLists lists, List<JobLines.Block> blocks) {
        int count = rows.size();
        int[] job = new int[count];
        int[] jobAlways = new int[count];
        int[] mix = new int[count];
        int[] product = new int[count];
        int[] machine = new int[count];
        int[] field = new int[count];
        int[] key = new int[count];
        int[] productKey = new int[count];
        String[] unit = new String[count];
        for (int i = 0; i < count; i++) {
            productKey[i] = keys.get(i);
            Row row = rows.get(i);
            JobLines.Block block = blocks.get(row.block());
            job[i] = row.job();
            jobAlways[i] = block.firstJob();
            mix[i] = row.mix();
            product[i] = row.product();
            machine[i] = block.machine();
            field[i] = block.firstField();
            key[i] = block.key();
            unit[i] = row.productUnit().isEmpty() ? null : row.productUnit();
        }
        return new RowSources(count)
                .with(Role.JOB, jobs, jobAlways)
                .with(Role.DOSED_JOB, jobs, job)
                .with(Role.MIX, mixes, mix)
                .with(Role.PRODUCT, products, product)
                .with(Role.MACHINE, lists.rows(Machines.LIST), machine)
                .with(Role.FIELD, lists.rows(Fields.LIST), field)
                .with(Keys.BLOCK_KEY, key)
                .with(Keys.TANK_MIX_KEY, RowNumbers.keys(count))
                .with(Keys.PRODUCT_KEY, productKey)
                .with(Quantities.PRODUCT_UNIT, unit);
    }
}
