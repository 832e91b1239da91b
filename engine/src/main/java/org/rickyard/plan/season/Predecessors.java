package org.rickyard.plan.season;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.plan.workrate.Tasks;
import org.rickyard.quantity.Units;

/** Which tasks must be done before a task: those of the job or operation named in After, and the stages before it. */
final class Predecessors {
    /**
     * What comes before a task.
     *
     * @param tasks positions of tasks
     * @param lag days to wait after them
     * @param unknown whether After names a job that is not there
     */
    record Before(List<Integer> tasks, double lag, boolean unknown) {}

    private final ListRows jobs;
    private final List<Tasks.Task> tasks;
    private final List<Finding> findings;
    private final Set<Integer> gangJobs = new HashSet<>();

    Predecessors(ListRows jobs, List<Tasks.Task> tasks, List<Finding> findings) {
        this.jobs = jobs;
        this.tasks = tasks;
        this.findings = findings;
        tasks.stream().filter(Tasks.Task::isGang).forEach(task -> gangJobs.add(task.job()));
    }

    List<Before> all() {
        List<Before> all = new ArrayList<>();
        for (int task = 0; task < tasks.size(); task++) {
            all.add(before(task));
        }
        return all;
    }

    private Before before(int task) {
        int job = tasks.get(task).job();
        List<Integer> stages = stagesBefore(task);
        String after = NameKey.key(jobs.text(Jobs.AFTER, job));
        if (!stages.isEmpty() || after.isEmpty()) {
            return new Before(stages, 0, false);
        }
        List<Integer> named = named(job, after, true);
        if (named.isEmpty()) {
            named = named(job, after, false);
        }
        if (named.isEmpty()) {
            findings.add(Finding.stop(
                    jobs.address(Jobs.AFTER, job).orElse(null),
                    "no job or operation is called '" + jobs.text(Jobs.AFTER, job)
                            + "' in the job list; mend the name, or"
                            + " add the job. This job is not planned until then."));
            return new Before(List.of(), 0, true);
        }
        return new Before(named, lag(job), false);
    }

    private double lag(int job) {
        if (jobs.state(Jobs.LAG, job) != ListRows.State.GIVEN) {
            return 0;
        }
        double typed = jobs.number(Jobs.LAG, job);
        return jobs.unit(Jobs.LAG, job).orElse(Units.H).convert(typed, Units.D);
    }

    private List<Integer> named(int job, String after, boolean byJob) {
        String holding = NameKey.key(jobs.text(Jobs.HOLDING, job));
        List<Integer> found = new ArrayList<>();
        for (int other = 0; other < tasks.size(); other++) {
            int row = tasks.get(other).job();
            boolean same = NameKey.key(jobs.text(byJob ? Jobs.JOB : Jobs.OPERATION, row))
                    .equals(after);
            boolean his = holding.equals(NameKey.key(jobs.text(Jobs.HOLDING, row)));
            boolean itself = row == job && !byJob;
            if (same && his && !itself) {
                found.add(other);
            }
        }
        return found;
    }

    /** In a gang's job, mowing comes before tedding, tedding before raking, raking before the gang. */
    private List<Integer> stagesBefore(int task) {
        List<Integer> found = new ArrayList<>();
        int own = order(task);
        int closest = -1;
        if (!gangJobs.contains(tasks.get(task).job())) {
            return found;
        }
        for (int other = 0; other < tasks.size(); other++) {
            if (tasks.get(other).job() == tasks.get(task).job() && order(other) < own) {
                closest = Math.max(closest, order(other));
            }
        }
        for (int other = 0; other < tasks.size(); other++) {
            if (tasks.get(other).job() == tasks.get(task).job() && order(other) == closest) {
                found.add(other);
            }
        }
        return found;
    }

    private int order(int task) {
        return tasks.get(task).order();
    }
}
