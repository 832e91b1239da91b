package org.rickyard.lists;

import static org.rickyard.lists.Machines.AGE;
import static org.rickyard.lists.Machines.BODY_VOLUME;
import static org.rickyard.lists.Machines.CHARGE;
import static org.rickyard.lists.Machines.CHARGE_UNIT;
import static org.rickyard.lists.Machines.CREW;
import static org.rickyard.lists.Machines.FIELD_EFFICIENCY;
import static org.rickyard.lists.Machines.FILL_TIME;
import static org.rickyard.lists.Machines.FUEL;
import static org.rickyard.lists.Machines.HIGHEST_PRESSURE;
import static org.rickyard.lists.Machines.HIGHEST_SPEED;
import static org.rickyard.lists.Machines.HOLDING;
import static org.rickyard.lists.Machines.HOURS_NOW;
import static org.rickyard.lists.Machines.HOURS_PER_DAY;
import static org.rickyard.lists.Machines.HOURS_PER_YEAR;
import static org.rickyard.lists.Machines.INTEREST;
import static org.rickyard.lists.Machines.LIFE;
import static org.rickyard.lists.Machines.LIST_PRICE;
import static org.rickyard.lists.Machines.LOWEST_PRESSURE;
import static org.rickyard.lists.Machines.LOWEST_SPEED;
import static org.rickyard.lists.Machines.MACHINE;
import static org.rickyard.lists.Machines.MASS;
import static org.rickyard.lists.Machines.NOZZLES;
import static org.rickyard.lists.Machines.NOZZLE_CATCH;
import static org.rickyard.lists.Machines.NOZZLE_FLOW;
import static org.rickyard.lists.Machines.NOZZLE_SIZE;
import static org.rickyard.lists.Machines.NUMBER;
import static org.rickyard.lists.Machines.OUTPUT;
import static org.rickyard.lists.Machines.OUTPUT_BASIS;
import static org.rickyard.lists.Machines.OWN_OR_HIRED;
import static org.rickyard.lists.Machines.PAYLOAD;
import static org.rickyard.lists.Machines.POWER;
import static org.rickyard.lists.Machines.POWER_BASIS;
import static org.rickyard.lists.Machines.PUMP_FLOW;
import static org.rickyard.lists.Machines.PURCHASE_PRICE;
import static org.rickyard.lists.Machines.RATE_OF_WORK;
import static org.rickyard.lists.Machines.ROAD_SPEED_EMPTY;
import static org.rickyard.lists.Machines.ROAD_SPEED_LADEN;
import static org.rickyard.lists.Machines.ROUND_TIME;
import static org.rickyard.lists.Machines.SPEED;
import static org.rickyard.lists.Machines.TANK;
import static org.rickyard.lists.Machines.TEST_AREA;
import static org.rickyard.lists.Machines.TEST_VOLUME;
import static org.rickyard.lists.Machines.TEST_WEIGHT;
import static org.rickyard.lists.Machines.TIMED_DISTANCE;
import static org.rickyard.lists.Machines.TIMED_SECONDS;
import static org.rickyard.lists.Machines.TOTAL_FLOW;
import static org.rickyard.lists.Machines.TRADE_IN_VALUE;
import static org.rickyard.lists.Machines.TURN_TIME;
import static org.rickyard.lists.Machines.WHEEL_CIRCUMFERENCE;
import static org.rickyard.lists.Machines.WHEEL_TURNS;
import static org.rickyard.lists.Machines.WORKING_PRESSURE;
import static org.rickyard.lists.Machines.WORKING_WIDTH;

import java.util.List;

/**
 * What headers of a machine list mean beside others, and what they could mean.
 *
 * <p>The order counts: where a table has two headers for one column, the one told first is taken, and where one header
 * could be either of two columns, the column told first. What is certain whatever stands beside it is a synonym, told
 * with its column.
 */
final class MachineHeaders {
    private MachineHeaders() {}

    /** The list, knowing those headers; asked once, when its columns are there. */
    static ListSpec told(ListSpec machines) {
        return machines.otherwise(HOLDING, Shared.WHOSE)
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
                                + "spreader width, plough width, plow width, cultivator width, tramline width, sprayer width, "
                                + "implement width, spreading width, spread width, header width, head width, cutterbar width, "
                                + "nominal width, front width, comb width, platform width, working breadth")
                .otherwise(
                        SPEED,
                        "spray speed, average speed, average forward speed, typical speed, usual speed, "
                                + "normal speed, target speed, work speed, op speed, driving speed")
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
                // Beside the proper column they are another's: a tractor's, the insurer's, those of a year's books.
                .otherwise(
                        POWER,
                        "PTO horsepower, maximum PTO horsepower, max PTO horsepower, rated PTO horsepower, "
                                + "max PTO hp, maximum PTO hp, rated PTO hp, rated PTO power, max PTO power, "
                                + "maximum PTO power, rated PTO kW, max PTO kW, maximum PTO kW, engine horsepower, "
                                + "rated engine power, rated engine horsepower, max engine power, maximum engine power, "
                                + "tractor power, tractor hp, tractor horsepower, tractor kW")
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
                .otherwiseMeasured(TIMED_DISTANCE, "plot length, length of plot, patch length, length of patch")
                .otherwiseMeasured(WORKING_WIDTH, "plot width, width of plot, patch width, width of patch")
                .otherwiseMeasured(WHEEL_CIRCUMFERENCE, "circumference")
                .otherwiseBeside(TIMED_DISTANCE, "distance travelled, distance traveled", TIMED_SECONDS)
                // Of a season as likely, but not beside the ground of a test.
                .otherwiseMeasuredBeside(
                        TEST_VOLUME,
                        "amount used, quantity used, amount applied, amount sprayed",
                        TEST_AREA,
                        TIMED_DISTANCE)
                .otherwiseMeasuredBeside(
                        TEST_WEIGHT,
                        "amount spread, amount applied, amount used, quantity used",
                        TEST_AREA,
                        TIMED_DISTANCE)
                .otherwiseBeside(
                        TEST_VOLUME,
                        "water to refill, gallons to refill, litres to refill, liters to refill, amount to refill, "
                                + "volume to refill, refill volume, volume used, volume sprayed, "
                                + "spray collected, water collected, "
                                + "volume applied, volume collected, water applied, water sprayed, litres used, liters"
                                + " used, litres sprayed, liters sprayed, gallons used, gallons sprayed, "
                                + "liquid used, spray used",
                        TEST_AREA,
                        TIMED_DISTANCE)
                .otherwiseBeside(
                        TEST_WEIGHT,
                        "weight spread, weight applied, weight of material, weight of seed, weight of fertiliser, weight of"
                                + " fertilizer, material applied, product applied, fertiliser applied, "
                                + "fertilizer applied, material spread, product spread, fertiliser spread, "
                                + "fertilizer spread, pounds spread, pounds"
                                + " applied",
                        TEST_AREA,
                        TIMED_DISTANCE)
                // Of one nozzle, whose share of the boom is its spacing.
                .otherwiseBeside(
                        NOZZLE_CATCH,
                        "ounces caught, ounces collected, average ounces caught, average ounces collected, "
                                + "mean ounces caught, ml caught, ml collected",
                        TIMED_DISTANCE)
                .otherwiseMeasuredBeside(
                        NOZZLE_CATCH,
                        "catch, caught, average catch, mean catch, nozzle catch, average caught, jug catch",
                        TIMED_DISTANCE)
                // What falls while a wheel is turned is caught, whatever it is of.
                .otherwiseMeasuredBeside(
                        TEST_WEIGHT,
                        "seed caught, fertiliser caught, fertilizer caught, amount caught, caught, catch, "
                                + "quantity caught, weight of catch, material caught",
                        WHEEL_TURNS,
                        WHEEL_CIRCUMFERENCE)
                .otherwiseBeside(TIMED_SECONDS, "drive time, average time, mean time, time required", TIMED_DISTANCE)
                .unclear(List.of("time", "seconds", "secs"), TIMED_SECONDS)
                .unclear(List.of("turnaround", "turnaround time", "turnround"), TURN_TIME, ROUND_TIME, FILL_TIME)
                .toldMeasured("time", TIMED_SECONDS, TIMED_DISTANCE)
                .told("seconds", TIMED_SECONDS, TIMED_DISTANCE)
                .told("secs", TIMED_SECONDS, TIMED_DISTANCE)
                .otherwise(
                        FUEL,
                        "litres per hour, litres per hr, litres an hour, gallons per hour, gal per hour, gal per hr, "
                                + "gal/hr, gal/h, gph, lph, l/hr, l/h, litres/hour, gallons/hour")
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
                                + "load fill, mixing and filling, load and fill time, load fill time, mix and fill time, "
                                + "mix fill time")
                .otherwiseMeasured(
                        PAYLOAD,
                        "hopper, hopper capacity, hopper size, hopper load, bin, bin capacity, box capacity, "
                                + "box cap, truck capacity, trailer capacity, wagon capacity, body load, cap")
                .otherwise(MASS, "ballasted weight, ballasted mass, working weight")
                .otherwise(LIST_PRICE, "cost new, new cost, new value, value new, value when new")
                .otherwiseMeasured(
                        BODY_VOLUME,
                        "loading volume, load volume, loading space, hopper, hopper capacity, hopper size, "
                                + "hopper volume, bin, bin capacity")
                .otherwiseMeasured(BODY_VOLUME, "bucket, body")
                .otherwiseMeasured(TANK, "content, contents")
                .otherwise(TANK, "solution tank, solution tank size, solution tank capacity")
                .otherwise(
                        HOURS_PER_YEAR,
                        "use h/year, use h/yr, use hours/year, use hrs/yr, use hours per year, use hrs per year, "
                                + "use hours/yr, usage h/yr, usage hours/year")
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
                        "resale, residual, trade in price, second hand value, expected trade in, trade in expected, "
                                + "expected trade in value")
                .otherwise(
                        MACHINE,
                        "rig, spray rig, sprayer rig, boomspray, boom spray, boomsprayer, boom sprayer, applicator, "
                                + "gear, kit, m/c, tractor, tractor name, trailer, trailer name, wagon, forager, mower, truck, "
                                + "truck name, excavator, digger, combine, knapsack, baler, planter, drill, spreader, "
                                + "fertiliser spreader, fertilizer spreader, muck spreader, manure spreader, tanker, "
                                + "slurry tanker, plough, plow, cultivator, harvester, forage harvester, chopper, loader, "
                                + "header")
                .otherwise(WORKING_WIDTH, "cutter bar, cutterbar, cutter bar width, cutterbar width")
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
}
