package org.rickyard.lists.read;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.Grid;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Unit;

/**
 * Columns that say one thing in several units, as lists do that keep acres beside hectares. Of each row the one that is
 * filled is read; where several are, they must agree.
 */
final class OtherUnitBeside {
    /** 2.5 acres are called a hectare, and are 1.2 % more: common practice. */
    private static final double ROUGHLY = 0.015;

    private OtherUnitBeside() {}

    /** Whether each of these columns has a unit of its own that its header says; else they could be two things. */
    static boolean areIn(List<Binding> columns) {
        List<Unit> units = new ArrayList<>();
        for (Binding column : columns) {
            Unit unit = column.unit().unit();
            if (unit == null || column.asked() || column.unit().assumed()) {
                return false;
            }
            for (Unit other : units) {
                if (!other.isCompatible(unit) || other.isSameScale(unit)) {
                    return false;
                }
            }
            units.add(unit);
        }
        return true;
    }

    /**
     * Whether two cells of a row are numbers that agree as well as they are written. A formula without a stored value
     * contradicts nothing: it is said by itself where it is the one that is read.
     */
    static boolean agree(Grid grid, int row, Binding first, Binding other) {
        if (grid.kind(row, first.sheetColumn()) == Grid.Kind.UNCOMPUTED
                || grid.kind(row, other.sheetColumn()) == Grid.Kind.UNCOMPUTED) {
            return true;
        }
        Unit unit = first.unit().unit();
        Unit otherUnit = other.unit().unit();
        if (unit == null
                || otherUnit == null
                || !unit.isCompatible(otherUnit)
                || grid.kind(row, first.sheetColumn()) != Grid.Kind.NUMBER
                || grid.kind(row, other.sheetColumn()) != Grid.Kind.NUMBER) {
            return false;
        }
        double here = grid.number(row, first.sheetColumn());
        double there = grid.number(row, other.sheetColumn());
        double same = otherUnit.convert(there, unit);
        double rounded =
                halfOfLastDigit(here) + Math.abs(otherUnit.convert(there + halfOfLastDigit(there), unit) - same);
        return Math.abs(here - same) <= Math.max(rounded * (1 + 1e-9), ROUGHLY * Math.abs(here));
    }

    /** What a cell says: its number with the unit of its header, or its words. */
    static String said(Grid grid, int row, Binding column) {
        Unit unit = column.unit().unit();
        String text = grid.words(row, column.sheetColumn());
        return unit == null || grid.kind(row, column.sheetColumn()) != Grid.Kind.NUMBER
                ? Words.quoted(text)
                : text + " " + unit;
    }

    /** By how much a number may have been rounded when it was typed. */
    private static double halfOfLastDigit(double value) {
        int decimals =
                new BigDecimal(Double.toString(value)).stripTrailingZeros().scale();
        return 0.5 * Math.pow(10, -Math.max(0, decimals));
    }
}
