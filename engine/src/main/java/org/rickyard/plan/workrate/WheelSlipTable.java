package org.rickyard.plan.workrate;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.Machines;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.WheelSlip;

/** The table of wheel slip. It stands only in workbooks whose machine list has turns of wheels. */
final class WheelSlipTable {
    private WheelSlipTable() {}

    private static final List<CautionRule> RULES = List.of(
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(Expr.value(WheelSlip.SLIP), Expr.constant(WheelSlip.MUCH)),
                    "more slip than is best on any ground (Basis): work, fuel and tyres are lost and the soil is smeared;"
                            + " see to tyre pressures, ballast and the draught, as the tractor's book allows."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.below(Expr.value(WheelSlip.SLIP), Expr.constant(WheelSlip.LITTLE)),
                    "less slip than is best even on concrete (Basis): more ballast than this work needs costs fuel and"
                            + " presses the soil; or was it measured without the load?"));

    /** One row per machine whose wheels' turns were counted. */
    static final TableSpec SLIP = new TableSpec(
            "wheel-slips",
            "Wheel slip",
            "Wheel slip: turns with and without the load over one distance",
            "one row per machine whose wheels' turns are typed",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            Names.link(Quantities.TURNS_LOADED, Candidate.typed(Role.MACHINE, Machines.TURNS_LOADED)),
                            Names.link(
                                    Quantities.TURNS_UNLOADED, Candidate.typed(Role.MACHINE, Machines.TURNS_UNLOADED)),
                            new TableColumn.Calculated(WheelSlip.WHEEL_SLIP, true)),
                    RULES),
            List.of(),
            List.of(
                    "Best by ground (University of Arizona): concrete 4-8 %, firm 8-10, tilled 11-13, soft or sandy 14-16.",
                    "Speeds of Machines and Jobs are over the ground: one read off the wheels is too high by the slip. Count"
                            + " turns from beside the tractor's way, never walking close to its wheels."),
            RULES);
}
