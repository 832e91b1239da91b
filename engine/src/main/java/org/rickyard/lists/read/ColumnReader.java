package org.rickyard.lists.read;

import java.util.List;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.text.ItemText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;

/** Reads one column of a list: the state of each of its cells, and a finding for each that cannot be used. */
final class ColumnReader {
    private final FoundRows rows;
    private final ListSpec list;
    private final ColumnSpec spec;
    private final FoundRows.Column column;
    private final ColumnSpec decider;
    private final CustomaryUnits customary;
    private final CellFindings findings;
    private final boolean dashesAreNames;
    private final boolean hasChoices;
    private final NumberCells numbers;
    private final CellReader cells;
    private final CellRead cell;

    private Grid grid;
    private List<Binding> bindings;
    /** The word that the header of the present table says for all its rows, or null. */
    private String headerWord;

    private RowUnits[] rowUnits;
    private final RowUnits[][] unitsByTable;
    private int tableIndex = -1;

    /**
     * For one column.
     *
     * @param dashesAreNames whether a dash in a column of names is a name, since something is called so
     */
    ColumnReader(
            FoundRows rows, ColumnSpec spec, CustomaryUnits customary, boolean dashesAreNames, List<Finding> findings) {
        this.dashesAreNames = dashesAreNames;
        this.rows = rows;
        this.list = rows.spec();
        this.spec = spec;
        this.column = new FoundRows.Column(spec, rows);
        this.decider = RowUnits.decidedBy(list, spec);
        this.customary = customary;
        this.findings = new CellFindings(list, spec, findings);
        this.unitsByTable = new RowUnits[rows.bound.length][];
        this.hasChoices = !spec.choices().isEmpty();
        this.numbers = new NumberCells(spec, customary);
        this.cells = cells();
        this.cell = new CellRead(column, this.findings);
        for (Binder.Bound bound : rows.bound) {
            List<Binding> found = bound.bindings().get(spec);
            if (found != null && found.size() > 1) {
                column.pick = new byte[rows.size()];
            }
        }
        if (decider != null || RowUnits.isByRow(list, spec)) {
            column.unit = new short[rows.size()];
        }
        if (hasChoices) {
            column.word = new byte[rows.size()];
        }
    }

    private CellReader cells() {
        return switch (spec.type()) {
            case TEXT, CHOICE -> new WordCells(spec, ChoiceWords.of(spec));
            case DATE -> new DayCells();
            case BATTER -> new BatterCells(spec, numbers);
            case NOZZLE -> new NozzleCells();
            case NUMBER, DOSE, TEXT_OR_NUMBER -> numbers;
        };
    }

    /** Reads all rows and puts the column into them; does nothing if no place of the list has it. */
    void read() {
        boolean anywhere = false;
        for (Binder.Bound bound : rows.bound) {
            anywhere |= bound.bindings().containsKey(spec) || bound.words().containsKey(spec);
        }
        if (!anywhere) {
            return;
        }
        rows.put(column);
        for (int row = 0; row < rows.size(); row++) {
            if (rows.tableOf[row] != tableIndex) {
                enter(rows.tableOf[row]);
            }
            State own = state(row);
            column.state[row] = (byte) (rows.other.of(row).isEmpty() ? own : orOther(row, own)).ordinal();
        }
        findings.finish();
        for (String what : numbers.assumed()) {
            findings.note(what);
        }
    }

    /** What another table says of the same thing, where its own has no such column or leaves it blank. */
    private State orOther(int row, State own) {
        if (own != State.NO_COLUMN && own != State.BLANK) {
            return own;
        }
        OtherParts.Part blank = null;
        for (OtherParts.Part other : rows.other.of(row)) {
            State there = from(other, row);
            if (there != State.NO_COLUMN && there != State.BLANK) {
                return there;
            }
            blank = there == State.BLANK && blank == null ? other : blank;
        }
        if (own == State.NO_COLUMN && blank != null) {
            return from(blank, row);
        }
        column.takeFromOwn(row);
        enter(rows.tableOf[row]);
        return state(row);
    }

    private State from(OtherParts.Part other, int row) {
        column.takeFromOther(row, other);
        enter(other.table());
        return state(row);
    }

    private void enter(int index) {
        tableIndex = index;
        grid = rows.tables[index].grid();
        headerWord = rows.bound[index].words().get(spec);
        cell.enter(rows.tables[index], headerWord);
        bindings = rows.bound[index].bindings().get(spec);
        if (bindings != null && column.unit != null) {
            // Products beside each other take turns, each with a header and units of its own.
            if (unitsByTable[index] == null) {
                unitsByTable[index] = bindings.stream()
                        .map(binding -> new RowUnits(list, spec, binding, customary))
                        .toArray(RowUnits[]::new);
            }
            rowUnits = unitsByTable[index];
        }
    }

    private State state(int row) {
        if (bindings == null) {
            return inHeader(row);
        }
        int sheetRow = column.rowOf(row);
        Binding binding = bindings.size() > 1 ? filled(row, sheetRow) : bindings.get(0);
        sheetRow = FoundRows.sheetRow(spec, grid, sheetRow, binding.sheetColumn());
        Grid.Kind kind = grid.kind(sheetRow, binding.sheetColumn());
        cell.at(row, sheetRow, binding, kind);
        Binding contradicting = bindings.size() > 1 ? contradicting(sheetRow, binding) : null;
        if (contradicting != null) {
            cell.bad("Two columns of this row say its " + spec.name() + ", and not the same: "
                    + OtherUnitBeside.said(grid, sheetRow, binding) + " here, "
                    + OtherUnitBeside.said(grid, sheetRow, contradicting) + " in "
                    + rows.tables[tableIndex].address(sheetRow, contradicting.sheetColumn())
                    + ". Mend one of them or leave it blank.");
            return State.ASKED;
        }
        if (column.unit != null) {
            cell.isIn(unitOf(row));
        }
        if (isBlank(kind, sheetRow, binding.sheetColumn())) {
            return State.BLANK;
        }
        if (binding.asked()) {
            return State.ASKED;
        }
        if (kind == Grid.Kind.ERROR) {
            cell.bad("The cell shows the error " + cell.text() + " in place of " + CellFindings.expected(spec) + ".");
            return State.ERROR;
        }
        if (kind == Grid.Kind.UNCOMPUTED) {
            cell.bad("The formula of this cell has no stored value. Open the workbook in"
                    + " a spreadsheet program, let it recalculate, and save it.");
            return State.UNCOMPUTED;
        }
        State read = cells.read(cell);
        // A link cannot see that a number is shown as a day, or that it is none, and would reckon with what was not
        // read:
        // such a cell waits for an answer. Words are not linked to.
        return read == State.NOT_READABLE && kind == Grid.Kind.NUMBER && !spec.isOfWords() ? State.ASKED : read;
    }

    /** What the header says for a row of a table without the column. */
    private State inHeader(int row) {
        if (headerWord == null) {
            return State.NO_COLUMN;
        }
        if (spec.type() == ColumnSpec.Type.TEXT && !hasChoices) {
            CellAddress header = rows.bound[tableIndex].wordsAt().get(spec);
            boolean whole = headerWord.equals(grid.words(header.row(), header.column()));
            return whole ? State.GIVEN : State.READ_FROM_TEXT;
        }
        column.word[row] = column.wordIndex(headerWord);
        return State.READ_FROM_TEXT;
    }

    /** Of several columns the first that says something in a row. */
    private Binding filled(int row, int sheetRow) {
        for (int i = bindings.size() - 1; i >= 0; i--) {
            if (!isBlank(sheetRow, bindings.get(i).sheetColumn())) {
                column.pick[row] = (byte) i;
            }
        }
        return bindings.get(column.pick[row]);
    }

    /** Another column that says something else in a row, or null. */
    private Binding contradicting(int sheetRow, Binding binding) {
        for (Binding other : bindings) {
            if (other != binding
                    && !isBlank(sheetRow, other.sheetColumn())
                    && !OtherUnitBeside.agree(grid, sheetRow, binding, other)) {
                return other;
            }
        }
        return null;
    }

    private boolean isBlank(int sheetRow, int sheetColumn) {
        return isBlank(grid.kind(sheetRow, sheetColumn), sheetRow, sheetColumn);
    }

    private boolean isBlank(Grid.Kind kind, int sheetRow, int sheetColumn) {
        return kind == Grid.Kind.BLANK || kind == Grid.Kind.TEXT && isBlankText(grid.text(sheetRow, sheetColumn));
    }

    /**
     * Nothing but spaces; a dash or "n/a" too, as people mark what they do not know or what there is none of. The names of
     * a list's rows stay as they are.
     */
    private boolean isBlankText(String text) {
        String trimmed = Words.trim(text);
        boolean name = spec.type() == ColumnSpec.Type.TEXT
                && (dashesAreNames || spec.required() || list.identity().contains(spec));
        return trimmed.isEmpty() || !name && Words.marksBlank(trimmed);
    }

    private UnitInRow unitOf(int row) {
        String beside = decider == null ? "" : rows.text(decider, row);
        boolean itself = beside.isEmpty() && spec == Assumptions.VALUE;
        String word = itself ? ItemText.unit(rows.text(Assumptions.ITEM, row)) : beside;
        UnitInRow at = rowUnits[column.pick == null ? 0 : column.pick[row]].at(word);
        column.unit[row] = column.unitIndex(at);
        return at;
    }
}
