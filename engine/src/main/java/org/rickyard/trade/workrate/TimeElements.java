package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.FIELD_EFFICIENCY;
import static org.rickyard.trade.Quantities.OTHER_LOST_TIME;
import static org.rickyard.trade.Quantities.OVERLAP;
import static org.rickyard.trade.Quantities.OVERLAP_SHARE;
import static org.rickyard.trade.Quantities.RUN_LENGTH;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.TURN_TIME;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;

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
import org.rickyard.quantity.Units;

/**
 * Where the time goes in a field: runs, turns, and what else is lost. A row is reckoned by these elements or by a field
 * efficiency, never by both, for an efficiency holds turning, overlap and filling already.
 */
public final class TimeElements {
    private TimeElements() {}

    /** How a rate was reckoned. */
    public static final Symbol RATE_BY = Symbol.text("reckoned by");
    /** Reckoned by turns and other lost time. */
    public static final String BY_ELEMENTS = "time elements";
    /** Width worked twice, as reckoned with. */
    public static final Symbol OVERLAP_USED =
            Symbol.number("overlap allowed", Units.M).possible(Range.of(0, 10)).decimals(2);
    /** New ground covered in one pass. */
    public static final Symbol WIDTH_COVERED =
            Symbol.number("width covered", Units.M).possible(Range.POSITIVE).decimals(2);
    /** Time lost per hectare other than in turns, as reckoned with. */
    public static final Symbol LOST_TIME = Symbol.number("lost time allowed", Units.H.over(Units.HA))
            .possible(Range.NOT_NEGATIVE)
            .decimals(3);
    /** Share of the time of runs and turns that goes in turning. */
    public static final Symbol TURN_SHARE = Symbol.number("turn share", Units.PERCENT)
            .possible(Range.below(0, 100))
            .decimals(0);
    /** Passes across the field. */
    public static final Symbol PASSES =
            Symbol.number("passes", Units.ONE).possible(Range.POSITIVE).decimals(0);

    /** The row has what the time elements need, and no efficiency that would hold them already. */
    public static final Condition BY_TIME_ELEMENTS = Condition.all(
            List.of(new Condition.Blank(FIELD_EFFICIENCY), Condition.typed(TURN_TIME), Condition.typed(RUN_LENGTH)));

    private static final Source HUNT = Source.secondHand(
            "Hunt, Farm Power and Machinery Management, eq. 1.3, combine on 400 m rows, solution sheet");
    private static final Source NIAB = Source.published("NIAB, Field size and biodiversity, 3 September 2012:"
            + " 8 ha/h without turning, 4 at half the time turning, then 6 and 7 as the turning halves");
    private static final Source PRACTICE = Source.commonPractice("none unless typed");

    /** Overlap where none is typed. */
    public static final Constant NO_OVERLAP =
            new Constant("Overlap if none is typed", 0, Units.M, PRACTICE).possible(OVERLAP.possible());
    /** Other lost time where none is typed. */
    public static final Constant NO_LOST_TIME = new Constant(
                    "Other lost time if none is typed", 0, Units.H.over(Units.HA), PRACTICE)
            .possible(OTHER_LOST_TIME.possible());

    /** Says which way the row is reckoned. */
    public static final Formula RECKONED_BY = new Formula(
            "rate-reckoned-by",
            RATE_BY,
            choice(
                    BY_TIME_ELEMENTS,
                    Expr.text(BY_ELEMENTS),
                    choice(
                            new Condition.Blank(FIELD_EFFICIENCY),
                            Expr.text("typical efficiency"),
                            choice(
                                    new Condition.Given(FIELD_EFFICIENCY),
                                    Expr.text("typed efficiency"),
                                    Expr.text("")))),
            Source.commonPractice("an efficiency holds turning, overlap and filling; it is never mixed with them"),
            "time elements need turn time and run length, and no typed efficiency",
            List.of(
                    WorkedExample.from(Source.commonPractice("turn time and run length without efficiency"))
                            .with(TURN_TIME, 15)
                            .with(RUN_LENGTH, 400)
                            .gives("time elements"),
                    WorkedExample.from(Source.commonPractice("an efficiency goes before them"))
                            .with(FIELD_EFFICIENCY, 80)
                            .with(TURN_TIME, 15)
                            .with(RUN_LENGTH, 400)
                            .gives("typed efficiency"),
                    WorkedExample.from(Source.commonPractice("nothing typed")).gives("typical efficiency")));

    /** Overlap reckoned with. */
    public static final Formula OVERLAP_ALLOWED = new Formula(
            "overlap-allowed",
            OVERLAP_USED,
            choice(
                    new Condition.Given(RUN_LENGTH),
                    given(
                            OVERLAP,
                            choice(
                                    Condition.typed(OVERLAP_SHARE),
                                    value(WORKING_WIDTH).times(OVERLAP_SHARE),
                                    constant(NO_OVERLAP))),
                    constant(NO_OVERLAP)
                            .onlyWhen(new Condition.Given(RUN_LENGTH), "the run length of the field is missing")),
            PRACTICE,
            "taken off the width only with time elements",
            List.of(
                    WorkedExample.from(Source.commonPractice("what is typed stands"))
                            .with(RUN_LENGTH, 400)
                            .with(OVERLAP, 0.25)
                            .gives(0.25, Units.M, 6),
                    WorkedExample.from(Source.derived("Hunt, eq. 1.3: 95 % of 5 m used, so 5 % of it twice"))
                            .with(RUN_LENGTH, 400)
                            .with(OVERLAP_SHARE, 5)
                            .with(WORKING_WIDTH, 5)
                            .gives(0.25, Units.M, 6),
                    WorkedExample.from(Source.commonPractice("none unless typed"))
                            .with(RUN_LENGTH, 400)
                            .with(WORKING_WIDTH, 5)
                            .gives(0, Units.M, 6)));

    /** {@code width-covered}: working width − overlap. */
    public static final Formula COVERED = new Formula(
            "width-covered",
            WIDTH_COVERED,
            value(WORKING_WIDTH)
                    .minus(OVERLAP_USED)
                    .onlyWhen(
                            Condition.compare(value(OVERLAP_USED), Condition.Relation.LESS, value(WORKING_WIDTH)),
                            "the overlap is as wide as the machine"),
            Source.derived("what is worked twice is no new ground"),
            "bout width for spreaders, nozzle spacing × nozzles for sprayers, raked width for a forager",
            List.of(WorkedExample.from(Source.derived("Hunt, eq. 1.3: 95 % of 5 m used"))
                    .with(WORKING_WIDTH, 5)
                    .with(OVERLAP_USED, 0.25)
                    .gives(4.75, Units.M, 6)));

    /** Other lost time reckoned with. */
    public static final Formula LOST_TIME_ALLOWED = new Formula(
            "lost-time-allowed",
            LOST_TIME,
            choice(
                    Condition.is(RATE_BY, BY_ELEMENTS),
                    given(OTHER_LOST_TIME, constant(NO_LOST_TIME)),
                    constant(NO_LOST_TIME)
                            .onlyWhen(Condition.is(RATE_BY, BY_ELEMENTS), "an efficiency stands in its place")),
            PRACTICE,
            "filling, emptying, adjusting and clearing, per hectare",
            List.of(WorkedExample.from(Source.commonPractice("what is typed stands"))
                    .with(RATE_BY, BY_ELEMENTS)
                    .with(OTHER_LOST_TIME, 0.1)
                    .gives(0.1, Units.H.over(Units.HA), 6)));

    /** {@code turn-share}: turn time ÷ (turn time + run length ÷ speed). */
    public static final Formula SHARE_OF_TURNS = new Formula(
            "turn-share",
            TURN_SHARE,
            value(TURN_TIME).over(value(TURN_TIME).plus(value(RUN_LENGTH).over(SPEED))),
            Source.derived("from Hunt, eq. 1.3, with nothing lost but turns"),
            "one turn for each run; headland passes and point rows left aside",
            List.of(
                    niabShare(180, 50),
                    niabShare(60, 25),
                    niabShare(180.0 / 7, 12.5),
                    turns(200, 10, 20, 100 - 78.261)));

    /** {@code passes}: field width ÷ width covered, rounded up. */
    public static final Formula PASSES_OF_FIELD = new Formula(
            "passes",
            PASSES,
            Expr.call(
                    Function.ROUND_UP,
                    value(AREA).over(RUN_LENGTH).over(WIDTH_COVERED).in(Units.ONE)),
            Source.derived("a part of a width still takes a whole pass"),
            "a field as wide as its area over its run length",
            List.of(WorkedExample.from(Source.derived("4 ha on 400 m runs is 100 m wide: 34 passes of 3 m"))
                    .with(AREA, 4)
                    .with(RUN_LENGTH, 400)
                    .with(WIDTH_COVERED, 3)
                    .gives(34, Units.ONE, 0)));

    /** Time for a hectare: covering it, what else is lost, and turning. */
    static final Expr TIME_ELEMENT_RATE = number(1)
            .over(number(1)
                    .over(value(SPEED).times(WIDTH_COVERED))
                    .plus(LOST_TIME)
                    .plus(value(TURN_TIME).over(value(RUN_LENGTH).times(WIDTH_COVERED))));

    /** Published examples of the time-element rate. */
    static List<WorkedExample> examples() {
        return List.of(
                hunt(4.8, 1.90, 2),
                hunt(4.8, 1.9, 1),
                hunt(5.76, 2.2, 1),
                niab(180, 4),
                niab(60, 6),
                niab(180.0 / 7, 7));
    }

    private static WorkedExample hunt(double speed, double rate, int decimals) {
        return WorkedExample.from(HUNT)
                .with(SPEED, speed)
                .with(WORKING_WIDTH, 5)
                .with(WIDTH_COVERED, 4.75)
                .with(RUN_LENGTH, 400)
                .with(TURN_TIME, 15)
                .with(LOST_TIME, 4.0 / 60)
                .gives(rate, Units.HA_PER_H, decimals);
    }

    /** 10 m at 8 km/h is 8 ha/h; a run of 400 m takes 180 s. */
    private static WorkedExample niab(double turnSeconds, double rate) {
        return WorkedExample.from(NIAB)
                .with(SPEED, 8)
                .with(WORKING_WIDTH, 10)
                .with(WIDTH_COVERED, 10)
                .with(RUN_LENGTH, 400)
                .with(TURN_TIME, turnSeconds)
                .with(LOST_TIME, 0)
                .gives(rate, Units.HA_PER_H, 6);
    }

    private static WorkedExample niabShare(double turnSeconds, double percent) {
        return WorkedExample.from(NIAB)
                .with(RUN_LENGTH, 400)
                .with(SPEED, 8)
                .with(TURN_TIME, turnSeconds)
                .gives(percent, Units.PERCENT, 6);
    }

    private static WorkedExample turns(double run, double speed, double turn, double percent) {
        return WorkedExample.from(Source.derived("turns only: run ÷ (run + speed × turn time)"))
                .with(RUN_LENGTH, run)
                .with(SPEED, speed)
                .with(TURN_TIME, turn)
                .gives(percent, Units.PERCENT, 3);
    }
}
