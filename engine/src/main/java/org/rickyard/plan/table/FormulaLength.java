package org.rickyard.plan.table;

import org.rickyard.formula.CellNames;
import org.rickyard.formula.CellPrinter;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Symbol;

/** How long a formula will be in its cell, as near as can be told before it is known where anything stands. */
final class FormulaLength {
    /** A cell holds 8,192 characters; rows beyond the ten-thousandth have longer names. */
    static final int MOST = 7500;

    private static final CellPrinter PRINTER = new CellPrinter(new CellNames() {
        @Override
        public String cell(Symbol symbol) {
            return "AB1234";
        }

        @Override
        public String label(Symbol symbol) {
            return "AB$7";
        }

        @Override
        public String constant(Constant constant) {
            return "Basis!$B$123";
        }

        @Override
        public String keys(ReferenceTable table) {
            return "Basis!$A$123:$A$145";
        }

        @Override
        public String values(ReferenceTable table) {
            return "Basis!$B$123:$B$145";
        }

        @Override
        public String column(String table, Symbol symbol) {
            return "'Name of a sheet'!$AB$10:$AB$12345";
        }
    });

    private FormulaLength() {}

    static int of(Expr expr) {
        return PRINTER.guarded(expr).length();
    }
}
