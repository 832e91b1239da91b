package org.rickyard.trade.spraying;

import org.rickyard.formula.Constant;
import org.rickyard.formula.Source;
import org.rickyard.quantity.Units;

/** Limits that a careful adviser minds when planning tankfuls. */
public final class SprayLimits {
    private SprayLimits() {}

    /** A last load smaller than this share of the tank is hard to agitate and measure. */
    public static final Constant SMALL_LAST_LOAD = new Constant(
            "small last load, below this share of the tank",
            10,
            Units.PERCENT,
            Source.memory("operator training: agitation and sump need a minimum volume"));
}
