package org.rickyard.plan.cost;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Method;
import org.rickyard.formula.Source;
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
import org.rickyard.plan.workrate.WorkRateTables;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.cost.HireBill;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.FuelAndLabour;
import org.rickyard.trade.workrate.GangRates;
import org.rickyard.trade.workrate.PowerNeeded;
import org.rickyard.trade.workrate.StageRates;
import org.rickyard.trade.workrate.Throughput;
import org.rickyard.trade.workrate.WorkTotals;

/** The table of what each machine's work on each field takes: power, fuel, people and hours. */
final class FuelAndLabourTable {
    private FuelAndLabourTable() {}

    private static final Method COUNTED = new Method(
            "machines-named",
            "counted in your words, such as \"Trailer 14 t x 3\"",
            Source.commonPractice("one unless a number stands beside an x"));

    private static Expr share(double percent) {
        return Expr.number(percent / 100);
    }

    private static final List<CautionRule> RULES = List.of(
            new CautionRule(
                    Severity.STOP,
                    Condition.above(Expr.value(PowerNeeded.SHARE), share(125)),
                    "the work needs over a quarter more power than the tractor has, or its own engine if it drives"
                            + " itself: use a larger one, a narrower machine or a lower speed. By the crop the power may"
                            + " be out by 20 to 50 %."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.above(Expr.value(PowerNeeded.SHARE), share(100)),
                            new Condition.Not(Condition.above(Expr.value(PowerNeeded.SHARE), share(125))))),
                    "the work needs more power than the tractor has, or its own engine if it drives itself. By the crop the"
                            + " power may be out by 20 to 50 %."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(Expr.value(FuelAndLabour.CREW_USED), Condition.Relation.EQUAL, Expr.number(0)),
                    "the crew is 0, so this work has no labour and no wages. Crew counts the driver of its tractor too:"
                            + " type 1 or more, unless the driver is counted at another machine of the same work."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(Expr.value(FuelAndLabour.DRIVER_DAY), new Expr.AsUnit(Expr.number(12), Units.H)),
                    "with fuelling and moving the driver's day is over 12 h. Working-time rules ask for 11 h of rest in"
                            + " 24 and a break of 20 min after 6 h, with exceptions on farms. The tired have accidents:"
                            + " plan a second driver."));

    /** One row per machine and field. */
    static final TableSpec INPUTS = inputs();

    private static TableSpec inputs() {
        List<TableColumn> columns = new ArrayList<>(List.of(
                Names.FIELD_HOLDING,
                Names.JOB,
                Names.FIELD,
                Names.MACHINE,
                Names.name(Quantities.TRACTOR, Candidate.typed(Role.TRACTOR, Machines.MACHINE)),
                Names.KIND_OF_MACHINE,
                new TableColumn.Word(
                        Quantities.POWER_BASIS,
                        List.of(
                                Candidate.typed(Role.TRACTOR, Machines.POWER_BASIS),
                                Candidate.typed(Role.MACHINE, Machines.POWER_BASIS))),
                new TableColumn.Key(Keys.WORK_KEY),
                new TableColumn.Key(Keys.LINE_KEY),
                new TableColumn.Key(Keys.GANG_KEY),
                new TableColumn.Key(Keys.MACHINE_KEY),
                new TableColumn.Key(Keys.HOLDING_KEY),
                new TableColumn.Key(Keys.JOB_KEY),
                new TableColumn.Key(Keys.AREA_KEY),
                new TableColumn.Method(StageRates.ALIKE, COUNTED, false)));
        columns.addAll(List.of(
                Names.link(Quantities.AREA, Candidate.typed(Role.FIELD, Fields.AREA)),
                // What makes up the load: an average may stand for one that is not known, not for one typed wrongly.
                Names.dispensable(
                        Quantities.SPEED,
                        Candidate.typed(Role.JOB, Jobs.SPEED),
                        Candidate.typed(Role.MACHINE, Machines.SPEED)),
                Names.dispensable(Quantities.WORKING_WIDTH, Candidate.typed(Role.MACHINE, Machines.WORKING_WIDTH)),
                Names.optional(Quantities.MASS, Candidate.typed(Role.MACHINE, Machines.MASS)),
                Names.optional(Quantities.DRAUGHT, Candidate.typed(Role.MACHINE, Machines.DRAUGHT)),
                Names.optional(Quantities.DRAUGHT_FOR_WIDTH, Candidate.typed(Role.MACHINE, Machines.DRAUGHT)),
                Names.optional(Quantities.OUTPUT, Candidate.typed(Role.MACHINE, Machines.OUTPUT)),
                WorkRateTables.YIELD_BASIS,
                Names.dispensable(WorkRateTables.YIELD),
                Names.dispensable(WorkRateTables.YIELD_DRY_MATTER),
                Names.dispensable(WorkRateTables.DM_AT_CUTTING),
                Names.dispensable(WorkRateTables.DM_AT_ENSILING),
                Names.link(
                        Quantities.POWER,
                        Candidate.typed(Role.TRACTOR, Machines.POWER),
                        Candidate.typed(Role.MACHINE, Machines.POWER)),
                Names.optional(
                        Quantities.FUEL_RATE,
                        Candidate.typed(Role.MACHINE, Machines.FUEL),
                        Candidate.typed(Role.TRACTOR, Machines.FUEL)),
                Names.optional(
                        Quantities.FUEL_FOR_AREA,
                        Candidate.typed(Role.MACHINE, Machines.FUEL),
                        Candidate.typed(Role.TRACTOR, Machines.FUEL)),
                Names.optional(Quantities.CREW, Candidate.typed(Role.MACHINE, Machines.CREW)),
                Names.optional(
                        Quantities.HOURS_PER_DAY,
                        Candidate.typed(Role.JOB, Jobs.HOURS_PER_DAY),
                        Candidate.typed(Role.MACHINE, Machines.HOURS_PER_DAY)),
                new TableColumn.Joined(
                        FuelAndLabour.LINE_HOURS,
                        new Expr.Total(
                                WorkTotals.WORK_RATES, FieldRates.FIELD_HOURS, Keys.LINE_KEY, Keys.LINE_KEY, true)),
                new TableColumn.Joined(
                        FuelAndLabour.GANG_HOURS,
                        new Expr.Total(GangRates.GANGS, GangRates.GANG_HOURS, Keys.GANG_KEY, Keys.GANG_KEY, true)),
                new TableColumn.Calculated(Throughput.AS_CARTED, false),
                new TableColumn.Calculated(FuelAndLabour.HOURS_AT_WORK, true),
                new TableColumn.Calculated(PowerNeeded.FEED_RATE, false),
                TableColumn.Calculated.aside(PowerNeeded.PTO_POWER),
                TableColumn.Calculated.aside(PowerNeeded.DRAWBAR_POWER),
                TableColumn.Calculated.aside(PowerNeeded.POWER_NEEDED),
                TableColumn.Calculated.aside(PowerNeeded.PTO_OF_TRACTOR),
                TableColumn.Calculated.aside(PowerNeeded.POWER_SHARE),
                TableColumn.Calculated.aside(FuelAndLabour.FUEL_FOUND),
                new TableColumn.Calculated(FuelAndLabour.FUEL_OF_HOUR, true),
                new TableColumn.Calculated(FuelAndLabour.FUEL_OF_FIELD, true),
                new TableColumn.Calculated(FuelAndLabour.FUEL_OF_HECTARE, true),
                TableColumn.Calculated.aside(FuelAndLabour.FUEL_OF_TONNE),
                new TableColumn.Calculated(FuelAndLabour.CREW_RECKONED, false),
                new TableColumn.Calculated(FuelAndLabour.LABOUR_OF_FIELD, true),
                new TableColumn.Calculated(FuelAndLabour.LABOUR_OF_DRIVER, true),
                TableColumn.Calculated.aside(FuelAndLabour.DAY_OF_DRIVER),
                TableColumn.Calculated.aside(FuelAndLabour.LABOUR_OF_DAY),
                new TableColumn.Calculated(GangRates.CROP_OF_GANG, false),
                // An answer of its own, money or not; Job costs has it as a step.
                TableColumn.Calculated.aside(HireBill.BALES_MADE)));
        return new TableSpec(
                FuelAndLabour.WORK_INPUTS,
                "Fuel and labour",
                "Fuel and labour: what each machine's work on each field takes",
                "one row per job, field and machine",
                Sentences.appended(columns, RULES),
                List.of(
                        new TableSpec.TotalName(FuelAndLabour.FIELD_FUEL, "Rickyard_fuel"),
                        new TableSpec.TotalName(FuelAndLabour.LABOUR, "Rickyard_labour")),
                Cautions.MACHINES,
                RULES);
    }
}
