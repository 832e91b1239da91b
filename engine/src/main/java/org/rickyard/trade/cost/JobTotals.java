package org.rickyard.trade.cost;

import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Keys.AREA_KEY;
import static org.rickyard.trade.Keys.JOB_KEY;
import static org.rickyard.trade.Quantities.AREA;

import java.util.List;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.workrate.FuelAndLabour;
import org.rickyard.trade.workrate.GangRates;

/** Fuel, labour and money of a whole job: all its machines on all its fields. */
public final class JobTotals {
    private JobTotals() {}

    /** The table. */
    public static final String TABLE = "job-totals";

    /** Net area of the job's fields, each once. */
    public static final Symbol JOB_AREA =
            Symbol.number("area of the job", Units.HA).possible(Range.POSITIVE).decimals(1);
    /** Fuel of the job. */
    public static final Symbol FUEL = Symbol.number("fuel of the job", Units.L)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Labour of the job. */
    public static final Symbol LABOUR = Symbol.number("labour of the job", Units.H)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Cost of the job. */
    public static final Symbol COST = Symbol.number("cost of the job", Units.MONEY_UNIT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Fuel of the job over its area. */
    public static final Symbol FUEL_HECTARE = Symbol.number("fuel of the job per hectare", Units.L_PER_HA)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Cost of the job over its area. */
    public static final Symbol COST_HECTARE = Symbol.number(
                    "cost of the job per hectare", Units.MONEY_UNIT.over(Units.HA))
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** Crop of the job's fields, each once. */
    public static final Symbol JOB_CROP = Symbol.number("crop of the job (fresh, as carted)", Units.T)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Cost of the job over its crop. */
    public static final Symbol COST_TONNE = Symbol.number("cost of the job per tonne", Units.MONEY_UNIT.over(Units.T))
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** Rows without fuel. */
    public static final Symbol FUEL_LEFT_OUT = CostTotals.FUEL_LEFT_OUT;
    /** Rows without a cost. */
    public static final Symbol COST_LEFT_OUT = CostTotals.COST_LEFT_OUT;

    private static final Source SUM = Source.derived("sum of the rows given; rows left out are counted beside it");

    private static Formula total(String id, Symbol result, String table, Symbol summed) {
        return new Formula(
                id,
                result,
                new Expr.Total(table, summed, JOB_KEY, JOB_KEY, false),
                SUM,
                "all machines and fields of the job",
                List.of());
    }

    /** {@code job-area}. */
    public static final Formula AREA_OF_JOB = new Formula(
            "job-area",
            JOB_AREA,
            new Expr.Total(FuelAndLabour.WORK_INPUTS, AREA, AREA_KEY, JOB_KEY, false),
            SUM,
            "each field once, however many machines work on it",
            List.of());
    /** {@code job-fuel}. */
    public static final Formula JOB_FUEL = total("job-fuel", FUEL, FuelAndLabour.WORK_INPUTS, FuelAndLabour.FIELD_FUEL);
    /** {@code job-labour}. */
    public static final Formula JOB_LABOUR =
            total("job-labour", LABOUR, FuelAndLabour.WORK_INPUTS, FuelAndLabour.LABOUR);
    /** {@code job-cost}. */
    public static final Formula JOB_COST = total("job-cost", COST, JobCost.JOB_COSTS, JobCost.TOTAL);

    /** {@code job-fuel-per-hectare}. */
    public static final Formula FUEL_OF_HECTARE = new Formula(
            "job-fuel-per-hectare",
            FUEL_HECTARE,
            value(FUEL).over(JOB_AREA),
            Source.derived("fuel over area"),
            "rows without fuel are not in it",
            List.of(WorkedExample.from(Source.published(
                            "Farm Contractors Ireland in the Irish Farmers Journal: 2,400 L for 25 ha of silage,"
                                    + " so 96 L/ha (the division is derived)"))
                    .with(FUEL, 2400)
                    .with(JOB_AREA, 25)
                    .gives(96, Units.L_PER_HA, 0)));

    /** {@code job-cost-per-hectare}. */
    public static final Formula COST_OF_HECTARE = new Formula(
            "job-cost-per-hectare",
            COST_HECTARE,
            value(COST).over(JOB_AREA),
            Source.derived("cost over area"),
            "rows without a cost are not in it",
            List.of(WorkedExample.from(Source.derived("1,735.90 over 10 ha"))
                    .with(COST, 1735.9)
                    .with(JOB_AREA, 10)
                    .gives(173.59, Units.MONEY_UNIT.over(Units.HA), 2)));

    /** {@code job-crop}: only where every field's yield is known. */
    public static final Formula CROP_OF_JOB = new Formula(
            "job-crop",
            JOB_CROP,
            new Expr.Total(FuelAndLabour.WORK_INPUTS, GangRates.GANG_CROP, AREA_KEY, JOB_KEY, true),
            Source.derived("sum over the fields, none left out"),
            "each field once, fresh tonnes as carted",
            List.of());

    /** {@code job-cost-per-tonne}. */
    public static final Formula COST_OF_TONNE = new Formula(
            "job-cost-per-tonne",
            COST_TONNE,
            value(COST).over(JOB_CROP),
            Source.derived("cost over crop"),
            "fresh tonnes as carted; rows without a cost are not in it",
            List.of(WorkedExample.from(Source.published(
                            "FAO Forestry Paper 99: 60 an hour at 100 m3 an hour is 0.60 a m3 (tonnes in place of m3)"))
                    .with(COST, 60)
                    .with(JOB_CROP, 100)
                    .gives(0.60, Units.MONEY_UNIT.over(Units.T), 2)));

    /** Rows left out of the fuel. */
    public static final Expr WITHOUT_FUEL =
            new Expr.Count(FuelAndLabour.WORK_INPUTS, FuelAndLabour.FIELD_FUEL, JOB_KEY, JOB_KEY, true);
    /** Rows left out of the cost. */
    public static final Expr WITHOUT_COST = new Expr.Count(JobCost.JOB_COSTS, JobCost.TOTAL, JOB_KEY, JOB_KEY, true);

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(
                AREA_OF_JOB,
                JOB_FUEL,
                JOB_LABOUR,
                FUEL_OF_HECTARE,
                JOB_COST,
                COST_OF_HECTARE,
                CROP_OF_JOB,
                COST_OF_TONNE);
    }
}
