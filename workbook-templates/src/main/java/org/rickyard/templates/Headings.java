package org.rickyard.templates;

import org.rickyard.formula.Symbol;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.quantity.Dimension.Base;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** The heading of a declared column as a template writes it: its name and the unit it is typed in. */
final class Headings {
    private Headings() {}

    /** "Area (ha)"; the name alone where there is no unit, or where money or the product's own unit is meant. */
    static String of(ColumnSpec column, Symbol symbol) {
        String unit = unit(column, symbol);
        return unit.isEmpty() ? column.name() : column.name() + " (" + unit + ")";
    }

    /** The unit as the heading writes it; empty if it names none. */
    static String unit(ColumnSpec column, Symbol symbol) {
        Unit unit = symbol.unit();
        boolean counted = column.type() == ColumnSpec.Type.NUMBER || column.type() == ColumnSpec.Type.TEXT_OR_NUMBER;
        boolean elsewhere =
                unit.dimension().exponent(Base.MONEY) != 0 || unit.dimension().exponent(Base.PRODUCT) != 0;
        if (!counted || elsewhere) {
            return "";
        }
        return unit.isSameScale(Units.PERCENT_DM) ? "%" : unit.symbol();
    }
}
