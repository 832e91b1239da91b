package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.HOURS_PER_DAY;
import static org.rickyard.trade.Quantities.MACHINE_TYPE;
import static org.rickyard.trade.Quantities.MASS;
import static org.rickyard.trade.Quantities.OUTPUT;
import static org.rickyard.trade.Quantities.PAYLOAD;
import static org.rickyard.trade.Quantities.ROUND_TIME;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;

/**
 * What a gang gets through on a field: each stage in hectares and fresh tonnes an hour, and which holds the others up.
 * Chopping, carting, pushing up and rolling run together; mowing, tedding and raking run on a day of their own and are
 * compared by the day.
 */
public final class GangRates {
    private GangRates() {}

    /** The stages of a gang, in the order of the crop's way. */
    public enum Stage {
        /** Cutting. */
        MOWING("mowing", false),
        /** Spreading out. */
        TEDDING("tedding", false),
        /** Putting into swaths. */
        RAKING("raking", false),
        /** Picking up and chopping. */
        CHOPPING("chopping", true),
        /** Carrying to the clamp. */
        CARTING("carting", true),
        /** Pushing up on the clamp. */
        PUSHING_UP("pushing up", true),
        /** Rolling the clamp. */
        ROLLING("rolling", true);

        private final String words;
        private final boolean coupled;
        private final Symbol rate;
        private final Symbol slack;
        private final Symbol machines;
        private final Symbol day;

        Stage(String words, boolean coupled) {
            this.words = words;
            this.coupled = coupled;
            this.rate = Symbol.number(words + ", area per hour", Units.HA_PER_H)
                    .possible(Range.POSITIVE)
                    .decimals(2);
            this.slack = Symbol.number(words + " slack", Units.ONE)
                    .possible(Range.POSITIVE)
                    .decimals(2);
            this.machines = Symbol.number(words + " machines", Units.ONE)
                    .possible(Range.NOT_NEGATIVE)
                    .decimals(0);
            this.day = Symbol.number(words + ", area per day", Units.HA)
                    .possible(Range.POSITIVE)
                    .decimals(1);
        }

        /** In words. */
        public String words() {
            return words;
        }

        /** Whether it must keep step with the forager. */
        public boolean coupled() {
            return coupled;
        }

        /** Its number in a stage key. */
        public int code() {
            return ordinal() + 1;
        }

        /** The symbol of its rate in the table of gangs. */
        public Symbol rate() {
            return rate;
        }

        /** The symbol of its rate over the gang's. */
        public Symbol slack() {
            return slack;
        }

        /** The symbol of what it gets through in a day of its own. */
        public Symbol day() {
            return day;
        }

        /** The symbol of how many machines of the gang do it. */
        public Symbol machines() {
            return machines;
        }

        /** The stages that keep step. */
        public static List<Stage> together() {
            return thatKeepStep(true);
        }

        /** The stages on a day of their own. */
        public static List<Stage> apart() {
            return thatKeepStep(false);
        }

        private static List<Stage> thatKeepStep(boolean coupled) {
            List<Stage> stages = new ArrayList<>();
            for (Stage stage : values()) {
                if (stage.coupled == coupled) {
                    stages.add(stage);
                }
            }
            return stages;
        }
    }

    /** The table of stages. */
    public static final String STAGES = "gang-stages";
    /** The table of gangs. */
    public static final String GANGS = "gangs";

    /** Machines alike at this stage. */
    public static final Symbol ALIKE = Symbol.number("machines alike", Units.ONE)
            .possible(Range.of(1, 200))
            .decimals(0);
    /** Rate of one machine that works by its width. */
    public static final Symbol RATE_EACH = Symbol.number("work rate of one", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Crop that the rolling mass can keep down. */
    public static final Symbol ROLLED = Symbol.number("rolling capacity", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Crop that a loader or buckrake moves. */
    public static final Symbol HANDLED = Symbol.number("handling rate", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Rate of the stage by area. */
    public static final Symbol STAGE_RATE =
            Symbol.number("stage rate", Units.HA_PER_H).possible(Range.POSITIVE).decimals(2);
    /** Rate of the stage by mass. */
    public static final Symbol STAGE_MATERIAL = Symbol.number("stage rate by mass", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Rate of the stage by the day. */
    public static final Symbol STAGE_DAY = Symbol.number("stage area per day", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** The lower of chopping and carting. */
    public static final Symbol PAPER_AREA = Symbol.number("chopped and carted, area", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** The same by mass: what the simulation is held against. */
    public static final Symbol ON_PAPER = Symbol.number("chopped and carted on paper", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Spread of times in the simulation. */
    public static final Symbol SPREAD =
            Symbol.number("spread of times", Units.PERCENT).decimals(0);
    /** Seed of the simulation. */
    public static final Symbol SEED = Symbol.number("seed", Units.ONE).decimals(0);
    /** Loads simulated. */
    public static final Symbol LOADS =
            Symbol.number("loads simulated", Units.ONE).decimals(0);
    /** What the gang gets through. */
    public static final Symbol GANG_RATE =
            Symbol.number("gang rate", Units.HA_PER_H).possible(Range.POSITIVE).decimals(2);
    /** The same by mass. */
    public static final Symbol GANG_MATERIAL = Symbol.number("gang rate by mass", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Which stage holds the gang up. */
    public static final Symbol BOTTLENECK = Symbol.text("bottleneck");
    /** Hours of the gang on the field. */
    public static final Symbol GANG_HOURS =
            Symbol.number("gang hours", Units.H).possible(Range.POSITIVE).decimals(1);
    /** Crop of the field, as carted. */
    public static final Symbol GANG_CROP = Symbol.number("crop of the field (fresh, as carted)", Units.T)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Area of the gang in a day. */
    public static final Symbol GANG_DAY = Symbol.number("gang area per day", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** What chance leaves of chopping and carting. */
    public static final Symbol SIMULATED = Symbol.number("chopped and carted, simulated", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** The gang's rate with chance. */
    public static final Symbol EXPECTED_RATE = Symbol.number("gang rate expected", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Share of the rate on paper that chance leaves. */
    public static final Symbol KEPT_UP = Symbol.number("share kept up", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(0);

    private static final Unit HOURS_OF_MASS = Units.KG.over(Units.T_PER_H);
    private static final Source LOWEST =
            Source.memory("standard theory of machines that work in a chain: the slowest" + " sets the pace");
    private static final Source ARITHMETIC =
            Source.derived("grass 20 t/ha: chopping 2.00, two trailers 1.584, rolling 1.75 ha/h");

    /** Mass that rolls a tonne an hour. */
    public static final Constant ROLLING_RULE = new Constant(
            "Rolling mass for each t/h of crop",
            400,
            HOURS_OF_MASS,
            Source.published("rule of 800 lb for each short ton an hour, University of Wisconsin and others; 400 kg"
                    + " for each t/h. A printed 150 for 40,000 lb is a slip for 50"));

    /** {@code gang-rolling-capacity}: rolling mass ÷ mass for each t/h. */
    public static final Formula ROLLING_CAPACITY = new Formula(
            "gang-rolling-capacity",
            ROLLED,
            value(MASS).times(ALIKE).over(constant(ROLLING_RULE)),
            Source.published("rule of 800 (lb, short tons) or 400 (kg, tonnes)"),
            "all rollers rolling all the time in thin layers",
            List.of(
                    WorkedExample.from(Source.derived("two of 14 t ÷ 400 kg for each t/h"))
                            .with(MASS, 14)
                            .with(ALIKE, 2)
                            .gives(70, Units.T_PER_H, 6),
                    WorkedExample.from(Source.derived("rule of 800: 40,000 lb ÷ 800 is 50 short tons an hour, not 150"))
                            .with(MASS, 40000, Units.LB)
                            .with(ALIKE, 1)
                            .gives(50, Units.SHORT_TON.over(Units.H), 6)));

    /** {@code handling-rate}: typed output, or load ÷ round time. */
    public static final Formula HANDLING = new Formula(
            "handling-rate",
            HANDLED,
            choice(
                    new Condition.Blank(OUTPUT),
                    value(PAYLOAD).over(ROUND_TIME).times(ALIKE),
                    value(OUTPUT).times(ALIKE)),
            Source.derived("load over the time of a round; times as typed, none is assumed"),
            "buckrakes and loaders",
            List.of(
                    WorkedExample.from(Source.published("National Institute of Agricultural Engineering, Press 10"
                                    + " December 1960: 32 bales of 56 lb a trip by buckrake, 4 man-hours for 1,000"
                                    + " bales, 6 1/4 tons an hour"))
                            .with(PAYLOAD, 32 * 56, Units.LB)
                            .with(ROUND_TIME, 32 * 4 * 60 / 1000.0)
                            .with(ALIKE, 1)
                            .gives(6.25, Units.LONG_TON.over(Units.H), 2),
                    WorkedExample.from(Source.derived("two buckrakes of 1 t every 2 min"))
                            .with(PAYLOAD, 1)
                            .with(ROUND_TIME, 2)
                            .with(ALIKE, 2)
                            .gives(60, Units.T_PER_H, 6),
                    WorkedExample.from(Source.derived("two loaders of 60 t/h"))
                            .with(OUTPUT, 60)
                            .with(ALIKE, 2)
                            .gives(120, Units.T_PER_H, 6)));

    private static final Condition BY_WIDTH = Condition.any(List.of(
            Condition.is(MACHINE_TYPE, "mower"),
            Condition.is(MACHINE_TYPE, "tedder"),
            Condition.is(MACHINE_TYPE, "rake"),
            Condition.is(MACHINE_TYPE, "forager")));
    private static final Condition CARTS = Condition.any(
            List.of(Condition.is(MACHINE_TYPE, "trailer"), Condition.is(MACHINE_TYPE, Carting.FORAGE_WAGON)));

    /** {@code stage-rate}: area per hour of all machines alike at one stage. */
    public static final Formula RATE_OF_STAGE = new Formula(
            "stage-rate",
            STAGE_RATE,
            choice(
                    BY_WIDTH,
                    value(RATE_EACH).times(ALIKE),
                    choice(
                            CARTS,
                            value(Carting.CARTING_AREA),
                            choice(
                                    Condition.is(MACHINE_TYPE, "clamp roller"),
                                    value(ROLLED).over(Throughput.YIELD_CARTED),
                                    value(HANDLED).over(Throughput.YIELD_CARTED)))),
            Source.derived("every stage brought to hectares of the same field"),
            "fresh tonnes as carted",
            List.of(
                    WorkedExample.from(Source.derived("two mowers of 2.40 ha/h"))
                            .with(MACHINE_TYPE, "mower")
                            .with(RATE_EACH, 2.4)
                            .with(ALIKE, 2)
                            .gives(4.8, Units.HA_PER_H, 6),
                    WorkedExample.from(ARITHMETIC)
                            .with(MACHINE_TYPE, "clamp roller")
                            .with(ROLLED, 35)
                            .with(Throughput.YIELD_CARTED, 20)
                            .gives(1.75, Units.HA_PER_H, 6)));

    /** {@code stage-rate-by-mass}. */
    public static final Formula MATERIAL_OF_STAGE = new Formula(
            "stage-rate-by-mass",
            STAGE_MATERIAL,
            value(STAGE_RATE).times(Throughput.YIELD_CARTED),
            Source.derived("area per hour × yield"),
            "fresh tonnes as carted, also for mowing, so that all stages compare",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(STAGE_RATE, 1.75)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(35, Units.T_PER_H, 6)));

    /** Stage rate by the day: stage rate × hours per day. */
    public static final Formula DAY_OF_STAGE = new Formula(
            "stage-area-per-day",
            STAGE_DAY,
            value(STAGE_RATE).times(HOURS_PER_DAY),
            Source.derived("area per hour × hours"),
            "hours of the job, or else of the machine",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(STAGE_RATE, 1.75)
                    .with(HOURS_PER_DAY, 8)
                    .gives(14, Units.HA, 6)));

    /** The rate of one stage, all its machines together, as a total over the stages. */
    public static Expr stageTotal(Stage stage, Symbol key) {
        return new Expr.Total(STAGES, STAGE_RATE, Keys.STAGE_KEY, key, true);
    }

    private static final String NO_RATE = "a stage of this gang has no rate; its row on Gang stages says why";

    private static Condition allThere(List<Stage> stages) {
        List<Condition> conditions = new ArrayList<>();
        for (Stage stage : stages) {
            conditions.add(Condition.any(List.of(
                    new Condition.Given(stage.rate()),
                    Condition.compare(value(stage.machines()), Condition.Relation.EQUAL, Expr.number(0)))));
        }
        return Condition.all(conditions);
    }

    private static List<Symbol> rates() {
        return Stage.together().stream().map(Stage::rate).toList();
    }

    /** {@code gang-rate}: the slowest of the stages that run together. */
    public static final Formula RATE_OF_GANG = new Formula(
            "gang-rate",
            GANG_RATE,
            new Expr.LeastGiven(rates()).onlyWhen(allThere(Stage.together()), NO_RATE),
            LOWEST,
            "chopping, carting, pushing up and rolling of one field; a stage that the gang has no machine for is left"
                    + " aside",
            List.of(gang(1.584, 1.584), gang(2.376, 1.75), gang(40, 1.75)));

    private static WorkedExample gang(double carting, double gang) {
        return gangOf(carting).gives(gang, Units.HA_PER_H, 6);
    }

    private static WorkedExample.Draft gangOf(double carting) {
        return ratesOf(carting)
                .with(Stage.CHOPPING.machines(), 1)
                .with(Stage.CARTING.machines(), 2)
                .with(Stage.PUSHING_UP.machines(), 0)
                .with(Stage.ROLLING.machines(), 1);
    }

    private static WorkedExample.Draft ratesOf(double carting) {
        return WorkedExample.from(ARITHMETIC)
                .with(Stage.CHOPPING.rate(), 2)
                .with(Stage.CARTING.rate(), carting)
                .with(Stage.ROLLING.rate(), 1.75);
    }

    /** {@code bottleneck}: which stage that is. */
    public static final Formula BOTTLENECK_OF_GANG = new Formula(
            "bottleneck",
            BOTTLENECK,
            choice(
                    new Condition.Given(GANG_RATE),
                    new Expr.LabelOfLeast(
                            rates(), Stage.together().stream().map(Stage::words).toList()),
                    Expr.text("")),
            LOWEST,
            "of equal stages the first on the crop's way",
            List.of(
                    ratesOf(1.584).with(GANG_RATE, 1.584).gives("carting"),
                    ratesOf(2.376).with(GANG_RATE, 1.75).gives("rolling")));

    /** {@code stage-slack} of each stage that runs together: its rate over the gang's. */
    public static final List<Formula> SLACK =
            Stage.together().stream().map(GangRates::slackOf).toList();

    /** The slack of one stage: by the hour where it keeps step, by the day where it has a day of its own. */
    public static Formula slackOf(Stage stage) {
        Symbol own = stage.coupled() ? stage.rate() : stage.day();
        Symbol gang = stage.coupled() ? GANG_RATE : GANG_DAY;
        return new Formula(
                stage.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-') + "-slack",
                stage.slack(),
                value(own).over(gang),
                LOWEST,
                stage.coupled()
                        ? "1 is the bottleneck; 1.2 could do a fifth more"
                        : "by the day, each over its own hours; under 1 it must begin earlier",
                List.of(WorkedExample.from(ARITHMETIC)
                        .with(own, 2.1)
                        .with(gang, 1.75)
                        .gives(1.2, Units.ONE, 6)));
    }

    /** Gang rate by mass. */
    public static final Formula MATERIAL_OF_GANG = new Formula(
            "gang-rate-by-mass",
            GANG_MATERIAL,
            value(GANG_RATE).times(Throughput.YIELD_CARTED),
            Source.derived("area per hour × yield"),
            "fresh tonnes as carted",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(GANG_RATE, 1.75)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(35, Units.T_PER_H, 6)));

    /** {@code gang-hours}: area ÷ gang rate. */
    public static final Formula HOURS_OF_GANG = new Formula(
            "gang-hours",
            GANG_HOURS,
            value(AREA).over(GANG_RATE),
            Source.derived("area over area per hour"),
            "moving between fields comes on top",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(AREA, 7)
                    .with(GANG_RATE, 1.75)
                    .gives(4, Units.H, 6)));

    /** {@code gang-crop}: what the gang brings to the clamp from the field. */
    public static final Formula CROP_OF_GANG = new Formula(
            "gang-crop",
            GANG_CROP,
            value(AREA).times(Throughput.YIELD_CARTED),
            Source.derived("area × yield as carted"),
            "fresh tonnes as carted",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(AREA, 7)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(140, Units.T, 6)));

    /** Gang area in a day. */
    public static final Formula DAY_OF_GANG = new Formula(
            "gang-area-per-day",
            GANG_DAY,
            value(GANG_RATE).times(HOURS_PER_DAY),
            Source.derived("area per hour × hours"),
            "mowing and raking must bring as much on their own day",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(GANG_RATE, 1.75)
                    .with(HOURS_PER_DAY, 8)
                    .gives(14, Units.HA, 6)));

    /** The lower of chopping and carting, by area. */
    public static final Formula PAPER_BY_AREA = new Formula(
            "chop-and-cart-rate-by-area",
            PAPER_AREA,
            new Expr.LeastGiven(List.of(Stage.CHOPPING.rate(), Stage.CARTING.rate()))
                    .onlyWhen(allThere(List.of(Stage.CHOPPING, Stage.CARTING)), NO_RATE),
            LOWEST,
            "forage wagons chop and cart in one",
            List.of(
                    chopped(1.584).gives(1.584, Units.HA_PER_H, 6),
                    chopped(2.376).gives(2, Units.HA_PER_H, 6)));

    private static WorkedExample.Draft chopped(double carting) {
        return WorkedExample.from(ARITHMETIC)
                .with(Stage.CHOPPING.rate(), 2)
                .with(Stage.CHOPPING.machines(), 1)
                .with(Stage.CARTING.rate(), carting)
                .with(Stage.CARTING.machines(), 2);
    }

    /** {@code chop-and-cart-rate}: the lower of chopping and carting, by mass. */
    public static final Formula PAPER = new Formula(
            "chop-and-cart-rate",
            ON_PAPER,
            value(PAPER_AREA).times(Throughput.YIELD_CARTED),
            LOWEST,
            "as if no trailer ever came late; chance makes it less, never more",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(PAPER_AREA, 1.584)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(31.68, Units.T_PER_H, 2)));

    /** {@code gang-rate-expected}: the gang with what chance leaves of chopping and carting. */
    public static final Formula EXPECTED = new Formula(
            "gang-rate-expected",
            EXPECTED_RATE,
            Expr.least(value(GANG_RATE), value(SIMULATED).over(Throughput.YIELD_CARTED)),
            Source.derived("the lower of the gang rate and the simulated rate of chopping and carting"),
            "stages at the clamp as on paper",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(GANG_RATE, 1.584)
                    .with(SIMULATED, 30)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(1.5, Units.HA_PER_H, 6)));

    /** Share kept up. */
    public static final Formula SHARE_KEPT_UP = new Formula(
            "gang-rate-share-kept-up",
            KEPT_UP,
            value(EXPECTED_RATE).over(GANG_RATE),
            Source.derived("expected over paper"),
            "as the spread of times, the seed and the number of loads have it",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(EXPECTED_RATE, 1.5)
                    .with(GANG_RATE, 2)
                    .gives(75, Units.PERCENT, 6)));

    /** All formulas in reading order. */
    static List<Formula> formulas() {
        List<Formula> all = new ArrayList<>(List.of(
                ROLLING_CAPACITY,
                HANDLING,
                RATE_OF_STAGE,
                MATERIAL_OF_STAGE,
                DAY_OF_STAGE,
                RATE_OF_GANG,
                BOTTLENECK_OF_GANG));
        all.addAll(SLACK);
        all.addAll(List.of(
                MATERIAL_OF_GANG,
                HOURS_OF_GANG,
                DAY_OF_GANG,
                CROP_OF_GANG,
                PAPER_BY_AREA,
                PAPER,
                EXPECTED,
                SHARE_KEPT_UP));
        return List.copyOf(all);
    }
}
