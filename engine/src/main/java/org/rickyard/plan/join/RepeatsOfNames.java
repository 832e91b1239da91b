package org.rickyard.plan.join;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;

/**
 * How often a named job has come to the same field with the same machine before: "Mow" of May and "Mow" of July, or of the
 * first and the second cut, are not done at once, and "grass" in July is the field that was named in May. A row that tells
 * neither is of the time of the one above it.
 */
final class RepeatsOfNames {
    private static final List<ColumnSpec> SAME_WORK = List.of(Jobs.HOLDING, Jobs.JOB, Jobs.OPERATION, Jobs.MACHINE);
    private static final double UNTOLD = Double.NEGATIVE_INFINITY;

    /** When a work is done. */
    private record Time(double earliest, double latest, String cut) {
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

        /** Whether both tell the day they begin, or the cut, and the same. */
        boolean isThatOf(Time other) {
            return agrees(other)
                    && (earliest != UNTOLD && earliest == other.earliest || !cut.isEmpty() && cut.equals(other.cut));
        }

        /** What one leaves open is told by the other. */
        Time with(Time other) {
            return new Time(
                    earliest == UNTOLD ? other.earliest : earliest,
                    latest == UNTOLD ? other.latest : latest,
                    cut.isEmpty() ? other.cut : cut);
        }
    }

    /** One time that a job comes round to its fields. */
    private static final class Round {
        private final Map<Integer, Time> times = new HashMap<>();

        boolean takes(List<Integer> fields, Time time) {
            return fields.stream().map(times::get).allMatch(known -> known == null || known.agrees(time));
        }

        boolean isOf(Time time) {
            return times.values().stream().anyMatch(time::isThatOf);
        }

        void add(List<Integer> fields, Time time) {
            fields.forEach(field -> times.merge(field, time, Time::with));
        }
    }

    private final ListRows jobs;
    private final ListRows fields;
    private final Map<Integer, Integer> repeats = new HashMap<>();
    /** Made for those who need it: most job lists have no names that come again. */
    private FieldChoice choice;

    RepeatsOfNames(ListRows jobs, ListRows fields) {
        this.jobs = jobs;
        this.fields = fields;
        ofOtherTimes(jobs).forEach(this::count);
    }

    /** Whether there are rows of one named job, operation and machine whose fields meet. */
    boolean meet() {
        for (List<Integer> rows : byWork(jobs)) {
            Set<Integer> seen = new HashSet<>();
            for (int job : rows) {
                if (rows.size() > 1 && !fieldsOf(job).stream().allMatch(seen::add)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** What cannot be found is told by whoever joins the lists. */
    private List<Integer> fieldsOf(int job) {
        if (choice == null) {
            choice = new FieldChoice(fields, new ArrayList<>());
        }
        return choice.find(jobs, job);
    }

    /** The rows of each job that has a name, apart by operation and machine. */
    private static Iterable<List<Integer>> byWork(ListRows jobs) {
        Map<String, List<Integer>> works = new LinkedHashMap<>();
        for (int job = 0; job < jobs.size(); job++) {
            if (!jobs.text(Jobs.JOB, job).isEmpty()) {
                works.computeIfAbsent(JobIdentity.joined(jobs, job, SAME_WORK), any -> new ArrayList<>())
                        .add(job);
            }
        }
        return works.values();
    }

    /** Those whose rows are not all of one time: only for them their fields are looked for. */
    private static List<List<Integer>> ofOtherTimes(ListRows jobs) {
        List<List<Integer>> others = new ArrayList<>();
        if (jobs.has(Jobs.EARLIEST) || jobs.has(Jobs.LATEST) || jobs.has(Jobs.CUT)) {
            byWork(jobs).forEach(rows -> {
                if (rows.stream().map(job -> time(jobs, job)).distinct().count() > 1) {
                    others.add(rows);
                }
            });
        }
        return others;
    }

    /** All that is done at one time is looked at together: a field that comes again takes the others of its day with it. */
    private void count(List<Integer> rows) {
        Map<Time, List<Integer>> workedAt = new LinkedHashMap<>();
        for (int job : rows) {
            Time time = time(jobs, job);
            if (time.isTold()) {
                workedAt.computeIfAbsent(time, any -> new ArrayList<>()).addAll(fieldsOf(job));
            }
        }
        List<Round> rounds = new ArrayList<>();
        Map<Time, Integer> roundOf = new HashMap<>();
        workedAt.forEach((time, worked) -> {
            int round = round(rounds, worked, time);
            rounds.get(round).add(worked, time);
            roundOf.put(time, round);
        });
        int last = 0;
        for (int job : rows) {
            last = roundOf.getOrDefault(time(jobs, job), last);
            if (last > 0) {
                repeats.put(job, last);
            }
        }
    }

    /** The round that is of that very time, otherwise the first in which the fields have no other. */
    private static int round(List<Round> rounds, List<Integer> fields, Time time) {
        int first = rounds.size();
        for (int at = rounds.size() - 1; at >= 0; at--) {
            if (rounds.get(at).takes(fields, time)) {
                if (rounds.get(at).isOf(time)) {
                    return at;
                }
                first = at;
            }
        }
        if (first == rounds.size()) {
            rounds.add(new Round());
        }
        return first;
    }

    private static Time time(ListRows jobs, int job) {
        return new Time(
                day(jobs, Jobs.EARLIEST, job), day(jobs, Jobs.LATEST, job), NameKey.key(jobs.text(Jobs.CUT, job)));
    }

    private static double day(ListRows jobs, ColumnSpec column, int job) {
        return jobs.gives(column, job) ? Math.floor(jobs.number(column, job)) : UNTOLD;
    }

    /** 0 for the first time, 1 for the second, and so on. */
    int of(int job) {
        return repeats.getOrDefault(job, 0);
    }
}
