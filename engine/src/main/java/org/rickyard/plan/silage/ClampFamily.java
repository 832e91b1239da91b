package org.rickyard.plan.silage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.PackingModel;

/** Makes the tables of silage: the crop, the clamps, the pits to be dug. */
public final class ClampFamily {
    private static final String NO_CLAMPS = "no clamps are listed";

    private final PlanContext plan;
    private final FeedFamily.FeedHoldings holdings;
    private final CropRows crop;
    private final RowSources cropSources;
    private final FieldCuts cuts;
    private final ClampRollers rollers;

    /** Allots the crop; the tables come with {@link #build}, for the gangs want to know the clamps before. */
    public ClampFamily(PlanContext plan) {
        this.plan = plan;
        holdings = new FeedFamily.FeedHoldings(plan);
        crop = ClampProposal.of(new CropRows(plan.lists(), plan.findings()), plan, holdings);
        cropSources = crop.sources(holdings);
        cuts = new FieldCuts(plan, crop);
        rollers = new ClampRollers(plan, crop.clampsFilled());
    }

    /** Which cut a job meets on a field, and where its crop goes. */
    public FieldCuts fieldCuts() {
        return cuts;
    }

    /** What rolls each clamp. */
    public ClampRollers rollers() {
        return rollers;
    }

    /** Makes the tables; those of the gangs must have been made before. */
    public void build() {
        ListRows clamps = plan.rows(Clamps.LIST);
        int[] every = RowNumbers.rows(clamps.size());
        twins(clamps, plan.findings());
        plan.add(ClampTables.CROP, cropSources, "no field names a clamp or a yield basis, and no cuts are listed");
        plan.add(ClampTables.CLAMPS, ClampJoin.rows(clamps, every).with(ClampTables.CROPS, crop.crops()), NO_CLAMPS);
        ClampSlips.tell(plan);
        plan.add(ClampHeightTables.HEIGHTS, ClampJoin.rows(clamps, every), NO_CLAMPS);
        plan.add(
                ClampPackingTables.DENSITY,
                ClampJoin.rows(clamps, every).with(ClampTables.CROPS, crop.crops()),
                NO_CLAMPS);
        RowSources filled = rollers.filled(plan);
        plan.add(
                ClampPackingTables.ROLLING,
                filled,
                "no clamp has a roller or a delivery, and no gang of the job list fills one");
        boolean estimate = plan.constants().value(PackingModel.SWITCH) == 1;
        plan.add(
                ClampPackingTables.ESTIMATE,
                estimate ? filled : new RowSources(0),
                "the packing model is from memory and unverified, so it is switched off; Assumptions can switch it on");
        plan.add(ClampCoverTables.COVER, ClampJoin.rows(clamps, every), NO_CLAMPS);
        plan.add(
                ClampCoverTables.ADDITIVE,
                ClampJoin.rows(clamps, ClampJoin.where(clamps, Clamps.ADDITIVE)),
                "no clamp has an additive");
        ClampTanks tanks = new ClampTanks(clamps, plan.findings());
        plan.add(
                ClampEffluentTables.EFFLUENT,
                ClampJoin.rows(clamps, every).with(Keys.TANK_KEY, tanks.keys()),
                NO_CLAMPS);
        plan.add(ClampEffluentTables.TANKS, tanks.sources(), "no clamp has an effluent tank");
        plan.add(ClampTables.DIGGING, pits(clamps, plan.rows(Machines.LIST)), "no earth pit is listed");
        FeedFamily.build(plan, holdings);
        plan.add(FeedTables.BALES, ClampJoin.rows(clamps, crop.clampsFilled()), "no crop is allotted to any clamp");
    }

    /** A clamp named twice cannot be told apart; each name is said once. */
    private static void twins(ListRows clamps, List<Finding> findings) {
        Set<String> seen = new HashSet<>();
        Set<String> said = new HashSet<>();
        for (int row = 0; row < clamps.size(); row++) {
            String name = clamps.text(Clamps.CLAMP, row);
            String key = NameKey.key(clamps.text(Clamps.HOLDING, row)) + '\n' + NameKey.key(name);
            if (!name.isEmpty() && !seen.add(key) && said.add(key)) {
                findings.add(Finding.stop(
                        clamps.address(Clamps.CLAMP, row).orElse(null),
                        "the clamp '" + name + "' stands more than once in the clamp list of one holding; give each its"
                                + " own name. Crop and stock that name it are allotted to none till then."));
            }
        }
    }

    private static RowSources pits(ListRows clamps, ListRows machines) {
        List<int[]> pairs = new ArrayList<>();
        for (int clamp = 0; clamp < clamps.size(); clamp++) {
            if (!clamps.text(Clamps.KIND, clamp).equals(ClampShape.EARTH_PIT)) {
                continue;
            }
            int before = pairs.size();
            for (int machine = 0; machine < machines.size(); machine++) {
                if (machines.text(Machines.TYPE, machine).equals("excavator")
                        && ClampJoin.together(clamps, clamp, machines, machine)) {
                    pairs.add(new int[] {clamp, machine});
                }
            }
            if (pairs.size() == before) {
                pairs.add(new int[] {clamp, -1});
            }
        }
        return new RowSources(pairs.size())
                .with(
                        Keys.CLAMP_KEY,
                        pairs.stream().mapToInt(pair -> pair[0] + 1).toArray())
                .with(
                        Role.CLAMP,
                        clamps,
                        pairs.stream().mapToInt(pair -> pair[0]).toArray())
                .with(
                        Role.MACHINE,
                        machines,
                        pairs.stream().mapToInt(pair -> pair[1]).toArray());
    }
}
