package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.LoadTest;
import org.rickyard.trade.spraying.TankPlan;

/** What muck spreaders and tankers put on a hectare, told by how far a load of theirs is spread. */
final class LoadTestTables {
    private LoadTestTables() {}

    private static final String TANKER = "slurry tanker";

    private static final TableSpec SPREADERS = tests(
            "load-tests",
            "Load tests",
            "Load tests: what a load puts on a hectare",
            "one row per spreader whose load is spread over a distance",
            List.of(SprayColumns.machine(Quantities.PAYLOAD, Machines.PAYLOAD)),
            new TableColumn.Calculated(LoadTest.RATE_BY_WEIGHT, true));

    private static final TableSpec TANKERS = tests(
            "tanker-tests",
            "Tanker tests",
            "Tanker tests: what a tankful puts on a hectare",
            "one row per tanker whose load is spread over a distance",
            List.of(SprayColumns.USABLE_TANK, SprayColumns.TANK, SprayColumns.step(TankPlan.TANK)),
            new TableColumn.Calculated(LoadTest.RATE_BY_VOLUME, true));

    private static TableSpec tests(
            String id, String sheet, String title, String grain, List<TableColumn> load, TableColumn rate) {
        List<TableColumn> columns = new ArrayList<>(List.of(Names.MACHINE_HOLDING, Names.MACHINE));
        columns.add(SprayColumns.machine(Quantities.LOAD_DISTANCE, Machines.LOAD_DISTANCE));
        columns.add(SprayColumns.machine(Quantities.WORKING_WIDTH, Machines.WORKING_WIDTH));
        columns.addAll(load);
        columns.add(new TableColumn.Calculated(LoadTest.AREA_OF_LOAD, true));
        columns.add(rate);
        return new TableSpec(
                id, sheet, title, grain, Sentences.appended(columns, List.of()), List.of(), List.of(), List.of());
    }

    /** Makes them, where the list has a header for the distance. */
    static void build(PlanContext plan) {
        ListRows machines = plan.rows(Machines.LIST);
        if (machines.has(Machines.LOAD_DISTANCE)) {
            plan.add(SPREADERS, rows(machines, false), "no spreader has the distance that a load is spread");
            plan.add(TANKERS, rows(machines, true), "no tanker has the distance that a load is spread");
        }
    }

    private static RowSources rows(ListRows machines, boolean tankers) {
        return RowSources.of(Role.MACHINE, machines, row -> {
            String type = machines.text(Machines.TYPE, row);
            return machines.isFilled(Machines.LOAD_DISTANCE, row)
                    && JobLines.spreads(type)
                    && type.equals(TANKER) == tankers;
        });
    }
}
