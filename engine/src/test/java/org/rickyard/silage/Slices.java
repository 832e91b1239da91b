package org.rickyard.silage;

import java.util.function.DoubleUnaryOperator;

/** Volumes and lengths by cutting into thin slices, with none of the engine's formulas. */
final class Slices {
    private static final int COUNT = 20_000;

    private Slices() {}

    /** The sum of slices taken at their middles. */
    static double sum(double from, double to, DoubleUnaryOperator height) {
        double step = (to - from) / COUNT;
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += height.applyAsDouble(from + (i + 0.5) * step);
        }
        return sum * step;
    }

    /** A section between battered walls, filled to a height: layers from the floor up. */
    static double section(double floor, double batter, double height) {
        int layers = 64;
        double step = height / layers;
        double sum = 0;
        for (int i = 0; i < layers; i++) {
            sum += floor + 2 * batter * (i + 0.5) * step;
        }
        return sum * step;
    }

    /** A clamp cut crosswise from one end to the other; ramps rise from the toe at each ramped end. */
    static double walled(
            double length, double floor, double batter, double height, int ramps, double run, double onTop) {
        double ramp = ramps == 0 ? 0 : run * height;
        double sloping = ramp == 0 ? 0 : ramps * sum(0, ramp, x -> section(floor, batter, x / run));
        return sloping + sum(0, length - ramps * ramp, x -> section(floor, batter, height) + onTop);
    }

    /** The section of a crown over a width: a parabola, or rising at 45 degrees to a flat. */
    static double crown(double width, double crown, boolean straight) {
        if (crown == 0) {
            return 0;
        }
        return straight
                ? sum(0, width, x -> Math.min(crown, Math.min(x, width - x)))
                : sum(-width / 2, width / 2, x -> crown * (1 - 4 * x * x / (width * width)));
    }

    /** A body cut level by level; its sides move out (or, below 0, in) by the batter for each metre up. */
    static double level(double length, double width, double batter, double height) {
        return sum(0, height, z -> (length + 2 * batter * z) * (width + 2 * batter * z));
    }

    /** The length over a crown: of a parabola as a chain of short straight pieces, or of shoulder, flat and shoulder. */
    static double arc(double width, double crown, boolean straight) {
        if (straight) {
            return 2 * Math.hypot(crown, crown) + (width - 2 * crown);
        }
        double sum = 0;
        double step = width / COUNT;
        double before = 0;
        for (int i = 1; i <= COUNT; i++) {
            double x = -width / 2 + i * step;
            double y = crown * (1 - 4 * x * x / (width * width));
            sum += Math.hypot(step, y - before);
            before = y;
        }
        return sum;
    }
}
