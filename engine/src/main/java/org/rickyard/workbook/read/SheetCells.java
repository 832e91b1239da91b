package org.rickyard.workbook.read;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid;
import org.rickyard.workbook.notation.CellReference;

/**
 * The cells of one sheet, held by column: a byte of kind, format and formula mark for each cell, 8 bytes for a number,
 * a reference for a text. A million rows of thirteen numbers take about 120 MB. Columns are held in pages of rows, so
 * that few cells far apart take little room.
 */
public final class SheetCells implements Grid, CellSink {
    private static final Kind[] KINDS = Kind.values();
    private static final Format[] FORMATS = Format.values();
    private static final int FORMAT_SHIFT = 3;
    private static final int KIND_MASK = (1 << FORMAT_SHIFT) - 1;
    private static final int FORMULA = 1 << 6;
    private static final int PAGE_SHIFT = 10;
    private static final int PAGE_ROWS = 1 << PAGE_SHIFT;

    private final String sheet;
    private final boolean hidden;
    private final Epoch epoch;
    private final List<TableRange> tables;
    private final ShownUnits shownUnits = new ShownUnits();
    private final BitSet hiddenRows = new BitSet();
    private final BitSet hiddenColumns = new BitSet();
    /** By column, the first row of each merged cell of several rows, and its last. */
    private final Map<Integer, TreeMap<Integer, Integer>> merged = new HashMap<>();

    private Column[] columns = new Column[16];
    private int rowCount;
    private int columnCount;
    private int uncomputed;
    private int formulas;
    private int noughts;

    /** An empty sheet, to be filled as a sink. */
    public SheetCells(String sheet, boolean hidden, List<TableRange> tables, Epoch epoch) {
        this.sheet = sheet;
        this.epoch = epoch;
        this.hidden = hidden;
        this.tables = List.copyOf(tables);
    }

    @Override
    public LocalDate dayZero() {
        return epoch.dayZero();
    }

    @Override
    public boolean wantsFormulaText() {
        return false;
    }

    @Override
    public void cell(int row, int column, Kind kind, double number, String text, Format format, String formula) {
        if (!CellReference.onGrid(row, column) || kind == Kind.BLANK) {
            return;
        }
        if (column >= columns.length) {
            columns = Arrays.copyOf(columns, Math.max(column + 1, 2 * columns.length));
        }
        if (columns[column] == null) {
            columns[column] = new Column();
        }
        int mark = kind.ordinal() | format.ordinal() << FORMAT_SHIFT | (formula == null ? 0 : FORMULA);
        columns[column].put(row, (byte) mark, kind == Kind.NUMBER ? number : 0, text);
        uncomputed += kind == Kind.UNCOMPUTED ? 1 : 0;
        formulas += formula == null ? 0 : 1;
        noughts += formula != null && kind == Kind.NUMBER && number == 0 ? 1 : 0;
        rowCount = Math.max(rowCount, row + 1);
        columnCount = Math.max(columnCount, column + 1);
    }

    /** How many formulas there are for which the file stores no value. */
    public int uncomputed() {
        return uncomputed;
    }

    /** How many formulas there were as the sheet was read. */
    public int formulas() {
        return formulas;
    }

    /** How many of them the file says to come to 0. */
    public int noughts() {
        return noughts;
    }

    /** Takes what a formula without stored value comes to. */
    public void comesTo(int row, int column, Kind kind, double number, String text) {
        put(row, column, kind, number, text);
        uncomputed--;
    }

    /** Forgets what the file says that a formula comes to. */
    public void isUncomputed(int row, int column) {
        put(row, column, Kind.UNCOMPUTED, 0, "");
        uncomputed++;
    }

    private void put(int row, int column, Kind kind, double number, String text) {
        int mark = kind.ordinal() | format(row, column).ordinal() << FORMAT_SHIFT | FORMULA;
        columns[column].put(row, (byte) mark, kind == Kind.NUMBER ? number : 0, text);
    }

    @Override
    public String sheet() {
        return sheet;
    }

    @Override
    public int rows() {
        return rowCount;
    }

    @Override
    public int columns() {
        return columnCount;
    }

    @Override
    public Kind kind(int row, int column) {
        return KINDS[mark(row, column) & KIND_MASK];
    }

    @Override
    public double number(int row, int column) {
        Page page = page(row, column);
        int slot = page == null ? -1 : page.slot(row);
        return slot < 0 || page.numbers == null ? 0 : page.numbers[slot];
    }

    @Override
    public String text(int row, int column) {
        Page page = page(row, column);
        int slot = page == null ? -1 : page.slot(row);
        String text = slot < 0 || page.texts == null ? null : page.texts[slot];
        return text == null ? "" : text;
    }

    @Override
    public void merged(int firstRow, int lastRow, int column) {
        merged.computeIfAbsent(column, c -> new TreeMap<>()).put(firstRow, lastRow);
    }

    @Override
    public int topOf(int row, int column) {
        TreeMap<Integer, Integer> cells = merged.isEmpty() ? null : merged.get(column);
        Map.Entry<Integer, Integer> above = cells == null ? null : cells.floorEntry(row);
        return above != null && row <= above.getValue() ? above.getKey() : row;
    }

    @Override
    public Format format(int row, int column) {
        return FORMATS[mark(row, column) >> FORMAT_SHIFT & 3];
    }

    @Override
    public void shownUnit(int row, int column, String unit) {
        shownUnits.put(row, column, unit);
    }

    @Override
    public String shownUnit(int row, int column) {
        return kind(row, column) == Kind.NUMBER ? shownUnits.at(row, column) : "";
    }

    @Override
    public boolean showsUnits(int column) {
        return shownUnits.isIn(column);
    }

    @Override
    public boolean isFormula(int row, int column) {
        return (mark(row, column) & FORMULA) != 0;
    }

    @Override
    public List<TableRange> tables() {
        return tables;
    }

    @Override
    public boolean hidden() {
        return hidden;
    }

    @Override
    public void hiddenRow(int row) {
        if (CellReference.onGrid(row, 0)) {
            hiddenRows.set(row);
        }
    }

    @Override
    public boolean isHidden(int row) {
        return hiddenRows.get(row);
    }

    @Override
    public void hiddenColumns(int first, int last) {
        if (CellReference.onGrid(0, first) && first <= last) {
            hiddenColumns.set(first, Math.min(last, CellAddress.COLUMNS - 1) + 1);
        }
    }

    @Override
    public boolean isHiddenColumn(int column) {
        return hiddenColumns.get(column);
    }

    private int mark(int row, int column) {
        Page page = page(row, column);
        int slot = page == null ? -1 : page.slot(row);
        return slot < 0 ? 0 : page.marks[slot];
    }

    private Page page(int row, int column) {
        if (row < 0 || column < 0 || column >= columnCount || columns[column] == null) {
            return null;
        }
        Page[] pages = columns[column].pages;
        int index = row >>> PAGE_SHIFT;
        return index < pages.length ? pages[index] : null;
    }

    private static final class Column {
        private Page[] pages = new Page[1];

        void put(int row, byte mark, double number, String text) {
            int index = row >>> PAGE_SHIFT;
            if (index >= pages.length) {
                pages = Arrays.copyOf(pages, Math.max(index + 1, pages.length + (pages.length >> 1) + 1));
            }
            if (pages[index] == null) {
                // A page after a full one will most likely be filled too.
                boolean dense = index > 0 && pages[index - 1] != null && pages[index - 1].reachesEnd();
                pages[index] = new Page(row & PAGE_ROWS - 1, dense ? PAGE_ROWS : 8);
            }
            pages[index].put(row, mark, number, text);
        }
    }

    /** Up to 1,024 rows of a column; the arrays begin at the first row used and grow as far as needed. */
    private static final class Page {
        private int first;
        private byte[] marks;
        private double[] numbers;
        private String[] texts;

        Page(int first, int capacity) {
            this.first = first;
            this.marks = new byte[Math.min(capacity, PAGE_ROWS - first)];
        }

        boolean reachesEnd() {
            return first + marks.length == PAGE_ROWS && marks[marks.length - 1] != 0;
        }

        /** The index of a row of this page in the arrays; -1 if they do not reach it. */
        int slot(int row) {
            int slot = (row & PAGE_ROWS - 1) - first;
            return slot < marks.length ? Math.max(slot, -1) : -1;
        }

        void put(int row, byte mark, double number, String text) {
            int offset = row & PAGE_ROWS - 1;
            if (offset < first) {
                move(offset, first - offset + marks.length);
            } else if (offset - first >= marks.length) {
                int wanted = Math.max(offset - first + 1, 2 * marks.length);
                move(first, Math.min(wanted, PAGE_ROWS - first));
            }
            int slot = offset - first;
            marks[slot] = mark;
            if (number != 0 && numbers == null) {
                numbers = new double[marks.length];
            }
            if (numbers != null) {
                numbers[slot] = number;
            }
            if (!text.isEmpty() && texts == null) {
                texts = new String[marks.length];
            }
            if (texts != null) {
                texts[slot] = text;
            }
        }

        private void move(int newFirst, int capacity) {
            int shift = first - newFirst;
            byte[] newMarks = new byte[capacity];
            System.arraycopy(marks, 0, newMarks, shift, marks.length);
            if (numbers != null) {
                double[] newNumbers = new double[capacity];
                System.arraycopy(numbers, 0, newNumbers, shift, marks.length);
                numbers = newNumbers;
            }
            if (texts != null) {
                String[] newTexts = new String[capacity];
                System.arraycopy(texts, 0, newTexts, shift, marks.length);
                texts = newTexts;
            }
            marks = newMarks;
            first = newFirst;
        }
    }
}
