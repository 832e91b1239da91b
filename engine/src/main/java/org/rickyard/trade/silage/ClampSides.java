package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.BATTER;
import static org.rickyard.trade.Quantities.CLAMP_KIND;
import static org.rickyard.trade.Quantities.FLOOR_WIDTH;
import static org.rickyard.trade.Quantities.RAMPS;
import static org.rickyard.trade.Quantities.RAMP_RUN;
import static org.rickyard.trade.Quantities.SETTLED_HEIGHT;
import static org.rickyard.trade.Quantities.WALL_HEIGHT;
import static org.rickyard.trade.Quantities.WIDTH_AT_TOP;
import static org.rickyard.trade.silage.ClampShape.EARTH_PIT;
import static org.rickyard.trade.silage.ClampShape.WALLED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** The height, side slope and ramps that a clamp is reckoned with: what is typed, or what stands in for it. */
public final class ClampSides {
    private ClampSides() {}

    /** Height of the silage reckoned with. */
    public static final Symbol HEIGHT =
            Symbol.number("silage height", Units.M).possible(Range.above(0, 12)).decimals(2);
    /** Wall or pit slope reckoned with. */
    public static final Symbol BATTER_USED =
            Symbol.number("side slope", Units.ONE).possible(Range.of(0, 10)).decimals(2);
    /** Ramped ends reckoned with. */
    public static final Symbol RAMPS_USED =
            Symbol.number("ramped ends", Units.ONE).possible(Range.of(0, 2)).decimals(0);

    /** Silage lies between walls or the sides of a pit. */
    static final Condition BETWEEN_SIDES =
            Condition.any(List.of(Condition.is(CLAMP_KIND, WALLED), Condition.is(CLAMP_KIND, EARTH_PIT)));

    /** A wall, or a pit's depth, is typed and is not 0. */
    static final Condition HAS_HEIGHT =
            Condition.compare(value(WALL_HEIGHT), Relation.MORE, new Expr.AsUnit(number(0), Units.M));

    /** Slope of clamp walls where none is typed. */
    public static final Constant WALL_BATTER = new Constant(
                    "batter of a walled clamp, if none is typed", 0, Units.ONE, Source.commonPractice("upright walls"))
            .possible(BATTER.possible());
    /** Ramps where none are typed. */
    public static final Constant NO_RAMPS = new Constant(
                    "ramps of a walled clamp, if none are typed",
                    0,
                    Units.ONE,
                    Source.commonPractice("full height over the whole length typed"))
            .possible(RAMPS.possible());

    /** How far a width at the top may be off what the batter makes of it. */
    public static final Constant WIDTHS_APART = new Constant(
            "batter and width at the top, most they may differ",
            5,
            Units.PERCENT,
            Source.commonPractice("rounding of a batter told as 1 in so much"));

    /** Silage height: settled height if typed, otherwise the wall. */
    public static final Formula SILAGE_HEIGHT = new Formula(
            "silage-height",
            HEIGHT,
            given(
                    SETTLED_HEIGHT,
                    value(WALL_HEIGHT)
                            .onlyWhen(
                                    HAS_HEIGHT,
                                    "the wall height is 0 and no settled height is typed: type the height of the wall or"
                                            + " pit, or how high a heap stands")),
            Source.commonPractice("settled height if typed, otherwise level with the wall or the edge of the pit"),
            "settled, four weeks or more after closing; on the day of filling it stands 1-2 m higher",
            List.of(WorkedExample.from(Source.derived("the typed settled height stands before the wall"))
                    .with(SETTLED_HEIGHT, 2.7)
                    .with(WALL_HEIGHT, 3)
                    .gives(2.7, Units.M, 1)));

    /**
     * Side slope: typed, or what the widths at the floor and at the top come to, or upright for walled and measured
     * clamps. A pit must have one of the first two, a heap the first.
     */
    public static final Formula SIDE_SLOPE = new Formula(
            "side-slope",
            BATTER_USED,
            choice(
                    // One that cannot be read is none that was left out: walls would be taken for upright.
                    Condition.all(
                            List.of(new Condition.Blank(BATTER), new Condition.Not(new Condition.Blank(WIDTH_AT_TOP)))),
                    value(WIDTH_AT_TOP)
                            .minus(FLOOR_WIDTH)
                            .over(number(2).times(WALL_HEIGHT))
                            .onlyWhen(
                                    BETWEEN_SIDES,
                                    "the width at the top gives the batter of walls and pits only: of a heap type its"
                                            + " Batter, and of a clamp measured as it lies its mean width in Floor width")
                            .onlyWhen(
                                    HAS_HEIGHT,
                                    "the wall height is 0: for a batter by the widths type the wall's height or the"
                                            + " pit's depth")
                            .onlyWhen(
                                    Condition.compare(value(WIDTH_AT_TOP), Relation.AT_LEAST, value(FLOOR_WIDTH)),
                                    "the width at the top is less than the floor width: see whether the two were"
                                            + " swapped"),
                    choice(Condition.is(CLAMP_KIND, WALLED), given(BATTER, constant(WALL_BATTER)), value(BATTER))),
            Source.commonPractice("typed, else half of what the top is wider, over the height; walls with neither are"
                    + " reckoned upright"),
            "horizontal per vertical, each side; the width at the top is that at the top of the walls, or at ground level over"
                    + " a pit",
            List.of(
                    WorkedExample.from(Source.memory(
                                    "worked example ascribed to USDA-NRCS Agriculture Handbook 590, Ponds: 40 ft bottom, 88"
                                            + " ft top, 12 ft deep have sides of 2:1"))
                            .with(CLAMP_KIND, EARTH_PIT)
                            .with(WIDTH_AT_TOP, 88, Units.FT)
                            .with(FLOOR_WIDTH, 40, Units.FT)
                            .with(WALL_HEIGHT, 12, Units.FT)
                            .gives(2, Units.ONE, 6),
                    WorkedExample.from(Source.derived("pit 12 m wide at the top, 6 m at the floor, 3 m deep: 1:1"))
                            .with(CLAMP_KIND, EARTH_PIT)
                            .with(WIDTH_AT_TOP, 12)
                            .with(FLOOR_WIDTH, 6)
                            .with(WALL_HEIGHT, 3)
                            .gives(1, Units.ONE, 6),
                    WorkedExample.from(Source.derived("walls 12 m apart at the floor, 12.6 m at 3 m: batter 0.1"))
                            .with(CLAMP_KIND, WALLED)
                            .with(WIDTH_AT_TOP, 12.6)
                            .with(FLOOR_WIDTH, 12)
                            .with(WALL_HEIGHT, 3)
                            .gives(0.1, Units.ONE, 6),
                    WorkedExample.from(Source.derived("the typed batter stands before the widths"))
                            .with(CLAMP_KIND, EARTH_PIT)
                            .with(BATTER, 1.5)
                            .with(WIDTH_AT_TOP, 12)
                            .with(FLOOR_WIDTH, 6)
                            .with(WALL_HEIGHT, 3)
                            .gives(1.5, Units.ONE, 2),
                    WorkedExample.from(Source.derived("the typed batter stands before the default"))
                            .with(CLAMP_KIND, WALLED)
                            .with(BATTER, 0.1)
                            .gives(0.1, Units.ONE, 2),
                    WorkedExample.from(Source.derived("walls without a typed batter stand upright"))
                            .with(CLAMP_KIND, WALLED)
                            .gives(0, Units.ONE, 2)));

    /** Ramped ends: typed, otherwise none. */
    public static final Formula RAMPED_ENDS = new Formula(
            "ramped-ends",
            RAMPS_USED,
            choice(new Condition.Blank(RAMP_RUN), given(RAMPS, constant(NO_RAMPS)), value(RAMPS)),
            Source.commonPractice("typed; otherwise none, but where the slope of a ramp is typed there is one or two"),
            "0 to 2",
            List.of(
                    WorkedExample.from(Source.derived("the typed number stands before the default"))
                            .with(RAMPS, 1)
                            .gives(1, Units.ONE, 0),
                    WorkedExample.from(Source.commonPractice("full height over the whole length"))
                            .gives(0, Units.ONE, 0),
                    WorkedExample.from(Source.derived("a slope typed and how many have it"))
                            .with(RAMP_RUN, 1)
                            .with(RAMPS, 2)
                            .gives(2, Units.ONE, 0)));
}
