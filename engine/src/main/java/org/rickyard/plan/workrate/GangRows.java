package org.rickyard.plan.workrate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.MachineMention;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.FieldChoice;
import org.rickyard.plan.join.MachineChoice;
import org.rickyard.plan.silage.ClampRollers;
import org.rickyard.plan.silage.FieldCuts;
import org.rickyard.trade.workrate.Carting;
import org.rickyard.trade.workrate.GangStage;
import org.rickyard.trade.workrate.StageRates;

/**
 * The gangs of the job list: a job whose machines pick up, cart and clamp a crop together, once for each of its fields.
 * Who belongs to a gang is read from the words of the job's Machine cell when the workbook is run.
 */
final class GangRows {
    /** How it ends where there are fewer. */
    static final String MORE_THAN_THERE_ARE = "; it cannot use more than there are.";

    /** A machine of a job, and how many alike. */
    record Member(int machine, int alike, GangStage stage) {}

    /** A gang on one field; {@code clamp} is the clamp its crop goes to, or -1. */
    record Gang(int key, int job, int field, int clamp, List<Member> members) {
        /** The machine that sets the gang's pace by the day: the first that works together with others. */
        int lead() {
            return members.stream()
                    .filter(member -> member.stage().coupled())
                    .mapToInt(Member::machine)
                    .findFirst()
                    .orElse(-1);
        }

        /** The key of one of its stages: ten times the gang's own and the stage's code. */
        int stageKey(GangStage stage) {
            return 10 * key + stage.code();
        }

        /** Machines that are not alike, at one stage. */
        int kindsAt(GangStage stage) {
            return (int) members.stream()
                    .filter(member -> member.stage() == stage)
                    .mapToInt(Member::machine)
                    .distinct()
                    .count();
        }

        int machinesAt(GangStage stage) {
            return members.stream()
                    .filter(member -> member.stage() == stage)
                    .mapToInt(Member::alike)
                    .sum();
        }
    }

    private final ListRows jobs;
    private final ListRows machines;
    private final ListRows fields;
    private final ClampRollers rollers;
    private final List<Finding> findings;
    private final List<Gang> gangs = new ArrayList<>();
    private final Map<Integer, List<Member>> byJob = new HashMap<>();

    GangRows(PlanContext plan, FieldCuts cuts, ClampRollers rollers) {
        jobs = plan.rows(Jobs.LIST);
        machines = plan.rows(Machines.LIST);
        fields = plan.rows(Fields.LIST);
        this.rollers = rollers;
        findings = plan.findings();
        MachineChoice machineChoice = new MachineChoice(machines, findings);
        // Made ready only where there is a gang, for it goes through all fields.
        FieldChoice fieldChoice = null;
        for (int job = 0; job < jobs.size(); job++) {
            List<Member> members = members(job, machineChoice);
            if (!members.isEmpty()) {
                byJob.put(job, members);
                fieldChoice = fieldChoice == null ? new FieldChoice(fields, findings) : fieldChoice;
                for (int field : fieldChoice.find(jobs, job)) {
                    gangs.add(new Gang(gangs.size() + 1, job, field, cuts.clamp(job, field), members));
                }
            }
        }
    }

    List<Gang> gangs() {
        return gangs;
    }

    /** Whether the machines of a job row work as a gang. */
    boolean isGang(int job) {
        return byJob.containsKey(job);
    }

    /** The stage a type of machine does; null for machines that belong to no gang. */
    static GangStage stage(String type) {
        return switch (type) {
            case "mower" -> GangStage.MOWING;
            case "tedder" -> GangStage.TEDDING;
            case "rake" -> GangStage.RAKING;
            case "forager" -> GangStage.CHOPPING;
            case "trailer", Carting.FORAGE_WAGON -> GangStage.CARTING;
            case "buckrake", "loader" -> GangStage.PUSHING_UP;
            case StageRates.ROLLER -> GangStage.ROLLING;
            default -> null;
        };
    }

    /** The members of a job row, or none if it is no gang. */
    private List<Member> members(int job, MachineChoice choice) {
        List<Member> members = new ArrayList<>();
        boolean filledOtherwise = false;
        for (MachineMention mention : choice.named(jobs, job)) {
            for (int machine : choice.find(jobs, job, mention.name())) {
                GangStage stage = stage(machines.text(Machines.TYPE, machine));
                if (stage != null) {
                    members.add(new Member(machine, mention.count(), stage));
                }
                filledOtherwise |= stage == null || stage == GangStage.PUSHING_UP;
            }
        }
        boolean wagon = members.stream()
                .anyMatch(m -> machines.text(Machines.TYPE, m.machine()).equals(Carting.FORAGE_WAGON));
        boolean chopper = members.stream().anyMatch(m -> m.stage() == GangStage.CHOPPING);
        long together = members.stream().filter(m -> m.stage().coupled()).count();
        if (!wagon && !(chopper && together > 1)) {
            if (members.stream().anyMatch(m -> m.stage() == GangStage.CARTING)) {
                findings.add(Finding.caution(
                        jobs.address(Jobs.MACHINE, job).orElse(null),
                        filledOtherwise
                                ? "carting is worked out from a forager or forage wagon alone. What these trailers and"
                                        + " their tractors take is in no hours, days, fuel, labour or cost here, and they"
                                        + " are not booked: allow for them beside."
                                : "trailers are named without a forager or forage wagon to fill them, so their carting is"
                                        + " not worked out. Name the machine that fills them in the same cell, parted by"
                                        + " \";\"."));
            }
            return List.of();
        }
        Map<Integer, Integer> named = new LinkedHashMap<>();
        members.forEach(member -> named.merge(member.machine(), member.alike(), Integer::sum));
        named.forEach((machine, alike) -> checkNumber(job, machine, alike));
        checkWidths(job, members);
        return members;
    }

    private void checkNumber(int job, int machine, int alike) {
        if (machines.state(Machines.NUMBER, machine) != ListRows.State.GIVEN) {
            return;
        }
        int owned = (int) machines.number(Machines.NUMBER, machine);
        if (owned != alike) {
            String name = machines.text(Machines.MACHINE, machine);
            findings.add(Finding.caution(
                    jobs.address(Jobs.MACHINE, job).orElse(null),
                    uses(alike, name, owned)
                            + (owned > alike
                                    ? "; write \"" + name + " x " + owned + "\" if all of them go."
                                    : MORE_THAN_THERE_ARE)));
        }
    }

    /** How a caution begins that a job names more or fewer machines alike than the machine list has. */
    static String uses(int alike, String name, int owned) {
        return "this job uses " + alike + " of '" + name + "' and the machine list has " + owned;
    }

    /** A forager covers the width that was raked into its swath, not that of its pick-up. */
    private void checkWidths(int job, List<Member> members) {
        Optional<Double> chopped = widest(members, GangStage.CHOPPING);
        Optional<Double> raked = widest(members, GangStage.RAKING);
        if (chopped.isPresent() && raked.isPresent() && chopped.get() < raked.get() * 0.999) {
            findings.add(Finding.caution(
                    jobs.address(Jobs.MACHINE, job).orElse(null),
                    "the forager's working width is less than the rake's. A forager covers the width that was raked"
                            + " into its swath, whatever the width of its pick-up: type that as its working width."));
        }
    }

    private Optional<Double> widest(List<Member> members, GangStage stage) {
        return members.stream()
                .filter(m -> m.stage() == stage)
                .filter(m -> machines.gives(Machines.WORKING_WIDTH, m.machine()))
                .map(m -> machines.unit(Machines.WORKING_WIDTH, m.machine())
                        .orElse(org.rickyard.quantity.Units.M)
                        .convert(machines.number(Machines.WORKING_WIDTH, m.machine()), org.rickyard.quantity.Units.M))
                .max(Double::compare);
    }

    /** Whether the gang has no roller of its own while the clamp's own sheet says what rolls there. */
    boolean rolledAtClamp(Gang gang) {
        return gang.machinesAt(GangStage.ROLLING) == 0 && gang.clamp() >= 0 && rollers.rolls(gang.clamp());
    }
}
