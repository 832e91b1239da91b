package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CLAMP_LENGTH;
import static org.rickyard.trade.Quantities.FLOOR_WIDTH;
import static org.rickyard.trade.Quantities.HOURS_PER_DAY;
import static org.rickyard.trade.Quantities.OUTPUT;
import static org.rickyard.trade.Quantities.OUTPUT_BASIS;
import static org.rickyard.trade.Quantities.OUTPUT_VOLUME;
import static org.rickyard.trade.Quantities.SOIL;
import static org.rickyard.trade.Quantities.WALL_HEIGHT;
import static org.rickyard.trade.silage.ClampSides.BATTER_USED;

import java.util.List;
import org.rickyard.formula.Condition;
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
import org.rickyard.trade.Quantities;

/** What must be dug for an earth pit, what the spoil comes to, and how long an excavator is at it. */
public final class Digging {
    private Digging() {}

    /** An output counted loose, in the heap or on the trailer. */
    public static final String LOOSE = "loose";
    /** An output counted in the ground. */
    public static final String IN_GROUND = "in ground";

    /** Soil as it lies. */
    public static final Symbol IN_GROUND_VOLUME =
            Symbol.number("volume in ground", Units.M3).possible(Range.POSITIVE).decimals(0);
    /** Soil once dug. */
    public static final Symbol SPOIL = Symbol.number("spoil volume (loose)", Units.M3)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Mass of the soil. */
    public static final Symbol SPOIL_TONNES =
            Symbol.number("spoil mass", Units.T).possible(Range.POSITIVE).decimals(0);
    /** Hours one excavator digs. */
    public static final Symbol DIG_HOURS =
            Symbol.number("digging hours", Units.H).possible(Range.POSITIVE).decimals(1);

    /** Swell reckoned with. */
    public static final Symbol SWELL_USED =
            Symbol.number("swell", Units.PERCENT).possible(Range.NOT_NEGATIVE).decimals(0);
    /** Days of digging. */
    public static final Symbol DIG_DAYS =
            Symbol.number("digging days", Units.D).possible(Range.POSITIVE).decimals(1);
    /** Hours dug in a day. */
    public static final Symbol DIG_HOURS_A_DAY = Symbol.number("hours dug in a day", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);

    private static final Source EARTHWORK =
            Source.memory("earthwork practice: loose = in ground × (1 + swell); mass = in ground × in-ground density");

    /** Swell where none is known. */
    public static final Constant SWELL = new Constant(
            "swell of soil when dug",
            25,
            Units.PERCENT,
            Source.memory("US Army FM 5-434, table 1-1, common earth 1.25; 11 % for sand to 43 % for clay"));
    /** In-ground density where none is known. */
    public static final Constant SOIL_DENSITY = new Constant(
            "in-ground density of soil",
            1.8,
            Units.T_PER_M3,
            Source.memory("loam 1.5-1.8, clay 1.7-2.1, gravel 1.8-2.2 t/m3"));

    /** Swell by soil. */
    public static final ReferenceTable SWELL_BY_SOIL = new ReferenceTable(
            "Swell of soil when dug, by soil",
            "soil",
            Units.ONE,
            "swell",
            Units.PERCENT,
            List.of(Row.of("sand", 11), Row.of("common earth", 24), Row.of("sand-clay", 26), Row.of("clay", 30)),
            Source.secondHand(
                    "US Navy table 10-1 (sand 100 in place, 111 loose); textbook densities in lb/yd3 of common"
                            + " earth 3,100/2,500, sand-clay 3,400/2,700, clay 3,000/2,310"));
    /** Hours dug where none are typed. */
    public static final Constant USUAL_HOURS = new Constant(
                    "hours an excavator digs in a day", 8, Units.H, Source.commonPractice("a working day"))
            .possible(HOURS_PER_DAY.possible());

    /** Swell: typed, else by the soil typed, otherwise the constant. */
    public static final Formula SWELL_OF_SOIL = new Formula(
            "swell",
            SWELL_USED,
            given(
                    Quantities.SWELL,
                    choice(
                            new Condition.InTable(SWELL_BY_SOIL, value(SOIL), Mode.EXACT),
                            new Expr.Lookup(SWELL_BY_SOIL, value(SOIL), Mode.EXACT),
                            constant(SWELL))),
            SWELL_BY_SOIL.source(),
            "soil freshly dug; typed, else by the soil; without a soil the constant stands",
            List.of(
                    WorkedExample.from(Source.commonPractice("what is typed comes first"))
                            .with(Quantities.SWELL, 35)
                            .with(SOIL, "clay")
                            .gives(35, Units.PERCENT, 0),
                    WorkedExample.from(Source.secondHand("US Navy table 10-1: 100 in place are 111 loose"))
                            .with(SOIL, "sand")
                            .gives(11, Units.PERCENT, 0),
                    WorkedExample.from(Source.secondHand("textbook values: clay 3,000 in place, 2,310 loose"))
                            .with(SOIL, "clay")
                            .gives(30, Units.PERCENT, 0),
                    WorkedExample.from(Source.secondHand("expertsmind worked solution: sand-clay swells by 26 %"))
                            .with(SOIL, "sand-clay")
                            .gives(26, Units.PERCENT, 0)));

    /** {@code volume-in-ground}: the pit by the prismoidal formula, at its full depth. */
    public static final Formula VOLUME_IN_GROUND = new Formula(
            "volume-in-ground",
            IN_GROUND_VOLUME,
            ClampShape.prismoid(WALL_HEIGHT, 1)
                    .onlyWhen(ClampSides.HAS_HEIGHT, "the pit has no depth: type it in Wall height"),
            Source.commonPractice("prismoidal formula of surveying"),
            "level ground; floor length and width; sides and ends of one slope",
            List.of(
                    WorkedExample.from(Source.derived("pit 30 × 12 m at the top, 24 × 6 m floor, 3 m deep: 738.0 m3"))
                            .with(CLAMP_LENGTH, 24)
                            .with(FLOOR_WIDTH, 6)
                            .with(WALL_HEIGHT, 3)
                            .with(BATTER_USED, 1)
                            .gives(738.0, Units.M3, 1),
                    WorkedExample.from(Source.memory(
                                    "worked example ascribed to USDA-NRCS Agriculture Handbook 590, Ponds"))
                            .with(CLAMP_LENGTH, 100, Units.FT)
                            .with(FLOOR_WIDTH, 40, Units.FT)
                            .with(WALL_HEIGHT, 12, Units.FT)
                            .with(BATTER_USED, 2)
                            .gives(3612, Units.YD3, 0)));

    /** {@code spoil-volume}: volume in ground × (1 + swell). */
    public static final Formula SPOIL_VOLUME = new Formula(
            "spoil-volume",
            SPOIL,
            value(IN_GROUND_VOLUME).times(number(1).plus(SWELL_USED)),
            EARTHWORK,
            "loose, as it lies in the heap or on the trailer",
            List.of(
                    WorkedExample.from(Source.derived("738 m3 swelling by 25 % is 922.5 m3 loose"))
                            .with(IN_GROUND_VOLUME, 738)
                            .with(SWELL_USED, 25)
                            .gives(922.5, Units.M3, 1),
                    WorkedExample.from(Source.secondHand(
                                    "expertsmind worked solution: 100 m3 of sand-clay dug are 126 m3 loose"))
                            .with(IN_GROUND_VOLUME, 100)
                            .with(SWELL_USED, 26)
                            .gives(126, Units.M3, 0),
                    WorkedExample.from(Source.secondHand(
                                    "the same: a short ton at 3,400 lb/yd3 is 0.59 yd3 in place," + " 0.74 loose"))
                            .with(IN_GROUND_VOLUME, 2000.0 / 3400, Units.YD3)
                            .with(SWELL_USED, 26)
                            .gives(0.74, Units.YD3, 2),
                    WorkedExample.from(Source.secondHand("US Navy table 10-1: sand, 100 in place are 111 loose"))
                            .with(IN_GROUND_VOLUME, 100)
                            .with(SWELL_USED, 11)
                            .gives(111, Units.M3, 0),
                    WorkedExample.from(Source.secondHand(
                                    "US Federal Lands Highway, PDDM ch. 9: a swell of 25 % is a" + " factor of 1.25"))
                            .with(IN_GROUND_VOLUME, 100)
                            .with(SWELL_USED, 25)
                            .gives(125, Units.M3, 0)));

    /** {@code spoil-mass}: volume in ground × in-ground density. */
    public static final Formula SPOIL_MASS = new Formula(
            "spoil-mass",
            SPOIL_TONNES,
            value(IN_GROUND_VOLUME).times(constant(SOIL_DENSITY)),
            EARTHWORK,
            "in-ground volume with in-ground density; never the loose volume",
            List.of(WorkedExample.from(Source.derived("738 m3 in ground at 1.8 t/m3 is 1,328.4 t"))
                    .with(IN_GROUND_VOLUME, 738)
                    .gives(1328.4, Units.T, 1)));

    /** {@code digging-hours}: by the basis of the excavator's output. */
    public static final Formula DIGGING_HOURS = new Formula(
            "digging-hours",
            DIG_HOURS,
            choice(
                    new Condition.Not(new Condition.Blank(OUTPUT_VOLUME)),
                    choice(
                            Condition.is(OUTPUT_BASIS, LOOSE),
                            value(SPOIL).over(OUTPUT_VOLUME),
                            value(IN_GROUND_VOLUME)
                                    .over(OUTPUT_VOLUME)
                                    .onlyWhen(
                                            Condition.is(OUTPUT_BASIS, IN_GROUND),
                                            "output basis missing (in ground or loose) for an output in m3/h")),
                    value(SPOIL_TONNES).over(OUTPUT)),
            EARTHWORK,
            "digging only: loading away, trimming and breakdowns come on top",
            List.of(
                    WorkedExample.from(Source.commonPractice(
                                    "a small tractor-mounted scoop shifts up to about 10 t of soil an hour (historic)"))
                            .with(SPOIL_TONNES, 100)
                            .with(OUTPUT, 10)
                            .gives(10, Units.H, 3),
                    WorkedExample.from(Source.derived("89,600 loose yd3 at 162 loose yd3/h take 553.09 h (inputs of a "
                                    + "published exercise)"))
                            .with(OUTPUT_BASIS, LOOSE)
                            .with(SPOIL, 89600, Units.YD3)
                            .with(OUTPUT_VOLUME, 162, Units.YD3.over(Units.H))
                            .gives(553.09, Units.H, 2)));

    /** Hours a day: typed for the excavator, otherwise the constant. */
    public static final Formula HOURS_A_DAY = new Formula(
            "digging-hours-a-day",
            DIG_HOURS_A_DAY,
            given(HOURS_PER_DAY, constant(USUAL_HOURS)),
            USUAL_HOURS.source(),
            "typed for the excavator, otherwise a working day",
            List.of(WorkedExample.from(USUAL_HOURS.source()).gives(8, Units.H, 0)));

    /** {@code digging-days}: hours ÷ hours a day. */
    public static final Formula DIGGING_DAYS = new Formula(
            "digging-days",
            DIG_DAYS,
            new Expr.AsUnit(value(DIG_HOURS).over(DIG_HOURS_A_DAY), Units.D),
            EARTHWORK,
            "one excavator; weather, moving and breakdowns come on top",
            List.of(WorkedExample.from(Source.derived("553.09 h in days of 8 h: 69.1 (inputs of a published exercise)"))
                    .with(DIG_HOURS, 553.09)
                    .with(DIG_HOURS_A_DAY, 8)
                    .gives(69.1, Units.D, 1)));
}
