package org.rickyard.trade.cost;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.CHARGE_PER_BALE;
import static org.rickyard.trade.Quantities.CHARGE_PER_HECTARE;
import static org.rickyard.trade.Quantities.CHARGE_PER_HOUR;
import static org.rickyard.trade.Quantities.CHARGE_PER_TONNE;
import static org.rickyard.trade.Quantities.CHARGE_UNIT;
import static org.rickyard.trade.Quantities.DM_AT_ENSILING;
import static org.rickyard.trade.Quantities.OWN_OR_HIRED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.Bales;
import org.rickyard.trade.workrate.FuelAndLabour;
import org.rickyard.trade.workrate.Throughput;

/** What a machine's work on one field costs, line by line; and whether to own or hire it. */
public final class JobCost {
    private JobCost() {}

    /** The table of machine costs. */
    public static final String MACHINE_COSTS = "machine-costs";
    /** The table of job costs. */
    public static final String JOB_COSTS = "job-costs";

    private static final Unit AN_HOUR = Units.MONEY_UNIT.over(Units.H);
    private static final Unit A_HECTARE = Units.MONEY_UNIT.over(Units.HA);

    /** Hours, area and the rest, brought from the table of fuel and labour. */
    public static final Symbol HOURS = FuelAndLabour.WORK_HOURS;
    /** Ownership and repairs of the machine, an hour. */
    public static final Symbol MACHINE_HOUR = hourly("machine cost per hour");
    /** Ownership and repairs of the tractor, an hour. */
    public static final Symbol TRACTOR_HOUR = hourly("tractor cost per hour");
    /** What the machine costs an hour, in the table of machine costs. */
    public static final Symbol COST_HOUR = hourly("ownership and repairs per hour");
    /** Machine on the field. */
    public static final Symbol MACHINE_COST = money("machine cost");
    /** Tractor on the field. */
    public static final Symbol TRACTOR_COST = money("tractor cost");
    /** Fuel on the field. */
    public static final Symbol FUEL_COST = money("fuel cost");
    /** Oil on the field. */
    public static final Symbol LUBRICANT_COST = money("lubricant cost");
    /** Labour on the field. */
    public static final Symbol LABOUR_COST = money("labour cost");
    /** Bales a baler makes of the crop. */
    public static final Symbol BALES =
            Symbol.number("bales made", Units.ONE).possible(Range.POSITIVE).decimals(0);
    /** The bill for a hired machine. */
    public static final Symbol HIRE = money("hire bill");
    /** All together. */
    public static final Symbol TOTAL = money("cost of the work");
    /** The same for a hectare. */
    public static final Symbol PER_HECTARE = Symbol.number("cost per hectare", A_HECTARE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** The same for a machine hour. */
    public static final Symbol PER_HOUR = hourly("cost per machine hour");
    /** The same for a tonne. */
    public static final Symbol PER_TONNE = Symbol.number("cost per tonne", Units.MONEY_UNIT.over(Units.T))
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** What the work of a machine costs beyond owning it. */
    public static final Symbol RUNNING = money("running cost");
    /** Repairs of the machine, an hour. */
    public static final Symbol MACHINE_REPAIRS = hourly("repairs of the machine per hour");
    /** What is in a contractor's charge. */
    public static final Symbol INCLUDES = Quantities.CHARGE_INCLUDES;

    private static Symbol money(String name) {
        return Symbol.number(name, Units.MONEY_UNIT)
                .possible(Range.NOT_NEGATIVE)
                .decimals(2);
    }

    private static Symbol hourly(String name) {
        return Symbol.number(name, AN_HOUR).possible(Range.NOT_NEGATIVE).decimals(2);
    }

    private static final Source SUM = Source.derived("sum of its lines");
    private static final Source IOWA = Source.published("Iowa State University AgDM A3-29, 105 hp tractor");

    /** Oil as a share of fuel. */
    public static final Constant LUBRICANT_SHARE = new Constant("Lubricant over fuel cost", 15, Units.PERCENT, IOWA);

    private static final Condition HIRED = Condition.is(OWN_OR_HIRED, "hired");
    private static final Condition ALL_IN = Condition.all(List.of(HIRED, Condition.is(INCLUDES, "everything")));
    private static final Condition TRACTOR_IN = Condition.all(List.of(
            HIRED,
            Condition.any(List.of(Condition.is(INCLUDES, "everything"), Condition.is(INCLUDES, "all but fuel")))));
    private static final String SAY =
            "say in Charge includes whether the charge is for everything, all but fuel, or the" + " machine only";

    private static Condition said() {
        return Condition.any(List.of(
                Condition.is(INCLUDES, "everything"),
                Condition.is(INCLUDES, "all but fuel"),
                Condition.is(INCLUDES, "machine only")));
    }

    private static final Expr NOTHING = new Expr.AsUnit(number(0), Units.MONEY_UNIT);

    /** Ownership and repairs of a machine, an hour. */
    public static final Formula COST_OF_HOUR = new Formula(
            "machine-cost-per-hour",
            COST_HOUR,
            value(OwnershipCost.OWNERSHIP_HOUR).plus(RepairCost.REPAIRS),
            SUM,
            "fuel, oil and labour come with the work",
            List.of(WorkedExample.from(Source.derived("13.30 + 10.56"))
                    .with(OwnershipCost.OWNERSHIP_HOUR, 13.3)
                    .with(RepairCost.REPAIRS, 10.56)
                    .gives(23.86, AN_HOUR, 6)));

    /** Machine on the field: nothing if it is hired. */
    public static final Formula MACHINE_ON_FIELD = new Formula(
            "machine-cost",
            MACHINE_COST,
            choice(HIRED, NOTHING, value(MACHINE_HOUR).times(HOURS)),
            SUM,
            "only the hours used here",
            List.of(
                    WorkedExample.from(Source.derived("23.86 for 5 h"))
                            .with(OWN_OR_HIRED, "own")
                            .with(MACHINE_HOUR, 23.86)
                            .with(HOURS, 5)
                            .gives(119.3, Units.MONEY_UNIT, 6),
                    WorkedExample.from(Source.commonPractice("a hired machine has no cost of its own"))
                            .with(OWN_OR_HIRED, "hired")
                            .gives(0, Units.MONEY_UNIT, 6)));

    /** Tractor on the field: nothing if a charge includes it or there is none. */
    public static final Formula TRACTOR_ON_FIELD = new Formula(
            "tractor-cost",
            TRACTOR_COST,
            choice(
                    Condition.any(List.of(
                            TRACTOR_IN,
                            Condition.compare(value(Keys.TRACTOR_KEY), Condition.Relation.EQUAL, number(0)))),
                    NOTHING,
                    value(TRACTOR_HOUR).times(HOURS)),
            SUM,
            "only the hours used here",
            List.of(
                    WorkedExample.from(Source.derived("10 for 5 h"))
                            .with(Keys.TRACTOR_KEY, 1)
                            .with(OWN_OR_HIRED, "own")
                            .with(TRACTOR_HOUR, 10)
                            .with(HOURS, 5)
                            .gives(50, Units.MONEY_UNIT, 6),
                    WorkedExample.from(Source.derived("own tractor before a hired implement"))
                            .with(Keys.TRACTOR_KEY, 1)
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "machine only")
                            .with(TRACTOR_HOUR, 10)
                            .with(HOURS, 5)
                            .gives(50, Units.MONEY_UNIT, 6),
                    WorkedExample.from(Source.commonPractice("what is in the charge is not paid twice"))
                            .with(Keys.TRACTOR_KEY, 1)
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "all but fuel")
                            .gives(0, Units.MONEY_UNIT, 6)));

    /** {@code fuel-cost}. */
    public static final Formula FUEL_ON_FIELD = new Formula(
            "fuel-cost",
            FUEL_COST,
            choice(ALL_IN, NOTHING, value(FuelAndLabour.FIELD_FUEL).times(Prices.FUEL_PRICE)),
            Source.derived("litres × price"),
            "nothing where a charge includes it",
            List.of(
                    WorkedExample.from(Source.published("Iowa State University: 4.62 US gal × 3.40 is 15.71"))
                            .with(OWN_OR_HIRED, "own")
                            .with(FuelAndLabour.FIELD_FUEL, 4.62, Units.GAL_US)
                            .with(Prices.FUEL_PRICE, 3.40, Units.MONEY_UNIT.over(Units.GAL_US))
                            .gives(15.71, Units.MONEY_UNIT, 2),
                    WorkedExample.from(Source.secondHand("Iowa State University: 7.92 US gal × 3.40 is 26.93"))
                            .with(OWN_OR_HIRED, "own")
                            .with(FuelAndLabour.FIELD_FUEL, 7.92, Units.GAL_US)
                            .with(Prices.FUEL_PRICE, 3.40, Units.MONEY_UNIT.over(Units.GAL_US))
                            .gives(26.93, Units.MONEY_UNIT, 2)));

    /** {@code lubricant-cost}. */
    public static final Formula LUBRICANT_ON_FIELD = new Formula(
            "lubricant-cost",
            LUBRICANT_COST,
            choice(TRACTOR_IN, NOTHING, value(FUEL_COST).times(constant(LUBRICANT_SHARE))),
            IOWA,
            "oil and grease; nothing where a charge includes the tractor or engine",
            List.of(
                    WorkedExample.from(Source.published("Iowa State University: 15 % of 15.71 is 2.36"))
                            .with(OWN_OR_HIRED, "own")
                            .with(FUEL_COST, 15.708)
                            .gives(2.36, Units.MONEY_UNIT, 2),
                    WorkedExample.from(Source.commonPractice("a contractor oils his own machine"))
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "all but fuel")
                            .with(FUEL_COST, 100)
                            .gives(0, Units.MONEY_UNIT, 6)));

    /** {@code labour-cost}. */
    public static final Formula LABOUR_ON_FIELD = new Formula(
            "labour-cost",
            LABOUR_COST,
            choice(TRACTOR_IN, NOTHING, value(FuelAndLabour.LABOUR).times(Prices.WAGE)),
            Source.derived("hours × wage"),
            "nothing where a charge includes it",
            List.of(WorkedExample.from(Source.derived("Iowa State University: 1.1 h × 15.00 is 16.50"))
                    .with(OWN_OR_HIRED, "own")
                    .with(FuelAndLabour.LABOUR, 1.1)
                    .with(Prices.WAGE, 15)
                    .gives(16.5, Units.MONEY_UNIT, 2)));

    /** {@code bales-made}: dry matter of the crop ÷ dry matter of a bale, rounded up. */
    public static final Formula BALES_MADE = new Formula(
            "bales-made",
            BALES,
            Expr.call(
                    Function.ROUND_UP,
                    value(AREA)
                            .times(Throughput.YIELD_CARTED)
                            .times(DM_AT_ENSILING)
                            .over(constant(Bales.BALE_DM))
                            .in(Units.ONE)),
            Bales.BALE_DM.source(),
            "round bales; count your own and set their dry matter on Assumptions",
            List.of(
                    // A hectare of 40 t/ha at 30 % holds 12 t of dry matter: 54.5 bales of 220 kg.
                    WorkedExample.from(Source.derived("12 t of dry matter in bales of 220 kg"))
                            .with(AREA, 1)
                            .with(Throughput.YIELD_CARTED, 40)
                            .with(DM_AT_ENSILING, 30)
                            .gives(55, Units.ONE, 0),
                    WorkedExample.from(Source.secondHand(
                                    "Farmers Journal 216282: 900 bales at 220 kg are 198 t of dry matter"))
                            .with(AREA, 16.5)
                            .with(Throughput.YIELD_CARTED, 40)
                            .with(DM_AT_ENSILING, 30)
                            .gives(900, Units.ONE, 0)));

    /** {@code hire-bill}: the charge by its unit. */
    public static final Formula HIRE_BILL = new Formula(
            "hire-bill",
            HIRE,
            choice(
                    new Condition.Not(HIRED),
                    NOTHING,
                    choice(
                            Condition.is(CHARGE_UNIT, "h"),
                            value(CHARGE_PER_HOUR).times(HOURS).onlyWhen(said(), SAY),
                            choice(
                                    Condition.is(CHARGE_UNIT, "t"),
                                    value(CHARGE_PER_TONNE)
                                            .times(AREA)
                                            .times(Throughput.YIELD_CARTED)
                                            .onlyWhen(said(), SAY),
                                    choice(
                                            Condition.is(CHARGE_UNIT, "bale"),
                                            value(CHARGE_PER_BALE).times(BALES).onlyWhen(said(), SAY),
                                            value(CHARGE_PER_HECTARE)
                                                    .times(AREA)
                                                    .onlyWhen(said(), SAY))))),
            Source.derived("charge × what it is counted by"),
            "the charge as typed, with or without tax as typed",
            List.of(
                    WorkedExample.from(Source.derived("National Association of Agricultural Contractors, reported:"
                                    + " mowing 30.30 a hectare, so 10 ha cost 303"))
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "everything")
                            .with(CHARGE_UNIT, "ha")
                            .with(CHARGE_PER_HECTARE, 30.30)
                            .with(AREA, 10)
                            .gives(303, Units.MONEY_UNIT, 6),
                    WorkedExample.from(Source.derived("2 a tonne of 20 t/ha on 10 ha"))
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "all but fuel")
                            .with(CHARGE_UNIT, "t")
                            .with(CHARGE_PER_TONNE, 2)
                            .with(AREA, 10)
                            .with(Throughput.YIELD_CARTED, 20)
                            .gives(400, Units.MONEY_UNIT, 6),
                    WorkedExample.from(Source.derived("8 a bale for 55 bales"))
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "everything")
                            .with(CHARGE_UNIT, "bale")
                            .with(CHARGE_PER_BALE, 8)
                            .with(BALES, 55)
                            .gives(440, Units.MONEY_UNIT, 6),
                    WorkedExample.from(Source.derived("45 an hour for 5 h"))
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "machine only")
                            .with(CHARGE_UNIT, "h")
                            .with(CHARGE_PER_HOUR, 45)
                            .with(HOURS, 5)
                            .gives(225, Units.MONEY_UNIT, 6)));

    /** {@code cost-of-work}. */
    public static final Formula COST = new Formula(
            "cost-of-work",
            TOTAL,
            value(MACHINE_COST)
                    .plus(TRACTOR_COST)
                    .plus(FUEL_COST)
                    .plus(LUBRICANT_COST)
                    .plus(LABOUR_COST)
                    .plus(HIRE),
            SUM,
            "work in the field; overheads, management and timeliness are not in it",
            List.of(
                    WorkedExample.from(Source.secondHand("Iowa State University: repairs 8.33, fuel 26.93, lubricant"
                                    + " 4.04, labour 16.50: 55.80 an hour"))
                            .with(MACHINE_COST, 0)
                            .with(TRACTOR_COST, 8.33)
                            .with(FUEL_COST, 26.93)
                            .with(LUBRICANT_COST, 4.04)
                            .with(LABOUR_COST, 16.50)
                            .with(HIRE, 0)
                            .gives(55.80, Units.MONEY_UNIT, 2),
                    WorkedExample.from(SUM)
                            .with(MACHINE_COST, 100)
                            .with(TRACTOR_COST, 50)
                            .with(FUEL_COST, 40)
                            .with(LUBRICANT_COST, 6)
                            .with(LABOUR_COST, 80)
                            .with(HIRE, 24)
                            .gives(300, Units.MONEY_UNIT, 6)));

    /** {@code cost-per-hectare}. */
    public static final Formula COST_OF_HECTARE = new Formula(
            "cost-per-hectare",
            PER_HECTARE,
            value(TOTAL).over(AREA),
            SUM,
            "this field",
            List.of(WorkedExample.from(Source.derived("240 over 12 ha"))
                    .with(TOTAL, 240)
                    .with(AREA, 12)
                    .gives(20, Units.MONEY_UNIT.over(Units.HA), 6)));

    /** {@code cost-per-hour}. */
    public static final Formula COST_OF_MACHINE_HOUR = new Formula(
            "cost-per-hour",
            PER_HOUR,
            value(TOTAL).over(HOURS),
            SUM,
            "this field",
            List.of(WorkedExample.from(Source.derived("240 over 5 h"))
                    .with(TOTAL, 240)
                    .with(HOURS, 5)
                    .gives(48, AN_HOUR, 6)));

    /** {@code cost-per-tonne}. */
    public static final Formula COST_OF_TONNE = new Formula(
            "cost-per-tonne",
            PER_TONNE,
            value(PER_HECTARE).over(Throughput.YIELD_CARTED),
            SUM,
            "fresh tonnes as carted",
            List.of(WorkedExample.from(Source.derived("20 a hectare in 20 t/ha"))
                    .with(PER_HECTARE, 20)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(1, Units.MONEY_UNIT.over(Units.T), 6)));

    /** {@code running-cost}: all but owning the machine itself. */
    public static final Formula RUNNING_COST = new Formula(
            "running-cost",
            RUNNING,
            value(TRACTOR_COST)
                    .plus(FUEL_COST)
                    .plus(LUBRICANT_COST)
                    .plus(LABOUR_COST)
                    .plus(value(MACHINE_REPAIRS).times(HOURS)),
            SUM,
            "tractor and own labour included, as a contractor's charge includes his",
            List.of(WorkedExample.from(Source.derived("50 + 40 + 6 + 80 + 10.56 × 5"))
                    .with(TRACTOR_COST, 50)
                    .with(FUEL_COST, 40)
                    .with(LUBRICANT_COST, 6)
                    .with(LABOUR_COST, 80)
                    .with(MACHINE_REPAIRS, 10.56)
                    .with(HOURS, 5)
                    .gives(228.8, Units.MONEY_UNIT, 6)));

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(
                COST_OF_HOUR,
                MACHINE_ON_FIELD,
                TRACTOR_ON_FIELD,
                FUEL_ON_FIELD,
                LUBRICANT_ON_FIELD,
                LABOUR_ON_FIELD,
                BALES_MADE,
                HIRE_BILL,
                COST,
                COST_OF_HECTARE,
                COST_OF_MACHINE_HOUR,
                COST_OF_TONNE,
                RUNNING_COST);
    }
}
