package org.rickyard.plan.silage;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.workrate.GangRates;
import org.rickyard.trade.workrate.StageRates;

/**
 * What rolls each clamp and what brings its crop: typed for the clamp; otherwise the only clamp roller of its holding,
 * and the gangs whose fields name it. Which of several rollers would go there is asked and not guessed.
 */
public final class ClampRollers {
    private final ListRows clamps;
    private final ListRows machines;
    private final int[] roller;
    private final boolean[] rolled;

    /**
     * Finds them.
     *
     * @param filled the rows of the clamp list that crop is allotted to; a clamp that nothing goes to is not rolled
     *     merely because the machine list has a roller, unless nothing goes anywhere
     */
    ClampRollers(PlanContext plan, int[] filled) {
        clamps = plan.rows(Clamps.LIST);
        machines = plan.rows(Machines.LIST);
        roller = new int[clamps.size()];
        rolled = new boolean[clamps.size()];
        for (int clamp : ClampJoin.where(clamps, Clamps.ROLLER_MASS)) {
            rolled[clamp] = true;
        }
        boolean[] fed = new boolean[clamps.size()];
        Arrays.fill(fed, filled.length == 0);
        for (int clamp : filled) {
            fed[clamp] = true;
        }
        for (int clamp : ClampJoin.where(clamps, Clamps.DELIVERY)) {
            fed[clamp] = true;
        }
        for (int clamp = 0; clamp < roller.length; clamp++) {
            roller[clamp] = roller(plan, clamp);
            rolled[clamp] |= fed[clamp] && roller[clamp] >= 0;
        }
    }

    /** Whether it is known what rolls a clamp. */
    public boolean rolls(int clamp) {
        return rolled[clamp];
    }

    /** Makes the table of what the rollers of each clamp can take, which gangs and the filling of clamps read. */
    public void build(PlanContext plan) {
        int[] rows = IntStream.range(0, rolled.length).filter(this::rolls).toArray();
        plan.add(
                ClampPackingTables.ROLLERS,
                withRollers(rows),
                "no clamp has a roller mass, and not exactly one kind of clamp roller is listed for its holding");
    }

    /** The machine that rolls a clamp for which no roller mass is typed; -1 if none is listed, or several. */
    private int roller(PlanContext plan, int clamp) {
        if (clamps.state(Clamps.ROLLER_MASS, clamp) == ListRows.State.GIVEN) {
            return -1;
        }
        int[] found = IntStream.range(0, machines.size())
                .filter(machine -> machines.text(Machines.TYPE, machine).equals(StageRates.ROLLER)
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
                                    + (found.length > 2 ? "' …" : "'") + "): type in Roller mass what rolls the clamp '"
                                    + clamps.text(Clamps.CLAMP, clamp) + "', all together."));
        }
        return found.length == 1 ? found[0] : -1;
    }

    /** One row for each clamp that is rolled or delivered to; the gangs must have been made before. */
    RowSources filled(PlanContext plan) {
        boolean[] filled = rolled.clone();
        for (int clamp : ClampJoin.where(clamps, Clamps.DELIVERY)) {
            filled[clamp] = true;
        }
        ResultTable gangs = plan.table(GangRates.GANGS);
        for (int gang = 0; gang < gangs.rows(); gang++) {
            int clamp = (int) gangs.of(Keys.CLAMP_KEY).number(gang) - 1;
            if (clamp >= 0) {
                filled[clamp] = true;
            }
        }
        return withRollers(
                IntStream.range(0, filled.length).filter(clamp -> filled[clamp]).toArray());
    }

    /** Rows of the clamp list, each with what rolls there: its mass counts, and the hours of its day. */
    private RowSources withRollers(int[] rows) {
        return ClampJoin.rows(clamps, rows)
                .with(
                        Role.MACHINE,
                        machines,
                        Arrays.stream(rows).map(clamp -> roller[clamp]).toArray());
    }
}
