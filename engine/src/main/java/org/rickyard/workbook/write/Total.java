package org.rickyard.workbook.write;

import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableSpec;

/**
 * A column's sum in row order, as the grid adds, and how many rows had nothing to add.
 *
 * @param given false where no row had anything to add: the sum is then withheld, for 0 would be read as an answer
 */
record Total(double sum, boolean given, int leftOut) {
    /** What is missing from totals that are added up is missing from their sum. */
    static Total of(ResultTable table, TableSpec.TotalName total) {
        Total own = of(table, total.symbol());
        return total.leftOut() == null
                ? own
                : new Total(
                        own.sum(), own.given(), (int) of(table, total.leftOut()).sum());
    }

    static Total of(ResultTable table, Symbol symbol) {
        Values values = table.of(symbol);
        double sum = 0;
        int leftOut = 0;
        for (int row = 0; row < table.rows(); row++) {
            if (values.has(row)) {
                sum += values.words() ? 0 : values.number(row);
            } else {
                leftOut++;
            }
        }
        return new Total(sum, leftOut < table.rows(), leftOut);
    }
}
