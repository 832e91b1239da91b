package org.rickyard.plan;

import java.util.List;
import java.util.Map;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.spraying.SprayTables;
import org.rickyard.trade.season.SeasonFit;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.Crop;
import org.rickyard.trade.silage.FeedBalance;
import org.rickyard.trade.silage.FeedDemand;
import org.rickyard.trade.spraying.CatchRun;
import org.rickyard.trade.spraying.FlowRates;
import org.rickyard.trade.spraying.LoadTest;
import org.rickyard.trade.spraying.Nitrogen;
import org.rickyard.trade.spraying.NozzlePressure;
import org.rickyard.trade.spraying.NozzleWear;
import org.rickyard.trade.spraying.SeasonDose;
import org.rickyard.trade.spraying.SmallSprayers;
import org.rickyard.trade.spraying.SprayRates;
import org.rickyard.trade.spraying.Spreading;
import org.rickyard.trade.spraying.TankPlan;
import org.rickyard.trade.spraying.TreeCounts;
import org.rickyard.trade.spraying.TreeSpraying;
import org.rickyard.trade.workrate.BucketRate;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.FuelAndLabour;
import org.rickyard.trade.workrate.StageRates;
import org.rickyard.trade.workrate.WorkTotals;

/** The answers beside which the same stands in the client's own unit. */
final class ChiefAnswers {
    private ChiefAnswers() {}

    /** Those of each table, by its id. */
    static final Map<String, List<Symbol>> OF_TABLES = Map.ofEntries(
            Map.entry(WorkTotals.WORK_RATES, List.of(FieldRates.RATE)),
            Map.entry("machine-totals", List.of(WorkTotals.AREA_OF_MACHINE)),
            Map.entry(
                    SprayTables.BLOCKS_ID,
                    List.of(TankPlan.SPRAY_TOTAL, TankPlan.TANKFUL_AREA, TankPlan.PART, TankPlan.EVEN)),
            Map.entry("crop", List.of(Crop.ENSILED)),
            Map.entry(
                    "clamps",
                    List.of(ClampShape.VOLUME, ClampContents.CAPACITY, ClampContents.CROP_IN, ClampContents.ROOM)),
            Map.entry("clamp-heights", List.of(ClampHeights.HEIGHT_ON_DAY, ClampHeights.HIGHEST)),
            Map.entry("feed-balance", List.of(FeedBalance.SURPLUS)),
            Map.entry(SeasonDose.APPLICATION_TABLE, List.of(Nitrogen.SPRAYED)),
            Map.entry(Spreading.TABLE, List.of(Nitrogen.SPREAD)),
            Map.entry("tree-areas", List.of(TreeCounts.DENSITY, TreeCounts.TREE_AREA)),
            Map.entry(WorkTotals.MACHINE_RATES, List.of(FieldRates.RATE)),
            Map.entry(StageRates.HANDLING_RATES, List.of(StageRates.HANDLED)),
            Map.entry(BucketRate.TABLE, List.of(BucketRate.LOOSE_RATE)),
            Map.entry("timed-runs", List.of(SmallSprayers.TIMED_SPEED)),
            Map.entry("flow-rates", List.of(FlowRates.FLOW_EACH, FlowRates.FLOW_RATE, SmallSprayers.FILL_AREA)),
            Map.entry("area-tests", List.of(SmallSprayers.TESTED_RATE, SmallSprayers.FILL_AREA)),
            Map.entry(CatchRun.TABLE, List.of(CatchRun.CAUGHT_RATE)),
            Map.entry("spreader-tests", List.of(Spreading.TESTED)),
            Map.entry("load-tests", List.of(LoadTest.LOAD_AREA, LoadTest.BY_WEIGHT)),
            Map.entry("tanker-tests", List.of(LoadTest.LOAD_AREA, LoadTest.BY_VOLUME)),
            Map.entry("nozzle-sets", List.of(NozzleWear.MEASURED, NozzleWear.VOLUME_SPEED)),
            Map.entry(NozzleWear.TEST, List.of(NozzleWear.MEAN)),
            Map.entry("nozzles", List.of(SprayRates.OUTPUT_PER_NOZZLE, NozzlePressure.WANTED_PRESSURE)),
            Map.entry(
                    "tree-spraying",
                    List.of(
                            TreeSpraying.TREE_ROW_VOLUME,
                            TreeSpraying.DILUTE,
                            TreeSpraying.FLOW,
                            TreeSpraying.FLOW_PER_SIDE)),
            Map.entry(FuelAndLabour.WORK_INPUTS, List.of(FuelAndLabour.FUEL, FuelAndLabour.FUEL_PER_HECTARE)),
            Map.entry("feed-demand", List.of(FeedDemand.GROUP_FRESH)),
            Map.entry("season", List.of(SeasonFit.REQUIRED_RATE, SeasonFit.REQUIRED_WIDTH)));
}
