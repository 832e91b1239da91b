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

    /** How many times the highest dose is surely a slip of ml for L or g for kg. */
    public static final Constant SLIP_OF_A_THOUSAND = new Constant(
            "dose surely typed in ml or g, from times the highest dose",
            200,
            Units.ONE,
            Source.commonPractice("judgement: ml for L is a thousand times"));
    /** A dose above this is liquid fertiliser or a slip. */
    public static final Constant HIGH_DOSE = new Constant(
            "dose unusually high, above",
            100,
            Units.DOSE,
            Source.memory("judgement: crop protection seldom above 10 L/ha, liquid fertiliser to 600"));
    /** More product than this in the spray is no usual tank mix; a wiper's may be. */
    public static final Constant HIGH_SHARE = new Constant(
            "dose in the spray unusually high, above",
            0.05,
            Units.CONCENTRATION,
            Source.memory("judgement: a dose of a fraction of a per cent up to a few per cent is usual"));
    /** A dose below this share of the highest is asked about. */
    public static final Constant LOW_SHARE = new Constant(
            "dose unusually low, below this share of the highest",
            25,
            Units.PERCENT,
            Source.memory("judgement: a slip of acres for hectares or a quarter dose"));

    /** Driving faster than this while spraying is cautioned. */
    public static final Constant FAST = new Constant(
            "spraying speed high, above",
            16,
            Units.KM_PER_H,
            Source.published(
                    "GRDC e-library, speed note: avoid more than 16-18 km/h in higher wind; at 20 km/h of wind,"
                            + " 30 km/h nearly doubles the drift of 8 km/h"));
}
