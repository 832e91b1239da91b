package org.rickyard.plan.workrate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.Countries;
import org.rickyard.plan.join.FieldYields;
import org.rickyard.plan.silage.FieldCuts;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.Carting;
import org.rickyard.trade.workrate.CartingSimulation;
import org.rickyard.trade.workrate.GangChance;
import org.rickyard.trade.workrate.GangRates;
import org.rickyard.trade.workrate.GangStage;
import org.rickyard.trade.workrate.StageRates;

/** Makes the tables of gangs. */
final class GangFamily {
    private static final String NO_GANG =
            "no job names a forager together with trailers or clamp machines, or a forage" + " wagon";

    /** A row: a gang, its member, and the number of that member over all. */
    private record Row(GangRows.Gang gang, GangRows.Member member, int key) {}

    private final PlanContext plan;
    private final GangRows gangs;
    private final Tasks tasks;
    private final FieldCuts cuts;
    private final WorkRows works;
    private final Countries countries;

    private GangFamily(PlanContext plan, GangRows gangs, Tasks tasks, FieldCuts cuts, WorkRows works) {
        this.plan = plan;
        this.gangs = gangs;
        this.tasks = tasks;
        this.cuts = cuts;
        this.works = works;
        this.countries = new Countries(plan.lists());
    }

    static void build(PlanContext plan, GangRows gangs, Tasks tasks, FieldCuts cuts, WorkRows works) {
        new GangFamily(plan, gangs, tasks, cuts, works).build();
    }

    private void build() {
        List<Row> members = new ArrayList<>();
        for (GangRows.Gang gang : gangs.gangs()) {
            for (GangRows.Member member : gang.members()) {
                members.add(new Row(gang, member, members.size() + 1));
            }
            if (gangs.rolledAtClamp(gang)) {
                members.add(new Row(gang, new GangRows.Member(-1, 1, GangStage.ROLLING), members.size() + 1));
            }
        }
        List<Row> carting = members.stream()
                .filter(r -> r.member().stage() == GangStage.CARTING)
                .toList();
        List<Row> filled = carting.stream()
                .filter(row -> !plan.rows(Machines.LIST)
                        .text(Machines.TYPE, row.member().machine())
                        .equals(Carting.FORAGE_WAGON))
                .toList();
        plan.add(GangTables.CROP, ofGangs(gangs.gangs()), NO_GANG);
        ResultTable cartingTable = plan.add(GangTables.CARTING, carting(carting), NO_GANG);
        plan.add(GangTables.TRAILERS, rows(filled), "no job names a forager together with trailers");
        plan.add(GangTables.STAGES, stages(members), NO_GANG);
        plan.add(GangTables.gangs(apart()), gangs(), NO_GANG);
        expected(carting, cartingTable);
    }

    /** The stages on a day of their own that any gang has machines for. */
    private List<GangStage> apart() {
        return GangStage.apart().stream()
                .filter(stage -> gangs.gangs().stream().anyMatch(gang -> gang.machinesAt(stage) > 0))
                .toList();
    }

    private RowSources rows(List<Row> rows) {
        return ofGangs(rows.stream().map(Row::gang).toList())
                .with(
                        Role.MACHINE,
                        plan.rows(Machines.LIST),
                        rows.stream().mapToInt(r -> r.member().machine()).toArray())
                .with(Keys.MEMBER_KEY, rows.stream().mapToInt(Row::key).toArray());
    }

    private RowSources ofGangs(List<GangRows.Gang> rows) {
        int[] job = rows.stream().mapToInt(GangRows.Gang::job).toArray();
        int[] field = rows.stream().mapToInt(GangRows.Gang::field).toArray();
        RowSources sources = new RowSources(rows.size())
                .with(Role.JOB, plan.rows(Jobs.LIST), job)
                .with(Role.FIELD, plan.rows(Fields.LIST), field)
                .with(
                        Role.CLAMP,
                        plan.rows(Clamps.LIST),
                        rows.stream().mapToInt(GangRows.Gang::clamp).toArray())
                .with(Keys.GANG_KEY, rows.stream().mapToInt(GangRows.Gang::key).toArray());
        return FieldYields.apply(sources, plan.lists(), field, cuts.of(job, field));
    }

    private RowSources carting(List<Row> rows) {
        return rows(rows)
                .with(
                        Role.TRACTOR,
                        plan.rows(Machines.LIST),
                        rows.stream()
                                .mapToInt(r ->
                                        works.tractor(r.gang().job(), r.member().machine()))
                                .toArray())
                .with(
                        GangTables.stageKey(GangStage.CHOPPING),
                        rows.stream()
                                .mapToInt(r -> r.gang().stageKey(GangStage.CHOPPING))
                                .toArray())
                .with(
                        Carting.TRAILERS,
                        rows.stream().mapToDouble(r -> r.member().alike()).toArray())
                .with(
                        Carting.FORAGERS,
                        rows.stream()
                                .mapToDouble(r -> r.gang().machinesAt(GangStage.CHOPPING))
                                .toArray())
                .with(
                        Carting.FORAGER_KINDS,
                        rows.stream()
                                .mapToDouble(r -> r.gang().kindsAt(GangStage.CHOPPING))
                                .toArray())
                .with(
                        Quantities.COUNTRY,
                        rows.stream().map(r -> countries.of(r.gang().field())).toArray(String[]::new));
    }

    private RowSources stages(List<Row> rows) {
        String[] types = rows.stream()
                .map(r -> r.member().machine() < 0 ? StageRates.ROLLER : null)
                .toArray(String[]::new);
        return rows(rows)
                .with(Quantities.MACHINE_TYPE, types)
                .with(
                        Keys.MACHINE_KEY,
                        rows.stream().mapToInt(r -> r.member().machine() + 1).toArray())
                .with(
                        Keys.CLAMP_KEY,
                        rows.stream().mapToInt(r -> r.gang().clamp() + 1).toArray())
                .with(
                        Keys.STAGE_KEY,
                        rows.stream()
                                .mapToInt(r -> r.gang().stageKey(r.member().stage()))
                                .toArray())
                .with(
                        Keys.LINE_KEY,
                        rows.stream()
                                .mapToInt(r -> tasks.line(
                                        r.gang().job(),
                                        r.gang().field(),
                                        r.member().machine()))
                                .toArray())
                .with(
                        StageRates.ALIKE,
                        rows.stream().mapToDouble(r -> r.member().alike()).toArray());
    }

    private RowSources gangs() {
        List<GangRows.Gang> all = gangs.gangs();
        RowSources sources = ofGangs(all)
                .with(
                        Role.LEAD,
                        plan.rows(Machines.LIST),
                        all.stream().mapToInt(GangRows.Gang::lead).toArray())
                .with(
                        Keys.TASK_KEY,
                        all.stream().mapToInt(g -> tasks.gangTask(g.job())).toArray())
                .with(Keys.CLAMP_KEY, all.stream().mapToInt(g -> g.clamp() + 1).toArray());
        for (GangStage stage : GangStage.values()) {
            sources.with(
                    GangTables.stageKey(stage),
                    all.stream().mapToInt(g -> g.stageKey(stage)).toArray());
            double[] machines = all.stream()
                    .mapToDouble(
                            g -> g.machinesAt(stage) + (stage == GangStage.ROLLING && gangs.rolledAtClamp(g) ? 1 : 0))
                    .toArray();
            sources.with(stage.machines(), machines);
        }
        return sources;
    }

    private void expected(List<Row> carting, ResultTable table) {
        List<GangRows.Gang> with = carting.stream().map(Row::gang).distinct().toList();
        double[] simulated = new double[with.size()];
        for (int i = 0; i < simulated.length; i++) {
            simulated[i] = simulate(with.get(i), carting, table).orElse(Double.NaN);
        }
        plan.add(
                GangTables.EXPECTED,
                ofGangs(with)
                        .withRecord(GangChance.SIMULATED, simulated)
                        .withRecord(GangChance.CHOPPING_THEN, ofGangs(with, GangStage.CHOPPING.rate()))
                        .withRecord(GangChance.CARTING_THEN, ofGangs(with, GangStage.CARTING.rate()))
                        .withRecord(GangChance.SPREAD_THEN, constant(CartingSimulation.SPREAD, with.size()))
                        .with(GangChance.SEED_THEN, constant(CartingSimulation.SEED, with.size()))
                        .with(GangChance.LOADS_THEN, constant(CartingSimulation.LOADS, with.size())),
                NO_GANG);
    }

    /** A value of each of these gangs, as the table of gangs has it. */
    private double[] ofGangs(List<GangRows.Gang> some, Symbol symbol) {
        ResultTable table = plan.table(GangRates.GANGS);
        Map<Double, Double> byKey = new HashMap<>();
        for (int row = 0; row < table.rows(); row++) {
            byKey.put(
                    table.of(Keys.GANG_KEY).number(row),
                    number(table, symbol, row).orElse(Double.NaN));
        }
        return some.stream()
                .mapToDouble(gang -> byKey.getOrDefault((double) gang.key(), Double.NaN))
                .toArray();
    }

    private double[] constant(Constant constant, int rows) {
        double[] values = new double[rows];
        Arrays.fill(values, plan.constants().value(constant));
        return values;
    }

    /** The simulated rate of one gang; nothing if the carting of one of its kinds is not known. */
    private Optional<Double> simulate(GangRows.Gang gang, List<Row> carting, ResultTable table) {
        List<CartingSimulation.Kind> kinds = new ArrayList<>();
        for (int row = 0; row < carting.size(); row++) {
            if (!carting.get(row).gang().equals(gang)) {
                continue;
            }
            Optional<Double> load = number(table, Carting.LOAD, row);
            Optional<Double> fill = number(table, Carting.FILL_TIME, row);
            Optional<Double> cycle = number(table, Carting.CYCLE, row);
            if (load.isEmpty() || fill.isEmpty() || cycle.isEmpty()) {
                return Optional.empty();
            }
            kinds.add(new CartingSimulation.Kind(
                    carting.get(row).member().alike(), load.get(), fill.get(), cycle.get() - fill.get()));
        }
        int foragers = gang.machinesAt(GangStage.CHOPPING);
        double spread = plan.constants().value(CartingSimulation.SPREAD) / 100;
        long seed = (long) plan.constants().value(CartingSimulation.SEED);
        int loads = (int) plan.constants().value(CartingSimulation.LOADS);
        return Optional.of(
                foragers == 0
                        ? CartingSimulation.withoutQueue(kinds)
                        : CartingSimulation.rate(kinds, foragers, spread, seed, loads));
    }

    private static Optional<Double> number(ResultTable table, Symbol symbol, int row) {
        Values values = table.of(symbol);
        return values.has(row) ? Optional.of(values.number(row)) : Optional.empty();
    }
}
