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
 * Asks for the day of a sprayer's last test where it could be held against the days of a job: the list has a column for
 * it, jobs have days, and the cell is blank. Without days there is nothing to compare with, as no clock is read.
 */
final class SprayerTests {
    private static final Set<String> TESTED = Set.of("sprayer", "air-blast sprayer");

    private SprayerTests() {}

    static void tell(PlanContext plan, List<JobLines.Block> blocks) {
        ListRows machines = plan.rows(Machines.LIST);
        ListRows jobs = plan.rows(Jobs.LIST);
        Set<Integer> asked = new HashSet<>();
        for (JobLines.Block block : blocks) {
            int machine = block.machine();
            if (TESTED.contains(machines.text(Machines.TYPE, machine))
                    && machines.state(Machines.LAST_TESTED, machine) == ListRows.State.BLANK
                    && SprayLines.given(jobs, block.firstJob(), Jobs.EARLIEST, Jobs.LATEST)
                    && asked.add(machine)) {
                plan.findings()
                        .add(Finding.caution(
                                machines.address(Machines.LAST_TESTED, machine).orElse(null),
                                "Last tested is blank for '" + machines.text(Machines.MACHINE, machine)
                                        + "', so its test cannot be held against the days of its jobs. "
                                        + "Expected the day"
                                        + " of its last test; type it, or have the sprayer tested "
                                        + "before the first job."));
            }
        }
    }
}
