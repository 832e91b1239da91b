package org.rickyard.trade.cost;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.HOURS_PER_YEAR;
import static org.rickyard.trade.Quantities.LIFE;
import static org.rickyard.trade.Quantities.PURCHASE_PRICE;
import static org.rickyard.trade.Quantities.TRADE_IN_VALUE;
import static org.rickyard.trade.cost.Prices.INSURANCE;
import static org.rickyard.trade.cost.Prices.INTEREST;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * What a machine costs whether it works or not: depreciation, interest, insurance and housing, each on its own line; or
 * capital recovery, which takes the place of depreciation and interest and is never added to them.
 */
public final class OwnershipCost {
    private OwnershipCost() {}

    private static final Unit A_YEAR = Units.MONEY_UNIT.over(Units.YR);
    private static final Unit AN_HOUR = Units.MONEY_UNIT.over(Units.H);

    /** Loss of value in a year. */
    public static final Symbol DEPRECIATION = money("depreciation", A_YEAR, 0);
    /** Interest in a year. */
    public static final Symbol INTEREST_COST = money("interest", A_YEAR, 0);
    /** Insurance and housing in a year. */
    public static final Symbol INSURANCE_COST = money("insurance and housing cost", A_YEAR, 0);
    /** All of these in a year. */
    public static final Symbol OWNERSHIP = money("ownership cost", A_YEAR, 0);
    /** The same per hour. */
    public static final Symbol OWNERSHIP_HOUR = money("ownership cost per hour", AN_HOUR, 2);
    /** Factor that spreads a sum over years with interest. */
    public static final Symbol RECOVERY_FACTOR = Symbol.number("capital recovery factor", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(4);
    /** Depreciation and interest as one yearly sum. */
    public static final Symbol RECOVERY = money("capital recovery (in place of depreciation and interest)", A_YEAR, 0);

    private static final Source STRAIGHT_LINE = Source.commonPractice("straight line");
    private static final Source EXAM = Source.derived("exam case: 685,000, 33 % left after 15 yr, 450 h/yr, interest"
            + " 3 %, insurance and housing 1 %; inputs published, answers derived");
    private static final Source TEXTBOOK = Source.published(
            "engineering-economy worked example: 10,000, 1,000 left after 4 yr at 10 %: 2,939.5 with the factor rounded"
                    + " to .3155");

    private static Symbol money(String name, Unit unit, int decimals) {
        return Symbol.number(name, unit).possible(Range.NOT_NEGATIVE).decimals(decimals);
    }

    private static final Condition WORTH_LESS =
            Condition.compare(value(TRADE_IN_VALUE), Relation.AT_MOST, value(PURCHASE_PRICE));
    private static final String WORTH_MORE = "the trade-in value is above the purchase price";
    private static final Expr ONE_YEAR = new Expr.AsUnit(number(1), Units.YR);

    /** {@code depreciation}: (purchase price − trade-in value) ÷ life. */
    public static final Formula STRAIGHT = new Formula(
            "depreciation",
            DEPRECIATION,
            value(PURCHASE_PRICE).minus(TRADE_IN_VALUE).over(LIFE).onlyWhen(WORTH_LESS, WORTH_MORE),
            STRAIGHT_LINE,
            "straight line over the years it is kept",
            List.of(
                    exam().gives(30596.67, A_YEAR, 2),
                    WorkedExample.from(Source.derived("Iowa State University A3-29: paid 130,000, 34,500 left after 15"
                                    + " yr: 95,500 in all"))
                            .with(PURCHASE_PRICE, 130000)
                            .with(TRADE_IN_VALUE, 34500)
                            .with(LIFE, 15)
                            .gives(95500 / 15.0, A_YEAR, 6)));

    /** {@code interest}: mean of purchase price and trade-in value × interest rate. */
    public static final Formula INTEREST_OF_YEAR = new Formula(
            "interest",
            INTEREST_COST,
            value(PURCHASE_PRICE)
                    .plus(TRADE_IN_VALUE)
                    .over(number(2))
                    .times(INTEREST)
                    .over(ONE_YEAR),
            Source.commonPractice("on the average of what was paid and what is left"),
            "one basis of interest, real or nominal, throughout",
            List.of(WorkedExample.from(EXAM)
                    .with(PURCHASE_PRICE, 685000)
                    .with(TRADE_IN_VALUE, 685000 * 0.33)
                    .with(INTEREST, 3)
                    .gives(13665.75, A_YEAR, 2)));

    /** {@code insurance-and-housing}: purchase price × rate. */
    public static final Formula INSURANCE_OF_YEAR = new Formula(
            "insurance-and-housing",
            INSURANCE_COST,
            value(PURCHASE_PRICE).times(INSURANCE).over(ONE_YEAR),
            Source.memory("Iowa State University AgDM A3-29: 1 % of the purchase price in its example"),
            "the share of the purchase price typed on Assumptions",
            List.of(WorkedExample.from(Source.memory("Iowa State University A3-29: 1 % of 130,000 is 1,300"))
                    .with(PURCHASE_PRICE, 130000)
                    .with(INSURANCE, 1)
                    .gives(1300, A_YEAR, 0)));

    /** {@code ownership-cost}: depreciation + interest + insurance and housing. */
    public static final Formula OWNERSHIP_OF_YEAR = new Formula(
            "ownership-cost",
            OWNERSHIP,
            value(DEPRECIATION).plus(INTEREST_COST).plus(INSURANCE_COST),
            STRAIGHT_LINE,
            "whether it works or not",
            List.of(WorkedExample.from(EXAM)
                    .with(DEPRECIATION, 685000 * 0.67 / 15)
                    .with(INTEREST_COST, 13665.75)
                    .with(INSURANCE_COST, 6850)
                    .gives(51112.42, A_YEAR, 2)));

    /** {@code ownership-cost-per-hour}: over the hours worked in a year. */
    public static final Formula OWNERSHIP_OF_HOUR = new Formula(
            "ownership-cost-per-hour",
            OWNERSHIP_HOUR,
            value(OWNERSHIP).times(ONE_YEAR).over(HOURS_PER_YEAR),
            Source.derived("cost of a year over hours of a year"),
            "all the machine's hours in a year, not those of one job",
            List.of(WorkedExample.from(EXAM)
                    .with(OWNERSHIP, 51112.42)
                    .with(HOURS_PER_YEAR, 450)
                    .gives(113.58, AN_HOUR, 2)));

    private static final Expr GROWTH = Expr.call(
            Function.EXP,
            new Expr.NumberOf(value(LIFE), Units.YR)
                    .times(Expr.call(Function.LN, number(1).plus(INTEREST))));

    /** Capital recovery factor: i(1+i)^n ÷ ((1+i)^n − 1); without interest 1 ÷ n. */
    public static final Formula FACTOR = new Formula(
            "capital-recovery-factor",
            RECOVERY_FACTOR,
            choice(
                    Condition.compare(value(INTEREST), Relation.EQUAL, number(0)),
                    number(1).over(new Expr.NumberOf(value(LIFE), Units.YR)),
                    value(INTEREST).times(GROWTH).over(GROWTH.minus(number(1)))),
            TEXTBOOK,
            "payments at each year's end",
            List.of(
                    WorkedExample.from(TEXTBOOK)
                            .with(LIFE, 4)
                            .with(INTEREST, 10)
                            .gives(0.3155, Units.ONE, 4),
                    WorkedExample.from(Source.derived("without interest a quarter each of four years"))
                            .with(LIFE, 4)
                            .with(INTEREST, 0)
                            .gives(0.25, Units.ONE, 6),
                    WorkedExample.from(Source.memory("Iowa State University A3-29: 8 %, 15 yr, .117"))
                            .with(LIFE, 15)
                            .with(INTEREST, 8)
                            .gives(0.117, Units.ONE, 3)));

    /** {@code capital-recovery}: (purchase − trade-in) × factor + trade-in × interest rate. */
    public static final Formula CAPITAL_RECOVERY = new Formula(
            "capital-recovery",
            RECOVERY,
            value(PURCHASE_PRICE)
                    .minus(TRADE_IN_VALUE)
                    .times(RECOVERY_FACTOR)
                    .plus(value(TRADE_IN_VALUE).times(INTEREST))
                    .over(ONE_YEAR)
                    .onlyWhen(WORTH_LESS, WORTH_MORE),
            TEXTBOOK,
            "the alternative to depreciation and interest; never add it to them",
            List.of(
                    // The print rounds the factor to .3155; in full it is 2,939.24.
                    WorkedExample.from(TEXTBOOK)
                            .with(PURCHASE_PRICE, 10000)
                            .with(TRADE_IN_VALUE, 1000)
                            .with(RECOVERY_FACTOR, 0.3155)
                            .with(INTEREST, 10)
                            .gives(2939.5, A_YEAR, 1),
                    WorkedExample.from(Source.memory(
                                    "Iowa State University A3-29 with the factor rounded to .117:" + " 13,934"))
                            .with(PURCHASE_PRICE, 130000)
                            .with(TRADE_IN_VALUE, 34500)
                            .with(RECOVERY_FACTOR, 0.117)
                            .with(INTEREST, 8)
                            .givesWithin(13934, A_YEAR, 0.51)));

    private static WorkedExample.Draft exam() {
        return WorkedExample.from(EXAM)
                .with(PURCHASE_PRICE, 685000)
                .with(TRADE_IN_VALUE, 685000 * 0.33)
                .with(LIFE, 15);
    }

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(
                STRAIGHT,
                INTEREST_OF_YEAR,
                INSURANCE_OF_YEAR,
                OWNERSHIP_OF_YEAR,
                OWNERSHIP_OF_HOUR,
                FACTOR,
                CAPITAL_RECOVERY);
    }
}
