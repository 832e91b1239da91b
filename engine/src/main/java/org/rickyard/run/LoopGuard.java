package org.rickyard.run;

import java.time.LocalDate;
import java.util.List;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid;
import org.rickyard.workbook.follow.Dependents;

/** A sheet in which cells that depend on our own results are no inputs: linking them would go round in a circle. */
record LoopGuard(Grid cells, Dependents dependents) implements Grid {
    private boolean loops(int row, int column) {
        return cells.isFormula(row, column) && dependents.contains(new CellAddress(cells.sheet(), row, column));
    }

    @Override
    public String sheet() {
        return cells.sheet();
    }

    @Override
    public LocalDate dayZero() {
        return cells.dayZero();
    }

    @Override
    public int rows() {
        return cells.rows();
    }

    @Override
    public int columns() {
        return cells.columns();
    }

    @Override
    public Kind kind(int row, int column) {
        return loops(row, column) ? Kind.ERROR : cells.kind(row, column);
    }

    @Override
    public double number(int row, int column) {
        return loops(row, column) ? 0 : cells.number(row, column);
    }

    @Override
    public String text(int row, int column) {
        return loops(row, column) ? LOOP : cells.text(row, column);
    }

    @Override
    public int topOf(int row, int column) {
        return cells.topOf(row, column);
    }

    @Override
    public Format format(int row, int column) {
        return cells.format(row, column);
    }

    @Override
    public String shownUnit(int row, int column) {
        return cells.shownUnit(row, column);
    }

    @Override
    public boolean showsUnits(int column) {
        return cells.showsUnits(column);
    }

    @Override
    public boolean isFormula(int row, int column) {
        return cells.isFormula(row, column);
    }

    @Override
    public List<TableRange> tables() {
        return cells.tables();
    }

    @Override
    public boolean hidden() {
        return cells.hidden();
    }

    @Override
    public boolean isHidden(int row) {
        return cells.isHidden(row);
    }

    @Override
    public boolean isHiddenColumn(int column) {
        return cells.isHiddenColumn(column);
    }
}
