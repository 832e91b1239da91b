package org.rickyard.plan.workrate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;

/**
 * Says of a baler that follows a combine that the yield of the field, which is grain, is taken for what it bales: there is
 * one yield to a field, and straw is another.
 */
final class StrawOfGrain {
    private StrawOfGrain() {}

    static void tell(PlanContext plan, List<JobLines.Line> lines) {
        ListRows jobs = plan.rows(Jobs.LIST);
        ListRows fields = plan.rows(Fields.LIST);
        ListRows machines = plan.rows(Machines.LIST);
        Set<Integer> combined = new HashSet<>();
        for (JobLines.Line line : lines) {
            if (line.job() >= 0 && isA("combine", machines, line)) {
                combined.add(line.field());
            }
        }
        if (combined.isEmpty()) {
            return;
        }
        Map<Integer, List<Integer>> baled = new LinkedHashMap<>();
        for (JobLines.Line line : lines) {
            if (combined.contains(line.field())
                    && fields.isFilled(Fields.YIELD, line.field())
                    && !jobs.isFilled(Jobs.CUT, line.job())
                    && isA("baler", machines, line)) {
                baled.computeIfAbsent(line.job(), job -> new ArrayList<>()).add(line.field());
            }
        }
        baled.forEach((job, of) -> plan.findings()
                .add(Finding.caution(
                        jobs.address(Jobs.MACHINE, job).orElse(null),
                        "a combine works '" + fields.text(Fields.FIELD, of.get(0)) + "' too"
                                + (of.size() > 1
                                        ? " (and " + Counted.more(of.size() - 1, "field") + " of this job)"
                                        : "")
                                + ", so its yield is grain, and the baler's bales, tonnes, power and bill are reckoned from"
                                + " it as if it were straw. List the straw as a field of its own, with its area and yield,"
                                + " and name that in this job.")));
    }

    private static boolean isA(String type, ListRows machines, JobLines.Line line) {
        return machines.text(Machines.TYPE, line.machine()).equals(type);
    }
}
