package org.rickyard.audit;

import java.util.LinkedHashSet;
import java.util.Set;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.table.ResultTable;

/** What one row of a formula used: of each choice the branch it took, of a default only what stood in. */
final class RowInputs {
    private final ResultTable table;
    private final int row;
    private final Set<Symbol> symbols = new LinkedHashSet<>();
    private final Set<Constant> constants = new LinkedHashSet<>();
    private final Set<Expr.Total> totals = new LinkedHashSet<>();
    private final Set<Expr.Count> counts = new LinkedHashSet<>();
    private final Set<Expr.From> joins = new LinkedHashSet<>();
    private final Set<ReferenceTable> tables = new LinkedHashSet<>();

    RowInputs(ResultTable table, int row, Expr expr) {
        this.table = table;
        this.row = row;
        read(expr);
    }

    Set<Symbol> symbols() {
        return symbols;
    }

    Set<Constant> constants() {
        return constants;
    }

    /** The totals whose rows it added up. */
    Set<Expr.Total> totals() {
        return totals;
    }

    /** The counts of rows it took. */
    Set<Expr.Count> counts() {
        return counts;
    }

    /** The values it took from rows of other tables. */
    Set<Expr.From> joins() {
        return joins;
    }

    /** The reference tables it read. */
    Set<ReferenceTable> tables() {
        return tables;
    }

    private void read(Expr expr) {
        if (expr instanceof Expr.Choice e) {
            add(Inputs.in(e.when()));
            Boolean taken = table.truth(e.when()).at(row);
            if (taken != null) {
                read(taken ? e.then() : e.otherwise());
            }
        } else if (expr instanceof Expr.GivenElse e) {
            symbols.add(e.given());
            if (!table.of(e.given()).has(row)) {
                read(e.otherwise());
            }
        } else if (expr instanceof Expr.Total e) {
            totals.add(e);
        } else {
            add(Inputs.in(expr));
            if (expr instanceof Expr.From e) {
                joins.add(e);
            } else if (expr instanceof Expr.Count e) {
                counts.add(e);
            }
        }
    }

    private void add(Inputs inputs) {
        symbols.addAll(inputs.symbols());
        constants.addAll(inputs.constants());
        tables.addAll(inputs.tables());
    }
}
