package org.rickyard.plan.cost;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Symbol;
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
import org.rickyard.plan.workrate.LeftOut;
import org.rickyard.plan.workrate.WorkRateTables;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.cost.CostTotals;
import org.rickyard.trade.cost.HireBill;
import org.rickyard.trade.cost.JobCost;
import org.rickyard.trade.cost.JobTotals;
import org.rickyard.trade.cost.OwnOrHire;
import org.rickyard.trade.cost.OwnershipCost;
import org.rickyard.trade.cost.RemainingValue;
import org.rickyard.trade.cost.RepairCost;
import org.rickyard.trade.workrate.FuelAndLabour;
import org.rickyard.trade.workrate.GangRates;
import org.rickyard.trade.workrate.RememberedMachines;
import org.rickyard.trade.workrate.Throughput;

/** The tables of money: what machines and jobs cost, what pays, and the totals of jobs and holdings with fuel and labour. */
final class CostTables {
    private CostTables() {}

    private static final List<String> MONEY = List.of(
            "Money is in the workbook's own currency, with or without tax as typed. Wage, fuel price, interest rate and"
                    + " insurance and housing are typed on a list called Assumptions; none is built in.");
    private static final List<CautionRule> MACHINE_COST_RULES = List.of(new CautionRule(
            Severity.CAUTION,
            Condition.above(
                    Expr.value(RepairCost.END),
                    new Expr.Lookup(
                            RememberedMachines.LIFE, Expr.value(Quantities.KIND_OF_MACHINE), Expr.Lookup.Mode.EXACT)),
            "it is kept for more hours than such a machine lasts by the table its repair factors come from"
                    + " (Basis, from memory), so repairs are reckoned too dear: decide by your own bills, or type the Life after"
                    + " which it is changed."));

    /** One row per machine with a price. */
    static final TableSpec MACHINE_COSTS = machineCosts();

    private static TableSpec machineCosts() {
        List<TableColumn> columns = List.of(
                Names.MACHINE_HOLDING,
                Names.MACHINE,
                Names.KIND_OF_MACHINE,
                new TableColumn.Key(Keys.MACHINE_KEY),
                Names.link(Quantities.PURCHASE_PRICE, Candidate.typed(Role.MACHINE, Machines.PURCHASE_PRICE)),
                Names.link(Quantities.TRADE_IN_VALUE, Candidate.typed(Role.MACHINE, Machines.TRADE_IN_VALUE)),
                Names.link(Quantities.LIST_PRICE, Candidate.typed(Role.MACHINE, Machines.LIST_PRICE)),
                Names.link(Quantities.LIFE, Candidate.typed(Role.MACHINE, Machines.LIFE)),
                Names.link(Quantities.HOURS_PER_YEAR, Candidate.typed(Role.MACHINE, Machines.HOURS_PER_YEAR)),
                Names.optional(Quantities.HOURS_NOW, Candidate.typed(Role.MACHINE, Machines.HOURS_NOW)),
                Names.optional(Quantities.POWER, Candidate.typed(Role.MACHINE, Machines.POWER)),
                PriceRows.column(Role.INTEREST, Machines.INTEREST),
                PriceRows.column(Role.INSURANCE, Machines.INSURANCE),
                new TableColumn.Calculated(RepairCost.HOURS_AT_START, false),
                new TableColumn.Calculated(RepairCost.HOURS_AT_END, false),
                new TableColumn.Calculated(RepairCost.REPAIRS_BEFORE, false),
                new TableColumn.Calculated(RepairCost.REPAIRS_TO_END, false),
                new TableColumn.Calculated(OwnershipCost.STRAIGHT, true),
                new TableColumn.Calculated(OwnershipCost.INTEREST_OF_YEAR, true),
                new TableColumn.Calculated(OwnershipCost.INSURANCE_OF_YEAR, true),
                new TableColumn.Calculated(OwnershipCost.OWNERSHIP_OF_YEAR, true),
                new TableColumn.Calculated(OwnershipCost.OWNERSHIP_OF_HOUR, true),
                new TableColumn.Calculated(RepairCost.REPAIRS_OF_HOUR, true),
                new TableColumn.Calculated(JobCost.COST_OF_HOUR, true),
                TableColumn.Calculated.aside(OwnershipCost.FACTOR),
                TableColumn.Calculated.aside(OwnershipCost.CAPITAL_RECOVERY),
                Names.optional(Quantities.AGE, Candidate.typed(Role.MACHINE, Machines.AGE)),
                new TableColumn.Calculated(RemainingValue.AGE_WHEN_IT_GOES, false),
                TableColumn.Calculated.aside(RemainingValue.REMAINING));
        return new TableSpec(
                JobCost.MACHINE_COSTS,
                "Machine costs",
                "Machine costs: owning and repairs, year by year and hour by hour",
                "one row per machine with a price",
                Sentences.appended(columns, MACHINE_COST_RULES),
                List.of(new TableSpec.TotalName(OwnershipCost.OWNERSHIP, "Rickyard_ownership_cost")),
                MONEY,
                MACHINE_COST_RULES);
    }

    private static final List<CautionRule> COST_RULES = List.of(
            new CautionRule(
                    Severity.CAUTION,
                    JobCost.TRACTOR_MISSING,
                    "no tractor is named for it, so none is in its cost. Name one in Tractor on the job (for a gang one"
                            + " for each machine, parted by \";\", in the same order), or type the machine's own Power"
                            + " if it drives itself."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.is(Quantities.KIND_OF_MACHINE, "baler"),
                            Condition.is(Quantities.CHARGE_UNIT, "bale"),
                            new Condition.Given(HireBill.BALES))),
                    "bales are reckoned by the dry matter in a round bale on Basis: if it makes others, write small"
                            + " square baler or large square baler in Type, and the dry matter in a bale of yours on"
                            + " Assumptions."));

    /** One row per machine and field, in money. */
    static final TableSpec JOB_COSTS = jobCosts();

    private static TableColumn.Joined fromInputs(Symbol symbol) {
        return new TableColumn.Joined(
                symbol, new Expr.Total(FuelAndLabour.WORK_INPUTS, symbol, Keys.WORK_KEY, Keys.WORK_KEY, true));
    }

    private static TableColumn.Joined fromMachines(Symbol symbol, Symbol there, Symbol here) {
        return new TableColumn.Joined(
                symbol, new Expr.Total(JobCost.MACHINE_COSTS, there, Keys.MACHINE_KEY, here, true));
    }

    private static TableSpec jobCosts() {
        List<TableColumn> columns = new ArrayList<>(List.of(
                Names.FIELD_HOLDING,
                Names.JOB,
                Names.FIELD,
                Names.MACHINE,
                Names.name(Quantities.TRACTOR, Candidate.typed(Role.TRACTOR, Machines.MACHINE)),
                TableColumn.Word.tellingUnread(
                        Quantities.OWN_OR_HIRED, Candidate.typed(Role.MACHINE, Machines.OWN_OR_HIRED)),
                word(Quantities.CHARGE_UNIT, Machines.CHARGE_UNIT),
                TableColumn.Word.tellingUnread(
                        Quantities.CHARGE_INCLUDES, Candidate.typed(Role.MACHINE, Machines.CHARGE_INCLUDES)),
                Names.MACHINE_TYPE,
                Names.KIND_OF_MACHINE,
                new TableColumn.Key(Keys.WORK_KEY),
                new TableColumn.Key(Keys.MACHINE_KEY),
                new TableColumn.Key(Keys.TRACTOR_KEY),
                new TableColumn.Key(Keys.HOLDING_KEY),
                new TableColumn.Key(Keys.JOB_KEY)));
        columns.addAll(List.of(
                Names.link(Quantities.AREA, Candidate.typed(Role.FIELD, Fields.AREA)),
                WorkRateTables.DM_AT_ENSILING,
                Names.optional(Quantities.POWER, Candidate.typed(Role.MACHINE, Machines.POWER)),
                charge(Quantities.CHARGE_PER_HOUR),
                charge(Quantities.CHARGE_PER_HECTARE),
                charge(Quantities.CHARGE_PER_TONNE),
                charge(Quantities.CHARGE_PER_BALE),
                PriceRows.column(Role.WAGE),
                PriceRows.column(Role.FUEL_PRICE),
                fromInputs(JobCost.HOURS),
                fromInputs(FuelAndLabour.FIELD_FUEL),
                fromInputs(FuelAndLabour.LABOUR),
                fromMachines(JobCost.MACHINE_HOUR, JobCost.COST_HOUR, Keys.MACHINE_KEY),
                fromMachines(JobCost.MACHINE_REPAIRS, RepairCost.REPAIRS, Keys.MACHINE_KEY),
                fromMachines(JobCost.TRACTOR_HOUR, JobCost.COST_HOUR, Keys.TRACTOR_KEY),
                fromInputs(Throughput.YIELD_CARTED),
                new TableColumn.Calculated(JobCost.MACHINE_ON_FIELD, true),
                new TableColumn.Calculated(JobCost.TRACTOR_ON_FIELD, true),
                new TableColumn.Calculated(JobCost.FUEL_ON_FIELD, true),
                new TableColumn.Calculated(JobCost.LUBRICANT_ON_FIELD, true),
                new TableColumn.Calculated(JobCost.LABOUR_ON_FIELD, true),
                new TableColumn.Calculated(HireBill.BALES_MADE, false),
                new TableColumn.Calculated(HireBill.HIRE_BILL, true),
                new TableColumn.Calculated(JobCost.COST, true),
                new TableColumn.Calculated(JobCost.COST_OF_HECTARE, true),
                new TableColumn.Calculated(JobCost.COST_OF_MACHINE_HOUR, true),
                TableColumn.Calculated.aside(JobCost.COST_OF_TONNE),
                TableColumn.Calculated.aside(JobCost.RUNNING_COST)));
        return new TableSpec(
                JobCost.JOB_COSTS,
                "Job costs",
                "Job costs: what each machine's work on each field costs",
                "one row per job, field and machine",
                Sentences.appended(columns, COST_RULES),
                List.of(new TableSpec.TotalName(JobCost.TOTAL, "Rickyard_cost")),
                MONEY,
                COST_RULES);
    }

    private static TableColumn.Word word(Symbol symbol, org.rickyard.lists.ColumnSpec column) {
        return new TableColumn.Word(symbol, List.of(Candidate.typed(Role.MACHINE, column)));
    }

    private static TableColumn.Link charge(Symbol symbol) {
        return Names.link(symbol, Candidate.typed(Role.MACHINE, Machines.CHARGE));
    }

    private static TableColumn.Joined ofJobs(Symbol here, String table, Symbol there) {
        return new TableColumn.Joined(here, new Expr.Total(table, there, Keys.MACHINE_KEY, Keys.MACHINE_KEY, true));
    }

    /** One row per own machine beside which a contractor's charge is typed. */
    static final TableSpec OWN_OR_HIRE = new TableSpec(
            "own-or-hire",
            "Own or hire",
            "Own or hire: at what area a machine pays",
            "one row per own machine with a contractor's charge beside it",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            new TableColumn.Key(Keys.MACHINE_KEY),
                            word(Quantities.CHARGE_UNIT, Machines.CHARGE_UNIT),
                            charge(Quantities.CHARGE_PER_HOUR),
                            charge(Quantities.CHARGE_PER_HECTARE),
                            charge(Quantities.CHARGE_PER_TONNE),
                            charge(Quantities.CHARGE_PER_BALE),
                            TableColumn.Word.tellingUnread(
                                    Quantities.CHARGE_INCLUDES,
                                    Candidate.typed(Role.MACHINE, Machines.CHARGE_INCLUDES)),
                            fromMachines(OwnOrHire.OWNERSHIP, OwnershipCost.OWNERSHIP, Keys.MACHINE_KEY),
                            ofJobs(OwnOrHire.AREA_WORKED, JobCost.JOB_COSTS, Quantities.AREA),
                            ofJobs(OwnOrHire.RUNNING_ALL, JobCost.JOB_COSTS, JobCost.RUNNING),
                            ofJobs(OwnOrHire.HOURS_WORKED, JobCost.JOB_COSTS, JobCost.HOURS),
                            ofJobs(OwnOrHire.CROP_WORKED, FuelAndLabour.WORK_INPUTS, GangRates.GANG_CROP),
                            ofJobs(OwnOrHire.BALES_WORKED, JobCost.JOB_COSTS, HireBill.BALES),
                            new TableColumn.Calculated(OwnOrHire.CHARGE, true),
                            TableColumn.Calculated.aside(OwnOrHire.RUNNING),
                            new TableColumn.Calculated(OwnOrHire.OWN, true),
                            new TableColumn.Calculated(OwnOrHire.BREAK_EVEN_AREA, true),
                            new TableColumn.Calculated(OwnOrHire.SENTENCE, true)),
                    List.of()),
            List.of(),
            List.of("A comparison of money only: timeliness, quality of work, skill and capital freed weigh too. Where"
                    + " Charge includes says nothing, the charge is taken to include tractor, driver and fuel."),
            List.of());

    /** One row per job. */
    static TableSpec jobTotals(boolean money) {
        List<TableColumn> columns = new ArrayList<>(List.of(
                Names.name(
                        Quantities.HOLDING,
                        Candidate.typed(Role.JOB, Jobs.HOLDING),
                        Candidate.typed(Role.FIELD, Fields.HOLDING)),
                Names.JOB,
                Names.OPERATION,
                new TableColumn.Key(Keys.JOB_KEY)));
        for (Formula formula :
                List.of(JobTotals.AREA_OF_JOB, JobTotals.JOB_FUEL, JobTotals.JOB_LABOUR, JobTotals.FUEL_OF_HECTARE)) {
            columns.add(new TableColumn.Calculated(formula, true));
        }
        columns.add(new TableColumn.Joined(JobTotals.FUEL_LEFT_OUT, JobTotals.WITHOUT_FUEL));
        if (money) {
            columns.add(new TableColumn.Calculated(JobTotals.JOB_COST, true));
            columns.add(new TableColumn.Calculated(JobTotals.COST_OF_HECTARE, true));
            columns.add(TableColumn.Calculated.aside(JobTotals.CROP_OF_JOB));
            columns.add(TableColumn.Calculated.aside(JobTotals.COST_OF_TONNE));
            columns.add(new TableColumn.Joined(JobTotals.COST_LEFT_OUT, JobTotals.WITHOUT_COST));
        }
        return new TableSpec(
                JobTotals.TABLE,
                "Job totals",
                "Job totals: fuel, labour and money of each job, all machines together",
                "one row per job",
                Sentences.appended(columns, List.of()),
                money
                        ? List.of(new TableSpec.TotalName(JobTotals.COST, "Rickyard_job_cost", JobTotals.COST_LEFT_OUT))
                        : List.of(),
                money ? MONEY : List.of(),
                List.of());
    }

    /** One row per holding. */
    static TableSpec holdingCosts(boolean money) {
        List<TableColumn> columns = new ArrayList<>(List.of(
                Names.name(Quantities.HOLDING, Candidate.typed(Role.FIELD, Fields.HOLDING)),
                new TableColumn.Key(Keys.HOLDING_KEY)));
        for (Formula formula : List.of(CostTotals.HOLDING_FUEL, CostTotals.HOLDING_LABOUR, CostTotals.UNITS)) {
            columns.add(new TableColumn.Calculated(formula, true));
        }
        if (money) {
            columns.add(new TableColumn.Calculated(CostTotals.HOLDING_COST, true));
            columns.add(new TableColumn.Joined(CostTotals.COST_LEFT_OUT, CostTotals.LEFT_OUT));
        }
        columns.add(new TableColumn.Joined(CostTotals.FUEL_LEFT_OUT, CostTotals.WITHOUT_FUEL));
        columns.add(new TableColumn.Joined(CostTotals.LABOUR_LEFT_OUT, CostTotals.WITHOUT_LABOUR));
        List<CautionRule> rules = new ArrayList<>(List.of(
                LeftOut.of("fuel", CostTotals.FUEL, CostTotals.FUEL_LEFT_OUT, "Fuel and labour"),
                LeftOut.of("labour", CostTotals.LABOUR, CostTotals.LABOUR_LEFT_OUT, "Fuel and labour")));
        if (money) {
            rules.add(LeftOut.of("cost", CostTotals.COST, CostTotals.COST_LEFT_OUT, "Job costs"));
        }
        return new TableSpec(
                "holding-costs",
                "Holding costs",
                "Holding costs: fuel, labour and money of all listed work",
                "one row per holding",
                Sentences.appended(columns, rules),
                money
                        ? List.of(new TableSpec.TotalName(
                                CostTotals.COST, "Rickyard_holding_cost", CostTotals.COST_LEFT_OUT))
                        : List.of(),
                MONEY,
                rules);
    }
}
