package org.rickyard.plan.join;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.NameKey;

/**
 * Which mix each row of the job list takes: the one it names or, where no row of its job names a mix or product, the one
 * that is called as the job is. So a list of what goes into each job, with a column Job, is read.
 */
public final class MixesOfJobs {
    private final ListRows jobs;
    private final ListRows mixes;
    /** The mixes of jobs that name none, by the key of the job's name: the first row of each. */
    private final Map<String, Integer> byJob = new LinkedHashMap<>();
    /** Jobs that name a mix or product, by the key of the job's name: the first row that does. */
    private final Map<String, Integer> naming = new HashMap<>();

    /** For the lists of jobs and mixes. */
    public MixesOfJobs(FoundLists lists) {
        jobs = lists.rows(Jobs.LIST);
        mixes = lists.rows(Mixes.LIST);
        for (int mix = 0; mix < mixes.size(); mix++) {
            byJob.putIfAbsent(key(mixes, mix), mix);
        }
        byJob.remove("");
        Set<String> names = new HashSet<>();
        for (int job = 0; job < jobs.size() && !byJob.isEmpty(); job++) {
            String name = NameKey.key(jobs.text(Jobs.JOB, job));
            names.add(name);
            if (namesAny(job) && byJob.containsKey(name)) {
                naming.putIfAbsent(name, job);
            }
        }
        byJob.keySet().retainAll(names);
        byJob.keySet().removeAll(naming.keySet());
    }

    private static String key(ListRows mixes, int mix) {
        return NameKey.key(mixes.text(Mixes.MIX, mix));
    }

    private boolean namesAny(int job) {
        return jobs.isFilled(Jobs.MIX, job) || jobs.isFilled(Jobs.PRODUCT, job);
    }

    private boolean takesOwn(int job) {
        return !byJob.isEmpty() && byJob.containsKey(NameKey.key(jobs.text(Jobs.JOB, job)));
    }

    /** Whether a job takes a mix, be it known or not. */
    public boolean takes(int job) {
        return jobs.isFilled(Jobs.MIX, job) || takesOwn(job);
    }

    /** Whether a job takes a mix or names a product. */
    public boolean takesAny(int job) {
        return namesAny(job) || takesOwn(job);
    }

    /** The name of the mix that a job takes; "" if it takes none. */
    public String name(int job) {
        return jobs.text(takesOwn(job) ? Jobs.JOB : Jobs.MIX, job);
    }

    /** Where it is named. */
    public Optional<CellAddress> cell(int job) {
        return jobs.address(takesOwn(job) ? Jobs.JOB : Jobs.MIX, job);
    }

    /** What a job takes, for a message: its product, or else its mix. */
    public String taken(int job) {
        String product = jobs.text(Jobs.PRODUCT, job);
        return product.isEmpty() ? "the mix '" + name(job) + "'" : "'" + product + "'";
    }

    /** Where that is named. */
    public Optional<CellAddress> cellOfTaken(int job) {
        return jobs.text(Jobs.PRODUCT, job).isEmpty() ? cell(job) : jobs.address(Jobs.PRODUCT, job);
    }

    /**
     * Tells of mixes that are taken by the job's name, and of those that go into nothing: beside them such as bear the name
     * of no job, and always such as bear the name of a job that names what it takes.
     */
    public void tell(List<Finding> findings) {
        if (byJob.isEmpty() && naming.isEmpty()) {
            return;
        }
        if (!byJob.isEmpty()) {
            tellTaken(findings, byJob.values().iterator().next());
        }
        Set<String> taken = new HashSet<>();
        for (int job = 0; job < jobs.size(); job++) {
            taken.add(NameKey.key(name(job)));
        }
        Map<String, Integer> left = new LinkedHashMap<>();
        for (int mix = 0; mix < mixes.size(); mix++) {
            if (!taken.contains(key(mixes, mix))) {
                left.putIfAbsent(key(mixes, mix), mix);
            }
        }
        left.forEach((name, mix) -> {
            if (naming.containsKey(name)) {
                tellNaming(findings, mix, naming.get(name));
            } else if (!byJob.isEmpty()) {
                tellOfNoJob(findings, mix);
            }
        });
    }

    private void tellTaken(List<Finding> findings, int first) {
        findings.add(Finding.note(
                mixes.address(Mixes.MIX, first).orElse(null),
                "the products of the job '" + mixes.text(Mixes.MIX, first) + "'"
                        + Counted.othersThan(byJob.size(), "job")
                        + " are those listed here beside its name, for its row names no mix and no product. If it"
                        + " takes others, write them in a column Product or Mix of Jobs."));
    }

    private void tellNaming(List<Finding> findings, int mix, int job) {
        findings.add(Finding.caution(
                mixes.address(Mixes.MIX, mix).orElse(null),
                "the job '" + mixes.text(Mixes.MIX, mix) + "' takes " + taken(job)
                        + cellOfTaken(job).map(cell -> ", as " + cell + " says").orElse("")
                        + ", so the products listed here beside its name go into no tank or spreader and are not ordered."
                        + " Write all it takes in one place: here, with Product and Mix of its rows in Jobs left blank, or"
                        + " there."));
    }

    private void tellOfNoJob(List<Finding> findings, int mix) {
        findings.add(Finding.caution(
                mixes.address(Mixes.MIX, mix).orElse(null),
                "no job is called '" + mixes.text(Mixes.MIX, mix)
                        + "' or takes a mix of that name, so its products go into no tank or spreader and"
                        + " are not ordered. Expected the name of a job, as beside the others: mend it here"
                        + " or in Jobs."));
    }
}
