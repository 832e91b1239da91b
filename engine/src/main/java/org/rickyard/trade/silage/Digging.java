package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CLAMP_LENGTH;
import static org.rickyard.trade.Quantities.FLOOR_WIDTH;
import static org.rickyard.trade.Quantities.OUTPUT;
import static org.rickyard.trade.Quantities.OUTPUT_BASIS;
import static org.rickyard.trade.Quantities.OUTPUT_VOLUME;
import static org.rickyard.trade.Quantities.WALL_HEIGHT;
import static org.rickyard.trade.silage.ClampShape.BATTER_USED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

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

    /** {@code volume-in-ground}: the pit by the prismoidal formula, at its full depth. */
    public static final Formula VOLUME_IN_GROUND = new Formula(
            "volume-in-ground",
            IN_GROUND_VOLUME,
            ClampShape.prismoid(WALL_HEIGHT, 1),
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
            value(IN_GROUND_VOLUME).times(number(1).plus(constant(SWELL))),
            EARTHWORK,
            "swell by soil: overrule it on Assumptions",
            List.of(WorkedExample.from(Source.derived("738 m3 swelling by 25 % is 922.5 m3 loose"))
                    .with(IN_GROUND_VOLUME, 738)
                    .gives(922.5, Units.M3, 1)));

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
                    Condition.is(OUTPUT_BASIS, LOOSE),
                    value(SPOIL).over(OUTPUT_VOLUME),
                    choice(
                            Condition.is(OUTPUT_BASIS, IN_GROUND),
                            value(IN_GROUND_VOLUME).over(OUTPUT_VOLUME),
                            value(SPOIL_TONNES).over(OUTPUT))),
            EARTHWORK,
            "digging only: loading away, trimming and breakdowns come on top",
            List.of(
                    WorkedExample.from(Source.commonPractice(
                                    "a small tractor-mounted scoop shifts up to about 10 t of soil an hour (historic)"))
                            .with(SPOIL_TONNES, 100)
                            .with(OUTPUT, 10)
                            .gives(10, Units.H, 3),
                    WorkedExample.from(
                                    Source.derived(
                                            "89,600 loose yd3 at 162 loose yd3/h take 553.09 h (inputs of a published exercise)"))
                            .with(OUTPUT_BASIS, LOOSE)
                            .with(SPOIL, 89600, Units.YD3)
                            .with(OUTPUT_VOLUME, 162, Units.YD3.over(Units.H))
                            .gives(553.09, Units.H, 2)));
}
