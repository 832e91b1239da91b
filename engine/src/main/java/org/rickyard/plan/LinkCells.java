package org.rickyard.plan;

import java.util.List;
import java.util.Optional;
import org.rickyard.formula.Scaling;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListRows;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/**
 * The client's cells behind one linked column, row by row: of the places a value may be typed, the first that is not
 * blank; if all are blank, the last that exists, so that filling it in brings the row to life.
 */
public final class LinkCells {
    private final Symbol symbol;
    private final List<Candidate> places;
    private final ListRows[] lists;
    private final int[][] listRows;
    private final byte[] chosen;
    private volatile ScaledUnit lastScaled;

    LinkCells(Symbol symbol, List<Candidate> places, RowSources sources, int rows) {
        this.symbol = symbol;
        this.places = places;
        lists = new ListRows[places.size()];
        listRows = new int[places.size()][];
        for (int i = 0; i < places.size(); i++) {
            lists[i] = sources.list(places.get(i).role());
            listRows[i] = sources.rows(places.get(i).role());
        }
        chosen = new byte[rows];
        for (int row = 0; row < rows; row++) {
            chosen[row] = sources.applies(symbol, row) ? choose(row) : -1;
        }
    }

    private byte choose(int row) {
        byte last = -1;
        for (byte i = 0; i < lists.length; i++) {
            if (lists[i] == null || listRows[i] == null || listRows[i][row] < 0) {
                continue;
            }
            ListRows.State state = lists[i].state(places.get(i).column(), listRows[i][row]);
            if (state == ListRows.State.NO_COLUMN || !fits(i, row)) {
                continue;
            }
            if (state != ListRows.State.BLANK) {
                return i;
            }
            last = i;
        }
        return last;
    }

    /** A cell whose unit measures another quantity is another column's cell: t/h is no m3/h. */
    private boolean fits(int i, int row) {
        ColumnSpec column = places.get(i).column();
        boolean measured = column.type() == ColumnSpec.Type.NUMBER
                || column.type() == ColumnSpec.Type.DOSE
                || column.type() == ColumnSpec.Type.TEXT_OR_NUMBER;
        if (!measured) {
            return true;
        }
        return lists[i].unit(column, listRows[i][row])
                .map(unit -> asDryMatter(unit).isCompatible(symbol.unit()))
                .orElse(true);
    }

    /** A yield in t/ha whose basis says dry matter is one of dry matter, whatever its header leaves out. */
    private Unit asDryMatter(Unit unit) {
        boolean plainMass = symbol.equals(Quantities.YIELD_DRY_MATTER) && unit.isCompatible(Units.T_PER_HA);
        return plainMass ? Unit.of(unit.symbol(), Units.T_DM_PER_HA.dimension(), unit.factor()) : unit;
    }

    /** Whether a column of the client's is one that this one may be linked to, by any of its places and rows. */
    public boolean mayLeadTo(String sheet, int sheetColumn) {
        for (int i = 0; i < lists.length; i++) {
            for (int row = 0; lists[i] != null && row < lists[i].size(); row++) {
                Optional<CellAddress> cell = lists[i].address(places.get(i).column(), row);
                if (cell.isPresent()
                        && cell.get().column() == sheetColumn
                        && cell.get().sheet().equalsIgnoreCase(sheet)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether there is a cell behind this row at all. */
    public boolean exists(int row) {
        return chosen[row] >= 0;
    }

    /** What the cell gave; NO_COLUMN if there is none. */
    public ListRows.State state(int row) {
        return exists(row) ? list(row).state(column(row), listRow(row)) : ListRows.State.NO_COLUMN;
    }

    /** The cell's address. */
    public Optional<CellAddress> address(int row) {
        return exists(row) ? list(row).address(column(row), listRow(row)) : Optional.empty();
    }

    /** The unit the client's number is in. */
    public Optional<Unit> unit(int row) {
        return exists(row) ? list(row).unit(column(row), listRow(row)).map(this::asDryMatter) : Optional.empty();
    }

    /** The client's number in the client's unit. */
    public double typedNumber(int row) {
        return list(row).number(column(row), listRow(row));
    }

    /** The client's words, or the canonical word of a choice. */
    public String text(int row) {
        return exists(row) ? list(row).text(column(row), listRow(row)) : "";
    }

    /** The client's words just as they stand in the cell, spaces and all. */
    public String typed(int row) {
        return exists(row) ? list(row).typed(column(row), listRow(row)) : "";
    }

    /** What a product is measured in, where the cell's unit says so. */
    public Optional<String> productUnit(int row) {
        return exists(row) ? list(row).productUnit(column(row), listRow(row)) : Optional.empty();
    }

    /** How the cell's stored number becomes the symbol's number. */
    public Scaling scaling(int row) {
        return scaling(unit(row).orElse(symbol.unit()), list(row).cellScale(column(row), listRow(row)));
    }

    private Scaling scaling(Unit unit, int cellScale) {
        ScaledUnit last = lastScaled;
        // Most rows of a column are in one unit, so its steps are kept.
        if (last != null && last.unit() == unit && last.cellScale() == cellScale) {
            return last.scaling();
        }
        Scaling scaling = Scaling.between(unit, symbol.unit(), Ratio.of(cellScale));
        lastScaled = new ScaledUnit(unit, cellScale, scaling);
        return scaling;
    }

    private record ScaledUnit(Unit unit, int cellScale, Scaling scaling) {}

    /** The number in the symbol's unit, by the same steps as the cell formula. */
    public double number(int row) {
        double typed = typedNumber(row);
        int cellScale = list(row).cellScale(column(row), listRow(row));
        Unit unit = unit(row).orElse(symbol.unit());
        return cellScale == 1 && unit == symbol.unit()
                ? typed
                : scaling(unit, cellScale).apply(typed / cellScale);
    }

    /** Whether the place chosen is a fallback. */
    public boolean isDefault(int row) {
        return exists(row) && places.get(chosen[row]).standing() == Candidate.Standing.DEFAULT;
    }

    private ListRows list(int row) {
        return lists[chosen[row]];
    }

    private ColumnSpec column(int row) {
        return places.get(chosen[row]).column();
    }

    private int listRow(int row) {
        return listRows[chosen[row]][row];
    }
}
