package org.rickyard.trade.cost;

import java.util.List;
import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/**
 * Prices and rates that hold for the whole workbook. They are typed on Assumptions under these names, in one currency;
 * none is built in, and what needs one that is missing is withheld.
 */
public final class Prices {
    private Prices() {}

    /** What an hour of labour costs, on-costs included. */
    public static final Symbol WAGE = Symbol.number("wage", Units.MONEY_UNIT.over(Units.H))
            .possible(Range.NOT_NEGATIVE)
            .decimals(2);
    /** What a litre of fuel costs. */
    public static final Symbol FUEL_PRICE = Symbol.number("fuel price", Units.MONEY_UNIT.over(Units.L))
            .possible(Range.NOT_NEGATIVE)
            .decimals(3);
    /** Interest on the money in a machine, each year. */
    public static final Symbol INTEREST = Symbol.number("interest rate", Units.PERCENT)
            .possible(Range.below(0, 100))
            .usual(Range.of(2, 15))
            .decimals(1);
    /** Insurance and housing each year, as a share of the purchase price. */
    public static final Symbol INSURANCE = Symbol.number("insurance and housing", Units.PERCENT)
            .possible(Range.below(0, 100))
            // Below that it is more likely a fraction.
            .usual(Range.of(0.1, 5))
            .decimals(1);

    /** All of them, in the order they are asked for. */
    public static final List<Symbol> ALL = List.of(WAGE, FUEL_PRICE, INTEREST, INSURANCE);
}
