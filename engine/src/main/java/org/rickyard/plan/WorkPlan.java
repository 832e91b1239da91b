package org.rickyard.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Inputs;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.trade.Catalogue;
import org.rickyard.trade.Keys;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.spraying.SprayLimits;

/** The lists joined into result tables and evaluated: all there is to say about a workbook, before any is written. */
public final class WorkPlan {
    private final Map<String, ResultTable> tables = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final FoundLists lists;
    private final ConstantsInForce constants;
    private final boolean hasJobs;

    private WorkPlan(FoundLists lists) {
        this.lists = lists;
        this.hasJobs = lists.rows(Jobs.LIST).size() > 0;
        findings.addAll(lists.findings());
        constants = ConstantsInForce.read(constants(), lists.rows(Assumptions.LIST), lists.customary(), findings);
    }

    /** Joins and evaluates. Same lists, same plan. */
    public static WorkPlan of(FoundLists lists) {
        WorkPlan plan = new WorkPlan(lists);
        plan.build();
        return plan;
    }

    /** Every constant that any formula or caution reads. */
    public static List<Constant> constants() {
        Set<Constant> all = new LinkedHashSet<>();
        for (Formula formula : Catalogue.all()) {
            all.addAll(Inputs.constantsOf(formula.expr()));
        }
        all.add(SprayLimits.SMALL_LAST_LOAD);
        return List.copyOf(all);
    }

    private void build() {
        JobLines jobLines = new JobLines(lists, findings);
        Holdings holdings = new Holdings(lists.rows(Fields.LIST));
        workRates(jobLines, holdings);
        SprayRows products = new SprayRows(lists, jobLines.blocks(), findings);
        add(SprayTables.BLOCKS, blocks(jobLines.blocks()), hasJobs ? "no job names a sprayer" : "no jobs are listed");
        add(
                SprayTables.TANK_MIX,
                products.sources(lists, jobLines.blocks()),
                "no spraying job names a product or mix");
        CropRows crop = new CropRows(lists, findings);
        add(ClampTables.CROP, crop.sources(), "no field names a clamp or a yield basis, and no cuts are listed");
        add(ClampTables.CLAMPS, clamps(), "no clamps are listed");
        add(ClampTables.DIGGING, pits(), "no earth pit and excavator are listed together");
    }

    private void add(TableSpec spec, RowSources sources, String emptyBecause) {
        ResultTable table = new ResultTable(spec, sources, emptyBecause);
        tables.put(spec.id(), table);
        table.evaluate(tables, constants);
    }

    private void workRates(JobLines jobLines, Holdings holdings) {
        List<JobLines.Line> lines = jobLines.lines();
        int count = lines.size();
        int[] job = new int[count];
        int[] field = new int[count];
        int[] machine = new int[count];
        int[] block = new int[count];
        int[] machineKey = new int[count];
        int[] holdingKey = new int[count];
        for (int i = 0; i < count; i++) {
            JobLines.Line line = lines.get(i);
            job[i] = line.job();
            field[i] = line.field();
            machine[i] = line.machine();
            block[i] = line.block();
            machineKey[i] = line.machine() + 1;
            holdingKey[i] = holdings.key(line.field());
        }
        RowSources sources = new RowSources(count)
                .with(Role.JOB, lists.rows(Jobs.LIST), job)
                .with(Role.FIELD, lists.rows(Fields.LIST), field)
                .with(Role.MACHINE, lists.rows(Machines.LIST), machine)
                .with(Keys.MACHINE_KEY, machineKey)
                .with(Keys.HOLDING_KEY, holdingKey)
                .with(Keys.BLOCK_KEY, block);
        add(
                hasJobs ? WorkRateTables.WORK_RATES : WorkRateTables.IF_DONE_ONCE,
                sources,
                "no machine that works by width meets a field it is for");
        int[] machines = hasJobs ? distinct(machine) : new int[0];
        add(
                WorkRateTables.MACHINE_TOTALS,
                new RowSources(machines.length)
                        .with(Role.MACHINE, lists.rows(Machines.LIST), machines)
                        .with(Keys.MACHINE_KEY, plusOne(machines)),
                "no jobs are listed, so hours are not added up");
        int[] firstFields = hasJobs ? holdings.firstFields(field) : new int[0];
        int[] keys = new int[firstFields.length];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = holdings.key(firstFields[i]);
        }
        add(
                WorkRateTables.HOLDING_TOTALS,
                new RowSources(keys.length)
                        .with(Role.FIELD, lists.rows(Fields.LIST), firstFields)
                        .with(Keys.HOLDING_KEY, keys),
                "no jobs are listed, so hours are not added up");
    }

    private RowSources blocks(List<JobLines.Block> blocks) {
        int count = blocks.size();
        int[] job = new int[count];
        int[] field = new int[count];
        int[] machine = new int[count];
        int[] key = new int[count];
        for (int i = 0; i < count; i++) {
            job[i] = blocks.get(i).firstJob();
            field[i] = blocks.get(i).firstField();
            machine[i] = blocks.get(i).machine();
            key[i] = blocks.get(i).key();
        }
        return new RowSources(count)
                .with(Role.JOB, lists.rows(Jobs.LIST), job)
                .with(Role.FIELD, lists.rows(Fields.LIST), field)
                .with(Role.MACHINE, lists.rows(Machines.LIST), machine)
                .with(Keys.BLOCK_KEY, key);
    }

    private RowSources clamps() {
        ListRows clamps = lists.rows(Clamps.LIST);
        return new RowSources(clamps.size())
                .with(Role.CLAMP, clamps, CropRows.ascending(clamps.size(), 0))
                .with(Keys.CLAMP_KEY, CropRows.ascending(clamps.size(), 1));
    }

    private RowSources pits() {
        ListRows clamps = lists.rows(Clamps.LIST);
        ListRows machines = lists.rows(Machines.LIST);
        List<int[]> pairs = new ArrayList<>();
        for (int clamp = 0; clamp < clamps.size(); clamp++) {
            if (!clamps.text(Clamps.KIND, clamp).equals(ClampShape.EARTH_PIT)) {
                continue;
            }
            int before = pairs.size();
            for (int machine = 0; machine < machines.size(); machine++) {
                if (machines.text(Machines.TYPE, machine).equals("excavator") && together(clamp, machine)) {
                    pairs.add(new int[] {clamp, machine});
                }
            }
            if (pairs.size() == before) {
                pairs.add(new int[] {clamp, -1});
            }
        }
        int[] clamp = pairs.stream().mapToInt(pair -> pair[0]).toArray();
        int[] machine = pairs.stream().mapToInt(pair -> pair[1]).toArray();
        return new RowSources(pairs.size()).with(Role.CLAMP, clamps, clamp).with(Role.MACHINE, machines, machine);
    }

    private boolean together(int clamp, int machine) {
        String owner = NameKey.key(lists.rows(Machines.LIST).text(Machines.HOLDING, machine));
        String holding = NameKey.key(lists.rows(Clamps.LIST).text(Clamps.HOLDING, clamp));
        return owner.isEmpty() || holding.isEmpty() || owner.equals(holding);
    }

    private static int[] distinct(int[] numbers) {
        return Arrays.stream(numbers).distinct().sorted().toArray();
    }

    private static int[] plusOne(int[] numbers) {
        return Arrays.stream(numbers).map(n -> n + 1).toArray();
    }

    /** The tables in reading order. */
    public Collection<ResultTable> tables() {
        return tables.values();
    }

    /** A table by its id. */
    public ResultTable table(String id) {
        return tables.get(id);
    }

    /** What was noticed in reading and joining. */
    public List<Finding> findings() {
        return findings;
    }

    /** The lists it was made from. */
    public FoundLists lists() {
        return lists;
    }

    /** The constants reckoned with. */
    public ConstantsInForce constantsInForce() {
        return constants;
    }

    /** Whether there are jobs; without them each machine is shown as if used once. */
    public boolean hasJobs() {
        return hasJobs;
    }

    /** The number of fields read. */
    public int fields() {
        return lists.rows(Fields.LIST).size();
    }
}
