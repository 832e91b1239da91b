package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.date;
import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.special;

import org.rickyard.trade.Quantities;

/**
 * The columns of the machine list that say how a sprayer is built and set: its tanks, its nozzles, what they give at
 * which pressure, and what filling and washing it take.
 */
final class SprayerColumns {
    private SprayerColumns() {}

    /** Tank. */
    static final ColumnSpec TANK = number("Tank", Quantities.TANK_VOLUME)
            .also("sprayer tank size, sprayer tank capacity, sprayer tank volume, spray tank volume, "
                    + "spray tank size, knapsack capacity, knapsack size, knapsack volume, "
                    + "main tank capacity, nominal tank volume, spray tank capacity, "
                    + "sprayer capacity, nominal capacity, "
                    + "tank size, tank volume, tank capacity, nominal tank, sprayer tank, main tank, "
                    + "tanker volume, spray tank")
            .help("Nominal volume.");
    /** Usable tank. */
    static final ColumnSpec USABLE_TANK = number("Usable tank", Quantities.USABLE_TANK)
            .also("usable tank size, usable tank capacity, working tank volume, effective tank volume, "
                    + "usable, usable volume, usable tank volume, working tank, effective tank, usable capacity")
            .help("What is filled and can be sprayed out.");
    /** Rinse tank. */
    static final ColumnSpec RINSE_TANK = number("Rinse tank", Quantities.RINSE_TANK)
            .also("rinse water, clean water, rinse tank size, rinse tank capacity, clean water tank size, "
                    + "rinse water tank, clean water tank, rinse volume, rinsing tank, flush tank")
            .help("Clean water carried for rinsing.");
    /** Residual volume. */
    static final ColumnSpec RESIDUAL = number("Residual", Quantities.RESIDUAL)
            .also("residual volume, dead volume, sump, undilutable residue, tank residue")
            .help("Left in tank, pump and lines when spraying ends.");
    /** Mix in the lines. */
    static final ColumnSpec PRIMING = number("Priming", Quantities.PRIMING)
            .also("priming volume, line volume")
            .help("Mix that fills pump, lines and boom before spraying starts.");
    /** Nozzles. */
    static final ColumnSpec NOZZLES = number("Number of nozzles", Quantities.NOZZLES)
            .also("nozzles open, open nozzles, nozzles in use, no of nozzles, no nozzles, "
                    + "nozzle count, nozzle number, jets, number of jets, number of tips")
            .help("All nozzles that spray.");
    /** Nozzle spacing. */
    static final ColumnSpec NOZZLE_SPACING = number("Nozzle spacing", Quantities.NOZZLE_SPACING)
            .also("spacing between nozzles, nozzle spacing on boom, nozzle spacing along boom, "
                    + "nozzle space, spacing between tips, distance between tips, "
                    + "distance between nozzles, nozzle distance, "
                    + "spacing, nozzle pitch, jet spacing, tip spacing, spacing of nozzles")
            .help("Along the boom.");
    /** Nozzle size. */
    static final ColumnSpec NOZZLE_SIZE = special("Nozzle size", ColumnSpec.Type.NOZZLE, Quantities.NOZZLE_SIZE)
            .also("jet size, tip size, ISO size, nozzle code")
            .help("04, ISO 04, 11004, F110/1.6/3.0; not the colour alone.");
    /** Lowest pressure. */
    static final ColumnSpec LOWEST_PRESSURE = number("Lowest pressure", Quantities.LOWEST_PRESSURE)
            .also("min nozzle pressure, min working pressure, min operating pressure, "
                    + "minimum pressure, min pressure, pressure min, lowest nozzle pressure")
            .help("The nozzle's lowest.");
    /** Highest pressure. */
    static final ColumnSpec HIGHEST_PRESSURE = number("Highest pressure", Quantities.HIGHEST_PRESSURE)
            .also("max nozzle pressure, max working pressure, max operating pressure, "
                    + "maximum pressure, max pressure, pressure max, highest nozzle pressure")
            .help("The nozzle's highest.");
    /** Pressure at work. */
    static final ColumnSpec WORKING_PRESSURE = number("Working pressure", Quantities.PRESSURE)
            .also("boom pressure, gauge pressure, "
                    + "operating pressure, spraying pressure, spray pressure, pressure used, pressure at nozzle, "
                    + "nozzle pressure")
            .help("At the nozzle, at work.");
    /** Flow of one nozzle. */
    static final ColumnSpec NOZZLE_FLOW = number("Nozzle flow", Quantities.NOZZLE_FLOW)
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
    static final ColumnSpec TOTAL_FLOW = number("Total flow", Quantities.TOTAL_FLOW)
            .also("total nozzle output, total nozzle flow, total nozzle discharge, "
                    + "total output of nozzles, output of all nozzles, flow of all nozzles, "
                    + "discharge of all nozzles, total boom output, total boom flow, total boom discharge, "
                    + "boom discharge rate, sprayer discharge rate, "
                    + "boom output, boom flow, sprayer output, output of boom, total output, "
                    + "boom discharge, total discharge, "
                    + "sprayer flow, total flow rate, lance output, sprayer discharge")
            .help("All nozzles together in a minute.");
    /** What the pump gives. */
    static final ColumnSpec PUMP_FLOW = number("Pump flow", Quantities.PUMP_FLOW)
            .also("pump output, pump capacity, pump delivery, pump flow rate, pump rate, "
                    + "pump discharge, pump size, flow of pump, "
                    + "output of pump, capacity of pump, spray pump flow, spray pump capacity, "
                    + "spray pump output")
            .help("Sprayers: what the pump gives at working pressure.");
    /** Droplet class. */
    static final ColumnSpec SPRAY_QUALITY = Shared.SPRAY_QUALITY.help("The nozzle's, at the pressure used.");
    /** Sprayer test. */
    static final ColumnSpec LAST_TESTED = date("Last tested", Quantities.LAST_TESTED)
            .also("last test, last inspection, test date, last inspected, inspection date, MOT, "
                    + "date tested, sprayer test date, sprayer tested, sprayer test, NSTS test, NSTS")
            .help("Day of the last sprayer test.");
    /** Fill time. */
    static final ColumnSpec FILL_TIME = number("Fill time", Quantities.FILL_TIME)
            .also("fill and mix time, filling and mixing time, fill mix time, filling mixing time, "
                    + "time to fill tank, time per fill, refilling time, time to fill and mix, "
                    + "filling time, time to fill, refill time, refill, fill")
            .help("One filling with mixing.");
    /** Washing out. */
    static final ColumnSpec CLEANING_TIME = number("Cleaning time", Quantities.CLEANING_TIME)
            .also("wash down time, washing time, wash out time, washing out time, washing down time")
            .help("Washing out and cleaning down, once for a block.");
}
