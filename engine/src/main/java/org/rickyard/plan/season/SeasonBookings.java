package org.rickyard.plan.season;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import org.rickyard.formula.Days;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.workrate.Tasks;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.season.DayPlan;
import org.rickyard.trade.season.MachineSeason;
import org.rickyard.trade.season.TakenOverTime;

/** What the plan of days means for each machine and tractor: bookings, double bookings, its season, the chart. */
final class SeasonBookings {
    private static final int MOST_DAYS = 120;
    private static final double A_MOMENT = 1e-6;
    private static final DateTimeFormatter CHART_DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    /** So many jobs are named of those that want a machine too; of a contractor's mower there may be hundreds. */
    private static final int MOST_NAMED = 5;
    /** So many pairs of jobs are told of a machine. */
    private static final int MOST_PAIRS = 10;

    /** One task's hold on one machine or tractor. */
    private record Booking(int task, int machine) {}

    private final PlanContext plan;
    private final ListRows jobs;
    private final ListRows machines;
    private final Tasks all;
    private final List<Tasks.Task> tasks;
    private final List<DayPlan.Job> planned;
    private final List<DayPlan.Slot> slots;
    private final List<Booking> bookings = new ArrayList<>();
    private final Map<Integer, List<Integer>> byMachine = new TreeMap<>();
    /** Of each task when it could begin if machines were no matter. */
    private final double[] wished;

    /** How many there are of a machine, where that is typed. */
    private final Map<Integer, Integer> owned;

    SeasonBookings(
            PlanContext plan,
            Tasks all,
            List<Tasks.Task> tasks,
            List<DayPlan.Job> planned,
            List<DayPlan.Slot> slots,
            Map<Integer, Integer> owned) {
        this.plan = plan;
        this.all = all;
        this.tasks = tasks;
        this.planned = planned;
        this.slots = slots;
        this.owned = owned;
        jobs = plan.rows(Jobs.LIST);
        machines = plan.rows(Machines.LIST);
        wished = DayPlan.ready(planned, slots);
        for (int task = 0; task < planned.size(); task++) {
            for (int machine : planned.get(task).machines().stream().distinct().toList()) {
                bookings.add(new Booking(task, machine));
                byMachine.computeIfAbsent(machine, m -> new ArrayList<>()).add(task);
            }
        }
    }

    /** The job that has a machine or tractor when a job could begin, if one does. */
    String waitsFor(int task) {
        double start = slots.get(task).start();
        if (start <= wished[task] + A_MOMENT) {
            return "";
        }
        for (int other = 0; other < slots.size(); other++) {
            if (other == task || Math.abs(slots.get(other).finish() - start) > A_MOMENT) {
                continue;
            }
            for (int machine : planned.get(task).machines()) {
                if (planned.get(other).machines().contains(machine)) {
                    return name(machine) + ", at " + title(other);
                }
            }
        }
        return "";
    }

    void build(String none) {
        int[] keys = ints(bookings.stream().map(b -> tasks.get(b.task()).key()).toList());
        plan.add(
                all.fields().in(SeasonTables.BOOKINGS),
                new RowSources(bookings.size())
                        .with(
                                Role.JOB,
                                jobs,
                                ints(bookings.stream()
                                        .map(b -> tasks.get(b.task()).job())
                                        .toList()))
                        .with(
                                Role.MACHINE,
                                machines,
                                ints(bookings.stream().map(Booking::machine).toList()))
                        .with(Role.FIELD, plan.rows(Fields.LIST), all.fields().ofOneHolding(keys))
                        .with(Quantities.FIELDS_OF_JOB, all.fields().named(keys))
                        .with(Keys.TASK_KEY, keys)
                        .with(
                                Keys.MACHINE_KEY,
                                ints(bookings.stream().map(b -> b.machine() + 1).toList()))
                        .with(MachineSeason.ALSO_WANTED, alsoWanted())
                        .withRecord(
                                MachineSeason.SHARE_TAKEN,
                                bookings.stream().mapToDouble(this::shareTaken).toArray()),
                none);
        List<Integer> rows = new ArrayList<>(byMachine.keySet());
        plan.add(
                SeasonTables.MACHINE_SEASON,
                new RowSources(rows.size())
                        .with(Role.MACHINE, machines, ints(rows))
                        .with(
                                Keys.MACHINE_KEY,
                                ints(rows.stream().map(m -> m + 1).toList()))
                        .with(MachineSeason.FIRST, ends(rows, true))
                        .with(MachineSeason.LAST, ends(rows, false)),
                none);
        chart();
    }

    /** None where how many there are was typed but cannot be read: one is taken for a blank alone. */
    private double shareTaken(Booking booking) {
        if (machines.isFilled(Machines.NUMBER, booking.machine()) && !owned.containsKey(booking.machine())) {
            return Double.NaN;
        }
        int taken = DayPlan.taken(planned.get(booking.task()), booking.machine());
        return 100.0 * taken / Math.max(taken, owned.getOrDefault(booking.machine(), 1));
    }

    /** Of each booking the other jobs that want the same machine on days on which this one could be done. */
    private String[] alsoWanted() {
        String[] wanted = new String[bookings.size()];
        Map<Integer, Integer> pairs = new TreeMap<>();
        Map<Integer, NavigableMap<Double, Double>> tooFew = new HashMap<>();
        for (int row = 0; row < wanted.length; row++) {
            Booking booking = bookings.get(row);
            List<String> others = new ArrayList<>();
            int more = 0;
            NavigableMap<Double, Double> when = tooFew.computeIfAbsent(booking.machine(), this::tooFew);
            for (int other : byMachine.get(booking.machine())) {
                if (other == booking.task() || !crowded(booking.task(), other, booking.machine(), when)) {
                    continue;
                }
                if (others.size() < MOST_NAMED) {
                    others.add(title(other) + ", " + days(booking.task(), other));
                } else {
                    more++;
                }
                if (booking.task() < other && pairs.merge(booking.machine(), 1, Integer::sum) <= MOST_PAIRS) {
                    caution(booking.task(), other, booking.machine());
                }
            }
            wanted[row] = String.join("; ", others) + (more > 0 ? "; and " + Counted.more(more, "job") : "");
        }
        pairs.forEach(this::tellMore);
        return wanted;
    }

    private void caution(int task, int other, int machine) {
        int job = tasks.get(other).job();
        CellAddress cell = jobs.address(Jobs.JOB, job)
                .or(() -> jobs.address(Jobs.FIELD, job))
                .orElse(null);
        plan.findings()
                .add(Finding.caution(
                        cell,
                        "'" + title(task) + "' and '" + title(other) + "' both want '" + name(machine)
                                + "' on the same days (" + days(task, other) + ")"
                                + (owned.getOrDefault(machine, 1) > 1
                                        ? ", with what others take of it, and there are only " + owned.get(machine)
                                        : "")
                                + "; the plan does one after the other."
                                + " Name another machine or tractor in one of them, or move a window."
                                + (owned.containsKey(machine)
                                        ? ""
                                        : " If there are several, type how many in Number.")));
    }

    private void tellMore(int machine, int pairs) {
        if (pairs > MOST_PAIRS) {
            plan.findings()
                    .add(Finding.caution(
                            machines.address(Machines.MACHINE, machine).orElse(null),
                            Counted.more(pairs - MOST_PAIRS, "pair") + " of jobs want '" + name(machine)
                                    + "' on the same days; the column double booking of 'Bookings' has them."));
        }
    }

    private boolean overlap(int one, int other) {
        return slots.get(one).planned()
                && slots.get(other).planned()
                && wished[one] + planned.get(one).days() > wished[other] + A_MOMENT
                && wished[other] + planned.get(other).days() > wished[one] + A_MOMENT;
    }

    /** Whether two jobs, with others that want a machine at the same time, want more of it than there are. */
    private boolean crowded(int one, int other, int machine, NavigableMap<Double, Double> tooFew) {
        if (!overlap(one, other)) {
            return false;
        }
        int ofOne = DayPlan.taken(planned.get(one), machine);
        int ofOther = DayPlan.taken(planned.get(other), machine);
        int there = Math.max(Math.max(ofOne, ofOther), owned.getOrDefault(machine, 1));
        Map.Entry<Double, Double> last = tooFew.lowerEntry(last(one, other) - A_MOMENT);
        return ofOne + ofOther > there || last != null && last.getValue() > first(one, other) + A_MOMENT;
    }

    /** When more of a machine are wanted than there are, if each job were done when it would be. */
    private NavigableMap<Double, Double> tooFew(int machine) {
        TakenOverTime wanted = new TakenOverTime();
        for (int task : byMachine.get(machine)) {
            if (slots.get(task).planned()) {
                DayPlan.Job job = planned.get(task);
                wanted.take(wished[task], wished[task] + job.days(), DayPlan.taken(job, machine));
            }
        }
        return wanted.above(owned.getOrDefault(machine, 1));
    }

    private double first(int one, int other) {
        return Math.max(wished[one], wished[other]);
    }

    private double last(int one, int other) {
        return Math.min(
                wished[one] + planned.get(one).days(),
                wished[other] + planned.get(other).days());
    }

    private String days(int one, int other) {
        DayPlan.Slot both = new DayPlan.Slot(first(one, other), last(one, other));
        String first = date(both.firstDay()).format(DAY);
        String last = date(both.lastDay()).format(DAY);
        return first.equals(last) ? first : first + " to " + last;
    }

    /** The first or last day on which any job of a machine may be done. */
    private double[] ends(List<Integer> rows, boolean first) {
        return rows.stream()
                .mapToDouble(machine -> {
                    double end = Double.NaN;
                    for (int task : byMachine.get(machine)) {
                        double typed = first
                                ? planned.get(task).earliest()
                                : planned.get(task).latest();
                        double day = !Double.isNaN(typed) || !slots.get(task).planned()
                                ? typed
                                : first
                                        ? slots.get(task).firstDay()
                                        : slots.get(task).lastDay();
                        boolean further = Double.isNaN(end) || (first ? day < end : day > end);
                        end = further ? day : end;
                    }
                    return end;
                })
                .toArray();
    }

    private void chart() {
        // Weeks between two jobs would push the second off the chart.
        double[] worked = slots.stream()
                .filter(DayPlan.Slot::planned)
                .flatMapToDouble(
                        slot -> DoubleStream.iterate(slot.firstDay(), day -> day <= slot.lastDay(), day -> day + 1))
                .sorted()
                .distinct()
                .toArray();
        int count = Math.min(MOST_DAYS, worked.length);
        if (worked.length > MOST_DAYS) {
            plan.findings()
                    .add(Finding.note(
                            null,
                            "the time chart shows the first " + MOST_DAYS + " days of work; 'Day plan' has them all."));
        }
        List<Symbol> symbols = new ArrayList<>();
        int[] rows = byMachine.keySet().stream()
                .filter(machine -> byMachine.get(machine).stream()
                        .anyMatch(task -> slots.get(task).planned()))
                .mapToInt(Integer::intValue)
                .toArray();
        RowSources sources = new RowSources(rows.length).with(Role.MACHINE, machines, rows);
        for (int day = 0; day < count; day++) {
            Symbol symbol = Symbol.text(date(worked[day]).format(CHART_DAY));
            String[] cells = new String[rows.length];
            for (int row = 0; row < rows.length; row++) {
                cells[row] = at(byMachine.get(rows[row]), worked[day]);
            }
            symbols.add(symbol);
            sources.with(symbol, cells);
        }
        plan.add(SeasonTables.chart(symbols), sources, "no job is planned");
    }

    private String at(List<Integer> booked, double day) {
        List<String> names = new ArrayList<>();
        for (int task : booked) {
            DayPlan.Slot slot = slots.get(task);
            if (slot.planned() && slot.firstDay() <= day && day <= slot.lastDay()) {
                String name = all.name(tasks.get(task));
                names.add(day > planned.get(task).latest() ? "late! " + name : name);
            }
        }
        return String.join(" + ", names.stream().distinct().toList());
    }

    private LocalDate date(double serial) {
        return Days.of(serial, plan.lists().dayZero());
    }

    private String title(int task) {
        return all.title(tasks.get(task));
    }

    private String name(int machine) {
        return machines.text(Machines.MACHINE, machine);
    }

    private static int[] ints(List<Integer> numbers) {
        return numbers.stream().mapToInt(Integer::intValue).toArray();
    }
}
