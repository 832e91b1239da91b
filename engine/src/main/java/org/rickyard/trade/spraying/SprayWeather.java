package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AIR_TEMPERATURE;
import static org.rickyard.trade.Quantities.HUMIDITY;
import static org.rickyard.trade.Quantities.WIND_HEIGHT;
import static org.rickyard.trade.Quantities.WIND_SPEED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** Wind, temperature and humidity as cautions. Nothing here says that spraying is safe or allowed. */
public final class SprayWeather {
    private SprayWeather() {}

    /** Wet-bulb temperature. */
    public static final Symbol WET_BULB =
            Symbol.number("wet bulb temperature", Units.CELSIUS).decimals(1);
    /** A difference of temperatures, which has no zero of its own. */
    public static final Unit DIFFERENCE = Unit.of("°C difference", Units.KELVIN.dimension(), Ratio.ONE);
    /** Dry bulb less wet bulb. */
    public static final Symbol DELTA_T = Symbol.number("Delta-T", DIFFERENCE).decimals(1);
    /** Wind near the boom. */
    public static final Symbol WIND_AT_BOOM = Symbol.number("wind at the boom", Units.KM_PER_H)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** What a guide says of that wind. */
    public static final Symbol WIND_ADVICE = Symbol.text("caution for this wind");

    private static final Source STULL =
            Source.published("Stull 2011, wet-bulb temperature from relative humidity and air"
                    + " temperature; check 13.69934 at 20 °C, 50 % in the NCAR documentation");
    private static final Source BUREAU =
            Source.secondHand("Australian Bureau of Meteorology, quoted by T. Wolf and others: 2 to 8, not above 10");
    private static final Source ONTARIO =
            Source.published("Ontario Ministry of Agriculture, How weather conditions affect spray applications");
    private static final Source GROWSAFE = Source.published(
            "GrowSafe New Zealand Standard Manual, Wind Speed: at nozzle height; an edge belongs to the windier row");

    /** From this height on a wind is not one at the boom. */
    public static final Constant HIGH_WIND = new Constant(
            "wind counts as measured high, from",
            5,
            Units.M,
            Source.commonPractice("judgement: forecasts and Beaufort are for 10 m"));
    /** How much of it blows at the boom. */
    public static final Constant BOOM_SHARE = new Constant(
            "wind at the boom, share of the wind at 10 m", 50, Units.PERCENT, Source.memory("rule of thumb"));
    /** Wettest air that is cautioned. */
    public static final Constant LOW_DELTA_T = new Constant("Delta-T low, below", 2, DIFFERENCE, BUREAU);
    /** Drying air. */
    public static final Constant HIGH_DELTA_T = new Constant("Delta-T high, above", 8, DIFFERENCE, BUREAU);
    /** Very drying air. */
    public static final Constant TOO_HIGH_DELTA_T = new Constant("Delta-T too high, above", 10, DIFFERENCE, BUREAU);
    /** Dry. */
    public static final Constant DRY_AIR = new Constant("air dry, below", 40, Units.PERCENT, ONTARIO);
    /** Hot. */
    public static final Constant HOT_AIR = new Constant("air hot, above", 25, Units.CELSIUS, ONTARIO);

    /** Said of hardly any wind. */
    public static final String STILL = "below 2 km/h: still air, inversion risk; medium or coarse drops only";
    /** Said of more wind than is good. */
    public static final String INCREASED = "10-15 km/h: increased drift risk; no fine drops";
    /** Said of nearly too much. */
    public static final String EXTREME = "15-20 km/h: extreme caution";
    /** Said of too much. */
    public static final String UNSUITABLE = "20 km/h and more: unsuitable";

    /** What the guide says, by wind at nozzle height. */
    public static final ReferenceTable WIND_TABLE = new ReferenceTable(
            "Wind at nozzle height",
            "wind, from",
            Units.KM_PER_H,
            "caution",
            Units.ONE,
            List.of(
                    Row.of(0, STILL),
                    Row.of(2, "2-3 km/h: no fine drops on warm sunny days"),
                    Row.of(3, "3-6 km/h: no wind caution in the guide; site and label still decide"),
                    Row.of(6, "6-10 km/h: drift increases; mind what lies downwind"),
                    Row.of(10, INCREASED),
                    Row.of(15, EXTREME),
                    Row.of(20, UNSUITABLE)),
            GROWSAFE);

    /** {@code wet-bulb}: Stull's fit; its numbers are coefficients of the fit. */
    public static final Formula WET_BULB_TEMPERATURE = new Formula(
            "wet-bulb",
            WET_BULB,
            new Expr.AsUnit(stull(), Units.CELSIUS),
            STULL,
            "humidity 5-99 %, -20 to 50 °C, near sea level; error -1 to +0.65 °C",
            List.of(
                    WorkedExample.from(STULL)
                            .with(AIR_TEMPERATURE, 20)
                            .with(HUMIDITY, 50)
                            .gives(13.699, Units.CELSIUS, 3),
                    // The full psychrometric formula; the fit's mean error is below 0.3.
                    WorkedExample.from(Source.published("NCAR documentation: psychrometric wet bulb at 20 °C, 50 %"))
                            .with(AIR_TEMPERATURE, 20)
                            .with(HUMIDITY, 50)
                            .givesWithin(13.75, Units.CELSIUS, 0.3),
                    derived(25, 40, 16.384),
                    derived(15, 70, 11.622),
                    derived(30, 30, 18.368),
                    derived(10, 90, 8.920),
                    derived(25, 30, 14.593),
                    // A web page prints 21.92 for this pair; the formula does not give it.
                    derived(30, 50, 22.297)));

    private static Expr stull() {
        Expr t = new Expr.NumberOf(value(AIR_TEMPERATURE), Units.CELSIUS);
        Expr rh = new Expr.NumberOf(value(HUMIDITY), Units.PERCENT);
        Expr first = t.times(atan(number(0.151977).times(call(Function.SQRT, rh.plus(number(8.313659))))));
        Expr last = number(0.00391838)
                .times(rh.times(call(Function.SQRT, rh)))
                .times(atan(number(0.023101).times(rh)));
        return first.plus(atan(t.plus(rh)))
                .minus(atan(rh.minus(number(1.676331))))
                .plus(last)
                .minus(number(4.686035));
    }

    private static Expr atan(Expr expr) {
        return call(Function.ATAN, expr);
    }

    private static WorkedExample derived(double celsius, double humidity, double wetBulb) {
        return WorkedExample.from(Source.derived("Stull's formula worked apart"))
                .with(AIR_TEMPERATURE, celsius)
                .with(HUMIDITY, humidity)
                .gives(wetBulb, Units.CELSIUS, 3);
    }

    /** {@code delta-t}: dry bulb − wet bulb. */
    public static final Formula DELTA = new Formula(
            "delta-t",
            DELTA_T,
            new Expr.AsUnit(
                    new Expr.NumberOf(value(AIR_TEMPERATURE), Units.CELSIUS)
                            .minus(new Expr.NumberOf(value(WET_BULB), Units.CELSIUS)),
                    DIFFERENCE),
            BUREAU,
            "an Australian guide to how fast drops dry; no law of the place",
            List.of(WorkedExample.from(Source.derived("20 °C less 13.699 °C"))
                    .with(AIR_TEMPERATURE, 20)
                    .with(WET_BULB, 13.699)
                    .gives(6.301, DIFFERENCE, 3)));

    /** {@code wind-at-boom}: half of a wind measured high, else as measured. */
    public static final Formula BOOM_WIND = new Formula(
            "wind-at-boom",
            WIND_AT_BOOM,
            choice(
                    Condition.compare(
                            call(Function.ROUND, value(WIND_HEIGHT), number(9)),
                            Relation.AT_LEAST,
                            constant(HIGH_WIND)),
                    value(WIND_SPEED).times(constant(BOOM_SHARE)),
                    value(WIND_SPEED)),
            Source.memory("rule of thumb: about half of the wind at 10 m"),
            "measure at the boom on the day; the height must be stated",
            List.of(boom(12, 10, 6), boom(12, 5, 6), boom(12, 2, 12)));

    private static WorkedExample boom(double wind, double height, double answer) {
        return WorkedExample.from(BOOM_SHARE.source())
                .with(WIND_SPEED, wind)
                .with(WIND_HEIGHT, height)
                .gives(answer, Units.KM_PER_H, 6);
    }

    /** {@code wind-caution}: what the guide says. */
    public static final Formula WIND_CAUTION = new Formula(
            "wind-caution",
            WIND_ADVICE,
            // Cut to nine decimals, so that a wind typed in mph lies on the edge that it lies on in km/h.
            new Expr.Lookup(WIND_TABLE, call(Function.ROUND, value(WIND_AT_BOOM), number(9)), Expr.Lookup.Mode.STEP),
            GROWSAFE,
            "a guide of New Zealand; Defra calls 3.2-6.5 km/h at the boom (force 2) best; the label and local law stand"
                    + " before both. Never a permission",
            List.of(
                    wind(1.9, STILL),
                    wind(2.0, "2-3 km/h: no fine drops on warm sunny days"),
                    wind(3, "3-6 km/h: no wind caution in the guide; site and label still decide"),
                    wind(6, "6-10 km/h: drift increases; mind what lies downwind"),
                    wind(10, INCREASED),
                    wind(15, EXTREME),
                    wind(20.1, UNSUITABLE)));

    private static WorkedExample wind(double speed, String answer) {
        return WorkedExample.from(GROWSAFE).with(WIND_AT_BOOM, speed).gives(answer);
    }
}
