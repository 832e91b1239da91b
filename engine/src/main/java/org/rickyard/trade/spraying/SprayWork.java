package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.text;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.BAND_WIDTH;
import static org.rickyard.trade.Quantities.CLEANING_TIME;
import static org.rickyard.trade.Quantities.DISTANCE_TO_FILL_POINT;
import static org.rickyard.trade.Quantities.FILL_TIME;
import static org.rickyard.trade.Quantities.MOVE_TIME;
import static org.rickyard.trade.Quantities.ROAD_SPEED_EMPTY;
import static org.rickyard.trade.Quantities.ROAD_SPEED_LADEN;
import static org.rickyard.trade.Quantities.ROW_SPACING;
import static org.rickyard.trade.Quantities.RUN_LENGTH;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.TURN_TIME;
import static org.rickyard.trade.Quantities.WATER_VOLUME;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;
import static org.rickyard.trade.spraying.TankPlan.TANK_FILLED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Blank;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;

/**
 * Hours a sprayer takes over a field, part by part: spraying, turning, filling, fetching water, moving, cleaning. A part
 * whose inputs are not typed is left out, and the row says so: what remains is the best case. No published worked case
 * of the whole model was found, so it is checked by arithmetic.
 */
public final class SprayWork {
    private SprayWork() {}

    /** Id of the table of sprayed fields. */
    public static final String FIELDS = "spray-fields";

    /** Area that gets spray: the field, or its bands. */
    public static final Symbol TREATED_AREA =
            Symbol.number("treated area", Units.HA).possible(Range.POSITIVE).decimals(2);
    /** Treated area of the block's fields before this one. */
    public static final Symbol AREA_BEFORE = Symbol.number("treated area before", Units.HA)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** Area of the block, each field whole. */
    public static final Symbol AREA_OF_BLOCK = Symbol.number("area of the block", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Spray liquid for the field. */
    public static final Symbol FIELD_MIX =
            Symbol.number("spray mix", Units.L).possible(Range.POSITIVE).decimals(0);
    /** Spraying itself. */
    public static final Symbol SPRAYING = hours("spraying");
    /** Turning. */
    public static final Symbol TURNING = hours("turning");
    /** Filling. */
    public static final Symbol FILLING = hours("filling");
    /** Fetching water, out and back. */
    public static final Symbol FETCHING = hours("fetching water");
    /** Moving to the field. */
    public static final Symbol MOVING = hours("moving");
    /** The field's share of cleaning. */
    public static final Symbol CLEANING = hours("cleaning");
    /** All parts. */
    public static final Symbol HOURS = hours("spraying hours").possible(Range.POSITIVE);
    /** Area per hour, all parts counted. */
    public static final Symbol RATE = Symbol.number("spraying work rate", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Share of the time in which the boom sprays. */
    public static final Symbol EFFICIENCY = Symbol.number("spraying efficiency", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Hours that no change of water volume changes. */
    public static final Symbol FIXED = hours("hours beside filling");
    /** Treated area times the time of one fill and its fetching. */
    public static final Symbol ROUNDS = Symbol.number("area × time of a round", Units.HA.times(Units.H))
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** What was left out for want of inputs. */
    public static final Symbol BASIS = Symbol.text("best case: parts left out");

    private static final Source MODEL =
            Source.derived("times of the parts added up (the terms of Baltin 1959, from memory); GRDC and ChemCert name"
                    + " the same parts");
    private static final Source TABLE =
            Source.derived("24 m, 12 km/h, 3,000 L, fill 12 min, 1.5 km at 20 km/h, run 400 m, turn 20 s, 200 L/ha:"
                    + " 2.083 + 0.347 + 0.800 + 0.600 min/ha = 15.664 ha/h");
    private static final Source TEN_HECTARES = Source.derived(
            "10 ha of that farm: 20.83 min of spraying, 3.47 of turning, 8 of filling, 6 of fetching water");
    private static final Expr NOTHING = new Expr.AsUnit(number(0), Units.H);

    private static final Condition NO_TURNING = Condition.any(List.of(new Blank(RUN_LENGTH), new Blank(TURN_TIME)));
    private static final Condition NO_ROAD =
            Condition.any(List.of(new Blank(ROAD_SPEED_LADEN), new Blank(ROAD_SPEED_EMPTY)));
    private static final Condition AT_THE_FIELD =
            Condition.compare(value(DISTANCE_TO_FILL_POINT), Relation.EQUAL, new Expr.AsUnit(number(0), Units.KM));

    private static final Condition AWAY =
            Condition.compare(value(DISTANCE_TO_FILL_POINT), Relation.MORE, new Expr.AsUnit(number(0), Units.KM));

    /** {@code treated-area}: the area, or of bands its share band width ÷ row spacing. */
    public static final Formula TREATED = new Formula(
            "treated-area",
            TREATED_AREA,
            choice(
                    new Blank(BAND_WIDTH),
                    value(AREA),
                    value(AREA)
                            .times(BAND_WIDTH)
                            .over(ROW_SPACING)
                            .onlyWhen(
                                    Condition.compare(value(BAND_WIDTH), Relation.AT_MOST, value(ROW_SPACING)),
                                    "the band is wider than the row spacing")),
            Source.derived("band ÷ row is the share of the ground sprayed; doses and water volume hold on the band"),
            "one band over each row, rows as far apart as typed for the field or the machine",
            List.of(WorkedExample.from(Source.derived("a 25 cm band on rows 75 cm apart treats a third"))
                    .with(AREA, 9)
                    .with(BAND_WIDTH, 0.25)
                    .with(ROW_SPACING, 0.75)
                    .gives(3, Units.HA, 6)));

    /** Treated area of the fields of the block before this one, in list order. */
    public static final Expr BEFORE = new Expr.Before(FIELDS, TREATED_AREA, Keys.BLOCK_KEY, Keys.SPRAY_KEY);

    /** The area that shares the block's cleaning. */
    public static final Expr BLOCK = new Expr.Total(FIELDS, AREA, Keys.BLOCK_KEY, Keys.BLOCK_KEY, true);

    /** Spray liquid for the field. */
    public static final Formula MIX = new Formula(
            "spray-mix",
            FIELD_MIX,
            value(TREATED_AREA).times(WATER_VOLUME),
            Source.derived("area × water volume"),
            "on the treated area",
            List.of(
                    WorkedExample.from(SpraySources.FACTSHEET)
                            .with(TREATED_AREA, 20)
                            .with(WATER_VOLUME, 200)
                            .gives(4000, Units.L, 0),
                    WorkedExample.from(SpraySources.ALBERTA)
                            .with(TREATED_AREA, 30, Units.AC)
                            .with(WATER_VOLUME, 40, Units.L.over(Units.AC))
                            .gives(1200, Units.L, 0)));

    /** {@code time-spraying}. */
    public static final Formula SPRAYING_TIME = part(
            "time-spraying",
            SPRAYING,
            value(AREA).over(value(WORKING_WIDTH).times(SPEED)),
            "full width, every run",
            tenHectares().with(AREA, 10).with(WORKING_WIDTH, 24).with(SPEED, 12).gives(20.83, Units.MIN, 2));
    /** {@code time-turning}. */
    public static final Formula TURNING_TIME = part(
            "time-turning",
            TURNING,
            choice(
                    NO_TURNING,
                    NOTHING,
                    value(AREA).over(value(WORKING_WIDTH).times(RUN_LENGTH)).times(TURN_TIME)),
            "a turn after each run of the average length",
            turning(400, 20).gives(3.47, Units.MIN, 2),
            turning(400, Double.NaN).gives(0, Units.MIN, 2),
            turning(Double.NaN, 20).gives(0, Units.MIN, 2));
    /** {@code time-filling}. */
    public static final Formula FILLING_TIME = part(
            "time-filling",
            FILLING,
            choice(
                    new Blank(FILL_TIME),
                    NOTHING,
                    value(FIELD_MIX).over(TANK_FILLED).times(FILL_TIME)),
            "the field's share of tankfuls, not whole fills",
            tenHectares()
                    .with(FIELD_MIX, 2000)
                    .with(TANK_FILLED, 3000)
                    .with(FILL_TIME, 12)
                    .gives(8, Units.MIN, 6),
            tenHectares().with(FIELD_MIX, 2000).with(TANK_FILLED, 3000).gives(0, Units.MIN, 6));
    /** {@code time-fetching}. */
    public static final Formula FETCHING_TIME = part(
            "time-fetching",
            FETCHING,
            choice(
                    new Blank(DISTANCE_TO_FILL_POINT),
                    NOTHING,
                    choice(
                            AT_THE_FIELD,
                            NOTHING,
                            choice(
                                    NO_ROAD,
                                    NOTHING,
                                    value(FIELD_MIX)
                                            .over(TANK_FILLED)
                                            .times(value(DISTANCE_TO_FILL_POINT)
                                                    .over(ROAD_SPEED_EMPTY)
                                                    .plus(
                                                            value(DISTANCE_TO_FILL_POINT)
                                                                    .over(ROAD_SPEED_LADEN)))))),
            "out empty, back laden, for the field's share of tankfuls; water brought to the field needs none",
            fetching(1.5, 20, 20).gives(6, Units.MIN, 6),
            // Two thirds of a tankful: out at 30 km/h in 3 minutes, back at 20 km/h in 4.5.
            fetching(1.5, 20, 30).gives(5, Units.MIN, 6),
            fetching(0, 20, 20).gives(0, Units.MIN, 6),
            fetching(0, Double.NaN, Double.NaN).gives(0, Units.MIN, 6),
            fetching(Double.NaN, 20, 20).gives(0, Units.MIN, 6),
            fetching(1.5, Double.NaN, 20).gives(0, Units.MIN, 6),
            fetching(1.5, 20, Double.NaN).gives(0, Units.MIN, 6));
    /** {@code time-moving}. */
    public static final Formula MOVING_TIME = part(
            "time-moving",
            MOVING,
            choice(new Blank(MOVE_TIME), NOTHING, value(MOVE_TIME)),
            "once for each field",
            tenHectares().with(MOVE_TIME, 10).gives(10, Units.MIN, 6),
            tenHectares().gives(0, Units.MIN, 6));
    /** {@code time-cleaning}. */
    public static final Formula CLEANING_SHARE = part(
            "time-cleaning",
            CLEANING,
            choice(
                    new Blank(CLEANING_TIME),
                    NOTHING,
                    value(CLEANING_TIME).times(AREA).over(AREA_OF_BLOCK)),
            "once for each block, shared by area",
            WorkedExample.from(Source.derived("half an hour for a block of 10 ha: 12 min on its field of 4 ha"))
                    .with(CLEANING_TIME, 30)
                    .with(AREA, 4)
                    .with(AREA_OF_BLOCK, 10)
                    .gives(12, Units.MIN, 6),
            tenHectares().with(AREA, 4).with(AREA_OF_BLOCK, 10).gives(0, Units.MIN, 6));

    private static Formula part(String id, Symbol result, Expr expr, String validity, WorkedExample... examples) {
        return new Formula(id, result, expr, MODEL, validity, List.of(examples));
    }

    private static WorkedExample.Draft tenHectares() {
        return WorkedExample.from(TEN_HECTARES);
    }

    /** NaN stands for what was not typed. */
    private static WorkedExample.Draft turning(double runLength, double turnTime) {
        WorkedExample.Draft draft = tenHectares().with(AREA, 10).with(WORKING_WIDTH, 24);
        typed(draft, RUN_LENGTH, runLength);
        return typed(draft, TURN_TIME, turnTime);
    }

    /** Two thirds of a tank of 3,000 L; NaN stands for what was not typed. */
    private static WorkedExample.Draft fetching(double distance, double laden, double empty) {
        WorkedExample.Draft draft = tenHectares().with(FIELD_MIX, 2000).with(TANK_FILLED, 3000);
        typed(draft, DISTANCE_TO_FILL_POINT, distance);
        typed(draft, ROAD_SPEED_LADEN, laden);
        return typed(draft, ROAD_SPEED_EMPTY, empty);
    }

    private static WorkedExample.Draft typed(WorkedExample.Draft draft, Symbol symbol, double value) {
        return Double.isNaN(value) ? draft : draft.with(symbol, value);
    }

    /** Hours beside filling and fetching. */
    public static final Formula FIXED_HOURS = part(
            "time-beside-filling",
            FIXED,
            value(SPRAYING).plus(TURNING).plus(MOVING).plus(CLEANING),
            "what a change of water volume leaves as it is",
            WorkedExample.from(Source.derived("spraying, turning, 5 minutes of moving and 20 of cleaning"))
                    .with(SPRAYING, 20.83, Units.MIN)
                    .with(TURNING, 3.47, Units.MIN)
                    .with(MOVING, 5, Units.MIN)
                    .with(CLEANING, 20, Units.MIN)
                    .gives(49.3, Units.MIN, 2));
    /** Area × time of a round, for comparing water volumes. */
    public static final Formula ROUND_WEIGHT = part(
            "area-times-round",
            ROUNDS,
            value(FILLING).plus(FETCHING).times(TANK_FILLED).over(WATER_VOLUME),
            "fills and fetching of one tankful, weighted by area",
            WorkedExample.from(Source.derived("a round of 12 + 9 min for each tankful, over 10 ha: 3.5 ha × h"))
                    .with(FILLING, 8, Units.MIN)
                    .with(FETCHING, 6, Units.MIN)
                    .with(TANK_FILLED, 3000)
                    .with(WATER_VOLUME, 200)
                    .gives(3.5, Units.HA.times(Units.H), 6));

    /** {@code spraying-hours}: the sum of the parts. */
    public static final Formula SPRAYING_HOURS = new Formula(
            "spraying-hours",
            HOURS,
            value(SPRAYING)
                    .plus(TURNING)
                    .plus(FILLING)
                    .plus(FETCHING)
                    .plus(MOVING)
                    .plus(CLEANING),
            MODEL,
            "best case where a part is left out; real days lose more: 8-12 ha/h is a real day where 15.7 is reckoned"
                    + " (common practice)",
            List.of(
                    WorkedExample.from(TABLE)
                            .with(SPRAYING, 20.83, Units.MIN)
                            .with(TURNING, 3.47, Units.MIN)
                            .with(FILLING, 8, Units.MIN)
                            .with(FETCHING, 6, Units.MIN)
                            .with(MOVING, 0)
                            .with(CLEANING, 0)
                            .gives(38.3, Units.MIN, 2),
                    WorkedExample.from(Source.derived("the same with 5 minutes of moving and 20 of cleaning"))
                            .with(SPRAYING, 20.83, Units.MIN)
                            .with(TURNING, 3.47, Units.MIN)
                            .with(FILLING, 8, Units.MIN)
                            .with(FETCHING, 6, Units.MIN)
                            .with(MOVING, 5, Units.MIN)
                            .with(CLEANING, 20, Units.MIN)
                            .gives(63.3, Units.MIN, 2)));

    /** {@code spraying-work-rate}: area ÷ hours. */
    public static final Formula WORK_RATE = new Formula(
            "spraying-work-rate",
            RATE,
            value(AREA).over(HOURS),
            MODEL,
            "as spraying hours",
            List.of(WorkedExample.from(TABLE)
                    .with(AREA, 10)
                    .with(HOURS, 38.305, Units.MIN)
                    .gives(15.664, Units.HA_PER_H, 3)));

    /** {@code spraying-efficiency}: time spraying ÷ all time. */
    public static final Formula SPRAYING_EFFICIENCY = new Formula(
            "spraying-efficiency",
            EFFICIENCY,
            value(SPRAYING).over(HOURS),
            MODEL,
            "ASABE D497 gives boom sprayers 50-80 %, typically 65 % (from memory)",
            List.of(WorkedExample.from(TABLE)
                    .with(SPRAYING, 20.8333, Units.MIN)
                    .with(HOURS, 38.305, Units.MIN)
                    .gives(54.4, Units.PERCENT, 1)));

    /** Says which parts are left out; empty where all are counted. */
    public static final Expr LEFT_OUT = new Expr.Join(List.of(
            named(NO_TURNING, "turning (type run length and turn time). "),
            named(new Blank(FILL_TIME), "filling (type fill time). "),
            named(new Blank(DISTANCE_TO_FILL_POINT), "fetching water (type distance to fill point). "),
            named(Condition.all(List.of(AWAY, NO_ROAD)), "fetching water (type road speeds laden and empty). "),
            named(new Blank(MOVE_TIME), "moving (type move time). "),
            named(new Blank(CLEANING_TIME), "cleaning (type cleaning time). ")));

    private static Expr named(Condition when, String words) {
        return choice(when, text(words), text(""));
    }

    private static Symbol hours(String name) {
        return Symbol.number(name, Units.H).possible(Range.NOT_NEGATIVE).decimals(2);
    }
}
