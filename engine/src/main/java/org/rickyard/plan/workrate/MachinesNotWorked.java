package org.rickyard.plan.workrate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.MachineMention;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.FieldChoice;
import org.rickyard.plan.join.MachineChoice;
import org.rickyard.trade.workrate.Suitability;

/**
 * Says which machines of the job list have no work there that is worked out: a loader, a buckrake or a roller without the
 * gang that it belongs to, an excavator on a field, a tractor by itself. Nothing else would tell that their hours and cost
 * are in no total.
 */
final class MachinesNotWorked {
    private static final String TRACTOR = "tractor";
    private static final String EXCAVATOR = "excavator";
    private static final String TRAILER = "trailer";

    private final ListRows jobs;
    private final ListRows machines;
    private final GangRows gangs;
    private final MachineChoice machineChoice;
    private final FieldChoice fieldChoice;
    /** The jobs that take each of them for nothing, by its row. */
    private final Map<Integer, List<Integer>> without = new LinkedHashMap<>();

    private MachinesNotWorked(PlanContext plan, GangRows gangs) {
        this.jobs = plan.rows(Jobs.LIST);
        this.machines = plan.rows(Machines.LIST);
        this.gangs = gangs;
        // What is said of names that lead nowhere was said when the work was read.
        this.machineChoice = new MachineChoice(machines, new ArrayList<>());
        this.fieldChoice = new FieldChoice(plan.rows(Fields.LIST), new ArrayList<>());
    }

    static void tell(PlanContext plan, GangRows gangs) {
        ListRows machines = plan.rows(Machines.LIST);
        boolean any = false;
        for (int machine = 0; machine < machines.size() && !any; machine++) {
            any = hasNoWork(machines, machine);
        }
        if (any) {
            MachinesNotWorked all = new MachinesNotWorked(plan, gangs);
            all.read();
            all.without.forEach((machine, of) -> plan.findings().add(all.finding(machine, of)));
        }
    }

    private static boolean hasNoWork(ListRows machines, int machine) {
        return machines.gives(Machines.TYPE, machine)
                && !Suitability.worksByWidth(machines.text(Machines.TYPE, machine));
    }

    private void read() {
        for (int job = 0; job < jobs.size(); job++) {
            List<Integer> named = new ArrayList<>();
            for (MachineMention mention : machineChoice.named(jobs, job)) {
                named.addAll(machineChoice.find(jobs, job, mention.name()));
            }
            boolean alone = named.stream()
                    .allMatch(machine -> machines.text(Machines.TYPE, machine).equals(TRACTOR));
            for (int machine : named) {
                if (isForNothing(job, machine, alone)
                        && !fieldChoice.find(jobs, job).isEmpty()) {
                    List<Integer> of = without.computeIfAbsent(machine, any -> new ArrayList<>());
                    if (of.isEmpty() || of.get(of.size() - 1) != job) {
                        of.add(job);
                    }
                }
            }
        }
    }

    private boolean isForNothing(int job, int machine, boolean tractorsAlone) {
        String type = machines.text(Machines.TYPE, machine);
        boolean inGang = gangs.isGang(job) && GangRows.stage(type) != null;
        // Trailers that nothing fills are told as such; a tractor beside what it pulls is none of the work's own.
        return hasNoWork(machines, machine)
                && !inGang
                && !type.equals(TRAILER)
                && (tractorsAlone || !type.equals(TRACTOR));
    }

    private Finding finding(int machine, List<Integer> of) {
        String type = machines.text(Machines.TYPE, machine);
        int more = of.size() - 1;
        return Finding.caution(
                jobs.address(Jobs.MACHINE, of.get(0)).orElse(null),
                "nothing is worked out for '" + machines.text(Machines.MACHINE, machine) + "' (" + type
                        + ") in this job"
                        + (more == 0 ? "" : " and " + more + " more") + ": " + why(type)
                        + " What it does here is in no hours, days, fuel, labour or cost: allow for it beside.");
    }

    private static String why(String type) {
        return switch (type) {
            case TRACTOR -> "write in Machine what the tractor pulls or drives, and the tractor in Tractor.";
            case EXCAVATOR -> "an excavator is reckoned on earth pits of the clamp list alone.";
            default ->
                "a " + type + " is reckoned in a gang alone, with the forager or forage wagon and the trailers named in"
                        + " the same cell, parted by \";\".";
        };
    }
}
