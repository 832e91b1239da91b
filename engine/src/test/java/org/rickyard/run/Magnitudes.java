package org.rickyard.run;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;

/**
 * The largest of the numbers that a cell of a result table is worked out from: where large numbers cancel, two programs
 * may differ by a share of them. 0 for a cell that is no formula of a result table, such as a copy on another sheet.
 */
final class Magnitudes {
    private final WorkPlan plan;
    private final SheetPlaces places;
    private final Map<CellAddress, Object> values;
    private final Map<String, ResultTable> bySheet = new HashMap<>();

    /** Of a plan, as a grid shows its cells. */
    Magnitudes(WorkPlan plan, SheetPlaces places, Map<CellAddress, Object> values) {
        this.plan = plan;
        this.places = places;
        this.values = values;
        plan.tables().forEach(table -> bySheet.put(places.sheet(table.spec()), table));
    }

    /** Whether the cell stands in a row of a result table. */
    boolean isOfATable(CellAddress cell) {
        ResultTable table = bySheet.get(cell.sheet());
        int row = cell.row() - SheetPlaces.FIRST_ROW;
        return table != null && row >= 0 && row < table.rows();
    }

    double of(CellAddress cell) {
        if (!isOfATable(cell)) {
            return 0;
        }
        ResultTable table = bySheet.get(cell.sheet());
        int row = cell.row() - SheetPlaces.FIRST_ROW;
        TableColumn column = table.spec().columns().get(cell.column());
        Expr expr = column instanceof TableColumn.Calculated calculated
                ? calculated.formula().expr()
                : column instanceof TableColumn.Joined joined ? joined.expr() : null;
        return expr == null ? 0 : Math.max(ofRow(table, Inputs.of(expr), row), ofOthers(table, expr, row));
    }

    private double ofRow(ResultTable table, Set<Symbol> symbols, int row) {
        double largest = 0;
        for (Symbol symbol : symbols) {
            largest = Math.max(largest, magnitude(table, symbol, row));
        }
        return largest;
    }

    /** What a total adds up; what is joined from one row is a copy. */
    private double ofOthers(ResultTable table, Expr expr, int row) {
        if (expr instanceof Expr.Total e) {
            return ofKey(e.table(), e.summed(), e.keyThere(), table.of(e.keyHere()), row);
        } else if (expr instanceof Expr.Before e) {
            return ofKey(e.table(), e.summed(), e.key(), table.of(e.key()), row);
        }
        return 0;
    }

    private double ofKey(String other, Symbol summed, Symbol keyThere, Values keysHere, int row) {
        ResultTable table = plan.table(other);
        double largest = 0;
        for (int there = 0; there < table.rows(); there++) {
            if (table.of(keyThere).number(there) == keysHere.number(row)) {
                largest = Math.max(largest, magnitude(table, summed, there));
            }
        }
        return largest;
    }

    private double magnitude(ResultTable table, Symbol symbol, int row) {
        return values.get(places.cell(table.spec(), symbol, row)) instanceof Double number ? Math.abs(number) : 0;
    }
}
