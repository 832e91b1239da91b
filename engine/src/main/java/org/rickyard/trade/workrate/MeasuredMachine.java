package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.MACHINE_TYPE;
import static org.rickyard.trade.Quantities.NOZZLES;
import static org.rickyard.trade.Quantities.NOZZLE_SPACING;
import static org.rickyard.trade.Quantities.ROWS;
import static org.rickyard.trade.Quantities.ROW_WIDTH;
import static org.rickyard.trade.Quantities.TIMED_DISTANCE;
import static org.rickyard.trade.Quantities.TIMED_SECONDS;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.TimedRun;

/** Speeds that were timed and widths that are made of rows, for machines whose speed or width is not typed itself. */
public final class MeasuredMachine {
    private MeasuredMachine() {}

    /** A speed as typed, in a table that may have it by the watch. */
    public static final Symbol TYPED_SPEED = like("forward speed", Quantities.SPEED);
    /** Distance over time. */
    public static final Symbol WATCHED_SPEED = like("speed by the watch", Quantities.SPEED);
    /** A width as typed, in a table that may have it of rows. */
    public static final Symbol TYPED_WIDTH = like("width of the machine", Quantities.WORKING_WIDTH);
    /** Rows by their width. */
    public static final Symbol MADE_WIDTH = like("width of all rows", Quantities.WORKING_WIDTH);

    /** How the machine's speed was measured, whether or not one is typed that goes before. */
    public static final Symbol SPEED_BY = Symbol.text("speed measured by");
    /** How the machine's width was measured, whether or not one is typed that goes before. */
    public static final Symbol WIDTH_BY = Symbol.text("width measured by");

    private static Symbol like(String name, Symbol other) {
        return Symbol.number(name, other.unit()).possible(other.possible()).decimals(other.decimals());
    }

    private static final Source ALBERTA =
            Source.published("Government of Alberta, Agdex 606-1, p. 10-11: 800 m, to the nearest second");
    private static final Source IOWA = Source.published("Iowa State University AgDM A3-24, table of field capacities");

    /** {@code speed-by-watch}: distance ÷ time. */
    public static final Formula SPEED_BY_WATCH = new Formula(
            "speed-by-watch",
            WATCHED_SPEED,
            TimedRun.SPEED,
            ALBERTA,
            "where no speed is typed; in the field, at work",
            List.of(
                    WorkedExample.from(ALBERTA)
                            .with(TIMED_DISTANCE, 800)
                            .with(TIMED_SECONDS, 360)
                            .givesWithin(8, Units.KM_PER_H, 8 * 0.5 / 360),
                    WorkedExample.from(Source.published("Oklahoma State University, turf calibration: 200 ft in 27 s"))
                            .with(TIMED_DISTANCE, 200, Units.FT)
                            .with(TIMED_SECONDS, 27)
                            .givesWithin(5, Units.MPH, 0.06)));

    /**
     * {@code width-of-rows}: rows × width of each, or a boom's nozzles × their spacing. The nozzles of other sprayers
     * stand above each other or sweep, and make no width.
     */
    public static final Formula WIDTH_OF_ROWS = new Formula(
            "width-of-rows",
            MADE_WIDTH,
            choice(
                    Condition.typed(ROWS),
                    value(ROWS).times(ROW_WIDTH),
                    value(NOZZLES)
                            .times(NOZZLE_SPACING)
                            .onlyWhen(
                                    Condition.is(MACHINE_TYPE, "sprayer"),
                                    "it has no working width, nor rows: type its Working width (of an orchard sprayer the"
                                            + " row spacing, where every row is driven; a boom's may be made of its nozzles)")),
            Source.commonPractice(
                    "rows or furrows × the width of each; that a boom's width is the count of its nozzles ×"
                            + " their spacing is published: GRDC, Spray Application Manual, module 8.3"),
            "where no working width is typed",
            List.of(
                    WorkedExample.from(Source.derived(IOWA.reference() + ": plough of 6 × 16 in is 8 ft"))
                            .with(ROWS, 6)
                            .with(ROW_WIDTH, 16, Units.IN)
                            .gives(8, Units.FT, 6),
                    WorkedExample.from(Source.derived("48 nozzles at 0.5 m; a row's width alone says nothing"))
                            .with(MACHINE_TYPE, "sprayer")
                            .with(ROW_WIDTH, 0.75)
                            .with(NOZZLES, 48)
                            .with(NOZZLE_SPACING, 0.5)
                            .gives(24, Units.M, 6)));

    /** The speed reckoned with. */
    public static final Formula SPEED_RECKONED = new Formula(
            "speed-reckoned",
            Quantities.SPEED,
            given(TYPED_SPEED, value(WATCHED_SPEED)),
            Source.commonPractice("what is typed comes first"),
            "typed; otherwise by the watch",
            List.of(
                    WorkedExample.from(Source.commonPractice("typed"))
                            .with(TYPED_SPEED, 9)
                            .with(WATCHED_SPEED, 8)
                            .gives(9, Units.KM_PER_H, 6),
                    WorkedExample.from(Source.commonPractice("by the watch"))
                            .with(WATCHED_SPEED, 8)
                            .gives(8, Units.KM_PER_H, 6)));

    /** The width reckoned with. */
    public static final Formula WIDTH_RECKONED = new Formula(
            "width-reckoned",
            Quantities.WORKING_WIDTH,
            given(TYPED_WIDTH, value(MADE_WIDTH)),
            Source.commonPractice("what is typed comes first"),
            "typed; otherwise of rows or nozzles",
            List.of(
                    WorkedExample.from(Source.commonPractice("typed"))
                            .with(TYPED_WIDTH, 3)
                            .with(MADE_WIDTH, 2.4)
                            .gives(3, Units.M, 6),
                    WorkedExample.from(Source.commonPractice("of rows"))
                            .with(MADE_WIDTH, 2.4)
                            .gives(2.4, Units.M, 6)));

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(SPEED_BY_WATCH, SPEED_RECKONED, WIDTH_OF_ROWS, WIDTH_RECKONED);
    }
}
