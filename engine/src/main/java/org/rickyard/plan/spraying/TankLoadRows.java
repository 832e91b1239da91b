package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rickyard.formula.Values;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.FieldsWorked;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.SprayWork;
import org.rickyard.trade.spraying.TankLoads;
import org.rickyard.trade.spraying.TankPlan;

/**
 * Which tankful sprays which fields. The rows are laid out from the values of this run; their figures are live, and a
 * balance check shows when changed inputs want other rows, that is, a new run.
 */
final class TankLoadRows {
    private static final double LEAST_AREA = 1e-9;
    private static final int MOST_ROWS = 50_000;

    private record Load(int block, int tankful, int key, int line) {}

    private record Fill(int block, int tankful, int key, int product) {}

    private final PlanContext plan;
    private final List<JobLines.Block> blocks;
    private final SprayLines lines;
    private final SprayRows products;
    private final FieldsWorked worked;
    private final List<Load> loads = new ArrayList<>();
    private final List<Fill> fills = new ArrayList<>();
    private int keys;

    TankLoadRows(
            PlanContext plan, List<JobLines.Block> blocks, SprayLines lines, SprayRows products, FieldsWorked worked) {
        this.plan = plan;
        this.blocks = blocks;
        this.lines = lines;
        this.products = products;
        this.worked = worked;
        ResultTable table = plan.table(SprayTables.BLOCKS_ID);
        for (int i = 0; i < blocks.size(); i++) {
            Values tankfuls = table.of(TankPlan.LOADS);
            Values area = table.of(TankPlan.TANKFUL_AREA);
            if (!tankfuls.has(i) || !area.has(i)) {
                continue;
            }
            if (loads.size() + tankfuls.number(i) > MOST_ROWS) {
                plan.findings()
                        .add(Finding.caution(
                                null,
                                "the tankfuls of block " + (i + 1)
                                        + " and later ones are not laid out one by one: there"
                                        + " are too many; see Spray blocks for their number."));
                break;
            }
            lay(i, (int) tankfuls.number(i), area.number(i));
        }
    }

    private void lay(int block, int tankfuls, double tankfulArea) {
        ResultTable sprayed = plan.table(SprayWork.FIELDS);
        Values treated = sprayed.of(SprayWork.TREATED_AREA);
        Values before = sprayed.of(SprayWork.AREA_BEFORE);
        List<Integer> ofBlock = lines.ofBlock(blocks.get(block).key());
        List<Integer> inTank = products.inMixingOrder(block);
        int next = 0;
        for (int tankful = 1; tankful <= tankfuls; tankful++) {
            int key = ++keys;
            for (int at = next; at < ofBlock.size(); at++) {
                int line = ofBlock.get(at);
                double start = Math.max(before.number(line), (tankful - 1) * tankfulArea);
                double end = Math.min(before.number(line) + treated.number(line), tankful * tankfulArea);
                if (end - start > LEAST_AREA) {
                    loads.add(new Load(block, tankful, key, line));
                }
                if (before.number(line) + treated.number(line) > tankful * tankfulArea) {
                    next = at;
                    break;
                }
            }
            for (int product : inTank) {
                fills.add(new Fill(block, tankful, key, product));
            }
        }
    }

    RowSources loads() {
        int count = loads.size();
        int[] job = new int[count];
        int[] field = new int[count];
        int[] machine = new int[count];
        int[] block = new int[count];
        int[] spray = new int[count];
        int[] load = new int[count];
        int[] tankful = new int[count];
        for (int i = 0; i < count; i++) {
            Load row = loads.get(i);
            JobLines.Line line = lines.line(row.line());
            job[i] = line.job();
            field[i] = line.field();
            machine[i] = line.machine();
            block[i] = line.block();
            spray[i] = row.line() + 1;
            load[i] = row.key();
            tankful[i] = row.tankful();
        }
        return new RowSources(count)
                .with(Role.JOB, plan.rows(Jobs.LIST), job)
                .with(Role.FIELD, plan.rows(Fields.LIST), field)
                .with(Role.MACHINE, plan.rows(Machines.LIST), machine)
                .with(Keys.BLOCK_KEY, block)
                .with(Keys.SPRAY_KEY, spray)
                .with(Keys.LOAD_KEY, load)
                .with(TankLoads.TANKFUL, tankful)
                .with(TankLoads.TANKFUL_NAME, names(tankful));
    }

    private static String[] names(int[] tankfuls) {
        return Arrays.stream(tankfuls).mapToObj(tankful -> "tankful " + tankful).toArray(String[]::new);
    }

    RowSources fills() {
        int count = fills.size();
        int[] job = new int[count];
        int[] dosed = new int[count];
        int[] mix = new int[count];
        int[] field = new int[count];
        int[] machine = new int[count];
        int[] block = new int[count];
        int[] load = new int[count];
        int[] mixKey = new int[count];
        int[] tankful = new int[count];
        String[] unit = new String[count];
        for (int i = 0; i < count; i++) {
            Fill row = fills.get(i);
            ListedProducts.Use product = products.use(row.product());
            job[i] = blocks.get(row.block()).firstJob();
            dosed[i] = product.job();
            mix[i] = product.mix();
            field[i] = blocks.get(row.block()).firstField();
            machine[i] = blocks.get(row.block()).machine();
            block[i] = blocks.get(row.block()).key();
            load[i] = row.key();
            mixKey[i] = row.product() + 1;
            tankful[i] = row.tankful();
            unit[i] = product.unit();
        }
        return new RowSources(count)
                .with(Role.JOB, plan.rows(Jobs.LIST), job)
                .with(Role.DOSED_JOB, plan.rows(Jobs.LIST), dosed)
                .with(Role.MIX, plan.rows(Mixes.LIST), mix)
                .with(Role.FIELD, plan.rows(Fields.LIST), field)
                .with(Role.MACHINE, plan.rows(Machines.LIST), machine)
                .with(Keys.BLOCK_KEY, block)
                .with(Quantities.FIELDS_OF_JOB, worked.named(block))
                .with(Keys.LOAD_KEY, load)
                .with(Keys.TANK_MIX_KEY, mixKey)
                .with(TankLoads.TANKFUL, tankful)
                .with(TankLoads.TANKFUL_NAME, names(tankful))
                .with(Quantities.PRODUCT_UNIT, unit);
    }
}
