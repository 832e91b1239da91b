package org.rickyard.plan;

import java.util.List;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.WorkTotals;

/** The tables of work rates: one row per job and field, and the totals per machine and holding. */
final class WorkRateTables {
    private WorkRateTables() {}

    private static final TableColumn.Link SPEED = Names.link(
            Quantities.SPEED,
            Candidate.typed(Role.JOB, Jobs.SPEED),
            Candidate.typed(Role.MACHINE, Machines.SPEED));

    /** One row per job, field and machine that works by its width. */
    static final TableSpec WORK_RATES = rates("Work rates", "Work rates: what each machine gets through");

    /** The same where there are no jobs. */
    static final TableSpec IF_DONE_ONCE = rates("Work rates", "Work rates, if done once: no jobs are listed");

    /** One row per machine that jobs name. */
    static final TableSpec MACHINE_TOTALS = totals(
            "machine-totals",
            "Machine hours",
            "Machine hours: all listed work of each machine",
            "one row per machine",
            List.of(
                    Names.MACHINE_HOLDING,
                    Names.MACHINE,
                    new TableColumn.Key(Keys.MACHINE_KEY),
                    new TableColumn.Calculated(WorkTotals.MACHINE_AREA, true),
                    new TableColumn.Calculated(WorkTotals.MACHINE_HOURS, true),
                    new TableColumn.Joined(WorkTotals.ROWS_LEFT_OUT, WorkTotals.LEFT_OUT_OF_MACHINE)),
            WorkTotals.HOURS_OF_MACHINE,
            "Rickyard_machine_hours");

    /** One row per holding. */
    static final TableSpec HOLDING_TOTALS = totals(
            "holding-totals",
            "Holding hours",
            "Holding hours: machine hours of all listed work on each holding",
            "one row per holding",
            List.of(
                    Names.name(Quantities.HOLDING, Candidate.typed(Role.FIELD, Fields.HOLDING)),
                    new TableColumn.Key(Keys.HOLDING_KEY),
                    new TableColumn.Calculated(WorkTotals.HOLDING_HOURS, true),
                    new TableColumn.Joined(WorkTotals.ROWS_LEFT_OUT, WorkTotals.LEFT_OUT_OF_HOLDING)),
            WorkTotals.HOURS_OF_HOLDING,
            "Rickyard_holding_hours");

    private static TableSpec rates(String sheet, String title) {
        List<TableColumn> columns = List.of(
                Names.FIELD_HOLDING,
                Names.JOB,
                Names.FIELD,
                Names.OPERATION,
                Names.MACHINE,
                Names.MACHINE_TYPE,
                new TableColumn.Key(Keys.MACHINE_KEY),
                new TableColumn.Key(Keys.HOLDING_KEY),
                new TableColumn.Key(Keys.BLOCK_KEY),
                Names.link(Quantities.AREA, Candidate.typed(Role.FIELD, Fields.AREA)),
                SPEED,
                Names.link(Quantities.WORKING_WIDTH, Candidate.typed(Role.MACHINE, Machines.WORKING_WIDTH)),
                Names.optional(Quantities.FIELD_EFFICIENCY, Candidate.typed(Role.MACHINE, Machines.FIELD_EFFICIENCY)),
                new TableColumn.Calculated(FieldRates.EFFICIENCY, false),
                new TableColumn.Calculated(FieldRates.SPOT_WORK_RATE, true),
                new TableColumn.Calculated(FieldRates.WORK_RATE, true),
                new TableColumn.Calculated(FieldRates.HOURS, true));
        boolean once = title.contains("once");
        return new TableSpec(
                WorkTotals.WORK_RATES,
                sheet,
                title,
                "one row per job, field and machine",
                Sentences.appended(columns, List.of()),
                once
                        ? List.of()
                        : List.of(new TableSpec.TotalName(FieldRates.FIELD_HOURS, "Rickyard_hours")),
                Cautions.MACHINES,
                List.of());
    }

    private static TableSpec totals(
            String id, String sheet, String title, String grain, List<TableColumn> columns, Symbol total, String name) {
        return new TableSpec(
                id,
                sheet,
                title,
                grain,
                Sentences.appended(columns, List.of()),
                List.of(new TableSpec.TotalName(total, name)),
                List.of(),
                List.of());
    }
}
