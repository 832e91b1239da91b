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
import org.rickyard.plan.join.FieldsWorked;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;

/** The products that go into the tank of each block: from a mix, or from the job rows themselves. */
final class SprayRows {
    /** One product of one block. */
    private record Row(int block, ListedProducts.Use use) {}

    private final ListRows jobs;
    private final ListRows mixes;
    private final ListedProducts products;
    private final List<Finding> findings;
    private final Set<Finding> told = new HashSet<>();
    private final List<Row> rows = new ArrayList<>();
    private final Map<Integer, List<Integer>> blockRows = new HashMap<>();

    SprayRows(FoundLists lists, List<JobLines.Block> blocks, ListedProducts products, List<Finding> findings) {
        this.jobs = lists.rows(Jobs.LIST);
        this.mixes = lists.rows(Mixes.LIST);
        this.products = products;
        this.findings = findings;
        for (int i = 0; i < blocks.size(); i++) {
            read(i, blocks.get(i));
        }
    }

    /** What a row uses. */
    ListedProducts.Use use(int row) {
        return rows.get(row).use();
    }

    private void read(int index, JobLines.Block block) {
        Set<Integer> seen = new LinkedHashSet<>();
        Map<String, String> first = new HashMap<>();
        Map<String, String> mixesHere = new LinkedHashMap<>();
        for (int job : block.jobs()) {
            String mix = NameKey.key(products.mixOf().name(job));
            String product = jobs.text(Jobs.PRODUCT, job);
            if (!mix.isEmpty()) {
                List<Integer> lines = products.linesOfMix(job);
                if (!lines.isEmpty()) {
                    mixesHere.putIfAbsent(mix, products.mixOf().name(job));
                    tellMixed(job, mixesHere.values());
                }
                for (int line : lines) {
                    if (seen.add(line) && isOnce(mixes, Mixes.PRODUCT, Mixes.DOSE, line, first)) {
                        add(index, -1, line, mixes.text(Mixes.PRODUCT, line), mixes.address(Mixes.PRODUCT, line));
                    }
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
                    products.mixOf().cell(job).orElse(null),
                    "the mixes '" + String.join("' and '", mixesHere)
                            + "' are reckoned as one tank and one pass, for their"
                            + " rows are of one job. If they are sprayed one after the other, give each its own name in Job,"
                            + " or its day in Earliest."));
        }
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
        blockRows.computeIfAbsent(block, b -> new ArrayList<>()).add(rows.size());
        rows.add(new Row(block, products.use(job, mix, name, cell)));
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
        int mix = use(row).mix();
        return mix >= 0 && mixes.state(Mixes.ORDER_IN_TANK, mix) == ListRows.State.GIVEN
                ? mixes.number(Mixes.ORDER_IN_TANK, mix)
                : Double.MAX_VALUE;
    }

    /** The number of a row's product. */
    int productKey(int row) {
        return use(row).key();
    }

    /** What is used, row by row. */
    List<ListedProducts.Use> uses() {
        return rows.stream().map(Row::use).toList();
    }

    /** The sources of the table of products, block by block. */
    RowSources sources(FoundLists lists, List<JobLines.Block> blocks, FieldsWorked worked) {
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
            ListedProducts.Use use = use(i);
            productKey[i] = use.key();
            JobLines.Block block = blocks.get(rows.get(i).block());
            job[i] = use.job();
            jobAlways[i] = block.firstJob();
            mix[i] = use.mix();
            product[i] = use.product();
            machine[i] = block.machine();
            field[i] = block.firstField();
            key[i] = block.key();
            unit[i] = use.unit().isEmpty() ? null : use.unit();
        }
        return new RowSources(count)
                .with(Role.JOB, jobs, jobAlways)
                .with(Role.DOSED_JOB, jobs, job)
                .with(Role.MIX, mixes, mix)
                .with(Role.PRODUCT, lists.rows(Products.LIST), product)
                .with(Role.MACHINE, lists.rows(Machines.LIST), machine)
                .with(Role.FIELD, lists.rows(Fields.LIST), field)
                .with(Keys.BLOCK_KEY, key)
                .with(Quantities.FIELDS_OF_JOB, worked.named(key))
                .with(Keys.TANK_MIX_KEY, RowNumbers.keys(count))
                .with(Keys.PRODUCT_KEY, productKey)
                .with(Quantities.PRODUCT_UNIT, unit);
    }
}
