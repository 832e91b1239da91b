package org.rickyard.trade.workrate;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;

/** The formulas of work rates, in reading order, and what else of this family stands on Basis. */
public final class WorkRateCatalogue {
    private WorkRateCatalogue() {}

    private static final List<Formula> RATES = List.of(
            FieldShape.SHAPE,
            FieldShape.WIDTH,
            FieldRates.SPOT_WORK_RATE,
            TimeElements.RECKONED_BY,
            FieldRates.EFFICIENCY,
            TimeElements.OVERLAP_ALLOWED,
            TimeElements.COVERED,
            TimeElements.LOST_TIME_ALLOWED,
            TimeElements.SHARE_OF_TURNS,
            TimeElements.PASSES_OF_FIELD,
            FieldRates.BY_WIDTH_AND_SPEED,
            Throughput.AS_CARTED,
            Throughput.BY_THROUGHPUT,
            FieldRates.WORK_RATE,
            FieldRates.LIMIT,
            FieldRates.ACHIEVED,
            Throughput.MATERIAL,
            FieldRates.HOURS,
            FieldRates.AREA_PER_DAY,
            FieldRates.DAYS,
            WorkTotals.MACHINE_HOURS,
            WorkTotals.MACHINE_AREA,
            WorkTotals.HOLDING_HOURS);

    /** All formulas. */
    public static final List<Formula> FORMULAS = all();

    private static List<Formula> all() {
        List<Formula> all = new ArrayList<>(RATES);
        all.addAll(MeasuredMachine.formulas());
        all.add(WheelSlip.WHEEL_SLIP);
        all.addAll(Carting.formulas());
        all.addAll(TrailerNumbers.formulas());
        all.addAll(StageRates.formulas());
        all.add(BucketRate.RATE);
        all.addAll(GangRates.formulas());
        all.addAll(GangDays.formulas());
        all.addAll(GangChance.formulas());
        all.addAll(PowerNeeded.formulas());
        all.addAll(FuelAndLabour.formulas());
        return List.copyOf(all);
    }

    /** Constants that only cautions read. */
    public static final List<Constant> CONSTANTS = List.of(
            FieldShape.SMALL_AREA,
            FieldShape.SHORT_RUN,
            FieldShape.NARROW,
            CartingSimulation.SPREAD,
            CartingSimulation.SEED,
            CartingSimulation.LOADS,
            RoadLaw.TRAILER_MASS,
            RoadLaw.TRAIN_MASS,
            RoadLaw.TRAILER_SPEED,
            RememberedMachines.SPEED_ROUNDING,
            WheelSlip.LITTLE,
            WheelSlip.MUCH);

    /** Tables that are read outside formulas. */
    public static final List<ReferenceTable> TABLES =
            List.of(Suitability.CROPS, RememberedMachines.SLOWEST, RememberedMachines.FASTEST);
}
