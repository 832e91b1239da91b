package org.rickyard.trade.workrate;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Method;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;

/**
 * Trailers bunch: a seeded simulation of foragers that fill trailers one after another while filling, road and tipping
 * times vary about their means. Times are drawn once, log-normal, and scaled so that the drawn mean is the mean on
 * paper; a trailer that comes back waits its turn. The same seed gives the same result on every machine, for it rests on
 * an arithmetic of its own and {@link StrictMath}.
 */
public final class CartingSimulation {
    /**
     * Trailers alike.
     *
     * @param trailers how many
     * @param load tonnes each
     * @param fill minutes to fill one
     * @param away minutes of the rest of its round
     */
    public record Kind(int trailers, double load, double fill, double away) {}

    /** What it is, for the sheet. */
    public static final Method METHOD = new Method(
            "chop-and-cart-rate-simulated",
            "one trailer after another is filled by the forager that is free first, drives, tips and comes back to wait"
                    + " its turn; filling and round times"
                    + " vary about their means (log-normal, spread as on Basis), seed and loads as on Basis",
            Source.derived("closed queue, equal to the figures on paper where the spread is zero"),
            List.of(
                    ofGang(Carting.TRAILERS),
                    ofGang(Carting.FORAGERS),
                    ofGang(Carting.LOAD),
                    ofGang(Carting.FILL_TIME),
                    ofGang(Carting.CYCLE),
                    Expr.value(GangChance.SPREAD),
                    Expr.value(GangChance.SEED),
                    Expr.value(GangChance.LOADS)));

    /** What it was done with, to be held against what stands there now. */
    public static final Method SIMULATED_WITH = new Method(
            "simulated-with",
            "as it was when the gangs were simulated",
            Source.derived("the row as it was at the run"));

    private static Expr ofGang(Symbol symbol) {
        return new Expr.Total(Carting.TABLE, symbol, Keys.GANG_KEY, Keys.GANG_KEY, true);
    }

    /** Standard deviation over mean of filling and of the rest of a round. */
    public static final Constant SPREAD = new Constant(
                    "Spread of carting times",
                    20,
                    Units.PERCENT,
                    Source.memory("standard deviation over mean; time ten rounds to know your own"))
            .possible(Range.of(0, 200));
    /** A drawing that takes no longer than a breath. */
    private static final int MOST_LOADS = 200_000;
    /** What the drawing starts from. */
    public static final Constant SEED = new Constant(
                    "Seed of the carting simulation", 1, Units.ONE, Source.commonPractice("any whole number"))
            .possible(Range.ANY);
    /** How many loads are simulated. */
    public static final Constant LOADS = new Constant(
                    "Loads in the carting simulation",
                    2000,
                    Units.ONE,
                    Source.commonPractice("more loads, less chance"))
            .possible(Range.of(1, MOST_LOADS));

    private static final int FEWEST_ROUNDS = 10;

    private final List<Kind> kinds;
    private final double spread;
    private long state;

    private CartingSimulation(List<Kind> kinds, double spread, long seed) {
        this.kinds = List.copyOf(kinds);
        this.spread = spread;
        this.state = seed;
    }

    /**
     * Tonnes per hour on paper: the lower of filling without a pause and rounds without a wait.
     *
     * @param foragers foragers alike, 1 or more
     */
    public static double onPaper(List<Kind> kinds, int foragers) {
        double filled = 0;
        double filling = 0;
        for (Kind kind : kinds) {
            filled += kind.trailers() * kind.load();
            filling += kind.trailers() * kind.fill();
        }
        return Math.min(foragers * 60 * filled / filling, withoutQueue(kinds));
    }

    /** Tonnes per hour of machines that load themselves and so never wait for one another. */
    public static double withoutQueue(List<Kind> kinds) {
        double carried = 0;
        for (Kind kind : kinds) {
            carried += kind.trailers() * kind.load() / (kind.fill() + kind.away());
        }
        return 60 * carried;
    }

    /**
     * Tonnes per hour that chance leaves; never above {@link #onPaper}, and equal to it without spread.
     *
     * @param foragers foragers alike, 1 or more, each filling one trailer at a time
     * @param spread standard deviation over mean, 0 to 2
     * @param seed any whole number
     * @param loads how many loads are brought in all, at least; 1 to 200,000
     */
    public static double rate(List<Kind> kinds, int foragers, double spread, long seed, int loads) {
        double paper = onPaper(kinds, foragers);
        if (spread <= 0) {
            return paper;
        }
        int all = kinds.stream().mapToInt(Kind::trailers).sum();
        int rounds = Math.max(FEWEST_ROUNDS, (int) Math.ceil(loads / (double) all));
        return Math.min(paper, new CartingSimulation(kinds, spread, seed).run(foragers, rounds));
    }

    /** On average each trailer brings so many loads; the first tenth, with all in line at the start, is not counted. */
    private double run(int foragers, int rounds) {
        List<Integer> kindOf = new ArrayList<>();
        for (int kind = 0; kind < kinds.size(); kind++) {
            for (int i = 0; i < kinds.get(kind).trailers(); i++) {
                kindOf.add(kind);
            }
        }
        int trailers = kindOf.size();
        double[][] fill = new double[trailers][];
        double[][] away = new double[trailers][];
        for (int i = 0; i < trailers; i++) {
            Kind kind = kinds.get(kindOf.get(i));
            fill[i] = drawn(rounds, kind.fill());
            away[i] = drawn(rounds, kind.away());
        }
        double[] back = new double[trailers];
        int[] brought = new int[trailers];
        double[] free = new double[foragers];
        double filled = 0;
        double tonnes = 0;
        double started = 0;
        int warm = trailers * Math.max(1, rounds / 10);
        int target = trailers * rounds;
        for (int load = 0; load < target; load++) {
            int next = first(back);
            int round = brought[next]++ % rounds;
            int forager = first(free);
            free[forager] = Math.max(free[forager], back[next]) + fill[next][round];
            filled = Math.max(filled, free[forager]);
            back[next] = free[forager] + away[next][round];
            if (load < warm) {
                started = filled;
            } else {
                tonnes += kinds.get(kindOf.get(next)).load();
            }
        }
        return 60 * tonnes / (filled - started);
    }

    private static int first(double[] back) {
        int first = 0;
        for (int i = 1; i < back.length; i++) {
            if (back[i] < back[first]) {
                first = i;
            }
        }
        return first;
    }

    /** Times with the mean asked for. */
    private double[] drawn(int count, double mean) {
        double sigma = StrictMath.sqrt(StrictMath.log(1 + spread * spread));
        double[] times = new double[count];
        double sum = 0;
        for (int i = 0; i < count; i++) {
            times[i] = StrictMath.exp(sigma * normal());
            sum += times[i];
        }
        for (int i = 0; i < count; i++) {
            times[i] *= mean * count / sum;
        }
        return times;
    }

    /** Box and Muller. */
    private double normal() {
        double u = 1 - uniform();
        return StrictMath.sqrt(-2 * StrictMath.log(u)) * StrictMath.cos(2 * Math.PI * uniform());
    }

    /** SplitMix64, whose sequence is fixed by its definition. */
    private double uniform() {
        state += 0x9E3779B97F4A7C15L;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return ((z ^ (z >>> 31)) >>> 11) * 0x1.0p-53;
    }
}
