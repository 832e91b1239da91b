package org.rickyard.lists;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The words that columns of words take: canonical word to the further British, Irish and American words for it. */
public final class Choices {
    private Choices() {}

    /** Yes or no. */
    public static final Map<String, List<String>> YES_NO = of("yes: y, true, 1, x", "no: n, false, 0");

    /** Watercourses, from harmless to not; a blank is never "none". */
    public static final Map<String, List<String>> WATERCOURSE = of(
            "none: no, nil, no watercourse",
            "dry ditch: dry, ditch dry",
            "stream: creek, brook, beck, burn, ditch, wet ditch, drain, watercourse, bourne",
            "river: canal",
            "lake: pond, reservoir, lough, loch, mere");

    /** What a yield was weighed as. */
    public static final Map<String, List<String>> YIELD_BASIS = of(
            "standing fresh: as cut, fresh standing, standing fresh weight, fresh weight standing, standing, as "
                    + "standing, standing crop, before wilting, at cutting, at mowing",
            "as carted fresh: fresh as carted, fresh carted, carted fresh, as hauled, hauled, as carted, "
                    + "carted, as baled, baled, at baling, wilted, as ensiled, ensiled, at ensiling, as lifted, as harvested, harvested, at "
                    + "harvest, as delivered, delivered, as fed, over the"
                    + " weighbridge, at the weighbridge, weighbridge, at clamp, at the clamp, "
                    + "in the clamp, into the clamp, in clamp, in pit, in the pit, into the pit, "
                    + "fresh in pit, fresh in clamp",
            "dry matter: dm, dry, as dry matter");

    /** Types of machine. */
    public static final Map<String, List<String>> MACHINE_TYPE = of(
            "mower: self propelled windrower, sp windrower, mower conditioner, disc mower conditioner, "
                    + "disk mower conditioner, drum mower conditioner, "
                    + "disc mower, disk mower, drum mower, finger bar mower, reciprocating mower, "
                    + "conditioner mower, moco, mo co",
            "tedder: tedding machine, shaker, shake out, hay tedder, spreader tedder",
            "rake: rower, row up, hay rake, twin rotor rake, single rotor rake, grouper, merger, windrow merger",
            "forager: forage harvester, chopper, precision chop, precision chopper, self propelled forager, "
                    + "self propelled forage harvester, trailed forager, "
                    + "sp forager, harvester forage, spfh",
            "forage wagon: loader wagon, self loading wagon, pick up wagon, silage wagon, loading wagon",
            "baler: baler wrapper, combi baler, round baler, square baler, big baler, big square baler, small baler",
            "wrapper: bale wrapper",
            "trailer: wagon, cart, silage trailer, grain trailer, dump trailer, tipping trailer, truck, forage "
                    + "truck, silage truck, dump truck, "
                    + "lorry, tipper, dump wagon, dump cart, grain cart, chaser bin, forage box, "
                    + "articulated lorry, artic",
            "buckrake: push off buckrake, pusher, folding fork, buck rake, silage fork, push off fork, "
                    + "push blade, silage blade, grass fork",
            "clamp roller: silage roller, pit roller, packing tractor, rolling tractor, pack tractor, compactor",
            "field rolls: rolls, ring rolls, ring roller, cambridge rolls, flat roll, field roller, land roller",
            "loader: loading shovel, wheeled loader, wheel loader, telehandler, telescopic handler, front loader, "
                    + "skid steer, payloader, teleporter",
            "sprayer: boom sprayer, field sprayer, self propelled sprayer, trailed sprayer, mounted sprayer, crop"
                    + " sprayer, boomspray, boom spray, boomsprayer",
            "air-blast sprayer: airblast, air blast, airblast sprayer, air assisted sprayer, orchard sprayer, "
                    + "mist blower, mistblower,"
                    + " air carrier sprayer, vineyard sprayer, misting machine, mister",
            "knapsack: knapsack sprayer, backpack sprayer, backpack, hand sprayer, handheld sprayer, handheld",
            "wiper: weed wiper, wick, rope wick, weed wick",
            "fertiliser spreader: fertilizer spreader, fert spreader, lime spreader, fertiliser applicator, fertilizer "
                    + "applicator, anhydrous applicator, anhydrous ammonia applicator, ammonia applicator, "
                    + "nh3 applicator, granule applicator, granular applicator, spinner, fertiliser broadcaster, spinning disc"
                    + " spreader, top dresser, disc spreader, disk spreader, twin disc spreader, "
                    + "twin disk spreader, twin"
                    + " spinner spreader, centrifugal spreader, pneumatic spreader",
            "muck spreader: muckspreader, manure spreader, dung spreader, rear discharge spreader, "
                    + "side discharge spreader, farmyard manure"
                    + " spreader, fym spreader",
            "slurry tanker: slurry, tanker, vacuum tanker, umbilical, slurry spreader, manure tanker, "
                    + "slurry tank, dribble bar,"
                    + " trailing shoe, trailing hose, slurry injector, umbilical system",
            "plough: plow, reversible plough, mouldboard plough, moldboard plow, moldboard plough",
            "cultivator: harrow, power harrow, rotavator, rotary cultivator, disc harrow, discs, disk harrow, "
                    + "disk, disc, tandem disc, tandem disk, offset disc, offset disk, heavy disk, field cultivator, "
                    + "tine cultivator, tine harrow, spike tooth harrow, row crop cultivator, rotary hoe, "
                    + "chisel plough, chisel plow, chisel, rotary tiller, "
                    + "subsoiler, ripper, tillage, spring tine, spring tine cultivator, grubber, "
                    + "strip tillage, strip till",
            "drill: cultivator drill, seed drill, grain drill, seeder, planter, precision drill, corn planter, "
                    + "row crop planter",
            "combine: combine harvester",
            "excavator: digger, backhoe, back hoe, 360, trackhoe, tracked excavator",
            "tractor: four wheel drive tractor, tractor 2wd, tractor 4wd, crawler",
            "other: miscellaneous, misc, potato harvester, potato lifter, beet harvester, sugar beet harvester, "
                    + "destoner, stone picker, bed former, ridger");

    private static final Set<String> SPRAYERS = Set.of("sprayer", "air-blast sprayer", "knapsack");

    /** Where power is measured. */
    public static final Map<String, List<String>> POWER_BASIS =
            of("engine: flywheel, gross engine, rated engine", "PTO: power take off, at pto, at the pto, p t o");

    /** Whether soil is measured before it is dug or after. */
    public static final Map<String, List<String>> OUTPUT_BASIS = of(
            "in ground: ground, bank, bank measure, in the ground, in situ, solid, bcm",
            "loose: bulked, loose measure, in the bucket, heaped, lcm");

    /** What a charge is counted by. */
    public static final Map<String, List<String>> CHARGE_UNIT = of(
            "h: hour, hr, per hour, per h, per hr, hourly, an hour, eur h, gbp h",
            "ha: hectare, per hectare, per ha, eur ha, gbp ha",
            "ac: acre, per acre, per ac, an acre, eur ac, gbp ac",
            "t: tonne, per tonne, per t, eur t, gbp t",
            "bale: per bale, each, a bale, eur bale, gbp bale");

    /** What a charge includes. */
    public static final Map<String, List<String>> CHARGE_INCLUDES = of(
            "everything: all, all in, machine tractor driver and fuel, with fuel",
            "all but fuel: without fuel, no fuel, fuel extra, excluding fuel",
            "machine only: implement only, bare hire, self drive");

    /** Whose machine it is. */
    public static final Map<String, List<String>> OWN_OR_HIRED = of(
            "own: owned, yes own, farm",
            "hired: hire, contractor, contract, rented, leased, lease, custom, custom hire, custom hired, "
                    + "custom operator, custom rate");

    /** Droplet classes. */
    public static final Map<String, List<String>> SPRAY_QUALITY = of(
            "extremely fine: xf, ef",
            "very fine: vf",
            "fine: f",
            "medium: m",
            "coarse: c",
            "very coarse: vc",
            "extremely coarse: xc, extra coarse",
            "ultra coarse: uc");

    /** What a product is measured in. */
    public static final Map<String, List<String>> PRODUCT_UNIT = of(
            "L: l, litre, liter, lt, ltr",
            "kg: kilo, kilogram",
            "tablet: tab, piece, pellet, sachet, bag, water soluble bag, wsb");

    /** How a clamp is built. */
    public static final Map<String, List<String>> CLAMP_KIND = of(
            "walled: walled clamp, walled bunker, walled silo, bunker, bunker silo, bunker clamp, concrete clamp, "
                    + "concrete bunker, concrete silo, sleeper clamp, bay, walls, concrete walls, concrete, "
                    + "sleeper, silo, walled pit, "
                    + "concrete panel, panel, panel walls, precast, precast concrete, precast panel, "
                    + "walled silage pit, "
                    + "walled slab, three walls, two walls, roofed clamp, covered clamp, indoor clamp",
            "earth pit: pit, earth, earth bank, earth walled, dug pit, dug out, dug out pit, trench, trench silo, "
                    + "dungle, earth banked, "
                    + "dug, earth banks, earth bank pit, earth bunker, earthen, excavated, excavated pit, in "
                    + "ground pit, dugout, pond",
            "heap: pile, drive over pile, outdoor heap, apron heap, slab, heap on concrete, unwalled, no walls, "
                    + "unwalled slab, open slab, unwalled clamp, drive over, drive over stack, "
                    + "drive over clamp, silage pile",
            "field heap: field clamp, field pile, heap on soil",
            "measured: measured clamp, surveyed, as measured");

    /** How a crown is shaped. */
    public static final Map<String, List<String>> CROWN_SHAPE = of(
            "parabolic: round, rounded, domed, dome, parabola",
            "straight shouldered: straight shoulders, flat top, shouldered, straight, flat");

    /** What a pit is dug in. */
    public static final Map<String, List<String>> SOIL = of(
            "sand: sandy, gravel, sand and gravel",
            "common earth: earth, loam, topsoil, soil, silt",
            "sand-clay: sandy clay, clay loam",
            "clay: heavy clay, boulder clay, stiff clay");

    /** Whose law a clamp stands under. */
    public static final Map<String, List<String>> COUNTRY = of(
            "England: eng, gb england",
            "Wales: cymru",
            "Scotland: scot, alba",
            "Northern Ireland: ni, n ireland, ulster",
            "Ireland: republic of ireland, roi, eire, irl",
            "other: elsewhere, usa, us, u s a, united states, america, canada, new zealand, nz, australia, "
                    + "other country");

    /** When feed is used. */
    public static final Map<String, List<String>> FEEDING_SEASON =
            of("winter: cold season", "summer: buffer, warm season", "all year: year round, whole year, all");

    /** What a store is. */
    public static final Map<String, List<String>> STORE_KIND = of(
            "clamp: pit, silo, bunker, heap, pile, bay",
            "bales: bale, round bales, square bales, big bales, wrapped bales");

    /** Operations by their common names; any other stands as it is. */
    public static final Map<String, List<String>> OPERATION = of(
            "mowing: mow, cut, cutting",
            "tedding: ted, shake out, shaking out, spread out, tedding out",
            "raking: rake, row up, rowing up, windrow, windrowing",
            "chopping: chop, lift, lifting, forage, foraging, pick up, picking up, harvesting forage",
            "carting: cart, lead, leading, draw, drawing, haul, hauling, haulage",
            "clamping: clamp, buckrake, buckraking, push up, pushing up",
            "rolling: roll, packing, compacting, pack",
            "baling: bale",
            "wrapping: wrap",
            "spraying: spray",
            "spreading: spread, fertilising, fertilizing, fertiliser, spreading fertiliser, "
                    + "spreading fertilizer, fertiliser"
                    + " spreading, fertilizer spreading, liming, spreading lime, lime spreading",
            "muck spreading: spread muck, manure spreading, dung spreading, spreading muck, "
                    + "spreading manure, spread manure, "
                    + "spreading dung",
            "slurry spreading: slurry, spread slurry, spreading slurry, slurry application, applying slurry",
            "ploughing: plough, plow, plowing",
            "cultivating: cultivate, cultivation, harrowing, harrow, tillage",
            "drilling: drill, sowing, sow, planting, plant, seeding",
            "combining: combine, threshing",
            "digging: dig, excavating, excavation, excavate",
            "loading: load");

    /** Words and the further words for each, written "word: other, other". */
    private static Map<String, List<String>> of(String... lines) {
        Map<String, List<String>> map = new LinkedHashMap<>();
        for (String line : lines) {
            int colon = line.indexOf(": ");
            map.put(line.substring(0, colon), List.of(line.substring(colon + 2).split(", ")));
        }
        return Collections.unmodifiableMap(map);
    }

    /** Whether a canonical type of machine sprays. */
    public static boolean sprays(String machineType) {
        return SPRAYERS.contains(machineType);
    }
}
