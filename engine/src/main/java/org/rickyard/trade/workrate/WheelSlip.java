package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.TURNS_LOADED;
import static org.rickyard.trade.Quantities.TURNS_UNLOADED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** How much of its way a driving wheel loses at work, by the turns it makes over one distance with and without the load. */
public final class WheelSlip {
    private WheelSlip() {}

    /** Share of the wheels' way that is not made, per cent. */
    public static final Symbol SLIP = Symbol.number("wheel slip", Units.PERCENT)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);

    private static final Source CHART = Source.published(
            "a tractor's operator's manual, chart of slip: over the way of 10 loaded turns 9 unloaded are 10 %, 8.5 are 15 %, 8"
                    + " are 20 %");
    private static final Source ARIZONA = Source.published(
            "University of Arizona Cooperative Extension, Agricultural Machinery Management, best wheel slip: concrete 4-8 %, firm ground 8-10, tilled 11-13, soft or sandy 14-16");

    /** Less is less than best on any ground. */
    public static final Constant LITTLE = new Constant("wheel slip is little below", 4, Units.PERCENT, ARIZONA);
    /** More is more than best on any ground. */
    public static final Constant MUCH = new Constant("wheel slip is much above", 16, Units.PERCENT, ARIZONA);

    /** {@code wheel-slip}: (loaded turns − unloaded turns) ÷ loaded turns, over one distance. */
    public static final Formula WHEEL_SLIP = new Formula(
            "wheel-slip",
            SLIP,
            value(TURNS_LOADED)
                    .minus(TURNS_UNLOADED)
                    .over(TURNS_LOADED)
                    .onlyWhen(
                            Condition.compare(value(TURNS_LOADED), Condition.Relation.AT_LEAST, value(TURNS_UNLOADED)),
                            "the wheels made more turns without the load than with it: are the two mixed up, or not over"
                                    + " the same distance?"),
            CHART,
            "the same distance, gear and ground; on tyres at their pressure, with the ballast of the work",
            List.of(slip(9, 10), slip(8.5, 15), slip(8, 20)));

    private static WorkedExample slip(double unloaded, double slip) {
        return WorkedExample.from(CHART)
                .with(TURNS_LOADED, 10)
                .with(TURNS_UNLOADED, unloaded)
                .gives(slip, Units.PERCENT, 0);
    }
}
