package org.rickyard.trade.workrate;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** The stages of a gang, in the order of the crop's way. */
public enum GangStage {
    /** Cutting. */
    MOWING("mowing", false),
    /** Spreading out. */
    TEDDING("tedding", false),
    /** Putting into swaths. */
    RAKING("raking", false),
    /** Picking up and chopping. */
    CHOPPING("chopping", true),
    /** Carrying to the clamp. */
    CARTING("carting", true),
    /** Pushing up on the clamp. */
    PUSHING_UP("pushing up", true),
    /** Rolling the clamp. */
    ROLLING("rolling", true);

    private final String words;
    private final boolean coupled;
    private final Symbol rate;
    private final Symbol slack;
    private final Symbol machines;
    private final Symbol day;

    GangStage(String words, boolean coupled) {
        this.words = words;
        this.coupled = coupled;
        this.rate = Symbol.number(words + ", area per hour", Units.HA_PER_H)
                .possible(Range.POSITIVE)
                .decimals(2);
        this.slack = Symbol.number(words + " slack", Units.ONE)
                .possible(Range.POSITIVE)
                .decimals(2);
        this.machines = Symbol.number(words + " machines", Units.ONE)
                .possible(Range.NOT_NEGATIVE)
                .decimals(0);
        this.day = Symbol.number(words + ", area per day", Units.HA)
                .possible(Range.POSITIVE)
                .decimals(1);
    }

    /** In words. */
    public String words() {
        return words;
    }

    /** Whether it must keep step with the forager. */
    public boolean coupled() {
        return coupled;
    }

    /** Its number in a stage key. */
    public int code() {
        return ordinal() + 1;
    }

    /** The symbol of its rate in the table of gangs. */
    public Symbol rate() {
        return rate;
    }

    /** The symbol of its rate over the gang's. */
    public Symbol slack() {
        return slack;
    }

    /** The symbol of what it gets through in a day of its own. */
    public Symbol day() {
        return day;
    }

    /** The symbol of how many machines of the gang do it. */
    public Symbol machines() {
        return machines;
    }

    /** The stages that keep step. */
    public static List<GangStage> together() {
        return thatKeepStep(true);
    }

    /** The stages on a day of their own. */
    public static List<GangStage> apart() {
        return thatKeepStep(false);
    }

    private static List<GangStage> thatKeepStep(boolean coupled) {
        List<GangStage> stages = new ArrayList<>();
        for (GangStage stage : values()) {
            if (stage.coupled == coupled) {
                stages.add(stage);
            }
        }
        return stages;
    }
}
