package org.rickyard.lists.read;

import java.time.LocalDate;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Unit;

/** The cell that a column's reader stands on: what is in it, and what is found of it. One is moved from row to row. */
final class CellRead {
    private final FoundRows.Column column;
    private final CellFindings findings;
    private final RangeCheck ranges;

    private FoundTable table;
    private Grid grid;
    private String headerWord;

    private int row;
    private int sheetRow;
    private Binding binding;
    private Grid.Kind kind;
    private UnitInRow unit;

    CellRead(FoundRows.Column column, CellFindings findings) {
        this.column = column;
        this.findings = findings;
        this.ranges = new RangeCheck(column.spec, findings);
    }

    /**
     * Goes on to the rows of a table.
     *
     * @param headerWord the word that the header says for all of them; null if none
     */
    void enter(FoundTable table, String headerWord) {
        this.table = table;
        this.grid = table.grid();
        this.headerWord = headerWord;
    }

    /**
     * Goes on to a cell of the table.
     *
     * @param row of the list
     * @param sheetRow of the sheet
     */
    void at(int row, int sheetRow, Binding binding, Grid.Kind kind) {
        this.row = row;
        this.sheetRow = sheetRow;
        this.binding = binding;
        this.kind = kind;
        this.unit = null;
    }

    /** What its number is in, in a column where that differs from row to row. */
    void isIn(UnitInRow unit) {
        this.unit = unit;
    }

    /** The word that the header says for the whole column; null if none. */
    String headerWord() {
        return headerWord;
    }

    Binding binding() {
        return binding;
    }

    /** Whether it stands on a form, of which every cell is typed by itself with its unit behind it. */
    boolean isOnForm() {
        return grid.isTurned();
    }

    /** What its number is in; null unless that differs from row to row. */
    UnitInRow unit() {
        return unit;
    }

    Grid.Kind kind() {
        return kind;
    }

    double number() {
        return grid.number(sheetRow, binding.sheetColumn());
    }

    Grid.Format format() {
        return grid.format(sheetRow, binding.sheetColumn());
    }

    /** What is shown in it, a number too. */
    String text() {
        return grid.words(sheetRow, binding.sheetColumn());
    }

    /** Its text without outer spaces. */
    String trimmed() {
        return Words.trim(grid.text(sheetRow, binding.sheetColumn()));
    }

    CellAddress address() {
        return table.address(sheetRow, binding.sheetColumn());
    }

    /** It cannot be used, and why. */
    void bad(String message) {
        findings.bad(address(), message);
    }

    /** It waits for an answer. */
    void asked(String question) {
        findings.asked(address(), question);
    }

    /** It is used in a way that its reader should know of. */
    void readAs(String message) {
        findings.readAs(address(), message);
    }

    /** Whether a number can be; one that cannot, or is unusual, is a finding. */
    boolean isPossible(double value, Unit in) {
        return ranges.isPossible(value, in, table, sheetRow, binding.sheetColumn());
    }

    /** It stands for this word of the column's choices. */
    State word(String canonical) {
        column.word[row] = column.wordIndex(canonical);
        return State.GIVEN;
    }

    /** A day was read out of its text. */
    State day(LocalDate day) {
        column.read.put(row, (double) (day.toEpochDay() - grid.dayZero().toEpochDay()));
        return State.READ_FROM_TEXT;
    }

    /** It is written in a unit of its own. */
    void inUnit(UnitInRow own) {
        column.unit[row] = column.unitIndex(own);
    }

    /** A number was read out of its text. */
    State readFromText(double value, Unit in) {
        column.read.put(row, value);
        return isPossible(value, in) ? State.READ_FROM_TEXT : State.IMPOSSIBLE;
    }
}
