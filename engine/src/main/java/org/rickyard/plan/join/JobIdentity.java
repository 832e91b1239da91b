package org.rickyard.plan.join;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;

/**
 * Which rows of the job list are one job: those of one holding, name and operation. Rows without a name are one job only
 * if they are of one time too, for two cuts of a field, or two sprayings, are not one. A row that tells no time, right
 * below one of the same field and machine, is of the time above it: another product in the tank, as a rule. Where a row
 * names all products of its mix beside each other, another row of the same field and machine is another spraying. What
 * has a name is one job whatever its time, but not where the same field and machine stand there again for another day or
 * cut ({@link RepeatsOfNames}): nobody mows a field twice at once.
 */
public final class JobIdentity {
    private static final List<ColumnSpec> TIMES = List.of(Jobs.EARLIEST, Jobs.LATEST, Jobs.CUT, Jobs.GROWTH_STAGE);
    private static final List<ColumnSpec> SAME_WORK =
            List.of(Jobs.HOLDING, Jobs.JOB, Jobs.OPERATION, Jobs.FIELD, Jobs.BLOCK, Jobs.MACHINE);
    /** Without a name, and of one time, rows are one job whatever their fields. */
    private static final List<ColumnSpec> OF_UNNAMED = List.of(Jobs.HOLDING, Jobs.JOB, Jobs.OPERATION);

    private static final char PARTED = '\u0000';

    private final ListRows jobs;
    /** The same job is asked about for each of its fields. */
    private int last = -1;

    private String keyOfLast = "";

    /** For a row that holds a whole mix, how many of the same work and time stand above it. */
    private final Map<Integer, Integer> repeats = new HashMap<>();

    private final RepeatsOfNames again;

    /** For the rows of the job list, done on these fields. */
    public JobIdentity(ListRows jobs, ListRows fields) {
        this.jobs = jobs;
        this.again = new RepeatsOfNames(jobs, fields);
        Map<String, Integer> seen = new HashMap<>();
        Optional<CellAddress> above = Optional.empty();
        int times = 0;
        for (int job = 0; job < jobs.size(); job++) {
            if (jobs.holdsWholeMix(job)) {
                Optional<CellAddress> here = jobs.address(Jobs.MACHINE, job);
                times = here.equals(above) ? times : seen.merge(work(job), 1, Integer::sum) - 1;
                above = here;
                repeats.put(job, times);
            }
        }
    }

    /** Whether a list has rows that only their days, or none, make one job or two. */
    public static boolean mayBePartedByDays(ListRows jobs, ListRows fields) {
        if (!jobs.has(Jobs.EARLIEST) && !jobs.has(Jobs.LATEST)) {
            return false;
        }
        Set<String> unnamed = new HashSet<>();
        for (int job = 0; job < jobs.size(); job++) {
            if (jobs.text(Jobs.JOB, job).isEmpty() && !unnamed.add(joined(jobs, job, OF_UNNAMED))) {
                return true;
            }
        }
        return new RepeatsOfNames(jobs, fields).meet();
    }

    /** The words of a row in some columns, as a key. */
    static String joined(ListRows jobs, int job, List<ColumnSpec> columns) {
        StringBuilder words = new StringBuilder();
        columns.forEach(
                column -> words.append(NameKey.key(jobs.text(column, job))).append(PARTED));
        return words.toString();
    }

    private String work(int job) {
        return joined(jobs, job, SAME_WORK) + joined(jobs, job, TIMES);
    }

    /** The same for rows of one job, and for no others. */
    public String key(int job) {
        if (job != last) {
            keyOfLast = made(job);
            last = job;
        }
        return keyOfLast;
    }

    private String made(int job) {
        StringBuilder key = new StringBuilder(NameKey.key(jobs.text(Jobs.HOLDING, job)));
        key.append(PARTED).append(NameKey.key(jobs.text(Jobs.OPERATION, job)));
        String name = NameKey.key(jobs.text(Jobs.JOB, job));
        key.append(PARTED).append(name);
        if (name.isEmpty()) {
            int timed = timed(job);
            TIMES.forEach(time -> key.append(PARTED).append(NameKey.key(jobs.text(time, timed))));
            key.append(PARTED).append(repeats.getOrDefault(job, 0));
        } else {
            key.append(PARTED).append(again.of(job));
        }
        return key.toString();
    }

    /** The row that tells the time of an unnamed row. */
    private int timed(int job) {
        int row = job;
        while (row > 0 && !repeats.containsKey(row) && !tellsTime(row) && isSameWork(row, row - 1)) {
            row--;
        }
        return row;
    }

    private boolean tellsTime(int job) {
        return TIMES.stream().anyMatch(time -> jobs.isFilled(time, job));
    }

    private boolean isSameWork(int job, int other) {
        return SAME_WORK.stream()
                .allMatch(column -> NameKey.key(jobs.text(column, job)).equals(NameKey.key(jobs.text(column, other))));
    }
}
