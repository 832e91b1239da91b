package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.LOAD_DISTANCE;
import static org.rickyard.trade.Quantities.PAYLOAD;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;
import static org.rickyard.trade.spraying.TankPlan.TANK_FILLED;

import java.util.List;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** What goes on a hectare, told by how far one load of a muck spreader or a tanker is spread. */
public final class LoadTest {
    private LoadTest() {}

    /** The ground of one load. */
    public static final Symbol LOAD_AREA = Symbol.number("area covered by a load", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(3);
    /** Tonnes of it on a hectare. */
    public static final Symbol BY_WEIGHT = Symbol.number("rate spread by the load", Units.T_PER_HA)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Litres of it on a hectare. */
    public static final Symbol BY_VOLUME = Symbol.number("rate spread by the tanker load", Units.L_PER_HA)
            .possible(Range.POSITIVE)
            .decimals(0);

    /** {@code load-area}: distance × width. */
    public static final Formula AREA_OF_LOAD = new Formula(
            "load-area",
            LOAD_AREA,
            value(LOAD_DISTANCE).times(WORKING_WIDTH),
            SpraySources.FLORIDA,
            "width between bouts, not the throw; the load spread evenly from full to empty, once over the ground",
            List.of(WorkedExample.from(SpraySources.FLORIDA)
                    .with(LOAD_DISTANCE, 435, Units.FT)
                    .with(WORKING_WIDTH, 10, Units.FT)
                    .gives(4350, Units.FT.pow(2), 0)));

    /** {@code load-spread-rate}: payload ÷ area of the load. */
    public static final Formula RATE_BY_WEIGHT = new Formula(
            "load-spread-rate",
            BY_WEIGHT,
            value(PAYLOAD).over(LOAD_AREA),
            SpraySources.FLORIDA,
            "a load weighed, not guessed by the size of the body",
            List.of(
                    WorkedExample.from(SpraySources.FLORIDA)
                            .with(PAYLOAD, 20, Units.LB)
                            .with(LOAD_AREA, 4350, Units.FT.pow(2))
                            .gives(200, Units.LB.over(Units.AC), 0),
                    WorkedExample.from(Source.derived("8 t over 200 m × 8 m, 0.16 ha, are 50 t/ha"))
                            .with(PAYLOAD, 8)
                            .with(LOAD_AREA, 0.16)
                            .gives(50, Units.T_PER_HA, 6)));

    /** {@code load-volume-rate}: tank ÷ area of the load. */
    public static final Formula RATE_BY_VOLUME = new Formula(
            "load-volume-rate",
            BY_VOLUME,
            value(TANK_FILLED).over(LOAD_AREA),
            Source.derived("a tankful over the ground it is spread on"),
            "a full tank spread until it is empty",
            List.of(WorkedExample.from(Source.derived("10 m3 over 400 m × 10 m, 0.4 ha, are 25 m3/ha"))
                    .with(TANK_FILLED, 10000)
                    .with(LOAD_AREA, 0.4)
                    .gives(25000, Units.L_PER_HA, 6)));
}
