package org.rickyard.trade.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Method;
import org.rickyard.formula.Source;
import org.rickyard.trade.Quantities;

/**
 * A plan of the days: each job is done in one go, as early as its window, the jobs before it and its machines allow. No
 * machine or tractor is booked twice; of several alike no more are booked than there are. Time is counted in days; a part
 * of a day is a part of that day's work.
 *
 * <p>Of jobs that hang together by machines or order, up to {@value #ALL_ORDERS} are tried in every order, and the plan
 * with the fewest days late in all stands, then the one that ends first, then the one nearest the list. More are tried in
 * list order, by latest day and by earliest day. Same jobs, same plan.
 */
public final class DayPlan {
    /** Up to so many jobs that hang together are tried in every order. */
    public static final int ALL_ORDERS = 6;

    private static final double WHISKER = 1e-9;

    /**
     * A job.
     *
     * @param days how long it takes
     * @param earliest first day, as a serial number; NaN if none
     * @param latest last day it may still be worked on; NaN if none
     * @param machines what it books; one that stands there twice is two alike
     * @param after positions of the jobs that must be done before
     * @param lag days to wait after them
     */
    public record Job(
            double days, double earliest, double latest, List<Integer> machines, List<Integer> after, double lag) {}

    /** When a job is worked on; both NaN if it cannot be planned. */
    public record Slot(double start, double finish) {
        /** Whether it is planned. */
        public boolean planned() {
            return !Double.isNaN(start);
        }

        /** First day worked on. */
        public double firstDay() {
            return Math.floor(start + WHISKER);
        }

        /** Last day worked on. */
        public double lastDay() {
            return Math.max(firstDay(), Math.ceil(finish - WHISKER) - 1);
        }
    }

    private static final Source SCHEDULING = Source.derived("serial scheduling; ties go by list order");

    /** What it is, for the sheet. */
    public static final Method METHOD = new Method(
            "planned-start",
            "each job in one go as early as window, jobs before it and machines allow; nothing is booked twice, and of"
                    + " several alike no more than their Number; days are stretched by the share that is workable; of up to six jobs that hang together the order with"
                    + " the fewest days late stands, of more the best of list order, latest day and earliest day",
            SCHEDULING,
            reads());
    /** The last day of a job's place in the plan. */
    public static final Method LAST_DAY =
            new Method("planned-finish", "last day worked on, as planned start", SCHEDULING, reads());
    /** What keeps a job from beginning. */
    public static final Method WAITING = new Method(
            "waits-for", "the job that has its machine or tractor when it could begin", SCHEDULING, List.of());
    /** Why a job has no place. */
    public static final Method UNPLANNED =
            new Method("not-planned-because", "what the plan lacks to place the job", SCHEDULING, List.of());
    /** What it was made from, so that a change since then can be told. */
    public static final Method PLANNED_WITH =
            new Method("days-planned-with", "the days it took when the workbook was run", SCHEDULING, List.of());
    /** Jobs that want one machine on the same days. */
    public static final Method DOUBLE_BOOKING = new Method(
            "double-booking",
            "other jobs that want it on the days this job could be done if machines were no matter, where there are"
                    + " too few of it for all of them; the plan does one"
                    + " after the other",
            SCHEDULING);
    /** How much of those alike a job takes. */
    public static final Method TAKEN_OF_ALIKE = new Method(
            "share-of-those-alike",
            "how many the job takes of those that there are: all where no Number is typed",
            SCHEDULING);
    /** The days of a machine's season. */
    public static final Method SEASON_OF_MACHINE = new Method(
            "machine-season",
            "from the first to the last day that its jobs may be done; as planned where a job has no such day",
            SCHEDULING);
    /** The chart. */
    public static final Method CHART = new Method(
            "time-chart", "a job stands on each day from its planned start to its planned finish", SCHEDULING);

    private static List<Expr> reads() {
        return List.of(
                Expr.value(SeasonFit.CALENDAR),
                Expr.value(Quantities.EARLIEST),
                Expr.value(Quantities.LATEST),
                Expr.value(Quantities.AFTER),
                Expr.value(Quantities.LAG));
    }

    private static final Slot NONE = new Slot(Double.NaN, Double.NaN);

    private final List<Job> jobs;
    private final Map<Integer, Integer> owned;
    private final Slot[] slots;

    private DayPlan(List<Job> jobs, Map<Integer, Integer> owned) {
        this.jobs = List.copyOf(jobs);
        this.owned = Map.copyOf(owned);
        slots = new Slot[jobs.size()];
        Arrays.fill(slots, NONE);
    }

    /**
     * The slot of each job. Jobs in a loop of predecessors, or after one that cannot be planned, get none.
     *
     * @param owned how many there are of a machine; one where it is not said, and at least what one job takes
     */
    public static List<Slot> of(List<Job> jobs, Map<Integer, Integer> owned) {
        DayPlan plan = new DayPlan(jobs, owned);
        plan.plan();
        return List.of(plan.slots);
    }

    /** Positions of the jobs that wait, one way or another, for themselves. */
    public static List<Integer> loops(List<Job> jobs) {
        List<Integer> looping = new ArrayList<>();
        for (int job = 0; job < jobs.size(); job++) {
            if (reaches(jobs, job, job, new boolean[jobs.size()])) {
                looping.add(job);
            }
        }
        return looping;
    }

    private static boolean reaches(List<Job> jobs, int from, int to, boolean[] seen) {
        for (int before : jobs.get(from).after()) {
            if (before == to) {
                return true;
            }
            if (!seen[before]) {
                seen[before] = true;
                if (reaches(jobs, before, to, seen)) {
                    return true;
                }
            }
        }
        return false;
    }

    private void plan() {
        for (List<Integer> group : groups(plannable())) {
            Slot[] best = null;
            double[] bestScore = null;
            for (List<Integer> order : orders(group)) {
                Slot[] tried = place(order);
                double[] score = score(tried, group);
                if (best == null || Arrays.compare(score, bestScore) < 0) {
                    best = tried;
                    bestScore = score;
                }
            }
            for (int job : group) {
                slots[job] = best[job];
            }
        }
    }

    private boolean[] plannable() {
        boolean[] can = new boolean[jobs.size()];
        boolean more = true;
        while (more) {
            more = false;
            for (int i = 0; i < can.length; i++) {
                Job job = jobs.get(i);
                boolean begins = !Double.isNaN(job.earliest()) || !job.after().isEmpty();
                boolean ready = !Double.isNaN(job.days())
                        && begins
                        && job.after().stream().allMatch(before -> can[before]);
                if (!can[i] && ready) {
                    can[i] = true;
                    more = true;
                }
            }
        }
        return can;
    }

    /** Jobs that share a machine or follow one another, directly or through others; each group in list order. */
    private List<List<Integer>> groups(boolean[] plannable) {
        int[] head = new int[jobs.size()];
        Arrays.setAll(head, i -> i);
        Map<Integer, Integer> byMachine = new LinkedHashMap<>();
        for (int i = 0; i < head.length; i++) {
            if (!plannable[i]) {
                continue;
            }
            for (int machine : jobs.get(i).machines()) {
                Integer other = byMachine.putIfAbsent(machine, i);
                if (other != null) {
                    join(head, i, other);
                }
            }
            for (int before : jobs.get(i).after()) {
                join(head, i, before);
            }
        }
        Map<Integer, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < head.length; i++) {
            if (plannable[i]) {
                groups.computeIfAbsent(find(head, i), h -> new ArrayList<>()).add(i);
            }
        }
        return new ArrayList<>(groups.values());
    }

    private static int find(int[] head, int i) {
        int at = i;
        while (head[at] != at) {
            at = head[at];
        }
        return at;
    }

    private static void join(int[] head, int a, int b) {
        int one = find(head, a);
        int other = find(head, b);
        head[Math.max(one, other)] = Math.min(one, other);
    }

    private List<List<Integer>> orders(List<Integer> group) {
        List<List<Integer>> orders = new ArrayList<>();
        if (group.size() <= ALL_ORDERS) {
            permute(group, new ArrayList<>(), orders);
            return orders;
        }
        orders.add(group);
        orders.add(
                sorted(group, Comparator.comparingDouble(i -> known(jobs.get(i).latest()))));
        orders.add(
                sorted(group, Comparator.comparingDouble(i -> known(jobs.get(i).earliest()))));
        return orders;
    }

    private static double known(double day) {
        return Double.isNaN(day) ? Double.MAX_VALUE : day;
    }

    private static List<Integer> sorted(List<Integer> group, Comparator<Integer> by) {
        List<Integer> sorted = new ArrayList<>(group);
        sorted.sort(by);
        return sorted;
    }

    private static void permute(List<Integer> left, List<Integer> begun, List<List<Integer>> all) {
        if (left.isEmpty()) {
            all.add(List.copyOf(begun));
            return;
        }
        for (Integer next : left) {
            List<Integer> rest = new ArrayList<>(left);
            rest.remove(next);
            List<Integer> longer = new ArrayList<>(begun);
            longer.add(next);
            permute(rest, longer, all);
        }
    }

    /** So many of a machine one job takes. */
    public static int taken(Job job, int machine) {
        int taken = 0;
        for (int booked : job.machines()) {
            taken += booked == machine ? 1 : 0;
        }
        return taken;
    }

    /** Places the jobs in this order, each behind those that must be done before it. */
    private Slot[] place(List<Integer> order) {
        Slot[] placed = new Slot[jobs.size()];
        Map<Integer, TakenOverTime> booked = new HashMap<>();
        List<Integer> waiting = new ArrayList<>(order);
        while (!waiting.isEmpty()) {
            Integer next = waiting.stream()
                    .filter(i -> jobs.get(i).after().stream().allMatch(before -> placed[before] != null))
                    .findFirst()
                    .orElseThrow();
            waiting.remove(next);
            Job job = jobs.get(next);
            placed[next] = earliest(job, placed, booked);
            Slot slot = placed[next];
            for (int machine : alike(job)) {
                booked.computeIfAbsent(machine, m -> new TakenOverTime())
                        .take(slot.start(), slot.finish(), taken(job, machine));
            }
        }
        return placed;
    }

    /** What a job books, several alike once. */
    private static Set<Integer> alike(Job job) {
        return new LinkedHashSet<>(job.machines());
    }

    private Slot earliest(Job job, Slot[] placed, Map<Integer, TakenOverTime> booked) {
        double start = ready(job, placed);
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int machine : alike(job)) {
                TakenOverTime before = booked.get(machine);
                double later = before == null ? start : before.free(start, job.days(), left(job, machine));
                moved |= later > start;
                start = later;
            }
        }
        return new Slot(start, start + job.days());
    }

    /** So many of a machine others may have while a job goes on. */
    private int left(Job job, int machine) {
        return Math.max(0, owned.getOrDefault(machine, 1) - taken(job, machine));
    }

    /** When a job could begin if machines were no matter. */
    private static double ready(Job job, Slot[] placed) {
        double start = Double.isNaN(job.earliest()) ? Double.NEGATIVE_INFINITY : job.earliest();
        for (int before : job.after()) {
            start = Math.max(start, placed[before].finish() + job.lag());
        }
        return start;
    }

    /** When each job of a plan could have begun if machines were no matter. */
    public static double[] ready(List<Job> jobs, List<Slot> slots) {
        Slot[] placed = slots.toArray(Slot[]::new);
        return jobs.stream().mapToDouble(job -> ready(job, placed)).toArray();
    }

    /** Days late in all, then the end of all. */
    private double[] score(Slot[] placed, List<Integer> group) {
        double late = 0;
        double end = Double.NEGATIVE_INFINITY;
        for (int i : group) {
            late += daysLate(jobs.get(i), placed[i]);
            end = Math.max(end, placed[i].finish());
        }
        return new double[] {rounded(late), rounded(end)};
    }

    private static double rounded(double x) {
        return Math.rint(x * 1e6) / 1e6;
    }

    /** Whole days after the latest. */
    public static double daysLate(Job job, Slot slot) {
        return Double.isNaN(job.latest()) ? 0 : Math.max(0, slot.lastDay() - job.latest());
    }
}
