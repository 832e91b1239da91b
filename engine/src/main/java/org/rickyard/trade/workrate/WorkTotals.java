package org.rickyard.trade.workrate;

import static org.rickyard.trade.Keys.HOLDING_KEY;
import static org.rickyard.trade.Keys.MACHINE_KEY;

import java.util.List;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/** Hours and hectares added up per machine and per holding. */
public final class WorkTotals {
    private WorkTotals() {}

    /** The table of work rates these totals read. */
    public static final String WORK_RATES = "work-rates";

    /** The table of what machines do in an hour where no fields are listed. */
    public static final String MACHINE_RATES = "machine-rates";

    /** Hours of one machine over all its work. */
    public static final Symbol HOURS_OF_MACHINE =
            Symbol.number("machine hours", Units.H).possible(Range.POSITIVE).decimals(1);
    /** Hectares of one machine over all its work, each pass counted. */
    public static final Symbol AREA_OF_MACHINE =
            Symbol.number("area worked", Units.HA).possible(Range.POSITIVE).decimals(2);
    /** Hours of all machines on one holding. */
    public static final Symbol HOURS_OF_HOLDING =
            Symbol.number("holding hours", Units.H).possible(Range.POSITIVE).decimals(1);
    /** Rows of work whose hours are withheld and so are not in the total. */
    public static final Symbol ROWS_LEFT_OUT =
            Symbol.number("rows left out", Units.ONE).decimals(0);

    private static final Source SUM = Source.derived("sum of the hours given; rows left out are counted beside it");

    /** {@code machine-hours}. */
    public static final Formula MACHINE_HOURS = new Formula(
            "machine-hours",
            HOURS_OF_MACHINE,
            new Expr.Total(WORK_RATES, FieldRates.FIELD_HOURS, MACHINE_KEY, MACHINE_KEY, false),
            SUM,
            "field hours at the machine's own pace; where a gang holds it up, Machine season has them; road, service and"
                    + " repairs come on top",
            List.of());

    /** {@code machine-area}. */
    public static final Formula MACHINE_AREA = new Formula(
            "machine-area",
            AREA_OF_MACHINE,
            new Expr.Total(WORK_RATES, Quantities.AREA, MACHINE_KEY, MACHINE_KEY, false),
            Source.derived("sum of the areas given, each pass counted"),
            "net areas",
            List.of());

    /** {@code holding-hours}. */
    public static final Formula HOLDING_HOURS = new Formula(
            "holding-hours",
            HOURS_OF_HOLDING,
            new Expr.Total(WORK_RATES, FieldRates.FIELD_HOURS, HOLDING_KEY, HOLDING_KEY, false),
            SUM,
            "machine hours at each one's own pace, not people's hours; machines that work side by side are added up, those"
                    + " that cart, push up and roll are not in it",
            List.of());

    /** Rows left out of a machine's hours. */
    public static final Expr LEFT_OUT_OF_MACHINE =
            new Expr.Count(WORK_RATES, FieldRates.FIELD_HOURS, MACHINE_KEY, MACHINE_KEY, true);
    /** Rows left out of a holding's hours. */
    public static final Expr LEFT_OUT_OF_HOLDING =
            new Expr.Count(WORK_RATES, FieldRates.FIELD_HOURS, HOLDING_KEY, HOLDING_KEY, true);
}
