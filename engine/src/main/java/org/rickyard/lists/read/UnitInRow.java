package org.rickyard.lists.read;

import org.rickyard.quantity.Unit;

/**
 * The unit of a cell of a column whose unit differs from row to row.
 *
 * @param unit null if none is known
 * @param productUnit "L", "kg" or "tablet"; null if the column is not about products or it is not known
 * @param question what must be asked before the number can be used; null if nothing
 * @param assumed what was taken for granted, in words; null if nothing
 */
record UnitInRow(Unit unit, String productUnit, String question, String assumed) {
    static UnitInRow of(Unit unit) {
        return new UnitInRow(unit, null, null, null);
    }

    static UnitInRow asked(String question) {
        return new UnitInRow(null, null, question, null);
    }
}
