package org.rickyard.plan.spraying;

import static org.rickyard.plan.spraying.SprayColumns.result;
import static org.rickyard.plan.spraying.SprayColumns.step;
import static org.rickyard.plan.spraying.SprayColumns.typedOrNot;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Function;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NozzleTest;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.NozzleChoice;
import org.rickyard.trade.spraying.NozzlePressure;
import org.rickyard.trade.spraying.NozzleWear;
import org.rickyard.trade.spraying.SprayPump;
import org.rickyard.trade.spraying.SprayQuality;
import org.rickyard.trade.spraying.SprayRates;

/** The tables of nozzles: what they must give, which size would, and how they tested. */
final class SprayNozzleTables {
    private SprayNozzleTables() {}

    /** Id of the table of nozzles. */
    static final String NOZZLES_ID = "nozzles";

    private static final List<CautionRule> NOZZLE_RULES = nozzleRules();

    private static List<CautionRule> nozzleRules() {
        List<CautionRule> rules = new ArrayList<>(SprayRules.window(NozzlePressure.WANTED_PRESSURE, "at this speed"));
        rules.add(SprayRules.SPACING_DIFFERS);
        rules.add(SprayRules.PER_ACRE);
        rules.add(SprayRules.mixedUp(Quantities.LOWEST_PRESSURE, Quantities.HIGHEST_PRESSURE, "pressure"));
        rules.add(SprayRules.fast(Quantities.SPEED));
        return List.copyOf(rules);
    }

    /** One row per sprayer, water volume, speed and spacing. */
    static final TableSpec NOZZLES = new TableSpec(
            NOZZLES_ID,
            "Nozzles",
            "Nozzles: output, and pressure of the fitted size (ISO 10625, 3 bar)",
            "one row per distinct sprayer, water volume, speed, spacing and density",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            Names.JOB,
                            new TableColumn.Key(Keys.NOZZLE_KEY),
                            SprayColumns.WATER_VOLUME,
                            SprayColumns.SPEED,
                            SprayColumns.BAND_WIDTH,
                            SprayColumns.NOZZLE_SPACING,
                            SprayColumns.WORKING_WIDTH,
                            SprayColumns.NOZZLES,
                            SprayColumns.SPRAY_DENSITY,
                            SprayColumns.NOZZLE_SIZE,
                            SprayColumns.LOWEST_PRESSURE,
                            SprayColumns.HIGHEST_PRESSURE,
                            SprayColumns.NOZZLE_QUALITY,
                            new TableColumn.Word(SprayQuality.ON_LABEL, List.of()),
                            step(NozzlePressure.SPACING),
                            step(NozzlePressure.DENSITY),
                            step(SprayQuality.NOZZLE_RANK),
                            step(SprayQuality.LABEL_RANK),
                            result(SprayRates.NOZZLE_OUTPUT),
                            result(NozzlePressure.DENSITY_FACTOR),
                            result(NozzlePressure.WATER_OUTPUT),
                            step(NozzlePressure.NOMINAL),
                            result(NozzlePressure.NOZZLE_PRESSURE),
                            new TableColumn.Key(Keys.MACHINE_KEY),
                            TableColumn.Calculated.aside(SprayPump.FLOW_OF_BOOM)),
                    NOZZLE_RULES),
            List.of(),
            Cautions.NOZZLES,
            NOZZLE_RULES);

    private static final List<CautionRule> BAND_RULES = bandRules();

    private static List<CautionRule> bandRules() {
        List<CautionRule> rules =
                new ArrayList<>(SprayRules.window(NozzlePressure.AT_LOWEST_SPEED, "at the lowest speed"));
        rules.addAll(SprayRules.window(NozzlePressure.AT_HIGHEST_SPEED, "at the highest speed"));
        rules.add(SprayRules.fast(Quantities.HIGHEST_SPEED));
        rules.add(SprayRules.mixedUp(Quantities.LOWEST_SPEED, Quantities.HIGHEST_SPEED, "field speed"));
        return List.copyOf(rules);
    }

    /** The same where a speed band is typed. */
    static final TableSpec SPEED_BAND = new TableSpec(
            "nozzle-speed-band",
            "Speed band",
            "Speed band: pressure at the lowest and highest speed, rate held",
            "one row per row of Nozzles whose sprayer has a lowest or highest field speed",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            Names.JOB,
                            new TableColumn.Key(Keys.NOZZLE_KEY),
                            nozzlePosition(),
                            fromNozzles(NozzlePressure.WANTED_PRESSURE),
                            fromNozzles(Quantities.SPEED),
                            SprayColumns.LOWEST_PRESSURE,
                            SprayColumns.HIGHEST_PRESSURE,
                            typedOrNot(Quantities.LOWEST_SPEED, Machines.LOWEST_SPEED),
                            typedOrNot(Quantities.HIGHEST_SPEED, Machines.HIGHEST_SPEED),
                            result(NozzlePressure.PRESSURE_AT_LOWEST_SPEED),
                            result(NozzlePressure.PRESSURE_AT_HIGHEST_SPEED)),
                    BAND_RULES),
            List.of(),
            Cautions.NOZZLES,
            BAND_RULES);

    /** Every ISO size for each row of Nozzles. */
    static final TableSpec CHOICE = new TableSpec(
            NozzleChoice.ID,
            "Nozzle choice",
            "Nozzle choice: the label's quality first, then pressure",
            "one row per row of Nozzles and ISO size",
            Sentences.appended(
                    List.of(
                            Names.MACHINE,
                            Names.JOB,
                            new TableColumn.Word(NozzleChoice.SIZE_TEXT, List.of(), true),
                            Names.MACHINE_HOLDING,
                            new TableColumn.Key(Keys.NOZZLE_KEY),
                            new TableColumn.Key(NozzleChoice.TENTHS),
                            new TableColumn.Key(NozzleChoice.PLACE),
                            new TableColumn.Key(NozzleChoice.UNITY),
                            nozzlePosition(),
                            fromNozzles(NozzlePressure.WATER_FLOW),
                            SprayColumns.LOWEST_PRESSURE,
                            SprayColumns.HIGHEST_PRESSURE,
                            fromNozzles(SprayQuality.LABEL_PLACE),
                            fromNozzles(SprayQuality.NOZZLE_PLACE),
                            Names.optional(NozzleChoice.FITTED, Candidate.typed(Role.MACHINE, Machines.NOZZLE_SIZE)),
                            new TableColumn.Joined(
                                    Quantities.NOZZLE_SIZE,
                                    Expr.value(NozzleChoice.TENTHS).over(Expr.number(10))),
                            step(NozzleChoice.SIZE_COLOUR),
                            step(NozzlePressure.NOMINAL),
                            result(NozzlePressure.NOZZLE_PRESSURE),
                            result(NozzleChoice.PRESSURE_WINDOW),
                            step(NozzleChoice.QUALITY_KNOWN),
                            step(NozzleChoice.PREFERRED_PRESSURE),
                            step(NozzleChoice.CHOICE_GROUP),
                            step(NozzleChoice.ORDER),
                            new TableColumn.Joined(NozzleChoice.BETTER, NozzleChoice.SIZES_BEFORE),
                            result(NozzleChoice.NOZZLE_RANK)),
                    List.of()),
            List.of(),
            Cautions.NOZZLES,
            List.of());

    private static final List<CautionRule> TEST_RULES = List.of(
            SprayRules.stop(
                    beyond(NozzleWear.DEVIATION, NozzleWear.REPLACE),
                    "over 10 % off the mean of its set (twice what Alberta Agdex 606-1 allows): do not spray with it."
                            + " Clean a low one with a soft brush, never by mouth; replace a high one, if it is not as new."),
            SprayRules.stop(
                    SprayRules.more(NozzleWear.WEAR, Expr.constant(NozzleWear.REPLACE)),
                    "over 10 % above a new one: replace it before spraying (Ohio State University)."),
            SprayRules.caution(
                    within(NozzleWear.DEVIATION),
                    "over 5 % off the mean of its set (Alberta Agdex 606-1 allows 5 %): clean a low one with a soft"
                            + " brush, never by mouth, and test again; watch or replace a high one."),
            SprayRules.caution(
                    Condition.all(List.of(
                            beyond(NozzleWear.WEAR, NozzleWear.MIND),
                            // Above that it is a stop; below it is low however far.
                            new Condition.Not(SprayRules.more(NozzleWear.WEAR, Expr.constant(NozzleWear.REPLACE))))),
                    "over 5 % off a new one: worn if high, blocked or the gauge wrong if low."));

    /** Off by more than 5 % and not more than 10 %. */
    private static Condition within(Symbol symbol) {
        return Condition.all(
                List.of(beyond(symbol, NozzleWear.MIND), new Condition.Not(beyond(symbol, NozzleWear.REPLACE))));
    }

    /** One row per nozzle caught. */
    static final TableSpec TEST = new TableSpec(
            NozzleWear.TEST,
            "Nozzle wear",
            "Nozzle wear: each nozzle against the mean of its set and against a new one",
            "one row per nozzle tested",
            Sentences.appended(
                    List.of(
                            Names.name(Quantities.SPRAYER, Candidate.typed(Role.NOZZLE_TEST, NozzleTest.SPRAYER)),
                            Names.name(Quantities.NOZZLE, Candidate.typed(Role.NOZZLE_TEST, NozzleTest.NOZZLE)),
                            new TableColumn.Key(Keys.TEST_KEY),
                            Names.link(Quantities.NOZZLE_FLOW, Candidate.typed(Role.NOZZLE_TEST, NozzleTest.FLOW)),
                            Names.dispensable(
                                    Quantities.PRESSURE, Candidate.typed(Role.NOZZLE_TEST, NozzleTest.PRESSURE)),
                            Names.optional(
                                    Quantities.NEW_NOZZLE_FLOW, Candidate.typed(Role.NOZZLE_TEST, NozzleTest.NEW_FLOW)),
                            Names.dispensable(SprayColumns.NOZZLE_SIZE),
                            new TableColumn.Joined(NozzleWear.SET_FLOW, NozzleWear.FLOW_OF_SET),
                            new TableColumn.Joined(NozzleWear.SET_COUNT, NozzleWear.COUNT_OF_SET),
                            TableColumn.Calculated.aside(NozzleWear.NOZZLE_MEAN),
                            result(NozzleWear.NOZZLE_DEVIATION),
                            step(NozzleWear.NEW_FLOW),
                            result(NozzleWear.DEVIATION_FROM_NEW),
                            result(NozzleWear.NOZZLE_VERDICT),
                            new TableColumn.Joined(NozzleWear.IS_WORN, NozzleWear.WORN_MARK),
                            new TableColumn.Key(Keys.MACHINE_KEY),
                            Names.name(
                                    Quantities.HOLDING,
                                    Candidate.typed(Role.NOZZLE_TEST, NozzleTest.HOLDING),
                                    Candidate.typed(Role.MACHINE, Machines.HOLDING))),
                    TEST_RULES),
            List.of(),
            Cautions.NOZZLES,
            TEST_RULES);

    private static final Condition OF_THIS_JOB = Condition.is(NozzleWear.AT_PRESSURE, NozzleWear.SAME);

    /** A test whose pressure, or the pressure of whose job, is not known: its rate may or may not hold for the job. */
    private static final Condition AT_UNKNOWN_PRESSURE = Condition.all(List.of(
            new Condition.Given(NozzleWear.RATE_ERROR),
            new Condition.Not(new Condition.Given(NozzleWear.AT_PRESSURE))));

    private static final List<CautionRule> SET_RULES = List.of(
            SprayRules.caution(
                    Condition.all(List.of(
                            beyond(NozzleWear.RATE_ERROR, NozzleWear.RATE_MIND),
                            new Condition.Not(beyond(NozzleWear.RATE_ERROR, NozzleWear.RATE_STOP)),
                            OF_THIS_JOB)),
                    "the boom gives over 5 % more or less than wanted (USDA and US EPA advice, reported by Ohio State"
                            + " University): mend pressure, speed or nozzles."),
            SprayRules.stop(
                    Condition.all(List.of(beyond(NozzleWear.RATE_ERROR, NozzleWear.RATE_STOP), OF_THIS_JOB)),
                    "the boom gives over 10 % more or less than wanted: do not spray before it is put right (Texas"
                            + " winegrape worksheet: refit above 10 %)."),
            SprayRules.caution(
                    Condition.all(List.of(beyond(NozzleWear.RATE_ERROR, NozzleWear.RATE_MIND), AT_UNKNOWN_PRESSURE)),
                    "if the test was made at the pressure of this job, the boom gives over 5 % more or less than wanted;"
                            + " over 10 % it is not to spray. Type the pressure of the test, and the nozzle size, to know."),
            SprayRules.caution(
                    Condition.is(NozzleWear.AT_PRESSURE, NozzleWear.ANOTHER_PRESSURE),
                    "the test was made at another pressure than this job needs, so its rate error does not hold for this"
                            + " job: test at the job's pressure."),
            SprayRules.caution(
                    Condition.compare(
                            Expr.value(NozzleWear.WORN_COUNT),
                            Relation.AT_LEAST,
                            Expr.constant(NozzleWear.WORN_FOR_SET)),
                    "two nozzles or more are worn: change the whole set (operator training, from memory)."),
            SprayRules.caution(
                    Condition.compare(
                            Expr.value(NozzleWear.WORN_SHARE),
                            Relation.AT_LEAST,
                            Expr.constant(NozzleWear.FRENCH_SHARE)),
                    "a third of the nozzles or more are worn: the law of France (2008) changes the set."));

    /** One row per tested sprayer and row of Nozzles. */
    static final TableSpec SETS = new TableSpec(
            "nozzle-sets",
            "Nozzle sets",
            "Nozzle sets: what the tested nozzles put on a hectare",
            "one row per tested sprayer and each of its water volumes and speeds",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            Names.JOB,
                            Names.MACHINE_TYPE,
                            new TableColumn.Key(Keys.TEST_KEY),
                            SprayColumns.WATER_VOLUME,
                            SprayColumns.SPEED,
                            SprayColumns.BAND_WIDTH,
                            SprayColumns.NOZZLE_SPACING,
                            SprayColumns.WORKING_WIDTH,
                            SprayColumns.NOZZLES,
                            SprayColumns.SPRAY_DENSITY,
                            SprayColumns.NOZZLE_SIZE,
                            step(NozzlePressure.WIDTH_PER_NOZZLE),
                            step(NozzlePressure.DENSITY),
                            step(SprayRates.NOZZLE_OUTPUT),
                            step(NozzlePressure.DENSITY_FACTOR),
                            step(NozzlePressure.WATER_OUTPUT),
                            step(NozzlePressure.NOMINAL),
                            step(NozzlePressure.NOZZLE_PRESSURE),
                            new TableColumn.Joined(
                                    Keys.TEST_POSITION,
                                    new Expr.Position(NozzleWear.TEST, Keys.TEST_KEY, Keys.TEST_KEY)),
                            new TableColumn.Joined(
                                    NozzleWear.MEAN,
                                    new Expr.From(NozzleWear.TEST, NozzleWear.MEAN, Keys.TEST_POSITION)),
                            new TableColumn.Joined(
                                    Quantities.PRESSURE,
                                    new Expr.From(NozzleWear.TEST, Quantities.PRESSURE, Keys.TEST_POSITION)),
                            step(NozzleWear.TEST_PRESSURE),
                            new TableColumn.Joined(NozzleWear.SET_COUNT, NozzleWear.COUNT_OF_SET),
                            new TableColumn.Joined(NozzleWear.WORN_COUNT, NozzleWear.COUNT_WORN),
                            TableColumn.Calculated.aside(NozzleWear.SHARE_WORN),
                            result(NozzleWear.MEASURED_RATE),
                            result(NozzleWear.RATE_ERROR_OF_SET),
                            result(NozzleWear.SPEED_FOR_VOLUME)),
                    SET_RULES),
            List.of(),
            Cautions.NOZZLES,
            SET_RULES);

    private static Condition beyond(Symbol symbol, org.rickyard.formula.Constant limit) {
        return Condition.compare(Expr.call(Function.ABS, Expr.value(symbol)), Relation.MORE, Expr.constant(limit));
    }

    private static TableColumn nozzlePosition() {
        return new TableColumn.Joined(
                Keys.NOZZLE_POSITION, new Expr.Position(NOZZLES_ID, Keys.NOZZLE_KEY, Keys.NOZZLE_KEY));
    }

    private static TableColumn fromNozzles(Symbol symbol) {
        return new TableColumn.Joined(symbol, new Expr.From(NOZZLES_ID, symbol, Keys.NOZZLE_POSITION));
    }
}
