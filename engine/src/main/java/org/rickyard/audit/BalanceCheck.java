package org.rickyard.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.cost.CostTotals;
import org.rickyard.trade.cost.JobCost;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.Crop;
import org.rickyard.trade.silage.FeedBalance;
import org.rickyard.trade.silage.FeedDemand;
import org.rickyard.trade.spraying.TankLoads;
import org.rickyard.trade.spraying.TankPlan;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.WorkTotals;

/**
 * A total reached by two routes. It fails only if both routes are complete and differ.
 *
 * @param what what is compared
 * @param one the first route
 * @param other the second route
 */
public record BalanceCheck(String what, List<Part> one, List<Part> other) {
    /** The verdict where both routes come to nothing because rows are withheld: to agree on nothing is no proof. */
    public static final String NOT_COMPARED = "not compared";
    /** The verdict where rows are withheld and the routes differ for it. */
    public static final String INCOMPLETE = "incomplete";

    private static final double TOLERANCE = 1e-9;

    /**
     * A column added up: whole, or over the rows whose key is 0, or above 0.
     *
     * @param table the table
     * @param symbol the column added
     * @param key the key asked about, or null for the whole column
     * @param keyed true for rows with a key above 0, false for rows whose key is 0
     */
    public record Part(ResultTable table, Symbol symbol, Symbol key, boolean keyed) {
        private double sum() {
            Values values = table.of(symbol);
            double sum = 0;
            for (int row = 0; row < table.rows(); row++) {
                if (values.has(row) && counts(row)) {
                    sum += values.number(row);
                }
            }
            return sum;
        }

        private boolean counts(int row) {
            return key == null
                    || (keyed
                            ? table.of(key).has(row) && table.of(key).number(row) > 0
                            : table.of(key).number(row) == 0);
        }

        private int withheld() {
            Values values = table.of(symbol);
            int withheld = 0;
            for (int row = 0; row < table.rows(); row++) {
                withheld += values.has(row) ? 0 : 1;
            }
            return withheld;
        }

        private String formula(SheetPlaces places) {
            String column = places.column(table, symbol);
            return key == null
                    ? "SUM(" + column + ")"
                    : "SUMIFS(" + column + "," + places.column(table, key) + ",\"" + (keyed ? ">" : "=") + "0\")";
        }

        private String withheldFormula(SheetPlaces places) {
            return table.rows() + "-COUNT(" + places.column(table, symbol) + ")";
        }
    }

    /** The checks that a plan's tables allow. */
    public static List<BalanceCheck> of(WorkPlan plan) {
        List<BalanceCheck> checks = new ArrayList<>();
        ResultTable work = plan.table(WorkTotals.WORK_RATES);
        ResultTable machines = plan.table("machine-totals");
        ResultTable holdings = plan.table("holding-totals");
        ResultTable blocks = plan.table("spray-blocks");
        ResultTable crop = plan.table("crop");
        ResultTable clamps = plan.table("clamps");
        if (machines.rows() > 0) {
            checks.add(new BalanceCheck(
                    "Hours: field by field = machine by machine (h)",
                    List.of(whole(work, FieldRates.FIELD_HOURS)),
                    List.of(whole(machines, WorkTotals.HOURS_OF_MACHINE))));
            checks.add(new BalanceCheck(
                    "Hours: field by field = holding by holding (h)",
                    List.of(whole(work, FieldRates.FIELD_HOURS)),
                    List.of(whole(holdings, WorkTotals.HOURS_OF_HOLDING))));
        }
        if (blocks.rows() > 0) {
            checks.add(new BalanceCheck(
                    "Area sprayed: field by field = block by block (ha)",
                    List.of(new Part(work, Quantities.AREA, Keys.BLOCK_KEY, true)),
                    List.of(whole(blocks, TankPlan.BLOCK_AREA))));
        }
        ResultTable loads = plan.table(TankLoads.LOADS);
        ResultTable fills = plan.table("tank-fills");
        if (loads.rows() > 0) {
            checks.add(new BalanceCheck(
                    "Treated area: tankful by tankful = block by block (ha); run again where it fails",
                    List.of(whole(loads, TankLoads.AREA_IN_TANKFUL)),
                    List.of(above(blocks, TankPlan.TREATED_AREA, TankPlan.LOADS))));
        }
        if (fills.rows() > 0) {
            checks.add(new BalanceCheck(
                    "Product: tankful by tankful = block by block (all units); run again where it fails",
                    List.of(whole(fills, TankLoads.PRODUCT)),
                    List.of(above(plan.table("tank-mix"), TankPlan.PRODUCT_FOR_BLOCK, TankPlan.PRODUCT_EVEN))));
        }
        if (clamps.rows() > 0 && crop.rows() > 0) {
            checks.add(new BalanceCheck(
                    "Crop: field by field = in clamps + allotted to none (t fresh)",
                    List.of(whole(crop, Crop.ENSILED)),
                    List.of(
                            whole(clamps, ClampContents.CROP_IN),
                            new Part(crop, Crop.ENSILED, Keys.CLAMP_KEY, false))));
        }
        ResultTable demand = plan.table("feed-demand");
        if (demand.rows() > 0) {
            checks.add(new BalanceCheck(
                    "Feed demand: group by group = holding by holding (t DM)",
                    List.of(whole(demand, FeedDemand.GROUP_DEMAND)),
                    List.of(whole(plan.table("feed-balance"), FeedBalance.DEMAND_TOTAL))));
        }
        ResultTable costs = plan.table("job-costs");
        ResultTable holdingCosts = plan.table("holding-costs");
        if (costs.rows() > 0 && holdingCosts.spec().column(CostTotals.COST).isPresent()) {
            checks.add(new BalanceCheck(
                    "Cost: field by field = holding by holding (money)",
                    List.of(whole(costs, JobCost.TOTAL)),
                    List.of(whole(holdingCosts, CostTotals.COST))));
        }
        return checks;
    }

    private static Part whole(ResultTable table, Symbol symbol) {
        return new Part(table, symbol, null, true);
    }

    /** The rows that have a value above 0 in another column too: a block whose tank is not known has no tankfuls. */
    private static Part above(ResultTable table, Symbol symbol, Symbol other) {
        return table.spec().column(other).isPresent() ? new Part(table, symbol, other, true) : whole(table, symbol);
    }

    /** The first route's total. */
    public double left() {
        return one.stream().mapToDouble(Part::sum).sum();
    }

    /** The second route's total. */
    public double right() {
        return other.stream().mapToDouble(Part::sum).sum();
    }

    /** Rows withheld on either route. */
    public int withheld() {
        return columns().mapToInt(Part::withheld).sum();
    }

    /** What is added on either route, each column once: its rows are withheld once, in however many parts it stands. */
    private Stream<Part> columns() {
        return Stream.concat(one.stream(), other.stream())
                .map(part -> whole(part.table, part.symbol))
                .distinct();
    }

    /** The first route's total, live. */
    public String leftFormula(SheetPlaces places) {
        return sum(one, places);
    }

    /** The second route's total, live. */
    public String rightFormula(SheetPlaces places) {
        return sum(other, places);
    }

    /** Rows withheld, live. */
    public String withheldFormula(SheetPlaces places) {
        return columns().map(part -> part.withheldFormula(places)).collect(Collectors.joining("+"));
    }

    private static String sum(List<Part> parts, SheetPlaces places) {
        return String.join("+", parts.stream().map(part -> part.formula(places)).toList());
    }

    /** "ok", {@value #NOT_COMPARED}, {@value #INCOMPLETE} or "CHECK". */
    public String verdict() {
        double left = left();
        double right = right();
        if (withheld() > 0 && left == 0 && right == 0) {
            return NOT_COMPARED;
        }
        boolean same = Math.abs(left - right) <= TOLERANCE * Math.max(1, Math.max(Math.abs(left), Math.abs(right)));
        return same ? "ok" : withheld() > 0 ? INCOMPLETE : "CHECK";
    }

    /** The verdict, live, of cells on one row of Checks. */
    public static String verdictFormula(CellAddress left, CellAddress right, CellAddress withheld) {
        String l = CellAddress.letters(left.column()) + (left.row() + 1);
        String r = CellAddress.letters(right.column()) + (right.row() + 1);
        String w = CellAddress.letters(withheld.column()) + (withheld.row() + 1);
        return "IF(AND(" + w + ">0," + l + "=0," + r + "=0),\"" + NOT_COMPARED + "\",IF(ABS(" + l + "-" + r
                + ")<=1E-9*MAX(1,ABS(" + l + "),ABS(" + r + ")),\"ok\",IF(" + w + ">0,\"" + INCOMPLETE
                + "\",\"CHECK\")))";
    }
}
