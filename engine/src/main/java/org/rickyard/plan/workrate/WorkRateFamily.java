package org.rickyard.plan.workrate;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.CutsMet;
import org.rickyard.plan.join.FieldYields;
import org.rickyard.plan.join.Holdings;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.KindsOfMachines;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.silage.ClampRollers;
import org.rickyard.plan.silage.FieldCuts;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.Suitability;

/**
 * Makes the tables of work rates from the lines of the job list.
 *
 * @param works who works where with what, for what it costs and when it can be done
 * @param tasks the tasks those works make up
 * @param holdings the holdings of the fields worked on
 */
public record WorkRateFamily(WorkRows works, Tasks tasks, Holdings holdings) {
    /** Makes them, with the cuts that jobs meet and what rolls each clamp. */
    public static WorkRateFamily build(PlanContext plan, JobLines jobLines, FieldCuts cuts, ClampRollers rollers) {
        boolean hasJobs = plan.rows(Jobs.LIST).size() > 0;
        Holdings holdings = new Holdings(plan.rows(Fields.LIST));
        List<JobLines.Line> lines = jobLines.lines();
        int[] job = new int[lines.size()];
        int[] field = new int[lines.size()];
        int[] machine = new int[lines.size()];
        int[] block = new int[lines.size()];
        for (int i = 0; i < block.length; i++) {
            JobLines.Line line = lines.get(i);
            job[i] = line.job();
            field[i] = line.field();
            machine[i] = line.machine();
            block[i] = line.block();
        }
        int[] atWork = Arrays.stream(machine).distinct().sorted().toArray();
        mixed(plan, atWork);
        pumps(plan, atWork);
        rounds(plan, atWork);
        widthInOrchards(plan, atWork);
        KindsOfMachines kinds = new KindsOfMachines(plan.rows(Machines.LIST), plan.rows(Jobs.LIST));
        kinds.ask(plan.findings());
        StrawOfGrain.tell(plan, lines);
        GangRows gangs = new GangRows(plan, cuts, rollers);
        MachinesNotWorked.tell(plan, gangs);
        Tasks tasks = new Tasks(plan, lines, gangs);
        int[] shapes = fieldsWithShape(plan.rows(Fields.LIST));
        plan.add(
                WorkRateTables.FIELD_SHAPES,
                new RowSources(shapes.length).with(Role.FIELD, plan.rows(Fields.LIST), shapes),
                "no field has a perimeter");
        slip(plan);
        HandlingTable.build(plan, gangs);
        RowSources sources = new RowSources(lines.size())
                .with(Role.JOB, plan.rows(Jobs.LIST), job)
                .with(Role.FIELD, plan.rows(Fields.LIST), field)
                .with(Role.MACHINE, plan.rows(Machines.LIST), machine)
                .with(Quantities.KIND_OF_MACHINE, kinds.of(machine))
                .with(Keys.MACHINE_KEY, RowNumbers.keysOf(machine))
                .with(Keys.HOLDING_KEY, keys(holdings, field))
                .with(Keys.BLOCK_KEY, block)
                .with(Keys.LINE_KEY, RowNumbers.keys(lines.size()))
                .with(Keys.TASK_KEY, tasks.ofLines())
                .with(Keys.STAGE_KEY, tasks.stageKeys(lines));
        ListRows types = plan.rows(Machines.LIST);
        boolean[] withCrop = new boolean[machine.length];
        for (int i = 0; i < withCrop.length; i++) {
            withCrop[i] = Suitability.takesCrop(types.text(Machines.TYPE, machine[i]));
        }
        // Tonnes an hour of what is spread say nothing of hectares, as long as nobody says how much goes on one.
        sources.only(Quantities.OUTPUT, withCrop);
        CutsMet cut = cuts.of(job, field);
        FieldYields.apply(sources, plan.lists(), field, cut, row -> withCrop[row]);
        YieldWithoutBasis.tell(plan, lines, cut);
        plan.add(
                WorkRateTables.rates(hasJobs, Arrays.stream(atWork).anyMatch(one -> isKnown(types, one))),
                sources,
                "no machine that works by width meets a field it is for");
        if (plan.rows(Fields.LIST).size() == 0) {
            alone(plan, kinds);
        }
        int[] machines = hasJobs ? atWork : new int[0];
        plan.add(
                WorkRateTables.MACHINE_TOTALS,
                new RowSources(machines.length)
                        .with(Role.MACHINE, plan.rows(Machines.LIST), machines)
                        .with(Keys.MACHINE_KEY, RowNumbers.keysOf(machines)),
                "no jobs are listed, so hours are not added up");
        int[] firstFields = hasJobs ? holdings.firstFields(field) : new int[0];
        plan.add(
                WorkRateTables.HOLDING_TOTALS,
                new RowSources(firstFields.length)
                        .with(Role.FIELD, plan.rows(Fields.LIST), firstFields)
                        .with(Keys.HOLDING_KEY, keys(holdings, firstFields)),
                "no jobs are listed, so hours are not added up");
        rollers.build(plan);
        WorkRows works = new WorkRows(plan, lines, gangs, kinds);
        GangFamily.build(plan, gangs, tasks, cuts, works);
        HoursOfGangs.tell(plan, lines, tasks.stageKeys(lines));
        return new WorkRateFamily(works, tasks, holdings);
    }

    /** What machines do in an hour of any field: a worked example often has none. */
    private static void alone(PlanContext plan, KindsOfMachines kinds) {
        ListRows machines = plan.rows(Machines.LIST);
        int[] rows = IntStream.range(0, machines.size())
                .filter(row -> isRated(machines, row))
                .toArray();
        int[] nowhere = new int[rows.length];
        Arrays.fill(nowhere, -1);
        if (rows.length > 0) {
            plan.add(
                    WorkRateTables.MACHINE_RATES,
                    new RowSources(rows.length)
                            .with(Role.JOB, plan.rows(Jobs.LIST), nowhere)
                            .with(Role.FIELD, plan.rows(Fields.LIST), nowhere)
                            .with(Role.CUT, plan.rows(Cuts.LIST), nowhere)
                            .with(Role.MACHINE, machines, rows)
                            .with(Quantities.KIND_OF_MACHINE, kinds.of(rows))
                            .only(Quantities.OUTPUT, new boolean[rows.length]),
                    "no machine has a width and a speed");
        }
    }

    /** Whether a width and a speed are there. Who tests a sprayer asks what it puts out, unless he says how it gets on. */
    private static boolean isRated(ListRows machines, int row) {
        boolean wide = machines.isFilled(Machines.WORKING_WIDTH, row) || machines.isFilled(Machines.ROWS, row);
        boolean timed =
                machines.isFilled(Machines.TIMED_DISTANCE, row) && machines.isFilled(Machines.TIMED_SECONDS, row);
        boolean fast = machines.isFilled(Machines.SPEED, row) || timed;
        String type = machines.text(Machines.TYPE, row);
        return wide
                && fast
                && Suitability.worksByWidth(type)
                && (machines.isFilled(Machines.FIELD_EFFICIENCY, row)
                        || FieldRates.TYPICAL_EFFICIENCY.find(type) >= 0 && !type.contains("sprayer"));
    }

    /** Whether a machine's rate is typed, or only the tonnes that it takes an hour. */
    private static boolean isKnown(ListRows machines, int machine) {
        boolean byOutput = machines.isFilled(Machines.OUTPUT, machine)
                && !machines.isFilled(Machines.WORKING_WIDTH, machine)
                && !machines.isFilled(Machines.SPEED, machine);
        return byOutput || machines.isFilled(Machines.RATE_OF_WORK, machine);
    }

    /** Says once of each machine at work that its efficiency holds what else is typed of lost time. */
    private static void mixed(PlanContext plan, int[] atWork) {
        ListRows machines = plan.rows(Machines.LIST);
        for (int machine : atWork) {
            if (!machines.isFilled(Machines.FIELD_EFFICIENCY, machine)) {
                continue;
            }
            String name = machines.text(Machines.MACHINE, machine);
            if (machines.isFilled(Machines.TURN_TIME, machine)) {
                plan.findings()
                        .add(Finding.caution(
                                machines.address(Machines.TURN_TIME, machine).orElse(null),
                                "field efficiency and turn time are both typed for '" + name
                                        + "'; the efficiency is used,"
                                        + " for it holds turning already. Clear it to reckon by turn "
                                        + "time and run length."));
            } else if (machines.isFilled(Machines.OVERLAP, machine)) {
                plan.findings()
                        .add(Finding.note(
                                machines.address(Machines.OVERLAP, machine).orElse(null),
                                "overlap is not taken off the rate of '" + name + "', for its field efficiency holds it"
                                        + " already."));
            }
        }
    }

    /** Says once of each air-blast sprayer at work what its width is, which has no boom to be measured. */
    private static void widthInOrchards(PlanContext plan, int[] atWork) {
        ListRows machines = plan.rows(Machines.LIST);
        for (int machine : atWork) {
            if (machines.text(Machines.TYPE, machine).equals("air-blast sprayer")
                    && !machines.isFilled(Machines.WORKING_WIDTH, machine)
                    && !(machines.isFilled(Machines.ROWS, machine) && machines.isFilled(Machines.ROW_WIDTH, machine))
                    && !machines.isFilled(Machines.RATE_OF_WORK, machine)) {
                plan.findings()
                        .add(Finding.caution(
                                machines.address(Machines.MACHINE, machine).orElse(null),
                                "'" + machines.text(Machines.MACHINE, machine)
                                        + "' has no working width, so its hours are left out. Type in Working width what it"
                                        + " sprays in one pass: the row spacing where it goes down every row, twice that"
                                        + " where it goes down every other."));
            }
        }
    }

    /** Says once of each spreader, tanker or drill at work that the time of its rounds is not in these hours. */
    private static void rounds(PlanContext plan, int[] atWork) {
        ListRows machines = plan.rows(Machines.LIST);
        for (int machine : atWork) {
            if (JobLines.spreads(machines.text(Machines.TYPE, machine))
                    && machines.isFilled(Machines.ROUND_TIME, machine)
                    && !machines.isFilled(Machines.RATE_OF_WORK, machine)) {
                plan.findings()
                        .add(Finding.note(
                                machines.address(Machines.ROUND_TIME, machine).orElse(null),
                                "the round time of '" + machines.text(Machines.MACHINE, machine)
                                        + "' gives the hours of its loads on Spread products, where a job names a product"
                                        + " and its dose. Work rates, Machine hours, Season, fuel and cost go by width,"
                                        + " speed and efficiency. To have them go by the loads, type its Rate of work"
                                        + " (ha/h): the hectares that a load covers, over the hours of a round."));
            }
        }
    }

    /** Says once of each machine at work that what it pumps an hour does not hold its rate down. */
    private static void pumps(PlanContext plan, int[] atWork) {
        ListRows machines = plan.rows(Machines.LIST);
        for (int machine : atWork) {
            boolean volume = machines.isFilled(Machines.OUTPUT, machine)
                    && machines.isFilled(Machines.WORKING_WIDTH, machine)
                    && machines.unit(Machines.OUTPUT, machine)
                            .filter(unit -> unit.isCompatible(Quantities.OUTPUT_VOLUME.unit()))
                            .isPresent();
            if (volume && !machines.isFilled(Machines.RATE_OF_WORK, machine)) {
                plan.findings()
                        .add(Finding.caution(
                                machines.address(Machines.OUTPUT, machine).orElse(null),
                                "the m3 an hour of '" + machines.text(Machines.MACHINE, machine)
                                        + "' are no limit to its rate here, which goes by width and speed. Where they hold"
                                        + " it up, divide them by the m3 put on a hectare and type that as its Rate of"
                                        + " work (ha/h)."));
            }
        }
    }

    /** Where either count has a header, so that the other is asked for. */
    private static void slip(PlanContext plan) {
        ListRows machines = plan.rows(Machines.LIST);
        if (machines.has(Machines.TURNS_LOADED) || machines.has(Machines.TURNS_UNLOADED)) {
            plan.add(
                    WheelSlipTable.SLIP,
                    RowSources.of(
                            Role.MACHINE,
                            machines,
                            row -> machines.isFilled(Machines.TURNS_LOADED, row)
                                    || machines.isFilled(Machines.TURNS_UNLOADED, row)),
                    "no machine has turns of its wheels typed");
        }
    }

    /** Fields with a perimeter, for only they have a shape index. */
    private static int[] fieldsWithShape(ListRows fields) {
        int[] found = new int[fields.size()];
        int count = 0;
        for (int field = 0; field < fields.size(); field++) {
            if (fields.isFilled(Fields.PERIMETER, field)) {
                found[count++] = field;
            }
        }
        return Arrays.copyOf(found, count);
    }

    private static int[] keys(Holdings holdings, int[] fields) {
        int[] keys = new int[fields.length];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = holdings.key(fields[i]);
        }
        return keys;
    }
}
