package org.rickyard.plan.workrate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.text.MachineMention;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.FieldsWorked;
import org.rickyard.plan.join.JobIdentity;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.MachineChoice;
import org.rickyard.plan.join.TupleNumbers;

/**
 * The tasks a season is made of: one machine's work for one job, or the work of a whole gang. Mowing, tedding and raking
 * of a gang's job are tasks of their own.
 */
public final class Tasks {
    /**
     * A task.
     *
     * @param key its number from 1
     * @param job its first job row
     * @param machine the machine, or -1 for a gang
     * @param machines all machines it takes; of several alike each stands there once
     * @param alike how many alike work side by side
     * @param order its place among the stages of a gang's job; 0 outside one
     */
    public record Task(int key, int job, int machine, List<Integer> machines, int alike, int order) {
        /** Whether a gang does it. */
        public boolean isGang() {
            return machine < 0;
        }
    }

    private record Work(String job, int machine) {}

    private final ListRows jobs;
    private final ListRows machines;
    private final GangRows gangs;
    private final MachineChoice choice;
    private final Map<Work, List<Task>> byWork = new HashMap<>();
    private final List<Task> all = new ArrayList<>();
    private final int[] taskOfLine;
    /** Of each job row that is a gang's, the gang on its first field. */
    private final Map<Integer, GangRows.Gang> firstGangs = new HashMap<>();
    /** Jobs by number, and the lines by the number of their job, their field and machine. */
    private final Map<String, Integer> jobNumbers = new HashMap<>();

    private final TupleNumbers places = new TupleNumbers(3);
    private int[] lineAt = new int[16];
    private final JobIdentity identity;
    private final FieldsWorked fields;

    Tasks(PlanContext plan, List<JobLines.Line> lines, GangRows gangs) {
        this.jobs = plan.rows(Jobs.LIST);
        this.machines = plan.rows(Machines.LIST);
        this.gangs = gangs;
        this.identity = new JobIdentity(jobs, plan.rows(Fields.LIST));
        this.fields = new FieldsWorked(jobs, plan.rows(Fields.LIST));
        this.choice = new MachineChoice(machines, plan.findings());
        gangs.gangs().forEach(gang -> firstGangs.putIfAbsent(gang.job(), gang));
        taskOfLine = new int[lines.size()];
        for (int line = 0; line < taskOfLine.length; line++) {
            JobLines.Line at = lines.get(line);
            if (at.job() < 0) {
                continue;
            }
            place(at, line + 1);
            GangRows.Gang gang = gangs.isGang(at.job()) ? gangOf(at.job()) : null;
            boolean inGang = gang != null && coupled(at.machine());
            if (inGang) {
                taskOfLine[line] = 0;
                gangTask(at.job());
            } else {
                taskOfLine[line] = task(at.job(), at.machine()).key();
                fields.add(taskOfLine[line], at.job(), at.field());
            }
        }
        gangs.gangs().forEach(gang -> fields.add(gangTask(gang.job()), gang.job(), gang.field()));
    }

    private void place(JobLines.Line at, int line) {
        String name = identity.key(at.job());
        Integer known = jobNumbers.putIfAbsent(name, jobNumbers.size());
        int place = places.of(known == null ? jobNumbers.size() - 1 : known, at.field(), at.machine());
        if (place >= lineAt.length) {
            lineAt = Arrays.copyOf(lineAt, 2 * place);
        }
        lineAt[place] = line;
    }

    private boolean coupled(int machine) {
        var stage = GangRows.stage(machines.text(Machines.TYPE, machine));
        return stage != null && stage.coupled();
    }

    private GangRows.Gang gangOf(int job) {
        return firstGangs.get(job);
    }

    private Task task(int job, int machine) {
        return of(new Work(identity.key(job), machine), job, key -> {
            int alike = alike(job, machine);
            return new Task(key, job, machine, Collections.nCopies(alike, machine), alike, order(machine));
        });
    }

    /** The task of a work in the days that a job row tells; rows of one job in other days are another task. */
    private Task of(Work work, int job, IntFunction<Task> made) {
        List<Task> known = byWork.computeIfAbsent(work, any -> new ArrayList<>(1));
        for (Task task : known) {
            if (agree(Jobs.EARLIEST, task.job(), job) && agree(Jobs.LATEST, task.job(), job)) {
                return task;
            }
        }
        Task task = made.apply(all.size() + 1);
        known.add(task);
        all.add(task);
        return task;
    }

    /** Whether two rows tell the same day; a blank says the same as the other. */
    private boolean agree(ColumnSpec day, int one, int other) {
        return one == other
                || !jobs.gives(day, one)
                || !jobs.gives(day, other)
                || jobs.number(day, one) == jobs.number(day, other);
    }

    private int order(int machine) {
        var stage = GangRows.stage(machines.text(Machines.TYPE, machine));
        return stage == null ? 0 : stage.code();
    }

    private int alike(int job, int machine) {
        String name = NameKey.key(machines.text(Machines.MACHINE, machine));
        // Named twice, it is two: "Mower; Mower".
        int alike = choice.named(jobs, job).stream()
                .filter(mention -> NameKey.key(mention.name()).equals(name))
                .mapToInt(MachineMention::count)
                .sum();
        return Math.max(1, alike);
    }

    /** The number of the task of a gang's job row; rows of one job with the same machines are one task. */
    int gangTask(int job) {
        GangRows.Gang gang = gangOf(job);
        String who = gang == null ? "" : gang.members().toString();
        return of(new Work("gang " + who + ' ' + identity.key(job), -1), job, key -> {
                    List<Integer> all = new ArrayList<>();
                    if (gang != null) {
                        gang.members().stream()
                                .filter(m -> m.stage().coupled())
                                .forEach(m -> all.addAll(Collections.nCopies(m.alike(), m.machine())));
                    }
                    return new Task(key, job, -1, List.copyOf(all), 1, Integer.MAX_VALUE);
                })
                .key();
    }

    /** All tasks in order. */
    public List<Task> all() {
        return all;
    }

    /** The fields of each task, by its key. */
    public FieldsWorked fields() {
        return fields;
    }

    /** A task by the job's name, or else by its operation and fields: "mowing of North 40". */
    public String name(Task task) {
        String named = jobs.text(Jobs.JOB, task.job());
        String worked = fields.named(task.key());
        return !named.isEmpty()
                ? named
                : jobs.text(Jobs.OPERATION, task.job()) + (worked.isEmpty() ? "" : " of " + worked);
    }

    /** The same with the machine, unless a gang does it. */
    public String title(Task task) {
        return task.isGang() ? name(task) : name(task) + " (" + machines.text(Machines.MACHINE, task.machine()) + ")";
    }

    /** The task of a line of the work rates; 0 if its gang's task holds it, or there are no jobs. */
    int[] ofLines() {
        return taskOfLine;
    }

    /** The number of the line of a job, field and machine in the work rates; 0 if there is none. */
    int line(int job, int field, int machine) {
        Integer known = machine < 0 ? null : jobNumbers.get(identity.key(job));
        int place = known == null ? -1 : places.find(known, field, machine);
        return place < 0 ? 0 : lineAt[place];
    }

    /** The gang stage key of each line; 0 where no gang works. */
    int[] stageKeys(List<JobLines.Line> lines) {
        int[] keys = new int[lines.size()];
        for (GangRows.Gang gang : gangs.gangs()) {
            for (GangRows.Member member : gang.members()) {
                int line = line(gang.job(), gang.field(), member.machine());
                if (line > 0) {
                    keys[line - 1] = gang.stageKey(member.stage());
                }
            }
        }
        return keys;
    }
}
