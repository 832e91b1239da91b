package org.rickyard.trade.silage;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;

/** The formulas of silage, in reading order, and what else of this family stands on Basis. */
public final class SilageCatalogue {
    private SilageCatalogue() {}

    /** All formulas. */
    public static final List<Formula> FORMULAS = List.of(
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

    /** Constants that only cautions read. */
    public static final List<Constant> CONSTANTS = List.of();

    /** Tables that are read outside formulas. */
    public static final List<ReferenceTable> TABLES = List.of();
}
