package org.rickyard.lists;

import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Unit;

/** Holds the numbers of one column against the possible and usual range of their quantity, in the quantity's unit. */
final class RangeCheck {
    private final ColumnSpec column;
    private final CellFindings findings;
    private Unit unit;
    private Symbol symbol;
    private double factor;
    private double shift;

    RangeCheck(ColumnSpec column, CellFindings findings) {
        this.column = column;
        this.findings = findings;
    }

    /** Whether a number can be. One that cannot is a finding at its cell; so is one that is only unusual. */
    boolean isPossible(double value, Unit in, FoundTable table, int sheetRow, int sheetColumn) {
        if (in != unit) {
            enter(in);
        }
        double own = value * factor + shift;
        if (!symbol.possible().contains(own)) {
            findings.bad(
                    table.address(sheetRow, sheetColumn), CellFindings.impossible(column, symbol, value, unit, own));
            return false;
        }
        if (!symbol.usual().contains(own)) {
            findings.unusual(table.address(sheetRow, sheetColumn), symbol, value, unit);
        }
        return true;
    }

    private void enter(Unit in) {
        unit = in;
        symbol = column.symbolFor(in);
        boolean comparable = symbol.unit().isCompatible(in);
        shift = comparable ? in.convert(0, symbol.unit()) : 0;
        factor = comparable ? in.factor().over(symbol.unit().factor()).toDouble() : 1;
    }
}
