package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.VolumeComparison;

/** The lines of the job list that are sprayed, in list order; a line's spray key is its place counted from 1. */
final class SprayLines {
    private final ListRows jobs;
    private final ListRows fields;
    private final ListRows machines;
    private final List<JobLines.Line> lines;
    private final Map<Integer, List<Integer>> byBlock = new HashMap<>();

    SprayLines(PlanContext plan, List<JobLines.Line> all) {
        jobs = plan.rows(Jobs.LIST);
        fields = plan.rows(Fields.LIST);
        machines = plan.rows(Machines.LIST);
        lines = all.stream().filter(line -> line.block() > 0).toList();
        for (int i = 0; i < lines.size(); i++) {
            byBlock.computeIfAbsent(lines.get(i).block(), b -> new ArrayList<>())
                    .add(i);
        }
        sameDay(plan.findings());
    }

    JobLines.Line line(int index) {
        return lines.get(index);
    }

    /** The lines of a block, in list order. */
    List<Integer> ofBlock(int block) {
        return byBlock.getOrDefault(block, List.of());
    }

    RowSources sources() {
        return of(RowNumbers.rows(lines.size()));
    }

    /** The lines whose machine is of a type. */
    RowSources ofType(String type) {
        List<Integer> some = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (machines.text(Machines.TYPE, lines.get(i).machine()).equals(type)) {
                some.add(i);
            }
        }
        return of(some.stream().mapToInt(Integer::intValue).toArray());
    }

    private RowSources of(int[] at) {
        int count = at.length;
        int[] job = new int[count];
        int[] field = new int[count];
        int[] machine = new int[count];
        int[] block = new int[count];
        int[] key = new int[count];
        int[] machineKey = new int[count];
        for (int i = 0; i < count; i++) {
            JobLines.Line line = lines.get(at[i]);
            job[i] = line.job();
            field[i] = line.field();
            machine[i] = line.machine();
            block[i] = line.block();
            key[i] = at[i] + 1;
            machineKey[i] = line.machine() + 1;
        }
        return new RowSources(count)
                .with(Role.JOB, jobs, job)
                .with(Role.FIELD, fields, field)
                .with(Role.MACHINE, machines, machine)
                .with(Keys.BLOCK_KEY, block)
                .with(Keys.SPRAY_KEY, key)
                .with(Keys.MACHINE_KEY, machineKey);
    }

    /** Each sprayer that jobs name, at each of the volumes compared. */
    RowSources volumes() {
        int[] sprayers = lines.stream()
                .mapToInt(JobLines.Line::machine)
                .distinct()
                .sorted()
                .toArray();
        List<ReferenceTable.Row> volumes = VolumeComparison.VOLUMES.rows();
        int count = sprayers.length * volumes.size();
        int[] machine = new int[count];
        int[] key = new int[count];
        int[] volume = new int[count];
        String[] name = new String[count];
        for (int i = 0; i < count; i++) {
            machine[i] = sprayers[i / volumes.size()];
            key[i] = machine[i] + 1;
            volume[i] = (int) volumes.get(i % volumes.size()).value();
            name[i] = volume[i] + " L/ha";
        }
        return new RowSources(count)
                .with(Role.MACHINE, machines, machine)
                .with(Keys.MACHINE_KEY, key)
                .with(Quantities.WATER_VOLUME, volume)
                .with(VolumeComparison.VOLUME_NAME, name);
    }

    /** Whether any of the columns was filled in, readable or not. */
    static boolean given(ListRows list, int row, ColumnSpec... columns) {
        if (row < 0) {
            return false;
        }
        for (ColumnSpec column : columns) {
            if (list.isFilled(column, row)) {
                return true;
            }
        }
        return false;
    }

    private String named(int job) {
        return "'" + jobs.text(Jobs.JOB, job) + "'"
                + jobs.address(Jobs.EARLIEST, job).map(cell -> " @ " + cell).orElse("");
    }

    /** Two jobs that spray one field from the same day on are asked about: planned so, or typed twice. */
    private void sameDay(List<Finding> findings) {
        Map<List<Object>, Integer> first = new HashMap<>();
        for (JobLines.Line line : lines) {
            if (!jobs.gives(Jobs.EARLIEST, line.job())) {
                continue;
            }
            Integer before = first.putIfAbsent(
                    // A day may be typed with its hour.
                    List.of(line.field(), Math.floor(jobs.number(Jobs.EARLIEST, line.job()))), line.job());
            if (before != null
                    && !NameKey.key(jobs.text(Jobs.JOB, before)).equals(NameKey.key(jobs.text(Jobs.JOB, line.job())))) {
                findings.add(Finding.caution(
                        jobs.address(Jobs.EARLIEST, line.job()).orElse(null),
                        "'" + fields.text(Fields.FIELD, line.field()) + "' is sprayed by two jobs that begin on the"
                                + " same day (" + named(before) + " and " + named(line.job())
                                + "). Expected one job on a field and day: if it is meant so, leave it; otherwise take"
                                + " one away or mend its day."));
            }
        }
    }
}
