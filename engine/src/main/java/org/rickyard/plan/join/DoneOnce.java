package org.rickyard.plan.join;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.RepeatedKey;
import org.rickyard.trade.workrate.Suitability;

/** Without a job list, each machine once over the fields of its holding whose crop its type works. */
final class DoneOnce {
    /** Crops looked at for words that tell no machine; one message each. */
    private static final int MOST_CROPS = 50;

    /** So many machines are named in one sentence. */
    private static final int MOST_NAMED = 5;

    private final ListRows fields;
    private final ListRows machines;
    private final List<Finding> findings;

    private DoneOnce(ListRows fields, ListRows machines, List<Finding> findings) {
        this.fields = fields;
        this.machines = machines;
        this.findings = findings;
    }

    /** The lines; what somebody may look for in vain is added to the findings. */
    static List<JobLines.Line> lines(ListRows fields, ListRows machines, List<Finding> findings) {
        return new DoneOnce(fields, machines, findings).lines();
    }

    private List<JobLines.Line> lines() {
        List<JobLines.Line> lines = new ArrayList<>();
        RepeatedKey names = new RepeatedKey();
        String[] holdings = new String[fields.size()];
        List<Set<String>> types = new ArrayList<>();
        Map<String, Set<String>> typesOf = new HashMap<>();
        for (int field = 0; field < fields.size(); field++) {
            holdings[field] = names.of(fields.text(Fields.HOLDING, field));
            types.add(typesOf.computeIfAbsent(fields.text(Fields.CROP, field), Suitability::types));
        }
        boolean chooses = false;
        List<Integer> idle = new ArrayList<>();
        List<Integer> untyped = new ArrayList<>();
        for (int machine = 0; machine < machines.size(); machine++) {
            String type = machines.text(Machines.TYPE, machine);
            if (machines.state(Machines.TYPE, machine) == ListRows.State.BLANK) {
                untyped.add(machine);
            }
            chooses |= Suitability.choosesCrops(type);
            String holding = NameKey.key(machines.text(Machines.HOLDING, machine));
            boolean knowsAll = true;
            int before = lines.size();
            for (int field = 0; field < fields.size(); field++) {
                boolean sameHolding = holding.isEmpty() || holding.equals(holdings[field]);
                if (sameHolding && types.get(field).contains(type)) {
                    lines.add(new JobLines.Line(-1, field, machine, 0));
                }
                knowsAll &= !sameHolding || Suitability.isKnown(fields.text(Fields.CROP, field));
            }
            if (lines.size() == before && knowsAll && Suitability.choosesCrops(type)) {
                idle.add(machine);
            }
        }
        if (chooses) {
            tellUnknownCrops();
        }
        tellIdle(idle);
        tellUntyped(untyped);
        return lines;
    }

    /** A type that stands once over several machines, in the row of the first, left the others out without a word. */
    private void tellUntyped(List<Integer> untyped) {
        if (!untyped.isEmpty() && fields.size() > 0) {
            boolean one = untyped.size() == 1;
            findings.add(Finding.caution(
                    machines.address(Machines.TYPE, untyped.get(0)).orElse(null),
                    names(untyped) + (one ? " has" : " have") + " no " + Machines.TYPE.name()
                            + ", so without a job list " + (one ? "it is" : "they are")
                            + " not reckoned. Write it in the row of each machine ("
                            + Machines.TYPE.help().replace(", ...", "") + " or another): what is written once stands"
                            + " for its own row only."));
        }
    }

    private String names(List<Integer> some) {
        return some.stream()
                        .limit(MOST_NAMED)
                        .map(machine -> "'" + machines.text(Machines.MACHINE, machine) + "'")
                        .collect(Collectors.joining(", "))
                + Counted.andMore(some.size() - MOST_NAMED);
    }

    /** A mower where nothing but wheat grows is worked out on nothing, and somebody may look for it. */
    private void tellIdle(List<Integer> idle) {
        if (!idle.isEmpty() && fields.size() > 0) {
            boolean one = idle.size() == 1;
            findings.add(Finding.note(
                    machines.address(Machines.TYPE, idle.get(0)).orElse(null),
                    names(idle)
                            + (one
                                    ? " works none of the crops listed, so without a job list it is"
                                    : " work none of the crops listed, so without a job list they are")
                            + " not reckoned (table '" + Suitability.CROPS.name()
                            + "' on Basis). List the work as Jobs if it is done there all the same."));
        }
    }

    /** Nothing is said of a mower on "lawn": a reader would look for it in vain. */
    private void tellUnknownCrops() {
        Set<String> told = new HashSet<>();
        for (int field = 0; field < fields.size() && told.size() < MOST_CROPS; field++) {
            String crop = fields.text(Fields.CROP, field);
            if (!crop.isEmpty() && told.add(NameKey.key(crop)) && !Suitability.isKnown(crop)) {
                findings.add(Finding.caution(
                        fields.address(Fields.CROP, field).orElse(null),
                        "\"" + crop
                                + "\" is no crop known here, so without a job list machines that work some crops and"
                                + " not others are not reckoned on it. Say what it is as well (\"" + crop
                                + " (grass)\"; the table '" + Suitability.CROPS.name()
                                + "' on Basis has the words), or list the work as Jobs."));
            }
        }
    }
}
