package org.rickyard.trade.cost;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CHARGE_PER_BALE;
import static org.rickyard.trade.Quantities.CHARGE_PER_HECTARE;
import static org.rickyard.trade.Quantities.CHARGE_PER_HOUR;
import static org.rickyard.trade.Quantities.CHARGE_PER_TONNE;
import static org.rickyard.trade.Quantities.CHARGE_UNIT;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** Whether a machine pays at the area it works: own cost against a contractor's charge, by the hectare or brought to it. */
public final class OwnOrHire {
    private OwnOrHire() {}

    private static final Unit A_HECTARE = Units.MONEY_UNIT.over(Units.HA);

    /** Area the machine works in the jobs listed. */
    public static final Symbol AREA_WORKED = Symbol.number("area worked in the jobs", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Hours the machine works in them. */
    public static final Symbol HOURS_WORKED = Symbol.number("hours worked in the jobs", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** What it brings in, or works on, in them. */
    public static final Symbol CROP_WORKED = Symbol.number("crop of the jobs (fresh, as carted)", Units.T)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Bales it makes in them. */
    public static final Symbol BALES_WORKED = Symbol.number("bales made in the jobs", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** The contractor's charge for a hectare of them. */
    public static final Symbol CHARGE_HECTARE = Symbol.number("charge for a hectare", A_HECTARE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** Running cost of that work. */
    public static final Symbol RUNNING_ALL = Symbol.number("running cost of the jobs", Units.MONEY_UNIT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Running cost of a hectare. */
    public static final Symbol RUNNING_HECTARE = Symbol.number("running cost per hectare", A_HECTARE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** What owning it costs in a year. */
    public static final Symbol OWNERSHIP = OwnershipCost.OWNERSHIP;
    /** Own cost of a hectare at this area. */
    public static final Symbol OWN_HECTARE = Symbol.number("own cost per hectare at this area", A_HECTARE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** Area a year at which own and hired cost the same. */
    public static final Symbol BREAK_EVEN = Symbol.number("break-even area", Units.HA)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** What follows, in words. */
    public static final Symbol ADVICE = Symbol.text("own or hire");

    private static final Source ROTH =
            Source.published("agricultural engineering textbook after Roth and Field, tables 10.2"
                    + " and 10.3: ownership 1,000 a year, running 4 an acre");
    private static final Expr ONE_YEAR = new Expr.AsUnit(number(1), Units.YR);
    private static final Condition CONTRACTOR_DEARER =
            Condition.compare(value(CHARGE_HECTARE), Relation.MORE, value(RUNNING_HECTARE));

    /** {@code hire-charge-per-hectare}: the charge by its unit, for a hectare of the jobs listed. */
    public static final Formula CHARGE = new Formula(
            "hire-charge-per-hectare",
            CHARGE_HECTARE,
            choice(
                    Condition.is(CHARGE_UNIT, "h"),
                    value(CHARGE_PER_HOUR).times(HOURS_WORKED).over(AREA_WORKED),
                    choice(
                            Condition.is(CHARGE_UNIT, "t"),
                            value(CHARGE_PER_TONNE).times(CROP_WORKED).over(AREA_WORKED),
                            choice(
                                    Condition.is(CHARGE_UNIT, "bale"),
                                    value(CHARGE_PER_BALE).times(BALES_WORKED).over(AREA_WORKED),
                                    value(CHARGE_PER_HECTARE)))),
            Source.derived("the bill for the jobs over their area"),
            "by the hour: at this machine's own rate of work, which a contractor's need not be",
            List.of(
                    charge("ha", CHARGE_PER_HECTARE, 98, 98),
                    // 12 ha in 5 h, 240 t of crop, 360 bales.
                    charge("h", CHARGE_PER_HOUR, 60, 60 * 5 / 12.0),
                    charge("t", CHARGE_PER_TONNE, 2, 40),
                    charge("bale", CHARGE_PER_BALE, 8, 240)));

    private static WorkedExample charge(String unit, Symbol charge, double each, double aHectare) {
        return WorkedExample.from(Source.derived("12 ha in 5 h, 240 t of crop, 360 bales"))
                .with(CHARGE_UNIT, unit)
                .with(charge, each)
                .with(AREA_WORKED, 12)
                .with(HOURS_WORKED, 5)
                .with(CROP_WORKED, 240)
                .with(BALES_WORKED, 360)
                .gives(aHectare, A_HECTARE, 6);
    }

    /** Running cost of a hectare. */
    public static final Formula RUNNING = new Formula(
            "running-cost-per-hectare",
            RUNNING_HECTARE,
            value(RUNNING_ALL).over(AREA_WORKED),
            Source.derived("running cost over area"),
            "tractor, fuel and own labour included, as they are in a contractor's charge for everything",
            List.of(WorkedExample.from(Source.derived("240 over 12 ha"))
                    .with(RUNNING_ALL, 240)
                    .with(AREA_WORKED, 12)
                    .gives(20, A_HECTARE, 6)));

    /** {@code own-cost-per-hectare}: ownership ÷ area + running. */
    public static final Formula OWN = new Formula(
            "own-cost-per-hectare",
            OWN_HECTARE,
            value(OWNERSHIP).times(ONE_YEAR).over(AREA_WORKED).plus(RUNNING_HECTARE),
            ROTH,
            "if the jobs listed are the year's work; falls as the area grows",
            acres());

    private static List<WorkedExample> acres() {
        List<WorkedExample> all = new ArrayList<>();
        double[][] rows = {{50, 24}, {100, 14}};
        for (double[] row : rows) {
            all.add(WorkedExample.from(ROTH)
                    .with(OWNERSHIP, 1000)
                    .with(AREA_WORKED, row[0], Units.AC)
                    .with(RUNNING_HECTARE, 4, Units.MONEY_UNIT.over(Units.AC))
                    .gives(row[1], Units.MONEY_UNIT.over(Units.AC), 6));
        }
        return all;
    }

    /** {@code break-even-area}: ownership ÷ (charge − running). */
    public static final Formula BREAK_EVEN_AREA = new Formula(
            "break-even-area",
            BREAK_EVEN,
            value(OWNERSHIP)
                    .times(ONE_YEAR)
                    .over(value(CHARGE_HECTARE).minus(RUNNING_HECTARE))
                    .onlyWhen(
                            CONTRACTOR_DEARER,
                            "there is none: the charge is no more than your own running cost, so hiring is cheaper at"
                                    + " any area"),
            ROTH,
            "a year's area; timeliness, quality and capital freed are not in it",
            List.of(breakEven(12, 125), breakEven(22, 1000.0 / 18)));

    private static WorkedExample breakEven(double charge, double acres) {
        return WorkedExample.from(Source.derived("the same textbook: 1,000 ÷ (" + (int) charge + " − 4)"))
                .with(OWNERSHIP, 1000)
                .with(CHARGE_HECTARE, charge, Units.MONEY_UNIT.over(Units.AC))
                .with(RUNNING_HECTARE, 4, Units.MONEY_UNIT.over(Units.AC))
                .gives(acres, Units.AC, 6);
    }

    /** What follows, in a sentence. */
    public static final Formula SENTENCE = new Formula(
            "own-or-hire",
            ADVICE,
            choice(
                    CONTRACTOR_DEARER,
                    choice(
                            Condition.compare(value(AREA_WORKED), Relation.AT_LEAST, value(BREAK_EVEN)),
                            Expr.text("at this area owning costs no more than hiring"),
                            Expr.text("at this area hiring costs less than owning")),
                    Expr.text("no break-even: hiring costs less at any area")),
            Source.derived("area against break-even area"),
            "money only; timeliness, quality control and capital freed weigh too",
            List.of(
                    WorkedExample.from(Source.derived("charge below running cost"))
                            .with(CHARGE_HECTARE, 3)
                            .with(RUNNING_HECTARE, 4)
                            .gives("no break-even: hiring costs less at any area"),
                    advice(200, 125, "at this area owning costs no more than hiring"),
                    advice(100, 125, "at this area hiring costs less than owning")));

    private static WorkedExample advice(double area, double breakEven, String words) {
        return WorkedExample.from(Source.derived("the textbook's break-even of 125 at a charge of 12 and running 4"))
                .with(CHARGE_HECTARE, 12)
                .with(RUNNING_HECTARE, 4)
                .with(AREA_WORKED, area)
                .with(BREAK_EVEN, breakEven)
                .gives(words);
    }

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(CHARGE, RUNNING, OWN, BREAK_EVEN_AREA, SENTENCE);
    }
}
