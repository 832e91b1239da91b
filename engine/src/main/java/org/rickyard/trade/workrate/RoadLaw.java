package org.rickyard.trade.workrate;

import org.rickyard.formula.Constant;
import org.rickyard.formula.Source;
import org.rickyard.quantity.Units;

/** Limits of the road that cautions quote, each with its country and year. They are not advice on the law. */
public final class RoadLaw {
    private RoadLaw() {}

    private static final Source GREAT_BRITAIN = Source.published("Great Britain: Construction and Use amendment of 9"
            + " March 2015, gov.uk written statement 10 February 2015; later rules may differ");

    /** Mass of a loaded agricultural trailer in Great Britain. */
    public static final Constant TRAILER_MASS =
            new Constant("Greatest trailer mass on roads of Great Britain (2015)", 18.29, Units.T, GREAT_BRITAIN);
    /** Mass of tractor and loaded trailer together in Great Britain. */
    public static final Constant TRAIN_MASS = new Constant(
            "Greatest mass of tractor and trailer on roads of Great Britain (2015)", 31, Units.T, GREAT_BRITAIN);
    /** Speed of agricultural tractor and trailer in Great Britain. */
    public static final Constant TRAILER_SPEED = new Constant(
            "Greatest speed of tractor and trailer on roads of Great Britain (2015)",
            40,
            Units.KM_PER_H,
            GREAT_BRITAIN);
}
