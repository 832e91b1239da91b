package org.rickyard.plan.silage;

import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.ClampSides;
import org.rickyard.trade.silage.EffluentTank;
import org.rickyard.trade.silage.FilledByCrop;
import org.rickyard.trade.silage.SilageCautions;

/** How high each clamp stands on the day of filling, how high it should never stand, and how high the crop fills it. */
final class ClampHeightTables {
    private ClampHeightTables() {}

    private static final Condition WALLED = Condition.is(Quantities.CLAMP_KIND, ClampShape.WALLED);
    private static final Condition HEAP = Condition.any(List.of(
            Condition.is(Quantities.CLAMP_KIND, ClampShape.HEAP),
            Condition.is(Quantities.CLAMP_KIND, ClampShape.FIELD_HEAP)));

    private static final List<CautionRule> RULES = List.of(
            new CautionRule(
                    Severity.STOP,
                    Condition.all(List.of(
                            WALLED,
                            more(
                                    ClampHeights.TOP_ON_DAY,
                                    constant(ClampHeights.TIMES_WALL).times(Quantities.WALL_HEIGHT)))),
                    "on the day of filling the silage stands above twice the wall height: do not fill so high."),
            new CautionRule(
                    Severity.STOP,
                    Condition.all(List.of(
                            WALLED,
                            Condition.is(Quantities.COUNTRY, EffluentTank.NORTHERN_IRELAND),
                            more(ClampHeights.TOP_ON_DAY, value(Quantities.WALL_HEIGHT)))),
                    "HSENI: a walled silo is never filled above its wall; on the day this one is."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(WALLED, more(ClampHeights.TOP_ON_DAY, value(Quantities.WALL_HEIGHT)))),
                    "on the day of filling the silage stands above the wall: check the wall's loading notice."),
            new CautionRule(
                    Severity.STOP,
                    Condition.all(List.of(
                            WALLED,
                            Condition.above(
                                    value(FilledByCrop.FILLED_TO).plus(ClampHeights.SETTLING),
                                    constant(ClampHeights.TIMES_WALL).times(Quantities.WALL_HEIGHT)))),
                    "the crop listed would fill it above twice its wall height before it settles: put part of it"
                            + " elsewhere."),
            // Of what has no height at all there is none to compare.
            new CautionRule(
                    Severity.STOP,
                    Condition.all(List.of(
                            Condition.any(List.of(WALLED, HEAP)),
                            Condition.above(value(ClampContents.FILL), number(1)),
                            new Condition.Not(new Condition.Given(FilledByCrop.FILLED_TO)))),
                    "the crop listed is more than it holds at any height: put part of it elsewhere."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(value(ClampContents.FILL), number(1)),
                    "the crop listed is more than it holds at the height reckoned with: on the day it stands higher than"
                            + " the heights given here."),
            new CautionRule(
                    Severity.STOP,
                    more(Quantities.SETTLED_HEIGHT, value(Quantities.FILLED_HEIGHT)),
                    "the settled height typed is above the filled height typed: silage only sinks. Check both."),
            new CautionRule(
                    Severity.CAUTION,
                    more(Quantities.WALL_HEIGHT, metres(6)),
                    "wall height above 6 m: if it was measured in feet, write ft in its header."),
            new CautionRule(
                    Severity.CAUTION,
                    more(ClampHeights.TOP_ON_DAY, constant(ClampHeights.REACH)),
                    "higher than the least reach of an unloader (12 ft, 3.7 m): an overhanging face may collapse."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(HEAP, less(ClampSides.BATTER_USED, number(3)))),
                    "sides steeper than 1 in 3, the published limit for driving over a heap."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(HEAP, less(ClampShape.HEAP_HEIGHT, value(ClampSides.HEIGHT)))),
                    "the sides of this heap meet below the height typed, so it ends in a ridge (Clamp capacity, heap"
                            + " height): lower it, or make it wider."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.is(Quantities.CLAMP_KIND, ClampShape.EARTH_PIT),
                            less(ClampSides.BATTER_USED, number(1)))),
                    "sides of earth steeper than 45 degrees (HSENI: slope them flatter); an engineer decides."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(
                            List.of(more(ClampSides.RAMPS_USED, number(0)), less(Quantities.RAMP_RUN, number(3)))),
                    "ramp steeper than 1 in 3, the published limit for driving over silage."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.is(Quantities.OVERHEAD_LINES, "yes"),
                    "overhead lines: check the height on the day and every raised machine with the network operator."));

    /** One row per clamp. */
    static final TableSpec HEIGHTS = new TableSpec(
            "clamp-heights",
            "Clamp heights",
            "Clamp heights: on the day of filling, never above, and where the crop fills it to",
            "one row per clamp",
            Sentences.appended(columns(), RULES),
            List.of(),
            SilageCautions.HEIGHTS,
            RULES);

    private static List<TableColumn> columns() {
        List<TableColumn> columns = new ArrayList<>(ClampJoin.columns(
                ClampJoin.COUNTRY,
                new TableColumn.Word(
                        Quantities.OVERHEAD_LINES, List.of(Candidate.typed(Role.CLAMP, Clamps.OVERHEAD_LINES))),
                ClampJoin.link(Quantities.WALL_HEIGHT, Clamps.WALL_HEIGHT),
                ClampJoin.optional(Quantities.SETTLED_HEIGHT, Clamps.SETTLED_HEIGHT),
                ClampJoin.optional(Quantities.FILLED_HEIGHT, Clamps.FILLED_HEIGHT),
                ClampJoin.optional(Quantities.CROWN, Clamps.CROWN),
                ClampJoin.link(Quantities.CLAMP_LENGTH, Clamps.LENGTH),
                ClampJoin.link(Quantities.FLOOR_WIDTH, Clamps.FLOOR_WIDTH),
                ClampJoin.link(Quantities.RAMP_RUN, Clamps.RAMP_RUN),
                ClampJoin.from(ClampSides.HEIGHT),
                ClampJoin.from(ClampShape.HEAP_HEIGHT),
                ClampJoin.from(ClampSides.BATTER_USED),
                ClampJoin.from(ClampSides.RAMPS_USED),
                ClampJoin.from(ClampContents.CLAMP_DM),
                ClampJoin.from(ClampContents.CROP_IN),
                ClampJoin.from(ClampContents.DENSITY),
                new TableColumn.Calculated(ClampHeights.SETTLING_BY_DM, false),
                new TableColumn.Calculated(ClampHeights.FILLED, true),
                new TableColumn.Calculated(ClampHeights.TOP, true),
                new TableColumn.Calculated(ClampHeights.DO_NOT_EXCEED, true),
                new TableColumn.Calculated(FilledByCrop.VOLUME_OF_CROP, false),
                new TableColumn.Calculated(FilledByCrop.FIRST_TERM, false),
                new TableColumn.Calculated(FilledByCrop.SECOND_TERM, false),
                new TableColumn.Calculated(FilledByCrop.THIRD_TERM, false)));
        FilledByCrop.STEPS_TAKEN.forEach(step -> columns.add(new TableColumn.Calculated(step, false)));
        columns.add(new TableColumn.Calculated(FilledByCrop.LEFT_OVER, false));
        columns.add(new TableColumn.Calculated(FilledByCrop.HEIGHT_WHEN_FILLED, true));
        columns.add(ClampJoin.from(ClampContents.FILL));
        return columns;
    }

    /** Above by more than the noise of a sum: 2.7 m and a crown of 0.6 m are not above a wall of 3.3 m. */
    private static Condition more(Symbol symbol, Expr bound) {
        return Condition.above(value(symbol), bound);
    }

    private static Condition less(Symbol symbol, Expr bound) {
        return Condition.below(value(symbol), bound);
    }

    private static Expr metres(double value) {
        return new Expr.AsUnit(number(value), Units.M);
    }
}
