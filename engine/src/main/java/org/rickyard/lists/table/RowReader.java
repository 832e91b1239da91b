package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Layout;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.Words;

/** Goes down the rows under a header and says which are data, and which are units, blanks, totals or something else. */
public final class RowReader {
    private static final int MOST_FINDINGS = 20;

    private static final List<ColumnSpec> NAME_AND_TYPE = List.of(Machines.MACHINE, Machines.TYPE);

    private final FoundTable table;
    private final Grid grid;
    private final List<Finding> findings;
    private final RowContents rows;
    private final int[] identity;
    private final int[] numeric;
    private final TotalsRows totals;
    private final SumOfRows sums;
    private boolean blankBefore;
    private boolean totalsSeen;
    /** Whether those totals are of a part of the list, by their own word, so that more rows are to come. */
    private boolean subtotalsSeen;

    /** The last row that was passed over as totals; -1 if none was. */
    private int totalsRow = -1;

    private boolean ended;
    private int endedRow;
    private String endedWhy;
    private int leftOver;
    private int nameless;
    private int lone;

    /** Rows with nothing but a name since the last full one. */
    private final List<Integer> titles = new ArrayList<>();

    /** Of the rows left over, the last ones with nothing but a name. */
    private int titlesLeft;

    /** Whether the row before holds nothing but a title below a blank row. */
    private boolean titleBefore;

    /** How many rows there were when the last was held against the sum of the others. */
    private int summed;

    RowReader(FoundTable table, List<Finding> findings) {
        this.table = table;
        this.grid = table.grid;
        this.findings = findings;
        this.identity = table.columnsOf(table.chief().identity());
        this.numeric = table.numericColumns();
        this.rows = new RowContents(table, identity, numeric);
        this.totals = new TotalsRows(table, identity, numeric);
        this.sums = new SumOfRows(table, identity, numeric);
    }

    FoundTable table() {
        return table;
    }

    /** Whether the row holds a number where this list has figures; such a row is no header. */
    boolean holdsFigures(int row) {
        for (int column : numeric) {
            if (grid.kind(row, column) == Grid.Kind.NUMBER) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether the row says of a machine what it is and nothing else, right below the list so far: "Boom" and "sprayer" are
     * headers elsewhere.
     */
    boolean holdsTypeAlone(int row) {
        int above = table.count() == 0
                ? Math.max(table.lastHeaderRow, table.secondHeaderRow)
                : table.row(table.count() - 1);
        return table.chief() == Machines.LIST
                && row == above + 1
                && ChoiceWords.MACHINE_TYPES.containsKey(Words.normal(table.word(row, List.of(Machines.TYPE))))
                && rows.filled(row) == table.columnsOf(NAME_AND_TYPE).length;
    }

    /** Whether the list is made of words that could pass for headers, so that no header is looked for in it. */
    boolean isWords() {
        ListSpec spec = table.chief();
        return spec == Layout.LIST || spec == Assumptions.LIST;
    }

    /** The same header again, as printed lists repeat it on each page. */
    void headerAgain(int row) {
        table.lastHeaderRow = row;
        goOn();
    }

    /** What stood before has come to an end, but the list has not. */
    private void goOn() {
        blankBefore = false;
        ended = false;
        totalsSeen = false;
    }

    /** Whether the row belongs, in the columns of this list, to one of these Excel tables. */
    boolean overlaps(List<Grid.TableRange> ranges, int row) {
        for (Grid.TableRange range : ranges) {
            if (row >= range.firstRow()
                    && row <= range.lastRow()
                    && range.firstColumn() <= table.lastColumn
                    && table.firstColumn <= range.lastColumn()) {
                return true;
            }
        }
        return false;
    }

    void read(int row) {
        if (row == table.secondHeaderRow) {
            return;
        }
        int filled = rows.filled(row);
        if (filled == 0) {
            blankBefore = true;
            if (totalsSeen && !subtotalsSeen) {
                end(row, "a row of totals");
            }
            return;
        }
        if (isHeading(row)) {
            goOn();
            return;
        }
        if (filled == 1 && !ended && TypesBetween.isLine(table, row)) {
            goOn();
            return;
        }
        if (filled > 1) {
            tellTitles();
        }
        if (ended) {
            leftOver++;
            titlesLeft += filled == 1 ? 1 : 0;
            return;
        }
        if (table.unitsRow < 0 && table.count() == 0 && (rows.isUnits(row) || grid.saysUnits(row))) {
            table.unitsRow = row;
            return;
        }
        if (table.count() == 0 && rows.numbersColumns(row)) {
            note(row, "This " + line() + " numbers the columns and is not read as a row of " + name() + ".");
            return;
        }
        if (totals.holds(row, rows.isNamed(row))) {
            totalsSeen = true;
            totalsRow = row;
            subtotalsSeen = totals.saysSubtotals(row);
            sums.passed();
            noteTotals(row, "");
            return;
        }
        if ((blankBefore || titleBefore) && table.range == null && rows.isForeignHeader(row)) {
            end(row, "the header of another table");
            leftOver++;
            titlesLeft += filled == 1 ? 1 : 0;
            return;
        }
        boolean afterBlank = blankBefore || titleBefore;
        boolean afterTotals = totalsRow >= 0 && totalsRow == row - 1;
        blankBefore = false;
        titleBefore = filled == 1 && afterBlank;
        totalsSeen = false;
        if (!rows.isNamed(row)) {
            if (filled == 1 && !holdsFigures(row)) {
                titles.add(row);
            } else if (totals.isTotalOfNamed(row)) {
                totalsRow = row;
                noteTotals(row, "");
            } else {
                tellNameless(row);
            }
            return;
        }
        if (filled == 1
                && (afterBlank || rows.isRemark(row) || isTitle(row, afterTotals))
                && identity.length > 0
                && table.lastColumn > table.firstColumn
                && (numeric.length > 0 || isWords())) {
            titles.add(row);
            return;
        }
        tellTitles();
        SumOfRows.Verdict sum = sums.ofNextRow(row);
        if (sum == SumOfRows.Verdict.TOTALS) {
            sums.passed();
            totalsRow = row;
            noteTotals(row, ": its figures sum up those " + before());
            return;
        }
        table.add(row);
        sums.added(row);
        if (sum == SumOfRows.Verdict.PERHAPS) {
            sums.passed();
            cautionSum(row);
        }
    }

    /**
     * A name alone right under the header or the totals of those before, above a row that says more: "North block" over its
     * fields.
     */
    private boolean isTitle(int row, boolean afterTotals) {
        int header = Math.max(table.headerRow, Math.max(table.secondHeaderRow, table.unitsRow));
        return (row == header + 1 || afterTotals) && row + 1 < grid.rows() && rows.filled(row + 1) > 1;
    }

    /** "Farm: Hill Farm" between the rows: those below are of that holding. */
    private boolean isHeading(int row) {
        if (identity.length == 0 || holdsFigures(row)) {
            return false;
        }
        Optional<HoldingAbove.Named> named = HoldingAbove.heading(table, row);
        named.ifPresent(holding -> table.headings.put(row, holding));
        return named.isPresent();
    }

    /** A row with nothing but a name is the title of the next list if that list's header follows; otherwise it is told. */
    private void tellTitles() {
        for (int row : titles) {
            if (!rows.isNamed(row)) {
                tellNameless(row);
            } else if (lone++ < MOST_FINDINGS) {
                findings.add(Finding.caution(
                        table.address(row, identity[0]),
                        "This " + line() + " holds nothing but " + Words.quoted(rows.words(row))
                                + ", so it is not read as a row of " + name() + "."));
            }
        }
        titles.clear();
        titlesLeft = 0;
    }

    private void tellNameless(int row) {
        if (nameless++ < MOST_FINDINGS) {
            findings.add(Finding.caution(
                    table.address(row, identity.length > 0 ? identity[0] : table.firstColumn),
                    "This " + line() + " has entries but no " + identityName() + ", so it is left out of " + name()
                            + ". Write its name, or clear the row."));
        }
    }

    /**
     * The header of another list follows: what stood alone in the rows right above it were its titles, and what was taken
     * for the header of a table not known here, the headings of its columns.
     */
    void finishBeforeHeader(int header) {
        titles.clear();
        leftOver -= titlesLeft;
        if (leftOver == 1 && endedRow == header - 1) {
            leftOver = 0;
        }
        finish();
    }

    void finish() {
        tellTitles();
        takeUnitsAbove();
        leaveSum();
        if (leftOver > 0) {
            findings.add(Finding.caution(
                    table.address(endedRow, table.firstColumn),
                    leftOver + (leftOver == 1 ? " row" : " rows") + " from here on, below " + endedWhy
                            + ", not read as " + name()
                            + ". If they belong to it, take the blank row and the totals out, or repeat the header."));
            leftOver = 0;
        }
        summarise(nameless, "without a name");
        summarise(lone, "with nothing but a name");
        nameless = 0;
        lone = 0;
    }

    /**
     * Rows typed or pasted right under an Excel table are not in it unless the program drew it longer by itself, which
     * not all do. The reader would not know: they look like any other.
     */
    void tellBelow(List<Grid.TableRange> ranges) {
        int first = table.range.lastRow() + 1;
        int row = first;
        while (row < grid.rows()
                && !overlaps(ranges, row)
                && rows.isNamed(row)
                && rows.filled(row) > 1
                && !totals.holds(row, true)
                && !rows.isForeignHeader(row)) {
            row++;
        }
        int count = row - first;
        if (count > 0) {
            boolean one = count == 1;
            findings.add(Finding.caution(
                    table.address(first, table.firstColumn),
                    (one ? "This row stands" : count + " rows from here on stand") + " right under the table "
                            + table.range.name() + " but not in it, so " + (one ? "it is" : "they are")
                            + " not read as " + name() + ". If " + (one ? "it belongs" : "they belong")
                            + " to it, draw the table's lower right corner down over " + (one ? "it" : "them")
                            + "; if not, leave a blank row between."));
        }
    }

    /** The last row may be a sum of the others under a name that does not say so. */
    private void leaveSum() {
        SumOfRows.Verdict verdict = sums.ofLastRow();
        if (verdict == SumOfRows.Verdict.NONE || table.count() == summed) {
            return;
        }
        int row = table.row(table.count() - 1);
        if (verdict != SumOfRows.Verdict.PERHAPS) {
            table.dropLast();
            if (verdict == SumOfRows.Verdict.MEANS) {
                note(row, "This " + line() + " of means is not read as a row of " + name() + ".");
            } else {
                noteTotals(row, ": its figures sum up those " + before());
            }
        } else {
            cautionSum(row);
        }
        summed = table.count();
    }

    private void noteTotals(int row, String why) {
        note(row, "This " + line() + " of totals is not read as a row of " + name() + why + ".");
    }

    private void cautionSum(int row) {
        findings.add(Finding.caution(
                table.address(row, identity.length > 0 ? identity[0] : table.firstColumn),
                "The figures of this " + line() + " are the sum of those "
                        + before()
                        + ". It is read as a row of " + name()
                        + " all the same: if it is a total, call it Total."));
    }

    private void summarise(int count, String what) {
        if (count > MOST_FINDINGS) {
            findings.add(Finding.caution(
                    table.address(table.headerRow, table.firstColumn),
                    "And " + Counted.more(count - MOST_FINDINGS, "row") + " " + what + " in " + name() + "."));
        }
    }

    private void end(int row, String why) {
        if (!ended && table.range == null) {
            ended = true;
            endedRow = row;
            endedWhy = why;
        }
    }

    /** Of a form that is a column of its sheet. */
    private String line() {
        return table.grid.isTurned() ? "column" : "row";
    }

    private String before() {
        return table.grid.isTurned() ? "before it" : "above it";
    }

    private String name() {
        return table.chief().name();
    }

    private String identityName() {
        return table.chief().identity().get(0).name();
    }

    /** Units may stand above the headers as well; two at least, for one could be a title. */
    private void takeUnitsAbove() {
        int above = table.headerRow - 1;
        if (table.unitsRow < 0 && table.range == null && above >= 0 && rows.unitsIn(above) > 1) {
            table.unitsRow = above;
        }
    }

    private void note(int row, String message) {
        findings.add(Finding.note(table.address(row, table.firstColumn), message));
    }
}
