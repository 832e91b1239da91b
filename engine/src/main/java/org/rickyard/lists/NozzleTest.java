package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import org.rickyard.trade.Quantities;

/** A catch test, one row for each nozzle. */
public final class NozzleTest {
    private NozzleTest() {}

    /** The sprayer. */
    public static final ColumnSpec SPRAYER = text("Sprayer", Quantities.SPRAYER)
            .needed()
            .also("sprayer name, machine")
            .help("From the machine list.");
    /** Place on the boom. */
    public static final ColumnSpec NOZZLE = text("Nozzle", Quantities.NOZZLE)
            .needed()
            .also("nozzle no, nozzle number, position, jet, tip, jet no")
            .help("Its place, counted from the left end.");
    /** Measured flow. */
    public static final ColumnSpec FLOW = number("Flow", Quantities.NOZZLE_FLOW)
            .needed()
            .also("flow rate, measured flow, output, nozzle flow, nozzle output, catch")
            .help("Caught in one minute.");
    /** Pressure. */
    public static final ColumnSpec PRESSURE = number("Pressure", Quantities.PRESSURE)
            .also("operating pressure, working pressure, gauge pressure, boom pressure, "
                    + "test pressure, nozzle pressure, spray pressure")
            .help("At the test.");
    /** Flow when new. */
    public static final ColumnSpec NEW_FLOW = number("New flow", Quantities.NEW_NOZZLE_FLOW)
            .also("new, flow when new, new nozzle flow, reference flow, nominal flow, chart flow")
            .help("Of a new nozzle at the same pressure.");
    /** The holding. */
    public static final ColumnSpec HOLDING = Shared.HOLDING;

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Nozzle test",
                    List.of(
                            "nozzle tests",
                            "catch test",
                            "nozzle flow test",
                            "jug test",
                            "nozzle check",
                            "nozzle flows"),
                    List.of(SPRAYER, NOZZLE, FLOW, PRESSURE, NEW_FLOW, HOLDING))
            .identifiedBy(SPRAYER, NOZZLE)
            .otherwise(HOLDING, Shared.WHOSE)
            .otherwise(NOZZLE, "no, number, tip no, tip number, jet number, nozzle position")
            .otherwise(
                    FLOW,
                    "l/min, ml/min, oz/min, fl oz/min, ounces per minute, litres per minute, litres/min, "
                            + "gpm, ounces caught per minute, nozzle discharge, volume collected, "
                            + "amount collected, volume caught, amount caught, measured, measured output, "
                            + "discharge, collected, caught")
            .otherwise(
                    NEW_FLOW,
                    "original output, original flow, manufacturer's flow, manufacturers flow, tip chart flow, "
                            + "new tip gpm, nominal, nominal output, rated flow, rated output, rated, chart, chart output, "
                            + "catalogue flow, expected flow, expected output, expected, target flow, new output, new tip, "
                            + "new nozzle, new jet, new tip flow, new tip output")
            .otherwise(PRESSURE, "bar, psi, kpa")
            .needsHeaders(3);
}
