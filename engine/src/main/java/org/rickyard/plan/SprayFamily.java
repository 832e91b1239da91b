package org.rickyard.plan;

import java.util.List;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.trade.Keys;

/** Makes the tables of spraying from the blocks of the job list. */
final class SprayFamily {
    private SprayFamily() {}

    static void build(PlanContext plan, JobLines jobLines) {
        List<JobLines.Block> blocks = jobLines.blocks();
        SprayRows products = new SprayRows(plan.lists(), blocks, plan.findings());
        boolean hasJobs = plan.rows(Jobs.LIST).size() > 0;
        plan.add(SprayTables.BLOCKS, blocks(plan, blocks), hasJobs ? "no job names a sprayer" : "no jobs are listed");
        plan.add(
                SprayTables.TANK_MIX, products.sources(plan.lists(), blocks), "no spraying job names a product or mix");
    }

    private static RowSources blocks(PlanContext plan, List<JobLines.Block> blocks) {
        return new RowSources(blocks.size())
                .with(
                        Role.JOB,
                        plan.rows(Jobs.LIST),
                        blocks.stream().mapToInt(JobLines.Block::firstJob).toArray())
                .with(
                        Role.FIELD,
                        plan.rows(Fields.LIST),
                        blocks.stream().mapToInt(JobLines.Block::firstField).toArray())
                .with(
                        Role.MACHINE,
                        plan.rows(Machines.LIST),
                        blocks.stream().mapToInt(JobLines.Block::machine).toArray())
                .with(
                        Keys.BLOCK_KEY,
                        blocks.stream().mapToInt(JobLines.Block::key).toArray());
    }
}
