package org.rickyard.plan.join;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Choices;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.RepeatedKey;
import org.rickyard.lists.text.MachineMention;
import org.rickyard.quantity.Substance;
import org.rickyard.trade.workrate.Suitability;

/**
 * The job list taken apart into lines of one job, one field and one machine that works by its width; and the blocks
 * that sprayers work: the fields of one job, mix and sprayer in list order.
 */
public final class JobLines {
    /**
     * One line. The same machine on the same field for the same job stands once, however many products it carries; a
     * sprayer stands there once for each water volume that is told.
     */
    public record Line(int job, int field, int machine, int block) {}

    /** A spray block: its first job row, its machine, and the job rows and lines that belong to it. */
    public record Block(int key, int firstJob, int firstField, int machine, List<Integer> jobs) {
        /** The same, led by another of its rows. */
        public Block at(int job) {
            return new Block(key, job, firstField, machine, jobs);
        }
    }

    /** A product or mix of a job row that is spread or drilled on a field, whatever number of machines share the work. */
    public record Spread(int job, int field, int machine) {}

    /** What spreads or drills the product that its job names. */
    private static final Set<String> SPREADERS =
            Set.of("fertiliser spreader", "muck spreader", "slurry tanker", "drill");

    private final ListRows jobs;
    private final ListRows fields;
    private final ListRows machines;
    private final MixesOfJobs mixOf;
    private final FieldChoice fieldChoice;
    private final DiggingJobs digging;
    private final MachineChoice machineChoice;
    private final List<Finding> findings;
    private final List<Line> lines = new ArrayList<>();
    private final List<Block> blocks = new ArrayList<>();
    private final List<Spread> spreads = new ArrayList<>();
    /** Of the sprayed lines that several rows of the job list are of, those rows. */
    private final Map<Line, List<Integer>> rowsOf = new HashMap<>();

    /** Jobs that have a dose and name nothing that is dosed. */
    private final List<Integer> dosesOfNothing = new ArrayList<>();

    /** Jobs that say of no field and machine what no row above them says. */
    private final List<Integer> sameAgain = new ArrayList<>();

    private boolean joinsRows;

    /** Joins the lists of jobs, fields and machines; what cannot be joined is added to the findings. */
    public JobLines(FoundLists lists, List<Finding> findings) {
        this.jobs = lists.rows(Jobs.LIST);
        this.fields = lists.rows(Fields.LIST);
        this.machines = lists.rows(Machines.LIST);
        this.mixOf = new MixesOfJobs(lists);
        this.findings = findings;
        this.fieldChoice = new FieldChoice(fields, findings);
        this.digging = new DiggingJobs(lists, findings);
        this.machineChoice = new MachineChoice(machines, findings);
        if (jobs.size() > 0) {
            read();
        } else {
            lines.addAll(DoneOnce.lines(fields, machines, findings));
        }
    }

    /** The lines, in order of their keys from 1. */
    public List<Line> lines() {
        return lines;
    }

    /** The spray blocks, in order of their keys. */
    public List<Block> blocks() {
        return blocks;
    }

    /** What is spread or drilled, in list order. */
    public List<Spread> spreads() {
        return spreads;
    }

    /** Which mix each job takes. */
    public MixesOfJobs mixOf() {
        return mixOf;
    }

    /** Whether a block is made of several rows of the job list. */
    public boolean joinsRows() {
        return joinsRows;
    }

    /** The rows of the job list that put something into the tank of a sprayed line, in list order. */
    public List<Integer> rows(Line line) {
        return rowsOf.getOrDefault(line, List.of(line.job()));
    }

    private void read() {
        Reading reading = new Reading();
        for (int job = 0; job < jobs.size(); job++) {
            reading.job(job);
        }
        fieldChoice.tellLeftOut();
        tellDosesOfNothing();
        tellSameAgain();
        reading.lines();
    }

    /** One reading of the job list. */
    private final class Reading {
        private final Map<String, Integer> numbers = new HashMap<>();
        private final JobIdentity identity = new JobIdentity(jobs, fields);
        /** One job, field and machine; a sprayer that comes there with another water volume or block comes once more. */
        private final TupleNumbers works = new TupleNumbers(3);

        private final TankContents tanks = new TankContents();
        /** One job, field and product with its dose: spread once, also where two machines share it. */
        private final TupleNumbers spread = new TupleNumbers(3);

        private final List<Work> all = new ArrayList<>();
        /** The first work of each job, field and machine, by its number in {@link #works}. */
        private final List<Work> byPlace = new ArrayList<>();

        private int sprayings;
        private int lastRepeated = -1;

        void job(int job) {
            if (digging.isOfClamp(job)) {
                return;
            }
            List<Integer> gang = gang(job);
            int name = number(numbers, identity.key(job));
            int content = number(
                    numbers,
                    NameKey.key(jobs.text(Jobs.PRODUCT, job))
                            + '\u0000'
                            + NameKey.key(mixOf.name(job))
                            + '\u0000'
                            + doseOf(job)
                            + contentOf(job));
            int spreader = spreader(job, gang);
            int known = works.count();
            boolean mayRepeat = spreader < 0 && gang.stream().allMatch(this::isReckonedByItself);
            boolean worked = false;
            for (int field : fieldChoice.find(jobs, job)) {
                int spreading = spreader < 0 ? -1 : spread.of(name, field, content);
                if (spreading == spreads.size()) {
                    spreads.add(new Spread(job, field, spreader));
                } else if (spreading >= 0) {
                    tellRepeated(spreads.get(spreading), job, spreader);
                }
                for (int machine : gang) {
                    String type = machines.text(Machines.TYPE, machine);
                    // A type that is blank or not known here withholds the row, and does not take it away.
                    if (!machines.gives(Machines.TYPE, machine) || Suitability.worksByWidth(type)) {
                        int before = works.count();
                        int place = works.of(name, field, machine);
                        worked = true;
                        Work first = place < before ? byPlace.get(place) : null;
                        if (first == null) {
                            first = work(job, field, machine, name, Choices.sprays(type));
                            byPlace.add(first);
                        }
                        if (Choices.sprays(type)) {
                            tanks.add(spraying(first, job).spraying, content, job);
                        }
                    }
                }
            }
            if (mayRepeat && worked && works.count() == known) {
                sameAgain.add(job);
            }
        }

        /** What a sprayer's row repeats may be another product, and a gang is made of every row that names it. */
        private boolean isReckonedByItself(int machine) {
            String type = machines.text(Machines.TYPE, machine);
            return Suitability.worksByWidth(type) && !Choices.sprays(type);
        }

        /** The machine that spreads or drills what a job row names; -1 if none does, or a sprayer puts it out. */
        private int spreader(int job, List<Integer> gang) {
            if (!mixOf.takesAny(job)
                    || gang.stream().anyMatch(machine -> Choices.sprays(machines.text(Machines.TYPE, machine)))) {
                return -1;
            }
            return gang.stream()
                    .filter(machine -> spreads(machines.text(Machines.TYPE, machine)))
                    .findFirst()
                    .orElse(-1);
        }

        /** Two machines share what their rows say; of one machine it may be a second dressing. */
        private void tellRepeated(Spread first, int job, int spreader) {
            if (first.machine() == spreader && first.job() != job && job != lastRepeated) {
                lastRepeated = job;
                CellAddress cell = jobs.address(Jobs.FIELD, job).orElse(null);
                String above = jobs.address(Jobs.FIELD, first.job())
                        .map(address -> " (" + address + ")")
                        .orElse("");
                findings.add(Finding.caution(
                        cell,
                        "this row says the same as one above it" + above
                                + ": job, field, machine, product and dose, so it is reckoned once. If it is done twice, give"
                                + " each row its own Job or day; if not, clear this one."));
            }
        }

        private Work work(int job, int field, int machine, int name, boolean sprays) {
            Work work = new Work(job, field, machine, name, sprays ? sprayings++ : -1);
            all.add(work);
            return work;
        }

        /** The work that a row of the job list is of: the first there, or one after it with the row's water and block. */
        private Work spraying(Work first, int job) {
            String water = waterOf(job);
            String block = NameKey.key(jobs.text(Jobs.BLOCK, job));
            Work last = null;
            for (Work work = first; work != null; work = work.next) {
                if (work.takes(water, block)) {
                    work.take(water, block, job);
                    return work;
                }
                last = work;
            }
            Work further = work(job, first.field, first.machine, first.name, true);
            further.take(water, block, job);
            last.next = further;
            return further;
        }

        /** Puts the sprayings of one tank content together into blocks. */
        void lines() {
            TupleNumbers byContent = new TupleNumbers(6);
            RepeatedKey holdings = new RepeatedKey();
            RepeatedKey fieldBlocks = new RepeatedKey();
            for (Work work : all) {
                int key = 0;
                if (work.spraying >= 0) {
                    int holding = number(numbers, holdings.of(fields.text(Fields.HOLDING, work.field)));
                    String block =
                            work.block.isEmpty() ? fieldBlocks.of(fields.text(Fields.BLOCK, work.field)) : work.block;
                    key = 1
                            + byContent.of(
                                    work.name,
                                    work.machine,
                                    number(numbers, block),
                                    number(numbers, work.water),
                                    holding,
                                    tanks.set(work.spraying));
                    if (key > blocks.size()) {
                        blocks.add(new Block(key, work.job, work.field, work.machine, tanks.jobs(work.spraying)));
                    }
                }
                joinsRows |= key > 0 && work.job != blocks.get(key - 1).firstJob();
                Line line = new Line(work.job, work.field, work.machine, key);
                lines.add(line);
                List<Integer> rows = work.spraying < 0 ? List.of() : tanks.jobs(work.spraying);
                if (rows.size() > 1) {
                    rowsOf.put(line, rows);
                    joinsRows = true;
                }
            }
        }
    }

    /** One machine's work on one field for one job. */
    private static final class Work {
        private final int field;
        private final int machine;
        private final int name;
        private final int spraying;
        private int job;
        private String water = "";
        private String block = "";
        private Work next;

        Work(int job, int field, int machine, int name, int spraying) {
            this.job = job;
            this.field = field;
            this.machine = machine;
            this.name = name;
            this.spraying = spraying;
        }

        /** Whether a row of this water volume and block is of this work; a blank says the same as the others. */
        boolean takes(String rowsWater, String rowsBlock) {
            return agree(water, rowsWater) && agree(block, rowsBlock);
        }

        private static boolean agree(String one, String other) {
            return one.isEmpty() || other.isEmpty() || one.equals(other);
        }

        /** The row that tells the water volume leads the others, for their cells are blank. */
        void take(String rowsWater, String rowsBlock, int row) {
            if (water.isEmpty() && !rowsWater.isEmpty()) {
                water = rowsWater;
                job = row;
            }
            block = block.isEmpty() ? rowsBlock : block;
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
        if (jobs.gives(Jobs.DOSE, job)
                && jobs.text(Jobs.PRODUCT, job).isEmpty()
                && mixOf.name(job).isEmpty()) {
            dosesOfNothing.add(job);
        }
        return gang;
    }

    private void tellSameAgain() {
        if (!sameAgain.isEmpty()) {
            int more = sameAgain.size() - 1;
            findings.add(Finding.caution(
                    jobs.address(Jobs.FIELD, sameAgain.get(0)).orElse(null),
                    (more == 0 ? "this row says" : "this row and " + more + " more say")
                            + " of job, field and machine the same as rows above, so that work is reckoned once. If it is"
                            + " done again, give each row its own Job or day; if not, clear "
                            + (more == 0 ? "this one." : "them.")));
        }
    }

    /** One sentence for all of them: a list without a column Product has a dose of nothing in each row. */
    private void tellDosesOfNothing() {
        if (!dosesOfNothing.isEmpty()) {
            int more = dosesOfNothing.size() - 1;
            findings.add(Finding.caution(
                    jobs.address(Jobs.DOSE, dosesOfNothing.get(0)).orElse(null),
                    (more == 0
                                    ? "this job has a dose but names"
                                    : "this job and " + more + " more have a dose but name")
                            + " no product, so no loads and no amount are worked out for "
                            + (more == 0 ? "it" : "them")
                            + "; write what is applied in a column Product."));
        }
    }

    /** The water volume a row tells; "" where it tells none that can be used. */
    private String waterOf(int job) {
        return jobs.gives(Jobs.WATER_VOLUME, job)
                ? jobs.number(Jobs.WATER_VOLUME, job)
                        + jobs.unit(Jobs.WATER_VOLUME, job)
                                .map(unit -> " " + unit)
                                .orElse("")
                : "";
    }

    /** Two doses that cannot be read are the same only if the same is typed: what is in one tank hangs on it. */
    private String doseOf(int job) {
        if (jobs.gives(Jobs.DOSE, job)) {
            return jobs.number(Jobs.DOSE, job) + " " + jobs.unit(Jobs.DOSE, job);
        }
        String state = jobs.state(Jobs.DOSE, job).name();
        return jobs.isFilled(Jobs.DOSE, job) ? state + ' ' + jobs.typed(Jobs.DOSE, job) : state;
    }

    /** What is told beside a dose of what it counts: of another content it is another amount of the product. */
    private String contentOf(int job) {
        StringBuilder contents = new StringBuilder();
        for (Substance substance : Substance.values()) {
            ColumnSpec column = Jobs.contentOf(substance);
            boolean counts = !jobs.gives(Jobs.DOSE, job)
                    || jobs.unit(Jobs.DOSE, job).flatMap(Substance::of).equals(Optional.of(substance));
            if (counts && jobs.gives(column, job)) {
                contents.append('\u0000').append(jobs.number(column, job)).append(jobs.unit(column, job));
            }
        }
        return contents.toString();
    }

    /** Whether a type of machine spreads or drills the product that its job names. */
    public static boolean spreads(String type) {
        return SPREADERS.contains(type);
    }
}
