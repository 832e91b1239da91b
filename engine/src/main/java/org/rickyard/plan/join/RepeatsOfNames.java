package org.rickyard.plan.join;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;

/**
 * How often a named job has come to the same field with the same machine before: "Mow" of May and "Mow" of July, or of the
 * first and the second cut, are not done at once. A row that tells neither is of the time of the one above it.
 */
final class RepeatsOfNames {
    private static final double UNTOLD = Double.NEGATIVE_INFINITY;

    /** When a work is done; what its first row leaves open is told by the next. */
    private static final class Time {
        private double earliest;
        private double latest;
        private String cut;

        Time(double earliest, double latest, String cut) {
            this.earliest = earliest;
            this.latest = latest;
            this.cut = cut;
        }

        boolean isTold() {
            return earliest != UNTOLD || latest != UNTOLD || !cut.isEmpty();
        }

        /** Two rows of one tank may end on days that differ; the day they begin is one. */
        boolean agrees(Time other) {
            boolean days = earliest == UNTOLD || other.earliest == UNTOLD
                    ? agree(latest, other.latest)
                    : earliest == other.earliest;
            return days && (cut.isEmpty() || other.cut.isEmpty() || cut.equals(other.cut));
        }

        private static boolean agree(double one, double other) {
            return one == UNTOLD || other == UNTOLD || one == other;
        }

        void add(Time other) {
            earliest = earliest == UNTOLD ? other.earliest : earliest;
            latest = latest == UNTOLD ? other.latest : latest;
            cut = cut.isEmpty() ? other.cut : cut;
        }
    }

    /** The times of one work so far, and which of them the last row was of. */
    private static final class Times {
        private final List<Time> all = new ArrayList<>();
        private int last;

        int of(Time time) {
            int at = time.isTold() ? all.size() - 1 : Math.min(last, all.size() - 1);
            while (at >= 0 && !all.get(at).agrees(time)) {
                at--;
            }
            if (at < 0) {
                at = all.size();
                all.add(time);
            } else {
                all.get(at).add(time);
            }
            last = at;
            return at;
        }
    }

    private final ListRows jobs;
    private final Map<Integer, Integer> repeats = new HashMap<>();

    RepeatsOfNames(ListRows jobs) {
        this.jobs = jobs;
        boolean timed = false;
        for (int job = 0; job < jobs.size() && !timed; job++) {
            timed = time(job).isTold();
        }
        if (timed) {
            read();
        }
    }

    private void read() {
        Map<String, Times> works = new HashMap<>();
        for (int job = 0; job < jobs.size(); job++) {
            if (!jobs.text(Jobs.JOB, job).isEmpty()) {
                int repeat = works.computeIfAbsent(
                                JobIdentity.joined(jobs, job, JobIdentity.SAME_WORK), any -> new Times())
                        .of(time(job));
                if (repeat > 0) {
                    repeats.put(job, repeat);
                }
            }
        }
    }

    private Time time(int job) {
        return new Time(day(Jobs.EARLIEST, job), day(Jobs.LATEST, job), NameKey.key(jobs.text(Jobs.CUT, job)));
    }

    private double day(ColumnSpec column, int job) {
        return jobs.gives(column, job) ? Math.floor(jobs.number(column, job)) : UNTOLD;
    }

    /** 0 for the first time, 1 for the second, and so on. */
    int of(int job) {
        return repeats.getOrDefault(job, 0);
    }
}
