package org.rickyard.trade;

import java.util.List;
import java.util.Optional;
import org.rickyard.formula.Formula;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.Crop;
import org.rickyard.trade.silage.Digging;
import org.rickyard.trade.spraying.SprayRates;
import org.rickyard.trade.spraying.TankPlan;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.WorkTotals;

/** Every formula of the engine, in reading order. */
public final class Catalogue {
    private Catalogue() {}

    private static final List<Formula> ALL = List.of(
            FieldRates.SPOT_WORK_RATE,
            FieldRates.EFFICIENCY,
            FieldRates.WORK_RATE,
            FieldRates.HOURS,
            WorkTotals.MACHINE_HOURS,
            WorkTotals.MACHINE_AREA,
            WorkTotals.HOLDING_HOURS,
            SprayRates.NOZZLE_OUTPUT,
            SprayRates.VOLUME_CLASS,
            TankPlan.TOTAL_SPRAY_MIX,
            TankPlan.TANK,
            TankPlan.AREA_PER_TANKFUL,
            TankPlan.FULL_TANKFULS,
            TankPlan.PART_TANKFUL,
            TankPlan.DOSE_PER_HECTARE,
            TankPlan.PRODUCT_TOTAL,
            TankPlan.PRODUCT_PER_FULL_TANKFUL,
            TankPlan.PRODUCT_IN_PART_TANKFUL,
            TankPlan.PACKS,
            Crop.STANDING_CROP,
            Crop.CROP_ENSILED,
            Crop.CROP_DRY_MATTER,
            ClampShape.SILAGE_HEIGHT,
            ClampShape.SIDE_SLOPE,
            ClampShape.RAMPED_ENDS,
            ClampShape.FULL_SECTION,
            ClampShape.ONE_RAMP,
            ClampShape.HEIGHT_OF_HEAP,
            ClampShape.CLAMP_VOLUME,
            ClampContents.CROP_IN_CLAMP,
            ClampContents.CROP_IN_CLAMP_DM,
            ClampContents.DM_OF_CLAMP,
            ClampContents.CLAMP_DENSITY,
            ClampContents.CLAMP_DENSITY_DM,
            ClampContents.CLAMP_CAPACITY,
            ClampContents.CLAMP_CAPACITY_DM,
            ClampContents.CLAMP_FILL,
            Digging.VOLUME_IN_GROUND,
            Digging.SPOIL_VOLUME,
            Digging.SPOIL_MASS,
            Digging.DIGGING_HOURS);

    /** All formulas. */
    public static List<Formula> all() {
        return ALL;
    }

    /** The formula of an id. */
    public static Optional<Formula> find(String id) {
        return ALL.stream().filter(formula -> formula.id().equals(id)).findFirst();
    }
}
