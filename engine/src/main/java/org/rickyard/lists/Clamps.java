package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.choice;
import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.special;

import java.util.List;
import java.util.Map;
import org.rickyard.trade.Quantities;

/**
 * The clamps, pits and heaps. {@link #EFFLUENT_TANK} is the name of a tank or its volume: a row whose
 * {@link ListRows#unit} is present holds a volume.
 */
public final class Clamps {
    private Clamps() {}

    /** Whose clamp. */
    public static final ColumnSpec HOLDING = Shared.HOLDING;
    /** Its name. */
    public static final ColumnSpec CLAMP = Shared.CLAMP
            .needed()
            .also("clamp id, clamp ref, name")
            .help("The name you know it by; each name once on a holding.");
    /** How it is built. */
    public static final ColumnSpec KIND = choice("Kind", Quantities.CLAMP_KIND, Choices.CLAMP_KIND)
            .needed()
            .asking(Map.of("stack", "write heap (on a hard floor) or field heap (on soil)"))
            .also("clamp construction, construction type, structure, type of structure, type, clamp kind, "
                    + "clamp type, construction, kind of clamp, silo type, pit type, type of pit, type of clamp, "
                    + "bunker type, type of silo, type of bunker")
            .help("walled, earth pit, heap, field heap or measured.");
    /** Length. */
    public static final ColumnSpec LENGTH = number("Length", Quantities.CLAMP_LENGTH)
            .needed()
            .also("L, clamp length, floor length, pit length, length at floor, overall length, bunker length, "
                    + "silo length, internal length, inside length, length at base, length of base, "
                    + "base length, bottom length")
            .help("At the floor, toe to toe.");
    /** Floor width. */
    public static final ColumnSpec FLOOR_WIDTH = number("Floor width", Quantities.FLOOR_WIDTH)
            .needed()
            .also("width between walls, "
                    + "W, width, clamp width, bottom width, width at floor, base width, internal width, "
                    + "inside width, pit width, bunker width, silo width, bay width, internal floor width, "
                    + "breadth, floor breadth, bottom breadth, width at base, width at bottom, "
                    + "width of floor, width of base")
            .help("Between the walls at the floor.");
    /** Wall height. */
    public static final ColumnSpec WALL_HEIGHT = number("Wall height", Quantities.WALL_HEIGHT)
            .needed()
            .also("side wall height, sidewall height, height of side walls, height of side wall, height of sidewalls, "
                    + "height of wall, side height, height of walls, depth, pit depth, wall")
            .help("Or depth of a pit; 0 for a heap without walls.");
    /** Settled height. */
    public static final ColumnSpec SETTLED_HEIGHT = number("Settled height", Quantities.SETTLED_HEIGHT)
            .also("settled silage depth, settled depth of silage, average silage depth, "
                    + "mean silage depth, average depth of silage, mean depth of silage, "
                    + "silage height, height settled, settled depth, height of silage, average settled height, "
                    + "silage depth, depth of silage, settled silage height, mean settled height, "
                    + "fill height settled, settled fill height, average silage height, mean silage height, "
                    + "average height, mean height, average depth, mean depth, average height of silage")
            .help("Mean height of the silage four weeks or more after closing.");
    /** Batter. */
    public static final ColumnSpec BATTER = special("Batter", ColumnSpec.Type.BATTER, Quantities.BATTER)
            .also(
                    "side slope, side slope h:v, side slope horizontal:vertical, wall batter, wall slope, slope of sides, batter of sides, side batter")
            .help("Metres out for each metre up; or 1 in 3 (1 up, 3 out), 45°. A bare ratio such as 1:3 is asked.");
    /** Ramped ends. */
    public static final ColumnSpec RAMPS = number("Ramps", Quantities.RAMPS)
            .also("number of ramps, ramped ends, ramp ends, no of ramps")
            .help("0, 1 or 2.");
    /** Slope of a ramp. */
    public static final ColumnSpec RAMP_RUN = special("Ramp run", ColumnSpec.Type.BATTER, Quantities.RAMP_RUN)
            .also("ramp slope, run of ramp, end slope, slope of ramp, ramp gradient, front ramp, front slope")
            .help("Metres along for each metre up; or 1 in 4 (1 up, 4 along).");
    /** Crown. */
    public static final ColumnSpec CROWN = number("Crown", Quantities.CROWN)
            .also("crown height, dome, doming, height of crown")
            .help("Height of the middle above the walls.");
    /** Shape of the crown. */
    public static final ColumnSpec CROWN_SHAPE = choice("Crown shape", Quantities.CROWN_SHAPE, Choices.CROWN_SHAPE)
            .also("shape of crown, crown type, top shape")
            .help("parabolic (round) or straight shouldered.");
    /** Filled height. */
    public static final ColumnSpec FILLED_HEIGHT = number("Filled height", Quantities.FILLED_HEIGHT)
            .also("height when filled, height on the day, filling height, height at filling, height as filled")
            .help("At the sides on the day of filling, before it settles.");
    /** Power lines. */
    public static final ColumnSpec OVERHEAD_LINES = choice("Overhead lines", Quantities.OVERHEAD_LINES, Choices.YES_NO)
            .also("overhead line, overhead cables, overhead wires, power lines, overhead power lines, "
                    + "OHL, electric lines, pylons")
            .help("Near the clamp or its approach; yes or no; blank does not mean no.");
    /** Fresh density. */
    public static final ColumnSpec FRESH_DENSITY = number("Density, fresh", Quantities.FRESH_DENSITY)
            .or(Quantities.SPACE_OF_A_TONNE)
            .also("silage density fresh, fresh silage density, silage density as fed, tonnes per m3 fresh, "
                    + "volume per tonne, space per tonne, m3/t, m3 per t, m3 per tonne, cubic metres per tonne, "
                    + "ft3/t, ft3/tonne, ft3 per tonne, m3/tonne, cu ft/t, cu ft/tonne, cu ft per tonne, "
                    + "cubic feet per tonne, ft3/ton, cu ft/ton, cubic feet per ton, fresh density, "
                    + "as fed density, wet density, density fresh weight, density FW, density as fed, density FM, "
                    + "fresh matter density, bulk density fresh, density of fresh silage, kg fresh/m3, kg FW/m3, "
                    + "kg FM/m3, kg/m3 fresh, kg/m3 FW, t fresh/m3, t/m3 fresh, kg/m3 as fed, lb/ft3 as fed, "
                    + "lb/cu ft as fed, lb as fed/ft3, lb as fed/cu ft")
            .help("Measured; without it a published table is used.");
    /** Dry matter density. */
    public static final ColumnSpec DRY_MATTER_DENSITY = number("Density, dry matter", Quantities.DRY_MATTER_DENSITY)
            .also("silage DM density, silage dry matter density, "
                    + "dry matter density, DM density, density DM, density dry")
            .help("Measured; without it a published table is used.");
    /** Dry matter aimed at. */
    public static final ColumnSpec DM_TARGET = number("DM target", Quantities.DM_TARGET)
            .also("target DM, dry matter target, target dry matter, aim DM, target moisture, moisture target, "
                    + "silage moisture, moisture of silage, silage DM, DM of silage, DM, "
                    + "dry matter, DM content, dry matter content, moisture")
            .help("At ensiling, or of the silage in it; the crop listed for the clamp goes before it.");
    /** Roller mass. */
    public static final ColumnSpec ROLLER_MASS = number("Roller mass", Quantities.ROLLER_MASS)
            .also("packing vehicle weight, total packing weight, total packing tractor weight, "
                    + "total weight of packing tractors, weight of packing tractors, "
                    + "rolling tractor weight, total rolling weight, weight of rolling tractors, "
                    + "compactor weight, "
                    + "rolling weight, packing weight, compaction weight, rolling mass, packing mass, "
                    + "compaction mass, roller weight, packing tractor weight")
            .help("All machines that roll, together.");
    /** Layer. */
    public static final ColumnSpec LAYER = number("Layer", Quantities.LAYER)
            .also("packing layer thickness, forage layer thickness, packing layer, "
                    + "packing layer depth, forage layer depth, silage layer thickness, spreading layer, "
                    + "layer thickness, layer depth, thickness of layer")
            .help("Before rolling.");
    /** Delivery. */
    public static final ColumnSpec DELIVERY = number("Delivery", Quantities.DELIVERY)
            .also("silage delivery rate, crop delivery rate, forage delivery rate, rate of delivery, "
                    + "delivery rate, filling rate, fill rate, harvest rate, intake rate, rate of filling")
            .help("Fresh crop brought in an hour.");
    /** Effluent tank. */
    public static final ColumnSpec EFFLUENT_TANK = special(
                    "Effluent tank", ColumnSpec.Type.TEXT_OR_NUMBER, Quantities.EFFLUENT_TANK_VOLUME)
            .also("effluent tank volume, effluent tank size, effluent store, effluent tank capacity")
            .help("Its volume, or its name where several clamps share it.");
    /** Volume of a tank known by its name. */
    public static final ColumnSpec NAMED_TANK_VOLUME = number("Tank holds", Quantities.NAMED_TANK_VOLUME)
            .also("tank volume, shared tank volume, volume of tank")
            .help("Volume of the tank named in Effluent tank; once is enough.");
    /** What a pit is dug in. */
    public static final ColumnSpec SOIL = choice("Soil", Quantities.SOIL, Choices.SOIL)
            .also("soil type, ground, subsoil")
            .help("sand, common earth, sand-clay or clay; pits only.");
    /** Room that dug soil takes up. */
    public static final ColumnSpec SWELL = number("Swell", Quantities.SWELL)
            .also("bulking, bulking factor, bulking of soil, soil bulking, swell factor, swell of soil, soil swell, "
                    + "swell percent, percent swell, bulking percent, percent bulking, bulkage")
            .help("Pits: how much more room the soil takes up once it is dug, 11 % for sand to 43 % for clay.");
    /** Width at the top. */
    public static final ColumnSpec TOP_WIDTH = number("Top width", Quantities.WIDTH_AT_TOP)
            .also("width at top, width at the top, width of top, upper width, width at ground level, "
                    + "ground level width, width at surface, surface width, top breadth, breadth at top")
            .help(
                    "Where no batter is typed: between the sides at the top of the walls, or at ground level over a pit.");
    /** Additive. */
    public static final ColumnSpec ADDITIVE = number("Additive", Quantities.ADDITIVE)
            .also("inoculant rate, acid rate, inoculant dose, additive application rate, additive per tonne, "
                    + "additive rate, additive dose, inoculant, acid")
            .help("Litres on each fresh tonne.");
    /** To water. */
    public static final ColumnSpec DISTANCE_TO_WATERCOURSE = Shared.DISTANCE_TO_WATERCOURSE;
    /** Year. */
    public static final ColumnSpec YEAR_BUILT = number("Year built or enlarged", Quantities.YEAR_BUILT)
            .also("year constructed, year of build, date built, "
                    + "year built, built, year of construction, year enlarged, construction year")
            .help("Some rules look at it.");
    /** Country. */
    public static final ColumnSpec COUNTRY = choice("Country", Quantities.COUNTRY, Choices.COUNTRY)
            .also("nation, jurisdiction")
            .help("England, Wales, Scotland, Northern Ireland, Ireland or other.");
    /** Feed-out. */
    public static final ColumnSpec FEED_OUT_RATE = number("Feed-out rate", Quantities.FEED_OUT_RATE)
            .also("face removal rate, advance rate, face advance rate, "
                    + "feedout rate, feed out, advance, face advance, removal rate, feedout, "
                    + "rate of advance, feeding rate, feed rate")
            .help("How far the face moves back.");
    /** Season. */
    public static final ColumnSpec FEEDING_SEASON = choice(
                    "Feeding season", Quantities.FEEDING_SEASON, Choices.FEEDING_SEASON)
            .also("season fed, fed in, feed season, season")
            .help("winter, summer or all year.");

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Clamps",
                    List.of(
                            "clamp list",
                            "pits",
                            "silos",
                            "bunkers",
                            "silage clamps",
                            "silage pits",
                            "clamps and pits",
                            "bunker silos",
                            "stacks",
                            "stacks and bunkers",
                            "heaps"),
                    List.of(
                            HOLDING,
                            CLAMP,
                            KIND,
                            LENGTH,
                            FLOOR_WIDTH,
                            WALL_HEIGHT,
                            SETTLED_HEIGHT,
                            BATTER,
                            RAMPS,
                            RAMP_RUN,
                            CROWN,
                            FRESH_DENSITY,
                            DRY_MATTER_DENSITY,
                            DM_TARGET,
                            ROLLER_MASS,
                            LAYER,
                            DELIVERY,
                            EFFLUENT_TANK,
                            DISTANCE_TO_WATERCOURSE,
                            YEAR_BUILT,
                            COUNTRY,
                            FEED_OUT_RATE,
                            FEEDING_SEASON,
                            CROWN_SHAPE,
                            FILLED_HEIGHT,
                            OVERHEAD_LINES,
                            NAMED_TANK_VOLUME,
                            SOIL,
                            ADDITIVE,
                            SWELL,
                            TOP_WIDTH))
            .identifiedBy(CLAMP)
            .otherwise(HOLDING, Shared.WHOSE)
            .needsHeaders(4)
            .otherwiseMeasured(SETTLED_HEIGHT, "settled")
            .otherwise(
                    DM_TARGET,
                    "silage moisture content, moisture content, percent moisture, percent DM, percent dry matter")
            .otherwise(ROLLER_MASS, "total tractor weight")
            .otherwise(DELIVERY, "harvesting rate")
            .otherwiseMeasured(DELIVERY, "arrival rate, arriving, arriving at clamp, arriving at the clamp")
            .otherwise(FEED_OUT_RATE, "face progress")
            .substitute(WALL_HEIGHT, SETTLED_HEIGHT)
            .unclear(
                    List.of("height", "h", "peak height", "crest height", "ridge height", "maximum height"),
                    WALL_HEIGHT,
                    SETTLED_HEIGHT)
            .unclear(List.of("fill height", "height filled"), FILLED_HEIGHT, SETTLED_HEIGHT)
            .unclear(
                    List.of(
                            "density",
                            "bulk density",
                            "silage density",
                            "packing density",
                            "kg/m3",
                            "t/m3",
                            "lb/ft3",
                            "lb/cu ft",
                            "kg/cu m",
                            "t/cu m",
                            "tonnes/m3"),
                    FRESH_DENSITY,
                    DRY_MATTER_DENSITY)
            .otherwise(FEED_OUT_RATE, "inches per day, in/day, in/d, cm/day, cm per day, m/week, m/wk, m per week")
            .unclear(List.of("effluent"), EFFLUENT_TANK)
            .unclear(List.of("slope"), BATTER, RAMP_RUN)
            // The other way round a figure means another slope.
            .unclear(List.of("side slope v:h", "side slope vertical:horizontal", "slope v:h", "batter v:h"), BATTER)
            .otherwise(CLAMP, "drive over pile, field clamp, field heap")
            .otherwise(
                    KIND,
                    "style, built as, kind of store, type of store, kind of storage, type of storage, storage type")
            .otherwiseMeasured(
                    ROLLER_MASS,
                    "roller, tractor rolling, rolling tractor, packing tractor, packer, loader, "
                            + "loader weight, shovel, shovel weight, tractor weight")
            .otherwiseMeasured(
                    DISTANCE_TO_WATERCOURSE,
                    "watercourse, river, stream, ditch, water course, nearest watercourse, nearest water")
            .otherwiseMeasured(FEED_OUT_RATE, "face, feed face, face per week, face removal, face removed, removal")
            .unclear(List.of("distance to water"), DISTANCE_TO_WATERCOURSE);
}
