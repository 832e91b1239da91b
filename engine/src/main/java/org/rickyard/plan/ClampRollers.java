package org.rickyard.plan;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.trade.Keys;
import org.rickyard.trade.workrate.GangRates;

/**
 * What rolls each clamp and what brings its crop: typed for the clamp; otherwise the only clamp roller of its holding,
 * and the gangs whose fields name it. Which of several rollers would go there is asked and not guessed.
 */
final class ClampRollers {
    private static final String ROLLER = "clamp roller";

    private final ListRows clamps;
    private final ListRows machines;
    private final int[] rows;
    private final int[] roller;

    /**
     * Finds them.
     *
     * @param filled the rows of the clamp list that crop is allotted to; a clamp that nothing goes to is not rolled
     *     merely because the machine list has a roller, unless nothing goes anywhere
     */
    ClampRollers(PlanContext plan, int[] filled) {
        clamps = plan.rows(Clamps.LIST);
        machines = plan.rows(Machines.LIST);
        int[] all = new int[clamps.size()];
        for (int clamp = 0; clamp < all.length; clamp++) {
            all[clamp] = roller(plan, clamp);
        }
        boolean[] typed = new boolean[all.length];
        for (int clamp : ClampJoin.where(clamps, Clamps.ROLLER_MASS, Clamps.DELIVERY)) {
            typed[clamp] = true;
        }
        ResultTable gangs = plan.table(GangRates.GANGS);
        for (int gang = 0; gang < gangs.rows(); gang++) {
            int clamp = (int) gangs.of(Keys.CLAMP_KEY).number(gang) - 1;
            if (clamp >= 0) {
                typed[clamp] = true;
            }
        }
        boolean[] fed = new boolean[all.length];
        Arrays.fill(fed, filled.length == 0);
        for (int clamp : filled) {
            fed[clamp] = true;
        }
        rows = IntStream.range(0, all.length)
                .filter(clamp -> typed[clamp] || fed[clamp] && all[clamp] >= 0)
                .toArray();
        roller = Arrays.stream(rows).map(clamp -> all[clamp]).toArray();
    }

    /** The machine that rolls a clamp for which no roller mass is typed; -1 if none is listed, or several. */
    private int roller(PlanContext plan, int clamp) {
        if (clamps.state(Clamps.ROLLER_MASS, clamp) == ListRows.State.GIVEN) {
            return -1;
        }
        int[] found = IntStream.range(0, machines.size())
                .filter(machine -> machines.text(Machines.TYPE, machine).equals(ROLLER)
                        && ClampJoin.together(clamps, clamp, machines, machine))
                .toArray();
        if (found.length > 1) {
            plan.findings()
                    .add(Finding.note(
                            clamps.address(Clamps.ROLLER_MASS, clamp)
                                    .or(() -> clamps.address(Clamps.CLAMP, clamp))
                                    .orElse(null),
                            found.length + " kinds of clamp roller are listed ('"
                                    + machines.text(Machines.MACHINE, found[0]) + "', '"
                                    + machines.text(Machines.MACHINE, found[1])
                                    + "' …): type in Roller mass what rolls the clamp '"
                                    + clamps.text(Clamps.CLAMP, clamp) + "', all together."));
        }
        return found.length == 1 ? found[0] : -1;
    }

    /** One row for each clamp that is rolled or delivered to. */
    RowSources sources() {
        return ClampJoin.rows(clamps, rows).with(Role.MACHINE, machines, roller);
    }
}
