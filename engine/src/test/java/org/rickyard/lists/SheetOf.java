package org.rickyard.lists;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A small sheet in memory: numbers, texts, and nulls for blanks. */
public final class SheetOf implements Grid {
    /** An error cell. */
    public record Fault(String code) {}

    /** A formula without a stored value. */
    public static final Object NOT_CALCULATED = new Object();

    private final String name;
    private final List<Object[]> rows = new ArrayList<>();
    private final Map<Long, Format> formats = new HashMap<>();
    private final Set<Long> formulas = new HashSet<>();
    private final Map<Long, String> shown = new HashMap<>();
    private final Map<Long, Integer> tops = new HashMap<>();
    private final List<TableRange> tables = new ArrayList<>();
    private final Set<Integer> hiddenRows = new HashSet<>();
    private final Set<Integer> hiddenColumns = new HashSet<>();
    private boolean hidden;

    public SheetOf(String name) {
        this.name = name;
    }

    public SheetOf row(Object... cells) {
        rows.add(cells);
        return this;
    }

    public SheetOf format(int row, int column, Format format) {
        formats.put(key(row, column), format);
        return this;
    }

    /** A number whose format shows a text behind it. */
    public SheetOf shown(int row, int column, String unit) {
        shown.put(key(row, column), unit);
        return this;
    }

    public SheetOf formula(int row, int column) {
        formulas.add(key(row, column));
        return this;
    }

    public SheetOf table(TableRange range) {
        tables.add(range);
        return this;
    }

    /** Cells merged over rows of one column. */
    public SheetOf merge(int firstRow, int lastRow, int column) {
        for (int row = firstRow; row <= lastRow; row++) {
            tops.put(key(row, column), firstRow);
        }
        return this;
    }

    @Override
    public int topOf(int row, int column) {
        return tops.getOrDefault(key(row, column), row);
    }

    public SheetOf hide() {
        hidden = true;
        return this;
    }

    public SheetOf hideColumn(int column) {
        hiddenColumns.add(column);
        return this;
    }

    public SheetOf hideRow(int row) {
        hiddenRows.add(row);
        return this;
    }

    private static long key(int row, int column) {
        return (long) row << 20 | column;
    }

    private Object cell(int row, int column) {
        return row >= 0 && row < rows.size() && column >= 0 && column < rows.get(row).length
                ? rows.get(row)[column]
                : null;
    }

    @Override
    public String sheet() {
        return name;
    }

    @Override
    public int rows() {
        return rows.size();
    }

    @Override
    public int columns() {
        return rows.stream().mapToInt(row -> row.length).max().orElse(0);
    }

    @Override
    public Kind kind(int row, int column) {
        Object cell = cell(row, column);
        if (cell == null) {
            return Kind.BLANK;
        }
        if (cell == NOT_CALCULATED) {
            return Kind.UNCOMPUTED;
        }
        return cell instanceof Number
                ? Kind.NUMBER
                : cell instanceof Boolean ? Kind.LOGICAL : cell instanceof Fault ? Kind.ERROR : Kind.TEXT;
    }

    @Override
    public double number(int row, int column) {
        return cell(row, column) instanceof Number number ? number.doubleValue() : 0;
    }

    @Override
    public String text(int row, int column) {
        Object cell = cell(row, column);
        if (cell instanceof Fault fault) {
            return fault.code();
        }
        if (cell instanceof Boolean logical) {
            return logical ? "TRUE" : "FALSE";
        }
        return cell instanceof String text ? text : "";
    }

    @Override
    public Format format(int row, int column) {
        return formats.getOrDefault(key(row, column), Format.GENERAL);
    }

    @Override
    public String shownUnit(int row, int column) {
        return shown.getOrDefault(key(row, column), "");
    }

    @Override
    public boolean showsUnits(int column) {
        return shown.keySet().stream().anyMatch(key -> (key & (1 << 20) - 1) == column);
    }

    @Override
    public boolean isFormula(int row, int column) {
        return formulas.contains(key(row, column)) || cell(row, column) == NOT_CALCULATED;
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
    public boolean isHidden(int row) {
        return hiddenRows.contains(row);
    }

    @Override
    public boolean isHiddenColumn(int column) {
        return hiddenColumns.contains(column);
    }
}
