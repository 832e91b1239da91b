package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.greatest;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CLAMP_LENGTH;
import static org.rickyard.trade.Quantities.WALL_HEIGHT;
import static org.rickyard.trade.silage.ClampSides.BATTER_USED;
import static org.rickyard.trade.silage.Digging.SPOIL;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** The bank of spoil along one side of a pit: how big it is and how far back it must stand. */
public final class SpoilHeap {
    private SpoilHeap() {}

    /** Section of the bank. */
    public static final Symbol SECTION = Symbol.number("spoil heap section", Units.M2)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Height of the bank. */
    public static final Symbol HEIGHT =
            Symbol.number("spoil heap height", Units.M).possible(Range.POSITIVE).decimals(1);
    /** Width of the bank. */
    public static final Symbol WIDTH =
            Symbol.number("spoil heap width", Units.M).possible(Range.POSITIVE).decimals(1);
    /** Ground under the bank. */
    public static final Symbol FOOTPRINT = Symbol.number("spoil heap footprint", Units.M2)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** How far its toe stands back. */
    public static final Symbol BACK = Symbol.number("spoil kept back from the edge, at least", Units.M)
            .possible(Range.POSITIVE)
            .decimals(1);

    /** Slope of loose soil. */
    public static final Constant SLOPE = new Constant(
                    "slope of a spoil heap, metres out for each metre up",
                    1.5,
                    Units.ONE,
                    Source.memory("loose soil lies at about 34 degrees; wet clay and sand lie flatter"))
            .aboveZero();
    /** Never nearer than this. */
    public static final Constant LEAST_BACK = new Constant(
            "spoil kept back from any edge, at least", 1, Units.M, Source.commonPractice("never at the edge itself"));

    private static final Source TRIANGLE = Source.derived("a bank of triangular section along one side of the pit");

    /** Section: spoil ÷ length of the pit at the top. */
    public static final Formula HEAP_SECTION = new Formula(
            "spoil-heap-section",
            SECTION,
            value(SPOIL).over(length()),
            TRIANGLE,
            "one bank as long as the pit at ground level; loose volume",
            List.of(
                    WorkedExample.from(Source.derived("270 m3 along a pit 27 m long at the top"))
                            .with(SPOIL, 270)
                            .with(CLAMP_LENGTH, 24)
                            .with(BATTER_USED, 0.5)
                            .with(WALL_HEIGHT, 3)
                            .gives(10, Units.M2, 6),
                    WorkedExample.from(Source.derived("922.5 m3 along a pit 30 m long at the top: 30.75 m2"))
                            .with(SPOIL, 922.5)
                            .with(CLAMP_LENGTH, 24)
                            .with(BATTER_USED, 1)
                            .with(WALL_HEIGHT, 3)
                            .gives(30.75, Units.M2, 3)));

    /** Height: √(section ÷ slope). */
    public static final Formula HEAP_HEIGHT = new Formula(
            "spoil-heap-height",
            HEIGHT,
            new Expr.AsUnit(
                    call(Function.SQRT, new Expr.NumberOf(value(SECTION), Units.M2).over(constant(SLOPE))), Units.M),
            TRIANGLE,
            "sides of one slope, meeting in a ridge",
            List.of(WorkedExample.from(Source.derived("13.5 m2 at 1.5 for 1: 3 m, as 9 m wide × 3 m ÷ 2"))
                    .with(SECTION, 13.5)
                    .gives(3, Units.M, 6)));

    /** Width: twice slope × height. */
    public static final Formula HEAP_WIDTH = new Formula(
            "spoil-heap-width",
            WIDTH,
            number(2).times(constant(SLOPE)).times(HEIGHT),
            TRIANGLE,
            "toe to toe",
            List.of(WorkedExample.from(Source.derived("3 m high at 1.5 for 1: 9 m"))
                    .with(HEIGHT, 3)
                    .gives(9, Units.M, 6)));

    /** {@code spoil-heap-footprint}: width × length. */
    public static final Formula HEAP_FOOTPRINT = new Formula(
            "spoil-heap-footprint",
            FOOTPRINT,
            value(WIDTH).times(length()),
            TRIANGLE,
            "the bank alone, without the ends and the way round it",
            List.of(
                    WorkedExample.from(Source.derived("9 m wide, 27 m long"))
                            .with(WIDTH, 9)
                            .with(CLAMP_LENGTH, 24)
                            .with(BATTER_USED, 0.5)
                            .with(WALL_HEIGHT, 3)
                            .gives(243, Units.M2, 6),
                    WorkedExample.from(Source.derived("9 m wide, 30 m long"))
                            .with(WIDTH, 9)
                            .with(CLAMP_LENGTH, 24)
                            .with(BATTER_USED, 1)
                            .with(WALL_HEIGHT, 3)
                            .gives(270, Units.M2, 3)));

    /** {@code spoil-distance-back}: the depth of the pit, never under the least. */
    public static final Formula DISTANCE_BACK = new Formula(
            "spoil-distance-back",
            BACK,
            greatest(value(WALL_HEIGHT), constant(LEAST_BACK)),
            Source.commonPractice(
                    "spoil, plant and vehicles back by at least the depth, unless an engineer says" + " otherwise"),
            "from the edge at ground level to the toe of the heap; no clearance: an engineer or the code decides",
            List.of(WorkedExample.from(Source.commonPractice("a pit 3 m deep"))
                    .with(WALL_HEIGHT, 3)
                    .gives(3, Units.M, 1)));

    private static Expr length() {
        return value(CLAMP_LENGTH).plus(number(2).times(BATTER_USED).times(WALL_HEIGHT));
    }
}
