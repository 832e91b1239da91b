package org.rickyard.plan.spraying;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;

/**
 * Says of a sprayer at work whose jobs tell no water volume where that stands which it was found to spray. It is not taken
 * for the water volume unasked: what a test gave and what a label wants may be two things.
 */
final class MeasuredVolumes {
    private MeasuredVolumes() {}

    static void tell(PlanContext plan, List<JobLines.Block> blocks) {
        ListRows machines = plan.rows(Machines.LIST);
        ListRows jobs = plan.rows(Jobs.LIST);
        Set<Integer> told = new HashSet<>();
        for (JobLines.Block block : blocks) {
            int machine = block.machine();
            String sheet = sheet(machines, machine);
            if (!sheet.isEmpty() && !jobs.isFilled(Jobs.WATER_VOLUME, block.firstJob()) && told.add(machine)) {
                plan.findings()
                        .add(Finding.note(
                                machines.address(Machines.MACHINE, machine).orElse(null),
                                "no water volume is typed where '" + machines.text(Machines.MACHINE, machine)
                                        + "' sprays. What it was found to put out stands on " + sheet
                                        + ": if it is to spray that, type it in Water volume of Jobs, and tankfuls and"
                                        + " product follow."));
            }
        }
    }

    /** The sheet on which it is worked out what a sprayer puts out; empty if there is none. */
    private static String sheet(ListRows machines, int machine) {
        boolean run = machines.isFilled(Machines.TIMED_DISTANCE, machine)
                && machines.isFilled(Machines.WORKING_WIDTH, machine);
        if ((run || machines.isFilled(Machines.TEST_AREA, machine))
                && machines.isFilled(Machines.TEST_VOLUME, machine)) {
            return "Area tests";
        }
        if (machines.isFilled(Machines.NOZZLE_CATCH, machine)) {
            return "Catch runs";
        }
        return machines.isFilled(Machines.TOTAL_FLOW, machine) || machines.isFilled(Machines.NOZZLE_FLOW, machine)
                ? "Flow rates"
                : "";
    }
}
