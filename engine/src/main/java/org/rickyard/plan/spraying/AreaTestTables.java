package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Formula;
import org.rickyard.lists.Machines;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.SmallSprayers;
import org.rickyard.trade.spraying.Spreading;
import org.rickyard.trade.spraying.TankPlan;

/** Tests in which machines put out what was measured afterwards over an area, typed or told by how far and wide it was. */
final class AreaTestTables {
    private static final TableSpec SPRAYED = sprayed(SprayColumns.TEST_AREA);

    private static final TableSpec SPRAYED_OVER_RUNS = sprayed(SprayColumns.TEST_AREA_OF_RUN);

    private static final TableSpec SPREAD = spread(SprayColumns.TEST_AREA);

    private static final TableSpec SPREAD_OVER_RUNS = spread(SprayColumns.TEST_AREA_OF_RUN);

    private static final TableSpec SPREAD_OVER_TURNS = spread(SprayColumns.TEST_AREA_OF_TURNS);

    private AreaTestTables() {}

    /**
     * One row per machine with a test over an area.
     *
     * @param ofRuns whether the area of any is told by how far and how wide it was
     */
    static TableSpec sprayed(boolean ofRuns) {
        return ofRuns ? SPRAYED_OVER_RUNS : SPRAYED;
    }

    /**
     * One row per machine whose output was weighed on an area.
     *
     * @param ofTurns whether the wheel of any was turned for it
     * @param ofRuns whether the area of any is told by how far and how wide it was
     */
    static TableSpec spread(boolean ofTurns, boolean ofRuns) {
        return ofTurns ? SPREAD_OVER_TURNS : ofRuns ? SPREAD_OVER_RUNS : SPREAD;
    }

    private static TableSpec sprayed(List<TableColumn> area) {
        return tests(
                "area-tests",
                "Area tests",
                "Area tests: water used on an area",
                "one row per machine with a test area",
                area,
                SprayColumns.machine(Quantities.TEST_VOLUME, Machines.TEST_VOLUME),
                SmallSprayers.AREA_TEST_RATE,
                List.of(
                        SprayColumns.USABLE_TANK,
                        SprayColumns.TANK_IF_ANY,
                        SprayColumns.step(TankPlan.TANK),
                        TableColumn.Calculated.aside(SmallSprayers.AREA_OF_FILL_AS_TESTED)));
    }

    private static TableSpec spread(List<TableColumn> area) {
        return tests(
                "spreader-tests",
                "Spreader tests",
                "Spreader tests: what was weighed on an area",
                "one row per machine with a test weight",
                area,
                SprayColumns.machine(Quantities.TEST_WEIGHT, Machines.TEST_WEIGHT),
                Spreading.TEST_RATE,
                List.of());
    }

    private static TableSpec tests(
            String id,
            String sheet,
            String title,
            String grain,
            List<TableColumn> area,
            TableColumn.Link used,
            Formula rate,
            List<TableColumn> more) {
        List<TableColumn> columns = new ArrayList<>(List.of(Names.MACHINE_HOLDING, Names.MACHINE));
        columns.addAll(area);
        columns.add(used);
        columns.add(SprayColumns.result(rate));
        columns.addAll(more);
        return new TableSpec(
                id, sheet, title, grain, Sentences.appended(columns, List.of()), List.of(), List.of(), List.of());
    }
}
