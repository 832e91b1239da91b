package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.DAYS;
import static org.rickyard.trade.Quantities.FEED_END;
import static org.rickyard.trade.Quantities.FEED_START;
import static org.rickyard.trade.Quantities.HEAD;
import static org.rickyard.trade.Quantities.INTAKE;
import static org.rickyard.trade.Quantities.INTAKE_DM;
import static org.rickyard.trade.Quantities.INTAKE_FRESH;

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

/** What the stock eats: days, one head, a group, in dry matter and fresh. */
public final class FeedDemand {
    private FeedDemand() {}

    static final Unit KG_DM_PER_D = Units.KG_DM.over(Units.D);

    private static final Unit LB_DM_PER_D =
            Unit.of("lb DM", Units.KG_DM.dimension(), Units.LB.factor()).over(Units.D);

    /** Days a group is fed. */
    public static final Symbol DAYS_FED =
            Symbol.number("days fed", Units.D).possible(Range.POSITIVE).decimals(0);
    /** Dry matter one animal eats in a day. */
    public static final Symbol HEAD_DAILY = Symbol.number("intake of one head (dry matter)", KG_DM_PER_D)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Dry matter a group eats in a day. */
    public static final Symbol GROUP_DAILY = Symbol.number("daily demand (dry matter)", KG_DM_PER_D)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Dry matter a group eats in its period. */
    public static final Symbol GROUP_DEMAND = Symbol.number("feed demand (dry matter)", Units.T_DM)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** The same fresh, where the feed's dry matter is typed. */
    public static final Symbol GROUP_FRESH = Symbol.number("feed demand (fresh)", Units.T)
            .possible(Range.POSITIVE)
            .decimals(0);

    static final Source TEAGASC = Source.published(
            "Teagasc: 100 cows, 140 days, 12 kg: 168 t DM, 763 t at 22 %; 25 weanlings, 120 days, 5 kg: 15 t, 68 t");

    private static final Source TEAGASC_MONTHS = Source.secondHand(
            "Teagasc as reported: 5 months fresh, 100 cows at 1.6 t 800 t, 22 heifers at 1.3 t 143 t, 25 weanlings at"
                    + " 0.7 t 87.5 t (the total printed, 1,818 t, is a slip)");

    private static final Source FARMERS_JOURNAL =
            Source.secondHand("Farmers Journal: 30 cows, 14 days, 50 kg fresh: 21 t");

    private static final Source MWPS = Source.published("MWPS, dairy handbook NPS-7, 6th ed. 1997, in Minnesota Dairy"
            + " Initiatives Factsheet 1: fresh for one of dry matter, 100 ÷ (100 − moisture)");

    private static final Source RULE_BOOK =
            Source.published("Farm and Garden Rule Book, table of Rawl & Conover: 40 lb a"
                    + " cow and day, 180 days, short tons of one feed, here as dry matter");

    private static final Source HANCOCK =
            Source.published("D. Hancock, Progressive Forage: 100 cows of 1,300 lb at 2.5 %"
                    + " eat 3,250 lb of dry matter a day; 180 short tons at 10 % moisture in 100 days");

    private static final Source FARMERS_JOURNAL_MONTHS =
            Source.published("Farmers Journal: 30 cows at 1.5 t a month for 4 months, 180 t");

    private static final Unit MONTH_OF_A_YEAR = Units.T.over(
            Unit.of("month", Units.D.dimension(), Units.YR.factor().over(org.rickyard.quantity.Ratio.of(12))));

    /** Days: typed, otherwise from first to last day, both counted. */
    public static final Formula DAYS_OF_GROUP = new Formula(
            "days-fed",
            DAYS_FED,
            given(
                    DAYS,
                    new Expr.AsUnit(value(FEED_END).minus(FEED_START).plus(number(1)), Units.D)
                            .onlyWhen(
                                    Condition.compare(value(FEED_END), Relation.AT_LEAST, value(FEED_START)),
                                    "the last day fed is before the first")),
            Source.commonPractice("first and last day both fed"),
            "days at full feed; nights-only housing counts half a day (Teagasc)",
            List.of(WorkedExample.from(Source.derived("1 November to 31 March is 151 days"))
                    .with(FEED_START, 45962)
                    .with(FEED_END, 46112)
                    .gives(151, Units.D, 0)));

    /** Intake of one head: dry matter as typed, otherwise fresh × dry matter. */
    public static final Formula HEAD_INTAKE = new Formula(
            "intake-dry-matter",
            HEAD_DAILY,
            given(INTAKE, value(INTAKE_FRESH).times(INTAKE_DM)),
            Source.derived("typed dry; otherwise fresh intake × dry matter of the feed"),
            "forage only",
            List.of(
                    WorkedExample.from(Source.secondHand("H. Richards, Western Telegraph: 48 kg at 25 % is 12 kg DM"))
                            .with(INTAKE_FRESH, 48)
                            .with(INTAKE_DM, 25)
                            .gives(12, KG_DM_PER_D, 1),
                    WorkedExample.from(Source.secondHand("the same: 30 kg at 40 % is 12 kg DM"))
                            .with(INTAKE_FRESH, 30)
                            .with(INTAKE_DM, 40)
                            .gives(12, KG_DM_PER_D, 1)));

    /** {@code daily-demand}: head × intake. */
    public static final Formula DAILY_DEMAND = new Formula(
            "daily-demand",
            GROUP_DAILY,
            value(HEAD).times(HEAD_DAILY),
            TEAGASC,
            "all animals of the group",
            List.of(
                    WorkedExample.from(Source.derived("100 cows at 12 kg"))
                            .with(HEAD, 100)
                            .with(HEAD_DAILY, 12)
                            .gives(1200, KG_DM_PER_D, 0),
                    WorkedExample.from(HANCOCK)
                            .with(HEAD, 100)
                            .with(HEAD_DAILY, 1300 * 0.025 * 0.45359237)
                            .gives(3250, LB_DM_PER_D, 0)));

    /** {@code feed-demand}: head × intake × days. */
    public static final Formula FEED_DEMAND = new Formula(
            "feed-demand",
            GROUP_DEMAND,
            value(GROUP_DAILY).times(DAYS_FED),
            TEAGASC,
            "what is eaten; losses are taken off the crop, not added here",
            List.of(
                    WorkedExample.from(TEAGASC)
                            .with(GROUP_DAILY, 1200)
                            .with(DAYS_FED, 140)
                            .gives(168, Units.T_DM, 0),
                    WorkedExample.from(TEAGASC)
                            .with(GROUP_DAILY, 125)
                            .with(DAYS_FED, 120)
                            .gives(15, Units.T_DM, 0),
                    WorkedExample.from(Source.published("Teagasc: a dry cow at 11 kg for 70 days, 0.77 t"))
                            .with(GROUP_DAILY, 11)
                            .with(DAYS_FED, 70)
                            .gives(0.77, Units.T_DM, 2),
                    ruleBook(20, 72),
                    ruleBook(25, 90),
                    ruleBook(30, 108),
                    ruleBook(35, 126),
                    ruleBook(40, 144),
                    ruleBook(45, 162)));

    /** {@code feed-demand-fresh}: head × fresh intake × days; from an intake of dry matter, demand ÷ dry matter. */
    public static final Formula FEED_DEMAND_FRESH = new Formula(
            "feed-demand-fresh",
            GROUP_FRESH,
            choice(
                    new Condition.Given(INTAKE_FRESH),
                    value(HEAD).times(INTAKE_FRESH).times(DAYS_FED),
                    value(GROUP_DEMAND).over(INTAKE_DM)),
            TEAGASC,
            "an intake of dry matter needs the dry matter of the feed; the print cuts the decimals off instead of"
                    + " rounding",
            List.of(
                    fresh(TEAGASC_MONTHS, 100, 1.6, 5, 800, 0),
                    fresh(TEAGASC_MONTHS, 22, 1.3, 5, 143, 0),
                    fresh(TEAGASC_MONTHS, 25, 0.7, 5, 87.5, 1),
                    fresh(FARMERS_JOURNAL_MONTHS, 30, 1.5, 4, 180, 0),
                    WorkedExample.from(FARMERS_JOURNAL)
                            .with(HEAD, 30)
                            .with(INTAKE_FRESH, 50)
                            .with(DAYS_FED, 14)
                            .gives(21, Units.T, 0),
                    WorkedExample.from(TEAGASC)
                            .with(GROUP_DEMAND, 168)
                            .with(INTAKE_DM, 22)
                            .with(HEAD, 100)
                            .with(DAYS_FED, 140)
                            .givesWithin(763, Units.T, 0.7),
                    WorkedExample.from(TEAGASC)
                            .with(GROUP_DEMAND, 15)
                            .with(INTAKE_DM, 22)
                            .gives(68, Units.T, 0),
                    WorkedExample.from(FARMERS_JOURNAL)
                            .with(GROUP_DEMAND, 30 * 14 * 50 * 0.20 / 1000)
                            .with(INTAKE_DM, 20)
                            .gives(21, Units.T, 0),
                    WorkedExample.from(TEAGASC_MONTHS)
                            .with(
                                    GROUP_DEMAND,
                                    100 * MONTH_OF_A_YEAR.convert(1.6, Units.T.over(Units.D)) * 5 * 365.25 / 12 * 0.22)
                            .with(INTAKE_DM, 22)
                            .gives(800, Units.T, 0),
                    months(TEAGASC_MONTHS, 22, 1.3, 5, 143, 0),
                    months(TEAGASC_MONTHS, 25, 0.7, 5, 87.5, 1),
                    months(FARMERS_JOURNAL_MONTHS, 30, 1.5, 4, 180, 0),
                    WorkedExample.from(HANCOCK)
                            .with(GROUP_DEMAND, 3250 * 100 * 0.45359237 / 1000)
                            .with(INTAKE_DM, 90)
                            .givesWithin(180, Units.SHORT_TON, 0.9),
                    freshOf(30, 1.43),
                    freshOf(40, 1.67),
                    freshOf(50, 2.00),
                    freshOf(55, 2.22),
                    freshOf(60, 2.50),
                    freshOf(65, 2.86),
                    freshOf(70, 3.33),
                    freshOf(75, 4.00),
                    freshOf(80, 5.00)));

    private static WorkedExample ruleBook(double cows, double tons) {
        return WorkedExample.from(RULE_BOOK)
                .with(GROUP_DAILY, cows * 40 * 0.45359237)
                .with(DAYS_FED, 180)
                .gives(tons, Unit.of("short ton DM", Units.KG_DM.dimension(), Units.SHORT_TON.factor()), 0);
    }

    private static WorkedExample fresh(
            Source source, double head, double tonnes, double months, double fresh, int decimals) {
        return WorkedExample.from(source)
                .with(HEAD, head)
                .with(INTAKE_FRESH, MONTH_OF_A_YEAR.convert(tonnes, INTAKE_FRESH.unit()))
                .with(DAYS_FED, months * 365.25 / 12)
                .gives(fresh, Units.T, decimals);
    }

    /** The print is all fresh, so the dry matter assumed cancels out. */
    private static WorkedExample months(
            Source source, double head, double tonnes, double months, double fresh, int decimals) {
        return WorkedExample.from(source)
                .with(GROUP_DEMAND, head * tonnes * months * 0.22)
                .with(INTAKE_DM, 22)
                .gives(fresh, Units.T, decimals);
    }

    private static WorkedExample freshOf(double moisture, double fresh) {
        return WorkedExample.from(MWPS)
                .with(GROUP_DEMAND, 1)
                .with(INTAKE_DM, 100 - moisture)
                .gives(fresh, Units.T, 2);
    }
}
