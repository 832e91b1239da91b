package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.NozzleTest;
import org.rickyard.lists.Products;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.NozzleChoice;
import org.rickyard.trade.spraying.NozzlePressure;
import org.rickyard.trade.spraying.SprayQuality;
import org.rickyard.trade.spraying.SprayWork;

/** Makes the tables of nozzles: distinct settings of each sprayer, sizes that would do, and catch tests. */
final class SprayNozzleFamily {
    /** A sprayer at one setting: the first job row that uses it, and the qualities its labels ask for. */
    private record Setting(int job, int machine, Set<String> qualities) {}

    private final PlanContext plan;
    private final ListRows machines;
    private final List<Setting> settings = new ArrayList<>();

    private SprayNozzleFamily(PlanContext plan) {
        this.plan = plan;
        this.machines = plan.rows(Machines.LIST);
    }

    static void build(PlanContext plan, List<JobLines.Block> blocks, SprayLines lines, SprayRows products) {
        SprayNozzleFamily family = new SprayNozzleFamily(plan);
        family.settings(blocks, lines, products);
        String none = "no job names a boom sprayer or knapsack";
        plan.add(SprayNozzleTables.NOZZLES, family.nozzles(), none);
        plan.add(
                SprayNozzleTables.SPEED_BAND,
                family.speedBand(),
                "no sprayer at work has a lowest or highest field speed typed");
        plan.add(SprayNozzleTables.CHOICE, family.choice(), none);
        family.tests();
    }

    /** Rows of one block may tell a speed each, and every one of them wants its pressure. */
    private void settings(List<JobLines.Block> blocks, SprayLines lines, SprayRows products) {
        Map<List<Object>, Setting> found = new LinkedHashMap<>();
        for (int i = 0; i < blocks.size(); i++) {
            JobLines.Block block = blocks.get(i);
            String type = machines.text(Machines.TYPE, block.machine());
            boolean boom = type.equals("sprayer");
            boolean sized = SprayLines.given(machines, block.machine(), Machines.NOZZLE_SIZE);
            if (!boom && (type.equals("air-blast sprayer") || !sized)) {
                continue;
            }
            Set<String> qualities = qualities(products, i);
            int last = -1;
            for (int line : lines.ofBlock(block.key())) {
                int job = lines.line(line).job();
                // Most blocks are of one row of the job list.
                if (job != last) {
                    last = job;
                    found.computeIfAbsent(
                                    key(i, block, line, job),
                                    k -> new Setting(job, block.machine(), new LinkedHashSet<>()))
                            .qualities()
                            .addAll(qualities);
                }
            }
        }
        settings.addAll(found.values());
        for (Setting setting : settings) {
            if (setting.qualities().size() > 1) {
                plan.findings()
                        .add(Finding.caution(
                                machines.address(Machines.MACHINE, setting.machine())
                                        .orElse(null),
                                "the labels of products sprayed at one setting ask for different spray qualities ("
                                        + String.join(", ", setting.qualities())
                                        + "): choose nozzles for each job apart; none is taken for Nozzle choice."));
            }
        }
    }

    private Set<String> qualities(SprayRows products, int block) {
        ListRows list = plan.rows(Products.LIST);
        Set<String> qualities = new LinkedHashSet<>();
        for (int row : products.ofBlock(block)) {
            int product = products.use(row).product();
            if (product >= 0 && list.state(Products.SPRAY_QUALITY, product) == ListRows.State.GIVEN) {
                qualities.add(list.text(Products.SPRAY_QUALITY, product));
            }
        }
        return qualities;
    }

    /** What tells one setting from another. The row that leads a block is reckoned there, the others beside their field. */
    private List<Object> key(int index, JobLines.Block block, int line, int job) {
        ResultTable ofBlocks = plan.table(SprayTables.BLOCKS_ID);
        ResultTable ofFields = plan.table(SprayWork.FIELDS);
        ListRows jobs = plan.rows(Jobs.LIST);
        boolean leads = job == block.firstJob();
        double band = leads ? Double.NaN : number(ofFields, Quantities.BAND_WIDTH, line);
        return List.of(
                block.machine(),
                number(ofBlocks, Quantities.WATER_VOLUME, index),
                leads ? number(ofBlocks, Quantities.SPEED, index) : number(ofFields, Quantities.SPEED, line),
                Double.isNaN(band) ? number(ofBlocks, NozzlePressure.SPACING_USED, index) : band,
                jobs.gives(Jobs.SPRAY_DENSITY, job) ? jobs.number(Jobs.SPRAY_DENSITY, job) : Double.NaN);
    }

    private static double number(ResultTable table, Symbol symbol, int row) {
        Values values = table.of(symbol);
        return values.has(row) ? values.number(row) : Double.NaN;
    }

    private RowSources nozzles() {
        return of(RowNumbers.rows(settings.size()));
    }

    private RowSources speedBand() {
        List<Integer> some = new ArrayList<>();
        for (int i = 0; i < settings.size(); i++) {
            if (SprayLines.given(machines, settings.get(i).machine(), Machines.LOWEST_SPEED, Machines.HIGHEST_SPEED)) {
                some.add(i);
            }
        }
        return of(some.stream().mapToInt(Integer::intValue).toArray());
    }

    private RowSources choice() {
        List<ReferenceTable.Row> sizes = NozzlePressure.ISO_SIZES.rows();
        int count = settings.size() * sizes.size();
        int[] at = new int[count];
        int[] tenths = new int[count];
        int[] place = new int[count];
        int[] unity = new int[count];
        String[] text = new String[count];
        for (int i = 0; i < count; i++) {
            at[i] = i / sizes.size();
            place[i] = i % sizes.size() + 1;
            double size = sizes.get(i % sizes.size()).key();
            tenths[i] = (int) Math.round(size * 10);
            unity[i] = 1;
            text[i] = size == Math.rint(size)
                    ? String.format(Locale.ROOT, "%02d", (int) size)
                    : String.format(Locale.ROOT, "%03d", tenths[i]);
        }
        return of(at).with(NozzleChoice.TENTHS, tenths)
                .with(NozzleChoice.PLACE, place)
                .with(NozzleChoice.UNITY, unity)
                .with(NozzleChoice.SIZE_TEXT, text);
    }

    private RowSources of(int[] at) {
        int[] job = new int[at.length];
        int[] machine = new int[at.length];
        int[] key = new int[at.length];
        String[] quality = new String[at.length];
        for (int i = 0; i < at.length; i++) {
            Setting setting = settings.get(at[i]);
            job[i] = setting.job();
            machine[i] = setting.machine();
            key[i] = at[i] + 1;
            quality[i] = setting.qualities().size() == 1
                    ? setting.qualities().iterator().next()
                    : "";
        }
        return new RowSources(at.length)
                .with(Role.JOB, plan.rows(Jobs.LIST), job)
                .with(Role.MACHINE, machines, machine)
                .with(Keys.NOZZLE_KEY, key)
                .with(Keys.MACHINE_KEY, RowNumbers.keysOf(machine))
                .with(SprayQuality.ON_LABEL, quality);
    }

    private void tests() {
        ListRows tests = plan.rows(NozzleTest.LIST);
        NameKey names = NameKey.of(machines, Machines.MACHINE);
        Map<String, Integer> keys = new HashMap<>();
        Map<Integer, Integer> atPressure = new HashMap<>();
        List<int[]> sets = new ArrayList<>();
        int[] key = new int[tests.size()];
        int[] machine = new int[tests.size()];
        for (int row = 0; row < tests.size(); row++) {
            String holding = tests.text(NozzleTest.HOLDING, row);
            String name = tests.text(NozzleTest.SPRAYER, row);
            NameKey.Resolution named = names.resolve(holding, name);
            machine[row] = named instanceof NameKey.Found found ? found.row() : -1;
            // A sprayer that the machine list has is one set, whether its holding is written in each of its rows or
            // not.
            String set =
                    machine[row] >= 0 ? String.valueOf(machine[row]) : NameKey.key(holding) + '\n' + NameKey.key(name);
            Integer known = keys.get(set);
            if (known == null) {
                known = keys.size() + 1;
                keys.put(set, known);
                if (machine[row] < 0) {
                    CellAddress cell = tests.address(NozzleTest.SPRAYER, row).orElse(null);
                    plan.findings()
                            .add(
                                    machines.size() == 0
                                            ? Finding.note(cell, unlisted(name))
                                            : Finding.caution(cell, unknown(named, name)));
                } else {
                    sets(machine[row], known, sets);
                }
            }
            key[row] = known;
            tellOtherPressure(tests, row, atPressure, known);
        }
        plan.add(
                SprayNozzleTables.TEST,
                new RowSources(tests.size())
                        .with(Role.NOZZLE_TEST, tests, RowNumbers.rows(tests.size()))
                        .with(Role.MACHINE, machines, machine)
                        .with(Keys.TEST_KEY, key)
                        .with(Keys.MACHINE_KEY, RowNumbers.keysOf(machine)),
                "no nozzle test is listed");
        plan.add(
                SprayNozzleTables.SETS,
                new RowSources(sets.size())
                        .with(Role.MACHINE, machines, column(sets, 0))
                        .with(Keys.TEST_KEY, column(sets, 1))
                        .with(Role.JOB, plan.rows(Jobs.LIST), column(sets, 2)),
                "no sprayer of the machine list has a nozzle test");
    }

    /** Who brings nothing but what was caught has no name to mend, and may not know what more there is to have. */
    private static String unlisted(String name) {
        return "no machines are listed, so what the tested nozzles of '" + name + "' put on a hectare is not reckoned:"
                + " add a list Machines with its Type, Speed and Nozzle spacing.";
    }

    private static String unknown(NameKey.Resolution named, String name) {
        return named instanceof NameKey.Ambiguous several
                ? several.why("machine", name, "a column Holding of the nozzle test")
                        + ". Until then the nozzles of both are taken for one set, and no nozzle size is known."
                : "no machine in the list is called '" + name
                        + "', so its nozzle size is not known; mend the name here or there.";
    }

    /** Nozzles caught at different pressures have no mean to be held against; said once of each set. */
    private void tellOtherPressure(ListRows tests, int row, Map<Integer, Integer> first, int set) {
        if (!tests.gives(NozzleTest.PRESSURE, row)) {
            return;
        }
        Integer before = first.putIfAbsent(set, row);
        if (before != null
                && before >= 0
                && !tests.text(NozzleTest.PRESSURE, before).equals(tests.text(NozzleTest.PRESSURE, row))) {
            first.put(set, -1);
            plan.findings()
                    .add(Finding.caution(
                            tests.address(NozzleTest.PRESSURE, row).orElse(null),
                            "nozzles of '" + tests.text(NozzleTest.SPRAYER, row) + "' were caught at "
                                    + tests.text(NozzleTest.PRESSURE, before) + " and at "
                                    + tests.text(NozzleTest.PRESSURE, row)
                                    + ", so their mean, and what each is off it, mean nothing. Expected one pressure for a"
                                    + " set: test again, or give the sets names apart."));
        }
    }

    private void sets(int machine, int key, List<int[]> sets) {
        int before = sets.size();
        for (Setting setting : settings) {
            if (setting.machine() == machine) {
                sets.add(new int[] {machine, key, setting.job()});
            }
        }
        if (sets.size() == before) {
            sets.add(new int[] {machine, key, -1});
        }
    }

    private static int[] column(List<int[]> rows, int column) {
        return rows.stream().mapToInt(row -> row[column]).toArray();
    }
}
