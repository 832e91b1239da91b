package org.rickyard.plan.workrate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Method;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.plan.silage.ClampPackingTables;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.Rolling;
import org.rickyard.trade.workrate.Carting;
import org.rickyard.trade.workrate.CartingSimulation;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.GangChance;
import org.rickyard.trade.workrate.GangDays;
import org.rickyard.trade.workrate.GangRates;
import org.rickyard.trade.workrate.GangStage;
import org.rickyard.trade.workrate.StageRates;
import org.rickyard.trade.workrate.Throughput;
import org.rickyard.trade.workrate.TrailerNumbers;
import org.rickyard.trade.workrate.WorkTotals;

/** The tables of gangs: carting, stages, gangs, and gangs with chance. */
final class GangTables {
    private GangTables() {}

    /** Id of the table of carting. */
    static final String CARTING_ID = Carting.TABLE;
    /** Id of the crop that gangs meet. */
    static final String CROP_ID = "gang-crop";

    /** The key of one stage of a gang. */
    static Symbol stageKey(GangStage stage) {
        return Symbol.number(stage.words() + " key", Units.ONE).decimals(0);
    }

    private static final Method COUNTED = new Method(
            "machines-named",
            "counted in your words, such as \"Trailer 14 t x 3\"",
            Source.commonPractice("one unless a number stands beside an x"));

    private static final TableColumn.Word COUNTRY =
            new TableColumn.Word(Quantities.COUNTRY, List.of(Candidate.typed(Role.CLAMP, Clamps.COUNTRY)));
    private static final TableColumn.Word OVERHEAD_LINES = new TableColumn.Word(
            Quantities.OVERHEAD_LINES, List.of(Candidate.typed(Role.FIELD, Fields.OVERHEAD_LINES)));

    /** One row per gang and field: the crop it meets, which all its tables bring over. */
    static final TableSpec CROP = new TableSpec(
            CROP_ID,
            "Gang crop",
            "Gang crop: what each gang meets on each field, on one basis",
            "one row per gang and field",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            Names.FIELD,
                            new TableColumn.Key(Keys.GANG_KEY),
                            WorkRateTables.YIELD_BASIS,
                            WorkRateTables.YIELD,
                            WorkRateTables.YIELD_DRY_MATTER,
                            WorkRateTables.DM_AT_CUTTING,
                            WorkRateTables.DM_AT_ENSILING,
                            new TableColumn.Calculated(Throughput.AS_CARTED, true)),
                    List.of()),
            List.of(),
            List.of(),
            List.of());

    /** The crop as carted, brought over. */
    private static TableColumn.Joined crop() {
        return new TableColumn.Joined(
                Throughput.YIELD_CARTED,
                new Expr.Total(CROP_ID, Throughput.YIELD_CARTED, Keys.GANG_KEY, Keys.GANG_KEY, true));
    }

    /** The work rates hold one row for each kind, so that how many there are of each has no weight in the mean. */
    private static final CautionRule FORAGERS_OF_SEVERAL_KINDS = new CautionRule(
            Severity.CAUTION,
            Condition.all(List.of(
                    new Condition.Not(Condition.is(Quantities.MACHINE_TYPE, Carting.FORAGE_WAGON)),
                    Condition.compare(Expr.value(Carting.FORAGER_KINDS), Relation.MORE, Expr.number(1)),
                    Condition.compare(Expr.value(Carting.FORAGERS), Relation.MORE, Expr.value(Carting.FORAGER_KINDS)))),
            "several kinds of forager, and more than one of a kind: filling is reckoned by the mean of the kinds, which is"
                    + " right only where there are as many of each. Otherwise the trailers needed may be too few or too"
                    + " many: see how one more would do.");

    private static final List<CautionRule> CARTING_RULES = Stream.concat(
                    RoadRules.CARTING.stream(), Stream.of(FORAGERS_OF_SEVERAL_KINDS))
            .toList();

    /** One row per gang, field and kind of trailer. */
    static final TableSpec CARTING = carting();

    private static TableSpec carting() {
        List<TableColumn> columns = new ArrayList<>(List.of(
                Names.FIELD_HOLDING,
                Names.JOB,
                Names.FIELD,
                Names.MACHINE,
                Names.MACHINE_TYPE,
                COUNTRY,
                OVERHEAD_LINES,
                new TableColumn.Key(Keys.GANG_KEY),
                new TableColumn.Key(Keys.MEMBER_KEY),
                new TableColumn.Key(stageKey(GangStage.CHOPPING)),
                new TableColumn.Method(Carting.TRAILERS, COUNTED, false),
                new TableColumn.Method(Carting.FORAGERS, COUNTED, false),
                new TableColumn.Method(Carting.FORAGER_KINDS, COUNTED, false)));
        columns.add(crop());
        columns.addAll(List.of(
                Names.link(Quantities.AREA, Candidate.typed(Role.FIELD, Fields.AREA)),
                Names.link(Quantities.DISTANCE_TO_CLAMP, Candidate.typed(Role.FIELD, Fields.DISTANCE_TO_CLAMP)),
                Names.link(Quantities.PAYLOAD, Candidate.typed(Role.MACHINE, Machines.PAYLOAD)),
                Names.optional(Quantities.BODY_VOLUME, Candidate.typed(Role.MACHINE, Machines.BODY_VOLUME)),
                Names.optional(Quantities.LOAD_DENSITY, Candidate.typed(Role.MACHINE, Machines.LOAD_DENSITY)),
                Names.optional(Quantities.UNLADEN_MASS, Candidate.typed(Role.MACHINE, Machines.UNLADEN_MASS)),
                Names.optional(Carting.TRACTOR_MASS, Candidate.typed(Role.TRACTOR, Machines.MASS)),
                Names.link(Quantities.ROAD_SPEED_LADEN, Candidate.typed(Role.MACHINE, Machines.ROAD_SPEED_LADEN)),
                Names.link(Quantities.ROAD_SPEED_EMPTY, Candidate.typed(Role.MACHINE, Machines.ROAD_SPEED_EMPTY)),
                Names.link(Quantities.OUTPUT, Candidate.typed(Role.MACHINE, Machines.OUTPUT)),
                new TableColumn.Joined(
                        Carting.CHOPPING,
                        new Expr.Total(
                                WorkTotals.WORK_RATES,
                                FieldRates.RATE,
                                Keys.STAGE_KEY,
                                stageKey(GangStage.CHOPPING),
                                true)),
                new TableColumn.Calculated(Carting.FILLING_RATE, false),
                new TableColumn.Calculated(Carting.LOAD_LIES_AT, false),
                new TableColumn.Calculated(Carting.PAYLOAD_OF_TRAILER, true),
                TableColumn.Calculated.aside(Carting.LOADS_OF_FIELD),
                new TableColumn.Calculated(Carting.FILL_TIME_OF_LOAD, true),
                new TableColumn.Calculated(Carting.CYCLE_TIME, true),
                TableColumn.Calculated.aside(Carting.TRAILERS_AT_BALANCE),
                new TableColumn.Calculated(Carting.TIME_SERVED, false),
                new TableColumn.Calculated(Carting.FILL_TIME_OF_ALL, false),
                new TableColumn.Calculated(Carting.CARTED, true),
                TableColumn.Calculated.aside(Carting.CARTED_AREA)));
        return new TableSpec(
                CARTING_ID,
                "Carting",
                "Carting: loads and rounds for each field",
                "one row per gang, field and kind of trailer",
                Sentences.appended(columns, CARTING_RULES),
                List.of(),
                List.of(
                        Cautions.MACHINES.get(0),
                        Cautions.MACHINES.get(1),
                        "Great Britain's road limits (2015) are quoted only for holdings there; for other countries, Ireland"
                                + " and Northern Ireland among them, look up the law of the place and of today."),
                CARTING_RULES);
    }

    private static final List<CautionRule> TRAILER_RULES = List.of(new CautionRule(
            Severity.CAUTION,
            Condition.compare(Expr.value(TrailerNumbers.IDLE), Relation.MORE, Expr.number(0.005)),
            "the forager waits for trailers on this field; see how one more of this kind would do."));

    /** One row per gang, field and kind of trailer that a forager fills. */
    static final TableSpec TRAILERS = trailers();

    private static TableSpec trailers() {
        List<TableColumn> columns = new ArrayList<>(List.of(
                Names.FIELD_HOLDING,
                Names.JOB,
                Names.FIELD,
                Names.MACHINE,
                new TableColumn.Key(Keys.GANG_KEY),
                new TableColumn.Key(Keys.MEMBER_KEY),
                ofKind(Carting.TRAILERS),
                ofKind(Carting.FORAGERS),
                ofKind(Carting.FILLING),
                ofKind(Carting.LOAD),
                ofKind(Carting.FILL_TIME),
                ofKind(Carting.CYCLE),
                ofKind(Carting.EXACT),
                ofKind(Carting.SERVED),
                ofKind(Carting.FILL_ALL),
                ofKind(Carting.CARTING_RATE),
                ofGang(TrailerNumbers.ALL_SERVED, Carting.SERVED),
                ofGang(TrailerNumbers.ALL_FILLED, Carting.FILL_ALL),
                ofGang(TrailerNumbers.ALL_CARTED, Carting.CARTING_RATE),
                new TableColumn.Calculated(TrailerNumbers.SERVED_BY_OTHERS, false),
                new TableColumn.Calculated(TrailerNumbers.FILL_OF_OTHERS, false),
                new TableColumn.Calculated(TrailerNumbers.CARTED_BY_OTHERS, false),
                new TableColumn.Calculated(TrailerNumbers.TRAILERS_NEEDED, true),
                new TableColumn.Calculated(TrailerNumbers.IDLE_SHARE, true),
                new TableColumn.Calculated(TrailerNumbers.TRAILER_QUEUE, true)));
        for (TrailerNumbers.Alternative alternative : TrailerNumbers.ALTERNATIVES) {
            columns.add(new TableColumn.Calculated(alternative.rate(), true));
            columns.add(new TableColumn.Calculated(alternative.idle(), true));
            columns.add(new TableColumn.Calculated(alternative.queue(), true));
        }
        return new TableSpec(
                "trailers",
                "Trailers",
                "Trailers: how many keep the forager going, one fewer and one more",
                "one row per gang, field and kind of trailer",
                Sentences.appended(columns, TRAILER_RULES),
                List.of(),
                List.of(
                        "On paper, as if no trailer ever came late: 'Gangs with chance' shows what bunching takes away, and"
                                + " one more than needed is often worth its cost. Trailers of other kinds are counted in."),
                TRAILER_RULES);
    }

    private static TableColumn.Joined ofKind(Symbol symbol) {
        return new TableColumn.Joined(
                symbol, new Expr.Total(CARTING_ID, symbol, Keys.MEMBER_KEY, Keys.MEMBER_KEY, true));
    }

    private static TableColumn.Joined ofGang(Symbol here, Symbol there) {
        return new TableColumn.Joined(here, new Expr.Total(CARTING_ID, there, Keys.GANG_KEY, Keys.GANG_KEY, true));
    }

    /** One row per gang, field and kind of machine. */
    static final TableSpec STAGES = stages();

    private static TableSpec stages() {
        List<TableColumn> columns = new ArrayList<>(List.of(
                Names.FIELD_HOLDING,
                Names.JOB,
                Names.FIELD,
                Names.MACHINE,
                Names.MACHINE_TYPE,
                new TableColumn.Key(Keys.GANG_KEY),
                new TableColumn.Key(Keys.STAGE_KEY),
                new TableColumn.Key(Keys.LINE_KEY),
                new TableColumn.Key(Keys.MEMBER_KEY),
                new TableColumn.Key(Keys.MACHINE_KEY),
                new TableColumn.Key(Keys.CLAMP_KEY),
                new TableColumn.Method(StageRates.ALIKE, COUNTED, false)));
        columns.add(crop());
        columns.addAll(List.of(
                Names.link(Quantities.MASS, Candidate.typed(Role.MACHINE, Machines.MASS)),
                Names.optional(Quantities.OUTPUT, Candidate.typed(Role.MACHINE, Machines.OUTPUT)),
                Names.link(Quantities.PAYLOAD, Candidate.typed(Role.MACHINE, Machines.PAYLOAD)),
                Names.link(Quantities.ROUND_TIME, Candidate.typed(Role.MACHINE, Machines.ROUND_TIME)),
                Names.optional(
                        Quantities.HOURS_PER_DAY,
                        Candidate.typed(Role.JOB, Jobs.HOURS_PER_DAY),
                        Candidate.typed(Role.MACHINE, Machines.HOURS_PER_DAY)),
                new TableColumn.Joined(
                        StageRates.RATE_EACH,
                        new Expr.Total(WorkTotals.WORK_RATES, FieldRates.RATE, Keys.LINE_KEY, Keys.LINE_KEY, true)),
                new TableColumn.Joined(
                        Carting.CARTING_AREA,
                        new Expr.Total(CARTING_ID, Carting.CARTING_AREA, Keys.MEMBER_KEY, Keys.MEMBER_KEY, true)),
                ClampPackingTables.ofRollers(Rolling.CAPACITY_FORTY),
                TableColumn.Calculated.aside(StageRates.ROLLING_CAPACITY),
                TableColumn.Calculated.aside(StageRates.HANDLING),
                new TableColumn.Calculated(StageRates.RATE_OF_STAGE, true),
                new TableColumn.Calculated(StageRates.MATERIAL_OF_STAGE, true),
                TableColumn.Calculated.aside(StageRates.DAY_OF_STAGE)));
        return new TableSpec(
                StageRates.STAGES,
                "Gang stages",
                "Gang stages: every machine of a gang on one basis",
                "one row per gang, field and kind of machine",
                Sentences.appended(columns, List.of()),
                List.of(),
                Cautions.MACHINES,
                List.of());
    }

    /**
     * One row per gang and field.
     *
     * @param apart the stages on a day of their own that any gang has machines for
     */
    static TableSpec gangs(List<GangStage> apart) {
        List<TableColumn> columns = new ArrayList<>(List.of(
                Names.FIELD_HOLDING,
                Names.JOB,
                Names.FIELD,
                new TableColumn.Key(Keys.GANG_KEY),
                new TableColumn.Key(Keys.TASK_KEY)));
        List<GangStage> stages = new ArrayList<>(apart);
        stages.addAll(GangStage.together());
        stages.forEach(stage -> columns.add(new TableColumn.Key(stageKey(stage))));
        columns.add(crop());
        columns.add(Names.link(Quantities.AREA, Candidate.typed(Role.FIELD, Fields.AREA)));
        columns.add(Names.optional(
                Quantities.HOURS_PER_DAY,
                Candidate.typed(Role.JOB, Jobs.HOURS_PER_DAY),
                Candidate.typed(Role.LEAD, Machines.HOURS_PER_DAY)));
        for (GangStage stage : apart) {
            columns.add(new TableColumn.Joined(
                    stage.day(),
                    new Expr.Total(StageRates.STAGES, StageRates.STAGE_DAY, Keys.STAGE_KEY, stageKey(stage), true)));
        }
        for (GangStage stage : GangStage.together()) {
            columns.add(new TableColumn.Method(stage.machines(), COUNTED, false));
            columns.add(new TableColumn.Joined(stage.rate(), StageRates.stageTotal(stage, stageKey(stage))));
        }
        columns.add(new TableColumn.Calculated(GangRates.RATE_OF_GANG, true));
        columns.add(new TableColumn.Calculated(GangRates.MATERIAL_OF_GANG, true));
        columns.add(new TableColumn.Calculated(GangRates.BOTTLENECK_OF_GANG, true));
        for (Formula slack : GangRates.SLACK) {
            columns.add(TableColumn.Calculated.aside(slack));
        }
        columns.add(new TableColumn.Calculated(GangRates.HOURS_OF_GANG, true));
        columns.add(TableColumn.Calculated.aside(GangRates.DAY_OF_GANG));
        columns.add(new TableColumn.Key(Keys.CLAMP_KEY));
        columns.add(TableColumn.Calculated.aside(GangRates.CROP_OF_GANG));
        columns.add(TableColumn.Calculated.aside(GangDays.CARTING_HOURS_A_DAY));
        columns.add(TableColumn.Calculated.aside(GangDays.DAYS_RECKONED));
        columns.add(TableColumn.Calculated.aside(GangRates.RATE_UNHELD));
        columns.add(TableColumn.Calculated.aside(GangRates.HOURS_UNHELD));
        List<CautionRule> rules = new ArrayList<>();
        for (GangStage stage : apart) {
            columns.add(TableColumn.Calculated.aside(GangRates.slackOf(stage)));
            rules.add(new CautionRule(
                    Severity.CAUTION,
                    Condition.below(Expr.value(stage.day()), Expr.value(GangRates.GANG_DAY)),
                    stage.words() + " gets through less in its day than the gang: it needs longer days, or to begin"
                            + " earlier, but must not run further ahead than the wilt allows."));
        }
        return new TableSpec(
                GangRates.GANGS,
                "Gangs",
                "Gangs: what each gets through and which stage holds it up",
                "one row per gang and field",
                Sentences.appended(columns, rules),
                List.of(new TableSpec.TotalName(GangRates.GANG_HOURS, "Rickyard_gang_hours")),
                // Guards and slopes are on the sheet of its stages; what a gang picks up is clamped in the end.
                List.of(Cautions.MACHINES.get(2), Cautions.CLAMPS.get(1), Cautions.CLAMPS.get(2)),
                rules);
    }

    private static final List<CautionRule> EXPECTED_RULES = List.of(new CautionRule(
            Severity.CAUTION,
            Condition.any(List.of(
                    isOther(GangStage.CHOPPING.rate(), GangChance.CHOPPING_THEN),
                    isOther(GangStage.CARTING.rate(), GangChance.CARTING_THEN),
                    isOther(GangChance.SPREAD, GangChance.SPREAD_THEN),
                    isOther(GangChance.SEED, GangChance.SEED_THEN),
                    isOther(GangChance.LOADS, GangChance.LOADS_THEN))),
            "chopping and carting were simulated with other rates, or another spread, seed or number of loads, than stand"
                    + " here now: run again."));

    /** Of a rate, share or count: what makes no other simulation. */
    private static final double ALIKE = 1e-6;

    /** Whether a value is another than it was at the run, or is there now and was not, or the other way round. */
    private static Condition isOther(Symbol now, Symbol then) {
        Expr alike = new Expr.AsUnit(Expr.number(ALIKE), now.unit());
        List<Condition> ways = new ArrayList<>(Condition.apart(Expr.value(now), Expr.value(then), alike));
        ways.add(Condition.all(List.of(new Condition.Given(now), new Condition.Not(new Condition.Given(then)))));
        ways.add(Condition.all(List.of(new Condition.Given(then), new Condition.Not(new Condition.Given(now)))));
        return Condition.any(ways);
    }

    /** One row per gang and field whose carting is known. */
    static final TableSpec EXPECTED = new TableSpec(
            "gangs-expected",
            "Gangs with chance",
            "Gangs with chance: trailers bunch, so a gang does less than on paper",
            "one row per gang and field with trailers",
            Sentences.appended(expected(), EXPECTED_RULES),
            List.of(),
            List.of("Simulated values stand as they were when the workbook was run; run it again after a change. Seed,"
                    + " spread and number of loads stand in each row and on Basis, and may be set on Assumptions."),
            EXPECTED_RULES);

    private static TableColumn.Joined fromGangs(Symbol symbol) {
        return new TableColumn.Joined(
                symbol, new Expr.Total(GangRates.GANGS, symbol, Keys.GANG_KEY, Keys.GANG_KEY, true));
    }

    private static List<TableColumn> expected() {
        List<TableColumn> columns = new ArrayList<>(
                List.of(Names.FIELD_HOLDING, Names.JOB, Names.FIELD, new TableColumn.Key(Keys.GANG_KEY)));
        columns.add(crop());
        columns.addAll(List.of(
                fromGangs(GangStage.CHOPPING.machines()),
                fromGangs(GangStage.CHOPPING.rate()),
                fromGangs(GangStage.CARTING.machines()),
                fromGangs(GangStage.CARTING.rate()),
                fromGangs(GangRates.GANG_RATE),
                new TableColumn.Joined(
                        GangChance.SPREAD,
                        Expr.constant(CartingSimulation.SPREAD).in(Units.PERCENT)),
                new TableColumn.Joined(GangChance.SEED, Expr.constant(CartingSimulation.SEED)),
                new TableColumn.Joined(GangChance.LOADS, Expr.constant(CartingSimulation.LOADS)),
                new TableColumn.Calculated(GangChance.PAPER_BY_AREA, false),
                new TableColumn.Calculated(GangChance.PAPER, true),
                new TableColumn.Method(GangChance.SIMULATED, CartingSimulation.METHOD, true),
                new TableColumn.Calculated(GangChance.EXPECTED, true),
                new TableColumn.Calculated(GangChance.SHARE_KEPT_UP, true)));
        for (Symbol then : List.of(
                GangChance.CHOPPING_THEN,
                GangChance.CARTING_THEN,
                GangChance.SPREAD_THEN,
                GangChance.SEED_THEN,
                GangChance.LOADS_THEN)) {
            columns.add(new TableColumn.Method(then, CartingSimulation.SIMULATED_WITH, false));
        }
        return columns;
    }
}
