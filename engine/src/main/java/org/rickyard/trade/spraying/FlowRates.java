package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.MACHINE_TYPE;
import static org.rickyard.trade.Quantities.NOZZLES;
import static org.rickyard.trade.Quantities.NOZZLE_FLOW;
import static org.rickyard.trade.Quantities.NOZZLE_SIZE;
import static org.rickyard.trade.Quantities.NOZZLE_SPACING;
import static org.rickyard.trade.Quantities.PRESSURE;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.TOTAL_FLOW;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** What a sprayer puts on a hectare with the flow that it has: the question of a calibration, before any job. */
public final class FlowRates {
    private FlowRates() {}

    /** Flow of one nozzle. */
    public static final Symbol FLOW_EACH = Symbol.number("flow of one nozzle", Units.L_PER_MIN)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Spray on a hectare. */
    public static final Symbol FLOW_RATE = Symbol.number("rate from the flow", Units.L_PER_HA)
            .possible(Range.POSITIVE)
            .decimals(0);

    /** {@code flow-of-nozzle}: typed, or the ISO size's at the working pressure. */
    public static final Formula FLOW_OF_NOZZLE = new Formula(
            "flow-of-nozzle",
            FLOW_EACH,
            given(NOZZLE_FLOW, NozzlePressure.FLOW_AT_PRESSURE),
            Source.memory("typed; otherwise the nominal flow of the ISO 10625 size × root of (pressure ÷ 3 bar)"),
            "pressure at the nozzle; what was caught in a jug is the better measure",
            List.of(
                    WorkedExample.from(SpraySources.PSD)
                            .with(NOZZLE_SIZE, 3)
                            .with(PRESSURE, 3)
                            .gives(1.2, Units.L_PER_MIN, 1),
                    WorkedExample.from(Source.derived("four times the pressure gives twice the flow"))
                            .with(NOZZLE_SIZE, 3)
                            .with(PRESSURE, 12)
                            .gives(2.4, Units.L_PER_MIN, 1),
                    WorkedExample.from(Source.commonPractice("what is typed stands"))
                            .with(NOZZLE_FLOW, 1.3)
                            .with(NOZZLE_SIZE, 3)
                            .with(PRESSURE, 3)
                            .gives(1.3, Units.L_PER_MIN, 6)));

    /** {@code rate-from-flow}: flow ÷ (speed × width it is spread over). */
    public static final Formula RATE_FROM_FLOW = new Formula(
            "rate-from-flow",
            FLOW_RATE,
            choice(
                    Condition.typed(TOTAL_FLOW),
                    value(TOTAL_FLOW).over(value(SPEED).times(WORKING_WIDTH)),
                    choice(
                            Condition.all(
                                    List.of(Condition.is(MACHINE_TYPE, "sprayer"), Condition.typed(NOZZLE_SPACING))),
                            value(FLOW_EACH).over(value(SPEED).times(NOZZLE_SPACING)),
                            value(FLOW_EACH).times(NOZZLES).over(value(SPEED).times(WORKING_WIDTH)))),
            SpraySources.FARM_PRESS,
            "of water; the whole flow over the width it is sprayed on, or along a boom one nozzle's over its spacing, if"
                    + " typed; nozzles that stand above each other, as on an air-blast sprayer, are all counted",
            examples());

    private static final Source KNAPSACK =
            Source.derived("a knapsack of 1 L/min, 1 m wide at 4 km/h, is empty of 15 L in 15 min: 1 km of 1 m");

    /** {@code area-per-tankful-at-flow}: tank ÷ rate from the flow. */
    public static final Formula AREA_OF_FILL_AT_FLOW = new Formula(
            "area-per-tankful-at-flow",
            SmallSprayers.FILL_AREA,
            value(TankPlan.TANK_FILLED).over(FLOW_RATE),
            KNAPSACK,
            "at this speed, width and flow",
            List.of(WorkedExample.from(KNAPSACK)
                    .with(TankPlan.TANK_FILLED, 15)
                    .with(FLOW_RATE, 150)
                    .gives(1000, Units.M2, 6)));

    private static List<WorkedExample> examples() {
        List<WorkedExample> examples = new ArrayList<>(List.of(
                WorkedExample.from(SpraySources.FARM_PRESS)
                        .with(MACHINE_TYPE, "sprayer")
                        .with(FLOW_EACH, 1.3)
                        .with(SPEED, 7.8)
                        .with(NOZZLE_SPACING, 0.5)
                        .with(WORKING_WIDTH, 12)
                        .gives(200, Units.L_PER_HA, 6),
                WorkedExample.from(SpraySources.TRADE)
                        .with(MACHINE_TYPE, "sprayer")
                        .with(FLOW_EACH, 1.583)
                        .with(SPEED, 10)
                        .with(NOZZLE_SPACING, 0.5)
                        .gives(190, Units.L_PER_HA, 0),
                WorkedExample.from(SpraySources.courseNotes("Q5: 8 m at 8 km/h with 32 L/min is 300 L/ha"))
                        .with(TOTAL_FLOW, 32)
                        .with(SPEED, 8)
                        .with(WORKING_WIDTH, 8)
                        .gives(300, Units.L_PER_HA, 6),
                WorkedExample.from(Source.derived("a knapsack of 1 L/min, 1 m wide at 4 km/h: 150 L/ha"))
                        .with(TOTAL_FLOW, 1)
                        .with(SPEED, 4)
                        .with(WORKING_WIDTH, 1)
                        .gives(150, Units.L_PER_HA, 6),
                WorkedExample.from(Source.derived("48 nozzles of 1.3 L/min over 24 m, as one of them over 0.5 m"))
                        .with(MACHINE_TYPE, "sprayer")
                        .with(FLOW_EACH, 1.3)
                        .with(NOZZLES, 48)
                        .with(SPEED, 7.8)
                        .with(WORKING_WIDTH, 24)
                        .gives(200, Units.L_PER_HA, 6),
                WorkedExample.from(Source.derived("12 nozzles of 1.5 L/min are 18 L/min; × 600 ÷ (6 km/h × 4 m)"))
                        .with(MACHINE_TYPE, "air-blast sprayer")
                        .with(FLOW_EACH, 1.5)
                        .with(NOZZLES, 12)
                        .with(NOZZLE_SPACING, 0.25)
                        .with(SPEED, 6)
                        .with(WORKING_WIDTH, 4)
                        .gives(450, Units.L_PER_HA, 6)));
        for (SpraySources.AlbertaCell cell : SpraySources.ALBERTA_TABLE) {
            examples.add(WorkedExample.from(SpraySources.ALBERTA)
                    .with(MACHINE_TYPE, "sprayer")
                    .with(FLOW_EACH, cell.flow())
                    .with(SPEED, cell.speed())
                    .with(NOZZLE_SPACING, 0.5)
                    .givesWithin(cell.rate(), Units.L.over(Units.AC), cell.tolerance()));
        }
        return List.copyOf(examples);
    }
}
