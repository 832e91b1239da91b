package org.rickyard.plan.workrate;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.FieldShape;
import org.rickyard.trade.workrate.RememberedMachines;
import org.rickyard.trade.workrate.Throughput;
import org.rickyard.trade.workrate.TimeElements;
import org.rickyard.trade.workrate.WorkTotals;

/** The tables of work rates: one row per job and field, and the totals per machine and holding. */
public final class WorkRateTables {
    private WorkRateTables() {}

    private static final TableColumn.Link SPEED = Names.dispensable(
            Quantities.SPEED, Candidate.typed(Role.JOB, Jobs.SPEED), Candidate.typed(Role.MACHINE, Machines.SPEED));

    /** What the yield of the cut or field was weighed as. */
    public static final TableColumn.Word YIELD_BASIS = new TableColumn.Word(
            Quantities.YIELD_BASIS,
            List.of(Candidate.typed(Role.CUT, Cuts.YIELD_BASIS), Candidate.typed(Role.FIELD, Fields.YIELD_BASIS)));
    /** A fresh yield. */
    public static final TableColumn.Link YIELD = Names.link(
            Quantities.YIELD, Candidate.typed(Role.CUT, Cuts.YIELD), Candidate.typed(Role.FIELD, Fields.YIELD));
    /** A yield of dry matter. */
    public static final TableColumn.Link YIELD_DRY_MATTER = Names.link(
            Quantities.YIELD_DRY_MATTER,
            Candidate.typed(Role.CUT, Cuts.YIELD),
            Candidate.typed(Role.FIELD, Fields.YIELD));
    /** Dry matter of the standing crop. */
    public static final TableColumn.Link DM_AT_CUTTING = Names.link(
            Quantities.DM_AT_CUTTING,
            Candidate.typed(Role.CUT, Cuts.DM_AT_CUTTING),
            Candidate.typed(Role.FIELD, Fields.DM_AT_CUTTING));
    /** Dry matter of the crop as carted. */
    public static final TableColumn.Link DM_AT_ENSILING = Names.link(
            Quantities.DM_AT_ENSILING,
            Candidate.typed(Role.CUT, Cuts.DM_AT_ENSILING),
            Candidate.typed(Role.FIELD, Fields.DM_AT_ENSILING));

    private static final List<CautionRule> RATE_RULES = List.of(
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            new Condition.Blank(Quantities.FIELD_EFFICIENCY),
                            new Condition.Given(Quantities.TURN_TIME),
                            new Condition.Blank(Quantities.RUN_LENGTH))),
                    "turn time is typed but the field has no run length, so the typical efficiency is used."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(Expr.value(Quantities.AREA), Relation.LESS, Expr.constant(FieldShape.SMALL_AREA)),
                    "the field is small; turning and setting out weigh more than an efficiency allows for."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.compare(
                                    Expr.value(Quantities.RUN_LENGTH),
                                    Relation.LESS,
                                    Expr.constant(FieldShape.SHORT_RUN)),
                            new Condition.Not(Condition.is(TimeElements.RATE_BY, TimeElements.BY_ELEMENTS)))),
                    "runs are short; reckon by turn time and run length rather than by an efficiency."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(
                            Expr.value(Quantities.AREA).over(Quantities.RUN_LENGTH),
                            Relation.LESS,
                            Expr.constant(FieldShape.NARROW)),
                    "the field is narrow; wide machines gain little on it."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.typed(Quantities.TYPED_RATE),
                            Condition.compare(
                                    Expr.value(Quantities.TYPED_RATE),
                                    Relation.MORE,
                                    Expr.value(FieldRates.SPOT_RATE)))),
                    "the rate of work typed is more than width and speed give with nothing lost: mend one of the three."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.any(List.of(
                            Condition.compare(
                                    Expr.value(Quantities.SPEED),
                                    Relation.LESS,
                                    speed(RememberedMachines.SLOWEST)
                                            .times(Expr.number(1)
                                                    .minus(Expr.constant(RememberedMachines.SPEED_ROUNDING)))),
                            Condition.compare(
                                    Expr.value(Quantities.SPEED),
                                    Relation.MORE,
                                    speed(RememberedMachines.FASTEST)
                                            .times(Expr.number(1)
                                                    .plus(Expr.constant(RememberedMachines.SPEED_ROUNDING)))))),
                    "the speed is outside what is usual for such a machine (table on Basis, from memory, of American"
                            + " fields): is it in the unit of its header, and fit for ground and crop?"));

    private static Expr speed(ReferenceTable usual) {
        return new Expr.Lookup(usual, Expr.value(Quantities.KIND_OF_MACHINE), Expr.Lookup.Mode.EXACT);
    }

    /** One row per field whose size or shape tells on the work. */
    static final TableSpec FIELD_SHAPES = shapes();

    /** What takes an area, a run or a crop to tell. */
    private static final Set<Symbol> OF_ONE_FIELD = Set.of(
            Quantities.AREA,
            FieldRates.FIELD_HOURS,
            FieldRates.FIELD_DAYS,
            FieldRates.LIMITED_BY,
            TimeElements.PASSES_OF_FIELD.result(),
            TimeElements.SHARE_OF_TURNS.result(),
            Throughput.MATERIAL.result());

    private static final String OF_JOBS = "Work rates: what each machine gets through";
    private static final String ONCE = "Work rates, if done once: no jobs are listed";

    private static final TableSpec WORK_RATES = rates(OF_JOBS, false);
    private static final TableSpec IF_DONE_ONCE = rates(ONCE, false);
    private static final TableSpec WORK_RATES_KNOWN = rates(OF_JOBS, true);
    private static final TableSpec IF_DONE_ONCE_KNOWN = rates(ONCE, true);

    /**
     * One row per job, field and machine that works by its width.
     *
     * @param jobs whether there are any
     * @param known whether the rate of some machine is known without its width and speed, so that no row owes what only
     *     they can tell
     */
    static TableSpec rates(boolean jobs, boolean known) {
        if (known) {
            return jobs ? WORK_RATES_KNOWN : IF_DONE_ONCE_KNOWN;
        }
        return jobs ? WORK_RATES : IF_DONE_ONCE;
    }

    /** One row per machine that works by width, where no fields are listed: what it gets through in an hour of any. */
    static final TableSpec MACHINE_RATES = machineRates();

    /** One row per machine that jobs name. */
    static final TableSpec MACHINE_TOTALS = totals(
            "machine-totals",
            "Machine hours",
            "Machine hours: all listed work of each machine",
            "one row per machine",
            List.of(
                    Names.MACHINE_HOLDING,
                    Names.MACHINE,
                    new TableColumn.Key(Keys.MACHINE_KEY),
                    new TableColumn.Calculated(WorkTotals.MACHINE_AREA, true),
                    new TableColumn.Calculated(WorkTotals.MACHINE_HOURS, true),
                    new TableColumn.Joined(WorkTotals.ROWS_LEFT_OUT, WorkTotals.LEFT_OUT_OF_MACHINE)),
            WorkTotals.HOURS_OF_MACHINE,
            "Rickyard_machine_hours",
            List.of());

    /** One row per holding. */
    static final TableSpec HOLDING_TOTALS = totals(
            "holding-totals",
            "Holding hours",
            "Holding hours: machine hours of all listed work on each holding",
            "one row per holding",
            List.of(
                    Names.name(Quantities.HOLDING, Candidate.typed(Role.FIELD, Fields.HOLDING)),
                    new TableColumn.Key(Keys.HOLDING_KEY),
                    new TableColumn.Calculated(WorkTotals.HOLDING_HOURS, true),
                    new TableColumn.Joined(WorkTotals.ROWS_LEFT_OUT, WorkTotals.LEFT_OUT_OF_HOLDING)),
            WorkTotals.HOURS_OF_HOLDING,
            "Rickyard_holding_hours",
            List.of(LeftOut.of("hours", WorkTotals.HOURS_OF_HOLDING, WorkTotals.ROWS_LEFT_OUT, "Work rates")));

    private static TableSpec rates(String title, boolean known) {
        List<TableColumn> columns = List.of(
                Names.FIELD_HOLDING,
                Names.JOB,
                Names.FIELD,
                Names.OPERATION,
                Names.MACHINE,
                // The kind says the type too: of a machine of no kind it is its type.
                Names.KIND_OF_MACHINE,
                new TableColumn.Key(Keys.LINE_KEY),
                new TableColumn.Key(Keys.TASK_KEY),
                new TableColumn.Key(Keys.STAGE_KEY),
                new TableColumn.Key(Keys.MACHINE_KEY),
                new TableColumn.Key(Keys.HOLDING_KEY),
                new TableColumn.Key(Keys.BLOCK_KEY),
                Names.link(Quantities.AREA, Candidate.typed(Role.FIELD, Fields.AREA)),
                SPEED,
                Names.dispensable(Quantities.WORKING_WIDTH, Candidate.typed(Role.MACHINE, Machines.WORKING_WIDTH)),
                Names.optional(Quantities.FIELD_EFFICIENCY, Candidate.typed(Role.MACHINE, Machines.FIELD_EFFICIENCY)),
                Names.optional(Quantities.OVERLAP, Candidate.typed(Role.MACHINE, Machines.OVERLAP)),
                Names.optional(Quantities.OVERLAP_SHARE, Candidate.typed(Role.MACHINE, Machines.OVERLAP)),
                Names.optional(Quantities.RUN_LENGTH, Candidate.typed(Role.FIELD, Fields.RUN_LENGTH)),
                Names.optional(Quantities.TURN_TIME, Candidate.typed(Role.MACHINE, Machines.TURN_TIME)),
                Names.optional(Quantities.OTHER_LOST_TIME, Candidate.typed(Role.MACHINE, Machines.OTHER_LOST_TIME)),
                Names.optional(Quantities.OUTPUT, Candidate.typed(Role.MACHINE, Machines.OUTPUT)),
                Names.optional(Quantities.TYPED_RATE, Candidate.typed(Role.MACHINE, Machines.RATE_OF_WORK)),
                YIELD_BASIS,
                YIELD,
                YIELD_DRY_MATTER,
                DM_AT_CUTTING,
                DM_AT_ENSILING,
                new TableColumn.Calculated(TimeElements.RECKONED_BY, false),
                new TableColumn.Calculated(FieldRates.EFFICIENCY, false),
                new TableColumn.Calculated(TimeElements.OVERLAP_ALLOWED, false),
                new TableColumn.Calculated(TimeElements.COVERED, false),
                new TableColumn.Calculated(TimeElements.LOST_TIME_ALLOWED, false),
                TableColumn.Calculated.aside(TimeElements.SHARE_OF_TURNS),
                TableColumn.Calculated.aside(TimeElements.PASSES_OF_FIELD),
                new TableColumn.Calculated(Throughput.AS_CARTED, false),
                new TableColumn.Calculated(FieldRates.BY_WIDTH_AND_SPEED, false),
                new TableColumn.Calculated(Throughput.BY_THROUGHPUT, false),
                byWidth(FieldRates.SPOT_WORK_RATE, known),
                new TableColumn.Calculated(FieldRates.WORK_RATE, true),
                TableColumn.Calculated.aside(FieldRates.LIMIT),
                byWidth(FieldRates.ACHIEVED, known),
                TableColumn.Calculated.aside(Throughput.MATERIAL),
                new TableColumn.Calculated(FieldRates.HOURS, true),
                Names.dispensable(
                        Quantities.HOURS_PER_DAY,
                        Candidate.typed(Role.JOB, Jobs.HOURS_PER_DAY),
                        Candidate.typed(Role.MACHINE, Machines.HOURS_PER_DAY)),
                TableColumn.Calculated.aside(FieldRates.AREA_PER_DAY),
                TableColumn.Calculated.aside(FieldRates.DAYS));
        boolean once = title.equals(ONCE);
        return new TableSpec(
                WorkTotals.WORK_RATES,
                "Work rates",
                title,
                "one row per job, field and machine",
                Sentences.appended(columns, RATE_RULES),
                once ? List.of() : List.of(new TableSpec.TotalName(FieldRates.FIELD_HOURS, "Rickyard_hours")),
                Cautions.MACHINES,
                RATE_RULES);
    }

    /** What a machine does in an hour hangs on no field, but for its shape and its crop. */
    private static TableSpec machineRates() {
        List<TableColumn> columns = new ArrayList<>(List.of(Names.MACHINE_HOLDING, Names.MACHINE));
        WORK_RATES_KNOWN.columns().stream()
                .filter(column -> !(column instanceof TableColumn.Key)
                        && !(column instanceof TableColumn.Name)
                        && !OF_ONE_FIELD.contains(column.symbol())
                        && !Sentences.isAppended(column))
                .forEach(columns::add);
        return new TableSpec(
                WorkTotals.MACHINE_RATES,
                "Machine rates",
                "Machine rates: what each machine gets through in an hour; no fields are listed",
                "one row per machine with a width and a speed",
                Sentences.appended(List.copyOf(columns), List.of()),
                List.of(),
                Cautions.MACHINES,
                List.of());
    }

    private static TableColumn byWidth(Formula formula, boolean known) {
        return known ? TableColumn.Calculated.aside(formula) : new TableColumn.Calculated(formula, true);
    }

    private static TableSpec shapes() {
        List<CautionRule> rules = List.of(new CautionRule(
                Severity.STOP,
                FieldShape.IMPOSSIBLE,
                "area and perimeter cannot belong to one field: measure both again before using any figure of"
                        + " this field."));
        return new TableSpec(
                "field-shapes",
                "Field shapes",
                "Field shapes: size and shape that tell on the work",
                "one row per field with a perimeter",
                Sentences.appended(
                        List.of(
                                Names.name(Quantities.HOLDING, Candidate.typed(Role.FIELD, Fields.HOLDING)),
                                Names.FIELD,
                                Names.link(Quantities.AREA, Candidate.typed(Role.FIELD, Fields.AREA)),
                                Names.optional(Quantities.RUN_LENGTH, Candidate.typed(Role.FIELD, Fields.RUN_LENGTH)),
                                Names.link(Quantities.PERIMETER, Candidate.typed(Role.FIELD, Fields.PERIMETER)),
                                TableColumn.Calculated.aside(FieldShape.WIDTH),
                                new TableColumn.Calculated(FieldShape.SHAPE, true)),
                        rules),
                List.of(),
                List.of(),
                rules);
    }

    private static TableSpec totals(
            String id,
            String sheet,
            String title,
            String grain,
            List<TableColumn> columns,
            Symbol total,
            String name,
            List<CautionRule> rules) {
        return new TableSpec(
                id,
                sheet,
                title,
                grain,
                Sentences.appended(columns, rules),
                List.of(new TableSpec.TotalName(total, name, WorkTotals.ROWS_LEFT_OUT)),
                List.of(),
                rules);
    }
}
