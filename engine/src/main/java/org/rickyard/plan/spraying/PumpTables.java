package org.rickyard.plan.spraying;

import static org.rickyard.plan.spraying.SprayColumns.result;
import static org.rickyard.plan.spraying.SprayColumns.step;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.lists.Machines;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.SprayPump;

/** The table of pumps. It stands only in workbooks whose machine list tells a pump flow. */
final class PumpTables {
    private PumpTables() {}

    private static final List<CautionRule> RULES = List.of(
            SprayRules.stop(
                    SprayRules.less(Quantities.PUMP_FLOW, SprayPump.BOOM_FLOW),
                    "the pump gives less than the nozzles are to spray: at this speed, width and water volume less goes on"
                            + " than planned. Drive slower, or see whether a figure is wrong."),
            SprayRules.caution(
                    Condition.all(List.of(
                            SprayRules.less(Quantities.PUMP_FLOW, SprayPump.WANTED),
                            new Condition.Not(SprayRules.less(Quantities.PUMP_FLOW, SprayPump.BOOM_FLOW)))),
                    "the pump gives less than nozzles and stirring of a full tank want by these figures: a mix may"
                            + " settle, or the pressure not hold. Injectors or paddles want less (see Basis; type yours in"
                            + " Assumptions); the sprayer's book decides."));

    /** One row per block whose sprayer has a pump flow typed. */
    static final TableSpec PUMPS = new TableSpec(
            "pumps",
            "Pumps",
            "Pumps: flow of all nozzles and of stirring, against what the pump gives",
            "one row per block whose sprayer has a pump flow",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            Names.MACHINE,
                            SprayColumns.BLOCK,
                            new TableColumn.Key(Keys.BLOCK_KEY),
                            SprayColumns.WATER_VOLUME,
                            SprayColumns.SPEED,
                            SprayColumns.BAND_WIDTH,
                            SprayColumns.WORKING_WIDTH,
                            SprayColumns.NOZZLES,
                            SprayColumns.TANK,
                            Names.link(Quantities.PUMP_FLOW, Candidate.typed(Role.MACHINE, Machines.PUMP_FLOW)),
                            step(SprayPump.FLOW_OF_BOOM),
                            result(SprayPump.AGITATION_FLOW),
                            result(SprayPump.PUMP_FLOW_WANTED),
                            result(SprayPump.PUMP_FLOW_TO_SPARE)),
                    RULES),
            List.of(),
            Cautions.SPRAYING,
            RULES);
}
