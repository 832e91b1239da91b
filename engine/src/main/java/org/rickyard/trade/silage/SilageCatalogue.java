package org.rickyard.trade.silage;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;

/** The formulas of silage, in reading order, and what else of this family stands on Basis. */
public final class SilageCatalogue {
    private SilageCatalogue() {}

    /** All formulas. */
    public static final List<Formula> FORMULAS = joined(List.of(
            List.of(
                    Crop.STANDING_CROP,
                    Crop.CROP_ENSILED,
                    Crop.CROP_DRY_MATTER,
                    Losses.FIELD_LOSS_LEFT,
                    Losses.SILAGE_FED),
            List.of(
                    ClampSides.SILAGE_HEIGHT,
                    ClampSides.SIDE_SLOPE,
                    ClampSides.RAMPED_ENDS,
                    ClampShape.FULL_SECTION,
                    ClampShape.ONE_RAMP,
                    ClampShape.HEIGHT_OF_HEAP,
                    ClampShape.TOP_WIDTH,
                    ClampCrown.SECTION_OF_CROWN,
                    ClampShape.CLAMP_VOLUME,
                    ClampCrown.OVER_THE_TOP,
                    ClampSurface.CLAMP_SURFACE),
            List.of(
                    ClampContents.CROP_IN_CLAMP,
                    ClampContents.CROP_IN_CLAMP_DM,
                    ClampContents.DM_OF_CLAMP,
                    ClampContents.CLAMP_DENSITY,
                    ClampContents.DENSITY_TAKEN_FROM,
                    ClampContents.CLAMP_DENSITY_DM,
                    ClampContents.CLAMP_CAPACITY,
                    ClampContents.CLAMP_CAPACITY_DM,
                    ClampContents.CLAMP_FILL,
                    ClampContents.ROOM_LEFT),
            List.of(ClampHeights.SETTLING_BY_DM, ClampHeights.FILLED, ClampHeights.TOP, ClampHeights.DO_NOT_EXCEED),
            FilledByCrop.formulas(),
            List.of(
                    Packing.SPACE_TAKEN_UP,
                    Packing.POROSITY,
                    Packing.DENSITY_RANGE,
                    Packing.DENSITY_ABOVE_TARGET,
                    Packing.DENSITY_ABOVE_LEAST,
                    Packing.STORAGE_LOSS_BY_DENSITY,
                    Filling.CHOP_LENGTH,
                    Filling.PH_EXPECTED,
                    Filling.PH_TO_STAY_BELOW),
            List.of(
                    Rolling.ROLLING_MASS,
                    Filling.DELIVERY_RECKONED,
                    Filling.DELIVERY_IF_UNHELD,
                    Rolling.ROLLING_CAPACITY,
                    Rolling.ROLLING_CAPACITY_THIRD,
                    Rolling.ROLLING_CAPACITY_FORTY,
                    Rolling.ROLLING_WEIGHT_NEEDED,
                    Rolling.ROLLING_WEIGHT_THIRD,
                    Rolling.ROLLING_WEIGHT_FORTY,
                    Rolling.LAYER_RECKONED,
                    Rolling.LAYER_COUNT,
                    Filling.FILLING_HOURS_A_DAY,
                    Filling.FILLING_HOURS,
                    Filling.DAYS_LIES_OPEN,
                    PackingModel.PACKING_FACTOR,
                    PackingModel.PACKED_DENSITY),
            List.of(
                    Digging.SWELL_OF_SOIL,
                    Digging.VOLUME_IN_GROUND,
                    Digging.SPOIL_VOLUME,
                    Digging.SPOIL_MASS,
                    Digging.DIGGING_HOURS,
                    Digging.HOURS_A_DAY,
                    Digging.DIGGING_DAYS,
                    SpoilHeap.HEAP_SECTION,
                    SpoilHeap.HEAP_HEIGHT,
                    SpoilHeap.HEAP_WIDTH,
                    SpoilHeap.HEAP_FOOTPRINT,
                    SpoilHeap.DISTANCE_BACK),
            List.of(
                    Effluent.DRAINING,
                    Effluent.EFFLUENT_VOLUME,
                    Effluent.EFFLUENT_BASTIMAN,
                    EffluentTank.SILO,
                    EffluentTank.TANK,
                    EffluentTank.EFFLUENT_LAW,
                    EffluentTank.TOGETHER,
                    EffluentTank.LARGER,
                    EffluentTank.HOLDS,
                    EffluentTank.TANK_SPARE),
            List.of(
                    Covering.SIDES,
                    Covering.TOP,
                    Covering.SHEET_AREA,
                    Covering.SHEET_ROLLS,
                    Covering.WEIGHTS,
                    Covering.ADDITIVE_LITRES),
            List.of(
                    FeedDemand.DAYS_OF_GROUP,
                    FeedDemand.HEAD_INTAKE,
                    FeedDemand.DAILY_DEMAND,
                    FeedDemand.FEED_DEMAND,
                    FeedDemand.FEED_DEMAND_FRESH,
                    FeedStock.STORE,
                    FeedStock.STOCK_IN_HAND,
                    FeedStock.STOCK_DM,
                    FeedBalance.CROP_TO_FEED,
                    FeedBalance.STOCK_TO_FEED,
                    FeedBalance.FEED_AVAILABLE,
                    FeedBalance.DAYS_FEED_LASTS,
                    FeedBalance.SURPLUS_OR_SHORTFALL,
                    FeedBalance.ANIMALS_FED),
            List.of(
                    FeedOut.SILAGE_PER_DAY,
                    FeedOut.FACE_AREA,
                    FeedOut.FEED_OUT_REACHED,
                    FeedOut.FEED_OUT_TARGET,
                    FeedOut.FACE_AREA_WANTED,
                    FeedOut.CLAMP_WIDTH_WANTED,
                    FeedOut.CLAMP_WIDTH_TO_BUILD,
                    FeedOut.CLAMP_LENGTH_WANTED),
            List.of(
                    Bales.BALE_COUNT,
                    Bales.BALE_SPACE,
                    Bales.BALE_WEIGHT,
                    Bales.BALES_OF_SURPLUS,
                    Bales.SURPLUS_SPACE)));

    /** Constants that only cautions read. */
    public static final List<Constant> CONSTANTS = List.of(
            Packing.DISAGREEMENT,
            ClampSides.WIDTHS_APART,
            Packing.DRY_MATTER_OFF,
            Packing.MOST_PORES,
            EffluentTank.LEAST_DISTANCE,
            EffluentTank.NEW_YARD_IRELAND,
            FeedOut.SLOWEST,
            FeedStock.COUNT_TOLERANCE,
            Filling.MOST_DAYS,
            PackingModel.SWITCH);

    /** Tables that are read outside formulas. */
    public static final List<ReferenceTable> TABLES = List.of();

    private static List<Formula> joined(List<List<Formula>> groups) {
        List<Formula> all = new ArrayList<>();
        groups.forEach(all::addAll);
        return List.copyOf(all);
    }
}
