package org.rickyard.trade.cost;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.HOURS_NOW;
import static org.rickyard.trade.Quantities.HOURS_PER_YEAR;
import static org.rickyard.trade.Quantities.KIND_OF_MACHINE;
import static org.rickyard.trade.Quantities.LIFE;
import static org.rickyard.trade.Quantities.LIST_PRICE;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.workrate.RememberedMachines;

/**
 * Repairs, which pile up faster as a machine ages: accumulated repairs = RF1 × list price × (hours ÷ 1000)^RF2. Of a
 * used machine the difference between the end and the start of its time here is charged.
 */
public final class RepairCost {
    private RepairCost() {}

    private static final Unit AN_HOUR = Units.MONEY_UNIT.over(Units.H);

    /** Hours when its time here begins. */
    public static final Symbol START = Symbol.number("hours at the start", Units.H)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Hours when it goes. */
    public static final Symbol END =
            Symbol.number("hours at the end", Units.H).possible(Range.POSITIVE).decimals(0);
    /** Repairs up to the start. */
    public static final Symbol BEFORE = Symbol.number("repairs before the start", Units.MONEY_UNIT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Repairs up to the end. */
    public static final Symbol ALL = Symbol.number("repairs to the end", Units.MONEY_UNIT)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Repairs for an hour's work. */
    public static final Symbol REPAIRS = Symbol.number("repairs per hour", AN_HOUR)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);

    private static final Source D497 = Source.memory("ASAE D497, Table 3; tractor 2WD supported by an Iowa State"
            + " University example (25 % of list at 6,000 h)");

    /** Repair factor. */
    public static final ReferenceTable RF1 =
            RememberedMachines.byKind("Repair factor RF1", "RF1", Units.ONE, RememberedMachines.Row::rf1, D497);
    /** Repair exponent. */
    public static final ReferenceTable RF2 =
            RememberedMachines.byKind("Repair exponent RF2", "RF2", Units.ONE, RememberedMachines.Row::rf2, D497);
    /** A machine whose hours are not typed is taken for new. */
    public static final Constant NEW_MACHINE = new Constant(
                    "Hours of a machine if none are typed", 0, Units.H, Source.commonPractice("new"))
            .possible(HOURS_NOW.possible());

    private static Expr lookup(ReferenceTable table) {
        return new Expr.Lookup(table, value(KIND_OF_MACHINE), Expr.Lookup.Mode.EXACT);
    }

    private static Expr accumulated(Symbol hours) {
        Expr thousands = new Expr.NumberOf(value(hours), Units.H).over(number(1000));
        return lookup(RF1)
                .times(LIST_PRICE)
                .times(Expr.call(Function.EXP, lookup(RF2).times(Expr.call(Function.LN, thousands))))
                .onlyWhen(
                        new Condition.InTable(RF1, value(KIND_OF_MACHINE), Expr.Lookup.Mode.EXACT),
                        "no repair factors are held for this kind of machine (table on Basis)");
    }

    /** Hours at the start. */
    public static final Formula HOURS_AT_START = new Formula(
            "hours-at-start",
            START,
            given(HOURS_NOW, constant(NEW_MACHINE)),
            Source.commonPractice("as typed, otherwise new"),
            "hours on the clock",
            List.of(WorkedExample.from(Source.commonPractice("what is typed stands"))
                    .with(HOURS_NOW, 500)
                    .gives(500, Units.H, 6)));

    /** Hours at the end: start + life × hours per year. */
    public static final Formula HOURS_AT_END = new Formula(
            "hours-at-end",
            END,
            value(START).plus(new Expr.NumberOf(value(LIFE), Units.YR).times(HOURS_PER_YEAR)),
            Source.derived("years kept × hours a year on top of the start"),
            "the same use each year",
            List.of(WorkedExample.from(Source.published("Iowa State University: 15 yr of 400 h are 6,000 h"))
                    .with(START, 0)
                    .with(LIFE, 15)
                    .with(HOURS_PER_YEAR, 400)
                    .gives(6000, Units.H, 0)));

    /** Repairs before the start. */
    public static final Formula REPAIRS_BEFORE = new Formula(
            "repairs-before-start",
            BEFORE,
            choice(
                    Condition.compare(value(START), Relation.MORE, new Expr.AsUnit(number(0), Units.H)),
                    accumulated(START),
                    new Expr.AsUnit(number(0), Units.MONEY_UNIT)),
            D497,
            "American machines and prices of parts; a rough guide",
            List.of(mower(START, 500, 1320)));

    /** {@code repairs-accumulated}: RF1 × list price × (hours ÷ 1000)^RF2. */
    public static final Formula REPAIRS_TO_END = new Formula(
            "repairs-accumulated",
            ALL,
            accumulated(END),
            D497,
            "list price of today; a rough guide",
            List.of(
                    WorkedExample.from(Source.published("Iowa State University, 105 hp tractor, list 80,000: 25 % of"
                                    + " list, 20,000, after 6,000 h, read off its curve to a whole per cent"))
                            .with(KIND_OF_MACHINE, "tractor")
                            .with(LIST_PRICE, 80000)
                            .with(END, 6000)
                            .givesWithin(20000, Units.MONEY_UNIT, 400),
                    mower(END, 500, 1320),
                    mower(END, 600, 1900.8)));

    private static WorkedExample mower(Symbol hours, double at, double repairs) {
        return WorkedExample.from(Source.derived("rotary mower, list 12,000: .44 × 12,000 × (hours ÷ 1000)²"))
                .with(KIND_OF_MACHINE, "mower")
                .with(LIST_PRICE, 12000)
                .with(hours, at)
                .gives(repairs, Units.MONEY_UNIT, 6);
    }

    /** {@code repairs}: difference of accumulated repairs over the hours between. */
    public static final Formula REPAIRS_OF_HOUR = new Formula(
            "repairs",
            REPAIRS,
            value(ALL)
                    .minus(BEFORE)
                    .over(value(END).minus(START))
                    .onlyWhen(
                            Condition.compare(value(END), Relation.MORE, value(START)),
                            "the machine works no hours here"),
            D497,
            "the mean over its time here; a used machine is charged only what comes after",
            List.of(
                    WorkedExample.from(Source.published("Iowa State University: 20,000 over 6,000 h is 3.33 an hour"))
                            .with(ALL, 20000)
                            .with(BEFORE, 0)
                            .with(END, 6000)
                            .with(START, 0)
                            .gives(3.33, AN_HOUR, 2),
                    WorkedExample.from(Source.secondHand(
                                    "Iowa State University, newer edition: 50,000 over 6,000 h is" + " 8.33 an hour"))
                            .with(ALL, 50000)
                            .with(BEFORE, 0)
                            .with(END, 6000)
                            .with(START, 0)
                            .gives(8.33, AN_HOUR, 2),
                    WorkedExample.from(Source.derived("rotary mower from 500 to 600 h: 580.80"))
                            .with(ALL, 1900.8)
                            .with(BEFORE, 1320)
                            .with(END, 600)
                            .with(START, 500)
                            .gives(5.808, AN_HOUR, 6)));

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(HOURS_AT_START, HOURS_AT_END, REPAIRS_BEFORE, REPAIRS_TO_END, REPAIRS_OF_HOUR);
    }
}
