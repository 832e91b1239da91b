package org.rickyard.plan.spraying;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;

/**
 * Says which products of the job list no machine puts out that is known to: nothing of them is worked out, which would
 * otherwise be seen by nobody who looks for them among the products to be ordered.
 */
final class ProductsNotSprayed {
    private ProductsNotSprayed() {}

    static void tell(PlanContext plan, JobLines read) {
        ListRows jobs = plan.rows(Jobs.LIST);
        ListRows machines = plan.rows(Machines.LIST);
        BitSet sprayed = new BitSet();
        read.blocks().forEach(block -> block.jobs().forEach(sprayed::set));
        Map<String, Integer> first = new LinkedHashMap<>();
        for (JobLines.Line line : read.lines()) {
            int job = line.job();
            String type = machines.text(Machines.TYPE, line.machine());
            boolean otherMachine = line.block() == 0 && !type.isEmpty() && !JobLines.spreads(type);
            if (job >= 0 && otherMachine && !sprayed.get(job) && jobs.isFilled(Jobs.PRODUCT, job)) {
                first.putIfAbsent(jobs.text(Jobs.PRODUCT, job), job);
            }
        }
        if (first.isEmpty()) {
            return;
        }
        Map.Entry<String, Integer> one = first.entrySet().iterator().next();
        plan.findings()
                .add(Finding.caution(
                        jobs.address(Jobs.PRODUCT, one.getValue()).orElse(null),
                        "'" + one.getKey() + "'" + Counted.othersThan(first.size(), "product")
                                + " is not sprayed, spread or drilled, so how much of it is needed is not worked out and it"
                                + " is not on the order list: only what a sprayer, knapsack, spreader, tanker or drill puts"
                                + " out is. Reckon it as area × dose; what a fill of a wiper takes stands on 'Weed"
                                + " wiper'."));
    }
}
