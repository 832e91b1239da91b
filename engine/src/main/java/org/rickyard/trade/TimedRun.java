package org.rickyard.trade;

import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.TIMED_DISTANCE;
import static org.rickyard.trade.Quantities.TIMED_SECONDS;

import org.rickyard.formula.Expr;

/** A run over a measured distance by the watch, which tests of sprayers and rates of work ask for alike. */
public final class TimedRun {
    private TimedRun() {}

    /** Its speed: distance ÷ time. */
    public static final Expr SPEED = value(TIMED_DISTANCE).over(TIMED_SECONDS);
}
