package org.rickyard.plan.table;

import java.util.Map;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;

/** Where result tables stand in the workbook: the sheet each was given, and the fixed rows of a result sheet. */
public final class SheetPlaces {
    /** Title and master check. */
    public static final int TITLE_ROW = 0;
    /** First of the rows of cautions. */
    public static final int CAUTION_ROW = 1;
    /** How many rows are kept for cautions. */
    public static final int CAUTION_ROWS = 3;
    /** Totals, under workbook names. */
    public static final int TOTAL_ROW = 4;
    /** How many rows each total leaves out. */
    public static final int LEFT_OUT_ROW = 5;
    /** Column labels. */
    public static final int LABEL_ROW = 6;
    /** Units. */
    public static final int UNIT_ROW = 7;
    /** Formulas in words. */
    public static final int WORDS_ROW = 8;
    /** First row of data. */
    public static final int FIRST_ROW = 9;

    private final Map<String, String> sheets;

    /** Places by table id. */
    public SheetPlaces(Map<String, String> sheets) {
        this.sheets = Map.copyOf(sheets);
    }

    /** The sheet a table is written to. */
    public String sheet(TableSpec spec) {
        return sheets.getOrDefault(spec.id(), spec.sheet());
    }

    /** The cell of a quantity in a row. */
    public CellAddress cell(TableSpec spec, Symbol symbol, int row) {
        return new CellAddress(sheet(spec), FIRST_ROW + row, spec.position(symbol));
    }

    /** All data cells of a column, as a formula names them. */
    public String column(ResultTable table, Symbol symbol) {
        String letters = CellAddress.letters(table.spec().position(symbol));
        int last = FIRST_ROW + Math.max(1, table.rows());
        return CellAddress.quoted(sheet(table.spec())) + "!$" + letters + "$" + (FIRST_ROW + 1) + ":$" + letters + "$"
                + last;
    }
}
