package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.number;

import org.rickyard.trade.Quantities;

/**
 * The columns of the machine list for what was measured of a machine in the field: a run by the watch, a test with water
 * or what a spreader puts out, turns of a wheel, the pull.
 */
final class MachineMeasurements {
    private MachineMeasurements() {}

    /** A timed run. */
    static final ColumnSpec TIMED_DISTANCE = number("Timed distance", Quantities.TIMED_DISTANCE)
            .also("test strip length, length of test strip, length of test course, length of test run, "
                    + "test distance, timed run, course length, length of course, course distance, course, "
                    + "distance timed, test course")
            .help("Length of a run timed in the field, tank half full.");
    /** Its seconds. */
    static final ColumnSpec TIMED_SECONDS = number("Timed seconds", Quantities.TIMED_SECONDS)
            .also("time to cover distance, time to cover course, time to walk, time to drive, "
                    + "time to walk distance, time to drive distance, time to walk course, "
                    + "time to drive course, "
                    + "test seconds, seconds timed, course time, travel time, time over course, "
                    + "time to travel, time taken, "
                    + "time for course, seconds for course, seconds taken")
            .help("Seconds that run took.");
    /** A test with water. */
    static final ColumnSpec TEST_AREA = number("Test area", Quantities.TEST_AREA)
            .also("tray area, area of tray, area of catch tray, catch tray area, catch area, collection area, "
                    + "area of test plot, test plot area, calibration area, calibration plot, "
                    + "test strip area, area of test strip, area of calibration plot, "
                    + "area tested, area sprayed, area sprayed in test, test plot")
            .help("Ground sprayed with water in a test.");
    /** The water used in it. */
    static final ColumnSpec TEST_VOLUME = number("Test volume", Quantities.TEST_VOLUME)
            .also("amount of water used, volume of water used, "
                    + "water used in test, water used, volume used in test, volume sprayed in test")
            .help("Water used on the test area.");
    /** What a spreader or drill put out in it. */
    static final ColumnSpec TEST_WEIGHT = number("Test weight", Quantities.TEST_WEIGHT)
            .also("weight of material collected, weight of fertiliser collected, "
                    + "weight of fertilizer collected, weight of seed collected, fertiliser collected, "
                    + "fertilizer collected, seed collected, material collected, product collected, "
                    + "pounds collected, pounds caught, grams collected, grams caught, "
                    + "weight caught, weight collected, weight used in test, "
                    + "weight spread in test, test mass, catch weight")
            .help("Spreaders and drills: put out or caught on the test area.");
    /** Wheel turns at work. */
    static final ColumnSpec TURNS_LOADED = number("Wheel turns loaded", Quantities.TURNS_LOADED)
            .also("wheel revolutions with load, wheel revolutions under load, wheel revs with load, "
                    + "wheel revs under load, wheel revs loaded, loaded wheel revs, wheel revolutions loaded, "
                    + "loaded wheel revolutions, wheel turns at work, wheel turns with load, "
                    + "wheel turns under load, turns loaded")
            .help("Tractors: turns of a driving wheel over a distance, at work; usually 10.");
    /** Wheel turns without the load. */
    static final ColumnSpec TURNS_UNLOADED = number("Wheel turns unloaded", Quantities.TURNS_UNLOADED)
            .also("wheel revolutions without load, wheel revolutions with no load, wheel revs without load, "
                    + "wheel revs no load, wheel revs with no load, wheel revs unloaded, unloaded wheel revs, "
                    + "wheel revolutions unloaded, unloaded wheel revolutions, wheel turns without load, "
                    + "turns unloaded")
            .help("Over the same distance without the load, to the quarter turn.");
    /** Pull at work. */
    static final ColumnSpec DRAUGHT = number("Draught", Quantities.DRAUGHT)
            .or(Quantities.DRAUGHT_FOR_WIDTH)
            .also("draft, draught force, draft force, draught requirement, draft requirement, draught required, "
                    + "draft required, implement draught, implement draft, draught of implement, draft of implement, "
                    + "unit draught, unit draft, draught per metre, draft per metre, draft per meter, total draught, "
                    + "total draft")
            .help(
                    "Force that pulls the machine at work (kN), or for each metre of its width (kN/m); where it is known.");
    /** How far a load goes. */
    static final ColumnSpec LOAD_DISTANCE = number("Load distance", Quantities.LOAD_DISTANCE)
            .also("distance spread, spread distance, spreading distance, length spread, spread length, "
                    + "distance spread per load, distance spread by a load, distance one load spreads, "
                    + "distance to spread a load, distance to spread one load, distance to empty load, "
                    + "distance to empty spreader, distance to empty tanker, run per load, length of run per load, "
                    + "length spread per load, run of a load")
            .help("Muck spreaders and tankers: how far one load is spread, at the working width.");
}
