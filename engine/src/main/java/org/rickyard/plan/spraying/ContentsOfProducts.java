package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.formula.Numbers;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.Products;
import org.rickyard.quantity.Substance;
import org.rickyard.quantity.Unit;
import org.rickyard.trade.Quantities;

/**
 * What products hold of what their doses count, told beside the dose or in the product list: who lacks it, of which two
 * places say different things, and which are litres because so much is in a litre of them.
 */
final class ContentsOfProducts {
    /** Contents that differ by less were rounded, or told in another unit. */
    private static final double ROUNDED = 0.01;

    /** Where a product's content is told: a row of a list. */
    private record Told(ListRows list, ColumnSpec column, int row) {
        Unit unit() {
            return list.unit(column, row).orElse(column.symbol().unit());
        }

        String words() {
            return Numbers.readable(list.number(column, row))
                    + ' '
                    + unit()
                    + list.address(column, row).map(cell -> " (" + cell + ")").orElse("");
        }

        boolean isOfALitre() {
            return unit().isCompatible(Quantities.ACTIVE_CONTENT.unit());
        }

        boolean isSame(Told other) {
            double here = unit().convert(list.number(column, row), other.unit());
            double there = other.list.number(other.column, other.row);
            return Math.abs(here - there) <= ROUNDED * Math.abs(there);
        }
    }

    private final ListRows jobs;
    private final ListRows products;
    private final List<Finding> findings;
    /** Of each product by weight and of a litre: the two are no measure for each other. */
    private final Map<String, Told> first = new HashMap<>();

    private final Set<String> lacking = new HashSet<>();
    private final Set<String> different = new HashSet<>();
    /** What was told to stand beside a mix. */
    private final Set<Substance> unused = EnumSet.noneOf(Substance.class);
    /** The names of products of which a job tells what a litre of them holds; made when first asked. */
    private Set<String> litresInJobs;

    ContentsOfProducts(ListRows jobs, ListRows products, List<Finding> findings) {
        this.jobs = jobs;
        this.products = products;
        this.findings = findings;
    }

    /**
     * Says once of each product whose dose counts what is in it where no list says how much that is, and where two say
     * different things.
     *
     * @param list the jobs, or the mixes
     * @param job the row of the jobs that doses it, -1 for a line of a mix
     * @param product its row of the product list, -1 if it has none
     */
    void tell(ListRows list, ColumnSpec dose, int row, int job, int product, String name) {
        boolean given = list.gives(dose, row);
        Optional<Substance> counted = given
                ? list.unit(dose, row).flatMap(Substance::of)
                : product >= 0 && products.gives(Products.DOSE, product)
                        ? products.unit(Products.DOSE, product).flatMap(Substance::of)
                        : Optional.empty();
        if (counted.isEmpty()) {
            return;
        }
        Substance substance = counted.get();
        boolean beside = job >= 0 && jobs.has(Jobs.contentOf(substance));
        boolean listed = product >= 0 && products.has(Products.contentOf(substance));
        if (beside || listed) {
            tellDifferent(told(job, product, substance), substance, name);
        } else if (lacking.add(NameKey.key(name) + substance)) {
            findings.add(Finding.stop(
                    (given ? list.address(dose, row) : products.address(Products.DOSE, product)).orElse(null),
                    "the dose of '" + name + "' counts the " + substance.words()
                            + " in it, and how much of that it holds is not told: write it in a column "
                            + Products.contentOf(substance).name()
                            + " of the product list, and L or kg in its Unit"
                            + (job < 0
                                    ? ""
                                    : ", or beside the dose in a column "
                                            + Jobs.contentOf(substance).name())
                            + ". Until then no amount of the product is worked out."));
        }
    }

    /** Says once of each content that it stands beside a mix, whose products are told elsewhere. */
    void tellUnused(int job) {
        for (Substance substance : Substance.values()) {
            ColumnSpec content = Jobs.contentOf(substance);
            if (jobs.gives(content, job) && unused.add(substance)) {
                findings.add(Finding.caution(
                        jobs.address(content, job).orElse(null),
                        "this stands beside a mix, and does not say which of its products holds so much of "
                                + substance.words() + ", so it is used for nothing: write it in a column "
                                + Products.contentOf(substance).name() + " of the product list."));
            }
        }
    }

    private List<Told> told(int job, int product, Substance substance) {
        List<Told> told = new ArrayList<>();
        if (job >= 0 && jobs.gives(Jobs.contentOf(substance), job)) {
            told.add(new Told(jobs, Jobs.contentOf(substance), job));
        }
        if (product >= 0 && products.gives(Products.contentOf(substance), product)) {
            told.add(new Told(products, Products.contentOf(substance), product));
        }
        return told;
    }

    private void tellDifferent(List<Told> told, Substance substance, String name) {
        String key = NameKey.key(name) + substance;
        for (Told one : told) {
            Told before = first.putIfAbsent(key + one.isOfALitre(), one);
            if (before != null && !before.isSame(one) && different.add(key)) {
                findings.add(Finding.caution(
                        one.list().address(one.column(), one.row()).orElse(null),
                        "'" + name + "' holds " + one.words() + " of " + substance.words() + " here and "
                                + before.words() + " elsewhere; what stands beside a dose holds for that dose, and the"
                                + " product list for the others. If it is one product, mend the content that is wrong; if"
                                + " they are two, give each its own name."));
            }
        }
    }

    /** Whether a product is measured in litres, as nothing but a litre can hold so many grams. */
    boolean isByLitre(int product, String name) {
        if (product >= 0 && isOfALitre(products, product)) {
            return true;
        }
        if (litresInJobs == null) {
            litresInJobs = new HashSet<>();
            for (int job = 0; jobs.has(Jobs.ACTIVE_CONTENT) && job < jobs.size(); job++) {
                if (isOfALitre(jobs, job)) {
                    litresInJobs.add(NameKey.key(jobs.text(Jobs.PRODUCT, job)));
                }
            }
        }
        return litresInJobs.contains(NameKey.key(name));
    }

    /** Whether it is told beside a dose what share of the weight the nutrient is that the dose counts. */
    boolean isByWeight(int job) {
        return job >= 0
                && jobs.unit(Jobs.DOSE, job)
                        .flatMap(Substance::of)
                        .filter(substance -> substance != Substance.ACTIVE)
                        .filter(substance -> jobs.gives(Jobs.contentOf(substance), job))
                        .isPresent();
    }

    /** Whether a row tells what a litre holds, and not a kilogram. */
    static boolean isOfALitre(ListRows list, int row) {
        return list.gives(Products.ACTIVE_CONTENT, row)
                && list.unit(Products.ACTIVE_CONTENT, row)
                        .filter(unit -> unit.isCompatible(Quantities.ACTIVE_CONTENT.unit()))
                        .isPresent();
    }
}
