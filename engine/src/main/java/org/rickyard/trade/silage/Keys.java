package org.rickyard.trade.silage;

import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Units;

/** The number by which fields are joined to their clamp in the grid. */
public final class Keys {
    private Keys() {}

    /** A clamp's number in list order; 0 on a field that names none. */
    public static final Symbol CLAMP_KEY = Symbol.number("clamp key", Units.ONE).decimals(0);
}
