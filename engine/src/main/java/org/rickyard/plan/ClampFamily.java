package org.rickyard.plan;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.trade.Keys;
import org.rickyard.trade.silage.ClampShape;

/** Makes the tables of silage: the crop, the clamps, the pits to be dug. */
final class ClampFamily {
    private ClampFamily() {}

    static void build(PlanContext plan) {
        CropRows crop = new CropRows(plan.lists(), plan.findings());
        plan.add(ClampTables.CROP, crop.sources(), "no field names a clamp or a yield basis, and no cuts are listed");
        plan.add(ClampTables.CLAMPS, clamps(plan.rows(Clamps.LIST)), "no clamps are listed");
        plan.add(ClampTables.DIGGING, pits(plan.rows(Clamps.LIST), plan.rows(Machines.LIST)), "no earth pit is listed");
    }

    private static RowSources clamps(ListRows clamps) {
        return new RowSources(clamps.size())
                .with(Role.CLAMP, clamps, CropRows.ascending(clamps.size(), 0))
                .with(Keys.CLAMP_KEY, CropRows.ascending(clamps.size(), 1));
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
                        && together(clamps, clamp, machines, machine)) {
                    pairs.add(new int[] {clamp, machine});
                }
            }
            if (pairs.size() == before) {
                pairs.add(new int[] {clamp, -1});
            }
        }
        return new RowSources(pairs.size())
                .with(
                        Role.CLAMP,
                        clamps,
                        pairs.stream().mapToInt(pair -> pair[0]).toArray())
                .with(
                        Role.MACHINE,
                        machines,
                        pairs.stream().mapToInt(pair -> pair[1]).toArray());
    }

    private static boolean together(ListRows clamps, int clamp, ListRows machines, int machine) {
        String owner = NameKey.key(machines.text(Machines.HOLDING, machine));
        String holding = NameKey.key(clamps.text(Clamps.HOLDING, clamp));
        return owner.isEmpty() || holding.isEmpty() || owner.equals(holding);
    }
}
