package org.rickyard.plan.workrate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.text.MachineMention;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.KindsOfMachines;

/** Every machine at work on every field, gang members included, with the tractor that pulls it. */
public final class WorkRows {
    /**
     * One machine's work on one field.
     *
     * @param tractor its tractor's row, or -1
     * @param alike how many alike
     * @param line its line in the work rates, 0 if none
     * @param gang the gang it belongs to, 0 if none
     */
    public record Work(int job, int field, int machine, int tractor, int alike, int line, int gang) {}

    private static final MachineMention NONE = new MachineMention("", 1);

    private final ListRows jobs;
    private final ListRows machines;
    private final NameKey names;
    private final KindsOfMachines kinds;
    private final List<Finding> findings;
    private final List<Work> works = new ArrayList<>();
    /** The same in the order in which they are shown, made when first asked. */
    private List<Work> ordered;

    private List<MachineMention> mentions = List.of();
    private int mentionsOf = -1;
    /** Jobs and machines of which it is said that there are not so many. */
    private final Set<Long> told = new HashSet<>();
    /** Machines of which it is said that there are more than a job names. */
    private final Set<Integer> toldOfMore = new HashSet<>();

    WorkRows(PlanContext plan, List<JobLines.Line> lines, GangRows gangs, KindsOfMachines kinds) {
        jobs = plan.rows(Jobs.LIST);
        machines = plan.rows(Machines.LIST);
        findings = plan.findings();
        names = NameKey.of(machines, Machines.MACHINE);
        this.kinds = kinds;
        Map<Long, GangRows.Gang> gangAt = new HashMap<>();
        gangs.gangs().forEach(gang -> gangAt.put((long) gang.job() << 32 | gang.field(), gang));
        for (int line = 0; line < lines.size(); line++) {
            JobLines.Line at = lines.get(line);
            if (at.job() < 0) {
                continue;
            }
            GangRows.Gang gang = gangAt.get((long) at.job() << 32 | at.field());
            var stage = GangRows.stage(machines.text(Machines.TYPE, at.machine()));
            boolean together = gang != null && stage != null && stage.coupled();
            int alike = together ? alike(gang, at.machine()) : alike(at.job(), at.machine());
            if (gang == null) {
                checkOwned(at.job(), at.machine(), alike);
            }
            works.add(new Work(
                    at.job(),
                    at.field(),
                    at.machine(),
                    tractor(at.job(), at.machine()),
                    alike,
                    line + 1,
                    together ? gang.key() : 0));
        }
        Set<Long> listed = new HashSet<>();
        works.forEach(work -> listed.add((long) work.gang() << 32 | work.machine()));
        for (GangRows.Gang gang : gangs.gangs()) {
            for (GangRows.Member member : gang.members()) {
                if (member.stage().coupled() && listed.add((long) gang.key() << 32 | member.machine())) {
                    works.add(new Work(
                            gang.job(),
                            gang.field(),
                            member.machine(),
                            tractor(gang.job(), member.machine()),
                            alike(gang, member.machine()),
                            0,
                            gang.key()));
                }
            }
        }
        sharedTractors();
    }

    /** What works together wants a tractor each; told once of each job and tractor, with the machines before which it is. */
    private void sharedTractors() {
        Map<Long, Set<Integer>> pulled = new LinkedHashMap<>();
        for (Work work : works) {
            if (work.gang() > 0 && work.tractor() >= 0) {
                pulled.computeIfAbsent((long) work.job() << 32 | work.tractor(), any -> new LinkedHashSet<>())
                        .add(work.machine());
            }
        }
        pulled.forEach((key, before) -> {
            int tractor = key.intValue();
            double owned = machines.state(Machines.NUMBER, tractor) == ListRows.State.GIVEN
                    ? machines.number(Machines.NUMBER, tractor)
                    : 1;
            if (before.size() > owned) {
                findings.add(Finding.caution(
                        jobs.address(Jobs.TRACTOR, (int) (key >> 32)).orElse(null),
                        "'" + machines.text(Machines.MACHINE, tractor) + "' is named for " + before.size()
                                + " machines that work at the same time ("
                                + before.stream()
                                        .map(machine -> machines.text(Machines.MACHINE, machine))
                                        .collect(Collectors.joining(", "))
                                + "), and can be before one of them only. Each is reckoned with such a tractor: name one"
                                + " for each, in the order of the machines and parted by \";\", or \"-\" for none."));
            }
        });
    }

    /** Machines of one job on one field stand together, jobs in list order, fields as the job has them. */
    private static List<Work> ordered(List<Work> works) {
        Map<Long, List<Work>> together = new LinkedHashMap<>();
        works.forEach(
                work -> together.computeIfAbsent((long) work.job() << 32 | work.field(), any -> new ArrayList<>(1))
                        .add(work));
        return together.values().stream()
                .sorted(Comparator.comparingInt(each -> each.get(0).job()))
                .flatMap(List::stream)
                .toList();
    }

    private static int alike(GangRows.Gang gang, int machine) {
        return gang.members().stream()
                .filter(member -> member.machine() == machine)
                .mapToInt(GangRows.Member::alike)
                .sum();
    }

    /** How many alike a job names of a machine that works by itself: they share its hours, each with a driver. */
    private int alike(int job, int machine) {
        int place = place(job, machine);
        return place < 0 ? 1 : alikeAt(machineMentions(job), place);
    }

    /** Of gangs it is looked at where they are read. */
    private void checkOwned(int job, int machine, int alike) {
        boolean counted = machines.state(Machines.NUMBER, machine) == ListRows.State.GIVEN;
        int owned = counted ? (int) machines.number(Machines.NUMBER, machine) : alike;
        if (alike > owned && told.add((long) job << 32 | machine)) {
            findings.add(Finding.caution(
                    jobs.address(Jobs.MACHINE, job).orElse(null),
                    GangRows.uses(alike, machines.text(Machines.MACHINE, machine), owned)
                            + GangRows.MORE_THAN_THERE_ARE));
        } else if (alike < owned && toldOfMore.add(machine)) {
            String name = machines.text(Machines.MACHINE, machine);
            findings.add(Finding.note(
                    jobs.address(Jobs.MACHINE, job).orElse(null),
                    GangRows.uses(alike, name, owned)
                            + "; the others are free for other jobs. Write \"" + name + " x " + owned
                            + "\" wherever they do one job together."));
        }
    }

    /** What each machine of the list is among those of its type. */
    public KindsOfMachines kinds() {
        return kinds;
    }

    /** All of them: those of one job on one field stand together, jobs in list order. */
    public List<Work> all() {
        if (ordered == null) {
            ordered = ordered(works);
        }
        return ordered;
    }

    /**
     * The tractor of a machine in a job: of several, parted by ";", the one in the same place as the machine; a single
     * one goes with every machine that has no engine power of its own.
     */
    public int tractor(int job, int machine) {
        String typed = jobs.text(Jobs.TRACTOR, job);
        if (typed.isEmpty()) {
            return -1;
        }
        List<MachineMention> tractors = MachineMention.places(typed, names::knows);
        int place = place(job, machine);
        MachineMention mention = tractors.get(0);
        if (tractors.size() > 1) {
            mention = place >= 0 && place < tractors.size() ? tractors.get(place) : NONE;
        } else if (kinds.drivesItself(machine)) {
            mention = NONE;
        }
        String name = mention.name();
        if (name.isEmpty() || name.equals("-")) {
            return -1;
        }
        String holding = jobs.text(Jobs.HOLDING, job);
        NameKey.Resolution resolution = names.resolve(holding, name);
        if (resolution instanceof NameKey.None) {
            resolution = names.resolve("", name);
        }
        if (resolution instanceof NameKey.Found found) {
            checkNumber(job, mention, place);
            return found.row();
        }
        findings.add(Finding.stop(
                jobs.address(Jobs.TRACTOR, job).orElse(null),
                resolution instanceof NameKey.Ambiguous ambiguous
                        ? ambiguous.why("machine", name, "the Holding column of this job")
                                + ". This job is reckoned without a tractor."
                        : "there is no tractor '" + name + "' in the machine list; add it there or mend the name here."
                                + names.meant(name)
                                + " This job is reckoned without a tractor."));
        return -1;
    }

    /** Every machine alike has a tractor of its own before it, so that a number beside the tractor must be theirs. */
    private void checkNumber(int job, MachineMention tractor, int place) {
        List<MachineMention> named = machineMentions(job);
        boolean fits =
                place >= 0 && (named.get(place).count() == tractor.count() || alikeAt(named, place) == tractor.count());
        if (tractor.count() > 1 && place >= 0 && !fits) {
            findings.add(Finding.caution(
                    jobs.address(Jobs.TRACTOR, job).orElse(null),
                    "\"" + tractor.name() + " x " + tractor.count() + "\" for "
                            + named.get(place).count() + " of '"
                            + named.get(place).name()
                            + "': each machine is reckoned with one tractor. Write as many tractors as machines."));
        }
    }

    /** How many alike the job names in all of the machine in a place. */
    private static int alikeAt(List<MachineMention> named, int place) {
        String wanted = NameKey.key(named.get(place).name());
        return named.stream()
                .filter(mention -> NameKey.key(mention.name()).equals(wanted))
                .mapToInt(MachineMention::count)
                .sum();
    }

    /** Of the job asked for last, for its fields stand together and may be many. */
    private List<MachineMention> machineMentions(int job) {
        if (job != mentionsOf) {
            mentions = MachineMention.parse(jobs.text(Jobs.MACHINE, job), names::knows);
            mentionsOf = job;
        }
        return mentions;
    }

    private int place(int job, int machine) {
        List<MachineMention> named = machineMentions(job);
        String wanted = NameKey.key(machines.text(Machines.MACHINE, machine));
        for (int i = 0; i < named.size(); i++) {
            if (NameKey.key(named.get(i).name()).equals(wanted)) {
                return i;
            }
        }
        return -1;
    }
}
