package org.rickyard.trade.cost;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.MACHINE_TYPE;
import static org.rickyard.trade.Quantities.OWN_OR_HIRED;
import static org.rickyard.trade.Quantities.POWER;

import java.util.List;
import java.util.stream.Stream;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
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
    public static final Symbol MACHINE_COST = HireBill.money("machine cost");
    /** Tractor on the field. */
    public static final Symbol TRACTOR_COST = HireBill.money("tractor cost");
    /** Fuel on the field. */
    public static final Symbol FUEL_COST = HireBill.money("fuel cost");
    /** Oil on the field. */
    public static final Symbol LUBRICANT_COST = HireBill.money("lubricant cost");
    /** Labour on the field. */
    public static final Symbol LABOUR_COST = HireBill.money("labour cost");
    /** All together. */
    public static final Symbol TOTAL = HireBill.money("cost of the work");
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
    public static final Symbol RUNNING = HireBill.money("running cost");
    /** Repairs of the machine, an hour. */
    public static final Symbol MACHINE_REPAIRS = hourly("repairs of the machine per hour");

    private static Symbol hourly(String name) {
        return Symbol.number(name, AN_HOUR).possible(Range.NOT_NEGATIVE).decimals(2);
    }

    private static final Source SUM = Source.derived("sum of its lines");
    private static final Source IOWA = Source.published("Iowa State University AgDM A3-29, 105 hp tractor");

    private static final Source PURDUE = Source.published("Purdue (Dobbins), farm press: combining takes 2.02 US gal an"
            + " acre of soya, 2.4 of maize; 6.06 at 3.00, 7.07 and 8.40 at 3.50. The 7.07 printed for maize at 3.00 is a"
            + " slip for 7.20");

    /** Oil as a share of fuel. */
    public static final Constant LUBRICANT_SHARE = new Constant("Lubricant over fuel cost", 15, Units.PERCENT, IOWA);

    /** Types that do nothing without a tractor, unless they have an engine of their own. */
    public static final ReferenceTable PULLED = new ReferenceTable(
            "Machines that a tractor pulls, drives or carries",
            "machine type",
            Units.ONE,
            "tractors",
            Units.ONE,
            pulled(),
            Source.commonPractice("what has no engine; one whose own Power is typed drives itself"));

    private static List<Row> pulled() {
        return Stream.of(
                        "mower",
                        "tedder",
                        "rake",
                        "forage wagon",
                        "baler",
                        "wrapper",
                        "trailer",
                        "buckrake",
                        "field rolls",
                        "sprayer",
                        "air-blast sprayer",
                        "fertiliser spreader",
                        "muck spreader",
                        "slurry tanker",
                        "plough",
                        "cultivator",
                        "drill")
                .map(type -> Row.of(type, 1))
                .toList();
    }

    /** No tractor is named for a machine that needs one, nor does a charge include it. */
    public static final Condition TRACTOR_MISSING = Condition.all(List.of(
            Condition.compare(value(Keys.TRACTOR_KEY), Condition.Relation.EQUAL, number(0)),
            new Condition.InTable(PULLED, value(MACHINE_TYPE), Expr.Lookup.Mode.EXACT),
            new Condition.Blank(POWER),
            new Condition.Not(HireBill.TRACTOR_IN)));

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
            choice(
                    HireBill.HIRED,
                    HireBill.NOTHING,
                    value(MACHINE_HOUR).times(HOURS).onlyWhen(HireBill.HIRE_TOLD, HireBill.OWN_OR_HIRED_WANTED)),
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
                            HireBill.TRACTOR_IN,
                            Condition.compare(value(Keys.TRACTOR_KEY), Condition.Relation.EQUAL, number(0)))),
                    HireBill.NOTHING,
                    value(TRACTOR_HOUR).times(HOURS).onlyWhen(HireBill.TRACTOR_TOLD, HireBill.WORDS_WANTED)),
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
                            .with(HireBill.INCLUDES, "machine only")
                            .with(TRACTOR_HOUR, 10)
                            .with(HOURS, 5)
                            .gives(50, Units.MONEY_UNIT, 6),
                    WorkedExample.from(Source.commonPractice("what is in the charge is not paid twice"))
                            .with(Keys.TRACTOR_KEY, 1)
                            .with(OWN_OR_HIRED, "hired")
                            .with(HireBill.INCLUDES, "all but fuel")
                            .gives(0, Units.MONEY_UNIT, 6)));

    /** {@code fuel-cost}. */
    public static final Formula FUEL_ON_FIELD = new Formula(
            "fuel-cost",
            FUEL_COST,
            choice(
                    HireBill.ALL_IN,
                    HireBill.NOTHING,
                    value(FuelAndLabour.FIELD_FUEL)
                            .times(Prices.FUEL_PRICE)
                            .onlyWhen(HireBill.FUEL_TOLD, HireBill.WORDS_WANTED)),
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
                            .gives(26.93, Units.MONEY_UNIT, 2),
                    gallons(PURDUE, 2.02, 3.00, 6.06),
                    gallons(PURDUE, 2.02, 3.50, 7.07),
                    gallons(PURDUE, 2.4, 3.50, 8.40),
                    gallons(
                            Source.secondHand("chopping maize: 3.25 US gal an acre × 3.40 is 11.05"),
                            3.25,
                            3.40,
                            11.05)));

    private static WorkedExample gallons(Source source, double gallons, double price, double cost) {
        return WorkedExample.from(source)
                .with(OWN_OR_HIRED, "own")
                .with(FuelAndLabour.FIELD_FUEL, gallons, Units.GAL_US)
                .with(Prices.FUEL_PRICE, price, Units.MONEY_UNIT.over(Units.GAL_US))
                .gives(cost, Units.MONEY_UNIT, 2);
    }

    /** {@code lubricant-cost}. */
    public static final Formula LUBRICANT_ON_FIELD = new Formula(
            "lubricant-cost",
            LUBRICANT_COST,
            choice(
                    HireBill.TRACTOR_IN,
                    HireBill.NOTHING,
                    value(FUEL_COST)
                            .times(constant(LUBRICANT_SHARE))
                            .onlyWhen(HireBill.TRACTOR_TOLD, HireBill.WORDS_WANTED)),
            IOWA,
            "oil and grease; nothing where a charge includes the tractor or engine",
            List.of(
                    WorkedExample.from(Source.published("Iowa State University: 15 % of 15.71 is 2.36"))
                            .with(OWN_OR_HIRED, "own")
                            .with(FUEL_COST, 15.708)
                            .gives(2.36, Units.MONEY_UNIT, 2),
                    WorkedExample.from(Source.commonPractice("a contractor oils his own machine"))
                            .with(OWN_OR_HIRED, "hired")
                            .with(HireBill.INCLUDES, "all but fuel")
                            .with(FUEL_COST, 100)
                            .gives(0, Units.MONEY_UNIT, 6)));

    /** {@code labour-cost}. */
    public static final Formula LABOUR_ON_FIELD = new Formula(
            "labour-cost",
            LABOUR_COST,
            choice(
                    HireBill.TRACTOR_IN,
                    HireBill.NOTHING,
                    value(FuelAndLabour.LABOUR)
                            .times(Prices.WAGE)
                            .onlyWhen(HireBill.TRACTOR_TOLD, HireBill.WORDS_WANTED)),
            Source.derived("hours × wage"),
            "nothing where a charge includes it",
            List.of(WorkedExample.from(Source.derived("Iowa State University: 1.1 h × 15.00 is 16.50"))
                    .with(OWN_OR_HIRED, "own")
                    .with(FuelAndLabour.LABOUR, 1.1)
                    .with(Prices.WAGE, 15)
                    .gives(16.5, Units.MONEY_UNIT, 2)));

    /** {@code cost-of-work}. */
    public static final Formula COST = new Formula(
            "cost-of-work",
            TOTAL,
            value(MACHINE_COST)
                    .plus(TRACTOR_COST)
                    .plus(FUEL_COST)
                    .plus(LUBRICANT_COST)
                    .plus(LABOUR_COST)
                    .plus(HireBill.HIRE),
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
                            .with(HireBill.HIRE, 0)
                            .gives(55.80, Units.MONEY_UNIT, 2),
                    WorkedExample.from(SUM)
                            .with(MACHINE_COST, 100)
                            .with(TRACTOR_COST, 50)
                            .with(FUEL_COST, 40)
                            .with(LUBRICANT_COST, 6)
                            .with(LABOUR_COST, 80)
                            .with(HireBill.HIRE, 24)
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

    private static final Expr REPAIRS_ON_FIELD = value(MACHINE_REPAIRS).times(HOURS);

    /** {@code running-cost}: all but owning the machine itself, as far as the charge beside it includes it. */
    public static final Formula RUNNING_COST = new Formula(
            "running-cost",
            RUNNING,
            choice(
                    Condition.is(HireBill.INCLUDES, "machine only"),
                    REPAIRS_ON_FIELD,
                    choice(
                            Condition.is(HireBill.INCLUDES, "all but fuel"),
                            value(TRACTOR_COST)
                                    .plus(LUBRICANT_COST)
                                    .plus(LABOUR_COST)
                                    .plus(REPAIRS_ON_FIELD),
                            value(TRACTOR_COST)
                                    .plus(FUEL_COST)
                                    .plus(LUBRICANT_COST)
                                    .plus(LABOUR_COST)
                                    .plus(REPAIRS_ON_FIELD)
                                    .onlyWhen(HireBill.INCLUDES_TOLD, HireBill.INCLUDES_WANTED))),
            Source.published(
                    "agricultural engineering textbook after Roth and Field: own labour and tractor are counted"
                            + " where the contractor's charge includes them"),
            "tractor, own labour and fuel, unless Charge includes says that the charge is without them",
            List.of(running("everything", 228.8), running("all but fuel", 188.8), running("machine only", 52.8)));

    private static WorkedExample running(String includes, double cost) {
        return WorkedExample.from(Source.derived("50 + 40 + 6 + 80 + 10.56 × 5, as far as the charge includes them"))
                .with(HireBill.INCLUDES, includes)
                .with(TRACTOR_COST, 50)
                .with(FUEL_COST, 40)
                .with(LUBRICANT_COST, 6)
                .with(LABOUR_COST, 80)
                .with(MACHINE_REPAIRS, 10.56)
                .with(HOURS, 5)
                .gives(cost, Units.MONEY_UNIT, 6);
    }

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(
                COST_OF_HOUR,
                MACHINE_ON_FIELD,
                TRACTOR_ON_FIELD,
                FUEL_ON_FIELD,
                LUBRICANT_ON_FIELD,
                LABOUR_ON_FIELD,
                HireBill.BALES_MADE,
                HireBill.HIRE_BILL,
                COST,
                COST_OF_HECTARE,
                COST_OF_MACHINE_HOUR,
                COST_OF_TONNE,
                RUNNING_COST);
    }
}
