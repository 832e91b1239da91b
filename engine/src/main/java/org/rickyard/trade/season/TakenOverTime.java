package org.rickyard.trade.season;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * How many of the machines alike are taken, moment by moment. Of a contractor's tractor there may be thousands of jobs:
 * asking about one of them looks at the moments from there on and not at every pair of the others.
 */
public final class TakenOverTime {
    /** Shorter stretches are noise of the reckoning. */
    private static final double WHISKER = 1e-9;

    /** From each moment on so many, up to the next. */
    private final NavigableMap<Double, Integer> from = new TreeMap<>();

    /** Takes so many from a day up to another. */
    public void take(double start, double finish, int count) {
        if (start < finish) {
            part(start);
            part(finish);
            from.subMap(start, true, finish, false).replaceAll((moment, taken) -> taken + count);
            join(start);
            join(finish);
        }
    }

    private void part(double moment) {
        Map.Entry<Double, Integer> before = from.floorEntry(moment);
        from.putIfAbsent(moment, before == null ? 0 : before.getValue());
    }

    /** Jobs one after another are one stretch, so that a long row of them is passed at once. */
    private void join(double moment) {
        Map.Entry<Double, Integer> before = from.lowerEntry(moment);
        if ((before == null ? 0 : before.getValue()) == from.get(moment).intValue()) {
            from.remove(moment);
        }
    }

    /**
     * The first day from which on no more than so many are taken for as long as asked, if it is not before a day.
     *
     * @param earliest that day
     * @param days how long
     * @param most how many
     */
    public double free(double earliest, double days, int most) {
        double start = earliest;
        Double moment = from.floorKey(start);
        moment = moment == null ? from.ceilingKey(start) : moment;
        while (moment != null && start + days > moment + WHISKER) {
            Double next = from.higherKey(moment);
            if (next != null && start < next - WHISKER && next - moment > WHISKER && from.get(moment) > most) {
                start = next;
            }
            moment = next;
        }
        return start;
    }

    /** The stretches, by their beginnings, in which more than so many are taken; none touches another. */
    public NavigableMap<Double, Double> above(int most) {
        NavigableMap<Double, Double> stretches = new TreeMap<>();
        Double begun = null;
        for (Map.Entry<Double, Integer> next : from.entrySet()) {
            if (begun == null && next.getValue() > most) {
                begun = next.getKey();
            } else if (begun != null && next.getValue() <= most) {
                stretches.put(begun, next.getKey());
                begun = null;
            }
        }
        return stretches;
    }
}
