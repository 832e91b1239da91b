package org.rickyard.plan.table;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.formula.Scaling;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListColumn;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
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
    /** The column of each place; null where the workbook has none. */
    private final ListColumn[] columns;

    private final int[][] listRows;
    private final byte[] chosen;
    /** What keeps rows from having a cell; null if nothing keeps any. */
    private final Obstacle[] obstacles;

    private volatile ScaledUnit lastScaled;

    /**
     * Looks for them.
     *
     * @param places where the value may be typed, the surest first
     * @param rows how many rows the table has
     */
    public LinkCells(Symbol symbol, List<Candidate> places, RowSources sources, int rows) {
        this.symbol = symbol;
        this.places = places;
        lists = new ListRows[places.size()];
        columns = new ListColumn[places.size()];
        listRows = new int[places.size()][];
        for (int i = 0; i < lists.length; i++) {
            lists[i] = sources.list(places.get(i).role());
            listRows[i] = sources.rows(places.get(i).role());
            if (lists[i] != null && listRows[i] != null) {
                columns[i] = lists[i].column(places.get(i).column());
            }
        }
        chosen = new byte[rows];
        obstacles = sources.obstacles(symbol);
        choose(sources.where(symbol));
    }

    private void choose(boolean[] applies) {
        Arrays.fill(chosen, (byte) -1);
        boolean[] decided = new boolean[chosen.length];
        for (int row = 0; row < chosen.length; row++) {
            decided[row] = obstacle(row).isPresent() && (applies == null || applies[row]);
        }
        for (byte i = 0; i < columns.length; i++) {
            if (columns[i] != null) {
                choose(i, columns[i], applies, decided);
            }
        }
    }

    /** Takes a place for the rows that it answers, and for the time being where none before it has a cell. */
    private void choose(byte place, ListColumn column, boolean[] applies, boolean[] decided) {
        int[] rowsThere = listRows[place];
        boolean measured = isMeasured(places.get(place).column());
        boolean dose = places.get(place).column().type() == ColumnSpec.Type.DOSE;
        Unit lastUnit = null;
        boolean lastFits = true;
        for (int row = 0; row < chosen.length; row++) {
            if (decided[row] || rowsThere[row] < 0 || applies != null && !applies[row]) {
                continue;
            }
            ListRows.State state = column.state(rowsThere[row]);
            if (state == ListRows.State.NO_COLUMN) {
                continue;
            }
            // A cell whose unit measures another quantity is another column's cell: t/h is no m3/h.
            Unit unit = measured ? column.unit(rowsThere[row]) : null;
            if (unit != lastUnit) {
                lastUnit = unit;
                lastFits = unit == null || asDryMatter(unit).isCompatible(symbol.unit());
            }
            if (lastFits) {
                chosen[row] = place;
                decided[row] = state != ListRows.State.BLANK;
            } else if (dose && state != ListRows.State.BLANK) {
                // A dose typed as a share of the spray is the dose: no later place adds another, per hectare, to it.
                chosen[row] = -1;
                decided[row] = true;
            }
        }
    }

    private static boolean isMeasured(ColumnSpec column) {
        return column.type() == ColumnSpec.Type.NUMBER
                || column.type() == ColumnSpec.Type.DOSE
                || column.type() == ColumnSpec.Type.TEXT_OR_NUMBER;
    }

    /** A yield in t/ha whose basis says dry matter is one of dry matter, whatever its header leaves out. */
    private Unit asDryMatter(Unit unit) {
        boolean plainMass = symbol.equals(Quantities.YIELD_DRY_MATTER) && unit.isCompatible(Units.T_PER_HA);
        return plainMass ? Unit.of(unit.symbol(), Units.T_DM_PER_HA.dimension(), unit.factor()) : unit;
    }

    /** Whether a column of the client's is one that this one may be linked to, by any of its places and rows. */
    public boolean mayLeadTo(String sheet, int sheetColumn) {
        for (int i = 0; i < lists.length; i++) {
            ListColumn column =
                    lists[i] == null ? null : lists[i].column(places.get(i).column());
            if (column != null && column.isReadFrom(sheet, sheetColumn, lists[i].size())) {
                return true;
            }
        }
        return false;
    }

    /** Whether no list of the workbook has a header for what this column links to, in any of its places. */
    public boolean hasNoColumn() {
        for (int i = 0; i < lists.length; i++) {
            if (lists[i] != null && lists[i].has(places.get(i).column())) {
                return false;
            }
        }
        return true;
    }

    /** The place where a column is to be added to a list, if no list has one: of several the thing's own, which stands last. */
    public Optional<Candidate> columnToAdd() {
        Optional<Candidate> last = Optional.empty();
        for (Candidate place : places) {
            if (place.standing() == Candidate.Standing.TYPED) {
                last = Optional.of(place);
            }
        }
        return hasNoColumn() ? last : Optional.empty();
    }

    /**
     * Marks, by column and row of the client's list, the cells that would send a link elsewhere if they were filled or
     * emptied: a blank before the cell that is linked to, and that cell itself where a later one has something too.
     */
    public void markDeciding(Map<ListSpec, Map<ColumnSpec, BitSet>> deciding) {
        for (int row = 0; row < chosen.length; row++) {
            for (int i = 0; i < columns.length && chosen[row] >= 0; i++) {
                if (columns[i] != null
                        && listRows[i][row] >= 0
                        && (i < chosen[row] || i == chosen[row] && fallsBack(i, row))) {
                    deciding.computeIfAbsent(lists[i].spec(), l -> new HashMap<>())
                            .computeIfAbsent(places.get(i).column(), c -> new BitSet())
                            .set(listRows[i][row]);
                }
            }
        }
    }

    private boolean fallsBack(int place, int row) {
        for (int i = place + 1; i < columns.length; i++) {
            if (columns[i] != null && listRows[i][row] >= 0) {
                ListRows.State state = columns[i].state(listRows[i][row]);
                if (state != ListRows.State.BLANK && state != ListRows.State.NO_COLUMN) {
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

    /** Whether the cell says something, be it of use or not. */
    public boolean answers(int row) {
        ListRows.State state = state(row);
        return state != ListRows.State.NO_COLUMN && state != ListRows.State.BLANK;
    }

    /** What the cell gave; NO_COLUMN if there is none, ASKED where it cannot be told which it is. */
    public ListRows.State state(int row) {
        return exists(row)
                ? column(row).state(listRow(row))
                : obstacle(row).isPresent() ? ListRows.State.ASKED : ListRows.State.NO_COLUMN;
    }

    /** What keeps the row from knowing which cell is meant. */
    public Optional<Obstacle> obstacle(int row) {
        return obstacles == null ? Optional.empty() : Optional.ofNullable(obstacles[row]);
    }

    /** Where nothing is linked to: the sheet whose list has no header for it, though the like on another sheet has. */
    public Optional<String> sheetWithoutColumn(int row) {
        for (int i = 0; i < columns.length && !exists(row); i++) {
            if (columns[i] != null && listRows[i][row] >= 0) {
                for (ColumnSpec name : lists[i].spec().identity()) {
                    Optional<CellAddress> cell = lists[i].address(name, listRows[i][row]);
                    if (cell.isPresent()) {
                        return cell.map(CellAddress::sheet);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Where nothing is linked to: the blank cell of the column that holds it, though by its unit another quantity, fresh
     * weight for dry matter. Filled in, it answers.
     */
    public Optional<CellAddress> blankOfAnotherQuantity(int row) {
        for (int i = 0; i < columns.length && !exists(row); i++) {
            if (columns[i] != null
                    && listRows[i][row] >= 0
                    && columns[i].state(listRows[i][row]) == ListRows.State.BLANK) {
                return columns[i].address(listRows[i][row]);
            }
        }
        return Optional.empty();
    }

    /** Where nothing is linked to: the list that has a column for it, and no row that belongs to this one. */
    public Optional<ListSpec> listWithoutRow(int row) {
        for (int i = 0; i < columns.length && !exists(row); i++) {
            if (columns[i] != null && listRows[i][row] < 0) {
                return Optional.of(lists[i].spec());
            }
        }
        return Optional.empty();
    }

    /** The cell's address; where it cannot be told which it is, that of the one that keeps it from being told. */
    public Optional<CellAddress> address(int row) {
        return exists(row) ? column(row).address(listRow(row)) : obstacle(row).map(Obstacle::cell);
    }

    /** The unit the client's number is in. */
    public Optional<Unit> unit(int row) {
        return exists(row) ? Optional.ofNullable(unitOrNull(row)) : Optional.empty();
    }

    private Unit unitOrNull(int row) {
        Unit unit = column(row).unit(listRow(row));
        return unit == null ? null : asDryMatter(unit);
    }

    /** The client's number in the client's unit. */
    public double typedNumber(int row) {
        return column(row).number(listRow(row));
    }

    /** The client's words, or the canonical word of a choice. */
    public String text(int row) {
        return exists(row) ? column(row).text(listRow(row)) : "";
    }

    /** The client's words just as they stand in the cell, spaces and all. */
    public String typed(int row) {
        return exists(row) ? column(row).typed(listRow(row)) : "";
    }

    /** How the cell's stored number becomes the symbol's number. */
    public Scaling scaling(int row) {
        return scaling(unitOrSymbols(row), column(row).cellScale(listRow(row)));
    }

    private Unit unitOrSymbols(int row) {
        Unit unit = unitOrNull(row);
        return unit == null ? symbol.unit() : unit;
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
        int cellScale = column(row).cellScale(listRow(row));
        Unit unit = unitOrSymbols(row);
        return cellScale == 1 && unit == symbol.unit()
                ? typed
                : scaling(unit, cellScale).apply(typed / cellScale);
    }

    /** Whether the place chosen is a fallback. */
    public boolean isDefault(int row) {
        return exists(row) && places.get(chosen[row]).standing() == Candidate.Standing.DEFAULT;
    }

    private ListColumn column(int row) {
        return columns[chosen[row]];
    }

    private int listRow(int row) {
        return listRows[chosen[row]][row];
    }
}
