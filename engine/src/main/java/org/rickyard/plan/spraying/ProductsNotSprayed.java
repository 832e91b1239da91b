package org.rickyard.plan.spraying;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.MixesOfJobs;

/**
 * Says which products and mixes of the job list no machine puts out that is known to, and which are put out by a machine of no known
 * type: nothing of them is worked out, which would otherwise be seen by nobody who looks for them among the products to be
 * ordered.
 */
final class ProductsNotSprayed {
    private ProductsNotSprayed() {}

    static void tell(PlanContext plan, JobLines read) {
        MixesOfJobs mixOf = read.mixOf();
        ListRows machines = plan.rows(Machines.LIST);
        BitSet sprayed = new BitSet();
        read.blocks().forEach(block -> block.jobs().forEach(sprayed::set));
        Map<String, Integer> first = new LinkedHashMap<>();
        Map<Integer, Integer> ofNoType = new LinkedHashMap<>();
        for (JobLines.Line line : read.lines()) {
            int job = line.job();
            if (job < 0 || line.block() > 0 || sprayed.get(job) || !mixOf.takesAny(job)) {
                continue;
            }
            if (!machines.gives(Machines.TYPE, line.machine())) {
                ofNoType.putIfAbsent(line.machine(), job);
            } else if (!JobLines.spreads(machines.text(Machines.TYPE, line.machine()))) {
                first.putIfAbsent(mixOf.taken(job), job);
            }
        }
        read.spreads().forEach(spread -> ofNoType.values().remove(spread.job()));
        ofNoType.forEach((machine, job) -> tellNoType(plan, mixOf, machine, job));
        if (first.isEmpty()) {
            return;
        }
        Map.Entry<String, Integer> one = first.entrySet().iterator().next();
        plan.findings()
                .add(Finding.caution(
                        mixOf.cellOfTaken(one.getValue()).orElse(null),
                        one.getKey() + Counted.othersThan(first.size(), "product")
                                + " is not sprayed, spread or drilled, so how much of it is needed is not worked out and it"
                                + " is not on the order list: only what a sprayer, knapsack, spreader, tanker or drill puts"
                                + " out is. Reckon it as area × dose; what a fill of a wiper takes stands on 'Weed"
                                + " wiper'."));
    }

    private static void tellNoType(PlanContext plan, MixesOfJobs mixOf, int machine, int job) {
        ListRows machines = plan.rows(Machines.LIST);
        plan.findings()
                .add(Finding.caution(
                        mixOf.cellOfTaken(job).orElse(null),
                        "the machine of this job, '" + machines.text(Machines.MACHINE, machine)
                                + "', has no Type that is"
                                + " known here, so what its jobs put out of " + mixOf.taken(job)
                                + " or another product is not worked out and is missing from the order list. Write its"
                                + " Type"
                                + machines.address(Machines.TYPE, machine)
                                        .map(cell -> " (" + cell + ")")
                                        .orElse("")
                                + ": sprayer, fertiliser spreader, slurry tanker, drill or what it is."));
    }
}
