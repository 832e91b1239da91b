package org.rickyard.plan.silage;

import java.util.List;
import org.rickyard.formula.Numbers;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.ClampSides;

/**
 * Slips in the clamp and crop lists that no single cell betrays: two figures that cannot both be true. Each is told at
 * the cell, with what was typed, what would fit, and what to do.
 */
final class ClampSlips {
    private final List<Finding> findings;

    private ClampSlips(List<Finding> findings) {
        this.findings = findings;
    }

    /** Tells the slips of the tables of crop and clamps, once both are made. */
    static void tell(PlanContext plan) {
        ClampSlips slips = new ClampSlips(plan.findings());
        ListRows clamps = plan.rows(Clamps.LIST);
        ResultTable table = plan.table("clamps");
        for (int clamp = 0; clamp < clamps.size(); clamp++) {
            slips.heights(clamps, clamp);
            slips.ramps(clamps, table, clamp);
        }
        slips.wilting(plan.rows(Fields.LIST), Fields.DM_AT_CUTTING, Fields.DM_AT_ENSILING);
        slips.wilting(plan.rows(Cuts.LIST), Cuts.DM_AT_CUTTING, Cuts.DM_AT_ENSILING);
        slips.basis(plan.table("crop"));
    }

    private void heights(ListRows clamps, int clamp) {
        if (given(clamps, Clamps.SETTLED_HEIGHT, clamp)
                && given(clamps, Clamps.FILLED_HEIGHT, clamp)
                && inOwnUnit(clamps, Clamps.SETTLED_HEIGHT, clamp) > inOwnUnit(clamps, Clamps.FILLED_HEIGHT, clamp)) {
            stop(
                    clamps,
                    Clamps.SETTLED_HEIGHT,
                    clamp,
                    "the settled height typed, " + typed(clamps, Clamps.SETTLED_HEIGHT, clamp)
                            + ", is above the filled height typed, " + typed(clamps, Clamps.FILLED_HEIGHT, clamp)
                            + ": silage only sinks, by 1 to 2 m. Expected a settled height below the filled one;"
                            + " correct either.");
        }
    }

    private void ramps(ListRows clamps, ResultTable table, int clamp) {
        Values ramp = table.of(ClampShape.RAMP_LENGTH);
        Values ramps = table.of(ClampSides.RAMPS_USED);
        Values length = table.of(Quantities.CLAMP_LENGTH);
        boolean walled = table.of(Quantities.CLAMP_KIND).word(clamp).equals(ClampShape.WALLED);
        if (!walled || !ramp.has(clamp) || !ramps.has(clamp) || !length.has(clamp)) {
            return;
        }
        double room = length.number(clamp);
        double one = ramp.number(clamp);
        double all = ramps.number(clamp) * one;
        if (ramps.number(clamp) < 1 || all <= room) {
            return;
        }
        String what = one > room ? "a ramp" : "two ramps that overlap: together";
        stop(
                clamps,
                Clamps.RAMP_RUN,
                clamp,
                "a ramp run of " + typed(clamps, Clamps.RAMP_RUN, clamp) + " at a silage height of "
                        + figure(table, ClampSides.HEIGHT, clamp) + " makes " + what + " "
                        + Numbers.readable(one > room ? one : all) + " m long, longer than the clamp's "
                        + Numbers.readable(room)
                        + " m. Expected ramps within the length of the floor; correct Ramp run,"
                        + " Ramps or Length.");
    }

    /** Crop gets drier from cutting to ensiling, never wetter. */
    private void wilting(ListRows list, ColumnSpec cutting, ColumnSpec ensiling) {
        for (int row = 0; row < list.size(); row++) {
            if (given(list, cutting, row)
                    && given(list, ensiling, row)
                    && inOwnUnit(list, ensiling, row) < inOwnUnit(list, cutting, row)) {
                stop(
                        list,
                        ensiling,
                        row,
                        "dry matter at ensiling, " + typed(list, ensiling, row) + ", is below dry matter at cutting, "
                                + typed(list, cutting, row) + ": crop dries as it lies. Expected at least as much;"
                                + " correct either, or see whether the two were swapped.");
            }
        }
    }

    private void basis(ResultTable crop) {
        Values basis = crop.of(Quantities.YIELD_BASIS);
        LinkCells yields = crop.links(Quantities.YIELD);
        for (int row = 0; row < crop.rows(); row++) {
            if (basis.word(row).isEmpty() && crop.of(Quantities.YIELD).has(row)) {
                findings.add(Finding.stop(
                        yields.address(row).orElse(null),
                        "a yield of " + Numbers.readable(yields.typedNumber(row))
                                + yields.unit(row).map(unit -> " " + unit).orElse("")
                                + " stands without its basis. Expected standing fresh, as carted fresh or dry matter;"
                                + " write it in Yield basis. Tonnes are withheld till then."));
            }
        }
    }

    private void stop(ListRows list, ColumnSpec column, int row, String message) {
        findings.add(Finding.stop(list.address(column, row).orElse(null), message));
    }

    private static boolean given(ListRows list, ColumnSpec column, int row) {
        ListRows.State state = list.state(column, row);
        return state == ListRows.State.GIVEN || state == ListRows.State.READ_FROM_TEXT;
    }

    private static double inOwnUnit(ListRows list, ColumnSpec column, int row) {
        double number = list.number(column, row);
        return list.unit(column, row)
                .map(unit -> unit.convert(number, column.symbol().unit()))
                .orElse(number);
    }

    private static String typed(ListRows list, ColumnSpec column, int row) {
        return Numbers.readable(list.number(column, row))
                + list.unit(column, row)
                        .map(unit -> unit.symbol().isEmpty() ? "" : " " + unit)
                        .orElse("");
    }

    private static String figure(ResultTable table, Symbol symbol, int row) {
        return Numbers.readable(table.of(symbol).number(row)) + " " + symbol.unit();
    }
}
