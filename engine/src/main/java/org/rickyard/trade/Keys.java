package org.rickyard.trade;

import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Units;

/**
 * The whole numbers by which result rows are joined in the grid. Names are never matched there: a name such as {@code
 * a?c*} or {@code >5} would be read as a pattern.
 */
public final class Keys {
    private Keys() {}

    /** A machine's number in list order. */
    public static final Symbol MACHINE_KEY = key("machine key");
    /** A holding's number in order of appearance. */
    public static final Symbol HOLDING_KEY = key("holding key");
    /** A spray block's number; 0 on work that is no spraying. */
    public static final Symbol BLOCK_KEY = key("block key");
    /** A clamp's number in list order; 0 on a field that names none. */
    public static final Symbol CLAMP_KEY = key("clamp key");
    /** Where a spray block stands in its own table. */
    public static final Symbol BLOCK_POSITION = key("row of the block");

    /** The number of a line of the work rates. */
    public static final Symbol LINE_KEY = key("line");
    /** The number of a job row and machine whose hours are added up for the season. */
    public static final Symbol TASK_KEY = key("task key");
    /** The number of a gang on one field; 0 on work that no gang does. */
    public static final Symbol GANG_KEY = key("gang key");
    /** Ten times the number of a gang, plus the number of the stage a machine does in it. */
    public static final Symbol STAGE_KEY = key("stage key");

    /** The number of one kind of machine at one stage of a gang. */
    public static final Symbol MEMBER_KEY = key("member key");

    /** A tractor's number in the machine list; 0 where none pulls. */
    public static final Symbol TRACTOR_KEY = key("tractor key");
    /** The number of jobs that are planned together: by machines they share, or by waiting for one another. */
    public static final Symbol PLAN_KEY = key("plan key");
    /** A job's number in order of appearance, all its rows together. */
    public static final Symbol JOB_KEY = key("job key");
    /** The job's number on the first row of each of its fields and 0 on the others, so that no area counts twice. */
    public static final Symbol AREA_KEY = key("area key");
    /** The number of one machine's work on one field. */
    public static final Symbol WORK_KEY = key("work key");
    /** Where a clamp stands in the table of clamps. */
    public static final Symbol CLAMP_POSITION = key("row of the clamp");

    /** An effluent tank's number in order of appearance; 0 where none is named. */
    public static final Symbol TANK_KEY = key("tank key");
    /** The number of a holding that feeds stock, in order of appearance. */
    public static final Symbol FEED_HOLDING_KEY = key("feeding holding key");
    /** A sprayed field's number in the order it is sprayed: one per job, field and sprayer. */
    public static final Symbol SPRAY_KEY = key("spray key");
    /** Where a sprayed field stands in its own table. */
    public static final Symbol SPRAY_POSITION = key("row of the sprayed field");
    /** A tankful's number over all blocks. */
    public static final Symbol LOAD_KEY = key("load key");
    /** The number of a product of a block. */
    public static final Symbol TANK_MIX_KEY = key("tank mix key");
    /** Where a product of a block stands in its own table. */
    public static final Symbol TANK_MIX_POSITION = key("row of the tank mix");
    /** A product's number in list order; products that are on no list come after. */
    public static final Symbol PRODUCT_KEY = key("product key");
    /** The number of a product on a field. */
    public static final Symbol SEASON_KEY = key("season key");
    /** The number of one application of a product to a field. */
    public static final Symbol RECORD_KEY = key("record key");
    /** Where an application stands in its own table. */
    public static final Symbol RECORD_POSITION = key("row of the application");
    /** The application of the same product to the same field before this one; its own number if it is the first. */
    public static final Symbol PREVIOUS_KEY = key("record before");
    /** Where the application before stands. */
    public static final Symbol PREVIOUS_POSITION = key("row of the record before");
    /** The number of a sprayer at one water volume, speed and spacing. */
    public static final Symbol NOZZLE_KEY = key("nozzle key");
    /** Where that stands in its own table. */
    public static final Symbol NOZZLE_POSITION = key("row of the nozzles");
    /** The number of a nozzle test: all nozzles of one sprayer. */
    public static final Symbol TEST_KEY = key("test key");
    /** Where a nozzle test's first row stands. */
    public static final Symbol TEST_POSITION = key("row of the test");

    /** A machine's number in list order, for its speed by the watch; 0 where a row has no machine. */
    public static final Symbol TIMED_KEY = key("timed machine");
    /** A machine's number in list order, for its width of rows or nozzles; 0 where a row has no machine. */
    public static final Symbol ROWS_KEY = key("machine of rows");

    private static Symbol key(String name) {
        return Symbol.number(name, Units.ONE).decimals(0);
    }
}
