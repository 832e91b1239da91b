package org.rickyard.trade.cost;

import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Keys.HOLDING_KEY;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.workrate.FuelAndLabour;

/** Fuel, labour and money of a holding's listed work. */
public final class CostTotals {
    private CostTotals() {}

    /** Fuel of the holding. */
    public static final Symbol FUEL =
            Symbol.number("holding fuel", Units.L).possible(Range.NOT_NEGATIVE).decimals(0);
    /** Labour of the holding. */
    public static final Symbol LABOUR = Symbol.number("holding labour", Units.H)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** The same as standard labour units. */
    public static final Symbol LABOUR_UNITS = Symbol.number("standard labour units", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** Cost of the holding's work. */
    public static final Symbol COST = Symbol.number("holding cost", Units.MONEY_UNIT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Rows whose cost is withheld. */
    public static final Symbol COST_LEFT_OUT =
            Symbol.number("rows without a cost", Units.ONE).decimals(0);

    /** Rows whose fuel is withheld. */
    public static final Symbol FUEL_LEFT_OUT =
            Symbol.number("rows without fuel", Units.ONE).decimals(0);
    /** Rows whose labour is withheld. */
    public static final Symbol LABOUR_LEFT_OUT =
            Symbol.number("rows without labour", Units.ONE).decimals(0);

    private static final Source SUM = Source.derived("sum of the rows given; rows left out are counted beside it");
    private static final Source DAERA =
            Source.published("DAERA (Northern Ireland), Statistical Review 2022, as reported"
                    + " by the Irish Farmers Journal: 38 h × 50 weeks");

    /** Hours of a standard labour unit. */
    public static final Constant LABOUR_UNIT_HOURS =
            new Constant("Hours of a standard labour unit", 1900, Units.H, DAERA).aboveZero();

    /** {@code holding-fuel}. */
    public static final Formula HOLDING_FUEL =
            total("holding-fuel", FUEL, FuelAndLabour.WORK_INPUTS, FuelAndLabour.FIELD_FUEL);
    /** {@code holding-labour}. */
    public static final Formula HOLDING_LABOUR =
            total("holding-labour", LABOUR, FuelAndLabour.WORK_INPUTS, FuelAndLabour.LABOUR);
    /** {@code holding-cost}. */
    public static final Formula HOLDING_COST = total("holding-cost", COST, JobCost.JOB_COSTS, JobCost.TOTAL);

    private static Formula total(String id, Symbol result, String table, Symbol summed) {
        return new Formula(
                id,
                result,
                new Expr.Total(table, summed, HOLDING_KEY, HOLDING_KEY, false),
                SUM,
                "the jobs listed",
                List.of());
    }

    /** Rows left out of the cost. */
    public static final Expr LEFT_OUT =
            new Expr.Count(JobCost.JOB_COSTS, JobCost.TOTAL, HOLDING_KEY, HOLDING_KEY, true);

    /** Rows left out of the fuel. */
    public static final Expr WITHOUT_FUEL =
            new Expr.Count(FuelAndLabour.WORK_INPUTS, FuelAndLabour.FIELD_FUEL, HOLDING_KEY, HOLDING_KEY, true);
    /** Rows left out of the labour. */
    public static final Expr WITHOUT_LABOUR =
            new Expr.Count(FuelAndLabour.WORK_INPUTS, FuelAndLabour.LABOUR, HOLDING_KEY, HOLDING_KEY, true);

    /** {@code labour-units}: labour ÷ hours of a labour unit. */
    public static final Formula UNITS = new Formula(
            "labour-units",
            LABOUR_UNITS,
            value(LABOUR).over(constant(LABOUR_UNIT_HOURS)),
            DAERA,
            "a year's hours of one person; task hours only, not the care of stock",
            List.of(
                    WorkedExample.from(Source.published(
                                    "DAERA 2022: 49 dairy cows of 39 h make one labour unit, to the nearest cow"))
                            .with(LABOUR, 49 * 39)
                            .givesWithin(1, Units.ONE, 0.5 * 39 / 1900),
                    WorkedExample.from(Source.published(
                                    "DAERA 2022: 158 suckler cows of 12 h make one labour unit, to the nearest cow"))
                            .with(LABOUR, 158 * 12)
                            .givesWithin(1, Units.ONE, 0.5 * 12 / 1900),
                    WorkedExample.from(Source.derived("DAERA 2022: 100 sucklers and 80 stores take 1,920 h"))
                            .with(LABOUR, 100 * 12 + 80 * 9)
                            .gives(1920 / 1900.0, Units.ONE, 6)));

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(HOLDING_FUEL, HOLDING_LABOUR, UNITS, HOLDING_COST);
    }
}
