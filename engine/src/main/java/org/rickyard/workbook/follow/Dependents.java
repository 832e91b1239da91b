package org.rickyard.workbook.follow;

import java.io.IOException;
import java.util.BitSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.CellSink;

/**
 * The client's cells that depend on our results, through however many formulas. An input cell among them closes a loop:
 * we would read what we ourselves have written.
 *
 * <p>Cells and areas are held as numbers, about 40 bytes for a formula with two references; texts are not kept.
 */
public final class Dependents {
    private final BookScope scope;
    private final PlaceList cells = new PlaceList();
    private final PlaceList areas = new PlaceList();
    /** By sheet and column, the rows that depend on us. */
    private final NavigableMap<Integer, BitSet> rows = new TreeMap<>();

    private int count;

    private Dependents(BookScope scope) {
        this.scope = scope;
    }

    /**
     * Follows the mentions through the client's sheets, which are read once more; does nothing if there are no
     * mentions.
     *
     * @param clientSheets the client's sheets, without ours
     */
    public static Dependents trace(BookScope scope, BookReader reader, List<SheetRef> clientSheets, FormulaRefs refs)
            throws IOException {
        Dependents dependents = new Dependents(scope);
        if (refs.mentions().isEmpty()) {
            return dependents;
        }
        for (FormulaRefs.Mention mention : refs.mentions()) {
            CellAddress cell = mention.cell();
            dependents.add(scope.position(cell.sheet()), cell.row(), cell.column());
        }
        for (SheetRef sheet : clientSheets) {
            if (sheet.worksheet()) {
                reader.stream(sheet, dependents.reading(sheet.name()));
            }
        }
        dependents.spread();
        return dependents;
    }

    /** Whether the cell depends on our results. */
    public boolean contains(CellAddress cell) {
        BitSet column = rows.get(key(scope.position(cell.sheet()), cell.column()));
        return column != null && column.get(cell.row());
    }

    /** How many cells depend on our results. */
    public int size() {
        return count;
    }

    private CellSink reading(String sheet) {
        int position = scope.position(sheet);
        return (int row, int column, Kind kind, double number, String text, Format format, String formula) -> {
            if (formula == null || formula.isEmpty() || isDependent(position, row, row, column, column)) {
                return;
            }
            int before = areas.size();
            scope.visit(formula, new CellAddress(sheet, row, column), area -> {
                int target = scope.position(area.sheet());
                areas.add(target, area.firstRow(), area.firstColumn());
                areas.add(target, area.lastRow(), area.lastColumn());
            });
            if (areas.size() > before) {
                cells.add(position, row, column, areas.size());
            }
        };
    }

    /**
     * Runs through all formulas, to and fro, until a run finds no more. Chains mostly go one way along the sheet, so a
     * few runs do.
     */
    private void spread() {
        int before;
        boolean forward = true;
        do {
            before = count;
            for (int i = 0; i < cells.size(); i++) {
                int cell = forward ? i : cells.size() - 1 - i;
                if (!isMarked(cell) && refersToDependent(cell)) {
                    add(cells.sheet(cell), cells.row(cell), cells.column(cell));
                }
            }
            forward = !forward;
        } while (count > before);
    }

    private boolean isMarked(int cell) {
        return isDependent(cells.sheet(cell), cells.row(cell), cells.row(cell), cells.column(cell), cells.column(cell));
    }

    private boolean refersToDependent(int cell) {
        int end = cells.end(cell);
        for (int i = cell == 0 ? 0 : cells.end(cell - 1); i < end; i += 2) {
            if (isDependent(areas.sheet(i), areas.row(i), areas.row(i + 1), areas.column(i), areas.column(i + 1))) {
                return true;
            }
        }
        return false;
    }

    private boolean isDependent(int sheet, int firstRow, int lastRow, int firstColumn, int lastColumn) {
        if (firstColumn == lastColumn) {
            return touches(rows.get(key(sheet, firstColumn)), firstRow, lastRow);
        }
        for (BitSet column : rows.subMap(key(sheet, firstColumn), true, key(sheet, lastColumn), true)
                .values()) {
            if (touches(column, firstRow, lastRow)) {
                return true;
            }
        }
        return false;
    }

    private static boolean touches(BitSet column, int firstRow, int lastRow) {
        if (column == null) {
            return false;
        }
        int next = column.nextSetBit(firstRow);
        return next >= 0 && next <= lastRow;
    }

    private void add(int sheet, int row, int column) {
        BitSet marked = rows.computeIfAbsent(key(sheet, column), any -> new BitSet());
        if (!marked.get(row)) {
            marked.set(row);
            count++;
        }
    }

    private static int key(int sheet, int column) {
        return sheet * CellAddress.COLUMNS + column;
    }
}
