package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CLAMP_KIND;
import static org.rickyard.trade.Quantities.CLAMP_LENGTH;
import static org.rickyard.trade.Quantities.FLOOR_WIDTH;
import static org.rickyard.trade.silage.ClampCrown.WIDTH_OVER_TOP;
import static org.rickyard.trade.silage.ClampShape.HEAP_HEIGHT;
import static org.rickyard.trade.silage.ClampShape.RAMP_LENGTH;
import static org.rickyard.trade.silage.ClampShape.TOP_WIDTH_USED;
import static org.rickyard.trade.silage.ClampSides.BATTER_USED;
import static org.rickyard.trade.silage.ClampSides.HEIGHT;
import static org.rickyard.trade.silage.ClampSides.RAMPS_USED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** The open surface of the silage: what the weather reaches and a sheet must cover. */
public final class ClampSurface {
    private ClampSurface() {}

    /** Surface open to the weather. */
    public static final Symbol SURFACE =
            Symbol.number("clamp surface", Units.M2).possible(Range.POSITIVE).decimals(0);

    private static final Source GEOMETRY = Source.derived("geometry of the surface, exact");

    /** {@code clamp-surface}: top and ramps of a clamp, top and all sides of a heap. */
    public static final Formula CLAMP_SURFACE = new Formula(
            "clamp-surface",
            SURFACE,
            choice(
                    Condition.is(CLAMP_KIND, ClampShape.WALLED),
                    walled(),
                    choice(
                            Condition.is(CLAMP_KIND, ClampShape.EARTH_PIT),
                            value(WIDTH_OVER_TOP)
                                    .times(value(CLAMP_LENGTH)
                                            .plus(number(2).times(BATTER_USED).times(HEIGHT))),
                            choice(
                                    Condition.is(CLAMP_KIND, ClampShape.MEASURED),
                                    value(CLAMP_LENGTH).times(FLOOR_WIDTH),
                                    ClampShape.heapOnly(heap())))),
            GEOMETRY,
            "settled; an end without ramp is taken as a wall or the feed face and not counted",
            List.of(
                    WorkedExample.from(Source.derived("31 m of 12.6 m, and a ramp 9 m long and 3 m high, 12 to 12.6 m "
                                    + "wide: 390.6 + 9√1.1111 × 12.3"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(WIDTH_OVER_TOP, 12.6)
                            .with(TOP_WIDTH_USED, 12.6)
                            .with(FLOOR_WIDTH, 12)
                            .with(CLAMP_LENGTH, 40)
                            .with(RAMPS_USED, 1)
                            .with(RAMP_LENGTH, 9)
                            .with(HEIGHT, 3)
                            .gives(507.288, Units.M2, 3),
                    WorkedExample.from(Source.derived(
                                    "a heap 20 × 10 m, 14 × 4 m on top, sides 3.6056 m long: 56 + 3.6056 × 48"))
                            .with(CLAMP_KIND, ClampShape.HEAP)
                            .with(CLAMP_LENGTH, 20)
                            .with(FLOOR_WIDTH, 10)
                            .with(TOP_WIDTH_USED, 4)
                            .with(BATTER_USED, 1.5)
                            .with(HEAP_HEIGHT, 2)
                            .gives(229.066, Units.M2, 3),
                    WorkedExample.from(Source.derived(
                                    "a pit 24 m long at the floor, 3 m deep at 45 degrees, 12 m wide on top"))
                            .with(CLAMP_KIND, ClampShape.EARTH_PIT)
                            .with(WIDTH_OVER_TOP, 12)
                            .with(CLAMP_LENGTH, 24)
                            .with(BATTER_USED, 1)
                            .with(HEIGHT, 3)
                            .gives(360, Units.M2, 6),
                    WorkedExample.from(Source.derived(
                                    "a pit 24 m long at the floor, 4 m deep, sides 2 for 1, 22 m wide on top"))
                            .with(CLAMP_KIND, ClampShape.EARTH_PIT)
                            .with(WIDTH_OVER_TOP, 22)
                            .with(CLAMP_LENGTH, 24)
                            .with(BATTER_USED, 2)
                            .with(HEIGHT, 4)
                            .gives(880, Units.M2, 6),
                    WorkedExample.from(Source.derived("a ramp of 4 m, 3 m high, 10 m wide slopes over 5 m: 50 m2"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(WIDTH_OVER_TOP, 10)
                            .with(TOP_WIDTH_USED, 10)
                            .with(FLOOR_WIDTH, 10)
                            .with(CLAMP_LENGTH, 4)
                            .with(RAMPS_USED, 1)
                            .with(RAMP_LENGTH, 4)
                            .with(HEIGHT, 3)
                            .gives(50, Units.M2, 6),
                    WorkedExample.from(Source.derived("a square pyramid of base 6 m and slope 4/3 up: 4 × 6 × 5 ÷ 2"))
                            .with(CLAMP_KIND, ClampShape.HEAP)
                            .with(CLAMP_LENGTH, 6)
                            .with(FLOOR_WIDTH, 6)
                            .with(TOP_WIDTH_USED, 0)
                            .with(BATTER_USED, 0.75)
                            .with(HEAP_HEIGHT, 4)
                            .gives(60, Units.M2, 6)));

    private static Expr walled() {
        Expr slope = Expr.call(
                Function.SQRT, number(1).plus(value(RAMP_LENGTH).over(HEIGHT).power(2)));
        Expr ramp = value(HEIGHT)
                .times(slope)
                .times(value(FLOOR_WIDTH).plus(TOP_WIDTH_USED))
                .over(number(2));
        return ClampShape.withinLength(value(WIDTH_OVER_TOP)
                .times(value(CLAMP_LENGTH).minus(value(RAMPS_USED).times(RAMP_LENGTH)))
                .plus(value(RAMPS_USED).times(ramp)));
    }

    private static Expr heap() {
        Expr topLength = value(CLAMP_LENGTH).minus(number(2).times(BATTER_USED).times(HEAP_HEIGHT));
        Expr slant = value(HEAP_HEIGHT)
                .times(Expr.call(
                        Function.SQRT, number(1).plus(value(BATTER_USED).power(2))));
        return topLength
                .times(TOP_WIDTH_USED)
                .plus(slant.times(
                        value(CLAMP_LENGTH).plus(topLength).plus(FLOOR_WIDTH).plus(TOP_WIDTH_USED)));
    }
}
