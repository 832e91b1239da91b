package org.rickyard.plan.join;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.trade.silage.ClampShape;

/** Jobs that dig an earth pit: no work on a field, and worked out for each and excavator whatever the jobs say. */
final class DiggingJobs {
    private static final String DIGGING = "digging";

    private final ListRows jobs;
    private final List<Finding> findings;

    /** Names of pits that are no fields too. */
    private final Set<String> pits = new HashSet<>();

    private boolean told;

    DiggingJobs(FoundLists lists, List<Finding> findings) {
        this.jobs = lists.rows(Jobs.LIST);
        this.findings = findings;
        ListRows all = lists.rows(Clamps.LIST);
        for (int clamp = 0; clamp < all.size(); clamp++) {
            if (all.text(Clamps.KIND, clamp).equals(ClampShape.EARTH_PIT)) {
                pits.add(NameKey.key(all.text(Clamps.CLAMP, clamp)));
            }
        }
        ListRows fields = lists.rows(Fields.LIST);
        for (int field = 0; field < fields.size() && !pits.isEmpty(); field++) {
            pits.remove(NameKey.key(fields.text(Fields.FIELD, field)));
        }
    }

    /** Whether a job is one; the first is told. */
    boolean isOfClamp(int job) {
        boolean digs = !pits.isEmpty()
                && jobs.text(Jobs.OPERATION, job).equals(DIGGING)
                && pits.contains(NameKey.key(jobs.text(Jobs.FIELD, job)));
        if (digs && !told) {
            told = true;
            findings.add(Finding.note(
                    jobs.address(Jobs.FIELD, job).orElse(null),
                    "'" + jobs.text(Jobs.FIELD, job)
                            + "' is a clamp and no field: what is dug, and in how many hours, stands"
                            + " on Pit digging for each earth pit and excavator, whatever the jobs say. Rows that dig a clamp"
                            + " are left out of the work on fields."));
        }
        return digs;
    }
}
