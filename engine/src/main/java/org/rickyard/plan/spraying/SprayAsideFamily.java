package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.text.MachineMention;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.MixesOfJobs;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Quantities;

/** Makes the tables that stand beside the tank plan: wipers, timed runs, tests over an area, trees counted. */
final class SprayAsideFamily {
    private final PlanContext plan;
    private final ListRows machines;
    private final ListRows fields;
    private final ListRows jobs;
    private final ListRows mixes;
    private final MixesOfJobs mixOf;

    private SprayAsideFamily(PlanContext plan, MixesOfJobs mixOf) {
        this.plan = plan;
        this.mixOf = mixOf;
        this.machines = plan.rows(Machines.LIST);
        this.fields = plan.rows(Fields.LIST);
        this.jobs = plan.rows(Jobs.LIST);
        this.mixes = plan.rows(Mixes.LIST);
    }

    static void build(PlanContext plan, MixesOfJobs mixOf) {
        SprayAsideFamily family = new SprayAsideFamily(plan, mixOf);
        plan.add(SprayHourTables.WIPER, family.wipers(), "no job names a wiper");
        plan.add(
                SprayHourTables.TIMED,
                RowSources.of(Role.MACHINE, family.machines, family::isTimed),
                "no machine has a timed run typed");
        plan.add(SprayHourTables.FLOW_RATES, family.withFlow(), "no machine has a flow typed");
        boolean weighed = family.machines.has(Machines.TEST_WEIGHT);
        plan.add(
                AreaTestTables.sprayed(family.isTestOverRun(Machines.TEST_VOLUME)),
                weighed
                        ? family.machinesWith(Machines.TEST_VOLUME)
                        : family.machinesWith(Machines.TEST_AREA, Machines.TEST_VOLUME),
                "no machine has a test area typed");
        if (weighed) {
            plan.add(
                    AreaTestTables.spread(family.isTestByTurns(), family.isTestOverRun(Machines.TEST_WEIGHT)),
                    family.machinesWith(Machines.TEST_WEIGHT),
                    "no machine has a test weight typed");
        }
        if (family.machines.has(Machines.NOZZLE_CATCH)) {
            plan.add(
                    CatchRunTable.SPEC,
                    family.machinesWith(Machines.NOZZLE_CATCH),
                    "no machine has a catch over a run typed");
        }
        LoadTestTables.build(plan);
        if (family.fields.has(Fields.TREE_SPACING)) {
            plan.add(TreeTables.COUNTS, family.withTrees(), "no field has trees or their spacing typed");
        } else {
            family.tellOfTreesAlone();
        }
    }

    /** How far a test went is no run that wants its seconds, where nobody speaks of any. */
    private boolean isTimed(int row) {
        boolean test =
                SprayLines.given(machines, row, Machines.TEST_VOLUME, Machines.TEST_WEIGHT, Machines.NOZZLE_CATCH);
        return SprayLines.given(machines, row, Machines.TIMED_DISTANCE, Machines.TIMED_SECONDS)
                && (machines.has(Machines.TIMED_SECONDS) || !test);
    }

    private RowSources withFlow() {
        return RowSources.of(
                Role.MACHINE,
                machines,
                row -> machines.isFilled(Machines.TOTAL_FLOW, row)
                        || machines.isFilled(Machines.NOZZLE_FLOW, row)
                        || machines.isFilled(Machines.WORKING_PRESSURE, row)
                                && machines.isFilled(Machines.NOZZLE_SIZE, row));
    }

    private RowSources withTrees() {
        return RowSources.of(
                Role.FIELD,
                fields,
                row -> fields.isFilled(Fields.TREE_SPACING, row) || fields.isFilled(Fields.TREES, row));
    }

    /** A count alone is no ground; what it wants beside it is said once. */
    private void tellOfTreesAlone() {
        IntStream.range(0, fields.size())
                .filter(row -> fields.isFilled(Fields.TREES, row))
                .findFirst()
                .ifPresent(
                        row -> plan.findings()
                                .add(
                                        Finding.note(
                                                fields.address(Fields.TREES, row)
                                                        .orElse(null),
                                                "the number of trees is used for nothing: with Tree spacing (m) and Row spacing (m)"
                                                        + " beside it, the ground that they take is worked out on a sheet Tree areas.")));
    }

    private RowSources machinesWith(ColumnSpec... columns) {
        return RowSources.of(Role.MACHINE, machines, row -> SprayLines.given(machines, row, columns));
    }

    /** Whether what any machine put out in a test was so over a distance that is typed, and over no area that is. */
    private boolean isTestOverRun(ColumnSpec used) {
        boolean wide = machines.has(Machines.WORKING_WIDTH)
                || machines.has(Machines.ROWS) && machines.has(Machines.ROW_WIDTH)
                || machines.has(Machines.NOZZLES) && machines.has(Machines.NOZZLE_SPACING);
        return wide
                && IntStream.range(0, machines.size())
                        .anyMatch(row -> machines.isFilled(used, row)
                                && machines.isFilled(Machines.TIMED_DISTANCE, row)
                                && !machines.isFilled(Machines.TEST_AREA, row));
    }

    /** Whether the wheel of any drill or spreader was turned for its test, over no distance or area that is typed. */
    private boolean isTestByTurns() {
        return IntStream.range(0, machines.size())
                .anyMatch(row -> machines.isFilled(Machines.TEST_WEIGHT, row)
                        && machines.isFilled(Machines.WHEEL_TURNS, row)
                        && !machines.isFilled(Machines.TIMED_DISTANCE, row)
                        && !machines.isFilled(Machines.TEST_AREA, row));
    }

    private RowSources wipers() {
        NameKey names = NameKey.of(machines, Machines.MACHINE);
        List<int[]> rows = new ArrayList<>();
        List<String> units = new ArrayList<>();
        for (int job = 0; job < jobs.size(); job++) {
            for (MachineMention mention : MachineMention.parse(jobs.text(Jobs.MACHINE, job), names::knows)) {
                NameKey.Resolution found = names.resolve(jobs.text(Jobs.HOLDING, job), mention.name());
                if (found instanceof NameKey.None) {
                    // Lent by another holding, as any machine may be.
                    found = names.resolve("", mention.name());
                }
                if (found instanceof NameKey.Found machine
                        && machines.text(Machines.TYPE, machine.row()).equals("wiper")) {
                    wiper(job, machine.row(), rows, units);
                }
            }
        }
        return new RowSources(rows.size())
                .with(Role.JOB, jobs, column(rows, 0))
                .with(Role.MACHINE, machines, column(rows, 1))
                .with(Role.MIX, mixes, column(rows, 2))
                .with(Quantities.PRODUCT_UNIT, units.toArray(String[]::new));
    }

    private void wiper(int job, int machine, List<int[]> rows, List<String> units) {
        String mix = NameKey.key(mixOf.name(job));
        boolean mixed = false;
        for (int line = 0; line < mixes.size() && !mix.isEmpty(); line++) {
            if (NameKey.key(mixes.text(Mixes.MIX, line)).equals(mix)) {
                rows.add(new int[] {job, machine, line});
                units.add(mixes.productUnit(Mixes.DOSE, line).orElse(""));
                mixed = true;
            }
        }
        if (!mixed) {
            rows.add(new int[] {job, machine, -1});
            units.add(jobs.productUnit(Jobs.DOSE, job).orElse(""));
        }
        if (SprayLines.given(jobs, job, Jobs.WATER_VOLUME)) {
            plan.findings()
                    .add(Finding.caution(
                            jobs.address(Jobs.WATER_VOLUME, job).orElse(null),
                            "a wiper has no water volume per hectare: its dose is a share of the mix, from the label;"
                                    + " the water volume is not used."));
        }
    }

    private static int[] column(List<int[]> rows, int column) {
        return rows.stream().mapToInt(row -> row[column]).toArray();
    }
}
