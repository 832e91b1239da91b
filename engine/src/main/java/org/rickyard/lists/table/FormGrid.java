package org.rickyard.lists.table;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid;

/**
 * The cells of a form, turned: its labels stand beside one another in the first row here, and what is told of each thing
 * in a row below. Every cell keeps the address that it has on its sheet.
 */
final class FormGrid implements Grid {
    /**
     * Some lines of a form.
     *
     * @param rows of the sheet, downwards
     * @param columns of the sheet: the labels, then the units where they have a column, then one for each thing
     */
    record Lines(int[] rows, int[] columns) {}

    private final Grid sheet;
    private final int[] rows;
    private final int[][] columns;
    private final int things;
    private final boolean withUnits;

    /**
     * Lines one after another; all have as many columns.
     *
     * @param withUnits whether the column behind the labels is that of their units
     */
    FormGrid(Grid sheet, List<Lines> lines, boolean withUnits) {
        this.withUnits = withUnits;
        this.sheet = sheet;
        this.rows =
                lines.stream().flatMapToInt(some -> IntStream.of(some.rows())).toArray();
        this.columns = lines.stream()
                .flatMap(some -> IntStream.of(some.rows()).mapToObj(row -> some.columns()))
                .toArray(int[][]::new);
        this.things = columns[0].length;
    }

    /** Whether any of its cells stands in a row of the sheet. */
    boolean isFrom(int sheetRow) {
        return IntStream.of(rows).anyMatch(row -> row == sheetRow);
    }

    private boolean isWithin(int row, int column) {
        return row >= 0 && row < things && column >= 0 && column < rows.length;
    }

    @Override
    public CellAddress address(int row, int column) {
        return sheet.address(rows[column], columns[column][row]);
    }

    @Override
    public boolean saysUnits(int row) {
        return withUnits && row == 1;
    }

    @Override
    public Grid onSheet() {
        return sheet;
    }

    @Override
    public String sheet() {
        return sheet.sheet();
    }

    @Override
    public LocalDate dayZero() {
        return sheet.dayZero();
    }

    @Override
    public int rows() {
        return things;
    }

    @Override
    public int columns() {
        return rows.length;
    }

    @Override
    public Kind kind(int row, int column) {
        return isWithin(row, column) ? sheet.kind(rows[column], columns[column][row]) : Kind.BLANK;
    }

    @Override
    public double number(int row, int column) {
        return isWithin(row, column) ? sheet.number(rows[column], columns[column][row]) : 0;
    }

    @Override
    public String text(int row, int column) {
        return isWithin(row, column) ? sheet.text(rows[column], columns[column][row]) : "";
    }

    @Override
    public Format format(int row, int column) {
        return isWithin(row, column) ? sheet.format(rows[column], columns[column][row]) : Format.GENERAL;
    }

    @Override
    public String shownUnit(int row, int column) {
        return isWithin(row, column) ? sheet.shownUnit(rows[column], columns[column][row]) : "";
    }

    @Override
    public boolean showsUnits(int column) {
        return IntStream.range(0, things)
                .anyMatch(row -> !shownUnit(row, column).isEmpty());
    }

    @Override
    public boolean isFormula(int row, int column) {
        return isWithin(row, column) && sheet.isFormula(rows[column], columns[column][row]);
    }

    @Override
    public List<TableRange> tables() {
        return List.of();
    }

    @Override
    public boolean hidden() {
        return sheet.hidden();
    }

    @Override
    public boolean isHidden(int row) {
        return IntStream.range(0, rows.length).allMatch(column -> sheet.isHiddenColumn(columns[column][row]));
    }

    @Override
    public boolean isHiddenColumn(int column) {
        return sheet.isHidden(rows[column]);
    }
}
