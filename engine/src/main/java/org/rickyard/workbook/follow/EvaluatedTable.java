package org.rickyard.workbook.follow;

import org.apache.poi.ss.usermodel.Table;
import org.apache.poi.ss.usermodel.TableStyleInfo;
import org.apache.poi.ss.util.CellReference;
import org.rickyard.lists.Grid.TableRange;
import org.rickyard.workbook.read.TableParts;

/** A table of the client's, as POI's evaluator asks for it. */
record EvaluatedTable(TableParts.Table table) implements Table {
    private TableRange range() {
        return table.range();
    }

    @Override
    public int getStartColIndex() {
        return range().firstColumn();
    }

    @Override
    public int getStartRowIndex() {
        return range().firstRow();
    }

    @Override
    public int getEndColIndex() {
        return range().lastColumn();
    }

    @Override
    public int getEndRowIndex() {
        return range().lastRow();
    }

    @Override
    public String getName() {
        return range().name();
    }

    @Override
    public String getStyleName() {
        return "";
    }

    @Override
    public int findColumnIndex(String column) {
        for (int i = 0; i < table.columns().size(); i++) {
            if (table.columns().get(i).equalsIgnoreCase(column)) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public String getSheetName() {
        return table.sheet();
    }

    @Override
    public boolean isHasTotalsRow() {
        return range().totalsRows() > 0;
    }

    @Override
    public int getTotalsRowCount() {
        return range().totalsRows();
    }

    @Override
    public int getHeaderRowCount() {
        return range().headerRows();
    }

    @Override
    public TableStyleInfo getStyle() {
        return null;
    }

    @Override
    public boolean contains(CellReference cell) {
        return cell.getRow() >= range().firstRow()
                && cell.getRow() <= range().lastRow()
                && cell.getCol() >= range().firstColumn()
                && cell.getCol() <= range().lastColumn();
    }
}
