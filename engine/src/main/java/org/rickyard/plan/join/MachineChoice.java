package org.rickyard.plan.join;

import java.util.List;
import java.util.regex.Pattern;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.text.MachineMention;

/** Which machine a job row means by a name. */
public final class MachineChoice {
    /** How several machines are written that ";" should part. */
    private static final Pattern BETWEEN_NAMES = Pattern.compile("(?i)[,+&/\\n]|\\band\\b");

    private final ListRows machines;
    private final NameKey names;
    private final MissingList noMachines;
    private final List<Finding> findings;
    private String lastText = "";
    private List<MachineMention> lastNamed = List.of();

    /** Among these machines; what cannot be told is added to the findings. */
    public MachineChoice(ListRows machines, List<Finding> findings) {
        this.machines = machines;
        this.noMachines = new MissingList(machines);
        this.names = NameKey.of(machines, Machines.MACHINE);
        this.findings = findings;
    }

    /** The machines a job row names, in its own order. */
    public List<MachineMention> named(ListRows jobs, int job) {
        String text = jobs.text(Jobs.MACHINE, job);
        // The same job is asked about for each of its fields.
        if (!text.equals(lastText)) {
            lastNamed = MachineMention.parse(text, names::knows);
            lastText = text;
        }
        return lastNamed;
    }

    /** The machine of that name, first on the job's own holding; none, with a finding, if there is none. */
    public List<Integer> find(ListRows jobs, int job, String name) {
        if (machines.size() == 0) {
            noMachines.tell(
                    jobs.address(Jobs.MACHINE, job).orElse(null),
                    "these jobs name machines",
                    "none of their work is worked out",
                    findings);
            return List.of();
        }
        NameKey.Resolution resolution = names.resolve(jobs.text(Jobs.HOLDING, job), name);
        if (resolution instanceof NameKey.None) {
            // Machines are lent within a farm group, so a name that only another holding has will do.
            resolution = names.resolve("", name);
        }
        if (resolution instanceof NameKey.Found found) {
            return List.of(found.row());
        }
        String why = resolution instanceof NameKey.Ambiguous ambiguous
                ? ambiguous.why("machine", name, "the Holding column of this job") + "."
                : unknown(name);
        findings.add(
                Finding.stop(jobs.address(Jobs.MACHINE, job).orElse(null), why + " Its work on this job is left out."));
        return List.of();
    }

    private String unknown(String name) {
        int several = 0;
        for (String part : BETWEEN_NAMES.split(name)) {
            List<MachineMention> mention = MachineMention.parse(part, names::knows);
            if (mention.size() != 1 || !names.knows(mention.get(0).name())) {
                return "there is no machine '" + name + "' in the machine list; add it there or mend the name here."
                        + names.meant(name);
            }
            several++;
        }
        return "'" + name + "' names " + several + " machines at once: part those that work together by \";\".";
    }
}
