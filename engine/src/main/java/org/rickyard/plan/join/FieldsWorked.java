package org.rickyard.plan.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Quantities;

/**
 * The fields that a spray block, a task or a job is done on, by its key. Where it has no name of its own, nothing else on
 * its row says which of several sprayings it is, so that the fields are named beside it.
 */
public final class FieldsWorked {
    private static final int MOST_NAMED = 2;

    private final ListRows jobs;
    private final ListRows fields;
    private final Map<Integer, Set<Integer>> unnamed = new HashMap<>();
    private final Map<Integer, Integer> first = new HashMap<>();
    private final Set<Integer> onSeveralHoldings = new LinkedHashSet<>();

    /** Of none so far. */
    public FieldsWorked(ListRows jobs, ListRows fields) {
        this.jobs = jobs;
        this.fields = fields;
    }

    /** The fields of the spray blocks; a block typed as such names them already. */
    public static FieldsWorked ofBlocks(ListRows jobs, ListRows fields, List<JobLines.Line> lines) {
        FieldsWorked worked = new FieldsWorked(jobs, fields);
        for (JobLines.Line line : lines) {
            if (line.block() > 0) {
                boolean block = jobs.isFilled(Jobs.BLOCK, line.job()) || fields.isFilled(Fields.BLOCK, line.field());
                worked.add(line.block(), line.field(), block || worked.isNamed(line.job()));
            }
        }
        return worked;
    }

    /** One more field of a job row. */
    public void add(int key, int job, int field) {
        add(key, field, isNamed(job));
    }

    private void add(int key, int field, boolean named) {
        int before = first.computeIfAbsent(key, any -> field);
        if (!holding(before).equals(holding(field))) {
            onSeveralHoldings.add(key);
        }
        if (!named) {
            unnamed.computeIfAbsent(key, any -> new LinkedHashSet<>()).add(field);
        }
    }

    private boolean isNamed(int job) {
        return job < 0 || !jobs.text(Jobs.JOB, job).isEmpty();
    }

    private String holding(int field) {
        return NameKey.key(fields.text(Fields.HOLDING, field));
    }

    /** "North 40, Barn and 3 more"; "" for what has a name of its own. */
    public String named(int key) {
        Set<Integer> worked = unnamed.getOrDefault(key, Set.of());
        return worked.stream()
                        .limit(MOST_NAMED)
                        .map(field -> fields.text(Fields.FIELD, field))
                        .collect(Collectors.joining(", "))
                + Counted.andMore(Math.max(0, worked.size() - MOST_NAMED));
    }

    /** The same for each row of a table. */
    public String[] named(int[] keys) {
        return Arrays.stream(keys).mapToObj(this::named).toArray(String[]::new);
    }

    /** For each row of a table a field whose holding is that of all its fields; -1 where they are of several. */
    public int[] ofOneHolding(int[] keys) {
        return Arrays.stream(keys)
                .map(key -> onSeveralHoldings.contains(key) ? -1 : first.getOrDefault(key, -1))
                .toArray();
    }

    /** A table with a column for the fields beside the name of the job, where any job lacks one. */
    public TableSpec in(TableSpec spec) {
        if (unnamed.isEmpty()) {
            return spec;
        }
        List<TableColumn> columns = new ArrayList<>(spec.columns());
        columns.add(spec.position(Quantities.JOB) + 1, new TableColumn.Word(Quantities.FIELDS_OF_JOB, List.of(), true));
        return spec.with(columns);
    }
}
