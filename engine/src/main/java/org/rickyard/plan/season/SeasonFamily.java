package org.rickyard.plan.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.workrate.Tasks;
import org.rickyard.plan.workrate.WorkRows;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.season.DayPlan;
import org.rickyard.trade.season.SeasonFit;

/** Makes the tables of the season from the tasks of the job list. */
public final class SeasonFamily {
    private static final String NO_WINDOWS =
            "no job has a latest day, or an earliest one beside hours or workable days";

    private final PlanContext plan;
    private final ListRows jobs;
    private final ListRows machines;
    private final Tasks all;
    private final List<Tasks.Task> tasks;
    private final int[] tractor;
    private final List<List<Integer>> booked = new ArrayList<>();

    private SeasonFamily(PlanContext plan, Tasks tasks, WorkRows works) {
        this.plan = plan;
        jobs = plan.rows(Jobs.LIST);
        machines = plan.rows(Machines.LIST);
        all = tasks;
        this.tasks = hasWindows() ? tasks.all() : List.of();
        tractor = this.tasks.stream()
                .mapToInt(task -> task.isGang() ? -1 : works.tractor(task.job(), task.machine()))
                .toArray();
        for (Tasks.Task task : this.tasks) {
            Map<Integer, Integer> before = new HashMap<>();
            task.machines().forEach(m -> before.computeIfAbsent(m, machine -> works.tractor(task.job(), machine)));
            booked.add(Stream.concat(
                            task.machines().stream(), task.machines().stream().map(before::get))
                    .filter(machine -> machine >= 0)
                    .toList());
        }
    }

    /** How many there are of each machine and tractor that is booked, where that is typed. */
    private Map<Integer, Integer> owned() {
        return booked.stream()
                .flatMap(List::stream)
                .distinct()
                .filter(machine -> machines.state(Machines.NUMBER, machine) == ListRows.State.GIVEN)
                .collect(Collectors.toMap(m -> m, m -> (int) machines.number(Machines.NUMBER, m)));
    }

    /**
     * Whether there is a season to fit work into. The day of a job by itself is none: a spray list that says when each
     * job is done asks no question of hours, deadlines and days fit for work.
     */
    private boolean hasWindows() {
        boolean asked = jobs.has(Jobs.LATEST)
                || jobs.has(Jobs.WORKABLE_DAYS)
                || jobs.has(Jobs.HOURS_PER_DAY)
                || machines.has(Machines.HOURS_PER_DAY);
        return IntStream.range(0, jobs.size())
                .anyMatch(job -> jobs.isFilled(Jobs.LATEST, job)
                        || jobs.isFilled(Jobs.DAYS_AVAILABLE, job)
                        || asked && jobs.isFilled(Jobs.EARLIEST, job));
    }

    /** Makes them, for these tasks; the tables of work rates and gangs must have been made before. */
    public static void build(PlanContext plan, Tasks tasks, WorkRows works) {
        new SeasonFamily(plan, tasks, works).build();
    }

    private void build() {
        List<Predecessors.Before> before = new Predecessors(jobs, tasks, plan.findings()).all();
        int[] together = together(before);
        ResultTable season =
                plan.add(all.fields().in(SeasonTables.SEASON), season().with(Keys.PLAN_KEY, together), NO_WINDOWS);
        List<DayPlan.Job> planned = new ArrayList<>();
        String[] why = new String[tasks.size()];
        for (int i = 0; i < tasks.size(); i++) {
            planned.add(job(season, i, before.get(i)));
            why[i] = why(season, i, before.get(i));
        }
        for (int looping : DayPlan.loops(planned)) {
            why[looping] = "it waits, through the jobs before it, for itself";
            plan.findings()
                    .add(Finding.stop(
                            jobs.address(Jobs.AFTER, tasks.get(looping).job()).orElse(null),
                            "'" + all.title(tasks.get(looping))
                                    + "' waits, through the jobs named in After, for itself. Break the loop;"
                                    + " until then none of these jobs is planned."));
        }
        Map<Integer, Integer> owned = owned();
        List<DayPlan.Slot> slots = DayPlan.of(planned, owned);
        SeasonBookings bookings = new SeasonBookings(plan, all, tasks, planned, slots, owned);
        String[] waits = new String[tasks.size()];
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).planned()) {
                why[i] = "";
                waits[i] = bookings.waitsFor(i);
            } else if (why[i] == null || why[i].isEmpty()) {
                why[i] = "a job before it is not planned";
            }
        }
        plan.add(
                all.fields().in(SeasonTables.PLAN),
                tasks().with(Role.LEAD, machines, leads())
                        .with(Role.TRACTOR, machines, tractor)
                        .with(SeasonFit.START, days(slots, true))
                        .with(SeasonFit.FINISH, days(slots, false))
                        .withRecord(
                                SeasonFit.PLANNED_WITH,
                                IntStream.range(0, tasks.size())
                                        .mapToDouble(task -> value(season, SeasonFit.CALENDAR, task))
                                        .toArray())
                        .with(Keys.PLAN_KEY, together)
                        .withRecord(SeasonFit.PLANNED_TOGETHER, daysTogether(season, together))
                        .with(SeasonFit.WAITS_FOR, waits)
                        .with(SeasonFit.NOT_PLANNED, why),
                NO_WINDOWS);
        bookings.build(NO_WINDOWS);
    }

    /** The number of each task's plan: those that share a machine or wait for one another, through others too, have one. */
    private int[] together(List<Predecessors.Before> before) {
        int[] first = IntStream.range(0, tasks.size()).toArray();
        Map<Integer, Integer> booking = new HashMap<>();
        for (int task = 0; task < first.length; task++) {
            for (int machine : booked.get(task)) {
                Integer other = booking.putIfAbsent(machine, task);
                join(first, task, other == null ? task : other);
            }
            for (int earlier : before.get(task).tasks()) {
                join(first, task, earlier);
            }
        }
        return IntStream.range(0, first.length)
                .map(task -> first(first, task) + 1)
                .toArray();
    }

    private static double[] daysTogether(ResultTable season, int[] together) {
        double[] sums = new double[together.length + 1];
        for (int task = 0; task < together.length; task++) {
            double days = value(season, SeasonFit.CALENDAR, task);
            sums[together[task]] += Double.isNaN(days) ? 0 : days;
        }
        return Arrays.stream(together).mapToDouble(plan -> sums[plan]).toArray();
    }

    private static void join(int[] first, int one, int other) {
        int a = first(first, one);
        int b = first(first, other);
        first[Math.max(a, b)] = Math.min(a, b);
    }

    private static int first(int[] first, int task) {
        int at = task;
        while (first[at] != at) {
            first[at] = first[first[at]];
            at = first[at];
        }
        return at;
    }

    /** The machine that leads a gang; -1 for a machine by itself. */
    private int[] leads() {
        return tasks.stream()
                .mapToInt(t ->
                        t.isGang() && !t.machines().isEmpty() ? t.machines().get(0) : -1)
                .toArray();
    }

    private RowSources tasks() {
        int[] keys = tasks.stream().mapToInt(Tasks.Task::key).toArray();
        return new RowSources(tasks.size())
                .with(Role.JOB, jobs, tasks.stream().mapToInt(Tasks.Task::job).toArray())
                .with(Role.FIELD, plan.rows(Fields.LIST), all.fields().ofOneHolding(keys))
                .with(Quantities.FIELDS_OF_JOB, all.fields().named(keys))
                .with(
                        Role.MACHINE,
                        machines,
                        tasks.stream().mapToInt(Tasks.Task::machine).toArray())
                .with(Keys.TASK_KEY, keys);
    }

    private RowSources season() {
        return tasks().with(Role.LEAD, machines, leads())
                .with(
                        Keys.GANG_KEY,
                        tasks.stream().mapToInt(t -> t.isGang() ? 1 : 0).toArray())
                .with(
                        SeasonFit.ALIKE,
                        tasks.stream().mapToDouble(Tasks.Task::alike).toArray());
    }

    private DayPlan.Job job(ResultTable season, int task, Predecessors.Before before) {
        double latest = value(season, Quantities.LATEST, task);
        double earliest = value(season, Quantities.EARLIEST, task);
        boolean backwards = latest < earliest;
        return new DayPlan.Job(
                before.unknown() || backwards ? Double.NaN : value(season, SeasonFit.CALENDAR, task),
                earliest,
                latest,
                booked.get(task),
                before.tasks(),
                before.lag());
    }

    private static double value(ResultTable table, Symbol symbol, int row) {
        Values values = table.of(symbol);
        return values.has(row) ? values.number(row) : Double.NaN;
    }

    private String why(ResultTable season, int task, Predecessors.Before before) {
        if (before.unknown()) {
            return "the job it comes after is not in the job list";
        }
        if (value(season, Quantities.LATEST, task) < value(season, Quantities.EARLIEST, task)) {
            return "the job's window ends before it starts";
        }
        if (!season.of(SeasonFit.NEEDED).has(task)) {
            return "the days the job needs are withheld; see Season";
        }
        if (!season.of(SeasonFit.CALENDAR).has(task)) {
            return "the job's workable days are missing or not usable";
        }
        boolean begins =
                season.of(Quantities.EARLIEST).has(task) || !before.tasks().isEmpty();
        return begins ? "" : "the job's earliest day is missing";
    }

    private static double[] days(List<DayPlan.Slot> slots, boolean first) {
        return slots.stream()
                .mapToDouble(s -> !s.planned() ? Double.NaN : first ? s.firstDay() : s.lastDay())
                .toArray();
    }
}
