package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.BAND_WIDTH;
import static org.rickyard.trade.Quantities.NOZZLES;
import static org.rickyard.trade.Quantities.PUMP_FLOW;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.TANK_VOLUME;
import static org.rickyard.trade.Quantities.WATER_VOLUME;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** What a sprayer's pump has to give: the flow of all nozzles and what stirs the tank. */
public final class SprayPump {
    private SprayPump() {}

    /** Flow of all nozzles at the planned speed and water volume, L/min. */
    public static final Symbol BOOM_FLOW = flow("flow of all nozzles").possible(Range.POSITIVE);
    /** Flow that stirs the tank, L/min. */
    public static final Symbol AGITATION = flow("agitation flow").possible(Range.POSITIVE);
    /** What the pump should give, L/min. */
    public static final Symbol WANTED = flow("pump flow wanted").possible(Range.POSITIVE);
    /** What it gives beyond that, L/min; below nought if it gives less. */
    public static final Symbol TO_SPARE = flow("pump flow to spare");

    private static final Unit PERCENT_PER_MIN = Units.PERCENT.over(Units.MIN);

    private static final Source DUTCH_TEST = Source.published(
            "Netherlands, sprayer test rules (PT 2009, PA 2012), annex 1: the pump returns at least 5 % of the tank a minute"
                    + " to it, 2.5 % where injectors or paddles stir");
    private static final Source COURSE =
            SpraySources.courseNotes("Q5: a boom of 8 m at 8 km/h that gives 32 L/min puts on 300 L/ha");

    /** Share of the tank that goes back into it in a minute. */
    public static final Constant AGITATION_SHARE =
            new Constant("agitation, share of the tank a minute", 5, PERCENT_PER_MIN, DUTCH_TEST);

    /** {@code boom-flow}: water volume × speed × working width; of bands their widths together. */
    public static final Formula FLOW_OF_BOOM = new Formula(
            "boom-flow",
            BOOM_FLOW,
            choice(
                    Condition.typed(BAND_WIDTH),
                    value(WATER_VOLUME).times(SPEED).times(BAND_WIDTH).times(NOZZLES),
                    value(WATER_VOLUME).times(SPEED).times(WORKING_WIDTH)),
            COURSE,
            "all nozzles open; one nozzle over each band where bands are sprayed",
            List.of(
                    WorkedExample.from(COURSE)
                            .with(WATER_VOLUME, 300)
                            .with(SPEED, 8)
                            .with(WORKING_WIDTH, 8)
                            .with(NOZZLES, 16)
                            .gives(32, Units.L_PER_MIN, 0),
                    WorkedExample.from(Source.derived("12 bands of 25 cm are 3 m: 200 × 6 × 3 ÷ 600"))
                            .with(WATER_VOLUME, 200)
                            .with(SPEED, 6)
                            .with(BAND_WIDTH, 0.25)
                            .with(NOZZLES, 12)
                            .with(WORKING_WIDTH, 9)
                            .gives(6, Units.L_PER_MIN, 6)));

    /** {@code agitation-flow}: tank × share a minute. */
    public static final Formula AGITATION_FLOW = new Formula(
            "agitation-flow",
            AGITATION,
            value(TANK_VOLUME).times(constant(AGITATION_SHARE)),
            DUTCH_TEST,
            "by the pump's return alone; 2.5 % a minute with injectors or paddles: type yours in Assumptions",
            List.of(WorkedExample.from(Source.derived("5 % of 3,000 L"))
                    .with(TANK_VOLUME, 3000)
                    .gives(150, Units.L_PER_MIN, 6)));

    /** {@code pump-flow-wanted}: nozzles and agitation together. */
    public static final Formula PUMP_FLOW_WANTED = new Formula(
            "pump-flow-wanted",
            WANTED,
            value(BOOM_FLOW).plus(AGITATION),
            Source.memory("a pump feeds the boom and stirs the tank, with 5 to 10 % of the tank a minute"),
            "at the pressure and PTO speed of the work; the regulating valve, hoses and filters take their own",
            List.of(WorkedExample.from(Source.derived("32 + 150"))
                    .with(BOOM_FLOW, 32)
                    .with(AGITATION, 150)
                    .gives(182, Units.L_PER_MIN, 6)));

    /** {@code pump-flow-to-spare}: pump flow − wanted. */
    public static final Formula PUMP_FLOW_TO_SPARE = new Formula(
            "pump-flow-to-spare",
            TO_SPARE,
            value(PUMP_FLOW).minus(WANTED),
            Source.derived("what is there less what is wanted"),
            "what the pump gives now, which is less than when it was new",
            List.of(WorkedExample.from(Source.derived("200 − 182"))
                    .with(PUMP_FLOW, 200)
                    .with(WANTED, 182)
                    .gives(18, Units.L_PER_MIN, 6)));

    private static Symbol flow(String name) {
        return Symbol.number(name, Units.L_PER_MIN).decimals(1);
    }
}
