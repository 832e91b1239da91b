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
    private final int lines;
    private final boolean withUnits;
    /** What the first label says in the place of what stands there; null if it is one like others. */
    private final String nameLabel;

    /**
     * Lines one after another; all have as many columns.
     *
     * @param withUnits whether the column behind the labels is that of their units
     */
    FormGrid(Grid sheet, List<Lines> lines, boolean withUnits) {
        this.withUnits = withUnits;
        this.nameLabel = null;
        this.sheet = sheet;
        this.rows =
                lines.stream().flatMapToInt(some -> IntStream.of(some.rows())).toArray();
        this.columns = lines.stream()
                .flatMap(some -> IntStream.of(some.rows()).mapToObj(row -> some.columns()))
                .toArray(int[][]::new);
        this.lines = columns[0].length;
    }

    private FormGrid(FormGrid form, String nameLabel, int row, int[] across) {
        this.sheet = form.sheet;
        this.withUnits = form.withUnits;
        this.lines = form.lines;
        this.nameLabel = nameLabel;
        this.rows = IntStream.concat(IntStream.of(row), IntStream.of(form.rows)).toArray();
        this.columns = new int[form.columns.length + 1][];
        this.columns[0] = across;
        System.arraycopy(form.columns, 0, this.columns, 1, form.columns.length);
    }

    /**
     * The same with what its things are called, which no label says.
     *
     * @param label what it would say
     * @param row of the sheet in which the names stand
     * @param across where there: of the label, of its unit if there are any, of each name
     */
    FormGrid named(String label, int row, int[] across) {
        return new FormGrid(this, label, row, across);
    }

    /** How many things it tells of. */
    int things() {
        return lines - (withUnits ? 2 : 1);
    }

    /** Whether a column is that of its names, which stand above it. */
    boolean isOfNamesAbove(int column) {
        return nameLabel != null && column == 0;
    }

    private boolean isNameLabel(int row, int column) {
        return row == 0 && isOfNamesAbove(column);
    }

    /** Whether any of its cells stands in a row of the sheet. */
    boolean isFrom(int sheetRow) {
        return IntStream.of(rows).anyMatch(row -> row == sheetRow);
    }

    private boolean isWithin(int row, int column) {
        return row >= 0 && row < lines && column >= 0 && column < rows.length;
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
        return lines;
    }

    @Override
    public int columns() {
        return rows.length;
    }

    @Override
    public Kind kind(int row, int column) {
        if (isNameLabel(row, column)) {
            return Kind.TEXT;
        }
        return isWithin(row, column) ? sheet.kind(rows[column], columns[column][row]) : Kind.BLANK;
    }

    @Override
    public double number(int row, int column) {
        return isWithin(row, column) ? sheet.number(rows[column], columns[column][row]) : 0;
    }

    @Override
    public String text(int row, int column) {
        if (isNameLabel(row, column)) {
            return nameLabel;
        }
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
        return IntStream.range(0, lines).anyMatch(row -> !shownUnit(row, column).isEmpty());
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
