package org.rickyard.workbook.write;

import org.rickyard.audit.BasisPlaces;
import org.rickyard.formula.CellNames;
import org.rickyard.formula.CellPrinter;
import org.rickyard.formula.Constant;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;

/** Names cells for the formulas of one result table: this row's cells relative, everything else absolute. */
final class GridNames implements CellNames {
    private final ResultTable table;
    private final SheetPlaces places;
    private final BasisPlaces basis;

    GridNames(ResultTable table, SheetPlaces places, BasisPlaces basis) {
        this.table = table;
        this.places = places;
        this.basis = basis;
    }

    @Override
    public String cell(Symbol symbol) {
        return CellAddress.letters(table.spec().position(symbol)) + CellPrinter.ROW;
    }

    @Override
    public String label(Symbol symbol) {
        return CellAddress.letters(table.spec().position(symbol)) + "$" + (SheetPlaces.LABEL_ROW + 1);
    }

    @Override
    public String constant(Constant constant) {
        return basis.constant(constant).absolute();
    }

    @Override
    public String keys(ReferenceTable reference) {
        return basis.keys(reference);
    }

    @Override
    public String values(ReferenceTable reference) {
        return basis.values(reference);
    }

    @Override
    public String column(String other, Symbol symbol) {
        return places.column(table.other(other), symbol);
    }

    @Override
    public boolean isKey(String other, Symbol symbol) {
        return table.other(other).spec().column(symbol).orElse(null) instanceof TableColumn.Key;
    }
}
