package org.rickyard.plan;

import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;

/**
 * The columns of numbers that a plan does more with than reckon: whether they are typed decides which rows there are or
 * which of several cells is taken, or rows belong together by them. A change of those cannot be followed in the grid.
 */
final class DecidingNumbers {
    /** Those that bring rows, or take them away, by being typed or not. */
    private static final Set<ColumnSpec> ROWS = Set.of(
            Fields.DM_AT_ENSILING,
            Fields.PERIMETER,
            Fields.TREE_SPACING,
            Fields.TREES,
            Machines.CHARGE,
            Machines.FUEL,
            Machines.POWER,
            Machines.CREW,
            Machines.PURCHASE_PRICE,
            Machines.LIST_PRICE,
            Machines.RATE_OF_WORK,
            Machines.ROUND_TIME,
            Machines.ROWS,
            Machines.ROW_WIDTH,
            Machines.TIMED_DISTANCE,
            Machines.TIMED_SECONDS,
            Machines.TOTAL_FLOW,
            Machines.NOZZLE_FLOW,
            Machines.WORKING_PRESSURE,
            Machines.NOZZLE_SPACING,
            Machines.TEST_AREA,
            Machines.TEST_VOLUME,
            Machines.TEST_WEIGHT,
            Machines.PUMP_FLOW,
            Machines.TURNS_LOADED,
            Machines.TURNS_UNLOADED,
            Machines.INTEREST,
            Machines.INSURANCE,
            Machines.LOAD_DISTANCE,
            Machines.WHEEL_TURNS,
            Machines.NOZZLE_CATCH,
            Jobs.DOSE,
            Jobs.ACTIVE_CONTENT,
            Jobs.NITROGEN_CONTENT,
            Jobs.PHOSPHATE_CONTENT,
            Jobs.POTASH_CONTENT,
            Jobs.DAYS_AVAILABLE,
            Jobs.WIND_SPEED,
            Jobs.WIND_HEIGHT,
            Jobs.AIR_TEMPERATURE,
            Jobs.HUMIDITY,
            Clamps.ROLLER_MASS,
            Clamps.DELIVERY,
            Clamps.ADDITIVE,
            Clamps.NAMED_TANK_VOLUME,
            Assumptions.VALUE);

    /** Those by which rows find each other. */
    private static final Set<ColumnSpec> TOGETHER = Set.of(Cuts.CUT, Jobs.CUT);

    private DecidingNumbers() {}

    /** Those that bring rows by being typed. */
    static Set<ColumnSpec> bringRows() {
        return ROWS;
    }

    /** Those that decide which of several cells a link goes to, and in which rows of their lists. */
    static Map<ListSpec, Map<ColumnSpec, BitSet>> places(Collection<ResultTable> tables) {
        Map<ListSpec, Map<ColumnSpec, BitSet>> deciding = new HashMap<>();
        for (ResultTable table : tables) {
            for (TableColumn column : table.spec().columns()) {
                if (column instanceof TableColumn.Link link && link.places().size() > 1 && table.rows() > 0) {
                    table.links(link.symbol()).markDeciding(deciding);
                }
            }
        }
        return deciding;
    }

    /**
     * Those whose numbers themselves decide.
     *
     * @param blocksOfRows whether a spray block is made of several rows of jobs, which are one by their water volume
     * @param planned whether jobs are given days: in their windows, so long after one another, and of several machines
     *     alike as many as their number says
     * @param partedByDays whether rows of jobs are one or several by their days
     */
    static Set<ColumnSpec> exact(boolean blocksOfRows, boolean planned, boolean partedByDays) {
        Set<ColumnSpec> exact = new HashSet<>(TOGETHER);
        if (blocksOfRows) {
            exact.add(Jobs.WATER_VOLUME);
        }
        if (planned) {
            exact.addAll(List.of(Machines.NUMBER, Jobs.LAG));
        }
        if (planned || partedByDays) {
            exact.addAll(List.of(Jobs.EARLIEST, Jobs.LATEST));
        }
        return exact;
    }
}
