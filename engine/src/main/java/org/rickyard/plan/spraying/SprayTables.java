package org.rickyard.plan.spraying;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Products;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.NozzlePressure;
import org.rickyard.trade.spraying.ProductOrder;
import org.rickyard.trade.spraying.SprayLimits;
import org.rickyard.trade.spraying.SprayQuality;
import org.rickyard.trade.spraying.SprayRates;
import org.rickyard.trade.spraying.SprayWork;
import org.rickyard.trade.spraying.TankPlan;
import org.rickyard.trade.workrate.WorkTotals;

/** The tables of spraying: one row per block, and one per block and product. */
public final class SprayTables {
    private SprayTables() {}

    /** Id of the table of blocks. */
    public static final String BLOCKS_ID = "spray-blocks";
    /** Id of the table of products in the tank. */
    static final String TANK_MIX_ID = ProductOrder.TANK_MIX;

    private static final Formula AREA_OF_BLOCK = new Formula(
            "block-area",
            TankPlan.BLOCK_AREA,
            new Expr.Total(WorkTotals.WORK_RATES, Quantities.AREA, Keys.BLOCK_KEY, Keys.BLOCK_KEY, true),
            Source.derived("sum of the block's fields; withheld as soon as one field has no area"),
            "net areas",
            List.of());

    private static final Formula TREATED = new Formula(
            "treated-area-of-block",
            TankPlan.TREATED_AREA,
            new Expr.Total(SprayWork.FIELDS, SprayWork.TREATED_AREA, Keys.BLOCK_KEY, Keys.BLOCK_KEY, true),
            Source.derived("sum of the block's treated areas; withheld as soon as one field has none"),
            "net areas; of bands only their share",
            List.of());

    private static final Condition SMALL_PART = Condition.all(List.of(
            Condition.compare(Expr.value(TankPlan.PART), Relation.MORE, litres(0)),
            Condition.compare(
                    Expr.value(TankPlan.PART),
                    Relation.LESS,
                    Expr.constant(SprayLimits.SMALL_LAST_LOAD).times(TankPlan.TANK_FILLED))));

    private static final List<CautionRule> BLOCK_RULES = List.of(
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            SMALL_PART, Condition.compare(Expr.value(TankPlan.FULL), Relation.MORE, Expr.number(0)))),
                    "the last load is small; consider filling all loads alike (even tankful)."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            SMALL_PART,
                            Condition.compare(Expr.value(TankPlan.FULL), Relation.AT_MOST, Expr.number(0)))),
                    "the only load is small for this tank: see in the sprayer's book whether pump and agitation work with"
                            + " so little."),
            SprayRules.ofBooms(SprayRules.SPACING_DIFFERS),
            SprayRules.stop(
                    SprayRules.more(Quantities.USABLE_TANK, Expr.value(Quantities.TANK_VOLUME)),
                    "the usable volume typed is more than the tank holds: mend one of the two, and never fill above what"
                            + " the sprayer's plate allows."));

    /** One row per block. */
    static final TableSpec BLOCKS = new TableSpec(
            BLOCKS_ID,
            "Spray blocks",
            "Spray blocks: tankfuls for the fields of one job, mix and sprayer",
            "one row per block: the fields of one job, mix and sprayer",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            SprayColumns.BLOCK,
                            Names.OPERATION,
                            Names.MACHINE,
                            Names.MACHINE_TYPE,
                            new TableColumn.Key(Keys.BLOCK_KEY),
                            new TableColumn.Calculated(AREA_OF_BLOCK, false),
                            TableColumn.Calculated.aside(TREATED),
                            Names.link(Quantities.WATER_VOLUME, Candidate.typed(Role.JOB, Jobs.WATER_VOLUME)),
                            Names.link(
                                    Quantities.SPEED,
                                    Candidate.typed(Role.JOB, Jobs.SPEED),
                                    Candidate.typed(Role.MACHINE, Machines.SPEED)),
                            SprayColumns.BAND_WIDTH,
                            SprayColumns.NOZZLE_SPACING,
                            SprayColumns.WORKING_WIDTH,
                            SprayColumns.NOZZLES,
                            new TableColumn.Calculated(NozzlePressure.WIDTH_PER_NOZZLE, false),
                            Names.optional(Quantities.USABLE_TANK, Candidate.typed(Role.MACHINE, Machines.USABLE_TANK)),
                            Names.link(Quantities.TANK_VOLUME, Candidate.typed(Role.MACHINE, Machines.TANK)),
                            new TableColumn.Calculated(TankPlan.TANK, false),
                            new TableColumn.Calculated(SprayRates.NOZZLE_OUTPUT, true),
                            new TableColumn.Calculated(SprayRates.VOLUME_CLASS, true),
                            new TableColumn.Calculated(TankPlan.TOTAL_SPRAY_MIX, true),
                            new TableColumn.Calculated(TankPlan.AREA_PER_TANKFUL, true),
                            new TableColumn.Calculated(TankPlan.FULL_TANKFULS, true),
                            new TableColumn.Calculated(TankPlan.PART_TANKFUL, true),
                            new TableColumn.Calculated(TankPlan.TANKFULS, false),
                            new TableColumn.Calculated(TankPlan.EVEN_TANKFUL, true),
                            new TableColumn.Key(Keys.MACHINE_KEY)),
                    BLOCK_RULES),
            List.of(new TableSpec.TotalName(TankPlan.SPRAY_TOTAL, "Rickyard_total_spray_mix")),
            Cautions.SPRAYING,
            BLOCK_RULES);

    /** One row per block and product. */
    static final TableSpec TANK_MIX = new TableSpec(
            TANK_MIX_ID,
            "Tank mix",
            "Tank mix: product for each block and each tankful",
            "one row per block and product",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            SprayColumns.PRODUCT_OF_JOB,
                            SprayColumns.BLOCK,
                            Names.MACHINE,
                            SprayColumns.UNIT_OF_PRODUCT,
                            new TableColumn.Key(Keys.BLOCK_KEY),
                            new TableColumn.Key(Keys.TANK_MIX_KEY),
                            new TableColumn.Key(Keys.PRODUCT_KEY),
                            new TableColumn.Joined(
                                    Keys.BLOCK_POSITION, new Expr.Position(BLOCKS_ID, Keys.BLOCK_KEY, Keys.BLOCK_KEY)),
                            fromBlock(TankPlan.TREATED_AREA),
                            fromBlock(Quantities.WATER_VOLUME),
                            fromBlock(TankPlan.TANKFUL_AREA),
                            fromBlock(TankPlan.PART),
                            fromBlock(TankPlan.EVEN),
                            SprayColumns.dose(Quantities.DOSE),
                            SprayColumns.dose(Quantities.CONCENTRATION),
                            Names.optional(
                                    Quantities.HIGHEST_DOSE, Candidate.typed(Role.PRODUCT, Products.HIGHEST_DOSE)),
                            Names.optional(
                                    Quantities.HIGHEST_CONCENTRATION,
                                    Candidate.typed(Role.PRODUCT, Products.HIGHEST_DOSE)),
                            Names.optional(
                                    Quantities.LOWEST_WATER_VOLUME,
                                    Candidate.typed(Role.PRODUCT, Products.LOWEST_WATER_VOLUME)),
                            Names.optional(
                                    Quantities.HIGHEST_WATER_VOLUME,
                                    Candidate.typed(Role.PRODUCT, Products.HIGHEST_WATER_VOLUME)),
                            SprayColumns.LABEL_QUALITY,
                            SprayColumns.NOZZLE_QUALITY,
                            new TableColumn.Calculated(SprayQuality.LABEL_RANK, false),
                            new TableColumn.Calculated(SprayQuality.NOZZLE_RANK, false),
                            Names.link(Quantities.PACK_SIZE, Candidate.typed(Role.PRODUCT, Products.PACK_SIZE)),
                            new TableColumn.Calculated(TankPlan.DOSE_FROM_SHARE, false),
                            new TableColumn.Calculated(TankPlan.DOSE_PER_HECTARE, false),
                            new TableColumn.Calculated(TankPlan.PRODUCT_TOTAL, true),
                            // A job smaller than the tank has none, and lacks nothing by it.
                            TableColumn.Calculated.aside(TankPlan.PRODUCT_PER_FULL_TANKFUL),
                            new TableColumn.Calculated(TankPlan.PRODUCT_IN_PART_TANKFUL, true),
                            new TableColumn.Calculated(TankPlan.PACKS, true),
                            new TableColumn.Calculated(TankPlan.PRODUCT_PER_EVEN_TANKFUL, true)),
                    SprayRules.PRODUCT),
            List.of(),
            Cautions.TANK,
            SprayRules.PRODUCT);

    private static TableColumn fromBlock(Symbol symbol) {
        return new TableColumn.Joined(symbol, new Expr.From(BLOCKS_ID, symbol, Keys.BLOCK_POSITION));
    }

    private static Expr litres(double value) {
        return new Expr.AsUnit(Expr.number(value), Units.L);
    }
}
