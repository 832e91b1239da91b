package org.rickyard.plan.spraying;

import java.util.List;
import org.rickyard.lists.Machines;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.CatchRun;

/** What was caught from one nozzle over a measured run. */
final class CatchRunTable {
    private CatchRunTable() {}

    /** One row per machine with such a catch. */
    static final TableSpec SPEC = new TableSpec(
            CatchRun.TABLE,
            "Catch runs",
            "Catch runs: what one nozzle gave over a measured run",
            "one row per machine with a catch over a run",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            SprayColumns.machine(Quantities.TIMED_DISTANCE, Machines.TIMED_DISTANCE),
                            Names.link(
                                    Quantities.NOZZLE_SPACING, Candidate.typed(Role.MACHINE, Machines.NOZZLE_SPACING)),
                            SprayColumns.machine(Quantities.NOZZLE_CATCH, Machines.NOZZLE_CATCH),
                            SprayColumns.result(CatchRun.CATCH_RATE)),
                    List.of()),
            List.of(),
            Cautions.SPRAYING,
            List.of());
}
