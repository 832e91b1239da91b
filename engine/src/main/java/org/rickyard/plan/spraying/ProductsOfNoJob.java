package org.rickyard.plan.spraying;

import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.Products;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;

/** Tells of products that are listed beside jobs of spraying and spreading none of which takes any. */
final class ProductsOfNoJob {
    private ProductsOfNoJob() {}

    static void tell(PlanContext plan, JobLines read) {
        ListRows products = plan.rows(Products.LIST);
        ListRows mixes = plan.rows(Mixes.LIST);
        ListRows jobs = plan.rows(Jobs.LIST);
        int listed = products.size() + mixes.size();
        if (listed == 0 || read.blocks().isEmpty() && read.spreads().isEmpty()) {
            return;
        }
        for (int job = 0; job < jobs.size(); job++) {
            if (read.mixOf().takesAny(job)) {
                return;
            }
        }
        boolean single = products.size() > 0;
        plan.findings()
                .add(Finding.caution(
                        (single ? products.address(Products.PRODUCT, 0) : mixes.address(Mixes.MIX, 0)).orElse(null),
                        "no job says that it takes "
                                + (single
                                        ? "one of the " + Counted.of(products.size(), "listed product")
                                        : "one of the listed mixes")
                                + ", so what goes into a tank or spreader and what to order is not worked out. Write the name"
                                + " of the product, or of its mix, in a column Product or Mix of Jobs."));
    }
}
