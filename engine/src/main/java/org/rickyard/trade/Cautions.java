package org.rickyard.trade;

import java.util.List;

/**
 * The cautions that hold for a whole family of work. They stand on the sheets above the figures. None of them is a
 * clearance: the label, the law of the place, the maker's book and licensed practice decide. Common practice unless a
 * body is named.
 */
public final class Cautions {
    private Cautions() {}

    /** Spraying. */
    public static final List<String> SPRAYING = List.of(
            "The product label and the law of the place come first: dose, water volume, crop, interval, buffer zone."
                    + " These figures never overrule them.",
            "Protective clothing as the label and your own assessment say; the concentrate is the greatest danger; wash"
                    + " gloves before taking them off, never eat or smoke. Fill away from water, never leave a tank"
                    + " filling, no back-siphoning, clear spills, rinse cans into the tank.",
            "Wind, weather, neighbours, paths, bees and watercourses are judged on the day; operator's certificate and"
                    + " sprayer test in date. Look up before unfolding a boom: overhead lines kill without being touched.");

    /** Applications to fields, near what they could reach. */
    public static final List<String> APPLICATIONS = List.of(
            SPRAYING.get(0),
            "Keep off water, springs, wells and boreholes, and frozen, snow-covered or waterlogged ground, as the label and"
                    + " local law say (Scotland: 1 m from water, 50 m from a source people drink from). Buffer zones run"
                    + " from the top of the bank; their assessment is yours, and recorded. Protective clothing as the"
                    + " label says.",
            SPRAYING.get(2));

    /** What goes into the tank. */
    public static final List<String> TANK = List.of(
            SPRAYING.get(0),
            SPRAYING.get(1),
            "Whether products may be mixed, and in which order, only their labels or suppliers say. Usual filling (from"
                    + " memory): half the water, agitate, the products one after another, then the rest of the water."
                    + " Wind, weather, bees and watercourses are judged on the day.");

    /** What is spread or drilled. */
    public static final List<String> SPREADING = List.of(
            "The product's label or analysis, the crop's need and the law of the place decide how much may be spread, when"
                    + " and how near to water; frozen, waterlogged or steep ground is left (common practice). Calibrate"
                    + " the machine with the product itself.",
            "Stop the engine and let discs, beaters and augers come to rest before you reach in; keep guards on, nobody in"
                    + " a hopper or under a hung bag. Gases of stirred slurry kill within breaths: out of sheds and away"
                    + " from pits while it is mixed.");

    /** Nozzles. */
    public static final List<String> NOZZLES = List.of(
            SPRAYING.get(0),
            "Pressure at the gauge is not pressure at the nozzle. Spray quality is the maker's word for a nozzle and"
                    + " pressure, never worked out from size. Boom about 0.5 m above the target, or as the maker says."
                    + " Protective clothing as the label says.",
            SPRAYING.get(2));

    /** Trees and bushes. */
    public static final List<String> TREES = List.of(
            SPRAYING.get(0),
            "The label's dose per hectare or per leaf wall decides, not the strength of the mix. Where only one side or"
                    + " every other row is sprayed, the row spacing is the width really covered."
                    + " Protective clothing as the label says; fill away from water.",
            SPRAYING.get(2));

    /** Silage clamps. */
    public static final List<String> CLAMPS = List.of(
            "Capacity is at settled height and density; on the day of filling silage stands 1-2 m higher. Check wall"
                    + " and power line heights with the height on the day, and the wall's own loading notice.",
            "Machines overturn at edges, on slopes, tipping on soft or sloping silage; falls from the edge kill; faces"
                    + " collapse: never undercut one or stand below. Keep children and bystanders away; mind the road.",
            "Silage gas kills: nitrogen dioxide for weeks after filling, carbon dioxide in pits. Effluent in a slurry"
                    + " store gives off hydrogen sulphide; it must not reach water: the local regulator's rules apply.");

    /** Digging a pit. */
    public static final List<String> DIGGING = List.of(
            "Before digging: local law on unlined pits, groundwater and distances; find buried services first. In many"
                    + " places a new unlined pit is not allowed: ask the regulator.",
            "Keep spoil, plant and vehicles back from the edge by at least the depth of the pit unless an engineer says"
                    + " otherwise; batter or support the sides; nobody in an unsupported pit; fence the edge.");

    /** Field machines. */
    public static final List<String> MACHINES = List.of(
            "Guards on and safe stop before leaving the seat: handbrake on, controls neutral, engine off, key out."
                    + " Clear blockages only with the engine stopped; nobody rides on loads, drawbars or implements.",
            "Slopes, ditch sides, overhead lines, children and bystanders are judged on the spot. Road weight, width and"
                    + " brake law are those of the place. Long days tire: rates hold only for rested drivers.",
            "Overhead lines kill without being touched: an auger, an open lid, a raised loader or body reaches them (HSE"
                    + " AIS8: some above 5.7 m). Lower all before you move; the network operator says how near.");
}
