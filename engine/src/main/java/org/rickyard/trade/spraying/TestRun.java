package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.TEST_AREA;
import static org.rickyard.trade.Quantities.TIMED_DISTANCE;
import static org.rickyard.trade.Quantities.WHEEL_CIRCUMFERENCE;
import static org.rickyard.trade.Quantities.WHEEL_TURNS;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;

import java.util.List;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Units;

/** The ground of a test that is told by how far and how wide it was, as most bulletins tell it. */
public final class TestRun {
    private TestRun() {}

    /** An area as typed, in a table that may have it of a run. */
    public static final Symbol TYPED_AREA = Symbol.number("test area typed", TEST_AREA.unit())
            .possible(TEST_AREA.possible())
            .decimals(TEST_AREA.decimals());

    /** A distance as typed, in a table that may have it of the turns of a wheel. */
    public static final Symbol TYPED_DISTANCE = Symbol.number("test distance typed", TIMED_DISTANCE.unit())
            .possible(TIMED_DISTANCE.possible())
            .decimals(TIMED_DISTANCE.decimals());

    private static final Source TURNS = Source.published("University of Florida, UF00067504, table 2: what falls while"
            + " the wheel is turned is what falls over turns × its circumference");

    /** {@code test-distance}: typed, otherwise turns × circumference. */
    public static final Formula TESTED_DISTANCE = new Formula(
            "test-distance",
            TIMED_DISTANCE,
            given(TYPED_DISTANCE, value(WHEEL_TURNS).times(WHEEL_CIRCUMFERENCE)),
            TURNS,
            "where no distance is typed: the wheel that drives the feed, turned at about the pace of the work; in the"
                    + " field it slips, so try the setting there too",
            List.of(
                    WorkedExample.from(Source.derived("43 turns of a wheel of 9 ft, as in that table, are 387 ft"))
                            .with(WHEEL_TURNS, 43)
                            .with(WHEEL_CIRCUMFERENCE, 9, Units.FT)
                            .gives(387, Units.FT, 6),
                    WorkedExample.from(Source.commonPractice("what is typed comes first"))
                            .with(TYPED_DISTANCE, 100)
                            .with(WHEEL_TURNS, 43)
                            .with(WHEEL_CIRCUMFERENCE, 2)
                            .gives(100, Units.M, 6)));

    private static final Source FLORIDA =
            Source.published("University of Florida, UF00067504, table 1: 10 × 435 ft are 4,350 square feet");

    /** {@code test-area}: typed, otherwise distance × width. */
    public static final Formula TESTED_AREA = new Formula(
            "test-area",
            TEST_AREA,
            given(TYPED_AREA, value(TIMED_DISTANCE).times(WORKING_WIDTH)),
            FLORIDA,
            "where no test area is typed: what was used or caught, was so over the distance typed, once, at full width",
            List.of(
                    WorkedExample.from(FLORIDA)
                            .with(TIMED_DISTANCE, 435, Units.FT)
                            .with(WORKING_WIDTH, 10, Units.FT)
                            .gives(4350, Units.FT.pow(2), 0),
                    WorkedExample.from(Source.commonPractice("what is typed comes first"))
                            .with(TYPED_AREA, 100)
                            .with(TIMED_DISTANCE, 50)
                            .with(WORKING_WIDTH, 12)
                            .gives(100, Units.M2, 6)));
}
