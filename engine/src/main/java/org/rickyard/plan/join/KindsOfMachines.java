package org.rickyard.plan.join;

import java.util.BitSet;
import java.util.List;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.text.KindOfMachine;
import org.rickyard.lists.text.MachineMention;

/**
 * What each machine of a list is among those of its type, looked up once for each. Where its words do not say whether it
 * drives itself or is pulled, it is pulled if a job names a tractor for it, or its power is one at the PTO, which is what it
 * asks of a tractor; otherwise it drives itself if it has a power.
 */
public final class KindsOfMachines {
    private static final String AT_PTO = "PTO";

    private final ListRows machines;
    private final ListRows jobs;
    private final String[] known;
    /** Machines for which a job names a tractor; made when first asked. */
    private BitSet pulled;

    /** The kinds of the machines of a list that these jobs name. */
    public KindsOfMachines(ListRows machines, ListRows jobs) {
        this.machines = machines;
        this.jobs = jobs;
        this.known = new String[machines.size()];
    }

    /**
     * The kinds of machines, row by row of a table.
     *
     * @param rows a row of the machine list for each; -1 for none
     * @return null where there is no machine, or none of a known type
     */
    public String[] of(int[] rows) {
        String[] kinds = new String[rows.length];
        for (int i = 0; i < rows.length; i++) {
            int machine = rows[i];
            if (machine >= 0 && machines.gives(Machines.TYPE, machine)) {
                if (known[machine] == null) {
                    known[machine] = kind(machine);
                }
                kinds[i] = known[machine];
            }
        }
        return kinds;
    }

    private String kind(int machine) {
        String type = machines.text(Machines.TYPE, machine);
        String typed = machines.typed(Machines.TYPE, machine);
        String name = machines.text(Machines.MACHINE, machine);
        return drivesItself(machine)
                ? KindOfMachine.drivingItself(type, typed, name)
                : KindOfMachine.of(type, typed, name);
    }

    /** Whether a power that is typed for a machine, usable or not, is that of an engine of its own. */
    public boolean drivesItself(int machine) {
        return machines.isFilled(Machines.POWER, machine) && (!isForager(machine) || !isPulled(machine));
    }

    private boolean isForager(int machine) {
        return machines.text(Machines.TYPE, machine).equals("forager");
    }

    /** Of a forager: by its words, or else by a job or the basis of its power. */
    private boolean isPulled(int machine) {
        String type = machines.text(Machines.TYPE, machine);
        String typed = machines.typed(Machines.TYPE, machine);
        String name = machines.text(Machines.MACHINE, machine);
        if (!KindOfMachine.mayDriveItself(type, typed, name)) {
            return !KindOfMachine.of(type, typed, name).startsWith("self-propelled");
        }
        return machines.text(Machines.POWER_BASIS, machine).equals(AT_PTO) || pulled().get(machine);
    }

    /** Asks of those that only their power tells to drive themselves, since a power may be what a pulled one needs. */
    public void ask(List<Finding> findings) {
        for (int machine = 0; machine < machines.size(); machine++) {
            if (isForager(machine)
                    && drivesItself(machine)
                    && !machines.gives(Machines.POWER_BASIS, machine)
                    && KindOfMachine.mayDriveItself(
                            machines.text(Machines.TYPE, machine),
                            machines.typed(Machines.TYPE, machine),
                            machines.text(Machines.MACHINE, machine))) {
                findings.add(Finding.caution(
                        machines.address(Machines.POWER, machine).orElse(null),
                        "'" + machines.text(Machines.MACHINE, machine)
                                + "' is taken to be self-propelled, since it has a"
                                + " power and no job names a tractor for it alone; repairs and speeds of a trailed one"
                                + " are others. Write 'self-propelled forager' or 'trailed forager' as its type."));
            }
        }
    }

    private BitSet pulled() {
        if (pulled == null) {
            pulled = new BitSet();
            NameKey names = NameKey.of(machines, Machines.MACHINE);
            for (int job = 0; job < jobs.size(); job++) {
                if (jobs.gives(Jobs.TRACTOR, job)) {
                    markPulled(job, names);
                }
            }
        }
        return pulled;
    }

    /** Of several machines a single tractor is for those without an engine, and so tells nothing of which has one. */
    private void markPulled(int job, NameKey names) {
        List<MachineMention> named = MachineMention.parse(jobs.text(Jobs.MACHINE, job), names::knows);
        List<MachineMention> tractors = MachineMention.places(jobs.text(Jobs.TRACTOR, job), names::knows);
        if (named.size() > 1 && tractors.size() < 2) {
            return;
        }
        for (int i = 0; i < named.size() && i < tractors.size(); i++) {
            String tractor = tractors.get(i).name();
            if (!tractor.isEmpty()
                    && !tractor.equals("-")
                    && names.resolve(jobs.text(Jobs.HOLDING, job), named.get(i).name())
                            instanceof NameKey.Found found) {
                pulled.set(found.row());
            }
        }
    }
}
