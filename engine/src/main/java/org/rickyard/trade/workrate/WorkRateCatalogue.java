package org.rickyard.trade.workrate;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;

/** The formulas of work rates, in reading order, and what else of this family stands on Basis. */
public final class WorkRateCatalogue {
    private WorkRateCatalogue() {}

    /** All formulas. */
    public static final List<Formula> FORMULAS = List.of(
            FieldRates.SPOT_WORK_RATE,
            FieldRates.EFFICIENCY,
            FieldRates.WORK_RATE,
            FieldRates.HOURS,
            WorkTotals.MACHINE_HOURS,
            WorkTotals.MACHINE_AREA,
            WorkTotals.HOLDING_HOURS);

    /** Constants that only cautions read. */
    public static final List<Constant> CONSTANTS = List.of();

    /** Tables that are read outside formulas. */
    public static final List<ReferenceTable> TABLES = List.of(Suitability.CROPS);
}
