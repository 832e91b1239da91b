package org.rickyard.plan;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.season.DayPlan;
import org.rickyard.trade.season.SeasonFit;

/** Makes the tables of the season from the tasks of the job list. */
final class SeasonFamily {
    private static final String NO_WINDOWS = "no job has an earliest or latest day";
    private static final int MOST_DAYS = 120;
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ROOT);
    private static final Symbol SHARE = Symbol.number("share of its days booked", Units.PERCENT)
            .possible(Range.of(0, 100))
            .decimals(0);

    private final PlanContext plan;
    private final ListRows jobs;
    private final ListRows machines;
    private final List<Tasks.Task> tasks;
    private final int[] tractor;

    private SeasonFamily(PlanContext plan, Tasks tasks, WorkRows works) {
        this.plan = plan;
        jobs = plan.rows(Jobs.LIST);
        machines = plan.rows(Machines.LIST);
        boolean windows =
                IntStream.range(0, jobs.size()).anyMatch(job -> given(Jobs.EARLIEST, job) || given(Jobs.LATEST, job));
        this.tasks = windows ? tasks.all() : List.of();
        tractor = this.tasks.stream()
                .mapToInt(task -> task.isGang() ? -1 : works.tractor(task.job(), task.machine()))
                .toArray();
    }

    static void build(PlanContext plan, Tasks tasks, WorkRows works) {
        new SeasonFamily(plan, tasks, works).build();
    }

    private void build() {
        ResultTable season = plan.add(SeasonTables.SEASON, season(), NO_WINDOWS);
        List<Predecessors.Before> before = new Predecessors(jobs, tasks, plan.findings()).all();
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
                            "'" + title(looping)
                                    + "' waits, through the jobs named in After, for itself. Break the loop;"
                                    + " until then none of these jobs is planned."));
        }
        List<DayPlan.Slot> slots = DayPlan.of(planned);
        String[] waits = new String[tasks.size()];
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).planned()) {
                why[i] = "";
                waits[i] = waitsFor(planned, slots, i);
            } else if (why[i] == null || why[i].isEmpty()) {
                why[i] = "a job before it is not planned";
            }
        }
        plan.add(
                SeasonTables.PLAN,
                tasks().with(Role.TRACTOR, machines, tractor)
                        .with(SeasonFit.START, days(slots, true))
                        .with(SeasonFit.FINISH, days(slots, false))
                        .with(SeasonFit.WAITS_FOR, waits)
                        .with(SeasonFit.NOT_PLANNED, why),
                NO_WINDOWS);
        chart(planned, slots);
    }

    private RowSources tasks() {
        return new RowSources(tasks.size())
                .with(Role.JOB, jobs, tasks.stream().mapToInt(Tasks.Task::job).toArray())
                .with(
                        Role.MACHINE,
                        machines,
                        tasks.stream().mapToInt(Tasks.Task::machine).toArray())
                .with(Keys.TASK_KEY, tasks.stream().mapToInt(Tasks.Task::key).toArray());
    }

    private RowSources season() {
        return tasks().with(
                        Role.LEAD,
                        machines,
                        tasks.stream()
                                .mapToInt(t -> t.isGang() && !t.machines().isEmpty()
                                        ? t.machines().get(0)
                                        : -1)
                                .toArray())
                .with(
                        Keys.GANG_KEY,
                        tasks.stream().mapToInt(t -> t.isGang() ? 1 : 0).toArray())
                .with(
                        SeasonFit.ALIKE,
                        tasks.stream().mapToDouble(Tasks.Task::alike).toArray());
    }

    private DayPlan.Job job(ResultTable season, int task, Predecessors.Before before) {
        double share = value(season, Quantities.WORKABLE_DAYS, task) / 100;
        List<Integer> booked = new ArrayList<>(tasks.get(task).machines());
        if (tractor[task] >= 0) {
            booked.add(tractor[task]);
        }
        double latest = value(season, Quantities.LATEST, task);
        double earliest = value(season, Quantities.EARLIEST, task);
        boolean backwards = latest < earliest;
        return new DayPlan.Job(
                before.unknown() || backwards ? Double.NaN : value(season, SeasonFit.NEEDED, task) / share,
                earliest,
                latest,
                booked.stream().distinct().toList(),
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
            return "its window ends before it starts";
        }
        if (!season.of(Quantities.WORKABLE_DAYS).has(task)) {
            return "its workable days are missing or not usable";
        }
        if (!season.of(SeasonFit.NEEDED).has(task)) {
            return "its days needed are withheld; see Season";
        }
        boolean begins =
                season.of(Quantities.EARLIEST).has(task) || !before.tasks().isEmpty();
        return begins ? "" : "its earliest day is missing";
    }

    /** The job that keeps a machine or tractor away, if one does. */
    private String waitsFor(List<DayPlan.Job> planned, List<DayPlan.Slot> slots, int task) {
        double ready = DayPlan.ready(planned, slots, task);
        double start = slots.get(task).start();
        if (start <= ready + 1e-6) {
            return "";
        }
        for (int other = 0; other < slots.size(); other++) {
            if (other == task || Math.abs(slots.get(other).finish() - start) > 1e-6) {
                continue;
            }
            for (int machine : planned.get(task).machines()) {
                if (planned.get(other).machines().contains(machine)) {
                    String name = machines.text(Machines.MACHINE, machine);
                    plan.findings()
                            .add(Finding.caution(
                                    jobs.address(Jobs.JOB, tasks.get(task).job())
                                            .or(() -> jobs.address(
                                                    Jobs.FIELD, tasks.get(task).job()))
                                            .orElse(null),
                                    "'" + title(task) + "' and '" + title(other) + "' both want '" + name
                                            + "' on the same days; the plan does one after the other."));
                    return name + ", at " + title(other);
                }
            }
        }
        return "";
    }

    private String title(int task) {
        String job = jobs.text(Jobs.JOB, tasks.get(task).job());
        String operation = jobs.text(Jobs.OPERATION, tasks.get(task).job());
        String name = job.isEmpty() ? operation : job;
        return tasks.get(task).isGang()
                ? name
                : name + " (" + machines.text(Machines.MACHINE, tasks.get(task).machine()) + ")";
    }

    private static double[] days(List<DayPlan.Slot> slots, boolean first) {
        return slots.stream()
                .mapToDouble(s -> !s.planned() ? Double.NaN : first ? s.firstDay() : s.lastDay())
                .toArray();
    }

    private void chart(List<DayPlan.Job> planned, List<DayPlan.Slot> slots) {
        Map<Integer, List<Integer>> byMachine = new TreeMap<>();
        double from = Double.MAX_VALUE;
        double to = -Double.MAX_VALUE;
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).planned()) {
                from = Math.min(from, slots.get(i).firstDay());
                to = Math.max(to, slots.get(i).lastDay());
                for (int machine : planned.get(i).machines()) {
                    byMachine.computeIfAbsent(machine, m -> new ArrayList<>()).add(i);
                }
            }
        }
        int count = byMachine.isEmpty() ? 0 : (int) Math.min(MOST_DAYS, to - from + 1);
        if (!byMachine.isEmpty() && to - from + 1 > MOST_DAYS) {
            plan.findings()
                    .add(Finding.note(
                            null,
                            "the time chart shows the first " + MOST_DAYS
                                    + " days of the plan; 'Day plan' has them all."));
        }
        List<Symbol> symbols = new ArrayList<>();
        for (int day = 0; day < count; day++) {
            symbols.add(Symbol.text(DAY_ZERO.plusDays((long) from + day).format(DAY)));
        }
        int[] rows = byMachine.keySet().stream().mapToInt(Integer::intValue).toArray();
        RowSources sources = new RowSources(rows.length).with(Role.MACHINE, machines, rows);
        double[] share = new double[rows.length];
        for (int day = 0; day < count; day++) {
            String[] cells = new String[rows.length];
            for (int row = 0; row < rows.length; row++) {
                cells[row] = at(byMachine.get(rows[row]), slots, from + day);
            }
            sources.with(symbols.get(day), cells);
        }
        for (int row = 0; row < rows.length; row++) {
            double booked = byMachine.get(rows[row]).stream()
                    .mapToDouble(i -> slots.get(i).finish() - slots.get(i).start())
                    .sum();
            share[row] = 100 * booked / (to - from + 1);
        }
        plan.add(SeasonTables.chart(symbols, SHARE), sources.with(SHARE, share), "no job is planned");
    }

    private String at(List<Integer> booked, List<DayPlan.Slot> slots, double day) {
        List<String> keys = new ArrayList<>();
        for (int task : booked) {
            DayPlan.Slot slot = slots.get(task);
            if (slot.firstDay() <= day && day <= slot.lastDay()) {
                keys.add(Integer.toString(tasks.get(task).key()));
            }
        }
        return String.join("+", keys);
    }

    private boolean given(ColumnSpec column, int job) {
        ListRows.State state = jobs.state(column, job);
        return state != ListRows.State.NO_COLUMN && state != ListRows.State.BLANK;
    }
}
