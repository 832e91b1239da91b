package org.rickyard.plan.fit;

import org.rickyard.formula.Scaling;
import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Unit;

/**
 * The client's own unit for a number of ours.
 *
 * @param unit as it is shown
 * @param scaling the steps from our unit to it
 * @param decimals how many a reader is shown, so that no less is told than in our unit; of tons, no finer than to the
 *     thousandth, which is a kilogram or two pounds
 */
public record OwnUnit(Unit unit, Scaling scaling, int decimals) {
    private static final int ENOUGH = 3;

    /** A client's unit beside a quantity's. */
    static OwnUnit of(Symbol symbol, Unit unit) {
        double ours = symbol.unit().ratioTo(unit).toDouble();
        int more = (int) Math.round(Math.log10(1 / ours));
        int noLess = symbol.decimals() + Math.max(0, more);
        int decimals = Math.max(symbol.decimals(), Math.min(noLess, ENOUGH));
        return new OwnUnit(unit, Scaling.of(symbol.unit().ratioTo(unit)), decimals);
    }
}
