package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.FieldsWorked;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;

/** Makes the tables of spraying from the blocks of the job list. */
public final class SprayFamily {
    private static final String NO_PRODUCT = "no spraying job names a product or mix";

    private final PlanContext plan;
    private final List<JobLines.Block> blocks;
    private final SprayLines lines;
    private final ListedProducts listed;
    private final SprayRows products;
    private final SpreadRows spread;
    private final JobLines read;
    private final FieldsWorked fields;
    private final String noJob;

    private SprayFamily(PlanContext plan, JobLines jobLines) {
        this.plan = plan;
        this.read = jobLines;
        this.blocks = jobLines.blocks();
        this.lines = new SprayLines(plan, jobLines.lines());
        this.listed = new ListedProducts(plan.lists(), jobLines.mixOf(), plan.findings());
        this.products = new SprayRows(plan.lists(), blocks, listed, plan.findings());
        this.spread = new SpreadRows(plan.lists(), jobLines.spreads(), listed, plan.findings());
        this.fields = FieldsWorked.ofBlocks(plan.rows(Jobs.LIST), plan.rows(Fields.LIST), jobLines.lines());
        this.noJob = plan.rows(Jobs.LIST).size() > 0 ? "no job names a sprayer" : "no jobs are listed";
    }

    /** Makes them; the table of work rates must have been made before. */
    public static void build(PlanContext plan, JobLines jobLines) {
        SprayFamily family = new SprayFamily(plan, jobLines);
        ProductsNotSprayed.tell(plan, jobLines);
        jobLines.mixOf().tell(plan.findings());
        ProductsOfNoJob.tell(plan, jobLines);
        family.tanks();
        family.records();
        SprayNozzleFamily.build(plan, family.blocks, family.lines, family.products);
        family.hours();
        SprayerTests.tell(plan, family.blocks);
        MeasuredVolumes.tell(plan, family.blocks);
        HoursOfSprayers.tell(plan, jobLines.lines());
        HoursOfSprayers.tellOfSeveral(plan, family.blocks);
        SprayAsideFamily.build(plan, jobLines.mixOf());
    }

    private void tanks() {
        plan.add(SprayFieldTables.FIELDS, lines.sources(), noJob);
        plan.add(fields.in(SprayTables.BLOCKS), of(blocks), noJob);
        RowSources mixed = products.sources(plan.lists(), blocks, fields);
        plan.add(DosesByContent.sprayed(fields.in(SprayTables.TANK_MIX), mixed), mixed, NO_PRODUCT);
        TankLoadRows loads = new TankLoadRows(plan, blocks, lines, products, fields);
        plan.add(SprayFieldTables.LOADS, loads.loads(), "no block has its tankfuls reckoned");
        plan.add(fields.in(SprayTankTables.FILLS), loads.fills(), "no block has its tankfuls and products reckoned");
        plan.add(
                fields.in(SprayTankTables.WASHING),
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
        SprayRecordRows records = new SprayRecordRows(plan, read, lines, products);
        RowSources spreads = spread.sources();
        plan.add(
                DosesByContent.spread(SpreadTables.products(spread.inRounds()), spreads),
                spreads,
                "no job of a spreader, tanker or drill names a product");
        plan.add(
                SprayTankTables.order(!products.uses().isEmpty(), !spread.uses().isEmpty(), listed.dosesOtherwise()),
                listed.order(Stream.concat(products.uses().stream(), spread.uses().stream())
                        .toList()),
                "no job of a sprayer, spreader, tanker or drill names a product or mix");
        plan.add(SprayFieldTables.APPLICATIONS, records.records(), NO_PRODUCT);
        plan.add(SprayFieldTables.SEASON, records.season(), NO_PRODUCT);
        plan.add(SprayFieldTables.RECORDS, records.records(), NO_PRODUCT);
    }

    private void hours() {
        plan.add(SprayHourTables.VOLUMES, lines.volumes(), noJob);
        plan.add(
                fields.in(SprayHourTables.WINDOW),
                of(blocksWith(Jobs.LATEST, Jobs.WORKABLE_DAYS, Jobs.DAYS_AVAILABLE, Jobs.HOURS_PER_DAY)),
                "no spraying job has a latest day, workable days, days available or hours per day");
        plan.add(
                fields.in(SprayHourTables.WEATHER),
                of(inEachWeather()),
                "no spraying job has wind, temperature or humidity typed");
        plan.add(SprayHourTables.TREES, lines.ofType("air-blast sprayer"), "no job names an air-blast sprayer");
        plan.add(
                fields.in(SprayHourTables.KNAPSACK),
                of(blocks.stream()
                        .filter(block -> plan.rows(Machines.LIST)
                                .text(Machines.TYPE, block.machine())
                                .equals("knapsack"))
                        .toList()),
                "no job names a knapsack");
        if (plan.rows(Machines.LIST).has(Machines.PUMP_FLOW)) {
            plan.add(fields.in(PumpTables.PUMPS), of(pumped()), "no job names a sprayer with a pump flow");
        }
    }

    /** The blocks of booms and air-blast sprayers whose pump flow is typed; a knapsack is pumped by hand or as it is made. */
    private List<JobLines.Block> pumped() {
        ListRows machines = plan.rows(Machines.LIST);
        return blocks.stream()
                .filter(block -> machines.isFilled(Machines.PUMP_FLOW, block.machine())
                        && !machines.text(Machines.TYPE, block.machine()).equals("knapsack"))
                .toList();
    }

    /** The blocks of which a row tells one of these, each with the first such row. */
    private List<JobLines.Block> blocksWith(ColumnSpec... columns) {
        List<JobLines.Block> with = new ArrayList<>();
        for (JobLines.Block block : blocks) {
            rows(block)
                    .filter(job -> SprayLines.given(plan.rows(Jobs.LIST), job, columns))
                    .findFirst()
                    .ifPresent(job -> with.add(block.at(job)));
        }
        return with;
    }

    /** The blocks of which a row tells something of the weather, once for each weather that is told. */
    private List<JobLines.Block> inEachWeather() {
        ListRows jobs = plan.rows(Jobs.LIST);
        List<JobLines.Block> each = new ArrayList<>();
        for (JobLines.Block block : blocks) {
            Set<List<String>> told = new HashSet<>();
            rows(block)
                    .filter(job -> SprayLines.given(jobs, job, Jobs.WIND_SPEED, Jobs.AIR_TEMPERATURE, Jobs.HUMIDITY))
                    .filter(job ->
                            told.add(Stream.of(Jobs.WIND_SPEED, Jobs.WIND_HEIGHT, Jobs.AIR_TEMPERATURE, Jobs.HUMIDITY)
                                    .map(column -> jobs.text(column, job))
                                    .toList()))
                    .forEach(job -> each.add(block.at(job)));
        }
        return each;
    }

    /** All rows of the job list that a block is made of, the leading one first. */
    private IntStream rows(JobLines.Block block) {
        return IntStream.concat(
                        IntStream.of(block.firstJob()),
                        lines.ofBlock(block.key()).stream()
                                .flatMap(line -> read.rows(lines.line(line)).stream())
                                .mapToInt(Integer::intValue))
                .distinct();
    }

    private RowSources of(List<JobLines.Block> some) {
        int[] machine = some.stream().mapToInt(JobLines.Block::machine).toArray();
        int[] key = some.stream().mapToInt(JobLines.Block::key).toArray();
        return new RowSources(some.size())
                .with(
                        Role.JOB,
                        plan.rows(Jobs.LIST),
                        some.stream().mapToInt(JobLines.Block::firstJob).toArray())
                .with(
                        Role.FIELD,
                        plan.rows(Fields.LIST),
                        some.stream().mapToInt(JobLines.Block::firstField).toArray())
                .with(Role.MACHINE, plan.rows(Machines.LIST), machine)
                .with(Keys.BLOCK_KEY, key)
                .with(Quantities.FIELDS_OF_JOB, fields.named(key))
                .with(Keys.MACHINE_KEY, RowNumbers.keysOf(machine));
    }
}
