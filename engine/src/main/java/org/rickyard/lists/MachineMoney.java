package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.choice;
import static org.rickyard.lists.ColumnSpec.number;

import org.rickyard.trade.Quantities;
import org.rickyard.trade.cost.Prices;

/**
 * The columns of the machine list that say whose it is, what it costs or is charged at, and how long it is kept and used,
 * over which its price is spread.
 */
final class MachineMoney {
    private MachineMoney() {}

    /** Whose machine. */
    static final ColumnSpec OWN_OR_HIRED = choice("Own or hired", Quantities.OWN_OR_HIRED, Choices.OWN_OR_HIRED)
            .also("own hired, own hire, hire or own, ownership, owned or hired, hired or own, "
                    + "own or contractor, own or hire")
            .help("own or hired.");
    /** Charge. */
    static final ColumnSpec CHARGE = number("Charge", Quantities.CHARGE_PER_HOUR)
            .or(Quantities.CHARGE_PER_HECTARE, Quantities.CHARGE_PER_TONNE, Quantities.CHARGE_PER_BALE)
            .also("charge out, charge out rate, contractor charge, contract charge, hire charge, "
                    + "contract price, contract rate, "
                    + "hire rate, contractor rate, hire price, contractor price, custom rate, "
                    + "custom charge, custom hire rate, "
                    + "custom hire charge, custom price")
            .help("Contractor's or hire charge; say per what in Charge unit.");
    /** What the charge is counted by. */
    static final ColumnSpec CHARGE_UNIT = choice("Charge unit", Quantities.CHARGE_UNIT, Choices.CHARGE_UNIT)
            .also("per, charge per, charged by, charge basis, unit of charge, charged per")
            .help("h, ha, t or bale.");
    /** What the charge includes. */
    static final ColumnSpec CHARGE_INCLUDES = choice(
                    "Charge includes", Quantities.CHARGE_INCLUDES, Choices.CHARGE_INCLUDES)
            .also("includes, included in charge, charge covers")
            .help("everything, all but fuel, or machine only.");
    /** List price. */
    static final ColumnSpec LIST_PRICE = number("List price", Quantities.LIST_PRICE)
            .also("manufacturer's list price, maker's list price, price of new machine, "
                    + "new machine price, price of a new machine, "
                    + "new price, retail price, price new, replacement price, list, "
                    + "current list price, new list price")
            .help("New, from the maker's list.");
    /** Purchase price. */
    static final ColumnSpec PURCHASE_PRICE = number("Purchase price", Quantities.PURCHASE_PRICE)
            .also("initial investment, purchase value, acquisition cost, acquisition price, original purchase price, "
                    + "price paid, bought for, purchase cost, capital cost, buying price, "
                    + "initial cost, original cost, first cost, initial price, original price")
            .help("What was paid.");
    /** Trade-in value. */
    static final ColumnSpec TRADE_IN_VALUE = number("Trade-in value", Quantities.TRADE_IN_VALUE)
            .also("salvage price, estimated salvage value, estimated trade in value, estimated resale value, "
                    + "trade in, salvage value, salvage, residual value, resale value, remaining value, "
                    + "sale value, terminal value, "
                    + "end value, value at end")
            .help("At the end of its life.");
    /** Age. */
    static final ColumnSpec AGE =
            number("Age", Quantities.AGE).also("age now, years old").help("Now.");
    /** Hours so far. */
    static final ColumnSpec HOURS_NOW = number("Hours now", Quantities.HOURS_NOW)
            .also("accumulated hours of use, "
                    + "hours run, hours done, meter reading, current hours, "
                    + "hour meter, clock hours, hours on clock, present hours, hours worked, "
                    + "hours to date, accumulated hours")
            .help("On the clock.");
    /** Life. */
    static final ColumnSpec LIFE = number("Life", Quantities.LIFE)
            .also("length of ownership, years to be kept, length of life, "
                    + "years kept, ownership period, life years, service life, economic life, "
                    + "working life, ownership life, "
                    + "useful life, years to keep, depreciation years, depreciation period, "
                    + "years of life, years owned, years of ownership, lifetime, expected life, "
                    + "machine life")
            .help("Years it is kept.");
    /** Hours per year. */
    static final ColumnSpec HOURS_PER_YEAR = number("Hours per year", Quantities.HOURS_PER_YEAR)
            .also("annual hours, hours/year, h/yr, hours a year, hrs per year, yearly hours, hrs/yr, "
                    + "hours per annum, hours pa, hours p a, hours of use per year, hours of use a year, "
                    + "annual hours of use, hours of annual use, hours used per year, hours used annually, "
                    + "annual operating hours, operating hours per year, annual hours used, h/year")
            .help("Worked in a year.");
    /** Interest on what is in it. */
    static final ColumnSpec INTEREST = number("Interest rate", Prices.INTEREST)
            .also("rate of interest, annual interest rate, annual rate of interest, "
                    + "interest percent, percent interest")
            .help("A year, on the money in it; where its own is typed, it stands before that of Assumptions.");
    /** Insurance and housing. */
    static final ColumnSpec INSURANCE = number("Insurance and housing", Prices.INSURANCE)
            .also(
                    "insurance housing, ins and housing, ins housing, housing and insurance, housing insurance, insurance and shelter, "
                            + "insurance shelter, insurance and housing rate, taxes insurance and housing, "
                            + "taxes insurance housing, tax insurance and housing, TIH")
            .help("A year, of the purchase price; where its own is typed, it stands before that of Assumptions.");
}
