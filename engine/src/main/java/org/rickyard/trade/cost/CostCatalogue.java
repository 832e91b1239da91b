package org.rickyard.trade.cost;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.trade.workrate.RememberedMachines;

/** The formulas of cost, in reading order. */
public final class CostCatalogue {
    private CostCatalogue() {}

    /** All formulas. */
    public static final List<Formula> FORMULAS = all();
    /** Constants that only cautions read. */
    public static final List<Constant> CONSTANTS = List.of();
    /** Tables that are read outside formulas. */
    public static final List<ReferenceTable> TABLES = List.of(JobCost.PULLED, RememberedMachines.LIFE);

    private static List<Formula> all() {
        List<Formula> all = new ArrayList<>(OwnershipCost.formulas());
        all.addAll(RepairCost.formulas());
        all.add(RemainingValue.AGE_WHEN_IT_GOES);
        all.add(RemainingValue.REMAINING);
        all.addAll(JobCost.formulas());
        all.addAll(OwnOrHire.formulas());
        all.addAll(JobTotals.formulas());
        all.addAll(CostTotals.formulas());
        return List.copyOf(all);
    }
}
