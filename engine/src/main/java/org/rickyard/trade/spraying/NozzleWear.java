package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.text;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.NEW_NOZZLE_FLOW;
import static org.rickyard.trade.Quantities.NOZZLE_FLOW;
import static org.rickyard.trade.Quantities.NOZZLE_SIZE;
import static org.rickyard.trade.Quantities.PRESSURE;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.WATER_VOLUME;
import static org.rickyard.trade.spraying.NozzlePressure.SPACING_USED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;

/**
 * A catch test: each nozzle against the mean of its set and against a new one. Both are wanted, because a set that has
 * worn alike hides behind its own mean.
 */
public final class NozzleWear {
    private NozzleWear() {}

    /** Id of the table of nozzles tested. */
    public static final String TEST = "nozzle-test";
    /** The verdict on a worn nozzle. */
    public static final String WORN = "worn: replace";

    /** Flow of the set. */
    public static final Symbol SET_FLOW = Symbol.number("flow of the set", Units.L_PER_MIN)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** Nozzles caught. */
    public static final Symbol SET_COUNT = Symbol.number("nozzles tested", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Mean flow. */
    public static final Symbol MEAN = Symbol.number("mean flow", Units.L_PER_MIN)
            .possible(Range.NOT_NEGATIVE)
            .decimals(3);
    /** Against the mean. */
    public static final Symbol DEVIATION =
            Symbol.number("deviation from the mean", Units.PERCENT).decimals(1);
    /** Flow of a new nozzle. */
    public static final Symbol NEW_USED = Symbol.number("flow of a new nozzle", Units.L_PER_MIN)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Against new. */
    public static final Symbol WEAR =
            Symbol.number("deviation from new", Units.PERCENT).decimals(1);
    /** What to do. */
    public static final Symbol VERDICT = Symbol.text("verdict");
    /** 1 on a worn nozzle. */
    public static final Symbol IS_WORN = Symbol.number("worn", Units.ONE).decimals(0);
    /** How many are worn. */
    public static final Symbol WORN_COUNT = Symbol.number("nozzles worn", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Share worn. */
    public static final Symbol WORN_SHARE = Symbol.number("share worn", Units.PERCENT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** What the set really puts on a hectare. */
    public static final Symbol MEASURED = Symbol.number("measured rate", Units.L_PER_HA)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Against what is wanted. */
    public static final Symbol RATE_ERROR =
            Symbol.number("rate error", Units.PERCENT).decimals(1);

    /** Whether the test was at the pressure a job needs. */
    public static final Symbol AT_PRESSURE = Symbol.text("pressure of the test");

    private static final Source ALBERTA =
            Source.published("Government of Alberta, Agdex 606-1, p. 10-11: each nozzle" + " within 5 % of the mean");
    private static final Source OHIO =
            Source.published("Ohio State University Extension, Wayne County, 7 May 2019: replace above 10 % over new");
    private static final Source USDA = Source.secondHand(
            "USDA and US EPA advice, reported by E. Ozkan, Ohio State University Extension: rate within 5 %");
    private static final Source CATCH = Source.derived("arithmetic of a catch test");

    /** Mind a nozzle beyond this. */
    public static final Constant MIND = new Constant("nozzle off by, mind", 5, Units.PERCENT, ALBERTA);
    /** Replace a nozzle beyond this. */
    public static final Constant REPLACE = new Constant("nozzle above new by, replace", 10, Units.PERCENT, OHIO);
    /** Mind a rate beyond this. */
    public static final Constant RATE_MIND = new Constant("spray rate off by, mind", 5, Units.PERCENT, USDA);
    /** Stop at a rate beyond this. */
    public static final Constant RATE_STOP = new Constant(
            "spray rate off by, stop",
            10,
            Units.PERCENT,
            Source.published("Texas winegrape worksheet: refit if required and expected output differ by over 10 %"));
    /** So many worn: change the set. */
    public static final Constant WORN_FOR_SET = new Constant(
            "worn nozzles for which the set is changed",
            2,
            Units.ONE,
            Source.memory("operator training: a second bad nozzle means a new set"));
    /** Share from which the law of France changes the set. */
    public static final Constant FRENCH_SHARE = new Constant(
            "share of bad nozzles for which the set is changed",
            33,
            Units.PERCENT,
            Source.published("France, arrete of 18 December 2008, annexe IV B 9.2.2; at exactly 33 % the set is changed"
                    + " here"));

    /** How far the pressure of the test may lie from the job's; 10 % of pressure is 5 % of flow. */
    public static final Constant SAME_PRESSURE = new Constant(
            "test pressure counts as the job's, within",
            10,
            Units.PERCENT,
            Source.derived("flow goes with the root of pressure: 10 % of pressure is 5 % of flow"));
    /** Said of a test whose rate does not hold for the job. */
    public static final String ANOTHER_PRESSURE = "not the pressure of this job";

    /** All flows of the set. */
    public static final Expr FLOW_OF_SET = new Expr.Total(TEST, NOZZLE_FLOW, Keys.TEST_KEY, Keys.TEST_KEY, true);
    /** How many flows. */
    public static final Expr COUNT_OF_SET = new Expr.Count(TEST, NOZZLE_FLOW, Keys.TEST_KEY, Keys.TEST_KEY, false);
    /** How many are worn. */
    public static final Expr COUNT_WORN = new Expr.Count(TEST, IS_WORN, Keys.TEST_KEY, Keys.TEST_KEY, false);

    /** {@code nozzle-mean}: sum ÷ number. */
    public static final Formula NOZZLE_MEAN = new Formula(
            "nozzle-mean", MEAN, value(SET_FLOW).over(SET_COUNT), CATCH, "all nozzles at one pressure", List.of());

    /** {@code nozzle-deviation}: (flow − mean) ÷ mean. */
    public static final Formula NOZZLE_DEVIATION = new Formula(
            "nozzle-deviation",
            DEVIATION,
            call(Function.ROUND, value(NOZZLE_FLOW).minus(MEAN).over(MEAN), number(9)),
            ALBERTA,
            "evenness along the boom; a set worn alike does not show here",
            List.of(
                    WorkedExample.from(ALBERTA)
                            .with(NOZZLE_FLOW, 0.79)
                            .with(MEAN, 0.75)
                            .givesWithin(5, Units.PERCENT, 0.7),
                    WorkedExample.from(ALBERTA)
                            .with(NOZZLE_FLOW, 0.71)
                            .with(MEAN, 0.75)
                            .givesWithin(-5, Units.PERCENT, 0.7)));

    /** The flow of a new nozzle: typed, or the ISO size's at the typed pressure. */
    public static final Formula NEW_FLOW = new Formula(
            "new-nozzle-flow",
            NEW_USED,
            given(
                    NEW_NOZZLE_FLOW,
                    new Expr.Lookup(NozzlePressure.ISO_SIZES, value(NOZZLE_SIZE), Expr.Lookup.Mode.EXACT)
                            .times(call(
                                    Function.SQRT, value(PRESSURE).over(constant(NozzlePressure.REFERENCE_PRESSURE))))),
            Source.memory("typed; otherwise the nominal flow of the ISO 10625 size × root of (pressure ÷ 3 bar)"),
            "a new nozzle of the same kind at the same pressure is the better measure",
            List.of(
                    WorkedExample.from(Source.published(
                                    "UK PSD, LERAP Equipment Accreditation: reference nozzle F110/1.2/3.0"))
                            .with(NOZZLE_SIZE, 3)
                            .with(PRESSURE, 3)
                            .gives(1.2, Units.L_PER_MIN, 1),
                    WorkedExample.from(Source.derived("four times the pressure gives twice the flow"))
                            .with(NOZZLE_SIZE, 3)
                            .with(PRESSURE, 12)
                            .gives(2.4, Units.L_PER_MIN, 1)));

    /** {@code nozzle-deviation-from-new}: (flow − new) ÷ new. */
    public static final Formula DEVIATION_FROM_NEW = new Formula(
            "nozzle-deviation-from-new",
            WEAR,
            call(Function.ROUND, value(NOZZLE_FLOW).minus(NEW_USED).over(NEW_USED), number(9)),
            OHIO,
            "wear; the gauge must be right and the test pressure the one typed",
            List.of(WorkedExample.from(Source.derived("1.32 L/min where new gives 1.20 is 10 % over"))
                    .with(NOZZLE_FLOW, 1.32)
                    .with(NEW_USED, 1.2)
                    .gives(10, Units.PERCENT, 6)));

    /** {@code nozzle-verdict}: low is blocked, high is worn. */
    public static final Formula NOZZLE_VERDICT = new Formula(
            "nozzle-verdict",
            VERDICT,
            choice(
                    below(DEVIATION, MIND),
                    text("low: clean and test again"),
                    choice(
                            new Condition.Given(WEAR),
                            choice(
                                    above(WEAR, REPLACE),
                                    text(WORN),
                                    choice(
                                            above(WEAR, MIND),
                                            text("wearing: watch"),
                                            choice(
                                                    below(WEAR, MIND),
                                                    text("whole set low: check filters and gauge"),
                                                    evenness()))),
                            choice(
                                    Condition.usableOrBlank(NEW_NOZZLE_FLOW, NOZZLE_SIZE, PRESSURE),
                                    evenness(),
                                    text("")))),
            OHIO,
            "never blow a nozzle by mouth; use a soft brush or air",
            List.of(
                    verdict(-8, 0, "low: clean and test again"),
                    verdict(0, 12, WORN),
                    verdict(1, 7, "wearing: watch"),
                    verdict(0, -8, "whole set low: check filters and gauge"),
                    verdict(0, 0, "even"),
                    WorkedExample.from(CATCH).with(DEVIATION, 12).gives(WORN),
                    WorkedExample.from(CATCH).with(DEVIATION, 7).gives("high against the mean: watch"),
                    WorkedExample.from(CATCH).with(DEVIATION, 1).gives("even")));

    private static Expr evenness() {
        return choice(
                above(DEVIATION, REPLACE),
                text(WORN),
                choice(above(DEVIATION, MIND), text("high against the mean: watch"), text("even")));
    }

    private static Condition above(Symbol symbol, Constant limit) {
        return Condition.compare(value(symbol), Relation.MORE, constant(limit));
    }

    private static Condition below(Symbol symbol, Constant limit) {
        return Condition.compare(value(symbol), Relation.LESS, new Expr.Negate(constant(limit)));
    }

    private static WorkedExample verdict(double fromMean, double fromNew, String answer) {
        return WorkedExample.from(CATCH)
                .with(DEVIATION, fromMean)
                .with(WEAR, fromNew)
                .gives(answer);
    }

    /** 1 where the nozzle is worn, so that worn ones can be counted. */
    public static final Expr WORN_MARK = number(1).onlyWhen(Condition.is(VERDICT, WORN), "the nozzle is not worn");

    /** {@code nozzles-worn-share}. */
    public static final Formula SHARE_WORN = new Formula(
            "nozzles-worn-share",
            WORN_SHARE,
            value(WORN_COUNT).over(SET_COUNT),
            CATCH,
            "of the nozzles tested",
            List.of(WorkedExample.from(Source.derived("7 of 24 is 29.2 %"))
                    .with(WORN_COUNT, 7)
                    .with(SET_COUNT, 24)
                    .gives(29.2, Units.PERCENT, 1)));

    /** {@code measured-rate}: mean flow ÷ (speed × spacing) × 600. */
    public static final Formula MEASURED_RATE = new Formula(
            "measured-rate",
            MEASURED,
            value(MEAN).over(value(SPEED).times(SPACING_USED)),
            Source.published("Irish Independent / Farm Ireland, Useful formulae for working out nozzle selection"),
            "at the pressure of the test and the speed of the job",
            List.of(
                    WorkedExample.from(
                                    Source.published(
                                            "Irish Independent / Farm Ireland, Useful formulae for working out nozzle selection"))
                            .with(MEAN, 1.3)
                            .with(SPEED, 7.8)
                            .with(SPACING_USED, 0.5)
                            .gives(200, Units.L_PER_HA, 0),
                    WorkedExample.from(Source.published("GATE agricultural engineering notes, plant protection Q5"))
                            .with(MEAN, 32)
                            .with(SPEED, 8)
                            .with(SPACING_USED, 8)
                            .gives(300, Units.L_PER_HA, 0)));

    /** Whether the test pressure is the one the job needs. */
    public static final Formula TEST_PRESSURE = new Formula(
            "test-pressure-fits",
            AT_PRESSURE,
            choice(
                    Condition.compare(
                            call(Function.ABS, value(PRESSURE).minus(NozzlePressure.WANTED_PRESSURE)),
                            Relation.MORE,
                            constant(SAME_PRESSURE).times(NozzlePressure.WANTED_PRESSURE)),
                    text(ANOTHER_PRESSURE),
                    text("the pressure of this job")),
            Source.derived("a rate measured at one pressure says nothing of a job at another"),
            "pressure as typed for the first nozzle of the test",
            List.of());

    /** {@code rate-error}: (measured − wanted) ÷ wanted. */
    public static final Formula RATE_ERROR_OF_SET = new Formula(
            "rate-error",
            RATE_ERROR,
            call(Function.ROUND, value(MEASURED).minus(WATER_VOLUME).over(WATER_VOLUME), number(9)),
            USDA,
            "of the whole boom; single nozzles may be worse",
            List.of(WorkedExample.from(Source.published(
                            "GRDC Spray Application Manual 8.3: nozzles 0.508 m apart on a chart for 0.500 m: 1.6 %"))
                    .with(MEASURED, 200 / 1.016)
                    .with(WATER_VOLUME, 200)
                    .gives(-1.6, Units.PERCENT, 1)));
}
