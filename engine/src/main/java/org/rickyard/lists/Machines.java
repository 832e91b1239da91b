package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.choice;
import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import java.util.Map;
import org.rickyard.trade.Quantities;

/**
 * The machine list.
 *
 * <p>{@link #OUTPUT} is in t/h, or for diggers and loaders in m3/h; {@link ListRows#unit} tells which, and a list may
 * have a column of each. {@link #OUTPUT_BASIS} says whether the m3 are in ground or loose; it is also read from the
 * header "Output (m3/h loose)". {@link #CHARGE} is in money over what {@link #CHARGE_UNIT} says, row by row.
 *
 * <p>A column is {@code Machines.X} for whoever reads the list; those of a sprayer, of money and of what was measured are
 * declared in files of their own ({@link SprayerColumns}, {@link MachineMoney}, {@link MachineMeasurements}), and what
 * headers mean beside others in {@link MachineHeaders}. A new column goes to its subject, and here to the end of the list.
 */
public final class Machines {
    private Machines() {}

    /** Whose machine. */
    public static final ColumnSpec HOLDING = Shared.HOLDING;
    /** Its name. */
    public static final ColumnSpec MACHINE = text("Machine", Quantities.MACHINE)
            .needed()
            .also("machine implement, implement machine, implement name, equipment name, machine id, make model, "
                    + "machine name, name, sprayer, implement, equipment, kit, machinery, item of plant, "
                    + "plant, machine no, model, "
                    + "make and model")
            .help("The name you know it by; jobs refer to it.");
    /** What it does. */
    public static final ColumnSpec TYPE = choice("Type", Quantities.MACHINE_TYPE, Choices.MACHINE_TYPE)
            .needed()
            .readByLastWords()
            .also("equipment type, machine class, machine category, "
                    + "machine type, kind, class, sort, type of machine, category, implement type, kind of machine, "
                    + "machine kind, sort of machine, type of implement, kind of implement, type of equipment, "
                    + "kind of equipment")
            .asking(Map.of(
                    "swather", "a rake in Britain, a cutter in America: write rake or mower",
                    "windrower", "a rake in Britain, a cutter in America: write rake or mower",
                    "roller",
                            "write clamp roller (packs silage by its weight) or field rolls (rolls land by its width)",
                    "spreader", "write fertiliser spreader, muck spreader or tedder",
                    "spread", "write fertiliser spreader, muck spreader or tedder",
                    "harvester", "write forager or combine",
                    "header", "a combine in Australia, a part of one elsewhere: write combine, or other for the part",
                    "self propelled harvester", "write forager or combine",
                    "sp harvester", "write forager or combine",
                    "packer",
                            "write clamp roller (packs silage by its weight) or field rolls (packs land by its width)"))
            .help("mower, tedder, rake, forager, trailer, sprayer, ...");
    /** How many alike. */
    public static final ColumnSpec NUMBER = number("Number", Quantities.NUMBER_OF_MACHINES)
            .also("no of machines, number of machines, quantity, qty, how many, count, no, no of")
            .help("How many machines alike; blank means one.");
    /** Working width. */
    public static final ColumnSpec WORKING_WIDTH = number("Working width", Quantities.WORKING_WIDTH)
            .also("width of implement, implement working width, machine working width, "
                    + "operating width, work width, mowing width, width working, "
                    + "width, bout width, swath width, cut width, cutting width, boom width, boom, "
                    + "effective width, spray width, width of work, swathe width, machine width")
            .help("Ground worked in one pass.");
    /** Overlap. */
    public static final ColumnSpec OVERLAP = number("Overlap", Quantities.OVERLAP)
            .or(Quantities.OVERLAP_SHARE)
            .also("overlap width, width overlap, lap")
            .help("Width worked twice at each pass.");
    /** Speed at work. */
    public static final ColumnSpec SPEED = Shared.SPEED;
    /** Slowest speed. */
    public static final ColumnSpec LOWEST_SPEED = number("Lowest field speed", Quantities.LOWEST_SPEED)
            .also("min forward speed, minimum forward speed, lowest forward speed, "
                    + "lowest speed, minimum speed, min speed, slowest speed, speed min, min field speed, "
                    + "minimum field speed")
            .help("Slowest speed that still does the work.");
    /** Fastest speed. */
    public static final ColumnSpec HIGHEST_SPEED = number("Highest field speed", Quantities.HIGHEST_SPEED)
            .also("max forward speed, maximum forward speed, highest forward speed, "
                    + "highest speed, maximum speed, max speed, top speed, fastest speed, speed max, "
                    + "max field speed, maximum field speed")
            .help("Fastest speed for good work.");
    /** Field efficiency. */
    public static final ColumnSpec FIELD_EFFICIENCY = number("Field efficiency", Quantities.FIELD_EFFICIENCY)
            .also("percent efficiency, efficiency percent, F E, "
                    + "working efficiency, work efficiency, field efficiency factor, efficiency, FE")
            .help("Share of the full rate kept up over a field, 50 to 90 %.");
    /** Turn time. */
    public static final ColumnSpec TURN_TIME = number("Turn time", Quantities.TURN_TIME)
            .also("time for one turn, time of a turn, time for a turn, time of one turn, "
                    + "headland turning time, turn round time, turning time at headland, "
                    + "turning time, headland turn, time per turn, turn, headland turn time")
            .help("One headland turn.");
    /** Other lost time. */
    public static final ColumnSpec OTHER_LOST_TIME = number("Other lost time", Quantities.OTHER_LOST_TIME)
            .also("other stoppages, other losses, lost time, time lost, time loss, loss of time, "
                    + "other time lost, stoppages")
            .help("Time lost per hectare other than in turns.");
    /** Output by mass or volume. */
    public static final ColumnSpec OUTPUT = number("Output", Quantities.OUTPUT)
            .or(Quantities.OUTPUT_VOLUME)
            .also("throughput, t/h, m3/h, handling rate, loading rate, digging rate, output rate, "
                    + "harvest rate, harvesting rate, "
                    + "chopping rate, foraging rate, pick up rate, "
                    + "capacity per hour")
            .help("Tonnes (or, for diggers, m3) handled in an hour at work.");
    /** In ground or loose. */
    public static final ColumnSpec OUTPUT_BASIS = choice("Output basis", Quantities.OUTPUT_BASIS, Choices.OUTPUT_BASIS)
            .also("volume basis, soil measured, measured in ground or loose")
            .help("Diggers with an output in m3/h: in ground or loose.");
    /** Payload. */
    public static final ColumnSpec PAYLOAD = number("Payload", Quantities.PAYLOAD)
            .also("load weight, net payload, average load, trailer payload, load per trailer, weight per load, "
                    + "load, carries, carrying capacity, net load, trailer load, load capacity, load size")
            .help("What it carries of this crop, within the law and its plate.");
    /** Body volume. */
    public static final ColumnSpec BODY_VOLUME = number("Body volume", Quantities.BODY_VOLUME)
            .also("volume, body capacity, cubic capacity, trailer volume, body size, box size, "
                    + "box volume, bucket volume, bucket size")
            .help("Volume of the body or bucket.");
    /** Density of the load. */
    public static final ColumnSpec LOAD_DENSITY = number("Load density", Quantities.LOAD_DENSITY)
            .also("density of load, density in trailer, crop density in trailer")
            .help("Trailers: a cubic metre of crop as it lies in the body.");
    /** One round. */
    public static final ColumnSpec ROUND_TIME = number("Round time", Quantities.ROUND_TIME)
            .also("time per cycle, time of a cycle, time for one cycle, "
                    + "cycle time, round trip time, time per round, time per load, minutes per load")
            .help("Loaders, buckrakes, tankers, spreaders: one load, there and back.");
    /** Mass. */
    public static final ColumnSpec MASS = number("Mass", Quantities.MASS)
            .also("weight, machine weight, machine mass, operating weight, rolling weight, "
                    + "packing weight, compaction weight, rolling mass, packing mass, operating mass")
            .help("As it works; for a roller with all ballast.");
    /** Unladen mass. */
    public static final ColumnSpec UNLADEN_MASS = number("Unladen mass", Quantities.UNLADEN_MASS)
            .also("unladen weight, tare, tare weight, empty weight, unladen, empty mass, kerb weight")
            .help("Empty.");
    /** Power. */
    public static final ColumnSpec POWER = number("Power", Quantities.POWER)
            .also("kW, hp, bhp, PTO power, engine power, horsepower, horse power, PTO hp, PTO kW, "
                    + "engine hp, engine kW, rated power, power requirement, power needed, power rating, "
                    + "rated hp, rated kW, max hp, maximum hp, max power, maximum power, PS")
            .help("Say engine or PTO in Power basis.");
    /** Engine or PTO. */
    public static final ColumnSpec POWER_BASIS = choice("Power basis", Quantities.POWER_BASIS, Choices.POWER_BASIS)
            .also("power at, engine or PTO, basis of power, power type, hp basis, kW basis, hp at, hp type")
            .help("engine or PTO.");
    /** Fuel burnt. */
    public static final ColumnSpec FUEL = number("Fuel", Quantities.FUEL_RATE)
            .or(Quantities.FUEL_FOR_AREA)
            .also("fuel use, fuel consumption, fuel rate, diesel, fuel per hour, fuel requirement, "
                    + "diesel use, fuel burn")
            .help("Burnt in an hour at work; or on a hectare, if the header says so.");
    /** People. */
    public static final ColumnSpec CREW = number("Crew", Quantities.CREW)
            .also("persons, number of persons, no of persons, "
                    + "men, labour units, labor units, operators, people, drivers, staff, labour, labor, workers")
            .help("People it needs, the driver included.");
    /** Tank. */
    public static final ColumnSpec TANK = SprayerColumns.TANK;
    /** Usable tank. */
    public static final ColumnSpec USABLE_TANK = SprayerColumns.USABLE_TANK;
    /** Rinse tank. */
    public static final ColumnSpec RINSE_TANK = SprayerColumns.RINSE_TANK;
    /** Residual volume. */
    public static final ColumnSpec RESIDUAL = SprayerColumns.RESIDUAL;
    /** Nozzles. */
    public static final ColumnSpec NOZZLES = SprayerColumns.NOZZLES;
    /** Nozzle spacing. */
    public static final ColumnSpec NOZZLE_SPACING = SprayerColumns.NOZZLE_SPACING;
    /** Nozzle size. */
    public static final ColumnSpec NOZZLE_SIZE = SprayerColumns.NOZZLE_SIZE;
    /** Lowest pressure. */
    public static final ColumnSpec LOWEST_PRESSURE = SprayerColumns.LOWEST_PRESSURE;
    /** Highest pressure. */
    public static final ColumnSpec HIGHEST_PRESSURE = SprayerColumns.HIGHEST_PRESSURE;
    /** Droplet class. */
    public static final ColumnSpec SPRAY_QUALITY = SprayerColumns.SPRAY_QUALITY;
    /** Sprayer test. */
    public static final ColumnSpec LAST_TESTED = SprayerColumns.LAST_TESTED;
    /** Fill time. */
    public static final ColumnSpec FILL_TIME = SprayerColumns.FILL_TIME;
    /** Mix in the lines. */
    public static final ColumnSpec PRIMING = SprayerColumns.PRIMING;
    /** Between fields. */
    public static final ColumnSpec MOVE_TIME = number("Move time", Quantities.MOVE_TIME)
            .also("moving time, time between fields, time to next field")
            .help("From field to field: folding, road, unfolding.");
    /** Washing out. */
    public static final ColumnSpec CLEANING_TIME = SprayerColumns.CLEANING_TIME;
    /** A timed run. */
    public static final ColumnSpec TIMED_DISTANCE = MachineMeasurements.TIMED_DISTANCE;
    /** Its seconds. */
    public static final ColumnSpec TIMED_SECONDS = MachineMeasurements.TIMED_SECONDS;
    /** A test with water. */
    public static final ColumnSpec TEST_AREA = MachineMeasurements.TEST_AREA;
    /** The water used in it. */
    public static final ColumnSpec TEST_VOLUME = MachineMeasurements.TEST_VOLUME;
    /** What a spreader or drill put out in it. */
    public static final ColumnSpec TEST_WEIGHT = MachineMeasurements.TEST_WEIGHT;
    /** Road speed with a load. */
    public static final ColumnSpec ROAD_SPEED_LADEN = number("Road speed laden", Quantities.ROAD_SPEED_LADEN)
            .also("loaded travel speed, loaded haul speed, laden haul speed, haul speed loaded, "
                    + "haul speed laden, travel speed loaded, travel speed laden, transport speed loaded, "
                    + "transport speed laden, loaded transport speed, laden transport speed, "
                    + "loaded road speed, road speed full, laden travel speed, "
                    + "laden speed, laden road speed, loaded speed, speed laden, speed loaded, "
                    + "road speed loaded, "
                    + "road laden, road loaded, road full")
            .help("Average with a load.");
    /** Road speed without. */
    public static final ColumnSpec ROAD_SPEED_EMPTY = number("Road speed empty", Quantities.ROAD_SPEED_EMPTY)
            .also("empty travel speed, empty haul speed, haul speed empty, haul speed unladen, "
                    + "travel speed empty, travel speed unladen, transport speed empty, "
                    + "transport speed unladen, empty transport speed, "
                    + "unladen road speed, "
                    + "empty speed, empty road speed, unladen speed, speed empty, road speed unladen, "
                    + "speed unladen, road empty, road unladen")
            .help("Average without a load.");
    /** Hours per day. */
    public static final ColumnSpec HOURS_PER_DAY = Shared.HOURS_PER_DAY;
    /** Whose machine. */
    public static final ColumnSpec OWN_OR_HIRED = MachineMoney.OWN_OR_HIRED;
    /** Charge. */
    public static final ColumnSpec CHARGE = MachineMoney.CHARGE;
    /** What the charge is counted by. */
    public static final ColumnSpec CHARGE_UNIT = MachineMoney.CHARGE_UNIT;
    /** What the charge includes. */
    public static final ColumnSpec CHARGE_INCLUDES = MachineMoney.CHARGE_INCLUDES;
    /** List price. */
    public static final ColumnSpec LIST_PRICE = MachineMoney.LIST_PRICE;
    /** Purchase price. */
    public static final ColumnSpec PURCHASE_PRICE = MachineMoney.PURCHASE_PRICE;
    /** Trade-in value. */
    public static final ColumnSpec TRADE_IN_VALUE = MachineMoney.TRADE_IN_VALUE;
    /** Age. */
    public static final ColumnSpec AGE = MachineMoney.AGE;
    /** Hours so far. */
    public static final ColumnSpec HOURS_NOW = MachineMoney.HOURS_NOW;
    /** Life. */
    public static final ColumnSpec LIFE = MachineMoney.LIFE;
    /** Hours per year. */
    public static final ColumnSpec HOURS_PER_YEAR = MachineMoney.HOURS_PER_YEAR;

    /** Rate of work. */
    public static final ColumnSpec RATE_OF_WORK = number("Rate of work", Quantities.TYPED_RATE)
            .also("ha/h, ha/hr, ac/hr, ha per h, ha per hour, hectares per hour, ac/h, ac per h, "
                    + "ac per hour, acres per hour, field capacity, "
                    + "effective field capacity, effective capacity, actual field capacity, area capacity, "
                    + "hectares an hour, acres an hour")
            .help("Area done in an hour, all in, where you know it; else width, speed and efficiency.");

    /** Rows or furrows. */
    public static final ColumnSpec ROWS = number("Rows", Quantities.ROWS)
            .also("number of rows, no of rows, row units, bottoms, number of bottoms, furrows, "
                    + "number of furrows, shares, number of shares, number of bodies, bodies, shanks, "
                    + "number of shanks, no of shanks, coulters, number of coulters, no of coulters")
            .help("Rows or furrows worked in one pass, where no working width is typed.");
    /** The width of each. */
    public static final ColumnSpec ROW_WIDTH = number("Row width", Quantities.ROW_WIDTH)
            .also("row spacing, width per row, width of row, bottom width, width of bottom, "
                    + "width per bottom, cut per bottom, furrow width, width of furrow, width per furrow, "
                    + "width of cut per bottom, knife spacing, spacing of rows, spacing of knives, "
                    + "shank spacing, spacing of shanks, share width, body width, coulter spacing, "
                    + "spacing of coulters")
            .help("Width that each of them works.");

    /** Flow of one nozzle. */
    public static final ColumnSpec NOZZLE_FLOW = SprayerColumns.NOZZLE_FLOW;
    /** Flow of all. */
    public static final ColumnSpec TOTAL_FLOW = SprayerColumns.TOTAL_FLOW;
    /** Pressure at work. */
    public static final ColumnSpec WORKING_PRESSURE = SprayerColumns.WORKING_PRESSURE;

    /** What the pump gives. */
    public static final ColumnSpec PUMP_FLOW = SprayerColumns.PUMP_FLOW;
    /** Wheel turns at work. */
    public static final ColumnSpec TURNS_LOADED = MachineMeasurements.TURNS_LOADED;
    /** Wheel turns without the load. */
    public static final ColumnSpec TURNS_UNLOADED = MachineMeasurements.TURNS_UNLOADED;

    /** Pull at work. */
    public static final ColumnSpec DRAUGHT = MachineMeasurements.DRAUGHT;
    /** How far a load goes. */
    public static final ColumnSpec LOAD_DISTANCE = MachineMeasurements.LOAD_DISTANCE;
    /** Interest on what is in it. */
    public static final ColumnSpec INTEREST = MachineMoney.INTEREST;
    /** Insurance and housing. */
    public static final ColumnSpec INSURANCE = MachineMoney.INSURANCE;

    /** The list. */
    public static final ListSpec LIST = MachineHeaders.told(new ListSpec(
                    "Machines",
                    List.of(
                            "machine list",
                            "machinery",
                            "equipment",
                            "gear",
                            "kit",
                            "implements",
                            "fleet",
                            "machinery list",
                            "kit",
                            "plant",
                            "machinery register",
                            "tackle"),
                    List.of(
                            HOLDING,
                            MACHINE,
                            TYPE,
                            NUMBER,
                            WORKING_WIDTH,
                            OVERLAP,
                            SPEED,
                            LOWEST_SPEED,
                            HIGHEST_SPEED,
                            FIELD_EFFICIENCY,
                            TURN_TIME,
                            OTHER_LOST_TIME,
                            OUTPUT,
                            OUTPUT_BASIS,
                            PAYLOAD,
                            BODY_VOLUME,
                            LOAD_DENSITY,
                            ROUND_TIME,
                            MASS,
                            UNLADEN_MASS,
                            POWER,
                            POWER_BASIS,
                            FUEL,
                            CREW,
                            TANK,
                            USABLE_TANK,
                            RINSE_TANK,
                            RESIDUAL,
                            NOZZLES,
                            NOZZLE_SPACING,
                            NOZZLE_SIZE,
                            LOWEST_PRESSURE,
                            HIGHEST_PRESSURE,
                            SPRAY_QUALITY,
                            LAST_TESTED,
                            FILL_TIME,
                            PRIMING,
                            MOVE_TIME,
                            CLEANING_TIME,
                            TIMED_DISTANCE,
                            TIMED_SECONDS,
                            TEST_AREA,
                            TEST_VOLUME,
                            ROAD_SPEED_LADEN,
                            ROAD_SPEED_EMPTY,
                            HOURS_PER_DAY,
                            OWN_OR_HIRED,
                            CHARGE,
                            CHARGE_UNIT,
                            CHARGE_INCLUDES,
                            LIST_PRICE,
                            PURCHASE_PRICE,
                            TRADE_IN_VALUE,
                            AGE,
                            HOURS_NOW,
                            LIFE,
                            HOURS_PER_YEAR,
                            RATE_OF_WORK,
                            ROWS,
                            ROW_WIDTH,
                            NOZZLE_FLOW,
                            TOTAL_FLOW,
                            WORKING_PRESSURE,
                            TEST_WEIGHT,
                            PUMP_FLOW,
                            TURNS_LOADED,
                            TURNS_UNLOADED,
                            INTEREST,
                            INSURANCE,
                            LOAD_DISTANCE,
                            DRAUGHT))
            .identifiedBy(MACHINE)
            .qualifier(MACHINE, TYPE)
            .qualifier(OUTPUT, OUTPUT_BASIS)
            .qualifier(POWER, POWER_BASIS)
            .qualifier(CHARGE, CHARGE_UNIT)
            .unitColumn(CHARGE_UNIT, CHARGE));
}
