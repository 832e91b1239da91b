package org.rickyard.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.MachineMention;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.trade.workrate.Suitability;

/**
 * The job list taken apart into lines of one job, one field and one machine that works by its width; and the blocks
 * that sprayers work: the fields of one job, mix and sprayer in list order.
 */
final class JobLines {
    /** One line. The same machine on the same field for the same job stands once, however many products it carries. */
    record Line(int job, int field, int machine, int block) {}

    /** A spray block: its first job row, its machine, and the job rows and lines that belong to it. */
    record Block(int key, int firstJob, int firstField, int machine, List<Integer> jobs) {}

    private final ListRows jobs;
    private final ListRows fields;
    private final ListRows machines;
    private final FieldChoice fieldChoice;
    private final MachineChoice machineChoice;
    private final List<Finding> findings;
    private final List<Line> lines = new ArrayList<>();
    private final List<Block> blocks = new ArrayList<>();

    JobLines(FoundLists lists, List<Finding> findings) {
        this.jobs = lists.rows(Jobs.LIST);
        this.fields = lists.rows(Fields.LIST);
        this.machines = lists.rows(Machines.LIST);
        this.findings = findings;
        this.fieldChoice = new FieldChoice(fields, findings);
        this.machineChoice = new MachineChoice(machines, findings);
        if (jobs.size() > 0) {
            read();
        } else {
            ifDoneOnce();
        }
    }

    List<Line> lines() {
        return lines;
    }

    List<Block> blocks() {
        return blocks;
    }

    /** What is put into the tank on a field by one job and sprayer: the products and mixes of its rows. */
    private record Spraying(String job, int machine, String block, String water, int field) {}

    private record Seen(String job, int field, int machine) {}

    private record Work(int job, int field, int machine, Spraying spraying) {}

    private void read() {
        List<Work> works = new ArrayList<>();
        Map<Spraying, Set<String>> mixes = new HashMap<>();
        Map<Spraying, List<Integer>> rows = new HashMap<>();
        Set<Seen> seen = new LinkedHashSet<>();
        for (int job = 0; job < jobs.size(); job++) {
            int row = job;
            List<Integer> gang = new ArrayList<>();
            for (MachineMention mention : machineChoice.named(jobs, job)) {
                gang.addAll(machineChoice.find(jobs, job, mention.name()));
            }
            if (jobs.text(Jobs.MACHINE, job).isEmpty()) {
                findings.add(Finding.caution(
                        jobs.address(Jobs.MACHINE, job)
                                .or(() -> jobs.address(Jobs.OPERATION, row))
                                .orElse(null),
                        "this job names no machine, so nothing is worked out for it; write a name from the machine"
                                + " list."));
            }
            String name =
                    NameKey.key(jobs.text(Jobs.JOB, job)) + '\u0000' + NameKey.key(jobs.text(Jobs.OPERATION, job));
            String water = waterOf(job);
            String content = NameKey.key(jobs.text(Jobs.PRODUCT, job))
                    + '\u0000'
                    + NameKey.key(jobs.text(Jobs.MIX, job))
                    + '\u0000'
                    + doseOf(job);
            for (int field : fieldChoice.find(jobs, job)) {
                for (int machine : gang) {
                    String type = machines.text(Machines.TYPE, machine);
                    if (!type.isEmpty() && !Suitability.worksByWidth(type)) {
                        continue;
                    }
                    Spraying spraying = null;
                    if (sprays(type)) {
                        spraying = new Spraying(name, machine, NameKey.key(block(job, field)), water, field);
                        mixes.computeIfAbsent(spraying, s -> new LinkedHashSet<>())
                                .add(content);
                        rows.computeIfAbsent(spraying, s -> new ArrayList<>()).add(job);
                    }
                    if (seen.add(new Seen(name, field, machine))) {
                        works.add(new Work(job, field, machine, spraying));
                    }
                }
            }
        }
        assign(works, mixes, rows);
    }

    private void assign(List<Work> works, Map<Spraying, Set<String>> mixes, Map<Spraying, List<Integer>> rows) {
        Map<List<Object>, Block> byContent = new LinkedHashMap<>();
        for (Work work : works) {
            int key = 0;
            if (work.spraying() != null) {
                Spraying s = work.spraying();
                List<Object> content = List.of(
                        s.job(),
                        s.machine(),
                        s.block(),
                        s.water(),
                        NameKey.key(fields.text(Fields.HOLDING, work.field())),
                        mixes.get(s));
                Block block = byContent.get(content);
                if (block == null) {
                    block = new Block(byContent.size() + 1, work.job(), work.field(), work.machine(), rows.get(s));
                    byContent.put(content, block);
                    blocks.add(block);
                }
                key = block.key();
            }
            lines.add(new Line(work.job(), work.field(), work.machine(), key));
        }
    }

    private String block(int job, int field) {
        String typed = jobs.text(Jobs.BLOCK, job);
        return typed.isEmpty() ? fields.text(Fields.BLOCK, field) : typed;
    }

    private String waterOf(int job) {
        return jobs.state(Jobs.WATER_VOLUME, job) == ListRows.State.GIVEN
                ? Double.toString(jobs.number(Jobs.WATER_VOLUME, job))
                : jobs.state(Jobs.WATER_VOLUME, job).name();
    }

    private String doseOf(int job) {
        return jobs.state(Jobs.DOSE, job) == ListRows.State.GIVEN
                ? jobs.number(Jobs.DOSE, job) + " " + jobs.unit(Jobs.DOSE, job)
                : jobs.state(Jobs.DOSE, job).name();
    }

    /** Without jobs, each machine once over the fields of its holding whose crop its type works. */
    private void ifDoneOnce() {
        for (int machine = 0; machine < machines.size(); machine++) {
            String type = machines.text(Machines.TYPE, machine);
            String holding = NameKey.key(machines.text(Machines.HOLDING, machine));
            for (int field = 0; field < fields.size(); field++) {
                boolean sameHolding =
                        holding.isEmpty() || holding.equals(NameKey.key(fields.text(Fields.HOLDING, field)));
                if (sameHolding && Suitability.suits(type, fields.text(Fields.CROP, field))) {
                    lines.add(new Line(-1, field, machine, 0));
                }
            }
        }
    }

    static boolean sprays(String type) {
        return type.equals("sprayer") || type.equals("air-blast sprayer") || type.equals("knapsack");
    }
}
