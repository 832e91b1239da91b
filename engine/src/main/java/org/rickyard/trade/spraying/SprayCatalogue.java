package org.rickyard.trade.spraying;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;

/** The formulas of spraying, in reading order, and what else of this family stands on Basis. */
public final class SprayCatalogue {
    private SprayCatalogue() {}

    /** All formulas. */
    public static final List<Formula> FORMULAS = List.of(
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
            TankPlan.PACKS);

    /** Constants that only cautions read. */
    public static final List<Constant> CONSTANTS = List.of(SprayLimits.SMALL_LAST_LOAD);

    /** Tables that are read outside formulas. */
    public static final List<ReferenceTable> TABLES = List.of();
}
