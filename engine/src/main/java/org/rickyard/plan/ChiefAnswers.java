package org.rickyard.plan;

import java.util.List;
import java.util.Map;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.spraying.SprayTables;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.Crop;
import org.rickyard.trade.silage.FeedBalance;
import org.rickyard.trade.spraying.Nitrogen;
import org.rickyard.trade.spraying.SeasonDose;
import org.rickyard.trade.spraying.Spreading;
import org.rickyard.trade.spraying.TankPlan;
import org.rickyard.trade.spraying.TreeCounts;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.WorkTotals;

/** The answers beside which the same stands in the client's own unit. */
final class ChiefAnswers {
    private ChiefAnswers() {}

    /** Those of each table, by its id. */
    static final Map<String, List<Symbol>> OF_TABLES = Map.of(
            WorkTotals.WORK_RATES,
            List.of(FieldRates.RATE),
            "machine-totals",
            List.of(WorkTotals.AREA_OF_MACHINE),
            SprayTables.BLOCKS_ID,
            List.of(TankPlan.SPRAY_TOTAL, TankPlan.TANKFUL_AREA, TankPlan.PART, TankPlan.EVEN),
            "crop",
            List.of(Crop.ENSILED),
            "clamps",
            List.of(ClampShape.VOLUME, ClampContents.CAPACITY, ClampContents.CROP_IN, ClampContents.ROOM),
            "clamp-heights",
            List.of(ClampHeights.HEIGHT_ON_DAY, ClampHeights.HIGHEST),
            "feed-balance",
            List.of(FeedBalance.SURPLUS),
            SeasonDose.APPLICATION_TABLE,
            List.of(Nitrogen.SPRAYED),
            Spreading.TABLE,
            List.of(Nitrogen.SPREAD),
            "tree-areas",
            List.of(TreeCounts.DENSITY, TreeCounts.TREE_AREA));
}
