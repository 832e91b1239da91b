package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.value;

import java.util.List;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/**
 * What chance leaves of a gang's rate: the lower of chopping and carting on paper, the same as {@link CartingSimulation}
 * finds it, and the gang's rate with that in place.
 */
public final class GangChance {
    private GangChance() {}

    /** The lower of chopping and carting. */
    public static final Symbol PAPER_AREA = Symbol.number("chopped and carted, area", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** The same by mass: what the simulation is held against. */
    public static final Symbol ON_PAPER = Symbol.number("chopped and carted on paper", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Spread of times in the simulation. */
    public static final Symbol SPREAD =
            Symbol.number("spread of times", Units.PERCENT).decimals(0);
    /** Seed of the simulation. */
    public static final Symbol SEED = Symbol.number("seed", Units.ONE).decimals(0);
    /** Loads simulated. */
    public static final Symbol LOADS =
            Symbol.number("loads simulated", Units.ONE).decimals(0);
    /** What chance leaves of chopping and carting. */
    public static final Symbol SIMULATED = Symbol.number("chopped and carted, simulated", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** The rate of chopping that was simulated with. */
    public static final Symbol CHOPPING_THEN = Symbol.number("chopping rate simulated with", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** The rate of carting that was simulated with. */
    public static final Symbol CARTING_THEN = Symbol.number("carting rate simulated with", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** The spread that was simulated with. */
    public static final Symbol SPREAD_THEN =
            Symbol.number("spread simulated with", Units.PERCENT).decimals(0);
    /** The seed that was simulated with. */
    public static final Symbol SEED_THEN =
            Symbol.number("seed simulated with", Units.ONE).decimals(0);
    /** The number of loads that was simulated with. */
    public static final Symbol LOADS_THEN =
            Symbol.number("loads simulated then", Units.ONE).decimals(0);
    /** The gang's rate with chance. */
    public static final Symbol EXPECTED_RATE = Symbol.number("gang rate expected", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Share of the rate on paper that chance leaves. */
    public static final Symbol KEPT_UP = Symbol.number("share kept up", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(0);

    /** The lower of chopping and carting, by area. */
    public static final Formula PAPER_BY_AREA = new Formula(
            "chop-and-cart-rate-by-area",
            PAPER_AREA,
            new Expr.LeastGiven(List.of(GangStage.CHOPPING.rate(), GangStage.CARTING.rate()))
                    .onlyWhen(GangRates.allThere(List.of(GangStage.CHOPPING, GangStage.CARTING)), GangRates.NO_RATE),
            GangRates.LOWEST,
            "forage wagons chop and cart in one",
            List.of(
                    chopped(1.584).gives(1.584, Units.HA_PER_H, 6),
                    chopped(2.376).gives(2, Units.HA_PER_H, 6)));

    private static WorkedExample.Draft chopped(double carting) {
        return WorkedExample.from(GangRates.ARITHMETIC)
                .with(GangStage.CHOPPING.rate(), 2)
                .with(GangStage.CHOPPING.machines(), 1)
                .with(GangStage.CARTING.rate(), carting)
                .with(GangStage.CARTING.machines(), 2);
    }

    /** {@code chop-and-cart-rate}: the lower of chopping and carting, by mass. */
    public static final Formula PAPER = new Formula(
            "chop-and-cart-rate",
            ON_PAPER,
            value(PAPER_AREA).times(Throughput.YIELD_CARTED),
            GangRates.LOWEST,
            "as if no trailer ever came late; chance makes it less, never more",
            List.of(WorkedExample.from(GangRates.ARITHMETIC)
                    .with(PAPER_AREA, 1.584)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(31.68, Units.T_PER_H, 2)));

    /** {@code gang-rate-expected}: the gang with what chance leaves of chopping and carting. */
    public static final Formula EXPECTED = new Formula(
            "gang-rate-expected",
            EXPECTED_RATE,
            Expr.least(value(GangRates.GANG_RATE), value(SIMULATED).over(Throughput.YIELD_CARTED)),
            Source.derived("the lower of the gang rate and the simulated rate of chopping and carting"),
            "stages at the clamp as on paper",
            List.of(WorkedExample.from(GangRates.ARITHMETIC)
                    .with(GangRates.GANG_RATE, 1.584)
                    .with(SIMULATED, 30)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(1.5, Units.HA_PER_H, 6)));

    /** Share kept up. */
    public static final Formula SHARE_KEPT_UP = new Formula(
            "gang-rate-share-kept-up",
            KEPT_UP,
            value(EXPECTED_RATE).over(GangRates.GANG_RATE),
            Source.derived("expected over paper"),
            "as the spread of times, the seed and the number of loads have it",
            List.of(WorkedExample.from(GangRates.ARITHMETIC)
                    .with(EXPECTED_RATE, 1.5)
                    .with(GangRates.GANG_RATE, 2)
                    .gives(75, Units.PERCENT, 6)));

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(PAPER_BY_AREA, PAPER, EXPECTED, SHARE_KEPT_UP);
    }
}
