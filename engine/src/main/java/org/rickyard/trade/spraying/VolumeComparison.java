package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.WATER_VOLUME;
import static org.rickyard.trade.spraying.TankPlan.TANK_FILLED;

import java.util.List;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;

/** The listed spraying of one sprayer at low and at high water volumes. */
public final class VolumeComparison {
    private VolumeComparison() {}

    /** The volume in words, to tell rows apart. */
    public static final Symbol VOLUME_NAME = Symbol.text("volume");
    /** All treated area of the sprayer. */
    public static final Symbol AREA =
            Symbol.number("area sprayed", Units.HA).possible(Range.POSITIVE).decimals(2);
    /** Hours beside filling. */
    public static final Symbol FIXED = Symbol.number("hours beside filling and fetching", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Area times round. */
    public static final Symbol ROUNDS = Symbol.number("area × time of a round of all fields", Units.HA.times(Units.H))
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** Water carted. */
    public static final Symbol WATER =
            Symbol.number("water carted", Units.M3).possible(Range.POSITIVE).decimals(1);
    /** Tankfuls. */
    public static final Symbol TANKFULS = Symbol.number("tankfuls at this volume", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Hours. */
    public static final Symbol HOURS = Symbol.number("hours at this volume", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** All area of the fields it sprays, of which bands are a part. */
    public static final Symbol AREA_OF_FIELDS = Symbol.number("area of the fields", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Area per hour. */
    public static final Symbol RATE = Symbol.number("work rate at this volume", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);

    /** Hours of the plan as it stands. */
    public static final Symbol PLANNED =
            Symbol.number("hours as planned", Units.H).possible(Range.POSITIVE).decimals(1);
    /** Hours more (or fewer, below 0) than the plan takes. */
    public static final Symbol AGAINST_PLAN =
            Symbol.number("hours more than planned", Units.H).decimals(1);

    private static final Source TABLE =
            Source.derived("24 m, 12 km/h, 3,000 L, fill 12 min, 1.5 km at 20 km/h, run 400 m, turn 20 s");
    static final Source OLD_PRACTICE = Source.commonPractice(
            "a large trailed high-volume sprayer of 500 gal (historic): 5 ac to a tank at 100 gal/ac, 100 ac at 5");

    /** The volumes compared. */
    public static final ReferenceTable VOLUMES = new ReferenceTable(
            "Water volumes compared",
            "place",
            Units.ONE,
            "water volume",
            Units.L_PER_HA,
            List.of(
                    Row.of(1, 50),
                    Row.of(2, 75),
                    Row.of(3, 100),
                    Row.of(4, 150),
                    Row.of(5, 200),
                    Row.of(6, 300),
                    Row.of(7, 400),
                    Row.of(8, 600),
                    Row.of(9, 1000)),
            Source.commonPractice("from low to high volume; a volume outside a label's range is no choice"));

    /** All treated area of the sprayer. */
    public static final Expr ALL_AREA =
            new Expr.Total(SprayWork.FIELDS, SprayWork.TREATED_AREA, Keys.MACHINE_KEY, Keys.MACHINE_KEY, true);
    /** All area of its fields. */
    public static final Expr ALL_FIELDS =
            new Expr.Total(SprayWork.FIELDS, Quantities.AREA, Keys.MACHINE_KEY, Keys.MACHINE_KEY, true);
    /** Its hours beside filling. */
    public static final Expr ALL_FIXED =
            new Expr.Total(SprayWork.FIELDS, SprayWork.FIXED, Keys.MACHINE_KEY, Keys.MACHINE_KEY, true);
    /** Its rounds. */
    public static final Expr ALL_ROUNDS =
            new Expr.Total(SprayWork.FIELDS, SprayWork.ROUNDS, Keys.MACHINE_KEY, Keys.MACHINE_KEY, true);

    /** Its hours at the water volumes of its jobs. */
    public static final Expr ALL_HOURS =
            new Expr.Total(SprayWork.FIELDS, SprayWork.HOURS, Keys.MACHINE_KEY, Keys.MACHINE_KEY, true);

    /** {@code water-carted}. */
    public static final Formula WATER_CARTED = new Formula(
            "water-carted",
            WATER,
            value(AREA).times(WATER_VOLUME),
            Source.derived("area × water volume"),
            "all listed spraying of this sprayer",
            List.of(
                    WorkedExample.from(SpraySources.FACTSHEET)
                            .with(AREA, 20)
                            .with(WATER_VOLUME, 200)
                            .gives(4000, Units.L, 0),
                    WorkedExample.from(SpraySources.ALBERTA)
                            .with(AREA, 30, Units.AC)
                            .with(WATER_VOLUME, 40, Units.L.over(Units.AC))
                            .gives(1200, Units.L, 0)));

    /** {@code compared-tankfuls}: as if all fields were one block. */
    public static final Formula COMPARED_TANKFULS = new Formula(
            "compared-tankfuls",
            TANKFULS,
            call(Function.ROUND_UP, value(AREA).times(WATER_VOLUME).over(TANK_FILLED)),
            OLD_PRACTICE,
            "as if all its fields were one block; blocks apart take more",
            List.of(
                    oldTank(5, 100, 1),
                    oldTank(100, 5, 1),
                    WorkedExample.from(SpraySources.FACTSHEET)
                            .with(AREA, 20)
                            .with(WATER_VOLUME, 200)
                            .with(TANK_FILLED, 1000)
                            .gives(4, Units.ONE, 0),
                    WorkedExample.from(Source.derived(
                                    "17.3 ha at 200 L/ha from a 1,500 L tank: 3,460 L, 2 full and a part"))
                            .with(AREA, 17.3)
                            .with(WATER_VOLUME, 200)
                            .with(TANK_FILLED, 1500)
                            .gives(3, Units.ONE, 0)));

    private static WorkedExample oldTank(double acres, double gallons, double tankfuls) {
        return WorkedExample.from(OLD_PRACTICE)
                .with(AREA, acres, Units.AC)
                .with(WATER_VOLUME, gallons, Units.GAL_UK.over(Units.AC))
                .with(TANK_FILLED, 500, Units.GAL_UK)
                .gives(tankfuls, Units.ONE, 0);
    }

    /** {@code compared-hours}: hours beside filling + water volume ÷ tank × area × round. */
    public static final Formula COMPARED_HOURS = new Formula(
            "compared-hours",
            HOURS,
            value(FIXED).plus(value(WATER_VOLUME).over(TANK_FILLED).times(ROUNDS)),
            TABLE,
            "best case where parts are not typed; only filling and fetching change with the volume",
            List.of(
                    hours(50, 21.578),
                    hours(100, 19.166),
                    hours(150, 17.239),
                    hours(200, 15.664),
                    hours(300, 13.243),
                    hours(400, 11.471)));

    /** 100 ha: 2.0833 + 0.3472 min/ha beside filling, a round of 12 + 9 min. */
    private static WorkedExample hours(double volume, double hectaresPerHour) {
        return WorkedExample.from(TABLE)
                .with(FIXED, 100 * (600 / 288.0 + 1e4 / (24 * 400) * 20 / 60) / 60)
                .with(ROUNDS, 100 * 21 / 60.0)
                .with(WATER_VOLUME, volume)
                .with(TANK_FILLED, 3000)
                .givesWithin(100 / hectaresPerHour, Units.H, 100 / hectaresPerHour * 5e-5);
    }

    /** {@code compared-work-rate}. */
    public static final Formula COMPARED_RATE = new Formula(
            "compared-work-rate",
            RATE,
            value(AREA_OF_FIELDS).over(HOURS),
            TABLE,
            "area of the fields an hour, of which bands are a part; low volumes gain time but not every product, crop or nozzle suits them",
            List.of(WorkedExample.from(TABLE)
                    .with(AREA_OF_FIELDS, 100)
                    .with(HOURS, 100 * 3.831, Units.MIN)
                    .gives(15.66, Units.HA_PER_H, 2)));

    /** {@code hours-against-plan}: what a change of volume would cost or save. */
    public static final Formula HOURS_AGAINST_PLAN = new Formula(
            "hours-against-plan",
            AGAINST_PLAN,
            call(Function.ROUND, value(HOURS).minus(PLANNED), number(9)),
            TABLE,
            "below 0 it saves hours; that alone is no reason: the label's least volume, cover and drift decide",
            List.of(WorkedExample.from(
                            Source.derived("100 ha of that farm, planned at 200 L/ha and 15.664 ha/h (6.384 h),"
                                    + " at 400 L/ha and 11.471 ha/h (8.718 h)"))
                    .with(HOURS, 8.718)
                    .with(PLANNED, 6.384)
                    .gives(2.334, Units.H, 3)));
}
