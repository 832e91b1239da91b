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
    /** Where a line stands in the work rates. */
    public static final Symbol LINE_POSITION = key("row of the line");
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
    /** The number of one machine's work on one field. */
    public static final Symbol WORK_KEY = key("work key");
    /** Where a clamp stands in the table of clamps. */
    public static final Symbol CLAMP_POSITION = key("row of the clamp");

    /** An effluent tank's number in order of appearance; 0 where none is named. */
    public static final Symbol TANK_KEY = key("tank key");
    /** The number of a holding that feeds stock, in order of appearance. */
    public static final Symbol FEED_HOLDING_KEY = key("feeding holding key");

    private static Symbol key(String name) {
        return Symbol.number(name, Units.ONE).decimals(0);
    }
}
