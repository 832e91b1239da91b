package org.rickyard.trade;

import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * Every quantity a client can type, declared once: the name it has in formulas, its unit, and its ranges. Input columns
 * and formulas share these symbols.
 *
 * <p>A number outside the first range cannot be, so it is refused and withholds what depends on it; a number outside
 * the second is computed with and cautioned. The ranges are judgement (common practice, from memory), meant to catch
 * slips such as feet in metres or acres in hectares, and are not limits of any law or label. Decimals say how many a
 * reader is shown.
 *
 * <p>This file is one long table and is kept whole so that each quantity is found in one place.
 */
public final class Quantities {
    private Quantities() {}

    // Whose and where

    /** The holding (farm) a thing belongs to; every holding has a Home Field. */
    public static final Symbol HOLDING = Symbol.text("holding");
    /** The name of a field. */
    public static final Symbol FIELD = Symbol.text("field");
    /** What grows in the field. */
    public static final Symbol CROP = Symbol.text("crop");
    /** A group of fields worked together. */
    public static final Symbol BLOCK = Symbol.text("block");
    /** Free words, never read for meaning. */
    public static final Symbol NOTES = Symbol.text("notes");

    // Fields

    /** Net area worked. */
    public static final Symbol AREA = number("area", Units.HA, Range.above(0, 5000), Range.of(0.1, 200), 2);
    /** Length of one run (bout) between turns. */
    public static final Symbol RUN_LENGTH = number("run length", Units.M, Range.above(0, 5000), Range.of(60, 1500), 0);
    /** One way, field to clamp. */
    public static final Symbol DISTANCE_TO_CLAMP =
            number("distance to clamp", Units.KM, Range.of(0, 100), Range.of(0, 15), 1);
    /** One way, field to the place where the sprayer is filled. */
    public static final Symbol DISTANCE_TO_FILL_POINT =
            number("distance to fill point", Units.KM, Range.of(0, 30), Range.of(0, 5), 1);
    /** The nearest watercourse: none, dry ditch, stream, river or lake; blank is not none. */
    public static final Symbol WATERCOURSE = Symbol.text("watercourse");
    /** From the top of the bank. No distance is called safe here: the label and local law decide. */
    public static final Symbol DISTANCE_TO_WATERCOURSE =
            number("distance to watercourse", Units.M, Range.NOT_NEGATIVE, Range.ANY, 1);
    /** Whether power lines cross the field or yard: yes or no. */
    public static final Symbol OVERHEAD_LINES = Symbol.text("overhead lines");
    /** Rise over run, per cent. */
    public static final Symbol SLOPE = number("slope", Units.PERCENT, Range.of(0, 100), Range.of(0, 25), 0);
    /** All round the field. */
    public static final Symbol PERIMETER =
            number("perimeter", Units.M, Range.above(0, 100000), Range.of(100, 20000), 0);
    /** Between orchard or bush rows. */
    public static final Symbol ROW_SPACING = number("row spacing", Units.M, Range.of(0.2, 12), Range.of(0.4, 8), 2);
    /** Height of the tree wall that is sprayed. */
    public static final Symbol TREE_HEIGHT = number("tree height", Units.M, Range.of(0.5, 12), Range.of(1, 6), 1);
    /** Width of the tree wall that is sprayed. */
    public static final Symbol TREE_WIDTH = number("tree width", Units.M, Range.of(0.3, 10), Range.of(0.5, 5), 1);
    /** Between trees, bushes or vines along their row. */
    public static final Symbol TREE_SPACING = number("tree spacing", Units.M, Range.above(0, 20), Range.of(0.3, 12), 2);
    /** How many trees, bushes or vines stand in the field. */
    public static final Symbol TREES =
            number("number of trees", Units.ONE, Range.above(0, 10_000_000), Range.of(1, 200_000), 0);

    // Yield and dry matter

    /** Fresh crop off a hectare; standing or as carted by its basis. */
    public static final Symbol YIELD = number("yield", Units.T_PER_HA, Range.above(0, 200), Range.of(5, 65), 1);
    /** Yields of hay, straw and grain that are nothing unusual, t/ha; common practice. */
    public static final Range YIELD_OF_DRY_CROPS = Range.of(1, 20);
    /** Dry matter of hay, straw and grain as they are brought in, per cent; common practice. */
    public static final Range DM_OF_DRY_CROPS = Range.of(75, 92);
    /** Dry matter off a hectare. */
    public static final Symbol YIELD_DRY_MATTER =
            number("dry matter yield", Units.T_DM_PER_HA, Range.above(0, 30), Range.of(1, 22), 1);
    /** What a yield was weighed as: standing fresh, as carted fresh, or dry matter. */
    public static final Symbol YIELD_BASIS = Symbol.text("yield basis");
    /** Dry matter content of the standing crop. */
    public static final Symbol DM_AT_CUTTING =
            number("dry matter at cutting", Units.PERCENT_DM, new Range(5, true, 95, true), Range.of(15, 50), 0);
    /** Dry matter content as it goes into the clamp. */
    public static final Symbol DM_AT_ENSILING =
            number("dry matter at ensiling", Units.PERCENT_DM, new Range(5, true, 95, true), Range.of(15, 50), 0);
    /** Which cut of the season, counted from 1. */
    public static final Symbol CUT_NUMBER = number("cut", Units.ONE, Range.of(1, 8), Range.of(1, 4), 0);
    /** First day of a cut. */
    public static final Symbol CUT_START = Symbol.date("cut start");
    /** Last day of a cut. */
    public static final Symbol CUT_END = Symbol.date("cut end");

    // Machines

    /** The name of a machine. */
    public static final Symbol MACHINE = Symbol.text("machine");
    /** What a machine does. */
    public static final Symbol MACHINE_TYPE = Symbol.text("machine type");
    /** What it is among those of its type, where tables part them: a mower with a conditioner; otherwise its type. */
    public static final Symbol KIND_OF_MACHINE = Symbol.text("kind of machine");
    /** How many machines alike. */
    public static final Symbol NUMBER_OF_MACHINES =
            number("number of machines", Units.ONE, Range.of(1, 200), Range.of(1, 20), 0);
    /** Width of ground worked in one pass, overlap not taken off. */
    public static final Symbol WORKING_WIDTH =
            number("working width", Units.M, Range.above(0, 60), Range.of(0.5, 48), 1);
    /** Rows or furrows worked in one pass. */
    public static final Symbol ROWS = number("rows", Units.ONE, Range.of(1, 200), Range.of(1, 48), 0);
    /** Width that one of them works. */
    public static final Symbol ROW_WIDTH = number("width of a row", Units.M, Range.above(0, 12), Range.of(0.1, 2), 2);
    /** Width worked twice at each pass. */
    public static final Symbol OVERLAP = number("overlap", Units.M, Range.of(0, 10), Range.of(0, 2), 2);
    /** The same as a share of the working width. */
    public static final Symbol OVERLAP_SHARE =
            number("overlap of the width", Units.PERCENT, Range.of(0, 90), Range.of(1, 20), 1);
    /** Forward speed at work. */
    public static final Symbol SPEED = number("speed", Units.KM_PER_H, Range.above(0, 40), Range.of(2, 20), 1);
    /** Slowest speed the work allows. */
    public static final Symbol LOWEST_SPEED =
            number("lowest field speed", Units.KM_PER_H, Range.above(0, 40), Range.of(1, 16), 1);
    /** Fastest speed the work and the ground allow. */
    public static final Symbol HIGHEST_SPEED =
            number("highest field speed", Units.KM_PER_H, Range.above(0, 40), Range.of(3, 20), 1);
    /** Share of the theoretical rate kept up in the field. 1 or less is a fraction in a per cent column, so refused. */
    public static final Symbol FIELD_EFFICIENCY =
            number("field efficiency", Units.PERCENT, Range.above(1, 100), Range.of(50, 90), 0);
    /** Area covered in an hour, all in, where it is known and not reckoned from width and speed. */
    public static final Symbol TYPED_RATE =
            number("rate of work", Units.HA_PER_H, Range.above(0, 200), Range.of(0.05, 40), 2);
    /** One turn at the headland. */
    public static final Symbol TURN_TIME = number("turn time", Units.S, Range.of(0, 300), Range.of(5, 90), 0);
    /** Time lost other than turning, per hectare. */
    public static final Symbol OTHER_LOST_TIME =
            number("other lost time", Units.H.over(Units.HA), Range.of(0, 10), Range.of(0, 1), 2);
    /** Tonnes handled per hour at work. */
    public static final Symbol OUTPUT = number("output", Units.T_PER_H, Range.above(0, 1000), Range.of(1, 250), 0);
    /** Cubic metres dug or loaded per hour, in ground or loose by its basis. */
    public static final Symbol OUTPUT_VOLUME =
            number("volume output", Units.M3_PER_H, Range.above(0, 2000), Range.of(2, 300), 0);
    /** Whether soil is measured in ground or loose. */
    public static final Symbol OUTPUT_BASIS = Symbol.text("output basis");
    /** Load carried. The law of the road and the plate on the axle decide what may be carried. */
    public static final Symbol PAYLOAD = number("payload", Units.T, Range.above(0, 80), Range.of(1, 18), 1);
    /** Payloads of hoppers, buckets and buckrakes that are nothing unusual, tonnes; common practice, from memory. */
    public static final Range PAYLOAD_OF_HOPPERS = Range.of(0.1, 18);
    /** Volume a body or bucket holds, level or heaped as the client means it. */
    public static final Symbol BODY_VOLUME = number("body volume", Units.M3, Range.above(0, 100), Range.of(0.3, 60), 0);
    /** Mass of a cubic metre of crop as it lies in a trailer. */
    public static final Symbol LOAD_DENSITY =
            number("load density", Units.KG_PER_M3, Range.above(0, 1150), Range.of(150, 700), 0);
    /** One round of a loader or buckrake: filling, running, emptying, back. */
    public static final Symbol ROUND_TIME = number("round time", Units.MIN, Range.above(0, 240), Range.of(0.3, 60), 1);
    /** Mass of the machine in working order. */
    public static final Symbol MASS = number("mass", Units.T, Range.above(0, 150), Range.of(0.05, 30), 1);
    /** Mass of the machine empty. */
    public static final Symbol UNLADEN_MASS = number("unladen mass", Units.T, Range.above(0, 40), Range.of(0.3, 15), 1);
    /** Power, of the engine or at the PTO by its basis. */
    public static final Symbol POWER = number("power", Units.KW, Range.above(0, 1500), Range.of(10, 500), 0);
    /** Where power is measured: engine or PTO. */
    public static final Symbol POWER_BASIS = Symbol.text("power basis");
    /** Fuel burnt per hour at work. */
    public static final Symbol FUEL_RATE = number("fuel", Units.L_PER_H, Range.above(0, 400), Range.of(1, 120), 1);
    /** Fuel burnt on a hectare at work. */
    public static final Symbol FUEL_FOR_AREA =
            number("fuel of a hectare", Units.L_PER_HA, Range.above(0, 400), Range.of(0.5, 120), 1);
    /** People the machine needs. */
    public static final Symbol CREW = number("crew", Units.ONE, Range.of(0, 50), Range.of(0, 6), 1);
    /** Speed on the road with a load; 40 km/h, usually the most, is also called 25 mph, which is 40.2. */
    public static final Symbol ROAD_SPEED_LADEN =
            number("road speed laden", Units.KM_PER_H, Range.above(0, 110), Range.of(5, 40.3), 1);
    /** Speed on the road without a load. */
    public static final Symbol ROAD_SPEED_EMPTY =
            number("road speed empty", Units.KM_PER_H, Range.above(0, 110), Range.of(5, 50), 1);
    /** Hours worked in a day. */
    public static final Symbol HOURS_PER_DAY = number("hours per day", Units.H, Range.above(0, 24), Range.of(3, 12), 1);
    /** Turns of a driving wheel over a distance, at work. */
    public static final Symbol TURNS_LOADED =
            number("wheel turns loaded", Units.ONE, Range.above(0, 1000), Range.of(5, 50), 1);
    /** Turns of the same wheel over the same distance, without the load. */
    public static final Symbol TURNS_UNLOADED =
            number("wheel turns unloaded", Units.ONE, Range.above(0, 1000), Range.of(4, 50), 2);
    /** Force with which a machine is pulled at work. */
    public static final Symbol DRAUGHT = number("draught", Units.KN, Range.above(0, 500), Range.of(0.5, 150), 1);
    /** The same for each metre of its width. */
    public static final Symbol DRAUGHT_FOR_WIDTH = number(
            "draught for each metre of width", Units.KN.over(Units.M), Range.above(0, 200), Range.of(0.2, 40), 1);
    /** How far one load is spread, one bout after another. */
    public static final Symbol LOAD_DISTANCE =
            number("distance that a load is spread", Units.M, Range.above(0, 20000), Range.of(20, 5000), 0);

    // What machines cost

    /**
     * Stands for a word that was typed and is none of those it may be, where a blank means something: what depends on it
     * is withheld and not reckoned as for a blank.
     */
    public static final String UNREADABLE = "unreadable";

    /** Whether a machine is own or hired. */
    public static final Symbol OWN_OR_HIRED = Symbol.text("own or hired");
    /** Contractor's or hire charge per hour. */
    public static final Symbol CHARGE_PER_HOUR =
            number("charge per hour", Units.MONEY_UNIT.over(Units.H), Range.NOT_NEGATIVE, Range.ANY, 2);
    /** Contractor's charge per hectare. */
    public static final Symbol CHARGE_PER_HECTARE =
            number("charge per hectare", Units.MONEY_UNIT.over(Units.HA), Range.NOT_NEGATIVE, Range.ANY, 2);
    /** Contractor's charge per tonne. */
    public static final Symbol CHARGE_PER_TONNE =
            number("charge per tonne", Units.MONEY_UNIT.over(Units.T), Range.NOT_NEGATIVE, Range.ANY, 2);
    /** Contractor's charge per bale. */
    public static final Symbol CHARGE_PER_BALE =
            number("charge per bale", Units.MONEY_UNIT, Range.NOT_NEGATIVE, Range.ANY, 2);
    /** What a charge is counted by: h, ha, ac, t or bale. */
    public static final Symbol CHARGE_UNIT = Symbol.text("charge unit");
    /** What a contractor's charge includes: everything, all but fuel, or the machine only. */
    public static final Symbol CHARGE_INCLUDES = Symbol.text("charge includes");
    /** New price in the maker's list. */
    public static final Symbol LIST_PRICE = number("list price", Units.MONEY_UNIT, Range.POSITIVE, Range.ANY, 0);
    /** What was paid. */
    public static final Symbol PURCHASE_PRICE =
            number("purchase price", Units.MONEY_UNIT, Range.POSITIVE, Range.ANY, 0);
    /** What it will fetch at the end of its life. */
    public static final Symbol TRADE_IN_VALUE =
            number("trade-in value", Units.MONEY_UNIT, Range.NOT_NEGATIVE, Range.ANY, 0);
    /** Age now. */
    public static final Symbol AGE = number("age", Units.YR, Range.of(0, 60), Range.of(0, 25), 0);
    /** Hours worked in its life so far. */
    public static final Symbol HOURS_NOW = number("hours now", Units.H, Range.of(0, 60000), Range.of(0, 16000), 0);
    /** Years it is kept. */
    public static final Symbol LIFE = number("life", Units.YR, Range.above(0, 50), Range.of(3, 20), 0);
    /** Hours worked in a year. */
    public static final Symbol HOURS_PER_YEAR =
            number("hours per year", Units.H, Range.above(0, 8760), Range.of(10, 2000), 0);

    // Sprayers

    /** Nominal volume of the tank. */
    public static final Symbol TANK_VOLUME = number("tank", Units.L, Range.of(5, 40000), Range.of(10, 12000), 0);
    /** Volume that is filled and can be sprayed out. */
    public static final Symbol USABLE_TANK = number("usable tank", Units.L, Range.of(5, 40000), Range.of(10, 12000), 0);
    /** Tanks usual where slurry or water is carted and not sprayed, from memory: up to 30 m3. */
    public static final Range TANK_OF_CARTING = Range.of(10, 30000);
    /** Volume of the clean-water rinse tank. */
    public static final Symbol RINSE_TANK = number("rinse tank", Units.L, Range.of(0, 2000), Range.of(0, 1000), 0);
    /** Volume left in tank, pump and lines when spraying ends. */
    public static final Symbol RESIDUAL = number("residual volume", Units.L, Range.of(0, 500), Range.of(0, 60), 0);
    /** How many nozzles spray. */
    public static final Symbol NOZZLES = number("number of nozzles", Units.ONE, Range.of(1, 500), Range.of(1, 120), 0);
    /** Distance between nozzles along the boom. */
    public static final Symbol NOZZLE_SPACING =
            number("nozzle spacing", Units.M, Range.of(0.2, 1.2), Range.of(0.25, 0.508), 3);
    /** Size code of a nozzle: 4 for size 04, 2.5 for 025. */
    public static final Symbol NOZZLE_SIZE = number("nozzle size", Units.ONE, Range.above(0, 40), Range.of(0.5, 10), 1);
    /** Pressures usual for hollow cones in trees, from memory: 5 to 20 bar. */
    public static final Range PRESSURE_OF_AIR_BLAST = Range.of(3, 20);
    /** Pressure at the nozzle. */
    public static final Symbol PRESSURE = number("pressure", Units.BAR, Range.of(0.3, 25), Range.of(1, 8), 1);
    /** Lowest pressure the nozzle is made for. */
    public static final Symbol LOWEST_PRESSURE =
            number("lowest pressure", Units.BAR, Range.of(0.3, 25), Range.of(1, 8), 1);
    /** Highest pressure the nozzle is made for. */
    public static final Symbol HIGHEST_PRESSURE =
            number("highest pressure", Units.BAR, Range.of(0.3, 25), Range.of(1, 8), 1);
    /** Droplet class of a nozzle at its pressure, or the class a label asks for. */
    public static final Symbol SPRAY_QUALITY = Symbol.text("spray quality");
    /** Day of the last sprayer test. */
    public static final Symbol LAST_TESTED = Symbol.date("last tested");
    /** One filling of the tank, mixing included. */
    public static final Symbol FILL_TIME = number("fill time", Units.MIN, Range.of(1, 120), Range.of(3, 45), 0);
    /** The sprayer a nozzle test belongs to. */
    public static final Symbol SPRAYER = Symbol.text("sprayer");
    /** The place of a nozzle on the boom. */
    public static final Symbol NOZZLE = Symbol.text("nozzle");
    /** Measured flow of one nozzle. */
    public static final Symbol NOZZLE_FLOW =
            number("nozzle flow", Units.L_PER_MIN, Range.of(0, 30), Range.of(0.1, 10), 2);
    /** Flow of all nozzles together. */
    public static final Symbol TOTAL_FLOW =
            number("total flow", Units.L_PER_MIN, Range.above(0, 2000), Range.of(0.2, 400), 1);
    /** What a sprayer's pump gives at the pressure and speed of the work. */
    public static final Symbol PUMP_FLOW =
            number("pump flow", Units.L_PER_MIN, Range.above(0, 50000), Range.of(2, 1000), 0);
    /** Pumps usual where slurry is carted, from memory: those that draw it in by a vacuum move up to 20,000 L of air. */
    public static final Range PUMP_OF_CARTING = Range.of(2, 20000);
    /** Flow of the same nozzle when new, at the same pressure. */
    public static final Symbol NEW_NOZZLE_FLOW =
            number("new nozzle flow", Units.L_PER_MIN, Range.above(0, 30), Range.of(0.1, 10), 2);
    /** Spray liquid on a hectare; Penn State's dilute standard for big trees, 400 gal(US)/ac, is 3,742 L/ha. */
    public static final Symbol WATER_VOLUME =
            number("water volume", Units.L_PER_HA, Range.of(0.2, 20000), Range.of(50, 2000), 0);

    /** Spray mix that fills pump, lines and boom before the first nozzle gives full strength. */
    public static final Symbol PRIMING = number("priming volume", Units.L, Range.of(0, 500), Range.of(0, 100), 0);
    /** Moving to the next field: folding, road, unfolding. */
    public static final Symbol MOVE_TIME = number("move time", Units.MIN, Range.of(0, 600), Range.of(0, 90), 0);
    /** Washing out and cleaning down once for a block. */
    public static final Symbol CLEANING_TIME =
            number("cleaning time", Units.MIN, Range.of(0, 600), Range.of(5, 120), 0);
    /** Length of a timed run. */
    public static final Symbol TIMED_DISTANCE =
            number("timed distance", Units.M, Range.above(0, 5000), Range.of(20, 1000), 0);
    /** Seconds a timed run took. */
    public static final Symbol TIMED_SECONDS =
            number("timed seconds", Units.S, Range.above(0, 3600), Range.of(5, 900), 1);
    /** What one nozzle gives over a measured run. */
    public static final Symbol NOZZLE_CATCH =
            number("catch over the run", Units.L, Range.above(0, 20), Range.of(0.05, 5), 3);
    /** Way that a wheel goes in one turn. */
    public static final Symbol WHEEL_CIRCUMFERENCE =
            number("wheel circumference", Units.M, Range.above(0, 12), Range.of(0.5, 6.5), 2);
    /** Turns of that wheel in a test. */
    public static final Symbol WHEEL_TURNS =
            number("wheel turns", Units.ONE, Range.above(0, 2000), Range.of(4, 200), 1);
    /** Area sprayed in a test with water. */
    public static final Symbol TEST_AREA =
            number("test area", Units.M2, Range.above(0, 100000), Range.of(0.05, 10000), 2);
    /** Water used in that test. */
    public static final Symbol TEST_VOLUME =
            number("test volume", Units.L, Range.above(0, 5000), Range.of(0.2, 500), 1);
    /** What a spreader or drill put out on it. */
    public static final Symbol TEST_WEIGHT =
            number("test weight", Units.KG, Range.above(0, 5000), Range.of(0.001, 500), 3);

    // Products

    /** The name of a crop protection product or fertiliser, as on its label. */
    public static final Symbol PRODUCT = Symbol.text("product");
    /** What a product is measured in: L, kg or tablet. */
    public static final Symbol PRODUCT_UNIT = Symbol.text("product unit");
    /** Product on a hectare, sprayed. */
    public static final Symbol DOSE = number("dose", Units.DOSE, Range.above(0, 10000), Range.above(0, 600), 3);
    /** Product on a hectare, spread or drilled; muck and slurry go up to tens of tonnes. */
    public static final Symbol SPREAD_DOSE = number("spreading dose", Units.DOSE, Range.above(0, 200000), Range.ANY, 3);
    /** Product in a litre of spray. What is usual differs: a wiper's mix may be a third product. */
    public static final Symbol CONCENTRATION =
            number("dose in the spray", Units.CONCENTRATION, Range.above(0, 1), Range.ANY, 4);
    /** What acts or feeds in a product, on a hectare, where the dose counts that and not the product. */
    public static final Symbol SUBSTANCE_DOSE = number(
            "dose of active ingredient or nutrient",
            Units.SUBSTANCE_DOSE,
            Range.above(0, 1000),
            Range.above(0, 400),
            3);
    /** Highest dose at one application on the label. */
    public static final Symbol HIGHEST_DOSE = number("highest dose", Units.DOSE, Range.above(0, 200000), Range.ANY, 3);
    /** Highest concentration on the label. */
    public static final Symbol HIGHEST_CONCENTRATION =
            number("highest concentration", Units.CONCENTRATION, Range.above(0, 1), Range.ANY, 4);
    /** Highest dose in a season or crop on the label. */
    public static final Symbol HIGHEST_TOTAL_DOSE =
            number("highest total dose", Units.DOSE, Range.above(0, 200000), Range.ANY, 3);
    /** Most applications to one crop on the label. */
    public static final Symbol MOST_APPLICATIONS =
            number("most applications", Units.ONE, Range.of(1, 50), Range.of(1, 8), 0);
    /** Fewest days between two applications. */
    public static final Symbol LEAST_INTERVAL = number("least interval", Units.D, Range.of(0, 365), Range.of(1, 90), 0);
    /** Fewest days between the last application and harvest. */
    public static final Symbol HARVEST_INTERVAL =
            number("harvest interval", Units.D, Range.of(0, 400), Range.of(0, 120), 0);
    /** Latest growth stage the label allows. */
    public static final Symbol LATEST_STAGE = Symbol.text("latest growth stage");
    /** Least water on the label. */
    public static final Symbol LOWEST_WATER_VOLUME =
            number("lowest water volume", Units.L_PER_HA, Range.of(0.2, 20000), Range.of(30, 2000), 0);
    /** Most water on the label. */
    public static final Symbol HIGHEST_WATER_VOLUME =
            number("highest water volume", Units.L_PER_HA, Range.of(0.2, 20000), Range.of(50, 4000), 0);
    /** The buffer zone category on the label. */
    public static final Symbol BUFFER_CATEGORY = Symbol.text("buffer category");
    /** The authorisation number on the label. */
    public static final Symbol AUTHORISATION_NUMBER = Symbol.text("authorisation number");
    /** Mass of a litre of product, or of what is spread as it lies in the hopper; seed and urea are lighter than water. */
    public static final Symbol PRODUCT_DENSITY =
            number("density of the product", Units.KG.over(Units.L), Range.of(0.3, 2.5), Range.of(0.6, 1.6), 2);
    /** Nitrogen by weight in a product; none in many, half in the strongest solid ones. */
    public static final Symbol NITROGEN_SHARE =
            number("nitrogen in the product", Units.PERCENT, Range.of(0, 100), Range.of(0, 50), 1);
    /** Active ingredient in a litre of a product. */
    public static final Symbol ACTIVE_CONTENT =
            number("active ingredient in a litre", Units.G.over(Units.L), Range.above(0, 2000), Range.of(1, 1000), 1);
    /** Active ingredient by weight in a product. */
    public static final Symbol ACTIVE_SHARE =
            number("active ingredient in the product", Units.PERCENT, Range.above(0, 100), Range.of(0.1, 100), 1);
    /** Phosphate, P2O5, by weight in a product. */
    public static final Symbol PHOSPHATE_SHARE =
            number("phosphate in the product", Units.PERCENT, Range.of(0, 100), Range.of(0, 62), 1);
    /** Potash, K2O, by weight in a product. */
    public static final Symbol POTASH_SHARE =
            number("potash in the product", Units.PERCENT, Range.of(0, 100), Range.of(0, 63), 1);
    /** Product in one pack. */
    public static final Symbol PACK_SIZE =
            number("pack size", Units.PRODUCT_UNIT, Range.above(0, 2000), Range.above(0, 1000), 2);
    /** Product in the store. */
    public static final Symbol STOCK = number("stock", Units.PRODUCT_UNIT, Range.NOT_NEGATIVE, Range.of(0, 20000), 2);
    /** Price of one product unit. */
    public static final Symbol PRICE =
            number("price", Units.MONEY_UNIT.over(Units.PRODUCT_UNIT), Range.NOT_NEGATIVE, Range.ANY, 2);
    /** Price of one pack. */
    public static final Symbol PACK_PRICE =
            number("price of a pack", Units.MONEY_UNIT, Range.NOT_NEGATIVE, Range.ANY, 2);
    /** The name of a tank mix. */
    public static final Symbol MIX = Symbol.text("mix");
    /** Which goes into the tank first, counted from 1. */
    public static final Symbol ORDER_IN_TANK =
            number("order in the tank", Units.ONE, Range.of(1, 50), Range.of(1, 12), 0);

    // Jobs

    /** The name of a job. */
    public static final Symbol JOB = Symbol.text("job");
    /** The fields a job is done on, where it has no name of its own. */
    public static final Symbol FIELDS_OF_JOB = Symbol.text("fields of the job");
    /** What is done. */
    public static final Symbol OPERATION = Symbol.text("operation");
    /** The machines that do the job together. */
    public static final Symbol GANG = Symbol.text("machines");
    /** The tractor that pulls or drives the machine. */
    public static final Symbol TRACTOR = Symbol.text("tractor");
    /** The job that must be done before. */
    public static final Symbol AFTER = Symbol.text("after");
    /** Time to wait after the job before, wilting say. */
    public static final Symbol LAG = number("lag", Units.H, Range.of(0, 5000), Range.of(0, 1008), 0);
    /** Days there are for a job, fit for the work. */
    public static final Symbol DAYS_THERE_ARE =
            number("days for the job", Units.D, Range.above(0, 366), Range.of(1, 120), 1);
    /** First day the job may be done. */
    public static final Symbol EARLIEST = Symbol.date("earliest day");
    /** Last day the job may be done. */
    public static final Symbol LATEST = Symbol.date("latest day");
    /** Growth stage of the crop at the job. */
    public static final Symbol GROWTH_STAGE = Symbol.text("growth stage");
    /** Day the crop is to be harvested or grazed, for the harvest interval. */
    public static final Symbol LAST_HARVEST_DATE = Symbol.date("harvest day");
    /** Share of calendar days fit for the work. */
    public static final Symbol WORKABLE_DAYS =
            number("workable days", Units.PERCENT, Range.above(1, 100), Range.of(20, 90), 0);

    /** Mass of a litre of the liquid sprayed; water unless the job says otherwise. */
    public static final Symbol SPRAY_DENSITY =
            number("spray density", Units.KG.over(Units.L), Range.of(0.7, 2), Range.of(0.95, 1.4), 2);
    /** Width of the sprayed band over each row. */
    public static final Symbol BAND_WIDTH = number("band width", Units.M, Range.of(0.05, 5), Range.of(0.1, 2), 2);
    /** Wind speed measured or forecast. */
    public static final Symbol WIND_SPEED = number("wind speed", Units.KM_PER_H, Range.of(0, 150), Range.of(0, 40), 1);
    /** Height above ground at which the wind speed holds; weather stations measure at 10 m, or 33 ft. */
    public static final Symbol WIND_HEIGHT = number("wind height", Units.M, Range.above(0, 50), Range.of(0.3, 10.1), 1);
    /** Dry-bulb air temperature. */
    public static final Symbol AIR_TEMPERATURE =
            number("air temperature", Units.CELSIUS, Range.of(-20, 50), Range.of(0, 35), 1);
    /** Relative humidity of the air. */
    public static final Symbol HUMIDITY = number("humidity", Units.PERCENT, Range.of(5, 99), Range.of(20, 98), 0);

    // Clamps and pits

    /** The name of a clamp, pit or heap. */
    public static final Symbol CLAMP = Symbol.text("clamp");
    /** How a clamp is built: walled, earth pit, heap, field heap or measured. */
    public static final Symbol CLAMP_KIND = Symbol.text("clamp kind");
    /** Length at the floor, toe to toe. */
    public static final Symbol CLAMP_LENGTH = number("length", Units.M, Range.above(0, 400), Range.of(10, 100), 1);
    /** Width at the floor. */
    public static final Symbol FLOOR_WIDTH = number("floor width", Units.M, Range.above(0, 100), Range.of(8, 60), 1);
    /** Height of the walls, or depth of a pit; 0 for a heap without walls. */
    public static final Symbol WALL_HEIGHT = number("wall height", Units.M, Range.of(0, 12), Range.of(0, 4.5), 2);
    /** Height of the silage when settled, four weeks or more after closing. */
    public static final Symbol SETTLED_HEIGHT =
            number("settled height", Units.M, Range.above(0, 12), Range.of(0.5, 4.5), 2);
    /** Slope of a side: metres out for each metre up. */
    public static final Symbol BATTER = number("batter", Units.ONE, Range.of(0, 10), Range.of(0, 3), 2);
    /** How many ends are ramped. */
    public static final Symbol RAMPS = number("ramps", Units.ONE, Range.of(0, 2), Range.of(0, 2), 0);
    /** Slope of a ramped end: metres along for each metre up. Below 1 it is steeper than 45 degrees. */
    public static final Symbol RAMP_RUN = number("ramp run", Units.ONE, Range.of(0, 20), Range.of(1, 6), 1);
    /** Height of the crown above the walls. */
    public static final Symbol CROWN = number("crown", Units.M, Range.of(0, 5), Range.of(0, 1.5), 1);
    /** How a crown is shaped: parabolic or straight shouldered. */
    public static final Symbol CROWN_SHAPE = Symbol.text("crown shape");
    /** Height of the silage at the sides on the day of filling, before it settles. */
    public static final Symbol FILLED_HEIGHT =
            number("filled height", Units.M, Range.above(0, 14), Range.of(0.5, 6), 2);
    /** Fresh silage in a cubic metre. */
    public static final Symbol FRESH_DENSITY =
            number("fresh density", Units.KG_PER_M3, Range.above(0, 1150), Range.of(400, 950), 0);
    /** The same turned round, as pits are measured up in Ireland: what a fresh tonne takes up. */
    public static final Symbol SPACE_OF_A_TONNE = number(
            "space of a tonne", Units.M3.over(Units.T), new Range(0.87, false, 10, false), Range.of(1.05, 2.5), 2);
    /** Dry matter in a cubic metre. */
    public static final Symbol DRY_MATTER_DENSITY =
            number("dry matter density", Units.KG_DM_PER_M3, Range.above(0, 500), Range.of(100, 350), 0);
    /** Dry matter content aimed at when ensiling. */
    public static final Symbol DM_TARGET =
            number("dry matter target", Units.PERCENT_DM, new Range(5, true, 95, true), Range.of(20, 45), 0);
    /** Mass rolling the clamp, all rollers together. */
    public static final Symbol ROLLER_MASS = number("roller mass", Units.T, Range.above(0, 300), Range.of(4, 45), 1);
    /** Thickness of a layer before it is rolled. */
    public static final Symbol LAYER = number("layer", Units.CM, Range.above(0, 150), Range.of(5, 30), 0);
    /** Fresh crop brought to the clamp per hour. */
    public static final Symbol DELIVERY = number("delivery", Units.T_PER_H, Range.above(0, 1000), Range.of(5, 250), 0);
    /** The name of the tank effluent runs to. */
    public static final Symbol EFFLUENT_TANK = Symbol.text("effluent tank");
    /** Volume of the effluent tank. */
    public static final Symbol EFFLUENT_TANK_VOLUME =
            number("effluent tank volume", Units.M3, Range.of(0, 100000), Range.of(1, 2000), 0);
    /** Year the clamp was built or last enlarged. */
    public static final Symbol YEAR_BUILT =
            number("year built or enlarged", Units.ONE, Range.of(1850, 2200), Range.of(1940, 2100), 0);
    /** Whose law a clamp stands under. */
    public static final Symbol COUNTRY = Symbol.text("country");
    /** Volume of an effluent tank that is known by its name. */
    public static final Symbol NAMED_TANK_VOLUME =
            number("volume of the named tank", Units.M3, Range.of(0, 100000), Range.of(1, 2000), 0);
    /** What a pit is dug in: sand, common earth, sand-clay or clay. */
    public static final Symbol SOIL = Symbol.text("soil");
    /** How much more room soil takes up once it is dug, as typed for the pit. */
    public static final Symbol SWELL =
            number("swell of this soil", Units.PERCENT, Range.of(0, 200), Range.of(5, 65), 0);
    /** Width between the sides at the top of the walls, or at ground level over a pit. */
    public static final Symbol WIDTH_AT_TOP = number("width at the top", Units.M, Range.of(0, 130), Range.of(0, 90), 1);
    /** Additive on each fresh tonne. */
    public static final Symbol ADDITIVE =
            number("additive", Units.L.over(Units.T), Range.of(0, 50), Range.of(0.5, 8), 1);
    /** How far the face moves back in a week. */
    public static final Symbol FEED_OUT_RATE =
            number("feed-out rate", Units.M.over(Units.WEEK), Range.above(0, 30), Range.of(0.7, 7), 1);
    /** When the clamp is fed: winter, summer or all year. */
    public static final Symbol FEEDING_SEASON = Symbol.text("feeding season");

    // Stocks and herds

    /** The name of a store of feed. */
    public static final Symbol STORE = Symbol.text("store");
    /** What a store is: clamp or bales. */
    public static final Symbol STORE_KIND = Symbol.text("store kind");
    /** Fresh feed in the store. */
    public static final Symbol AMOUNT = number("amount in store", Units.T, Range.of(0, 100000), Range.of(1, 20000), 0);
    /** Dry matter in the store. */
    public static final Symbol AMOUNT_DRY =
            number("amount in store, dry matter", Units.T_DM, Range.of(0, 100000), Range.of(0.2, 10000), 1);
    /** How many bales. */
    public static final Symbol COUNT = number("count", Units.ONE, Range.of(0, 1000000), Range.of(1, 20000), 0);
    /** Fresh mass of one bale. */
    public static final Symbol WEIGHT_EACH =
            number("weight each", Units.KG, Range.above(0, 2000), Range.of(10, 1000), 0);
    /** Dry matter of one bale. */
    public static final Symbol WEIGHT_EACH_DRY =
            number("dry matter of each", Units.KG_DM, Range.above(0, 2000), Range.of(8, 600), 0);
    /** Dry matter content of the feed in the store. */
    public static final Symbol STORE_DM =
            number("dry matter", Units.PERCENT_DM, new Range(5, true, 95, true), Range.of(15, 90), 0);
    /** Day the store was measured. */
    public static final Symbol STOCK_DATE = Symbol.date("day measured");
    /** Fresh feed taken out of the store so far. */
    public static final Symbol ALREADY_FED = number("already fed", Units.T, Range.of(0, 100000), Range.of(0, 20000), 0);
    /** A group of stock fed alike. */
    public static final Symbol GROUP = Symbol.text("group");
    /** How many animals. */
    public static final Symbol HEAD = number("head", Units.ONE, Range.above(0, 1000000), Range.of(1, 20000), 0);
    /** Dry matter eaten by one animal in a day. */
    public static final Symbol INTAKE =
            number("intake", Units.KG_DM.over(Units.D), Range.above(0, 30), Range.of(0.5, 18), 1);
    /** Fresh feed eaten by one animal in a day. */
    public static final Symbol INTAKE_FRESH =
            number("fresh intake", Units.KG.over(Units.D), Range.above(0, 120), Range.of(1, 70), 1);
    /** Dry matter content of what the group eats. */
    public static final Symbol INTAKE_DM =
            number("dry matter of the feed", Units.PERCENT_DM, new Range(5, true, 95, true), Range.of(15, 90), 0);
    /** Days fed. */
    public static final Symbol DAYS = number("days", Units.D, Range.above(0, 1000), Range.of(1, 365), 0);
    /** First day of feeding. */
    public static final Symbol FEED_START = Symbol.date("first day fed");
    /** Last day of feeding. */
    public static final Symbol FEED_END = Symbol.date("last day fed");

    // The workbook's own words

    /** The name of a constant or default. */
    public static final Symbol ITEM = Symbol.text("item");
    /** What a constant or default shall be, as a number in the unit beside it. */
    public static final Symbol VALUE_NUMBER = number("value", Units.ONE, Range.ANY, Range.ANY, 4);
    /** A unit as the client writes it. */
    public static final Symbol UNIT = Symbol.text("unit");
    /** The name of an input list. */
    public static final Symbol LIST = Symbol.text("list");
    /** The canonical name of a column. */
    public static final Symbol COLUMN = Symbol.text("column");
    /** A header in this workbook. */
    public static final Symbol HEADER = Symbol.text("header");

    private static Symbol number(String name, Unit unit, Range possible, Range usual, int decimals) {
        return Symbol.number(name, unit).possible(possible).usual(usual).decimals(decimals);
    }
}
