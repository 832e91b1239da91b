package org.rickyard.plan.workrate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.rickyard.formula.Numbers;
import org.rickyard.formula.Values;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.trade.Keys;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.GangRates;
import org.rickyard.trade.workrate.GangStage;
import org.rickyard.trade.workrate.WorkTotals;

/**
 * A forager is on Work rates at its own pace, and on Gangs at that of its gang. Where the gang holds it up, that is said
 * once of the forager, for the totals of hours go by the first and the season and costs by the second.
 */
final class HoursOfGangs {
    /** Nearer than a tenth the two are as good as one. */
    private static final double ALIKE = 1.1;

    private static final class Hours {
        private double alone;
        private double inGang;
    }

    private HoursOfGangs() {}

    /**
     * Says it.
     *
     * @param stageKeys of each line ten times its gang and the stage it does there; 0 outside a gang
     */
    static void tell(PlanContext plan, List<JobLines.Line> lines, int[] stageKeys) {
        ListRows machines = plan.rows(Machines.LIST);
        Map<Integer, Double> ofGangs = ofGangs(plan.table(GangRates.GANGS));
        Values alone = plan.table(WorkTotals.WORK_RATES).of(FieldRates.FIELD_HOURS);
        Map<Integer, Hours> found = new TreeMap<>();
        for (int line = 0; line < stageKeys.length; line++) {
            Double inGang = ofGangs.get(stageKeys[line] / 10);
            if (stageKeys[line] % 10 == GangStage.CHOPPING.code() && inGang != null && alone.has(line)) {
                Hours hours = found.computeIfAbsent(lines.get(line).machine(), machine -> new Hours());
                hours.alone += alone.number(line);
                hours.inGang += inGang;
            }
        }
        found.forEach((machine, hours) -> {
            if (hours.inGang > ALIKE * hours.alone) {
                plan.findings()
                        .add(Finding.note(
                                machines.address(Machines.MACHINE, machine).orElse(null),
                                "'" + machines.text(Machines.MACHINE, machine) + "' takes "
                                        + Numbers.rounded(hours.alone, 2)
                                        + " h on Work rates, at its own pace, and " + Numbers.rounded(hours.inGang, 2)
                                        + " h on Gangs, where the slowest stage holds it up. Machine hours and Holding"
                                        + " hours go by Work rates; Season, fuel, labour and cost by Gangs."));
            }
        });
    }

    private static Map<Integer, Double> ofGangs(ResultTable gangs) {
        Map<Integer, Double> found = new HashMap<>();
        Values hours = gangs.of(GangRates.GANG_HOURS);
        Values keys = gangs.of(Keys.GANG_KEY);
        for (int row = 0; row < gangs.rows(); row++) {
            if (hours.has(row)) {
                found.put((int) keys.number(row), hours.number(row));
            }
        }
        return found;
    }
}
