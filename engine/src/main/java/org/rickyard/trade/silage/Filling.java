package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.DELIVERY;
import static org.rickyard.trade.Quantities.HOURS_PER_DAY;
import static org.rickyard.trade.silage.ClampContents.CLAMP_DM;
import static org.rickyard.trade.silage.ClampContents.CROP_IN;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Expr.Lookup.Mode;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** How long a clamp is filled and lies open, how short to chop, and what pH to look for. */
public final class Filling {
    private Filling() {}

    /** Fields that a gang of the job list brings to the clamp. */
    public static final Symbol GANG_FIELDS = Symbol.number("fields brought by gangs", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Fresh crop of those fields. */
    public static final Symbol GANG_CROP =
            Symbol.number("crop brought by gangs (fresh)", Units.T).decimals(0);
    /** Hours the gangs are at it. */
    public static final Symbol GANG_HOURS =
            Symbol.number("hours of those gangs", Units.H).decimals(1);
    /** Hours the gangs would be at it if nobody waited for the rollers. */
    public static final Symbol GANG_HOURS_UNHELD = Symbol.number(
                    "hours of those gangs if rolling held nothing up", Units.H)
            .decimals(1);
    /** Crop that arrives in an hour if nobody waits for the rollers. */
    public static final Symbol DELIVERY_UNHELD = Symbol.number("delivery if rolling held nothing up", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Days of the gangs that fill a clamp. */
    public static final Symbol GANG_DAYS =
            Symbol.number("days of those gangs", Units.D).decimals(1);
    /** Hours filled in a day. */
    public static final Symbol HOURS_A_DAY_USED = Symbol.number("hours of filling in a day, reckoned", Units.H)
            .possible(Range.above(0, 24))
            .decimals(1);
    /** Crop that arrives in an hour. */
    public static final Symbol DELIVERY_USED = Symbol.number("delivery reckoned with", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Hours of delivery. */
    public static final Symbol HOURS =
            Symbol.number("hours to fill", Units.H).possible(Range.NOT_NEGATIVE).decimals(1);
    /** Days it lies open. */
    public static final Symbol DAYS_OPEN =
            Symbol.number("days open", Units.D).possible(Range.NOT_NEGATIVE).decimals(1);
    /** Chop length. */
    public static final Symbol CHOP = Symbol.text("chop length");
    /** What pH to look for. */
    public static final Symbol PH = Symbol.text("pH to expect");
    /** The pH to stay below. */
    public static final Symbol CRITICAL_PH =
            Symbol.number("pH to stay below", Units.ONE).decimals(2);

    /** Hours of filling in a day. */
    public static final Constant HOURS_A_DAY = new Constant(
                    "hours of filling in a day", 10, Units.H, Source.commonPractice("a long day of one crew"))
            .possible(HOURS_PER_DAY.possible());
    /** Most days open. */
    public static final Constant MOST_DAYS = new Constant(
            "days a clamp may lie open while it is filled",
            3,
            Units.D,
            Source.commonPractice("filled and sealed within three days; farm press calls more than 3-4 days delayed"));

    /** Chop length by dry matter. */
    public static final ReferenceTable CHOPS = new ReferenceTable(
            "Chop length by dry matter",
            "dry matter at least",
            Units.PERCENT_DM,
            "chop length",
            Units.ONE,
            List.of(Row.of(5, "up to 10 cm"), Row.of(20, "2.5-5 cm"), Row.of(30, "1.5-2.5 cm")),
            Source.secondHand("Farmers Weekly: above 30 % 1.5-2.5 cm, 20-30 % 2.5-5 cm, below 20 % up to 10 cm"));

    /** What pH was found. */
    public static final ReferenceTable PHS = new ReferenceTable(
            "pH of grass silage by dry matter",
            "dry matter at least",
            Units.PERCENT_DM,
            "found in farm silages",
            Units.ONE,
            List.of(
                    Row.of(5, "no figure is held below 18 % dry matter"),
                    Row.of(18, "mean 4.38, 48 % well fermented"),
                    Row.of(22, "mean 4.30, 67 % well fermented"),
                    Row.of(26, "mean 4.36, 83 % well fermented")),
            Source.published("Haigh 1987, Grass Forage Sci. 42:1-8, 1,713 farm silages: means, no limits"));

    /** Below which pH clostridia are held down. */
    public static final ReferenceTable CRITICAL = new ReferenceTable(
            "pH that holds down clostridia, grass and maize",
            "dry matter",
            Units.PERCENT_DM,
            "pH",
            Units.ONE,
            List.of(Row.of(25, 4.25), Row.of(35, 4.60)),
            Source.secondHand("R. Muck 2020 as reported by vitaplus.com; lucerne 4.40 and 5.00"));

    /** {@code delivery-reckoned}: typed for the clamp, otherwise what the gangs of the job list bring. */
    public static final Formula DELIVERY_RECKONED = new Formula(
            "delivery-reckoned",
            DELIVERY_USED,
            given(
                    DELIVERY,
                    choice(
                            Condition.compare(value(GANG_FIELDS), Relation.MORE, number(0)),
                            value(GANG_CROP).over(GANG_HOURS),
                            value(DELIVERY))),
            Source.derived("typed; otherwise crop over hours of the gangs whose fields name this clamp (sheet Gangs)"),
            "fresh crop; a gang is as fast as its slowest stage, moving between fields comes on top",
            List.of(
                    WorkedExample.from(Source.derived("what is typed for the clamp stands before the gangs"))
                            .with(DELIVERY, 50)
                            .with(GANG_FIELDS, 1)
                            .with(GANG_CROP, 140)
                            .with(GANG_HOURS, 4)
                            .gives(50, Units.T_PER_H, 0),
                    WorkedExample.from(Source.derived(
                                    "140 t in 4 h and 60 t in 1 h: 200 t in 5 h, not the mean of 35 and 60"))
                            .with(GANG_FIELDS, 2)
                            .with(GANG_CROP, 200)
                            .with(GANG_HOURS, 5)
                            .gives(40, Units.T_PER_H, 6)));

    /** {@code delivery-unheld}: what the gangs would bring if they did not wait for the rollers. */
    public static final Formula DELIVERY_IF_UNHELD = new Formula(
            "delivery-unheld",
            DELIVERY_UNHELD,
            given(
                    DELIVERY,
                    choice(
                            Condition.compare(value(GANG_FIELDS), Relation.MORE, number(0)),
                            value(GANG_CROP).over(GANG_HOURS_UNHELD),
                            value(DELIVERY))),
            Source.derived("typed; otherwise crop over the hours in which forager, trailers and loader could bring it"),
            "fresh crop; the gangs' own hours wait for the rollers, which on the day nobody may do",
            List.of(
                    WorkedExample.from(Source.derived("what is typed for the clamp stands before the gangs"))
                            .with(DELIVERY, 50)
                            .with(GANG_FIELDS, 1)
                            .with(GANG_CROP, 140)
                            .with(GANG_HOURS_UNHELD, 3.5)
                            .gives(50, Units.T_PER_H, 0),
                    WorkedExample.from(Source.derived("140 t that could come in 3.5 h"))
                            .with(GANG_FIELDS, 1)
                            .with(GANG_CROP, 140)
                            .with(GANG_HOURS_UNHELD, 3.5)
                            .gives(40, Units.T_PER_H, 6)));

    /** {@code filling-hours}: crop ÷ delivery. */
    public static final Formula FILLING_HOURS = new Formula(
            "filling-hours",
            HOURS,
            ClampContents.withCrop(value(CROP_IN).over(DELIVERY_USED)),
            Source.derived("fresh crop over fresh delivery"),
            "only where crop is listed for the clamp; without stops; the slowest of forager, trailers and "
                    + "rollers sets the delivery",
            List.of(WorkedExample.from(Source.derived("612 t at 51 t/h"))
                    .with(CROP_IN, 612)
                    .with(DELIVERY_USED, 51)
                    .gives(12, Units.H, 3)));

    /** {@code filling-hours-a-day}: those of the gangs; without gangs the roller's, otherwise the constant. */
    public static final Formula FILLING_HOURS_A_DAY = new Formula(
            "filling-hours-a-day",
            HOURS_A_DAY_USED,
            choice(
                    Condition.compare(value(GANG_FIELDS), Relation.MORE, number(0)),
                    value(GANG_HOURS).over(new Expr.NumberOf(value(GANG_DAYS), Units.D)),
                    given(HOURS_PER_DAY, constant(HOURS_A_DAY))),
            HOURS_A_DAY.source(),
            "hours of the gangs over their days; without a gang those of the machine that rolls, otherwise a long day",
            List.of(
                    WorkedExample.from(Source.derived("12 h in days of 8 h and 10 h in days of 10 h: 22 h in 2.5 days"))
                            .with(GANG_FIELDS, 2)
                            .with(GANG_HOURS, 22)
                            .with(GANG_DAYS, 2.5)
                            .gives(8.8, Units.H, 6),
                    WorkedExample.from(Source.derived("no gang, a roller that goes 9 h a day"))
                            .with(GANG_FIELDS, 0)
                            .with(HOURS_PER_DAY, 9)
                            .gives(9, Units.H, 6),
                    WorkedExample.from(HOURS_A_DAY.source())
                            .with(GANG_FIELDS, 0)
                            .gives(10, Units.H, 0)));

    /** {@code days-open}: hours ÷ hours a day. */
    public static final Formula DAYS_LIES_OPEN = new Formula(
            "days-open",
            DAYS_OPEN,
            new Expr.AsUnit(value(HOURS).over(HOURS_A_DAY_USED), Units.D),
            MOST_DAYS.source(),
            "days without rain; more than three are cautioned",
            List.of(WorkedExample.from(
                            Source.secondHand("a published trial filled in 26 h: 2.6 days of 10 h (derived)"))
                    .with(HOURS, 26)
                    .with(HOURS_A_DAY_USED, 10)
                    .gives(2.6, Units.D, 1)));

    /** {@code chop-length}. */
    public static final Formula CHOP_LENGTH = new Formula(
            "chop-length",
            CHOP,
            new Expr.Lookup(CHOPS, value(CLAMP_DM), Mode.STEP),
            CHOPS.source(),
            "grass; at just 20 or 30 %, where the print leaves it open, the shorter chop stands",
            List.of(
                    WorkedExample.from(CHOPS.source()).with(CLAMP_DM, 18).gives("up to 10 cm"),
                    WorkedExample.from(CHOPS.source()).with(CLAMP_DM, 25).gives("2.5-5 cm"),
                    WorkedExample.from(CHOPS.source()).with(CLAMP_DM, 32).gives("1.5-2.5 cm")));

    /** {@code ph-expected}. */
    public static final Formula PH_EXPECTED = new Formula(
            "ph-expected",
            PH,
            new Expr.Lookup(PHS, value(CLAMP_DM), Mode.STEP),
            PHS.source(),
            "grass; means of many farms, no limits; at just 22 or 26 % the drier class stands",
            List.of(
                    WorkedExample.from(PHS.source()).with(CLAMP_DM, 20).gives("mean 4.38, 48 % well fermented"),
                    WorkedExample.from(PHS.source()).with(CLAMP_DM, 24).gives("mean 4.30, 67 % well fermented"),
                    WorkedExample.from(PHS.source()).with(CLAMP_DM, 28).gives("mean 4.36, 83 % well fermented")));

    /** {@code critical-ph}: between 25 and 35 % only. */
    public static final Formula PH_TO_STAY_BELOW = new Formula(
            "critical-ph",
            CRITICAL_PH,
            new Expr.Lookup(CRITICAL, value(CLAMP_DM), Mode.LINEAR),
            CRITICAL.source(),
            "grass and maize, 25-35 % dry matter; the straight line between the two points is this engine's choice",
            List.of(
                    WorkedExample.from(CRITICAL.source()).with(CLAMP_DM, 25).gives(4.25, Units.ONE, 2),
                    WorkedExample.from(CRITICAL.source()).with(CLAMP_DM, 35).gives(4.60, Units.ONE, 2)));
}
