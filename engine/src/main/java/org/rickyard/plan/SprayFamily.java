package org.rickyard.plan;

import java.util.List;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.trade.Keys;

/** Makes the tables of spraying from the blocks of the job list. */
final class SprayFamily {
    private static final String NO_PRODUCT = "no spraying job names a product or mix";

    private final PlanContext plan;
    private final List<JobLines.Block> blocks;
    private final SprayLines lines;
    private final SprayRows products;
    private final String noJob;

    private SprayFamily(PlanContext plan, JobLines jobLines) {
        this.plan = plan;
        this.blocks = jobLines.blocks();
        this.lines = new SprayLines(plan, jobLines.lines());
        this.products = new SprayRows(plan.lists(), blocks, plan.findings());
        this.noJob = plan.rows(Jobs.LIST).size() > 0 ? "no job names a sprayer" : "no jobs are listed";
    }

    static void build(PlanContext plan, JobLines jobLines) {
        SprayFamily family = new SprayFamily(plan, jobLines);
        ProductsNotSprayed.tell(plan, jobLines);
        family.tanks();
        family.records();
        SprayNozzleFamily.build(plan, family.blocks, family.products);
        family.hours();
        SprayerTests.tell(plan, family.blocks);
        SprayAsideFamily.build(plan);
    }

    private void tanks() {
        plan.add(SprayFieldTables.FIELDS, lines.sources(), noJob);
        plan.add(SprayTables.BLOCKS, of(blocks), noJob);
        plan.add(SprayTables.TANK_MIX, products.sources(plan.lists(), blocks), NO_PRODUCT);
        TankLoadRows loads = new TankLoadRows(plan, blocks, lines, products);
        plan.add(SprayFieldTables.LOADS, loads.loads(), "no block has its tankfuls reckoned");
        plan.add(SprayTankTables.FILLS, loads.fills(), "no block has its tankfuls and products reckoned");
        plan.add(
                SprayTankTables.WASHING,
                of(blocks.stream()
                        .filter(block -> SprayLines.given(
                                plan.rows(Machines.LIST),
                                block.machine(),
                                Machines.RESIDUAL,
                                Machines.RINSE_TANK,
                                Machines.PRIMING))
                        .toList()),
                "no sprayer has a residual volume, rinse tank or priming typed");
    }

    private void records() {
        SprayRecordRows records = new SprayRecordRows(plan, blocks, lines, products);
        plan.add(SprayTankTables.ORDER, products.order(), NO_PRODUCT);
        plan.add(SprayFieldTables.APPLICATIONS, records.records(), NO_PRODUCT);
        plan.add(SprayFieldTables.SEASON, records.season(), NO_PRODUCT);
        plan.add(SprayFieldTables.RECORDS, records.records(), NO_PRODUCT);
    }

    private void hours() {
        plan.add(SprayHourTables.VOLUMES, lines.volumes(), noJob);
        plan.add(
                SprayHourTables.WINDOW,
                of(blocksWith(Jobs.LATEST, Jobs.WORKABLE_DAYS, Jobs.DAYS_AVAILABLE, Jobs.HOURS_PER_DAY)),
                "no spraying job has a latest day, workable days, days available or hours per day");
        plan.add(
                SprayHourTables.WEATHER,
                of(blocksWith(Jobs.WIND_SPEED, Jobs.AIR_TEMPERATURE, Jobs.HUMIDITY)),
                "no spraying job has wind, temperature or humidity typed");
        plan.add(SprayHourTables.TREES, lines.ofType("air-blast sprayer"), "no job names an air-blast sprayer");
        plan.add(
                SprayHourTables.KNAPSACK,
                of(blocks.stream()
                        .filter(block -> plan.rows(Machines.LIST)
                                .text(Machines.TYPE, block.machine())
                                .equals("knapsack"))
                        .toList()),
                "no job names a knapsack");
    }

    private List<JobLines.Block> blocksWith(org.rickyard.lists.ColumnSpec... columns) {
        return blocks.stream()
                .filter(block -> SprayLines.given(plan.rows(Jobs.LIST), block.firstJob(), columns))
                .toList();
    }

    private RowSources of(List<JobLines.Block> some) {
        return new RowSources(some.size())
                .with(
                        Role.JOB,
                        plan.rows(Jobs.LIST),
                        some.stream().mapToInt(JobLines.Block::firstJob).toArray())
                .with(
                        Role.FIELD,
                        plan.rows(Fields.LIST),
                        some.stream().mapToInt(JobLines.Block::firstField).toArray())
                .with(
                        Role.MACHINE,
                        plan.rows(Machines.LIST),
                        some.stream().mapToInt(JobLines.Block::machine).toArray())
                .with(
                        Keys.BLOCK_KEY,
                        some.stream().mapToInt(JobLines.Block::key).toArray());
    }
}
