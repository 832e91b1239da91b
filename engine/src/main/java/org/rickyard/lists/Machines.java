package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.choice;
import static org.rickyard.lists.ColumnSpec.date;
import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.special;
import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import java.util.Map;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.cost.Prices;

/**
 * The machine list.
 *
 * <p>{@link #OUTPUT} is in t/h, or for diggers and loaders in m3/h; {@link ListRows#unit} tells which, and a list may
 * have a column of each. {@link #OUTPUT_BASIS} says whether the m3 are in ground or loose; it is also read from the
 * header "Output (m3/h loose)". {@link #CHARGE} is in money over what {@link #CHARGE_UNIT} says, row by row.
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
    public static final ColumnSpec TANK = number("Tank", Quantities.TANK_VOLUME)
            .also("sprayer tank size, sprayer tank capacity, sprayer tank volume, spray tank volume, "
                    + "spray tank size, knapsack capacity, knapsack size, knapsack volume, "
                    + "main tank capacity, nominal tank volume, spray tank capacity, "
                    + "sprayer capacity, nominal capacity, "
                    + "tank size, tank volume, tank capacity, nominal tank, sprayer tank, main tank, "
                    + "tanker volume, spray tank")
            .help("Nominal volume.");
    /** Usable tank. */
    public static final ColumnSpec USABLE_TANK = number("Usable tank", Quantities.USABLE_TANK)
            .also("usable tank size, usable tank capacity, working tank volume, effective tank volume, "
                    + "usable, usable volume, usable tank volume, working tank, effective tank, usable capacity")
            .help("What is filled and can be sprayed out.");
    /** Rinse tank. */
    public static final ColumnSpec RINSE_TANK = number("Rinse tank", Quantities.RINSE_TANK)
            .also("rinse water, clean water, rinse tank size, rinse tank capacity, clean water tank size, "
                    + "rinse water tank, clean water tank, rinse volume, rinsing tank, flush tank")
            .help("Clean water carried for rinsing.");
    /** Residual volume. */
    public static final ColumnSpec RESIDUAL = number("Residual", Quantities.RESIDUAL)
            .also("residual volume, dead volume, sump, undilutable residue, tank residue")
            .help("Left in tank, pump and lines when spraying ends.");
    /** Nozzles. */
    public static final ColumnSpec NOZZLES = number("Number of nozzles", Quantities.NOZZLES)
            .also("nozzles open, open nozzles, nozzles in use, no of nozzles, no nozzles, "
                    + "nozzle count, nozzle number, jets, number of jets, number of tips")
            .help("All nozzles that spray.");
    /** Nozzle spacing. */
    public static final ColumnSpec NOZZLE_SPACING = number("Nozzle spacing", Quantities.NOZZLE_SPACING)
            .also("spacing between nozzles, nozzle spacing on boom, nozzle spacing along boom, "
                    + "nozzle space, spacing between tips, distance between tips, "
                    + "distance between nozzles, nozzle distance, "
                    + "spacing, nozzle pitch, jet spacing, tip spacing, spacing of nozzles")
            .help("Along the boom.");
    /** Nozzle size. */
    public static final ColumnSpec NOZZLE_SIZE = special("Nozzle size", ColumnSpec.Type.NOZZLE, Quantities.NOZZLE_SIZE)
            .also("jet size, tip size, ISO size, nozzle code")
            .help("04, ISO 04, 11004, F110/1.6/3.0; not the colour alone.");
    /** Lowest pressure. */
    public static final ColumnSpec LOWEST_PRESSURE = number("Lowest pressure", Quantities.LOWEST_PRESSURE)
            .also("min nozzle pressure, min working pressure, min operating pressure, "
                    + "minimum pressure, min pressure, pressure min, lowest nozzle pressure")
            .help("The nozzle's lowest.");
    /** Highest pressure. */
    public static final ColumnSpec HIGHEST_PRESSURE = number("Highest pressure", Quantities.HIGHEST_PRESSURE)
            .also("max nozzle pressure, max working pressure, max operating pressure, "
                    + "maximum pressure, max pressure, pressure max, highest nozzle pressure")
            .help("The nozzle's highest.");
    /** Droplet class. */
    public static final ColumnSpec SPRAY_QUALITY = Shared.SPRAY_QUALITY.help("The nozzle's, at the pressure used.");
    /** Sprayer test. */
    public static final ColumnSpec LAST_TESTED = date("Last tested", Quantities.LAST_TESTED)
            .also("last test, last inspection, test date, last inspected, inspection date, MOT, "
                    + "date tested, sprayer test date, sprayer tested, sprayer test, NSTS test, NSTS")
            .help("Day of the last sprayer test.");
    /** Fill time. */
    public static final ColumnSpec FILL_TIME = number("Fill time", Quantities.FILL_TIME)
            .also("fill and mix time, filling and mixing time, fill mix time, filling mixing time, "
                    + "time to fill tank, time per fill, refilling time, time to fill and mix, "
                    + "filling time, time to fill, refill time, refill, fill")
            .help("One filling with mixing.");
    /** Mix in the lines. */
    public static final ColumnSpec PRIMING = number("Priming", Quantities.PRIMING)
            .also("priming volume, line volume")
            .help("Mix that fills pump, lines and boom before spraying starts.");
    /** Between fields. */
    public static final ColumnSpec MOVE_TIME = number("Move time", Quantities.MOVE_TIME)
            .also("moving time, time between fields, time to next field")
            .help("From field to field: folding, road, unfolding.");
    /** Washing out. */
    public static final ColumnSpec CLEANING_TIME = number("Cleaning time", Quantities.CLEANING_TIME)
            .also("wash down time, washing time, wash out time, washing out time, washing down time")
            .help("Washing out and cleaning down, once for a block.");
    /** A timed run. */
    public static final ColumnSpec TIMED_DISTANCE = number("Timed distance", Quantities.TIMED_DISTANCE)
            .also("test strip length, length of test strip, length of test course, length of test run, "
                    + "test distance, timed run, course length, length of course, course distance, course, "
                    + "distance timed, test course")
            .help("Length of a run timed in the field, tank half full.");
    /** Its seconds. */
    public static final ColumnSpec TIMED_SECONDS = number("Timed seconds", Quantities.TIMED_SECONDS)
            .also("time to cover distance, time to cover course, time to walk, time to drive, "
                    + "time to walk distance, time to drive distance, time to walk course, "
                    + "time to drive course, "
                    + "test seconds, seconds timed, course time, travel time, time over course, "
                    + "time to travel, time taken, "
                    + "time for course, seconds for course, seconds taken")
            .help("Seconds that run took.");
    /** A test with water. */
    public static final ColumnSpec TEST_AREA = number("Test area", Quantities.TEST_AREA)
            .also("tray area, area of tray, area of catch tray, catch tray area, catch area, collection area, "
                    + "area of test plot, test plot area, calibration area, calibration plot, "
                    + "test strip area, area of test strip, area of calibration plot, "
                    + "area tested, area sprayed, area sprayed in test, test plot")
            .help("Ground sprayed with water in a test.");
    /** The water used in it. */
    public static final ColumnSpec TEST_VOLUME = number("Test volume", Quantities.TEST_VOLUME)
            .also("amount of water used, volume of water used, "
                    + "water used in test, water used, volume used in test, volume sprayed in test")
            .help("Water used on the test area.");
    /** What a spreader or drill put out in it. */
    public static final ColumnSpec TEST_WEIGHT = number("Test weight", Quantities.TEST_WEIGHT)
            .also("weight of material collected, weight of fertiliser collected, "
                    + "weight of fertilizer collected, weight of seed collected, fertiliser collected, "
                    + "fertilizer collected, seed collected, material collected, product collected, "
                    + "pounds collected, pounds caught, grams collected, grams caught, "
                    + "weight caught, weight collected, weight used in test, "
                    + "weight spread in test, test mass, catch weight")
            .help("Spreaders and drills: put out or caught on the test area.");
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
    public static final ColumnSpec OWN_OR_HIRED = choice("Own or hired", Quantities.OWN_OR_HIRED, Choices.OWN_OR_HIRED)
            .also("own hired, own hire, hire or own, ownership, owned or hired, hired or own, "
                    + "own or contractor, own or hire")
            .help("own or hired.");
    /** Charge. */
    public static final ColumnSpec CHARGE = number("Charge", Quantities.CHARGE_PER_HOUR)
            .or(Quantities.CHARGE_PER_HECTARE, Quantities.CHARGE_PER_TONNE, Quantities.CHARGE_PER_BALE)
            .also("charge out, charge out rate, contractor charge, contract charge, hire charge, "
                    + "contract price, contract rate, "
                    + "hire rate, contractor rate, hire price, contractor price, custom rate, "
                    + "custom charge, custom hire rate, "
                    + "custom hire charge, custom price")
            .help("Contractor's or hire charge; say per what in Charge unit.");
    /** What the charge is counted by. */
    public static final ColumnSpec CHARGE_UNIT = choice("Charge unit", Quantities.CHARGE_UNIT, Choices.CHARGE_UNIT)
            .also("per, charge per, charged by, charge basis, unit of charge, charged per")
            .help("h, ha, t or bale.");
    /** What the charge includes. */
    public static final ColumnSpec CHARGE_INCLUDES = choice(
                    "Charge includes", Quantities.CHARGE_INCLUDES, Choices.CHARGE_INCLUDES)
            .also("includes, included in charge, charge covers")
            .help("everything, all but fuel, or machine only.");
    /** List price. */
    public static final ColumnSpec LIST_PRICE = number("List price", Quantities.LIST_PRICE)
            .also("manufacturer's list price, maker's list price, price of new machine, "
                    + "new machine price, price of a new machine, "
                    + "new price, retail price, price new, replacement price, list, "
                    + "current list price, new list price")
            .help("New, from the maker's list.");
    /** Purchase price. */
    public static final ColumnSpec PURCHASE_PRICE = number("Purchase price", Quantities.PURCHASE_PRICE)
            .also("initial investment, purchase value, acquisition cost, acquisition price, original purchase price, "
                    + "price paid, bought for, purchase cost, capital cost, buying price, "
                    + "initial cost, original cost, first cost, initial price, original price")
            .help("What was paid.");
    /** Trade-in value. */
    public static final ColumnSpec TRADE_IN_VALUE = number("Trade-in value", Quantities.TRADE_IN_VALUE)
            .also("salvage price, estimated salvage value, estimated trade in value, estimated resale value, "
                    + "trade in, salvage value, salvage, residual value, resale value, remaining value, "
                    + "sale value, terminal value, "
                    + "end value, value at end")
            .help("At the end of its life.");
    /** Age. */
    public static final ColumnSpec AGE =
            number("Age", Quantities.AGE).also("age now, years old").help("Now.");
    /** Hours so far. */
    public static final ColumnSpec HOURS_NOW = number("Hours now", Quantities.HOURS_NOW)
            .also("accumulated hours of use, "
                    + "hours run, hours done, meter reading, current hours, "
                    + "hour meter, clock hours, hours on clock, present hours, hours worked, "
                    + "hours to date, accumulated hours")
            .help("On the clock.");
    /** Life. */
    public static final ColumnSpec LIFE = number("Life", Quantities.LIFE)
            .also("length of ownership, years to be kept, length of life, "
                    + "years kept, ownership period, life years, service life, economic life, "
                    + "working life, ownership life, "
                    + "useful life, years to keep, depreciation years, depreciation period, "
                    + "years of life, years owned, years of ownership, lifetime, expected life, "
                    + "machine life")
            .help("Years it is kept.");
    /** Hours per year. */
    public static final ColumnSpec HOURS_PER_YEAR = number("Hours per year", Quantities.HOURS_PER_YEAR)
            .also("annual hours, hours/year, h/yr, hours a year, hrs per year, yearly hours, hrs/yr, "
                    + "hours per annum, hours pa, hours p a, hours of use per year, hours of use a year, "
                    + "annual hours of use, hours of annual use, hours used per year, hours used annually, "
                    + "annual operating hours, operating hours per year, annual hours used, h/year")
            .help("Worked in a year.");

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
    public static final ColumnSpec NOZZLE_FLOW = number("Nozzle flow", Quantities.NOZZLE_FLOW)
            .also("nozzle discharge rate, discharge rate per nozzle, nozzle delivery rate, "
                    + "delivery per nozzle, gpm per nozzle, gpm/nozzle, nozzle capacity, tip capacity, "
                    + "tip flow rate, "
                    + "nozzle output, flow per nozzle, output per nozzle, nozzle flow rate, "
                    + "nozzle discharge, nozzle delivery, "
                    + "tip flow, tip output, l/min per nozzle, l/min/nozzle, "
                    + "litres per minute per nozzle, output of one nozzle, flow of one nozzle, "
                    + "flow rate per nozzle, discharge per nozzle, "
                    + "average nozzle output, average nozzle flow, average output per nozzle, "
                    + "average flow per nozzle, mean nozzle output, mean nozzle flow, "
                    + "mean output per nozzle, mean flow per nozzle, catch per nozzle, "
                    + "average catch per nozzle, collected per nozzle, caught per nozzle, "
                    + "volume caught per nozzle, volume collected per nozzle, ounces caught per nozzle, "
                    + "ounces collected per nozzle, ounces per nozzle, ml caught per nozzle, ml collected per nozzle, "
                    + "ml per nozzle")
            .help("Caught from one nozzle in a minute, as a mean.");
    /** Flow of all. */
    public static final ColumnSpec TOTAL_FLOW = number("Total flow", Quantities.TOTAL_FLOW)
            .also("total nozzle output, total nozzle flow, total nozzle discharge, "
                    + "total output of nozzles, output of all nozzles, flow of all nozzles, "
                    + "discharge of all nozzles, total boom output, total boom flow, total boom discharge, "
                    + "boom discharge rate, sprayer discharge rate, "
                    + "boom output, boom flow, sprayer output, output of boom, total output, "
                    + "boom discharge, total discharge, "
                    + "sprayer flow, total flow rate, lance output, sprayer discharge")
            .help("All nozzles together in a minute.");
    /** Pressure at work. */
    public static final ColumnSpec WORKING_PRESSURE = number("Working pressure", Quantities.PRESSURE)
            .also("boom pressure, gauge pressure, "
                    + "operating pressure, spraying pressure, spray pressure, pressure used, pressure at nozzle, "
                    + "nozzle pressure")
            .help("At the nozzle, at work.");

    /** What the pump gives. */
    public static final ColumnSpec PUMP_FLOW = number("Pump flow", Quantities.PUMP_FLOW)
            .also("pump output, pump capacity, pump delivery, pump flow rate, pump rate, "
                    + "pump discharge, pump size, flow of pump, "
                    + "output of pump, capacity of pump, spray pump flow, spray pump capacity, "
                    + "spray pump output")
            .help("Sprayers: what the pump gives at working pressure.");
    /** Wheel turns at work. */
    public static final ColumnSpec TURNS_LOADED = number("Wheel turns loaded", Quantities.TURNS_LOADED)
            .also("wheel revolutions with load, wheel revolutions under load, wheel revs with load, "
                    + "wheel revs under load, "
                    + "wheel revs loaded, loaded wheel revs, wheel revolutions loaded,"
                    + " loaded wheel revolutions, wheel turns at work, wheel turns with load, "
                    + "wheel turns under load, turns"
                    + " loaded")
            .help("Tractors: turns of a driving wheel over a distance, at work; usually 10.");
    /** Wheel turns without the load. */
    public static final ColumnSpec TURNS_UNLOADED = number("Wheel turns unloaded", Quantities.TURNS_UNLOADED)
            .also("wheel revolutions without load, wheel revolutions with no load, "
                    + "wheel revs without load, wheel revs no load, wheel revs with no load, "
                    + "wheel revs unloaded, unloaded wheel revs, wheel"
                    + " revolutions unloaded, unloaded wheel revolutions, "
                    + "wheel turns without load, turns unloaded")
            .help("Over the same distance without the load, to the quarter turn.");

    /** Pull at work. */
    public static final ColumnSpec DRAUGHT = number("Draught", Quantities.DRAUGHT)
            .or(Quantities.DRAUGHT_FOR_WIDTH)
            .also("draft, draught force, draft force, draught requirement, draft requirement, draught required, "
                    + "draft required, implement draught, implement draft, draught of implement, draft of implement, "
                    + "unit draught, unit draft, draught per metre, draft per metre, draft per meter, total draught, "
                    + "total draft")
            .help(
                    "Force that pulls the machine at work (kN), or for each metre of its width (kN/m); where it is known.");
    /** How far a load goes. */
    public static final ColumnSpec LOAD_DISTANCE = number("Load distance", Quantities.LOAD_DISTANCE)
            .also("distance spread, spread distance, spreading distance, length spread, spread length, "
                    + "distance spread per load, distance spread by a load, distance one load spreads, "
                    + "distance to spread a load, distance to spread one load, distance to empty load, "
                    + "distance to empty spreader, distance to empty tanker, run per load, length of run per load, "
                    + "length spread per load, run of a load")
            .help("Muck spreaders and tankers: how far one load is spread, at the working width.");
    /** Interest on what is in it. */
    public static final ColumnSpec INTEREST = number("Interest rate", Prices.INTEREST)
            .also("rate of interest, annual interest rate, annual rate of interest, "
                    + "interest percent, percent interest")
            .help("A year, on the money in it; where its own is typed, it stands before that of Assumptions.");
    /** Insurance and housing. */
    public static final ColumnSpec INSURANCE = number("Insurance and housing", Prices.INSURANCE)
            .also(
                    "insurance housing, ins and housing, ins housing, housing and insurance, housing insurance, insurance and shelter, "
                            + "insurance shelter, insurance and housing rate, taxes insurance and housing, "
                            + "taxes insurance housing, tax insurance and housing, TIH")
            .help("A year, of the purchase price; where its own is typed, it stands before that of Assumptions.");

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
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
            .otherwise(HOLDING, Shared.WHOSE)
            .qualifier(MACHINE, TYPE)
            .qualifier(OUTPUT, OUTPUT_BASIS)
            .qualifier(POWER, POWER_BASIS)
            .qualifier(CHARGE, CHARGE_UNIT)
            .unitColumn(CHARGE_UNIT, CHARGE)
            .unclear(List.of("rate"), SPEED, OUTPUT, CHARGE, RATE_OF_WORK)
            .unclear(List.of("cv"), POWER)
            .unclear(List.of("basis"), OUTPUT_BASIS, POWER_BASIS)
            // Beside the tank of sprayers it is another.
            .otherwise(TANK, "wiper tank, wiper tank capacity")
            .toldWithout(POWER, "basis", OUTPUT_BASIS, OUTPUT)
            .toldWithout(OUTPUT, "basis", POWER_BASIS, POWER)
            .told("rate", CHARGE, CHARGE_UNIT)
            .otherwiseMeasured(WORKING_WIDTH, "swath, swathe, bout, cut, front, comb, header")
            .otherwise(
                    WORKING_WIDTH,
                    "effective working width, pick up width, pickup width, eff width, eff working width, "
                            + "boom length, boom size, bout size, drill width, planter width, seeder width, "
                            + "spreader width, plough width, plow width, "
                            + "cultivator width, tramline"
                            + " width, sprayer width, implement width, spreading width, spread width, "
                            + "header width, head width,"
                            + " cutterbar width, nominal width, front width, comb width, platform width, "
                            + "working breadth")
            .otherwise(
                    SPEED,
                    "spray speed, average speed, average forward speed, typical speed, usual speed, "
                            + "normal speed, target"
                            + " speed, work speed, op speed, driving speed")
            .otherwiseMeasured(
                    OUTPUT,
                    "material capacity, harvesting capacity, harvest capacity, forager capacity, "
                            + "forager output, chopping capacity, production rate, feed rate")
            // What was used in a season is told in hectares and litres under these.
            .otherwise(HOURS_PER_YEAR, "annual use")
            .otherwise(FUEL, "fuel used")
            .otherwiseMeasured(HOURS_PER_YEAR, "annual usage, yearly use, use per year")
            .otherwiseMeasured(
                    FUEL,
                    "fuel required, fuel needed, diesel fuel, diesel used, diesel consumption, fuel burnt, fuel burned")
            .otherwiseMeasured(TEST_AREA, "area covered, area treated, plot area, area of plot")
            .otherwiseMeasured(
                    TIMED_DISTANCE,
                    "distance travelled, distance traveled, distance covered, distance driven, distance walked, measured distance, test run, "
                            + "calibration distance")
            .otherwiseMeasured(TEST_WEIGHT, "amount collected, quantity collected")
            .otherwise(SPEED, "tractor speed")
            // Beside the proper column they are of something else: a tractor's, the insurer's, of the books of a year.
            .otherwise(
                    POWER,
                    "PTO horsepower, maximum PTO horsepower, max PTO horsepower, rated PTO horsepower, "
                            + "max PTO hp, maximum PTO"
                            + " hp, rated PTO hp, rated PTO power, max PTO power, maximum PTO power, "
                            + "rated PTO kW, max PTO kW,"
                            + " maximum PTO kW, engine horsepower, rated engine power, "
                            + "rated engine horsepower, max engine"
                            + " power, maximum engine power, tractor power, tractor hp, tractor horsepower, tractor kW")
            .otherwise(WORKING_WIDTH, "rated width, spraying width, width sprayed, spray swath, spray swath width")
            .otherwise(ROAD_SPEED_EMPTY, "return speed")
            .otherwise(LIST_PRICE, "replacement value, new replacement value")
            .otherwise(PURCHASE_PRICE, "cost price, initial value")
            .otherwise(TRADE_IN_VALUE, "disposal value, scrap value, final value")
            .otherwise(HOURS_NOW, "hour meter reading, hours on machine, hours on the machine")
            .otherwise(LIFE, "replacement interval, replacement period")
            .otherwise(
                    MASS,
                    "tractor weight, weight of tractor, tractor mass, packing tractor weight, "
                            + "weight of packing tractor, rolling tractor weight")
            .otherwiseMeasured(PUMP_FLOW, "pump, spray pump")
            // Without a unit it may be money.
            .otherwiseMeasured(INTEREST, "interest, annual interest, yearly interest, interest on capital")
            .otherwiseMeasured(FIELD_EFFICIENCY, "time lost, lost time, time loss, loss of time")
            .otherwiseMeasured(ROUND_TIME, "round trip")
            .otherwiseMeasured(TIMED_DISTANCE, "distance")
            .otherwiseBeside(TIMED_DISTANCE, "distance travelled, distance traveled", TIMED_SECONDS)
            // Of a season as likely, but not beside the ground of a test.
            .otherwiseMeasuredBeside(
                    TEST_VOLUME,
                    "amount used, quantity used, amount applied, amount sprayed",
                    TEST_AREA,
                    TIMED_DISTANCE)
            .otherwiseMeasuredBeside(
                    TEST_WEIGHT, "amount spread, amount applied, amount used, quantity used", TEST_AREA, TIMED_DISTANCE)
            .otherwiseBeside(
                    TEST_VOLUME,
                    "water to refill, volume to refill, refill volume, volume used, volume sprayed, "
                            + "volume applied, volume collected, water applied, water sprayed, litres used, liters"
                            + " used, litres sprayed, liters sprayed, gallons used, gallons sprayed, "
                            + "liquid used, spray used",
                    TEST_AREA,
                    TIMED_DISTANCE)
            .otherwiseBeside(
                    TEST_WEIGHT,
                    "weight spread, weight applied, weight of material, weight of seed, weight of fertiliser, weight of"
                            + " fertilizer, material spread, product spread, fertiliser spread, "
                            + "fertilizer spread, pounds spread, pounds"
                            + " applied",
                    TEST_AREA,
                    TIMED_DISTANCE)
            .otherwiseBeside(TIMED_SECONDS, "drive time, average time, mean time, time required", TIMED_DISTANCE)
            .unclear(List.of("time", "seconds", "secs"), TIMED_SECONDS)
            .unclear(List.of("turnaround", "turnaround time", "turnround"), TURN_TIME, ROUND_TIME, FILL_TIME)
            .toldMeasured("time", TIMED_SECONDS, TIMED_DISTANCE)
            .told("seconds", TIMED_SECONDS, TIMED_DISTANCE)
            .told("secs", TIMED_SECONDS, TIMED_DISTANCE)
            .otherwise(
                    FUEL,
                    "litres per hour, litres per hr, litres an hour, gallons per hour, gal per hour, "
                            + "gal per hr, gal/hr, gal/h, gph, lph,"
                            + " l/hr, l/h, litres/hour, gallons/hour")
            .otherwiseMeasured(CHARGE, "hire, hire cost, contractor cost, contractor, contract")
            .otherwise(TURN_TIME, "turning")
            .otherwiseMeasured(PURCHASE_PRICE, "purchase, bought, paid")
            .unclear(List.of("years", "yrs"), LIFE, AGE)
            .otherwiseMeasured(ROAD_SPEED_LADEN, "laden, loaded, full")
            .otherwiseMeasured(ROAD_SPEED_EMPTY, "empty, return, returning")
            .otherwiseMeasured(LOWEST_PRESSURE, "min, lowest, low")
            .otherwiseMeasured(HIGHEST_PRESSURE, "max, highest, high")
            .otherwiseMeasured(LOWEST_SPEED, "min, lowest")
            .otherwiseMeasured(HIGHEST_SPEED, "max, highest")
            .otherwiseMeasured(
                    FILL_TIME,
                    "filling, loading, load time, loading time, mix and fill, mix fill, load and fill, "
                            + "load fill, mixing and filling, load"
                            + " and fill time, load fill time, mix and fill time, mix fill time")
            .otherwiseMeasured(
                    PAYLOAD,
                    "hopper, hopper capacity, hopper size, hopper load, bin, bin capacity, box capacity, "
                            + "box cap, truck capacity, trailer capacity, wagon capacity, body load, cap")
            .otherwise(MASS, "ballasted weight, ballasted mass, working weight")
            .otherwise(LIST_PRICE, "cost new, new cost, new value, value new, value when new")
            .otherwiseMeasured(
                    BODY_VOLUME,
                    "loading volume, load volume, loading space, hopper, hopper capacity, hopper size,"
                            + " hopper volume, bin, bin capacity")
            .otherwiseMeasured(BODY_VOLUME, "bucket, body")
            .otherwiseMeasured(TANK, "content, contents")
            .otherwise(TANK, "solution tank, solution tank size, solution tank capacity")
            .otherwise(
                    HOURS_PER_YEAR,
                    "use h/year, use h/yr, use hours/year, use hrs/yr, use hours per year, use hrs per year,"
                            + " use hours/yr, usage h/yr, usage hours/year")
            .otherwiseMeasured(FUEL, "consumption")
            .otherwiseMeasured(LIFE, "ownership, kept, keep")
            .otherwise(NUMBER, "pieces, pcs")
            .otherwise(HOURS_NOW, "engine hours, meter hours")
            .otherwise(CREW, "crew size, no of men, no of operators, no of people, gang size")
            .otherwiseMeasured(HOURS_PER_DAY, "work day, working hours, day length, daily hours")
            .otherwise(
                    OWN_OR_HIRED,
                    "own custom, own or custom, owned or custom, custom or own, own contract, "
                            + "own or contract, own contractor, owned contracted")
            .otherwise(
                    TRADE_IN_VALUE,
                    "resale, residual, trade in price, second hand value, expected trade in, "
                            + "trade in expected, expected trade in"
                            + " value")
            .otherwise(
                    MACHINE,
                    "rig, spray rig, sprayer rig, boomspray, boom spray, boomsprayer, boom sprayer, "
                            + "applicator, gear, kit, m/c, tractor, tractor name, trailer, trailer name, wagon, "
                            + "forager, mower, truck, truck name, excavator, digger, combine, knapsack, baler, "
                            + "planter, drill, spreader,"
                            + " fertiliser spreader, fertilizer spreader, muck spreader, manure spreader, "
                            + "tanker, slurry tanker, plough,"
                            + " plow, cultivator, harvester, forage harvester, chopper, loader, header")
            .ifNamed(MACHINE, "machine description, description, vehicle, asset, item")
            .unclear(List.of("work rate"), OUTPUT, FIELD_EFFICIENCY)
            .otherwiseMeasured(
                    RATE_OF_WORK, "work rate, capacity, output, area rate, performance rate, machine capacity, EFC")
            .otherwise(
                    RATE_OF_WORK,
                    "ha/day, ha per day, hectares/day, hectares per day, ac/day, acres/day, acres per day")
            .unclear(List.of("nozzle", "tip"), NOZZLES, NOZZLE_SIZE)
            .told("nozzle", NOZZLES, NOZZLE_SIZE)
            .told("tip", NOZZLES, NOZZLE_SIZE)
            .otherwise(WORKING_PRESSURE, "pressure, psi, bar")
            .otherwise(NOZZLE_SIZE, "nozzle type")
            .otherwiseMeasured(NOZZLE_FLOW, "nozzle catch, average catch, mean catch")
            .otherwiseMeasured(TOTAL_FLOW, "flow, flow rate, discharge, discharge rate, output")
            .unclear(
                    List.of(
                            "road speed",
                            "transport speed",
                            "travelling speed",
                            "road travel speed",
                            "haul speed",
                            "hauling speed"),
                    ROAD_SPEED_LADEN,
                    ROAD_SPEED_EMPTY)
            .forBoth("haul speed")
            .forBoth("hauling speed")
            .forBoth("road speed")
            .forBoth("transport speed")
            .forBoth("travelling speed")
            .forBoth("road travel speed")
            .unclear(List.of("capacity"), PAYLOAD, BODY_VOLUME, TANK, OUTPUT)
            .unclear(List.of("hours"), HOURS_PER_DAY, HOURS_NOW, HOURS_PER_YEAR)
            .unclear(
                    List.of(
                            "cost ha",
                            "cost per ha",
                            "cost hectare",
                            "cost per hectare",
                            "cost ac",
                            "cost per ac",
                            "cost acre",
                            "cost per acre",
                            "cost hour",
                            "cost per hour",
                            "cost h",
                            "cost per h",
                            "cost bale",
                            "cost per bale",
                            "price per bale",
                            "cost tonne",
                            "cost per tonne",
                            "price per tonne",
                            "price per ha",
                            "price per acre",
                            "price per hour"),
                    CHARGE)
            .unclear(List.of("price", "cost", "value"), LIST_PRICE, PURCHASE_PRICE, TRADE_IN_VALUE);
}
