package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.least;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CLAMP_KIND;
import static org.rickyard.trade.Quantities.CLAMP_LENGTH;
import static org.rickyard.trade.Quantities.FLOOR_WIDTH;
import static org.rickyard.trade.Quantities.RAMP_RUN;
import static org.rickyard.trade.silage.ClampSides.BATTER_USED;
import static org.rickyard.trade.silage.ClampSides.BETWEEN_SIDES;
import static org.rickyard.trade.silage.ClampSides.HEIGHT;
import static org.rickyard.trade.silage.ClampSides.RAMPS_USED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** The volume of a clamp at its settled height, by kind. */
public final class ClampShape {
    private ClampShape() {}

    /** A clamp between walls. */
    public static final String WALLED = "walled";
    /** A pit dug in earth. */
    public static final String EARTH_PIT = "earth pit";
    /** A heap on a floor, no walls. */
    public static final String HEAP = "heap";
    /** A heap in the field. */
    public static final String FIELD_HEAP = "field heap";
    /** A clamp measured as it lies: mean length, mean width, mean height. */
    public static final String MEASURED = "measured";

    /** Cross-section between the walls. */
    public static final Symbol SECTION = Symbol.number("section of full height", Units.M2)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Length taken up by one ramp. */
    public static final Symbol RAMP_LENGTH =
            Symbol.number("ramp length", Units.M).possible(Range.NOT_NEGATIVE).decimals(2);
    /** Height at which a heap's sides meet, or the height wanted if that is lower. */
    public static final Symbol HEAP_HEIGHT =
            Symbol.number("heap height", Units.M).possible(Range.above(0, 12)).decimals(2);
    /** Width between the sides at the silage's own height. */
    public static final Symbol TOP_WIDTH_USED =
            Symbol.number("top width", Units.M).possible(Range.NOT_NEGATIVE).decimals(2);
    /** Section of the crown above the sides. */
    public static final Symbol CROWN_SECTION = Symbol.number("crown section", Units.M2)
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** Volume of silage. */
    public static final Symbol VOLUME =
            Symbol.number("clamp volume", Units.M3).possible(Range.POSITIVE).decimals(0);

    /** Silage lies in a heap. */
    static final Condition HEAPED =
            Condition.any(List.of(Condition.is(CLAMP_KIND, HEAP), Condition.is(CLAMP_KIND, FIELD_HEAP)));

    private static final Source GEOMETRY = Source.derived("geometry of the battered section and its ramps, exact");
    private static final Source PRISMOID = Source.commonPractice("prismoidal formula of surveying");
    private static final Source PRESS_EXAMPLE =
            Source.published("agriland.co.uk (press), clamp 3 × 10 × 30 m: 900 m3, 612 t at 25 %");
    private static final Source TEAGASC = Source.secondHand("Teagasc (E. Webb 2021-22): 28 × 10 × 2.7 m = 756 m3");

    /** The section between battered walls: floor width × height + slope × height². */
    public static final Formula FULL_SECTION = new Formula(
            "clamp-section",
            SECTION,
            value(FLOOR_WIDTH)
                    .times(HEIGHT)
                    .plus(value(BATTER_USED).times(value(HEIGHT).power(2)))
                    .onlyWhen(BETWEEN_SIDES, "walled clamps and earth pits only"),
            GEOMETRY,
            "walls battered alike on both sides",
            List.of(WorkedExample.from(Source.derived("12 m floor, 3 m high, batter 0.1: 36.9 m2"))
                    .with(CLAMP_KIND, WALLED)
                    .with(FLOOR_WIDTH, 12)
                    .with(HEIGHT, 3)
                    .with(BATTER_USED, 0.1)
                    .gives(36.9, Units.M2, 3)));

    /** Length of one ramp: run × height, 0 without ramps. */
    public static final Formula ONE_RAMP = new Formula(
            "ramp-length",
            RAMP_LENGTH,
            choice(
                    Condition.compare(value(RAMPS_USED), Relation.EQUAL, number(0)),
                    new Expr.AsUnit(number(0), Units.M),
                    value(RAMP_RUN).times(HEIGHT)),
            GEOMETRY,
            "straight ramps",
            List.of(WorkedExample.from(Source.derived("3 m high, 3 along for 1 up: 9 m"))
                    .with(RAMPS_USED, 1)
                    .with(RAMP_RUN, 3)
                    .with(HEIGHT, 3)
                    .gives(9, Units.M, 3)));

    /** Heap height: the height wanted, or where the sides meet if that is lower. */
    public static final Formula HEIGHT_OF_HEAP = new Formula(
            "heap-height",
            HEAP_HEIGHT,
            least(
                            value(HEIGHT),
                            value(FLOOR_WIDTH).over(number(2).times(BATTER_USED)),
                            value(CLAMP_LENGTH).over(number(2).times(BATTER_USED)))
                    .onlyWhen(HEAPED, "heaps only"),
            GEOMETRY,
            "sides and ends of one slope; a heap ends in a ridge where they meet",
            List.of(
                    WorkedExample.from(Source.derived("10 m wide, sides 3 for 1: they meet at 1.667 m"))
                            .with(CLAMP_KIND, HEAP)
                            .with(HEIGHT, 3)
                            .with(FLOOR_WIDTH, 10)
                            .with(CLAMP_LENGTH, 40)
                            .with(BATTER_USED, 3)
                            .gives(1.667, Units.M, 3),
                    WorkedExample.from(Source.derived("the same heap, named the other way round"))
                            .with(CLAMP_KIND, FIELD_HEAP)
                            .with(HEIGHT, 3)
                            .with(FLOOR_WIDTH, 40)
                            .with(CLAMP_LENGTH, 10)
                            .with(BATTER_USED, 3)
                            .gives(1.667, Units.M, 3)));

    /** {@code top-width}: between the sides at the silage's own height, by kind. */
    public static final Formula TOP_WIDTH = new Formula(
            "top-width",
            TOP_WIDTH_USED,
            choice(
                    Condition.is(CLAMP_KIND, MEASURED),
                    value(FLOOR_WIDTH),
                    choice(
                            BETWEEN_SIDES,
                            value(FLOOR_WIDTH).plus(number(2).times(BATTER_USED).times(HEIGHT)),
                            // Of a heap that runs up to an edge nothing is left but noise.
                            heapOnly(Expr.call(
                                    Function.ROUND,
                                    value(FLOOR_WIDTH)
                                            .minus(number(2).times(BATTER_USED).times(HEAP_HEIGHT)),
                                    number(9))))),
            GEOMETRY,
            "at the settled height; a heap narrows upward, walls and pits widen",
            List.of(
                    WorkedExample.from(Source.derived("a heap 10 m wide, sides 3 for 1, 1 m high: 4 m on top"))
                            .with(CLAMP_KIND, HEAP)
                            .with(FLOOR_WIDTH, 10)
                            .with(BATTER_USED, 3)
                            .with(HEAP_HEIGHT, 1)
                            .gives(4, Units.M, 6),
                    WorkedExample.from(Source.derived("12 m floor, 3 m high, batter 0.1: 12.6 m"))
                            .with(CLAMP_KIND, WALLED)
                            .with(FLOOR_WIDTH, 12)
                            .with(HEIGHT, 3)
                            .with(BATTER_USED, 0.1)
                            .gives(12.6, Units.M, 6)));

    /** {@code clamp-volume}: by kind. */
    public static final Formula CLAMP_VOLUME = new Formula(
            "clamp-volume",
            VOLUME,
            choice(
                    Condition.is(CLAMP_KIND, WALLED),
                    walled(),
                    choice(
                            Condition.is(CLAMP_KIND, EARTH_PIT),
                            prismoid(HEIGHT, 1).plus(value(CROWN_SECTION).times(CLAMP_LENGTH)),
                            choice(
                                    Condition.is(CLAMP_KIND, MEASURED),
                                    value(CLAMP_LENGTH).times(FLOOR_WIDTH).times(HEIGHT),
                                    heapOnly(prismoid(HEAP_HEIGHT, -1))))),
            PRISMOID,
            "settled height; length and width at the floor (measured clamps: mean length and width); a crown stands over the"
                    + " length of full height only",
            List.of(
                    WorkedExample.from(Source.derived(
                                    "the press clamp with a crown of 4.8 m2 over its 30 m: 900 + 144 m3"))
                            .with(CLAMP_KIND, WALLED)
                            .with(CLAMP_LENGTH, 30)
                            .with(RAMPS_USED, 0)
                            .with(RAMP_LENGTH, 0)
                            .with(SECTION, 30)
                            .with(CROWN_SECTION, 4.8)
                            .with(FLOOR_WIDTH, 10)
                            .with(HEIGHT, 3)
                            .with(BATTER_USED, 0)
                            .gives(1044, Units.M3, 6),
                    WorkedExample.from(Source.derived(
                                    "the pit of 738 m3 with a crown of 4.8 m2 over its floor of 24 m: 115.2 m3 more"))
                            .with(CLAMP_KIND, EARTH_PIT)
                            .with(CLAMP_LENGTH, 24)
                            .with(CROWN_SECTION, 4.8)
                            .with(FLOOR_WIDTH, 6)
                            .with(HEIGHT, 3)
                            .with(BATTER_USED, 1)
                            .gives(853.2, Units.M3, 6),
                    WorkedExample.from(PRESS_EXAMPLE)
                            .with(CLAMP_KIND, WALLED)
                            .with(CLAMP_LENGTH, 30)
                            .with(RAMPS_USED, 0)
                            .with(RAMP_LENGTH, 0)
                            .with(SECTION, 30)
                            .with(CROWN_SECTION, 0)
                            .with(FLOOR_WIDTH, 10)
                            .with(HEIGHT, 3)
                            .with(BATTER_USED, 0)
                            .gives(900, Units.M3, 0),
                    WorkedExample.from(GEOMETRY)
                            .with(CLAMP_KIND, WALLED)
                            .with(CLAMP_LENGTH, 40)
                            .with(RAMPS_USED, 1)
                            .with(RAMP_LENGTH, 9)
                            .with(SECTION, 36.9)
                            .with(CROWN_SECTION, 0)
                            .with(FLOOR_WIDTH, 12)
                            .with(HEIGHT, 3)
                            .with(BATTER_USED, 0.1)
                            .gives(1308.6, Units.M3, 1),
                    pit(
                            Source.derived("pit 30 × 12 m at the top, 24 × 6 m floor, 3 m deep: 738.0 m3"),
                            Units.M,
                            24,
                            6,
                            3,
                            1,
                            738.0,
                            Units.M3,
                            1),
                    pit(
                            Source.memory("worked example ascribed to USDA-NRCS Agriculture Handbook 590, Ponds"),
                            Units.FT,
                            100,
                            40,
                            12,
                            2,
                            3612,
                            Units.YD3,
                            0),
                    WorkedExample.from(TEAGASC)
                            .with(CLAMP_KIND, MEASURED)
                            .with(CLAMP_LENGTH, 28)
                            .with(FLOOR_WIDTH, 10)
                            .with(HEIGHT, 2.7)
                            .gives(756, Units.M3, 0),
                    WorkedExample.from(Source.derived("a square heap whose sides meet is a pyramid, base × height ÷ 3"))
                            .with(CLAMP_KIND, HEAP)
                            .with(CLAMP_LENGTH, 12)
                            .with(FLOOR_WIDTH, 12)
                            .with(HEAP_HEIGHT, 2)
                            .with(BATTER_USED, 3)
                            .gives(96, Units.M3, 6),
                    WorkedExample.from(Source.derived("the same cut off at half its height is a truncated pyramid,"
                                    + " height × (floor + top + √(floor × top)) ÷ 3 = (144 + 36 + 72) ÷ 3"))
                            .with(CLAMP_KIND, HEAP)
                            .with(CLAMP_LENGTH, 12)
                            .with(FLOOR_WIDTH, 12)
                            .with(HEAP_HEIGHT, 1)
                            .with(BATTER_USED, 3)
                            .gives(84, Units.M3, 6)));

    /** A clamp between walls: full section over the length without ramps, and the ramps' own wedges. */
    private static Expr walled() {
        Expr ramps = value(RAMPS_USED).times(RAMP_LENGTH);
        Expr wedge = value(FLOOR_WIDTH)
                .times(HEIGHT)
                .over(number(2))
                .plus(value(BATTER_USED).times(value(HEIGHT).power(2)).over(number(3)));
        return withinLength(value(SECTION)
                .plus(CROWN_SECTION)
                .times(value(CLAMP_LENGTH).minus(ramps))
                .plus(ramps.times(wedge)));
    }

    /** What has a meaning only where the ramps of a walled clamp leave each other room. */
    static Expr withinLength(Expr expr) {
        Expr ramps = value(RAMPS_USED).times(RAMP_LENGTH);
        return expr.onlyWhen(
                        Condition.any(List.of(
                                Condition.compare(value(RAMP_LENGTH), Relation.MORE, value(CLAMP_LENGTH)),
                                Condition.compare(value(CLAMP_LENGTH), Relation.AT_LEAST, ramps))),
                        "the two ramps overlap: together they are longer than the clamp")
                .onlyWhen(
                        Condition.compare(value(CLAMP_LENGTH), Relation.AT_LEAST, value(RAMP_LENGTH)),
                        "the ramp is longer than the clamp");
    }

    /** The last of the kinds; a clamp without kind, or of another word, is withheld. */
    static Expr heapOnly(Expr expr) {
        return expr.onlyWhen(HEAPED, "clamp kind missing (walled, earth pit, heap, field heap or measured)");
    }

    /** A body whose sides and ends slope alike, by the prismoidal formula; direction 1 widens upward, -1 narrows. */
    static Expr prismoid(Symbol height, int direction) {
        Expr once = value(BATTER_USED).times(height);
        Expr twice = number(2).times(BATTER_USED).times(height);
        Expr floor = value(CLAMP_LENGTH).times(FLOOR_WIDTH);
        Expr middle = moved(CLAMP_LENGTH, once, direction).times(moved(FLOOR_WIDTH, once, direction));
        Expr top = moved(CLAMP_LENGTH, twice, direction).times(moved(FLOOR_WIDTH, twice, direction));
        return value(height)
                .over(number(6))
                .times(floor.plus(number(4).times(middle)).plus(top));
    }

    private static Expr moved(Symbol edge, Expr by, int direction) {
        return direction > 0 ? value(edge).plus(by) : value(edge).minus(by);
    }

    private static WorkedExample pit(
            Source source,
            Unit length,
            double floorLength,
            double floorWidth,
            double depth,
            double batter,
            double answer,
            Unit unit,
            int decimals) {
        return WorkedExample.from(source)
                .with(CLAMP_KIND, EARTH_PIT)
                .with(CROWN_SECTION, 0)
                .with(CLAMP_LENGTH, floorLength, length)
                .with(FLOOR_WIDTH, floorWidth, length)
                .with(HEIGHT, depth, length)
                .with(BATTER_USED, batter)
                .gives(answer, unit, decimals);
    }
}
