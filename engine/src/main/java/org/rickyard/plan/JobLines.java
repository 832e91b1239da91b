package org.rickyard.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
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

    /** Crops looked at for words that tell no machine; one message each. */
    private static final int MOST_CROPS = 50;

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

    private void read() {
        Reading reading = new Reading();
        for (int job = 0; job < jobs.size(); job++) {
            reading.job(job);
        }
        reading.lines();
    }

    /** One reading of the job list. */
    private final class Reading {
        private final Map<String, Integer> numbers = new HashMap<>();
        private final JobIdentity identity = new JobIdentity(jobs);
        // Lines are told apart by job, field and machine; what is sprayed, by the block and water volume too.
        private final TupleNumbers works = new TupleNumbers(3);
        private final TupleNumbers sprayings = new TupleNumbers(5);
        private final TankContents tanks = new TankContents();
        private int[] jobOf = new int[16];
        private int[] sprayingOf = new int[16];

        void job(int job) {
            List<Integer> gang = gang(job);
            int name = number(numbers, identity.key(job));
            int water = number(numbers, waterOf(job));
            int content = number(
                    numbers,
                    NameKey.key(jobs.text(Jobs.PRODUCT, job))
                            + '\u0000'
                            + NameKey.key(jobs.text(Jobs.MIX, job))
                            + '\u0000'
                            + doseOf(job));
            String block = jobs.text(Jobs.BLOCK, job);
            int jobBlock = block.isEmpty() ? -1 : number(numbers, NameKey.key(block));
            for (int field : fieldChoice.find(jobs, job)) {
                for (int machine : gang) {
                    String type = machines.text(Machines.TYPE, machine);
                    if (type.isEmpty() || Suitability.worksByWidth(type)) {
                        int spraying = -1;
                        if (sprays(type)) {
                            int blockHere = jobBlock >= 0 ? jobBlock : blockOf(field);
                            spraying = sprayings.of(name, machine, blockHere, water, field);
                            tanks.add(spraying, content, job);
                        }
                        work(name, field, machine, job, spraying);
                    }
                }
            }
        }

        private int blockOf(int field) {
            return number(numbers, NameKey.key(fields.text(Fields.BLOCK, field)));
        }

        private void work(int name, int field, int machine, int job, int spraying) {
            int before = works.count();
            int work = works.of(name, field, machine);
            if (work < before) {
                return;
            }
            if (work == jobOf.length) {
                jobOf = Arrays.copyOf(jobOf, 2 * work);
                sprayingOf = Arrays.copyOf(sprayingOf, 2 * work);
            }
            jobOf[work] = job;
            sprayingOf[work] = spraying;
        }

        /** Puts the sprayings of one tank content together into blocks. */
        void lines() {
            TupleNumbers byContent = new TupleNumbers(6);
            for (int work = 0; work < works.count(); work++) {
                int field = works.member(work, 1);
                int machine = works.member(work, 2);
                int spraying = sprayingOf[work];
                int key = 0;
                if (spraying >= 0) {
                    int holding = number(numbers, NameKey.key(fields.text(Fields.HOLDING, field)));
                    key = 1
                            + byContent.of(
                                    works.member(work, 0),
                                    machine,
                                    sprayings.member(spraying, 2),
                                    sprayings.member(spraying, 3),
                                    holding,
                                    tanks.set(spraying));
                    if (key > blocks.size()) {
                        blocks.add(new Block(key, jobOf[work], field, machine, tanks.jobs(spraying)));
                    }
                }
                lines.add(new Line(jobOf[work], field, machine, key));
            }
        }
    }

    private static int number(Map<String, Integer> numbers, String word) {
        Integer known = numbers.putIfAbsent(word, numbers.size());
        return known == null ? numbers.size() - 1 : known;
    }

    /** The machines that a job names, row by row of the machine list. */
    private List<Integer> gang(int job) {
        List<Integer> gang = new ArrayList<>();
        for (MachineMention mention : machineChoice.named(jobs, job)) {
            gang.addAll(machineChoice.find(jobs, job, mention.name()));
        }
        if (jobs.text(Jobs.MACHINE, job).isEmpty()) {
            findings.add(Finding.caution(
                    jobs.address(Jobs.MACHINE, job)
                            .or(() -> jobs.address(Jobs.OPERATION, job))
                            .orElse(null),
                    "this job names no machine, so nothing is worked out for it; write a name from the machine"
                            + " list."));
        }
        return gang;
    }

    private String waterOf(int job) {
        return jobs.state(Jobs.WATER_VOLUME, job) == ListRows.State.GIVEN
                ? Double.toString(jobs.number(Jobs.WATER_VOLUME, job))
                : jobs.state(Jobs.WATER_VOLUME, job).name();
    }

    private String doseOf(int job) {
        return jobs.gives(Jobs.DOSE, job)
                ? jobs.number(Jobs.DOSE, job) + " " + jobs.unit(Jobs.DOSE, job)
                : jobs.state(Jobs.DOSE, job).name();
    }

    /** Without jobs, each machine once over the fields of its holding whose crop its type works. */
    private void ifDoneOnce() {
        String[] holdings = new String[fields.size()];
        List<Set<String>> types = new ArrayList<>();
        Map<String, Set<String>> typesOf = new HashMap<>();
        for (int field = 0; field < fields.size(); field++) {
            holdings[field] = NameKey.key(fields.text(Fields.HOLDING, field));
            types.add(typesOf.computeIfAbsent(fields.text(Fields.CROP, field), Suitability::types));
        }
        boolean chooses = false;
        for (int machine = 0; machine < machines.size(); machine++) {
            String type = machines.text(Machines.TYPE, machine);
            chooses |= Suitability.choosesCrops(type);
            String holding = NameKey.key(machines.text(Machines.HOLDING, machine));
            for (int field = 0; field < fields.size(); field++) {
                boolean sameHolding = holding.isEmpty() || holding.equals(holdings[field]);
                if (sameHolding && types.get(field).contains(type)) {
                    lines.add(new Line(-1, field, machine, 0));
                }
            }
        }
        if (chooses) {
            tellUnknownCrops();
        }
    }

    /** Nothing is said of a mower on "lawn": a reader would look for it in vain. */
    private void tellUnknownCrops() {
        Set<String> told = new HashSet<>();
        for (int field = 0; field < fields.size() && told.size() < MOST_CROPS; field++) {
            String crop = fields.text(Fields.CROP, field);
            if (!crop.isEmpty() && told.add(NameKey.key(crop)) && !Suitability.isKnown(crop)) {
                findings.add(Finding.caution(
                        fields.address(Fields.CROP, field).orElse(null),
                        "\"" + crop
                                + "\" is no crop known here, so without a job list machines that work some crops and"
                                + " not others are not reckoned on it. Say what it is as well (\"" + crop
                                + " (grass)\"; the table '" + Suitability.CROPS.name()
                                + "' on Basis has the words), or list the work as Jobs."));
            }
        }
    }

    static boolean sprays(String type) {
        return type.equals("sprayer") || type.equals("air-blast sprayer") || type.equals("knapsack");
    }
}
