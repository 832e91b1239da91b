package org.rickyard.plan.workrate;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.BucketRate;
import org.rickyard.trade.workrate.StageRates;

/**
 * What loaders and buckrakes move in an hour by their load and the time of a round, where no gang has them among its
 * stages, and what loaders and excavators move of soil by their bucket: nothing else would answer what is typed of them.
 */
final class HandlingTable {
    private HandlingTable() {}

    private static final TableSpec HANDLING = new TableSpec(
            StageRates.HANDLING_RATES,
            "Handling rates",
            "Handling rates: what loaders and buckrakes move in an hour",
            "one row per loader or buckrake with a load or a round time that no gang has",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            Names.MACHINE_TYPE,
                            Names.optional(
                                    Quantities.NUMBER_OF_MACHINES, Candidate.typed(Role.MACHINE, Machines.NUMBER)),
                            Names.optional(Quantities.OUTPUT, Candidate.typed(Role.MACHINE, Machines.OUTPUT)),
                            Names.link(Quantities.PAYLOAD, Candidate.typed(Role.MACHINE, Machines.PAYLOAD)),
                            Names.link(Quantities.ROUND_TIME, Candidate.typed(Role.MACHINE, Machines.ROUND_TIME)),
                            new TableColumn.Calculated(StageRates.ALIKE_LISTED, false),
                            new TableColumn.Calculated(StageRates.HANDLING, true)),
                    List.of()),
            List.of(),
            Cautions.MACHINES,
            List.of());

    private static final TableSpec BUCKETS = new TableSpec(
            BucketRate.TABLE,
            "Bucket rates",
            "Bucket rates: loose soil that loaders and excavators move in an hour",
            "one row per loader or excavator with a bucket and a cycle",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            Names.MACHINE_TYPE,
                            Names.link(Quantities.BODY_VOLUME, Candidate.typed(Role.MACHINE, Machines.BODY_VOLUME)),
                            Names.link(Quantities.ROUND_TIME, Candidate.typed(Role.MACHINE, Machines.ROUND_TIME)),
                            new TableColumn.Calculated(BucketRate.RATE, true)),
                    List.of()),
            List.of(),
            Cautions.MACHINES,
            List.of());

    /** Makes both, each where its two figures have a header, so that the one that is blank is asked for. */
    static void build(PlanContext plan, GangRows gangs) {
        loads(plan, gangs);
        ListRows machines = plan.rows(Machines.LIST);
        int[] rows = IntStream.range(0, machines.size())
                .filter(machine -> digs(machines, machine))
                .toArray();
        if (rows.length > 0) {
            plan.add(
                    BUCKETS, new RowSources(rows.length).with(Role.MACHINE, machines, rows), "no machine has a bucket");
        }
    }

    private static boolean digs(ListRows machines, int machine) {
        String type = machines.text(Machines.TYPE, machine);
        return (type.equals("loader") || type.equals("excavator"))
                && machines.isFilled(Machines.ROUND_TIME, machine)
                && machines.isFilled(Machines.BODY_VOLUME, machine);
    }

    private static void loads(PlanContext plan, GangRows gangs) {
        ListRows machines = plan.rows(Machines.LIST);
        Set<Integer> inGangs = new HashSet<>();
        gangs.gangs().forEach(gang -> gang.members().forEach(member -> inGangs.add(member.machine())));
        if (!machines.has(Machines.PAYLOAD) || !machines.has(Machines.ROUND_TIME)) {
            tellHalf(plan, machines, inGangs);
            return;
        }
        int[] rows = IntStream.range(0, machines.size())
                .filter(machine -> moves(machines, machine) && !inGangs.contains(machine))
                .toArray();
        if (rows.length > 0) {
            plan.add(HANDLING, new RowSources(rows.length).with(Role.MACHINE, machines, rows), "no machine loads");
        }
    }

    /** A load without the time it takes, or the other way about, is used for nothing where nobody has a header for it. */
    private static void tellHalf(PlanContext plan, ListRows machines, Set<Integer> inGangs) {
        boolean load = machines.has(Machines.PAYLOAD);
        ColumnSpec there = load ? Machines.PAYLOAD : Machines.ROUND_TIME;
        ColumnSpec lacking = load ? Machines.ROUND_TIME : Machines.PAYLOAD;
        IntStream.range(0, machines.size())
                .filter(machine -> moves(machines, machine) && !inGangs.contains(machine))
                .filter(machine -> !machines.isFilled(Machines.OUTPUT, machine) && !digs(machines, machine))
                .findFirst()
                .ifPresent(machine -> plan.findings()
                        .add(Finding.note(
                                machines.address(there, machine).orElse(null),
                                "the " + there.symbol().name() + " of '" + machines.text(Machines.MACHINE, machine)
                                        + "' is used for nothing: with a column " + lacking.name() + " ("
                                        + lacking.symbol().unit()
                                        + ") beside it, what it moves in an hour is worked out"
                                        + " on a sheet " + HANDLING.sheet() + "; or type its Output (t/h).")));
    }

    private static boolean moves(ListRows machines, int machine) {
        String type = machines.text(Machines.TYPE, machine);
        return (type.equals("loader") || type.equals("buckrake"))
                && (machines.isFilled(Machines.PAYLOAD, machine) || machines.isFilled(Machines.ROUND_TIME, machine));
    }
}
